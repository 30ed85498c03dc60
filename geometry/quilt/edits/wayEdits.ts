/**
 * Edits of a quilt as a whole: its grid, the frame round its blocks, how its places are joined.
 *
 * In      counts, lengths as a file writes them, fabrics.
 * Out     named changes, see `quiltEdit.ts`.
 */
import type { Border, Length, Mutable, Order } from '../../values/block.ts'
import { message } from '../../values/messages.ts'
import type { FrameRound, Quilt, QuiltWay, Way } from '../../values/quilt.ts'
import { keepPlaces, placeSize, type QuiltEdit } from './quiltEdit.ts'

const copyOf = <Value>(value: Value): Mutable<Value> => JSON.parse(JSON.stringify(value)) as Mutable<Value>

/** Sets how many places there are; what lies beyond is dropped, a place that reaches beyond is cut shorter. */
export const setQuiltGrid = (columns: number, rows: number): QuiltEdit => ({
  name: message('set-quilt-grid'),
  change: (draft) => {
    draft.grid.columns = columns
    draft.grid.rows = rows
    keepPlaces(draft, ({ at }) => at[0] < columns && at[1] < rows)
    for (const place of draft.places) {
      const [wide, high] = placeSize(place as Quilt['places'][number])
      const [w, h] = [Math.min(wide, columns - place.at[0]), Math.min(high, rows - place.at[1])]
      if (w === wide && h === high) continue
      if (w === 1 && h === 1) delete place.size
      else place.size = [w, h]
    }
  },
})

/** Sets the finished size of a place of one cell. */
export const setPlaceSize = (cell: Length | readonly [Length, Length]): QuiltEdit => ({
  name: message('set-place-size'),
  change: (draft) => {
    draft.grid.cell = copyOf(cell) as typeof draft.grid.cell
  },
})

/** Sets the frame of all places that have none of their own; no rounds: no frame. */
export const setQuiltFrame = (rounds: readonly FrameRound[]): QuiltEdit => ({
  name: message('set-frame'),
  change: (draft) => {
    if (rounds.length === 0) delete draft.frame
    else draft.frame = copyOf(rounds) as FrameRound[]
  },
})

/** Changes how places are joined. Borders and sashing go with a whole quilt only. */
export const setWay = (change: { readonly [Field in keyof QuiltWay]?: QuiltWay[Field] | undefined }): QuiltEdit => ({
  name: message('sash' in change ? 'set-sashing' : 'set-joining'),
  change: (draft) => {
    const before = draft.way as QuiltWay | undefined
    const next: Record<string, unknown> = { ...before, ...copyOf(change) }
    for (const [field, value] of Object.entries(change)) if (value === undefined) delete next[field]
    if (change.join !== undefined && change.join !== (before?.join ?? 'whole')) {
      delete next.width
      if (change.join !== 'whole') {
        delete next.sash
        delete draft.borders
      }
    }
    draft.way = next as typeof draft.way
  },
})

/** Sets the borders of a whole quilt, inner first; none: none. */
export const setQuiltBorders = (borders: readonly Border[]): QuiltEdit => ({
  name: message('set-borders'),
  change: (draft) => {
    if (borders.length === 0) delete draft.borders
    else draft.borders = copyOf(borders) as Border[]
  },
})

/** Sets the order in which places are joined. */
export const setQuiltOrder = (order: Order): QuiltEdit => ({
  name: message('set-joining'),
  change: (draft) => {
    draft.order = order
  },
})

/** Joins the places another way; where strips are cut for it and none has a fabric yet, they get this one. */
export const joinBy = (join: Way, fabric: string | undefined): QuiltEdit => {
  const way = setWay({ join })
  return {
    name: way.name,
    change: (draft) => {
      // Without a fabric for its strips the quilt could not be read again.
      if (CUTS_STRIPS.has(join) && fabric === undefined && draft.way?.fabric === undefined) return
      way.change(draft)
      const next = draft.way as { fabric?: string } | undefined
      if (next !== undefined && next.fabric === undefined && fabric !== undefined && CUTS_STRIPS.has(join)) next.fabric = fabric
    },
  }
}

const CUTS_STRIPS: ReadonlySet<Way> = new Set(['strips', 'butted'])
