/**
 * Making the units, all alike ones in one step, each by its own method.
 *
 * In      the booklet context: report and block, with lengths in the unit of measure (in or cm).
 * Out     one step for each row of units that are sewn; patches that are used as cut have none.
 * Source  geese [S3][S5][S6], triangles [S37][S31][S24], hourglasses [S37], pressing [S79]; otherwise common practice, no source.
 */
import { leftAndRight, trimSentences } from './trimming/trimStep.ts'
import { lightnessOf } from '../../colour/lightness.ts'
import type { Method } from '../../values/block.ts'
import { message } from '../../values/messages.ts'
import type { UnitRow } from '../../values/report.ts'
import { inEnglish } from '../../words/english.ts'
import { capital, inWords } from '../../words/englishPhrases.ts'
import { batchMakes, geeseToKeep } from '../cutListText.ts'
import { count, listed, patchWords, saySize } from '../phrases.ts'
import type { BookletContext, UnitVariant, UnitSeam } from './bookletContext.ts'
import { type Flip, flipsOf } from './clippedCorners.ts'
import type { SewingDraft } from './draftStep.ts'
import { matchingClauses, meetingsAlong } from './matchingPoints.ts'
import { crossedHalves, flippedPicture, goosePictures, stripSetPicture, twoSquares } from './methodPictures.ts'
import { apartPicture, variantsPicture, pressedPicture } from './unitPictures.ts'
import type { Drawing } from './values.ts'

export function unitSteps(context: BookletContext): SewingDraft[] {
  return context.report.units.flatMap((row) => {
    const variants = context.variants.filter((variant) => variant.row === row)
    return variants.some(({ seams }) => seams.length > 0) || row.method === 'geese-4' ? [unitStep(row, variants, context)] : []
  })
}

interface MakingSteps {
  readonly sentences: readonly string[]
  readonly drawings: readonly Drawing[]
}

function unitStep(row: UnitRow, variants: readonly UnitVariant[], context: BookletContext): SewingDraft {
  const first = variants[0] as UnitVariant
  const trimmed = TRIMMED.has(row.method)
  const own = [...new Set(row.for)]
  const trim = trimmed
    ? trimSentences(first, context)
    : [`${row.count === 1 ? 'It should measure' : 'Each should measure'} ${saySize(row.unfinished, context.unit)}.`]
  const made = WAYS[row.method](row, first, context)
  const bias = row.bias ? ['The outside edges are on the bias and stretch easily. Handle them gently, and press without pushing.'] : []
  return {
    keys: own.map((id) => `unit:${id}`),
    heading: message('step-make-units', { count: row.count, kind: row.kind, hand: row.hand, labels: variants.map(({ label }) => label) }),
    sentences: [...made.sentences, ...pressing(variants, context), ...trim, ...bias],
    drawings: [
      ...made.drawings,
      ...(variants.length > 1 ? [variantsPicture(variants.slice(0, MOST_VARIANTS), context)] : []),
      ...pressedDifferently(variants, context).map((variant) => pressedPicture(variant, context)),
      ...(trimmed ? leftAndRight(first, context) : []),
    ],
    cautions: trimmed ? ['needle', 'iron', 'blade'] : ['needle', 'iron'],
    count: row.count,
    joins: own.flatMap((id) => context.unitJoins.get(id) ?? []),
    units: own,
    cut: [],
  }
}

/** One look for each way of pressing. */
function pressedDifferently(variants: readonly UnitVariant[], context: BookletContext): UnitVariant[] {
  const ways = new Map(
    [...variants]
      .reverse()
      .filter(({ seams }) => seams.length > 0)
      .map((variant) => [pressWords(variant, context), variant] as const),
  )
  const arrows = [...ways.keys()].some((words) => words.includes('arrow'))
  return (arrows ? variants : [...ways.values()]).slice(0, MOST_VARIANTS)
}

