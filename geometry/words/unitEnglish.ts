/** Units by kind and place, in English: `the top goose`, `the first square in row 2`. */
import type { UnitNoun, UnitPlace, UnitSide } from '../values/unitPlace.ts'
import { capital, kindWords } from './englishPhrases.ts'

const SIDES: Readonly<Record<UnitSide, string>> = {
  top: 'top',
  right: 'right-hand',
  bottom: 'bottom',
  left: 'left-hand',
  topLeft: 'top left',
  topRight: 'top right',
  bottomRight: 'bottom right',
  bottomLeft: 'bottom left',
  centre: 'centre',
}

const nounWords = (noun: UnitNoun): string => (noun === 'square' || noun === 'rectangle' ? noun : kindWords(noun, 1))

/** Several of them: `rectangles`, `geese`. */
export const nounsWords = (noun: UnitNoun): string => (noun === 'square' || noun === 'rectangle' ? `${noun}s` : kindWords(noun, 2))

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth']

/** `first`, `second`; from 11 on with a number: `22nd`. */
function ordinal(number: number): string {
  const tens = number % 100
  const ending = tens > 10 && tens < 14 ? 'th' : (['th', 'st', 'nd', 'rd'][number % 10] ?? 'th')
  return ORDINALS[number - 1] ?? `${number}${ending}`
}

/** In a sentence: `the top goose`, `the first square in row 2`; the maker's own name as she wrote it. */
export function unitInEnglish(place: UnitPlace): string {
  if (place.type === 'named') return place.name
  const noun = nounWords(place.noun)
  if (place.type === 'only') return `the ${noun}`
  if (place.type === 'side') return `the ${SIDES[place.side]} ${noun}`
  return place.nth === undefined ? `the ${noun} in row ${place.row}` : `the ${ordinal(place.nth)} ${noun} in row ${place.row}`
}

/** Alone, or at the head of a line: `Top goose`, `Row 2, first square`. */
export function unitLabelInEnglish(place: UnitPlace): string {
  if (place.type === 'row') return `Row ${place.row}, ${place.nth === undefined ? '' : `${ordinal(place.nth)} `}${nounWords(place.noun)}`
  return place.type === 'named' ? place.name : capital(unitInEnglish(place).replace('the ', ''))
}
