/** What the block measures if every seam is off by a little: a test on paper before anything is sewn. */
import { sayOne, saySize } from '../../writing/phrases.ts'
import { STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import { table } from '../table.ts'
import { chapter } from '../titles.ts'

export function allowanceTestPage({ pages, booklet, unit, say }: PrintJob): void {
  const { off, rows, sentences } = booklet.allowanceTest
  if (rows.length === 0) return
  chapter(pages, say.pages.allowanceTest, Math.min(MOST, 130 + rows.length * ROW))
  for (const sentence of sentences) pages.paragraph(sentence, STYLES.body, { after: 4 })
  const much = saidOff(off, unit)
  pages.top += 4
  table(
    pages,
    say.pages.allowanceHeads(much).map((title, at) => ({ title, ...(COLUMNS[at] as (typeof COLUMNS)[number]) })),
    rows.map(({ what, seams, planned, wide, narrow }) => [what, seams.join(' × '), ...[planned, wide, narrow].map((size) => said(size, unit))]),
    { marked: new Set([rows.length - 1]) },
  )
}

const COLUMNS = [{ share: 1.2, strong: true }, { share: 0.8 }, { share: 1.1, strong: true }, { share: 1.1 }, { share: 1.1 }] as const

/** Points of one row; and of what begins on the page it stands on, where a new one would hold it whole. */
const ROW = 26
const MOST = 560

/** To the sixteenth where that is the size, else to the thirty-second: finer than a ruler, but that is the point here. */
function said(size: readonly [number, number], unit: 'in' | 'cm'): string {
  if (unit === 'cm') return saySize(size, unit)
  return `${size.map(thirtySeconds).join(' × ')} in`
}

function thirtySeconds(length: number): string {
  let [top, bottom] = [Math.round(length * 32), 32]
  const whole = Math.floor(top / 32)
  top -= whole * 32
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2]
  return top === 0 ? String(whole) : [whole > 0 ? String(whole) : '', `${top}/${bottom}`].filter(Boolean).join(' ')
}

const saidOff = (off: number, unit: 'in' | 'cm'): string => (unit === 'in' ? `${thirtySeconds(off)} in` : sayOne(off, unit))
