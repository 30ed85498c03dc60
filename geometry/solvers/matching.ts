/**
 * Pair points so that the sum over all pairs is the least, leaving none, one or two of them open: minimum-weight matching.
 *
 * In      points, and their neighbours, nearest first, as far as they are asked for; costs are whole, at most 2^49 over all pairs.
 * Out     for each point its partner; the sum; and a sum below which no pairing can be. The two are the same whole number: that is the proof.
 * How     Edmonds. Every point has a price, and no pair may cost less than its two prices. All open points raise their prices at one speed. A pair
 *         that has become tight joins two trees (then the way between their roots is paired again), lets a tree grow by a pair, or closes an odd
 *         ring, which from then on is priced as one point. What a tree reaches at an odd step sinks as its neighbours rise, and a ring sunk to
 *         nothing is opened again. Kept true: pairs are tight, no pair costs less than the prices across it, no price is above that of an open
 *         point. So when as many points are open as may be, prices less the open ones' are a floor for every pairing, and ours stands on it.
 * Near    a tight pair costs at most twice the greater of its prices: points are asked for neighbours only as far as they have risen. The points of a
 *         large ring rise together, so they ask together, and of all their pairs with a neighbour only the one that will be tight first counts;
 *         where such a ring is opened, its parts ask for themselves what was passed over.
 * Ends    every step makes trees grow, closes a ring or pairs two more; a ring can open only where it sank. Costs are doubled, so that all events
 *         fall on whole times and ties are ties.
 * Source  J. Edmonds, Paths, trees, and flowers (1965); several trees at once: V. Kolmogorov, Blossom V (2009). From memory.
 */
import FlatQueue from 'flatqueue'

/** Neighbours of points that ask together, each by its pair with the asker for which cost less height is least, from the least on. */
export interface Nearby {
  readonly pairs: readonly { readonly from: number; readonly to: number; readonly cost: number }[]
  /** So much of cost less height all of them are known (Infinity: there are no more). */
  readonly known: number
}

/** At least so many neighbours that are not askers themselves, or all there are. Costs are whole, heights are halves at most. */
export type AskNear = (askers: readonly number[], heights: readonly number[], most: number) => Nearby

interface LeastPairing {
  /** −1 for a point left open. */
  readonly partner: readonly number[]
  readonly cost: number
  /** No pairing costs less. */
  readonly atLeast: number
  /** Points that some least pairing may leave open are among these. */
  readonly openable: readonly number[]
}

/** Costs that differ by less than `hair` are alike to `openable`. */
export function leastPairing(count: number, near: AskNear, open: 0 | 1 | 2 = 0, hair = 0): LeastPairing {
  return new Pairing(count, near, open).result(hair)
}

/** From a point of one node (a point, or a ring) to a point of another. */
interface Step {
  readonly from: number
  readonly to: number
}

const back = ({ from, to }: Step): Step => ({ from: to, to: from })

type Label = -1 | 0 | 1

const FIRST_ASKED = 6
/** Rings of so many points ask together. */
const MANY = 12
const EDGE = 0
const ASK = 1
const RING = 2

class Pairing {
  private readonly count: number
  private readonly near: AskNear
  private readonly open: number
  private free: number
  private time = 0
  private readonly events = new FlatQueue<number>()

  /** Per pair of points that is known. */
  private readonly ends: Step[] = []
  private readonly costs: number[] = []
  private readonly due: number[] = []
  private readonly numbers = new Map<number, number>()

  /** Per point: the outermost node that holds it, all prices round it when that was last settled, its pairs, how far neighbours are known. */
  private readonly outer: number[]
  private readonly risen: number[]
  private readonly pairsAt: number[][]
  private readonly known: number[]
  private readonly asked: number[]
  /** Whether it has asked together with its ring, and so not for all its own pairs. */
  private readonly together: boolean[]

  /** Per node, points first: rising, sinking or at rest since when; its own price then. */
  private readonly label: Label[]
  private readonly since: number[]
  private readonly price: number[]
  private readonly points: number[][]
  private readonly match: (Step | null)[]
  /** Of a sinking node: the step to the rising one above it. */
  private readonly above: (Step | null)[]
  /** Trees are named after the open point at their root. */
  private readonly tree: number[]
  private readonly ring: number[][] = []
  private readonly ringSteps: Step[][] = []
  private readonly members: number[][]
  private readonly seen: number[] = []
  private stamp = 0

