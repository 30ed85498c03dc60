/** Moving, swapping, resizing, aligning and spreading units. Each says what it did, or in one sentence why it did nothing. */
import {
  alignUnits,
  fileBoxOf,
  type FileBox,
  keepsProportion,
  moveUnits,
  type Position,
  resizeUnits,
  type Side,
  spreadUnits,
  swapUnits,
  type Unit,
} from '../../../geometry/index.ts'
import { setView, getState } from '../../document/store.ts'
import { label, t } from '../../words/words.ts'
import { unitsById } from '../hitTest.ts'
import { attempt, withSelection } from './attempt.ts'

/** By so many cells across and down. */
export const moveSelection = (dx: Position, dy: Position): void =>
  withSelection((ids) => {
    attempt(moveUnits(ids, dx, dy), t('Moved.'))
  })

/** Moves units by so many cells across and down; says so where they do not fit. */
export function moveTo(ids: readonly string[], [dx, dy]: readonly [Position, Position]): void {
  if (dx !== 0 || dy !== 0) attempt(moveUnits(ids, dx, dy), t('Moved.'), t('It doesn’t fit there: those squares are taken or outside the grid.'))
}

/** Swaps two units of the same size, by their ids. */
export function swapPlaces(one: string, other: string): void {
  if (attempt(swapUnits(one, other), t('The two units are swapped.'))) setView({ selected: [one], patch: null })
}

export const refuseSwap = (): void => setView({ notice: t('Only units of the same size can be swapped.') })

/** Scales units into another box, in cells. */
export const resizeTo = (ids: readonly string[], to: FileBox): void => {
  attempt(resizeUnits(ids, to), t('Resized.'), t('It doesn’t fit at that size: those squares are taken or outside the grid.'))
}

/** With keys: the right and lower sides move out or in by some cells; a unit that keeps its proportion grows both ways. */
export const growSelection = (dx: number, dy: number): void =>
  withSelection((ids) => {
    const units = unitsById(getState().history.block, ids)
    const box = fileBoxOf(units)
    if (box === null) return
    const size = box.size.map(Number) as [number, number]
    const grown = growth(units, size, dx, dy)
    if (grown === null || grown.some((side) => side <= 0)) setView({ notice: t('It can’t be any smaller.') })
    else resizeTo(ids, { at: box.at, size: grown })
  })

function growth(units: readonly Unit[], [w, h]: readonly [number, number], dx: number, dy: number): [number, number] | null {
  if (!keepsProportion(units)) return [w + dx, h + dy]
  const by = dx + dy
  // The shorter side changes by whole cells, the longer one in proportion.
  const part = (Math.min(w, h) + by) / Math.min(w, h)
  return part <= 0 ? null : [w * part, h * part]
}

const SIDES: Readonly<Record<Side, string>> = {
  left: label('Aligned left.'),
  centre: label('Aligned on a vertical line.'),
  right: label('Aligned right.'),
  top: label('Aligned at the top.'),
  middle: label('Aligned on a horizontal line.'),
  bottom: label('Aligned at the bottom.'),
}

const OVER_EACH_OTHER = label('They would overlap there.')

export const alignSelection = (side: Side): void =>
  withSelection((ids) => {
    if (ids.length < 2) setView({ notice: t('Select at least two units to align.') })
    else attempt(alignUnits(ids, side), t(SIDES[side]), t(OVER_EACH_OTHER))
  })

export const spreadSelection = (way: 'across' | 'down'): void =>
  withSelection((ids) => {
    if (ids.length < 3) setView({ notice: t('Select at least three units to space evenly.') })
    else attempt(spreadUnits(ids, way), t('Spaced evenly.'), t(OVER_EACH_OTHER))
  })
