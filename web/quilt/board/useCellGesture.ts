/**
 * A press or drag over cells: what is in hand fills the run from the first cell to the last; with an empty hand, a drag from an empty cell selects all between.
 * (A block that lies there is dragged by konva instead.)
 */
import { type PointerEvent, useState } from 'react'
import { placeAtCell, type Quilt, type QuiltCell } from '../../../geometry/index.ts'
import type { Point } from '../../document/shapes.ts'
import { putItem } from '../quiltActions.ts'
import { cellsBetween, quiltView, sameCell, setQuiltView } from '../quiltView.ts'
import { anchors, selectCell } from './boardKeys.ts'
import { wasHandlePressed } from './PlaceHandles.tsx'
import type { QuiltFrame } from './quiltFrame.ts'

interface CellRun {
  readonly pointer: number
  readonly from: QuiltCell
  readonly to: QuiltCell
}

export function useCellGesture(quilt: Quilt, frame: QuiltFrame) {
  const [run, setRun] = useState<CellRun | null>(null)
  const cellOf = (event: PointerEvent<HTMLElement>): QuiltCell | null => frame.cellAt(pointIn(event))
  return {
    run,
    listeners: {
      onPointerDown: (event: PointerEvent<HTMLDivElement>): void => {
        const onHandle = wasHandlePressed()
        const cell = cellOf(event)
        if (onHandle || event.button !== 0 || !event.isPrimary) return
        if (cell === null) return startPan(event)
        if (quiltView().inHand === null && placeAtCell(quilt.places, cell) !== undefined) return
        event.currentTarget.setPointerCapture(event.pointerId)
        setRun({ pointer: event.pointerId, from: cell, to: cell })
      },
      onPointerMove: (event: PointerEvent<HTMLDivElement>): void => {
        const cell = cellOf(event)
        if (run !== null && event.pointerId === run.pointer && cell !== null && !sameCell(cell, run.to)) setRun({ ...run, to: cell })
      },
      onPointerUp: (event: PointerEvent<HTMLDivElement>): void => {
        if (run === null || event.pointerId !== run.pointer) return
        setRun(null)
        finish(run, event.shiftKey || event.ctrlKey || event.metaKey)
      },
      onPointerCancel: (): void => setRun(null),
    },
    cancel: (): void => setRun(null),
  }
}

export function pointIn(event: { readonly clientX: number; readonly clientY: number; readonly currentTarget: HTMLElement }): Point {
  const box = event.currentTarget.getBoundingClientRect()
  return [event.clientX - box.left - event.currentTarget.clientLeft, event.clientY - box.top - event.currentTarget.clientTop]
}

/** A drag that begins beside the quilt moves it, where it is larger than the board. */
function startPan(event: PointerEvent<HTMLElement>): void {
  const { pan } = quiltView()
  const from: Point = [event.clientX, event.clientY]
  const board = event.currentTarget
  const stop = new AbortController()
  board.setPointerCapture(event.pointerId)
  const move = (moved: globalThis.PointerEvent): void => {
    if (quiltView().zoom > 1) setQuiltView({ pan: [pan[0] + moved.clientX - from[0], pan[1] + moved.clientY - from[1]] })
  }
  board.addEventListener('pointermove', move, { signal: stop.signal })
  for (const type of ['pointerup', 'pointercancel'] as const) board.addEventListener(type, () => stop.abort(), { signal: stop.signal })
}

function finish({ from, to }: CellRun, add: boolean): void {
  const { inHand, adding, selected } = quiltView()
  const cells = cellsBetween(from, to)
  if (inHand !== null) {
    void putItem(inHand, cells)
    setQuiltView({ cursor: to })
  } else if (cells.length === 1) selectCell(from, add || adding)
  else setQuiltView({ selected: anchors([...(add || adding ? selected : []), ...cells]), cursor: to })
}