  constructor(count: number, near: AskNear, open: number) {
    const each = <T>(make: (point: number) => T): T[] => Array.from({ length: count }, (_, point) => make(point))
    this.count = count
    this.near = near
    this.open = open
    this.free = count
    this.outer = each((point) => point)
    this.risen = each(() => 0)
    this.pairsAt = each(() => [])
    this.known = each(() => 0)
    this.asked = each(() => 0)
    this.together = each(() => false)
    this.label = each(() => 1)
    this.since = each(() => 0)
    this.price = each(() => 0)
    this.points = each((point) => [point])
    this.match = each(() => null)
    this.above = each(() => null)
    this.tree = each((point) => point)
    this.members = each((point) => [point])
  }

  result(hair: number): LeastPairing {
    if ((this.count - this.open) % 2 !== 0) throw new Error('impossible: an odd number of points to be paired')
    if (this.free > this.open) for (let point = 0; point < this.count; point++) this.ask(point)
    while (this.free > this.open) {
      if (this.events.length === 0) throw new Error('impossible: points that cannot be paired')
      this.time = this.events.peekValue() as number
      this.happen(this.events.pop() as number)
    }
    const openable = this.outer.flatMap((_, point) => (this.risenNow(point) >= this.time - 2 * hair ? [point] : []))
    return { ...this.opened(), openable }
  }

  private happen(event: number): void {
    const which = Math.floor(event / 3)
    if (event % 3 === EDGE) this.meet(which)
    else if (event % 3 === ASK) this.askWhenDue(which)
    else this.openWhenSunk(which)
  }

  private labelAt(point: number): Label {
    return this.label[this.outer[point] as number] as Label
  }

  private risenNow(point: number): number {
    const node = this.outer[point] as number
    return (this.risen[point] as number) + (this.label[node] as number) * (this.time - (this.since[node] as number))
  }

  private slack(pair: number): number {
    const { from, to } = this.ends[pair] as Step
    return (this.costs[pair] as number) - this.risenNow(from) - this.risenNow(to)
  }

  /** From now on a node has another label: what it rose or sank until now is written down. */
  private settle(node: number, label: Label): void {
    const change = (this.label[node] as number) * (this.time - (this.since[node] as number))
    if (change !== 0) {
      for (const point of this.points[node] as number[]) this.risen[point] = (this.risen[point] as number) + change
      this.price[node] = (this.price[node] as number) + change
    }
    this.label[node] = label
    this.since[node] = this.time
  }

  private await(pair: number): void {
    const { from, to } = this.ends[pair] as Step
    if (this.outer[from] === this.outer[to]) return
    const speed = this.labelAt(from) + this.labelAt(to)
    if (speed <= 0) return
    const time = this.time + this.slack(pair) / speed
    if (time >= (this.due[pair] as number)) return
    this.due[pair] = time
    this.events.push(pair * 3 + EDGE, time)
  }

  /** Pairs of these points may now become tight earlier than awaited. */
  private awaken(points: readonly number[]): void {
    for (const point of points) {
      for (const pair of this.pairsAt[point] as number[]) this.await(pair)
      if (this.labelAt(point) === 1) this.awaitAsking(point)
    }
  }

  private awaitAsking(point: number): void {
    const until = this.known[point] as number
    if (until === Number.POSITIVE_INFINITY) return
    this.events.push(point * 3 + ASK, this.time + Math.max(0, until / 2 - this.risenNow(point)))
  }

  private askWhenDue(point: number): void {
    if (this.labelAt(point) !== 1) return
    if (this.isServed(point)) this.awaitAsking(point)
    else this.ask(point)
  }

  /** Whether all neighbours are known that may be tight by now. */
  private isServed(point: number): boolean {
    return 2 * this.risenNow(point) < (this.known[point] as number)
  }

  private ask(point: number): void {
    const node = this.outer[point] as number
    const askers = (this.points[node] as number[]).length < MANY ? [point] : (this.points[node] as number[])
    const asked = Math.max(FIRST_ASKED, 2 * (this.asked[point] as number))
    const heights = askers.map((asker) => this.risenNow(asker))
    const { pairs, known } = this.near(
      askers,
      heights.map((height) => height / 2),
      asked,
    )
    askers.forEach((asker, place) => {
      this.asked[asker] = Math.max(asked, this.asked[asker] as number)
      this.known[asker] = Math.max(this.known[asker] as number, 2 * known + (heights[place] as number))
      this.together[asker] ||= askers.length > 1
    })
    for (const { from, to, cost } of pairs) this.learn(from, to, 2 * cost)
    if (this.label[node] === 1) for (const asker of askers) this.awaitAsking(asker)
  }

