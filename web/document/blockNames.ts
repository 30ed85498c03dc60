/** Names for sentences, never empty and never too long to read; and names for copies. */
import { LONGEST_WORDS } from '../../geometry/index.ts'
import { t } from '../words/words.ts'

/** The most letters of a name in a sentence. */
const LONGEST = 60

/** Shortened between letters, so that no letter is cut in half. */
export function shortName(name: string): string {
  return name.length <= LONGEST ? name : `${cutTo(name, LONGEST - 1).trimEnd()}…`
}

/** The beginning of a name, without a last letter of two code units that the end would cut in half. */
const cutTo = (name: string, most: number): string => name.slice(0, most).replace(/[\ud800-\udbff]$/, '')

export const displayName = ({ name }: { readonly name: string }): string => (name.trim() === '' ? t('Untitled') : shortName(name))

/** Adds to a name without making it longer than a file allows. */
const added = (name: string, add: (name: string) => string): string => add(cutTo(name, LONGEST_WORDS - (add(name).length - name.length)))

export const copyName = (name: string): string => added(name, (kept) => t('{name} (copy)', { name: kept }))
export const thisTabName = (name: string): string => added(name, (kept) => t('{name} (this tab)', { name: kept }))
