/**
 * Making the units, all alike ones in one step, each by its own method, action by action.
 *
 * In      the booklet context: report and block, with lengths in the unit of measure (in or cm).
 * Out     one step for each row of units that are sewn; patches that are used as cut have none.
 * Source  geese [S3][S5][S6], triangles [S37][S31][S24], hourglasses [S37], pressing [S79]; a half rectangle's seam one allowance in from both sides
 *         of the corner [S46]; otherwise common practice, no source.
 */
import type { Kind, Method } from '../../values/block.ts'
import { message } from '../../values/messages.ts'
import type { UnitRow } from '../../values/report.ts'
import { capital } from '../../words/englishPhrases.ts'
import type { BookletContext, UnitVariant, UnitSeam } from './bookletContext.ts'
import { type Flip, flipsOf } from './clippedCorners.ts'
import { allOf, type SewingDraft } from './draftStep.ts'
import { matchingClauses, meetingsAlong } from './matchingPoints.ts'
import { flippedPicture, stripSetPicture } from './methodPictures.ts'
import { trimActions } from './trimming/trimStep.ts'
import { apartPicture, pressedPicture, variantsPicture } from './unitPictures.ts'
import { cutSize } from './units/cutSizes.ts'
import { geeseActions } from './units/geese.ts'
import { eightTriangles, fourTriangles, hourglasses, twoTriangles } from './units/squarePairs.ts'
import type { StepAction } from './values.ts'

export function unitSteps(context: BookletContext): SewingDraft[] {
  return context.report.units.flatMap((row) => {
    const variants = context.variants.filter((variant) => variant.row === row)
    return variants.some(({ seams }) => seams.length > 0) || row.method === 'geese-4' ? [unitStep(row, variants, context)] : []
  })
}

function unitStep(row: UnitRow, variants: readonly UnitVariant[], context: BookletContext): SewingDraft {
  const first = variants[0] as UnitVariant
  const own = [...new Set(row.for)]
  const words = context.say.units
  const trimmed = TRIMMED.has(row.method) || row.kind === 'half-rectangle'
  const made = row.method === 'geese-4' ? geeseActions(row, variants, context) : WAYS[row.method](row, first, context)
  const [last, looks] = [
    trimmed ? trimActions(first, context) : [said(words.shouldMeasure(row.count, context.size(row.unfinished)))],
    variants.length > 1 && row.method !== 'geese-4' ? [{ sentences: [words.theseLooks], drawings: [variantsPicture(variants, context)] }] : [],
  ]
  const bias = row.bias ? [said(words.bias)] : []
  return {
    keys: own.map((id) => `unit:${id}`),
    heading: message('step-make-units', { count: row.count, kind: row.kind, hand: row.hand, labels: variants.map(({ label }) => label) }),
    ...allOf([...made, ...pressing(variants, context), ...looks, ...last, ...bias]),
    cautions: trimmed ? ['needle', 'iron', 'blade'] : ['needle', 'iron'],
    count: row.count,
    joins: own.flatMap((id) => context.unitJoins.get(id) ?? []),
    units: own,
    cut: [],
  }
}

const said = (...sentences: string[]): StepAction => ({ sentences, drawings: [] })

const TRIMMED: ReadonlySet<Method> = new Set<Method>(['geese-4', 'hst-2', 'hst-4', 'hst-8', 'qst-2'])

/** `Press the seam toward Moss.` Where units made alike are pressed differently, each with its letter and its picture. Geese say it as they are made. */
function pressing(variants: readonly UnitVariant[], context: BookletContext): StepAction[] {
  const words = context.say.units
  const all = variants.filter(({ seams }) => seams.length > 0).map((variant) => ({ variant, press: pressWords(variant, context) }))
  const [first] = all
  if (first === undefined) return []
  if (all.every(({ press }) => press === first.press)) {
    if (first.variant.row.method === 'geese-4' && first.press === words.pressAll(2, words.toward(words.theWings))) return []
    const shown = first.press === words.pressAsArrows ? all : [first]
    return shown.map(({ variant }, at) => ({ sentences: at === 0 ? [first.press] : [], drawings: [pressedPicture(variant, context)] }))
  }
  return all.map(({ variant, press }) => ({
    sentences: [words.labelled(variant.label, variant.count, press)],
    drawings: [pressedPicture(variant, context)],
  }))
}

function pressWords({ seams, row, first }: UnitVariant, context: BookletContext): string {
  const words = context.say.units
  const toward = (seam: UnitSeam): string => towardWords(seam, row.kind, first.fabrics, context)
  const ways = [...new Set(seams.map(toward))]
  const way = (what: string): string => (what === words.open ? words.open : words.toward(what))
  if (ways.length === 1) return words.pressAll(seams.length, way(ways[0] as string))
  if (row.kind === 'hourglass' && ways.length === 2 && seams.length === 3) {
    const [one, other, long] = seams.map(toward) as [string, string, string]
    if (one === other) return words.pressShortAndLong(way(one))
    if (long === words.open) return words.pressShortLongOpen
  }
  return words.pressAsArrows
}

const NAMED_BY_PLACE: ReadonlySet<string> = new Set(['goose', 'diamond', 'cornered'])

