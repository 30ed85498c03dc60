/** A name as it is said in a sentence, never empty and no longer than can be read; and names that are made from another. */
import { LONGEST_WORDS } from '../../geometry/index.ts'
import { t } from '../words/words.ts'

/** Letters of a name that a sentence holds. */
const LONGEST = 60

/** Cut between letters as they are seen, so that no mark loses what it stands on. */
export function short(name: string): string {
  if (name.length <= LONGEST) return name
  return `${[...name.slice(0, LONGEST)]
    .slice(0, LONGEST - 1)
    .join('')
    .trimEnd()}…`
}

export const nameOf = ({ name }: { readonly name: string }): string => (name.trim() === '' ? t('Without a name') : short(name))

/** What is added to a name must not make it longer than a file may hold. */
const added = (name: string, add: (name: string) => string): string => add(name.slice(0, LONGEST_WORDS - (add(name).length - name.length)))

export const copyName = (name: string): string => added(name, (kept) => t('{name} (copy)', { name: kept }))
export const thisTabName = (name: string): string => added(name, (kept) => t('{name} (this tab)', { name: kept }))
