/**
 * Pair points so that the sum over all pairs is the least: minimum-weight perfect matching in a complete graph.
 *
 * In      an even number of points, and the cost of each pair (whole, from 0 to 2^40).
 * Out     for each point its partner.
 * How     Edmonds: keep a price for every point and every odd ring of points ("blossom") so that no pair costs less than its prices; grow trees of
 *         tight pairs from the points still alone, shrink odd rings, and raise prices until a tree reaches another. A pairing made only of tight
 *         pairs costs exactly the sum of the prices, and no pairing can cost less: so it is the minimum. Time grows with the cube of the points.
 * Source  J. Edmonds, Paths, trees, and flowers (1965); Z. Galil, Efficient algorithms for finding maximum matching in graphs (1986). From memory.
 */
export function leastPairing(count: number, cost: (a: number, b: number) => number): number[] {
  if (count === 0) return []
  return new Pairing(count, cost).pairs()
}

/** Points are 1 … n, blossoms n + 1 … 2n; 0 is nobody. Weights are turned round so that the heaviest pairing is the cheapest. */
class Pairing {
  private readonly n: number
  private top: number
  private readonly wide: number
  private readonly weight: Float64Array
  private readonly from: Int32Array
  private readonly to: Int32Array
  private readonly label: Float64Array
  private readonly match: Int32Array
  private readonly slack: Int32Array
  private readonly outer: Int32Array
  private readonly parent: Int32Array
  private readonly sign: Int8Array
  private readonly visited: Int32Array
  private readonly holder: Int32Array
  private readonly rings: number[][]
  private queue: number[] = []
  private visit = 0

  constructor(n: number, cost: (a: number, b: number) => number) {
    this.n = n
    this.top = n
    const wide = 2 * n + 2
    this.wide = wide
    this.weight = new Float64Array(wide * wide)
    this.from = new Int32Array(wide * wide)
    this.to = new Int32Array(wide * wide)
    this.holder = new Int32Array(wide * (n + 1))
    this.label = new Float64Array(wide)
    this.match = new Int32Array(wide)
    this.slack = new Int32Array(wide)
    this.outer = new Int32Array(wide)
    this.parent = new Int32Array(wide)
    this.sign = new Int8Array(wide)
    this.visited = new Int32Array(wide)
    this.rings = Array.from({ length: wide }, () => [])
    let most = 0
    for (let a = 1; a <= n; a++) for (let b = 1; b <= n; b++) if (a !== b) most = Math.max(most, cost(a - 1, b - 1))
    // Far above any saving, so that nobody stays alone.
    const base = (most + 1) * 2
    for (let a = 1; a <= n; a++) {
      this.outer[a] = a
      for (let b = 1; b <= n; b++) {
        const at = a * wide + b
        this.from[at] = a
        this.to[at] = b
        this.weight[at] = a === b ? 0 : base - cost(a - 1, b - 1)
        this.holder[a * (n + 1) + b] = a === b ? a : 0
      }
      this.label[a] = base
    }
  }

  pairs(): number[] {
    while (this.grow());
    return Array.from({ length: this.n }, (_, point) => (this.match[point + 1] as number) - 1)
  }

  private get(array: Int32Array | Float64Array | Int8Array, at: number): number {
    return array[at] as number
  }

  private spare(at: number): number {
    const [a, b] = [this.get(this.from, at), this.get(this.to, at)]
    return this.get(this.label, a) + this.get(this.label, b) - 2 * this.get(this.weight, a * this.wide + b)
  }

  private updateSlack(u: number, x: number): void {
    const now = this.get(this.slack, x)
    if (now === 0 || this.spare(u * this.wide + x) < this.spare(now * this.wide + x)) this.slack[x] = u
  }

  private setSlack(x: number): void {
    this.slack[x] = 0
    for (let u = 1; u <= this.n; u++)
      if (this.get(this.weight, u * this.wide + x) > 0 && this.outer[u] !== x && this.sign[this.outer[u] as number] === 0) this.updateSlack(u, x)
  }

