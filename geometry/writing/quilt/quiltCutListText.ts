/**
 * The cut list of a quilt for people, fabric by fabric.
 *
 * In      a quilt, its report, and which part of a class; null for all.
 * Out     text in sixteenths of an inch or tenths of a centimetre.
 */
import { partCount, quiltPart } from '../../quilt/parts.ts'
import type { QuiltReport } from '../../quilt/report.ts'
import type { Block } from '../../values/block.ts'
import type { Quilt } from '../../values/quilt.ts'
import { oneLine } from '../booklet/bookletContext.ts'
import { batchLines, clothLines, pieceLine } from '../cutListText.ts'
import { sayExact, sayOne, saySize } from '../phrases.ts'
import { sanitiseLines } from '../sanitiseText.ts'
import { quiltContext, type QuiltContext } from './quiltContext.ts'
import { type QuiltCut, quiltCutPieces } from './quiltCutPieces.ts'

export function quiltCutListText(quilt: Quilt, report: QuiltReport, part: number | null = null): string {
  const context = quiltContext(quilt, report)
  const own = part === null ? null : quiltPart(quilt, part)
  const cut: QuiltCut = own ?? report
  const which = own === null ? '' : `, part ${own.number} of ${partCount(quilt)}: ${oneLine(own.title)}`
  const head = [
    `Cut list: ${oneLine(quilt.name)}${which}`,
    `The quilt measures ${saySize(report.size.finished, context.unit)} finished.`,
    `Every size includes its seam allowances of ${sayExact(report.measure.seam, context.unit)}.`,
  ].join('\n')
  const layers = (own?.layers ?? report.layers).map(({ what, size, count }) => `  ${count} × ${what} ${saySize(size, context.unit)}`)
  const sections = [
    head,
    ...context.fabrics.map(({ id }) => fabricSection(id, cut, context)),
    ...cut.units.filter(({ batches }) => batches.length > 0).map((row) => batchLines(row, blockOfAll(context), context.fabric).join('\n')),
    layers.length === 0 ? '' : ['Batting and backing', ...layers].join('\n'),
    own === null || own.number === partCount(quilt) ? bindingSaid(report) : '',
    cut.cut.length === 0 ? 'Nothing to cut yet.' : '',
  ]
  return sanitiseLines(`${sections.filter((section) => section !== '').join('\n\n')}\n`)
}

function fabricSection(fabric: string, cut: QuiltCut, { quilt, report, unit, fabric: named }: QuiltContext): string {
  const pieces = quiltCutPieces(cut, quilt).filter((piece) => piece.fabric === fabric)
  if (pieces.length === 0) return ''
  const row = cut.fabric.find((one) => one.fabric === fabric)
  return [
    named(fabric),
    ...pieces.map((piece) => `  ${pieceLine(piece, unit)}`),
    ...(row === undefined ? [] : clothLines(row, report.cloth.usableWidth, unit)),
  ].join('\n')
}

const bindingSaid = ({ binding, measure }: QuiltReport): string =>
  binding === null ? '' : `Binding: ${binding.strips} strips ${sayOne(binding.width, measure.unit)} wide across the fabric`

/** The units of all places, by the ids that the report uses. */
function blockOfAll({ quilt, blocks }: QuiltContext): Block {
  const units = quilt.places.flatMap(({ id, block }) =>
    block === undefined ? [] : (blocks.get(block)?.block.units ?? []).map((unit) => ({ ...unit, id: `${id}/${unit.id}` })),
  )
  return {
    format: 'nestwright.block',
    version: 1,
    name: quilt.name,
    measure: quilt.measure,
    grid: { columns: 1, rows: 1, cell: 1 },
    fabrics: [],
    units,
  }
}