/** Where a seam is pressed, as a maker would say: the goose, the wings, the corners; or the fabric there. */
function towardWords({ sides, toward }: UnitSeam, kind: string, fabrics: Readonly<Record<string, string>>, context: BookletContext): string {
  const words = context.say.units
  if (toward === 'open') return words.open
  const names = sides[toward]
  if (kind === 'goose') return names.includes('goose') ? words.theGoose : words.theWings
  if (NAMED_BY_PLACE.has(kind)) return names.includes('centre') ? words.theCentre : words.theCorners
  const cloth = [...new Set(names.map((name) => fabrics[name] as string))]
  const others = new Set(sides[toward === 0 ? 1 : 0].map((name) => fabrics[name]))
  if (cloth.length === 1 && !others.has(cloth[0] as string)) return context.fabric(cloth[0] as string)
  return words.patchSide(names.at(-1) as string)
}

type MakeWay = (row: UnitRow, variant: UnitVariant, context: BookletContext) => StepAction[]

const flips: MakeWay = (row, variant, context) => {
  const { units: words } = context.say
  const corners = flipsOf(variant)
  if (corners.length === 0) return [said(words.useAsCut)]
  const isGoose = variant.first.kind === 'goose'
  const base = (isGoose ? variant.first.fabrics.goose : row.fabrics.centre) as string
  const cloth = [...new Set(corners.map(({ fabric }) => fabric))].map(context.fabric)
  const rounds: readonly (readonly Flip[])[] = isGoose
    ? corners.map((one) => [one])
    : [corners.slice(0, 2), corners.slice(2)].filter(({ length }) => length > 0)
  const places = (some: readonly Flip[]): string[] =>
    some.map(({ corner, fabric }) => words.corner(corner, cloth.length > 1 ? context.fabric(fabric) : null))
  return rounds.flatMap((laid, index): StepAction[] => {
    const before = rounds.slice(0, index).flat()
    const lay =
      index === 0
        ? [words.drawOnCorners(cloth), words.laySquaresOnCorners({ each: row.count > 1, base: context.fabric(base), corners: places(laid) })]
        : [words.sameOnCorners(places(laid))]
    return [
      { sentences: lay, drawings: [flippedPicture(variant, base, before, laid, context, words.pictures.laid)] },
      {
        sentences: [words.trimCorners(context.seamText, laid.length)],
        drawings: [flippedPicture(variant, base, [...before, ...laid], [], context, words.pictures.flipped)],
      },
    ]
  })
}

const stripsInOrder = ({ fabrics }: UnitVariant['first']): string[] => Object.keys(fabrics).map((_, at) => fabrics[`strip${at + 1}`] as string)

const stripSet: MakeWay = (row, variant, context) => {
  const { units: words } = context.say
  const fabrics = stripsInOrder(variant.first)
  const [across, length] = [cutSize(context, row, 'smallest'), cutSize(context, row)]
  const picture = (cut: boolean) => stripSetPicture(fabrics, across, length, row.unfinished[1], cut, context)
  const size = context.size([row.unfinished[1], row.unfinished[0]])
  // A set is pressed whole, before it is cut: the same for all its pieces.
  return [
    { sentences: [words.makeStripSets(row.goes, fabrics.map(context.fabric)), pressWords(variant, context)], drawings: [picture(false)] },
    { sentences: [words.cutAcrossSets({ pieces: row.count, sets: row.goes, size })], drawings: [picture(true)] },
  ]
}

const plain: MakeWay = (row, variant, context) => {
  const order = PLAIN_WORDS[row.kind]
  const joins = variant.seams.map(({ join }) => join)
  const meetings = matchingClauses(meetingsAlong(context, joins), context)
  const match = meetings.length === 0 ? [] : [`${capital(context.say.list(meetings))}.`]
  return [{ sentences: [...(order?.(variant, context) ?? []), ...match], drawings: [apartPicture(variant, context)] }]
}

const PLAIN_WORDS: { readonly [Name in Kind]?: (variant: UnitVariant, context: BookletContext) => string[] } = {
  hst: (_, { say }) => [say.units.sewHst],
  hourglass: (_, { say }) => [say.units.sewHourglass],
  goose: (_, { say }) => [say.units.sewGoose],
  diamond: (_, { say }) => [say.units.sewDiamond],
  cornered: (_, { say }) => [say.units.sewCornered],
  strips: ({ first }, { say, fabric }) => [say.units.sewStrips(stripsInOrder(first).map(fabric))],
  'half-rectangle': ({ row, first }, { say, fabric, seamText }) => [
    say.units.halfRectanglePairs({ one: fabric(first.fabrics.upper as string), other: fabric(first.fabrics.lower as string), hand: row.hand }),
    say.units.markDots(seamText),
    say.units.matchDots,
  ],
}

const WAYS: Readonly<Record<Exclude<Method, 'geese-4'>, MakeWay>> = {
  plain,
  'hst-2': twoTriangles,
  'hst-4': fourTriangles,
  'hst-8': eightTriangles,
  'qst-2': hourglasses,
  'corner-flip': flips,
  'strip-set': stripSet,
}
