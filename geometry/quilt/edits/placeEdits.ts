/**
 * Edits of a quilt's places: what lies where, how it is turned and pressed, how large a place is.
 *
 * In      cells of the grid, ids of places, blocks and fabrics.
 * Out     named changes, see `quiltEdit.ts`.
 */
import type { Turn } from '../../values/block.ts'
import { message } from '../../values/messages.ts'
import type { FrameRound, PlacePressing } from '../../values/quilt.ts'
import {
  covers,
  freePlaceId,
  keepPlaces,
  type PlaceContent,
  placeAtCell,
  placeSize,
  type QuiltCell,
  type QuiltDraft,
  type QuiltEdit,
} from './quiltEdit.ts'

type DraftPlace = QuiltDraft['places'][number]

const placesOf = (draft: QuiltDraft, ids: readonly string[]): DraftPlace[] => draft.places.filter(({ id }) => ids.includes(id))

const isInside = ({ grid }: QuiltDraft, [column, row]: QuiltCell): boolean => column >= 0 && row >= 0 && column < grid.columns && row < grid.rows

/** What lies in a place and how; where the place is and how large stays with the place. */
const LYING = ['block', 'plain', 'turn', 'press', 'frame', 'fixed', 'done'] as const

function clear(place: DraftPlace): void {
  for (const field of LYING) delete (place as Record<string, unknown>)[field]
}

function lyingOn(place: DraftPlace): Record<string, unknown> {
  const fields = place as Record<string, unknown>
  return Object.fromEntries(LYING.flatMap((field) => (fields[field] === undefined ? [] : [[field, fields[field]]])))
}

const isKnown = (draft: QuiltDraft, content: PlaceContent): boolean =>
  'block' in content ? draft.blocks.some(({ id }) => id === content.block) : draft.fabrics.some(({ id }) => id === content.plain)

/** Puts something in the place over a cell, or makes a place there. */
export function putAt(draft: QuiltDraft, cell: QuiltCell, content: PlaceContent, how: Record<string, unknown> = {}): void {
  if (!isInside(draft, cell) || !isKnown(draft, content)) return
  const there = placeAtCell(draft.places, cell)
  if (there === undefined) {
    draft.places.push({ id: freePlaceId(draft, cell), at: [cell[0], cell[1]], ...how, ...content })
    return
  }
  clear(there)
  Object.assign(there, how, content)
}

/** Puts a block or a plain piece in the places over these cells. */
export const putInPlaces = (cells: readonly QuiltCell[], content: PlaceContent): QuiltEdit => ({
  name: message('put-in-places', { places: cells.length }),
  change: (draft) => {
    for (const cell of cells) putAt(draft, cell, content)
  },
})

/** Puts these by turns in the places over the cells: of two, every other place. A place over several cells goes by its first cell. */
export const repeatInPlaces = (cells: readonly QuiltCell[], contents: readonly PlaceContent[]): QuiltEdit => ({
  name: message('put-in-places', { places: cells.length }),
  change: (draft) => {
    for (const [column, row] of cells) {
      const there = placeAtCell(draft.places, [column, row])
      if (there !== undefined && (there.at[0] !== column || there.at[1] !== row)) continue
      putAt(draft, [column, row], contents[(column + row) % contents.length] as PlaceContent)
    }
  },
})

/** Puts what lies in a place, turned and pressed as there, in all places over these cells. */
export const fillRun = (from: string, cells: readonly QuiltCell[]): QuiltEdit => ({
  name: message('put-in-places', { places: cells.length }),
  change: (draft) => {
    const source = draft.places.find(({ id }) => id === from)
    if (source === undefined) return
    const { done: _, fixed: _fixed, ...lying } = lyingOn(source)
    for (const cell of cells) if (!covers(source, cell)) putAt(draft, cell, lying as PlaceContent, lying)
  },
})

/** Moves what lies in a place to a cell; what lies there comes back in its stead. */
export const moveToCell = (from: string, to: QuiltCell): QuiltEdit => ({
  name: message('move-place'),
  change: (draft) => {
    const source = draft.places.find(({ id }) => id === from)
    if (source === undefined || !isInside(draft, to) || covers(source, to)) return
    const target = placeAtCell(draft.places, to)
    const [lying, other] = [lyingOn(source), target === undefined ? null : lyingOn(target)]
    if (target === undefined || other === null) {
      source.at = [to[0], to[1]]
      delete source.size
      return
    }
    clear(source)
    clear(target)
    Object.assign(source, other)
    Object.assign(target, lying)
  },
})

