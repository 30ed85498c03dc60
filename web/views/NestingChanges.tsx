/** In words: what the last edit changed where seams meet, until the next edit; or that a fix is only being tried. */
import type { NestingComparison } from './nestingChanges.ts'
import { type LastEditChanges, useNestingChanges } from './useNestingChanges.ts'
import { useStore } from '../document/store.ts'
import { t, tn } from '../words/words.ts'

export function NestingChanges() {
  const changes = useNestingChanges()
  const trying = useStore(({ preview }) => preview !== null)
  return (
    <p className={trying ? 'difference trying' : 'difference'} role="status" data-testid="difference">
      {trying ? t('This is only tried: nothing is changed yet.') : changes === null ? '' : changesText(changes)}
    </p>
  )
}

function changesText({ changes, turned, sewn }: LastEditChanges): string {
  const { lost, gained, now, clashes, tips } = changes
  if (!sewn) return turned ? t('It cannot be sewn as it lies now: mend the layout first.') : ''
  const same = lost.length + gained.length === 0 && clashes[0] === clashes[1]
  if (same && !turned) return ''
  const parts: string[] = same ? [t('what nests is the same as before')] : []
  if (lost.length > 0) parts.push(`${tn(lost.length, 'One meeting no longer nests', '{n} meetings no longer nest')}${insteadWords(now)}`)
  if (gained.length > 0)
    parts.push(
      lost.length > 0 ? tn(gained.length, 'one now does', '{n} now do') : tn(gained.length, 'one meeting nests now', '{n} meetings nest now'),
    )
  if (clashes[0] !== clashes[1]) parts.push(t('clashes: {before} before, {after} now', { before: clashes[0], after: clashes[1] }))
  if (tips[0] !== tips[1]) parts.push(t('tips to sew through: {before} before, {after} now', { before: tips[0], after: tips[1] }))
  return `${capitalise(parts.join('; '))}.`
}

/** What is now where something nested before. */
function insteadWords({ clashes, pin, tip, open, nothing }: NestingComparison['now']): string {
  const parts = [
    ...(clashes > 0 ? [tn(clashes, 'one clashes', '{n} clash')] : []),
    ...(pin + open > 0 ? [tn(pin + open, 'one wants a pin', '{n} want a pin')] : []),
    ...(tip + nothing > 0 ? [tn(tip + nothing, 'one is no meeting any more', '{n} are no meetings any more')] : []),
  ]
  return parts.length === 0 ? '' : ` (${parts.join(', ')})`
}

const capitalise = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
