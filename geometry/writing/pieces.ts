/**
 * What a maker calls each piece on the table, and where it lies.
 *
 * In      a report.
 * Out     for the id of a patch or a join: a name for the piece, and its middle; built up join by join, each in one look.
 */
import { parseRational, toNumber } from '../exact/rational.ts'
import type { Position } from '../block/values.ts'
import type { Join, Findings, ReportPoint, Stage } from '../values.ts'
import { kindWords, patchWords } from './say.ts'

export interface Piece {
  readonly name: string
  /** The middle of its cloth, in cells. */
  readonly middle: readonly [number, number]
  readonly area: number
  /** It is part of a border, not yet sewn to the block. */
  readonly framing: boolean
}

export const cells = (position: Position): number => {
  const exact = parseRational(position)
  return exact === null ? 0 : toNumber(exact)
}

export const point = ([x, y]: ReportPoint): readonly [number, number] => [cells(x), cells(y)]

export function piecesOf(report: Findings): ReadonlyMap<string, Piece> {
  const units = unitNames(report)
  const pieces = new Map<string, Piece>()
  for (const patch of report.patches) {
    const corners = patch.corners.map(point)
    const name = patch.unit === null ? borderName(patch.name) : (units.get(patch.unit) ?? patch.unit)
    pieces.set(patch.id, { name, middle: mean(corners), area: patch.area, framing: patch.unit === null })
  }
  const usedBy = new Map(report.joins.flatMap((join) => join.sides.map((side) => [side, join] as const)))
  const counter = new Map<Stage, number>()
  for (const join of report.joins) {
    const [a, b] = join.sides.map((side) => pieces.get(side))
    if (a === undefined || b === undefined) continue
    const area = a.area + b.area
    const middle = [0, 1].map((axis) => ((a.middle[axis] ?? 0) * a.area + (b.middle[axis] ?? 0) * b.area) / area) as [number, number]
    const framing = a.framing && b.framing
    const name = framing ? framedName(a, b) : pieceName(join, usedBy.get(join.id), a, counter)
    pieces.set(join.id, { name, middle, area, framing })
  }
  return pieces
}

const STRIPS = ['left', 'right', 'top', 'bottom']

/** `top border`, or `top left corner square`. */
const borderName = (name: string): string => (STRIPS.includes(name) ? `${name} border` : `${patchWords(name)} corner square`)

/** A strip and one corner square, then both. */
const framedName = (a: Piece, b: Piece): string =>
  a.name.endsWith('one corner square') ? a.name.replace('one corner square', 'its corner squares') : `${b.name} with one corner square`

/** A row gets its number when it is whole; until then it is "the row so far". */
function pieceName(join: Join, next: Join | undefined, first: Piece, counter: Map<Stage, number>): string {
  if (join.stage === 'unit') return first.name
  if (join.stage === 'block') return next === undefined || next.stage === 'border' ? 'the block' : 'the block so far'
  if (join.stage === 'border') return 'the block with its borders so far'
  const word = join.stage === 'section' ? 'section' : join.stage
  if (next?.stage === join.stage && next.sides[0] === join.id) return `the ${word} so far`
  const number = (counter.get(join.stage) ?? 0) + 1
  counter.set(join.stage, number)
  return `${word} ${number}`
}

function unitNames(report: Findings): ReadonlyMap<string, string> {
  return new Map(report.units.flatMap((row) => row.for.map((id) => [id, `${kindWords(row.kind, 1)} ${id}`] as const)))
}

function mean(corners: readonly (readonly [number, number])[]): readonly [number, number] {
  const sum = corners.reduce<[number, number]>(([x, y], [cx, cy]) => [x + cx, y + cy], [0, 0])
  return [sum[0] / corners.length, sum[1] / corners.length]
}

/** Which way on the table a seam's allowances go, as seen from the right side with the block the right way up. */
export function wayOf(join: Join, pieces: ReadonlyMap<string, Piece>): string {
  if (join.press.toward === 'open') return 'open'
  const toward = pieces.get(join.sides[join.press.toward])
  if (toward === undefined || join.kind === 'set-in') return `toward ${toward?.name ?? 'one side'}`
  const [x, y] = point(join.from)
  const [endX, endY] = point(join.to)
  const side = Math.sign((endX - x) * (toward.middle[1] - y) - (endY - y) * (toward.middle[0] - x))
  const across = { x: -(endY - y) * side, y: (endX - x) * side }
  const upright = Math.abs(across.x) < Math.abs(across.y) / 4
  const level = Math.abs(across.y) < Math.abs(across.x) / 4
  const vertical = level ? '' : across.y < 0 ? 'up' : 'down'
  const sideways = upright ? '' : across.x < 0 ? 'left' : 'right'
  return `${[vertical, sideways].filter((word) => word !== '').join(' and ')}, toward ${toward.name}`
}
