/**
 * What a maker calls each piece on the table, and where it lies.
 *
 * In      a report.
 * Out     for the id of a patch or a join: a name for the piece, and its middle; built up join by join, each in one look.
 */
import { parseRational, toNumber } from '../exact/rational.ts'
import type { Kind, Position } from '../values/block.ts'
import type { Join, Findings, ReportPoint, Stage } from '../values/report.ts'

/** A name in its parts: each language says it in words of its own. */
export interface PieceName {
  readonly type: 'unit' | 'border' | 'corner' | 'framed' | 'section' | 'row' | 'column' | 'block' | 'bordered'
  /** The unit's kind and id; the side of a border, or the corner of its square. */
  readonly kind?: Kind
  readonly id?: string
  /** The number of a row, column or section that is whole; of a border's corner squares. */
  readonly number?: number
  readonly soFar?: true
}

export interface SewnPiece {
  readonly called: PieceName
  /** The middle of its cloth, in cells. */
  readonly middle: readonly [number, number]
  readonly area: number
  /** It is part of a border, not yet sewn to the block. */
  readonly framing: boolean
}

/** A position of the report as a number, in cells. */
export const inCells = (position: Position): number => {
  const exact = parseRational(position)
  return exact === null ? 0 : toNumber(exact)
}

/** A point of the report as numbers, in cells. */
export const pointInCells = ([x, y]: ReportPoint): readonly [number, number] => [inCells(x), inCells(y)]

/** Every patch and every join of a report by its id, as the piece it is or makes. */
export function sewnPieces(report: Findings): ReadonlyMap<string, SewnPiece> {
  const kinds = new Map(report.units.flatMap((row) => row.for.map((id) => [id, row.kind] as const)))
  const pieces = new Map<string, SewnPiece>()
  for (const patch of report.patches) {
    const corners = patch.corners.map(pointInCells)
    const called = patch.unit === null ? borderName(patch.name) : unitName(patch.unit, kinds.get(patch.unit))
    pieces.set(patch.id, { called, middle: mean(corners), area: patch.area, framing: patch.unit === null })
  }
  const usedBy = new Map(report.joins.flatMap((join) => join.sides.map((side) => [side, join] as const)))
  const counter = new Map<Stage, number>()
  for (const join of report.joins) {
    const [a, b] = join.sides.map((side) => pieces.get(side))
    if (a === undefined || b === undefined) continue
    const area = a.area + b.area
    const middle = [0, 1].map((axis) => ((a.middle[axis] ?? 0) * a.area + (b.middle[axis] ?? 0) * b.area) / area) as [number, number]
    const framing = a.framing && b.framing
    const called = framing ? framedName(a.called, b.called) : pieceName(join, usedBy.get(join.id), a, counter)
    pieces.set(join.id, { called, middle, area, framing })
  }
  return pieces
}

const STRIPS = ['left', 'right', 'top', 'bottom']

const borderName = (id: string): PieceName => ({ type: STRIPS.includes(id) ? 'border' : 'corner', id })
const unitName = (id: string, kind: Kind | undefined): PieceName => ({ type: 'unit', id, ...(kind === undefined ? {} : { kind }) })

/** A strip and one corner square, then both. */
const framedName = (a: PieceName, b: PieceName): PieceName =>
  a.type === 'framed' ? { ...a, number: 2 } : { type: 'framed', id: (a.type === 'border' ? a : b).id ?? '', number: 1 }

/** A row gets its number when it is whole; until then it is "the row so far". */
function pieceName(join: Join, next: Join | undefined, first: SewnPiece, counter: Map<Stage, number>): PieceName {
  const { stage } = join
  if (stage === 'unit') return first.called
  if (stage === 'block') return next === undefined || next.stage === 'border' ? { type: 'block' } : { type: 'block', soFar: true }
  if (stage === 'border') return { type: 'bordered' }
  if (next?.stage === stage && next.sides[0] === join.id) return { type: stage, soFar: true }
  const number = (counter.get(stage) ?? 0) + 1
  counter.set(stage, number)
  return { type: stage, number }
}

function mean(corners: readonly (readonly [number, number])[]): readonly [number, number] {
  const sum = corners.reduce<[number, number]>(([x, y], [cx, cy]) => [x + cx, y + cy], [0, 0])
  return [sum[0] / corners.length, sum[1] / corners.length]
}

/** Where a seam's allowances go, on the table: from the right side, with the block the right way up. */
interface PressedTo {
  readonly toward: SewnPiece | undefined
  /** Both nothing where the seam bends. */
  readonly vertical: 'up' | 'down' | ''
  readonly sideways: 'left' | 'right' | ''
}

/** Seen from the right side: the piece that a seam would be pressed to on one side (0 or 1) of its join, and which way that lies. */
export function pressedTo(join: Join, side: 0 | 1, pieces: ReadonlyMap<string, SewnPiece>): PressedTo {
  const toward = pieces.get(join.sides[side])
  if (toward === undefined || join.kind === 'set-in') return { toward, vertical: '', sideways: '' }
  const [x, y] = pointInCells(join.from)
  const [endX, endY] = pointInCells(join.to)
  const way = Math.sign((endX - x) * (toward.middle[1] - y) - (endY - y) * (toward.middle[0] - x))
  const across = { x: -(endY - y) * way, y: (endX - x) * way }
  const upright = Math.abs(across.x) < Math.abs(across.y) / 4
  const level = Math.abs(across.y) < Math.abs(across.x) / 4
  return { toward, vertical: level ? '' : across.y < 0 ? 'up' : 'down', sideways: upright ? '' : across.x < 0 ? 'left' : 'right' }
}
