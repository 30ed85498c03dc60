/** The pieces to cut, fabric by fabric: how much to buy, each piece with what it is for, and a picture of the strips. */
import { lazy } from 'react'
import { type Block, type CutRow, type Findings, cutFor } from '../../../geometry/index.ts'
import { LazyPanel } from '../../controls/LazyPanel.tsx'
import { FabricDefs } from '../../drawing/FabricDefs.tsx'
import { sayBought, saySides } from '../../words/sizes.ts'
import { translateAny } from '../../words/translateAny.ts'
import { t, tn } from '../../words/words.ts'

const FabricDiagram = lazy(async () => ({ default: (await import('./FabricDiagram.tsx')).FabricDiagram }))

/** What a square or rectangle is cut into afterwards. */
const CUT_AGAIN = {
  none: () => '',
  halve: () => t(', cut once from corner to corner'),
  quarter: () => t(', cut twice from corner to corner'),
} as const

const shapeWords = ({ shape, count }: CutRow): string =>
  shape === 'square'
    ? tn(count, '{n} square', '{n} squares')
    : shape === 'polygon'
      ? tn(count, '1 template', '{n} templates')
      : shape === 'triangle'
        ? tn(count, '{n} triangle', '{n} triangles')
        : tn(count, '{n} rectangle', '{n} rectangles')

export function FabricCuts({ report, block }: { readonly report: Findings; readonly block: Block }) {
  const { unit } = report.measure
  return (
    <>
      <svg width="0" height="0" className="unseen" aria-hidden="true">
        <FabricDefs id="cut-" fabrics={block.fabrics} unit={2} />
      </svg>
      {block.fabrics.map(({ id, name, colour }) => {
        const rows = report.cut.filter(({ fabric }) => fabric === id)
        const yardage = report.fabric.find(({ fabric }) => fabric === id)
        if (rows.length === 0) return null
        return (
          <div key={id} className="cloth">
            <h3>
              <span className="dot" style={{ background: colour }} aria-hidden="true" />
              {name}
              {yardage && <small> {t('buy {length}', { length: sayBought(yardage.buy, unit) })}</small>}
            </h3>
            <ul>
              {rows.map((row) => (
                <li key={`${row.shape} ${row.size.join()} ${row.then} ${row.method} ${row.for.join()}`}>
                  {shapeWords(row)} {saySides(row.size, unit)}
                  {CUT_AGAIN[row.then]()}
                  {row.fixed && <small>{t(', width across the fabric so the print stays upright')}</small>}
                  <small className="what"> {translateAny(cutFor(row, report))}</small>
                </li>
              ))}
            </ul>
            {yardage !== undefined && (
              <LazyPanel>
                <FabricDiagram yardage={yardage} name={name} colour={colour} width={report.cloth.usableWidth} unit={unit} />
              </LazyPanel>
            )}
          </div>
        )
      })}
    </>
  )
}
