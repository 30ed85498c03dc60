/**
 * The rows of the cut list as a maker reads them: the short side first, and what is cut to the same size added up.
 *
 * In      a report.
 * Out     one entry for each different piece of a fabric, the largest first; sizes cut, in the measure's unit.
 * Source  common practice, no source: width before length.
 */
import { shortSideFirst } from '../exact/lengths.ts'
import type { Method } from '../values/block.ts'
import { type Message, message } from '../values/messages.ts'
import type { CutRow, Findings, UnitRow } from '../values/report.ts'

export interface ListedPiece extends CutRow {
  /** Of the half rectangles that the piece is cut into. */
  readonly hand: 'left' | 'right' | null
  readonly methods: readonly Method[]
  readonly purposes: readonly Message[]
  /** The rows of the report's units that need it. */
  readonly units: readonly UnitRow[]
  /** A strip of a border: its length is settled when the block has been measured. */
  readonly isBorderStrip: boolean
}

/** What of a report the pieces come from. */
type CutFindings = Pick<Findings, 'cut' | 'units' | 'patches' | 'measure'>

/** The pieces to cut. */
export function cutPieces(report: CutFindings): ListedPiece[] {
  const pieces = new Map<string, ListedPiece>()
  for (const row of report.cut) {
    const piece = pieceOf(row, report)
    const borders = row.for.length === 0 ? (piece.isBorderStrip ? 'border' : 'corner') : ''
    const key = [row.fabric, row.shape, ...piece.size, row.then, piece.hand, row.fixed, borders].join('|')
    const other = pieces.get(key)
    pieces.set(key, other === undefined ? piece : together(other, piece))
  }
  return [...pieces.values()].sort((a, b) => area(b) - area(a))
}

const area = ({ size: [width, length] }: CutRow): number => width * length

function pieceOf(row: CutRow, report: CutFindings): ListedPiece {
  const wanted = new Set(row.for)
  const units = report.units.filter((unit) => unit.for.some((id) => wanted.has(id)))
  const hand = row.then === 'halve' && row.shape === 'rectangle' ? (units[0]?.hand ?? null) : null
  const isBorderStrip = row.for.length === 0 && !isBorderCorner(row, report)
  const size = row.fixed ? row.size : shortSideFirst(row.size)
  return { ...row, size, hand, methods: [row.method], purposes: [cutFor(row, report)], units, isBorderStrip }
}

const together = (one: ListedPiece, other: ListedPiece): ListedPiece => ({
  ...one,
  count: one.count + other.count,
  for: [...one.for, ...other.for],
  methods: [...new Set([...one.methods, ...other.methods])],
  purposes: [...one.purposes, ...other.purposes],
  units: [...new Set([...one.units, ...other.units])],
})

/** Whether a row for borders cuts their corner squares: a strip may be a square too, beside a narrow block. */
export const isBorderCorner = ({ shape, fabric }: CutRow, { patches }: Pick<Findings, 'patches'>): boolean =>
  shape === 'square' && patches.some((patch) => patch.unit === null && patch.fabric === fabric && BORDER_CORNERS.has(patch.name))

const BORDER_CORNERS: ReadonlySet<string> = new Set(['topLeft', 'topRight', 'bottomRight', 'bottomLeft'])

/** `geese, four at a time`; `borders`. */
function cutFor(row: CutRow, report: CutFindings): Message {
  if (row.for.length === 0) return message(isBorderCorner(row, report) ? 'cut-for-border-corners' : 'cut-for-borders')
  const wanted = new Set(row.for)
  const units = report.units.filter((unit) => unit.for.some((id) => wanted.has(id)))
  const kinds = [...new Set(units.map(({ kind, finished: [w, h] }) => (kind === 'square' && w !== h ? ('rectangle' as const) : kind)))]
  const larger = [...new Set(units.flatMap(({ oversize }) => oversize ?? []))]
  return message('cut-for-units', { kinds, method: row.method, larger, measure: report.measure.unit })
}
