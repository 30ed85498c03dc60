/** The batting, and whether the widest place without a stitch is within what it allows. */
import { BATTINGS, holdsAcross, message, mostApart, sayLength } from '../../../geometry/index.ts'
import { translateAny } from '../../words/translateAny.ts'
import { label, t } from '../../words/words.ts'

const GAP_WORDS = {
  holds: label('OK for this batting.'),
  close: label('Close to the limit for this batting.'),
  'too wide': label('Too far apart for this batting: add lines.'),
} as const

interface Props {
  readonly unit: 'in' | 'cm'
  /** The id of the batting. */
  readonly batting: string
  readonly setBatting: (id: string) => void
  /** The widest place without a stitch, in the unit given; null while the lines are not known. */
  readonly gap: { readonly width: number; readonly atMost: number } | null
}

export function BattingField({ unit, batting, setBatting, gap }: Props) {
  const selectedBatting = BATTINGS.find(({ id }) => id === batting)
  return (
    <>
      <label>
        {t('Batting')}
        <select value={batting} onChange={(event) => setBatting(event.target.value)}>
          {BATTINGS.map((one) => (
            <option key={one.id} value={one.id}>
              {translateAny(message('batting', { batting: one.id }))}: {sayLength(mostApart(one, unit), unit)} {unit}
            </option>
          ))}
        </select>
      </label>
      {gap !== null && selectedBatting !== undefined && (
        <p className="hint">
          {t(GAP_WORDS[holdsAcross(gap, unit, selectedBatting)])}{' '}
          {t('The widest gap between stitches is {width}. Always check the package.', {
            width: `${sayLength(gap.width, unit)} ${unit}`,
          })}
        </p>
      )}
    </>
  )
}
