/**
 * How a seam that bends is sewn: which piece has the inner corner, where its allowance is clipped, and which earlier seam must stop short of it.
 *
 * In      a set-in seam, and what its two sides are called.
 * Out     sentences, in the order of doing.
 * Source  stop at the seam line with the needle down [S104][S105]; clipping an inner corner: common practice, no source.
 */
import type { Join, ReportPoint } from '../../values/report.ts'
import { inWords } from '../../words/englishPhrases.ts'
import { type BookletContext, type MeasuredPatch, joinsIn, patchesIn, spotOf } from './bookletContext.ts'
import { vectorLength, minus } from './pieceDrawing.ts'
import type { Spot } from './values.ts'

const NEAR = 1e-6

/** How to sew a set-in seam; `names` is what its two sides are called, in the join's order. */
export function setInSentences(join: Join, names: readonly [string, string], context: BookletContext): string[] {
  const host = hostOf(join, context)
  const [into, set] = [names[host], names[host === 0 ? 1 : 0]]
  const { seamText } = context
  const bends = join.via.length
  if (bends === 0)
    return [
      `Sew ${set} to ${into}. The seam ends in a corner: mark it on the wrong side of both pieces, ${seamText} from both edges. Sew up to the mark, not a stitch further. Secure both ends.`,
    ]
  const corners = bends > 1 ? inWords(bends, 'corner') : 'corner'
  return [
    `Set ${set} into ${into}. On the wrong side of both pieces, mark the ${corners} where the seam turns, ${seamText} from both edges.`,
    ...readied(join, host, into, context),
    `Sew up to ${bends > 1 ? 'each' : 'the'} mark, not a stitch further, and stop with the needle down. Lift the presser foot, bring the next edges together, and sew on. Secure both ends.`,
  ]
}

/** The inner corner must open: one patch is clipped there, and a seam that runs into it may not be sewn beyond the mark. */
function readied(join: Join, host: 0 | 1, into: string, context: BookletContext): string[] {
  const patches = patchesIn(context, join.sides[host])
  const inner = join.via.map((at) => spotOf(context, at)).filter((spot) => angleOf(patches, spot) > Math.PI + NEAR)
  const [whole, seamed] = [inner.filter((spot) => touching(patches, spot) === 1), inner.filter((spot) => touching(patches, spot) > 1)]
  return [
    ...(whole.length === 0
      ? []
      : [
          `Clip the seam allowance of ${into} at ${whole.length > 1 ? 'each inner corner' : 'its inner corner'}, to a thread short of the mark, not through it.`,
        ]),
    ...(seamed.length === 0 ? [] : [`The seam of ${into} that runs into the corner must end at the mark: unpick any stitches beyond it.`]),
  ]
}

/** Said where a seam is sewn that runs into an inner corner of a later one. */
export function stopShort(joins: readonly Join[], context: BookletContext): string[] {
  const later = context.report.joins.filter(({ kind, via }) => kind === 'set-in' && via.length > 0)
  const stops = joins.some((join) => join.kind === 'straight' && later.some((setIn) => runsInto(join, setIn, context)))
  return stops ? [`At the end where a corner will be set in later, stop ${context.seamText} before the edge and secure the stitches.`] : []
}

function runsInto(join: Join, setIn: Join, context: BookletContext): boolean {
  const host = setIn.sides[hostOf(setIn, context)]
  const ends = setIn.via.some((at) => [join.from, join.to].some((end) => isSame(at, end)))
  return ends && joinsIn(context, host).some(({ id }) => id === join.id)
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
