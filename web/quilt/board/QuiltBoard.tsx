/**
 * The quilt under the maker's hand: a react-konva tree in which every place is a node that konva drags.
 *
 * Four layers: what lies between places; the places; the selection, handles and what is being dragged; crossings. Everything that a pointer does, keys do too.
 */
import type { Layer as LayerNode } from 'konva/lib/Layer.js'
import type { KonvaEventObject } from 'konva/lib/Node.js'
import { type ComponentProps, memo, useCallback, useEffect, useMemo, useRef, useState } from 'react'
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore.js'
import { placeAtCell, placeSize, type Quilt, type QuiltCell, quiltLayout, resizePlace } from '../../../geometry/index.ts'
import { useElementSize } from '../../board/useElementSize.ts'
import type { Point } from '../../document/shapes.ts'
import { getState } from '../../document/store.ts'
import { useDecodedPhotos } from '../../drawing/fabricPattern.ts'
import { paintEmpty, paintGround } from '../../drawing/quiltPainting.ts'
import { t } from '../../words/words.ts'
import { act, movePlace, openQuilt, putItem, turnChosen } from '../quiltActions.ts'
import { anchorOf, cellsBetween, setQuiltView, useQuiltView } from '../quiltView.ts'
import { useQuiltReport } from '../useQuiltReport.ts'
import { onListDrop } from '../listDrag.ts'
import { onBoardKey, selectCell, zoomAt } from './boardKeys.ts'
import { PlaceGrid, quiltCellId } from './PlaceGrid.tsx'
import { PlaceHandles } from './PlaceHandles.tsx'
import { PlaceNode } from './PlaceNode.tsx'
import { type QuiltFrame, quiltFrame } from './quiltFrame.ts'
import { type PlacedBox, QuiltMarks, QuiltOverlay } from './QuiltMarks.tsx'
import { pointIn, useCellGesture } from './useCellGesture.ts'

export function QuiltBoard({ quilt }: { readonly quilt: Quilt }) {
  const board = useRef<HTMLDivElement>(null)
  const [byKeys, setByKeys] = useState(false)
  const size = useElementSize(board, [640, 560])
  const layout = useMemo(() => quiltLayout(quilt), [quilt])
  const { cursor, selected, inHand, zoom, pan } = useQuiltView()
  const frame = useMemo(() => quiltFrame(quilt, layout, size, zoom, pan), [quilt, layout, size, zoom, pan])
  const gesture = useCellGesture(quilt, frame)
  const { columns, rows } = quilt.grid
  useListDrops(board, frame)
  useWheelZoom(board)
  return (
    <div
      ref={board}
      className={inHand === null ? 'board quilt-board' : 'board quilt-board placing'}
      data-part="board"
      role="application"
      aria-label={t('Quilt: {name}, {columns} by {rows} positions', { name: quilt.name, columns, rows })}
      aria-describedby="quilt-board-how"
      aria-activedescendant={quiltCellId(cursor)}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the board is worked with the keys listed below it
      tabIndex={0}
      {...gesture.listeners}
      onContextMenu={(event) => event.preventDefault()}
      onKeyDown={onBoardKey}
      data-keys={byKeys || undefined}
      onFocus={({ currentTarget }) => setByKeys(currentTarget.matches(':focus-visible'))}
      onBlur={() => setByKeys(false)}
      onPointerDownCapture={() => setByKeys(false)}
      onKeyDownCapture={() => setByKeys(true)}
      data-cell={frame.boxOf([1, 1], [1, 1]).join()}
      data-first={frame.boxOf([0, 0], [1, 1]).join()}
    >
      <QuiltStage quilt={quilt} layout={layout} frame={frame} size={size} byKeys={byKeys} run={gesture.run} />
      <p id="quilt-board-how" className="unseen">
        {t('Use the arrow keys to move, Enter to select or to place what you hold. All keys are listed under Shortcuts.')}
      </p>
      <PlaceGrid quilt={quilt} layout={layout} cursor={cursor} selected={selected} />
    </div>
  )
}

