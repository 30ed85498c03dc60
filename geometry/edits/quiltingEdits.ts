/**
 * Edits of how a block is quilted: where the line starts, what fills its patches, and how far apart the lines are.
 *
 * In      the maker's choice.
 * Out     a named change of the block's `quilting`, or of that of units. A usual choice is removed from the file, other fields in it stay.
 */
import type { Fill, Length, Mutable, QuiltingPlan, QuiltingStart } from '../values/block.ts'
import { message } from '../values/messages.ts'
import type { Draft, Edit } from './unitEdits.ts'

function changed(draft: Draft, change: (quilting: Mutable<QuiltingPlan>) => void): void {
  const quilting = typeof draft.quilting === 'object' && draft.quilting !== null ? draft.quilting : {}
  change(quilting)
  if (Object.keys(quilting).length > 0) draft.quilting = quilting
  else delete draft.quilting
}

/** Where the quilting line starts; null: wherever is easiest. */
export const setQuiltingStart = (begin: QuiltingStart | null): Edit => ({
  name: message('set-quilting-start'),
  change: (draft) =>
    changed(draft, (quilting) => {
      if (begin === null) delete quilting.begin
      else quilting.begin = begin
    }),
})

/** What fills the patches of some units, by their ids; of every unit where there are none. */
export const setFill = (ids: readonly string[], fill: Fill): Edit => ({
  name: message('set-fill'),
  change: (draft) => {
    if (ids.length > 0) {
      for (const unit of draft.units) if (ids.includes(unit.id)) unit.quilting = fill
      return
    }
    for (const unit of draft.units) delete unit.quilting
    changed(draft, (quilting) => {
      if (fill === 'none') delete quilting.fill
      else quilting.fill = fill
    })
  },
})

/** The distance from one line of a fill to the next, in the measure's unit. */
export const setFillSpacing = (spacing: Length): Edit => ({
  name: message('set-fill-spacing'),
  merge: 'fill spacing',
  change: (draft) =>
    changed(draft, (quilting) => {
      quilting.spacing = spacing
    }),
})
