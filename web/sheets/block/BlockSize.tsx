/** The finished size of the block as a field. Where squares of one size cannot give what was typed, it says so and offers what fits. */
import { useState } from 'react'
import { finishedSizeOf, fitFinishedSize, type GridSize, setFinishedSize, type SizeFit } from '../../../geometry/index.ts'
import { EntryField } from '../../controls/EntryField.tsx'
import { readSize, sizeProblem } from '../../controls/sizeEntry.ts'
import { edit, setView, useStore } from '../../document/store.ts'
import { sayFieldLength, saySidesExactly } from '../../words/sizes.ts'
import { t } from '../../words/words.ts'
import './sizes.css'

interface Refused {
  readonly text: string
  readonly fit: Exclude<SizeFit, { type: 'fits' }>
}

export function BlockSize() {
  const block = useStore(({ history }) => history.block)
  const [refused, setRefused] = useState<{ readonly block: typeof block; readonly what: Refused } | null>(null)
  // A new key puts the present size back into the field.
  const [entry, setEntry] = useState(0)
  const { unit } = block.measure
  const size = finishedSizeOf(block)
  const close = (): void => {
    setRefused(null)
    setEntry(entry + 1)
  }
  const take = (grid: GridSize): void => {
    edit(setFinishedSize(grid))
    setView({
      notice: t('The block is {size} {unit} finished, its grid squares {cell} {unit}.', {
        size: saySidesExactly(grid.size, unit),
        unit,
        cell: sayFieldLength(grid.cell, unit),
      }),
    })
    close()
  }
  const ask = (text: string): void => {
    const fit = fitFinishedSize(block, readSize(text))
    if (fit.type === 'fits') take(fit.grid)
    else setRefused({ block, what: { text: text.trim(), fit } })
  }
  return (
    <div className="finished-size">
      <EntryField
        key={entry}
        label={t('Finished size ({unit})', { unit })}
        value={saySidesExactly(size, unit)}
        validate={(text) => sizeProblem(text, unit)}
        onCommit={ask}
      />
      {refused?.block === block ? (
        <Offers what={refused.what} block={block} take={take} close={close} />
      ) : (
        <p className="hint">{t('Type 6 × 10, or 8 for a square. The grid squares grow or shrink with it.')}</p>
      )}
    </div>
  )
}

interface OffersProps {
  readonly what: Refused
  readonly block: Parameters<typeof finishedSizeOf>[0]
  readonly take: (grid: GridSize) => void
  readonly close: () => void
}

function Offers({ what: { text, fit }, block, take, close }: OffersProps) {
  const { unit } = block.measure
  const { columns, rows } = block.grid
  return (
    <div className="offers" role="status">
      <p>
        {fit.type === 'borders'
          ? t('The borders alone are that wide. Make them narrower first.')
          : t('{columns} × {rows} equal squares can’t make {text} {unit}. These sizes work:', { columns, rows, text, unit })}
      </p>
      <div className="buttons">
        {fit.type === 'uneven' &&
          fit.offers.map((offer) => (
            <button key={`${offer.columns} ${offer.rows} ${sayFieldLength(offer.cell, unit)}`} type="button" onClick={() => take(offer)}>
              {t('{size} {unit}: {columns} × {rows} squares of {cell} {unit}', {
                size: saySidesExactly(offer.size, unit),
                unit,
                columns: offer.columns,
                rows: offer.rows,
                cell: sayFieldLength(offer.cell, unit),
              })}
            </button>
          ))}
        <button type="button" onClick={close}>
          {t('Cancel')}
        </button>
      </div>
    </div>
  )
}
