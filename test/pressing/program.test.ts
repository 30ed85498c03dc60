/**
 * The proved minimum against an integer-program solver that knows nothing of chains and rings, highs 1.15.3, and against every pressing
 * where there are few: on seams tied by hand, and on the seams of thousands of plans.
 */
import { describe, expect, it } from 'vitest'
import { lay, type Laid } from '../../geometry/block/lay.ts'
import { checkBlock } from '../../geometry/block/read.ts'
import { type Block, type FilePoint, ORDERS, type PressRequest } from '../../geometry/values/block.ts'
import { rational, toFile } from '../../geometry/exact/rational.ts'
import { press } from '../../geometry/pressing/press.ts'
import type { PressedPlan } from '../../geometry/pressing/plan.ts'
import { planeOf } from '../../geometry/block/blockPlane.ts'
import { sewBlock } from '../../geometry/report/report.ts'
import type { Plans } from '../../geometry/report/sewing.ts'
import { blockOf, sequence } from '../help.ts'
import { oneOf, tiling } from '../layouts.ts'
import { bestOfAll, type Count, counted, type Problem, solved, tangle } from './program.ts'

/** Two to this power are tried one by one. */
const FEW = 14

/** Problems that are solved as one program. */
const TOGETHER = 400

function leastOf(problems: readonly Problem[]): Count[] {
  const batches = Array.from({ length: Math.ceil(problems.length / TOGETHER) }, (_, batch) =>
    problems.slice(batch * TOGETHER, (batch + 1) * TOGETHER),
  )
  return batches.flatMap((batch) => solved(batch))
}

const pressed = ({ crossings, constraints }: Problem): Count => {
  const { clashes, against } = press(crossings, constraints)
  return { clashes, against }
}

const many = (problems: readonly Problem[], has: (count: Count) => boolean): number => problems.filter((problem) => has(pressed(problem))).length

const free = ({ constraints }: Problem): number => constraints.filter(({ fixed }) => fixed === null).length

describe('seams tied by hand', () => {
  const next = sequence(11)
  const small = Array.from({ length: 800 }, () => tangle(next, 1 + Math.floor(next() * FEW), next() < 0.5 ? 1 : next()))
  const middling = Array.from({ length: 1200 }, () => tangle(next, 10 + Math.floor(next() * 30), next() < 0.5 ? 1 : next()))
  const long = [1, 0.995, 0.98].map((met) => tangle(next, 3000, met))

  it('holds problems that must clash and problems that must not', () => {
    for (const problems of [small, middling]) {
      expect(many(problems, ({ clashes }) => clashes > 0)).toBeGreaterThan(100)
      expect(many(problems, ({ clashes }) => clashes === 0)).toBeGreaterThan(100)
      expect(many(problems, ({ against }) => against > 0)).toBeGreaterThan(100)
    }
  })

  it('few: the least of all pressings, and of the solver', () => {
    const every = small.map(bestOfAll)
    expect(small.map(pressed)).toEqual(every)
    expect(leastOf(small)).toEqual(every)
  })

  it('many small problems: the least of the solver', () => {
    expect(middling.map(pressed)).toEqual(leastOf(middling))
  })

  it('thousands of seams in one problem: the least of the solver', () => {
    expect(long.map(pressed)).toEqual(long.map((one) => leastOf([one])[0]))
  })

  it('the pressing that is given comes to what is said, and keeps what is settled', () => {
    for (const problem of [...small, ...middling, ...long]) {
      const { toward, clashes, against } = press(problem.crossings, problem.constraints)
      expect(counted(problem, toward)).toEqual({ clashes, against })
      problem.constraints.forEach(({ fixed }, seam) => {
        if (fixed === null ? toward[seam] === 'open' : toward[seam] !== fixed) throw new Error(`seam ${seam}: ${toward[seam]} for ${fixed}`)
      })
    }
  })
})

