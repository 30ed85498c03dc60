/** Turns of a single unit that would fix a gap or an overlap, as buttons. */
import { label, t } from '../../words/words.ts'
import { type LayoutRepair, repairEdit } from '../../workers/layoutRepairs.ts'
import { FixButton } from './FixButton.tsx'

const TURNS: Readonly<Record<LayoutRepair['quarters'], string>> = {
  1: label('Turn {unit} a quarter'),
  2: label('Turn {unit} half round'),
  3: label('Turn {unit} a quarter back'),
}

export function LayoutRepairs({ repairs }: { readonly repairs: readonly LayoutRepair[] }) {
  if (repairs.length === 0) return null
  return (
    <div className="fixes">
      <span className="try">{t('Try:')}</span>
      {repairs.map((repair) => (
        <FixButton
          key={`${repair.unit} ${repair.quarters}`}
          name={t(TURNS[repair.quarters], { unit: repair.unit })}
          getEdit={() => repairEdit(repair)}
        />
      ))}
    </div>
  )
}
