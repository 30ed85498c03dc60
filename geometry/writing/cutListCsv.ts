/**
 * The pieces to cut as a table for a spreadsheet.
 *
 * In      a report and the block it is about; which form the spreadsheet reads, and the words of its language.
 * Out     one line for each different piece: sizes as a ruler shows them and exact, in the measure's unit; the letter of the booklet's picture.
 */
import { sayLength } from '../exact/lengths.ts'
import type { Block, Method } from '../values/block.ts'
import type { Findings } from '../values/report.ts'
import { english } from '../words/english.ts'
import { METHOD_WORDS } from '../words/englishPhrases.ts'
import { say, type Words } from '../words/words.ts'
import { csv } from './csv.ts'
import { cutPieces } from './cutPieces.ts'
import { namesOf } from './cutListText.ts'
import { letterAt } from './phrases.ts'

export interface TableForm {
  /** The ids of the block file too. */
  readonly ids?: boolean
  /** Semicolons and decimal commas, with German words. */
  readonly german?: Words
}

const ENGLISH = {
  head: [
    'fabric',
    'unit',
    'shape',
    'count',
    'width',
    'length',
    'width_decimal',
    'length_decimal',
    'measure',
    'then',
    'hand',
    'method',
    'for',
    'print',
  ],
  shapes: { square: 'square', rectangle: 'rectangle', triangle: 'triangle', polygon: 'template' },
  then: { none: '', halve: 'cut once from corner to corner', quarter: 'cut twice from corner to corner' },
  hands: { left: 'left', right: 'right' },
  methods: METHOD_WORDS,
  upright: 'upright',
} as const

const GERMAN = {
  head: [
    'Stoff',
    'Einheit',
    'Form',
    'Anzahl',
    'Breite',
    'Länge',
    'Breite dezimal',
    'Länge dezimal',
    'Maß',
    'danach',
    'Seite',
    'Methode',
    'wofür',
    'Druck',
  ],
  shapes: { square: 'Quadrat', rectangle: 'Rechteck', triangle: 'Dreieck', polygon: 'Schablone' },
  then: { none: '', halve: 'einmal diagonal schneiden', quarter: 'zweimal diagonal schneiden' },
  hands: { left: 'links', right: 'rechts' },
  methods: {
    plain: 'klassisch genäht',
    'hst-2': 'zwei auf einmal',
    'hst-4': 'vier auf einmal, Schrägkanten',
    'hst-8': 'acht auf einmal',
    'qst-2': 'zwei auf einmal',
    'geese-4': 'vier auf einmal',
    'corner-flip': 'nähen und umklappen',
    'strip-set': 'aus einem Streifensatz',
  } satisfies Record<Method, string>,
  upright: 'aufrecht',
} as const

/** The pieces to cut as a table. */
export function cutListCsv(report: Findings, block: Block, { ids = false, german }: TableForm = {}): string {
  const named = namesOf(block)
  const { unit } = report.measure
  const words = german === undefined ? ENGLISH : GERMAN
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
    piece.purposes.map((purpose) => say(german ?? english, purpose)).join(' / '),
    piece.fixed ? words.upright : '',
    ...(ids ? [piece.fabric, piece.for.join(' ')] : []),
  ])
  return csv([[...words.head, ...(ids ? ['fabric_id', 'unit_ids'] : [])], ...rows], german === undefined ? 'comma' : 'semicolon')
}
