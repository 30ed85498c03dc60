/**
 * Cutting, fabric by fabric: strips first, then the pieces from them, each row of the cut list once.
 *
 * In      the booklet context: report and block, with lengths in the unit of measure (in or cm).
 * Out     one step a fabric, with a picture of its strips to scale.
 * Source  common practice, no source: strips across the cloth, the largest first, then the pieces across the strips.
 */
import { cuttingDiagram } from '../../cutting/cuttingDiagram.ts'
import { shortSideFirst } from '../../exact/lengths.ts'
import type { CutRow, FabricRow, Strip, UnitRow } from '../../values/report.ts'
import { isBorderCorner } from '../cutPieces.ts'
import { capital, inWords, unitRowWords } from '../../words/englishPhrases.ts'
import { count, listed, sayExact, sayOne, saySize } from '../phrases.ts'
import { type BookletContext, grouped } from './bookletContext.ts'
import { isUprightBox } from './templates.ts'
import { boxAt, Sketch } from './sketch.ts'
import type { Spot } from './values.ts'
import type { DraftStep } from './draftStep.ts'

export function cutSteps(context: BookletContext): DraftStep[] {
  const { block, report } = context
  const places = report.cut.map((row, place) => ({ row, place }))
  const used = new Set(report.cut.map(({ fabric }) => fabric))
  return block.fabrics
    .filter(({ id }) => used.has(id))
    .map(({ id }) =>
      cutStep(
        context,
        id,
        places.filter(({ row }) => row.fabric === id),
      ),
    )
}

interface Placed {
  readonly row: CutRow
  readonly place: number
}

function cutStep(context: BookletContext, fabric: string, rows: readonly Placed[]): DraftStep {
  const cloth = context.report.fabric.find((one) => one.fabric === fabric)
  const largest = [...rows].sort((a, b) => polygonArea(b.row) - polygonArea(a.row))
  return {
    keys: [`cut:${fabric}`],
    title: `Cut ${context.fabric(fabric)}`,
    sentences: [...(cloth === undefined ? [] : stripSentences(cloth, context)), ...largest.map(({ row }) => pieceSentence(row, context))],
    drawings: cloth === undefined || cloth.strips.length === 0 ? [] : [stripPicture(cloth, context)],
    cautions: ['blade'],
    count: 1,
    joins: [],
    units: [],
    cut: rows.map(({ place }) => place),
  }
}

const polygonArea = ({ size: [width, height] }: CutRow): number => width * height

/** `Press the fabric and straighten its end. Cut two strips 3 1/2 in wide across the fabric, from selvage to selvage.` */
function stripSentences({ strips }: FabricRow, { unit, report }: BookletContext): string[] {
  if (strips.length === 0) return []
  const [across, along] = [
    strips.filter((strip) => !isLong(strip, report.cloth.usableWidth)),
    strips.filter((strip) => isLong(strip, report.cloth.usableWidth)),
  ]
  const said = (some: readonly Strip[]): string => {
    const heights = [
      ...grouped(
        [...some].sort((a, b) => b.height - a.height),
        ({ height }) => String(height),
      ).values(),
    ]
    return listed(heights.map((same) => `${inWords(same.length, 'strip')} ${sayOne((same[0] as Strip).height, unit)} wide`))
  }
  return [
    ...(across.length === 0 ? [] : [`Press the fabric and straighten its end. Cut ${said(across)} across the fabric, from selvage to selvage.`]),
    ...(along.length === 0 ? [] : [`Cut ${said(along)} along the length of the fabric, beside the selvage.`]),
  ]
}

const isLong = ({ pieces }: Strip, width: number): boolean =>
  pieces.some(({ size }) => Math.min(...size) <= width && Math.max(...size) > width + 1e-9)

/** `Cut 4 squares 3 1/2 × 3 1/2 in, for A.` */
function pieceSentence(row: CutRow, context: BookletContext): string {
  const letters = purpose(row, context)
  const shape = shapeOf(row, context)
  if (shape === 'polygon')
    return `Cut ${row.count} with ${byTemplate(row, context)}; ${row.count === 1 ? 'it fits' : 'each fits'} in ${saySize(row.size, context.unit)}.`
  const after = {
    none: '.',
    halve: `. Cut ${row.count === 1 ? 'it' : 'each'} once from corner to corner${slant(row, context)}: ${triangles(row, 2, context)}.`,
    quarter: `. Cut ${row.count === 1 ? 'it' : 'each'} twice from corner to corner: ${triangles(row, 4, context)}.`,
  }[row.then]
  const upright = row.fixed === true ? ' (the first side across the fabric, so the print stands upright)' : ''
  return `Cut ${count(row.count, shape)} ${saySize(row.fixed ? row.size : shortSideFirst(row.size), context.unit)}${upright}, ${letters}${larger(row, context)}${after}`
}

/** `template D`. */
function byTemplate(row: CutRow, context: BookletContext): string {
  const letters = lettersFor(row, context)
  if (letters.length === 0 || letters.length > MOST_LETTERS)
    return `${row.count === 1 ? 'its template' : 'their templates'}, ${purpose(row, context)}`
  return `${letters.length === 1 ? 'template' : 'templates'} ${listed(letters)}`
}

