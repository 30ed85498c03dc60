/** The block among copies of itself: how they are turned and pressed, where they clash, and the choice that clashes least. */
import { type Block, type Method, methodOf, PRESSINGS, setPressFree, type SettingAsk, type SettingReport, TURNINGS } from '../../../geometry/index.ts'
import { clashWords, SettingPicture } from '../../views/RepeatedBlocks.tsx'
import { type Setting, useSetting, type Wish, wishFor } from '../../views/settingRequest.ts'
import { edit, setView, useStore } from '../../document/store.ts'
import { said, t, tell, tn } from '../../words/words.ts'
import { ActionButton } from '../../controls/ActionButton.tsx'
import { CountField } from '../../controls/CountField.tsx'

const TURN_NAMES: Readonly<Record<Wish['turn'], string>> = {
  none: said('all the same way'),
  alternate: said('every other one a quarter'),
  free: said('as nests best'),
  hand: said('by hand'),
}
const PRESS_NAMES: Readonly<Record<SettingAsk['press'], string>> = {
  same: said('all alike'),
  alternate: said('every other one opposite'),
  free: said('as nests best'),
}
const ACROSS = [1, 2, 3, 4, 5, 6, 7, 8]

export function SettingPanel() {
  const block = useStore(({ history }) => history.block)
  const large = useStore(({ view }) => view.mode === 'setting')
  const setting = useSetting(true)
  const { wish } = setting
  return (
    <section aria-labelledby="neighbours-title">
      <h2 id="neighbours-title">{t('Beside its neighbours')}</h2>
      <div className="pairs">
        <CountField choices={ACROSS} label={t('Across')} value={wish.columns} onChange={(columns) => wishFor(resized(wish, columns, wish.rows))} />
        <CountField choices={ACROSS} label={t('Down')} value={wish.rows} onChange={(rows) => wishFor(resized(wish, wish.columns, rows))} />
        <label>
          {t('Turned')}
          <select value={wish.turn} onChange={(event) => wishFor({ turn: event.target.value as Wish['turn'] })}>
            {[...TURNINGS, ...(wish.turn === 'hand' ? (['hand'] as const) : [])].map((turn) => (
              <option key={turn} value={turn}>
                {t(TURN_NAMES[turn])}
              </option>
            ))}
          </select>
        </label>
        <label>
          {t('Pressed')}
          <select value={wish.press} onChange={(event) => wishFor({ press: event.target.value as SettingAsk['press'] })}>
            {PRESSINGS.map((press) => (
              <option key={press} value={press}>
                {t(PRESS_NAMES[press])}
              </option>
            ))}
          </select>
        </label>
      </div>
      <Answer setting={setting} block={block} large={large} />
      <div className="buttons">
        <button type="button" aria-pressed={large} onClick={() => showLarge(!large)}>
          {t('See it large on the board')}
        </button>
        <ActionButton disabled={wish.turn === 'free' && wish.press === 'free'} onClick={() => wishFor({ turn: 'free', press: 'free' })}>
          {t('Turn and press for the fewest clashes')}
        </ActionButton>
        <LiftRules setting={setting} block={block} />
      </div>
      <p className="hint">{large ? t('Press a copy on the board to turn it.') : t('Large on the board, each copy can be turned by hand.')}</p>
      <Reasons setting={setting} />
    </section>
  )
}

/** On a small screen the board lies above the sheet: it is brought into sight, but not away from under the keyboard. */
function showLarge(large: boolean): void {
  setView({ mode: large ? 'setting' : 'cloth' })
  if (large && document.querySelector(':focus-visible') === null)
    requestAnimationFrame(() => document.querySelector('.middle')?.scrollIntoView({ block: 'nearest' }))
}

/** Where a method's own rule makes blocks clash: lifted in the block, its seams may lie otherwise in every other copy. */
function LiftRules({ setting: { said: answer }, block }: { readonly setting: Setting; readonly block: Block }) {
  if (answer === null || answer.rulesLifted === null || answer.rulesLifted >= answer.clashes.between) return null
  const ruled = block.units.filter((unit) => RULED.has(methodOf(unit)) && unit.pressFree !== true).map(({ id }) => id)
  return (
    <button
      type="button"
      onClick={() => {
        edit(setPressFree(ruled, true))
        wishFor({ press: 'free' })
        setView({ notice: t('The methods’ pressing rules are lifted: every other block may be pressed the other way.') })
      }}
    >
      {answer.rulesLifted === 0
        ? t('Lift the methods’ pressing rules: nothing clashes then')
        : tn(answer.rulesLifted, 'Lift the methods’ pressing rules: one clash is left', 'Lift the methods’ pressing rules: {n} clashes are left')}
    </button>
  )
}

const RULED: ReadonlySet<Method> = new Set(['geese-4', 'corner-flip'])

/** Turns made by hand stay with their copies where the number of copies changes. */
function resized(wish: Wish, columns: number, rows: number): Partial<Wish> {
  const turns = Array.from({ length: columns * rows }, (_, place) => {
    const [column, row] = [place % columns, Math.floor(place / columns)]
    return column < wish.columns && row < wish.rows ? (wish.turns[row * wish.columns + column] ?? 0) : 0
  })
  return { columns, rows, turns }
}

function Answer({ setting, block, large }: { readonly setting: Setting; readonly block: Block; readonly large: boolean }) {
  const { said: answer, trouble, before } = setting
  if (trouble !== null) return <p className="trouble">{t('The copies cannot be set like that: {reason}.', { reason: tell(trouble) })}</p>
  if (answer === null) return <p className="hint">{t('Being worked out…')}</p>
  // What to do first stands in the line above.
  if (block.units.length === 0) return null
  if (answer.problems.length > 0) return <p className="trouble">{t('Mend the layout first: it cannot be sewn as it stands.')}</p>
  return (
    <>
      {!large && <SettingPicture className="settingsmall" block={block} said={answer} marks={false} margin={2} />}
      <p className="sum" data-testid="setting-sum" aria-live="polite">
        {capital(clashWords(answer.clashes.between))}
        {changeWords(before, answer.clashes.between)}.
      </p>
    </>
  )
}

/** What the marks on the copies mean, and why the clashes stand. */
function Reasons({ setting: { said: answer, trouble } }: { readonly setting: Setting }) {
  if (trouble !== null || answer === null || answer.problems.length > 0) return null
  const opposite = answer.places.filter(({ press }) => press === 'opposite').length
  return (
    <>
      {placesOf(answer) < answer.clashes.between && <p className="hint">{t('One mark may stand for two pairs of seams that meet at one place.')}</p>}
      {opposite > 0 && (
        <p className="hint">
          {tn(opposite, 'The block marked with a bar is pressed the opposite way.', 'The {n} blocks marked with a bar are pressed the opposite way.')}
        </p>
      )}
      {answer.why.slice(1).map((reason) => (
        <p className="hint" key={reason}>
          {tell(reason)}
        </p>
      ))}
    </>
  )
}

const placesOf = ({ meetings }: SettingReport): number =>
  new Set(meetings.filter(({ verdict }) => verdict === 'clashes').map(({ at }) => at.join())).size

function changeWords(before: number | null, now: number): string {
  if (before === null || before === now) return ''
  return now < before
    ? `, ${tn(before - now, 'one fewer than before', '{n} fewer than before')}`
    : `, ${tn(now - before, 'one more than before', '{n} more than before')}`
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
