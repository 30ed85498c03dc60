/**
 * Numbers, kinds and methods in English words, for sentences of every room.
 */
import type { Kind, Method, Size } from '../values/block.ts'

const SMALL_NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']

/** `two batches`, `13 batches`. */
export function inWords(number: number, one: string, many = `${one}s`): string {
  return `${SMALL_NUMBERS[number] ?? number} ${number === 1 ? one : many}`
}

/** The text with its first letter as a capital. */
export const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

const KIND_WORDS: Readonly<Record<Kind, readonly [one: string, many: string]>> = {
  square: ['square', 'squares'],
  hst: ['half-square triangle', 'half-square triangles'],
  hourglass: ['hourglass', 'hourglasses'],
  goose: ['goose', 'geese'],
  diamond: ['square in a square', 'squares in squares'],
  cornered: ['square with clipped corners', 'squares with clipped corners'],
  strips: ['strip unit', 'strip units'],
  'half-rectangle': ['half-rectangle triangle', 'half-rectangle triangles'],
  polygon: ['free patch', 'free patches'],
}

/** What one or several units of a kind are called: `goose`, `geese`. */
export const kindWords = (kind: Kind, number: number): string => KIND_WORDS[kind][number === 1 ? 0 : 1]

/** The same for a row of the report's units, where a plain square may be a rectangle. */
export const unitRowWords = ({ kind, finished: [width, height] }: { readonly kind: Kind; readonly finished: Size }, number: number): string =>
  kind !== 'square' || width === height ? kindWords(kind, number) : number === 1 ? 'rectangle' : 'rectangles'

export const METHOD_WORDS: Readonly<Record<Method, string>> = {
  plain: 'traditional piecing',
  'hst-2': 'two at a time',
  'hst-4': 'four at a time, bias edges',
  'hst-8': 'eight at a time',
  'qst-2': 'two at a time',
  'geese-4': 'four at a time',
  'corner-flip': 'stitch and flip',
  'strip-set': 'from a strip set',
}
