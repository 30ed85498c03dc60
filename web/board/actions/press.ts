/** Presses seams as the maker asks, and says how they lie then. Loaded when a seam is first pressed. */
import { type EditName, type PressChoice, pressSeams } from '../../../geometry/index.ts'
import { cachedFindings, knownFindings } from '../../document/findingsCache.ts'
import { edit, getState, setView } from '../../document/store.ts'
import { t } from '../../words/words.ts'
import { pressState } from '../pressing/pressWords.ts'

/** Presses one seam, by the id of its join. */
export function pressSeam(join: string, choice: PressChoice): void {
  if (!press(new Map([[join, choice]]))) return
  const { report } = cachedFindings(getState().history.block, null)
  const pressed = report?.joins.find(({ id }) => id === join)
  if (report !== null && pressed !== undefined) setView({ notice: pressState(report, pressed) })
}

/** Presses several seams in one edit. `name`: what undo calls it; `notice`: what is said when it is done. */
export function pressLine(choices: ReadonlyMap<string, PressChoice>, name: EditName | undefined, notice: string): void {
  if (press(choices, name)) setView({ notice })
}

/** Only with the findings of the very block on the board: an edit names its seams by them. */
function press(choices: ReadonlyMap<string, PressChoice>, name?: EditName): boolean {
  const report = knownFindings(getState().history.block)
  if (report === null) setView({ notice: t('The seams of so large a block are still being worked out. Try again in a moment.') })
  else edit(pressSeams(report, choices, name))
  return report !== null
}
