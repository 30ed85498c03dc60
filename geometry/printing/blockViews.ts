/**
 * The block as a picture in each way that it is looked at, to scale.
 *
 * In      a view, a report and its block.
 * Out     a drawing, finished sizes, borders on; or SVG text that prints at the block's own size.
 */
import { cellOf } from '../block/lengthsOf.ts'
import type { Block } from '../values/block.ts'
import { toNumber } from '../exact/rational.ts'
import { areaOf } from '../plane/convex.ts'
import { fillsOf } from '../quilting/fills.ts'
import { routeLines } from '../quilting/stitchedLines.ts'
import type { Ditch, Findings, Join } from '../values/report.ts'
import { quiltingMarks } from '../writing/booklet/quilting/quiltingMarks.ts'
import type { Drawing, Mark, Spot } from '../writing/booklet/values.ts'
import { pointInCells } from '../writing/pieceNames.ts'
import { count } from '../writing/phrases.ts'
import type { FabricStyle } from './fabricFill.ts'
import { drawingSvg } from './drawingSvg.ts'

/** `wrong`: mirrored, as it lies on the ironing board. `seams`: numbered in sewing order. */
export const VIEWS = ['cloth', 'value', 'outline', 'wrong', 'seams', 'quilting'] as const
export type View = (typeof VIEWS)[number]

/** A report; its quilting line is needed by its own view alone. */
type ViewedReport = Findings & { readonly ditch?: Ditch }

const FABRIC_STYLES: Readonly<Record<View, FabricStyle>> = {
  cloth: 'cloth',
  value: 'value',
  outline: 'outline',
  wrong: 'cloth',
  seams: 'cloth',
  quilting: 'outline',
}
/** Lines and letters of a picture at its own size are heavier than those of one on a page. */
const WEIGHT = 1.8

/** A view of the block as SVG text, at its own size with borders on. */
export function viewSvg(view: View, report: ViewedReport, block: Block): string {
  return drawingSvg(viewDrawing(view, report, block), {
    unit: report.measure.unit,
    fabrics: block.fabrics,
    fabricStyle: FABRIC_STYLES[view],
    weight: WEIGHT,
  })
}

/** A convex piece of the block with the layers of cloth on it: x, y, x, y … in cells. */
interface LayeredCell {
  readonly poly: readonly number[]
  readonly layers: number
}

/** Layers of cloth, the thickest darkest as `colourOf` has it; each number stands once, where it fills most. */
export function layersSvg(cells: readonly LayeredCell[], report: ViewedReport, block: Block, colourOf: (layers: number) => string): string {
  const { width, height, put } = placedOn(report, block)
  const largest = new Map<number, LayeredCell>()
  for (const cell of cells) if (sizeOf(cell) > sizeOf(largest.get(cell.layers))) largest.set(cell.layers, cell)
  const areas = cells.map(
    ({ poly, layers }): Mark => ({ type: 'area', outline: spotsOf(poly).map(put), fabric: String(layers), side: 'right', line: 'none' }),
  )
  const numbers = [...largest.values()].map(
    ({ poly, layers }): Mark => ({ type: 'text', at: middle(spotsOf(poly).map(put)), text: String(layers), size: 'normal', align: 'middle' }),
  )
  const drawing = { width, height, marks: [...areas, ...numbers], title: `${block.name}, layers of cloth` }
  const fabrics = [...largest.keys()].map((layers) => ({ id: String(layers), name: String(layers), colour: colourOf(layers) }))
  return drawingSvg(drawing, { unit: report.measure.unit, fabrics, weight: WEIGHT })
}

const sizeOf = (cell: LayeredCell | undefined): number => (cell === undefined ? 0 : Math.abs(areaOf(cell.poly)))

const spotsOf = (poly: readonly number[]): Spot[] => poly.flatMap((x, at): Spot[] => (at % 2 === 0 ? [[x, poly[at + 1] as number]] : []))

const middle = (spots: readonly Spot[]): Spot =>
  [0, 1].map((axis) => spots.reduce((sum, spot) => sum + (spot[axis] as number), 0) / spots.length) as unknown as Spot

/** A view of the block as a drawing, in the unit of measure, with borders on. */
export function viewDrawing(view: View, report: ViewedReport, block: Block): Drawing {
  const placed = placedOn(report, block)
  const { width, height } = placed
  const areas = report.patches.map(
    ({ corners, fabric }): Mark => ({
      type: 'area',
      outline: corners.map((corner) => placed.put(pointInCells(corner))),
      fabric,
      side: 'right',
      line: 'seam',
    }),
  )
  return { width, height, ...DRAWN[view]({ report, block, areas, ...placed }) }
}

