/**
 * What is made and what is bought, as tables for a spreadsheet; the cut pieces have theirs in `cutList.ts`.
 *
 * In      a report and the block it is about (for the names of its fabrics).
 * Out     comma-separated text: one line a different unit, or one line a fabric; exact sizes in the measure's unit.
 */
import type { Block } from '../values/block.ts'
import type { Findings } from '../values/report.ts'
import { csv } from './csv.ts'
import { namesOf } from './cutListText.ts'
import { letterAt } from './phrases.ts'
import { type TableForm, tableWords } from './tableWords.ts'

/** One line for each different unit. */
export function unitsCsv(
  report: Pick<Findings, 'units' | 'measure'>,
  block: Pick<Block, 'fabrics'>,
  { ids = false, german }: TableForm = {},
): string {
  const named = namesOf(block)
  const words = tableWords({ german })
  const rows = report.units.map((row, place) => [
    letterAt(place),
    row.kind === 'square' ? words.shapes[row.finished[0] === row.finished[1] ? 'square' : 'rectangle'] : words.kind(row.kind),
    row.hand === null ? '' : words.hands[row.hand],
    row.count,
    ...row.finished,
    ...row.unfinished,
    report.measure.unit,
    words.methods[row.method],
    row.batches.length,
    row.spare,
    row.bias ? words.yes : words.no,
    Object.entries(row.fabrics)
      .map(([patch, fabric]) => `${words.patch(patch)}: ${named(fabric)}`)
      .join('; '),
    ...(ids ? [row.for.join(' ')] : []),
  ])
  return csv([[...words.units, ...(ids ? ['unit_ids'] : [])], ...rows], german === undefined ? 'comma' : 'semicolon')
}

/** One line for each fabric. */
export function clothCsv(
  report: Pick<Findings, 'fabric' | 'measure' | 'cloth'>,
  block: Pick<Block, 'fabrics'>,
  { ids = false, german }: TableForm = {},
): string {
  const named = namesOf(block)
  const words = tableWords({ german })
  const colours = new Map(block.fabrics.map(({ id, colour }) => [id, colour]))
  const rows = report.fabric.map((row) => [
    named(row.fabric),
    colours.get(row.fabric) ?? '',
    row.length,
    report.cloth.usableWidth,
    report.measure.unit,
    row.buy,
    report.measure.unit === 'in' ? 'yd' : 'm',
    row.strips.length,
    row.proved ? words.yes : words.no,
    ...(ids ? [row.fabric] : []),
  ])
  return csv([[...words.fabrics, ...(ids ? ['fabric_id'] : [])], ...rows], german === undefined ? 'comma' : 'semicolon')
}
