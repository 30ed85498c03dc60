/**
 * The pieces each method cuts.
 *
 * In      matching units with their row, the seam rule, the usable width.
 * Out     pieces, each with the share needed: a triangle is half or a quarter of a square until all shares are added up.
 * Source  geese [S3][S5][S6], triangles [S37][S31][S24], hourglasses [S37], corners [S57].
 */
import type { Method, Unit } from '../values/block.ts'
import { EPSILON } from '../exact/lengths.ts'
import { parseRational, toNumber } from '../exact/rational.ts'
import type { CutRow, UnitRow } from '../values/report.ts'
import { stripSets, eightAtATime, fourAtATime, geese, halfRectangle, halved, onPoint, quartered, type Rule, unfinished } from './sizes/cutSize.ts'
import type { MatchingUnits } from './matchingUnits.ts'

export interface Piece extends Omit<CutRow, 'count'> {
  /** How many are needed, before `then`: a half or a quarter for a triangle cut from a square. */
  readonly share: number
  /** Halves of one hand cannot be cut from rectangles of the other. */
  readonly hand?: string
}

type Cutter = (matching: MatchingUnits, row: UnitRow, rule: Rule, width: number) => Piece[]

/** The pieces to cut for units that are alike; sizes are cut sizes in the measure's unit. */
export const piecesOf: Cutter = (matching, row, rule, width) => (CUTTERS[matching.first.kind] as Cutter)(matching, row, rule, width)

function make(
  matching: MatchingUnits,
  fabric: string | undefined,
  shape: Piece['shape'],
  size: readonly [number, number],
  share: number,
  then: Piece['then'] = 'none',
  hand?: string,
): Piece {
  const units = matching.units.map(({ id }) => id)
  return { fabric: fabric as string, shape, size, share, then, method: matching.method, for: units, ...(hand === undefined ? {} : { hand }) }
}

const square = (matching: MatchingUnits, fabric: string | undefined, side: number, share: number): Piece =>
  make(matching, fabric, 'square', [side, side], share)
const triangle = (matching: MatchingUnits, fabric: string | undefined, side: number, share: number, then: 'halve' | 'quarter'): Piece =>
  make(matching, fabric, 'square', [side, side], share, then)

function rectangle(matching: MatchingUnits, fabric: string | undefined, w: number, h: number, share: number): Piece {
  return make(matching, fabric, squareOrRectangle([w, h]), [w, h], share)
}

/** Whether a piece is a square or a rectangle, in any unit of measure: rounding of doubles does not count as a difference. */
export const squareOrRectangle = ([width, height]: readonly [number, number]): 'square' | 'rectangle' =>
  Math.abs(width - height) < EPSILON ? 'square' : 'rectangle'

const CORNERS = ['topLeft', 'topRight', 'bottomRight', 'bottomLeft'] as const

const squareUnit: Cutter = (matching, row, rule) => [
  rectangle(matching, matching.first.fabrics.patch, unfinished(row.finished[0], rule), unfinished(row.finished[1], rule), row.count),
]

const SQUARES: Partial<Record<Method, readonly [number, (finished: number, rule: Rule) => number]>> = {
  'hst-2': [2, halved],
  'hst-4': [4, fourAtATime],
  'hst-8': [8, eightAtATime],
}

const hst: Cutter = (matching, row, rule) => {
  const { upper, lower } = matching.first.fabrics
  const squares = SQUARES[matching.method]
  if (squares === undefined) return [upper, lower].map((fabric) => triangle(matching, fabric, halved(row.finished[0], rule), row.count / 2, 'halve'))
  const [each, size] = squares
  return [upper, lower].map((fabric) => square(matching, fabric, size(row.finished[0], rule), Math.ceil(row.count / each)))
}

const hourglass: Cutter = (matching, row, rule) => {
  const { top, right, bottom, left } = matching.first.fabrics
  const side = quartered(row.finished[0], rule)
  if (matching.method === 'qst-2') return [top, right].map((fabric) => square(matching, fabric, side, Math.ceil(row.count / 2)))
  return [top, right, bottom, left].map((fabric) => triangle(matching, fabric, side, row.count / 4, 'quarter'))
}

