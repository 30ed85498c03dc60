/**
 * Pictures of the methods that sew before they cut: squares on squares, with the marked line, the lines of stitching and the cuts.
 *
 * In      a unit variant, and the sizes that its method cuts, in in or cm.
 * Out     drawings to scale, from the top left of the lowest square.
 * Source  geese four at a time [S3], flipped corners [S5], two, four and eight triangles at a time [S37][S31][S25], hourglasses [S37].
 */
import { type Flip, pictureLeg } from './clippedCorners.ts'
import type { BookletContext, UnitVariant } from './bookletContext.ts'
import { clippedBy, cross, minus, plus, unitVector } from './pieceDrawing.ts'
import { boxAt, Sketch } from './sketch.ts'
import type { Drawing, Spot } from './values.ts'

const ROOT = Math.SQRT2

/** A line from corner to corner, and one on each side of it a seam allowance away, within a box. */
function besideLine(sketch: Sketch, from: Spot, to: Spot, seam: number, outline: readonly Spot[], cut: boolean): void {
  const along = unitVector(minus(to, from))
  const out: Spot = [along[1], -along[0]]
  for (const way of [1, -1]) {
    const start = plus(from, out, way * seam)
    const stretch = within([start, plus(to, out, way * seam)], outline)
    if (stretch !== null) sketch.line(stretch, 'stitch')
  }
  sketch.line([from, to], cut ? 'cut' : 'marked')
}

/** The part of a line inside a convex outline, clockwise. */
function within([a, b]: readonly [Spot, Spot], outline: readonly Spot[]): [Spot, Spot] | null {
  let [low, high] = [0, 1]
  outline.forEach((p, index) => {
    const q = outline[(index + 1) % outline.length] as Spot
    const side = minus(q, p)
    const [here, there] = [cross(side, minus(a, p)), cross(side, minus(b, p))]
    if (Math.abs(here - there) < 1e-12) return
    const at = here / (here - there)
    if (here < there) low = Math.max(low, at)
    else high = Math.min(high, at)
  })
  const way = minus(b, a)
  return low < high ? [plus(a, way, low), plus(a, way, high)] : null
}

/** Two squares, right sides together: `on` lies on top, its wrong side up. */
export function twoSquares(size: number, on: string, context: BookletContext, ways: 'one line' | 'all round' | 'both lines', title: string): Drawing {
  const sketch = new Sketch()
  const outline = boxAt(0, 0, size, size)
  sketch.area(outline, on, 'wrong', 'cut')
  const [a, b, c, d] = outline as [Spot, Spot, Spot, Spot]
  if (ways === 'all round') {
    const inner = boxAt(context.seam, context.seam, size - 2 * context.seam, size - 2 * context.seam)
    sketch.line(inner, 'stitch', true)
    sketch.line([a, c], 'cut')
    sketch.line([b, d], 'cut')
  } else {
    besideLine(sketch, d, b, context.seam, outline, ways === 'one line')
    if (ways === 'both lines') {
      besideLine(sketch, a, c, context.seam, outline, false)
      sketch.line(
        [
          [size / 2, 0],
          [size / 2, size],
        ],
        'cut',
      )
      sketch.line(
        [
          [0, size / 2],
          [size, size / 2],
        ],
        'cut',
      )
      sketch.line([d, b], 'cut')
      sketch.line([a, c], 'cut')
    }
  }
  return sketch.drawing(title, size * 0.05)
}

/** Two halves of the first round on each other, fabrics crossed: the other line, its stitches, the cut. */
export function crossedHalves(size: number, on: readonly [string, string], context: BookletContext, title: string): Drawing {
  // What is left of the squares after one seam.
  const side = size - ROOT * context.seam
  const sketch = new Sketch()
  const outline = boxAt(0, 0, side, side)
  const [a, b, c, d] = outline as [Spot, Spot, Spot, Spot]
  sketch.area([a, b, c], on[0], 'wrong', 'cut')
  sketch.area([a, c, d], on[1], 'wrong', 'cut')
  sketch.line([a, c], 'seam')
  besideLine(sketch, d, b, context.seam, outline, true)
  return sketch.drawing(title, side * 0.05)
}

