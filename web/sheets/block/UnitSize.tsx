/** The finished size of what is selected, as a field; and how many strips a unit of strips has. */
import { useState } from 'react'
import {
  type Block,
  cellOf,
  type FileBox,
  fileBoxOf,
  fitUnitSize,
  type FinishedSize,
  keepsProportion,
  lengthOf,
  multiply,
  separateStrips,
  setStripCount,
  STRIP_COUNTS,
  type Unit,
} from '../../../geometry/index.ts'
import { resizeTo } from '../../board/actions/arrange.ts'
import { CountField } from '../../controls/CountField.tsx'
import { EntryField } from '../../controls/EntryField.tsx'
import { readSize, sizeProblem } from '../../controls/sizeEntry.ts'
import { edit, setView, useStore } from '../../document/store.ts'
import { saySidesExactly } from '../../words/sizes.ts'
import { t } from '../../words/words.ts'
import './sizes.css'

interface Props {
  readonly block: Block
  readonly units: readonly Unit[]
}

const sizeIn = (block: Block, { size }: FileBox): FinishedSize => [
  multiply(lengthOf(size[0]), cellOf(block)),
  multiply(lengthOf(size[1]), cellOf(block)),
]

export function UnitSize({ block, units }: Props) {
  const halves = useStore(({ view }) => view.halfCells)
  const [offered, setOffered] = useState<{ readonly block: Block; readonly offers: readonly FileBox[] } | null>(null)
  const [entry, setEntry] = useState(0)
  const box = fileBoxOf(units)
  if (box === null) return null
  const { unit } = block.measure
  const ids = units.map(({ id }) => id)
  const take = (to: FileBox): void => {
    resizeTo(ids, to)
    setOffered(null)
    setEntry(entry + 1)
  }
  const ask = (text: string): void => {
    const size = readSize(text)
    const fit = fitUnitSize(block, ids, size, halves)
    if (fit?.type === 'fits') take(fit.to)
    else if (fit !== null) setOffered({ block, offers: keepsProportion(units) ? [] : fit.offers })
  }
  return (
    <div className="finished-size">
      <EntryField
        key={`${entry} ${ids.join()}`}
        label={t('Finished size ({unit})', { unit })}
        value={saySidesExactly(sizeIn(block, box), unit)}
        validate={(text) => sizeProblem(text, unit)}
        onCommit={ask}
      />
      {offered?.block === block && (
        <div className="offers" role="status">
          <p>{halves ? t('That isn’t a whole number of half squares.') : t('That isn’t a whole number of grid squares.')}</p>
          <div className="buttons">
            {offered.offers.map((to) => (
              <button key={to.size.join()} type="button" onClick={() => take(to)}>
                {`${saySidesExactly(sizeIn(block, to), unit)} ${unit}`}
              </button>
            ))}
          </div>
        </div>
      )}
      {units.every(({ kind }) => kind === 'strips') && <Strips ids={ids} count={Object.keys(units[0]?.fabrics ?? {}).length} />}
    </div>
  )
}

function Strips({ ids, count }: { readonly ids: readonly string[]; readonly count: number }) {
  const separate = (): void => {
    edit(separateStrips(ids))
    setView({ selected: [], patch: null, notice: t('Each strip is a piece of its own now. Drag a corner to change its width.') })
  }
  return (
    <div className="pairs">
      <CountField
        label={t('How many strips')}
        value={count}
        choices={STRIP_COUNTS.some((one) => one === count) ? STRIP_COUNTS : [count, ...STRIP_COUNTS]}
        onChange={(strips) => edit(setStripCount(ids, strips))}
      />
      <button type="button" onClick={separate}>
        {t('Separate for unequal widths')}
      </button>
    </div>
  )
}
