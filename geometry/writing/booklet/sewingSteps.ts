/**
 * The sewing, step by step, in the order in which a maker works: units as their method makes them, then rows, then the block and its borders.
 *
 * In      a report and its block.
 * Out     the steps of the booklet that sew something, with their titles in every language. Each join of the report is in exactly one step, and
 *         both of its sides are made before: in an earlier step, or earlier in its own.
 */
import type { Block } from '../../values/block.ts'
import type { Report } from '../../values/report.ts'
import type { BookletLanguage } from '../../words/booklet/bookletWords.ts'
import { type BookletContext, bookletContext } from './bookletContext.ts'
import { borderSteps } from './borderSteps.ts'
import { type DraftStep, programWords, type SewingDraft, type Told, withOwnWords } from './draftStep.ts'
import { layOutSteps } from './finishSteps.ts'
import { joinSteps } from './joinSteps.ts'
import { unitSteps } from './unitSteps.ts'
import { reportForBlocks } from './severalBlocks.ts'
import type { SewingStep } from './values.ts'

type TitledDraft = DraftStep & SewingDraft

const titled =
  (steps: (context: BookletContext) => readonly SewingDraft[]) =>
  (context: BookletContext): TitledDraft[] =>
    steps(context).map((step) => ({ ...step, title: context.say.message(step.heading) }))

/** The parts of a booklet that sew, in their order. */
export const SEWING_PARTS = {
  units: titled(unitSteps),
  'lay out': titled(layOutSteps),
  join: titled(joinSteps),
  borders: titled(borderSteps),
} as const

/** The booklet's steps from the first unit to the last border, the maker's own words laid over them. */
export function sewingSteps(report: Report, block: Block, language: BookletLanguage = 'en'): SewingStep[] {
  const context = bookletContext(reportForBlocks(report, block), block, language)
  const told = nothingTold(context, Object.values(SEWING_PARTS))
  return Object.values(SEWING_PARTS).flatMap((steps) => {
    const drafts = steps(context)
    return withOwnWords(drafts, context, told).map((step, index) => ({ ...step, heading: (drafts[index] as SewingDraft).heading }))
  })
}

/** Before the first step; `parts` are all that may have stored words. */
export function nothingTold(context: BookletContext, parts: readonly ((context: BookletContext) => readonly DraftStep[])[]): Told {
  let known: ReadonlySet<string> | null = null
  const other = (): ReadonlySet<string> => {
    const language = context.say.language === 'en' ? 'de' : 'en'
    known ??= new Set(
      parts.flatMap((steps) => steps(bookletContext(context.report, context.block, language)).map(({ sentences }) => programWords(sentences))),
    )
    return known
  }
  return { taken: new Set(), other }
}

/** The letter of each unit in the steps and in the layout picture, by the unit's id. */
export const unitLetters = (report: Report, block: Block): ReadonlyMap<string, string> =>
  new Map([...bookletContext(report, block).variantOf].map(([id, { label }]) => [id, label]))
