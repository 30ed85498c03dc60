/** The row of buttons above the board that choose how the block is shown. */
import { getState, type SheetName, setView, useStore, type ViewMode } from '../document/store.ts'
import { t } from '../words/words.ts'

const VIEWS: readonly (readonly [ViewMode, () => string])[] = [
  ['cloth', () => t('Fabric')],
  ['value', () => t('Value')],
  ['pressing', () => t('Pressing')],
  ['wrong', () => t('Wrong side')],
  ['layers', () => t('Layers')],
  ['order', () => t('Sewing order')],
  ['quilting', () => t('Quilting line')],
  ['setting', () => t('Repeated blocks')],
]

/** Views whose options are on a sheet, which opens with the view. */
const SHEET_OF: Readonly<Partial<Record<ViewMode, SheetName>>> = { quilting: 'quilting', setting: 'setting' }

export function ViewPicker() {
  const mode = useStore(({ view }) => view.mode)
  return (
    <fieldset className="view-picker" data-part="looks">
      <legend className="unseen">{t('View')}</legend>
      {VIEWS.map(([view, name]) => (
        <button
          key={view}
          type="button"
          aria-pressed={mode === view}
          onClick={() => setView({ mode: view, sheet: SHEET_OF[view] ?? getState().view.sheet })}
        >
          {name()}
        </button>
      ))}
    </fieldset>
  )
}
