/** English for all that the geometry says. */
import { sayLength } from '../exact/lengths.ts'
import type { BattingId, ChartPieceId, FoundValue, GeeseOfWings, Message } from '../values/messages.ts'
import { boardEnglish } from './boardEnglish.ts'
import { pressedInEnglish } from './pressEnglish.ts'
import { capital, inWords, kindWords, METHOD_WORDS } from './englishPhrases.ts'
import { nounsWords, unitInEnglish } from './unitEnglish.ts'
import { runsOf } from './runsOf.ts'
import { say, type Words } from './words.ts'

export const inEnglish = (message: Message): string => say(english, message)

const found = (value: FoundValue): string =>
  value === 'missing' ? 'missing' : value === 'list' ? 'a list' : value === 'object' ? 'an object' : value.text

const QUARTERS = ['0°', '90° to the right', '180°', '90° to the left'] as const

const BATTINGS: Readonly<Record<BattingId, string>> = {
  'cotton-scrim': 'Cotton, needled, with scrim',
  'cotton-needled': 'Cotton, needled',
  bamboo: 'Bamboo and cotton',
  'cotton-natural': 'Cotton, natural, thin',
  wool: 'Wool',
  'polyester-thick': 'Polyester, thick',
  'cotton-no-scrim': 'Cotton, traditional, no scrim',
  'cotton-bleached': 'Cotton, bleached, unbonded',
  'in-use': 'Any batting, for a quilt that is used a lot',
}

const CHART_PIECES: Readonly<Record<ChartPieceId, string>> = {
  'large-square': '1 large square',
  'small-squares': '4 small squares',
  squares: '2 squares',
  'centre-square': '1 centre square',
  'halved-squares': '2 squares, halved',
  'across-on-point': 'across on point',
  'side-square': '4 sides: a square, quartered',
  'corner-square': '2 corners: a square, halved',
}

