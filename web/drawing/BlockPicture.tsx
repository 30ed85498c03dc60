/**
 * A small picture of a block, drawn when it comes into view. Of a long list only the pictures drawn last stay in memory.
 *
 * In      how to load the block, and a text that changes whenever the block does.
 * Out     a square canvas with the block in the middle. It is hidden from screen readers, because the name stands beside it.
 */
import { useEffect, useRef } from 'react'
import { type Block, cellOf, type Turn, toNumber } from '../../geometry/index.ts'
import { UNKNOWN_COLOUR } from './fabricParts.ts'
import { canvasFill, type CellScale, useDecodedPhotos } from './fabricPattern.ts'
import { bordersAround, toDecimal, unitShapes, type Point } from '../document/shapes.ts'

interface Props {
  readonly load: () => Promise<Block | null>
  readonly stamp: string
  /** Width and height, in CSS pixels. */
  readonly side: number
}

export function BlockPicture({ load, stamp, side }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const loading = useRef(load)
  loading.current = load
  const decoded = useDecodedPhotos()
  // biome-ignore lint/correctness/useExhaustiveDependencies: the stamp changes with the block, and a decoded photograph has to be painted
  useEffect(() => {
    const paper = canvas.current
    if (paper === null) return
    let gone = false
    const show = (block: Block | null): void => {
      if (block === null || gone) return
      draw(paper, block, side)
      remember(paper, () => seen.observe(paper))
    }
    const seen = new IntersectionObserver(([entry]) => {
      if (entry?.isIntersecting !== true) return
      seen.disconnect()
      // A block that cannot be read or drawn has no picture. Opening it says why.
      loading
        .current()
        .then(show)
        .catch(() => {})
    })
    seen.observe(paper)
    return () => {
      gone = true
      seen.disconnect()
      drawn.delete(paper)
    }
  }, [stamp, side, decoded])
  return (
    <span className="blockpicture" style={{ width: side, height: side }} aria-hidden="true">
      <canvas ref={canvas} />
    </span>
  )
}

/** Far more than are in view at once. */
const MOST_DRAWN = 400
/** The pictures in memory, the oldest first, each with what to do when it is dropped. */
const drawn = new Map<HTMLCanvasElement, () => void>()

function remember(canvas: HTMLCanvasElement, onDrop: () => void): void {
  drawn.delete(canvas)
  drawn.set(canvas, onDrop)
  const [oldest] = drawn
  if (drawn.size <= MOST_DRAWN || oldest === undefined) return
  drawn.delete(oldest[0])
  oldest[0].width = 0
  oldest[1]()
}

function draw(canvas: HTMLCanvasElement, block: Block, side: number): void {
  const size = Math.round(side * Math.min(3, window.devicePixelRatio || 1))
  canvas.width = size
  canvas.height = size
  const pen = canvas.getContext('2d') as CanvasRenderingContext2D
  const { columns, rows } = block.grid
  const around = bordersAround(block)
  const scale = size / (Math.max(columns, rows) + 2 * around)
  pen.setTransform(scale, 0, 0, scale, (size - columns * scale) / 2, (size - rows * scale) / 2)
  const cellScale: CellScale = { cell: toNumber(cellOf(block)), pixels: scale }
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

function fillFor({ fabrics }: Block, id: string, turn: Turn, cellScale: CellScale): string | CanvasPattern {
  const fabric = fabrics.find((one) => one.id === id)
  return fabric === undefined ? UNKNOWN_COLOUR : canvasFill(fabric, 'cloth', turn, cellScale)
}

/** From the outside in, each over the one outside it. */
function drawBorders(pen: CanvasRenderingContext2D, block: Block, around: number, cellScale: CellScale): void {
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
