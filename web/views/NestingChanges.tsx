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
      {trying ? t('Just a preview: nothing has changed yet.') : changes === null ? '' : changesText(changes)}
    </p>
  )
}

function changesText({ changes, turned, sewn }: LastEditChanges): string {
  const { lost, gained, now, clashes, tips } = changes
  if (!sewn) return turned ? t('The block can’t be sewn like this yet. Fill the gaps and move apart what overlaps.') : ''
  const same = lost.length + gained.length === 0 && clashes[0] === clashes[1]
  if (same && !turned) return ''
  const parts: string[] = same ? [t('the same seams nest as before')] : []
  if (lost.length > 0) parts.push(`${tn(lost.length, 'one crossing no longer nests', '{n} crossings no longer nest')}${insteadWords(now)}`)
  if (gained.length > 0)
    parts.push(
      lost.length > 0 ? tn(gained.length, 'one now does', '{n} now do') : tn(gained.length, 'one more crossing nests', '{n} more crossings nest'),
    )
  if (clashes[0] !== clashes[1]) parts.push(t('crossings that don’t nest: {before} before, {after} now', { before: clashes[0], after: clashes[1] }))
  if (tips[0] !== tips[1]) parts.push(t('points to protect: {before} before, {after} now', { before: tips[0], after: tips[1] }))
  return `${capitalise(parts.join('; '))}.`
}

/** What is now where something nested before. */
function insteadWords({ clashes, pin, tip, open, nothing }: NestingComparison['now']): string {
  const parts = [
    ...(clashes > 0 ? [tn(clashes, 'one has both seams pressed the same way', '{n} have both seams pressed the same way')] : []),
    ...(pin + open > 0 ? [tn(pin + open, 'one needs a pin', '{n} need a pin')] : []),
    ...(tip + nothing > 0 ? [tn(tip + nothing, 'one is no longer a crossing', '{n} are no longer crossings')] : []),
  ]
  return parts.length === 0 ? '' : ` (${parts.join(', ')})`
}

const capitalise = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
