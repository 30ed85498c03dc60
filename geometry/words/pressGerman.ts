/** Which way seams are pressed, in German: `nach links`; `zu den Gänsen`; `Nähte 1 und 3 nach oben, Naht 2 nach unten`. */
import type { PressHow, PressWay } from '../values/messages.ts'
import type { UnitNoun } from '../values/unitPlace.ts'
import { numberList, numbersByWay } from './pressEnglish.ts'

export const PRESSED_WAYS: Readonly<Record<PressWay, string>> = {
  left: 'nach links',
  right: 'nach rechts',
  up: 'nach oben',
  down: 'nach unten',
  open: 'auseinander',
  proposed: 'wie vorgeschlagen',
}

const TOWARD: Readonly<Record<UnitNoun, readonly [one: string, many: string]>> = {
  square: ['zum Quadrat', 'zu den Quadraten'],
  rectangle: ['zum Rechteck', 'zu den Rechtecken'],
  hst: ['zum Halbquadrat-Dreieck', 'zu den Halbquadrat-Dreiecken'],
  hourglass: ['zur Sanduhr', 'zu den Sanduhren'],
  goose: ['zur Gans', 'zu den Gänsen'],
  diamond: ['zum Quadrat im Quadrat', 'zu den Quadraten in Quadraten'],
  cornered: ['zum Quadrat mit gekappten Ecken', 'zu den Quadraten mit gekappten Ecken'],
  strips: ['zur Streifeneinheit', 'zu den Streifeneinheiten'],
  'half-rectangle': ['zum Halbrechteck', 'zu den Halbrechtecken'],
  polygon: ['zum Freistück', 'zu den Freistücken'],
}

/** How the seams of one row or column are pressed; `line`: what an earlier one is called. */
export function pressedInGerman(how: PressHow, line: string): string {
  switch (how.type) {
    case 'toward':
      return TOWARD[how.noun][how.many ? 1 : 0]
    case 'way':
      return PRESSED_WAYS[how.way]
    case 'ways':
      return numbersByWay(how.ways)
        .map(([way, numbers]) => `${numbers.length === 1 ? 'Naht' : 'Nähte'} ${numberList(numbers, 'und')} ${PRESSED_WAYS[way]}`)
        .join(', ')
    case 'as':
      return `wie ${line} ${how.number}`
    case 'none':
      return 'ein Stück, nichts zu bügeln'
  }
}