/** Looks of one row that are drawn one by one. */
const MOST_VARIANTS = 6
const TRIMMED: ReadonlySet<Method> = new Set<Method>(['geese-4', 'hst-2', 'hst-4', 'hst-8', 'qst-2'])

/** `Press the seam toward Moss.` Where units made alike are pressed differently, each with its letter. */
function pressing(variants: readonly UnitVariant[], context: BookletContext): string[] {
  const said = variants.filter(({ seams }) => seams.length > 0).map((variant) => ({ variant, words: pressWords(variant, context) }))
  const same = said.every(({ words }) => words === said[0]?.words)
  if (same) return said.slice(0, 1).map(({ words }) => `${capital(words)}.`)
  return said.map(({ variant, words }) => `${variant.label} (${inWords(variant.count, 'unit')}): ${words}.`)
}

function pressWords({ seams, row, first }: UnitVariant, context: BookletContext): string {
  const all = seams.length === 1 ? 'the seam' : seams.length === 2 ? 'both seams' : 'all seams'
  const ways = [...new Set(seams.map((seam) => towardWords(seam, row.kind, first.fabrics, context)))]
  if (ways.length === 1 && ways[0] === 'open') return `press ${all} open`
  if (ways.length === 1) return `press ${all} toward ${ways[0]}`
  if (row.kind === 'hourglass' && ways.length === 2 && seams.length === 3) {
    const [one, other, long] = seams.map((seam) => towardWords(seam, row.kind, first.fabrics, context))
    if (one === other) return `press the two short seams toward ${one} and the long seam as the arrow in the picture shows`
    if (long === 'open') return 'press the two short seams as the arrows show and the long seam open'
  }
  return 'press each seam as the arrows in the picture show'
}

const NAMED_BY_PLACE: ReadonlySet<string> = new Set(['goose', 'diamond', 'cornered'])

/** Where a seam is pressed, as a maker would say: the goose, the wings, the corners; or the fabric there. */
function towardWords({ sides, toward }: UnitSeam, kind: string, fabrics: Readonly<Record<string, string>>, context: BookletContext): string {
  if (toward === 'open') return 'open'
  const names = sides[toward]
  if (kind === 'goose') return names.includes('goose') ? 'the goose' : 'the wings'
  if (NAMED_BY_PLACE.has(kind)) return names.includes('centre') ? 'the centre' : 'the corners'
  const cloth = [...new Set(names.map((name) => fabrics[name] as string))]
  const others = new Set(sides[toward === 0 ? 1 : 0].map((name) => fabrics[name]))
  if (cloth.length === 1 && !others.has(cloth[0] as string)) return context.fabric(cloth[0] as string)
  return `the ${patchWords(names.at(-1) as string)} side`
}

type MakeWay = (row: UnitRow, variant: UnitVariant, context: BookletContext) => MakingSteps

const cutSize = (context: BookletContext, row: UnitRow, pick: 'largest' | 'smallest' = 'largest'): number => {
  const wanted = new Set(row.for)
  const sizes = context.report.cut
    .filter(({ method, for: units }) => method === row.method && units.some((id) => wanted.has(id)))
    .flatMap(({ size }) => size)
  return sizes.length === 0 ? (row.unfinished[0] as number) : pick === 'largest' ? Math.max(...sizes) : Math.min(...sizes)
}

/** The lighter of two fabrics shows a pencil line best. */
const lighterOf = (context: BookletContext, one: string, other: string): string =>
  lightnessOf(context.colour(one)) >= lightnessOf(context.colour(other)) ? one : other

function pairs(row: UnitRow, [one, other]: readonly [string, string], context: BookletContext): string[] {
  const all = inWords(row.count + row.spare, 'unit')
  const spare = row.spare === 0 ? '' : `, ${inWords(row.spare, 'of them', 'of them')} left over`
  const cloth = one === other ? `two of ${context.fabric(one)}` : `one of ${context.fabric(one)} and one of ${context.fabric(other)}`
  if (row.goes === 1) return [`Put the two squares right sides together: ${cloth}. They make ${all}${spare}.`]
  return [`Put the squares in pairs, right sides together: ${cloth}. ${capital(inWords(row.goes, 'pair'))} make ${all}${spare}.`]
}