interface StageProps {
  readonly quilt: Quilt
  readonly layout: ReturnType<typeof quiltLayout>
  readonly frame: QuiltFrame
  readonly size: Point
  readonly byKeys: boolean
  readonly run: { readonly from: QuiltCell; readonly to: QuiltCell } | null
}

function QuiltStage({ quilt, layout, frame, size, byKeys, run }: StageProps) {
  const dragLayer = useRef<LayerNode>(null)
  const [target, setTarget] = useState<readonly PlacedBox[]>([])
  const { selected, cursor, inHand, marks, value, pointed, line, joint, sheet } = useQuiltView()
  const decoded = useDecodedPhotos()
  const { report, of } = useQuiltReport()
  const mode = value ? 'value' : 'cloth'
  const boxAt = useCallback((cell: QuiltCell): PlacedBox => boxOfCell(quilt, cell), [quilt])
  const onDrag = useCallback(
    (_: string, middle: Point): void => {
      const cell = frame.cellAt(middle)
      const next = cell === null ? [] : [boxAt(cell)]
      setTarget((last) => (last[0]?.at.join() === next[0]?.at.join() ? last : next))
    },
    [frame, boxAt],
  )
  const onDrop = useCallback(
    (id: string, middle: Point): void => {
      setTarget([])
      const cell = frame.cellAt(middle)
      const place = quilt.places.find((one) => one.id === id)
      if (cell === null || place === undefined) return
      if (placeAtCell(quilt.places, cell) === place) selectCell(cell, false)
      else movePlace(place, cell)
    },
    [frame, quilt],
  )
  const boxes = useMemo(() => selected.map(boxAt), [selected, boxAt])
  const layerOf = useCallback(() => dragLayer.current, [])
  const only = selected.length === 1 && inHand === null ? placeAtCell(quilt.places, selected[0] as QuiltCell) : undefined
  return (
    <Stage
      width={size[0]}
      height={size[1]}
      onClick={(event) => onPlacePress(event, quilt, frame)}
      onTap={(event) => onPlacePress(event, quilt, frame)}
    >
      <Layer listening={false}>
        <Shape
          listening={false}
          perfectDrawEnabled={false}
          sceneFunc={({ _context }) => {
            const pen = _context as CanvasRenderingContext2D
            pen.translate(frame.left, frame.top)
            pen.scale(frame.scale, frame.scale)
            const pixels = frame.scale * (window.devicePixelRatio || 1)
            paintGround(pen, quilt, layout, pixels, mode)
            paintEmpty(pen, quilt, layout, frame.scale)
          }}
        />
      </Layer>
      <PlacesLayer
        quilt={quilt}
        layout={layout}
        frame={frame}
        mode={mode}
        decoded={decoded}
        draggable={inHand === null}
        dragLayer={layerOf}
        onDrag={onDrag}
        onDrop={onDrop}
      />
      <Layer ref={dragLayer}>
        <QuiltOverlay
          layout={layout}
          frame={frame}
          selected={boxes}
          target={run === null ? target : cellsBetween(run.from, run.to).map((cell) => ({ at: cell, size: [1, 1] }))}
          cursor={byKeys ? boxAt(cursor) : null}
        />
        {only !== undefined && (
          <PlaceHandles
            box={frame.boxOf(only.at, placeSize(only))}
            turns={only.block !== undefined}
            onTurn={() => turnChosen(1)}
            onStretch={(corner) => setTarget([{ at: only.at, size: sizeTo(quilt, only.at, frame, corner) }])}
            onStretched={(corner) => {
              setTarget([])
              const to = sizeTo(quilt, only.at, frame, corner)
              act(resizePlace(only.id, to), t('This position is now {wide} by {high}.', { wide: to[0], high: to[1] }))
            }}
          />
        )}
      </Layer>
      <QuiltMarks
        frame={frame}
        meetings={marks && of === quilt ? (report?.meetings ?? null) : null}
        pointed={sheet === 'check' && of === quilt ? pointed : null}
        lines={line && of === quilt ? (report?.places ?? null) : null}
        joint={sheet === 'joining' && joint !== null && of === quilt ? (report?.joints[joint] ?? null) : null}
      />
    </Stage>
  )
}

