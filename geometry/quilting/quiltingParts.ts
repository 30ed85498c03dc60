/**
 * The quilting of a large block part by part: no eye follows a line of hundreds of legs.
 *
 * In      a block as laid and its plane.
 * Out     the block's rectangle in parts, each with the route along its own seams, the part nearest the middle first; positions in cells,
 *         lengths in the measure's unit. Every seam belongs to exactly one part.
 * How     the rectangle is halved, across its longer side, until each part has few legs. It is cut where the fewest seams lie across the cut, near
 *         the middle; a seam on the cut goes to the part before it, and one across it to the part that holds its middle.
 * Source  start in the middle and work out [S167].
 */
import type { Laid } from '../block/lay.ts'
import type { Dot } from '../plane/points.ts'
import type { Plane } from '../plane/subdivide.ts'
import type { Ditch } from '../values/report.ts'
import { legsOf } from './numberedStops.ts'
import { quiltSeams, stitchedSeams } from './quiltingRoute.ts'
import type { Segment } from './seamGraph.ts'
import { routeLines } from './stitchedLines.ts'

/** Left, top, right and bottom. */
type PartBox = readonly [number, number, number, number]

export interface QuiltingPart {
  readonly box: PartBox
  readonly ditch: Ditch
}

/** Legs that are still followed on one picture as wide as a page, and on the smaller one of a part. */
export const MOST_LEGS = 60
const MOST_PART_LEGS = 36

export function quiltingParts(laid: Laid, plane: Plane): QuiltingPart[] {
  const found = split(laid, stitchedSeams(laid, plane), [0, 0, laid.width, laid.height])
  const away = ([left, top, right, bottom]: PartBox): number => Math.hypot(left + right - laid.width, top + bottom - laid.height)
  return found
    .sort((a, b) => away(a.box) - away(b.box))
    .map(({ box: [left, top, right, bottom], ditch }) => ({
      box: [left / laid.den, top / laid.den, right / laid.den, bottom / laid.den] as const,
      ditch,
    }))
}

/** In steps. */
function split(laid: Laid, seams: readonly Segment[], box: PartBox): QuiltingPart[] {
  if (seams.length === 0) return []
  // A leg passes few pieces of seam, so a route along very many is not worth looking for.
  if (seams.length <= 3 * MOST_PART_LEGS) {
    const ditch = quiltSeams(laid, seams)
    if (legsOf(routeLines(ditch)).length <= MOST_PART_LEGS) return [{ box, ditch }]
  }
  const cut = bestCut(seams, box)
  if (cut === null) return [{ box, ditch: quiltSeams(laid, seams) }]
  const { axis, at } = cut
  const before = (seam: Segment): boolean => (seam[0][axis] + seam[1][axis]) / 2 <= at
  const boxes = axis === 0 ? ([withSide(box, 2, at), withSide(box, 0, at)] as const) : ([withSide(box, 3, at), withSide(box, 1, at)] as const)
  return [
    ...split(laid, seams.filter(before), boxes[0]),
    ...split(
      laid,
      seams.filter((seam) => !before(seam)),
      boxes[1],
    ),
  ]
}

const withSide = (box: PartBox, side: number, at: number): PartBox => box.map((value, place) => (place === side ? at : value)) as unknown as PartBox

/** Part of a side, from either end, where it is not cut. */
const RIM = 0.3

/** Where the fewest seams lie across, then nearest the middle; the longer side first. Null where there is no place that leaves seams on both. */
function bestCut(seams: readonly Segment[], [left, top, right, bottom]: PartBox): { axis: 0 | 1; at: number } | null {
  const axes = right - left >= bottom - top ? ([0, 1] as const) : ([1, 0] as const)
  for (const axis of axes) {
    const [from, to] = axis === 0 ? [left, right] : [top, bottom]
    const middle = (from + to) / 2
    const spans = seams.map((seam) => [Math.min(seam[0][axis], seam[1][axis]), Math.max(seam[0][axis], seam[1][axis])] as const)
    const inside = [...new Set(seams.flatMap((seam: readonly Dot[]) => seam.map((dot) => dot[axis])))].filter((at) => from < at && at < to)
    const central = inside.filter((at) => Math.abs(at - middle) <= (0.5 - RIM) * (to - from))
    const places = (central.length > 0 ? central : inside).filter((at) => spans.some(([low, high]) => low + high > 2 * at))
    const across = new Map(places.map((at) => [at, spans.filter(([low, high]) => low < at && at < high).length]))
    const best = places.sort(
      (a, b) => (across.get(a) as number) - (across.get(b) as number) || Math.abs(a - middle) - Math.abs(b - middle) || a - b,
    )[0]
    if (best !== undefined && spans.some(([low, high]) => low + high <= 2 * best)) return { axis, at: best }
  }
  return null
}
