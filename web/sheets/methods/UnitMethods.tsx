/** How each different unit of the block is made: one row for all units that look alike, and one choice for all rows of a kind. */
import { type Findings, KIND_FACTS, type Kind, type Method, setMethod, type UnitRow } from '../../../geometry/index.ts'
import { edit, useFindings, useStore } from '../../document/store.ts'
import { FabricDefs } from '../../drawing/FabricDefs.tsx'
import { KIND_NAMES } from '../../words/unitWords.ts'
import { t } from '../../words/words.ts'
import { MethodOptions } from './MethodOptions.tsx'
import { UnitMethodRow } from './UnitMethodRow.tsx'

export function UnitMethods() {
  const block = useStore(({ history }) => history.block)
  const { report } = useFindings()
  if (report === null || report.units.length === 0) return null
  return (
    <section aria-labelledby="making-title">
      <h2 id="making-title">{t('Making the units')}</h2>
      <svg width="0" height="0" className="unseen" aria-hidden="true">
        <FabricDefs id="made-" fabrics={block.fabrics} unit={2} />
      </svg>
      <div className="choices">
        {rowsByKind(report).map((rows) => (
          <MethodOfKind key={rows[0]?.kind} rows={rows} />
        ))}
      </div>
      <ul className="making">
        {report.units.map((row) => (
          <UnitMethodRow key={`${row.kind} ${row.for.join()}`} row={row} report={report} block={block} />
        ))}
      </ul>
    </section>
  )
}

/** The rows of each kind that has several rows and several methods. */
function rowsByKind({ units }: Findings): UnitRow[][] {
  const kinds = new Map<string, UnitRow[]>()
  for (const row of units) kinds.set(row.kind, [...(kinds.get(row.kind) ?? []), row])
  return [...kinds.values()].filter((rows) => rows.length > 1 && KIND_FACTS[rows[0]?.kind as Kind].methods.length > 1)
}

/** One method for all units of a kind, whatever their fabrics. */
function MethodOfKind({ rows }: { readonly rows: readonly UnitRow[] }) {
  const kind = rows[0]?.kind as Kind
  const ids = rows.flatMap((row) => row.for)
  const now = [...new Set(rows.map(({ method }) => method))]
  return (
    <label>
      {t('Method for all {n}: {kind}', { n: ids.length, kind: t(KIND_NAMES[kind]) })}
      <select value={now.length === 1 ? now[0] : ''} onChange={(event) => edit(setMethod(ids, event.target.value as Method))}>
        {now.length > 1 && <option value="">{t('different methods')}</option>}
        <MethodOptions kind={kind} />
      </select>
    </label>
  )
}
