/** How one look of a unit is made: its picture, how many there are, the method, how much larger it is cut, and the methods compared. */
import { useState } from 'react'
import {
  type Block,
  type Findings,
  geeseListed,
  KIND_FACTS,
  type Kind,
  type Method,
  mixedRuns,
  mixedMethods,
  namesOf,
  setMethod,
  setMethods,
  type Unit,
  type UnitRow,
} from '../../../geometry/index.ts'
import { edit, setView } from '../../document/store.ts'
import { saySides } from '../../words/sizes.ts'
import { KIND_NAMES } from '../../words/unitWords.ts'
import { translateAny } from '../../words/translateAny.ts'
import { t, tn } from '../../words/words.ts'
import { MethodComparison } from './MethodComparison.tsx'
import { MethodOptions } from './MethodOptions.tsx'
import { OversizeField } from './OversizeField.tsx'
import { Trimming } from './Trimming.tsx'
import { UnitPatchPicture } from './UnitPatchPicture.tsx'

interface Props {
  readonly row: UnitRow
  readonly report: Findings
  readonly block: Block
}

export function UnitMethodRow({ row, report, block }: Props) {
  const kind = row.kind as Kind
  const first = block.units.find(({ id }) => id === row.for[0])
  if (first === undefined) return null
  const { methods } = KIND_FACTS[kind]
  const name = t(KIND_NAMES[kind])
  const trimmed = saySides(row.unfinished, report.measure.unit)
  const looks = geeseListed(row, block, namesOf(block))
  return (
    <li>
      <div className="made">
        <UnitPatchPicture unit={first} block={block} fills="made-" />
        <div>
          <strong>
            {row.count} × {name}
          </strong>
          <small>
            {t('{size} unfinished', { size: trimmed })}
            {row.spare > 0 && `; ${tn(row.spare, '1 left over', '{n} left over')}`}
            {row.bias && `; ${t('outside edges on the bias')}`}
            {looks !== null && `; ${translateAny(looks)}`}
          </small>
        </div>
      </div>
      <div className="choices">
        {methods.length > 1 && (
          <label>
            {t('Method')}
            <select
              value={row.method}
              aria-label={t('{kind}: method', { kind: name })}
              onChange={(event) => edit(setMethod(row.for, event.target.value as Method))}
            >
              <MethodOptions kind={kind} />
            </select>
          </label>
        )}
        <OversizeField unit={first} block={block} ids={row.for} />
      </div>
      {kind === 'hst' && row.count > 2 && <MixedMethods row={row} />}
      {(methods.length > 1 || kind === 'half-rectangle') && <CompareMethods unit={first} block={block} ids={row.for} />}
      <button type="button" className="plain link" onClick={() => selectUnits(row)}>
        {tn(row.count, 'Show it on the board', 'Show them on the board')}
      </button>
    </li>
  )
}

/** Offers to mix the methods for triangle squares, so that nothing is left over and fewer pairs of squares are sewn. */
function MixedMethods({ row }: { readonly row: UnitRow }) {
  const { byEight, byFour, byTwo, runs, spare } = mixedRuns(row.count)
  if (runs >= row.goes && spare >= row.spare) return null
  const parts = [
    ...(byEight > 0 ? [tn(byEight, '1 pair of squares makes eight', '{n} pairs of squares make eight each')] : []),
    ...(byFour > 0 ? [tn(byFour, '1 makes four (bias edges)', '{n} make four each (bias edges)')] : []),
    ...(byTwo > 0 ? [tn(byTwo, '1 makes two', '{n} make two each')] : []),
  ]
  const methods = mixedMethods(row.count)
  return (
    <button
      type="button"
      className="plain link"
      onClick={() => edit(setMethods(Object.fromEntries(row.for.map((id, place) => [id, methods[place] as Method]))))}
    >
      {t('Mix methods: {parts}', { parts: parts.join(', ') })}
    </button>
  )
}

/** Computed only while it is open. */
function CompareMethods({ unit, block, ids }: { readonly unit: Unit; readonly block: Block; readonly ids: readonly string[] }) {
  const [open, setOpen] = useState(false)
  return (
    <details className="order" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t('Compare methods and see how to trim')}</summary>
      {open && (
        <>
          <MethodComparison unit={unit} block={block} ids={ids} />
          <Trimming unit={unit} block={block} />
        </>
      )}
    </details>
  )
}

const selectUnits = (row: UnitRow): void =>
  setView({ selected: row.for, patch: null, notice: tn(row.count, 'One unit selected.', '{n} units selected.') })
