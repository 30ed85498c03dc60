/**
 * Says where something lies in the block, as one would point at it: `2nd column, 1st row`.
 *
 * In      a point or the id of a unit of the block; lengths in cells from the block's top left corner, and how many columns and rows the block has.
 * Out     a few words in the maker's language; columns and rows are counted from 1.
 */
import { type Block, message, unitPlaces } from '../../geometry/index.ts'
import type { Point } from './shapes.ts'
import { currentLanguage, t, translate } from '../words/words.ts'

type Grid = Pick<Block['grid'], 'columns' | 'rows'>

/** A point on a line of the grid lies between two columns or rows, or on an edge of the block. */
export function placeWords([x, y]: Point, { columns, rows }: Grid): string {
  return `${columnWords(x, columns)}, ${rowWords(y, rows)}`
}

/** The unit as it is called in a sentence: `the top goose`. */
export const unitInWords = (block: Block, id: string): string => translate(message('unit', { place: unitPlaces(block)(id) }))

function columnWords(x: number, columns: number): string {
  if (!isWhole(x)) return t('{nth} column', { nth: nth(Math.floor(x) + 1) })
  const a = Math.round(x)
  if (a <= 0) return t('left edge')
  return a >= columns ? t('right edge') : t('between columns {a} and {b}', { a, b: a + 1 })
}

function rowWords(y: number, rows: number): string {
  if (!isWhole(y)) return t('{nth} row', { nth: nth(Math.floor(y) + 1) })
  const a = Math.round(y)
  if (a <= 0) return t('top edge')
  return a >= rows ? t('bottom edge') : t('between rows {a} and {b}', { a, b: a + 1 })
}

/** Closer to a line of the grid than anything is laid beside it. */
const CLOSE = 1e-6
const isWhole = (place: number): boolean => Math.abs(place - Math.round(place)) < CLOSE

const ENDINGS: Readonly<Record<string, string>> = { one: 'st', two: 'nd', few: 'rd' }
const ENGLISH = new Intl.PluralRules('en', { type: 'ordinal' })

/** `1st`, `2nd`; in German `1.`, `2.` */
const nth = (number: number): string => `${number}${currentLanguage() === 'de' ? '.' : (ENDINGS[ENGLISH.select(number)] ?? 'th')}`
