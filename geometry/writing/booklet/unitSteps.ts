/**
 * Making the units, all alike ones in one step, each by its own method.
 *
 * In      the bench.
 * Out     one step for each row of units that are sewn; patches that are used as cut have none.
 * Source  geese [S3][S5][S6], triangles [S37][S31][S24], hourglasses [S37], pressing [S79]; otherwise common practice, no source.
 */
import { leftAndRight, trimSentences } from './trimStep.ts'
import { lightnessOf } from '../../colour/lightness.ts'
import type { Method } from '../../values/block.ts'
import type { UnitRow } from '../../values/report.ts'
import { capital, count, inWords, kindWords, listed, patchWords, saySize } from '../phrases.ts'
import type { Bench, Look, OwnSeam } from './bookletContext.ts'
import { type Flip, flipsOf } from './clippedCorners.ts'
import type { Made } from './draftStep.ts'
import { matchingClauses, meetingsOf } from './matchingPoints.ts'
import { crossedHalves, flippedPicture, goosePictures, stripSetPicture, twoSquares } from './methodPictures.ts'
import { apartPicture, looksPicture, pressedPicture } from './unitPictures.ts'
import type { Drawing } from './values.ts'

export function unitSteps(bench: Bench): Made[] {
  return bench.report.units.flatMap((row) => {
    const looks = bench.looks.filter((look) => look.row === row)
    return looks.some(({ seams }) => seams.length > 0) || row.method === 'geese-4' ? [unitStep(row, looks, bench)] : []
  })
}

interface Way {
  readonly sentences: readonly string[]
  readonly drawings: readonly Drawing[]
}

function unitStep(row: UnitRow, looks: readonly Look[], bench: Bench): Made {
  const first = looks[0] as Look
  const trimmed = TRIMMED.has(row.method)
  const trim = trimmed
    ? trimSentences(first, bench)
    : [`${row.count === 1 ? 'It measures' : 'Each measures'} ${saySize(row.unfinished, bench.unit)}.`]
  const made = WAYS[row.method](row, first, bench)
  const bias = row.bias ? ['The outside edges are on the bias: handle them little, and press without pushing.'] : []
  return {
    keys: row.for.map((id) => `unit:${id}`),
    title: `Make ${inWords(row.count, kindWords(row.kind, 1), kindWords(row.kind, 2))}${hand(row)}: ${listed(looks.map(({ label }) => label))}`,
    sentences: [...made.sentences, ...pressing(looks, bench), ...trim, ...bias],
    drawings: [
      ...made.drawings,
      ...(looks.length > 1 ? [looksPicture(looks.slice(0, MOST_LOOKS), bench)] : []),
      ...pressedDifferently(looks, bench).map((look) => pressedPicture(look, bench)),
      ...(trimmed ? leftAndRight(first, bench) : []),
    ],
    cautions: trimmed ? ['needle', 'iron', 'blade'] : ['needle', 'iron'],
    count: row.count,
    joins: row.for.flatMap((id) => bench.unitJoins.get(id) ?? []),
    units: row.for,
    cut: [],
  }
}

/** One look for each way of pressing. */
function pressedDifferently(looks: readonly Look[], bench: Bench): Look[] {
  const ways = new Map(
    [...looks]
      .reverse()
      .filter(({ seams }) => seams.length > 0)
      .map((look) => [pressWords(look, bench), look] as const),
  )
  const arrows = [...ways.keys()].some((words) => words.includes('arrow'))
  return (arrows ? looks : [...ways.values()]).slice(0, MOST_LOOKS)
}

/** Looks of one row that are drawn one by one. */
const MOST_LOOKS = 6
const TRIMMED: ReadonlySet<Method> = new Set<Method>(['geese-4', 'hst-2', 'hst-4', 'hst-8', 'qst-2'])

const hand = (row: UnitRow): string => (row.hand === null ? '' : `, ${row.hand} hand`)

/** `Press the seam toward Moss.` Where units made alike are pressed differently, each with its letter. */
function pressing(looks: readonly Look[], bench: Bench): string[] {
  const said = looks.filter(({ seams }) => seams.length > 0).map((look) => ({ look, words: pressWords(look, bench) }))
  const same = said.every(({ words }) => words === said[0]?.words)
  if (same) return said.slice(0, 1).map(({ words }) => `${capital(words)}.`)
  return said.map(({ look, words }) => `${look.label} (${inWords(look.units.length, 'unit')}): ${words}.`)
}

