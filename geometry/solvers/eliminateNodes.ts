/**
 * Nodes of a network eliminated one by one, in an order.
 *
 * In      factors: what the states of some nodes cost together; how many states each node has; the order.
 * Out     the states of least cost; or, where the tables for that would be too large, a bound from below and the states read from it.
 * How     all factors of a node are added up and, for all states of the other nodes in them, minimized over its own states: a factor of those other
 *         nodes. When all nodes are gone, each node's best state is read back in reverse. For the bound, the factors of a node are minimized in groups
 *         that stay small.
 */
export interface Factor {
  readonly nodes: readonly number[]
  /** By the states of the nodes, the last one's fastest. */
  readonly costs: Float64Array
}

/** The states of nodes, by node. */
export type NodeStates = ReadonlyMap<number, number>

/** The table entries of an elimination, each times the states of its node; infinite where they are too many for any machine. */
export function workOf(factors: readonly Factor[], sizes: readonly number[], order: readonly number[]): number {
  const beside = new Map(order.map((node) => [node, new Set<number>()]))
  for (const { nodes } of factors) for (const one of nodes) for (const other of nodes) if (one !== other) beside.get(one)?.add(other)
  let work = 0
  for (const node of order) {
    const around = [...(beside.get(node) as Set<number>)]
    work += around.reduce((product, one) => product * (sizes[one] as number), sizes[node] as number)
    if (work > MOST) return Number.POSITIVE_INFINITY
    for (const one of around) {
      beside.get(one)?.delete(node)
      for (const other of around) if (other !== one) beside.get(one)?.add(other)
    }
  }
  return work
}

const MOST = 1e12

/** The states of least cost. */
export const eliminated = (factors: readonly Factor[], sizes: readonly number[], order: readonly number[]): NodeStates =>
  walk(factors, sizes, order, Number.POSITIVE_INFINITY).choice

/** A bound from below on the cost of all choices, and the states read from it, with no table of more than `most` entries. */
export const groupedBound = walk

interface Walked {
  readonly choice: NodeStates
  readonly atLeast: number
}

function walk(factors: readonly Factor[], sizes: readonly number[], order: readonly number[], most: number): Walked {
  const turn = new Map(order.map((node, place) => [node, place]))
  const waiting: Factor[][] = order.map(() => [])
  let atLeast = 0
  const put = (factor: Factor): void => {
    if (factor.nodes.length === 0) atLeast += factor.costs[0] as number
    else waiting[Math.min(...factor.nodes.map((node) => turn.get(node) as number))]?.push(factor)
  }
  factors.forEach(put)
  order.forEach((node, place) => {
    for (const group of grouped(waiting[place] as Factor[], sizes, most)) put(minimized(group, node, sizes))
  })
  const choice = new Map<number, number>()
  for (let place = order.length - 1; place >= 0; place--) {
    const node = order[place] as number
    choice.set(node, bestState(waiting[place] as Factor[], node, sizes, choice))
  }
  return { choice, atLeast }
}

/** Factors together as long as the table that comes of them stays small; the largest first. */
function grouped(factors: readonly Factor[], sizes: readonly number[], most: number): Factor[][] {
  if (most === Number.POSITIVE_INFINITY) return factors.length === 0 ? [] : [[...factors]]
  const groups: { factors: Factor[]; nodes: Set<number> }[] = []
  const entries = (nodes: Iterable<number>): number => [...nodes].reduce((product, node) => product * (sizes[node] as number), 1)
  for (const factor of [...factors].sort((a, b) => b.costs.length - a.costs.length)) {
    const fitting = groups.find(({ nodes }) => entries(new Set([...nodes, ...factor.nodes])) <= most)
    if (fitting === undefined) groups.push({ factors: [factor], nodes: new Set(factor.nodes) })
    else {
      fitting.factors.push(factor)
      for (const node of factor.nodes) fitting.nodes.add(node)
    }
  }
  return groups.map((group) => group.factors)
}

