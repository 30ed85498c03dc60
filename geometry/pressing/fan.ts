/**
 * Where four square seams meet and nest, their allowances can be fanned round the point, all turning one way.
 *
 * In      a crossing of a pressed plan, and its folds.
 * Out     whether it can be fanned: only where it is clear of other seams. The layers before and after are constants.
 * Source  undo the few stitches inside the allowance and fan, where four seams truly meet [S77][S83]. Layers by
 *         arithmetic: nested, the fullest quarter holds its own patch, six allowances of the two seams folded on it; fanned, each quarter holds its
 *         patch, the two allowances of one seam, and a quarter of the four corners opened in the middle.
 */
import { vectorBetween } from '../piecing/contact.ts'
import type { Dot } from '../plane/points.ts'
import type { Plane } from '../plane/subdivide.ts'
import { verdictOf } from './nesting.ts'
import { type Folds, patchesNear } from './layers/folds.ts'
import type { PressedPlan } from './plan.ts'
import type { Crossing } from './values.ts'

export const NESTED_LAYERS = 7
export const FANNED_LAYERS = 4

export function canFan(plane: Plane, { seams, pressed }: PressedPlan, folds: Folds, crossing: Crossing): boolean {
  if (verdictOf(crossing, pressed.toward) !== 'nests' || pressed.toward[crossing.join] === 'open') return false
  const around = plane.around[crossing.dot] ?? []
  if (around.length !== 4) return false
  const { path } = seams[crossing.join] as PressedPlan['seams'][number]
  const place = path.indexOf(crossing.dot)
  const [ex, ey] = vectorBetween(plane, path[place - 1] as number, crossing.dot)
  const square = around.every((edge) => {
    const { a, b } = plane.edges[edge] as Plane['edges'][number]
    const [dx, dy] = vectorBetween(plane, a, b)
    return ex * dx + ey * dy === 0 || ex * dy - ey * dx === 0
  })
  return square && patchesNear(folds, folds.laid.places.cells(plane.dots[crossing.dot] as Dot), 2 * folds.allowance).size === 4
}
