/** Cutting, in English: what the steps of a booklet say. Lengths, sizes and names come as they are said. */

const listed = (words: readonly (string | number)[]): string =>
  words.length < 2 ? String(words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`

const SHAPES = { square: ['square', 'squares'], rectangle: ['rectangle', 'rectangles'], triangle: ['triangle', 'triangles'] } as const

export interface PieceToCut {
  readonly count: number
  readonly shape: keyof typeof SHAPES
  readonly size: string
  /** The print stands upright: the first side lies across the fabric. */
  readonly upright: boolean
  readonly purpose: string
  /** How much larger than needed, for trimming. */
  readonly larger: string | null
  readonly then: 'none' | 'halve' | 'quarter'
  /** Halves of rectangles are of one hand. */
  readonly hand: 'left' | 'right' | null
  /** Triangles it gives, and how many of them are too many. */
  readonly triangles: number
  readonly spare: number
}

const cutAgain = ({ count, then, hand, triangles, spare }: PieceToCut): string => {
  if (then === 'none') return ''
  const way =
    hand === null
      ? ''
      : `, right side up with the long side across, ${hand === 'right' ? 'from bottom left to top right' : 'from top left to bottom right'}`
  return ` Cut ${count === 1 ? 'it' : 'each'} ${then === 'halve' ? 'once' : 'twice'} from corner to corner${way}: ${triangles} triangles${spare === 0 ? '' : `, ${spare} more than you need`}.`
}

export const cutEnglish = {
  title: (fabric: string) => `Cut ${fabric}`,
  straighten:
    'Press each fabric and straighten its end first. Cut strips across the width of fabric, from selvage to selvage, the widest strip first. The letters are those of the layout.',
  strips: (strips: readonly { readonly count: number; readonly width: string }[]) =>
    `Cut ${listed(strips.map(({ count, width }) => `${count === 1 ? '1 strip' : `${count} strips`} ${width} wide`))}. From ${strips.length === 1 && strips[0]?.count === 1 ? 'it' : 'them'} cut these pieces.`,
  stripsAlong: (strips: readonly { readonly count: number; readonly width: string }[]) =>
    `Cut ${listed(strips.map(({ count, width }) => `${count === 1 ? '1 strip' : `${count} strips`} ${width} wide`))} along the length of the fabric, beside the selvage.`,
  piece: (piece: PieceToCut) =>
    `Cut ${piece.count} ${SHAPES[piece.shape][piece.count === 1 ? 0 : 1]} ${piece.size}${piece.upright ? ' (the first side across the fabric, so the print stands upright)' : ''}, ${piece.purpose}${piece.larger === null ? '' : `, ${piece.larger} larger than needed, for trimming`}.${cutAgain(piece)}`,
  withTemplate: ({ count, templates, box }: { readonly count: number; readonly templates: readonly string[]; readonly box: string }) =>
    `Cut ${count} with ${templates.length === 0 ? (count === 1 ? 'its template' : 'their templates') : `${templates.length === 1 ? 'template' : 'templates'} ${listed(templates)}`}; ${count === 1 ? 'it fits' : 'each fits'} in ${box}.`,
  forUnits: (letters: readonly string[]) => `for ${listed(letters)}`,
  forTheUnits: 'for the units',
  forCorners: 'for the corners of the borders',
  forBorders: (extra: string) => `for the borders: cut them ${extra} longer where the fabric has room, and trim them once you’ve measured`,
  picture: (fabric: string, strips: readonly { readonly width: string; readonly pieces: number }[]) =>
    `Strips of ${fabric} and the pieces cut from them: ${strips.length > 6 ? `${strips.length} strips with their pieces` : listed(strips.map(({ width, pieces }) => `one ${width} wide with ${pieces === 1 ? '1 piece' : `${pieces} pieces`}`))}.`,
}
