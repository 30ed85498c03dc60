/** The cut list: fabric by fabric what to cut, with a box to tick, and where each cut goes, to scale. */
import { type CutPicture, cutPicture } from '../../cutting/cutPicture.ts'
import type { CutRow, FabricRow } from '../../values.ts'
import type { Drawing, Mark, Spot } from '../../writing/booklet/values.ts'
import { purpose } from '../../writing/cutList.ts'
import { sayOne, saySize } from '../../writing/say.ts'
import { isOnRuler } from '../../exact/lengths.ts'
import { INK, STYLES } from '../ink.ts'
import type { Job } from '../job.ts'
import { polygon } from '../pen.ts'
import { chapter } from '../titles.ts'
import { swatch } from './firstPage.ts'

export function cutListPages(job: Job): void {
  const { sheets, report, block, unit } = job
  const item = chapter(sheets, 'Cut list', 300)
  if (report.cut.length === 0) {
    sheets.write('There is nothing to cut yet.', STYLES.body)
    return
  }
  sheets.write(
    `Every size includes its seam allowances of ${sayOne(report.measure.seam, unit)}. Cut strips across the cloth first, then the pieces from the strips, the highest strip first.`,
    STYLES.body,
    { after: 6 },
  )
  const used = block.fabrics.filter(({ id }) => report.cut.some(({ fabric }) => fabric === id))
  for (const { id, name } of used) fabricPart(job, id, name, item)
  rulerNote(job)
}

function fabricPart(job: Job, id: string, name: string, item: ReturnType<typeof chapter>): void {
  const { sheets, report, unit } = job
  const rows = report.cut.filter(({ fabric }) => fabric === id).sort((a, b) => areaOf(b) - areaOf(a))
  const row = report.fabric.find(({ fabric }) => fabric === id)
  const picture = row === undefined || row.strips.length === 0 ? null : cutPicture(row.strips, stripLength(row, report.cloth.usableWidth))
  const letters = lettersFor(rows)
  sheets.skip(12)
  sheets.need(46 + rows.length * 16)
  head(job, id, name)
  sheets.bookmark(name, item)
  sheets.group('L', () => {
    for (const one of rows) pieceLine(job, one, letters.get(keyOf(one.size)) ?? '')
  })
  if (picture !== null && row !== undefined) cutting(job, picture, row, id, name, letters)
  if (row !== undefined && !row.proved && row.strips.length > 0) sheets.write(`The least cloth found: ${sayOne(row.length, unit)}.`, STYLES.small)
}

/** Strips that run along the cloth are as long as their longest piece. */
const stripLength = ({ strips }: FabricRow, usable: number): number =>
  Math.max(usable, ...strips.map(({ pieces, height }) => pieces.reduce((sum, { size, count }) => sum + alongStrip(size, height) * count, 0)))

function alongStrip(size: readonly [number, number], height: number): number {
  const [long, short] = [Math.max(...size), Math.min(...size)]
  return long <= height + 1e-6 ? short : long
}

const areaOf = ({ size: [width, height] }: CutRow): number => width * height
const keyOf = ([width, height]: readonly [number, number]): string => `${Math.max(width, height)} ${Math.min(width, height)}`

/** One letter for each size, A B … Z AA AB …: the same in the list and in the picture. */
function lettersFor(rows: readonly CutRow[]): ReadonlyMap<string, string> {
  const keys = [...new Set(rows.map(({ size }) => keyOf(size)))]
  return new Map(keys.map((key, at) => [key, letter(at)]))
}

const letter = (at: number): string => (at < 26 ? String.fromCharCode(65 + at) : `${letter(Math.floor(at / 26) - 1)}${letter(at % 26)}`)

function head({ sheets, booklet, cloth, unit, report }: Job, id: string, name: string): void {
  const { top } = sheets
  const amount = booklet.fabrics.find((fabric) => fabric.id === id)?.buy ?? ''
  const buy = amount === '' ? '' : `buy ${amount}, ${sayOne(report.cloth.usableWidth, unit)} wide`
  const right = sheets.measure(STYLES.strong)(buy)
  const lines = sheets.lines(name, STYLES.heading, sheets.width - right - 46)
  swatch({ sheets, cloth, unit }, id, sheets.left, top, 18)
  sheets.tagged('H2', () => sheets.block(lines, STYLES.heading, sheets.left + 26, top + 1.5))
  if (buy !== '') sheets.tagged('P', () => sheets.sayRight(buy, sheets.left + sheets.width, top + 12.5, STYLES.strong))
  sheets.top = top + Math.max(20, lines.length * STYLES.heading.lead + 3) + 2
  sheets.rule(sheets.left, sheets.top, sheets.width, INK.soft, 0.8)
  sheets.top += 2
}

const AT = { tick: 0, letter: 20, count: 44, what: 66 } as const

