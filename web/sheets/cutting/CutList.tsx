/** What to cut, the batches, and the cloth to buy, for one block or many; copied or saved as CSV. */
import { lazy } from 'react'
import {
  type Advice,
  batchSentence,
  type Block,
  type CutRow,
  cutListCsv,
  type Findings,
  purpose,
  type UnitRow,
  type StashPiece,
} from '../../../geometry/index.ts'
import { MOST_COPIES_CUT, setCopies, useCopies } from '../../document/blockCount.ts'
import { asker } from '../../workers/deepClient.ts'
import { download, fileName } from '../../keeping/download.ts'
import { setView, useStore, useFindings } from '../../document/store.ts'
import { t, tell, tn } from '../../words/words.ts'
import { FabricDefs, svgFill } from '../../drawing/FabricDefs.tsx'
import { EntryField } from '../../controls/EntryField.tsx'
import { sayBought, saySides } from '../../words/sizes.ts'
import { useDeep } from '../../workers/useDeep.ts'
import './cutting.css'
import { LazyPanel } from '../../controls/LazyPanel.tsx'

const BatchStars = lazy(async () => ({ default: (await import('./BatchStars.tsx')).BatchStars }))
const CuttingPicture = lazy(async () => ({ default: (await import('../../drawing/CuttingPicture.tsx')).CuttingPicture }))
const HourglassPlans = lazy(async () => ({ default: (await import('./HourglassPlans.tsx')).HourglassPlans }))

const notCopies = (text: string): string | null =>
  /^\d{1,3}$/.test(text.trim()) && Number(text) >= 1 && Number(text) <= MOST_COPIES_CUT
    ? null
    : t('Give a whole number from 1 to {most}.', { most: MOST_COPIES_CUT })
const ask = asker()
/** The same each time: a wish is known again by what stands in it. */
const NO_STASH: readonly StashPiece[] = []

export function CutList() {
  const block = useStore(({ history }) => history.block)
  const { report } = useFindings()
  const copies = useCopies()
  const many = useDeep(ask, copies === 1 ? null : { sort: 'cloth', block, copies, stash: NO_STASH })
  if (report === null) return null
  const list: Findings | null = copies === 1 ? report : many?.sort === 'cloth' ? { ...report, ...many.value.cloth } : null
  return (
    <section aria-labelledby="cut-title" className="cutsheet">
      <div className="titled">
        <h2 id="cut-title">{t('Cut list')}</h2>
        <EntryField label={t('Blocks to make')} value={String(copies)} validate={notCopies} onCommit={(text) => setCopies(Number(text))} />
      </div>
      {list === null ? <p className="hint">{t('Working it out beside the page…')}</p> : <List list={list} block={block} />}
      <LazyPanel>
        <BatchStars report={report} />
        <HourglassPlans block={block} />
      </LazyPanel>
      <p className="caution">
        {t(
          'Take care: close the rotary cutter after every cut, cut away from yourself and keep your fingers behind the ruler’s edge; mind the hot iron and its steam; keep fingers beside the presser foot. The tools’ own instructions, and your teacher, come first.',
        )}
      </p>
    </section>
  )
}

function List({ list, block }: { readonly list: Findings; readonly block: Block }) {
  const batched = list.units.filter(({ batches }) => batches.length > 0)
  return (
    <>
      <Advised advice={list.advice} />
      {list.cut.length === 0 && <p className="hint">{t('Lay a unit on the board to see what to cut.')}</p>}
      <Cut report={list} block={block} />
      {batched.length > 0 && (
        <ul className="batches">
          {batched.map((row) => (
            <li key={`${row.finished.join()} ${row.for.join()}`}>
              <p>{tell(batchSentence(row))}</p>
              {row.batchesAtLeast !== undefined && (
                <p className="hint">{tn(row.batchesAtLeast, 'Fewer may do, but not less than one.', 'Fewer may do, but not less than {n}.')}</p>
              )}
              <Batches row={row} block={block} />
            </li>
          ))}
        </ul>
      )}
      {list.cut.length > 0 && (
        <div className="buttons">
          <button type="button" onClick={() => copy(list, block)}>
            {t('Copy as CSV')}
          </button>
          <button type="button" onClick={() => download(`${fileName(block.name)}-cut-list.csv`, cutListCsv(list, block), 'text/csv')}>
            {t('Save as CSV')}
          </button>
        </div>
      )}
    </>
  )
}

/** What to know before cutting; pressed, its units are chosen on the board. */
function Advised({ advice }: { readonly advice: readonly Advice[] }) {
  if (advice.length === 0) return null
  return (
    <ul className="advice" aria-label={t('Before you cut')}>
      {advice.map(({ code, units, message }) => (
        <li key={`${code} ${units.join()} ${message}`}>
          {units.length === 0 ? (
            <p>{tell(message)}</p>
          ) : (
            <button
              type="button"
              className="plain"
              onClick={() => setView({ chosen: units, patch: null, notice: tn(units.length, 'One unit is chosen.', '{n} units are chosen.') })}
            >
              {tell(message)}
            </button>
          )}
        </li>
      ))}
    </ul>
  )
}

