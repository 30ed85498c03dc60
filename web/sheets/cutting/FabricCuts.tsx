/** The pieces to cut, fabric by fabric: how much to buy, each piece with what it is for, and a picture of the strips. */
import { lazy } from 'react'
import { type Block, cutPieces, type Findings, type ListedPiece, type MeasureUnit } from '../../../geometry/index.ts'
import { LazyPanel } from '../../controls/LazyPanel.tsx'
import { FabricDefs } from '../../drawing/FabricDefs.tsx'
import { sayBought, sayOneSize, saySides } from '../../words/sizes.ts'
import { translateAny } from '../../words/translateAny.ts'
import { t, tn } from '../../words/words.ts'

const FabricDiagram = lazy(async () => ({ default: (await import('./FabricDiagram.tsx')).FabricDiagram }))

const HANDS = { left: () => t(', left-handed'), right: () => t(', right-handed') } as const

/** What a square or rectangle is cut into afterwards. */
export const CUT_AGAIN = {
  none: () => '',
  halve: () => t(', cut once from corner to corner'),
  quarter: () => t(', cut twice from corner to corner'),
} as const

/** How many pieces of which shape. */
export const shapeWords = ({ shape, count }: Pick<ListedPiece, 'shape' | 'count'>): string =>
  shape === 'square'
    ? tn(count, '{n} square', '{n} squares')
    : shape === 'polygon'
      ? tn(count, '1 template', '{n} templates')
      : shape === 'triangle'
        ? tn(count, '{n} triangle', '{n} triangles')
        : tn(count, '{n} rectangle', '{n} rectangles')

export function FabricCuts({ report, block }: { readonly report: Findings; readonly block: Block }) {
  const { unit } = report.measure
  const pieces = cutPieces(report)
  return (
    <>
      <svg width="0" height="0" className="unseen" aria-hidden="true">
        <FabricDefs id="cut-" fabrics={block.fabrics} unit={2} />
      </svg>
      {block.fabrics.map(({ id, name, colour }) => {
        const rows = pieces.filter(({ fabric }) => fabric === id)
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
              {rows.map((piece) => (
                <Piece key={`${piece.shape} ${piece.size.join()} ${piece.then} ${piece.hand} ${piece.for.join()}`} piece={piece} unit={unit} />
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

/** Short side first; the same pieces as in the cut list as text. */
function Piece({ piece, unit }: { readonly piece: ListedPiece; readonly unit: MeasureUnit }) {
  return (
    <li>
      {shapeWords(piece)} {saySides(piece.size, unit)}
      {CUT_AGAIN[piece.then]()}
      {piece.hand !== null && HANDS[piece.hand]()}
      {piece.fixed && <small>{t(', width across the fabric so the print stays upright')}</small>}
      <small className="what"> {piece.purposes.map(translateAny).join('; ')}</small>
      {piece.isBorderStrip && (
        <small className="what">
          {' '}
          {t('Cut {width} wide; trim to length when you get there.', { width: sayOneSize(Math.min(...piece.size), unit) })}
        </small>
      )}
    </li>
  )
}
