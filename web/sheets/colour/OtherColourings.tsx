/** Other colourings of the block: the options, a page of small pictures, each with its batches and clashes, and up to four compared large. */
import { useEffect, useMemo, useState } from 'react'
import { backgroundOf, type Block } from '../../../geometry/index.ts'
import { useStore } from '../../document/store.ts'
import { t } from '../../words/words.ts'
import { ColouringCards } from './ColouringCards.tsx'
import { ColouringOptions, FIRST_OPTIONS, type Options } from './ColouringOptions.tsx'
import type { NumberedColouring } from './colouringWords.ts'
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
  const [options, setOptions] = useState(FIRST_OPTIONS)
  const [picked, setPicked] = useState<readonly string[] | null>(null)
  const [from, setFrom] = useState(0)
  const [base, setBase] = useState(block)
  const [compared, setCompared] = useState<readonly NumberedColouring[]>([])
  const background = useMemo(() => backgroundOf(base), [base])
  const fabrics = useMemo(
    () => offeredFabrics(base, picked, options.keepBackground ? background : null),
    [base, picked, options.keepBackground, background],
  )
  const request = useMemo(() => ({ ...options, fabrics }), [options, fabrics])
  const { page, trouble } = useColouringPage(base, request, from)
  const restart = (): void => {
    setBase(block)
    setFrom(0)
    setCompared([])
  }
  const isCurrent = useMemo(() => base === block || (page !== null && sameButFabricsOf(page, base, block)), [base, block, page])
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new list only for another block or another layout
  useEffect(() => {
    if (!isCurrent) restart()
  }, [isCurrent])
  const change = (next: Partial<Options>): void => {
    setOptions({ ...options, ...next })
    setFrom(0)
    setCompared([])
  }
  return (
    <>
      <ColouringOptions
        options={options}
        change={change}
        block={base}
        background={background}
        fabrics={fabrics}
        setFabrics={(next) => {
          setPicked(next)
          setFrom(0)
          setCompared([])
        }}
      />
      {trouble !== null && <p className="trouble">{t('Couldn’t find colourings: {trouble}.', { trouble })}</p>}
      {page === null && trouble === null && (
        <p className="hint" role="status">
          {t('Finding colourings…')}
        </p>
      )}
      {page !== null && (
        <ColouringCards page={page} from={from} setFrom={setFrom} base={base} block={block} compared={compared} setCompared={setCompared} />
      )}
      {base !== block && (
        <button type="button" onClick={restart}>
          {t('List anew from the board')}
        </button>
      )}
    </>
  )
}

/** The fabrics that the maker picked, or else the first few except the background. */
function offeredFabrics({ fabrics }: Block, picked: readonly string[] | null, background: string | null): string[] {
  const ids = fabrics.map(({ id }) => id)
  return picked === null ? ids.filter((id) => id !== background).slice(0, FIRST_FABRICS) : ids.filter((id) => picked.includes(id))
}
