/**
 * How the units of one row of the report are made, all alike ones together.
 *
 * In      the row, its block's seam allowance as said, and the names of fabrics.
 * Out     the lines of one making step; which way to press is added by `steps.ts`, which knows the plan.
 * Source  common practice; the ways of each method as in the handbook, sections 1 (geese), 2 and 3 (triangles).
 */
import type { UnitRow } from '../values.ts'
import { batchSentence } from './cutList.ts'
import { count, inWords, kindWords, type MeasureUnit, patchWords, saySize } from './say.ts'

export interface Bench {
  readonly unit: MeasureUnit
  /** The seam allowance as makers write it. */
  readonly seam: string
  readonly fabric: (id: string) => string
}

export function unitLines(row: UnitRow, bench: Bench): string[] {
  const trim = `Trim each to ${saySize(row.unfinished, bench.unit)}, unfinished.`
  const make = MAKE[row.method] ?? plain
  const bias = row.bias ? ['The outside edges are on the bias: handle them little, and press without pushing.'] : []
  return [...make(row, bench), ...(TRIMMED.has(row.method) ? [trim] : [`Each measures ${saySize(row.unfinished, bench.unit)}, unfinished.`]), ...bias]
}

type Lines = (row: UnitRow, bench: Bench) => string[]

const TRIMMED = new Set(['geese-4', 'hst-2', 'hst-4', 'hst-8', 'qst-2'])

function plain(row: UnitRow, bench: Bench): string[] {
  const names = Object.keys(row.fabrics)
  if (names.length < 2) return [`Nothing to sew: the patch is used as cut.`]
  return [`Sew ${used(row, bench)}, in the order in which the plan numbers the seams.`]
}

const MAKE: Readonly<Record<string, Lines>> = {
  plain,
  'geese-4': (row, { seam, fabric }) => [
    batchSentence(row),
    ...row.batches.map(
      (batch, index) => `Batch ${index + 1}: ${fabric(batch.goose)} large square; small squares, clockwise, ${batch.corners.map(fabric).join(', ')}.`,
    ),
    'Draw a line from corner to corner on the wrong side of each small square.',
    'Lay the first and the third small square on opposite corners of the large square, right sides together; their lines meet in the middle, and their tips overlap there.',
    `Sew ${seam} away on each side of the line; cut on the line; press toward the small triangles.`,
    'On each half lay a small square on the corner that is still bare, right sides together, its line running from that corner out between the two small triangles: the second square on its own corner, the fourth on the other half.',
    `Sew ${seam} away on each side of the line; cut on the line; press. Each half gives two geese.`,
    `When trimming, keep the tip of the goose ${seam} inside the raw edge, at half the width.`,
  ],
  'corner-flip': (row, { fabric }) => [
    `Draw a line from corner to corner on the wrong side of each small square (${[...new Set(corners(row).map(([, id]) => fabric(id)))].join(', ')}).`,
    `Lay a square on its corner of the base, right sides together, and sew on the line: ${corners(row)
      .map(([name, id]) => `${patchWords(name)} in ${fabric(id)}`)
      .join('; ')}.`,
    'Trim the corner a seam allowance beyond the stitching and press it over before the next one is laid.',
  ],
  'hst-2': (row, bench) => twoSquares(row, bench, 2, 'Sew SEAM away on each side of the line; cut on the line.', true),
  'hst-4': (row, bench) =>
    twoSquares(row, bench, 4, 'Sew all round the two squares, SEAM from the edge; cut from corner to corner both ways.', false),
  'hst-8': (row, bench) =>
    twoSquares(
      row,
      bench,
      8,
      'Draw both lines from corner to corner; sew SEAM away on each side of both; cut through the middle both ways, then on the lines.',
      false,
    ),
  'qst-2': (row, bench) => [
    ...twoSquares(row, bench, 2, 'Sew SEAM away on each side of the line; cut on the line; press.', true),
    'Lay two halves on each other, right sides together, fabrics crossed and seams nested; draw the other line, sew SEAM away on each side of it and cut on it. The two are of opposite hand.'.replace(
      'SEAM',
      bench.seam,
    ),
  ],
  'strip-set': (row, bench) => [
    `Sew long strips side by side: ${used(row, bench)}. Sew alternate seams from opposite ends, so that the set stays straight.`,
    `Press, straighten one end, and cut across: ${count(row.count, 'piece')} as wide as the unit is high, unfinished.`,
  ],
}

/** Squares in pairs, right sides together; `drawn` where one line from corner to corner is drawn first. */
function twoSquares(row: UnitRow, bench: Bench, makes: number, how: string, drawn: boolean): string[] {
  const pairs = Math.ceil(row.count / makes)
  const over = pairs * makes - row.count
  const left = over === 0 ? '' : `, ${inWords(over, 'unit')} left over`
  const line = drawn ? ' Draw a line from corner to corner on the wrong side of the lighter one.' : ''
  return [
    `Lay squares in pairs, right sides together: ${listFabrics(row, bench)}. ${count(pairs, 'pair')} ${pairs === 1 ? 'makes' : 'make'} ${row.count} ${kindWords(row.kind, row.count)}${left}.${line}`,
    how.replaceAll('SEAM', bench.seam),
  ]
}

const corners = (row: UnitRow): [string, string][] => Object.entries(row.fabrics).filter(([name]) => name !== 'goose' && name !== 'centre')

const used = (row: UnitRow, bench: Bench): string =>
  Object.entries(row.fabrics)
    .map(([name, id]) => `${patchWords(name)} in ${bench.fabric(id)}`)
    .join(', ')

const listFabrics = (row: UnitRow, bench: Bench): string => [...new Set(Object.values(row.fabrics))].map(bench.fabric).join(' with ')
