/** A page of colourings as small pictures. Pressing one takes it; ticking two to four offers to compare them large. */
import { useId, useMemo, useState } from 'react'
import { type Block, type ColouringPage, type JudgedColouring, MOST_COLOURINGS } from '../../../geometry/index.ts'
import { ActionButton } from '../../controls/ActionButton.tsx'
import { setView } from '../../document/store.ts'
import { blockOutlines } from '../../drawing/ColouringPicture.tsx'
import { ALL_TURNS, cellLength, FabricDefs } from '../../drawing/FabricDefs.tsx'
import { t, tn } from '../../words/words.ts'
import { ColouringThumbnail } from './ColouringThumbnail.tsx'
import { CompareColourings } from './CompareColourings.tsx'
import { colouringLabel, colouringName, colouringResults, isOnBoard, type NumberedColouring, takeColouring } from './colouringWords.ts'

/** Colourings on a page. With the block as it was, a dozen pictures. */
export const PAGE_SIZE = 11
const MOST_COMPARED = 4

interface Props {
  readonly page: ColouringPage
  readonly from: number
  readonly setFrom: (from: number) => void
  readonly base: Block
  readonly block: Block
  readonly compared: readonly NumberedColouring[]
  readonly setCompared: (compared: readonly NumberedColouring[]) => void
  /** Called with the colouring that the board gets. */
  readonly onTake: (colouring: JudgedColouring) => void
}

export function ColouringCards({ page, from, setFrom, base, block, compared, setCompared, onTake }: Props) {
  const id = useId()
  const outlines = useMemo(() => blockOutlines(base), [base])
  const [open, setOpen] = useState(false)
  const shown: NumberedColouring[] = [
    { number: 0, colouring: page.present },
    ...page.colourings.map((colouring, at) => ({ number: from + at + 1, colouring })),
  ]
  const toggle = (one: NumberedColouring): void => {
    if (compared.some(({ number }) => number === one.number)) setCompared(compared.filter(({ number }) => number !== one.number))
    else if (compared.length === MOST_COMPARED) setView({ notice: t('You can compare four at most. Untick one first.') })
    else setCompared([...compared, one])
  }
  const take = (one: NumberedColouring): void => {
    onTake(one.colouring)
    takeColouring(one, page)
  }
  const picture = { id, outlines, page, fabrics: base.fabrics }
  return (
    <>
      <svg className="unseen" aria-hidden="true">
        <FabricDefs id={id} fabrics={base.fabrics} unit={cellLength(base)} turns={ALL_TURNS} />
      </svg>
      <p className="sum" role="status">
        {countWords(page)}
      </p>
      <ol className="cards" aria-label={t('Colourings')}>
        {shown.map((one) => (
          <li key={one.number}>
            <button
              type="button"
              className="card"
              aria-pressed={isOnBoard(page, one.colouring, block)}
              aria-label={colouringLabel(one, page, base.fabrics)}
              onClick={() => take(one)}
            >
              <ColouringThumbnail {...picture} colouring={one.colouring} />
            </button>
            <span className="judged" aria-hidden="true">
              {isOnBoard(page, one.colouring, block) && <strong>{t('on the board')}</strong>}
              {colouringResults(one.colouring).map((text) => (
                <span key={text}>{text}</span>
              ))}
            </span>
            <label className="tick">
              <input
                type="checkbox"
                checked={compared.some(({ number }) => number === one.number)}
                aria-label={t('Compare {which}', { which: colouringName(one) })}
                onChange={() => toggle(one)}
              />
              {one.number === 0 ? t('yours') : one.number}
            </label>
          </li>
        ))}
      </ol>
      <div className="buttons">
        <ActionButton disabled={from === 0} onClick={() => setFrom(Math.max(0, from - PAGE_SIZE))}>
          {t('Previous page')}
        </ActionButton>
        <ActionButton disabled={from + PAGE_SIZE >= page.count} onClick={() => setFrom(from + PAGE_SIZE)}>
          {t('Next page')}
        </ActionButton>
        <ActionButton disabled={compared.length < 2} onClick={() => setOpen(true)}>
          {compared.length < 2 ? t('Tick 2 to 4 to compare') : t('Compare {n}', { n: compared.length })}
        </ActionButton>
      </div>
      {open && <CompareColourings {...picture} compared={compared} take={take} close={() => setOpen(false)} />}
    </>
  )
}

function countWords({ count, more, slots }: ColouringPage): string {
  if (slots.length === 0) return t('Nothing can change. Select all patches, or untick “Keep the background”.')
  if (count === 0) return t('There are no other colourings. Add more fabrics or untick an option.')
  if (!more) return tn(count, '1 other colouring.', '{n} other colourings, most symmetric first.')
  return t('More than {n} other colourings, most symmetric first.', { n: Math.min(count, MOST_COLOURINGS) })
}
