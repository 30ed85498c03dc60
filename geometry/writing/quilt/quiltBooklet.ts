/**
 * The booklet of a quilt: overview, a chapter for each different block, framing, layering, quilting, joining, finishing; or one part of it alone.
 *
 * In      a quilt and its report; which part of a class, or null for all.
 * Out     a model that text and printed pages render alike. A step told in one chapter is not told again in a later one.
 */
import { report as blockReport } from '../../report/wholeReport.ts'
import { partCount, quiltPart } from '../../quilt/parts.ts'
import { isError } from '../../quilt/problems.ts'
import type { QuiltReport } from '../../quilt/report.ts'
import { towardOf } from '../../quilt/outlineEnds.ts'
import type { WornBlock } from '../../quilt/wornBlocks.ts'
import { message, type QuiltTitle } from '../../values/messages.ts'
import type { Quilt } from '../../values/quilt.ts'
import type { Report } from '../../values/report.ts'
import { inEnglish } from '../../words/english.ts'
import { capital, inWords } from '../../words/englishPhrases.ts'
import { bookletOf } from '../booklet/booklet.ts'
import { bookletContext, oneLine, spotOf } from '../booklet/bookletContext.ts'
import { bookletWords } from '../../words/booklet/bookletWords.ts'
import { cautionsIn } from '../booklet/cautions.ts'
import { minus, plus, unitVector } from '../booklet/pieceDrawing.ts'
import { Sketch } from '../booklet/sketch.ts'
import type { BookletFabric, BookletFact, BookletStep, Caution, Drawing, Spot } from '../booklet/values.ts'
import { purchaseText, sayOne, saySize } from '../phrases.ts'
import { edgeSteps } from './edgeSteps.ts'
import { jointSteps } from './jointSteps.ts'
import { frameSteps, layerSteps, quiltingSteps, quiltStep } from './placeSteps.ts'
import { blockName, numbersOf, positionsSaid, quiltContext, type QuiltContext } from './quiltContext.ts'
import { quiltDrawing } from './quiltPicture.ts'

export interface QuiltChapter {
  readonly heading: QuiltTitle
  readonly title: string
  readonly introduction: readonly string[]
  readonly steps: readonly BookletStep[]
}

export interface QuiltBooklet {
  readonly title: string
  readonly part: { readonly number: number; readonly of: number; readonly title: string } | null
  readonly problems: readonly string[]
  readonly introduction: string
  readonly facts: readonly Omit<BookletFact, 'of'>[]
  readonly front: Drawing
  readonly fabrics: readonly BookletFabric[]
  readonly needs: readonly string[]
  readonly chapters: readonly QuiltChapter[]
  readonly cautions: readonly Caution[]
}

/** The booklet of a quilt, or of one of its parts. */
export function quiltBooklet(quilt: Quilt, report: QuiltReport, part: number | null = null): QuiltBooklet {
  const whole = quiltContext(quilt, report)
  const own = part === null ? null : quiltPart(quilt, part)
  const ids = own === null ? null : new Set(own.places)
  const context = ids === null ? whole : { ...whole, places: whole.places.filter(({ id }) => ids.has(id)) }
  const joints = own === null ? null : new Set(own.joints)
  const last = part === null || part === partCount(quilt)
  const chapters: readonly (readonly ['frame' | 'layer' | 'quilt' | 'join' | 'finish', readonly BookletStep[]])[] = [
    ['frame', frameSteps(context)],
    ['layer', report.way.join === 'whole' ? [] : layerSteps(context)],
    ['quilt', report.way.join === 'whole' ? [] : quiltingSteps(context)],
    ['join', jointSteps(context, joints)],
    ['quilt', report.way.join === 'whole' && last ? quiltingSteps(whole) : []],
    ['finish', last && report.joints.length + report.places.length > 0 ? edgeSteps(whole) : []],
  ]
  return {
    title: oneLine(quilt.name),
    part: own === null ? null : { number: own.number, of: partCount(quilt), title: oneLine(own.title) },
    problems: problemsOf(report),
    introduction: introductionOf(whole),
    facts: factsOf(whole),
    front: quiltDrawing(whole, { numbered: true }),
    fabrics: fabricsOf(whole, own?.fabric ?? report.fabric),
    needs: needsOf(whole, own?.layers ?? report.layers, last),
    chapters: [
      ...blockChapters(context),
      ...chapters.flatMap(([chapter, steps]) => (steps.length === 0 ? [] : [chapterOf(message('quilt-chapter', { chapter }), steps)])),
    ],
    cautions: cautionsIn(bookletWords('en')),
  }
}

