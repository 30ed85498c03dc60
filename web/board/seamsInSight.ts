/** The seams in sight, by where their numbers and arrows lie, and whether there is room for those. */
import { type Findings, type SpatialIndex, spatialIndex } from '../../geometry/index.ts'
import { type DrawnSeam, drawnSeams, type Point } from '../document/shapes.ts'
import { type Frame, visibleCells } from './viewport.ts'

const indexes = new WeakMap<Findings['joins'], SpatialIndex<DrawnSeam>>()

/** The seams whose number would lie on the board, `size` in pixels; none where each would have less than `room` pixels to itself. */
export function seamsInSight(report: Findings, frame: Frame, size: Point, room: number): readonly DrawnSeam[] {
  const index = indexes.get(report.joins) ?? spatialIndex(drawnSeams(report), ({ middle }) => [middle, middle])
  indexes.set(report.joins, index)
  const { low, high } = visibleCells(frame, size)
  const seams = index.touching(low, high)
  return roomForEach(seams.length, frame, low, high) < room ? [] : seams
}

/** Pixels across that each of so many things has to itself. */
export const roomForEach = (count: number, { scale }: Frame, low: Point, high: Point): number =>
  Math.sqrt(((high[0] - low[0]) * (high[1] - low[1])) / Math.max(1, count)) * scale

/** Pixels that an arrow needs to itself to be pressed. */
export const ROOM_FOR_ARROWS = 24
