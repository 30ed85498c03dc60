/** Units by kind and place, in German: `die Gans oben`, `das erste Quadrat in Reihe 2`. */
import type { UnitNoun, UnitPlace, UnitSide } from '../values/unitPlace.ts'
import { capital } from './englishPhrases.ts'

const NOUNS: Readonly<Record<UnitNoun, readonly ['die' | 'das', string]>> = {
  square: ['das', 'Quadrat'],
  rectangle: ['das', 'Rechteck'],
  hst: ['das', 'Halbquadrat-Dreieck'],
  hourglass: ['die', 'Sanduhr'],
  goose: ['die', 'Gans'],
  diamond: ['das', 'Quadrat im Quadrat'],
  cornered: ['das', 'Quadrat mit gekappten Ecken'],
  strips: ['die', 'Streifeneinheit'],
  'half-rectangle': ['das', 'Halbrechteck'],
  polygon: ['das', 'Freistück'],
}

const SIDES: Readonly<Record<UnitSide, string>> = {
  top: 'oben',
  right: 'rechts',
  bottom: 'unten',
  left: 'links',
  topLeft: 'oben links',
  topRight: 'oben rechts',
  bottomRight: 'unten rechts',
  bottomLeft: 'unten links',
  centre: 'in der Mitte',
}

const ORDINALS = ['erst', 'zweit', 'dritt', 'viert', 'fünft', 'sechst', 'siebt', 'acht', 'neunt', 'zehnt']

const ordinal = (number: number, ending: string): string => (ORDINALS[number - 1] === undefined ? `${number}.` : `${ORDINALS[number - 1]}${ending}`)

/**
 * In a sentence: `die Gans oben`, `das erste Quadrat in Reihe 2`; with `dative`, as after „an“, „von“ and „zu“: `der Gans oben`. All nouns are
 * feminine or neuter, so that the subject and the object are the same words.
 */
export function unitInGerman(place: UnitPlace, grammar: 'dative' | 'other' = 'other'): string {
  if (place.type === 'named') return place.name
  const [gender, noun] = NOUNS[place.noun]
  const article = grammar === 'other' ? gender : gender === 'die' ? 'der' : 'dem'
  if (place.type === 'only') return `${article} ${noun}`
  if (place.type === 'side') return `${article} ${noun} ${SIDES[place.side]}`
  const nth = place.nth === undefined ? '' : `${ordinal(place.nth, grammar === 'dative' ? 'en' : 'e')} `
  return `${article} ${nth}${noun} in Reihe ${place.row}`
}

/** Alone, or at the head of a line: `Gans oben`, `Reihe 2, erstes Quadrat`. */
export function unitLabelInGerman(place: UnitPlace): string {
  if (place.type === 'named') return place.name
  const [gender, noun] = NOUNS[place.noun]
  if (place.type === 'row')
    return `Reihe ${place.row}, ${place.nth === undefined ? '' : `${ordinal(place.nth, gender === 'die' ? 'e' : 'es')} `}${noun}`
  return capital(unitInGerman(place).replace(/^(die|das) /, ''))
}