const twoFabrics = ({ row, first }: UnitVariant): [string, string] => {
  const names = row.kind === 'hourglass' ? ['top', 'right'] : ['upper', 'lower']
  return names.map((name) => first.fabrics[name] as string) as [string, string]
}

/** The squares that are drawn on: one of each pair. */
function drawnOn({ goes }: UnitRow, [one, other]: readonly [string, string], context: BookletContext): string {
  if (one === other) return goes === 1 ? 'one of the squares' : 'one square of each pair'
  return `${goes === 1 ? 'the' : 'each'} ${context.fabric(lighterOf(context, one, other))} square`
}

const lineOn = (row: UnitRow, cloth: readonly [string, string], context: BookletContext): string =>
  `Draw a line from corner to corner on the wrong side of ${drawnOn(row, cloth, context)}.`
const besideIt = ({ seamText }: BookletContext): string => `Sew ${seamText} from the line, on both sides of it. Cut on the line.`

const eachMakes = (row: UnitRow, number: string): string => (row.goes === 1 ? '' : ` Each pair makes ${number}.`)

const two: MakeWay = (row, variant, context) => {
  const [one, other] = twoFabrics(variant)
  const lighter = lighterOf(context, one, other)
  return {
    sentences: [...pairs(row, [one, other], context), `${lineOn(row, [one, other], context)} ${besideIt(context)}${eachMakes(row, 'two')}`],
    drawings: [
      twoSquares(
        cutSize(context, row),
        lighter,
        context,
        'one line',
        'Two squares, right sides together: stitches on each side of the line, then the cut on it.',
      ),
    ],
  }
}

const four: MakeWay = (row, variant, context) => {
  const [one, other] = twoFabrics(variant)
  const lighter = lighterOf(context, one, other)
  return {
    sentences: [
      ...pairs(row, [one, other], context),
      `Sew all round, ${context.seamText} from the edge. Without moving the pair, cut it from corner to corner both ways.${eachMakes(row, 'four')}`,
    ],
    drawings: [
      twoSquares(
        cutSize(context, row),
        lighter,
        context,
        'all round',
        'Two squares, right sides together, sewn all round; cut from corner to corner both ways.',
      ),
    ],
  }
}

const eight: MakeWay = (row, variant, context) => {
  const [one, other] = twoFabrics(variant)
  const lighter = lighterOf(context, one, other)
  return {
    sentences: [
      ...pairs(row, [one, other], context),
      `Draw both lines from corner to corner on the wrong side of ${drawnOn(row, [one, other], context)}. Sew ${context.seamText} from each line, on both sides of it.`,
      `Cut through the middle both ways, then on the lines.${eachMakes(row, 'eight')}`,
    ],
    drawings: [
      twoSquares(
        cutSize(context, row),
        lighter,
        context,
        'both lines',
        'Two squares, right sides together: stitches on each side of both lines; cuts through the middle both ways and on the lines.',
      ),
    ],
  }
}

const hourglassTwo: MakeWay = (row, variant, context) => {
  const [one, other] = twoFabrics(variant)
  const lighter = lighterOf(context, one, other)
  const size = cutSize(context, row)
  return {
    sentences: [
      ...pairs(row, [one, other], context),
      `${lineOn(row, [one, other], context)} ${besideIt(context)} Press both halves toward ${halvesToward(variant, context)}.`,
      `Put the two halves right sides together, each fabric on the other one, and nest the seams. Draw the other line from corner to corner, across the seam. ${besideIt(context)} One hourglass is the other one flipped${row.spare === 0 ? '' : ': keep the one that the layout picture shows'}.`,
    ],
    drawings: [
      twoSquares(
        size,
        lighter,
        context,
        'one line',
        'First round. Two squares, right sides together: stitches on each side of the line, then the cut on it.',
      ),
      crossedHalves(
        size,
        [one, other],
        context,
        'Second round. Two halves, right sides together, fabrics crossed: stitches on each side of the new line, then the cut on it.',
      ),
    ],
  }
}

