/** Other colourings of the block: the options, a page of small pictures, each with its batches and clashes, and up to four compared large. */
import { useEffect, useMemo, useState } from 'react'
import { backgroundOf, type Block, type ColouringPage, type JudgedColouring } from '../../../geometry/index.ts'
import { useStore } from '../../document/store.ts'
import { t } from '../../words/words.ts'
import { ColouringCards } from './ColouringCards.tsx'
import { useColouringChoices } from './colouringChoices.ts'
import { ColouringOptions } from './ColouringOptions.tsx'
import { isOnBoard, type NumberedColouring } from './colouringWords.ts'
import { sameButFabricsOf, useColouringPage } from './useColouringPage.ts'

/** How many fabrics are offered at first. */
const FIRST_FABRICS = 6

/** For a block of more units a page of pictures takes a while, so the maker has to ask for it. */
const MOST_AT_ONCE = 1500

export function OtherColourings() {
  const [isRequested, setAsked] = useState(false)
  const large = useStore(({ history }) => history.block.units.length > MOST_AT_ONCE)
  return (
    <section aria-labelledby="colourings-title" className="colourings">
      <h2 id="colourings-title">{t('Other colourings')}</h2>
      {large && !isRequested ? (
        <button type="button" onClick={() => setAsked(true)}>
          {t('Find colourings for this large block')}
        </button>
      ) : (
        <FoundColourings />
      )}
    </section>
  )
}

function FoundColourings() {
  const block = useStore(({ history }) => history.block)
  const { options, picked, choose } = useColouringChoices()
  const [from, setFrom] = useState(0)
  const [base, setBase] = useState(block)
  const [compared, setCompared] = useState<readonly NumberedColouring[]>([])
  const [taken, setTaken] = useState<readonly JudgedColouring[]>([])
  const background = useMemo(() => backgroundOf(base), [base])
  const fabrics = useMemo(
    () => offeredFabrics(base, picked, options.keepBackground ? background : null),
    [base, picked, options.keepBackground, background],
  )
  const request = useMemo(() => ({ ...options, fabrics }), [options, fabrics])
  const { page, trouble } = useColouringPage(base, request, from)
  const restart = (): void => {
    setFrom(0)
    setCompared([])
    setTaken([])
  }
  const isCurrent = useMemo(() => base === block || (page !== null && isFromList(page, taken, base, block)), [base, block, page, taken])
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new list when the board changed otherwise than by taking a colouring of this one
  useEffect(() => {
    if (isCurrent) return
    setBase(block)
    restart()
  }, [isCurrent])
  return (
    <>
      <ColouringOptions
        options={options}
        change={(next) => {
          choose({ options: { ...options, ...next } })
          restart()
        }}
        block={base}
        background={background}
        fabrics={fabrics}
        setFabrics={(next) => {
          choose({ picked: next })
          restart()
        }}
      />
      {trouble !== null && <p className="trouble">{t('Couldn’t find colourings: {trouble}.', { trouble })}</p>}
      {page === null && trouble === null && (
        <p className="hint" role="status">
          {t('Looking for colourings…')}
        </p>
      )}
      {page !== null && (
        <ColouringCards
          page={page}
          from={from}
          setFrom={setFrom}
          base={base}
          block={block}
          compared={compared}
          setCompared={setCompared}
          onTake={(colouring) => setTaken([...taken, colouring])}
        />
      )}
    </>
  )
}

/** Whether the board has the colouring that the list began with, one of this page, or one that was taken from another page. */
const isFromList = (page: ColouringPage, taken: readonly JudgedColouring[], base: Block, block: Block): boolean =>
  sameButFabricsOf(page, base, block) && [page.present, ...page.colourings, ...taken].some((colouring) => isOnBoard(page, colouring, block))

/** The fabrics that the maker picked, or else the first few except the background. */
function offeredFabrics({ fabrics }: Block, picked: readonly string[] | null, background: string | null): string[] {
  const ids = fabrics.map(({ id }) => id)
  return picked === null ? ids.filter((id) => id !== background).slice(0, FIRST_FABRICS) : ids.filter((id) => picked.includes(id))
}
