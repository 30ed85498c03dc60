/**
 * Paints a quilt: its places with blocks, frames and plain pieces, strips between them, borders.
 *
 * In      a quilt and its layout; a canvas under a transform.
 * Out     painted. A block is painted once for each size and kept as a picture, which its places share.
 */
import {
  type Block,
  blockAsWorn,
  blockFinished,
  bordersWide,
  cellOf,
  type DrawnPlace,
  type Fabric,
  type Quilt,
  type QuiltLayout,
  quiltLayout,
  toNumber,
} from '../../geometry/index.ts'
import { bordersAround, type Point, toDecimal } from '../document/shapes.ts'
import { paintBlock } from './blockPainting.ts'
import { UNKNOWN_COLOUR } from './fabricParts.ts'
import { canvasFill, useDecodedPhotos } from './fabricPattern.ts'

type Pen = CanvasRenderingContext2D

interface Worn {
  readonly fabrics: readonly Fabric[]
  readonly block: Block
}
const worn = new WeakMap<object, Worn>()

/** A block of the quilt with the quilt's fabrics: the same value for the same block and fabrics. */
function wornBlockOf(quilt: Quilt, id: string): Block | null {
  const item = quilt.blocks.find((one) => one.id === id)
  if (item === undefined) return null
  const known = worn.get(item)
  if (known?.fabrics === quilt.fabrics) return known.block
  const block = blockAsWorn(quilt, id) as Block
  worn.set(item, { fabrics: quilt.fabrics, block })
  return block
}

interface Picture {
  readonly canvas: HTMLCanvasElement
  readonly decoded: number
}
const pictures = new WeakMap<Block, Map<string, Picture>>()
/** Sizes of one block that stay: the board's and the list's. */
const MOST_SIZES = 4

/** A block's picture with its own borders, not turned, at a number of pixels for each inch or centimetre. */
export function blockPicture(quilt: Quilt, id: string, pixels: number, mode: 'cloth' | 'value' = 'cloth'): HTMLCanvasElement | null {
  const block = wornBlockOf(quilt, id)
  if (block === null) return null
  const own = pictures.get(block) ?? new Map<string, Picture>()
  pictures.set(block, own)
  const decoded = useDecodedPhotos.getState()
  const key = `${Math.round(pixels * 16)} ${mode}`
  const known = own.get(key)
  if (known?.decoded === decoded) return known.canvas
  if (own.size >= MOST_SIZES) own.clear()
  const canvas = document.createElement('canvas')
  const [wide, high] = blockFinished(block)
  canvas.width = Math.max(1, Math.round(wide * pixels))
  canvas.height = Math.max(1, Math.round(high * pixels))
  const scale = toNumber(cellOf(block)) * pixels
  const around = bordersAround(block) * scale
  paintBlock(canvas.getContext('2d') as Pen, block, scale, [around, around], mode)
  own.set(key, { canvas, decoded })
  return canvas
}

/** The fill of one of the quilt's fabrics, by its id; a block's own is called `block/fabric`. */
function fillOf(quilt: Quilt, id: string, pixels: number, mode: 'cloth' | 'value'): string | CanvasPattern {
  const fabric = quilt.fabrics.find((one) => one.id === id)
  return fabric === undefined ? UNKNOWN_COLOUR : canvasFill(fabric, mode, 0, { cell: 1, pixels })
}

/** Paints one place with its top left corner at 0, 0, in inches or centimetres; `pixels` to each. */
export function paintPlace(pen: Pen, quilt: Quilt, drawn: DrawnPlace, pixels: number, mode: 'cloth' | 'value' = 'cloth'): void {
  const { place, size, content, frame } = drawn
  if (place.plain !== undefined) {
    pen.fillStyle = fillOf(quilt, place.plain, pixels, mode)
    pen.fillRect(0, 0, size[0], size[1])
    return
  }
  pen.fillStyle = 'rgb(128 128 128 / 0.12)'
  pen.fillRect(0, 0, size[0], size[1])
  let [w, h] = frame.reduce<Point>(([wide, high], { across, down }) => [wide + 2 * across, high + 2 * down], content)
  for (const { fabric, across, down } of [...frame].reverse()) {
    pen.fillStyle = fillOf(quilt, fabric, pixels, mode)
    pen.fillRect((size[0] - w) / 2, (size[1] - h) / 2, w, h)
    w -= 2 * across
    h -= 2 * down
  }
  const picture = blockPicture(quilt, place.block as string, pixels, mode)
  if (picture === null) return
  pen.save()
  pen.beginPath()
  pen.rect(0, 0, size[0], size[1])
  pen.clip()
  pen.translate(size[0] / 2, size[1] / 2)
  pen.rotate(((place.turn ?? 0) * Math.PI) / 2)
  const [wide, high] = (place.turn ?? 0) % 2 === 1 ? [content[1], content[0]] : content
  pen.drawImage(picture, -wide / 2, -high / 2, wide, high)
  pen.restore()
}

