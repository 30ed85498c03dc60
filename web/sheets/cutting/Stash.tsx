/** What is on hand, what of it can serve this block, how to cut it, and what is still to buy. */
import { useMemo, useState } from 'react'
import { type Block, type Fabric, PRECUTS, sayLength, type StashFor, type StashPiece } from '../../../geometry/index.ts'
import { useCopies } from '../../document/blockCount.ts'
import { asker } from '../../workers/deepClient.ts'
import { displayName } from '../../document/blockNames.ts'
import { type OnHand, putBy, setOnHand, takeOut, useStash } from '../../keeping/stash.ts'
import { setView, useStore } from '../../document/store.ts'
import { said, t, tn } from '../../words/words.ts'
import { FabricOptions } from '../../controls/FabricOptions.tsx'
import { StripsPicture } from '../../drawing/CuttingPicture.tsx'
import { parseLengthEntry } from '../../controls/lengthEntry.ts'
import { type MeasureUnit, sayBought, sayOneSize, saySides } from '../../words/sizes.ts'
import { useDeep } from '../../workers/useDeep.ts'
import './cutting.css'

const ask = asker()
const CM_IN_AN_INCH = 2.54

const SORTS = [
  ['strip', said('precut strip, 2 1/2 in')],
  ['charm', said('precut square, 5 in')],
  ['ten', said('precut square, 10 in')],
  ['quarter', said('quarter cut of a yard, 18 by 21 in')],
  ['odd', said('another piece')],
] as const
type Sort = (typeof SORTS)[number][0]

export function Stash() {
  const block = useStore(({ history }) => history.block)
  const all = useStash()
  const copies = useCopies()
  const { unit } = block.measure
  const here = useMemo(() => stashOf(all, block), [all, block])
  const told = useDeep(ask, here.length === 0 ? null : { sort: 'cloth', block, copies, stash: here })
  return (
    <section aria-labelledby="stash-title">
      <h2 id="stash-title">{t('From the stash')}</h2>
      <PutBy block={block} />
      {all.length === 0 && <p className="hint">{t('Say what cloth is on hand, and see what it can serve and what is still to buy.')}</p>}
      <ul className="stash" aria-label={t('On hand')}>
        {all.map((piece) => (
          <Piece key={piece.id} piece={piece} fabric={block.fabrics.find(({ name }) => name === piece.name)} />
        ))}
      </ul>
      {here.length > 0 && (
        <>
          {copies > 1 && <p className="hint">{tn(copies, 'For one block.', 'For {n} blocks, as many as the cut list says.')}</p>}
          {told?.sort === 'cloth' ? (
            told.value.stash.map((row) => <Served key={row.fabric} row={row} block={block} pieces={here} unit={unit} />)
          ) : (
            <p className="hint">{t('Working it out beside the page…')}</p>
          )}
        </>
      )}
    </section>
  )
}

/** Pieces of this block's fabrics, in its own measure. */
function stashOf(all: readonly OnHand[], block: Block): StashPiece[] {
  const { unit } = block.measure
  return all.flatMap(({ id, name, unit: own, size, onHand }) => {
    const fabric = block.fabrics.find((one) => one.name === name)
    const by = own === unit ? 1 : unit === 'cm' ? CM_IN_AN_INCH : 1 / CM_IN_AN_INCH
    // A hair less than it is, so that nothing is planned that does not fit.
    const sides = size.map((length) => Math.floor(length * by * 1000) / 1000) as [number, number]
    return fabric === undefined || onHand < 1 ? [] : [{ id, fabric: fabric.id, size: sides, onHand }]
  })
}