/** `4 triangles, one more than you need`. Where squares of one fabric give two sorts of triangle to the same units, the surplus is not told. */
function triangles(row: CutRow, each: 2 | 4, { report, patches }: BookletContext): string {
  const [made, units] = [each * row.count, new Set(row.for)]
  const alone = report.cut.every((other) => other === row || other.fabric !== row.fabric || !other.for.some((unit) => units.has(unit)))
  const needed = [...patches.values()].filter(({ unit, fabric }) => unit !== null && units.has(unit) && fabric === row.fabric).length
  const over = alone ? made - needed : 0
  return `${made} triangles${over > 0 ? `, ${inWords(over, 'more', 'more')} than you need` : ''}`
}

/** Says what is cut larger, so that nobody takes the size for a mistake. */
function larger(row: CutRow, context: BookletContext): string {
  const by = context.variantOf.get(row.for[0] ?? '')?.row.oversize
  return by === undefined || !isTrimmedLater(row) ? '' : `, ${sayOne(by, context.unit)} larger than needed, for trimming`
}

const isTrimmedLater = ({ method, then }: CutRow): boolean => then !== 'none' || !['plain', 'corner-flip', 'strip-set'].includes(method)

/** A free patch may be a rectangle after all: it needs no template. */
function shapeOf({ shape, size, for: units }: CutRow, context: BookletContext): CutRow['shape'] {
  if (shape !== 'polygon') return shape
  const own = new Set(units)
  const boxes = [...context.patches.values()].filter(({ unit, name }) => name === 'patch' && unit !== null && own.has(unit))
  if (boxes.length === 0 || !boxes.every(({ corners }) => isUprightBox(corners))) return shape
  return size[0] === size[1] ? 'square' : 'rectangle'
}

/** Halves of a rectangle are of one hand: which corners the cut joins is not free. */
function slant(row: CutRow, context: BookletContext): string {
  const hand = handOf(row, context)
  if (hand === null) return ''
  const way = hand === 'right' ? 'from bottom left to top right' : 'from top left to bottom right'
  return `, right side up with the long side across, ${way}`
}

function handOf(row: CutRow, context: BookletContext): 'left' | 'right' | null {
  const [first] = row.for
  return first === undefined ? null : (context.variantOf.get(first)?.row.hand ?? null)
}

/** What the pieces are for, by the letters of the layout picture: `B` stands for `B1` and `B2`. */
function purpose(row: CutRow, context: BookletContext): string {
  if (row.for.length === 0)
    return isBorderCorner(row, context.report)
      ? 'for the corners of the borders'
      : `for the borders: cut ${sayExact(Math.min(...row.size), context.unit)} wide; trim to length when you get there`
  const letters = lettersFor(row, context)
  const kinds = [...new Set(unitRowsFor(row, context).map((unit) => unitRowWords(unit, 2)))]
  return letters.length === 0 ? 'for the units' : `for ${letters.length > MOST_LETTERS ? kinds.join(' and ') : listed(letters)}`
}

/** Above as many letters pieces go by the kinds of their units. */
const MOST_LETTERS = 4

const lettersFor = (row: CutRow, context: BookletContext): string[] => unitRowsFor(row, context).map((one) => context.letterOf(one))

function unitRowsFor(row: CutRow, context: BookletContext): UnitRow[] {
  const wanted = new Set(row.for)
  return [...new Set(context.variants.filter(({ units }) => units.some((id) => wanted.has(id))).map((variant) => variant.row))]
}

function stripPicture({ strips, fabric }: FabricRow, context: BookletContext) {
  const { report, unit } = context
  const longest = Math.max(report.cloth.usableWidth, ...strips.flatMap(({ pieces }) => pieces.flatMap(({ size }) => size)))
  const picture = cuttingDiagram(strips, longest)
  const sketch = new Sketch()
  const known = grouped(
    report.cut.filter((row) => row.fabric === fabric),
    ({ size }) => sizeKey(size),
  )
  for (const strip of picture.strips) {
    sketch.box(strip.x, strip.y, strip.width, strip.height, 'thin')
    for (const piece of strip.pieces) {
      const corners = boxAt(piece.x, piece.y, piece.width, piece.height)
      sketch.area(corners, fabric, 'right', 'cut')
      for (const line of laterCuts(known.get(sizeKey(piece.size)) ?? [], corners, context)) sketch.line(line, 'cut')
    }
  }
  const said = picture.strips.map(({ height, pieces }) => `one ${sayOne(height, unit)} wide with ${count(pieces.length, 'piece')}`)
  const naming = said.length > 6 ? `${said.length} strips with their pieces` : capital(listed(said))
  return sketch.drawing(`Strips of ${context.fabric(fabric)} and the pieces cut from them. ${naming}.`, longest / 100)
}

const sizeKey = (size: readonly number[]): string => [...size].sort((a, b) => a - b).join()

/** From corner to corner, where all pieces of a size are cut alike. */
function laterCuts(rows: readonly CutRow[], corners: readonly Spot[], context: BookletContext): Spot[][] {
  const ways = new Set(rows.map((row) => `${row.then} ${handOf(row, context)}`))
  const [row] = rows
  if (row === undefined || ways.size !== 1 || row.then === 'none') return []
  const [a, b, c, d] = corners as [Spot, Spot, Spot, Spot]
  if (row.then === 'quarter')
    return [
      [a, c],
      [b, d],
    ]
  // A piece that stands in its strip is the same rectangle turned, so its cut leans the other way.
  const stands = d[1] - a[1] > b[0] - a[0]
  return [(handOf(row, context) === 'right') === stands ? [a, c] : [b, d]]
}
