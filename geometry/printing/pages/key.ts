/**
 * What the marks on the pictures mean: exactly those that are used, the arrow for pressing first.
 *
 * In      a print job with every picture of its steps.
 * Out     a sample of each mark with its words, in two columns.
 */
import { boxAt } from '../../writing/booklet/sketch.ts'
import type { Drawing, Mark, Spot } from '../../writing/booklet/values.ts'
import { fabricFills, paintFabric } from '../fabricFill.ts'
import type { BookletPhrases } from '../../words/booklet/bookletWords.ts'
import { drawPicture } from '../drawPicture.ts'
import { STYLES } from '../pageStyle.ts'
import type { Surface } from '../pen.ts'
import type { PrintJob } from '../printJob.ts'
import { polygon } from '../pen.ts'

interface KeyRow {
  readonly words: string
  readonly used: (mark: Mark) => boolean
  /** Draws a sample whose middle lies at a height, from left to right. */
  readonly sample: (surface: Surface, left: number, right: number, y: number) => void
}

/** A sample drawn as in any picture: places in points. */
const drawn =
  (marks: (left: number, right: number, y: number) => Mark[], weight = 1): KeyRow['sample'] =>
  (surface, left, right, y) =>
    drawPicture(
      surface,
      { width: right - left, height: 2, marks: marks(0, right - left, 1), title: '' },
      { at: [left, y - 1], scale: 1, fabricFill: NO_FABRIC, weight },
    )

/** Times the usual weight, for small marks. */
const LARGER = 1.3
const NO_FABRIC = fabricFills([])

const middle = (left: number, right: number, y: number): Spot => [(left + right) / 2, y]

const arrowRow = (words: string, means: 'press' | 'turn' | 'grain', heads: 1 | 2): KeyRow => ({
  words,
  used: (mark) => mark.type === 'arrow' && mark.means === means,
  sample: drawn((left, right, y) => {
    const [from, to]: [Spot, Spot] = [
      [left + 7, y],
      [right - 7, y],
    ]
    const centre = middle(left, right, y)
    if (heads === 1 || means === 'grain') return [{ type: 'arrow', from, to, means }]
    return [
      { type: 'arrow', from: centre, to, means },
      { type: 'arrow', from: centre, to: from, means },
    ]
  }),
})

const wrongSide = (words: string): KeyRow => ({
  words,
  used: (mark) => mark.type === 'area' && mark.side === 'wrong',
  sample: (surface, left, right, y) => {
    const box = boxAt(left, y - 5, right - left, 10)
    paintFabric(surface, box, fabricFills([{ id: 'any', name: 'Any', colour: '#c9bda9' }])('any'), 'wrong', 1, [left, y - 5])
    surface.path(polygon(box), { line: { colour: '#3c312b', width: 0.55 } })
  },
})

const rowsIn = (say: BookletPhrases['pages']): readonly KeyRow[] => [
  arrowRow(say.pressThisWay, 'press', 1),
  ...(Object.entries(say.lines) as [keyof typeof say.lines, string][]).map(
    ([style, words]): KeyRow => ({
      words,
      used: (mark) => mark.type === 'line' && mark.style === style,
      sample: drawn((left, right, y) => [
        {
          type: 'line',
          points: [
            [left, y],
            [right, y],
          ],
          style,
        },
      ]),
    }),
  ),
  wrongSide(say.wrongSide),
  arrowRow(say.measureThisFar, 'turn', 2),
  arrowRow(say.straightGrain, 'grain', 2),
  ...(Object.entries(say.marks) as [keyof typeof say.marks, string][]).map(
    ([kind, words]): KeyRow => ({
      words,
      used: (mark) => mark.type === 'point' && mark.mark === kind,
      sample: drawn((left, right, y) => [{ type: 'point', at: middle(left, right, y), mark: kind }], LARGER),
    }),
  ),
  {
    words: say.sewingOrder,
    used: (mark) => mark.type === 'point' && mark.mark === 'number',
    sample: drawn((left, right, y) => [{ type: 'point', at: middle(left, right, y), mark: 'number', text: '1' }]),
  },
  {
    words: say.quiltingLine,
    used: ({ type }) => type === 'leg',
    sample: drawn((left, right, y) => [
      {
        type: 'leg',
        points: [
          [left, y],
          [right, y],
        ],
        beside: [0],
      },
      { type: 'stop', at: [left + 3, y], text: '1', end: false },
    ]),
  },
]

const SAMPLE = 34

/** The rows that some pictures need, in the order in which they are sewn. */
function rowsFor(drawings: readonly Drawing[], say: BookletPhrases['pages']): KeyRow[] {
  const marks = drawings.flatMap((drawing) => drawing.marks)
  return rowsIn(say).filter(({ used }) => marks.some(used))
}

interface KeyColumns {
  readonly columns: readonly (readonly (KeyRow & { readonly lines: readonly string[]; readonly top: number })[])[]
  readonly height: number
}

/** The rows in columns of a width each, all words whole. */
export function keyColumns({ pages, drawings, say }: Pick<PrintJob, 'pages' | 'drawings' | 'say'>, width: number, number = 2): KeyColumns {
  const rows = rowsFor(drawings, say.pages).map((row) => ({ ...row, lines: pages.breakLines(row.words, STYLES.body, width - SAMPLE - 22) }))
  const heightOf = ({ lines }: { lines: readonly string[] }): number => lines.length * STYLES.body.lead + AIR
  const share = rows.reduce((sum, row) => sum + heightOf(row), 0) / number
  const columns = Array.from({ length: number }, (): (KeyRow & { lines: readonly string[]; top: number })[] => [])
  const tops = columns.map(() => 0)
  let column = 0
  for (const row of rows) {
    if ((tops[column] as number) >= share - 0.01 && column < number - 1) column += 1
    columns[column]?.push({ ...row, top: tops[column] as number })
    tops[column] = (tops[column] as number) + heightOf(row)
  }
  return { columns, height: Math.max(...tops) }
}

const AIR = 2

/** Draws the key from the pages' top on. */
export function keyOn({ pages }: Pick<PrintJob, 'pages'>, { columns }: KeyColumns, width: number): void {
  const { top } = pages
  columns.forEach((rows, column) => {
    const left = pages.left + column * width
    for (const { lines, sample, top: down } of rows) {
      pages.ornament(() => sample(pages.surface(), left, left + SAMPLE, top + down + STYLES.body.lead / 2))
      pages.tagged('P', () => pages.textBlock(lines, STYLES.body, left + SAMPLE + 10, top + down))
    }
  })
}