function pressWords({ seams, row, first }: Look, bench: Bench): string {
  const all = seams.length === 1 ? 'the seam' : seams.length === 2 ? 'both seams' : 'every seam'
  const ways = [...new Set(seams.map((seam) => towardWords(seam, row.kind, first.fabrics, bench)))]
  if (ways.length === 1 && ways[0] === 'open') return `press ${all} open`
  if (ways.length === 1) return `press ${all} toward ${ways[0]}`
  if (row.kind === 'hourglass' && ways.length === 2 && seams.length === 3) {
    const [one, other, long] = seams.map((seam) => towardWords(seam, row.kind, first.fabrics, bench))
    if (one === other) return `press the two short seams toward ${one} and the long seam as the arrow in the picture shows`
    if (long === 'open') return 'press the two short seams as the arrows show and the long seam open'
  }
  return 'press each seam as the arrows in the picture show'
}

const NAMED_BY_PLACE: ReadonlySet<string> = new Set(['goose', 'diamond', 'cornered'])

/** Where a seam is pressed, as a maker would say: the goose, the wings, the corners; or the fabric there. */
function towardWords({ sides, toward }: OwnSeam, kind: string, fabrics: Readonly<Record<string, string>>, bench: Bench): string {
  if (toward === 'open') return 'open'
  const names = sides[toward]
  if (kind === 'goose') return names.includes('goose') ? 'the goose' : 'the wings'
  if (NAMED_BY_PLACE.has(kind)) return names.includes('centre') ? 'the centre' : 'the corners'
  const cloth = [...new Set(names.map((name) => fabrics[name] as string))]
  const others = new Set(sides[toward === 0 ? 1 : 0].map((name) => fabrics[name]))
  if (cloth.length === 1 && !others.has(cloth[0] as string)) return bench.fabric(cloth[0] as string)
  return `the ${patchWords(names.at(-1) as string)} side`
}

type MakeWay = (row: UnitRow, look: Look, bench: Bench) => Way

const cutSize = (bench: Bench, row: UnitRow, pick: 'largest' | 'smallest' = 'largest'): number => {
  const wanted = new Set(row.for)
  const sizes = bench.report.cut
    .filter(({ method, for: units }) => method === row.method && units.some((id) => wanted.has(id)))
    .flatMap(({ size }) => size)
  return sizes.length === 0 ? (row.unfinished[0] as number) : pick === 'largest' ? Math.max(...sizes) : Math.min(...sizes)
}

/** The lighter of two fabrics shows a pencil line best. */
const lighterOf = (bench: Bench, one: string, other: string): string =>
  lightnessOf(bench.colour(one)) >= lightnessOf(bench.colour(other)) ? one : other

function pairs(row: UnitRow, [one, other]: readonly [string, string], bench: Bench): string[] {
  const all = inWords(row.count + row.spare, 'unit')
  const spare = row.spare === 0 ? '' : `, ${inWords(row.spare, 'of them', 'of them')} left over`
  const cloth = one === other ? `two of ${bench.fabric(one)}` : `one of ${bench.fabric(one)} and one of ${bench.fabric(other)}`
  if (row.goes === 1) return [`Lay the two squares on each other, right sides together: ${cloth}. They make ${all}${spare}.`]
  return [`Lay the squares in pairs, right sides together: ${cloth}. ${capital(inWords(row.goes, 'pair'))} make ${all}${spare}.`]
}

const twoFabrics = ({ row, first }: Look): [string, string] => {
  const names = row.kind === 'hourglass' ? ['top', 'right'] : ['upper', 'lower']
  return names.map((name) => first.fabrics[name] as string) as [string, string]
}

/** The squares that are drawn on: one of each pair. */
function drawnOn({ goes }: UnitRow, [one, other]: readonly [string, string], bench: Bench): string {
  if (one === other) return goes === 1 ? 'one of the squares' : 'one square of each pair'
  return `${goes === 1 ? 'the' : 'each'} ${bench.fabric(lighterOf(bench, one, other))} square`
}

const lineOn = (row: UnitRow, cloth: readonly [string, string], bench: Bench): string =>
  `Draw a line from corner to corner on the wrong side of ${drawnOn(row, cloth, bench)}.`
const besideIt = ({ seamSaid }: Bench): string => `Sew ${seamSaid} from the line on each side of it. Cut on the line.`

const eachMakes = (row: UnitRow, number: string): string => (row.goes === 1 ? '' : ` Each pair makes ${number}.`)

const two: MakeWay = (row, look, bench) => {
  const [one, other] = twoFabrics(look)
  const lighter = lighterOf(bench, one, other)
  return {
    sentences: [...pairs(row, [one, other], bench), `${lineOn(row, [one, other], bench)} ${besideIt(bench)}${eachMakes(row, 'two')}`],
    drawings: [
      twoSquares(
        cutSize(bench, row),
        lighter,
        bench,
        'one line',
        'Two squares, right sides together: stitches on each side of the line, then the cut on it.',
      ),
    ],
  }
}

