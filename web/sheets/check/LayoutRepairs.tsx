/** Turns of a single unit that would fix a gap or an overlap, as buttons. */
import { getState } from '../../document/store.ts'
import { unitInWords } from '../../document/placeWords.ts'
import { label, t } from '../../words/words.ts'
import { type LayoutRepair, repairEdit } from '../../workers/layoutRepairs.ts'
import { FixButton } from './FixButton.tsx'

const TURNS: Readonly<Record<LayoutRepair['quarters'], string>> = {
  1: label('Turn {unit} 90° to the right'),
  2: label('Turn {unit} 180°'),
  3: label('Turn {unit} 90° to the left'),
}

export function LayoutRepairs({ repairs }: { readonly repairs: readonly LayoutRepair[] }) {
  if (repairs.length === 0) return null
  return (
    <div className="fixes">
      <span className="try">{t('Try:')}</span>
      {repairs.map((repair) => (
        <FixButton
          key={`${repair.unit} ${repair.quarters} ${repair.by.join()}`}
          name={t(TURNS[repair.quarters], { unit: unitInWords(getState().history.block, repair.unit) })}
          getEdit={() => repairEdit(repair)}
        />
      ))}
    </div>
  )
}
