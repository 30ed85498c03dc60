/**
 * Units that may be turned or mirrored without changing the picture: then their seams run otherwise, and a clash may be gone.
 *
 * In      the laid block, the pressed plan and one of its clashes.
 * Out     a fix for each such turning that takes the clash away and makes no other.
 * How     a turning is tried, not guessed: the block with the unit turned is laid, sewn and pressed anew. Only in blocks small enough to do so at once.
 */
import type { Laid } from '../block/lay.ts'
import type { Block, BoxUnit, Turn, Unit } from '../values/block.ts'
import type { Dot } from '../plane/points.ts'
import type { Plane } from '../plane/subdivide.ts'
import { sewnOf, viewOf } from '../units/unitPicture.ts'
import type { Fix } from '../values/report.ts'
import type { PressedPlan } from './plan.ts'
import type { Crossing } from './values.ts'

/** Units in a block, and turnings tried in it. */
const MOST_UNITS = 64
const MOST_TRIES = 12

/** How many clashes lie at each place, in cells. */
export type Clashes = ReadonlyMap<string, number>

/** The clashes of a block once it is sewn and pressed; null where it cannot be sewn. */
export type ClashesOf = (block: Block) => Clashes | null

export class Turns {
  private readonly laid: Laid
  private readonly plane: Plane
  private readonly clashesOf: ClashesOf
  private readonly tried = new Map<string, Clashes | null>()
  private readonly before: Clashes

  constructor(laid: Laid, plane: Plane, plan: PressedPlan, clashesOf: ClashesOf) {
    this.laid = laid
    this.plane = plane
    this.clashesOf = clashesOf
    this.before = clashesIn(laid, plane, plan)
  }

  fixes(crossing: Crossing, unit: number): Fix[] {
    const { units } = this.laid.block
    const own = units[unit]
    if (own === undefined || own.kind === 'polygon' || units.length > MOST_UNITS) return []
    return sameView(own).flatMap(({ turn, mirror }): Fix[] => {
      const key = `${unit} ${turn} ${mirror}`
      if (!this.tried.has(key)) {
        if (this.tried.size >= MOST_TRIES) return []
        const turned = units.map((one, index): Unit => (index === unit ? { ...own, turn, mirror } : one))
        this.tried.set(key, this.clashesOf({ ...this.laid.block, units: turned }))
      }
      const there = this.tried.get(key) ?? null
      if (there === null || !mends(this.before, there, clashPlace(this.laid, this.plane.dots[crossing.dot] as Dot))) return []
      const message = `Sew ${own.id} ${mirror === (own.mirror === true) ? 'turned' : 'as its mirror image'}: the picture stays, its seams run the other way.`
      return [{ do: 'turn', what: own.id, message, turn, mirror }]
    })
  }
}

/** Other turnings of a unit that show the same view and are sewn otherwise. */
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

/** Whether what clashed at a place clashes there no more, or less, and nothing clashes elsewhere that did not. */
export function mends(before: Clashes, after: Clashes, place: string): boolean {
  if ((after.get(place) ?? 0) >= (before.get(place) ?? 0)) return false
  return [...after].every(([other, count]) => count <= (before.get(other) ?? 0))
}

export function clashesIn(laid: Laid, plane: Plane, { met, pressed }: PressedPlan): Clashes {
  const counts = new Map<string, number>()
  for (const index of pressed.clashing) {
    const place = clashPlace(laid, plane.dots[(met.crossings[index] as Crossing).dot] as Dot)
    counts.set(place, (counts.get(place) ?? 0) + 1)
  }
  return counts
}

/** A dot in cells, the same whatever the steps of the plane. */
export const clashPlace = ({ den }: Laid, [x, y]: Dot): string => `${x / den},${y / den}`
