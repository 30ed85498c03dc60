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
import { blocksOf } from './severalBlocks.ts'
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
    .map(({ id }, at) =>
      cutStep(
        context,
        id,
        places.filter(({ row }) => row.fabric === id),
        at === 0,
      ),
    )
}

interface Placed {
  readonly row: CutRow
  readonly place: number
}

function cutStep(context: BookletContext, fabric: string, rows: readonly Placed[], isFirst: boolean): DraftStep {
  const cloth = context.report.fabric.find((one) => one.fabric === fabric)
  const largest = [...rows].sort((a, b) => polygonArea(b.row) - polygonArea(a.row))
  return {
    keys: [`cut:${fabric}`],
    title: context.say.cut.title(context.fabric(fabric)),
    sentences: [
      ...(isFirst ? [context.say.cut.straighten] : []),
      ...(cloth === undefined ? [] : stripSentences(cloth, context)),
      ...largest.map(({ row }) => pieceSentence(row, context)),
    ],
    drawings: cloth === undefined || cloth.strips.length === 0 ? [] : [stripPicture(cloth, context)],
    cautions: ['blade'],
    count: 1,
    joins: [],
    units: [],
    cut: rows.map(({ place }) => place),
  }
}

const polygonArea = ({ size: [width, height] }: CutRow): number => width * height

/** `Cut 2 strips 3 1/2 in wide.` */
function stripSentences({ strips }: FabricRow, { say, one, report }: BookletContext): string[] {
  const said = (some: readonly Strip[]) =>
    [
      ...grouped(
        [...some].sort((a, b) => b.height - a.height),
        ({ height }) => String(height),
      ).values(),
    ].map((same) => ({ count: same.length, width: one((same[0] as Strip).height) }))
  const across = said(strips.filter((strip) => !isLong(strip, report.cloth.usableWidth)))
  const along = said(strips.filter((strip) => isLong(strip, report.cloth.usableWidth)))
  return [...(across.length === 0 ? [] : [say.cut.strips(across)]), ...(along.length === 0 ? [] : [say.cut.stripsAlong(along)])]
}

const isLong = ({ pieces }: Strip, width: number): boolean =>
  pieces.some(({ size }) => Math.min(...size) <= width && Math.max(...size) > width + 1e-9)

/** `Cut 4 squares 3 1/2 × 3 1/2 in, for A.` */
function pieceSentence(row: CutRow, context: BookletContext): string {
  const words = context.say.cut
  const shape = shapeOf(row, context)
  if (shape === 'polygon') {
    const letters = lettersFor(row, context)
    return words.withTemplate({ count: row.count, templates: letters.length > MOST_LETTERS ? [] : letters, box: context.size(row.size) })
  }
  const by = context.variantOf.get(row.for[0] ?? '')?.row.oversize
  return words.piece({
    count: row.count,
    shape,
    size: context.size(row.fixed ? row.size : shortSideFirst(row.size)),
    upright: row.fixed === true,
    purpose: purpose(row, context),
    larger: by === undefined || !isTrimmedLater(row) ? null : context.one(by),
    then: row.then,
    hand: row.then === 'halve' ? handOf(row, context) : null,
    ...triangles(row, context),
  })
}

/** How many triangles a row gives. Where squares of one fabric give two sorts of triangle to the same units, the surplus is not told. */
function triangles(row: CutRow, { report, patches, block }: BookletContext): { readonly triangles: number; readonly spare: number } {
  const [made, units] = [{ none: 0, halve: 2, quarter: 4 }[row.then] * row.count, new Set(row.for)]
  const alone = report.cut.every((other) => other === row || other.fabric !== row.fabric || !other.for.some((unit) => units.has(unit)))
  const ofBlock = [...patches.values()].filter(({ unit, fabric }) => unit !== null && units.has(unit) && fabric === row.fabric).length
  return { triangles: made, spare: alone ? Math.max(0, made - ofBlock * blocksOf(block)) : 0 }
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
function handOf(row: CutRow, context: BookletContext): 'left' | 'right' | null {
  const [first] = row.for
  return first === undefined ? null : (context.variantOf.get(first)?.row.hand ?? null)
}

/** What the pieces are for, by the letters of the layout picture: `B` stands for `B1` and `B2`. */
function purpose(row: CutRow, context: BookletContext): string {
  const { cut: words, kind } = context.say
  if (row.for.length === 0) return isBorderCorner(row, context.report) ? words.forCorners : words.forBorders(LONGER[context.unit])
  const letters = lettersFor(row, context)
  if (letters.length === 0) return words.forTheUnits
  const kinds = [...new Set(unitRowsFor(row, context).map((unit) => kind(unit, 2)))]
  return words.forUnits(letters.length > MOST_LETTERS ? kinds : letters)
}

/** What makers add to border strips until the block is measured. Common practice, no source. */
const LONGER = { in: '1 in', cm: '2 cm' } as const

/** Above as many letters pieces go by the kinds of their units. */
const MOST_LETTERS = 4

const lettersFor = (row: CutRow, context: BookletContext): string[] => unitRowsFor(row, context).map((one) => context.letterOf(one))

function unitRowsFor(row: CutRow, context: BookletContext): UnitRow[] {
  const wanted = new Set(row.for)
  return [...new Set(context.variants.filter(({ units }) => units.some((id) => wanted.has(id))).map((variant) => variant.row))]
}

function stripPicture({ strips, fabric }: FabricRow, context: BookletContext) {
  const { report } = context
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
  const said = picture.strips.map(({ height, pieces }) => ({ width: context.one(height), pieces: pieces.length }))
  return sketch.drawing(context.say.cut.picture(context.fabric(fabric), said), longest / 100)
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
