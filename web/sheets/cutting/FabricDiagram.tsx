/** How to cut one fabric: a picture of its strips with a key of their pieces, in the sheet or large over the page. */
import { useState } from 'react'
import { createPortal } from 'react-dom'
import { type MeasureUnit, type FabricRow, sayLength, type Strip } from '../../../geometry/index.ts'
import { useModal } from '../../controls/useModal.ts'
import { pieceLetters, StripsPicture } from '../../drawing/StripsPicture.tsx'
import { t, tn } from '../../words/words.ts'

interface Props {
  /** What the report says about this fabric. */
  readonly yardage: FabricRow
  readonly name: string
  readonly colour: string
  /** Usable width of the fabric, in the unit given. */
  readonly width: number
  readonly unit: MeasureUnit
}

export function FabricDiagram({ yardage, name, colour, width, unit }: Props) {
  const [large, setLarge] = useState(false)
  return (
    <details className="order">
      <summary>{tn(yardage.strips.length, 'How to cut it: 1 strip', 'How to cut it: {n} strips')}</summary>
      <StripsPicture strips={yardage.strips} name={name} colour={colour} width={width} unit={unit} across={300} />
      <PieceKey strips={yardage.strips} unit={unit} />
      <p className="hint">
        {yardage.proved
          ? t('Uses {length} of fabric, the least possible.', { length: `${sayLength(yardage.length, unit)} ${unit}` })
          : t('Uses {length} of fabric; at least {least} is needed.', {
              length: `${sayLength(yardage.length, unit)} ${unit}`,
              least: `${sayLength(yardage.atLeast ?? 0, unit)} ${unit}`,
            })}{' '}
        {t('Cut in the order of the numbers: first the strip, then across it from the left, then cut the narrower pieces down.')}
      </p>
      <div className="buttons">
        <button type="button" aria-haspopup="dialog" onClick={() => setLarge(true)}>
          {t('Show larger')}
        </button>
      </div>
      {large && <LargeDiagram yardage={yardage} name={name} colour={colour} width={width} unit={unit} close={() => setLarge(false)} />}
    </details>
  )
}

function LargeDiagram({ yardage, name, colour, width, unit, close }: Props & { readonly close: () => void }) {
  const dialog = useModal()
  return createPortal(
    <dialog ref={dialog} className="large" aria-labelledby="large-title" onClose={close}>
      <div className="titled">
        <h2 id="large-title">{t('Cutting {name}', { name })}</h2>
        <button type="button" className="main" onClick={() => window.print()}>
          {t('Print this page')}
        </button>
        <button type="button" onClick={() => dialog.current?.close()}>
          {t('Close')}
        </button>
      </div>
      <StripsPicture strips={yardage.strips} name={name} colour={colour} width={width} unit={unit} across={900} />
      <PieceKey strips={yardage.strips} unit={unit} />
    </dialog>,
    document.body,
  )
}

/** The size of the piece behind each letter of the picture. */
function PieceKey({ strips, unit }: { readonly strips: readonly Strip[]; readonly unit: MeasureUnit }) {
  const sizes = new Map(strips.flatMap(({ pieces }) => pieces.map(({ size }) => [size.join(), size] as const)))
  return (
    <ul className="moves">
      {[...pieceLetters(strips)].map(([key, letter]) => {
        const [width, height] = sizes.get(key) as readonly [number, number]
        return (
          <li key={key}>
            {letter}: {sayLength(width, unit)} × {sayLength(height, unit)} {unit}
          </li>
        )
      })}
    </ul>
  )
}