/** Paints borders, sashing and what lies between places. */
export function paintGround(pen: Pen, quilt: Quilt, layout: QuiltLayout, pixels: number, mode: 'cloth' | 'value' = 'cloth'): void {
  const [wide, high] = layout.size
  const round = quilt.way?.sash?.round === true ? layout.gap : 0
  let out = bordersWide(quilt) + round
  const rect = (by: number, fabric: string): void => {
    pen.fillStyle = fillOf(quilt, fabric, pixels, mode)
    pen.fillRect(-by, -by, wide + 2 * by, high + 2 * by)
  }
  for (const { fabric, finishedWidth, corner } of [...(quilt.borders ?? [])].reverse()) {
    const width = toDecimal(finishedWidth)
    rect(out, fabric)
    if (corner !== undefined) {
      pen.fillStyle = fillOf(quilt, corner, pixels, mode)
      for (const x of [-out, wide + out - width]) for (const y of [-out, high + out - width]) pen.fillRect(x, y, width, width)
    }
    out -= width
  }
  const ground = quilt.way?.sash?.fabric ?? quilt.way?.fabric
  if (layout.gap > 0 && ground !== undefined) {
    pen.clearRect(-round, -round, wide + 2 * round, high + 2 * round)
    rect(round, ground)
    paintCorners(pen, quilt, layout, pixels, mode)
  } else pen.clearRect(0, 0, wide, high)
}

/** Corner squares where four sashes meet. */
function paintCorners(pen: Pen, quilt: Quilt, { gap, cell }: QuiltLayout, pixels: number, mode: 'cloth' | 'value'): void {
  const sash = quilt.way?.sash
  if (sash?.corner === undefined) return
  pen.fillStyle = fillOf(quilt, sash.corner, pixels, mode)
  const { columns, rows } = quilt.grid
  const first = sash.round === true ? 0 : 1
  for (let x = first; x <= columns - first; x++)
    for (let y = first; y <= rows - first; y++) pen.fillRect(x * (cell[0] + gap) - gap, y * (cell[1] + gap) - gap, gap, gap)
}

/** How far the quilt reaches beyond its places: borders and a sash round the outside. */
export const reachAround = (quilt: Quilt, { gap }: QuiltLayout): number => bordersWide(quilt) + (quilt.way?.sash?.round === true ? gap : 0)

/** A small picture of a whole quilt. */
export function drawQuilt(canvas: HTMLCanvasElement, quilt: Quilt, side: number): void {
  const size = Math.round(side * Math.min(3, window.devicePixelRatio || 1))
  canvas.width = size
  canvas.height = size
  const pen = canvas.getContext('2d') as Pen
  const layout = quiltLayout(quilt)
  const around = reachAround(quilt, layout)
  const [wide, high] = [layout.size[0] + 2 * around, layout.size[1] + 2 * around]
  const pixels = size / Math.max(wide, high)
  pen.setTransform(pixels, 0, 0, pixels, (size - wide * pixels) / 2 + around * pixels, (size - high * pixels) / 2 + around * pixels)
  paintGround(pen, quilt, layout, pixels)
  paintEmpty(pen, quilt, layout, pixels)
  for (const drawn of layout.places) {
    pen.save()
    pen.translate(drawn.at[0], drawn.at[1])
    paintPlace(pen, quilt, drawn, pixels)
    pen.restore()
  }
}

/** Outlines of all cells, seen where nothing lies. */
export function paintEmpty(pen: Pen, quilt: Quilt, { cell, gap }: QuiltLayout, pixels: number): void {
  pen.fillStyle = 'rgb(128 128 128 / 0.14)'
  pen.strokeStyle = 'rgb(128 128 128 / 0.5)'
  pen.lineWidth = 1 / pixels
  for (let x = 0; x < quilt.grid.columns; x++)
    for (let y = 0; y < quilt.grid.rows; y++) {
      const at: Point = [x * (cell[0] + gap), y * (cell[1] + gap)]
      pen.clearRect(at[0], at[1], cell[0], cell[1])
      pen.fillRect(at[0], at[1], cell[0], cell[1])
      pen.strokeRect(at[0], at[1], cell[0], cell[1])
    }
}
