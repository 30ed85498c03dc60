/**
 * The three layers of a quilted block, one above the other as if in the air, the lower two with their names.
 *
 * In      the booklet context; the backing's and the batting's cut sizes in the measure's unit.
 * Out     a picture: each layer is seen aslant, so that all three are seen whole.
 */
import type { Size } from '../../../values/block.ts'
import type { BookletContext } from '../bookletContext.ts'
import { boxAt, Sketch } from '../sketch.ts'
import type { Drawing, Spot } from '../values.ts'

/** How far a layer leans and how flat it lies, as parts of its depth. */
const LEAN = 0.5
const FLAT = 0.46

export function layersPicture(context: BookletContext, backing: Size, batting: Size): Drawing {
  const words = context.say.book.layersPicture
  const sketch = new Sketch()
  const deepest = Math.max(backing[1], batting[1])
  const widest = Math.max(backing[0], batting[0])
  const step = deepest * FLAT * 0.5
  const aslant =
    (down: number) =>
    ([x, y]: Spot): Spot => [x - y * LEAN, y * FLAT + down]
  const centred = ([wide, high]: Size): Spot[] => boxAt(-wide / 2, -high / 2, wide, high)
  // Each name stands on the strip that the layer above leaves free.
  const named = ([, high]: Size, down: number, text: string): void => {
    const [x, y] = aslant(down)([0, high / 2])
    sketch.text([x, y - step / 2], text)
  }
  // The lowest is drawn first: each covers what lies under it.
  sketch.area(centred(backing).map(aslant(2 * step)), null, 'wrong', 'cut')
  named(backing, 2 * step, words.backing)
  sketch.area(centred(batting).map(aslant(step)), null, 'right', 'cut')
  named(batting, step, words.batting)
  const [wide, high] = context.report.block.finished
  sketch.area(centred(context.report.block.withBorders).map(aslant(0)), null, 'right', 'cut')
  for (const { corners, fabric } of context.patches.values()) {
    const moved = corners.map(([x, y]): Spot => [x - wide / 2, y - high / 2])
    sketch.area(moved.map(aslant(0)), fabric)
  }
  return sketch.drawing(words.title, widest * 0.03)
}
