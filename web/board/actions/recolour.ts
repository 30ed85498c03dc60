/** Recolouring patches with a fabric. Each action says what it did, or in one sentence why it did nothing. */
import { type Edit, message, recolourPatch } from '../../../geometry/index.ts'
import { displayName } from '../../document/blockNames.ts'
import { edit, setView, getState } from '../../document/store.ts'
import type { Point } from '../../document/shapes.ts'
import { t, tn } from '../../words/words.ts'
import { pieceAt } from '../hitTest.ts'
import type { PatchRef } from '../hand/values.ts'

/** Recolours the topmost patch at a point, in cells. */
export function recolourAt(fabric: string, at: Point): void {
  const piece = pieceAt(getState().history.block, at)
  if (piece?.unit == null) {
    setView({ notice: t('There’s no patch there to colour.') })
    return
  }
  // Another block may have been opened while the fabric was dragged.
  const known = getState().history.block.fabrics.find(({ id }) => id === fabric)
  if (known === undefined) return setView({ notice: t('That fabric isn’t in this block. Use another one.') })
  edit(recolourPatch(piece.unit, piece.name, fabric))
  setView({ notice: t('Patch recoloured in {fabric}.', { fabric: displayName(known) }) })
}

/** All patches that the fabric was drawn across, in one edit. */
export const recolourEdit = (fabric: string, over: readonly PatchRef[]): Edit => ({
  name: message('recolour-patches', { patches: over.length }),
  change: (draft) => {
    for (const { unit, name } of over) recolourPatch(unit, name, fabric).change(draft)
  },
})

/** Recolours several patches in one edit. */
export function recolourPatches(fabric: string, over: readonly PatchRef[]): void {
  const known = getState().history.block.fabrics.find(({ id }) => id === fabric)
  if (known === undefined) return setView({ notice: t('That fabric isn’t in this block. Use another one.') })
  edit(recolourEdit(fabric, over))
  setView({ notice: tn(over.length, 'Patch recoloured in {fabric}.', '{n} patches recoloured in {fabric}.', { fabric: displayName(known) }) })
}
