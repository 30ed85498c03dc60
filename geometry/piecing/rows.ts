/**
 * Rows and columns: the plan most makers follow.
 *
 * In      the laid block, and a way to join what is left between straight cuts.
 * Out     a tree: items of a slab joined left to right, slabs joined top to bottom (columns: the same, turned).
 * How     a full-width cut crosses no unit: the slabs are the merged stretches of the units' heights. Inside a slab, the same from side to side.
 */
import type { Laid } from '../block/lay.ts'
import type { CachedRows, DivisionCache } from './divisionCache.ts'
import type { Stage, Tree } from './values.ts'

export interface PartBox {
  readonly part: number
  readonly low: readonly [number, number]
  readonly high: readonly [number, number]
}

/** What joins the parts of an item that has several. */
interface Sections {
  readonly divide: (parts: readonly number[]) => Tree
  /** Whether all was divided into the fewest bends, set-in and partial joins. */
  readonly proved: boolean
}

/** The tree that joins a block in rows (or columns): units within each row, then row to row. `sections` joins what no straight cut parts. */
export function inRows(laid: Laid, name: 'rows' | 'columns', sections: Sections, cache: DivisionCache | null): Tree {
  const before = cache?.rowsBefore() ?? null
  if (before !== null && !before.kept.slabs.some((slab) => slab.some((item) => isOther(item, before.since, sections)))) {
    cache?.keepRows(before.kept)
    return before.kept.tree
  }
  const across = name === 'rows' ? 1 : 0
  const stage: Stage = name === 'rows' ? 'row' : 'column'
  const boxes = laid.block.units.map((_, part) => partBox(laid, part))
  const slabs = slabsOf(boxes, across).map((slab) =>
    slabsOf(slab, across === 1 ? 0 : 1).map((item) => {
      const parts = item.map(({ part }) => part)
      return { parts, tree: parts.length === 1 ? (parts[0] as number) : sections.divide(parts) }
    }),
  )
  const rows = slabs.map((slab) =>
    chain(
      slab.map(({ tree }) => tree),
      stage,
    ),
  )
  const tree = chain(rows, 'block')
  // A plan that is not proved is divided again each time, so that the divider can say so.
  if (sections.proved) cache?.keepRows({ slabs, tree })
  return tree
}

/** Whether an item with a changed part is now divided another way. */
function isOther({ parts, tree }: CachedRows['slabs'][number][number], since: ReadonlySet<number>, sections: Sections): boolean {
  return parts.length > 1 && parts.some((part) => since.has(part)) && sections.divide(parts) !== tree
}

/** The box around one part of a laid block, in its whole-number steps. */
export function partBox(laid: Laid, part: number): PartBox {
  const { low, high } = laid.parts[part] as Laid['parts'][number]
  return { part, low, high }
}

/** Boxes between the cuts that cross none of them, along one axis. */
function slabsOf(boxes: readonly PartBox[], axis: 0 | 1): PartBox[][] {
  const slabs: PartBox[][] = []
  let reach = Number.NEGATIVE_INFINITY
  for (const box of sorted(boxes, axis)) {
    if (box.low[axis] >= reach) slabs.push([box])
    else slabs.at(-1)?.push(box)
    reach = Math.max(reach, box.high[axis])
  }
  return slabs
}

/** By where they begin along one axis, then along the other. Boxes begin on few lines and mostly come in order on each. */
function sorted(boxes: readonly PartBox[], axis: 0 | 1): PartBox[] {
  const other = axis === 0 ? 1 : 0
  const lines = new Map<number, PartBox[]>()
  for (const box of boxes) {
    const there = lines.get(box.low[axis])
    if (there === undefined) lines.set(box.low[axis], [box])
    else there.push(box)
  }
  return [...lines].sort(([a], [b]) => a - b).flatMap(([, own]) => own.sort((a, b) => a.low[other] - b.low[other]))
}

/** Items joined one after the other: the first two, then each next to what is made already. */
export function chain(items: readonly Tree[], stage: Stage): Tree {
  return items.reduce((made, item) => ({ sides: [made, item], stage }))
}