/** `two geese with Moss on the left and Plum on the right, tip up`. */
function geeseWords(geese: readonly GeeseOfWings[]): string {
  const each = geese.map(
    ({ count, left, right }) =>
      `${inWords(count, 'goose', 'geese')} with ${left === right ? `both wings ${left}` : `${left} on the left and ${right} on the right`}`,
  )
  return `${each.join('; ')}${geese.some(({ left, right }) => left !== right) ? ', tip up' : ''}`
}
const joined = (words: readonly (string | number)[]): string =>
  words.length < 2 ? String(words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`

const QUILT_CHAPTERS = {
  frame: 'Frame the blocks',
  layer: 'Layer the blocks',
  quilt: 'Quilt the blocks',
  join: 'Join the quilt',
  finish: 'Finish the quilt',
} as const

const QUILT_FINISHES = {
  sash: 'Add the sashing round the outside',
  borders: 'Add the borders',
  layer: 'Layer the quilt',
  quilt: 'Quilt it',
  binding: 'Bind the edge',
  rim: 'Fold the rim over',
  label: 'Add a label',
  sleeve: 'Add a hanging sleeve',
} as const

const QUILT_CUTS = {
  'block-border': 'borders of the blocks',
  frame: 'framing strips',
  plain: 'plain pieces',
  sash: 'sashing',
  corner: 'corner squares of the sashing',
  strip: 'joining strips',
  border: 'borders of the quilt',
} as const

/** `position 4`, `positions 1, 3 and 5–8`. */
const positionsWords = (numbers: readonly number[]): string => `position${numbers.length === 1 ? '' : 's'} ${joined(runsOf(numbers))}`

const NTH_BORDER = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth']

export const english: Words = {
  ...boardEnglish,
  'press-line': ({ line, number, how }) => `${line === 'row' ? 'Row' : 'Column'} ${number}: ${pressedInEnglish(how, line)}`,
  'press-between': ({ line, how }) => `Between the ${line}s: ${pressedInEnglish(how, line)}`,
  'lines-alternate': ({ line }) => `Each ${line} is pressed the opposite way to the next, so their seams nest where they meet.`,

  'step-make-units': ({ count, kind, hand, labels }) =>
    `Make ${count} ${kindWords(kind, count)}${hand === null ? '' : `, ${hand} hand`}: ${joined(labels)}`,
  'step-lay-out': 'Lay out the block',
  'step-sew-line': ({ line, places, alike }) => `Sew ${line}${places.length > 1 ? 's' : ''} ${joined(places)}${alike > 1 ? `: make ${alike}` : ''}`,
  'step-join-lines': ({ line }) => `Join the ${line}s`,
  'step-sew-block': 'Sew the block',
  'step-border': ({ border, part }) =>
    `Add the ${border === null ? '' : `${NTH_BORDER[border - 1] ?? `${border}th`} `}border: ${part === 'sides' ? 'the sides' : 'top and bottom'}`,

  'not-json': 'this isn’t a block file; open a file that Nestwright saved',
  'other-format': ({ value }) => `is ${found(value)}; a block file says "nestwright.block"`,
  'newer-version': ({ version }) => `is ${version}, from a newer Nestwright; update Nestwright to open it`,
  'other-version': ({ value }) => `is ${found(value)}; give 1`,
  'not-object': ({ value }) => `is ${found(value)}; give an object in braces`,
  'not-list': ({ value }) => `is ${found(value)}; give a list in brackets`,
  'not-one-of': ({ value, known }) => `is ${found(value)}; give one of ${known.join(', ')}`,
  'not-flag': ({ value }) => `is ${found(value)}; give true or false`,
  'too-deep': ({ most }) => `has lists or objects nested more than ${most} deep; open a file that Nestwright saved`,
  'too-many-values': ({ most }) => `has more than ${most / 1e6} million values; open a file that Nestwright saved`,
  'not-length': ({ value }) => `is ${found(value)}; give a length such as 3 or "2 1/2"`,
  'list-too-long': ({ count, most }) => `has ${count} entries; give at most ${most}`,
  'length-not-above-zero': ({ value }) => `is ${found(value)}; give a length above zero`,
  'length-beyond-rulers': ({ value }) => `is ${found(value)}, too small or too large to measure; give a length such as 3 or "2 1/2"`,
  'not-measure': ({ value }) => `is ${found(value)}; give "in" or "cm"`,
  'not-block-count': ({ value, most }) => `is ${found(value)}; give a whole number of blocks from 1 to ${most}`,
  'not-cell-count': ({ value, most }) => `is ${found(value)}; give a whole number of cells from 1 to ${most}`,
  'not-id': ({ value }) => `is ${found(value)}; give 1 to 64 letters, digits, ".", "_" or "-"`,
  'id-taken': ({ value }) => `is ${found(value)}, which is already used; give it another id`,
  'not-name': ({ value }) => `is ${found(value)}; give a name in quotes`,
  'name-too-long': ({ count, most }) => `has ${count} letters; give a name of at most ${most}`,
  'not-text': ({ value }) => `is ${found(value)}; give text in quotes`,
  'text-too-long': ({ count, most }) => `has ${count} letters; give at most ${most}`,
  'not-colour': ({ value }) => `is ${found(value)}; give a colour as "#rrggbb"`,
  'not-print-colour': ({ value }) => `is ${found(value)}; give the print colour as "#rrggbb"`,
  'not-print-photo': ({ value, most }) => `is ${found(value)}; give a photo as "data:image/jpeg;base64,…" of at most ${most} characters`,
  'photograph-size': ({ width, height, most }) => `is ${width} × ${height} pixels; give a picture of 1 to ${most / 1e6} million pixels`,
  'not-photograph': ({ value }) => `is ${found(value)}; give a picture as "data:image/jpeg;base64,…" or "data:image/png;base64,…"`,
  'unknown-fabric': ({ value }) => `names the fabric ${found(value)}, which isn’t in the list of fabrics; add it, or use another`,
  'not-position': ({ value }) => `is ${found(value)}; give cells as a number or as a fraction such as "1/3"`,
  'position-too-far': ({ value, most }) => `is ${found(value)}; stay within ${most} cells`,
  'position-not-exact': ({ value }) => `is ${found(value)}, too fine a fraction beside the other positions; use a simpler one`,
  'not-pair': ({ value }) => `is ${found(value)}; give two numbers in brackets`,
  'too-many-units': ({ count, most }) => `has ${count} units; a block has at most ${most}`,
  'method-of-another-kind': ({ value, kind, known }) =>
    `is ${found(value)}, which doesn’t make ${kindWords(kind, 2)}; give one of ${known.join(', ')}`,
  'too-many-patches': ({ count, most }) => `names ${count} patches; a unit has at most ${most}`,
  'strips-with-hole': ({ value }) => `names ${found(value)}; number the strips from strip1 with none missing`,
  'unknown-patch': ({ value, kind, known }) => `names ${found(value)}, which ${kindWords(kind, 2)} don’t have; they have ${known.join(', ')}`,
  'patch-without-fabric': ({ patch }) => `has no fabric for ${patch}; add one`,
  'size-not-above-zero': ({ value }) => `is ${found(value)}; give a width and a height above zero`,
  'name-quilt': 'rename the quilt',
  'put-in-places': ({ places }) => (places === 1 ? 'put something in a position' : 'fill positions'),
  'swap-places': 'swap two positions',
  'move-place': 'move to another position',
  'turn-places': ({ places }) => (places === 1 ? 'turn a block' : 'turn blocks'),
  'resize-place': 'resize a position',
  'clear-places': ({ places }) => (places === 1 ? 'clear a position' : 'clear positions'),
  'press-places': ({ places }) => (places === 1 ? 'press a block the other way' : 'press blocks the other way'),
  'hold-places': ({ places }) => (places === 1 ? 'hold a position as it is' : 'hold positions as they are'),
  'frame-places': ({ places }) => (places === 1 ? 'change the frame of a position' : 'change frames'),
  'tick-places': ({ places }) => (places === 1 ? 'tick off a position' : 'tick off positions'),
  'set-frame': 'change the frame of all positions',
  'set-quilt-grid': 'change the number of positions',
  'set-place-size': 'change the size of a position',
  'set-joining': 'change the way of joining',
  'set-sashing': 'change the sashing',
  'take-turns': 'turn and press so the blocks nest',
  'set-parts': 'change the parts for a class',
  'wear-fabric': 'change a block’s fabric',
  'update-block': 'bring a block up to date',
  'remove-block': 'delete a block from the quilt',
  'positions-empty': 'This position is empty. Put a block or a plain piece there.',
  'positions-overlap': 'These positions overlap. Move one of them.',
  'position-outside': 'This position lies outside the quilt. Move it in, or make the quilt larger.',
  'block-too-large': 'The block is too large for its position. Make the position larger, or the framing strips narrower.',
  'block-too-small': 'The block needs framing strips to fill its position. Let the last ones take what is left.',
  'no-straight-order':
    'These positions can’t be joined by straight seams, and Nestwright can’t plan any others for a quilt. Change how they are laid out.',
  'points-hidden': 'What lies over the edge will hide points there. Frame these blocks.',
  'sash-wide': 'The sashing is wider than a quarter of the block. Narrower sashing keeps the blocks in view.',
  'in-block': ({ block, says }) => `${block}: ${say(english, says)}`,
  'fronts-apart': 'Strips or edges keep the blocks apart, so no seams of two blocks meet.',
  'fronts-nest': 'All seams of neighbouring blocks nest.',
  'fronts-proved': ({ clashes }) =>
    `${clashes === 1 ? 'One crossing' : `${clashes} crossings`} between blocks can’t nest, however the joins are pressed.`,
  'fronts-searched': ({ clashes, atLeast }) =>
    `${clashes === 1 ? 'One crossing doesn’t' : `${clashes} crossings don’t`} nest between blocks. At least ${atLeast} can’t; not every choice was tried.`,
  'quilt-chapter': ({ chapter }) => QUILT_CHAPTERS[chapter],
  'quilt-block-chapter': ({ block, count }) => `${block}: make ${count}`,
  'quilt-frame': ({ block, positions }) => `Frame ${block}: ${positionsWords(positions)}`,
  'quilt-layer': ({ positions }) => `Layer ${positionsWords(positions)}`,
  'quilt-positions': ({ positions }) => `Quilt ${positionsWords(positions)}`,
  'quilt-press-other': ({ positions }) => `Press the other way for ${positionsWords(positions)}`,
  'quilt-join': ({ sides: [one, other] }) => `Join ${positionsWords(one)} to ${positionsWords(other)}`,
  'quilt-finish': ({ step }) => QUILT_FINISHES[step],
  'cut-for-quilt': ({ part, each }) => `${QUILT_CUTS[part]}${each > 1 ? `; sew ${each} end to end for each long one` : ''}`,
  'press-position': ({ column, row, press }) =>
    `Press the block in column ${column}, row ${row} ${press === 'opposite' ? 'the other way' : 'as planned'}.`,
  'press-position-seam': ({ column, row }) => `In the block in column ${column}, row ${row}, press the seam that ends here the other way.`,
  'turn-position': ({ column, row, quarters }) => `Rotate the block in column ${column}, row ${row} ${QUARTERS[quarters]}.`,
  'unknown-block': ({ value }) => `names the block ${found(value)}, which isn’t in the list of blocks; add it, or use another`,
  'unknown-place': ({ value }) => `names the position ${found(value)}, which isn’t in the list of places; add it, or use another`,
  'unknown-worn': 'is no fabric of this block; name one of the fabrics that the block uses',
  'block-or-plain': 'needs a block or a plain fabric: give one of the two, not both',
  'another-measure': 'isn’t the quilt’s unit of measure; use the same one throughout',
  'another-seam': 'isn’t the quilt’s seam allowance; use the same one throughout',
  'length-below-zero': ({ value }) => `is ${found(value)}; give 0 or more`,
  'borders-need-whole': 'go round a quilt that is quilted whole; with blocks quilted first, use framing strips instead',
  'round-without-width': 'is missing; only the last framing strip may leave out its width',
  'not-whole-cells': ({ value, least }) => `is ${found(value)}; give two whole numbers${least > 0 ? ', each 1 or more' : ''}`,
  'not-turn': ({ value }) => `is ${found(value)}; give quarter turns clockwise: 0, 1, 2 or 3`,
  'not-square': ({ value, kind }) => `is ${found(value)}; ${kindWords(kind, 2)} are square: give the same width and height`,
  'not-goose': ({ value }) => `is ${found(value)}; a goose is twice as wide as it is high`,
  'corner-not-above-zero': ({ value }) => `is ${found(value)}; give the side of the clipped corners in cells, above zero`,
  'corners-overlap': ({ value }) => `is ${found(value)}, so the clipped corners overlap; make them smaller`,
  'corners-leave-no-centre': ({ value }) => `is ${found(value)}, so nothing is left of the centre; make the corners smaller`,
  'too-few-corners': ({ count }) => `has ${count} corners; a patch needs at least three`,
  'too-many-corners': ({ count, most }) => `has ${count} corners; a patch has at most ${most}`,
  'crossed-outline': 'make an outline that crosses itself or is empty; go round it once',
  'no-copied-units': 'there is nothing to paste; copy some units first',
  'newer-copied-units': 'these units come from a newer Nestwright; update this one first',
  'other-blocks-format': ({ format }) => `is not "${format}"; open a file of blocks that Nestwright saved`,
  'blocks-version': 'is not 1; give 1',
  'blocks-list': 'isn’t a list; give a list in brackets',
  'blocks-entry': 'isn’t a block; give an object in braces',
  'blocks-id': 'isn’t an id; give 1 to 64 letters, digits, ".", "_" or "-"',
  'blocks-time': 'isn’t a time; give milliseconds since 1970',
  'blocks-copy': 'isn’t a version; give an object in braces',
  'blocks-copy-name': 'isn’t a name; give a name in quotes, or null',

  'move-turn-block': ({ quarters }) => `Rotate the whole block ${QUARTERS[quarters]}.`,
  'move-turn': ({ unit, quarters }) => `Rotate ${unitInEnglish(unit)} ${QUARTERS[quarters]}.`,
  'move-swap': ({ units: [one, other] }) => `Swap ${unitInEnglish(one)} and ${unitInEnglish(other)}, each turned as planned.`,
  'move-sew-mirrored': ({ unit }) => `Sew ${unitInEnglish(unit)} again: this one is its mirror image.`,
  'move-sew': ({ unit }) => `Sew ${unitInEnglish(unit)} again: it isn’t in this block.`,
  'unit-missing': ({ unit }) => `${capital(unitInEnglish(unit))} is missing here.`,
  'unit-turned': ({ unit, quarters }) => `${capital(unitInEnglish(unit))} is turned. Rotate it ${QUARTERS[quarters]} to match the plan.`,
  'unit-mirrored': ({ unit }) => `${capital(unitInEnglish(unit))} is a mirror image.`,
  'unit-swapped': ({ unit }) => `Another unit is in the place of ${unitInEnglish(unit)}, which is somewhere else.`,
  'unit-other': ({ unit }) => `Another unit is in the place of ${unitInEnglish(unit)}, which isn’t in the block.`,

  'cut-for-borders': 'borders',
  'cut-for-border-corners': 'border corners',
  'cut-for-units': ({ kinds, method, larger, measure }) => {
    const what = kinds.length === 0 ? 'units' : kinds.map(nounsWords).join(' and ')
    const how = method === 'plain' ? '' : `, ${METHOD_WORDS[method]}`
    return `${what}${how}${larger.map((by) => `, cut ${sayLength(by, measure)} ${measure} larger, then trimmed`).join('')}`
  },
  'batches-of-geese': ({ batches, geese, spare }) => {
    const left = spare === 0 ? '' : `; ${inWords(spare, 'goose is', 'geese are')} spare`
    return `${capital(inWords(batches, 'batch', 'batches'))} of four ${batches === 1 ? 'makes' : 'make'} ${geese === 1 ? 'your goose' : 'all your geese'}${left}.`
  },
  'geese-listed': ({ geese }) => geeseWords(geese),
  'batch-makes': ({ geese }) => `Makes ${geeseWords(geese)}.`,
  'geese-to-keep': ({ geese }) => `Keep ${geeseWords(geese)}; the rest are spare.`,
  'measure-before-borders':
    'Measure the block through its middle, not along its edges, before you trim the strips to length; or take the average of three measurements. Sides first; measure again for top and bottom.',
  batting: ({ batting }) => BATTINGS[batting],
  'batting-size': ({ size }) => size,
  'chart-piece': ({ piece }) => CHART_PIECES[piece],

  'quarter-turn-not-square': 'a quarter turn needs a square block; use none or free',
  'copies-nest': 'All seam crossings between blocks nest.',
  'copies-clash': ({ clashes }) =>
    `${clashes === 1 ? 'One crossing between blocks doesn’t nest' : `${clashes} crossings between blocks don’t nest`}.`,
  'copies-clash-through': ({ clashes }) =>
    `${clashes === 1 ? 'One of them is a seam' : `${clashes} of them are seams`} running right across the block, pressed the same way at both ends. Rotate every other block, or press it the other way.`,
  'copies-clash-by-rule': ({ clashes }) =>
    `Some seams must go one way because of how the unit is made. If every other block pressed those the other way, ${clashes === 0 ? 'all crossings would nest' : `${clashes} ${clashes === 1 ? 'crossing' : 'crossings'} wouldn’t nest`}.`,
  'copies-searched-in-bands': ({ atLeast }) => `There are too many ways to try them all: at least ${atLeast} can’t nest, perhaps more.`,
  'copies-pressing-proved': 'No other pressing does better with the blocks turned like this: all were tried.',
  'copies-proved': 'No other way to turn and press the blocks does better: all were tried.',
  'clashes-inside': ({ clashes }) =>
    `Inside each block, ${clashes === 1 ? 'one more crossing doesn’t nest' : `${clashes} more crossings don’t nest`}.`,
  'rule-of-thumb': ({ units, outcome }) => {
    const rule =
      units % 2 === 0
        ? `The rule of thumb for an even number of units a side (${units} here) is to press all blocks the same way.`
        : `The rule of thumb for an odd number of units a side (${units} here) is to press every other block the other way.`
    if (outcome === 'as-said') return rule
    return outcome === 'nests-without'
      ? `${rule} Here all crossings nest without it.`
      : `${rule} That helps the short seams; the others still don’t nest.`
  },
}