/** A four-at-a-time batch: the first two small squares on the large one; then one half, pressed, with its third square. */
export function goosePictures(large: number, small: number, goose: string, corners: readonly string[], context: BookletContext): Drawing[] {
  const [p1, p2, p3] = corners as [string, string, string, string]
  const first = new Sketch()
  const whole = boxAt(0, 0, large, large)
  first.area(whole, goose, 'right', 'cut')
  first.area(boxAt(0, 0, small, small), p1, 'wrong', 'cut')
  first.area(boxAt(large - small, large - small, small, small), p3, 'wrong', 'cut')
  besideLine(first, [0, 0], [large, large], context.seam, whole, true)
  first.text([small * 0.62, small * 0.2], '1')
  first.text([large - small * 0.62, large - small * 0.2], '3')

  const d = context.seam * ROOT
  const pressed = ([x, y]: Spot): Spot => [y + d, x - d]
  const second = new Sketch()
  const half: Spot[] = [
    [d, 0],
    [large, 0],
    [large, large - d],
  ]
  second.area(half, goose, 'right', 'cut')
  // Only what lies beyond the stitches is folded back: the triangle between them and the cut is the allowance behind.
  const beyond = ([x, y]: Spot): number => x - y - d
  for (const [square, fabric] of [
    [boxAt(0, 0, small, small), p1],
    [boxAt(large - small, large - small, small, small), p3],
  ] as const) {
    second.area(clippedBy(square, beyond).map(pressed), fabric, 'right', 'cut')
  }
  const third = boxAt(large - small, 0, small, small)
  second.area(third, p2, 'wrong', 'cut')
  const to: Spot = [large - small, small]
  besideLine(second, [large, 0], to, context.seam, third, true)
  second.text([large - small * 0.25, small * 0.62], '2')
  return [
    first.drawing(
      'The large square, right side up, with small squares 1 and 3 on opposite corners, wrong side up: stitches on each side of the line, then the cut.',
      large * 0.05,
    ),
    second.drawing('One half, pressed, with small square 2 on the large corner: stitches on each side of its line, then the cut.', large * 0.05),
  ]
}

/** A base with small squares on corners: stitches on the line, the trim beyond it; those that are flipped already lie right side up. */
export function flippedPicture(
  variant: UnitVariant,
  base: string,
  flipped: readonly Flip[],
  laid: readonly Flip[],
  context: BookletContext,
  title: string,
): Drawing {
  const [wide, high] = variant.row.unfinished
  const square = pictureLeg(variant) + 2 * context.seam
  const sketch = new Sketch()
  sketch.area(boxAt(0, 0, wide, high), base, 'right', 'cut')
  const at = ({ corner }: Flip, [x, y]: Spot): Spot => [corner.endsWith('Left') ? x : wide - x, corner.startsWith('top') ? y : high - y]
  const spots = (flip: Flip, ...all: Spot[]): Spot[] => all.map((spot) => at(flip, spot))
  for (const flip of flipped) sketch.area(spots(flip, [0, 0], [square, 0], [0, square]), flip.fabric, 'right', 'cut')
  for (const flip of laid) {
    sketch.area(spots(flip, [0, 0], [square, 0], [square, square], [0, square]), flip.fabric, 'wrong', 'cut')
    sketch.line(spots(flip, [square, 0], [0, square]), 'stitch')
    const cut = square - context.seam * ROOT
    sketch.line(spots(flip, [cut, 0], [0, cut]), 'trim')
  }
  return sketch.drawing(title, Math.max(wide, high) * 0.05)
}

/** Strips sewn side by side, the cuts across them. */
export function stripSetPicture(fabrics: readonly string[], across: number, length: number, each: number, context: BookletContext): Drawing {
  const sketch = new Sketch()
  const { seam } = context
  const finished = across - 2 * seam
  fabrics.forEach((fabric, place) => {
    const top = place === 0 ? 0 : seam + place * finished
    const bottom = seam + (place + 1) * finished + (place === fabrics.length - 1 ? seam : 0)
    sketch.area(boxAt(0, top, length, bottom - top), fabric, 'right', 'seam')
  })
  const high = 2 * seam + fabrics.length * finished
  sketch.box(0, 0, length, high, 'thin')
  for (let place = 1; place * each < length + 1e-9; place++) {
    sketch.line(
      [
        [place * each, -seam],
        [place * each, high + seam],
      ],
      'cut',
    )
  }
  return sketch.drawing('The strip set, sewn, and the cuts across it.', length * 0.02)
}
