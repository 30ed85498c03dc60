/**
 * Points where outlines begin, end and cross, and the straight lines they lie on.
 *
 * In      lines through two whole-number dots, and where two of them cross.
 * Out     exact comparisons: which of two points comes first, on which side of a line a point lies.
 * Exact   every point keeps a double near it and how far off that may be. A comparison uses doubles where they leave no doubt, whole
 *         doubles where the products fit, and BigInt otherwise; crossings are of original lines, never of lines through crossings, so numbers do not grow.
 */
import { crossSign, type Dot, greatestCommon } from './points.ts'

/** x/over and y/over. */
interface ExactPlace {
  readonly x: bigint
  readonly y: bigint
  readonly over: bigint
}

type Sign = -1 | 0 | 1

interface StraightLine {
  readonly x: number
  readonly y: number
  /** Runs right, or straight down; in lowest terms. */
  readonly dx: number
  readonly dy: number
}

const SAFE = Number.MAX_SAFE_INTEGER
/** The error of ten roundings of a double. */
const ROUNDING = 2 ** -49

const signOf = (n: number | bigint): Sign => (n > 0 ? 1 : n < 0 ? -1 : 0)

export class Points {
  private readonly lines: StraightLine[] = []
  private readonly lineNumbers = new Map<string, number>()
  private readonly xs: number[] = []
  private readonly ys: number[] = []
  private readonly slacks: number[] = []
  /** The exact place where it fits doubles; `overs` is 0 where it does not. */
  private readonly exactXs: number[] = []
  private readonly exactYs: number[] = []
  private readonly overs: number[] = []
  /** The two lines that cross there, −1 at a dot. */
  private readonly firsts: number[] = []
  private readonly seconds: number[] = []
  private readonly great = new Map<number, ExactPlace>()

  line([x, y]: Dot, to: Dot): number {
    const common = greatestCommon(to[0] - x, to[1] - y)
    const [dx, dy] = [(to[0] - x) / common, (to[1] - y) / common]
    const near = Math.max(Math.abs(dx), Math.abs(dy)) * Math.max(Math.abs(x), Math.abs(y)) < 2 ** 51
    const key = `${dx},${dy},${near ? dx * y - dy * x : BigInt(dx) * BigInt(y) - BigInt(dy) * BigInt(x)}`
    const known = this.lineNumbers.get(key)
    if (known !== undefined) return known
    this.lineNumbers.set(key, this.lines.length)
    return this.lines.push({ x, y, dx, dy }) - 1
  }

  dot([x, y]: Dot): number {
    return this.keep(x, y, 0, x, y, 1, -1, -1)
  }

  /** Where two lines cross that are not parallel. */
  crossing(first: number, second: number): number {
    const [a, b] = [this.lines[first] as StraightLine, this.lines[second] as StraightLine]
    const [over, share] = [product(a.dx, b.dy, a.dy, b.dx), product(b.x - a.x, b.dy, b.y - a.y, b.dx)]
    const along = Number(share) / Number(over)
    const [x, y] = [a.x + a.dx * along, a.y + a.dy * along]
    const slack = ROUNDING * (Math.abs(a.x) + Math.abs(a.y) + (Math.abs(a.dx) + Math.abs(a.dy)) * Math.abs(along))
    if (typeof over === 'number' && typeof share === 'number') {
      const reach = Math.abs(over) * Math.max(Math.abs(a.x), Math.abs(a.y)) + Math.abs(share) * Math.max(Math.abs(a.dx), Math.abs(a.dy))
      if (reach < SAFE) {
        const [px, py] = [a.x * over + a.dx * share, a.y * over + a.dy * share]
        const common = greatestCommon(greatestCommon(px, py), over) * Math.sign(over)
        const below = over / common
        return this.keep(x, y, below === 1 ? 0 : slack, px / common, py / common, below, first, second)
      }
    }
    return this.keep(x, y, slack, 0, 0, 0, first, second)
  }

  private keep(x: number, y: number, slack: number, exactX: number, exactY: number, over: number, first: number, second: number): number {
    this.xs.push(over === 1 ? exactX : x)
    this.ys.push(over === 1 ? exactY : y)
    this.slacks.push(slack)
    this.exactXs.push(exactX)
    this.exactYs.push(exactY)
    this.overs.push(over)
    this.firsts.push(first)
    return this.seconds.push(second) - 1
  }

  /** A double near it; `slack` says how far off it may be. */
  x(point: number): number {
    return this.xs[point] as number
  }

  y(point: number): number {
    return this.ys[point] as number
  }

  slack(point: number): number {
    return this.slacks[point] as number
  }

  exact(point: number): ExactPlace {
    const over = this.overs[point] as number
    if (over !== 0) return { x: BigInt(this.exactXs[point] as number), y: BigInt(this.exactYs[point] as number), over: BigInt(over) }
    const known = this.great.get(point)
    if (known !== undefined) return known
    const place = crossingOf(this.lines[this.firsts[point] as number] as StraightLine, this.lines[this.seconds[point] as number] as StraightLine)
    this.great.set(point, place)
    return place
  }

