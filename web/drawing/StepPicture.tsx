/** A picture of the booklet, drawn by the same pen as its pages; letters and lines keep their size however small it is shown. */
import { memo, useMemo } from 'react'
import { type Drawing, drawingSvg, type Fabric } from '../../geometry/index.ts'
import { t, tell } from '../words/words.ts'

interface Props {
  readonly drawing: Drawing
  readonly fabrics: readonly Fabric[]
  readonly unit: 'in' | 'cm'
}

/** Pixels: as wide as the sheet leaves room, and no taller than lets the words be seen beside it. */
const WIDEST = 330
const TALLEST = 250
/** Points to a unit of measure, as the pen draws them. */
const POINTS = { in: 72, cm: 72 / 2.54 } as const

export const StepPicture = memo(function StepPicture({ drawing, fabrics, unit }: Props) {
  const [wide, high] = [drawing.width * POINTS[unit], drawing.height * POINTS[unit]]
  const scale = Math.min(WIDEST / wide, TALLEST / high, 1.6)
  const address = useMemo(
    () => `data:image/svg+xml,${encodeURIComponent(drawingSvg(drawing, { unit, fabrics, weight: Math.max(1, 1.5 / scale) }))}`,
    [drawing, fabrics, unit, scale],
  )
  return (
    <figure>
      <img
        src={address}
        loading="lazy"
        decoding="async"
        alt={t('Picture: {what}', { what: tell(drawing.title) })}
        style={{ width: Math.max(60, Math.round(wide * scale)) }}
      />
      <figcaption aria-hidden="true">{tell(drawing.title)}</figcaption>
    </figure>
  )
})