const four: MakeWay = (row, look, bench) => {
  const [one, other] = twoFabrics(look)
  const lighter = lighterOf(bench, one, other)
  return {
    sentences: [
      ...pairs(row, [one, other], bench),
      `Sew all round, ${bench.seamSaid} from the edge. Without moving the pair, cut it from corner to corner both ways.${eachMakes(row, 'four')}`,
    ],
    drawings: [
      twoSquares(
        cutSize(bench, row),
        lighter,
        bench,
        'all round',
        'Two squares, right sides together, sewn all round; cut from corner to corner both ways.',
      ),
    ],
  }
}

const eight: MakeWay = (row, look, bench) => {
  const [one, other] = twoFabrics(look)
  const lighter = lighterOf(bench, one, other)
  return {
    sentences: [
      ...pairs(row, [one, other], bench),
      `Draw both lines from corner to corner on the wrong side of ${drawnOn(row, [one, other], bench)}. Sew ${bench.seamSaid} from each line on both sides of it.`,
      `Cut through the middle both ways, then on the lines.${eachMakes(row, 'eight')}`,
    ],
    drawings: [
      twoSquares(
        cutSize(bench, row),
        lighter,
        bench,
        'both lines',
        'Two squares, right sides together: stitches on each side of both lines; cuts through the middle both ways and on the lines.',
      ),
    ],
  }
}

const hourglassTwo: MakeWay = (row, look, bench) => {
  const [one, other] = twoFabrics(look)
  const lighter = lighterOf(bench, one, other)
  const size = cutSize(bench, row)
  return {
    sentences: [
      ...pairs(row, [one, other], bench),
      `${lineOn(row, [one, other], bench)} ${besideIt(bench)} Press both halves toward ${halvesToward(look, bench)}.`,
      `Lay the two halves on each other, right sides together, the fabrics crossed: match 1 nested seam. Draw the other line from corner to corner, across the seam. ${besideIt(bench)} The two hourglasses are of opposite hand${row.spare === 0 ? '' : ': keep the one that the picture of the layout shows'}.`,
    ],
    drawings: [
      twoSquares(
        size,
        lighter,
        bench,
        'one line',
        'First round. Two squares, right sides together: stitches on each side of the line, then the cut on it.',
      ),
      crossedHalves(
        size,
        [one, other],
        bench,
        'Second round. Two halves, right sides together, fabrics crossed: stitches on each side of the new line, then the cut on it.',
      ),
    ],
  }
}

/** As the plan presses the short seams; both halves alike, so that they nest where they cross. */
function halvesToward(look: Look, bench: Bench): string {
  const ways = new Set(look.seams.slice(0, 2).map((seam) => towardWords(seam, look.row.kind, look.first.fabrics, bench)))
  const [way] = ways
  return ways.size === 1 && way !== undefined && way !== 'open' ? way : 'the same fabric'
}

const geese: MakeWay = (row, _, bench) => {
  const [large, small] = [cutSize(bench, row), cutSize(bench, row, 'smallest')]
  const spare = row.spare === 0 ? '' : `; ${inWords(row.spare, 'goose', 'geese')} left over`
  const batches = row.batches.map((batch, index) => {
    const which = row.batches.length === 1 ? 'Take' : `Batch ${index + 1}: take`
    return `${which} a large square of ${bench.fabric(batch.goose)}; its small squares, clockwise from the top left corner, are ${squaresSaid(batch.corners, bench)}.`
  })
  const different = [...new Map(row.batches.map((batch) => [batch.corners.join(), batch])).values()]
  return {
    sentences: [
      `${capital(inWords(row.batches.length, 'batch', 'batches'))} of four ${row.batches.length === 1 ? 'makes' : 'make'} ${row.count === 1 ? 'the goose' : 'the geese'}${spare}.`,
      ...batches,
      'Draw a line from corner to corner on the wrong side of every small square.',
      'Lay squares 1 and 3 on opposite corners of the large square, right sides together; their lines run on into each other and their tips overlap in the middle.',
      `${besideIt(bench)} Press the small triangles away from the large one.`,
      'Lay square 2 on the bare corner of the half that was the upper right one, right sides together, its line running from that corner out between the small triangles; in the same way square 4 on the other half.',
      `${besideIt(bench)} Each half makes two geese.`,
    ],
    drawings: different.slice(0, MOST_LOOKS).flatMap((batch) => goosePictures(large, small, batch.goose, batch.corners, bench)),
  }
}

/** `1 and 2 in Moss, 3 and 4 in Plum`. */
function squaresSaid(corners: readonly string[], bench: Bench): string {
  const cloth = [...new Set(corners)]
  if (cloth.length === 1) return `all of ${bench.fabric(cloth[0] as string)}`
  const each = cloth.map(
    (fabric) => `${listed(corners.flatMap((id, index) => (id === fabric ? [String(index + 1)] : [])))} of ${bench.fabric(fabric)}`,
  )
  return listed(each)
}

