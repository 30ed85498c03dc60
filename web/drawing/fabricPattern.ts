/**
 * The fill of a fabric on a canvas: its colour, or its print true to scale.
 *
 * In      a fabric, the view mode, the quarter turns that it lies in (see `lieOf`; borders are not turned), and how large a cell is.
 * Out     a fill for paths in cells, under a transform to pixels. A print too small to be seen is one flat colour. A photograph is its mean colour until it
 *         has been decoded; then `useDecodedPhotos` renders again.
 */
import { create } from 'zustand'
import { type Fabric, flatColour, lightnessOf, marksOf, parseLength, type Print, type PrintMark, toNumber } from '../../geometry/index.ts'
import type { ViewMode } from '../document/store.ts'

export interface CellScale {
  /** The length of a cell, in inches or centimetres. */
  readonly cell: number
  /** Canvas pixels in a cell. */
  readonly pixels: number
}

/** Pixels of a repeat: below this it is a blur, and above it a tile costs more than it shows. */
const LEAST = 4
const MOST = 2048

export function canvasFill(fabric: Fabric, mode: ViewMode, turn: number, scale: CellScale): string | CanvasPattern {
  const { print } = fabric
  if (print === undefined) return colourInView(fabric.colour, mode)
  const cells = repeatOf(print) / scale.cell
  const pixels = cells * scale.pixels
  if (pixels < LEAST) return colourInView(flatColour(fabric), mode)
  const tile = tileOf(fabric, print, mode, 2 ** Math.ceil(Math.log2(Math.min(MOST, Math.max(16, pixels)))))
  if (tile === null) return colourInView(fabric.colour, mode)
  const pattern = tile.patterns.get(turn) ?? (pen.createPattern(tile.canvas, 'repeat') as CanvasPattern)
  tile.patterns.set(turn, pattern)
  pattern.setTransform(new DOMMatrix().rotate(90 * turn).scale(cells / tile.canvas.width))
  return pattern
}

const repeatOf = ({ repeat }: Print): number => {
  const length = parseLength(repeat)
  return length === null ? 1 : toNumber(length)
}

/** A colour as a view shows it: as it is, as a grey of the same lightness, or paler for the wrong side. */
function colourInView(colour: string, mode: ViewMode): string {
  if (mode === 'value') return `hsl(0 0% ${Math.round(lightnessOf(colour))}%)`
  if (mode !== 'wrong') return colour
  const channels = [1, 3, 5].map((at) => Math.round(Number.parseInt(colour.slice(at, at + 2), 16) * 0.55 + 255 * 0.45))
  return `rgb(${channels.join(' ')})`
}

interface Tile {
  readonly canvas: HTMLCanvasElement
  readonly patterns: Map<number, CanvasPattern>
}

/** Tiles of one print. While the maker drags in a colour picker, each shade makes another one. */
const MOST_TILES = 12

/** Tiles last as long as their print: an edited print is a new value. */
const tiles = new WeakMap<Print, Map<string, Tile>>()
const photos = new WeakMap<Print, HTMLImageElement>()
const pen = document.createElement('canvas').getContext('2d') as CanvasRenderingContext2D

function tileOf(fabric: Fabric, print: Print, mode: ViewMode, size: number): Tile | null {
  const own = tiles.get(print) ?? new Map<string, Tile>()
  tiles.set(print, own)
  const key = `${mode === 'value' || mode === 'wrong' ? mode : 'cloth'} ${fabric.colour} ${size}`
  const known = own.get(key)
  if (known !== undefined) return known
  const canvas = print.kind === 'photo' ? photoTile(print, mode, size) : drawnTile(fabric, print, mode, size)
  if (canvas === null) return null
  const tile = { canvas, patterns: new Map<number, CanvasPattern>() }
  if (own.size >= MOST_TILES) own.clear()
  own.set(key, tile)
  return tile
}

function drawnTile(fabric: Fabric, print: Print, mode: ViewMode, size: number): HTMLCanvasElement {
  const [canvas, context] = newCanvas(size, size)
  context.fillStyle = colourInView(fabric.colour, mode)
  context.fillRect(0, 0, size, size)
  context.scale(size, size)
  for (const { mark, colour } of marksOf(fabric, print)) {
    context.fillStyle = colourInView(colour, mode)
    context.beginPath()
    traceMark(context, mark)
    context.fill()
  }
  return canvas
}

function traceMark(context: CanvasRenderingContext2D, mark: PrintMark): void {
  if (mark.type === 'disc') context.arc(...mark.at, mark.radius, 0, Math.PI * 2)
  else for (const [x, y] of mark.corners) context.lineTo(x, y)
  context.closePath()
}

function photoTile(print: Print, mode: ViewMode, size: number): HTMLCanvasElement | null {
  const photo = photoOf(print)
  if (!photo.complete || photo.naturalWidth === 0) return null
  const width = Math.min(size, photo.naturalWidth)
  const [canvas, context] = newCanvas(width, Math.max(1, Math.round((width * photo.naturalHeight) / photo.naturalWidth)))
  context.drawImage(photo, 0, 0, canvas.width, canvas.height)
  if (mode === 'value') turnGrey(context, canvas)
  if (mode === 'wrong') {
    context.fillStyle = 'rgb(255 255 255 / 0.45)'
    context.fillRect(0, 0, canvas.width, canvas.height)
  }
  return canvas
}

function turnGrey(context: CanvasRenderingContext2D, { width, height }: HTMLCanvasElement): void {
  const picture = context.getImageData(0, 0, width, height)
  const { data } = picture
  for (let at = 0; at < data.length; at += 4) {
    const hex = `#${[0, 1, 2].map((channel) => (data[at + channel] as number).toString(16).padStart(2, '0')).join('')}`
    const grey = Math.round(lightnessOf(hex) * 2.55)
    data[at] = grey
    data[at + 1] = grey
    data[at + 2] = grey
  }
  context.putImageData(picture, 0, 0)
}

function newCanvas(width: number, height: number): [HTMLCanvasElement, CanvasRenderingContext2D] {
  const canvas = document.createElement('canvas')
  canvas.width = width
  canvas.height = height
  return [canvas, canvas.getContext('2d') as CanvasRenderingContext2D]
}

/** A number that changes when a photograph has been decoded. Use it in every component that draws with `canvasFill`, so that it renders again. */
export const useDecodedPhotos = create<number>(() => 0)

function photoOf(print: Print): HTMLImageElement {
  const known = photos.get(print)
  if (known !== undefined) return known
  const photo = new Image()
  photos.set(print, photo)
  photo.onload = () => {
    useDecodedPhotos.setState(useDecodedPhotos.getState() + 1, true)
  }
  photo.src = print.photo ?? ''
  return photo
}
