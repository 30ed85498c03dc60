/**
 * The pieces each method cuts.
 *
 * In      alike units with their row, the seam rule, the usable width.
 * Out     pieces with the share of one that is needed: a triangle is half a square or a quarter of one, until all shares are added up.
 * Source  geese [S3][S5][S6], triangles [S37][S31][S24], hourglasses [S37], corners [S57].
 */
import type { Method, Unit } from '../values/block.ts'
import { parseRational, toNumber } from '../exact/rational.ts'
import type { CutRow, UnitRow } from '../values/report.ts'
import { crossCuts, eightAtATime, fourAtATime, geese, halfRectangle, halved, onPoint, quartered, type Rule, unfinished } from './sizes/cutSize.ts'
import type { Alike } from './matchingUnits.ts'

export interface Piece extends Omit<CutRow, 'count'> {
  /** How many are needed, in parts of one before `then`. */
  readonly share: number
  /** Halves of one hand cannot be cut from rectangles of the other. */
  readonly hand?: string
}

type Cutter = (alike: Alike, row: UnitRow, rule: Rule, width: number) => Piece[]

export const piecesOf: Cutter = (alike, row, rule, width) => (CUTTERS[alike.first.kind] as Cutter)(alike, row, rule, width)

function make(
  alike: Alike,
  fabric: string | undefined,
  shape: Piece['shape'],
  size: readonly [number, number],
  share: number,
  then: Piece['then'] = 'none',
  hand?: string,
): Piece {
  const units = alike.units.map(({ id }) => id)
  return { fabric: fabric as string, shape, size, share, then, method: alike.method, for: units, ...(hand === undefined ? {} : { hand }) }
}

const square = (alike: Alike, fabric: string | undefined, side: number, share: number): Piece => make(alike, fabric, 'square', [side, side], share)
const triangle = (alike: Alike, fabric: string | undefined, side: number, share: number, then: 'halve' | 'quarter'): Piece =>
  make(alike, fabric, 'square', [side, side], share, then)

function rectangle(alike: Alike, fabric: string | undefined, w: number, h: number, share: number): Piece {
  return make(alike, fabric, squareOrRectangle([w, h]), [w, h], share)
}

/** What a piece of this size is called, in any unit: its sides may differ by what doubles lose. */
export const squareOrRectangle = ([width, height]: readonly [number, number]): 'square' | 'rectangle' =>
  Math.abs(width - height) < 1e-9 ? 'square' : 'rectangle'

const CORNERS = ['topLeft', 'topRight', 'bottomRight', 'bottomLeft'] as const

const squareUnit: Cutter = (alike, row, rule) => [
  rectangle(alike, alike.first.fabrics.patch, unfinished(row.finished[0], rule), unfinished(row.finished[1], rule), row.count),
]

const SQUARES: Partial<Record<Method, readonly [number, (finished: number, rule: Rule) => number]>> = {
  'hst-2': [2, halved],
  'hst-4': [4, fourAtATime],
  'hst-8': [8, eightAtATime],
}

const hst: Cutter = (alike, row, rule) => {
  const { upper, lower } = alike.first.fabrics
  const squares = SQUARES[alike.method]
  if (squares === undefined) return [upper, lower].map((fabric) => triangle(alike, fabric, halved(row.finished[0], rule), row.count / 2, 'halve'))
  const [each, size] = squares
  return [upper, lower].map((fabric) => square(alike, fabric, size(row.finished[0], rule), Math.ceil(row.count / each)))
}

const hourglass: Cutter = (alike, row, rule) => {
  const { top, right, bottom, left } = alike.first.fabrics
  const side = quartered(row.finished[0], rule)
  if (alike.method === 'qst-2') return [top, right].map((fabric) => square(alike, fabric, side, Math.ceil(row.count / 2)))
  return [top, right, bottom, left].map((fabric) => triangle(alike, fabric, side, row.count / 4, 'quarter'))
}

