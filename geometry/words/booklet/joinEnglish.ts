/** Laying out, joining and borders, in English: what the steps of a booklet say. Lengths and names come as they are said. */

const listed = (words: readonly (string | number)[]): string =>
  words.length < 2 ? String(words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
const seams = (number: number): string => (number === 1 ? 'the seam' : number === 2 ? 'both seams' : 'all seams')
const clauses = (match: readonly string[]): string => (match.length === 0 ? '' : `: ${match.join('; ')}`)

export type Line = 'row' | 'column' | 'section'
/** Which way a seam goes as the piece lies on the table: 0 where it goes neither way. */
export type PressDirection = readonly [across: -1 | 0 | 1, down: -1 | 0 | 1]
export type EndOfSeam = 'left' | 'right' | 'upper' | 'lower'
export type ReadingOrder = 'across' | 'down' | 'as shown'

const ORDERS: Readonly<Record<ReadingOrder, string>> = {
  across: 'from left to right',
  down: 'from top to bottom',
  'as shown': 'in the order the picture shows',
}
const way = ([across, down]: PressDirection): string =>
  [...(down === 0 ? [] : [down < 0 ? 'up' : 'down']), ...(across === 0 ? [] : [across < 0 ? 'to the left' : 'to the right'])].join(' and ')

export const joinEnglish = {
  nests: (number: number) => `nest the seams at ${number === 1 ? '1 point' : `${number} points`}`,
  opens: (number: number) => `pin ${number === 1 ? '1 crossing' : `${number} crossings`} of seams that are pressed open`,
  pins: (number: number) => `match ${number === 1 ? '1 point with a pin' : `${number} points with pins`}`,
  tips: (number: number) => `sew a thread’s width above ${number === 1 ? 'the X to keep the point' : `each X to keep ${number} points`}`,
  clashes: (number: number) => `pin ${number === 1 ? '1 crossing' : `${number} crossings`} where the seams don’t nest, and sew slowly there`,

  layOut: 'Lay out all the units, right side up, as the picture shows. Step back and look: is every unit turned the right way?',
  oneAtATime: (blocks: number) => `You’re making ${blocks} blocks: lay out and sew one at a time.`,
  keepLayout: 'Keep the layout beside your machine. Put each piece back in its place once it’s sewn and pressed.',

  theBlock: 'the block',
  thePiece: 'the piece',
  lines: (line: Line, places: readonly number[]) => `${line}${places.length > 1 ? 's' : ''} ${listed(places)}`,
  lineMadeOf: (line: Line, place: number, what: string) => `${line} ${place} (${what})`,
  several: (number: number, name: string) => `${number} ${name}`,
  together: (names: readonly string[], order: ReadingOrder, match: readonly string[]) =>
    `Sew ${listed(names)} together, ${ORDERS[order]}${clauses(match)}.`,
  oneToOther: (one: string, other: string, match: readonly string[]) => `Sew ${one} to ${other}${clauses(match)}.`,
  twoAlike: (name: string, isUnit: boolean, match: readonly string[]) => `Sew two ${name}${isUnit ? ' units' : 's'} together${clauses(match)}.`,
  makeAlike: (number: number) => `Make ${number}. Chain piece them: feed them through one after the other, then snip the threads between them.`,
  matched: (match: readonly string[]) => `${match.join('; ').charAt(0).toUpperCase()}${match.join('; ').slice(1)}.`,
  partial: ({ one, other, start, length }: { readonly one: string; readonly other: string; readonly start: EndOfSeam; readonly length: string }) =>
    `Sew ${one} to ${other} only part of the way: start at the ${start} end, stop at the dot after ${length}, and backstitch. Leave the rest open: you’ll finish it later. Until then, press it as far as it’s sewn.`,
  finishOpen: (number: number) => `Now finish the ${number === 1 ? 'seam' : `${number} seams`} you left open, from the dot to the edge.`,

  pressSeams: (number: number, to: PressDirection) => `Press ${seams(number)} ${way(to)}.`,
  pressSeamToward: (to: PressDirection, name: string) => `Press the seam ${way(to)}, toward ${name}.`,
  pressBentToward: (name: string) => `Press the seam toward ${name}, as the arrows show.`,
  pressOpen: (number: number) => `Press ${seams(number)} open.`,
  pressToward: (number: number, names: readonly string[]) => `Press ${seams(number)} toward ${listed(names)}.`,
  pressExcept: (to: PressDirection | 'open', other: PressDirection | 'open', except: readonly number[], order: ReadingOrder) =>
    `Press all seams ${to === 'open' ? 'open' : way(to)}, except ${listed(except)}, counting ${ORDERS[order]}: press ${except.length === 1 ? 'that one' : 'those'} ${other === 'open' ? 'open' : way(other)}.`,
  pressByNumber: (ways: readonly { readonly to: PressDirection | 'open'; readonly seams: readonly number[] }[], order: ReadingOrder) =>
    `Press ${listed(ways.map(({ to, seams: numbers }) => `${numbers.length === 1 ? 'seam' : 'seams'} ${listed(numbers)} ${to === 'open' ? 'open' : way(to)}`))}, counting ${ORDERS[order]}.`,
  shouldMeasure: (name: string, size: string) => `${name.charAt(0).toUpperCase()}${name.slice(1)} should measure ${size}.`,
  eachShouldMeasure: (line: Line | null, size: string) => `Each ${line === 'row' || line === 'column' ? `${line} ` : ''}should measure ${size}.`,

  setInEnd: (piece: string, into: string, seam: string) =>
    `Sew ${piece} to ${into}. The seam ends in a corner: mark a dot there on the wrong side of both pieces, ${seam} from both edges. Sew up to the dot, not a stitch further, and backstitch.`,
  setIn: ({ piece, into, corners, seam }: { readonly piece: string; readonly into: string; readonly corners: number; readonly seam: string }) =>
    `Set ${piece} into ${into}. On the wrong side of both pieces, mark a dot at ${corners === 1 ? 'the corner' : `the ${corners} corners`} where the seam turns, ${seam} from both edges.`,
  clipCorner: (into: string, several: boolean) =>
    `Clip the seam allowance of ${into} at ${several ? 'each inner corner' : 'its inner corner'}, to a thread short of the dot, not through it.`,
  seamEndsAtDot: (into: string) => `The seam of ${into} that runs into the corner must end at the dot: unpick any stitches beyond it.`,
  pivot: (several: boolean) =>
    `Sew up to ${several ? 'each' : 'the'} dot, not a stitch further, and stop with the needle down. Lift the presser foot, bring the next edges together, and sew on. Backstitch at both ends.`,
  stopAtDot: (ends: number, seam: string) =>
    `A corner will be set in here later: ${ends === 1 ? 'at the end with the dot' : 'at both ends'}, stop at the dot, ${seam} before the edge, and backstitch.`,

  measureThrough: ({ down, length, fabrics }: { readonly down: boolean; readonly length: string | null; readonly fabrics: readonly string[] }) =>
    `Measure the block through the middle, ${down ? 'from top to bottom' : 'from side to side'}, not along the edge.${length === null ? '' : ` It should be ${length}.`} Cut both ${listed(fabrics)} strips to that length.`,
  measureOtherWay:
    'Measure it from side to side too, and write that down. You’ll cut the top and bottom strips to it, because squares go in the corners.',
  cutToMeasured: (length: string | null, fabrics: readonly string[]) =>
    `Cut both ${listed(fabrics)} strips to the width you measured before you added the sides.${length === null ? '' : ` That should be ${length}.`}`,
  alongEach: (match: string) => `along each strip ${match}`,
  cornerSquares: (fabrics: readonly string[], press: 'strips' | 'squares' | null) =>
    `Sew a corner square of ${listed(fabrics)} to each end of both strips. Press ${press === null ? 'so it nests with the seam it will meet' : `toward the ${press}`}.`,
  pinStrips: (match: readonly string[]) => `Pin each strip at both ends and in the middle, ease the fabric between, and sew${clauses(match)}.`,
  pressBorder: 'Press toward the border.',
  pressAsArrows: 'Press as the arrows show.',

  pictures: {
    laidOut: 'The block laid out, each unit with its letter.',
    laidApart: (name: string) =>
      `${name.charAt(0).toUpperCase()}${name.slice(1)} laid out right side up, its pieces apart; arrows show which way to press each seam.`,
    behind: (name: string) => `${name.charAt(0).toUpperCase()}${name.slice(1)} from the wrong side, sewn and pressed.`,
    where: (name: string) => `Where ${name} goes in the block.`,
    rows: (line: Line) => `The block laid out, its ${line}s apart and numbered; arrows show which way to press each seam.`,
    border: (sides: boolean) => `${sides ? 'The side strips' : 'The top and bottom strips'} beside the block; arrows show which way to press.`,
    looks: (labels: readonly string[]) => `${listed(labels)} from the right side.`,
    pressedUnit: (label: string) => `Unit ${label} from the wrong side, with its seams pressed.`,
    unitApart: (label: string) => `The pieces of unit ${label}, laid apart; numbers show which seam to sew first.`,
    finished: (name: string) => `${name}, finished.`,
  },
}
