/**
 * How the pieces of a block were divided before an edit, to be divided in the same way where nothing that decides it changed.
 *
 * In      after each edit the parts that are not what they were, and those of them whose outline is not; then pieces, as they come up.
 * Out     the tree of a piece without a part that changed; its cut where parts changed only inside.
 * Why     a cut is found along the outlines of the parts of a piece. The one other thing that may decide it, where two cuts are as good, is on which
 *         side of its first part each lies, patch by patch: so a cut keeps the parts that were `asked`.
 */
import type { Tree } from './values.ts'

/** A direction along the plane, in steps. */
export type Way = readonly [number, number]

/** The halves of a piece, the way of the seam between them, and the parts whose patches decided it. */
export interface Cut {
  readonly near: readonly number[]
  readonly far: readonly number[]
  readonly way: Way
  readonly asked: readonly number[]
}

/** How a piece was divided, and whether no other way has fewer set-in and partial joins. */
export interface Divided {
  readonly tree: Tree
  readonly proved: boolean
}

/** A piece and how it came up: after a cut which way, and how many cuts were passed over. */
export interface Asked {
  readonly parts: readonly number[]
  readonly last: Way | null
  readonly passed: number
}

export interface Kept extends Divided {
  readonly parts: readonly number[]
  /** Null for a piece without a straight seam. */
  readonly cut: Cut | null
  readonly time: number
}

/** Slabs of rows or columns, each with its items, and the tree of them all. */
export interface KeptRows {
  readonly slabs: readonly (readonly Item[])[]
  readonly tree: Tree
}

interface Item {
  readonly parts: readonly number[]
  readonly tree: Tree
}

/** Parts after an edit: those that changed, and those of them that lie otherwise. */
export interface Changed {
  readonly parts: readonly number[]
  readonly outlines: readonly number[]
}

export class DivisionCache {
  private readonly pieces = new Map<string, Kept>()
  private time = 0
  /** When each part changed last, and when its outline did. */
  private readonly changes: number[] = []
  private readonly outlines: number[] = []
  private rows: { readonly kept: KeptRows; readonly since: Set<number> } | null = null

  /** An edit later; null where the parts are numbered anew. */
  next(changed: Changed | null, parts: number): void {
    this.time++
    // A piece forgotten is divided again; so it is enough to begin anew now and then.
    if (changed === null || this.pieces.size > 8 * parts + 1000) this.pieces.clear()
    if (changed === null || changed.outlines.length > 0) this.rows = null
    for (const part of changed?.parts ?? []) {
      this.changes[part] = this.time
      this.rows?.since.add(part)
    }
    for (const part of changed?.outlines ?? []) this.outlines[part] = this.time
  }

  private changedSince(part: number, { time }: Kept): boolean {
    return (this.changes[part] ?? 0) > time
  }

  /** What is known of a piece: all of it, or only its cut. */
  find(asked: Asked): { readonly kept: Kept; readonly holds: 'all' | 'cut' } | null {
    const { parts } = asked
    const kept = this.pieces.get(keyOf(asked))
    if (kept === undefined || kept.parts.length !== parts.length) return null
    let all = true
    for (let place = 0; place < parts.length; place++) {
      const part = parts[place] as number
      if (kept.parts[place] !== part || (this.outlines[part] ?? 0) > kept.time) return null
      if (this.changedSince(part, kept)) all = false
    }
    if (all) return { kept, holds: 'all' }
    return kept.cut === null || kept.cut.asked.some((part) => this.changedSince(part, kept)) ? null : { kept, holds: 'cut' }
  }

  keep(asked: Asked, divided: Divided, cut: Cut | null): void {
    this.pieces.set(keyOf(asked), { ...divided, parts: asked.parts, cut, time: this.time })
  }

  /** The rows as they were, where no outline changed, and the parts that changed since. */
  rowsBefore(): { readonly kept: KeptRows; readonly since: ReadonlySet<number> } | null {
    return this.rows
  }

  keepRows(kept: KeptRows): void {
    this.rows = { kept, since: new Set() }
  }
}

function keyOf({ parts, last, passed }: Asked): string {
  let sum = 0
  for (const part of parts) sum += part
  return `${parts.length} ${parts[0]} ${sum} ${last?.[0]} ${last?.[1]} ${passed}`
}
