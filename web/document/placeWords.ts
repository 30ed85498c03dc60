/**
 * Says where something lies in the block, as one would point at it: `2nd column, 1st row`.
 *
 * In      a point or the id of a unit of the block; lengths in cells from the block's top left corner, and how many columns and rows the block has.
 * Out     a few words in the maker's language; columns and rows are counted from 1.
 */
import type { Block } from '../../geometry/index.ts'
import { type Point, rectOf } from './shapes.ts'
import { KIND_NAMES } from '../words/unitWords.ts'
import { currentLanguage, t } from '../words/words.ts'

type Grid = Pick<Block['grid'], 'columns' | 'rows'>

/** A point on a line of the grid lies between two columns or rows, or on an edge of the block. */
export function placeWords([x, y]: Point, { columns, rows }: Grid): string {
  return `${columnWords(x, x, columns)}, ${rowWords(y, y, rows)}`
}

/** What a unit is, and where: `Flying goose (columns 2 and 3, 1st row)`. */
export function unitAndPlace({ units, grid: { columns, rows } }: Block, id: string): string {
  const unit = units.find((one) => one.id === id)
  if (unit === undefined) return ''
  const { at, size } = rectOf(unit)
  const place = `${columnWords(at[0], at[0] + size[0], columns)}, ${rowWords(at[1], at[1] + size[1], rows)}`
  return `${t(KIND_NAMES[unit.kind])} (${place})`
}

function columnWords(from: number, to: number, columns: number): string {
  if (from === to && isWhole(from)) {
    if (from <= 0) return t('left edge')
    if (from >= columns) return t('right edge')
    return t('between columns {a} and {b}', { a: Math.round(from), b: Math.round(from) + 1 })
  }
  const [first, last] = counted(from, to)
  if (first === last) return t('{nth} column', { nth: nth(first) })
  return last === first + 1 ? t('columns {a} and {b}', { a: first, b: last }) : t('columns {a} to {b}', { a: first, b: last })
}

function rowWords(from: number, to: number, rows: number): string {
  if (from === to && isWhole(from)) {
    if (from <= 0) return t('top edge')
    if (from >= rows) return t('bottom edge')
    return t('between rows {a} and {b}', { a: Math.round(from), b: Math.round(from) + 1 })
  }
  const [first, last] = counted(from, to)
  if (first === last) return t('{nth} row', { nth: nth(first) })
  return last === first + 1 ? t('rows {a} and {b}', { a: first, b: last }) : t('rows {a} to {b}', { a: first, b: last })
}

/** Closer to a line of the grid than anything is laid beside it. */
const CLOSE = 1e-6
const isWhole = (place: number): boolean => Math.abs(place - Math.round(place)) < CLOSE

/** The first and the last column or row that a stretch lies in, from 1. */
const counted = (from: number, to: number): readonly [number, number] => [
  Math.floor(from + CLOSE) + 1,
  Math.max(Math.ceil(to - CLOSE), Math.floor(from + CLOSE) + 1),
]

const ENDINGS: Readonly<Record<string, string>> = { one: 'st', two: 'nd', few: 'rd' }
const ENGLISH = new Intl.PluralRules('en', { type: 'ordinal' })

/** `1st`, `2nd`; in German `1.`, `2.` */
const nth = (number: number): string => `${number}${currentLanguage() === 'de' ? '.' : (ENDINGS[ENGLISH.select(number)] ?? 'th')}`
