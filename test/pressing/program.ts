/**
 * Pressing as an integer program, and by trying every way: two judges that know nothing of chains and rings.
 *
 * In      problems: where seams meet, and the constraint on each seam.
 * Out     for each problem its fewest clashes, then its fewest seams against their preference.
 * How     s is 0 or 1 as a seam is pressed toward its side 0 or 1; c is 1 where a pair clashes. In one problem a clash costs more than all
 *         preferences together, so the sum is least exactly where clashes are fewest, then preferences. Problems share no variable: many are
 *         solved as one program, and each is at its own least.
 * Source  two seams nest when their allowances lie opposite ways: common practice, no source.
 */
import { message } from '../../geometry/values/messages.ts'
import loadSolver from 'highs'
import type { Crossing, Toward, PressConstraint } from '../../geometry/pressing/values.ts'

export interface Problem {
  readonly crossings: readonly Crossing[]
  readonly constraints: readonly PressConstraint[]
}

export interface Count {
  readonly clashes: number
  readonly against: number
}

const highs = await loadSolver()

/** Costs are whole numbers: with less than one between the best found and the best possible, the best is found. */
const EXACT = { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0.5 } as const

/** The solver's zeroes and ones are doubles, a hair off. */
const whole = (value: number): number => {
  if (Math.abs(value - Math.round(value)) > 1e-4) throw new Error(`the solver says ${value} where only whole numbers are`)
  return Math.round(value)
}

/** `program` may be written before. */
export function solved(problems: readonly Problem[], program = programOf(problems)): Count[] {
  const { Status, Columns } = highs.solve(program, EXACT)
  if (Status !== 'Optimal') throw new Error(`the solver ends with: ${Status}`)
  const chosen = (name: string): number => {
    const column = Columns[name]
    if (column === undefined || !('Primal' in column)) throw new Error(`the solver says nothing of ${name}`)
    return whole(column.Primal)
  }
  return problems.map(({ crossings, constraints }, problem) => ({
    clashes: crossings.reduce((sum, crossing, place) => sum + (clashable(crossing, constraints) ? chosen(`c${problem}_${place}`) : 0), 0),
    against: constraints.reduce(
      (sum, constraint, seam) => sum + (preferring(constraint) && chosen(`s${problem}_${seam}`) !== constraint.preference ? 1 : 0),
      0,
    ),
  }))
}

/** The program in LP text. */
export function programOf(problems: readonly Problem[]): string {
  const costs: string[] = []
  const rows: string[] = []
  const settled: string[] = []
  const names: string[] = []
  problems.forEach(({ crossings, constraints }, problem) => {
    constraints.forEach((constraint, seam) => {
      const s = `s${problem}_${seam}`
      names.push(s)
      // A seam that prefers side 1 costs 1 − s: the 1 is the same for every pressing and left out.
      if (preferring(constraint)) costs.push(constraint.preference === 0 ? `+ ${s}` : `- ${s}`)
      if (constraint.fixed === 0 || constraint.fixed === 1) settled.push(`${s} = ${constraint.fixed}`)
    })
    crossings.forEach((crossing, place) => {
      if (!clashable(crossing, constraints)) return
      const c = `c${problem}_${place}`
      const [a, b] = crossing.seams.map((seam) => `s${problem}_${seam}`)
      names.push(c)
      costs.push(`+ ${constraints.length + 1} ${c}`)
      // Leaning one way while both lie toward their side 0, they clash where both lie toward sides of the same number; else where not.
      if (crossing.leans?.[0] === crossing.leans?.[1]) rows.push(`${c} - ${a} - ${b} >= -1`, `${c} + ${a} + ${b} >= 1`)
      else rows.push(`${c} - ${a} + ${b} >= 0`, `${c} + ${a} - ${b} >= 0`)
    })
  })
  const part = (title: string, lines: readonly string[]): string => `${title}\n${lines.map((line) => ` ${line}\n`).join('')}`
  return [
    part('Minimize', costs),
    part(
      'Subject To',
      rows.map((row, index) => `r${index}: ${row}`),
    ),
    part('Binary', names),
    part('Bounds', settled),
    'End\n',
  ].join('')
}

const clashable = ({ type, seams }: Crossing, constraints: readonly PressConstraint[]): boolean =>
  type === 'pair' && seams.every((seam) => (constraints[seam] as PressConstraint).fixed !== 'open')

const preferring = ({ fixed, preference }: PressConstraint): boolean => fixed === null && preference !== null

/** What one pressing comes to. */
export function counted({ crossings, constraints }: Problem, toward: readonly Toward[]): Count {
  const clashes = crossings.filter((crossing) => {
    if (!clashable(crossing, constraints)) return false
    const [one, other] = crossing.seams.map((seam, end) => (toward[seam] === 0 ? 1 : -1) * (crossing.leans?.[end] as number))
    return one === other
  })
  return {
    clashes: clashes.length,
    against: constraints.filter((constraint, seam) => preferring(constraint) && toward[seam] !== constraint.preference).length,
  }
}

/** Every way of the seams that are not settled: two to the power of their number. */
export function bestOfAll(problem: Problem): Count {
  const free = problem.constraints.flatMap(({ fixed }, seam) => (fixed === null ? [seam] : []))
  const toward = problem.constraints.map(({ fixed }): Toward => fixed ?? 0)
  let best = counted(problem, toward)
  for (let ways = 1; ways < 2 ** free.length; ways++) {
    free.forEach((seam, bit) => {
      toward[seam] = ((ways >> bit) & 1) as 0 | 1
    })
    const found = counted(problem, toward)
    if (found.clashes < best.clashes || (found.clashes === best.clashes && found.against < best.against)) best = found
  }
  return best
}

/**
 * Seams of which every end meets at most one other, as where seams run into joins: chains and rings of every length.
 * `met` says how many of the ends meet another, from 0 to 1.
 */
export function tangle(next: () => number, seams: number, met: number): Problem {
  const constraints = Array.from({ length: seams }, () => wishAt(next))
  const ends = Array.from({ length: 2 * seams }, (_, end) => end)
  for (let place = ends.length - 1; place > 0; place--) {
    const other = Math.floor(next() * (place + 1))
    ;[ends[place], ends[other]] = [ends[other] as number, ends[place] as number]
  }
  const crossings = Array.from({ length: Math.floor(met * seams) }, (_, dot): Crossing => {
    const pair = [ends[2 * dot] as number, ends[2 * dot + 1] as number].map((end) => Math.floor(end / 2))
    // A seam does not lie on itself: its two ends are apart.
    if (pair[0] === pair[1]) return { dot, join: seams, seams: pair, type: 'tip', leans: null }
    return { dot, join: seams, seams: pair, type: 'pair', leans: [next() < 0.5 ? 1 : -1, next() < 0.5 ? 1 : -1] }
  })
  return { crossings, constraints }
}

function wishAt(next: () => number): PressConstraint {
  const drawn = next()
  const fixed = drawn < 0.08 ? 0 : drawn < 0.16 ? 1 : drawn < 0.2 ? 'open' : null
  const preference = fixed !== null || next() < 0.2 ? null : next() < 0.5 ? 0 : 1
  return { fixed, rule: fixed === null ? null : 'asked', preference, why: message('either-way') }
}
