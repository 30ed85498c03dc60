/** Other colourings of the block side by side: a page of small pictures, each with its batches and clashes; up to four compared large. */
import { useEffect, useId, useMemo, useRef, useState } from 'react'
import {
  backgroundOf,
  type Block,
  type ColouringPage,
  colourPatches,
  coloursOf,
  type ColouringWishes,
  type Fabric,
  type JudgedColouring,
  MOST_COLOURINGS,
} from '../../../geometry/index.ts'
import { askColour } from '../../workers/colourClient.ts'
import { edit, setView, useStore } from '../../document/store.ts'
import { t, tn } from '../../words/words.ts'
import { ActionButton } from '../../controls/ActionButton.tsx'
import { ColouringPicture, blockOutlines, type BlockOutlines, patchKey } from '../../drawing/ColouringPicture.tsx'
import { ALL_TURNS, FabricDefs, cellLength, Swatch } from '../../drawing/FabricDefs.tsx'

/** With the block as it was, a dozen pictures. */
const PAGE = 11
/** So many can be compared, and so many fabrics are offered at first. */
const MOST_COMPARED = 4
const AT_FIRST = 6

type Ticks = Omit<ColouringWishes, 'fabrics'>
const TICKS: Ticks = { what: 'points', keepBackground: true, sameAmounts: false, fewestBatches: false }

/** A colouring with its place on the list, from 1; 0 is the block as it was when the list was made. */
interface Numbered {
  readonly number: number
  readonly colouring: JudgedColouring
}

/** Beyond so many units a page of pictures takes a while: it comes when it is asked for. */
const MOST_AT_ONCE = 1500

export function OtherColourings() {
  const [asked, setAsked] = useState(false)
  const large = useStore(({ history }) => history.block.units.length > MOST_AT_ONCE)
  return (
    <section aria-labelledby="colourings-title" className="colourings">
      <h2 id="colourings-title">{t('Other colourings')}</h2>
      {large && !asked ? (
        <button type="button" onClick={() => setAsked(true)}>
          {t('Find colourings of this large block')}
        </button>
      ) : (
        <Found />
      )}
    </section>
  )
}

function Found() {
  const block = useStore(({ history }) => history.block)
  const [ticks, setTicks] = useState(TICKS)
  const [taken, setTaken] = useState<readonly string[] | null>(null)
  const [from, setFrom] = useState(0)
  const [base, setBase] = useState(block)
  const [compared, setCompared] = useState<readonly Numbered[]>([])
  const background = useMemo(() => backgroundOf(base), [base])
  const fabrics = useMemo(() => offered(base, taken, ticks.keepBackground ? background : null), [base, taken, ticks.keepBackground, background])
  const wishes = useMemo(() => ({ ...ticks, fabrics }), [ticks, fabrics])
  const { page, trouble } = usePage(base, wishes, from)
  const anew = (): void => {
    setBase(block)
    setFrom(0)
    setCompared([])
  }
  const stays = useMemo(() => base === block || (page !== null && differsOnlyIn(page, base, block)), [base, block, page])
  // biome-ignore lint/correctness/useExhaustiveDependencies: another block, or another layout, is another list
  useEffect(() => {
    if (!stays) anew()
  }, [stays])
  const change = (next: Partial<Ticks>): void => {
    setTicks({ ...ticks, ...next })
    setFrom(0)
    setCompared([])
  }
  return (
    <>
      <Wishes
        ticks={ticks}
        change={change}
        block={base}
        background={background}
        fabrics={fabrics}
        take={(next) => {
          setTaken(next)
          setFrom(0)
          setCompared([])
        }}
      />
      {trouble !== null && <p className="trouble">{t('No colourings were found: {trouble}.', { trouble })}</p>}
      {page === null && trouble === null && (
        <p className="hint" role="status">
          {t('Colourings are being found…')}
        </p>
      )}
      {page !== null && <List page={page} from={from} setFrom={setFrom} base={base} block={block} compared={compared} setCompared={setCompared} />}
      {base !== block && (
        <button type="button" onClick={anew}>
          {t('List anew from the board')}
        </button>
      )}
    </>
  )
}

/** The maker's own choice, or the first few but the background. */
function offered({ fabrics }: Block, taken: readonly string[] | null, kept: string | null): string[] {
  const ids = fabrics.map(({ id }) => id)
  return taken === null ? ids.filter((id) => id !== kept).slice(0, AT_FIRST) : ids.filter((id) => taken.includes(id))
}

function usePage(block: Block, wishes: ColouringWishes, from: number): { readonly page: ColouringPage | null; readonly trouble: string | null } {
  const [state, setState] = useState<{ readonly page: ColouringPage | null; readonly trouble: string | null }>({ page: null, trouble: null })
  useEffect(() => {
    let current = true
    void askColour({ sort: 'page', block, wishes, from, count: PAGE }).then((answer) => {
      if (!current) return
      if (answer.sort === 'page') setState({ page: answer.value, trouble: null })
      else if (answer.sort === 'trouble') setState({ page: null, trouble: answer.message })
    })
    return () => {
      current = false
    }
  }, [block, wishes, from])
  return state
}

