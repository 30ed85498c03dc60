/** What the next press on a seam's arrow asks for, on the board and in the lists: the other way; then open; then as proposed. */
import type { Join, PressChoice } from '../../../geometry/index.ts'

export function nextChoice({ press: { toward, rule } }: Pick<Join, 'press'>): PressChoice {
  if (rule !== 'asked') return toward === 0 ? 1 : 0
  return toward === 'open' ? 'proposed' : 'open'
}
