/**
 * How a seam that bends is sewn: which piece has the inner corner, where its allowance is clipped, and which earlier seam must stop short of it.
 *
 * In      a set-in seam, and what its two sides are called.
 * Out     sentences, in the order of doing.
 * Source  stop at the seam line with the needle down [S104][S105]; clipping an inner corner: common practice, no source.
 */
import type { Join, ReportPoint } from '../../values/report.ts'
import { type BookletContext, type MeasuredPatch, patchesIn, spotOf } from './bookletContext.ts'
import { vectorLength, minus } from './pieceDrawing.ts'
import type { Spot } from './values.ts'

const NEAR = 1e-6

/** How to sew a set-in seam; `names` is what its two sides are called, in the join's order. */
export function setInSentences(join: Join, names: readonly [string, string], context: BookletContext): string[] {
  const words = context.say.join
  const host = hostOf(join, context)
  const [into, piece] = [names[host], names[host === 0 ? 1 : 0]]
  const { seamText } = context
  const bends = join.via.length
  if (bends === 0) return [words.setInEnd(piece, into, seamText)]
  return [words.setIn({ piece, into, corners: bends, seam: seamText }), ...readied(join, host, into, context), words.pivot(bends > 1)]
}

/** The inner corner must open: one patch is clipped there, and a seam that runs into it may not be sewn beyond the dot. */
function readied(join: Join, host: 0 | 1, into: string, context: BookletContext): string[] {
  const words = context.say.join
  const patches = patchesIn(context, join.sides[host])
  const inner = join.via.map((at) => spotOf(context, at)).filter((spot) => angleOf(patches, spot) > Math.PI + NEAR)
  const [whole, seamed] = [inner.filter((spot) => touching(patches, spot) === 1), inner.filter((spot) => touching(patches, spot) > 1)]
  return [...(whole.length === 0 ? [] : [words.clipCorner(into, whole.length > 1)]), ...(seamed.length === 0 ? [] : [words.seamEndsAtDot(into)])]
}

/** Said where seams are sewn that reach a corner which is set in later: each of them stops there. */
export function stopShort(joins: readonly Join[], context: BookletContext): string[] {
  const most = Math.max(0, ...joins.map((join) => laterBends(join, context).length))
  return most === 0 ? [] : [context.say.join.stopAtDot(most, context.seamText)]
}

/** The ends of a seam at which a later seam bends, or ends inside: it is sewn up to a dot there, not to the edge. */
function laterBends(join: Join, { report }: BookletContext): ReportPoint[] {
  const later = report.joins.slice(report.joins.indexOf(join) + 1).filter(({ kind }) => kind === 'set-in')
  const stops = later.flatMap(({ via, from, to }) => (via.length > 0 ? via : [from, to]))
  return [join.from, join.to].filter((end) => stops.some((stop) => isSame(stop, end)))
}

/** Where the sewing of a seam starts, stops or turns short of an edge: its bends, the ends that stop short, and its end in a corner. */
export function dotsOf(join: Join, context: BookletContext): Spot[] {
  const corner = join.kind === 'set-in' && join.via.length === 0 ? [join.from, join.to].filter((end) => isInside(end, context)) : []
  const all = [...(join.kind === 'set-in' ? join.via : []), ...laterBends(join, context), ...corner]
  return [...new Map(all.map((at) => [String(at), spotOf(context, at)])).values()]
}

/** Not on the outside of the block. */
function isInside(at: ReportPoint, context: BookletContext): boolean {
  const [x, y] = spotOf(context, at)
  const [wide, high] = context.report.block.finished
  return x > NEAR && y > NEAR && x < wide - NEAR && y < high - NEAR
}

const isSame = (a: ReportPoint, b: ReportPoint): boolean => String(a[0]) === String(b[0]) && String(a[1]) === String(b[1])

/** The side whose cloth fills more than a half turn round the first bend: the other has the corner that is set into it. */
function hostOf({ sides, via }: Join, context: BookletContext): 0 | 1 {
  const bend = via[0]
  if (bend === undefined) return 1
  return angleOf(patchesIn(context, sides[0]), spotOf(context, bend)) > Math.PI + NEAR ? 0 : 1
}

const touching = (patches: readonly MeasuredPatch[], spot: Spot): number => patches.filter(({ corners }) => cornerAngle(corners, spot) > 0).length

const angleOf = (patches: readonly MeasuredPatch[], spot: Spot): number => patches.reduce((sum, { corners }) => sum + cornerAngle(corners, spot), 0)

/** Inside a polygon drawn clockwise with y down; a half turn on one of its sides, nothing where it does not reach. */
function cornerAngle(corners: readonly Spot[], spot: Spot): number {
  const at = corners.findIndex((corner) => vectorLength(minus(corner, spot)) < NEAR)
  if (at < 0) return onSide(corners, spot) ? Math.PI : 0
  const toward = (corner: Spot): number => Math.atan2(corner[1] - spot[1], corner[0] - spot[0])
  const turn = toward(corners.at(at - 1) as Spot) - toward(corners[(at + 1) % corners.length] as Spot)
  return (turn + 2 * Math.PI) % (2 * Math.PI)
}

const onSide = (corners: readonly Spot[], spot: Spot): boolean =>
  corners.some((a, index) => {
    const b = corners[(index + 1) % corners.length] as Spot
    return Math.abs(vectorLength(minus(spot, a)) + vectorLength(minus(b, spot)) - vectorLength(minus(b, a))) < NEAR
  })
