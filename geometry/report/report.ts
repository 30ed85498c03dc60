/**
 * The pipeline, written once: a block in, one report out.
 *
 *   lay → subdivide → plan → sew and meet → press: a `Sewing` (`sewBlock`)
 *   fixes, cutting, meetings, joins, edges: `findingsOf`
 *   ditch, the quilting route: `report` in `wholeReport.ts`
 *
 * A stage hands on what later ones need, and none calls an earlier one back. Two stages stand above planning: choosing a plan presses several, and
 * trying a fix runs the pipeline on a changed block. A layout that leaves a gap, overlaps or runs beyond the grid is not sewn: then everything
 * that needs joins is empty, and the rest is reported all the same.
 * Everything else in this room starts here: layers, settings, colours, and the findings that follow edits (the same stages, with a cache).
 */
import { gridPlaneOf, planeOf } from '../block/blockPlane.ts'
import { type Laid, lay } from '../block/lay.ts'
import { patchCount } from '../block/patchCount.ts'
import { cellOf, seamOf } from '../block/lengthsOf.ts'
import { cutList } from '../cutting/cutList.ts'
import { toNumber } from '../exact/rational.ts'
import { edgesOf } from '../neighbours/edges.ts'
import { shownEdges } from '../neighbours/looseEnds.ts'
import { repeatsOf } from '../piecing/matchingPieces.ts'
import { plan } from '../piecing/plan.ts'
import type { Plane } from '../plane/subdivide.ts'
import { foldsOf } from '../pressing/layers/folds.ts'
import { reduceBulk } from '../pressing/layers/reduceBulk.ts'
import type { PlanSewer, PressedPlan } from '../pressing/plan.ts'
import { pressFree, pressPlan } from '../pressing/pressPlan.ts'
import { hasRequests, withoutRequests } from '../pressing/pressRules.ts'
import { sewFromNothing } from '../pressing/sewPlan.ts'
import type { Block } from '../values/block.ts'
import type { Edges, Findings, Report } from '../values/report.ts'
import type { FindingsCache } from './findingsCache.ts'
import { fixesOf } from './fixes.ts'
import { joinId, joinsOf } from './joinRows.ts'
import { layoutFaults } from './layoutFaults.ts'
import { meetingsOf } from './meetingRows.ts'
import { patchesOf } from './patchRows.ts'
import { choosePlan } from './choosePlan.ts'
import { proofOf } from '../pressing/proof.ts'
import type { Depth, Plans, Sewing, SewingCache } from './sewing.ts'
import { sewingProblems } from './sewingProblems.ts'
import { sizesOf } from './pieceSizes.ts'
import { message } from '../values/messages.ts'

/** Everything but the quilting route, layers of fabric and matching pieces, which take too long for every edit. */
export const findings = (block: Block): Findings => findingsOf(sewBlock(block, 'quick'))

/**
 * From the block to its pressed plan.
 *
 * In      a block; how deep to go; the cache from the previous block, where it follows edits.
 * Out     everything that later stages read. `plans` is null where the layout cannot be sewn.
 */
export function sewBlock(block: Block, depth: Depth, cache: SewingCache | null = null): Sewing {
  const laid = cache === null ? lay(block) : cache.lay(block)
  const plane = cache === null ? planeOf(laid) : cache.subdivide(laid)
  // With borders on, the outline of the plane is not that of the grid.
  const faults = layoutFaults(laid, plane.faults.length === 0 || laid.borders === 0 ? plane.faults : gridPlaneOf(laid).faults)
  if (faults.length > 0) return { laid, plane, faults, depth, plans: null, layers: null }
  const plans = plansOf(laid, plane, cache === null ? sewFromNothing(laid, plane) : cache.sewer(laid))
  const sewing: Sewing = { laid, plane, faults, depth, plans, layers: null }
  return depth === 'quick' ? sewing : withLayers(sewing, plans.taken)
}

/** The plan taken and the others, compared by the methods' rules alone: what the maker presses her own way never changes the joins. */
function plansOf(laid: Laid, plane: Plane, sewer: PlanSewer): Plans {
  const pressing = new Map<PressedPlan, () => PressedPlan>()
  return choosePlan(laid, sewer.fingerprints, {
    byMethod(choice) {
      const planned = plan(laid, plane, choice, sewer.divisionContext(choice))
      const sewn = sewer.sew(planned, choice)
      if (!hasRequests(laid.block)) return pressPlan(laid, plane, planned, sewn)
      const plain = pressFree(planned, withoutRequests(laid, plane, sewn))
      pressing.set(plain, () => pressPlan(laid, plane, planned, sewn))
      return plain
    },
    byMaker: (plain) => pressing.get(plain)?.() ?? plain,
  })
}