/** As the plan presses the short seams; both halves alike, so that they nest where they cross. */
function halvesToward(variant: UnitVariant, context: BookletContext): string {
  const ways = new Set(variant.seams.slice(0, 2).map((seam) => towardWords(seam, variant.row.kind, variant.first.fabrics, context)))
  const [way] = ways
  return ways.size === 1 && way !== undefined && way !== 'open' ? way : 'the same fabric'
}

const geese: MakeWay = (row, _, context) => {
  const [large, small] = [cutSize(context, row), cutSize(context, row, 'smallest')]
  const spare = row.spare === 0 ? '' : `; ${inWords(row.spare, 'goose is', 'geese are')} spare`
  const batches = row.batches.map((batch, index) => {
    const which = row.batches.length === 1 ? 'Take' : `Batch ${index + 1}: take`
    const makes = batchMakes(batch, context.fabric)
    return `${which} a large square of ${context.fabric(batch.goose)} and four small squares, numbered clockwise from the top left corner: ${squaresSaid(batch.corners, context)}.${makes === null ? '' : ` ${inEnglish(makes)}`}`
  })
  const keep = geeseToKeep(row, context.block, context.fabric)
  const different = [...new Map(row.batches.map((batch) => [batch.corners.join(), batch])).values()]
  return {
    sentences: [
      `${capital(inWords(row.batches.length, 'batch', 'batches'))} of four ${row.batches.length === 1 ? 'makes' : 'make'} ${row.count === 1 ? 'your goose' : 'all your geese'}${spare}.`,
      ...batches,
      ...(keep === null ? [] : [inEnglish(keep)]),
      'Draw a line from corner to corner on the wrong side of every small square.',
      'Lay squares 1 and 3 on opposite corners of the large square, right sides together. They overlap in the middle, and their lines make one long line.',
      `${besideIt(context)} Press the small pieces away from the large one: each half looks like a heart.`,
      'Place square 2 on the large corner of one half, right sides together, its line running between the two small pieces. Do the same with square 4 on the other half.',
      `${besideIt(context)} Each half makes two geese.`,
    ],
    drawings: different.slice(0, MOST_VARIANTS).flatMap((batch) => goosePictures(large, small, batch.goose, batch.corners, context)),
  }
}

/** `1 and 2 of Moss, 3 and 4 of Plum`. */
function squaresSaid(corners: readonly string[], context: BookletContext): string {
  const cloth = [...new Set(corners)]
  if (cloth.length === 1) return `all of ${context.fabric(cloth[0] as string)}`
  const each = cloth.map(
    (fabric) => `${listed(corners.flatMap((id, index) => (id === fabric ? [String(index + 1)] : [])))} of ${context.fabric(fabric)}`,
  )
  return each.join(', ')
}

const flips: MakeWay = (row, variant, context) => {
  const corners = flipsOf(variant)
  const base = variant.first.kind === 'goose' ? (variant.first.fabrics.goose as string) : (row.fabrics.centre as string)
  const cloth = [...new Set(corners.map(({ fabric }) => fabric))].map(context.fabric)
  if (corners.length === 0) return { sentences: ['Use it as cut.'], drawings: [] }
  const rounds: readonly (readonly Flip[])[] =
    variant.first.kind === 'goose' ? corners.map((one) => [one]) : [corners.slice(0, 2), corners.slice(2)].filter(({ length }) => length > 0)
  const places = (some: readonly Flip[]): string =>
    listed(some.map(({ corner, fabric }) => `the ${patchWords(corner)}${cloth.length > 1 ? ` in ${context.fabric(fabric)}` : ''}`))
  return {
    sentences: [
      `Draw a line from corner to corner on the wrong side of every small square (${listed(cloth)}).`,
      `${row.count === 1 ? 'Lay' : 'For each unit lay'} ${rounds[0]?.length === 1 ? 'a square on a corner' : 'squares on two corners'} of the ${context.fabric(base)} piece, right sides together: ${places(rounds[0] ?? [])}. Sew on the line. Trim ${context.seamText} beyond the stitches. Flip the ${rounds[0]?.length === 1 ? 'corner' : 'corners'} over and press.`,
      ...rounds.slice(1).map((some) => `Do the same with ${places(some)}.`),
    ],
    drawings: rounds.map((laid, index) =>
      flippedPicture(
        variant,
        base,
        rounds.slice(0, index).flat(),
        laid,
        context,
        `The large piece with ${inWords(laid.length, 'square')} on ${laid.length === 1 ? 'a corner' : 'corners'}: sew on the line, trim beyond it${index === 0 ? '' : '; the corners sewn before are flipped over'}.`,
      ),
    ),
  }
}

