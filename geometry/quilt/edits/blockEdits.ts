/**
 * Edits of a quilt's blocks and fabrics: a block brought in, brought up to date, dropped; which fabric of the quilt a block wears.
 *
 * In      whole blocks; ids of the quilt's blocks and fabrics.
 * Out     named changes, see `quiltEdit.ts`. A block that is brought in takes the quilt's unit of measure and seam allowance.
 */
import { convertMeasure } from '../../edits/sizeEdits.ts'
import type { Block, Fabric, Mutable } from '../../values/block.ts'
import { message } from '../../values/messages.ts'
import type { Quilt } from '../../values/quilt.ts'
import { putAt } from './placeEdits.ts'
import { freeId, keepPlaces, type QuiltCell, type QuiltDraft, type QuiltEdit } from './quiltEdit.ts'

const copyOf = <Value>(value: Value): Mutable<Value> => JSON.parse(JSON.stringify(value)) as Mutable<Value>

/** A copy of a block in the quilt's unit of measure, with the quilt's seam allowance. */
function measuredAs({ measure }: Pick<Quilt, 'measure'>, block: Block): Block {
  const copy = copyOf(block)
  convertMeasure(measure.unit).change(copy)
  if (measure.seam === undefined) delete copy.measure.seam
  else copy.measure.seam = copyOf(measure.seam)
  return copy as Block
}

/** Whether a block of the quilt is the same as this one, measured as the quilt is. */
export const isSameInQuilt = (quilt: Quilt, id: string, block: Block): boolean =>
  JSON.stringify(quilt.blocks.find((one) => one.id === id)?.block) === JSON.stringify(measuredAs(quilt, block))

/** The id of a block of the quilt that is the same as this one; null where there is none. */
function sameBlockIn(quilt: Quilt, block: Block): string | null {
  const text = JSON.stringify(measuredAs(quilt, block))
  return quilt.blocks.find((one) => JSON.stringify(one.block) === text)?.id ?? null
}

/** Which fabrics a block shows. */
export function fabricsShown({ fabrics, units, borders = [] }: Block): Fabric[] {
  const shown = new Set([
    ...units.flatMap((unit) => Object.values(unit.fabrics)),
    ...borders.flatMap(({ fabric, corner }) => (corner === undefined ? [fabric] : [fabric, corner])),
  ])
  return fabrics.filter(({ id }) => shown.has(id))
}

const isSameFabric = ({ id: _, ...one }: Fabric, { id: _other, ...other }: Fabric): boolean => JSON.stringify(one) === JSON.stringify(other)

/** Has the block wear the quilt's fabrics: one that the quilt has under the same name and colour, else its own becomes the quilt's. */
function wearQuiltFabrics(draft: QuiltDraft, block: Block, before: Readonly<Record<string, string>> = {}): Record<string, string> {
  const wear: Record<string, string> = {}
  for (const fabric of fabricsShown(block)) {
    const kept = draft.fabrics.find(({ id }) => id === before[fabric.id])
    const like = kept ?? draft.fabrics.find((one) => isSameFabric(one as Fabric, fabric))
    if (like === undefined) {
      const id = freeId(new Set(draft.fabrics.map((one) => one.id)), fabric.id)
      draft.fabrics.push({ ...copyOf(fabric), id })
      wear[fabric.id] = id
    } else wear[fabric.id] = like.id
  }
  return wear
}

/** Brings a block in, and puts it in the places over these cells. The same block is brought in once only. */
export const bringBlock = (block: Block, cells: readonly QuiltCell[]): QuiltEdit => ({
  name: message('put-in-places', { places: cells.length }),
  change: (draft) => {
    const quilt = draft as Quilt
    const known = sameBlockIn(quilt, block)
    const id = known ?? freeId(new Set(draft.blocks.map((one) => one.id)), block.name.toLowerCase().replace(/\s+/g, '-'))
    if (known === null) {
      const measured = measuredAs(quilt, block)
      draft.blocks.push({ id, block: copyOf(measured), wear: wearQuiltFabrics(draft, measured) })
    }
    for (const cell of cells) putAt(draft, cell, { block: id })
  },
})

/** Puts a newer state of a block in the place of the one that the quilt has; fabrics that it wears stay. */
export const updateBlock = (id: string, block: Block): QuiltEdit => ({
  name: message('update-block'),
  change: (draft) => {
    const item = draft.blocks.find((one) => one.id === id)
    if (item === undefined) return
    const measured = measuredAs(draft as Quilt, block)
    item.wear = wearQuiltFabrics(draft, measured, item.wear as Readonly<Record<string, string>> | undefined)
    item.block = copyOf(measured)
  },
})

/** Drops a block from the quilt; the places it lies in are emptied. */
export const removeBlock = (id: string): QuiltEdit => ({
  name: message('remove-block'),
  change: (draft) => {
    draft.blocks = draft.blocks.filter((one) => one.id !== id)
    keepPlaces(draft, ({ block }) => block !== id)
  },
})

/** Has a block wear another of the quilt's fabrics in the place of one of its own; null: the block's own fabric, apart from the quilt's. */
export const wearFabric = (block: string, own: string, fabric: string | null): QuiltEdit => ({
  name: message('wear-fabric'),
  change: (draft) => {
    const item = draft.blocks.find((one) => one.id === block)
    if (item === undefined) return
    const { [own]: _, ...others } = item.wear ?? {}
    item.wear = fabric === null ? others : { ...others, [own]: fabric }
  },
})

/** Changes the name or colour of one of the quilt's fabrics, in all blocks that wear it. A colour that is dragged is one step to undo. */
export const changeQuiltFabric = (id: string, change: Partial<Pick<Fabric, 'name' | 'colour'>>): QuiltEdit => ({
  name: message('change-fabric'),
  merge: `fabric ${id} ${Object.keys(change)}`,
  change: (draft) => {
    const fabric = draft.fabrics.find((one) => one.id === id)
    if (fabric !== undefined) Object.assign(fabric, change)
  },
})