  private push(x: number): void {
    if (x <= this.n) this.queue.push(x)
    else for (const inner of this.rings[x] as number[]) this.push(inner)
  }

  private setOuter(x: number, b: number): void {
    this.outer[x] = b
    if (x > this.n) for (const inner of this.rings[x] as number[]) this.setOuter(inner, b)
  }

  private evenPlace(b: number, x: number): number {
    const ring = this.rings[b] as number[]
    const place = ring.indexOf(x)
    if (place % 2 === 0) return place
    this.rings[b] = [ring[0] as number, ...ring.slice(1).reverse()]
    return ring.length - place
  }

  private setMatch(u: number, v: number): void {
    const at = u * this.wide + v
    this.match[u] = this.to[at] as number
    if (u <= this.n) return
    const x = this.get(this.holder, u * (this.n + 1) + this.get(this.from, at))
    const place = this.evenPlace(u, x)
    const ring = this.rings[u] as number[]
    for (let i = 0; i < place; i++) this.setMatch(ring[i] as number, ring[i ^ 1] as number)
    this.setMatch(x, v)
    this.rings[u] = [...ring.slice(place), ...ring.slice(0, place)]
  }

  private augment(first: number, second: number): void {
    let [u, v] = [first, second]
    for (;;) {
      const next = this.get(this.outer, this.get(this.match, u))
      this.setMatch(u, v)
      if (next === 0) return
      const above = this.get(this.outer, this.get(this.parent, next))
      this.setMatch(next, above)
      u = above
      v = next
    }
  }

  private meetingPoint(first: number, second: number): number {
    let [u, v] = [first, second]
    this.visit++
    while (u !== 0 || v !== 0) {
      if (u !== 0) {
        if (this.visited[u] === this.visit) return u
        this.visited[u] = this.visit
        u = this.get(this.outer, this.get(this.match, u))
        if (u !== 0) u = this.get(this.outer, this.get(this.parent, u))
      }
      ;[u, v] = [v, u]
    }
    return 0
  }

  private shrink(u: number, meeting: number, v: number): void {
    let b = this.n + 1
    while (b <= this.top && this.outer[b] !== 0) b++
    if (b > this.top) this.top++
    this.label[b] = 0
    this.sign[b] = 0
    this.match[b] = this.get(this.match, meeting)
    const climb = (start: number): number[] => {
      const passed: number[] = []
      for (let x = start; x !== meeting; ) {
        const y = this.get(this.outer, this.get(this.match, x))
        passed.push(x, y)
        this.push(y)
        x = this.get(this.outer, this.get(this.parent, y))
      }
      return passed
    }
    const ring = [meeting, ...climb(u).reverse(), ...climb(v)]
    this.rings[b] = ring
    this.setOuter(b, b)
    for (let x = 1; x <= this.top; x++) {
      this.weight[b * this.wide + x] = 0
      this.weight[x * this.wide + b] = 0
    }
    for (let x = 1; x <= this.n; x++) this.holder[b * (this.n + 1) + x] = 0
    for (const inner of ring) {
      for (let x = 1; x <= this.top; x++) {
        const [mine, its] = [b * this.wide + x, inner * this.wide + x]
        if (this.get(this.weight, mine) === 0 || this.spare(its) < this.spare(mine)) {
          this.copy(its, mine)
          this.copy(x * this.wide + inner, x * this.wide + b)
        }
      }
      for (let x = 1; x <= this.n; x++) if (this.get(this.holder, inner * (this.n + 1) + x) !== 0) this.holder[b * (this.n + 1) + x] = inner
    }
    this.setSlack(b)
  }

  private copy(source: number, target: number): void {
    this.weight[target] = this.get(this.weight, source)
    this.from[target] = this.get(this.from, source)
    this.to[target] = this.get(this.to, source)
  }

