/** Which steps have pictures as wide as the page: long rows, and the layout of many units. */
import type { BookletPart, BookletStep, Drawing } from '../../writing/booklet/values.ts'
import { MANY_UNITS } from '../../writing/booklet/layout/layOutPicture.ts'

/** Times its height, from which on a row is too wide to stand beside words. */
const LONG = 4.5

/** Whether the pictures of a step stand below its words, across the page; `units` are those of the block. */
export function widePictures({ key }: Pick<BookletPart, 'key'>, { drawings }: Pick<BookletStep, 'drawings'>, units: number): boolean {
  if (key === 'lay out') return units > MANY_UNITS
  return key === 'join' && drawings.some(isLong)
}

const isLong = ({ width, height }: Drawing): boolean => width > LONG * height || height > 2 * LONG * width
