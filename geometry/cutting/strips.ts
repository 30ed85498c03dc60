/**
 * How much cloth: strips across the usable width, cut into the pieces side by side.
 *
 * In      cut rows and the usable width, in the measure's unit.
 * Out     per fabric its strips, their length in all, what to buy, and whether less is proved impossible; rows too large for the cloth.
 * How     every kind of piece lies one way or the other; higher pieces open strips, lower ones fill what is left (and are trimmed down). The ways are
 *         changed one kind at a time while that saves cloth. A length equal to the bound is proved: the area over the width, and for pieces all
 *         of one size the best mix of strips of either way.
 */
import type { Block } from '../block/values.ts'
import type { CutRow, FabricRow, Strip } from '../values.ts'

interface Kind {
  readonly long: number
  readonly short: number
  readonly count: number
}

interface Row {
  readonly height: number
  left: number
  readonly pieces: Map<number, number>
}

const HAIR = 1e-9
/** Rounds of turning one kind after the other. */
const ROUNDS = 4
/** Kinds laid over all tries: beyond some hundreds of kinds not every one is turned in every round. */
const LAID_KINDS = 150_000

export function clothOf(block: Block, cut: readonly CutRow[], width: number): { rows: FabricRow[]; tooLarge: CutRow[] } {
  const fits = (row: CutRow): boolean => Math.min(...row.size) <= width + HAIR
  const rows: FabricRow[] = []
  for (const { id } of block.fabrics) {
    const own = cut.filter((row) => row.fabric === id && fits(row))
    if (own.length === 0) continue
    const kinds = kindsOf(own)
    const { strips, length } = leastCloth(kinds, width)
    rows.push({ fabric: id, length: tidy(length), buy: bought(length, block.measure.unit), proved: length <= bound(kinds, width) + 1e-6, strips })
  }
  return { rows, tooLarge: cut.filter((row) => !fits(row)) }
}

const tidy = (length: number): number => Math.round(length * 1e9) / 1e9

/** Yards to the next eighth, or metres to the next tenth. */
function bought(length: number, unit: 'in' | 'cm'): number {
  return unit === 'in' ? Math.ceil((length / 36) * 8 - HAIR) / 8 : Math.ceil((length / 100) * 10 - HAIR) / 10
}

function kindsOf(rows: readonly CutRow[]): Kind[] {
  const kinds = new Map<string, Kind>()
  for (const { size, count } of rows) {
    const [long, short] = [Math.max(...size), Math.min(...size)]
    const key = `${tidy(long)}|${tidy(short)}`
    kinds.set(key, { long, short, count: (kinds.get(key)?.count ?? 0) + count })
  }
  return [...kinds.values()]
}

function leastCloth(kinds: readonly Kind[], width: number): { strips: Strip[]; length: number } {
  const must = kinds.map(({ long }) => long > width + HAIR)
  let best = laid(kinds, must, width)
  let tries = Math.floor(LAID_KINDS / kinds.length)
  for (const start of [must, kinds.map(() => true)]) {
    const ways = [...start]
    let now = laid(kinds, ways, width)
    for (let round = 0, saved = true; saved && round < ROUNDS; round++) {
      saved = false
      kinds.forEach((_, kind) => {
        if (must[kind] || tries-- <= 0) return
        ways[kind] = !ways[kind]
        const other = laid(kinds, ways, width)
        if (heightOf(other) < heightOf(now) - HAIR) {
          now = other
          saved = true
        } else ways[kind] = !ways[kind]
      })
    }
    if (heightOf(now) < heightOf(best) - HAIR) best = now
  }
  const strips = best.map(({ height, pieces }) => ({
    height: tidy(height),
    pieces: [...pieces].map(([kind, count]) => ({ size: [tidy((kinds[kind] as Kind).long), tidy((kinds[kind] as Kind).short)] as const, count })),
  }))
  return { strips, length: heightOf(best) }
}

const heightOf = (rows: readonly Row[]): number => rows.reduce((sum, { height }) => sum + height, 0)

/** `upright[kind]`: the long side runs along the length of the cloth. High pieces first, each where the least is left beside it. */
function laid(kinds: readonly Kind[], upright: readonly boolean[], width: number): Row[] {
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
    const { long, short } = kinds[index] as Kind
    while (left > 0) {
      const row = tightest(rows, high, wide) ?? opened(rows, high, width)
      const fits = Math.min(left, Math.floor(row.left / wide + HAIR))
      put(row, index, fits, wide)
      left -= fits
      // What is left of the strip may take one lying the other way.
      const [otherHigh, otherWide] = upright[index] ? [short, long] : [long, short]
      if (left > 0 && otherHigh <= row.height + HAIR && otherWide <= row.left + HAIR) {
        put(row, index, 1, otherWide)
        left -= 1
      }
    }
  }
  return rows
}

function put(row: Row, kind: number, count: number, wide: number): void {
  row.left -= count * wide
  row.pieces.set(kind, (row.pieces.get(kind) ?? 0) + count)
}

function tightest(rows: readonly Row[], high: number, wide: number): Row | null {
  let best: Row | null = null
  for (const row of rows) {
    if (row.height < high - HAIR || row.left < wide - HAIR) continue
    if (best === null || row.left % wide < (best.left % wide) - HAIR) best = row
  }
  return best
}

function opened(rows: Row[], height: number, width: number): Row {
  const row = { height, left: width, pieces: new Map<number, number>() }
  rows.push(row)
  return row
}

function bound(kinds: readonly Kind[], width: number): number {
  const area = kinds.reduce((sum, { long, short, count }) => sum + long * short * count, 0) / width
  const alone = kinds.map((kind) => aloneBound(kind, width))
  return Math.max(area, ...alone)
}

/** The least length for pieces of one size by themselves: strips of one way, the rest the other way. */
function aloneBound({ long, short, count }: Kind, width: number): number {
  const flat = long > width + HAIR ? 0 : Math.floor(width / long + HAIR)
  const upright = Math.floor(width / short + HAIR)
  if (flat === 0) return Math.ceil(count / upright) * long
  let least = Number.POSITIVE_INFINITY
  for (let strips = 0; strips <= Math.ceil(count / upright); strips++) {
    const rest = Math.max(0, count - strips * upright)
    least = Math.min(least, strips * long + Math.ceil(rest / flat) * short)
  }
  return least
}