type PlacesProps = Omit<ComponentProps<typeof PlaceNode>, 'drawn' | 'left' | 'top' | 'scale'> & Pick<StageProps, 'layout' | 'frame'>

/** Rendered apart, so that a drag over hundreds of places renders none of them again. */
const PlacesLayer = memo(function PlacesLayer({ layout, frame, ...rest }: PlacesProps) {
  return (
    <Layer>
      {layout.places.map((drawn) => (
        <PlaceNode key={drawn.place.id} drawn={drawn} left={frame.left} top={frame.top} scale={frame.scale} {...rest} />
      ))}
    </Layer>
  )
})

/** The box of the place over a cell, or of the empty cell. */
function boxOfCell(quilt: Quilt, cell: QuiltCell): PlacedBox {
  const place = placeAtCell(quilt.places, cell)
  return place === undefined ? { at: cell, size: [1, 1] } : { at: place.at, size: placeSize(place) }
}

/** The size in cells of a place whose corner is dragged to a point. */
function sizeTo({ grid }: Quilt, at: QuiltCell, frame: QuiltFrame, corner: Point): QuiltCell {
  const size = (axis: 0 | 1, most: number): number => {
    const one = frame.boxOf(at, [1, 1])
    const two = frame.boxOf(at, [2, 2])
    const step = (two[axis + 2] as number) - (one[axis + 2] as number)
    const reach = corner[axis] - (one[axis] as number)
    return Math.max(1, Math.min(most, Math.round((reach - (one[axis + 2] as number)) / step) + 1))
  }
  return [size(0, grid.columns - at[0]), size(1, grid.rows - at[1])]
}

/** A press on a place that did not become a drag selects it; with Shift, everything from the place selected last. */
function onPlacePress(event: KonvaEventObject<MouseEvent | TouchEvent>, quilt: Quilt, frame: QuiltFrame): void {
  const at = event.target.getStage()?.getPointerPosition()
  const cell = at == null ? null : frame.cellAt([at.x, at.y])
  const { inHand, adding, selected } = useQuiltView.getState()
  if (cell === null || inHand !== null || placeAtCell(quilt.places, cell) === undefined) return
  const { shiftKey = false, ctrlKey = false, metaKey = false } = event.evt as MouseEvent
  const last = selected.at(-1)
  if (!shiftKey || last === undefined) return selectCell(cell, ctrlKey || metaKey || adding)
  const between = new Map([...selected, ...cellsBetween(last, cell)].map((one) => [anchorOf(quilt, one).join(), anchorOf(quilt, one)]))
  setQuiltView({ selected: [...between.values()], cursor: cell })
}

/** Listens by itself, because the page must not scroll meanwhile. */
function useWheelZoom(board: { readonly current: HTMLDivElement | null }): void {
  useEffect(() => {
    const element = board.current
    if (element === null) return
    const onWheel = (event: WheelEvent): void => {
      event.preventDefault()
      const [x, y] = pointIn({ clientX: event.clientX, clientY: event.clientY, currentTarget: element })
      zoomAt([x - element.clientWidth / 2, y - element.clientHeight / 2], Math.exp(-event.deltaY / 400))
    }
    element.addEventListener('wheel', onWheel, { passive: false })
    return () => element.removeEventListener('wheel', onWheel)
  }, [board])
}

/** What is dragged off the list lands on the cell below the pointer. */
function useListDrops(board: { readonly current: HTMLDivElement | null }, frame: QuiltFrame): void {
  const latest = useRef(frame)
  latest.current = frame
  useEffect(
    () =>
      onListDrop(({ item, x, y }) => {
        const element = board.current
        if (element === null || getState().quilt === null) return false
        const cell = latest.current.cellAt(pointIn({ clientX: x, clientY: y, currentTarget: element }))
        if (cell === null) return false
        void putItem(item, [cell]).then(() => {
          const quilt = openQuilt()
          if (quilt !== null) setQuiltView({ selected: [anchorOf(quilt, cell)], cursor: cell })
        })
        return true
      }),
    [board],
  )
}
