/**
 * Strips: how many a unit has, and a unit of strips taken apart so that each can have a width of its own.
 *
 * In      ids of units; those that are not strips stay as they are.
 * Out     named changes, as in `unitEdits.ts`.
 * Exact   fractions: three strips across two cells are 2/3 of a cell wide each.
 */
import { file } from '../block/boxes.ts'
import { subtract } from '../exact/rational.ts'
import { shapeOf, stripNames } from '../units/kinds.ts'
import { boxOf } from '../units/unitBox.ts'
import type { BoxUnit, Mutable, Unit } from '../values/block.ts'
import { message } from '../values/messages.ts'
import { type Edit, freshId } from './unitEdits.ts'

/** How many strips a maker can ask for. */
export const STRIP_COUNTS = [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const

/** Gives units of strips so many strips of one width. New ones go on as the first ones began: red, white, red, white. */
export const setStripCount = (ids: readonly string[], count: number): Edit => ({
  name: message('set-strip-count', { strips: count }),
  change: (draft) => {
    for (const unit of draft.units) {
      if (!ids.includes(unit.id) || unit.kind !== 'strips') continue
      const had = stripNames(unit).map((name) => unit.fabrics[name] as string)
      // Where the last strip is like the first, as in A B A, the repeat is without it.
      const repeat = had.length > 2 && had[0] === had.at(-1) ? had.slice(0, -1) : had
      const fabricAt = (index: number): string => had[index] ?? (repeat[index % repeat.length] as string)
      unit.fabrics = Object.fromEntries(Array.from({ length: count }, (_, index) => [`strip${index + 1}`, fabricAt(index)]))
    }
  },
})

/** Takes units of strips apart: each strip becomes a rectangle of its own, where it lay, and can be made wider or narrower. */
export const separateStrips = (ids: readonly string[]): Edit => ({
  name: message('separate-strips'),
  change: (draft) => {
    const taken = new Set<string>()
    draft.units = draft.units.flatMap((unit) => {
      if (!ids.includes(unit.id) || unit.kind !== 'strips') return [unit]
      return piecesOf(unit as BoxUnit).map((piece) => {
        const id = freshId({ ...draft, units: draft.units as readonly Unit[] }, 'strip', taken)
        taken.add(id)
        return { ...piece, id } as Mutable<Unit>
      })
    })
  },
})

function piecesOf(unit: BoxUnit): Omit<BoxUnit, 'id'>[] {
  return shapeOf(unit).patches.map(({ name, corners }) => {
    const { low, high } = boxOf({ id: '', kind: 'polygon', corners: corners.map(file), fabrics: {} })
    const size = file([subtract(high[0], low[0]), subtract(high[1], low[1])])
    return { kind: 'square', at: file(low), size, fabrics: { patch: unit.fabrics[name] as string } }
  })
}