/** Whether nothing but the fabrics of patches on the list has changed: then the list holds good. */
function differsOnlyIn({ slots }: ColouringPage, base: Block, block: Block): boolean {
  const free = new Set(slots.map(({ unit, name }) => patchKey(unit, name)))
  const blank = (one: Block): string =>
    JSON.stringify({
      ...one,
      name: '',
      units: one.units.map((unit) => ({
        ...unit,
        fabrics: Object.fromEntries(Object.entries(unit.fabrics).map(([name, fabric]) => [name, free.has(patchKey(unit.id, name)) ? '' : fabric])),
      })),
    })
  return base.units.length === block.units.length && blank(base) === blank(block)
}

interface WishesProps {
  readonly ticks: Ticks
  readonly change: (next: Partial<Ticks>) => void
  readonly block: Block
  readonly background: string | null
  readonly fabrics: readonly string[]
  readonly take: (fabrics: readonly string[]) => void
}

function Wishes({ ticks, change, block, background, fabrics, take }: WishesProps) {
  const tick = (name: 'keepBackground' | 'sameAmounts' | 'fewestBatches', label: string) => (
    <label className="tick">
      <input type="checkbox" checked={ticks[name]} onChange={(event) => change({ [name]: event.target.checked })} />
      {label}
    </label>
  )
  const ground = block.fabrics.find(({ id }) => id === background)?.name
  return (
    <>
      <label>
        {t('What may change')}
        <select value={ticks.what} onChange={(event) => change({ what: event.target.value as Ticks['what'] })}>
          <option value="points">{t('the points')}</option>
          <option value="all">{t('every patch')}</option>
        </select>
      </label>
      <fieldset className="chips" disabled={ticks.sameAmounts}>
        <legend>{t('Fabrics they may take')}</legend>
        {block.fabrics.map((fabric) => (
          <button
            key={fabric.id}
            type="button"
            aria-pressed={fabrics.includes(fabric.id)}
            onClick={() => take(fabrics.includes(fabric.id) ? fabrics.filter((id) => id !== fabric.id) : [...fabrics, fabric.id])}
          >
            <Swatch fabric={fabric} unit={block.measure.unit} />
            {fabric.name}
          </button>
        ))}
      </fieldset>
      {tick('keepBackground', ground === undefined ? t('Keep the background') : t('Keep the background, {name}', { name: ground }))}
      {tick('sameAmounts', t('Only change places: as many patches of each fabric as now'))}
      {block.units.some(({ kind }) => kind === 'goose') && tick('fewestBatches', t('Only those of the fewest batches of geese'))}
    </>
  )
}

interface ListProps {
  readonly page: ColouringPage
  readonly from: number
  readonly setFrom: (from: number) => void
  readonly base: Block
  readonly block: Block
  readonly compared: readonly Numbered[]
  readonly setCompared: (compared: readonly Numbered[]) => void
}

function List({ page, from, setFrom, base, block, compared, setCompared }: ListProps) {
  const id = useId()
  const outlines = useMemo(() => blockOutlines(base), [base])
  const [open, setOpen] = useState(false)
  const shown: Numbered[] = [
    { number: 0, colouring: page.present },
    ...page.colourings.map((colouring, at) => ({ number: from + at + 1, colouring })),
  ]
  const toggle = (one: Numbered): void => {
    if (compared.some(({ number }) => number === one.number)) setCompared(compared.filter(({ number }) => number !== one.number))
    else if (compared.length === MOST_COMPARED) setView({ notice: t('Four can be compared at once: leave one out first.') })
    else setCompared([...compared, one])
  }
  const picture = { id, outlines, page, fabrics: base.fabrics }
  return (
    <>
      <svg className="unseen" aria-hidden="true">
        <FabricDefs id={id} fabrics={base.fabrics} unit={cellLength(base)} turns={ALL_TURNS} />
      </svg>
      <p className="sum" role="status">
        {howMany(page)}
      </p>
      <ol className="cards" aria-label={t('Colourings')}>
        {shown.map((one) => (
          <li key={one.number}>
            <button
              type="button"
              className="card"
              aria-pressed={isOn(page, one.colouring, block)}
              aria-label={sentenceOf(one, page, base.fabrics)}
              onClick={() => put(one, page)}
            >
              <Pictured {...picture} colouring={one.colouring} />
            </button>
            <span className="judged" aria-hidden="true">
              {judged(one.colouring).map((text) => (
                <span key={text}>{text}</span>
              ))}
            </span>
            <label className="tick">
              <input
                type="checkbox"
                checked={compared.some(({ number }) => number === one.number)}
                aria-label={t('Compare {which}', { which: nameOf(one) })}
                onChange={() => toggle(one)}
              />
              {one.number === 0 ? t('as it was') : one.number}
            </label>
          </li>
        ))}
      </ol>
      <div className="buttons">
        <ActionButton disabled={from === 0} onClick={() => setFrom(Math.max(0, from - PAGE))}>
          {t('Earlier')}
        </ActionButton>
        <ActionButton disabled={from + PAGE >= page.count} onClick={() => setFrom(from + PAGE)}>
          {t('Later')}
        </ActionButton>
        <ActionButton disabled={compared.length < 2} onClick={() => setOpen(true)}>
          {compared.length < 2 ? t('Compare: tick two to four') : tn(compared.length, 'Compare one', 'Compare {n}')}
        </ActionButton>
      </div>
      {open && <Compare {...picture} compared={compared} close={() => setOpen(false)} />}
    </>
  )
}