  private unfold(b: number): void {
    for (const inner of this.rings[b] as number[]) this.setOuter(inner, inner)
    const x = this.get(this.holder, b * (this.n + 1) + this.get(this.from, b * this.wide + this.get(this.parent, b)))
    const place = this.evenPlace(b, x)
    const ring = this.rings[b] as number[]
    for (let i = 0; i < place; i += 2) {
      const [one, next] = [ring[i] as number, ring[i + 1] as number]
      this.parent[one] = this.get(this.from, next * this.wide + one)
      this.sign[one] = 1
      this.sign[next] = 0
      this.slack[one] = 0
      this.setSlack(next)
      this.push(next)
    }
    this.sign[x] = 1
    this.parent[x] = this.get(this.parent, b)
    for (let i = place + 1; i < ring.length; i++) {
      this.sign[ring[i] as number] = -1
      this.setSlack(ring[i] as number)
    }
    this.outer[b] = 0
  }

  private tight(at: number): boolean {
    const [u, v] = [this.get(this.outer, this.get(this.from, at)), this.get(this.outer, this.get(this.to, at))]
    if (this.sign[v] === -1) {
      this.parent[v] = this.get(this.from, at)
      this.sign[v] = 1
      const next = this.get(this.outer, this.get(this.match, v))
      this.slack[v] = 0
      this.slack[next] = 0
      this.sign[next] = 0
      this.push(next)
    } else if (this.sign[v] === 0) {
      const meeting = this.meetingPoint(u, v)
      if (meeting === 0) {
        this.augment(u, v)
        this.augment(v, u)
        return true
      }
      this.shrink(u, meeting, v)
    }
    return false
  }

  /** One more pair; false when everybody has a partner. */
  private grow(): boolean {
    this.sign.fill(-1)
    this.slack.fill(0)
    this.queue = []
    for (let x = 1; x <= this.top; x++)
      if (this.outer[x] === x && this.match[x] === 0) {
        this.parent[x] = 0
        this.sign[x] = 0
        this.push(x)
      }
    if (this.queue.length === 0) return false
    for (;;) {
      if (this.scan()) return true
      if (!this.raise()) return false
      for (let x = 1; x <= this.top; x++) {
        const u = this.get(this.slack, x)
        if (this.outer[x] === x && u !== 0 && this.outer[u] !== x && this.spare(u * this.wide + x) === 0 && this.tight(u * this.wide + x)) return true
      }
      for (let b = this.n + 1; b <= this.top; b++) if (this.outer[b] === b && this.sign[b] === 1 && this.label[b] === 0) this.unfold(b)
    }
  }

  private scan(): boolean {
    for (let head = 0; head < this.queue.length; head++) {
      const u = this.queue[head] as number
      if (this.sign[this.outer[u] as number] === 1) continue
      for (let v = 1; v <= this.n; v++) {
        const at = u * this.wide + v
        if (this.get(this.weight, at) <= 0 || this.outer[u] === this.outer[v]) continue
        if (this.spare(at) === 0) {
          if (this.tight(at)) return true
        } else this.updateSlack(u, this.get(this.outer, v))
      }
    }
    this.queue = []
    return false
  }

  private raise(): boolean {
    let by = Number.POSITIVE_INFINITY
    for (let b = this.n + 1; b <= this.top; b++) if (this.outer[b] === b && this.sign[b] === 1) by = Math.min(by, this.get(this.label, b) / 2)
    for (let x = 1; x <= this.top; x++) {
      const u = this.get(this.slack, x)
      if (this.outer[x] !== x || u === 0) continue
      if (this.sign[x] === -1) by = Math.min(by, this.spare(u * this.wide + x))
      else if (this.sign[x] === 0) by = Math.min(by, this.spare(u * this.wide + x) / 2)
    }
    for (let u = 1; u <= this.n; u++) {
      const sign = this.sign[this.outer[u] as number]
      if (sign === 0) {
        if (this.get(this.label, u) <= by) return false
        this.label[u] = this.get(this.label, u) - by
      } else if (sign === 1) this.label[u] = this.get(this.label, u) + by
    }
    for (let b = this.n + 1; b <= this.top; b++) {
      if (this.outer[b] !== b) continue
      if (this.sign[b] === 0) this.label[b] = this.get(this.label, b) + 2 * by
      else if (this.sign[b] === 1) this.label[b] = this.get(this.label, b) - 2 * by
    }
    return true
  }
}
