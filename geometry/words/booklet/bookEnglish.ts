/** What frames the steps, in English: facts, cautions, the seam allowance, templates, layering, quilting and the edge. */

const listed = (words: readonly (string | number)[]): string =>
  words.length < 2 ? String(words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
const count = (number: number, one: string, many = `${one}s`): string => `${number} ${number === 1 ? one : many}`
const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** A row, column, section or the block in the test of the seam allowance. */
interface TestedPiece {
  readonly name: string
  /** Several alike ones. */
  readonly many: boolean
  readonly seams: number
}

export const bookEnglish = {
  parts: {
    cut: 'Cut',
    units: 'Make the units',
    'lay out': 'Lay out',
    join: 'Join',
    borders: 'Add the borders',
    sandwich: 'Layer',
    quilt: 'Quilt',
    finish: 'Finish',
  },
  introduction: (name: string | null, finished: string, framed: string | null) =>
    `${name === null ? 'This block' : `“${name}”`} measures ${finished} finished${framed === null ? '' : `, and ${framed} with its borders`}. Read all the steps before you cut.`,
  facts: {
    makes: 'Makes',
    finished: 'Finished size',
    unfinished: 'Unfinished size',
    withBorders: 'With its borders, unfinished',
    allowance: 'Seam allowance',
    pieces: 'Pieces to cut',
    sewnIn: 'Sewn in',
    seams: 'Seams',
  },
  blocks: (number: number) => count(number, 'block'),
  orders: { rows: 'rows', columns: 'columns', sections: 'sections' },

  cautions: {
    first: {
      title: 'First of all',
      sentences: [
        'If your tool’s instructions or your teacher say otherwise, follow them.',
        'Wear shoes, keep the floor clear of leads and pins, and know where the plug is.',
      ],
    },
    blade: {
      title: 'Rotary cutter',
      sentences: [
        'Close the blade after every cut, before you put it down.',
        'Stand up, and cut away from yourself, along a ruler, on a mat.',
        'Keep your fingers behind the ruler’s edge, and keep pins off the mat.',
        'Change a dull blade, and wrap the old one before you throw it away. Children cut only with a grown-up beside them.',
      ],
    },
    iron: {
      title: 'Iron and steam',
      sentences: [
        'Stand the iron on its heel, out of reach of children. Unplug it after use: pull the plug, not the cord.',
        'Keep your hands dry and out of the steam. Let the fabric cool before you touch a seam.',
      ],
    },
    needle: {
      title: 'Needle and presser foot',
      sentences: [
        'Keep your fingers beside the presser foot, never in front of the needle.',
        'Take pins out before they reach the needle, and keep them in a pincushion, not in your mouth.',
        'Switch the machine off before you thread it or change the needle.',
      ],
    },
    glue: {
      title: 'Glue, spray and pins',
      sentences: [
        'Use basting glue or spray as the label says, with a window open and away from the iron. Keep it away from children.',
        'Count the pins as they go in, and again as they come out.',
      ],
    },
  },
  allowanceIncluded: (seam: string) => `All sizes include seam allowances of ${seam}. Whether you sew them full or scant is your choice.`,
  scantAllowance: (seam: string, geese: boolean) =>
    geese
      ? `Many sew a full ${seam} for geese made four at a time, and a scant one, a thread or two less, for joining. That keeps a full ${seam} above the point. Others sew scant throughout, and trim.`
      : `Many sew a scant ${seam} throughout: a thread or two less.`,
  foldTakesFabric: 'The thread and the fold of each seam take up a little fabric. So with a full allowance every piece comes out a little too small.',
  findYours: ({ strip, across, middle }: { readonly strip: string; readonly across: string; readonly middle: string }) =>
    `To find yours: sew three strips, each ${strip} wide, side by side, and press. If they measure ${across} across and the middle one exactly ${middle}, your allowance is right. If they measure less, sew a thread narrower.`,

  cannotSewYet: 'This block can’t be sewn yet. Fix these first, then make the booklet again.',
  square: (column: number, row: number) => `column ${column}, row ${row}`,
  placed: (places: readonly string[], rest: number, said: string) => `${capital(places.join('; '))}${rest > 0 ? ` and ${rest} more` : ''}: ${said}`,
  setInSeams: (number: number) =>
    `${number === 1 ? '1 seam is' : `${number} seams are`} set in at a corner. Sew slowly, and mark the corners as ${number === 1 ? 'its step says' : 'their steps say'}.`,
  partialSeams: (number: number) =>
    `${number === 1 ? '1 seam is' : `${number} seams are`} sewn only part of the way at first. Finish ${number === 1 ? 'it' : 'them'} once the neighbours are on.`,
  grainAtEdge: (letters: readonly string[]) =>
    `${letters.length === 1 ? 'Template' : 'Templates'} ${listed(letters)} ${letters.length === 1 ? 'has' : 'each have'} an edge on the outside of the block. Lay the arrow along the grain of the fabric, so that edge doesn’t stretch.`,
  lettered: (letters: readonly string[], said: string) => `${listed(letters)}: ${said}`,
  toFinish: (layers: string, binding: string, blocks: number) =>
    `To finish${blocks > 1 ? ' each block' : ''}: ${layers}; ${binding} of fabric for the binding.`,
  tools: (templates: boolean) =>
    `Tools: rotary cutter, ruler and mat; sewing machine and thread; pins; iron; a pencil or chalk that washes out${templates ? '; card and paper scissors for the templates' : ''}.`,

  template: (letters: string, kind: string) => `Template ${letters}, ${kind}`,
  cutWithTemplate: (fabric: string, plain: number, flipped: number) =>
    `${fabric}: ${listed([...(plain > 0 ? [`cut ${plain} as drawn`] : []), ...(flipped > 0 ? [`cut ${flipped} with the template flipped`] : [])])}.`,
  howToCutTemplate: (seam: string, notches: boolean) =>
    `Cut on the outer line, ${seam} outside the seam line. Lay the arrow along the straight grain.${notches ? ' Mark the notches: that’s where the neighbours’ seams meet it.' : ''}`,
  markCornerDots: 'Mark the dots too, on the wrong side: seams start and stop there.',
  templatePicture: (name: string, notches: boolean) =>
    `${name}: the cutting line, the seam line inside it, an arrow along the grain${notches ? ', notches where seams meet it' : ''}.`,

  nothingToCheck: 'There’s nothing to check: this block has no seams.',
  nothingDepends: 'There’s nothing to check: all that is sewn here keeps its size, or is trimmed to it.',
  noRectangle: 'No piece of this block is a rectangle, so there’s no size to check.',
  wholeBlock: 'The block',
  blockWithBorders: 'The block with its borders',
  ifOff: ({
    off,
    what,
    planned,
    wide,
    narrow,
  }: {
    readonly off: string
    readonly what: string
    readonly planned: string
    readonly wide: string
    readonly narrow: string
  }) =>
    `Every seam takes two allowances. If each is ${off} too wide, ${what.charAt(0).toLowerCase()}${what.slice(1)} comes out ${wide} instead of ${planned}. If each is ${off} too narrow, it comes out ${narrow}.`,
  seamsCrossed: (across: number, down: number) =>
    `That is ${count(across, 'seam')} across and ${count(down, 'seam')} down, where there are most. Units trimmed to size count as one piece.`,
  unequal: (most: TestedPiece, least: TestedPiece, down: boolean, apart: string) =>
    `${capital(most.name)} ${most.many ? 'have' : 'has'} ${count(most.seams, 'seam')} ${down ? 'down' : 'across'}, ${least.name.charAt(0).toLowerCase()}${least.name.slice(1)} ${least.many ? 'have' : 'has'} ${least.seams}. With allowances that wide, ${most.name.charAt(0).toLowerCase()}${most.name.slice(1)} ${most.many ? 'come' : 'comes'} out ${apart} shorter, and they no longer match.`,

  stopHere: 'If this block becomes part of a quilt, stop here: join it to its neighbours before you layer and quilt.',
  layersPicture: {
    backing: 'backing, wrong side up',
    batting: 'batting',
    title: 'Three layers: the backing at the bottom, wrong side up, the batting on it, and the top, right side up.',
  },
  layerTitle: 'Layer the sandwich',
  pressTop: 'Press the top once more, and snip loose threads so that none show through.',
  cutLayers: (layers: string) => `Cut ${layers}.`,
  layers: (backing: string, batting: string) =>
    backing === batting ? `backing and batting ${backing} each` : `the backing ${backing} and the batting ${batting}`,
  tapeBacking: 'Tape the backing down, wrong side up, smooth but not stretched. Centre the batting on it, then the top, right side up.',
  pinLayers: 'Pin or tack through all three layers, from the middle outward, about a hand’s width apart. Keep pins off the seams you’ll quilt along.',
  finishTitle: 'Finish the edge',
  trimLayers: 'Trim the backing and batting level with the top, with square corners.',
  binding: ({ strips, width, length }: { readonly strips: number; readonly width: string; readonly length: string }) =>
    `For the binding, cut ${count(strips, 'strip')} ${width} wide across the fabric.${strips > 1 ? ` Join them with slanting seams to make ${length}.` : ''} Press the ${strips > 1 ? 'long strip' : 'strip'} in half lengthwise, wrong sides together.`,
  sewBinding: 'Sew it to the front along the raw edges, with a mitre at each corner. Fold it to the back and stitch it down.',
  sewLabel: 'Sew a label on the back: who made it, where and when.',
  bindingPicture: 'The binding round the edge, a mitre in each corner.',

  quilt: {
    pictures: {
      whole: 'The quilting line along the seams, its stops numbered from start to end.',
      fills: 'The lines that fill the patches.',
      place: (part: number, of: number) => `Part ${part} of ${of} in the block.`,
      part: (part: number) => `The quilting line of part ${part}, its stops numbered from start to end.`,
    },
    title: 'Quilt along the seams',
    low: 'Stitch on the low side of each seam, away from its allowances. Where a seam is pressed open, stitch in the middle of it. A walking foot keeps the layers together.',
    fills: (number: number, spacing: string) =>
      `Then fill the patches as the dashed lines show: ${count(number, 'line')}, ${spacing} apart. Each has its own start.`,
    secure: 'Secure both ends of every line.',
    along: (length: string, lines: number, twice: string | null) =>
      `Quilt in the ditch, along the seams: ${length} of quilting in ${lines === 1 ? 'one line' : count(lines, 'line')}. ${twice === null ? 'No seam is stitched twice.' : `${twice} of it is stitched twice.`}`,
    begin: (twice: boolean) =>
      `Begin at “Start 1” and stop at “End”. Go from each number straight to the next, the way the arrows point.${twice ? ' Where two lines run side by side, you stitch that seam twice.' : ''}`,
    again: 'At each “End”, cut the threads and begin again at the next “Start”.',
    inParts: (length: string, parts: number) =>
      `Quilt in the ditch, along the seams: ${length} of quilting in ${parts} parts. Begin with part 1, in the middle, and work outward.`,
    beginParts:
      'In each part, begin at “Start 1” and stop at “End”. Go from each number straight to the next, the way the arrows point. Where two lines run side by side, you stitch that seam twice.',
    againInParts: 'Where a part has more than one “Start”, cut the threads at each “End” and begin again at the next.',
    length: (length: string) => `Quilt in the ditch, along the seams: ${length} of quilting.`,
    onScreen: 'This line has too many turns for paper. On the screen, open Quilting and move the needle along the line to see where it goes next.',
  },
}