/** Each caution stands once in a chapter, in the first step that calls for it. */
function chapterOf(heading: QuiltTitle, steps: readonly BookletStep[], introduction: readonly string[] = []): QuiltChapter {
  const said = new Set<string>()
  const sparing = steps.map((step) => {
    const cautions = step.cautions.filter((caution) => !said.has(caution))
    for (const caution of cautions) said.add(caution)
    return { ...step, cautions }
  })
  return { heading, title: inEnglish(heading), introduction, steps: sparing }
}

/** Each error once, with what is good to know after it. */
function problemsOf({ problems }: QuiltReport): string[] {
  const errors = problems.filter(isError).map(({ at, message: said }) => `Column ${Number(at[0]) + 1}, row ${Number(at[1]) + 1}: ${inEnglish(said)}`)
  const others = problems.filter((problem) => !isError(problem)).map(({ message: said }) => inEnglish(said))
  return [...(errors.length === 0 ? [] : ['This quilt can’t be sewn yet. Fix these first.']), ...new Set([...errors, ...others])]
}

function introductionOf({ quilt, report, unit }: QuiltContext): string {
  return `“${oneLine(quilt.name)}” measures ${saySize(report.size.finished, unit)} finished. The picture gives each position in the quilt a number: the steps go by these numbers.`
}

const WAYS = {
  whole: 'quilted whole, at the end',
  strips: 'blocks quilted first, with joining strips',
  fronts: 'blocks quilted first; fronts sewn, backing closed by hand',
  'backing-over': 'blocks quilted first; backing folded to the front',
  butted: 'blocks quilted first; butted and zigzagged',
} as const

function factsOf({ report, unit, seamText }: QuiltContext): QuiltBooklet['facts'] {
  const { size, gap, way, underArm, handSewn, machineLong, pressing, joints } = report
  return [
    { what: 'Finished size', said: saySize(size.finished, unit) },
    { what: 'Before binding', said: saySize(size.raw, unit) },
    { what: 'Seam allowance', said: seamText },
    { what: 'How it’s joined', said: WAYS[way.join] },
    ...(gap > 0 ? [{ what: 'Space between blocks', said: sayOne(gap, unit) }] : []),
    { what: 'Joins', said: `${joints.length}, in ${report.order}` },
    { what: 'Longest join', said: sayOne(machineLong, unit) },
    { what: 'Under the machine’s arm', said: `up to ${sayOne(underArm, unit)}` },
    ...(handSewn > 0 ? [{ what: 'Sewn by hand', said: sayOne(handSewn, unit) }] : []),
    { what: 'Crossings between blocks', said: inEnglish(pressing.proof) },
  ]
}

function fabricsOf({ fabrics, unit, report }: QuiltContext, rows: QuiltReport['fabric']): BookletFabric[] {
  const used = new Set(report.cut.map(({ fabric }) => fabric))
  return fabrics
    .filter(({ id }) => used.has(id))
    .flatMap(({ id, name, colour }) => {
      const row = rows.find(({ fabric }) => fabric === id)
      return row === undefined ? [] : [{ id, name: oneLine(name), colour, buy: purchaseText(row.buy, unit) }]
    })
}

function needsOf({ unit, report }: QuiltContext, layers: readonly QuiltReport['layers'][number][], last: boolean): string[] {
  const pieces = layers.map(({ what, size, count }) => `${count} × ${what} ${saySize(size, unit)}`)
  const { binding } = report
  return [
    ...(pieces.length === 0 ? [] : [`${capital(pieces.join('; '))}.`]),
    ...(last && binding !== null
      ? [`For the binding: ${inWords(binding.strips, 'strip')} ${sayOne(binding.width, unit)} wide across the fabric.`]
      : []),
    'Tools: rotary cutter, ruler and mat; sewing machine and thread; pins; iron; a pencil or chalk that washes out.',
  ]
}

