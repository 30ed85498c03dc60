/**
 * What a maker should know of a plan that can be sewn.
 *
 * In      the sewn block and its plan.
 * Out     problems that are no errors: seams that are not straight, the maker's pressing requests that were skipped, and seams of matching units
 *         that are fixed in different ways. Places in cells.
 */
import type { Seam } from '../piecing/values.ts'
import type { Dot } from '../plane/points.ts'
import type { PlaneEdge } from '../plane/subdivide.ts'
import { edgeBetween } from '../pressing/meet.ts'
import type { PressedPlan } from '../pressing/plan.ts'
import type { Problem, ReportPoint } from '../values/report.ts'
import { unitIds } from './layoutFaults.ts'
import type { Sewing } from './sewing.ts'
import { message } from '../values/messages.ts'

export function sewingProblems(sewing: Sewing, plan: PressedPlan): Problem[] {
  return [...crookedSeams(sewing, plan), ...passedOver(sewing, plan), ...conflicts(sewing, plan)]
}

function crookedSeams(sewing: Sewing, { seams }: PressedPlan): Problem[] {
  return seams.flatMap((seam): Problem[] => {
    if (seam.kind === 'straight') return []
    const reason = message(seam.kind === 'partial' ? 'seam-partial' : 'seam-set-in')
    const at = placeOf(sewing, seam.path[seam.bends[0] ?? 0] as number)
    return [{ code: 'not-straight', at, units: unitsBeside(sewing, seam), message: reason }]
  })
}

function passedOver({ laid }: Sewing, plan: PressedPlan): Problem[] {
  return plan.passedOver.map(({ entry, reason }): Problem => {
    const word = laid.block.press?.[entry]
    return { code: 'press', at: (word?.at ?? [0, 0]) as ReportPoint, units: [], message: message('press-not-kept', { reason }) }
  })
}

/** Matching seams of matching units that are fixed in different ways. */
function conflicts(sewing: Sewing, { seams, matched }: PressedPlan): Problem[] {
  return (matched?.shared.conflicting ?? []).map((seam): Problem => {
    const { path, unit } = seams[seam] as Seam
    return {
      code: 'press',
      at: placeOf(sewing, path[0] as number),
      units: unitIds(sewing.laid, [unit]),
      message: message('press-alike-differs'),
    }
  })
}

const placeOf = ({ laid, plane }: Sewing, dot: number): ReportPoint => laid.places.written(plane.dots[dot] as Dot)

/** Ids of the units whose patches lie along a seam. */
function unitsBeside({ laid, plane }: Sewing, { path }: Seam): string[] {
  const patches = path.slice(1).flatMap((dot, place) => {
    const { plus, minus } = plane.edges[edgeBetween(plane, path[place] as number, dot)] as PlaneEdge
    return [plus, minus]
  })
  return unitIds(
    laid,
    patches.sort((a, b) => a - b).map((patch) => laid.patches[patch]?.unit ?? -1),
  )
}
