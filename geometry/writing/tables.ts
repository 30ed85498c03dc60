/**
 * What is made and what is bought, as tables for a spreadsheet; the cut pieces have theirs in `cutList.ts`.
 *
 * In      a report and the block it is about (for the names of its fabrics).
 * Out     comma-separated text: one line a different unit, or one line a fabric; exact sizes in the measure's unit.
 */
import type { Block } from '../values/block.ts'
import type { Findings } from '../values/report.ts'
import { csv } from './csv.ts'
import type { TableForm } from './cutListCsv.ts'
import { namesOf } from './cutListText.ts'
import { kindWords, METHOD_WORDS } from '../words/englishPhrases.ts'
import { letterAt, patchWords } from './phrases.ts'

/** One line for each different unit. */
export function unitsCsv(report: Findings, block: Block, { ids = false, german }: TableForm = {}): string {
  const named = namesOf(block)
  const head = [
    'unit',
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
    ...(ids ? ['unit_ids'] : []),
  ]
  const rows = report.units.map((row, place) => [
    letterAt(place),
    row.kind === 'square' ? (row.finished[0] === row.finished[1] ? 'square' : 'rectangle') : kindWords(row.kind, 1),
    row.hand ?? '',
    row.count,
    ...row.finished,
    ...row.unfinished,
    report.measure.unit,
    METHOD_WORDS[row.method],
    row.batches.length,
    row.spare,
    row.bias ? 'yes' : 'no',
    Object.entries(row.fabrics)
      .map(([patch, fabric]) => `${patchWords(patch)}: ${named(fabric)}`)
      .join('; '),
    ...(ids ? [row.for.join(' ')] : []),
  ])
  return csv([head, ...rows], german === undefined ? 'comma' : 'semicolon')
}

/** One line for each fabric. */
export function clothCsv(report: Findings, block: Block, { ids = false, german }: TableForm = {}): string {
  const named = namesOf(block)
  const head = ['fabric', 'colour', 'length', 'usable_width', 'measure', 'buy', 'buy_in', 'strips', 'proved', ...(ids ? ['fabric_id'] : [])]
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
    row.proved ? 'yes' : 'no',
    ...(ids ? [row.fabric] : []),
  ])
  return csv([head, ...rows], german === undefined ? 'comma' : 'semicolon')
}