/** Parts of a block's booklet that make the block itself. */
const MAKING: ReadonlySet<string> = new Set(['units', 'lay out', 'join', 'borders'])

/** A chapter for each different block, as often as it lies in the places of the context. */
function blockChapters(context: QuiltContext): QuiltChapter[] {
  const told = new Map<string, string>()
  const blocks = [...new Set(context.places.flatMap(({ block }) => block ?? []))]
  return blocks.map((id) => {
    const places = context.places.filter(({ block }) => block === id)
    const worn = context.blocks.get(id) as WornBlock
    const block = { ...worn.block, booklet: { ...worn.block.booklet, blocks: places.length } }
    const report = blockReport(block)
    const name = blockName(context, id)
    const steps = bookletOf(report, block)
      .parts.filter(({ key }) => MAKING.has(key))
      .flatMap((part) => part.steps)
      .map((step) => onlyOnce(step, name, told))
    const opposite = places.filter(({ press }) => press === 'opposite')
    return chapterOf(
      message('quilt-block-chapter', { block: name, count: places.length }),
      [...steps, ...(opposite.length === 0 ? [] : [pressedStep(context, opposite, worn, report)])],
      [
        `For ${positionsSaid(
          context,
          places.map((place) => place.id),
        )}. It measures ${saySize(report.block.withBorders, context.unit)} unfinished.`,
        ...(places.length === 1 && places[0]?.turn !== 0
          ? [`${(turnedSaid(context, places)[0] ?? '').replace(/ for position .*$/, '')} when you lay out the quilt.`]
          : turnedSaid(context, places)),
      ],
    )
  })
}

function pressedStep(context: QuiltContext, places: QuiltContext['places'], worn: WornBlock, report: Report): BookletStep {
  const ids = places.map(({ id }) => id)
  return quiltStep(
    `press:${worn.id}`,
    message('quilt-press-other', { positions: numbersOf(context, ids) }),
    [
      `Sew ${ids.length === 1 ? 'this block' : 'these blocks'} as the steps say, but press as the arrows in this picture show. Then the seams nest with those of the blocks beside ${ids.length === 1 ? 'it' : 'them'}.`,
    ],
    [pressedPicture(worn, report)],
    ['iron'],
  )
}

function turnedSaid(context: QuiltContext, places: QuiltContext['places']): string[] {
  const ways = ['', 'a quarter to the right', 'half round', 'a quarter to the left']
  return [1, 2, 3].flatMap((turn) => {
    const own = places.filter((place) => place.turn === turn)
    return own.length === 0
      ? []
      : [
          `Turn it ${ways[turn]} for ${positionsSaid(
            context,
            own.map(({ id }) => id),
          )}.`,
        ]
  })
}

/** What an earlier chapter has told word for word is not told again. */
function onlyOnce(step: BookletStep, name: string, told: Map<string, string>): BookletStep {
  const words = step.sentences.join('\n')
  const before = told.get(words)
  told.set(words, before ?? name)
  if (before === undefined || before === name) return step
  return { ...step, sentences: [`Make them as for ${before}.`], drawings: [], cautions: [] }
}

/** The block from the right side, an arrow on each seam for the opposite way of pressing. */
function pressedPicture(worn: WornBlock, report: Report): Drawing {
  const context = bookletContext(report, worn.block)
  const taken = worn.sewing.plans?.taken
  const sketch = new Sketch()
  for (const { corners, fabric } of context.patches.values()) sketch.area(corners, fabric)
  const toward = taken === undefined ? [] : towardOf(worn, taken, 'opposite')
  report.joins.forEach((join, index) => {
    const [from, to] = [spotOf(context, join.from), spotOf(context, join.to)]
    const middle = plus(from, minus(to, from), 0.5)
    const way = toward[index]
    if (way === undefined || way === 'open') {
      sketch.point(middle, 'open')
      return
    }
    const [dx, dy] = unitVector(minus(to, from))
    const sign = way === join.clockwise ? 1 : -1
    const across: Spot = [-dy * sign, dx * sign]
    sketch.arrow(plus(middle, across, -report.measure.seam), plus(middle, across, 2.5 * report.measure.seam))
  })
  return sketch.drawing('Pressed the other way: the arrows show where the allowances lie.', report.measure.seam)
}
