/** English for all that the geometry says. */
import { sayLength } from '../exact/lengths.ts'
import type { BattingId, ChartPieceId, FoundValue, GeeseOfWings, Message } from '../values/messages.ts'
import { boardEnglish } from './boardEnglish.ts'
import { pressedInEnglish } from './pressEnglish.ts'
import { capital, inWords, kindWords, METHOD_WORDS } from './englishPhrases.ts'
import { say, type Words } from './words.ts'

export const inEnglish = (message: Message): string => say(english, message)

const found = (value: FoundValue): string =>
  value === 'missing' ? 'missing' : value === 'list' ? 'a list' : value === 'object' ? 'an object' : value.text

const QUARTERS = ['not at all', 'a quarter to the right', 'half round', 'a quarter to the left'] as const

const BATTINGS: Readonly<Record<BattingId, string>> = {
  'cotton-scrim': 'Cotton, needled, with scrim',
  'cotton-needled': 'Cotton, needled',
  bamboo: 'Bamboo and cotton',
  'cotton-natural': 'Cotton, natural, thin',
  wool: 'Wool',
  'polyester-thick': 'Polyester, thick',
  'cotton-no-scrim': 'Cotton, old style, without scrim',
  'cotton-bleached': 'Cotton, bleached, unbonded',
  'in-use': 'Any, for a quilt in use',
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

export const english: Words = {
  ...boardEnglish,
  'press-line': ({ line, number, how }) => `${line === 'row' ? 'Row' : 'Column'} ${number}: ${pressedInEnglish(how, line)}`,
  'press-between': ({ line, how }) => `Between the ${line}s: ${pressedInEnglish(how, line)}`,
  'lines-alternate': ({ line }) => `Each ${line} is pressed the opposite way to the next, so their seams nest where they meet.`,

  'not-json': 'this is not a block file: it is not JSON; choose a file that Nestwright saved',
  'other-format': ({ value }) => `is ${found(value)}; a block file says "nestwright.block"`,
  'newer-version': ({ version }) => `is ${version}, newer than this Nestwright reads; open it with a newer one`,
  'other-version': ({ value }) => `is ${found(value)}; give 1`,
  'not-object': ({ value }) => `is ${found(value)}; give an object in braces`,
  'not-list': ({ value }) => `is ${found(value)}; give a list in brackets`,
  'not-one-of': ({ value, known }) => `is ${found(value)}; give one of ${known.join(', ')}`,
  'not-flag': ({ value }) => `is ${found(value)}; give true or false`,
  'too-deep': ({ most }) => `holds lists or objects more than ${most} deep in each other; choose a file that Nestwright saved`,
  'not-length': ({ value }) => `is ${found(value)}; give a length such as 3 or "2 1/2"`,
  'length-not-above-zero': ({ value }) => `is ${found(value)}; give a length above zero`,
  'length-beyond-rulers': ({ value }) => `is ${found(value)}, which no ruler shows; give a length such as 3 or "2 1/2"`,
  'not-measure': ({ value }) => `is ${found(value)}; give "in" or "cm"`,
  'not-cell-count': ({ value, most }) => `is ${found(value)}; give a whole number of cells from 1 to ${most}`,
  'not-id': ({ value }) => `is ${found(value)}; give 1 to 64 letters, digits, ".", "_" or "-"`,
  'id-taken': ({ value }) => `is ${found(value)}, which another one has already; give it an id of its own`,
  'not-name': ({ value }) => `is ${found(value)}; give a name in quotes`,
  'name-too-long': ({ count, most }) => `has ${count} letters; give a name of at most ${most}`,
  'not-text': ({ value }) => `is ${found(value)}; give words in quotes`,
  'text-too-long': ({ count, most }) => `has ${count} letters; give at most ${most}`,
  'not-colour': ({ value }) => `is ${found(value)}; give a colour as "#rrggbb"`,
  'not-print-colour': ({ value }) => `is ${found(value)}; give the colour of what is printed as "#rrggbb"`,
  'not-print-photo': ({ value, most }) => `is ${found(value)}; give a photograph as "data:image/jpeg;base64,…" of at most ${most} characters`,
  'not-photograph': ({ value }) => `is ${found(value)}; give a picture as "data:image/jpeg;base64,…" or "data:image/png;base64,…"`,
  'unknown-fabric': ({ value }) => `names the fabric ${found(value)}, which is not among the fabrics; add it or name another`,
  'not-position': ({ value }) => `is ${found(value)}; give cells as a number or as a fraction such as "1/3"`,
  'position-too-far': ({ value, most }) => `is ${found(value)}; stay within ${most} cells`,
  'position-not-exact': ({ value }) => `is ${found(value)}, which cannot be held exactly beside the other positions; use simpler fractions of a cell`,
  'not-pair': ({ value }) => `is ${found(value)}; give two numbers in brackets`,
  'too-many-units': ({ count, most }) => `holds ${count} units; a block has at most ${most}`,
  'method-of-another-kind': ({ value, kind, known }) => `is ${found(value)}, which does not make a ${kind}; give one of ${known.join(', ')}`,
  'too-many-patches': ({ count, most }) => `names ${count} patches; a unit has at most ${most}`,
  'strips-with-hole': ({ value }) => `names ${found(value)}; number the strips from strip1 without a hole`,
  'unknown-patch': ({ value, kind, known }) => `names ${found(value)}, which a ${kind} does not have; it has ${known.join(', ')}`,
  'patch-without-fabric': ({ patch }) => `does not say which fabric ${patch} is of; name one`,
  'size-not-above-zero': ({ value }) => `is ${found(value)}; give a width and a height above zero`,
  'not-turn': ({ value }) => `is ${found(value)}; give quarter turns clockwise: 0, 1, 2 or 3`,
  'not-square': ({ value, kind }) => `is ${found(value)}; a ${kind} is square, give the same width and height`,
  'not-goose': ({ value }) => `is ${found(value)}; a goose is twice as wide as high before it is turned`,
  'corner-not-above-zero': ({ value }) => `is ${found(value)}; give the leg of the clipped corners in cells, above zero`,
  'corners-overlap': ({ value }) => `is ${found(value)}, so that the clipped corners overlap; give a shorter leg`,
  'corners-leave-no-centre': ({ value }) => `is ${found(value)}, so that nothing is left of the centre; give a shorter leg`,
  'too-few-corners': ({ count }) => `has ${count} corners; a patch needs at least three`,
  'too-many-corners': ({ count, most }) => `has ${count} corners; a patch has at most ${most}`,
  'crossed-outline': 'cross or touch each other, or leave no cloth; draw the outline once round without crossing it',
  'no-copied-units': 'what was copied holds no units; copy units on a board first',
  'newer-copied-units': 'these units were copied from a newer Nestwright; open the block with a newer one',
  'other-blocks-format': ({ format }) => `is not "${format}"; choose a file in which Nestwright saved blocks`,
  'blocks-version': 'is not 1; give 1',
  'blocks-list': 'is no list; give a list in brackets',
  'blocks-entry': 'is no block; give an object in braces',
  'blocks-id': 'is no id; give 1 to 64 letters, digits, ".", "_" or "-"',
  'blocks-time': 'is no time; give milliseconds since 1970',
  'blocks-copy': 'is no version; give an object in braces',
  'blocks-copy-name': 'is no name; give a name in quotes, or null',

  'move-turn-block': ({ quarters }) => `Turn the whole block ${QUARTERS[quarters]}.`,
  'move-turn': ({ unit, quarters }) => `Turn ${unit} ${QUARTERS[quarters]}.`,
  'move-swap': ({ units: [one, other] }) => `Swap the units at ${one} and ${other}, each turned as it was laid.`,
  'move-sew-mirrored': ({ unit }) => `Sew ${unit} anew: this one is its mirror image.`,
  'move-sew': ({ unit }) => `Sew ${unit} anew: no such unit lies here.`,
  'unit-missing': ({ unit }) => `No unit of the size of ${unit} lies here.`,
  'unit-turned': ({ unit, quarters }) => `${unit} is turned: it was laid ${QUARTERS[quarters]} from this.`,
  'unit-mirrored': ({ unit }) => `${unit} came out as its mirror image.`,
  'unit-swapped': ({ unit }) => `Another unit lies where ${unit} was laid; one like it lies elsewhere.`,
  'unit-other': ({ unit }) => `Another unit lies where ${unit} was laid, and none like it anywhere.`,

  'cut-for-borders': 'borders',
  'cut-for-border-corners': 'corners of borders',
  'cut-for-units': ({ kinds, method, larger, measure }) => {
    const what = kinds.length === 0 ? 'units' : kinds.map((kind) => kindWords(kind, 2)).join(' and ')
    const how = method === 'plain' ? '' : `, ${METHOD_WORDS[method]}`
    return `${what}${how}${larger.map((by) => `, cut ${sayLength(by, measure)} ${measure} larger to be trimmed`).join('')}`
  },
  'batches-of-geese': ({ batches, geese, spare }) => {
    const left = spare === 0 ? '' : `; ${inWords(spare, 'goose is', 'geese are')} spare`
    return `${capital(inWords(batches, 'batch', 'batches'))} of four ${batches === 1 ? 'makes' : 'make'} ${geese === 1 ? 'your goose' : 'all your geese'}${left}.`
  },
  'geese-listed': ({ geese }) => geeseWords(geese),
  'batch-makes': ({ geese }) => `Makes ${geeseWords(geese)}.`,
  'geese-to-keep': ({ geese }) => `Keep ${geeseWords(geese)}; the rest are spare.`,
  'measure-before-borders':
    'Before you cut, measure the sewn piece through its middle, not along its edges, and cut both strips of a pair to that length; or take the mean of three measurements. Sides first; measure again for top and bottom.',
  batting: ({ batting }) => BATTINGS[batting],
  'batting-size': ({ size }) => size,
  'chart-piece': ({ piece }) => CHART_PIECES[piece],

  'quarter-turn-not-square': 'a quarter turn needs a block as wide as it is high; choose none or free',
  'copies-nest': 'Every pair of seams that meets between blocks nests.',
  'copies-clash': ({ clashes }) => `${clashes === 1 ? 'One meeting clashes' : `${clashes} meetings clash`} between blocks.`,
  'copies-clash-through': ({ clashes }) =>
    `${clashes === 1 ? 'One of them is a seam' : `${clashes} of them are seams`} running through the block from edge to edge, leaning the same way at both ends: a copy set the same way meets it pressed alike. Turn every other block, or press it the opposite way.`,
  'copies-clash-by-rule': ({ clashes }) =>
    `Some are seams whose way a method settles (geese toward their wings, flipped corners toward the corner), so both sides lie alike. With those of every other block pressed the other way, ${clashes === 0 ? 'none' : clashes} would clash.`,
  'copies-searched-in-bands': ({ atLeast }) => `The choice was sought band by band: no fewer than ${atLeast} can be had, perhaps more.`,
  'copies-pressing-proved': 'With these turns no other choice of pressings has fewer: all were weighed.',
  'copies-proved': 'No other choice of turns and pressings has fewer: all were weighed.',
  'clashes-inside': ({ clashes }) => `Each block has ${clashes === 1 ? 'one clash' : `${clashes} clashes`} of its own besides.`,
  'rule-of-thumb': ({ units, outcome }) => {
    const rule =
      units % 2 === 0
        ? `The rule of thumb for an even number of units a side (${units} here) is to press all blocks alike.`
        : `The rule of thumb for an odd number of units a side (${units} here) is to press every other block the opposite way.`
    if (outcome === 'as-said') return rule
    return outcome === 'nests-without'
      ? `${rule} Here all nests without it.`
      : `${rule} It speaks of the short seams; the others clash all the same, so the count above stands.`
  },
}