  /** From left to right, and from top to bottom on one upright line. */
  order(a: number, b: number): Sign {
    return a === b ? 0 : this.orderAcross(a, b) || this.orderDown(a, b)
  }

  orderAcross(a: number, b: number): Sign {
    const apart = (this.xs[a] as number) - (this.xs[b] as number)
    const doubt = (this.slacks[a] as number) + (this.slacks[b] as number)
    if (apart > doubt || apart < -doubt || doubt === 0) return signOf(apart)
    const quick = compared(this.exactXs[a] as number, this.overs[a] as number, this.exactXs[b] as number, this.overs[b] as number)
    if (quick !== null) return quick
    const [one, other] = [this.exact(a), this.exact(b)]
    return signOf(one.x * other.over - other.x * one.over)
  }

  private orderDown(a: number, b: number): Sign {
    const apart = (this.ys[a] as number) - (this.ys[b] as number)
    const doubt = (this.slacks[a] as number) + (this.slacks[b] as number)
    if (apart > doubt || apart < -doubt || doubt === 0) return signOf(apart)
    const quick = compared(this.exactYs[a] as number, this.overs[a] as number, this.exactYs[b] as number, this.overs[b] as number)
    if (quick !== null) return quick
    const [one, other] = [this.exact(a), this.exact(b)]
    return signOf(one.y * other.over - other.y * one.over)
  }

  /** On which side of a line a point lies: 1 clockwise (below a line that runs right), −1 the other, 0 on it. */
  side(line: number, point: number): Sign {
    if (this.firsts[point] === line || this.seconds[point] === line) return 0
    const { x, y, dx, dy } = this.lines[line] as StraightLine
    const [one, other] = [dx * ((this.ys[point] as number) - y), dy * ((this.xs[point] as number) - x)]
    const slack = this.slacks[point] as number
    const apart = one - other
    const size = Math.abs(one) + Math.abs(other)
    if (slack === 0 && size < SAFE) return signOf(apart)
    const doubt = ROUNDING * size + (Math.abs(dx) + Math.abs(dy)) * slack
    if (apart > doubt || apart < -doubt) return signOf(apart)
    const place = this.exact(point)
    return signOf(BigInt(dx) * (place.y - BigInt(y) * place.over) - BigInt(dy) * (place.x - BigInt(x) * place.over))
  }

  /** Whether the second line turns clockwise from the first (1), the other way (−1), or runs along it (0). */
  turn(first: number, second: number): Sign {
    const [a, b] = [this.lines[first] as StraightLine, this.lines[second] as StraightLine]
    return crossSign(a.dx, a.dy, b.dx, b.dy)
  }

  isUpright(line: number): boolean {
    return (this.lines[line] as StraightLine).dx === 0
  }

  /** Twice what a stretch of a line adds to the area on its clockwise side: a fraction, over above zero. */
  sweptArea(line: number, from: number, to: number): { readonly n: bigint; readonly d: bigint } {
    const { x, y, dx, dy } = this.lines[line] as StraightLine
    const [a, b] = [this.exact(from), this.exact(to)]
    const run = dx === 0 ? b.y * a.over - a.y * b.over : b.x * a.over - a.x * b.over
    const step = BigInt(dx === 0 ? dy : dx)
    return { n: run * (BigInt(x) * BigInt(dy) - BigInt(y) * BigInt(dx)), d: a.over * b.over * step }
  }

  /** The height of a line that is not upright, at x = n/d. Not in lowest terms. */
  heightAt(line: number, n: bigint, d: bigint): { readonly n: bigint; readonly d: bigint } {
    const { x, y, dx, dy } = this.lines[line] as StraightLine
    return { n: BigInt(y) * BigInt(dx) * d + BigInt(dy) * (n - BigInt(x) * d), d: BigInt(dx) * d }
  }
}

/** a·d − b·c: a double where it is exact. */
function product(a: number, d: number, b: number, c: number): number | bigint {
  const [one, other] = [a * d, b * c]
  return Math.abs(one) + Math.abs(other) < SAFE ? one - other : BigInt(a) * BigInt(d) - BigInt(b) * BigInt(c)
}

/** Compares n/over with m/under, both denominators positive; null where doubles do not hold the products exactly. */
function compared(n: number, over: number, m: number, under: number): Sign | null {
  const [one, other] = [n * under, m * over]
  return over !== 0 && under !== 0 && Math.abs(one) < SAFE && Math.abs(other) < SAFE ? signOf(one - other) : null
}

function crossingOf(a: StraightLine, b: StraightLine): ExactPlace {
  const [ax, ay, adx, ady] = [BigInt(a.x), BigInt(a.y), BigInt(a.dx), BigInt(a.dy)]
  const [bdx, bdy] = [BigInt(b.dx), BigInt(b.dy)]
  const over = adx * bdy - ady * bdx
  const share = (BigInt(b.x) - ax) * bdy - (BigInt(b.y) - ay) * bdx
  const flip = over < 0n ? -1n : 1n
  return { x: (ax * over + adx * share) * flip, y: (ay * over + ady * share) * flip, over: over * flip }
}
