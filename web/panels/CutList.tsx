/** What to cut, the batches, and the cloth to buy; copied or saved as CSV. */
import { lazy, Suspense } from 'react'
import { batchSentence, type Block, type CutRow, cutListCsv, type Findings, sayLength, type UnitRow } from '../../geometry/index.ts'
import { download, fileName } from '../state/download.ts'
import { look, useStore, useTold } from '../state/store.ts'
import { KIND_NAMES, METHOD_NAMES } from './words.ts'

const BatchStars = lazy(async () => ({ default: (await import('./BatchStars.tsx')).BatchStars }))
const CuttingPicture = lazy(async () => ({ default: (await import('./CuttingPicture.tsx')).CuttingPicture }))

export function CutList() {
  const block = useStore(({ history }) => history.block)
  const { report } = useTold()
  if (report === null) return null
  return (
    <section aria-labelledby="cut-title">
      <h2 id="cut-title">Cut list</h2>
      {report.cut.length === 0 ? <p className="hint">Lay a unit on the board to see what to cut.</p> : <Cut report={report} block={block} />}
      {report.units.some(({ batches }) => batches.length > 0) && (
        <ul className="batches">
          {report.units
            .filter(({ batches }) => batches.length > 0)
            .map((row) => (
              <li key={row.for.join()}>
                <p>{batchSentence(row)}</p>
                <Batches row={row} block={block} />
              </li>
            ))}
        </ul>
      )}
      <Suspense>
        <BatchStars report={report} />
      </Suspense>
      {report.units.length > 0 && <h3>Trim units to</h3>}
      <ul>
        {report.units.map((row) => (
          <li key={`${row.kind} ${row.for.join()}`}>
            {row.count} × {KIND_NAMES[row.kind as keyof typeof KIND_NAMES] ?? row.kind}, {size(row.unfinished, report)} ({METHOD_NAMES[row.method]}
            {row.spare > 0 ? `; ${row.spare} left over` : ''})
          </li>
        ))}
      </ul>
      <div className="buttons">
        <button type="button" onClick={() => copy(report, block)}>
          Copy as CSV
        </button>
        <button type="button" onClick={() => download(`${fileName(block.name)}-cut-list.csv`, cutListCsv(report, block), 'text/csv')}>
          Save as CSV
        </button>
      </div>
      <p className="caution">
        Take care: close the rotary cutter after every cut, cut away from yourself and keep your fingers behind the ruler’s edge; mind the hot iron
        and its steam; keep fingers beside the presser foot. The tools’ own instructions, and your teacher, come first.
      </p>
    </section>
  )
}

const size = ([w, h]: readonly [number, number], { measure: { unit } }: Findings): string => `${sayLength(w, unit)} × ${sayLength(h, unit)} ${unit}`

function Cut({ report, block }: { readonly report: Findings; readonly block: Block }) {
  return block.fabrics.map(({ id, name, colour }) => {
    const rows = report.cut.filter(({ fabric }) => fabric === id)
    const cloth = report.fabric.find(({ fabric }) => fabric === id)
    if (rows.length === 0) return null
    return (
      <div key={id} className="cloth">
        <h3>
          <span className="dot" style={{ background: colour }} aria-hidden="true" />
          {name}
          {cloth && <small> buy {report.measure.unit === 'in' ? `${sayLength(cloth.buy, 'in')} yd` : `${cloth.buy} m`}</small>}
        </h3>
        <ul>
          {rows.map((row) => (
            <li key={`${row.size.join()} ${row.then} ${row.method} ${row.for.join()}`}>
              {row.count} {shape(row)} {size(row.size, report)}
              {row.then === 'halve' ? ', cut once corner to corner' : row.then === 'quarter' ? ', cut twice corner to corner' : ''}
            </li>
          ))}
        </ul>
        {cloth !== undefined && (
          <Suspense>
            <CuttingPicture cloth={cloth} name={name} colour={colour} width={report.cloth.usableWidth} unit={report.measure.unit} />
          </Suspense>
        )}
      </div>
    )
  })
}

const shape = ({ shape, count }: CutRow): string => `${shape === 'polygon' ? 'template' : shape}${count === 1 ? '' : 's'}`

function Batches({ row, block }: { readonly row: UnitRow; readonly block: Block }) {
  const name = (id: string): string => block.fabrics.find((fabric) => fabric.id === id)?.name ?? id
  const told = new Map<string, number>()
  for (const { corners } of row.batches) {
    const key = corners.map(name).join(', ')
    told.set(key, (told.get(key) ?? 0) + 1)
  }
  return (
    <ul>
      {[...told].map(([corners, count]) => (
        <li key={corners}>
          {count} × small squares, clockwise: {corners}
        </li>
      ))}
    </ul>
  )
}

async function copy(report: Findings, block: Block): Promise<void> {
  try {
    await navigator.clipboard.writeText(cutListCsv(report, block))
    look({ notice: 'The cut list is copied as CSV.' })
  } catch {
    look({ notice: 'This browser does not let the page copy; save the list as CSV instead.' })
  }
}
