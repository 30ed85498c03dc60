/** What to buy and cut, fabric by fabric, each piece by its letter, with a box to tick. */
import { wordsOf } from '../../writing/booklet/booklet.ts'
import { boxAt } from '../../writing/booklet/sketch.ts'
import type { BookletPart, BookletStep } from '../../writing/booklet/values.ts'
import { INK, STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import { polygon } from '../pen.ts'
import { chapter } from '../titles.ts'
import { swatch } from '../pages/firstPage.ts'
import { titleOn } from './cells.ts'

const SWATCH = 16
const INDENT = 26
const TICK = 15

export function shortCutting(job: PrintJob, part: BookletPart, first: number): void {
  chapter(job.pages, part.title, 110)
  part.steps.forEach((step, at) => {
    fabricOn(job, step, first + at)
  })
}

function fabricOn(job: PrintJob, step: BookletStep, number: number): void {
  const { pages, report } = job
  const fabric = report.cut[step.cut[0] ?? -1]?.fabric
  pages.group('Sect', () => {
    titleOn(job, number, step.title, pages.left, pages.width - SWATCH - 8, 2 * STYLES.body.lead)
    if (fabric !== undefined) swatch(job, fabric, pages.left + pages.width - SWATCH, pages.top - SWATCH - 4, SWATCH)
    for (const sentence of wordsOf(step)) lineOn(job, sentence)
    if (step.note !== undefined)
      pages.paragraph(step.note, { ...STYLES.body, colour: INK.accent }, { x: pages.left + INDENT, width: pages.width - INDENT })
  })
  pages.top += 6
}

/** A sentence with a box to tick before it. */
function lineOn({ pages }: PrintJob, sentence: string): void {
  const [x, width] = [pages.left + INDENT, pages.width - INDENT]
  const lines = pages.breakLines(sentence, STYLES.body, width - TICK)
  pages.ensureRoom(lines.length * STYLES.body.lead + 3)
  const { top } = pages
  pages.ornament(() => pages.surface().path(polygon(boxAt(x, top + 3, 8, 8)), { line: { colour: INK.soft, width: 0.7 } }))
  pages.tagged('P', () => pages.textBlock(lines, STYLES.body, x + TICK, top))
  pages.top = top + lines.length * STYLES.body.lead + 3
}
