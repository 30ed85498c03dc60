/** A form to add a piece of fabric to the stash: a precut, a fat quarter, or a piece of any size. */
import { useState } from 'react'
import { type Block, PRECUTS } from '../../../geometry/index.ts'
import { FabricOptions } from '../../controls/FabricOptions.tsx'
import { parseLengthEntry } from '../../controls/lengthEntry.ts'
import { displayName } from '../../document/blockNames.ts'
import { setView } from '../../document/store.ts'
import { addToStash } from '../../keeping/stash.ts'
import { label, t } from '../../words/words.ts'

const PIECE_SIZES = [
  ['strip', label('precut strip, 2 1/2 in wide')],
  ['charm', label('precut square, 5 in')],
  ['ten', label('precut square, 10 in')],
  ['quarter', label('fat quarter, 18 × 21 in')],
  ['odd', label('another size')],
] as const
type PieceSize = (typeof PIECE_SIZES)[number][0]

export function AddToStash({ block }: { readonly block: Block }) {
  const { unit } = block.measure
  const [fabric, setFabric] = useState('')
  const [kind, setKind] = useState<PieceSize>('quarter')
  const [sides, setSides] = useState<readonly [string, string]>(['', ''])
  const selectedFabric = block.fabrics.find(({ id }) => id === fabric) ?? block.fabrics[0]
  const typedSides = sides.map((text) => parseLengthEntry(text, { most: 1000 }))
  const size = kind === 'odd' ? typedSides : PRECUTS[kind]
  const complete = size.every((length) => length !== null)
  const add = (): void => {
    if (selectedFabric === undefined || !complete) return
    addToStash({ name: selectedFabric.name, unit: kind === 'odd' ? unit : 'in', size: size as [number, number], onHand: 1 })
    setView({ notice: t('{name} added to your stash.', { name: displayName(selectedFabric) }) })
  }
  return (
    <form
      className="add-to-stash"
      onSubmit={(event) => {
        event.preventDefault()
        add()
      }}
    >
      <label>
        {t('Fabric')}
        <select value={selectedFabric?.id ?? ''} onChange={(event) => setFabric(event.target.value)}>
          <FabricOptions fabrics={block.fabrics} />
        </select>
      </label>
      <label>
        {t('Precut or size')}
        <select value={kind} onChange={(event) => setKind(event.target.value as PieceSize)}>
          {PIECE_SIZES.map(([one, name]) => (
            <option key={one} value={one}>
              {t(name)}
            </option>
          ))}
        </select>
      </label>
      {kind === 'odd' &&
        [t('Width ({unit})', { unit }), t('Length ({unit})', { unit })].map((label, place) => (
          <label key={label}>
            {label}
            <input
              value={sides[place]}
              inputMode="text"
              aria-invalid={sides[place] !== '' && typedSides[place] === null}
              onChange={(event) => setSides(place === 0 ? [event.target.value, sides[1]] : [sides[0], event.target.value])}
            />
          </label>
        ))}
      <button type="submit" className="main" disabled={selectedFabric === undefined || !complete}>
        {t('Add to stash')}
      </button>
      {kind === 'odd' && !complete && <p className="hint">{t('Enter width and length, such as 7 1/2 and 12.')}</p>}
    </form>
  )
}
