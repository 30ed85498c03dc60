/**
 * What is said before the steps: what must be put right, what is good to know, and what lies ready beside the fabrics.
 *
 * In      the booklet context: report and block, with lengths in the unit of measure (in or cm).
 * Out     whole sentences. On paper nothing can be pointed at: what the board says beside a seam or a unit names its letters here.
 * Source  backing and batting [S145], binding [S139]; tools and notions: common practice, no source.
 */
import { bindingFor, layersFor } from '../../cutting/finishing.ts'
import { ruleOf } from '../../cutting/oneRun.ts'
import { ERRORS, type Advice, type Problem } from '../../values/report.ts'
import { pointInCells } from '../pieceNames.ts'
import type { BookletPhrases } from '../../words/booklet/bookletWords.ts'
import { purchaseText } from '../phrases.ts'
import type { BookletContext } from './bookletContext.ts'
import { layersText } from './finishSteps.ts'
import { blocksOf } from './severalBlocks.ts'

/** What keeps the block from being sewn, then what is good to know, as whole sentences. */
export function problemsOf(context: BookletContext): string[] {
  const { problems, advice } = context.report
  const errors = placedErrors(
    problems.filter(({ code }) => ERRORS.has(code)),
    context.say,
  )
  const others = problems.filter(({ code }) => !ERRORS.has(code) && code !== 'not-straight').map((one) => lettered(one, context))
  const head = errors.length === 0 ? [] : [context.say.book.cannotSewYet]
  return [...head, ...new Set([...errors, ...crooked(context), ...others, ...advice.map((one) => adviceSaid(one, context))])]
}

/** Each thing to put right once, with the squares of the grid where it is. */
export function placedErrors(errors: readonly Problem[], { book, message }: BookletPhrases): string[] {
  const places = new Map<string, string[]>()
  for (const error of errors) {
    const said = message(error.message)
    const [column, row] = pointInCells(error.at).map((cell) => Math.max(1, Math.floor(cell) + 1)) as [number, number]
    places.set(said, [...(places.get(said) ?? []), book.square(column, row)])
  }
  return [...places].map(([said, all]) => book.placed(all.slice(0, MOST_PLACES), Math.max(0, all.length - MOST_PLACES), said))
}

const MOST_PLACES = 4

function crooked({ report, say }: BookletContext): string[] {
  const number = (kind: string): number => report.joins.filter((join) => join.kind === kind).length
  const [bent, part] = [number('set-in'), number('partial')]
  return [...(bent === 0 ? [] : [say.book.setInSeams(bent)]), ...(part === 0 ? [] : [say.book.partialSeams(part)])]
}

function adviceSaid(advice: Advice, context: BookletContext): string {
  const letters = lettersOf(advice.units, context)
  return advice.code !== 'grain' || letters.length === 0 ? lettered(advice, context) : context.say.book.grainAtEdge(letters)
}

/** `A and D1: …`: on paper units go by the letters of the layout, never by the ids of the file, which end what is said of a print. */
function lettered({ units, message }: Pick<Advice | Problem, 'units' | 'message'>, context: BookletContext): string {
  const letters = lettersOf(units, context)
  const said = context.say.message(message.code === 'print-turned' ? { ...message, params: { ...message.params, named: [] } } : message)
  return letters.length === 0 ? said : context.say.book.lettered(letters, said)
}

const lettersOf = (units: readonly string[], { variantOf }: BookletContext): string[] =>
  [...new Set(units.flatMap((id) => variantOf.get(id)?.label ?? []))].sort()

/** Beside the fabrics of the top. */
export function needsOf(context: BookletContext, templates: boolean): string[] {
  const { report, unit, block } = context
  if (report.joins.length === 0) return []
  const top = report.block.withBorders
  const { usableWidth } = report.cloth
  const { backing, batting } = layersFor(top, unit, 'home', usableWidth, ruleOf(block))
  const { buy } = bindingFor(top, unit, usableWidth)
  const { book } = context.say
  return [book.toFinish(layersText(backing, batting, context), context.local(purchaseText(buy, unit)), blocksOf(block)), book.tools(templates)]
}
