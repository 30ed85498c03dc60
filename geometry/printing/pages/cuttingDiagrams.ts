/** Where each cut goes: the strips of one fabric to scale, each piece with its size where there is room for it. */
import { boxAt } from '../../writing/booklet/sketch.ts'
import { type DiagramBox, cuttingDiagram } from '../../cutting/cuttingDiagram.ts'
import { sayLength } from '../../exact/lengths.ts'
import type { FabricRow } from '../../values/report.ts'
import type { BookletStep, Drawing, Mark, Spot } from '../../writing/booklet/values.ts'
import { sayOne, saySize } from '../../writing/phrases.ts'
import type { MeasureUnit } from '../../values/block.ts'
import type { PrintJob } from '../printJob.ts'

/** Pictures for a step of cutting: its fabric's strips; its own pictures where it cuts none. */
export function cuttingOf({ report, block, unit, pages }: PrintJob, step: BookletStep): readonly Drawing[] {
  const fabric = report.cut[step.cut[0] ?? -1]?.fabric
  const row = report.fabric.find((one) => one.fabric === fabric)
  if (row === undefined || row.strips.length === 0) return step.drawings
  const name = block.fabrics.find(({ id }) => id === fabric)?.name ?? row.fabric
  return [cuttingDrawing(row, name, report.cloth.usableWidth, unit, pages.width)]
}

/** Strips that run along the cloth are as long as their longest piece. */
const stripLength = ({ strips }: FabricRow, usable: number): number =>
  Math.max(usable, ...strips.map(({ pieces, height }) => pieces.reduce((sum, { size, count }) => sum + alongStrip(size, height) * count, 0)))

function alongStrip(size: readonly [number, number], height: number): number {
  const [long, short] = [Math.max(...size), Math.min(...size)]
  return long <= height + 1e-6 ? short : long
}

/** What each strip of a fabric holds, one clause a strip; lengths with their unit. */
export const stripWords = (row: FabricRow, unit: 'in' | 'cm'): string[] =>
  [...row.strips]
    .sort((a, b) => b.height - a.height)
    .map(
      ({ height, pieces }) =>
        `a strip ${sayOne(height, unit)} high: ${pieces.map(({ size, count }) => `${count} of ${saySize(size, unit)}`).join(', ')}`,
    )

/** Points that a figure of a picture's small letters is wide. */
const FIGURE = 3.5

/** Strips as they lie on the cloth. `wide`: how many points the picture will have for its width. */
export function cuttingDrawing(row: FabricRow, name: string, usableWidth: number, unit: MeasureUnit, wide: number): Drawing {
  const { fabric } = row
  const { strips, width, height } = cuttingDiagram(row.strips, stripLength(row, usableWidth))
  const scale = wide / width
  const marks = strips.flatMap((strip): Mark[] => [
    ...strip.leftover.map((box): Mark => ({ type: 'line', points: cornersOf(box), style: 'thin', closed: true })),
    ...strip.pieces.flatMap((piece): Mark[] => {
      const at: Spot = [piece.x + piece.width / 2, piece.y + piece.height / 2]
      const [broad, high] = [piece.width * scale, piece.height * scale]
      const words = [sides(piece, unit), ...(piece.width === piece.height ? [] : [sayLength(Math.max(piece.width, piece.height), unit)])]
      const text = high < 11 ? undefined : words.find((said) => said.length * FIGURE + 6 <= broad)
      return [
        { type: 'area', outline: cornersOf(piece), fabric, side: 'right', line: 'cut' },
        ...(text === undefined ? [] : [{ type: 'text', at, text, size: 'small', align: 'middle' } as const]),
      ]
    }),
  ])
  return { width, height, marks, title: `How to cut ${name}: ${stripWords(row, unit).join('; ')}` }
}

const sides = ({ width, height }: { readonly width: number; readonly height: number }, unit: 'in' | 'cm'): string =>
  width === height ? sayLength(width, unit) : `${sayLength(width, unit)} × ${sayLength(height, unit)}`

const cornersOf = ({ x, y, width, height }: DiagramBox): Spot[] => boxAt(x, y, width, height)
