/**
 * Among pressings equal in clashes and preferences, finds one with fewer layers at its thickest spot.
 *
 * In      a pressed plan and its folds.
 * Out     the plan, perhaps with some seams pressed the other way, and its thickest spot; null where the layers are too many to count.
 * How     at the thickest spot, each group of tied seams that runs there and may turn at no cost is tried the other way; a change that makes the thickest
 *         spot thinner, or less wide, is kept, until nothing helps or the budget is spent. The result is the best found, not proved to be the least.
 */
import { patient } from '../../plane/convex.ts'
import type { Dot } from '../../plane/points.ts'
import type { Plane } from '../../plane/subdivide.ts'
import { scorePressing } from '../press.ts'
import { blockBounds, type Thickest, thickest } from './countLayers.ts'
import { type SeamGroups, tiedSeams } from '../tiedSeams.ts'
import { type Folds, folded } from './folds.ts'
import type { PressedPlan } from '../plan.ts'
import type { Toward } from '../values.ts'

/** Patches folded over all tries. */
const BUDGET = 6_000

export function reduceBulk(plane: Plane, plan: PressedPlan, folds: Folds): { plan: PressedPlan; thickest: Thickest } | null {
  const groups = tiedSeams(plan.met.crossings, plan.constraints, plan.matched?.matching ?? null)
  const place = blockBounds(folds)
  let patience = patient()
  const weigh = (toward: readonly Toward[]): Thickest | null => {
    const plies = folded(folds, toward, null, patience)
    return plies === null ? null : thickest(plies, place, folds.allowance, patience)
  }
  let tries = Math.floor(BUDGET / folds.laid.patches.length)
  let toward = plan.pressed.toward
  let found = weigh(toward)
  if (found === null) return null
  // All tries together get the same budget again.
  patience = patient()
  for (let bettered = true; bettered; ) {
    bettered = false
    for (const group of freeGroupsAt(plane, plan, folds, groups, toward, found.at)) {
      if (tries-- <= 0) break
      const turned = turn(toward, group)
      const now = weigh(turned)
      if (now === null) break
      if (now.most > found.most || (now.most === found.most && now.spread > found.spread * (1 - 1e-6))) continue
      toward = turned
      found = now
      bettered = true
      break
    }
  }
  if (toward === plan.pressed.toward) return { plan, thickest: found }
  return { plan: { ...plan, pressed: scorePressing(plan.met.crossings, plan.constraints, toward) }, thickest: found }
}

function turn(toward: readonly Toward[], group: readonly number[]): readonly Toward[] {
  const ways = [...toward]
  for (const seam of group) ways[seam] = toward[seam] === 0 ? 1 : 0
  return ways
}

function freeGroupsAt(
  plane: Plane,
  { constraints, seams }: PressedPlan,
  { laid, allowance }: Folds,
  groups: SeamGroups,
  toward: readonly Toward[],
  [x, y]: readonly [number, number],
): (readonly number[])[] {
  const near = seams.flatMap(({ path }, seam) => {
    const dots = path.map((dot) => laid.places.cells(plane.dots[dot] as Dot))
    const reaches = dots.some((end, index) => index > 0 && away([x, y], dots[index - 1] as [number, number], end) < 2 * allowance)
    return reaches ? [groups.of[seam] as number] : []
  })
  return [...new Set(near)].map((group) => groups.members[group] as readonly number[]).filter((group) => mayTurn(group, constraints, toward))
}

/** Turning a whole group changes no meeting; it costs nothing where as many of its seams lie as preferred as do not. */
function mayTurn(group: readonly number[], constraints: PressedPlan['constraints'], toward: readonly Toward[]): boolean {
  if (group.some((seam) => constraints[seam]?.fixed !== null)) return false
  const wanted = group.filter((seam) => constraints[seam]?.preference !== null)
  return wanted.filter((seam) => constraints[seam]?.preference === toward[seam]).length * 2 === wanted.length
}

function away([x, y]: readonly [number, number], [ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]): number {
  const [dx, dy] = [bx - ax, by - ay]
  const along = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1)))
  return Math.hypot(x - ax - along * dx, y - ay - along * dy)
}