describe('plans of blocks', () => {
  const next = sequence(7)
  const blocks = Array.from({ length: 2000 }, () => blockAtRandom(next))
  const plans = blocks.flatMap(plansFor)
  const problems = plans.map(({ met, constraints }): Problem => ({ crossings: met.crossings, constraints }))

  it('come from good files, and hold every rule and type of meeting', () => {
    for (const block of blocks) expect(checkBlock(block)).toMatchObject({ ok: true })
    const constraints = problems.flatMap((problem) => problem.constraints)
    for (const fixed of [0, 1, 'open'] as const)
      expect(constraints.filter((constraint) => constraint.fixed === fixed && constraint.rule === 'asked').length, `asked ${fixed}`).toBeGreaterThan(
        100,
      )
    expect(constraints.filter(({ rule }) => rule === 'method').length).toBeGreaterThan(100)
    const types = problems.flatMap(({ crossings }) => crossings.map(({ type }) => type))
    for (const type of ['pair', 'pin', 'tip'] as const) expect(types.filter((one) => one === type).length, type).toBeGreaterThan(100)
    for (const kind of ['straight', 'partial'] as const)
      expect(plans.flatMap(({ seams }) => seams).filter((seam) => seam.kind === kind).length, kind).toBeGreaterThan(0)
    expect(many(problems, ({ clashes }) => clashes > 0)).toBeGreaterThan(100)
    expect(many(problems, ({ against }) => against > 0)).toBeGreaterThan(100)
  })

  it('tie a seam to at most two others, one at each end', () => {
    for (const { crossings, constraints } of problems) {
      const ties = constraints.map(() => 0)
      for (const { type, seams } of crossings) if (type === 'pair') for (const seam of seams) ties[seam] = (ties[seam] as number) + 1
      expect(Math.max(0, ...ties)).toBeLessThanOrEqual(2)
    }
  })

  it('are pressed with the least clashes, then the least against preference, of the solver', () => {
    expect(plans.map(({ pressed: { clashes, against } }) => ({ clashes, against }))).toEqual(leastOf(problems))
  })

  it('with few seams: the least of all pressings', () => {
    const few = problems.filter((problem) => free(problem) <= FEW)
    expect(few.length).toBeGreaterThan(100)
    expect(few.map(pressed)).toEqual(few.map(bestOfAll))
  })
})

/** The plan taken and the others: each is pressed. */
function plansFor(block: Block): PressedPlan[] {
  const { taken, others } = sewBlock(block, 'quick').plans as Plans
  return [taken, ...others]
}

function blockAtRandom(next: () => number): Block {
  const [columns, rows] = [2 + Math.floor(next() * 3), 1 + Math.floor(next() * 4)]
  const borders = next() < 0.2 ? [{ finishedWidth: 2, fabric: 'd' }] : []
  const block = blockOf(columns, rows, tiling(next, columns, rows), { order: oneOf(next, ORDERS), borders })
  return next() < 0.5 ? block : { ...block, press: asked(next, block) }
}

/** A maker's words for some seams of the plan: to a patch that the seam runs along, or open. */
function asked(next: () => number, block: Block): PressRequest[] {
  const laid = lay(block)
  const plane = planeOf(laid)
  const sewn = plane.edges.filter(({ plus, minus }) => plus >= 0 && minus >= 0)
  if (sewn.length === 0) return []
  return Array.from({ length: 1 + Math.floor(next() * 4) }, () => {
    const { a, b, plus, minus } = oneOf(next, sewn)
    const beside = laid.patches[oneOf(next, [plus, minus])]?.corners ?? []
    const at = middle(laid, [plane.dots[a] as readonly [number, number], plane.dots[b] as readonly [number, number]])
    return { at, toward: next() < 0.15 ? 'open' : middle(laid, beside) }
  })
}

/** The middle of the corners lies inside: every patch of these kinds is convex. */
function middle(laid: Laid, corners: readonly (readonly [number, number])[]): FilePoint {
  const along = (axis: 0 | 1): number | string =>
    toFile(
      rational(
        corners.reduce((sum, corner) => sum + corner[axis], 0),
        corners.length * laid.den,
      ),
    )
  return [along(0), along(1)]
}
