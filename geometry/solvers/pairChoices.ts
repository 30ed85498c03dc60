/**
 * The least costly choice of a state for every node of a network, where cost comes from nodes and from pairs of them.
 *
 * In      what each state of each node costs by itself, what two states of a pair cost together; orders in which the nodes lie beside each other.
 * Out     a state for every node, the cost of all, and a cost that no choice can be below.
 * How     states that another state of their node can always replace at no more cost are dropped. Then nodes are eliminated one by one, so nothing
 *         is left out and the result is the minimum. Where tables would grow beyond `WORK`, each node's costs are minimized in groups: that bounds
 *         the minimum from below; the choice read from it is improved by solving stretches of the orders exactly, the rest kept.
 */
import { type NodeStates, costIn, eliminated, type Factor, groupedBound, workOf } from './eliminateNodes.ts'

export interface PairProblem {
  /** By node and state; whole numbers, never negative. */
  readonly own: readonly (readonly number[])[]
  /** `costs[state of the first][state of the second]`, never negative. */
  readonly pairs: readonly { readonly nodes: readonly [number, number]; readonly costs: readonly (readonly number[])[] }[]
  /** Ways to go through all nodes such that neighbours are never far apart. */
  readonly orders: readonly (readonly number[])[]
}

interface LeastChoices {
  readonly states: readonly number[]
  readonly cost: number
  readonly atLeast: number
}

/** Table entries, each times the states of the node eliminated, that are worked through for the minimum; and for one stretch, and for all of them. */
const WORK = 1e8
const STRETCH_WORK = 4e5
const IMPROVING_WORK = 4e7
/** Nodes of one stretch at first, and entries of the largest table of the bound. */
const LONGEST = 64
const TABLE = 2 ** 14

/** The least costly states, or the best found with a bound from below. */
export function leastChoices(problem: PairProblem): LeastChoices {
  const alive = undominated(problem)
  const factors = factorsOf(problem, alive)
  const sizes = alive.map((states) => states.length)
  const orders = problem.orders.map((order) => ({ order, work: workOf(factors, sizes, order) }))
  const { order, work } = orders.reduce((best, one) => (one.work < best.work ? one : best))
  const result = (states: readonly number[], bound: number | null): LeastChoices => {
    const cost = factors.reduce((sum, factor) => sum + costIn(factor, sizes, (node) => states[node] as number), 0)
    return { states: states.map((state, node) => (alive[node] as number[])[state] as number), cost, atLeast: bound ?? cost }
  }
  const inRow = (choice: NodeStates): number[] => sizes.map((_, node) => choice.get(node) as number)
  if (work <= WORK) return result(inRow(eliminated(factors, sizes, order)), null)
  const most = Math.max(...sizes)
  const { choice, atLeast } = groupedBound(factors, sizes, order, Math.min(TABLE, WORK / 2 / (most * sizes.length)))
  const states = inRow(choice)
  improve(factors, sizes, problem.orders, states)
  return result(states, atLeast)
}

interface Beside {
  readonly node: number
  readonly cost: (own: number, other: number) => number
}

/** The states of each node but those that another one can replace at no more cost, whatever the neighbours do. Of equals the earlier stays. */
function undominated({ own, pairs }: PairProblem): number[][] {
  const alive = own.map((costs) => costs.map((_, state) => state))
  const beside: Beside[][] = own.map(() => [])
  for (const { nodes, costs } of pairs) {
    const cost = (one: number, other: number): number => (costs[one] as readonly number[])[other] as number
    beside[nodes[0]]?.push({ node: nodes[1], cost })
    beside[nodes[1]]?.push({ node: nodes[0], cost: (one, other) => cost(other, one) })
  }
  const gain = (node: number, state: number, other: number): number => {
    const costs = own[node] as readonly number[]
    let sum = (costs[state] as number) - (costs[other] as number)
    for (const { node: next, cost } of beside[node] as Beside[])
      sum += Math.min(...(alive[next] as number[]).map((there) => cost(state, there) - cost(other, there)))
    return sum
  }
  const waiting = new Set(own.map((_, node) => node))
  for (const node of waiting) {
    waiting.delete(node)
    const before = alive[node] as number[]
    let left = before
    for (const state of [...before].reverse())
      if (left.some((other) => other !== state && gain(node, state, other) >= 0)) left = left.filter((one) => one !== state)
    if (left.length === before.length) continue
    alive[node] = left
    for (const { node: next } of beside[node] as Beside[]) waiting.add(next)
  }
  return alive
}

function factorsOf({ own, pairs }: PairProblem, alive: readonly (readonly number[])[]): Factor[] {
  const of = (node: number): readonly number[] => alive[node] as readonly number[]
  const factors: Factor[] = own.map((costs, node) => ({ nodes: [node], costs: Float64Array.from(of(node), (state) => costs[state] as number) }))
  for (const { nodes, costs } of pairs) {
    const table = of(nodes[0]).flatMap((one) => of(nodes[1]).map((other) => (costs[one] as readonly number[])[other] as number))
    if (table.some((cost) => cost > 0)) factors.push({ nodes, costs: Float64Array.from(table) })
  }
  return factors
}

/** Goes through stretches of nodes that follow each other, half over half, and chooses each stretch again with all others kept, as long as it helps. */
function improve(factors: readonly Factor[], sizes: readonly number[], orders: PairProblem['orders'], states: number[]): void {
  const touching: Factor[][] = sizes.map(() => [])
  for (const factor of factors) for (const node of factor.nodes) touching[node]?.push(factor)
  let work = 0
  let length = LONGEST
  for (let better = true; better && work < IMPROVING_WORK; ) {
    better = false
    for (const order of orders)
      for (let from = 0; from < order.length && work < IMPROVING_WORK; from += Math.max(1, length >> 1)) {
        const own = order.slice(from, from + length)
        const inside = withRestKept(own, touching, sizes, states)
        const needed = workOf(inside, sizes, own)
        if (needed > STRETCH_WORK && length > 1) {
          length = Math.ceil(length * 0.7)
          continue
        }
        work += needed
        const found = eliminated(inside, sizes, own)
        const cost = (of: (node: number) => number): number => inside.reduce((sum, factor) => sum + costIn(factor, sizes, of), 0)
        if (cost((node) => found.get(node) as number) >= cost((node) => states[node] as number)) continue
        for (const [node, state] of found) states[node] = state
        better = true
      }
  }
}

/** The factors of some nodes as they are with the states of all other nodes kept. */
function withRestKept(own: readonly number[], touching: readonly Factor[][], sizes: readonly number[], states: readonly number[]): Factor[] {
  const inside = new Set(own)
  return [...new Set(own.flatMap((node) => touching[node] as Factor[]))].map((factor) => {
    const [first, second] = factor.nodes as [number, number | undefined]
    if (second === undefined || (inside.has(first) && inside.has(second))) return factor
    const size = sizes[second] as number
    if (inside.has(second))
      return { nodes: [second], costs: factor.costs.slice((states[first] as number) * size, ((states[first] as number) + 1) * size) }
    return { nodes: [first], costs: factor.costs.filter((_, place) => place % size === states[second]) }
  })
}
