/** Which way seams are pressed, in English: `to the left`; `toward the geese`; `seams 1 and 3 up, seam 2 down`. */
import type { PressHow, PressWay } from '../values/messages.ts'
import { PRESSED } from './boardEnglish.ts'
import { kindWords } from './englishPhrases.ts'

/** How the seams of one row or column are pressed; `line`: what an earlier one is called. */
export function pressedInEnglish(how: PressHow, line: string): string {
  switch (how.type) {
    case 'toward':
      return `toward the ${nouns(how)}`
    case 'way':
      return PRESSED[how.way]
    case 'ways':
      return numbersByWay(how.ways)
        .map(([way, numbers]) => `${numbers.length === 1 ? 'seam' : 'seams'} ${numberList(numbers, 'and')} ${PRESSED[way]}`)
        .join(', ')
    case 'as':
      return `as ${line} ${how.number}`
    case 'none':
      return 'one piece, nothing to press'
  }
}

function nouns({ noun, many }: Extract<PressHow, { type: 'toward' }>): string {
  if (noun === 'square' || noun === 'rectangle') return many ? `${noun}s` : noun
  return kindWords(noun, many ? 2 : 1)
}

/** The numbers of the seams pressed each way, from 1, the way of the first seam first. */
export const numbersByWay = (ways: readonly PressWay[]): (readonly [PressWay, readonly number[]])[] =>
  [...new Set(ways)].map((way) => [way, ways.flatMap((one, index) => (one === way ? [index + 1] : []))])

/** `1, 2 and 4`. */
export const numberList = (numbers: readonly number[], and: string): string =>
  numbers.length < 2 ? numbers.join('') : `${numbers.slice(0, -1).join(', ')} ${and} ${numbers.at(-1)}`
