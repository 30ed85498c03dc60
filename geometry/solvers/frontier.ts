/**
 * The least costly choice of a state for every place of a rectangle, where only neighbours side by side or one above the other matter.
 *
 * In      columns × rows, the states each place may take, what a state costs by itself, and what two neighbours cost.
 * Out     a state for every place, its cost, and a cost that no choice can be below.
 * How     places are filled row by row, the shorter way across. All that the rest depends on is the states of the last places filled, one for each
 *         column: the frontier. For each of its states the least cost is kept, so nothing is left out and the result is the minimum. Where
 *         the frontier would have more than `TABLE` states the rectangle is cut into bands of columns: each band alone is exact, so the sum bounds the
 *         whole from below (costs are never negative); a choice is found band after band, each beside the last, then bettered place by
 *         place until nothing helps.
 */
export interface Ask {
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

export interface Choice {
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

export function choose(ask: Ask): Choice {
  if (ask.columns <= ask.rows) return inBands(ask)
  const { states, cost, atLeast } = inBands(onItsSide(ask))
  return {
    states: Array.from(
      { length: ask.columns * ask.rows },
      (_, place) => states[(place % ask.columns) * ask.rows + Math.floor(place / ask.columns)] as number,
    ),
    cost,
    atLeast,
  }
}

const onItsSide = (ask: Ask): Ask => ({
  columns: ask.rows,
  rows: ask.columns,
  states: (column, row) => ask.states(row, column),
  own: ask.own,
  right: (state, neighbour, column, row) => ask.below(state, neighbour, row, column),
  below: (state, neighbour, column, row) => ask.right(state, neighbour, row, column),
})

function inBands(ask: Ask): Choice {
  const width = bandWidth(ask)
  if (width >= ask.columns) {
    const { states, cost } = band(ask, 0, ask.columns, null)
    return { states, cost, atLeast: cost }
  }
  const states: number[] = new Array(ask.columns * ask.rows).fill(0)
  let atLeast = 0
  for (let from = 0; from < ask.columns; from += width) {
    const to = Math.min(from + width, ask.columns)
    atLeast += band(ask, from, to, null).cost
    const beside = from === 0 ? null : (row: number): number => states[row * ask.columns + from - 1] as number
    const found = band(ask, from, to, beside).states
    for (let row = 0; row < ask.rows; row++)
      for (let column = from; column < to; column++) states[row * ask.columns + column] = found[row * (to - from) + column - from] as number
  }
  better(ask, states)
  return { states, cost: costOf(ask, states), atLeast }
}

function bandWidth(ask: Ask): number {
  const most = Math.max(
    ...Array.from({ length: ask.columns * ask.rows }, (_, place) => ask.states(place % ask.columns, Math.floor(place / ask.columns)).length),
  )
  const fits = (width: number): boolean => most ** width <= TABLE && most ** width * width * ask.rows <= KEPT
  if (fits(ask.columns)) return ask.columns
  let width = ask.columns - 1
  while (width > 1 && !(fits(width) && 2 * ask.columns * ask.rows * most ** (width + 1) <= STEPS)) width--
  return width
}

/** Columns `from` up to `to`, exactly; `beside` gives the states already chosen on their left. */
function band(ask: Ask, from: number, to: number, beside: ((row: number) => number) | null): { states: number[]; cost: number } {
  const width = to - from
  const kept: { choices: Uint8Array; sizes: readonly number[] }[] = []
  /** How many states the frontier's places have, by column. */
  let sizes: number[] = new Array(width).fill(1)
  let costs = new Float64Array(1)
  for (let row = 0; row < ask.rows; row++)
    for (let place = 0; place < width; place++) {
      const column = from + place
      const states = ask.states(column, row)
      const above = row === 0 ? null : ask.states(column, row - 1)
      const left = place === 0 ? null : ask.states(column - 1, row)
      const next = sizes.map((size, at) => (at === place ? states.length : size))
      const stride = strideOf(sizes, place)
      const leftStride = place === 0 ? 1 : strideOf(next, place - 1)
      const length = next.reduce((product, size) => product * size, 1)
      const found = new Float64Array(length)
      const choices = new Uint8Array(length)
      const olds = sizes[place] as number
      const own = states.map((state) => ask.own(state) + (place === 0 && beside !== null ? ask.right(beside(row), state, column - 1, row) : 0))
      const down = states.map((state) => (above === null ? [0] : above.map((upper) => ask.below(upper, state, column, row - 1))))
      const across = states.map((state) => (left === null ? [0] : left.map((other) => ask.right(other, state, column - 1, row))))
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
  return { states: walkedBack(ask, from, width, kept, costs), cost: leastOf(costs) }
}

const leastOf = (costs: Float64Array): number => costs.reduce((least, cost) => Math.min(least, cost), Number.POSITIVE_INFINITY)

const strideOf = (sizes: readonly number[], place: number): number => sizes.slice(0, place).reduce((product, size) => product * size, 1)

function walkedBack(
  ask: Ask,
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
    states[step] = ask.states(from + place, Math.floor(step / width))[state] as number
    const before = step < width ? 1 : ask.states(from + place, Math.floor(step / width) - 1).length
    index = (Math.floor(index / (stride * size)) * before + (choices[index] as number)) * stride + (index % stride)
  }
  return states
}

/** What one place costs with its four neighbours. */
function around(ask: Ask, states: readonly number[], column: number, row: number, state: number): number {
  const at = (c: number, r: number): number => states[r * ask.columns + c] as number
  return (
    ask.own(state) +
    (column > 0 ? ask.right(at(column - 1, row), state, column - 1, row) : 0) +
    (column + 1 < ask.columns ? ask.right(state, at(column + 1, row), column, row) : 0) +
    (row > 0 ? ask.below(at(column, row - 1), state, column, row - 1) : 0) +
    (row + 1 < ask.rows ? ask.below(state, at(column, row + 1), column, row) : 0)
  )
}

function better(ask: Ask, states: number[]): void {
  for (let changed = true; changed; ) {
    changed = false
    for (let row = 0; row < ask.rows; row++)
      for (let column = 0; column < ask.columns; column++) {
        const place = row * ask.columns + column
        let least = around(ask, states, column, row, states[place] as number)
        for (const state of ask.states(column, row)) {
          const cost = around(ask, states, column, row, state)
          if (cost >= least) continue
          least = cost
          states[place] = state
          changed = true
        }
      }
  }
}

export function costOf(ask: Ask, states: readonly number[]): number {
  let cost = 0
  states.forEach((state, place) => {
    const [column, row] = [place % ask.columns, Math.floor(place / ask.columns)]
    cost += ask.own(state)
    if (column + 1 < ask.columns) cost += ask.right(state, states[place + 1] as number, column, row)
    if (row + 1 < ask.rows) cost += ask.below(state, states[place + ask.columns] as number, column, row)
  })
  return cost
}
