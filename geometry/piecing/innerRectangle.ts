/**
 * A rectangle inside a piece, filled by whole parts: a block within the block, which a maker sews first.
 *
 * In      the parts' boxes (steps) and twice their areas.
 * Out     the places of the parts of the largest such rectangle of at most `most` parts, two at least, not all of them; null where there is none.
 * Exact   whole numbers: parts do not overlap, so they fill a rectangle when none crosses its edge and their areas add up to it.
 */
import type { PartBox } from './rows.ts'

export interface SizedPart {
  readonly box: PartBox
  readonly twice: bigint
}

/** The most corners tried: with more, a piece has too many parts for this to help. */
const MOST_CORNERS = 400

export function innerRectangle(parts: readonly SizedPart[], most: number): readonly number[] | null {
  const low = corners(parts.map(({ box }) => box.low))
  const high = corners(parts.map(({ box }) => box.high))
  if (low.length > MOST_CORNERS || high.length > MOST_CORNERS) return null
  let best: readonly number[] | null = null
  for (const from of low)
    for (const to of high) {
      if (to[0] <= from[0] || to[1] <= from[1]) continue
      const inside = filledBy(parts, from, to, most)
      if (inside !== null && inside.length > (best?.length ?? 1)) best = inside
    }
  return best
}

type Corner = readonly [number, number]

const corners = (all: readonly Corner[]): Corner[] => [...new Map(all.map((corner) => [corner.join(), corner])).values()]

function filledBy(parts: readonly SizedPart[], from: Corner, to: Corner, most: number): number[] | null {
  const inside: number[] = []
  let area = 0n
  for (let place = 0; place < parts.length; place++) {
    const { box, twice } = parts[place] as SizedPart
    if (box.high[0] <= from[0] || box.low[0] >= to[0] || box.high[1] <= from[1] || box.low[1] >= to[1]) continue
    if (box.low[0] < from[0] || box.high[0] > to[0] || box.low[1] < from[1] || box.high[1] > to[1]) return null
    if (inside.push(place) > most) return null
    area += twice
  }
  if (inside.length < 2 || inside.length === parts.length) return null
  return area === 2n * BigInt(to[0] - from[0]) * BigInt(to[1] - from[1]) ? inside : null
}
