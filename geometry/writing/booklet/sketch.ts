/**
 * A picture in the making: marks in any place, moved to the picture's top left once all are there.
 *
 * In      marks in the measure's unit.
 * Out     a drawing whose marks lie within its width and height, a margin all round.
 */
import { boundsOf } from './pieceDrawing.ts'
import type { Drawing, LineStyle, Mark, PointMark, Spot } from './values.ts'

export class Sketch {
  private readonly marks: Mark[] = []

  area(outline: readonly Spot[], fabric: string | null, side: 'right' | 'wrong' = 'right', line: 'cut' | 'seam' | 'none' = 'seam'): void {
    if (outline.length > 2) this.marks.push({ type: 'area', outline, fabric, side, line })
  }

  line(points: readonly Spot[], style: LineStyle, closed = false): void {
    this.marks.push({ type: 'line', points, style, ...(closed ? { closed } : {}) })
  }

  box(x: number, y: number, width: number, height: number, style: LineStyle): void {
    this.line(boxAt(x, y, width, height), style, true)
  }

  arrow(from: Spot, to: Spot, means: 'press' | 'turn' | 'grain' = 'press'): void {
    this.marks.push({ type: 'arrow', from, to, means })
  }

  point(at: Spot, mark: PointMark, text?: string): void {
    this.marks.push({ type: 'point', at, mark, ...(text === undefined ? {} : { text }) })
  }

  text(at: Spot, text: string, size: 'small' | 'normal' = 'normal', align: 'left' | 'middle' | 'right' = 'middle'): void {
    this.marks.push({ type: 'text', at, text, size, align })
  }

  /** Marks drawn elsewhere. */
  marksOf(marks: readonly Mark[]): void {
    this.marks.push(...marks)
  }

  /** Left for right, as the wrong side lies on the ironing board: all that is drawn so far. */
  turnOver(): void {
    const over = ([x, y]: Spot): Spot => [-x, y]
    this.marks.splice(0, this.marks.length, ...this.marks.map((mark) => movedMark(mark, over)))
  }

  /** All of another sketch, moved. */
  add(other: Sketch, dx: number, dy: number): void {
    for (const mark of other.marks) this.marks.push(movedMark(mark, ([x, y]) => [x + dx, y + dy]))
  }

  /** Left, top, right and bottom of all marks. */
  bounds(): readonly [number, number, number, number] {
    const spots = this.marks.flatMap(spotsOf)
    const { left, top, right, bottom } = boundsOf(spots)
    return spots.length === 0 ? [0, 0, 1, 1] : [left, top, right, bottom]
  }

  /** The finished picture, with a margin in the unit of measure all round. */
  drawing(title: string, margin: number): Drawing {
    const [left, top, right, bottom] = this.bounds()
    const moved = ([x, y]: Spot): Spot => [tidyPlace(x - left + margin), tidyPlace(y - top + margin)]
    return {
      width: tidyPlace(right - left + 2 * margin),
      height: tidyPlace(bottom - top + 2 * margin),
      marks: this.marks.map((mark) => movedMark(mark, moved)),
      title,
    }
  }
}

/** A length to a millionth, never minus zero. */
export const tidyPlace = (length: number): number => Math.round(length * 1e6) / 1e6 + 0

/** The corners of a box, clockwise from its top left. */
export const boxAt = (x: number, y: number, width: number, height: number): Spot[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
]

function spotsOf(mark: Mark): readonly Spot[] {
  if (mark.type === 'area') return mark.outline
  if (mark.type === 'line' || mark.type === 'leg') return mark.points
  return mark.type === 'arrow' ? [mark.from, mark.to] : [mark.at]
}

type Move = (spot: Spot) => Spot

function movedMark(mark: Mark, move: Move): Mark {
  if (mark.type === 'area') return { ...mark, outline: mark.outline.map(move) }
  if (mark.type === 'line' || mark.type === 'leg') return { ...mark, points: mark.points.map(move) }
  if (mark.type === 'arrow') return { ...mark, from: move(mark.from), to: move(mark.to) }
  return { ...mark, at: move(mark.at) }
}