  /** Of an opened ring's part: what its points passed over when they asked with the ring. */
  private askAgain(node: number): void {
    const passed = (this.points[node] as number[]).filter((point) => this.together[point])
    for (const point of passed) {
      this.known[point] = 0
      this.asked[point] = 0
      this.together[point] = false
    }
    for (const point of passed) while (!this.isServed(point)) this.ask(point)
  }

  private keyOf(a: number, b: number): number {
    return Math.min(a, b) * this.count + Math.max(a, b)
  }

  private learn(from: number, to: number, cost: number): void {
    const key = this.keyOf(from, to)
    if (from === to || this.numbers.has(key)) return
    const pair = this.ends.push({ from, to }) - 1
    this.numbers.set(key, pair)
    this.costs.push(cost)
    this.due.push(Number.POSITIVE_INFINITY)
    this.pairsAt[from]?.push(pair)
    this.pairsAt[to]?.push(pair)
    this.await(pair)
  }

  private meet(pair: number): void {
    if (this.due[pair] === this.time) this.due[pair] = Number.POSITIVE_INFINITY
    const { from, to } = this.ends[pair] as Step
    const [a, b] = [this.outer[from] as number, this.outer[to] as number]
    const speed = (this.label[a] as number) + (this.label[b] as number)
    if (a === b || speed <= 0) return
    if (this.slack(pair) > 0) return this.await(pair)
    if (speed === 1) return this.label[a] === 1 ? this.grow(from, to) : this.grow(to, from)
    if (this.tree[a] === this.tree[b]) this.close(from, to)
    else this.join(from, to)
  }

  /** A tree takes in a pair at rest: its near half sinks, its far half rises. */
  private grow(from: number, to: number): void {
    const tree = this.tree[this.outer[from] as number] as number
    const near = this.outer[to] as number
    const far = this.outer[(this.match[near] as Step).to] as number
    this.settle(near, -1)
    this.settle(far, 1)
    this.above[near] = { from: to, to: from }
    for (const node of [near, far]) this.enter(node, tree)
    this.awaitOpening(near)
    this.awaken(this.points[far] as number[])
  }

  private enter(node: number, tree: number): void {
    this.tree[node] = tree
    this.members[tree]?.push(node)
  }

  /** Two trees meet: along the way from root to root, pairs and gaps change places, and the rest of both trees comes to rest. */
  private join(from: number, to: number): void {
    const trees = [from, to].map((point) => this.tree[this.outer[point] as number] as number)
    this.flip({ from, to })
    this.flip({ from: to, to: from })
    const rising: number[] = []
    for (const tree of trees) {
      for (const node of this.members[tree] as number[]) {
        if (!this.isOutermost(node) || this.tree[node] !== tree || this.label[node] === 0) continue
        if (this.label[node] === -1) rising.push(node)
        this.settle(node, 0)
      }
      this.members[tree] = []
    }
    this.free -= 2
    for (const node of rising) this.awaken(this.points[node] as number[])
  }

  private isOutermost(node: number): boolean {
    return this.outer[this.points[node]?.[0] as number] === node
  }

  private flip(first: Step): void {
    let step = first
    for (;;) {
      const node = this.outer[step.from] as number
      const old = this.match[node] as Step | null
      this.match[node] = step
      if (old === null) return
      const sinking = this.outer[old.to] as number
      const up = this.above[sinking] as Step
      this.match[sinking] = up
      step = back(up)
    }
  }

  /** Nodes from here to the root, with the step from each to the next. */
  private climb(start: number, stop: (node: number) => boolean): { nodes: number[]; steps: Step[] } {
    const nodes = [start]
    const steps: Step[] = []
    for (let node = start; !stop(node); ) {
      const step = (this.label[node] === 1 ? this.match[node] : this.above[node]) as Step | null
      if (step === null) break
      steps.push(step)
      node = this.outer[step.to] as number
      nodes.push(node)
    }
    return { nodes, steps }
  }

  /** Two rising nodes of one tree meet: with all between them and the node where their ways part they become one ring. */
  private close(from: number, to: number): void {
    const stamp = ++this.stamp
    const whole = this.climb(this.outer[from] as number, () => false)
    for (const node of whole.nodes) this.seen[node] = stamp
    const right = this.climb(this.outer[to] as number, (node) => this.seen[node] === stamp)
    const top = right.nodes.at(-1) as number
    const height = whole.nodes.indexOf(top)
    const nodes = [...whole.nodes.slice(0, height + 1).reverse(), ...right.nodes.slice(0, -1)]
    const steps = [...whole.steps.slice(0, height).reverse().map(back), { from, to }, ...right.steps]
    this.shrink(nodes, steps, top)
  }