const goose: Cutter = (alike, row, rule) => {
  const [w, h] = row.finished
  const { goose: body, leftWing, rightWing } = alike.first.fabrics
  if (alike.method === 'geese-4') {
    const { large, small } = geese(w, h, rule)
    const corners = row.batches.flatMap((batch) => batch.corners)
    return [square(alike, body, large, row.batches.length), ...corners.map((fabric) => square(alike, fabric, small, 1))]
  }
  if (alike.method === 'corner-flip')
    return [
      rectangle(alike, body, unfinished(w, rule), unfinished(h, rule), row.count),
      ...[leftWing, rightWing].map((fabric) => square(alike, fabric, unfinished(h, rule), row.count)),
    ]
  return [
    triangle(alike, body, quartered(w, rule), row.count / 4, 'quarter'),
    ...[leftWing, rightWing].map((fabric) => triangle(alike, fabric, halved(h, rule), row.count / 2, 'halve')),
  ]
}

const diamond: Cutter = (alike, row, rule) => {
  const [side] = row.finished
  const { fabrics } = alike.first
  if (alike.method === 'corner-flip')
    return [
      square(alike, fabrics.centre, unfinished(side, rule), row.count),
      ...CORNERS.map((corner) => square(alike, fabrics[corner], unfinished(side / 2, rule), row.count)),
    ]
  return [
    square(alike, fabrics.centre, onPoint(side, rule), row.count),
    ...CORNERS.map((corner) => triangle(alike, fabrics[corner], halved(side / 2, rule), row.count / 2, 'halve')),
  ]
}

const cornered: Cutter = (alike, row, rule) => {
  const [w, h] = row.finished
  const { fabrics } = alike.first
  const leg = legOf(alike.first, row)
  const corners = CORNERS.filter((corner) => Object.hasOwn(fabrics, corner))
  const [wide, high] = [unfinished(w, rule), unfinished(h, rule)]
  if (alike.method === 'corner-flip')
    return [
      rectangle(alike, fabrics.centre, wide, high, row.count),
      ...corners.map((corner) => square(alike, fabrics[corner], unfinished(leg, rule), row.count)),
    ]
  const centre =
    corners.length === 0 ? rectangle(alike, fabrics.centre, wide, high, row.count) : make(alike, fabrics.centre, 'polygon', [wide, high], row.count)
  return [centre, ...corners.map((corner) => triangle(alike, fabrics[corner], halved(leg, rule), row.count / 2, 'halve'))]
}

/** The leg of clipped corners, finished, in the measure's unit. */
function legOf(unit: Unit, row: UnitRow): number {
  if (unit.kind === 'polygon') return 0
  const cells = toNumber(parseRational(unit.corner ?? 0) ?? { n: 0n, d: 1n })
  const wide = toNumber(parseRational((unit.turn ?? 0) % 2 === 0 ? unit.size[0] : unit.size[1]) ?? { n: 1n, d: 1n })
  return (cells * row.finished[0]) / wide
}

const strips: Cutter = (alike, row, rule, width) => {
  const { fabrics } = alike.first
  const names = Object.keys(fabrics).map((_, index) => `strip${index + 1}`)
  const across = unfinished(row.finished[0] / names.length, rule)
  const high = unfinished(row.finished[1], rule)
  if (alike.method !== 'strip-set') return names.map((name) => rectangle(alike, fabrics[name], across, high, row.count))
  const each = crossCuts(row.finished[1], rule, width)
  const sets = Math.ceil(row.count / each)
  const length = Math.min(each, row.count) * high
  return names.map((name) => rectangle(alike, fabrics[name], length, across, sets))
}

const halfRectangleUnit: Cutter = (alike, row, rule) => {
  const { upper, lower } = alike.first.fabrics
  const [w, h] = row.finished
  const size = halfRectangle(w, h, rule)
  const across = w === h ? ([size[0], size[0]] as const) : size
  return [upper, lower].map((fabric) =>
    make(alike, fabric, across[0] === across[1] ? 'square' : 'rectangle', across, row.count / 2, 'halve', row.hand ?? undefined),
  )
}

const polygon: Cutter = (alike, row, rule) => [
  make(alike, alike.first.fabrics.patch, 'polygon', [unfinished(row.finished[0], rule), unfinished(row.finished[1], rule)], row.count),
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
