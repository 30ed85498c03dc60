/** Asks once whether the quilt follows where a block that it uses has been changed in the library since. Following is one edit, which can be undone. */
import { useEffect, useState } from 'react'
import { type Block, isSameInQuilt, type Quilt, updateBlock } from '../../geometry/index.ts'
import { displayName } from '../document/blockNames.ts'
import { isQuilt } from '../document/document.ts'
import { getState, useStore } from '../document/store.ts'
import { documentOf, useCards } from '../keeping/openBlock.ts'
import { originsOf, rememberOrigin } from '../keeping/quiltOrigins.ts'
import { t } from '../words/words.ts'
import { act } from './quiltActions.ts'

interface ChangedBlock {
  /** Its id in the quilt. */
  readonly id: string
  readonly block: Block
  readonly card: string
  readonly changed: number
}

export function ChangedBlocks({ quilt }: { readonly quilt: Quilt }) {
  const open = useStore(({ currentBlock }) => (currentBlock.readOnly ? null : currentBlock.id))
  const cards = useCards()
  const [found, setFound] = useState<readonly ChangedBlock[]>([])
  useEffect(() => {
    let current = true
    if (open !== null) void changedIn(open, cards).then((changed) => current && setFound(changed))
    return () => {
      current = false
    }
  }, [open, cards])
  const first = found.find(({ id }) => quilt.blocks.some((one) => one.id === id))
  if (first === undefined || open === null) return null
  const answer = (follow: boolean): void => {
    if (follow) act(updateBlock(first.id, first.block), t('{name} is up to date in this quilt.', { name: displayName(first.block) }))
    setFound(found.filter((one) => one !== first))
    void rememberOrigin(open, first.id, { card: first.card, seen: first.changed })
  }
  return (
    <div className="save-status" role="status">
      <p>{t('{name} has changed in My blocks. Change it in this quilt too?', { name: displayName(first.block) })}</p>
      <button type="button" onClick={() => answer(true)}>
        {t('Change it here too')}
      </button>
      <button type="button" onClick={() => answer(false)}>
        {t('Keep it as it is')}
      </button>
    </div>
  )
}

/** The blocks of the open quilt whose library block has been changed since the maker was last asked. */
async function changedIn(open: string, cards: readonly { readonly id: string; readonly changed: number }[]): Promise<ChangedBlock[]> {
  const origins = await originsOf(open)
  const found: ChangedBlock[] = []
  for (const [id, { card, seen }] of Object.entries(origins)) {
    const changed = cards.find((one) => one.id === card)?.changed ?? 0
    if (changed <= seen) continue
    const block = await documentOf(card).catch(() => null)
    const quilt = getState().quilt?.block
    if (block === null || isQuilt(block) || quilt === undefined) continue
    if (!isSameInQuilt(quilt, id, block)) found.push({ id, block, card, changed })
  }
  return found
}
