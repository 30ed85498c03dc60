/**
 * The plane of a laid block: its seam graph.
 *
 * In      a laid block.
 * Out     its patches subdivided within the outline of the block, borders included (see `subdivide`); all in steps.
 */
import type { Dot } from '../plane/points.ts'
import { type Plane, Subdivision, subdivide } from '../plane/subdivide.ts'
import type { Laid } from './lay.ts'

/** The plane of a block that is looked at once. */
export const planeOf = (laid: Laid): Plane => subdivide(cornersOf(laid), blockOutline(laid))

/** The plane of the units alone, within the outline of the grid: where borders are on, they hide what lies beyond it. */
export const gridPlaneOf = (laid: Laid): Plane => subdivide(cornersOf({ patches: laid.patches.filter(({ unit }) => unit >= 0) }), gridOutline(laid))

/** The same as a plane that can follow edits of the block. */
export const editablePlaneOf = (laid: Laid): Subdivision => new Subdivision(cornersOf(laid), blockOutline(laid))

const cornersOf = ({ patches }: Pick<Laid, 'patches'>): (readonly Dot[])[] => patches.map(({ corners }) => corners)

/** The corners of the block with its borders on, clockwise from the top left, in steps. */
function blockOutline({ borders, den, width, height }: Laid): Dot[] {
  const out = borders * den
  return [
    [-out, -out],
    [width + out, -out],
    [width + out, height + out],
    [-out, height + out],
  ]
}

const gridOutline = ({ width, height }: Laid): Dot[] => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
]