function howMany({ count, more, slots }: ColouringPage): string {
  if (slots.length === 0) return t('No patch may change: choose every patch, or let the background change.')
  if (count === 0) return t('There is no other: let more fabrics in, or lift a tick.')
  if (!more) return tn(count, 'One other colouring.', '{n} other colourings, the most symmetric first.')
  return t('{n} other colourings, the most symmetric first; there are more.', { n: Math.min(count, MOST_COLOURINGS) })
}

const nameOf = ({ number }: Numbered): string => (number === 0 ? t('the block as it was') : t('colouring {n}', { n: number }))

/** In a word or two each. */
function judged({ batches, clashes }: JudgedColouring): string[] {
  return [
    ...(batches === 0 ? [] : [tn(batches, 'one batch', '{n} batches')]),
    ...(clashes === null ? [] : [clashes === 0 ? t('no clash') : tn(clashes, 'one clash', '{n} clashes')]),
  ]
}

/** How many of the patches that may change are of each fabric, in the order of the list. */
function amounts({ fabrics: taken }: JudgedColouring, fabrics: readonly Fabric[]): string[] {
  return fabrics.flatMap(({ id, name }) => {
    const n = taken.filter((one) => one === id).length
    return n === 0 ? [] : [t('{n} of {name}', { n, name })]
  })
}

function sentenceOf(one: Numbered, { present }: ColouringPage, fabrics: readonly Fabric[]): string {
  const { symmetry } = one.colouring
  const kept = symmetry > 1 ? [t('kept by {n} turns and mirrors', { n: symmetry })] : []
  const which = one.colouring === present ? t('The block as it was') : t('Take colouring {n}', { n: one.number })
  return [which, ...amounts(one.colouring, fabrics), ...judged(one.colouring), ...kept].join(', ')
}

function isOn({ slots }: ColouringPage, { fabrics }: JudgedColouring, block: Block): boolean {
  const units = new Map(block.units.map((unit) => [unit.id, unit]))
  return slots.length > 0 && slots.every(({ unit, name }, at) => units.get(unit)?.fabrics[name] === fabrics[at])
}

function put(one: Numbered, page: ColouringPage): void {
  edit(colourPatches(coloursOf(page, one.colouring)))
  setView({ notice: one.number === 0 ? t('The block is coloured as it was.') : t('Colouring {n} is on the board.', { n: one.number }) })
}

interface PicturedProps {
  readonly id: string
  readonly outlines: BlockOutlines
  readonly page: ColouringPage
  readonly fabrics: readonly Fabric[]
  readonly colouring: JudgedColouring
}

function Pictured({ id, outlines, page, fabrics, colouring }: PicturedProps) {
  const colours = new Map(coloursOf(page, colouring).map(({ unit, name, fabric }) => [patchKey(unit, name), fabric]))
  return <ColouringPicture id={id} outlines={outlines} fabrics={fabrics} colours={colours} />
}

interface CompareProps extends Omit<PicturedProps, 'colouring'> {
  readonly compared: readonly Numbered[]
  readonly close: () => void
}

/** Large, side by side, over the whole page. */
function Compare({ compared, close, ...picture }: CompareProps) {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal()
  }, [])
  return (
    <dialog ref={dialog} className="compare" aria-labelledby="compare-title" onClose={close}>
      <header>
        <h2 id="compare-title">{t('Side by side')}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          {t('Close')}
        </button>
      </header>
      <ul data-count={compared.length}>
        {compared.map((one) => (
          <li key={one.number}>
            <Pictured {...picture} colouring={one.colouring} />
            <p>{[one.number === 0 ? t('As it was') : t('Colouring {n}', { n: one.number }), ...judged(one.colouring)].join(' · ')}</p>
            <button
              type="button"
              onClick={() => {
                put(one, picture.page)
                dialog.current?.close()
              }}
            >
              {t('Take this one')}
            </button>
          </li>
        ))}
      </ul>
    </dialog>
  )
}
