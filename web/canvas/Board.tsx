/**
 * The board: the block under the maker's hand.
 *
 * Pointer   press and drag a unit to move it (Alt: half cells); drag over empty cells to choose; two fingers or the wheel to zoom; Space or the middle
 *           button to pan. A press on a patch recolours it while a fabric is in hand, else chooses it.
 * Keys      listed in `KEYS`; everything that a pointer does, keys do.
 */
import { type KeyboardEvent, type PointerEvent, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react'
import { type Findings, type Layered, moveUnits, recolourPatch } from '../../geometry/index.ts'
import { edit, look, now, redo, tryOut, undo, useStore, useTold } from '../state/store.ts'
import { copyChosen, halfTurnChosen, mirrorChosen, mirrorWhole, moveChosen, placeAt, pourAt, removeChosen, turnChosen, turnWhole } from './actions.ts'
import { clothPainting } from './cloth.ts'
import { fits, getReady, pieceAt, piecesIn, unitById, unitsById, unitsIndex } from './find.ts'
import { CARRY, dropWith, type Held as HeldThing, useHeld } from './gestures.ts'
import { drawHeld, handlesOf, REACH } from './held.ts'
import { newUnit, type TrayKind } from './newUnit.ts'
import { type Frame, frameOf, snap } from './place.ts'
import { drawMarks, meetingsIndex } from './numbers.ts'
import { around, bordersAround, linesOf, number, piecesOfUnit, type Rect, rectOf, type Spot, spot, tiedTo } from './shapes.ts'
import { usePrints } from './prints.ts'
import { type Sheets, sheetsIn } from './stage.ts'
import { type Still, stillOn } from './still.ts'
import { tiler } from './tiles.ts'
import { t } from '../words/words.ts'
import { useInk } from './useInk.ts'
import { drawDifference } from './views/difference.ts'
import { paint } from './views/paint.ts'
import { drawPreview } from './views/preview.ts'
import { useDifference } from './views/useDifference.ts'
import { useSheets } from './views/useSheets.ts'
import { useOutlines } from './useOutlines.ts'

export const KEYS: readonly (readonly [string, string])[] = [
  ['Arrows', 'walk over the cells'],
  ['Enter', 'choose at the cursor; again: the next patch of the cell (Shift adds)'],
  ['Alt + arrows', 'move what is chosen'],
  ['T, Shift + T', 'turn a quarter, half round'],
  ['M', 'mirror'],
  ['B, Shift + B', 'turn, mirror the whole block'],
  ['D, Delete', 'copy, remove'],
  ['P', 'place the unit in hand at the cursor'],
  ['F', 'recolour the patch chosen at the cursor with the fabric in hand'],
  ['+ − 0', 'zoom in, out, fit'],
  ['Shift + arrows', 'pan'],
  ['Ctrl + Z, Ctrl + Shift + Z', 'undo, do again'],
  ['Escape', 'let go of everything'],
]

type Gesture =
  | { readonly sort: 'press'; readonly from: Spot; readonly unit: string | null; readonly name: string | null; readonly add: boolean }
  | { readonly sort: 'move'; readonly from: Spot; readonly by: Spot; readonly ids: readonly string[] }
  | { readonly sort: 'box'; readonly from: Spot; readonly to: Spot; readonly add: boolean }
  | { readonly sort: 'pan'; readonly from: Spot; readonly pan: Spot }
  | { readonly sort: 'pinch'; readonly apart: number; readonly middle: Spot; readonly zoom: number; readonly pan: Spot }

/** Milliseconds of rest before what a press asks is made ready. */
const READY = 100
const NO_CELLS: Layered['cells'] = []

export function Board() {
  const place = useRef<HTMLDivElement>(null)
  const [size, setSize] = useState<Spot>([640, 560])
  const [gesture, setGesture] = useState<Gesture | null>(null)
  const [focused, setFocused] = useState(false)
  const pointers = useRef(new Map<number, Spot>())
  const space = useRef(false)
  const canvas = useRef<HTMLDivElement>(null)
  const sheets = useRef<Sheets | null>(null)
  const still = useRef<Still | null>(null)
  const whole = useRef<(pixels: number) => { frame: Frame; size: Spot }>(() => ({ frame, size }))
  const tiles = useMemo(tiler, [])
  const own = useStore(({ history }) => history.block)
  const view = useStore(({ view }) => view)
  const told = useTold()
  // What is only tried is looked at like the block itself; a hand on the board puts it away.
  const preview = useStore((state) => state.preview)
  const [block, report] = preview === null ? [own, told.report] : [preview.block, preview.report]
  const difference = useDifference()
  const held = useHeld()
  const { ink, paper } = useInk()
  const borders = bordersAround(block)
  const extent = useMemo(
    () => ({ columns: block.grid.columns, rows: block.grid.rows, around: borders }),
    [block.grid.columns, block.grid.rows, borders],
  )
  const frame = useMemo(
    () => frameOf(extent, size[0], size[1], view.zoom, view.pan, view.look === 'wrong'),
    [extent, size, view.zoom, view.pan, view.look],
  )
  const rects = useMemo(() => unitsById(block, view.chosen).map(rectOf), [block, view.chosen])
  const handles = gesture === null ? handlesOf(frame, around(rects)) : null
  const faults = useOutlines(report, block.grid.columns, block.grid.rows)
  const deep = useStore((state) => state.deep)
  const stitching = useStore((state) => state.stitching)
  const cells = deep?.block === block ? deep.layered.cells : NO_CELLS
  const folds = useSheets(block, view.look === 'wrong')
  const meetings = view.marks && view.look !== 'layers' && view.look !== 'quilting'

  whole.current = (pixels) => {
    const [wide, high] = [extent.columns + 2 * borders, extent.rows + 2 * borders]
    const most: Spot = [(pixels * wide) / Math.max(wide, high), (pixels * high) / Math.max(wide, high)]
    return { frame: frameOf(extent, ...most, 1, [0, 0], view.look === 'wrong'), size: most }
  }
  useLayoutEffect(() => {
    if (canvas.current === null) return
    const made = sheetsIn(canvas.current)
    sheets.current = made
    still.current = stillOn(made.cloth, (pixels) => whole.current(pixels))
    return () => {
      still.current?.close()
      made.close()
    }
  }, [])
  useLayoutEffect(() => sheets.current?.resize(size), [size])

  const zoom = useRef(zoomAt)
  zoom.current = zoomAt
  useEffect(() => {
    const element = place.current
    if (element === null) return
    const watch = new ResizeObserver(([entry]) => {
      if (entry === undefined) return
      const next: Spot = [Math.max(200, entry.contentRect.width), Math.max(200, entry.contentRect.height)]
      setSize((before) => (before[0] === next[0] && before[1] === next[1] ? before : next))
    })
    watch.observe(element)
    const wheel = (event: WheelEvent): void => {
      event.preventDefault()
      const box = element.getBoundingClientRect()
      zoom.current([event.clientX - box.left, event.clientY - box.top], Math.exp(-event.deltaY * (event.ctrlKey ? 0.01 : 0.0016)))
    }
    element.addEventListener('wheel', wheel, { passive: false })
    return () => {
      watch.disconnect()
      element.removeEventListener('wheel', wheel)
    }
  }, [])

  function at({ clientX, clientY }: { readonly clientX: number; readonly clientY: number }): Spot {
    const box = place.current?.getBoundingClientRect()
    return [clientX - (box?.left ?? 0), clientY - (box?.top ?? 0)]
  }

  function zoomAt([x, y]: Spot, by: number): void {
    const { zoom, pan } = now().view
    const next = Math.min(24, Math.max(0.3, zoom * by))
    const [dx, dy] = [x - size[0] / 2 - pan[0], y - size[1] / 2 - pan[1]]
    const grown = next / zoom
    look({ zoom: next, pan: [pan[0] + dx - dx * grown, pan[1] + dy - dy * grown] })
  }

  function landing(thing: HeldThing): Spot {
    const [x, y] = frame.toCells(...at({ clientX: thing.x, clientY: thing.y }))
    if (thing.sort === 'fabric') return [x, y]
    const {
      size: [w, h],
    } = rectOf(newUnit(block, thing.kind, [0, 0]))
    return [snap(x - w / 2, false), snap(y - h / 2, false)]
  }

  useEffect(() => {
    dropWith((thing) => {
      const box = place.current?.getBoundingClientRect()
      if (box === undefined || thing.x < box.left || thing.x > box.right || thing.y < box.top || thing.y > box.bottom) return false
      if (thing.sort === 'unit') placeAt(thing.kind, landing(thing))
      else pourAt(thing.fabric, landing(thing))
      return true
    })
  })

  function press(event: PointerEvent<HTMLDivElement>): void {
    tryOut(null)
    const from = at(event)
    pointers.current.set(event.pointerId, from)
    place.current?.setPointerCapture(event.pointerId)
    if (pointers.current.size === 2) {
      const [one, other] = [...pointers.current.values()] as [Spot, Spot]
      setGesture({
        sort: 'pinch',
        apart: Math.hypot(one[0] - other[0], one[1] - other[1]),
        middle: [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2],
        zoom: view.zoom,
        pan: view.pan,
      })
      return
    }
    if (event.button === 1 || space.current) {
      setGesture({ sort: 'pan', from, pan: view.pan })
      return
    }
    if (event.button !== 0) return
    const near = (spotAt: Spot): boolean => Math.hypot(spotAt[0] - from[0], spotAt[1] - from[1]) <= REACH
    if (handles !== null && near(handles.turn)) return turnChosen()
    if (handles !== null && near(handles.mirror)) return mirrorChosen()
    const meeting = meetings && view.brush === null ? meetingAt(from) : -1
    if (meeting >= 0)
      return look({
        finding: `meeting ${meeting}`,
        sought: `meeting ${meeting}`,
        sheet: 'findings',
        notice: t('The meeting is shown among the findings.'),
      })
    const piece = pieceAt(block, frame.toCells(...from))
    setGesture({ sort: 'press', from, unit: piece?.unit ?? null, name: piece?.name ?? null, add: event.shiftKey || event.ctrlKey || event.metaKey })
  }

  function move(event: PointerEvent<HTMLDivElement>): void {
    const to = at(event)
    if (pointers.current.has(event.pointerId)) pointers.current.set(event.pointerId, to)
    if (gesture === null) return
    if (gesture.sort === 'pinch' && pointers.current.size === 2) {
      const [one, other] = [...pointers.current.values()] as [Spot, Spot]
      const middle: Spot = [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2]
      const zoom = Math.min(24, Math.max(0.3, gesture.zoom * (Math.hypot(one[0] - other[0], one[1] - other[1]) / Math.max(1, gesture.apart))))
      const grown = zoom / gesture.zoom
      const kept = (axis: 0 | 1): number => middle[axis] - size[axis] / 2 - (gesture.middle[axis] - size[axis] / 2 - gesture.pan[axis]) * grown
      look({ zoom, pan: [kept(0), kept(1)] })
    } else if (gesture.sort === 'pan') look({ pan: [gesture.pan[0] + to[0] - gesture.from[0], gesture.pan[1] + to[1] - gesture.from[1]] })
    else if (gesture.sort === 'press' && Math.hypot(to[0] - gesture.from[0], to[1] - gesture.from[1]) > CARRY) begin(gesture, to, event.pointerType)
    else if (gesture.sort === 'move') {
      const [a, b] = [frame.toCells(...gesture.from), frame.toCells(...to)]
      setGesture({ ...gesture, by: [snap(b[0] - a[0], event.altKey), snap(b[1] - a[1], event.altKey)] })
    } else if (gesture.sort === 'box') setGesture({ ...gesture, to })
  }

  function begin({ from, unit, add }: Extract<Gesture, { sort: 'press' }>, to: Spot, pointer: string): void {
    if (unit !== null) {
      const ids = view.chosen.includes(unit) ? view.chosen : add ? [...view.chosen, unit] : [unit]
      look({ chosen: ids, patch: null })
      setGesture({ sort: 'move', from, by: [0, 0], ids })
    } else if (pointer === 'touch') setGesture({ sort: 'pan', from, pan: view.pan })
    else setGesture({ sort: 'box', from, to, add })
  }

  function release(event: PointerEvent<HTMLDivElement>): void {
    pointers.current.delete(event.pointerId)
    const done = gesture
    setGesture(null)
    if (done === null || event.type === 'pointercancel') return
    if (done.sort === 'press') tap(done)
    else if (done.sort === 'move' && (done.by[0] !== 0 || done.by[1] !== 0)) {
      if (fits(block, moved(done).rects, new Set(done.ids))) edit(moveUnits(done.ids, done.by[0], done.by[1]))
      else look({ notice: 'It does not fit there: the cells are taken, or lie beyond the grid.' })
    } else if (done.sort === 'box') chooseBox(done)
  }

  function tap({ unit, name, add }: Extract<Gesture, { sort: 'press' }>): void {
    if (unit === null || name === null) return look({ chosen: add ? view.chosen : [], patch: null })
    if (view.brush !== null && !add) return pourAt(view.brush, frame.toCells(...(gesture as { from: Spot }).from))
    const ids = add ? (view.chosen.includes(unit) ? view.chosen.filter((id) => id !== unit) : [...view.chosen, unit]) : [unit]
    look({ chosen: ids, patch: add ? null : { unit, name }, notice: `${unit}, ${name}: chosen.` })
  }

  function chooseBox({ from, to, add }: Extract<Gesture, { sort: 'box' }>): void {
    const [a, b] = [frame.toCells(...from), frame.toCells(...to)]
    const box: Rect = { at: [Math.min(a[0], b[0]), Math.min(a[1], b[1])], size: [Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1])] }
    const inBox = unitsIndex(block).touching(box.at, [box.at[0] + box.size[0], box.at[1] + box.size[1]])
    const ids = [...new Set([...(add ? view.chosen : []), ...inBox.map(({ id }) => id)])]
    look({ chosen: ids, patch: null, notice: `${ids.length} chosen.` })
  }

  function moved({ ids, by }: Extract<Gesture, { sort: 'move' }>): { rects: Rect[]; pieces: ReturnType<typeof piecesOfUnit> } {
    const units = unitsById(block, ids)
    return {
      rects: units.map((unit) => {
        const {
          at: [x, y],
          size: own,
        } = rectOf(unit)
        return { at: [x + by[0], y + by[1]], size: own }
      }),
      pieces: units.flatMap((unit) => piecesOfUnit(unit, by[0], by[1])),
    }
  }

  function meetingAt(from: Spot): number {
    if (report === null) return -1
    const [x, y] = frame.toCells(...from)
    const reach = 9 / frame.scale
    const [found] = meetingsIndex(report)
      .touching([x - reach, y - reach], [x + reach, y + reach])
      .slice(-1)
    return found === undefined ? -1 : report.meetings.indexOf(found.item)
  }

  function ghost(): { pieces: ReturnType<typeof piecesOfUnit>; fits: boolean } | null {
    if (gesture?.sort === 'move' && (gesture.by[0] !== 0 || gesture.by[1] !== 0)) {
      const next = moved(gesture)
      return { pieces: next.pieces, fits: fits(block, next.rects, new Set(gesture.ids)) }
    }
    if (held?.sort !== 'unit') return null
    const unit = newUnit(block, held.kind, landing(held))
    return { pieces: piecesOfUnit(unit), fits: fits(block, [rectOf(unit)], new Set()) }
  }

  function key(event: KeyboardEvent<HTMLDivElement>): void {
    if (event.key === ' ') {
      space.current = true
      event.preventDefault()
      return
    }
    const arrow = ARROWS[event.key]
    const act = arrow === undefined ? actionOf(event) : () => walk(arrow, event)
    if (act === undefined) return
    event.preventDefault()
    act()
  }

  function walk([dx, dy]: Spot, event: KeyboardEvent): void {
    const across = view.look === 'wrong' ? -dx : dx
    if (event.altKey) return moveChosen(across, dy)
    if (event.shiftKey) return look({ pan: [view.pan[0] - dx * 40, view.pan[1] - dy * 40] })
    const [x, y] = view.cursor
    const cursor: Spot = [Math.min(block.grid.columns - 1, Math.max(0, x + across)), Math.min(block.grid.rows - 1, Math.max(0, y + dy))]
    const piece = pieceAt(block, middle(cursor))
    look({
      cursor,
      notice: `Column ${cursor[0] + 1}, row ${cursor[1] + 1}: ${piece?.unit == null ? 'empty' : `${piece.unit}, ${piece.name}, ${fabricName(piece.fabric)}`}.`,
    })
  }

  const fabricName = (id: string): string => block.fabrics.find((fabric) => fabric.id === id)?.name ?? id
  /** Just off the middle, where no diagonal runs. */
  const middle = ([x, y]: Spot): Spot => [x + 0.47, y + 0.41]

  function actionOf(event: KeyboardEvent): (() => void) | undefined {
    const name = event.key.toLowerCase()
    if (event.ctrlKey || event.metaKey) {
      if (name === 'z') return event.shiftKey ? redo : undo
      if (name === 'y') return redo
      if (name === 'a') return () => look({ chosen: block.units.map(({ id }) => id), patch: null, notice: 'All units are chosen.' })
      return undefined
    }
    const here = piecesIn(block, view.cursor).filter(({ unit }) => unit !== null)
    const chosenHere = here.findIndex(({ unit, name }) => unit === view.patch?.unit && name === view.patch?.name)
    const actions: Record<string, () => void> = {
      enter: () => {
        const piece = here[(chosenHere + 1) % here.length]
        if (piece?.unit == null) return look({ chosen: [], patch: null, notice: 'There is no unit at the cursor.' })
        const ids = event.shiftKey ? [...new Set([...view.chosen, piece.unit])] : [piece.unit]
        const more = here.length > 1 && !event.shiftKey ? ' Enter again for the next patch in this cell.' : ''
        look({
          chosen: ids,
          patch: event.shiftKey ? null : { unit: piece.unit, name: piece.name },
          notice: `${piece.unit}, ${piece.name}: chosen.${more}`,
        })
      },
      t: event.shiftKey ? halfTurnChosen : turnChosen,
      m: mirrorChosen,
      b: event.shiftKey ? mirrorWhole : turnWhole,
      d: copyChosen,
      delete: removeChosen,
      backspace: removeChosen,
      p: () => (view.taking === null ? look({ notice: 'Take a unit from the tray first.' }) : placeAt(view.taking as TrayKind, view.cursor)),
      f: () => {
        const piece = here[Math.max(0, chosenHere)]
        if (view.brush === null) look({ notice: 'Take a fabric in hand first.' })
        else if (piece?.unit == null) look({ notice: 'There is no patch at the cursor.' })
        else {
          edit(recolourPatch(piece.unit, piece.name, view.brush))
          look({ notice: `${piece.unit}, ${piece.name}: recoloured to ${fabricName(view.brush)}.` })
        }
      },
      '+': () => zoomAt([size[0] / 2, size[1] / 2], 1.2),
      '=': () => zoomAt([size[0] / 2, size[1] / 2], 1.2),
      '-': () => zoomAt([size[0] / 2, size[1] / 2], 1 / 1.2),
      '0': () => look({ zoom: 1, pan: [0, 0] }),
      escape: () => {
        setGesture(null)
        look({ chosen: [], patch: null, brush: null, taking: null, finding: null, notice: 'Nothing is held or chosen.' })
      },
    }
    return actions[name]
  }

  const pointed = pointedAt(view.finding, report)
  const ring = useMemo(() => view.shown ?? ringOf(view.finding, report), [view.shown, view.finding, report])
  const patch = useMemo(() => {
    const unit = view.patch === null ? undefined : unitById(block, view.patch.unit)
    return unit === undefined ? null : (piecesOfUnit(unit).find(({ name }) => name === view.patch?.name)?.corners ?? null)
  }, [block, view.patch])

  const stitched = stitching?.block === block ? stitching : null
  const scene = useMemo(
    () => ({ block, report, look: view.look, cells, stitching: stitched, sheets: folds, ink, paper }),
    [block, report, view.look, cells, stitched, folds, ink, paper],
  )
  const prints = usePrints()
  // biome-ignore lint/correctness/useExhaustiveDependencies: a photograph that has just been decoded is drawn anew
  const painting = useMemo(() => clothPainting(scene, tiles(block)), [scene, tiles, block, prints])
  useEffect(() => still.current?.show(painting, frame, size), [painting, frame, size])
  useEffect(() => {
    const rest = setTimeout(() => getReady(block), READY)
    return () => clearTimeout(rest)
  }, [block])
  const numbers = meetings
  useEffect(() => {
    const sight = { scale: frame.scale, toPixels: frame.toPixels, ink, paper }
    sheets.current?.marks.show((pen) => {
      if (preview !== null) paint(pen, drawPreview(preview), sight)
      drawMarks(pen, report, { numbers, meetings }, faults, ring, frame, size, { ink, paper })
      if (preview === null && difference !== null) paint(pen, drawDifference(difference.found), sight)
    })
  }, [report, numbers, meetings, faults, ring, frame, size, ink, paper, preview, difference])
  useEffect(() => {
    const held = {
      block,
      chosen: gesture?.sort === 'move' ? [] : rects,
      handles,
      ghost: ghost(),
      left: gesture?.sort === 'move' ? unitsById(block, gesture.ids).flatMap((unit) => piecesOfUnit(unit)) : [],
      drawn: gesture?.sort === 'box' ? { from: gesture.from, to: gesture.to } : null,
      cursor: focused ? view.cursor : null,
      patch,
      finding: pointed,
      ink,
      paper,
    }
    sheets.current?.held.show((pen) => drawHeld(pen, held, frame))
  })

  return (
    <div
      ref={place}
      className="board"
      role="application"
      aria-label={`Board: ${block.name}, ${block.grid.columns} by ${block.grid.rows} cells`}
      aria-describedby="keys"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the board is worked with the keys listed below it
      tabIndex={0}
      onPointerDown={press}
      onPointerMove={move}
      onPointerUp={release}
      onPointerCancel={release}
      onKeyDown={key}
      onKeyUp={(event) => {
        if (event.key === ' ') space.current = false
      }}
      onFocus={() => setFocused(true)}
      onBlur={() => setFocused(false)}
      data-scale={frame.scale}
      data-origin={frame.toPixels(0, 0).join(',')}
    >
      <div ref={canvas} />
    </div>
  )
}

const ARROWS: Readonly<Record<string, Spot>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }

/** The seams a clash is bound up with. */
function ringOf(finding: string | null, report: Findings | null): readonly (readonly Spot[])[] {
  const [sort, index] = (finding ?? '').split(' ')
  if (report === null || sort !== 'meeting' || report.meetings[Number(index)]?.verdict !== 'clashes') return []
  const tied = new Set(tiedTo(report, Number(index)))
  return linesOf(report)
    .filter(({ join }) => tied.has(join.id))
    .map(({ points }) => points)
}

function pointedAt(finding: string | null, report: Findings | null): Spot | null {
  if (finding === null || report === null) return null
  const [sort, index] = finding.split(' ')
  if (sort === 'bulk') return report.bulk === null ? null : [report.bulk.at[0], report.bulk.at[1]]
  const found = sort === 'meeting' ? report.meetings[Number(index)]?.at : sort === 'problem' ? report.problems[Number(index)]?.at : undefined
  if (found !== undefined) return spot(found)
  const join = sort === 'join' ? report.joins[Number(index)] : undefined
  return join === undefined ? null : [(number(join.from[0]) + number(join.to[0])) / 2, (number(join.from[1]) + number(join.to[1])) / 2]
}
