/**
 * Pictures of stitch and flip and of strip sets; lines of stitching beside a marked one.
 *
 * In      a unit variant, and the sizes that its method cuts, in in or cm.
 * Out     drawings to scale, from the top left of the lowest square.
 * Source  flipped corners [S5].
 */
import { type Flip, pictureLeg } from './clippedCorners.ts'
import type { BookletContext, UnitVariant } from './bookletContext.ts'
import { cross, minus, plus, unitVector } from './pieceDrawing.ts'
import { boxAt, Sketch } from './sketch.ts'
import type { Drawing, Spot } from './values.ts'

/** A line from corner to corner, and one on each side of it a seam allowance away, within a box. */
export function besideLine(sketch: Sketch, from: Spot, to: Spot, seam: number, outline: readonly Spot[], cut: boolean): void {
  const along = unitVector(minus(to, from))
  const out: Spot = [along[1], -along[0]]
  for (const way of [1, -1]) {
    const start = plus(from, out, way * seam)
    const stretch = withinOutline([start, plus(to, out, way * seam)], outline)
    if (stretch !== null) sketch.line(stretch, 'stitch')
  }
  sketch.line([from, to], cut ? 'cut' : 'marked')
}

/** The part of a line inside a convex outline, clockwise; null where it misses. */
export function withinOutline([a, b]: readonly [Spot, Spot], outline: readonly Spot[]): [Spot, Spot] | null {
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

/** A base with small squares on corners: stitches on their lines; those that are flipped already lie right side up. */
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
  }
  return sketch.drawing(title, Math.max(wide, high) * 0.05)
}

/** Strips sewn side by side; with the cuts across them where `cut` is said. */
export function stripSetPicture(
  fabrics: readonly string[],
  across: number,
  length: number,
  each: number,
  cut: boolean,
  context: BookletContext,
): Drawing {
  const sketch = new Sketch()
  const { seam, say } = context
  const finished = across - 2 * seam
  fabrics.forEach((fabric, place) => {
    const top = place === 0 ? 0 : seam + place * finished
    const bottom = seam + (place + 1) * finished + (place === fabrics.length - 1 ? seam : 0)
    sketch.area(boxAt(0, top, length, bottom - top), fabric, 'right', 'seam')
  })
  const high = 2 * seam + fabrics.length * finished
  sketch.box(0, 0, length, high, 'thin')
  for (let place = 1; cut && place * each < length + 1e-9; place++) {
    sketch.line(
      [
        [place * each, -seam],
        [place * each, high + seam],
      ],
      'cut',
    )
  }
  return sketch.drawing(cut ? say.units.pictures.setCut : say.units.pictures.set, length * 0.02)
}
