/**
 * How a block can be turned or mirrored onto itself, whatever its fabrics.
 *
 * In      a laid block.
 * Out     for each way, the patch that each patch moves onto; the groups of ways; the sets of patches that move onto one another.
 * Exact   outlines are compared as whole numbers. Where two patches with the same outline overlap, only the way that changes nothing is found.
 */
import type { Laid } from '../block/lay.ts'
import type { Dot } from '../plane/points.ts'

/** A turn or mirror about the middle of the grid: x′ = ax + by, y′ = cx + dy. */
type Matrix = readonly [number, number, number, number]

const WAYS = {
  same: [1, 0, 0, 1],
  'quarter turn': [0, -1, 1, 0],
  'half turn': [-1, 0, 0, -1],
  'quarter turn back': [0, 1, -1, 0],
  'left for right': [-1, 0, 0, 1],
  'top for bottom': [1, 0, 0, -1],
  'about the falling diagonal': [0, 1, 1, 0],
  'about the rising diagonal': [0, -1, -1, 0],
} as const satisfies Record<string, Matrix>

type Way = keyof typeof WAYS

export interface Symmetry {
  readonly way: Way
  /** The patch that each patch is mapped to. Patches of units only: they come first. */
  readonly to: readonly number[]
}

/** Every way; the identity comes first. */
export function symmetriesOf(laid: Laid): Symmetry[] {
  const own = laid.patches.filter(({ unit }) => unit >= 0)
  const places = new Map(own.map(({ corners }, patch) => [outline(corners, false), patch]))
  return (Object.keys(WAYS) as Way[]).flatMap((way): Symmetry[] => {
    const [a, b, c, d] = WAYS[way]
    if (a === 0 && laid.width !== laid.height) return []
    const mirrors = a * d - b * c < 0
    const [ox, oy] = [a + b < 0 ? laid.width : 0, c + d < 0 ? laid.height : 0]
    const to = own.map(({ corners }) =>
      places.get(
        outline(
          corners.map(([x, y]): Dot => [a * x + b * y + ox, c * x + d * y + oy]),
          mirrors,
        ),
      ),
    )
    if (way === 'same') return [{ way, to: own.map((_, patch) => patch) }]
    return places.size === own.length && to.every((patch) => patch !== undefined) ? [{ way, to }] : []
  })
}

/** Corners clockwise from the leftmost one; from the topmost of several. */
function outline(corners: readonly Dot[], mirrored: boolean): string {
  const round = mirrored ? [...corners].reverse() : corners
  const first = round.reduce((best, [x, y], at) => {
    const [bx, by] = round[best] as Dot
    return x < bx || (x === bx && y < by) ? at : best
  }, 0)
  return [...round.slice(first), ...round.slice(0, first)].join()
}

/** Every group of the ways, the largest first; where two are as large, turns before mirrors. */
export function groupsOfWays(ways: readonly Symmetry[]): (readonly Symmetry[])[] {
  const found = new Map<string, readonly Symmetry[]>()
  for (const one of ways)
    for (const other of ways) {
      const group = closed(ways, [one, other])
      found.set(group.map(({ way }) => way).join(), group)
    }
  const mirrors = (group: readonly Symmetry[]): number => group.filter(({ way }) => / for |about/.test(way)).length
  return [...found.values()].sort((one, other) => other.length - one.length || mirrors(one) - mirrors(other))
}

function closed(ways: readonly Symmetry[], makers: readonly Symmetry[]): readonly Symmetry[] {
  const names = new Set<Way>(['same', ...makers.map(({ way }) => way)])
  for (const one of names) for (const other of names) names.add(after(one, other))
  return ways.filter(({ way }) => names.has(way))
}

function after(one: Way, other: Way): Way {
  const [a, b, c, d] = WAYS[one]
  const [e, f, g, h] = WAYS[other]
  const both = [a * e + b * g, a * f + b * h, c * e + d * g, c * f + d * h].join()
  return (Object.keys(WAYS) as Way[]).find((way) => WAYS[way].join() === both) as Way
}

/** Sets of patches that the ways move onto one another, each in the order of the patches. */
export function orbitsOf(ways: readonly Symmetry[], patches: readonly number[]): number[][] {
  const wanted = new Set(patches)
  const seen = new Set<number>()
  return patches.flatMap((patch) => {
    if (seen.has(patch)) return []
    const orbit = [...new Set(ways.map(({ to }) => to[patch] as number))].filter((one) => wanted.has(one)).sort((a, b) => a - b)
    for (const one of orbit) seen.add(one)
    return [orbit]
  })
}
