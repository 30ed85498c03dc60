/** A name as it is said in a sentence, never empty and no longer than can be read; and names that are made from another. */
import { LONGEST_WORDS } from '../../geometry/index.ts'
import { t } from '../words/words.ts'

/** Letters of a name that a sentence holds. */
const LONGEST = 60

/** Cut between letters, none of which is left half there. */
export function shortName(name: string): string {
  return name.length <= LONGEST ? name : `${within(name, LONGEST - 1).trimEnd()}…`
}

/** The beginning of a name; a letter of two units that the end would cut in half is left out. */
const within = (name: string, most: number): string => name.slice(0, most).replace(/[\ud800-\udbff]$/, '')

export const displayName = ({ name }: { readonly name: string }): string => (name.trim() === '' ? t('Without a name') : shortName(name))

/** What is added to a name must not make it longer than a file may hold. */
const added = (name: string, add: (name: string) => string): string => add(within(name, LONGEST_WORDS - (add(name).length - name.length)))

export const copyName = (name: string): string => added(name, (kept) => t('{name} (copy)', { name: kept }))
export const thisTabName = (name: string): string => added(name, (kept) => t('{name} (this tab)', { name: kept }))
