/**
 * Units that may be turned or mirrored without changing the picture: then their seams run differently, and a clash may disappear.
 *
 * In      the laid block, its plane, the pressed plan, one of its clashes; and the way to sew a changed block.
 * Out     a fix for each such turning that removes the clash and adds no other.
 * How     a turning is tried, not guessed: the pipeline runs on the block with the unit turned. Only in blocks small enough to do so at once.
 */
import type { Laid } from '../block/lay.ts'
import { unitPlaces } from '../block/unitPlaces.ts'
import type { Plane } from '../plane/subdivide.ts'
import type { PressedPlan } from '../pressing/plan.ts'
import type { Crossing } from '../pressing/values.ts'
import { sewnOf, viewOf } from '../units/unitPicture.ts'
import type { Block, BoxUnit, Turn, Unit } from '../values/block.ts'
import type { Fix } from '../values/report.ts'
import { type ClashPlaces, clashPlace, clashPlaces, isFixed } from './clashPlaces.ts'
import type { Sewing } from './sewing.ts'
import { message } from '../values/messages.ts'

/** The most units in a block, and the most turnings tried in it. */
const MOST_UNITS = 64
const MOST_TRIES = 12

export type SewBlock = (block: Block) => Sewing

export class UnitTurns {
  private readonly laid: Laid
  private readonly plane: Plane
  private readonly sewBlock: SewBlock
  private readonly before: ClashPlaces
  private readonly tried = new Map<string, ClashPlaces | null>()

  constructor(laid: Laid, plane: Plane, plan: PressedPlan, sewBlock: SewBlock) {
    this.laid = laid
    this.plane = plane
    this.sewBlock = sewBlock
    this.before = clashPlaces(laid, plane, plan)
  }

  /** `unit`: the place of the unit in the block's list; −1 for none. */
  fixes(crossing: Crossing, unit: number): Fix[] {
    const { units } = this.laid.block
    const own = units[unit]
    if (own === undefined || own.kind === 'polygon' || units.length > MOST_UNITS) return []
    return sameView(own).flatMap(({ turn, mirror }): Fix[] => {
      const after = this.clashesWith(unit, { ...own, turn, mirror })
      if (after === null || !isFixed(this.before, after, clashPlace(this.laid, this.plane, crossing))) return []
      const reason = message(mirror === (own.mirror === true) ? 'sew-turned' : 'sew-mirrored', { unit: unitPlaces(this.laid.block)(own.id) })
      return [{ do: 'turn', what: own.id, message: reason, turn, mirror }]
    })
  }

  /** The clashes with one unit exchanged; null where the block cannot be sewn then, or enough has been tried. */
  private clashesWith(place: number, unit: BoxUnit): ClashPlaces | null {
    const key = `${place} ${unit.turn} ${unit.mirror}`
    if (!this.tried.has(key)) {
      if (this.tried.size >= MOST_TRIES) return null
      const { block } = this.laid
      const units = block.units.map((one, index): Unit => (index === place ? unit : one))
      const { laid, plane, plans } = this.sewBlock({ ...block, units })
      this.tried.set(key, plans === null ? null : clashPlaces(laid, plane, plans.taken))
    }
    return this.tried.get(key) ?? null
  }
}

/** Other turnings of a unit that show the same view but are sewn differently. */
function sameView(unit: BoxUnit): { turn: Turn; mirror: boolean }[] {
  const [view, sewn] = [viewOf(unit), sewnOf(unit)]
  const [w, h] = unit.size
  const turns: readonly Turn[] = String(w) === String(h) ? [0, 1, 2, 3] : (unit.turn ?? 0) % 2 === 0 ? [0, 2] : [1, 3]
  return [false, true].flatMap((mirror) =>
    turns.flatMap((turn) => {
      if (turn === (unit.turn ?? 0) && mirror === (unit.mirror === true)) return []
      const other = { ...unit, turn, mirror }
      return viewOf(other) === view && sewnOf(other) !== sewn ? [{ turn, mirror }] : []
    }),
  )
}