interface Placed {
  readonly width: number
  readonly height: number
  /** Cells to the measure's unit, from the block's top left with its borders on. */
  readonly put: (spot: Spot) => Spot
}

function placedOn(report: ViewedReport, block: Block): Placed {
  const cell = toNumber(cellOf(block))
  const spots: Spot[] = [[0, 0], [block.grid.columns, block.grid.rows], ...report.patches.flatMap(({ corners }) => corners.map(pointInCells))]
  const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)]
  const [left, top] = [least(xs), least(ys)]
  const tidy = (length: number): number => Math.round(length * 1e9) / 1e9 + 0
  return {
    width: tidy((most(xs) - left) * cell),
    height: tidy((most(ys) - top) * cell),
    put: ([x, y]) => [tidy((x - left) * cell), tidy((y - top) * cell)],
  }
}

const least = (values: readonly number[]): number => values.reduce((low, value) => Math.min(low, value))
const most = (values: readonly number[]): number => values.reduce((high, value) => Math.max(high, value))

interface Seen extends Placed {
  readonly report: ViewedReport
  readonly block: Block
  readonly areas: readonly Mark[]
}

type Shown = (seen: Seen) => Pick<Drawing, 'marks' | 'title'>

const DRAWN: Readonly<Record<View, Shown>> = {
  cloth: ({ block, areas }) => ({ marks: areas, title: `${block.name} from the right side` }),
  value: ({ block, areas }) => ({ marks: areas, title: `${block.name} in greys` }),
  outline: ({ block, areas }) => ({ marks: areas, title: `${block.name} in outlines` }),
  wrong: wrongSideSketch,
  seams: ({ block, areas, report, put }) => ({
    marks: [...areas, ...report.joins.map((join, at) => numbered(join, at + 1, put))],
    title: `${block.name}, its seams numbered in sewing order`,
  }),
  quilting,
}

const numbered = (join: Join, number: number, put: Placed['put']): Mark => ({
  type: 'point',
  at: put(middleOf(join)),
  mark: 'number',
  text: String(number),
})

/** Half way along the seam, bends and all. */
function middleOf({ from, via, to }: Join): Spot {
  const way = [from, ...via, to].map(pointInCells)
  const lengths = way.slice(1).map(([x, y], at) => Math.hypot(x - (way[at] as Spot)[0], y - (way[at] as Spot)[1]))
  let left = lengths.reduce((sum, length) => sum + length, 0) / 2
  for (const [at, length] of lengths.entries()) {
    const [[ax, ay], [bx, by]] = [way[at] as Spot, way[at + 1] as Spot]
    if (left <= length || at === lengths.length - 1) return [ax + ((bx - ax) * left) / (length || 1), ay + ((by - ay) * left) / (length || 1)]
    left -= length
  }
  return way[0] as Spot
}

/** Mirrored, with an arrow for the way each seam is pressed. */
function wrongSideSketch({ report, block, areas, width, put }: Seen): ReturnType<Shown> {
  const over = ([x, y]: Spot): Spot => [width - x, y]
  const turned = areas.map((mark): Mark => (mark.type === 'area' ? { ...mark, outline: mark.outline.map(over), side: 'wrong' } : mark))
  const long = report.measure.seam * 1.6
  const arrows = report.joins.flatMap((join): Mark[] => {
    if (join.press.toward === 'open') return [{ type: 'point', at: over(put(middleOf(join))), mark: 'open' }]
    const [x, y] = put(middleOf(join))
    const [ax, ay] = put(pointInCells(join.from))
    const [bx, by] = put(pointInCells(join.to))
    const length = Math.hypot(bx - ax, by - ay) || 1
    // Clockwise of a seam that runs right lies what is below it.
    const way = join.press.toward === join.clockwise ? 1 : -1
    const [dx, dy] = [(-(by - ay) / length) * way * long, ((bx - ax) / length) * way * long]
    return [{ type: 'arrow', from: over([x - dx / 3, y - dy / 3]), to: over([x + dx, y + dy]), means: 'press' }]
  })
  return { marks: [...turned, ...arrows], title: `${block.name} from the wrong side, with the way each seam is pressed` }
}

function quilting({ report, block, areas, put }: Seen): ReturnType<Shown> {
  const blank = areas.map((mark): Mark => (mark.type === 'area' ? { ...mark, fabric: null } : mark))
  const routes = report.ditch === undefined ? [] : routeLines(report.ditch)
  const fills = fillsOf(block, report.patches).lines.map(
    ({ points, closed }): Mark => ({ type: 'line', points: points.map(put), closed, style: 'stitch' }),
  )
  return { marks: [...blank, ...fills, ...quiltingMarks(routes, put)], title: `The quilting line: ${count(routes.length, 'line')} along the seams` }
}