/** Empties places. */
export const clearPlaces = (ids: readonly string[]): QuiltEdit => ({
  name: message('clear-places', { places: ids.length }),
  change: (draft) => {
    keepPlaces(draft, ({ id }) => !ids.includes(id))
  },
})

/** Turns blocks where they lie, by quarter turns clockwise. Plain pieces stay. */
export const turnPlaces = (ids: readonly string[], quarters: Turn): QuiltEdit => ({
  name: message('turn-places', { places: ids.length }),
  change: (draft) => {
    for (const place of placesOf(draft, ids)) if (place.block !== undefined) setTurn(place, (((place.turn ?? 0) + quarters) % 4) as Turn)
  },
})

function setTurn(place: DraftPlace, turn: Turn): void {
  if (turn === 0) delete place.turn
  else place.turn = turn
}

function setPress(place: DraftPlace, press: PlacePressing): void {
  if (press === 'planned') delete place.press
  else place.press = press
}

/** Presses blocks as planned, or the opposite way. */
export const pressPlaces = (ids: readonly string[], press: PlacePressing): QuiltEdit => ({
  name: message('press-places', { places: ids.length }),
  change: (draft) => {
    for (const place of placesOf(draft, ids)) if (place.block !== undefined) setPress(place, press)
  },
})

/** Turns and presses places as a report that chose them freely says. */
export const takeTurns = (chosen: readonly { readonly id: string; readonly turn: Turn; readonly press: PlacePressing }[]): QuiltEdit => ({
  name: message('take-turns'),
  change: (draft) => {
    for (const { id, turn, press } of chosen) {
      const place = draft.places.find((one) => one.id === id)
      if (place?.block === undefined) continue
      setTurn(place, turn)
      setPress(place, press)
    }
  },
})

/** Whether turns and pressings that are chosen freely leave these places alone. */
export const holdPlaces = (ids: readonly string[], fixed: boolean): QuiltEdit => ({
  name: message('hold-places', { places: ids.length }),
  change: (draft) => {
    for (const place of placesOf(draft, ids)) {
      if (fixed) place.fixed = true
      else delete place.fixed
    }
  },
})

/** Gives a place another size, in cells; places that it then lies over are dropped. */
export const resizePlace = (id: string, [wide, high]: QuiltCell): QuiltEdit => ({
  name: message('resize-place'),
  change: (draft) => {
    const place = draft.places.find((one) => one.id === id)
    const { columns, rows } = draft.grid
    if (place === undefined || wide < 1 || high < 1 || place.at[0] + wide > columns || place.at[1] + high > rows) return
    if (wide === 1 && high === 1) delete place.size
    else place.size = [wide, high]
    keepPlaces(draft, (other) => other.id === id || !overlap(other, place))
  },
})

function overlap(one: DraftPlace, other: DraftPlace): boolean {
  const [[w1, h1], [w2, h2]] = [placeSize(one), placeSize(other)]
  return one.at[0] < other.at[0] + w2 && other.at[0] < one.at[0] + w1 && one.at[1] < other.at[1] + h2 && other.at[1] < one.at[1] + h1
}

/** Frames of their own for these places; null: the quilt's frame. */
export const framePlaces = (ids: readonly string[], frame: readonly FrameRound[] | null): QuiltEdit => ({
  name: message('frame-places', { places: ids.length }),
  change: (draft) => {
    for (const place of placesOf(draft, ids)) {
      if (frame === null) delete place.frame
      else place.frame = frame.map((round) => ({ ...round }))
    }
  },
})

/** What a maker has done of a place over the year. */
export const PLACE_STAGES = ['pieced', 'quilted', 'joined'] as const
export type PlaceStage = (typeof PLACE_STAGES)[number]

/** Ticks a stage off for these places, or takes the tick back. */
export const tickPlaces = (ids: readonly string[], stage: PlaceStage, done: boolean): QuiltEdit => ({
  name: message('tick-places', { places: ids.length }),
  change: (draft) => {
    for (const place of placesOf(draft, ids) as (DraftPlace & { done?: string[] })[]) {
      const stages = PLACE_STAGES.filter((one) => (one === stage ? done : place.done?.includes(one) === true))
      if (stages.length === 0) delete place.done
      else place.done = stages
    }
  },
})

/** The stages that are ticked off for a place. */
export const stagesDone = (place: object): readonly PlaceStage[] => {
  const { done } = place as { readonly done?: unknown }
  return Array.isArray(done) ? PLACE_STAGES.filter((stage) => done.includes(stage)) : []
}
