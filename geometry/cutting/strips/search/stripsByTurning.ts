/**
 * Strips by turning: every kind of piece lies one way or the other, and is turned where that saves fabric.
 *
 * In      a task.
 * Out     strips that hold every piece.
 * How     Higher pieces start strips; lower ones fill the rest (and are trimmed down). Kinds are turned one after the other as long as that saves
 *         fabric; with more than some hundreds of kinds, a round tries only part of them.
 */
import { type PieceKind, type FilledStrip, totalHeight, lowered, mayLie, type StripTask } from './stripTask.ts'

interface Row {
  readonly height: number
  left: number
  readonly held: Map<number, number>
}

/** Rounds of turning one kind after the other. */
const ROUNDS = 4
/** Kinds laid in all tries together. */
const LAID_KINDS = 150_000

export function stripsByTurning(task: StripTask): FilledStrip[] {
  const { kinds, width } = task
  const must = kinds.map((kind) => !mayLie(kind, width))
  let best = laid(task, must)
  let tries = Math.floor(LAID_KINDS / kinds.length)
  for (const start of [must, kinds.map(() => true)]) {
    const ways = [...start]
    let now = laid(task, ways)
    for (let round = 0, saved = true; saved && round < ROUNDS; round++) {
      saved = false
      kinds.forEach((_, kind) => {
        if (must[kind] || tries-- <= 0) return
        ways[kind] = !ways[kind]
        const other = laid(task, ways)
        if (totalHeight(other) < totalHeight(now)) {
          now = other
          saved = true
        } else ways[kind] = !ways[kind]
      })
    }
    if (totalHeight(now) < totalHeight(best)) best = now
  }
  return best.map((row) => lowered(task, row))
}

/** `upright[kind]`: the long side runs along the length of the fabric. High pieces first, each where it leaves the least room beside it. */
function laid({ kinds, width }: StripTask, upright: readonly boolean[]): Row[] {
  const order = kinds
    .map((kind, index) => ({
      index,
      count: kind.count,
      high: upright[index] ? kind.long : kind.short,
      wide: upright[index] ? kind.short : kind.long,
    }))
    .sort((a, b) => b.high - a.high || b.wide - a.wide)
  const rows: Row[] = []
  for (const { index, count, high, wide } of order) {
    let left = count
    const { long, short, fixed } = kinds[index] as PieceKind
    while (left > 0) {
      const row = tightest(rows, high, wide) ?? opened(rows, high, width)
      const fits = Math.min(left, Math.floor(row.left / wide))
      put(row, index, fits, wide)
      left -= fits
      // The rest of the strip may hold one turned the other way.
      const [otherHigh, otherWide] = upright[index] ? [short, long] : [long, short]
      if (!fixed && left > 0 && otherHigh <= row.height && otherWide <= row.left) {
        put(row, index, 1, otherWide)
        left -= 1
      }
    }
  }
  return rows
}

function put(row: Row, kind: number, count: number, wide: number): void {
  row.left -= count * wide
  row.held.set(kind, (row.held.get(kind) ?? 0) + count)
}

function tightest(rows: readonly Row[], high: number, wide: number): Row | null {
  let best: Row | null = null
  for (const row of rows) {
    if (row.height < high || row.left < wide) continue
    if (best === null || row.left % wide < best.left % wide) best = row
  }
  return best
}

function opened(rows: Row[], height: number, width: number): Row {
  const row = { height, left: width, held: new Map<number, number>() }
  rows.push(row)
  return row
}
