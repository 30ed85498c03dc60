/**
 * The booklet: from a finished block to instructions that a class can follow, as a model that screen, text and printed pages render alike.
 *
 * In      a report and its block, with the maker's own words on it.
 * Out     parts with their steps, pictures, cautions, the test of the seam allowance and the templates. A layout that cannot be sewn as it stands gives
 *         what can be said of it, and its problems.
 */
import type { Block } from '../../values/block.ts'
import type { Report } from '../../values/report.ts'
import type { BookletLanguage } from '../../words/booklet/bookletWords.ts'
import { purchaseText } from '../phrases.ts'
import { type BookletContext, bookletContext, oneLine } from './bookletContext.ts'
import { cautionsIn, seamAdvice } from './cautions.ts'
import { cutSteps } from './cutSteps.ts'
import { finishSteps, frontPicture, sandwichSteps } from './finishSteps.ts'
import { type DraftStep, withOwnWords } from './draftStep.ts'
import { rowsOf } from './layout/rowsPicture.ts'
import { rowsOrColumns, sewingRuns } from './runs.ts'
import { needsOf, problemsOf } from './notes.ts'
import { allowanceTest } from './allowanceTest.ts'
import { quiltSteps } from './quilting/quiltSteps.ts'
import { blocksOf, reportForBlocks } from './severalBlocks.ts'
import { nothingTold, SEWING_PARTS } from './sewingSteps.ts'
import { templatesOf } from './templates.ts'
import type { Booklet, BookletFabric, BookletFact, BookletPart, BookletPartKey, BookletStep, OrphanedWords } from './values.ts'

/** The booklet of a block and its report in a language, with the maker's own words laid over its steps. */
export function bookletOf(report: Report, block: Block, language: BookletLanguage = 'en'): Booklet {
  const context = bookletContext(reportForBlocks(report, block), block, language)
  const told = nothingTold(
    context,
    PARTS.map(([, steps]) => steps),
  )
  const parts = PARTS.map(
    ([key, steps]): BookletPart => ({ key, title: context.say.book.parts[key], steps: withOwnWords(steps(context), context, told) }),
  ).filter(({ steps }) => steps.length > 0)
  const templates = templatesOf(context)
  const { title = '', by = '', introduction = '' } = block.booklet ?? {}
  return {
    title: oneLine(title.trim() === '' ? block.name : title),
    by: by.trim() === '' ? '' : oneLine(by),
    introduction: introduction.trim() === '' ? ownIntroduction(context) : introduction,
    language,
    unit: context.unit,
    units: block.units.length,
    blocks: blocksOf(block),
    problems: problemsOf(context),
    facts: factsOf(context, parts),
    front: frontPicture(context),
    rows: rowsOf(context),
    fabrics: fabricsOf(context),
    parts,
    allowanceTest: allowanceTest(context),
    templates,
    needs: needsOf(context, templates.length > 0),
    cautions: cautionsIn(context.say),
    seamAdvice: seamAdvice(context),
    orphans: orphansOf(block, told.taken),
  }
}

const PARTS: readonly (readonly [BookletPartKey, (context: BookletContext) => DraftStep[]])[] = [
  ['cut', cutSteps],
  ['units', SEWING_PARTS.units],
  ['lay out', SEWING_PARTS['lay out']],
  ['join', SEWING_PARTS.join],
  ['borders', SEWING_PARTS.borders],
  ['sandwich', sandwichSteps],
  ['quilt', quiltSteps],
  ['finish', finishSteps],
]

/** What the maker reads in a step: her own words if she has any. */
export const wordsOf = ({ edited, sentences }: Pick<BookletStep, 'edited' | 'sentences'>): readonly string[] =>
  edited === undefined ? sentences : edited.words.split('\n').filter((line) => line.trim() !== '')

function orphansOf({ booklet }: Block, taken: ReadonlySet<string>): OrphanedWords[] {
  return Object.entries(booklet?.steps ?? {}).flatMap(([key, { words, note, photograph }]) =>
    taken.has(key)
      ? []
      : [
          {
            key,
            ...(words === undefined ? {} : { words }),
            ...(note === undefined ? {} : { note }),
            ...(photograph === undefined ? {} : { photograph }),
          },
        ],
  )
}

function ownIntroduction({ report, seam, say, size }: BookletContext): string {
  const { name, finished, unfinished, withBorders } = report.block
  const borders = withBorders.some((side, axis) => side !== unfinished[axis])
  const framed = borders ? size([withBorders[0] - 2 * seam, withBorders[1] - 2 * seam]) : null
  return say.book.introduction(name.trim() === '' ? null : oneLine(name), size(finished), framed)
}

function factsOf(context: BookletContext, parts: readonly BookletPart[]): BookletFact[] {
  const { report, block, seamText, say, size } = context
  const { facts, blocks, orders } = say.book
  const lines = rowsOrColumns(context, sewingRuns(context))
  const { finished, unfinished, withBorders } = report.block
  const borders = withBorders[0] !== unfinished[0] || withBorders[1] !== unfinished[1]
  const pieces = report.cut.reduce((sum, { count }) => sum + count, 0)
  const one = (of: BookletFact['of'], what: string, said: string): BookletFact => ({ of, what, said })
  return [
    one('size', facts.makes, blocks(blocksOf(block))),
    one('size', facts.finished, size(finished)),
    one('size', facts.unfinished, size(unfinished)),
    ...(borders ? [one('size', facts.withBorders, size(withBorders))] : []),
    one('size', facts.allowance, seamText),
    one('making', facts.pieces, String(pieces)),
    ...(report.joins.length === 0
      ? []
      : [
          ...(parts.some(({ key }) => key === 'join') ? [one('making', facts.sewnIn, orders[LINES[lines?.word ?? 'section']])] : []),
          one('making', facts.seams, String(report.joins.length)),
        ]),
  ]
}

/** As the steps of joining call them. */
const LINES = { row: 'rows', column: 'columns', section: 'sections' } as const

function fabricsOf({ report, block, unit, local }: BookletContext): BookletFabric[] {
  const cloth = new Map(report.fabric.map((row) => [row.fabric, row]))
  const used = new Set([...report.cut.map(({ fabric }) => fabric), ...report.patches.map(({ fabric }) => fabric)])
  return block.fabrics
    .filter(({ id }) => used.has(id))
    .map(({ id, name, colour }) => {
      const buy = cloth.get(id)?.buy
      return { id, name, colour, buy: buy === undefined ? '' : local(purchaseText(buy, unit)) }
    })
}