function pieceLine(job: Job, row: CutRow, key: string): void {
  const { sheets, report, unit } = job
  const whatWidth = sheets.width * 0.5 - AT.what
  const purposeLeft = sheets.left + sheets.width * 0.5 + 12
  const what = sheets.lines(`${shape(row)} ${saySize(row.size, unit)}`, STYLES.strong, whatWidth)
  const forWhat = sheets.lines(
    [then(row), `for ${row.for.length === 0 ? 'the ' : ''}${purpose(row, report)}`].filter((part) => part !== '').join('; '),
    STYLES.body,
    sheets.width * 0.5 - 12,
  )
  const height = Math.max(what.length * STYLES.strong.lead, forWhat.length * STYLES.body.lead) + 5
  sheets.need(height)
  const top = sheets.top + 2.5
  sheets.ornament(() => sheets.surface().path(polygon(boxAt(sheets.left + AT.tick, top + 2.4, 8.6)), { line: { colour: INK.soft, width: 0.7 } }))
  sheets.tagged('LI', () => {
    sheets.block([key], { ...STYLES.strong, colour: INK.accent }, sheets.left + AT.letter, top)
    sheets.sayRight(String(row.count), sheets.left + AT.what - 7, top + 10, STYLES.strong)
    sheets.block(what, STYLES.strong, sheets.left + AT.what, top)
    sheets.block(forWhat, STYLES.body, purposeLeft, top)
  })
  sheets.top += height
  sheets.rule(sheets.left, sheets.top, sheets.width)
}

const boxAt = (x: number, y: number, side: number): Spot[] => [
  [x, y],
  [x + side, y],
  [x + side, y + side],
  [x, y + side],
]

const SHAPES: Readonly<Record<CutRow['shape'], readonly [string, string]>> = {
  square: ['square', 'squares'],
  rectangle: ['rectangle', 'rectangles'],
  triangle: ['triangle', 'triangles'],
  polygon: ['by its template, in a box of', 'by their template, each in a box of'],
}
const shape = ({ shape, count }: CutRow): string => SHAPES[shape][count === 1 ? 0 : 1]

const THEN = { none: '', halve: 'each cut once from corner to corner', quarter: 'each cut twice from corner to corner' } as const
const then = (row: CutRow): string => (row.count === 1 ? THEN[row.then].replace('each ', '') : THEN[row.then])

/** Of the sheet's height, the most that one cutting picture takes. */
const TALLEST = 0.42

function cutting(
  { sheets, cloth, unit }: Job,
  picture: CutPicture,
  row: FabricRow,
  id: string,
  name: string,
  letters: ReadonlyMap<string, string>,
): void {
  const drawing = cuttingDrawing(picture, row, id, `How to cut ${name}`, letters, unit)
  const scale = Math.min(sheets.width / drawing.width, (sheets.paper[1] * TALLEST) / drawing.height)
  const height = drawing.height * scale
  sheets.top += 8
  sheets.need(height + STYLES.small.lead + 8)
  const { top } = sheets
  sheets.picture(drawing, [sheets.left, top], scale, cloth)
  sheets.top = top + height + 4
  const strips = row.strips.length === 1 ? 'one strip' : `${row.strips.length} strips`
  sheets.write(`${strips} across the cloth, ${sayOne(row.length, unit)} of it in all; what is left over is dashed.`, STYLES.small, { after: 4 })
}

/** Strips to scale as they lie on the cloth: letters are those of the list. */
function cuttingDrawing(
  { strips, width, height }: CutPicture,
  row: FabricRow,
  fabric: string,
  title: string,
  letters: ReadonlyMap<string, string>,
  unit: 'in' | 'cm',
): Drawing {
  const words = row.strips.map(
    ({ height, pieces }) =>
      `a strip ${sayOne(height, unit)} high, cut into ${pieces.map(({ size, count }) => `${count} of ${saySize(size, unit)}`).join(', ')}`,
  )
  const marks = strips.flatMap((strip): Mark[] => [
    ...strip.leftover.map((box): Mark => ({ sort: 'line', points: cornersOf(box), style: 'thin', closed: true })),
    ...strip.pieces.flatMap((piece): Mark[] => [
      { sort: 'area', outline: cornersOf(piece), fabric, side: 'right', line: 'cut' },
      {
        sort: 'text',
        at: [piece.x + piece.width / 2, piece.y + piece.height / 2],
        text: letters.get(keyOf(piece.size)) ?? '',
        size: Math.min(piece.width, piece.height) < width / 45 ? 'small' : 'normal',
        align: 'middle',
      },
    ]),
  ])
  return { width, height, marks, title: `${title}: ${words.join('; ')}` }
}

const cornersOf = ({ x, y, width, height }: { x: number; y: number; width: number; height: number }): Spot[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
]

function rulerNote({ sheets, report, unit }: Job): void {
  if (!report.cut.some(({ size }) => size.some((length) => !isOnRuler(length, unit)))) return
  sheets.skip(8)
  sheets.write(
    `Sizes said as “about” are the nearest ${unit === 'in' ? 'sixteenth of an inch' : 'millimetre'}; the size itself stands beside them.`,
    STYLES.small,
  )
}
