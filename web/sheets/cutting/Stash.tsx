/** The maker's stash: what is on hand, what it gives for this block, how to cut it, and what is still to buy. */
import { useMemo } from 'react'
import type { Block, Fabric, StashPiece } from '../../../geometry/index.ts'
import { useCopies } from '../../document/blockCount.ts'
import { useStore } from '../../document/store.ts'
import { type StashEntry, setOnHand, removeFromStash, useStash } from '../../keeping/stash.ts'
import { saySides } from '../../words/sizes.ts'
import { t, tn } from '../../words/words.ts'
import { deepClient } from '../../workers/clients.ts'
import { useWorker } from '../../workers/useWorker.ts'
import { AddToStash } from './AddToStash.tsx'
import { StashUse } from './StashUse.tsx'
import './cutting.css'

const CM_IN_AN_INCH = 2.54

export function Stash() {
  const block = useStore(({ history }) => history.block)
  const all = useStash()
  const copies = useCopies()
  const { unit } = block.measure
  const usable = useMemo(() => usablePieces(all, block), [all, block])
  const answer = useWorker(deepClient, 'cloth', usable.length === 0 ? null : [block, copies, usable])
  return (
    <section aria-labelledby="stash-title">
      <h2 id="stash-title">{t('Your stash')}</h2>
      <AddToStash block={block} />
      {all.length === 0 && <p className="hint">{t('Add the fabric you have. You’ll see what you can cut from it and what to buy.')}</p>}
      <ul className="stash" aria-label={t('In your stash')}>
        {all.map((piece) => (
          <PieceOnHand key={piece.id} piece={piece} fabric={block.fabrics.find(({ name }) => name === piece.name)} />
        ))}
      </ul>
      {usable.length > 0 && (
        <>
          {copies > 1 && <p className="hint">{tn(copies, 'For 1 block, as in the cut list.', 'For {n} blocks, as in the cut list.')}</p>}
          {answer?.type === 'answer' ? (
            answer.value.stash.map((row) => <StashUse key={row.fabric} row={row} block={block} pieces={usable} unit={unit} />)
          ) : (
            <p className="hint">{t('Working…')}</p>
          )}
        </>
      )}
    </section>
  )
}

/** The pieces of this block's fabrics, in the block's own unit of measure. */
function usablePieces(all: readonly StashEntry[], block: Block): StashPiece[] {
  const { unit } = block.measure
  return all.flatMap(({ id, name, unit: own, size, onHand }) => {
    const fabric = block.fabrics.find((one) => one.name === name)
    const by = own === unit ? 1 : unit === 'cm' ? CM_IN_AN_INCH : 1 / CM_IN_AN_INCH
    // Rounded down, so that nothing is planned that does not fit.
    const sides = size.map((length) => Math.floor(length * by * 1000) / 1000) as [number, number]
    return fabric === undefined || onHand < 1 ? [] : [{ id, fabric: fabric.id, size: sides, onHand }]
  })
}

function PieceOnHand({ piece: { id, name, unit, size, onHand }, fabric }: { readonly piece: StashEntry; readonly fabric: Fabric | undefined }) {
  const sides = saySides(size, unit)
  return (
    <li>
      <span className="dot" style={{ background: fabric?.colour ?? 'transparent' }} aria-hidden="true" />
      <span>
        {sides}
        <small>{fabric === undefined ? t('{name} (not in this block)', { name }) : name}</small>
      </span>
      <input
        type="number"
        min={0}
        max={999}
        value={onHand}
        aria-label={t('How many: {name}, {size}', { name, size: sides })}
        onChange={(event) => setOnHand(id, Math.max(0, Math.min(999, Math.floor(Number(event.target.value) || 0))))}
      />
      <button
        type="button"
        className="danger"
        aria-label={t('Delete from your stash: {name}, {size}', { name, size: sides })}
        onClick={() => removeFromStash(id)}
      >
        ×
      </button>
    </li>
  )
}
