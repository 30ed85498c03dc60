/**
 * What is cut, made and bought for a quilt, as tables for a spreadsheet.
 *
 * In      a quilt, its report, which table, the form, and which part of a class; null for all.
 * Out     comma-separated text, as that of a block.
 */
import { quiltPart } from '../../quilt/parts.ts'
import type { QuiltReport } from '../../quilt/report.ts'
import type { Quilt } from '../../values/quilt.ts'
import { piecesCsv } from '../cutListCsv.ts'
import type { TableForm } from '../tableWords.ts'
import { clothCsv, unitsCsv } from '../tables.ts'
import { quiltContext } from './quiltContext.ts'
import { quiltCutPieces } from './quiltCutPieces.ts'

export function quiltTable(
  quilt: Quilt,
  report: QuiltReport,
  table: 'pieces' | 'units' | 'cloth',
  form: TableForm,
  part: number | null = null,
): string {
  const context = quiltContext(quilt, report)
  const cut = part === null ? report : quiltPart(quilt, part)
  const { measure, cloth } = report
  if (table === 'units') return unitsCsv({ units: cut.units, measure }, context, form)
  if (table === 'cloth') return clothCsv({ fabric: cut.fabric, measure, cloth }, context, form)
  return piecesCsv(quiltCutPieces(cut, quilt), cut.units, measure.unit, context.fabric, form)
}
