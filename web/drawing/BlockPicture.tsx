/**
 * A small picture of a block, drawn from the block itself when it comes in sight. Of a long list only the pictures drawn last stay.
 *
 * In      how to get the block, and a word that changes with it.
 * Out     a square canvas with the block in its middle; nothing for a reader, since the name stands beside it.
 */
import { useEffect, useRef } from 'react'
import { type Block, cellOf, type Turn, toNumber } from '../../geometry/index.ts'
import { canvasFill, type CellScale, UNKNOWN_COLOUR, useDecodedPhotos } from './fabricPattern.ts'
import { bordersAround, decimal, unitShapes, type Point } from '../document/shapes.ts'

interface Props {
  readonly load: () => Promise<Block | null>
  readonly stamp: string
  /** Pixels of the page to a side. */
  readonly side: number
}

export function BlockPicture({ load, stamp, side }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const loading = useRef(load)
  loading.current = load
  const decoded = useDecodedPhotos()
  // biome-ignore lint/correctness/useExhaustiveDependencies: the stamp says when the block is another, a photograph when it is there
  useEffect(() => {
    const paper = canvas.current
    if (paper === null) return
    let gone = false
    const show = (block: Block | null): void => {
      if (block === null || gone) return
      draw(paper, block, side)
      stay(paper, () => seen.observe(paper))
    }
    const seen = new IntersectionObserver(([entry]) => {
      if (entry?.isIntersecting !== true) return
      seen.disconnect()
      // What cannot be read, or drawn, has no picture: opening it says why.
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

/** Far more than are in sight at once. */
const MOST_DRAWN = 400
/** Pictures that are drawn, the one drawn longest ago first, and what lets each be drawn again. */
const drawn = new Map<HTMLCanvasElement, () => void>()

function stay(paper: HTMLCanvasElement, again: () => void): void {
  drawn.delete(paper)
  drawn.set(paper, again)
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
  const cloth: CellScale = { cell: toNumber(cellOf(block)), pixels: scale }
  drawBorders(pen, block, around, cloth)
  drawGrid(pen, columns, rows, scale)
  for (const { fabric, turn, path } of areasOf(block)) {
    pen.fillStyle = fillIn(block, fabric, turn, cloth)
    pen.fill(path)
    // A hair of the same cloth closes the gaps between neighbours.
    pen.strokeStyle = pen.fillStyle
    pen.lineWidth = 0.6 / scale
    pen.stroke(path)
  }
}

/** Where no cloth lies the grid shows. */
function drawGrid(pen: CanvasRenderingContext2D, columns: number, rows: number, scale: number): void {
  pen.fillStyle = 'rgb(128 128 128 / 0.12)'
  pen.fillRect(0, 0, columns, rows)
  pen.strokeStyle = 'rgb(128 128 128 / 0.45)'
  pen.lineWidth = 1 / scale
  for (let x = 1; x < columns; x++) pen.strokeRect(x, 0, 0, rows)
  for (let y = 1; y < rows; y++) pen.strokeRect(0, y, columns, 0)
}

function fillIn({ fabrics }: Block, id: string, turn: Turn, cloth: CellScale): string | CanvasPattern {
  const fabric = fabrics.find((one) => one.id === id)
  return fabric === undefined ? UNKNOWN_COLOUR : canvasFill(fabric, 'cloth', turn, cloth)
}

/** From the outside in, each over the one around it. */
function drawBorders(pen: CanvasRenderingContext2D, block: Block, around: number, cloth: CellScale): void {
  let out = around
  const { columns, rows } = block.grid
  for (const { finishedWidth, fabric, corner } of [...(block.borders ?? [])].reverse()) {
    const wide = decimal(finishedWidth) / cloth.cell
    pen.fillStyle = fillIn(block, fabric, 0, cloth)
    pen.fillRect(-out, -out, columns + 2 * out, rows + 2 * out)
    if (corner !== undefined) {
      pen.fillStyle = fillIn(block, corner, 0, cloth)
      for (const x of [-out, columns + out - wide]) for (const y of [-out, rows + out - wide]) pen.fillRect(x, y, wide, wide)
    }
    out -= wide
  }
  // A hair of the innermost border stays under the patches, so that nothing shines through between them.
  const hair = 1 / cloth.pixels
  pen.clearRect(hair, hair, block.grid.columns - 2 * hair, block.grid.rows - 2 * hair)
}

interface Area {
  readonly fabric: string
  readonly turn: Turn
  readonly path: Path2D
}

/** All patches of one cloth that lie the same way. */
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
