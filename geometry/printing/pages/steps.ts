/**
 * The steps: words at the left, pictures at the right; a step is kept together where a sheet holds it.
 */
import { wordsOf } from '../../writing/booklet/booklet.ts'
import type { BookletPart, BookletStep, Drawing } from '../../writing/booklet/values.ts'
import { capital } from '../../writing/say.ts'
import { photographOf } from '../dataUrl.ts'
import { INK, STYLES } from '../ink.ts'
import type { Job } from '../job.ts'
import { polygon, round } from '../pen.ts'
import { chapter } from '../titles.ts'

const GUTTER = 30
const GAP = 22
/** Of the width right of the gutter, for words. */
const WORDS = 0.52
const AIR = 13

/** Steps are numbered from `first` on; the number of the next is returned. */
export function partPages(job: Job, part: BookletPart, first: number): number {
  const { sheets } = job
  const heights = part.steps.slice(0, 1).map((step) => heightOf(job, step))
  const item = chapter(sheets, capital(part.title), Math.min(460, 60 + (heights[0] ?? 0)))
  part.steps.forEach((step, at) => {
    if (at > 0) between(job)
    sheets.group('Sect', () => stepOn(job, step, first + at, (title) => sheets.bookmark(title, item)))
  })
  sheets.top += 4
  return first + part.steps.length
}

function between({ sheets }: Job): void {
  if (sheets.blank) return
  sheets.top += AIR
  if (sheets.room > 60) sheets.rule(sheets.left + GUTTER, sheets.top, sheets.width - GUTTER)
  sheets.top += AIR
}

interface Words {
  readonly lines: readonly string[]
  readonly style: (typeof STYLES)[keyof typeof STYLES]
  readonly tag: string
  readonly before: number
  readonly caution?: true
}

const widthsOf = ({ sheets }: Job): { readonly words: number; readonly pictures: number; readonly left: number } => {
  const whole = sheets.width - GUTTER - GAP
  return { words: whole * WORDS, pictures: whole * (1 - WORDS), left: sheets.left + GUTTER + whole * WORDS + GAP }
}

function blocksOf(job: Job, step: BookletStep): Words[] {
  const { sheets } = job
  const width = widthsOf(job).words
  const said = (text: string, style: Words['style'], tag: string, before: number): Words => ({
    lines: sheets.lines(text, style, width),
    style,
    tag,
    before,
  })
  const sentences = wordsOf(step)
  const stale = step.edited?.stale ? ['These are the maker’s own words; the block has changed since they were written.'] : []
  return [
    said(titleOf(step), STYLES.heading, 'H2', 0),
    ...sentences.map((sentence) => said(sentence, STYLES.body, 'P', 2.5)),
    ...stale.map((words) => said(words, STYLES.small, 'P', 3)),
    ...(step.note === undefined || step.note === '' ? [] : [said(step.note, { ...STYLES.body, colour: INK.accent }, 'P', 5)]),
    ...step.cautions.map(
      (words): Words => ({ lines: sheets.lines(words, STYLES.small, width - 12), style: STYLES.small, tag: 'P', before: 5, caution: true }),
    ),
  ]
}

const titleOf = ({ title }: BookletStep): string => title

const wordsHeight = (words: readonly Words[]): number => words.reduce((sum, { lines, style, before }) => sum + lines.length * style.lead + before, 0)

function heightOf(job: Job, step: BookletStep): number {
  return Math.max(wordsHeight(blocksOf(job, step)), picturesHeight(job, step))
}

function picturesHeight(job: Job, step: BookletStep): number {
  const rows = rowsOf(step.drawings, widthsOf(job).pictures, tallest(job))
  const photo = photoOf(job, step)
  return rows.reduce((sum, { height }) => sum + height + BETWEEN, rows.length > 0 ? -BETWEEN : 0) + (photo === null ? 0 : photo.height + BETWEEN)
}

const BETWEEN = 12
/** No picture is taller than a part of the sheet. */
const tallest = ({ sheets }: Job): number => sheets.paper[1] * 0.3

function stepOn(job: Job, step: BookletStep, number: number, bookmark: (title: string) => unknown): void {
  const { sheets } = job
  const words = blocksOf(job, step)
  const height = heightOf(job, step)
  const whole = sheets.end - 54
  sheets.need(Math.min(height, whole))
  const { top } = sheets
  bookmark(`${number}. ${step.title}`)
  numberOn(job, number, top)
  if (height > whole) return longStep(job, step)
  saySome(job, words, top)
  const foot = picturesOn(job, step, widthsOf(job).left, widthsOf(job).pictures, top)
  sheets.top = Math.max(top + wordsHeight(words), foot)
}

function numberOn({ sheets }: Job, number: number, top: number): void {
  const [x, y] = [sheets.left + 9, top + 8]
  sheets.ornament(() => sheets.surface().path(polygon(round([x, y], 9.5)), { fill: INK.accent }))
  const style = { ...STYLES.strong, colour: INK.white, size: number > 99 ? 7.5 : 9.5 }
  const said = String(number)
  sheets.tagged('Lbl', () => sheets.say(said, x - sheets.measure(style)(said) / 2, y + 3.4, style))
}

