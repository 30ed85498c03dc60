/** Making units, in English: what the steps of a booklet say. Lengths and names of fabrics come as they are said. */

const units = (number: number): string => (number === 1 ? '1 unit' : `${number} units`)
const spareUnits = (spare: number): string => (spare === 0 ? '' : ` ${spare} ${spare === 1 ? 'is' : 'are'} spare.`)
const squares = (goes: number): string => (goes === 1 ? 'square' : 'squares')
const listed = (words: readonly (string | number)[]): string =>
  words.length < 2 ? String(words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`

interface Pairs {
  readonly pairs: number
  readonly one: string
  readonly other: string
  readonly makes: number
  readonly spare: number
}

/** Small squares of one fabric, by their numbers. */
interface NumberedSquares {
  readonly numbers: readonly number[]
  readonly fabric: string
}

/** A goose by its letters; one that the block doesn't need by its wings. */
interface GooseMade {
  readonly count: number
  readonly label: string | null
  readonly left: string
  readonly right: string
}

const goose = ({ count, label, left, right }: GooseMade): string => {
  if (label !== null) return `${count} ${label}`
  const one = count === 1 ? '1 goose' : `${count} geese`
  return `${one} with ${left === right ? `both wings ${left}` : `${left} on the left and ${right} on the right`}`
}

export const unitsEnglish = {
  geeseSets: ({ sets, geese, spare }: { readonly sets: number; readonly geese: number; readonly spare: number }) =>
    `${sets === 1 ? '1 set of four makes' : `${sets} sets of four make`} ${geese === 1 ? 'your goose' : `all ${geese} geese`}.${spare === 0 ? '' : ` ${spare} ${spare === 1 ? 'is' : 'are'} spare.`}`,
  takeSet: ({
    set,
    goose: fabric,
    squares: all,
  }: {
    readonly set: number | null
    readonly goose: string
    readonly squares: readonly NumberedSquares[]
  }) => {
    const small =
      all.length === 1
        ? `4 small squares of ${all[0]?.fabric}`
        : `4 small squares: ${all.map((one) => `${listed(one.numbers)} of ${one.fabric}`).join(', ')}`
    return `${set === null ? 'Take' : `Set ${set}: take`} 1 large square of ${fabric} and ${small}. Number them clockwise from the top left corner.`
  },
  setMakes: (geese: readonly GooseMade[]) => `It makes ${listed(geese.map(goose))}.`,
  spareGeese: (geese: readonly GooseMade[]) => `Spare: ${listed(geese.map(goose))}.`,
  drawOnSmallSquares: 'Draw a line from corner to corner on the wrong side of each small square.',
  layTwoSquares:
    'Lay squares 1 and 3 on opposite corners of the large square, right sides together. They overlap, and their lines make one long line.',
  sewBesideLine: (seam: string) => `Sew ${seam} from the line, on both sides of it.`,
  cutOnLine: 'Cut on the line.',
  pressHearts: 'Press the small triangles away from the large one. Each half looks like a heart.',
  laySquareOnHalf:
    'Place square 2 on the large corner of one half, right sides together, its line between the two small triangles. Do the same with square 4 on the other half.',
  pressGeese: 'Press both seams toward the wings. Each half makes 2 geese.',
  madeBySet: (set: number | null) => (set === null ? 'These are the 4 geese.' : `Set ${set} makes these 4 geese.`),

  pairSquares: ({ pairs, one, other, makes, spare }: Pairs) => {
    const put =
      one === other
        ? pairs === 1
          ? `Put 2 squares of ${one} right sides together.`
          : `Put the squares of ${one} in ${pairs} pairs, right sides together.`
        : `${pairs === 1 ? 'Put' : `Make ${pairs} pairs: put`} a square of ${one} and a square of ${other} right sides together.`
    return `${put} ${pairs === 1 ? 'They make' : 'All pairs make'} ${units(makes)}.${spareUnits(spare)}`
  },
  drawOneLine: (fabric: string | null, pairs: number) =>
    `Draw a line from corner to corner on the wrong side of ${fabric === null ? `one square${pairs === 1 ? '' : ' of each pair'}` : `the ${fabric} ${squares(pairs)}`}.`,
  drawTwoLines: (fabric: string | null, pairs: number) =>
    `Draw lines from corner to corner, both ways, on the wrong side of ${fabric === null ? `one square${pairs === 1 ? '' : ' of each pair'}` : `the ${fabric} ${squares(pairs)}`}.`,
  sewBesideLines: (seam: string) => `Sew ${seam} from each line, on both sides of it.`,
  sewAllRound: (seam: string) => `Sew all round, ${seam} from the edge.`,
  cutBothWays: 'Without moving the pair, cut it from corner to corner both ways.',
  cutMiddleAndLines: 'Cut through the middle both ways, then on the lines.',
  eachPairMakes: (number: number) => `Each pair makes ${number}.`,
  pressHalves: (fabric: string | null) => `Press the seam of both halves toward ${fabric ?? 'the same fabric'}.`,
  crossHalves:
    'Put the two halves right sides together, each fabric on the other one, and nest the seams. Draw the other line from corner to corner, across the seam.',
  twoHands: (spare: boolean) => `You get 2 hourglasses: one is the other one flipped.${spare ? ' Keep the one that the layout shows.' : ''}`,

  useAsCut: 'Use it as cut.',
  drawOnCorners: (fabrics: readonly string[]) => `Draw a line from corner to corner on the wrong side of each small square (${listed(fabrics)}).`,
  laySquaresOnCorners: ({ each, base, corners }: { readonly each: boolean; readonly base: string; readonly corners: readonly string[] }) =>
    `${each ? 'For each unit, lay' : 'Lay'} ${corners.length === 1 ? 'a square' : 'squares'} on ${listed(corners)} of the ${base} piece, right sides together. Sew on the ${corners.length === 1 ? 'line' : 'lines'}.`,
  corner: (corner: 'topLeft' | 'topRight' | 'bottomRight' | 'bottomLeft', fabric: string | null) =>
    `the ${{ topLeft: 'top left', topRight: 'top right', bottomRight: 'bottom right', bottomLeft: 'bottom left' }[corner]} corner${fabric === null ? '' : ` in ${fabric}`}`,
  trimCorners: (seam: string, number: number) => `Trim ${seam} beyond the stitches. Flip the ${number === 1 ? 'corner' : 'corners'} over and press.`,
  sameOnCorners: (corners: readonly string[]) => `Do the same on ${listed(corners)}: sew on the ${corners.length === 1 ? 'line' : 'lines'}.`,

  makeStripSets: (sets: number, fabrics: readonly string[]) =>
    `Make ${sets === 1 ? '1 strip set' : `${sets} strip sets`}: sew the long strips side by side, in this order: ${listed(fabrics)}. Start each seam at the opposite end from the last, so the set stays straight.`,
  cutAcrossSets: ({ pieces, sets, size }: { readonly pieces: number; readonly sets: number; readonly size: string }) =>
    `Straighten one end. Cut ${pieces === 1 ? '1 piece' : `${pieces} pieces`} across the ${sets === 1 ? 'set' : 'sets'}, ${pieces === 1 ? '' : 'each '}${size}.`,

  sewHst: 'Sew the triangles in pairs along their long edges, right sides together. Don’t stretch the bias edges. Trim off the ears.',
  sewHourglass:
    'Sew the triangles in pairs along a short edge: top to right, bottom to left. Then sew the two halves together along their long edges. Trim off the ears.',
  sewGoose:
    'Sew one wing to the centre triangle, right sides together, its long edge to a short edge. Press, then sew on the other wing. Trim off the ears.',
  sewDiamond:
    'Sew triangles to two opposite sides of the square, with their tips sticking out the same at both ends. Press, trim off the ears, then sew on the other two.',
  sewCornered: 'Sew a triangle to each clipped corner of the centre, with its tips sticking out the same at both ends. Trim off the ears.',
  sewStrips: (fabrics: readonly string[]) =>
    `Sew the strips side by side in this order: ${listed(fabrics)}. Start each seam at the opposite end from the last, so the unit stays straight.`,
  halfRectanglePairs: ({ one, other, hand }: { readonly one: string; readonly other: string; readonly hand: 'left' | 'right' | null }) =>
    `Each unit takes 1 triangle of ${one} and 1 of ${other}${hand === null ? '' : `, both cut ${hand === 'left' ? 'left' : 'right'}-handed`}.`,
  markDots: (seam: string) =>
    `On the wrong side of each triangle, mark a dot at both ends of the long edge, ${seam} from both edges that meet there.`,
  matchDots:
    'Put the two right sides together along their long edges. Pin through the dots so they match, and sew from edge to edge, through both dots. The tips stick out at the ends.',

  pressAll: (seams: number, way: string) => `Press ${seams === 1 ? 'the seam' : seams === 2 ? 'both seams' : 'all seams'} ${way}.`,
  pressShortAndLong: (way: string) => `Press the two short seams ${way} and the long seam as the arrow shows.`,
  pressShortLongOpen: 'Press the two short seams as the arrows show and the long seam open.',
  pressAsArrows: 'Press each seam as the arrows show.',
  labelled: (label: string, count: number, said: string) => `${label} (${units(count)}): ${said.charAt(0).toLowerCase()}${said.slice(1)}`,
  open: 'open',
  toward: (what: string) => `toward ${what}`,
  theGoose: 'the goose',
  theWings: 'the wings',
  theCentre: 'the centre',
  theCorners: 'the corners',
  patchSide: (patch: string) =>
    `the ${patch.replace(/([a-z])([A-Z0-9])/g, (_, before: string, after: string) => `${before} ${after.toLowerCase()}`)} side`,
  theseLooks: 'Made in one go, they look like this.',
  bias: 'The outside edges are on the bias and stretch easily. Handle them gently, and press without pushing.',
  shouldMeasure: (count: number, size: string) => `${count === 1 ? 'It' : 'Each'} should measure ${size}.`,

  trimTo: (count: number, size: string) => `Trim ${count === 1 ? 'it' : 'each'} to ${size}.`,
  firstCut: ({ hand, under }: { readonly hand: 'right' | 'left'; readonly under: string }) =>
    `${hand === 'right' ? 'Right-handed' : 'Left-handed'}, first cut: lay ${under}. Cut along the ${hand} and top edges.`,
  firstCutAlike: 'Left-handed, first cut: the same, measured from the left edge. Cut along the left and top edges.',
  secondCut: ({ hand, lines, under }: { readonly hand: 'right' | 'left'; readonly lines: string; readonly under: string | null }) =>
    `${hand === 'right' ? 'Right-handed' : 'Left-handed'}, second cut: rotate it 180° and lay the cut edges on ${lines}${under === null ? '' : `, ${under}`}. Cut the other two edges.`,
  rulerLines: (wide: string, high: string) => (wide === high ? `the ruler’s ${wide} lines` : `the ruler’s ${wide} and ${high} lines`),
  halfSquareLine: (one: boolean) => `the 45° line along ${one ? 'the seam' : 'a seam'}`,
  seamsMeet: (side: string, top: string, hand: 'right' | 'left') =>
    `the point where the seams meet ${side} from the ${hand} edge and ${top} below the top`,
  seamEnds: (side: string, top: string, hand: 'right' | 'left') => `an end of the seam ${side} from the ${hand} edge and ${top} below the top`,

  // What the pictures show, for those who cannot see them.
  pictures: {
    twoOnLarge: 'The large square, right side up, with small squares 1 and 3 on opposite corners, wrong side up, a line drawn across both.',
    sewn: 'The same, with stitches on each side of the line.',
    cutApart: 'The same, cut on the line: two halves.',
    hearts: 'Both halves, pressed: each looks like a heart.',
    thirdSquare: 'Small squares 2 and 4 on the large corners of the two halves, each with its line.',
    thirdSewn: 'Stitches on each side of the lines of squares 2 and 4.',
    thirdCut: 'The halves cut on those lines: four pieces.',
    fourGeese: 'Four geese, pressed, right side up, each with its letter.',
    pair: 'Two squares, right sides together, with the line drawn.',
    pairSewn: 'Stitches on each side of the line.',
    pairLines: 'Two squares, right sides together, with both lines drawn.',
    pairRound: 'Two squares, right sides together, sewn all round.',
    pairCut: 'The pair cut apart.',
    crossed: 'Two halves, right sides together, fabrics crossed, with the new line drawn.',
    crossedSewn: 'Stitches on each side of the new line.',
    hands: 'Two hourglasses, right side up: one is the other one flipped.',
    laid: 'The large piece with small squares on its corners, stitches on their lines.',
    flipped: 'The corners trimmed and flipped over.',
    set: 'The strip set, sewn.',
    setCut: 'The strip set, and the cuts across it.',
  },
}
