/** The block repeated side by side: how many copies, how they are turned and pressed, where they clash, and the choice with the fewest clashes. */
import { type Block, type Method, methodOf, PRESSINGS, setPressFree, type SettingRequest, TURNINGS } from '../../../geometry/index.ts'
import { changeSetting, type SettingChoice, type SettingState, useSetting } from '../../views/settingRequest.ts'
import { edit, setView, useStore } from '../../document/store.ts'
import { label, t, tn } from '../../words/words.ts'
import { ActionButton } from '../../controls/ActionButton.tsx'
import { CountField } from '../../controls/CountField.tsx'
import { beginBlock } from '../../keeping/openBlock.ts'
import { quiltOfSetting } from './quiltOfSetting.ts'
import { SettingReasons, SettingResult } from './SettingResult.tsx'

const TURN_NAMES: Readonly<Record<SettingChoice['turn'], string>> = {
  none: label('all the same way'),
  alternate: label('every other block 90°'),
  free: label('best for nesting'),
  hand: label('by hand'),
}
const PRESS_NAMES: Readonly<Record<SettingRequest['press'], string>> = {
  same: label('all the same'),
  alternate: label('every other block the other way'),
  free: label('best for nesting'),
}
const COUNTS = [1, 2, 3, 4, 5, 6, 7, 8]

export function SettingPanel() {
  const block = useStore(({ history }) => history.block)
  const large = useStore(({ view }) => view.mode === 'setting')
  const setting = useSetting(true)
  const { choice } = setting
  return (
    <section aria-labelledby="neighbours-title">
      <h2 id="neighbours-title">{t('Blocks side by side')}</h2>
      <div className="pairs">
        <CountField
          choices={COUNTS}
          label={t('Blocks across')}
          value={choice.columns}
          onChange={(columns) => changeSetting(resized(choice, columns, choice.rows))}
        />
        <CountField
          choices={COUNTS}
          label={t('Blocks down')}
          value={choice.rows}
          onChange={(rows) => changeSetting(resized(choice, choice.columns, rows))}
        />
        <label>
          {t('Rotation')}
          <select value={choice.turn} onChange={(event) => changeSetting({ turn: event.target.value as SettingChoice['turn'] })}>
            {[...TURNINGS, ...(choice.turn === 'hand' ? (['hand'] as const) : [])].map((turn) => (
              <option key={turn} value={turn}>
                {t(TURN_NAMES[turn])}
              </option>
            ))}
          </select>
        </label>
        <label>
          {t('Pressing')}
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
          {t('Show on the board')}
        </button>
        <ActionButton
          className="main"
          disabled={choice.turn === 'free' && choice.press === 'free'}
          onClick={() => changeSetting({ turn: 'free', press: 'free' })}
        >
          {t('Find the best nesting')}
        </ActionButton>
        <LiftRules setting={setting} block={block} />
        <AsQuilt setting={setting} block={block} />
      </div>
      <p className="hint">{large ? t('Click a block on the board to turn it.') : t('Show it on the board to turn single blocks.')}</p>
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

/** The copies as they are shown become a quilt of the maker's own, to frame, join and cut. */
function AsQuilt({ setting: { report, of }, block }: { readonly setting: SettingState; readonly block: Block }) {
  if (report === null || of?.block !== block || report.problems.length > 0) return null
  return (
    <button type="button" onClick={() => void beginBlock(quiltOfSetting(block, report))}>
      {t('Make a quilt of these')}
    </button>
  )
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
        setView({ notice: t('Every other block can now be pressed the other way.') })
      }}
    >
      {answer.rulesLifted === 0
        ? t('Press units either way: then everything nests')
        : tn(answer.rulesLifted, 'Press units either way: then 1 crossing doesn’t nest', 'Press units either way: then {n} crossings don’t nest')}
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
