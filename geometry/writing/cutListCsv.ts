/**
 * The pieces to cut as a table for a spreadsheet.
 *
 * In      a report and the block it is about; which form the spreadsheet reads, and the words of its language.
 * Out     one line for each different piece: sizes as a ruler shows them and exact, in the measure's unit; the letter of the booklet's picture.
 */
import { sayLength } from '../exact/lengths.ts'
import type { Block } from '../values/block.ts'
import type { Findings } from '../values/report.ts'
import { say } from '../words/words.ts'
import { csv } from './csv.ts'
import { cutPieces } from './cutPieces.ts'
import { namesOf } from './cutListText.ts'
import { letterAt } from './phrases.ts'
import { type TableForm, tableWords } from './tableWords.ts'

/** The pieces to cut as a table. */
export function cutListCsv(report: Findings, block: Block, { ids = false, german }: TableForm = {}): string {
  const named = namesOf(block)
  const { unit } = report.measure
  const words = tableWords({ german })
  const ruler = (length: number): string => (german === undefined ? sayLength(length, unit) : sayLength(length, unit).replace('.', ','))
  const rows = cutPieces(report).map((piece) => [
    named(piece.fabric),
    piece.units.map((row) => letterAt(report.units.indexOf(row))).join(' '),
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
