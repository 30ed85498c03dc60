/** Paints a whole block on a canvas: borders, the grid where there is no fabric, patches. */
import { type Block, cellOf, type Turn, toNumber } from '../../geometry/index.ts'
import { bordersAround, type Point, toDecimal, unitShapes } from '../document/shapes.ts'
import { UNKNOWN_COLOUR } from './fabricParts.ts'
import { canvasFill, type CellScale } from './fabricPattern.ts'

type ModeScale = CellScale & { readonly mode: 'cloth' | 'value' }

/** Paints a block: `scale` pixels to a cell, its grid's top left corner at so many pixels. */
export function paintBlock(pen: CanvasRenderingContext2D, block: Block, scale: number, [left, top]: Point, mode: 'cloth' | 'value' = 'cloth'): void {
  const { columns, rows } = block.grid
  const around = bordersAround(block)
  pen.setTransform(scale, 0, 0, scale, left, top)
  const cellScale: ModeScale = { cell: toNumber(cellOf(block)), pixels: scale, mode }
  drawBorders(pen, block, around, cellScale)
  drawGrid(pen, columns, rows, scale)
  for (const { fabric, turn, path } of areasOf(block)) {
    pen.fillStyle = fillFor(block, fabric, turn, cellScale)
    pen.fill(path)
    // A thin outline of the same fabric closes the gaps between neighbours.
    pen.strokeStyle = pen.fillStyle
    pen.lineWidth = 0.6 / scale
    pen.stroke(path)
  }
}

/** The grid shows where there is no fabric. */
function drawGrid(pen: CanvasRenderingContext2D, columns: number, rows: number, scale: number): void {
  pen.fillStyle = 'rgb(128 128 128 / 0.12)'
  pen.fillRect(0, 0, columns, rows)
  pen.strokeStyle = 'rgb(128 128 128 / 0.45)'
  pen.lineWidth = 1 / scale
  for (let x = 1; x < columns; x++) pen.strokeRect(x, 0, 0, rows)
  for (let y = 1; y < rows; y++) pen.strokeRect(0, y, columns, 0)
}

function fillFor({ fabrics }: Block, id: string, turn: Turn, cellScale: ModeScale): string | CanvasPattern {
  const fabric = fabrics.find((one) => one.id === id)
  return fabric === undefined ? UNKNOWN_COLOUR : canvasFill(fabric, cellScale.mode, turn, cellScale)
}

/** From the outside in, each over the one outside it. */
function drawBorders(pen: CanvasRenderingContext2D, block: Block, around: number, cellScale: ModeScale): void {
  let out = around
  const { columns, rows } = block.grid
  for (const { finishedWidth, fabric, corner } of [...(block.borders ?? [])].reverse()) {
    const wide = toDecimal(finishedWidth) / cellScale.cell
    pen.fillStyle = fillFor(block, fabric, 0, cellScale)
    pen.fillRect(-out, -out, columns + 2 * out, rows + 2 * out)
    if (corner !== undefined) {
      pen.fillStyle = fillFor(block, corner, 0, cellScale)
      for (const x of [-out, columns + out - wide]) for (const y of [-out, rows + out - wide]) pen.fillRect(x, y, wide, wide)
    }
    out -= wide
  }
  // A thin edge of the innermost border stays under the patches, so that no gap shows between them.
  const hair = 1 / cellScale.pixels
  pen.clearRect(hair, hair, block.grid.columns - 2 * hair, block.grid.rows - 2 * hair)
}

interface Area {
  readonly fabric: string
  readonly turn: Turn
  readonly path: Path2D
}

/** All patches of one fabric and one turn. */
function areasOf({ units }: Block): Iterable<Area> {
  const areas = new Map<string, Area>()
  for (const unit of units) {
    const turn = unit.kind === 'polygon' ? 0 : (unit.turn ?? 0)
    for (const { fabric, corners } of unitShapes(unit)) {
      const area = areas.get(`${turn} ${fabric}`) ?? { fabric, turn, path: new Path2D() }
      areas.set(`${turn} ${fabric}`, area)
      const [first, ...rest] = corners as [Point, ...Point[]]
      area.path.moveTo(...first)
      for (const corner of rest) area.path.lineTo(...corner)
      area.path.closePath()
    }
  }
  return areas.values()
}
