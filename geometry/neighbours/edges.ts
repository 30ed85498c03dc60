/**
 * What the block shows its neighbours: the seam ends on its four edges.
 *
 * In      the seam ends left on the outline, how each seam is pressed, and where dots truly lie.
 * Out     ends by distance in cells from each edge's start, going clockwise; +1 where the allowances lie further along, −1 where they lie back.
 */
import type { Laid } from '../block/lay.ts'
import { realX, realY } from '../block/lay.ts'
import { type Rational, subtract, toFile, toNumber } from '../exact/rational.ts'
import type { Dot } from '../plane/dots.ts'
import type { Plane } from '../plane/subdivide.ts'
import { leanToSide0 } from '../pressing/meet.ts'
import type { SeamEnd, Toward } from '../pressing/values.ts'
import type { EdgeEnd, Edges } from '../values.ts'

interface Side {
  readonly name: keyof Edges
  /** The clockwise direction along it. */
  readonly along: readonly [number, number]
  readonly holds: (dot: Dot) => boolean
  readonly distance: (dot: Dot) => Rational
}

export function edgesOf(laid: Laid, plane: Plane, loose: ReadonlyMap<number, readonly SeamEnd[]>, toward: readonly Toward[]): Edges {
  const out = laid.borders * laid.den
  const [left, top, right, bottom] = [-out, -out, laid.width + out, laid.height + out]
  const open = ([x, y]: Dot, upright: boolean): boolean => (upright ? y > top && y < bottom : x > left && x < right)
  const sides: Side[] = [
    { name: 'top', along: [1, 0], holds: (d) => d[1] === top && open(d, false), distance: (d) => subtract(realX(laid, d[0]), realX(laid, left)) },
    { name: 'right', along: [0, 1], holds: (d) => d[0] === right && open(d, true), distance: (d) => subtract(realY(laid, d[1]), realY(laid, top)) },
    {
      name: 'bottom',
      along: [-1, 0],
      holds: (d) => d[1] === bottom && open(d, false),
      distance: (d) => subtract(realX(laid, right), realX(laid, d[0])),
    },
    { name: 'left', along: [0, -1], holds: (d) => d[0] === left && open(d, true), distance: (d) => subtract(realY(laid, bottom), realY(laid, d[1])) },
  ]
  const edges: Record<keyof Edges, (EdgeEnd & { place: number })[]> = { top: [], right: [], bottom: [], left: [] }
  for (const [dot, ends] of loose) {
    const place = plane.dots[dot] as Dot
    const side = sides.find(({ holds }) => holds(place))
    if (side === undefined) continue
    const at = side.distance(place)
    for (const end of ends) edges[side.name].push({ at: toFile(at), lean: leanOf(side, end, toward), angle: angleOf(side, end), place: toNumber(at) })
  }
  const sorted = (name: keyof Edges): EdgeEnd[] =>
    edges[name].sort((a, b) => a.place - b.place || a.angle - b.angle).map(({ at, lean, angle }) => ({ at, lean, angle }))
  return { top: sorted('top'), right: sorted('right'), bottom: sorted('bottom'), left: sorted('left') }
}

function leanOf({ along }: Side, end: SeamEnd, toward: readonly Toward[]): -1 | 0 | 1 {
  const way = toward[end.seam]
  if (way === 'open') return 0
  const lean = leanToSide0(along, end)
  return way === 0 ? lean : lean === 1 ? -1 : 1
}

function angleOf({ along: [ex, ey] }: Side, { dx, dy }: SeamEnd): number {
  return (Math.atan2(ex * dy - ey * dx, ex * dx + ey * dy) * 180) / Math.PI
}
