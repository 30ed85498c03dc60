/**
 * The pieces to cut as a table for a spreadsheet.
 *
 * In      a report and the block it is about; which form the spreadsheet reads, and the words of its language.
 * Out     one line for each different piece: sizes as a ruler shows them and exact, in the measure's unit; the letter of the booklet's picture.
 */
import { sayLength } from '../exact/lengths.ts'
import type { Block, MeasureUnit } from '../values/block.ts'
import type { Findings, UnitRow } from '../values/report.ts'
import { say } from '../words/words.ts'
import { csv } from './csv.ts'
import { cutPieces, type ListedPiece } from './cutPieces.ts'
import { namesOf } from './cutListText.ts'
import { letterAt } from './phrases.ts'
import { type TableForm, tableWords } from './tableWords.ts'

/** The pieces to cut as a table. */
export const cutListCsv = (report: Findings, block: Block, form: TableForm = {}): string =>
  piecesCsv(cutPieces(report), report.units, report.measure.unit, namesOf(block), form)

/** Pieces as a table; `units` are the rows of units whose letters they name. */
export function piecesCsv(
  pieces: readonly ListedPiece[],
  units: readonly UnitRow[],
  unit: MeasureUnit,
  named: (fabric: string) => string,
  { ids = false, german }: TableForm = {},
): string {
  const words = tableWords({ german })
  const ruler = (length: number): string => (german === undefined ? sayLength(length, unit) : sayLength(length, unit).replace('.', ','))
  const rows = pieces.map((piece) => [
    named(piece.fabric),
    piece.units.map((row) => letterAt(units.indexOf(row))).join(' '),
    words.shapes[piece.shape],
    piece.count,
    ...piece.size.map(ruler),
    ...piece.size,
    unit,
    words.then[piece.then],
    piece.hand === null ? '' : words.hands[piece.hand],
    piece.for.length === 0 ? '' : piece.methods.map((method) => words.methods[method]).join(' / '),
    piece.purposes.map((purpose) => say(words.messages, purpose)).join(' / '),
    piece.fixed ? words.upright : '',
    ...(ids ? [piece.fabric, piece.for.join(' ')] : []),
  ])
  return csv([[...words.pieces, ...(ids ? ['fabric_id', 'unit_ids'] : [])], ...rows], german === undefined ? 'comma' : 'semicolon')
}
