/** The cut list: fabric by fabric what to cut, with a box to tick, and where each cut goes, to scale. */
import { boxAt } from '../../writing/booklet/sketch.ts'
import type { CutRow, FabricRow } from '../../values/report.ts'
import { inEnglish } from '../../words/english.ts'
import { cutFor } from '../../writing/cutListText.ts'
import { capital } from '../../words/englishPhrases.ts'
import { sayExact, sayOne, saySize } from '../../writing/phrases.ts'
import { isOnRuler } from '../../exact/lengths.ts'
import { INK, STYLES } from '../pageStyle.ts'
import type { Job } from '../printJob.ts'
import type { PdfOutline } from '../pdfLibrary.ts'
import { polygon } from '../pen.ts'
import { footOf } from '../sheets.ts'
import { chapter, heading } from '../titles.ts'
import { cuttingDrawing, stripWords } from './cuttingDiagrams.ts'
import { swatch } from './firstPage.ts'

/** `pictures`: where each cut goes; in the whole booklet the steps of cutting show it. */
export function cutListPages(job: Job, pictures: boolean): void {
  const { sheets, report, block, unit } = job
  sheets.newSheet()
  const item = chapter(sheets, 'Cut list', 0)
  if (report.cut.length === 0) {
    sheets.write('There is nothing to cut yet.', STYLES.body)
    return
  }
  sheets.write(
    `Every size includes its seam allowances of ${sayExact(report.measure.seam, unit)}. Cut strips across the cloth first, then the pieces from the strips, the highest strip first.`,
    STYLES.body,
    { after: 6 },
  )
  const used = block.fabrics.filter(({ id }) => report.cut.some(({ fabric }) => fabric === id))
  for (const { id, name } of used) fabricPart(job, id, name, pictures, item)
  rulerNote(job)
  besides(job)
}

/** Layers, binding and tools, on the page that is taken to the shop. */
function besides({ sheets, booklet: { needs } }: Job): void {
  if (needs.length === 0) return
  const lines = needs.flatMap((sentence) => sheets.lines(sentence, STYLES.body))
  heading(sheets, 'Have ready beside the fabrics', sheets.height(lines, STYLES.body) + needs.length * 3)
  for (const sentence of needs) sheets.write(sentence, STYLES.body, { after: 3 })
}

function fabricPart(job: Job, id: string, name: string, pictures: boolean, item: PdfOutline): void {
  const { sheets, report, unit } = job
  const rows = report.cut.filter(({ fabric }) => fabric === id).sort((a, b) => areaOf(b) - areaOf(a))
  const row = report.fabric.find(({ fabric }) => fabric === id)
  sheets.skip(12)
  sheets.need(46 + rows.length * 16)
  head(job, id, name)
  sheets.bookmark(name, item)
  sheets.group('L', () => {
    for (const one of rows) pieceLine(job, one)
  })
  if (pictures && row !== undefined && row.strips.length > 0) cutting(job, row, name)
  if (row !== undefined && !row.proved && row.strips.length > 0) sheets.write(`The least cloth found: ${sayOne(row.length, unit)}.`, STYLES.small)
}

const areaOf = ({ size: [width, height] }: CutRow): number => width * height

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

/** Where a line's count ends and its words begin. */
const AT = { count: 34, what: 42 } as const

function pieceLine(job: Job, row: CutRow): void {
  const { sheets, report, unit } = job
  const whatWidth = sheets.width * 0.5 - AT.what
  const purposeLeft = sheets.left + sheets.width * 0.5 + 12
  const what = sheets.lines(`${shape(row)} ${saySize(row.size, unit)}`, STYLES.strong, whatWidth)
  const forWhat = sheets.lines(
    [then(row), `for ${row.for.length === 0 ? 'the ' : ''}${inEnglish(cutFor(row, report))}`].filter((part) => part !== '').join('; '),
    STYLES.body,
    sheets.width * 0.5 - 12,
  )
  const height = Math.max(what.length * STYLES.strong.lead, forWhat.length * STYLES.body.lead) + 5
  sheets.need(height)
  const top = sheets.top + 2.5
  sheets.ornament(() => sheets.surface().path(polygon(boxAt(sheets.left, top + 2.4, 9, 9)), { line: { colour: INK.soft, width: 0.7 } }))
  sheets.tagged('LI', () => {
    sheets.sayRight(String(row.count), sheets.left + AT.count, top + footOf(STYLES.strong), STYLES.strong)
    sheets.block(what, STYLES.strong, sheets.left + AT.what, top)
    sheets.block(forWhat, STYLES.body, purposeLeft, top)
  })
  sheets.top += height
  sheets.rule(sheets.left, sheets.top, sheets.width)
}

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

function cutting({ sheets, cloth, report, unit }: Job, row: FabricRow, name: string): void {
  const picture = cuttingDrawing(row, name, report.cloth.usableWidth, unit, sheets.width)
  const scale = Math.min(sheets.width / picture.width, (sheets.paper[1] * TALLEST) / picture.height)
  sheets.top += 8
  sheets.need(picture.height * scale + 3 * STYLES.small.lead)
  const { top } = sheets
  sheets.picture(picture, [sheets.left, top], scale, cloth)
  sheets.top = top + picture.height * scale + 4
  sheets.write(`${capital(stripWords(row, unit).join('; '))}. ${sayOne(row.length, unit)} of the cloth in all.`, STYLES.small, { after: 4 })
}

function rulerNote({ sheets, report, unit }: Job): void {
  if (!report.cut.some(({ size }) => size.some((length) => !isOnRuler(length, unit)))) return
  sheets.skip(8)
  sheets.write(
    `Sizes said as “about” are the nearest ${unit === 'in' ? 'sixteenth of an inch' : 'millimetre'}; the size itself stands beside them.`,
    STYLES.small,
  )
}
