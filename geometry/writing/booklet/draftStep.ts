/**
 * A step as it is made, before the maker's own words are laid over it.
 *
 * `keys` are the names under which she may have stored words, most telling first: a step about several units is found by any of them, so her
 * words stay with the step when one unit goes.
 */
import type { Block } from '../../values/block.ts'
import type { StepTitle } from '../../values/messages.ts'
import type { BookletContext } from './bookletContext.ts'
import { cautionLine } from './cautions.ts'
import type { BookletStep, Caution, StepAction } from './values.ts'

export interface DraftStep extends Omit<BookletStep, 'key' | 'cautions' | 'edited' | 'note' | 'photograph'> {
  readonly keys: readonly string[]
  readonly cautions: readonly Caution['about'][]
}

/** A step in which something is sewn, or laid out to be sewn; its title is said in each language. */
export interface SewingDraft extends Omit<DraftStep, 'title'> {
  readonly heading: StepTitle
}

/** What a step says and draws, from its actions. */
export const allOf = (actions: readonly StepAction[]): Pick<DraftStep, 'sentences' | 'drawings' | 'actions'> => ({
  sentences: actions.flatMap(({ sentences }) => [...sentences]),
  drawings: actions.flatMap(({ drawings }) => [...drawings]),
  actions,
})

/** What the steps before have told. */
export interface Told {
  /** Keys of steps. */
  readonly taken: Set<string>
  /** The program's words of all steps in the other languages: hers may have been written beside those. */
  readonly other: () => ReadonlySet<string>
}

/** The steps of one part with the maker's own words laid over them; each caution stands once, in the first step that calls for it. */
export function withOwnWords(drafts: readonly DraftStep[], { block, say }: BookletContext, { taken, other }: Told): BookletStep[] {
  const said = new Set<Caution['about']>()
  return drafts.map((step) => {
    const fresh = step.cautions.filter((about) => !said.has(about))
    for (const about of fresh) said.add(about)
    return withWords(
      step,
      fresh.map((about) => cautionLine(about, say)),
      block,
      taken,
      other,
    )
  })
}

/** Stored words are found by any of the step's keys that no step before it has taken. */
function withWords({ keys, ...step }: DraftStep, cautions: readonly string[], block: Block, taken: Set<string>, other: Told['other']): BookletStep {
  const stored = block.booklet?.steps ?? {}
  const key = keys.find((one) => Object.hasOwn(stored, one) && !taken.has(one)) ?? keys.find((one) => !taken.has(one)) ?? (keys[0] as string)
  taken.add(key)
  const own = Object.hasOwn(stored, key) ? stored[key] : undefined
  return {
    ...step,
    key,
    cautions,
    ...(own?.words === undefined
      ? {}
      : { edited: { words: own.words, stale: own.of !== undefined && own.of !== programWords(step.sentences) && !other().has(own.of) } }),
    ...(own?.note === undefined ? {} : { note: own.note }),
    ...(own?.photograph === undefined ? {} : { photograph: own.photograph }),
  }
}

/** The words of a step as the program says them: what the maker's own are kept beside, to tell when they have moved on. */
export const programWords = (sentences: readonly string[]): string => sentences.join('\n')
