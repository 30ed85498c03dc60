/** Cutting, in German: what the steps of a booklet say. */
import type { PieceToCut, cutEnglish } from './cutEnglish.ts'

const listed = (words: readonly (string | number)[]): string =>
  words.length < 2 ? String(words[0] ?? '') : `${words.slice(0, -1).join(', ')} und ${words.at(-1)}`

const SHAPES = { square: ['Quadrat', 'Quadrate'], rectangle: ['Rechteck', 'Rechtecke'], triangle: ['Dreieck', 'Dreiecke'] } as const

const strips = (all: readonly { readonly count: number; readonly width: string }[]): string =>
  listed(all.map(({ count, width }) => `${count === 1 ? '1 Streifen' : `${count} Streifen`}, ${width} breit,`)).replace(/,$/, '')

const cutAgain = ({ count, then, hand, triangles, spare }: PieceToCut): string => {
  if (then === 'none') return ''
  const way =
    hand === null
      ? ''
      : `, rechte Seite oben, die lange Seite quer, ${hand === 'right' ? 'von links unten nach rechts oben' : 'von links oben nach rechts unten'}`
  return ` Schneide ${count === 1 ? 'es' : 'jedes'} ${then === 'halve' ? 'einmal' : 'zweimal'} von Ecke zu Ecke durch${way}: ${triangles} Dreiecke${spare === 0 ? '' : `, ${spare} mehr als nötig`}.`
}

export const cutGerman: typeof cutEnglish = {
  title: (fabric) => `Schneide ${fabric} zu`,
  straighten:
    'Bügle zuerst jeden Stoff und begradige ein Ende. Schneide Streifen quer zum Stoff, von Webkante zu Webkante, den breitesten zuerst. Die Buchstaben sind die vom Auslegen.',
  strips: (all) => `Schneide ${strips(all)}. Schneide daraus diese Teile.`,
  stripsAlong: (all) => `Schneide ${strips(all)}, in der Länge des Stoffs, neben der Webkante.`,
  piece: (piece) =>
    `Schneide ${piece.count} ${SHAPES[piece.shape][piece.count === 1 ? 0 : 1]}, ${piece.size}${piece.upright ? ' (die erste Seite quer zum Stoff, damit der Druck aufrecht steht)' : ''}, ${piece.purpose}${piece.larger === null ? '' : `, ${piece.larger} größer als nötig, zum Zuschneiden`}.${cutAgain(piece)}`,
  withTemplate: ({ count, templates, box }) =>
    `Schneide ${count} mit ${templates.length === 0 ? (count === 1 ? 'der Schablone' : 'den Schablonen') : `${templates.length === 1 ? 'Schablone' : 'den Schablonen'} ${listed(templates)}`}; ${count === 1 ? 'es passt' : 'jedes passt'} in ${box}.`,
  forUnits: (letters) => `für ${listed(letters)}`,
  forTheUnits: 'für die Einheiten',
  forCorners: 'für die Ecken der Ränder',
  forBorders: (extra) => `für die Ränder: ${extra} länger, wo der Stoff reicht; auf Länge schneidest du sie nach dem Messen`,
  picture: (fabric, all) =>
    `Streifen aus ${fabric} und die Teile daraus: ${all.length > 6 ? `${all.length} Streifen mit ihren Teilen` : listed(all.map(({ width, pieces }) => `einer ${width} breit mit ${pieces === 1 ? '1 Teil' : `${pieces} Teilen`}`))}.`,
}