/** The least that factors cost together over the states of one node, by the states of the others in them. */
function minimized(factors: readonly Factor[], node: number, sizes: readonly number[]): Factor {
  const nodes = [...new Set(factors.flatMap((factor) => factor.nodes))].filter((one) => one !== node)
  const [largest, ...others] = [...factors].sort((a, b) => b.costs.length - a.costs.length) as [Factor, ...Factor[]]
  const rest = others.length === 0 ? { nodes: [], costs: Float64Array.of(0) } : added(others, sizes)
  const counts = Int32Array.from(nodes, (one) => sizes[one] as number)
  const costs = new Float64Array(counts.reduce((product, count) => product * count, 1))
  const [one, other] = [stepsOf(largest, nodes, sizes), stepsOf(rest, nodes, sizes)]
  const [ownStep, restStep] = [strideOf(largest, node, sizes), strideOf(rest, node, sizes)]
  const states = sizes[node] as number
  const at = new Int32Array(nodes.length)
  let [place, beside] = [0, 0]
  for (let entry = 0; entry < costs.length; entry++) {
    let least = Number.POSITIVE_INFINITY
    for (let state = 0; state < states; state++) {
      const cost = (largest.costs[place + state * ownStep] as number) + (rest.costs[beside + state * restStep] as number)
      if (cost < least) least = cost
    }
    costs[entry] = least
    for (let digit = nodes.length - 1; digit >= 0; digit--) {
      const next = (at[digit] as number) + 1
      const count = counts[digit] as number
      const by = next === count ? 1 - count : 1
      at[digit] = next === count ? 0 : next
      place += by * (one[digit] as number)
      beside += by * (other[digit] as number)
      if (by === 1) break
    }
  }
  return { nodes, costs }
}

/** Factors added up to one. */
function added(factors: readonly Factor[], sizes: readonly number[]): Factor {
  const nodes = [...new Set(factors.flatMap((factor) => factor.nodes))]
  const costs = new Float64Array(nodes.reduce((product, one) => product * (sizes[one] as number), 1))
  for (const factor of factors) {
    const strides = nodes.map((one) => strideOf(factor, one, sizes))
    for (let entry = 0; entry < costs.length; entry++) {
      let [place, left] = [0, entry]
      for (let digit = nodes.length - 1; digit >= 0; digit--) {
        const count = sizes[nodes[digit] as number] as number
        place += (left % count) * (strides[digit] as number)
        left = Math.floor(left / count)
      }
      costs[entry] = (costs[entry] as number) + (factor.costs[place] as number)
    }
  }
  return { nodes, costs }
}

const stepsOf = (factor: Factor, nodes: readonly number[], sizes: readonly number[]): Int32Array =>
  Int32Array.from(nodes, (one) => strideOf(factor, one, sizes))

/** How far two states of a node that follow each other lie apart in a factor's table; 0 where the factor does not know the node. */
function strideOf({ nodes }: Factor, node: number, sizes: readonly number[]): number {
  const place = nodes.indexOf(node)
  return place < 0 ? 0 : nodes.slice(place + 1).reduce((product, one) => product * (sizes[one] as number), 1)
}

function bestState(factors: readonly Factor[], node: number, sizes: readonly number[], choice: NodeStates): number {
  const costs = Array.from({ length: sizes[node] as number }, (_, state) =>
    factors.reduce((sum, factor) => sum + costIn(factor, sizes, (one) => (one === node ? state : (choice.get(one) as number))), 0),
  )
  return costs.indexOf(Math.min(...costs))
}

/** What a factor costs in some states. */
export function costIn({ nodes, costs }: Factor, sizes: readonly number[], stateOf: (node: number) => number): number {
  return costs[nodes.reduce((place, node) => place * (sizes[node] as number) + stateOf(node), 0)] as number
}