const goose: Cutter = (matching, row, rule) => {
  const [w, h] = row.finished
  const { goose: body, leftWing, rightWing } = matching.first.fabrics
  if (matching.method === 'geese-4') {
    const { large, small } = geese(w, h, rule)
    const corners = row.batches.flatMap((batch) => batch.corners)
    return [square(matching, body, large, row.batches.length), ...corners.map((fabric) => square(matching, fabric, small, 1))]
  }
  if (matching.method === 'corner-flip')
    return [
      rectangle(matching, body, unfinished(w, rule), unfinished(h, rule), row.count),
      ...[leftWing, rightWing].map((fabric) => square(matching, fabric, unfinished(h, rule), row.count)),
    ]
  return [
    triangle(matching, body, quartered(w, rule), row.count / 4, 'quarter'),
    ...[leftWing, rightWing].map((fabric) => triangle(matching, fabric, halved(h, rule), row.count / 2, 'halve')),
  ]
}

const diamond: Cutter = (matching, row, rule) => {
  const [side] = row.finished
  const { fabrics } = matching.first
  if (matching.method === 'corner-flip')
    return [
      square(matching, fabrics.centre, unfinished(side, rule), row.count),
      ...CORNERS.map((corner) => square(matching, fabrics[corner], unfinished(side / 2, rule), row.count)),
    ]
  return [
    square(matching, fabrics.centre, onPoint(side, rule), row.count),
    ...CORNERS.map((corner) => triangle(matching, fabrics[corner], halved(side / 2, rule), row.count / 2, 'halve')),
  ]
}

const cornered: Cutter = (matching, row, rule) => {
  const [w, h] = row.finished
  const { fabrics } = matching.first
  const leg = legOf(matching.first, row)
  const corners = CORNERS.filter((corner) => Object.hasOwn(fabrics, corner))
  const [wide, high] = [unfinished(w, rule), unfinished(h, rule)]
  if (matching.method === 'corner-flip')
    return [
      rectangle(matching, fabrics.centre, wide, high, row.count),
      ...corners.map((corner) => square(matching, fabrics[corner], unfinished(leg, rule), row.count)),
    ]
  const centre =
    corners.length === 0
      ? rectangle(matching, fabrics.centre, wide, high, row.count)
      : make(matching, fabrics.centre, 'polygon', [wide, high], row.count)
  return [centre, ...corners.map((corner) => triangle(matching, fabrics[corner], halved(leg, rule), row.count / 2, 'halve'))]
}

/** The leg of clipped corners, finished, in the measure's unit. */
function legOf(unit: Unit, row: UnitRow): number {
  if (unit.kind === 'polygon') return 0
  const cells = toNumber(parseRational(unit.corner ?? 0) ?? { n: 0n, d: 1n })
  const wide = toNumber(parseRational((unit.turn ?? 0) % 2 === 0 ? unit.size[0] : unit.size[1]) ?? { n: 1n, d: 1n })
  return (cells * row.finished[0]) / wide
}

const strips: Cutter = (matching, row, rule, width) => {
  const { fabrics } = matching.first
  const names = Object.keys(fabrics).map((_, index) => `strip${index + 1}`)
  const across = unfinished(row.finished[0] / names.length, rule)
  const high = unfinished(row.finished[1], rule)
  if (matching.method !== 'strip-set') return names.map((name) => rectangle(matching, fabrics[name], across, high, row.count))
  const { sets, length } = stripSets(row.count, row.finished[1], rule, width)
  return names.map((name) => rectangle(matching, fabrics[name], length, across, sets))
}

const halfRectangleUnit: Cutter = (matching, row, rule) => {
  const { upper, lower } = matching.first.fabrics
  const [w, h] = row.finished
  const size = halfRectangle(w, h, rule)
  const across = w === h ? ([size[0], size[0]] as const) : size
  return [upper, lower].map((fabric) =>
    make(matching, fabric, across[0] === across[1] ? 'square' : 'rectangle', across, row.count / 2, 'halve', row.hand ?? undefined),
  )
}

const polygon: Cutter = (matching, row, rule) => [
  make(matching, matching.first.fabrics.patch, 'polygon', [unfinished(row.finished[0], rule), unfinished(row.finished[1], rule)], row.count),
]

const CUTTERS: Readonly<Record<Unit['kind'], Cutter>> = {
  square: squareUnit,
  hst,
  hourglass,
  goose,
  diamond,
  cornered,
  strips,
  'half-rectangle': halfRectangleUnit,
  polygon,
}
