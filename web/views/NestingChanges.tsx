/** What the last edit changed about where seams meet, in words, until the next; and what is only tried on the board. */
import type { Difference as Found } from './nestingChanges.ts'
import { useDifference } from './useNestingChanges.ts'
import { useStore } from '../document/store.ts'
import { t, tn } from '../words/words.ts'

export function Difference() {
  const difference = useDifference()
  const trying = useStore(({ preview }) => preview !== null)
  return (
    <p className={trying ? 'difference trying' : 'difference'} role="status" data-testid="difference">
      {trying ? t('This is only tried: nothing is changed yet.') : difference === null ? '' : differenceWords(difference)}
    </p>
  )
}

function differenceWords({ found, turned, sewn }: NonNullable<ReturnType<typeof useDifference>>): string {
  const { lost, gained, now, clashes, tips } = found
  if (!sewn) return turned ? t('It cannot be sewn as it lies now: mend the layout first.') : ''
  const same = lost.length + gained.length === 0 && clashes[0] === clashes[1]
  if (same && !turned) return ''
  const said: string[] = same ? [t('what nests is the same as before')] : []
  if (lost.length > 0) said.push(`${tn(lost.length, 'One meeting no longer nests', '{n} meetings no longer nest')}${instead(now)}`)
  if (gained.length > 0)
    said.push(lost.length > 0 ? tn(gained.length, 'one now does', '{n} now do') : tn(gained.length, 'one meeting nests now', '{n} meetings nest now'))
  if (clashes[0] !== clashes[1]) said.push(t('clashes: {before} before, {after} now', { before: clashes[0], after: clashes[1] }))
  if (tips[0] !== tips[1]) said.push(t('tips to sew through: {before} before, {after} now', { before: tips[0], after: tips[1] }))
  return `${capital(said.join('; '))}.`
}

/** What stands where something nested. */
function instead({ clashes, pin, tip, open, nothing }: Found['now']): string {
  const parts = [
    ...(clashes > 0 ? [tn(clashes, 'one clashes', '{n} clash')] : []),
    ...(pin + open > 0 ? [tn(pin + open, 'one wants a pin', '{n} want a pin')] : []),
    ...(tip + nothing > 0 ? [tn(tip + nothing, 'one is no meeting any more', '{n} are no meetings any more')] : []),
  ]
  return parts.length === 0 ? '' : ` (${parts.join(', ')})`
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
