/**
 * How thick the fabric lies where seams meet.
 *
 * In      a pressed plan and its folds.
 * Out     for a clash: the layers there as pressed, and with one of its seams pressed the other way so that it nests; where four square
 *         seams nest: that they can be fanned, with the layers before and after. Otherwise nothing.
 */
import { patient } from '../../plane/convex.ts'
import type { Dot } from '../../plane/points.ts'
import type { Plane } from '../../plane/subdivide.ts'
import type { Meeting } from '../../values/report.ts'
import { layersNear } from './countLayers.ts'
import { verdictOf } from '../nesting.ts'
import type { Folds } from './folds.ts'
import type { PressedPlan } from '../plan.ts'
import { canFan, FANNED_LAYERS, NESTED_LAYERS } from '../fan.ts'
import type { Crossing, Toward } from '../values.ts'

/** The most clashes whose layers are counted: a block with more has other problems first. */
const MOST_CLASHES = 100

export class Thickness {
  private readonly plane: Plane
  private readonly plan: PressedPlan
  private readonly folds: Folds
  private clashes = 0
  /** For all clashes together. */
  private readonly patience = patient()

  constructor(plane: Plane, plan: PressedPlan, folds: Folds) {
    this.plane = plane
    this.plan = plan
    this.folds = folds
  }

  at(crossing: Crossing): Pick<Meeting, 'spin' | 'layers'> {
    const { toward } = this.plan.pressed
    const verdict = verdictOf(crossing, toward)
    if (verdict === 'nests' && canFan(this.plane, this.plan, this.folds, crossing))
      return { spin: true, layers: { now: NESTED_LAYERS, fanned: FANNED_LAYERS } }
    if (verdict !== 'clashes' || this.clashes++ >= MOST_CLASHES) return {}
    const here = this.folds.laid.places.cells(this.plane.dots[crossing.dot] as Dot)
    const layers = (ways: readonly Toward[]): number => layersNear(this.folds, ways, here, this.patience) ?? Number.NaN
    const nested = Math.min(...crossing.seams.map((seam) => layers(toward.map((way, index) => (index === seam ? (way === 0 ? 1 : 0) : way)))))
    const now = layers(toward)
    return Number.isNaN(now + nested) ? {} : { layers: { now, nested } }
  }
}
