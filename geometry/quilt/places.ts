/**
 * Where each place of a quilt lies, what lies in it, and the framing strips that bring it to size.
 *
 * In      a quilt, its measures, its worn blocks.
 * Out     places with exact sizes in the measure's unit, from the first place's finished corner.
 */
import { lengthOf } from '../block/lengthsOf.ts'
import { add, compare, multiply, type Rational, rational, subtract, ZERO } from '../exact/rational.ts'
import type { FrameRound, Quilt, QuiltPlace } from '../values/quilt.ts'
import { type ExactSize, type Measures, spanOf, startOf, times } from './measures.ts'
import type { WornBlock } from './wornBlocks.ts'

/** One round of a frame as it is sewn on; lengths exact. */
interface LaidRound {
  readonly fabric: string
  /** Finished, at each side, and at top and bottom; 0 where none is sewn. */
  readonly across: Rational
  readonly down: Rational
  readonly oversize: Rational
  /** Cut: across the strip, then along it; two each. */
  readonly sides: ExactSize | null
  readonly topAndBottom: ExactSize | null
  readonly becomes: ExactSize
}

/** A place; for drawing, a block's size is all that has to be known of it. */
export interface LaidPlace<Laid = WornBlock> {
  readonly place: QuiltPlace
  /** Cells. */
  readonly size: readonly [number, number]
  readonly origin: ExactSize
  readonly finished: ExactSize
  readonly block: Laid | null
  /** What lies in it, finished, turned. */
  readonly content: ExactSize
  readonly frame: readonly LaidRound[]
  readonly fit: 'fits' | 'too-large' | 'too-small'
}

/** The size of a place in cells; one cell unless it says otherwise. */
const sizeInCells = ({ size = [1, 1] }: QuiltPlace): readonly [number, number] => size

/** Lays one place: where its finished area begins, its content and its frame's strips, in units of measure; lengths are exact. */
export function layPlace<Laid extends { readonly finished: ExactSize }>(
  quilt: Quilt,
  measures: Measures,
  blocks: ReadonlyMap<string, Laid>,
  place: QuiltPlace,
): LaidPlace<Laid> {
  const size = sizeInCells(place)
  const [column, row] = place.at
  const origin = [startOf(measures, 0, column), startOf(measures, 1, row)] as const
  const finished = [spanOf(measures, 0, size[0]), spanOf(measures, 1, size[1])] as const
  const block = place.block === undefined ? null : (blocks.get(place.block) as Laid)
  if (block === null) return { place, size, origin, finished, block, content: finished, frame: [], fit: 'fits' }
  const [w, h] = block.finished
  const content: ExactSize = (place.turn ?? 0) % 2 === 1 ? [h, w] : [w, h]
  return { place, size, origin, finished, block, content, ...framed(content, finished, place.frame ?? quilt.frame ?? [], measures.seam) }
}

/** Sides first, then top and bottom, as borders [S128]. */
function framed(content: ExactSize, finished: ExactSize, rounds: readonly FrameRound[], seam: Rational): Pick<LaidPlace, 'frame' | 'fit'> {
  let [w, h] = content
  const frame: LaidRound[] = []
  const tooLarge = (): boolean => compare(w, finished[0]) > 0 || compare(h, finished[1]) > 0
  for (const { finishedWidth, fabric, oversize: cutLarger } of rounds) {
    if (tooLarge()) return { frame, fit: 'too-large' }
    const width = finishedWidth === undefined ? null : lengthOf(finishedWidth)
    const across = width ?? half(subtract(finished[0], w))
    const down = width ?? half(subtract(finished[1], h))
    if (across.n === 0n && down.n === 0n) continue
    const round = roundOf([w, h], [across, down], fabric, cutLarger === undefined ? ZERO : lengthOf(cutLarger), seam)
    w = add(w, times(across, 2))
    h = add(h, times(down, 2))
    frame.push(round)
  }
  if (tooLarge()) return { frame, fit: 'too-large' }
  const filled = compare(w, finished[0]) === 0 && compare(h, finished[1]) === 0
  return { frame, fit: filled ? 'fits' : 'too-small' }
}

const half = (length: Rational): Rational => multiply(length, rational(1, 2))

function roundOf([w, h]: ExactSize, [across, down]: ExactSize, fabric: string, oversize: Rational, seam: Rational): LaidRound {
  const seams = times(seam, 2)
  const more = times(oversize, 2)
  const [sided, capped] = [across.n > 0n, down.n > 0n]
  const wide = add(add(w, times(across, 2)), sided ? more : ZERO)
  const high = add(add(h, times(down, 2)), capped ? more : ZERO)
  return {
    fabric,
    across,
    down,
    oversize,
    sides: sided ? [add(add(across, seams), oversize), add(h, seams)] : null,
    topAndBottom: capped ? [add(add(down, seams), oversize), add(wide, seams)] : null,
    becomes: [add(wide, seams), add(high, seams)],
  }
}
