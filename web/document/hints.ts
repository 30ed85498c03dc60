/** The hints of a first visit: which of them are still to come. This browser remembers it. */
import { readSetting, writeSetting } from './browserSettings.ts'

/** In the order in which they are given. */
export const HINTS = ['recolour', 'turn', 'check'] as const
export type Hint = (typeof HINTS)[number]

const SETTING = 'hints-done'

export function hintsToCome(): readonly Hint[] {
  const done = (readSetting(SETTING) ?? '').split(' ')
  return HINTS.filter((hint) => !done.includes(hint))
}

export const rememberHints = (toCome: readonly Hint[]): void => writeSetting(SETTING, HINTS.filter((hint) => !toCome.includes(hint)).join(' '))