function saySome({ sheets }: Job, words: readonly Words[], top: number): void {
  let y = top
  for (const { lines, style, tag, before, caution } of words) {
    y += before
    const x = sheets.left + GUTTER + (caution ? 12 : 0)
    if (caution) sheets.panel(sheets.left + GUTTER, y + 1.5, 2.4, lines.length * style.lead - 3, INK.accent)
    sheets.tagged(tag, () => sheets.block(lines, style, x, y))
    y += lines.length * style.lead
  }
}

/** What no single sheet holds runs on: all words first, then the pictures. */
function longStep(job: Job, step: BookletStep): void {
  const { sheets } = job
  const x = sheets.left + GUTTER
  for (const { lines, style, tag, before } of blocksOf(job, step)) {
    sheets.top += before
    sheets.write(lines.join(' '), style, { tag, x, width: sheets.width - GUTTER })
  }
  for (const row of rowsOf(step.drawings, sheets.width - GUTTER, tallest(job))) {
    sheets.top += BETWEEN
    sheets.need(row.height)
    rowOn(job, row, x, sheets.width - GUTTER, sheets.top)
    sheets.top += row.height
  }
  const photo = photoOf(job, step)
  if (photo === null) return
  sheets.top += BETWEEN
  sheets.need(photo.height)
  photoOn(job, step, photo, x, sheets.top)
  sheets.top += photo.height
}

interface Row {
  readonly drawings: readonly Drawing[]
  readonly scale: number
  readonly height: number
}

const ASIDE = 12
/** Points for one unit of measure, at most: small pieces are not blown up beyond what is handsome. */
const LARGEST = 46

/** All pictures of a step at one scale, as many beside each other as fit. */
export function rowsOf(drawings: readonly Drawing[], width: number, most: number): Row[] {
  const shown = drawings.filter((drawing) => drawing.width > 0 && drawing.height > 0)
  if (shown.length === 0) return []
  const high = Math.max(...shown.map(({ height }) => height))
  const wide = Math.max(...shown.map((drawing) => drawing.width))
  const most2 = shown.length > 1 ? Math.min(most, 150) : most
  const scale = Math.min(LARGEST, most2 / high, width / wide, shown.length > 1 ? Math.max(width / 2 / wide, 0) * 1.9 : Number.POSITIVE_INFINITY)
  const rows: Drawing[][] = []
  let used = Number.POSITIVE_INFINITY
  for (const drawing of shown) {
    const wanted = drawing.width * scale
    if (used + ASIDE + wanted > width + 0.01) {
      rows.push([drawing])
      used = wanted
    } else {
      rows.at(-1)?.push(drawing)
      used += ASIDE + wanted
    }
  }
  return rows.map((row) => ({ drawings: row, scale, height: Math.max(...row.map(({ height }) => height)) * scale }))
}

function rowOn({ sheets, cloth }: Job, { drawings, scale, height }: Row, left: number, width: number, top: number): void {
  const used = drawings.reduce((sum, drawing) => sum + drawing.width * scale, 0) + ASIDE * (drawings.length - 1)
  let x = left + (width - used) / 2
  for (const drawing of drawings) {
    sheets.picture(drawing, [x, top + (height - drawing.height * scale) / 2], scale, cloth)
    x += drawing.width * scale + ASIDE
  }
}

function picturesOn(job: Job, step: BookletStep, left: number, width: number, top: number): number {
  let y = top
  for (const row of rowsOf(step.drawings, width, tallest(job))) {
    rowOn(job, row, left, width, y)
    y += row.height + BETWEEN
  }
  const photo = photoOf(job, step)
  if (photo !== null) {
    photoOn(job, step, photo, left, y)
    y += photo.height + BETWEEN
  }
  return y - BETWEEN
}

interface Photo {
  readonly bytes: Uint8Array
  readonly height: number
}

/** A photograph that cannot be shown is said to be missing, never an empty place. */
function photoOf(job: Job, { photograph }: BookletStep): Photo | null {
  if (photograph === undefined) return null
  const bytes = photographOf(photograph)
  const size = bytes === null ? null : job.sheets.photographSize(bytes, photograph, [widthsOf(job).pictures, tallest(job)])
  return bytes === null || size === null ? { bytes: new Uint8Array(), height: 2 * STYLES.small.lead } : { bytes, height: size.height }
}

function photoOn(job: Job, step: BookletStep, { bytes, height }: Photo, x: number, y: number): void {
  const { sheets } = job
  const { pictures } = widthsOf(job)
  if (bytes.length > 0) sheets.photograph(bytes, step.photograph as string, `Photograph: ${step.title}`, [x, y], [pictures, height])
  else
    sheets.tagged('P', () =>
      sheets.block(sheets.lines('A photograph belongs here, but it could not be read.', STYLES.small, pictures), STYLES.small, x, y),
    )
}
