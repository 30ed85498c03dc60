/** The cut list: fabric by fabric what to cut, with a box to tick, and where each cut goes, to scale. */
import { boxAt } from '../../writing/booklet/sketch.ts'
import type { MeasureUnit } from '../../values/block.ts'
import type { CutRow, FabricRow } from '../../values/report.ts'
import { inEnglish } from '../../words/english.ts'
import { type ListedPiece, cutPieces } from '../../writing/cutPieces.ts'
import { capital } from '../../words/englishPhrases.ts'
import { sayExact, sayOne, saySize } from '../../writing/phrases.ts'
import { isOnRuler } from '../../exact/lengths.ts'
import { INK, STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import type { PdfOutline } from '../pdfLibrary.ts'
import { polygon } from '../pen.ts'
import { footOf } from '../pageWriter.ts'
import { chapter, heading } from '../titles.ts'
import { cuttingDrawing, stripWords } from './cuttingDiagrams.ts'
import { swatch } from './firstPage.ts'

/** `pictures`: where each cut goes; in the whole booklet the steps of cutting show it. */
export function cutListPages(job: PrintJob, pictures: boolean): void {
  const { pages, report, block, unit, say } = job
  pages.newPage()
  const item = chapter(pages, say.pages.cutList, 0)
  if (report.cut.length === 0) {
    pages.paragraph(say.pages.nothingToCut, STYLES.body)
    return
  }
  pages.paragraph(say.pages.cutListHead(sayExact(report.measure.seam, unit)), STYLES.body, { after: 6 })
  const used = block.fabrics.filter(({ id }) => report.cut.some(({ fabric }) => fabric === id))
  for (const { id, name } of used) fabricPart(job, id, name, pictures, item)
  rulerNote(job)
  besides(job)
}

/** Layers, binding and tools, on the page that is taken to the shop. */
function besides({ pages, booklet: { needs }, say }: PrintJob): void {
  if (needs.length === 0) return
  const lines = needs.flatMap((sentence) => pages.breakLines(sentence, STYLES.body))
  heading(pages, say.pages.haveReady, pages.height(lines, STYLES.body) + needs.length * 3)
  for (const sentence of needs) pages.paragraph(sentence, STYLES.body, { after: 3 })
}

function fabricPart(job: PrintJob, id: string, name: string, pictures: boolean, item: PdfOutline): void {
  const { pages, report, unit } = job
  const rows = cutPieces(report).filter(({ fabric }) => fabric === id)
  const row = report.fabric.find(({ fabric }) => fabric === id)
  pages.gap(12)
  pages.ensureRoom(46 + rows.length * 16)
  head(job, id, name)
  pages.bookmark(name, item)
  pages.group('L', () => {
    for (const one of rows) pieceLine(job, one)
  })
  if (pictures && row !== undefined && row.strips.length > 0) cutting(job, row, name)
  if (row !== undefined && !row.proved && row.strips.length > 0) pages.paragraph(`The least fabric found: ${sayOne(row.length, unit)}.`, STYLES.small)
}

function head({ pages, booklet, fabricFill, unit, report }: PrintJob, id: string, name: string): void {
  const { top } = pages
  const amount = booklet.fabrics.find((fabric) => fabric.id === id)?.buy ?? ''
  const buy = amount === '' ? '' : `buy ${amount}, ${sayOne(report.cloth.usableWidth, unit)} wide`
  const right = pages.measure(STYLES.strong)(buy)
  const lines = pages.breakLines(name, STYLES.heading, pages.width - right - 46)
  swatch({ pages, fabricFill }, id, pages.left, top, 18)
  pages.tagged('H2', () => pages.textBlock(lines, STYLES.heading, pages.left + 26, top + 1.5))
  if (buy !== '') pages.tagged('P', () => pages.textLineRight(buy, pages.left + pages.width, top + 12.5, STYLES.strong))
  pages.top = top + Math.max(20, lines.length * STYLES.heading.lead + 3) + 2
  pages.rule(pages.left, pages.top, pages.width, INK.soft, 0.8)
  pages.top += 2
}

/** Where a line's count ends and its words begin. */
const AT = { count: 34, what: 42 } as const

function pieceLine(job: PrintJob, row: ListedPiece): void {
  const { pages, unit } = job
  const whatWidth = pages.width * 0.5 - AT.what
  const purposeLeft = pages.left + pages.width * 0.5 + 12
  const what = pages.breakLines(`${shape(row)} ${saySize(row.size, unit)}`, STYLES.strong, whatWidth)
  const forWhat = pages.breakLines(
    [then(row), `for ${row.for.length === 0 ? 'the ' : ''}${row.purposes.map(inEnglish).join('; ')}${border(row, unit)}`]
      .filter((part) => part !== '')
      .join('; '),
    STYLES.body,
    pages.width * 0.5 - 12,
  )
  const height = Math.max(what.length * STYLES.strong.lead, forWhat.length * STYLES.body.lead) + 5
  pages.ensureRoom(height)
  const top = pages.top + 2.5
  pages.ornament(() => pages.surface().path(polygon(boxAt(pages.left, top + 2.4, 9, 9)), { line: { colour: INK.soft, width: 0.7 } }))
  pages.group('LI', () =>
    pages.tagged('LBody', () => {
      pages.textLineRight(String(row.count), pages.left + AT.count, top + footOf(STYLES.strong), STYLES.strong)
      pages.textBlock(what, STYLES.strong, pages.left + AT.what, top)
      pages.textBlock(forWhat, STYLES.body, purposeLeft, top)
    }),
  )
  pages.top += height
  pages.rule(pages.left, pages.top, pages.width)
}

const SHAPES: Readonly<Record<CutRow['shape'], readonly [string, string]>> = {
  square: ['square', 'squares'],
  rectangle: ['rectangle', 'rectangles'],
  triangle: ['triangle', 'triangles'],
  polygon: ['with its template, from', 'with their template, each from'],
}
const shape = ({ shape, count }: CutRow): string => SHAPES[shape][count === 1 ? 0 : 1]

/** Borders are measured before they are cut to length. */
const border = ({ isBorderStrip, size }: ListedPiece, unit: MeasureUnit): string =>
  isBorderStrip ? `: cut ${sayExact(Math.min(...size), unit)} wide; trim to length when you get there` : ''

const THEN = { none: '', halve: 'each cut once from corner to corner', quarter: 'each cut twice from corner to corner' } as const
const then = (row: ListedPiece): string => {
  const cut = row.count === 1 ? THEN[row.then].replace('each ', '') : THEN[row.then]
  return row.hand === null ? cut : `${cut}, ${row.hand}-handed`
}

/** Of the page's height, the most that one cutting picture takes. */
const TALLEST = 0.42

function cutting({ pages, fabricFill, report, unit }: PrintJob, row: FabricRow, name: string): void {
  const picture = cuttingDrawing(row, name, report.cloth.usableWidth, unit, pages.width)
  const scale = Math.min(pages.width / picture.width, (pages.paper[1] * TALLEST) / picture.height)
  pages.top += 8
  pages.ensureRoom(picture.height * scale + 3 * STYLES.small.lead)
  const { top } = pages
  pages.picture(picture, [pages.left, top], scale, fabricFill)
  pages.top = top + picture.height * scale + 4
  pages.paragraph(`${capital(stripWords(row, unit).join('; '))}. ${sayOne(row.length, unit)} of fabric in all.`, STYLES.small, { after: 4 })
}

function rulerNote({ pages, report, unit }: PrintJob): void {
  if (!report.cut.some(({ size }) => size.some((length) => !isOnRuler(length, unit)))) return
  pages.gap(8)
  pages.paragraph(
    `Sizes said as “about” are the nearest ${unit === 'in' ? 'sixteenth of an inch' : 'millimetre'}; the size itself stands beside them.`,
    STYLES.small,
  )
}
