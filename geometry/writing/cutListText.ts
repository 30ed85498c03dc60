/**
 * The cut list: what to cut from each fabric, how much cloth that takes, and what the four-at-a-time batches make.
 *
 * In      a report and the block it is about (for the names of its fabrics and its cell).
 * Out     text for people, in sixteenths of an inch or tenths of a centimetre.
 * Source  common practice, no source: cut by fabric, largest first.
 */
import type { Block, MeasureUnit } from '../values/block.ts'
import { type Wings, wingsSeen } from '../cutting/batches/geeseBatches.ts'
import { geeseMade } from '../cutting/batches/geeseMade.ts'
import { type FabricPair, hourglassPlans, isSharing } from '../cutting/batches/hourglasses.ts'
import { isOnRuler, shortSideFirst } from '../exact/lengths.ts'
import { type GeeseOfWings, type Message, message } from '../values/messages.ts'
import type { Batch, FabricRow, Findings, UnitRow } from '../values/report.ts'
import { inEnglish } from '../words/english.ts'
import { type ListedPiece, cutPieces } from './cutPieces.ts'
import { sanitiseLines, sanitiseLine } from './sanitiseText.ts'
import { friendlyCell } from './friendlyCell.ts'
import { inWords } from '../words/englishPhrases.ts'
import { count, toThousandths, sayExact, sayOne, saySize } from './phrases.ts'

/** The cut list for people, fabric by fabric, with the geese batches and hourglasses. */
export function cutListText(report: Findings, block: Block): string {
  const unit = report.measure.unit
  const named = namesOf(block)
  const sections = [
    heading(report),
    ...fabricsInUse(report, block).map((fabric) => fabricSection(fabric, report, named)),
    batchSection(report, block, named),
    ...hourglassSections(block, named),
    rulerNote(report, block),
  ]
  const notes = [...report.problems, ...report.advice].map(({ message }) => `Note: ${inEnglish(message)}`).join('\n')
  const empty = report.cut.length === 0 ? 'Nothing to cut yet.' : ''
  return sanitiseLines(`${[...sections, empty, notes].filter((section) => section !== '').join('\n\n')}\n`)

  function heading({ block: { name, unfinished, withBorders }, measure }: Findings): string {
    const borders = withBorders[0] === unfinished[0] && withBorders[1] === unfinished[1] ? '' : `, ${saySize(withBorders, unit)} with its borders`
    return [
      `Cut list: ${sanitiseLine(name)}`,
      `The block measures ${saySize(unfinished, unit)} unfinished${borders}.`,
      `Every size includes its seam allowances of ${sayExact(measure.seam, unit)}.`,
    ].join('\n')
  }
}

/** `One batch of four makes all your geese.` or `Two batches of four make all your geese; four geese are spare.` */
export const batchMessage = ({ batches, count: geese, spare }: UnitRow): Message =>
  message('batches-of-geese', { batches: batches.length, geese, spare })

/** What a batch makes, where its wings are of two fabrics: `Makes two geese with Moss on the left and Plum on the right, tip up.` */
export function batchMakes(batch: Batch, named: Named): Message | null {
  const geese = geeseMade([batch], []).map(({ wings, made }) => lookOf(wings, made, named))
  return geese.length < 2 ? null : message('batch-makes', { geese })
}

/** Which geese to keep, where some of those that the batches make are spare and others are not; null where any will do. */
export function geeseToKeep(row: UnitRow, block: Block, named: Named): Message | null {
  const made = geeseMade(row.batches, wingsOf(row, block))
  if (made.length < 2 || made.every(({ spare }) => spare === 0)) return null
  const kept = made.filter(({ made: all, spare }) => all > spare)
  return message('geese-to-keep', { geese: kept.map(({ wings, made: all, spare }) => lookOf(wings, all - spare, named)) })
}

/** The geese of a row by the fabrics of their wings, where one has wings of two fabrics; null for all other rows. */
export function geeseListed(row: UnitRow, block: Block, named: Named): Message | null {
  const wings = row.kind === 'goose' ? wingsOf(row, block) : []
  if (wings.every(([left, right]) => left === right)) return null
  return message('geese-listed', { geese: geeseMade([{ makes: wings }], []).map((one) => lookOf(one.wings, one.made, named)) })
}

const lookOf = ([left, right]: Wings, count: number, named: Named): GeeseOfWings => ({ count, left: named(left), right: named(right) })

function wingsOf({ for: ids }: UnitRow, { units }: Block): Wings[] {
  const wanted = new Set(ids)
  return units.filter(({ id }) => wanted.has(id)).map(wingsSeen)
}

type Named = (fabric: string) => string

/** The name of a fabric by its id, safe on one line; the id where the block does not have it. */
export function namesOf(block: Pick<Block, 'fabrics'>): Named {
  const names = new Map(block.fabrics.map(({ id, name }) => [id, sanitiseLine(name)]))
  return (fabric) => names.get(fabric) ?? fabric
}

function fabricsInUse(report: Findings, block: Block): string[] {
  const used = new Set(report.cut.map(({ fabric }) => fabric))
  return block.fabrics.map(({ id }) => id).filter((id) => used.has(id))
}

function fabricSection(fabric: string, report: Findings, named: Named): string {
  const unit = report.measure.unit
  const cloth = report.fabric.find((row) => row.fabric === fabric)
  const pieces = cutPieces(report)
    .filter((piece) => piece.fabric === fabric)
    .map((piece) => `  ${pieceLine(piece, report.measure.unit)}`)
  return [named(fabric), ...pieces, ...(cloth === undefined ? [] : clothLines(cloth, report.cloth.usableWidth, unit))].join('\n')
}

