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
import { capital, inWords } from '../../words/englishPhrases.ts'
import { purchaseText, listed } from '../phrases.ts'
import type { BookletContext } from './bookletContext.ts'
import { layersText } from './finishSteps.ts'
import { inEnglish } from '../../words/english.ts'

/** What keeps the block from being sewn, then what is good to know, as whole sentences. */
export function problemsOf(context: BookletContext): string[] {
  const { problems, advice } = context.report
  const errors = placedErrors(problems.filter(({ code }) => ERRORS.has(code)))
  const others = problems.filter(({ code }) => !ERRORS.has(code) && code !== 'not-straight').map((one) => lettered(one, context))
  const head = errors.length === 0 ? [] : ['This block can’t be sewn yet. Fix these first, then make the booklet again.']
  return [...head, ...new Set([...errors, ...crooked(context), ...others, ...advice.map((one) => adviceSaid(one, context))])]
}

/** Each thing to put right once, with the squares of the grid where it is. */
export function placedErrors(errors: readonly Problem[]): string[] {
  const places = new Map<string, string[]>()
  for (const { message, at } of errors) {
    const said = inEnglish(message)
    const [column, row] = pointInCells(at).map((cell) => Math.max(1, Math.floor(cell) + 1)) as [number, number]
    places.set(said, [...(places.get(said) ?? []), `column ${column}, row ${row}`])
  }
  return [...places].map(([said, all]) => {
    const rest = all.length > MOST_PLACES ? ` and ${all.length - MOST_PLACES} more` : ''
    return `${capital(all.slice(0, MOST_PLACES).join('; '))}${rest}: ${said}`
  })
}

const MOST_PLACES = 4

function crooked({ report }: BookletContext): string[] {
  const number = (kind: string): number => report.joins.filter((join) => join.kind === kind).length
  const [bent, part] = [number('set-in'), number('partial')]
  return [
    ...(bent === 0
      ? []
      : [
          `${capital(inWords(bent, 'seam is', 'seams are'))} set in at a corner. Sew slowly, and mark the corners as ${bent === 1 ? 'its step says' : 'their steps say'}.`,
        ]),
    ...(part === 0
      ? []
      : [
          `${capital(inWords(part, 'seam is', 'seams are'))} sewn only part of the way at first. Finish ${part === 1 ? 'it' : 'them'} once the neighbours are on.`,
        ]),
  ]
}

function adviceSaid(advice: Advice, context: BookletContext): string {
  const letters = lettersOf(advice.units, context)
  if (advice.code !== 'grain' || letters.length === 0) return lettered(advice, context)
  const [which, has] = letters.length === 1 ? ['Template', 'has'] : ['Templates', 'each have']
  return `${which} ${listed(letters)} ${has} an edge on the outside of the block. Lay the arrow along the grain of the fabric, so that edge doesn’t stretch.`
}

/** `A and D1: …`: on paper units go by the letters of the layout, never by the ids of the file, which end what is said of a print. */
function lettered({ units, message }: Pick<Advice | Problem, 'units' | 'message'>, context: BookletContext): string {
  const letters = lettersOf(units, context)
  const said = inEnglish(message.code === 'print-turned' ? { ...message, params: { ...message.params, named: [] } } : message)
  return letters.length === 0 ? said : `${listed(letters)}: ${said}`
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
  return [
    `To finish: ${layersText(backing, batting, unit)}; ${purchaseText(buy, unit)} of fabric for the binding.`,
    `Tools: rotary cutter, ruler and mat; sewing machine and thread; pins; iron; a pencil or chalk that washes out${templates ? '; card and paper scissors for the templates' : ''}.`,
  ]
}
