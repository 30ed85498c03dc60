/**
 * The steps: words at the left, pictures at the right; a step is kept together where a page holds it.
 */
import { wordsOf } from '../../writing/booklet/booklet.ts'
import type { BookletPart, BookletStep, Drawing } from '../../writing/booklet/values.ts'
import { photographOf } from '../dataUrl.ts'
import { INK, type Style, STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import type { PdfOutline } from '../pdfLibrary.ts'
import { MARGIN } from '../paper.ts'
import { polygon, round } from '../pen.ts'
import { chapter } from '../titles.ts'
import { cuttingOf } from './cuttingDiagrams.ts'
import { cellsOn, roomForFirst, stepCells } from '../short/cells.ts'
import { widePictures } from './widePictures.ts'
import { quiltRows, type Row, type Shown } from './quiltRows.ts'

const GUTTER = 30
const GAP = 22
const AIR = 13

/** What the pages of steps are made from. */
type StepJob = Pick<PrintJob, 'pages' | 'fabricFill'>

/** Steps with a title over them. */
interface StepPart extends Pick<BookletPart, 'key' | 'title' | 'steps'> {
  /** Said before the first step. */
  readonly introduction?: readonly string[]
  /** Whether a step's pictures stand below its words. */
  readonly isWide?: (step: BookletStep) => boolean
}

/** Steps are numbered from `first` on; the number of the next is returned. */
export function partPages(job: PrintJob, part: BookletPart, first: number): number {
  if (part.key === 'units') return unitPages(job, part, first)
  const isWide = (step: BookletStep): boolean => widePictures(part, step, job.booklet.units)
  return stepPages(job, { ...part, isWide }, first, part.key === 'cut' ? (step) => cuttingOf(job, step) : undefined)
}

/** As `partPages`, for steps of a block or a quilt; `drawingsOf` where the pictures are not the step's own. */
export function stepPages(
  job: StepJob,
  part: StepPart,
  first: number,
  drawingsOf: (step: BookletStep) => readonly Drawing[] = ({ drawings }) => drawings,
): number {
  const { pages } = job
  const laid = part.steps.map((step) => laidOut(job, part, step, drawingsOf(step)))
  const item = chapter(pages, part.title, TITLE + Math.min(laid[0]?.height ?? 0, wholePage(job) - TITLE))
  for (const line of part.introduction ?? []) pages.paragraph(line, STYLES.lead, { after: 8 })
  laid.forEach((one, at) => {
    if (at > 0) between(job, one.height)
    pages.group('Sect', () => stepOn(job, one, first + at, at === 0 && part.introduction === undefined, item))
  })
  pages.top += 4
  return first + part.steps.length
}

/** Units are described action by action, as in the short edition. */
function unitPages(job: PrintJob, part: BookletPart, first: number): number {
  const cells = part.steps.map((step, at) => stepCells(job, step, first + at))
  chapter(job.pages, part.title, TITLE + roomForFirst(job, cells))
  cellsOn(job, cells)
  return first + part.steps.length
}

/** Room for a chapter's title. */
const TITLE = 42
const wholePage = ({ pages }: StepJob): number => pages.end - MARGIN.top

/** A rule stands between two steps of one page only. */
function between({ pages }: StepJob, next: number): void {
  if (pages.blank) return
  pages.top += AIR
  if (pages.room > next + AIR) pages.rule(pages.left + GUTTER, pages.top, pages.width - GUTTER)
  pages.top += AIR
}

interface Words {
  readonly lines: readonly string[]
  readonly text: string
  readonly style: Style
  readonly tag: string
  readonly before: number
  readonly caution?: true
}

interface Laid {
  readonly step: BookletStep
  readonly words: readonly Words[]
  /** Beside the words; below them where they are wide. */
  readonly rows: readonly Row[]
  readonly photo: Photo | null
  readonly height: number
  readonly below: boolean
  /** Of the width, for words beside pictures. */
  readonly share: number
}

function laidOut(job: StepJob, part: StepPart, step: BookletStep, drawings: readonly Drawing[]): Laid {
  if (WIDE.has(part.key) || part.isWide?.(step)) {
    const words = wordsIn(job, step, job.pages.width - GUTTER)
    const photo = photoOf(job, step, job.pages.width / 2)
    const most = wholePage(job) - TITLE - wordsHeight(words) - BETWEEN
    const width = job.pages.width - GUTTER
    const rows =
      part.key === 'quilt' ? quiltRows(drawings, width, Math.max(most, tallest(job))) : rowsOf(drawings, width, Math.max(most, tallest(job)), 1)
    return { step, words, rows, photo, below: true, share: 1, height: wordsHeight(words) + BETWEEN + picturesHeight(rows, photo) }
  }
  const least = part.key === 'join' && step === part.steps.at(-1) ? HALF : THIRD
  const [usual, roomy] = SHARES.map((share) => beside(job, step, drawings, share, least)) as [Laid, Laid]
  return usual.height <= wholePage(job) - TITLE ? usual : roomy
}

/** Of the width right of the gutter, for words: usually, and where there are many. */
const SHARES = [0.52, 0.66] as const

function beside(job: StepJob, step: BookletStep, drawings: readonly Drawing[], share: number, least: number): Laid {
  const widths = widthsOf(job, share)
  const words = wordsIn(job, step, widths.words)
  const photo = photoOf(job, step, widths.pictures)
  const most = Math.max(wordsHeight(words), least)
  const tries = SHRINK.map((part) => rowsOf(drawings, widths.pictures, tallest(job), part))
  const rows = tries.find((one) => picturesHeight(one, photo) <= most) ?? (tries.at(-1) as Row[])
  return { step, words, rows, photo, below: false, share, height: Math.max(wordsHeight(words), picturesHeight(rows, photo)) }
}

/** Parts whose pictures are as wide as the page: strips of cloth, the quilting line. */
const WIDE: ReadonlySet<BookletPart['key']> = new Set(['cut', 'quilt'])

/** Three steps of this height stand on a page of Letter. */
const THIRD = 206
/** The whole block is shown larger where its parts are joined: there most is to be matched. */
const HALF = 324

/** Many pictures of one step are made smaller, so that they stand beside its words. */
const SHRINK = [1, 0.85, 0.72, 0.6, 0.5] as const

const widthsOf = ({ pages }: StepJob, share: number): { readonly words: number; readonly pictures: number; readonly left: number } => {
  const whole = pages.width - GUTTER - GAP
  return { words: whole * share, pictures: whole * (1 - share), left: pages.left + GUTTER + whole * share + GAP }
}

const STALE = 'These are the maker’s own words; the block has changed since they were written.'

function wordsIn({ pages }: StepJob, step: BookletStep, width: number): Words[] {
  const said = (text: string, style: Style, tag: string, before: number): Words => ({
    lines: pages.breakLines(text, style, width),
    text,
    style,
    tag,
    before,
  })
  const { note = '' } = step
  return [
    said(step.title.replace(/ (\S{1,3})$/, '\u00a0$1'), STYLES.heading, 'H2', 0),
    ...wordsOf(step).map((sentence) => said(sentence, STYLES.body, 'P', 2.5)),
    ...(step.edited?.stale ? [said(STALE, STYLES.small, 'P', 3)] : []),
    ...(note === '' ? [] : [said(note, { ...STYLES.body, colour: INK.accent }, 'P', 5)]),
    ...step.cautions.map(
      (text): Words => ({ ...said(text, STYLES.small, 'P', 5), lines: pages.breakLines(text, STYLES.small, width - INDENT), caution: true }),
    ),
  ]
}

const INDENT = 12

const wordsHeight = (words: readonly Words[]): number => words.reduce((sum, { lines, style, before }) => sum + lines.length * style.lead + before, 0)

function picturesHeight(rows: readonly Row[], photo: Photo | null): number {
  const heights = [...rows.map(({ height }) => height), ...(photo === null ? [] : [photo.height])]
  return heights.reduce((sum, height) => sum + height + BETWEEN, heights.length > 0 ? -BETWEEN : 0)
}

const BETWEEN = 12
/** No picture is taller than a part of the page. */
const tallest = ({ pages }: StepJob): number => pages.paper[1] * 0.3

function stepOn(job: StepJob, laid: Laid, number: number, first: boolean, item: PdfOutline): void {
  const { pages } = job
  // A step that no page holds under its chapter's title begins there and runs on.
  if (laid.height <= wholePage(job) && !first) pages.ensureRoom(laid.height)
  else pages.ensureRoom(Math.min(laid.height, 60))
  const { top } = pages
  pages.bookmark(`${number}. ${laid.step.title}`, item)
  numberOn(job, number, top)
  if (laid.below || laid.height > pages.room) return runningStep(job, laid)
  saySome(job, laid.words, top)
  picturesOn(job, laid, top)
  pages.top = top + laid.height
}

function numberOn({ pages }: StepJob, number: number, top: number): void {
  const [x, y] = [pages.left + 9, top + 8]
  pages.ornament(() => pages.surface().path(polygon(round([x, y], 9.5)), { fill: INK.accent }))
  const style = { ...STYLES.strong, colour: INK.white, size: number > 99 ? 7.5 : 9.5 }
  const said = String(number)
  pages.tagged('P', () => pages.textLine(said, x - pages.measure(style)(said) / 2, y + 3.4, style))
}

function saySome({ pages }: StepJob, words: readonly Words[], top: number): void {
  let y = top
  for (const { lines, style, tag, before, caution } of words) {
    y += before
    const x = pages.left + GUTTER + (caution ? 12 : 0)
    if (caution) pages.panel(pages.left + GUTTER, y + 1.5, 2.4, lines.length * style.lead - 3, INK.accent)
    pages.tagged(tag, () => pages.textBlock(lines, style, x, y))
    y += lines.length * style.lead
  }
}

/** Words across the page, then pictures: each goes to the next page where this one has no room for it. */
function runningStep(job: StepJob, { step, words, rows, photo, below }: Laid): void {
  const { pages } = job
  const [x, width] = [pages.left + GUTTER, pages.width - GUTTER]
  for (const { text, style, tag, before, caution } of words) {
    pages.top += before
    const indent = caution ? INDENT : 0
    if (caution) {
      const height = pages.breakLines(text, style, width - INDENT).length * style.lead
      pages.ensureRoom(height)
      pages.panel(x, pages.top + 1.5, 2.4, height - 3, INK.accent)
    }
    pages.paragraph(text, style, { tag, x: x + indent, width: width - indent })
  }
  for (const row of below ? rows : rowsOf(step.drawings, width, tallest(job), 1)) {
    pages.top += BETWEEN
    pages.ensureRoom(row.height)
    rowOn(job, row, x, width, pages.top)
    pages.top += row.height
  }
  if (photo === null) return
  pages.top += BETWEEN
  pages.ensureRoom(photo.height)
  photoOn(job, step, photo, x, pages.top)
  pages.top += photo.height
}

const ASIDE = 12
/** Points for one unit of measure, at most: small pieces are not blown up beyond what is handsome. */
const LARGEST = 46

/** In more than one row, no picture is taller. */
const AMONG = 150

/** A picture beside a much larger one, such as a unit beside the whole block, is at least so high, or so wide a part of the room. */
const SEEN = { high: 92, wide: 0.44 } as const

/** As many beside each other as fit; at one scale, but for what could not be seen at it. */
function rowsOf(drawings: readonly Drawing[], width: number, most: number, shrink: number): Row[] {
  const shown = drawings.filter((drawing) => drawing.width > 0 && drawing.height > 0)
  if (shown.length === 0) return []
  const common = commonScale(shown, width, most)
  const rows: Shown[][] = []
  let used = Number.POSITIVE_INFINITY
  for (const drawing of shown) {
    const seen = Math.min(SEEN.high / drawing.height, (width * SEEN.wide) / drawing.width)
    const scale = Math.min(LARGEST, Math.max(common, seen)) * shrink
    const picture: Shown = { drawing, scale, width: drawing.width * scale, height: drawing.height * scale }
    if (used + ASIDE + picture.width > width + 0.01) {
      rows.push([picture])
      used = picture.width
    } else {
      rows.at(-1)?.push(picture)
      used += ASIDE + picture.width
    }
  }
  return rows.map((pictures) => ({ pictures, height: Math.max(...pictures.map(({ height }) => height)) }))
}

/** Points for one unit of measure at which all fit: in one row, or in several. */
function commonScale(shown: readonly Drawing[], width: number, most: number): number {
  const high = Math.max(...shown.map(({ height }) => height))
  const wide = Math.max(...shown.map((drawing) => drawing.width))
  const abreast = (width - ASIDE * (shown.length - 1)) / shown.reduce((sum, drawing) => sum + drawing.width, 0)
  return Math.max(Math.min(most / high, abreast), Math.min(Math.min(most, AMONG) / high, width / wide))
}

function rowOn({ pages, fabricFill }: StepJob, { pictures, height }: Row, left: number, width: number, top: number): void {
  const used = pictures.reduce((sum, picture) => sum + picture.width, 0) + ASIDE * (pictures.length - 1)
  let x = left + (width - used) / 2
  for (const { drawing, scale, ...picture } of pictures) {
    pages.picture(drawing, [x, top + (height - picture.height) / 2], scale, fabricFill)
    x += picture.width + ASIDE
  }
}

function picturesOn(job: StepJob, { step, rows, photo, share }: Laid, top: number): void {
  const { left, pictures } = widthsOf(job, share)
  let y = top
  for (const row of rows) {
    rowOn(job, row, left, pictures, y)
    y += row.height + BETWEEN
  }
  if (photo !== null) photoOn(job, step, photo, left, y)
}

interface Photo {
  /** None where it could not be read. */
  readonly bytes: Uint8Array
  readonly width: number
  readonly height: number
}

/** A photograph that cannot be shown is said to be missing, never an empty place. */
function photoOf(job: StepJob, { photograph }: BookletStep, width: number): Photo | null {
  if (photograph === undefined) return null
  const bytes = photographOf(photograph)
  const size = bytes === null ? null : job.pages.photographSize(bytes, photograph, [width, tallest(job)])
  return bytes === null || size === null ? { bytes: new Uint8Array(), width, height: 2 * STYLES.small.lead } : { bytes, width, height: size.height }
}

const MISSING = 'A photograph belongs here, but it could not be read.'

function photoOn({ pages }: StepJob, step: BookletStep, { bytes, width, height }: Photo, x: number, y: number): void {
  if (bytes.length > 0) pages.photograph(bytes, step.photograph as string, `Photograph: ${step.title}`, [x, y], [width, height])
  else pages.tagged('P', () => pages.textBlock(pages.breakLines(MISSING, STYLES.small, width), STYLES.small, x, y))
}
