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
import { kindWords } from '../words/englishPhrases.ts'
import { patchWords } from './phrases.ts'

/** One line for each different unit. */
export function unitsCsv(report: Findings, block: Block): string {
  const named = namesOf(block)
  const head = [
    'kind',
    'hand',
    'count',
    'finished_width',
    'finished_height',
    'unfinished_width',
    'unfinished_height',
    'measure',
    'method',
    'batches',
    'spare',
    'bias',
    'fabrics',
    'units',
  ]
  const rows = report.units.map((row) => [
    kindWords(row.kind, 1),
    row.hand ?? '',
    row.count,
    ...row.finished,
    ...row.unfinished,
    report.measure.unit,
    row.method,
    row.batches.length,
    row.spare,
    row.bias ? 'yes' : 'no',
    Object.entries(row.fabrics)
      .map(([patch, fabric]) => `${patchWords(patch)}: ${named(fabric)}`)
      .join('; '),
    row.for.join(' '),
  ])
  return csv([head, ...rows])
}

/** One line for each fabric. */
export function clothCsv(report: Findings, block: Block): string {
  const named = namesOf(block)
  const head = ['fabric', 'name', 'colour', 'length', 'usable_width', 'measure', 'buy', 'buy_in', 'strips', 'proved']
  const colours = new Map(block.fabrics.map(({ id, colour }) => [id, colour]))
  const rows = report.fabric.map((row) => [
    row.fabric,
    named(row.fabric),
    colours.get(row.fabric) ?? '',
    row.length,
    report.cloth.usableWidth,
    report.measure.unit,
    row.buy,
    report.measure.unit === 'in' ? 'yd' : 'm',
    row.strips.length,
    row.proved ? 'yes' : 'no',
  ])
  return csv([head, ...rows])
}
