/** What stands on the printed pages besides the steps, in English. */
import type { LineStyleWords, MarkWords } from './printedMarks.ts'

const count = (number: number, one: string, many = `${one}s`): string => `${number} ${number === 1 ? one : many}`

const LINES: LineStyleWords = {
  stitch: 'sew on this line',
  marked: 'draw this line',
  cut: 'cut on this line',
  fold: 'fold on this line',
  trim: 'trim on this line',
  blade: 'cut along this edge of the ruler',
}

const MARKS: MarkWords = {
  nests: 'seams nest here: butt them together',
  clashes: 'seams don’t nest here: pin, and sew slowly',
  open: 'one seam is pressed open: pin through both',
  pin: 'push a pin through both points',
  dot: 'start or stop at the dot, and backstitch',
  tip: 'keep this point: sew a thread’s width above it',
}

export const pagesEnglish = {
  untitled: 'Quilt block',
  subject: 'How to make a quilt block',
  page: (number: number, of: number) => `Page ${number} of ${of}`,
  by: (name: string) => `by ${name}`,
  contents: 'In this booklet',
  fabricsToBuy: 'Fabrics, and how much to buy',
  fabrics: 'Fabrics',
  buy: (amount: string) => `buy ${amount}`,
  noName: '(no name)',
  goodToKnow: 'Good to know',
  moreProblems: (rest: number) => `and ${rest} more, which the app shows on the board.`,
  beforeYouBegin: 'Before you begin',
  seamAllowance: 'Your seam allowance',
  whatPicturesShow: 'What the pictures show',
  lines: LINES,
  marks: MARKS,
  wrongSide: 'the wrong side of the fabric',
  pressThisWay: 'press the seam this way',
  measureThisFar: 'measure this far',
  straightGrain: 'the straight grain of the fabric',
  sewingOrder: 'the order in which to sew',
  quiltingLine: 'the quilting line and its stops',
  testSquare: 'Test square',
  testSquareAlt: (side: string) => `Test square: each side measures ${side} when the page is printed at its own size`,
  printAtFullSize: 'Print at 100 %, “actual size”, not “fit to page”. Then measure the square before you cut.',
  blockFile: 'The block file: open it, or this booklet, in Nestwright',
  theEnd: 'Your block is finished. The full edition of this booklet tells you how to layer, quilt and bind it.',
  ownWordsStale: 'These are the maker’s own words; the block has changed since they were written.',
  photograph: (title: string) => `Photograph: ${title}`,
  photographMissing: 'A photograph belongs here, but it could not be read.',

  templates: 'Templates, full size',
  noTemplates: 'This block needs no templates: every patch is cut as a square, a rectangle or a triangle from strips.',
  templatesFollow: 'They are on the pages that follow. Print those at 100 %, and measure the test square.',
  cutOf: (number: number, fabric: string) => `Cut ${number} of ${fabric}.`,
  cutOfFlipped: (plain: number, flipped: number, fabric: string) =>
    plain === 0 ? `Cut ${flipped} of ${fabric}, with the template flipped.` : `Cut ${plain} of ${fabric}, and ${flipped} with the template flipped.`,
  atFullSize: (name: string, size: string) => `${name}, at its own size: ${size} with its seam allowances`,
  sheetsToTape: (number: number) => `${count(number, 'sheet')} to tape together.`,
  howSheetsGo: (letter: string, rows: number, columns: number) =>
    `How the sheets of template ${letter} go together: ${count(rows, 'row')}, ${count(columns, 'column')}`,
  sheet: (at: number, of: number, row: readonly [number, number], column: readonly [number, number]) =>
    `Sheet ${at} of ${of}: row ${row[0]} of ${row[1]}, column ${column[0]} of ${column[1]}`,
  crossesOnCrosses: 'Lay crosses on crosses, then tape.',

  cutList: 'Cut list',
  nothingToCut: 'There is nothing to cut yet.',
  cutListHead: (seam: string) =>
    `Every size includes its seam allowances of ${seam}. Cut strips across the fabric first, the widest strip first. Then cut the pieces from the strips.`,
  haveReady: 'Have ready beside the fabrics',
  leastFound: (length: string) => `The least fabric found: ${length}.`,
  buyWide: (amount: string, width: string) => `buy ${amount}, ${width} wide`,
  colouringPage: 'Colouring page',
  outlinesAlt: (title: string) => `${title} in outlines, to colour in`,
  nothingToColour: 'There is nothing to colour yet.',
  allowanceTest: 'If every seam is a little off',
  allowanceHeads: (much: string): readonly string[] => [
    'Piece',
    'Seams across × down',
    'As planned',
    `Each allowance ${much} too wide`,
    `Each allowance ${much} too narrow`,
  ],
}
