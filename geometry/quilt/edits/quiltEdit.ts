/** What an edit of a quilt is, and what all of them need: which place lies over a cell, ids that are free. */
import type { Mutable } from '../../values/block.ts'
import type { QuiltEditName } from '../../values/messages.ts'
import type { Quilt, QuiltPlace } from '../../values/quilt.ts'

export type QuiltDraft = Mutable<Quilt>

/** A named pure change of a quilt; a change that does not fit leaves the draft as it is. */
export interface QuiltEdit {
  readonly name: QuiltEditName
  /** Successive edits with the same value here are one step to undo. */
  readonly merge?: string
  readonly change: (draft: QuiltDraft) => void
}

/** Column and row of a cell of the quilt's grid. */
export type QuiltCell = readonly [number, number]

/** What lies in a place. */
export type PlaceContent = { readonly block: string } | { readonly plain: string }

/** The size of a place in cells. */
export const placeSize = ({ size }: Pick<QuiltPlace, 'size'>): QuiltCell => size ?? [1, 1]

/** Whether a place lies over a cell. */
export function covers(place: Pick<QuiltPlace, 'at' | 'size'>, [column, row]: QuiltCell): boolean {
  const [wide, high] = placeSize(place)
  const [left, top] = place.at
  return column >= left && column < left + wide && row >= top && row < top + high
}

/** The place that lies over a cell, or undefined. Where a file has places over each other: the first. */
export const placeAtCell = <Place extends Pick<QuiltPlace, 'at' | 'size'>>(places: readonly Place[], cell: QuiltCell): Place | undefined =>
  places.find((place) => covers(place, cell))

/** An id that is not taken: the stem, else with a number. */
export function freeId(taken: ReadonlySet<string>, stem: string): string {
  const clean = stem.replace(/[^A-Za-z0-9._-]/g, '').slice(0, 50) || 'one'
  if (!taken.has(clean)) return clean
  let number = 2
  while (taken.has(`${clean}-${number}`)) number++
  return `${clean}-${number}`
}

/** A place is called by its column's letter and its row, as in a spreadsheet: `a1`. */
export function freePlaceId(quilt: Pick<Quilt, 'places'>, [column, row]: QuiltCell): string {
  let letters = ''
  for (let left = column; left >= 0; left = Math.floor(left / 26) - 1) letters = String.fromCharCode(97 + (left % 26)) + letters
  return freeId(new Set(quilt.places.map(({ id }) => id)), `${letters}${row + 1}`)
}

/** Drops places; the parts of a class forget them too, and a part that has none left goes with them. */
export function keepPlaces(draft: QuiltDraft, keep: (place: QuiltDraft['places'][number]) => boolean): void {
  draft.places = draft.places.filter(keep)
  if (draft.parts === undefined) return
  const ids = new Set(draft.places.map(({ id }) => id))
  for (const part of draft.parts) part.places = part.places.filter((id) => ids.has(id))
  draft.parts = draft.parts.filter(({ places }) => places.length > 0)
  if (draft.parts.length === 0) delete draft.parts
}
