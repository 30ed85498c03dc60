/**
 * Edits of the parts in which a class gets a quilt.
 *
 * In      titles, ids of places, numbers of parts from 0.
 * Out     named changes, see `quiltEdit.ts`. A place is in one part at most; a part without places is dropped.
 */
import { message } from '../../values/messages.ts'
import { keepPlaces, type QuiltEdit } from './quiltEdit.ts'

/** Makes these places the last part; other parts give them up. */
export const addPart = (title: string, ids: readonly string[]): QuiltEdit => ({
  name: message('set-parts'),
  change: (draft) => {
    const places = draft.places.filter(({ id }) => ids.includes(id)).map(({ id }) => id)
    if (places.length === 0) return
    const others = (draft.parts ?? []).map((part) => ({ ...part, places: part.places.filter((id) => !places.includes(id)) }))
    draft.parts = [...others, { title, places }]
    keepPlaces(draft, () => true)
  },
})

/** Names a part; letters typed one after another are one step. */
export const namePart = (number: number, title: string): QuiltEdit => ({
  name: message('set-parts'),
  merge: `part ${number}`,
  change: (draft) => {
    const part = draft.parts?.[number]
    if (part !== undefined) part.title = title
  },
})

/** Deletes a part; its places come with the last one then. */
export const removePart = (number: number): QuiltEdit => ({
  name: message('set-parts'),
  change: (draft) => {
    const left = (draft.parts ?? []).filter((_, index) => index !== number)
    if (left.length === 0) delete draft.parts
    else draft.parts = left
  },
})
