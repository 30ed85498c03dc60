/** How each different unit of the block is made: one way for all that are alike, how much larger they are cut, what they are trimmed to. */
import { useState } from 'react'
import {
  type Block,
  type Findings,
  KIND_FACTS,
  type Kind,
  type Method,
  mixedGoes,
  mixedMethods,
  setMethod,
  setMethods,
  type Unit,
  type UnitRow,
} from '../../../geometry/index.ts'
import { unitShapes, rectOf } from '../../document/shapes.ts'
import { edit, setView, useStore, useFindings } from '../../document/store.ts'
import { t, tn } from '../../words/words.ts'
import { FabricDefs, svgFill } from '../../drawing/FabricDefs.tsx'
import { saySides } from '../../words/sizes.ts'
import { MethodComparison, OversizeField, Trimming } from './MethodsAndTrimming.tsx'
import { KIND_NAMES, METHOD_NAMES } from '../../words/unitWords.ts'

export function UnitMethods() {
  const block = useStore(({ history }) => history.block)
  const { report } = useFindings()
  if (report === null || report.units.length === 0) return null
  return (
    <section aria-labelledby="making-title">
      <h2 id="making-title">{t('How the units are made')}</h2>
      <svg width="0" height="0" className="unseen" aria-hidden="true">
        <FabricDefs id="made-" fabrics={block.fabrics} unit={2} />
      </svg>
      <div className="choices">
        {severalOf(report).map((rows) => (
          <AllOfKind key={rows[0]?.kind} rows={rows} />
        ))}
      </div>
      <ul className="making">
        {report.units.map((row) => (
          <Made key={`${row.kind} ${row.for.join()}`} row={row} report={report} block={block} />
        ))}
      </ul>
    </section>
  )
}

/** Rows of kinds that have several looks and several ways. */
function severalOf({ units }: Findings): UnitRow[][] {
  const kinds = new Map<string, UnitRow[]>()
  for (const row of units) kinds.set(row.kind, [...(kinds.get(row.kind) ?? []), row])
  return [...kinds.values()].filter((rows) => rows.length > 1 && KIND_FACTS[rows[0]?.kind as Kind].methods.length > 1)
}

/** One way for all of a kind, whatever their fabrics. */
function AllOfKind({ rows }: { readonly rows: readonly UnitRow[] }) {
  const kind = rows[0]?.kind as Kind
  const ids = rows.flatMap((row) => row.for)
  const now = [...new Set(rows.map(({ method }) => method))]
  return (
    <label>
      {t('All {n}: {kind}', { n: ids.length, kind: t(KIND_NAMES[kind]) })}
      <select value={now.length === 1 ? now[0] : ''} onChange={(event) => edit(setMethod(ids, event.target.value as Method))}>
        {now.length > 1 && <option value="">{t('different ways')}</option>}
        {KIND_FACTS[kind].methods.map((method) => (
          <option key={method} value={method}>
            {t(METHOD_NAMES[method])}
          </option>
        ))}
      </select>
    </label>
  )
}

interface Props {
  readonly row: UnitRow
  readonly report: Findings
  readonly block: Block
}

function Made({ row, report, block }: Props) {
  const kind = row.kind as Kind
  const first = block.units.find(({ id }) => id === row.for[0])
  if (first === undefined) return null
  const { methods } = KIND_FACTS[kind]
  const name = t(KIND_NAMES[kind])
  const trimmed = saySides(row.unfinished, report.measure.unit)
  return (
    <li>
      <div className="made">
        <Small unit={first} block={block} />
        <div>
          <strong>
            {row.count} × {name}
          </strong>
          <small>
            {t('{size} unfinished', { size: trimmed })}
            {row.spare > 0 && `; ${tn(row.spare, 'one left over', '{n} left over')}`}
            {row.bias && `; ${t('outside edges on the bias')}`}
          </small>
        </div>
      </div>
      <div className="choices">
        {methods.length > 1 && (
          <label>
            {t('Made by')}
            <select
              value={row.method}
              aria-label={t('{kind}: made by', { kind: name })}
              onChange={(event) => edit(setMethod(row.for, event.target.value as Method))}
            >
              {methods.map((method) => (
                <option key={method} value={method}>
                  {t(METHOD_NAMES[method])}
                </option>
              ))}
            </select>
          </label>
        )}
        <OversizeField unit={first} block={block} ids={row.for} />
      </div>
      {kind === 'hst' && row.count > 2 && <Mixed row={row} />}
      {(methods.length > 1 || kind === 'half-rectangle') && <Compare unit={first} block={block} ids={row.for} />}
      <button type="button" className="plain link" onClick={() => choose(row)}>
        {tn(row.count, 'Show it on the board', 'Show them on the board')}
      </button>
    </li>
  )
}

/** Several methods together, so that nothing is left over and few pairs of squares are sewn. */
function Mixed({ row }: { readonly row: UnitRow }) {
  const { byEight, byFour, byTwo, goes, spare } = mixedGoes(row.count)
  if (goes >= row.goes && spare >= row.spare) return null
  const parts = [
    ...(byEight > 0 ? [tn(byEight, 'one pair of squares for eight', '{n} pairs of squares for eight each')] : []),
    ...(byFour > 0 ? [tn(byFour, 'one for four, edges on the bias', '{n} for four each, edges on the bias')] : []),
    ...(byTwo > 0 ? [tn(byTwo, 'one for two', '{n} for two each')] : []),
  ]
  const methods = mixedMethods(row.count)
  return (
    <button
      type="button"
      className="plain link"
      onClick={() => edit(setMethods(Object.fromEntries(row.for.map((id, place) => [id, methods[place] as Method]))))}
    >
      {t('Mix the ways: {parts}', { parts: parts.join(', ') })}
    </button>
  )
}

/** Worked out only while it is looked at. */
function Compare({ unit, block, ids }: { readonly unit: Unit; readonly block: Block; readonly ids: readonly string[] }) {
  const [open, setOpen] = useState(false)
  return (
    <details className="order" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t('Compare the ways, and how to trim')}</summary>
      {open && (
        <>
          <MethodComparison unit={unit} block={block} ids={ids} />
          <Trimming unit={unit} block={block} />
        </>
      )}
    </details>
  )
}

const choose = (row: UnitRow): void =>
  setView({ chosen: row.for, patch: null, notice: tn(row.count, 'One unit is chosen.', '{n} units are chosen.') })

function Small({ unit, block }: { readonly unit: Unit; readonly block: Block }) {
  const { at, size } = rectOf(unit)
  const [w, h] = size
  const fabrics = new Map(block.fabrics.map((fabric) => [fabric.id, fabric]))
  const hair = Math.max(w, h) / 40
  return (
    <svg viewBox={`${at[0] - hair} ${at[1] - hair} ${w + 2 * hair} ${h + 2 * hair}`} aria-hidden="true">
      {unitShapes(unit).map(({ name, fabric, corners }) => (
        <polygon
          key={name}
          points={corners.map((corner) => corner.join()).join(' ')}
          fill={svgFill('made-', fabrics.get(fabric))}
          stroke="currentColor"
          strokeWidth={hair}
          strokeLinejoin="round"
        />
      ))}
    </svg>
  )
}
