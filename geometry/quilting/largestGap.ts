/**
 * The largest gap between stitched lines: the widest circle on the fabric that no stitch enters.
 *
 * In      lines, and the outline of the fabric; whether its edge holds the batting as a stitched line does (joined or bound) or is loose.
 * Out     where, how wide, and an upper bound on the width; null where nothing is stitched and nothing holds the batting.
 * How     the distances of two points from the stitches differ by no more than the distance between the points. So the distance of a square's middle
 *         plus half its diagonal bounds the whole square; the most promising square is quartered until the bound and the best found meet.
 * Exact   both widths are correct bounds whatever the budget of steps; they meet to a thousandth of the fabric's longer side.
 */
import FlatQueue from 'flatqueue'
import { awayFrom, liesIn, type StitchPoint, type StitchedLine, stretchesOf } from './stitchedLines.ts'

export interface Gap {
  readonly at: StitchPoint
  /** Of the circle found. */
  readonly width: number
  readonly atMost: number
}

type Stretch = readonly [StitchPoint, StitchPoint]

interface Square {
  readonly middle: StitchPoint
  readonly half: number
  /** Stretches that are nearest to some point of the square. */
  readonly near: readonly Stretch[]
}

const PRECISION = 1e-3
const BUDGET = 300_000

export function largestGap(lines: readonly StitchedLine[], outline: readonly StitchPoint[], edge: 'held' | 'loose' = 'held'): Gap | null {
  const sides = stretchesOf({ points: outline, closed: true })
  const stitched = [...lines.flatMap(stretchesOf), ...(edge === 'held' ? sides : [])]
  return stitched.length === 0 ? null : new Search(outline, sides).largest(stitched)
}

class Search {
  private readonly outline: readonly StitchPoint[]
  private readonly sides: readonly Stretch[]
  private readonly squares: Square[] = []
  private readonly queue = new FlatQueue<number>()
  private best: { at: StitchPoint; radius: number } = { at: [0, 0], radius: 0 }

  constructor(outline: readonly StitchPoint[], sides: readonly Stretch[]) {
    this.outline = outline
    this.sides = sides
    this.best.at = outline[0] as StitchPoint
  }

  largest(stitched: readonly Stretch[]): Gap {
    const xs = this.outline.map(([x]) => x)
    const ys = this.outline.map(([, y]) => y)
    const [left, top] = [Math.min(...xs), Math.min(...ys)]
    const half = Math.max(Math.max(...xs) - left, Math.max(...ys) - top) / 2
    const close = half * PRECISION
    this.weigh([left + half, top + half], half, stitched)
    for (let step = 0; step < BUDGET && this.queue.length > 0 && -(this.queue.peekValue() as number) > this.best.radius + close; step++) {
      const item = this.queue.pop() as number
      const { middle, half: wide, near } = this.squares[item] as Square
      delete this.squares[item]
      const quarter = wide / 2
      for (const dx of [-quarter, quarter]) for (const dy of [-quarter, quarter]) this.weigh([middle[0] + dx, middle[1] + dy], quarter, near)
    }
    const bound = this.queue.length > 0 ? Math.max(this.best.radius, -(this.queue.peekValue() as number)) : this.best.radius
    return { at: this.best.at, width: 2 * this.best.radius, atMost: 2 * bound }
  }

  private weigh(middle: StitchPoint, half: number, among: readonly Stretch[]): void {
    const reach = half * Math.SQRT2
    const inside = liesIn(this.outline, middle)
    if (!inside && this.sides.every((side) => awayFrom(middle, side) > reach)) return
    const away = among.map((stretch) => awayFrom(middle, stretch))
    const radius = away.reduce((a, b) => Math.min(a, b))
    if (inside && radius > this.best.radius) this.best = { at: middle, radius }
    if (radius + reach <= this.best.radius) return
    const near = among.filter((_, place) => (away[place] as number) <= radius + 2 * reach)
    this.queue.push(this.squares.push({ middle, half, near }) - 1, -(radius + reach))
  }
}
