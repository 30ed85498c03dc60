/**
 * What can be printed, on which paper; the room on a sheet, in points (72 an inch).
 *
 * Source  A4 is 210 by 297 mm (ISO 216); Letter is 8 1/2 by 11 in (ANSI/ASME Y14.1).
 */
import type { Block } from '../values/block.ts'

export const PAPERS = ['a4', 'letter'] as const
export type Paper = (typeof PAPERS)[number]

export const POINTS = { in: 72, cm: 72 / 2.54 } as const

export const SIZES: Readonly<Record<Paper, readonly [number, number]>> = {
  a4: [(210 / 25.4) * 72, (297 / 25.4) * 72],
  letter: [612, 792],
}

/** Where inches are measured, Letter lies in the printer. */
export const usualPaper = ({ measure }: Pick<Block, 'measure'>): Paper => (measure.unit === 'in' ? 'letter' : 'a4')

export const PAPER_NAMES: Readonly<Record<Paper, string>> = { a4: 'A4', letter: 'Letter' }

/** Blank round the words: wide enough for any printer, and for a hole punch at the left. */
export const MARGIN = { side: 42, top: 38, bottom: 44 } as const
/** Where the line at the foot of each page stands, above the paper's edge. */
export const FOOT = 31

/** How much a booklet tells: the few pages that one sews from, or everything. */
export const EDITIONS = ['short', 'full'] as const
export type Edition = (typeof EDITIONS)[number]

/** Pages that can be printed alone. */
export const SINGLE_PAGES = ['cutlist', 'chart', 'colouring', 'templates'] as const
export type SinglePage = (typeof SINGLE_PAGES)[number]
