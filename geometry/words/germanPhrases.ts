/** German for kinds of unit and methods, as they stand within a sentence. */
import type { Kind, Method } from '../values/block.ts'

export const GERMAN_KINDS: Readonly<Record<Kind, string>> = {
  square: 'Quadrate',
  hst: 'Halbquadrat-Dreiecke',
  hourglass: 'Sanduhren',
  goose: 'Gänse',
  diamond: 'Quadrate in Quadraten',
  cornered: 'Quadrate mit gekappten Ecken',
  strips: 'Streifeneinheiten',
  'half-rectangle': 'Halbrechtecke',
  polygon: 'Freistücke',
}

export const ONE_GERMAN_KIND: Readonly<Record<Kind, string>> = {
  square: 'Quadrat',
  hst: 'Halbquadrat-Dreieck',
  hourglass: 'Sanduhr',
  goose: 'Gans',
  diamond: 'Quadrat im Quadrat',
  cornered: 'Stück mit gekappten Ecken',
  strips: 'Streifeneinheit',
  'half-rectangle': 'Halbrechteck',
  polygon: 'Freistück',
}

export const GERMAN_METHODS: Readonly<Record<Method, string>> = {
  plain: 'klassisch genäht',
  'hst-2': 'zwei auf einmal',
  'hst-4': 'vier auf einmal, Schrägkanten',
  'hst-8': 'acht auf einmal',
  'qst-2': 'zwei auf einmal',
  'geese-4': 'vier auf einmal',
  'corner-flip': 'nähen und umklappen',
  'strip-set': 'aus einem Streifensatz',
}