/** With more patches than this, layers of fabric are not counted. */
const MOST_LAYERED = 12_000

/** Whether a block is small enough for its layers of fabric to be counted, if it can be sewn. */
export const hasLayers = (block: Block): boolean => patchCount(block) <= MOST_LAYERED

/** Adds the folded fabric of the chosen plan; where pressings are otherwise equal, one with less bulk is chosen. */
function withLayers(sewing: Sewing, taken: PressedPlan): Sewing {
  const { laid, plane, plans } = sewing
  if (plans === null || !hasLayers(laid.block)) return sewing
  const folds = foldsOf(laid, plane, taken)
  const reduced = reduceBulk(plane, taken, folds)
  return reduced === null ? sewing : { ...sewing, plans: { ...plans, taken: reduced.plan }, layers: { folds, thickest: reduced.thickest } }
}

/** With more patches than this, the fabric to buy is a quick answer, not proved to be the least. */
const PROVED_FABRIC = 20_000

/** The findings of a block, sewn or not. `cache`: rows from before an edit are kept where they are still right. */
export function findingsOf(sewing: Sewing, cache: FindingsCache | null = null): Findings {
  const { laid, faults, depth, plans } = sewing
  const { block } = laid
  const fabricDepth = depth === 'whole' && laid.patches.length <= PROVED_FABRIC ? 'proving' : 'quick'
  const cut = cutList(block, cache === null ? { depth: fabricDepth } : { depth: fabricDepth, cache: cache.cutList })
  return {
    format: 'nestwright.report',
    version: 1,
    measure: { unit: block.measure.unit, seam: toNumber(seamOf(block)) },
    block: { name: block.name, ...sizesOf(laid) },
    order: plans?.taken.name ?? (block.order === 'columns' || block.order === 'sections' ? block.order : 'rows'),
    problems: [...faults, ...(plans === null ? [] : sewingProblems(sewing, plans.taken)), ...cut.problems],
    patches: patchesOf(laid, toNumber(cellOf(block)), cache),
    ...(plans === null ? NOT_SEWN : sewnParts(sewing, plans.taken, plans.others, cache)),
    units: cut.units,
    cut: cut.cut,
    fabric: cut.fabric,
    cloth: cut.cloth,
    advice: cut.advice,
  }
}

type SewnParts = Pick<Report, 'joins' | 'pressing' | 'crooked' | 'repeats' | 'bulk' | 'meetings' | 'edges'>

/** The parts of the findings that need joins. */
function sewnParts(sewing: Sewing, taken: PressedPlan, others: readonly PressedPlan[], cache: FindingsCache | null): SewnParts {
  const { laid, plane, depth, layers } = sewing
  const { pressed, seams, proved } = taken
  const fixes = fixesOf(laid, plane, taken, others, (changed) => sewBlock(changed, 'quick'))
  return {
    joins: joinsOf(sewing, taken, cache),
    pressing: {
      clashes: pressed.clashes,
      against: pressed.against,
      proof: proofOf(taken),
      ...(pressed.atLeast < pressed.clashes ? { atLeast: pressed.atLeast } : {}),
    },
    crooked: {
      setIn: seams.filter(({ kind }) => kind === 'set-in').length,
      partial: seams.filter(({ kind }) => kind === 'partial').length,
      proved,
    },
    repeats: depth === 'quick' ? [] : repeatsOf(laid, seams).map((repeats) => repeats.map(joinId)),
    bulk: layers === null ? null : { most: layers.thickest.most, at: layers.thickest.at },
    meetings: meetingsOf(sewing, taken, fixes, cache),
    edges: edgesOf(shownEdges(laid, plane, taken.met.loose), pressed.toward),
  }
}

const NO_EDGES: Edges = { top: [], right: [], bottom: [], left: [] }
const NOT_SEWN: SewnParts = {
  joins: [],
  pressing: { clashes: 0, against: 0, proof: message('nothing-sewn') },
  crooked: { setIn: 0, partial: 0, proved: true },
  repeats: [],
  bulk: null,
  meetings: [],
  edges: NO_EDGES,
}
