/** A picture of the booklet, drawn with the same code as its pages. Letters and lines have the same size however small the picture is. */
import { memo, useMemo } from 'react'
import { type Drawing, drawingSvg, type Fabric } from '../../geometry/index.ts'
import { t } from '../words/words.ts'

interface Props {
  readonly drawing: Drawing
  readonly fabrics: readonly Fabric[]
  readonly unit: 'in' | 'cm'
}

/** Pixels: as wide as the sheet allows, and not so tall that the step's words are pushed out of view. */
const WIDEST = 330
const TALLEST = 250
/** The width of a picture with a ruler, whose numbers are to be read. */
const RULER = 320
/** Printer's points in an inch and in a centimetre. */
const POINTS = { in: 72, cm: 72 / 2.54 } as const

export const StepPicture = memo(function StepPicture({ drawing, fabrics, unit }: Props) {
  const [wide, high] = [drawing.width * POINTS[unit], drawing.height * POINTS[unit]]
  const ruler = drawing.marks.some((mark) => mark.type === 'line' && mark.style === 'blade')
  const scale = ruler ? RULER / wide : Math.min(WIDEST / wide, TALLEST / high, 1.6)
  const address = useMemo(
    () => `data:image/svg+xml,${encodeURIComponent(drawingSvg(drawing, { unit, fabrics, weight: Math.max(1, 1.5 / scale) }))}`,
    [drawing, fabrics, unit, scale],
  )
  return (
    <figure>
      <img
        className={ruler ? 'ruler' : ''}
        src={address}
        loading="lazy"
        decoding="async"
        alt={t('Picture: {what}', { what: drawing.title })}
        style={{ width: Math.max(60, Math.round(wide * scale)) }}
      />
      <figcaption aria-hidden="true">{drawing.title}</figcaption>
    </figure>
  )
})
