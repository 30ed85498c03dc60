/** The fixes of one clash, as buttons. */
import type { Findings, Fix } from '../../../geometry/index.ts'
import { getState } from '../../document/store.ts'
import { unitInWords } from '../../document/placeWords.ts'
import { label, t } from '../../words/words.ts'
import { editForFix } from './editForFix.ts'
import { FixButton } from './FixButton.tsx'

export function Fixes({ fixes, report }: { readonly fixes: readonly Fix[]; readonly report: Findings }) {
  return (
    <div className="fixes">
      <span className="try">{t('Try:')}</span>
      {fixes.map((fix) => (
        <FixButton key={`${fix.do} ${fix.what}`} name={fixWords(fix, report)} getEdit={() => editForFix(fix, report)} />
      ))}
    </div>
  )
}

function fixWords(fix: Fix, report: Findings): string {
  const number = report.joins.findIndex((join) => join.id === fix.what) + 1
  if (fix.do === 'open')
    return number > 0
      ? t('Press seam {number} open', { number })
      : t('Press the seams of {unit} open', { unit: unitInWords(getState().history.block, fix.what) })
  if (fix.do === 'order') return t(ORDERS[fix.what] ?? '')
  if (fix.do === 'turn') return t('Turn {unit} (it looks the same)', { unit: unitInWords(getState().history.block, fix.what) })
  return number > 0
    ? t('Press seam {number} the other way', { number })
    : t('Press {unit} the other way', { unit: unitInWords(getState().history.block, fix.what) })
}

const ORDERS: Readonly<Record<string, string>> = {
  rows: label('Sew by rows'),
  columns: label('Sew by columns'),
  sections: label('Sew by sections'),
}
