/** The block repeated side by side: how many copies, how they are turned and pressed, where they clash, and the choice with the fewest clashes. */
import { type Block, type Method, methodOf, PRESSINGS, setPressFree, type SettingRequest, TURNINGS } from '../../../geometry/index.ts'
import { changeSetting, type SettingChoice, type SettingState, useSetting } from '../../views/settingRequest.ts'
import { edit, setView, useStore } from '../../document/store.ts'
import { label, t, tn } from '../../words/words.ts'
import { ActionButton } from '../../controls/ActionButton.tsx'
import { CountField } from '../../controls/CountField.tsx'
import { SettingReasons, SettingResult } from './SettingResult.tsx'

const TURN_NAMES: Readonly<Record<SettingChoice['turn'], string>> = {
  none: label('all the same way'),
  alternate: label('every other one a quarter'),
  free: label('as nests best'),
  hand: label('by hand'),
}
const PRESS_NAMES: Readonly<Record<SettingRequest['press'], string>> = {
  same: label('all alike'),
  alternate: label('every other one opposite'),
  free: label('as nests best'),
}
const COUNTS = [1, 2, 3, 4, 5, 6, 7, 8]

export function SettingPanel() {
  const block = useStore(({ history }) => history.block)
  const large = useStore(({ view }) => view.mode === 'setting')
  const setting = useSetting(true)
  const { choice } = setting
  return (
    <section aria-labelledby="neighbours-title">
      <h2 id="neighbours-title">{t('Beside its neighbours')}</h2>
      <div className="pairs">
        <CountField
          choices={COUNTS}
          label={t('Across')}
          value={choice.columns}
          onChange={(columns) => changeSetting(resized(choice, columns, choice.rows))}
        />
        <CountField
          choices={COUNTS}
          label={t('Down')}
          value={choice.rows}
          onChange={(rows) => changeSetting(resized(choice, choice.columns, rows))}
        />
        <label>
          {t('Turned')}
          <select value={choice.turn} onChange={(event) => changeSetting({ turn: event.target.value as SettingChoice['turn'] })}>
            {[...TURNINGS, ...(choice.turn === 'hand' ? (['hand'] as const) : [])].map((turn) => (
              <option key={turn} value={turn}>
                {t(TURN_NAMES[turn])}
              </option>
            ))}
          </select>
        </label>
        <label>
          {t('Pressed')}
          <select value={choice.press} onChange={(event) => changeSetting({ press: event.target.value as SettingRequest['press'] })}>
            {PRESSINGS.map((press) => (
              <option key={press} value={press}>
                {t(PRESS_NAMES[press])}
              </option>
            ))}
          </select>
        </label>
      </div>
      <SettingResult setting={setting} block={block} large={large} />
      <div className="buttons">
        <button type="button" aria-pressed={large} onClick={() => showLarge(!large)}>
          {t('See it large on the board')}
        </button>
        <ActionButton disabled={choice.turn === 'free' && choice.press === 'free'} onClick={() => changeSetting({ turn: 'free', press: 'free' })}>
          {t('Turn and press for the fewest clashes')}
        </ActionButton>
        <LiftRules setting={setting} block={block} />
      </div>
      <p className="hint">{large ? t('Press a copy on the board to turn it.') : t('Large on the board, each copy can be turned by hand.')}</p>
      <SettingReasons setting={setting} />
    </section>
  )
}

/** On a small screen the board lies above the sheet: it is scrolled into view, unless the maker is using the keyboard. */
function showLarge(large: boolean): void {
  setView({ mode: large ? 'setting' : 'cloth' })
  if (large && document.querySelector(':focus-visible') === null)
    requestAnimationFrame(() => document.querySelector('.middle')?.scrollIntoView({ block: 'nearest' }))
}

/** If a method's pressing rule makes blocks clash: without the rule, the seams of every other copy may be pressed the other way. */
function LiftRules({ setting: { report: answer }, block }: { readonly setting: SettingState; readonly block: Block }) {
  if (answer === null || answer.rulesLifted === null || answer.rulesLifted >= answer.clashes.between) return null
  const affected = block.units.filter((unit) => METHODS_WITH_RULE.has(methodOf(unit)) && unit.pressFree !== true).map(({ id }) => id)
  return (
    <button
      type="button"
      onClick={() => {
        edit(setPressFree(affected, true))
        changeSetting({ press: 'free' })
        setView({ notice: t('The methods’ pressing rules are lifted: every other block may be pressed the other way.') })
      }}
    >
      {answer.rulesLifted === 0
        ? t('Lift the methods’ pressing rules: nothing clashes then')
        : tn(answer.rulesLifted, 'Lift the methods’ pressing rules: one clash is left', 'Lift the methods’ pressing rules: {n} clashes are left')}
    </button>
  )
}

/** Methods that decide how their own seams are pressed. */
const METHODS_WITH_RULE: ReadonlySet<Method> = new Set(['geese-4', 'corner-flip'])

/** When the number of copies changes, those turned by hand keep their turns. */
function resized(choice: SettingChoice, columns: number, rows: number): Partial<SettingChoice> {
  const turns = Array.from({ length: columns * rows }, (_, place) => {
    const [column, row] = [place % columns, Math.floor(place / columns)]
    return column < choice.columns && row < choice.rows ? (choice.turns[row * choice.columns + column] ?? 0) : 0
  })
  return { columns, rows, turns }
}
