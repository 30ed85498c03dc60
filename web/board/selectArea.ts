/** The units in a box or a loop that the maker draws, in cells. */
import type { Block, Unit } from '../../geometry/index.ts'
import { inside, unitShapes, type Point, rectOf } from '../document/shapes.ts'
import { unitsIndex } from './hitTest.ts'

/** Those that the box touches, from any corner to the one across. */
export function unitsInBox(block: Block, a: Point, b: Point): Unit[] {
  return unitsIndex(block).touching([Math.min(a[0], b[0]), Math.min(a[1], b[1])], [Math.max(a[0], b[0]), Math.max(a[1], b[1])])
}

/** Those whose middle lies inside the loop. */
export function unitsInLoop(block: Block, points: readonly Point[]): Unit[] {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  return unitsInBox(block, [Math.min(...xs), Math.min(...ys)], [Math.max(...xs), Math.max(...ys)]).filter((unit) =>
    inside(points, middleOfUnit(unit)),
  )
}

function middleOfUnit(unit: Unit): Point {
  if (unit.kind !== 'polygon') {
    const { at, size } = rectOf(unit)
    return [at[0] + size[0] / 2, at[1] + size[1] / 2]
  }
  const corners = unitShapes(unit)[0]?.corners ?? []
  const sum = corners.reduce<Point>(([x, y], [cx, cy]) => [x + cx, y + cy], [0, 0])
  return [sum[0] / corners.length, sum[1] / corners.length]
}
