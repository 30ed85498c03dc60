/**
 * How the pieces of a block were divided before an edit. A piece is divided in the same way again where nothing that decides it has changed.
 *
 * In      after each edit the parts that changed, and which of them changed their outline; then pieces, one by one.
 * Out     the tree of a piece in which no part changed; only its cut where parts changed inside their outlines.
 * Why     a cut is found along the outlines of the parts of a piece. Where two cuts are equally good, the one other thing that may decide is
 *         on which side of its first part each lies, patch by patch: so a cut keeps the parts it was `decidedBy`.
 */
import type { Tree } from './values.ts'

/** A direction along the plane, in steps. */
export type CutDirection = readonly [number, number]

/** The halves of a piece, the direction of the seam between them, and the parts whose patches decided between equally good cuts. */
export interface StraightCut {
  readonly near: readonly number[]
  readonly far: readonly number[]
  readonly direction: CutDirection
  readonly decidedBy: readonly number[]
}

/** How a piece was divided, and whether no other way has fewer bends, set-in and partial joins. */
export interface Division {
  readonly tree: Tree
  readonly proved: boolean
}

/** A piece and how it came up: the direction of the cut before, and how many cuts are to be skipped. */
export interface PieceToDivide {
  readonly parts: readonly number[]
  readonly last: CutDirection | null
  readonly skipped: number
}

/** A division as it is kept: `time` counts edits. */
export interface CachedDivision extends Division {
  readonly parts: readonly number[]
  /** Null for a piece without a straight cut. */
  readonly cut: StraightCut | null
  readonly time: number
}

/** Slabs of rows or columns, each with its items, and the tree of them all. */
export interface CachedRows {
  readonly slabs: readonly (readonly Item[])[]
  readonly tree: Tree
}

interface Item {
  readonly parts: readonly number[]
  readonly tree: Tree
}

/** Parts after an edit: those that changed, and those of them whose outline changed too. */
interface ChangedParts {
  readonly parts: readonly number[]
  readonly outlines: readonly number[]
}

export class DivisionCache {
  private readonly pieces = new Map<string, CachedDivision>()
  private time = 0
  /** When each part changed last, and when its outline did. */
  private readonly changes: number[] = []
  private readonly outlines: number[] = []
  private rows: { readonly kept: CachedRows; readonly since: Set<number> } | null = null

  /** After each edit; `changed` is null where the parts have other numbers than before. */
  next(changed: ChangedParts | null, parts: number): void {
    this.time++
    // Clearing is always safe: the pieces are then divided again.
    if (changed === null || this.pieces.size > 8 * parts + 1000) this.pieces.clear()
    if (changed === null || changed.outlines.length > 0) this.rows = null
    for (const part of changed?.parts ?? []) {
      this.changes[part] = this.time
      this.rows?.since.add(part)
    }
    for (const part of changed?.outlines ?? []) this.outlines[part] = this.time
  }

  private changedSince(part: number, { time }: CachedDivision): boolean {
    return (this.changes[part] ?? 0) > time
  }

  /** What is known of a piece: all of it, or only its cut. */
  find(piece: PieceToDivide): { readonly kept: CachedDivision; readonly holds: 'all' | 'cut' } | null {
    const { parts } = piece
    const kept = this.pieces.get(keyOf(piece))
    if (kept === undefined || kept.parts.length !== parts.length) return null
    let all = true
    for (let place = 0; place < parts.length; place++) {
      const part = parts[place] as number
      if (kept.parts[place] !== part || (this.outlines[part] ?? 0) > kept.time) return null
      if (this.changedSince(part, kept)) all = false
    }
    if (all) return { kept, holds: 'all' }
    return kept.cut === null || kept.cut.decidedBy.some((part) => this.changedSince(part, kept)) ? null : { kept, holds: 'cut' }
  }

  /** Keeps how a piece was divided; `cut` is null where no straight seam runs through it. */
  keep(piece: PieceToDivide, divided: Division, cut: StraightCut | null): void {
    this.pieces.set(keyOf(piece), { ...divided, parts: piece.parts, cut, time: this.time })
  }

  /** The rows as they were, where no outline changed, and the parts that changed since. */
  rowsBefore(): { readonly kept: CachedRows; readonly since: ReadonlySet<number> } | null {
    return this.rows
  }

  keepRows(kept: CachedRows): void {
    this.rows = { kept, since: new Set() }
  }
}

function keyOf({ parts, last, skipped }: PieceToDivide): string {
  let sum = 0
  for (const part of parts) sum += part
  return `${parts.length} ${parts[0]} ${sum} ${last?.[0]} ${last?.[1]} ${skipped}`
}
