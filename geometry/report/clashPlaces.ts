/**
 * How many clashes lie at each place of a block, to compare it before and after a fix.
 *
 * In      a laid block, its plane and a pressed plan.
 * Out     counts by place, in cells, so that places compare equal however finely a cell is divided into steps.
 */
import type { Laid } from '../block/lay.ts'
import type { Dot } from '../plane/points.ts'
import type { Plane } from '../plane/subdivide.ts'
import type { PressedPlan } from '../pressing/plan.ts'
import type { Crossing } from '../pressing/values.ts'

export type ClashPlaces = ReadonlyMap<string, number>

export function clashPlaces(laid: Laid, plane: Plane, { met, pressed }: PressedPlan): ClashPlaces {
  const counts = new Map<string, number>()
  for (const index of pressed.clashing) {
    const place = clashPlace(laid, plane, met.crossings[index] as Crossing)
    counts.set(place, (counts.get(place) ?? 0) + 1)
  }
  return counts
}

/** The place of a crossing as a text, in cells. */
export function clashPlace({ den }: Laid, plane: Plane, { dot }: Crossing): string {
  const [x, y] = plane.dots[dot] as Dot
  return `${x / den},${y / den}`
}

/** Whether there are fewer clashes at a place than before, and no new ones elsewhere. */
export function isFixed(before: ClashPlaces, after: ClashPlaces, place: string): boolean {
  if ((after.get(place) ?? 0) >= (before.get(place) ?? 0)) return false
  return [...after].every(([other, count]) => count <= (before.get(other) ?? 0))
}
