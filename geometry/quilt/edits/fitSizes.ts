/**
 * The size of place that takes all of a quilt's blocks.
 *
 * In      a quilt.
 * Out     the least finished cell in which every block fits its place, with the rounds of its frame whose width is fixed; exact, as a file writes it.
 */
import { lengthOf } from '../../block/lengthsOf.ts'
import { add, compare, divide, multiply, type Rational, rational, subtract, toFile, ZERO } from '../../exact/rational.ts'
import type { Length } from '../../values/block.ts'
import type { FrameRound, Quilt, QuiltPlace } from '../../values/quilt.ts'
import { type ExactSize, measuresOf } from '../measures.ts'
import { finishedOf } from '../wornBlocks.ts'
import { placeSize } from './quiltEdit.ts'

/** The least cell for all blocks that lie in the quilt; null where none does. A quilt of square places gets a square one. */
export function cellForAll(quilt: Quilt): Length | readonly [Length, Length] | null {
  const { gap } = measuresOf(quilt)
  const sizes = new Map(quilt.blocks.map(({ id, block }) => [id, finishedOf(block)]))
  let most: ExactSize = [ZERO, ZERO]
  for (const place of quilt.places) {
    const size = place.block === undefined ? undefined : sizes.get(place.block)
    if (size === undefined) continue
    const [across, down] = placeSize(place)
    const [w, h] = framed(size, place, quilt.frame ?? [])
    most = [larger(most[0], cellOf(w, across, gap)), larger(most[1], cellOf(h, down, gap))]
  }
  if (most[0].n === 0n) return null
  if (typeof quilt.grid.cell === 'object') return [toFile(most[0]), toFile(most[1])]
  return toFile(larger(most[0], most[1]))
}

const larger = (one: Rational, other: Rational): Rational => (compare(one, other) >= 0 ? one : other)

/** A block as it lies, with the rounds of its frame that have a width. */
function framed([w, h]: ExactSize, { turn = 0, frame }: QuiltPlace, usual: readonly FrameRound[]): ExactSize {
  const fixed = (frame ?? usual).reduce<Rational>(
    (all, { finishedWidth }) => (finishedWidth === undefined ? all : add(all, multiply(lengthOf(finishedWidth), rational(2)))),
    ZERO,
  )
  return turn % 2 === 1 ? [add(h, fixed), add(w, fixed)] : [add(w, fixed), add(h, fixed)]
}

/** The cell of which so many, with gaps between them, make a length. */
const cellOf = (length: Rational, cells: number, gap: Rational): Rational =>
  divide(subtract(length, multiply(gap, rational(cells - 1))), rational(cells))