const flips: MakeWay = (row, look, bench) => {
  const corners = flipsOf(look)
  const base = look.first.kind === 'goose' ? (look.first.fabrics.goose as string) : (row.fabrics.centre as string)
  const cloth = [...new Set(corners.map(({ fabric }) => fabric))].map(bench.fabric)
  if (corners.length === 0) return { sentences: ['Use it as cut.'], drawings: [] }
  const rounds: readonly (readonly Flip[])[] =
    look.first.kind === 'goose' ? corners.map((one) => [one]) : [corners.slice(0, 2), corners.slice(2)].filter(({ length }) => length > 0)
  const places = (some: readonly Flip[]): string =>
    listed(some.map(({ corner, fabric }) => `the ${patchWords(corner)}${cloth.length > 1 ? ` in ${bench.fabric(fabric)}` : ''}`))
  return {
    sentences: [
      `Draw a line from corner to corner on the wrong side of every small square (${listed(cloth)}).`,
      `${row.count === 1 ? 'Lay' : 'For each unit lay'} ${rounds[0]?.length === 1 ? 'a square on a corner' : 'squares on two corners'} of the ${bench.fabric(base)} base, right sides together: ${places(rounds[0] ?? [])}. Sew on the line, across the corner. Trim ${bench.seamSaid} beyond the stitches and press the corner over.`,
      ...rounds.slice(1).map((some) => `Do the same with ${places(some)}.`),
    ],
    drawings: rounds.map((laid, index) =>
      flippedPicture(
        look,
        base,
        rounds.slice(0, index).flat(),
        laid,
        bench,
        `The base with ${inWords(laid.length, 'square')} on ${laid.length === 1 ? 'a corner' : 'corners'}: sew on the line, trim beyond it${index === 0 ? '' : '; what was sewn before is pressed over'}.`,
      ),
    ),
  }
}

const stripSet: MakeWay = (row, look, bench) => {
  const names = Object.keys(look.first.fabrics)
  const fabrics = names.map((_, index) => look.first.fabrics[`strip${index + 1}`] as string)
  const length = cutSize(bench, row)
  return {
    sentences: [
      `Sew the long strips side by side, in this order: ${listed(fabrics.map(bench.fabric))}. Sew each next seam from the other end, so that the set stays straight.`,
      `Straighten one end. Cut ${count(row.count, 'piece')} across the ${row.goes === 1 ? 'set' : 'sets'}, each ${saySize([row.unfinished[1], row.unfinished[0]], bench.unit)}.`,
    ],
    drawings: [stripSetPicture(fabrics, cutSize(bench, row, 'smallest'), length, row.unfinished[1], bench)],
  }
}

const plain: MakeWay = (row, look, bench) => {
  const order = PLAIN_WORDS[row.kind]
  const meetings = matchingClauses(
    meetingsOf(
      bench,
      look.seams.map(({ join }) => join),
    ),
  )
  const match = meetings.length === 0 ? [] : [`${capital(listed(meetings))}.`]
  return { sentences: [...(order === undefined ? [] : order(look, bench)), ...match], drawings: [apartPicture(look, bench)] }
}

const PLAIN_WORDS: Readonly<Record<string, (look: Look, bench: Bench) => string[]>> = {
  hst: () => ['Sew the triangles in pairs along their long edges, right sides together; do not stretch the bias. Trim off the ears.'],
  hourglass: () => [
    'Sew the triangles in pairs along a short edge: the top to the right one, the bottom to the left one. Then sew the two halves along their long edges.',
    'Trim off the ears.',
  ],
  goose: () => ['Sew one wing to the goose, long edge to short edge, right sides together; press, then sew the other wing. Trim off the ears.'],
  diamond: () => [
    'Sew triangles to two opposite sides of the square, their tips sticking out alike on both ends. Press, trim off the ears, then sew the other two.',
  ],
  cornered: () => ['Sew a triangle to each clipped corner of the centre, its tips sticking out alike on both ends. Trim off the ears.'],
  strips: ({ first }, bench) => {
    const fabrics = Object.keys(first.fabrics).map((_, index) => bench.fabric(first.fabrics[`strip${index + 1}`] as string))
    return [`Sew the strips side by side in this order: ${listed(fabrics)}. Sew each next seam from the other end, so that the unit stays straight.`]
  },
  'half-rectangle': (_, { seamSaid }) => [
    `Sew the two triangles along their long edges, right sides together, so that the seam passes ${seamSaid} away from both sides of each corner, not through it. Trim off the ears.`,
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
