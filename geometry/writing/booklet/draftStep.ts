/**
 * A step as it is made, before the maker's own words are laid over it.
 *
 * `keys` are the names under which she may have stored words, most telling first: a step about several units is found by any of them, so her
 * words stay with the step when one unit goes.
 */
import type { BookletStep, Caution } from './values.ts'

export interface DraftStep extends Omit<BookletStep, 'key' | 'cautions' | 'edited' | 'note' | 'photograph'> {
  readonly keys: readonly string[]
  readonly cautions: readonly Caution['about'][]
}