const THEN = {
  none: () => '',
  halve: () => t(', cut once corner to corner'),
  quarter: () => t(', cut twice corner to corner'),
} as const

const shapeWords = ({ shape, count }: CutRow): string =>
  shape === 'square'
    ? tn(count, '{n} square', '{n} squares')
    : shape === 'polygon'
      ? tn(count, '{n} template', '{n} templates')
      : shape === 'triangle'
        ? tn(count, '{n} triangle', '{n} triangles')
        : tn(count, '{n} rectangle', '{n} rectangles')

function Cut({ report, block }: { readonly report: Findings; readonly block: Block }) {
  const { unit } = report.measure
  return (
    <>
      <svg width="0" height="0" className="unseen" aria-hidden="true">
        <FabricDefs id="cut-" fabrics={block.fabrics} unit={2} />
      </svg>
      {block.fabrics.map(({ id, name, colour }) => {
        const rows = report.cut.filter(({ fabric }) => fabric === id)
        const cloth = report.fabric.find(({ fabric }) => fabric === id)
        if (rows.length === 0) return null
        return (
          <div key={id} className="cloth">
            <h3>
              <span className="dot" style={{ background: colour }} aria-hidden="true" />
              {name}
              {cloth && <small> {t('buy {length}', { length: sayBought(cloth.buy, unit) })}</small>}
            </h3>
            <ul>
              {rows.map((row) => (
                <li key={`${row.shape} ${row.size.join()} ${row.then} ${row.method} ${row.for.join()}`}>
                  {shapeWords(row)} {saySides(row.size, unit)}
                  {THEN[row.then]()}
                  {row.fixed && <small>{t(', the first across the cloth: the print stays upright')}</small>}
                  <small className="what"> {tell(purpose(row, report))}</small>
                </li>
              ))}
            </ul>
            {cloth !== undefined && (
              <LazyPanel>
                <CuttingPicture cloth={cloth} name={name} colour={colour} width={report.cloth.usableWidth} unit={unit} />
              </LazyPanel>
            )}
          </div>
        )
      })}
    </>
  )
}

function Batches({ row, block }: { readonly row: UnitRow; readonly block: Block }) {
  const name = (id: string): string => block.fabrics.find((fabric) => fabric.id === id)?.name ?? id
  const told = new Map<string, { corners: readonly string[]; goose: string; count: number }>()
  for (const { corners, goose } of row.batches) {
    const key = corners.join()
    told.set(key, { corners, goose, count: (told.get(key)?.count ?? 0) + 1 })
  }
  return (
    <ul className="lots">
      {[...told.values()].map(({ corners, goose, count }) => (
        <li key={corners.join()}>
          <BatchPicture corners={corners} goose={goose} block={block} />
          <span>{t('{count} × small squares, clockwise: {corners}', { count, corners: corners.map(name).join(', ') })}</span>
        </li>
      ))}
    </ul>
  )
}

const PLACES = [
  [0, 0],
  [1.7, 0],
  [1.7, 1.7],
  [0, 1.7],
] as const

/** The large square with its small ones on their corners, numbered clockwise; the line between which each is sewn. */
function BatchPicture({ corners, goose, block }: { readonly corners: readonly string[]; readonly goose: string; readonly block: Block }) {
  const fill = (id: string): string =>
    svgFill(
      'cut-',
      block.fabrics.find((fabric) => fabric.id === id),
    )
  return (
    <svg viewBox="-0.1 -0.1 3.8 3.8" width="58" height="58" aria-hidden="true">
      <rect width="3.6" height="3.6" fill={fill(goose)} stroke="#2b2320" strokeWidth="0.06" />
      {PLACES.map(([x, y], place) => (
        <g key={`${x} ${y}`}>
          <rect x={x} y={y} width="1.9" height="1.9" fill={fill(corners[place] as string)} fillOpacity="0.92" stroke="#2b2320" strokeWidth="0.06" />
          <circle cx={x + 0.95} cy={y + 0.95} r="0.55" fill="#fffaf2" />
          <text x={x + 0.95} y={y + 0.97} fontSize="0.85" textAnchor="middle" dominantBaseline="central" fill="#2b2320">
            {place + 1}
          </text>
        </g>
      ))}
      <path d="M0 0 3.6 3.6M3.6 0 0 3.6" stroke="#2b2320" strokeWidth="0.04" strokeDasharray="0.18 0.14" fill="none" />
    </svg>
  )
}

async function copy(report: Findings, block: Block): Promise<void> {
  try {
    await navigator.clipboard.writeText(cutListCsv(report, block))
    setView({ notice: t('The cut list is copied as CSV.') })
  } catch {
    setView({ notice: t('This browser does not let the page copy; save the list as CSV instead.') })
  }
}
