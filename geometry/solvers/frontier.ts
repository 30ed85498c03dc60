/**
 * The least costly choice of a state for every place of a rectangle, where only neighbours side by side or one above the other matter.
 *
 * In      columns × rows, the states each place may take, what a state costs by itself, and what two neighbours cost.
 * Out     a state for every place, its cost, and a cost that no choice can be below.
 * How     places are filled row by row, the shorter way across. All that the rest depends on is the states of the last places filled, one for each
 *         column: the frontier. For each of its states the least cost is kept, so nothing is left out and the result is the minimum. Where
 *         the frontier would have more than `TABLE` states the rectangle is cut into bands of columns: each band alone is exact, so the sum bounds the
 *         whole from below (costs are never negative); a choice is found band after band, each beside the last, then improved place by
 *         place until nothing helps.
 */
export interface StateProblem {
  readonly columns: number
  readonly rows: number
  readonly states: (column: number, row: number) => readonly number[]
  /** Whole numbers, never negative. */
  readonly own: (state: number) => number
  /** Of a place and the one on its right. */
  readonly right: (state: number, neighbour: number, column: number, row: number) => number
  /** Of a place and the one below it. */
  readonly below: (state: number, neighbour: number, column: number, row: number) => number
}

interface LeastStates {
  /** Row by row. */
  readonly states: readonly number[]
  readonly cost: number
  readonly atLeast: number
}

/** States of a frontier that is one whole row across, and the choices kept to walk back. */
const TABLE = 2 ** 18
const KEPT = 4e7
/** Steps spent on bands, where the whole is too wide. */
const STEPS = 2e8

/** A state for every place with the least cost, row by row. */
export function leastStates(problem: StateProblem): LeastStates {
  if (problem.columns <= problem.rows) return inBands(problem)
  const { states, cost, atLeast } = inBands(transposed(problem))
  return {
    states: Array.from(
      { length: problem.columns * problem.rows },
      (_, place) => states[(place % problem.columns) * problem.rows + Math.floor(place / problem.columns)] as number,
    ),
    cost,
    atLeast,
  }
}

const transposed = (problem: StateProblem): StateProblem => ({
  columns: problem.rows,
  rows: problem.columns,
  states: (column, row) => problem.states(row, column),
  own: problem.own,
  right: (state, neighbour, column, row) => problem.below(state, neighbour, row, column),
  below: (state, neighbour, column, row) => problem.right(state, neighbour, row, column),
})

function inBands(problem: StateProblem): LeastStates {
  const width = bandWidth(problem)
  if (width >= problem.columns) {
    const { states, cost } = band(problem, 0, problem.columns, null)
    return { states, cost, atLeast: cost }
  }
  const states: number[] = new Array(problem.columns * problem.rows).fill(0)
  let atLeast = 0
  for (let from = 0; from < problem.columns; from += width) {
    const to = Math.min(from + width, problem.columns)
    atLeast += band(problem, from, to, null).cost
    const beside = from === 0 ? null : (row: number): number => states[row * problem.columns + from - 1] as number
    const found = band(problem, from, to, beside).states
    for (let row = 0; row < problem.rows; row++)
      for (let column = from; column < to; column++) states[row * problem.columns + column] = found[row * (to - from) + column - from] as number
  }
  improve(problem, states)
  return { states, cost: costOfStates(problem, states), atLeast }
}

function bandWidth(problem: StateProblem): number {
  const most = Math.max(
    ...Array.from(
      { length: problem.columns * problem.rows },
      (_, place) => problem.states(place % problem.columns, Math.floor(place / problem.columns)).length,
    ),
  )
  const fits = (width: number): boolean => most ** width <= TABLE && most ** width * width * problem.rows <= KEPT
  if (fits(problem.columns)) return problem.columns
  let width = problem.columns - 1
  while (width > 1 && !(fits(width) && 2 * problem.columns * problem.rows * most ** (width + 1) <= STEPS)) width--
  return width
}

