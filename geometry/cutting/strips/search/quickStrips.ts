/**
 * Good strips, found fast enough for every edit.
 *
 * In      a task, and steps to spend.
 * Out     strips that hold every piece.
 * How     one strip after the other, each the one whose pieces have the most value for its height. At first the value of a piece is its area. When all are
 *         laid, a piece in a half-empty strip has cost more than its area: that cost is its value in the next round, so that it is
 *         laid earlier, while something still fits beside it. The best round is kept.
 */
import type { Filler } from './fillStrips.ts'
import { type PieceKind, type FilledStrip, totalHeight, lowered, type StripTask, wideIn } from './stripTask.ts'

/** How many heights are filled for each strip, the most promising ones. */
const TRIED = 3

interface Rounds {
  readonly steps: number
  readonly rounds: number
  /** The values of pieces in the first round; their area by default. */
  readonly worth?: ArrayLike<number>
  /** The search stops once the strips are no longer than this. */
  readonly until?: number
  readonly left?: ArrayLike<number>
  readonly seen?: (strip: FilledStrip) => void
}

export function quickStrips(filler: Filler, { steps, rounds, worth: first, until = 0, left, seen }: Rounds): FilledStrip[] {
  const { task } = filler
  const worth = Float64Array.from(task.kinds, ({ long, short }, kind) => {
    const area = (long * short) / task.width
    // A price may be zero, and a piece without value would never be laid.
    return Math.max(first?.[kind] ?? area, area / 10)
  })
  const end = filler.steps + steps
  let best: FilledStrip[] | null = null
  for (let round = 0; round < rounds; round++) {
    const strips = laid(filler, worth, left)
    if (seen !== undefined) strips.forEach(seen)
    if (best === null || totalHeight(strips) < totalHeight(best)) best = strips
    if (totalHeight(best) <= until || filler.steps > end) break
    for (const strip of strips) revalue(task, strip, worth)
  }
  return best as FilledStrip[]
}

function laid(filler: Filler, worth: Float64Array, given?: ArrayLike<number>): FilledStrip[] {
  const { task } = filler
  const left = Int32Array.from(task.kinds, ({ count }, kind) => given?.[kind] ?? count)
  const strips: FilledStrip[] = []
  while (left.some((count) => count > 0)) {
    const strip = lowered(task, bestStrip(filler, worth, left))
    // Repeats the same strip while there are pieces for it.
    const times = Math.min(...[...strip.held].map(([kind, count]) => Math.floor((left[kind] as number) / count)))
    for (const [kind, count] of strip.held) left[kind] = (left[kind] as number) - times * count
    for (let time = 0; time < times; time++) strips.push(strip)
  }
  return strips
}

function bestStrip(filler: Filler, worth: Float64Array, left: Int32Array): FilledStrip {
  const { heights } = filler
  const bounds = filler.bounds(worth, left)
  const promise = (index: number): number => (bounds[index] as number) / (heights[index] as number)
  const tried: number[] = []
  for (let index = 0; index < heights.length; index++) {
    let place = tried.length
    while (place > 0 && promise(tried[place - 1] as number) < promise(index)) place--
    if (place < TRIED) tried.splice(place, 0, index)
    if (tried.length > TRIED) tried.pop()
  }
  let best: FilledStrip | null = null
  let most = 0
  for (const index of tried) {
    if (promise(index) <= most) continue
    const height = heights[index] as number
    const { held } = filler.best(height, worth, left)
    const gained = [...held].reduce((sum, [kind, count]) => sum + count * (worth[kind] as number), 0) / height
    if (gained > most) {
      most = gained
      best = { height, held }
    }
  }
  if (best === null) throw new Error('impossible: pieces are left that no strip holds')
  return best
}

/** Moves a piece's value halfway to what it cost. */
function revalue({ kinds, width }: StripTask, { height, held }: FilledStrip, worth: Float64Array): void {
  let wide = 0
  for (const [kind, count] of held) wide += count * wideIn(kinds[kind] as PieceKind, height, width)
  for (const kind of held.keys()) {
    const cost = (height * wideIn(kinds[kind] as PieceKind, height, width)) / wide
    worth[kind] = ((worth[kind] as number) + cost) / 2
  }
}