/** One row of the list: `4 squares 3 1/2 × 3 1/2 in – corners`. */
export function pieceLine(piece: ListedPiece, unit: MeasureUnit): string {
  const shape = piece.shape === 'polygon' ? ['template', 'templates'] : [piece.shape, `${piece.shape}s`]
  const then = { none: '', halve: ', each cut once from corner to corner', quarter: ', each cut twice from corner to corner' }[piece.then]
  const template = piece.shape === 'polygon' ? ' round its outermost points: trace the patch and add the seam allowance all round' : ''
  const fixed = piece.fixed ? ', the first across the fabric and the print upright' : ''
  const hand = piece.hand === null ? '' : `, ${piece.hand}-handed`
  const what = piece.purposes.map(inEnglish).join('; ')
  const border = piece.isBorderStrip ? `: cut ${sayExact(Math.min(...piece.size), unit)} wide; trim to length when you get there` : ''
  return `${count(piece.count, ...(shape as [string, string]))} ${saySize(piece.size, unit)}${fixed}${template}${then}${hand} – ${what}${border}`
}

/** The strips across a fabric, and how much to buy. */
export function clothLines(row: FabricRow, usableWidth: number, unit: MeasureUnit): string[] {
  const strips = row.strips.map(({ height, pieces }) => {
    const held = pieces.map((piece) => `${piece.count} of ${saySize(piece.fixed ? piece.size : shortSideFirst(piece.size), unit)}`).join(', ')
    return `    a strip ${sayOne(height, unit)} wide: ${held}`
  })
  const buy = unit === 'in' ? `${eighths(row.buy)} yd` : `${toThousandths(row.buy)} m`
  return [`  Fabric: ${sayOne(row.length, unit)} of it, ${sayOne(usableWidth, unit)} wide; buy ${buy}. Strips across the fabric:`, ...strips]
}

/** Yards are sold by the eighth. */
function eighths(yards: number): string {
  const parts = Math.round(yards * 8)
  const whole = Math.floor(parts / 8)
  const rest = parts % 8
  if (rest === 0) return String(whole)
  const half = rest % 4 === 0 ? '1/2' : rest % 2 === 0 ? `${rest / 2}/4` : `${rest}/8`
  return whole === 0 ? half : `${whole} ${half}`
}

function batchSection(report: Findings, block: Block, named: Named): string {
  const rows = report.units.filter(({ batches }) => batches.length > 0)
  return rows.map((row) => batchLines(row, block, named).join('\n')).join('\n\n')
}

/** The batches of one row of geese, and what each makes. */
export function batchLines(row: UnitRow, block: Block, named: Named): string[] {
  const { unit } = block.measure
  const least = row.batchesAtLeast === undefined ? [] : [`  At least ${inWords(row.batchesAtLeast, 'batch', 'batches')}; fewer than these may do.`]
  const batches = row.batches.map((batch, index) => {
    const corners = batch.corners.map((fabric, corner) => `${corner + 1}: ${named(fabric)}`).join(', ')
    const makes = batchMakes(batch, named)
    return `  Batch ${index + 1}: 1 large square of ${named(batch.goose)}; small squares, clockwise, ${corners}.${makes === null ? '' : ` ${inEnglish(makes)}`}`
  })
  const keep = geeseToKeep(row, block, named)
  return [
    `Geese ${saySize(row.finished, unit)} finished, trimmed to ${saySize(row.unfinished, unit)}: ${inEnglish(batchMessage(row))}`,
    ...batches,
    ...(keep === null ? [] : [`  ${inEnglish(keep)}`]),
    ...least,
  ]
}

/** Hourglasses of several looks out of fewer squares, or out of squares at all: offered, beside what stands in the list. */
function hourglassSections(block: Block, named: Named): string[] {
  const { unit } = block.measure
  return hourglassPlans(block)
    .filter(isSharing)
    .map(({ pairs, layings, square, unfinished, runs, singles }) => {
      const both = ([a, b]: FabricPair): string => `${named(a)} with ${named(b)}`
      const sewn = pairs.map(({ fabrics, count: number }) => `  Sew ${count(number, 'pair')} of squares into two triangles each: ${both(fabrics)}`)
      const laid = layings.map(
        ({ first, second, count: number }) =>
          `  Lay a triangle of ${both(first)} on one of ${both(second)}, ${number === 1 ? 'once' : `${number} times`}; sew across, cut: two hourglasses, mirror images`,
      )
      const head = `Hourglasses together, from ${count(runs, 'pair')} of squares ${saySize([square, square], unit)}, trimmed to ${saySize([unfinished, unfinished], unit)} (single triangles take ${count(singles, 'square')}, and are sewn along the bias):`
      return [head, ...sewn, ...laid].join('\n')
    })
}

function rulerNote(report: Findings, block: Block): string {
  const unit = report.measure.unit
  const off = report.cut.some(({ size }) => size.some((length) => !isOnRuler(length, unit)))
  if (!off) return ''
  const cell = friendlyCell(report, block)
  const better = cell === null ? '' : ` A cell of ${sayOne(cell, unit)} would put every piece of the block on the ruler.`
  return `Sizes said as "about" are the nearest ${unit === 'in' ? 'sixteenth of an inch' : 'tenth of a centimetre'}, not the size itself.${better}`
}