/** Columns `from` up to `to`, exactly; `beside` gives the states already chosen on their left. */
function band(problem: StateProblem, from: number, to: number, beside: ((row: number) => number) | null): { states: number[]; cost: number } {
  const width = to - from
  const kept: { choices: Uint8Array; sizes: readonly number[] }[] = []
  /** How many states the frontier's places have, by column. */
  let sizes: number[] = new Array(width).fill(1)
  let costs = new Float64Array(1)
  for (let row = 0; row < problem.rows; row++)
    for (let place = 0; place < width; place++) {
      const column = from + place
      const states = problem.states(column, row)
      const above = row === 0 ? null : problem.states(column, row - 1)
      const left = place === 0 ? null : problem.states(column - 1, row)
      const next = sizes.map((size, at) => (at === place ? states.length : size))
      const stride = strideOf(sizes, place)
      const leftStride = place === 0 ? 1 : strideOf(next, place - 1)
      const length = next.reduce((product, size) => product * size, 1)
      const found = new Float64Array(length)
      const choices = new Uint8Array(length)
      const olds = sizes[place] as number
      const own = states.map(
        (state) => problem.own(state) + (place === 0 && beside !== null ? problem.right(beside(row), state, column - 1, row) : 0),
      )
      const down = states.map((state) => (above === null ? [0] : above.map((upper) => problem.below(upper, state, column, row - 1))))
      const across = states.map((state) => (left === null ? [0] : left.map((other) => problem.right(other, state, column - 1, row))))
      for (let index = 0; index < length; index++) {
        const state = Math.floor(index / stride) % states.length
        // The same frontier, before this place took its state: all states of the place above are tried.
        const low = index % stride
        const high = Math.floor(index / (stride * states.length))
        let least = Number.POSITIVE_INFINITY
        let choice = 0
        const downs = down[state] as number[]
        for (let old = 0; old < olds; old++) {
          const cost = (costs[(high * olds + old) * stride + low] as number) + (downs[above === null ? 0 : old] as number)
          if (cost < least) {
            least = cost
            choice = old
          }
        }
        const beyond = left === null ? 0 : ((across[state] as number[])[Math.floor(index / leftStride) % left.length] as number)
        found[index] = least + (own[state] as number) + beyond
        choices[index] = choice
      }
      kept.push({ choices, sizes: next })
      costs = found
      sizes = next
    }
  return { states: walkedBack(problem, from, width, kept, costs), cost: leastOf(costs) }
}

const leastOf = (costs: Float64Array): number => costs.reduce((least, cost) => Math.min(least, cost), Number.POSITIVE_INFINITY)

const strideOf = (sizes: readonly number[], place: number): number => sizes.slice(0, place).reduce((product, size) => product * size, 1)

function walkedBack(
  problem: StateProblem,
  from: number,
  width: number,
  kept: readonly { choices: Uint8Array; sizes: readonly number[] }[],
  costs: Float64Array,
): number[] {
  const states: number[] = []
  let index = costs.indexOf(leastOf(costs))
  for (let step = kept.length - 1; step >= 0; step--) {
    const { choices, sizes } = kept[step] as { choices: Uint8Array; sizes: readonly number[] }
    const place = step % width
    const stride = strideOf(sizes, place)
    const size = sizes[place] as number
    const state = Math.floor(index / stride) % size
    states[step] = problem.states(from + place, Math.floor(step / width))[state] as number
    const before = step < width ? 1 : problem.states(from + place, Math.floor(step / width) - 1).length
    index = (Math.floor(index / (stride * size)) * before + (choices[index] as number)) * stride + (index % stride)
  }
  return states
}

/** What one place costs with its four neighbours. */
function around(problem: StateProblem, states: readonly number[], column: number, row: number, state: number): number {
  const at = (c: number, r: number): number => states[r * problem.columns + c] as number
  return (
    problem.own(state) +
    (column > 0 ? problem.right(at(column - 1, row), state, column - 1, row) : 0) +
    (column + 1 < problem.columns ? problem.right(state, at(column + 1, row), column, row) : 0) +
    (row > 0 ? problem.below(at(column, row - 1), state, column, row - 1) : 0) +
    (row + 1 < problem.rows ? problem.below(state, at(column, row + 1), column, row) : 0)
  )
}

function improve(problem: StateProblem, states: number[]): void {
  for (let changed = true; changed; ) {
    changed = false
    for (let row = 0; row < problem.rows; row++)
      for (let column = 0; column < problem.columns; column++) {
        const place = row * problem.columns + column
        let least = around(problem, states, column, row, states[place] as number)
        for (const state of problem.states(column, row)) {
          const cost = around(problem, states, column, row, state)
          if (cost >= least) continue
          least = cost
          states[place] = state
          changed = true
        }
      }
  }
}

/** What a state for every place costs in all. */
export function costOfStates(problem: StateProblem, states: readonly number[]): number {
  let cost = 0
  states.forEach((state, place) => {
    const [column, row] = [place % problem.columns, Math.floor(place / problem.columns)]
    cost += problem.own(state)
    if (column + 1 < problem.columns) cost += problem.right(state, states[place + 1] as number, column, row)
    if (row + 1 < problem.rows) cost += problem.below(state, states[place + problem.columns] as number, column, row)
  })
  return cost
}
