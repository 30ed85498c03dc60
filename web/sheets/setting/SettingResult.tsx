/** What the repeated blocks come to: a small picture, the number of clashes between copies, and why they are there. */
import type { Block, SettingReport } from '../../../geometry/index.ts'
import { clashCount, SettingPicture } from '../../views/RepeatedBlocks.tsx'
import type { SettingState } from '../../views/settingRequest.ts'
import { translateAny } from '../../words/translateAny.ts'
import { t, tn } from '../../words/words.ts'

export function SettingResult({ setting, block, large }: { readonly setting: SettingState; readonly block: Block; readonly large: boolean }) {
  const { report: answer, trouble, before } = setting
  if (trouble !== null) return <p className="trouble">{t('The blocks can’t be set like that: {reason}.', { reason: translateAny(trouble) })}</p>
  if (answer === null) return <p className="hint">{t('Working…')}</p>
  // The seam check above already says what to do first.
  if (block.units.length === 0) return null
  if (answer.problems.length > 0) return <p className="trouble">{t('Finish the block first. Then you’ll see how it nests beside others.')}</p>
  return (
    <>
      {!large && <SettingPicture className="settingsmall" block={block} report={answer} marks={false} margin={2} />}
      <p className="sum" data-testid="setting-sum" aria-live="polite">
        {capitalise(clashCount(answer.clashes.between))}
        {changeWords(before, answer.clashes.between)}.
      </p>
    </>
  )
}

/** What the marks on the copies mean, and why the clashes cannot be avoided. */
export function SettingReasons({ setting: { report: answer, trouble } }: { readonly setting: SettingState }) {
  if (trouble !== null || answer === null || answer.problems.length > 0) return null
  const opposite = answer.places.filter(({ press }) => press === 'opposite').length
  return (
    <>
      {clashingPlaces(answer) < answer.clashes.between && (
        <p className="hint">{t('A number beside a mark says how many crossings don’t nest there.')}</p>
      )}
      {opposite > 0 && (
        <p className="hint">
          {tn(opposite, 'The block with a bar is pressed the other way.', 'The {n} blocks with a bar are pressed the other way.')}
        </p>
      )}
      {answer.why.slice(1).map((reason) => (
        <p className="hint" key={reason.code}>
          {translateAny(reason)}
        </p>
      ))}
    </>
  )
}

/** One place can have several clashes. */
const clashingPlaces = ({ meetings }: SettingReport): number =>
  new Set(meetings.filter(({ verdict }) => verdict === 'clashes').map(({ at }) => at.join())).size

function changeWords(before: number | null, now: number): string {
  if (before === null || before === now) return ''
  return now < before
    ? `, ${tn(before - now, '1 fewer than before', '{n} fewer than before')}`
    : `, ${tn(now - before, '1 more than before', '{n} more than before')}`
}

const capitalise = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
