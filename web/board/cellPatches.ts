/** The patches that lie in a cell, for walking through them with the keyboard. */
import type { Block } from '../../geometry/index.ts'
import { inside, type PatchShape, unitShapes, type Point } from '../document/shapes.ts'
import { unitsIndex } from './hitTest.ts'

/** Off the middle of the cell and its diagonals, where seams run. */
const MIDDLE: Point = [0.47, 0.42]
/** Square cells: less than this is a rounding error along an edge. */
const LEAST_AREA = 1e-6

/** The patch in the middle of the cell, then all others that lie in it, row by row; `cell` is its top left corner. */
export function patchesInCell(block: Block, [x, y]: Point): PatchShape[] {
  const near = unitsIndex(block)
    .touching([x, y], [x + 1, y + 1])
    .flatMap((unit) => unitShapes(unit))
  const middle = near.findLast(({ corners }) => inside(corners, [x + MIDDLE[0], y + MIDDLE[1]]))
  const others = near.flatMap((piece) => {
    const part = piece === middle ? null : middleOfPart(clipToCell(piece.corners, [x, y]))
    return part === null ? [] : [{ piece, part }]
  })
  const inRows = others.sort((a, b) => rounded(a.part[1] - b.part[1]) || a.part[0] - b.part[0]).map(({ piece }) => piece)
  return middle === undefined ? inRows : [middle, ...inRows]
}

const rounded = (value: number): number => Math.round(value * 1e6)

/** What lies in the cell of a shape: cut off at one side of the cell after the other (Sutherland and Hodgman's method). */
function clipToCell(corners: readonly Point[], [x, y]: Point): readonly Point[] {
  const sides: readonly ((point: Point) => number)[] = [([px]) => px - x, ([px]) => x + 1 - px, ([, py]) => py - y, ([, py]) => y + 1 - py]
  return sides.reduce<readonly Point[]>((left, inwards) => clipAt(left, inwards), corners)
}

/** The corners on the inner side of a line, where `inwards` is not negative, and the points where the outline crosses it. */
function clipAt(corners: readonly Point[], inwards: (point: Point) => number): Point[] {
  return corners.flatMap((from, index): Point[] => {
    const to = corners[(index + 1) % corners.length] as Point
    const [a, b] = [inwards(from), inwards(to)]
    const kept = a >= 0 ? [from] : []
    if (a >= 0 === b >= 0) return kept
    const part = a / (a - b)
    return [...kept, [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part]]
  })
}

/** The centre of gravity of a shape; null where it has no area. */
function middleOfPart(corners: readonly Point[]): Point | null {
  let [area, mx, my] = [0, 0, 0]
  corners.forEach(([ax, ay], index) => {
    const [bx, by] = corners[(index + 1) % corners.length] as Point
    const cross = ax * by - bx * ay
    area += cross / 2
    mx += ((ax + bx) * cross) / 6
    my += ((ay + by) * cross) / 6
  })
  return Math.abs(area) < LEAST_AREA ? null : [mx / area, my / area]
}
