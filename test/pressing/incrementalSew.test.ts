/** Sewing a plan again after an edit: the same as from nothing, and what the edit doesn't touch is kept and not made again. */
import { describe, expect, it } from 'vitest'
import { editablePlaneOf, planeOf } from '../../geometry/block/blockPlane.ts'
import { type Laid, lay } from '../../geometry/block/lay.ts'
import { plan } from '../../geometry/piecing/plan.ts'
import type { Plan, PlanChoice } from '../../geometry/piecing/values.ts'
import type { Subdivision } from '../../geometry/plane/subdivide.ts'
import { IncrementalSew } from '../../geometry/pressing/live/incrementalSew.ts'
import type { SewnPlan } from '../../geometry/pressing/plan.ts'
import { sewFromNothing } from '../../geometry/pressing/sewPlan.ts'
import type { Unit } from '../../geometry/values/block.ts'
import { blockOf, square } from '../help.ts'

const CHOICE: PlanChoice = { name: 'rows', cutOrder: 'middle', skippedCuts: 0 }

interface Step {
  readonly laid: Laid
  readonly tree: Plan['tree']
  readonly sewn: SewnPlan
}

/** A block sewn, edited and sewn again; each edit is the list of units after it. Units that are the same object are unchanged. */
function sewnAfter(...lists: readonly (readonly Unit[])[]): Step[] {
  const sewing = new IncrementalSew()
  let before: Laid | null = null
  let plane: Subdivision | null = null
  return lists.map((units) => {
    const laid = lay(blockOf(3, 3, units), before?.den)
    const changed = before === null || plane === null ? null : changePlane(plane, before, laid)
    plane ??= editablePlaneOf(laid)
    sewing.next(laid, plane, changed)
    before = laid
    const made = plan(laid, plane, CHOICE, sewing.divisionContext(CHOICE))
    return { laid, tree: made.tree, sewn: sewing.sew(made, CHOICE) }
  })
}

/** Takes the patches of changed units out of the plane and puts the new ones in; which units changed, by their places. */
function changePlane(plane: Subdivision, before: Laid, now: Laid): number[] {
  const changed = now.block.units.flatMap((unit, place) => (unit === before.block.units[place] ? [] : [place]))
  const corners = (laid: Laid) =>
    new Map(changed.flatMap((part) => (laid.parts[part]?.patches ?? []).map((patch) => [patch, laid.patches[patch]?.corners ?? []] as const)))
  const numbers = new Int32Array(before.patches.length).fill(-1)
  before.parts.forEach(({ patches }, part) => {
    if (changed.includes(part)) return
    for (const [at, patch] of patches.entries()) numbers[patch] = now.parts[part]?.patches[at] as number
  })
  plane.change(corners(before), corners(now), before.patches.length === now.patches.length ? null : numbers, now.patches.length)
  return changed
}

const grid = Array.from({ length: 9 }, (_, cell) => square(`u${cell}`, [cell % 3, Math.floor(cell / 3)]))
const triangles = (id: string, at: readonly [number, number], turn: 0 | 1 = 0): Unit => ({
  id,
  kind: 'hst',
  at,
  size: [1, 1],
  turn,
  fabrics: { upper: 'a', lower: 'b' },
})

/** The joins, what they cross and how they may be pressed are those of the same plan sewn without anything kept. */
function expectAsFromNothing({ laid, tree, sewn }: Step): void {
  const plane = planeOf(laid)
  const made = plan(laid, plane, CHOICE, { known: new Map(), cache: null, edgesOf: null })
  const fresh = sewFromNothing(laid, plane).sew(made, CHOICE)
  const joins = ({ seams }: SewnPlan) => seams.map(({ sides, stage, unit, kind }) => ({ sides, stage, unit, kind }))
  const crossings = ({ met }: SewnPlan) => met.crossings.map(({ join, seams }) => ({ join, seams }))
  expect(tree).toEqual(made.tree)
  expect(joins(sewn)).toEqual(joins(fresh))
  expect(crossings(sewn)).toEqual(crossings(fresh))
  expect(sewn.constraints).toEqual(fresh.constraints)
}

describe('a block sewn again', () => {
  it.each<[string, readonly Unit[], readonly Unit[]]>([
    ['a square becomes two triangles, so that later patches have other numbers', grid, grid.with(0, triangles('u0', [0, 0]))],
    ['a unit is turned', grid.with(4, triangles('u4', [1, 1])), grid.with(4, triangles('u4', [1, 1], 1))],
    [
      'two squares of the last row change their widths',
      [...grid.slice(0, 6), square('u6', [0, 2]), square('u7', [1, 2], [2, 1])],
      [...grid.slice(0, 6), square('u6', [0, 2], [2, 1]), square('u7', [2, 2])],
    ],
  ])('is as from nothing: %s', (_, before, after) => {
    const [, edited, again, back] = sewnAfter(before, after, before, after) as [Step, Step, Step, Step]
    for (const step of [edited, again, back]) expectAsFromNothing(step)
  })

  it('keeps the seams that join none of what changed: eight squares in rows have seven joins, and three hold a square of the last row', () => {
    const last = (wide: 1 | 2): Unit[] => [square('u6', [0, 2], [wide, 1]), square('u7', [wide, 2], [3 - wide, 1])]
    const [before, after] = sewnAfter([...grid.slice(0, 6), ...last(1)], [...grid.slice(0, 6), ...last(2)]) as [Step, Step]
    const kept = after.sewn.seams.filter((seam) => before.sewn.seams.includes(seam))
    // Two joins in each of the first two rows, and the join of these rows.
    expect(after.sewn.seams).toHaveLength(7)
    expect(kept).toHaveLength(5)
    // The join of the first two rows crosses two seams of each.
    const crossings = after.sewn.met.crossings.filter((crossing) => before.sewn.met.crossings.includes(crossing))
    expect(crossings).toHaveLength(2)
  })

  it('keeps every seam when nothing changed', () => {
    const [before, after] = sewnAfter(grid, grid) as [Step, Step]
    expect(after.sewn.seams.every((seam, at) => seam === before.sewn.seams[at])).toBe(true)
  })
})