  private shrink(nodes: number[], steps: Step[], top: number): void {
    const made = this.label.length
    const points = nodes.flatMap((node) => this.points[node] as number[])
    const woken = nodes.flatMap((node) => (this.label[node] === -1 ? (this.points[node] as number[]) : []))
    for (const node of nodes) this.settle(node, 0)
    this.label.push(1)
    this.since.push(this.time)
    this.price.push(0)
    this.points.push(points)
    this.match.push(this.match[top] as Step | null)
    this.above.push(null)
    this.tree.push(this.tree[top] as number)
    this.ring[made] = nodes
    this.ringSteps[made] = steps
    this.members[this.tree[top] as number]?.push(made)
    for (const point of points) this.outer[point] = made
    this.awaken(woken)
  }

  private awaitOpening(node: number): void {
    if (node >= this.count) this.events.push(node * 3 + RING, this.time + this.priceNow(node))
  }

  private priceNow(node: number): number {
    return (this.price[node] as number) + (this.label[node] as number) * (this.time - (this.since[node] as number))
  }

  private openWhenSunk(node: number): void {
    if (!this.isOutermost(node) || this.label[node] !== -1) return
    if (this.priceNow(node) > 0) this.awaitOpening(node)
    else this.unfold(node)
  }

  /** A ring that sank to nothing: the even way through it stays in the tree, the rest comes to rest in pairs. */
  private unfold(node: number): void {
    const tree = this.tree[node] as number
    const up = this.above[node] as Step
    this.settle(node, 0)
    this.freeRing(node)
    const ring = this.ring[node] as number[]
    const steps = this.ringSteps[node] as Step[]
    const size = ring.length
    const last = ring.indexOf(this.outer[(this.match[node] as Step).from] as number)
    let place = ring.indexOf(this.outer[up.from] as number)
    const forward = ((last - place + size) % size) % 2 === 0
    let above = up
    for (let label: Label = -1; ; label = label === -1 ? 1 : -1) {
      const member = ring[place] as number
      this.settle(member, label)
      this.enter(member, tree)
      if (label === -1) this.above[member] = above
      if (place === last && label === -1) break
      const next = forward ? (place + 1) % size : (place + size - 1) % size
      above = forward ? back(steps[place] as Step) : (steps[next] as Step)
      place = next
    }
    for (const member of ring) this.askAgain(member)
    for (const member of ring) {
      if (this.label[member] === -1) this.awaitOpening(member)
      else this.awaken(this.points[member] as number[])
    }
  }

  /** The members of a ring are outermost again; the one that is paired outside, or open, first, the others two by two round the ring. */
  private freeRing(node: number): void {
    const ring = this.ring[node] as number[]
    const steps = this.ringSteps[node] as Step[]
    for (const member of ring) {
      for (const point of this.points[member] as number[]) this.outer[point] = member
      this.since[member] = this.time
      this.label[member] = 0
    }
    const outside = this.match[node] as Step | null
    const first = this.outer[outside === null ? (this.tree[node] as number) : outside.from] as number
    this.match[first] = outside
    this.tree[first] = this.tree[node] as number
    const start = ring.indexOf(first)
    for (let place = 1; place < ring.length; place += 2) {
      const at = (start + place) % ring.length
      const step = steps[at] as Step
      this.match[ring[at] as number] = step
      this.match[ring[(at + 1) % ring.length] as number] = back(step)
    }
  }

  private opened(): { partner: number[]; cost: number; atLeast: number } {
    let floor = -this.open * this.time
    const nodes = [...new Set(this.outer)]
    for (const node of nodes) {
      this.settle(node, 0)
      floor += this.price[node] as number
      if (node < this.count) continue
      this.freeRing(node)
      nodes.push(...(this.ring[node] as number[]))
    }
    const partner = this.outer.map((_, point) => this.match[point]?.to ?? -1)
    const cost = partner.reduce(
      (sum, other, point) => (other > point ? sum + (this.costs[this.numbers.get(this.keyOf(point, other)) as number] as number) : sum),
      0,
    )
    return { partner, cost: cost / 2, atLeast: floor / 2 }
  }
}