function PutBy({ block }: { readonly block: Block }) {
  const { unit } = block.measure
  const [fabric, setFabric] = useState('')
  const [sort, setSort] = useState<Sort>('quarter')
  const [sides, setSides] = useState<readonly [string, string]>(['', ''])
  const chosen = block.fabrics.find(({ id }) => id === fabric) ?? block.fabrics[0]
  const odd = sides.map((text) => parseLengthEntry(text, { most: 1000 }))
  const size = sort === 'odd' ? odd : PRECUTS[sort]
  const whole = size.every((length) => length !== null)
  const put = (): void => {
    if (chosen === undefined || !whole) return
    putBy({ name: chosen.name, unit: sort === 'odd' ? unit : 'in', size: size as [number, number], onHand: 1 })
    setView({ notice: t('{name} is put by.', { name: displayName(chosen) }) })
  }
  return (
    <form
      className="putby"
      onSubmit={(event) => {
        event.preventDefault()
        put()
      }}
    >
      <label>
        {t('Fabric')}
        <select value={chosen?.id ?? ''} onChange={(event) => setFabric(event.target.value)}>
          <FabricOptions fabrics={block.fabrics} />
        </select>
      </label>
      <label>
        {t('Sort')}
        <select value={sort} onChange={(event) => setSort(event.target.value as Sort)}>
          {SORTS.map(([one, name]) => (
            <option key={one} value={one}>
              {t(name)}
            </option>
          ))}
        </select>
      </label>
      {sort === 'odd' &&
        [t('Across ({unit})', { unit }), t('Along ({unit})', { unit })].map((label, place) => (
          <label key={label}>
            {label}
            <input
              value={sides[place]}
              inputMode="text"
              aria-invalid={sides[place] !== '' && odd[place] === null}
              onChange={(event) => setSides(place === 0 ? [event.target.value, sides[1]] : [sides[0], event.target.value])}
            />
          </label>
        ))}
      <button type="submit" disabled={chosen === undefined || !whole}>
        {t('Put by')}
      </button>
      {sort === 'odd' && !whole && <p className="hint">{t('Give both lengths, such as 12 and 7 1/2.')}</p>}
    </form>
  )
}

function Piece({ piece: { id, name, unit, size, onHand }, fabric }: { readonly piece: OnHand; readonly fabric: Fabric | undefined }) {
  const sides = saySides(size, unit)
  return (
    <li>
      <span className="dot" style={{ background: fabric?.colour ?? 'transparent' }} aria-hidden="true" />
      <span>
        {sides}
        <small>{fabric === undefined ? t('{name}, not in this block', { name }) : name}</small>
      </span>
      <input
        type="number"
        min={0}
        max={999}
        value={onHand}
        aria-label={t('Number on hand: {name}, {size}', { name, size: sides })}
        onChange={(event) => setOnHand(id, Math.max(0, Math.min(999, Math.floor(Number(event.target.value) || 0))))}
      />
      <button type="button" aria-label={t('Take out {name}, {size}', { name, size: sides })} onClick={() => takeOut(id)}>
        ×
      </button>
    </li>
  )
}

interface ServedProps {
  readonly row: StashFor
  readonly block: Block
  readonly pieces: readonly StashPiece[]
  readonly unit: MeasureUnit
}

function Served({ row, block, pieces, unit }: ServedProps) {
  const fabric = block.fabrics.find(({ id }) => id === row.fabric)
  const sizeOf = (id: string): string => saySides(pieces.find((piece) => piece.id === id)?.size ?? [0, 0], unit)
  const { name = row.fabric, colour = '#888888' } = fabric ?? {}
  const buy =
    row.toBuy.length === 0
      ? t('nothing to buy')
      : t('buy {length} ({exact})', { length: sayBought(row.buy, unit), exact: sayOneSize(row.toBuy.length, unit) })
  return (
    <div className="cloth served">
      <h3>
        <span className="dot" style={{ background: colour }} aria-hidden="true" />
        {name}
        <small> {buy}</small>
      </h3>
      {row.serves.length > 0 && (
        <ul>
          {row.serves.map(({ id, pieces: served }) => (
            <li key={id}>
              <small>
                {served.length === 0
                  ? t('{size}: too small for any piece.', { size: sizeOf(id) })
                  : t('{size}: gives {what}.', {
                      size: sizeOf(id),
                      what: served.map(({ size: [w, h], each }) => `${each} × ${sayLength(w, unit)} × ${sayLength(h, unit)}`).join(t(', or ')),
                    })}
              </small>
            </li>
          ))}
        </ul>
      )}
      {row.cuts.length > 0 && (
        <details className="order">
          <summary>{tn(row.cuts.length, 'Cut one piece of the stash', 'Cut {n} pieces of the stash')}</summary>
          {row.cuts.map(({ id, along, strips }, place) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: pieces of one size are cut one after the other
            <figure key={place}>
              <figcaption className="hint">
                {t('One of {size}, strips along {along}:', { size: sizeOf(id), along: sayOneSize(along, unit) })}
              </figcaption>
              <StripsPicture strips={strips} name={name} colour={colour} width={along} unit={unit} across={220} />
            </figure>
          ))}
        </details>
      )}
      {row.cuts.length > 0 && !row.proved && <p className="hint">{t('The least to buy that was found; less may do.')}</p>}
    </div>
  )
}