const stripSet: MakeWay = (row, variant, context) => {
  const names = Object.keys(variant.first.fabrics)
  const fabrics = names.map((_, index) => variant.first.fabrics[`strip${index + 1}`] as string)
  const length = cutSize(context, row)
  return {
    sentences: [
      `Sew the long strips side by side, in this order: ${listed(fabrics.map(context.fabric))}. Start each seam at the opposite end from the last, so the set stays straight.`,
      `Straighten one end. Cut ${count(row.count, 'piece')} across the ${row.goes === 1 ? 'set' : 'sets'}, each ${saySize([row.unfinished[1], row.unfinished[0]], context.unit)}.`,
    ],
    drawings: [stripSetPicture(fabrics, cutSize(context, row, 'smallest'), length, row.unfinished[1], context)],
  }
}

const plain: MakeWay = (row, variant, context) => {
  const order = PLAIN_WORDS[row.kind]
  const meetings = matchingClauses(
    meetingsAlong(
      context,
      variant.seams.map(({ join }) => join),
    ),
  )
  const match = meetings.length === 0 ? [] : [`${capital(listed(meetings))}.`]
  return { sentences: [...(order === undefined ? [] : order(variant, context)), ...match], drawings: [apartPicture(variant, context)] }
}

const PLAIN_WORDS: Readonly<Record<string, (variant: UnitVariant, context: BookletContext) => string[]>> = {
  hst: () => ['Sew the triangles in pairs along their long edges, right sides together. Don’t stretch the bias edges. Trim off the ears.'],
  hourglass: () => [
    'Sew the triangles in pairs along a short edge: top to right, bottom to left. Then sew the two halves together along their long edges.',
    'Trim off the ears.',
  ],
  goose: () => [
    'Sew one wing to the centre triangle, right sides together, its long edge to a short edge. Press, then sew on the other wing. Trim off the ears.',
  ],
  diamond: () => [
    'Sew triangles to two opposite sides of the square, with their tips sticking out the same at both ends. Press, trim off the ears, then sew on the other two.',
  ],
  cornered: () => ['Sew a triangle to each clipped corner of the centre, with its tips sticking out the same at both ends. Trim off the ears.'],
  strips: ({ first }, context) => {
    const fabrics = Object.keys(first.fabrics).map((_, index) => context.fabric(first.fabrics[`strip${index + 1}`] as string))
    return [
      `Sew the strips side by side in this order: ${listed(fabrics)}. Start each seam at the opposite end from the last, so the unit stays straight.`,
    ]
  },
  'half-rectangle': (_, { seamText }) => [
    `Sew the two triangles along their long edges, right sides together. At each end the seam passes ${seamText} from both sides of the corner, not through it. Trim off the ears.`,
  ],
}

const WAYS: Readonly<Record<Method, MakeWay>> = {
  plain,
  'hst-2': two,
  'hst-4': four,
  'hst-8': eight,
  'qst-2': hourglassTwo,
  'geese-4': geese,
  'corner-flip': flips,
  'strip-set': stripSet,
}
