/**
 * The wrong side as it lies on the ironing board: every piece of fabric to scale, the one nearest the board first.
 *
 * In      the pieces as they are folded, in cells, and the colours of the fabrics.
 * Out     a drawing: each piece with its cut and folded edges, the wrong side of the fabric paler than its right side; then the stitches.
 */
import type { Findings, IronedSheet } from '../../geometry/index.ts'
import { type Point, pointOf } from '../document/shapes.ts'
import type { ViewDrawing, DrawingPart } from '../drawing/viewDrawing.ts'

export function wrongSideDrawing(sheets: readonly IronedSheet[], report: Findings, colours: ReadonlyMap<string, string>): ViewDrawing {
  return [...sheets.flatMap((sheet) => sheetParts(sheet, colours)), stitches(report)]
}

function sheetParts({ fabric, face, parts, edges }: IronedSheet, colours: ReadonlyMap<string, string>): DrawingPart[] {
  const colour = colours.get(fabric) ?? '#888888'
  return [
    { type: face === 'wrong' ? 'back' : 'folded', colour, outlines: parts.map(pointsOf) },
    { type: 'edge', lines: edges.map(pointsOf) },
  ]
}

function pointsOf(flat: readonly number[]): Point[] {
  const points: Point[] = []
  for (let i = 0; i < flat.length; i += 2) points.push([flat[i] as number, flat[i + 1] as number])
  return points
}

const stitches = ({ joins }: Findings): DrawingPart => ({
  type: 'stitches',
  lines: joins.map(({ from, via, to }) => [from, ...via, to].map(pointOf)),
})
