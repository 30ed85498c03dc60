/**
 * A finished size as a maker types it: `6 × 10`, `6x10`, `6 by 10`, or `8` for a square; `in` or `cm` may stand behind.
 *
 * In      the text of a field, and the unit that the block is measured in.
 * Out     width and height, exact, in that unit; or a message that says what to type instead.
 */
import { type FinishedSize, type MeasureUnit, parseRational, type Rational } from '../../geometry/index.ts'
import { t } from '../words/words.ts'
import { lengthForFile, lengthProblem } from './lengthEntry.ts'

const BETWEEN = /\s*(?:[×x*]|\bby\b|\bmal\b)\s*/i
const INCHES = /\s*(?:inch(?:es)?|in|zoll|["″])\s*$/i
const CENTIMETRES = /\s*cm\s*$/i

/** A message if the text is no size in that unit, else null. */
export function sizeProblem(text: string, unit: MeasureUnit): string | null {
  const sides = text.trim().split(BETWEEN)
  if (sides.some((side) => (unit === 'in' ? CENTIMETRES : INCHES).test(side)))
    return unit === 'in'
      ? t('This block is in inches. Type inches, or change the unit first.')
      : t('This block is in centimetres. Type centimetres, or change the unit first.')
  if (sides.length > 2) return t('Enter width and height, such as 6 × 10; or one length for a square.')
  return sides.map((side) => lengthProblem(bare(side))).find((problem) => problem !== null) ?? null
}

/** The size, of text that has no problem. */
export function readSize(text: string): FinishedSize {
  const [width, height = width] = text
    .trim()
    .split(BETWEEN)
    .map((side) => parseRational(lengthForFile(bare(side))) as Rational)
  return [width as Rational, height as Rational]
}

const bare = (side: string): string => side.replace(INCHES, '').replace(CENTIMETRES, '')
