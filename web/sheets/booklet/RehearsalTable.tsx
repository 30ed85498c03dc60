/** What a seam allowance that is a little off does to the size of each piece. */
import { type AllowanceTestRow, sayLength } from '../../../geometry/index.ts'
import { currentLanguage, t } from '../../words/words.ts'

interface Props {
  readonly rows: readonly AllowanceTestRow[]
  readonly unit: 'in' | 'cm'
}

export function RehearsalTable({ rows, unit }: Props) {
  const size = ([width, height]: AllowanceTestRow['planned']): string => `${fineLength(width, unit)} × ${fineLength(height, unit)}`
  return (
    <table className="rehearsal">
      <caption lang={currentLanguage()}>
        {unit === 'in'
          ? t('If every seam is 1/32 in too wide or too narrow (sizes in inches)')
          : t('If every seam is 0.1 cm too wide or too narrow (sizes in centimetres)')}
      </caption>
      <thead lang={currentLanguage()}>
        <tr>
          <th scope="col">{t('Piece')}</th>
          <th scope="col">{t('Seams')}</th>
          <th scope="col">{t('Planned')}</th>
          <th scope="col">{t('Seams too wide')}</th>
          <th scope="col">{t('Seams too narrow')}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ what, seams, planned, wide, narrow }) => (
          <tr key={what}>
            <th scope="row">{what}</th>
            <td>{t('{across} across, {down} down', { across: seams[0], down: seams[1] })}</td>
            <td>{size(planned)}</td>
            <td>{size(wide)}</td>
            <td>{size(narrow)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** A length to the nearest 1/32 in, finer than lengths are usually given: the differences shown here are that small. */
function fineLength(length: number, unit: 'in' | 'cm'): string {
  const parts = Math.round(length * 32)
  if (unit === 'cm' || parts % 2 === 0) return sayLength(unit === 'cm' ? length : parts / 32, unit)
  const whole = Math.floor(parts / 32)
  return `${whole > 0 ? `${whole} ` : ''}${parts % 32}/32`
}
