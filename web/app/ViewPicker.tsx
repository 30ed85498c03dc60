/** Chooses how the block is shown: one row of joined buttons above the board, and a list on a phone, where a row would not fit. */
import { PHONE, useMedia } from '../controls/useMedia.ts'
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

const show = (mode: ViewMode): void => setView({ mode, sheet: SHEET_OF[mode] ?? getState().view.sheet })

export function ViewPicker() {
  const mode = useStore(({ view }) => view.mode)
  if (useMedia(PHONE))
    return (
      <label className="view-list" data-part="looks">
        {t('View')}
        <select value={mode} onChange={(event) => show(event.target.value as ViewMode)}>
          {VIEWS.map(([view, name]) => (
            <option key={view} value={view}>
              {name()}
            </option>
          ))}
        </select>
      </label>
    )
  return (
    <fieldset className="view-picker" data-part="looks">
      <legend className="unseen">{t('View')}</legend>
      {VIEWS.map(([view, name]) => (
        <button key={view} type="button" aria-pressed={mode === view} onClick={() => show(view)}>
          {name()}
        </button>
      ))}
    </fieldset>
  )
}
