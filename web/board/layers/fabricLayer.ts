/** The cloth in sight: the grid, the patches a colour at a time, what a way of looking lays over them, and the seams. */
import { type Block, cellOf, toNumber } from '../../../geometry/index.ts'
import { ABOVE, OVER_SEAMS, type Scene } from './overlays.ts'
import type { Frame } from '../viewport.ts'
import { canvasFill, UNKNOWN_COLOUR } from '../../drawing/fabricPattern.ts'
import { bordersAround, type Point } from '../../document/shapes.ts'
import type { Pen } from './stage.ts'
import type { Painting } from './bitmapCache.ts'
import { fillKey, type Tile, type Tiles } from '../../drawing/tiles.ts'

/** A patch's side in pixels: under the first its seams would hide it, over the second they are drawn in full. */
const FAINT = 8
const CLEAR = 18

export function clothPainting(scene: Scene, all: Tiles): Painting {
  return {
    paint: (pen, frame, size) => {
      const tiles = inSight(all.tiles, frame, size)
      const seams = seamStrength(scene.block, all, frame)
      drawGrid(pen, scene, frame)
      pen.save()
      pen.transform(...frame.matrix)
      drawPatches(pen, scene, tiles, frame)
      pen.restore()
      ABOVE[scene.mode]?.(pen, scene, frame)
      if (seams > 0 && (scene.mode !== 'wrong' || scene.sheets === null)) drawSeams(pen, scene, tiles, frame, seams)
      drawEdge(pen, scene, frame)
      OVER_SEAMS[scene.mode]?.(pen, scene, frame)
    },
    cost: (frame, size) =>
      inSight(all.tiles, frame, size).reduce((sum, { corners }) => sum + corners, 0) * (scene.mode === 'cloth' || scene.mode === 'value' ? 1 : 4),
  }
}

/** 0 where patches are too small to tell their seams apart, 1 where they are large. */
function seamStrength({ grid }: Block, { patches }: Tiles, { scale }: Frame): number {
  const side = Math.sqrt((grid.columns * grid.rows) / Math.max(1, patches)) * scale
  return Math.min(1, Math.max(0, (side - FAINT) / (CLEAR - FAINT)))
}

export function sightOf(frame: Frame, [width, height]: Point): { readonly low: Point; readonly high: Point } {
  const [a, b] = [frame.toCells(0, 0), frame.toCells(width, height)]
  return { low: [Math.min(a[0], b[0]), Math.min(a[1], b[1])], high: [Math.max(a[0], b[0]), Math.max(a[1], b[1])] }
}

function inSight(tiles: readonly Tile[], frame: Frame, size: Point): readonly Tile[] {
  const { low, high } = sightOf(frame, size)
  return tiles.filter((tile) => tile.low[0] <= high[0] && tile.high[0] >= low[0] && tile.low[1] <= high[1] && tile.high[1] >= low[1])
}

/** Cells smaller than this many pixels are not ruled. */
const LEAST_CELL = 5

function drawGrid(pen: Pen, { block, ink }: Scene, frame: Frame): void {
  const { columns, rows } = block.grid
  const step = frame.scale >= LEAST_CELL ? 1 : 0
  pen.save()
  pen.strokeStyle = ink
  pen.globalAlpha = 0.22
  pen.lineWidth = 1
  pen.beginPath()
  for (let x = 0; x <= columns; x += step || columns) line(pen, frame, [x, 0], [x, rows])
  for (let y = 0; y <= rows; y += step || rows) line(pen, frame, [0, y], [columns, y])
  pen.stroke()
  pen.restore()
}

function line(pen: Pen, frame: Frame, a: Point, b: Point): void {
  pen.moveTo(...frame.toPixels(...a))
  pen.lineTo(...frame.toPixels(...b))
}

/** All the ways in which cloth lies: `lieOf`. */
const TURNS = [0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5] as const

/** The patches alone, a colour at a time. */
export function drawPatches(pen: Pen, { block, mode }: Pick<Scene, 'block' | 'mode'>, tiles: readonly Tile[], frame: Frame): void {
  const scale = { cell: toNumber(cellOf(block)), pixels: frame.scale * window.devicePixelRatio }
  const fills = block.fabrics.flatMap((fabric) =>
    fabric.print === undefined
      ? [[fabric.id, canvasFill(fabric, mode, 0, scale)] as const]
      : TURNS.map((turn) => [fillKey(fabric.id, turn), canvasFill(fabric, mode, turn, scale)] as const),
  )
  pen.fillStyle = meanOf(block)
  for (const { ground } of tiles) pen.fill(ground)
  for (const [id, fill] of fills) {
    pen.fillStyle = fill
    for (const { fills: paths } of tiles) {
      const path = paths.get(id)
      if (path !== undefined) pen.fill(path)
    }
  }
}

/** Between all the fabrics, so that the hair between two patches is no brighter and no darker than they are. */
function meanOf({ fabrics }: Block): string {
  if (fabrics.length === 0) return UNKNOWN_COLOUR
  const mean = [1, 3, 5].map((at) => fabrics.reduce((sum, { colour }) => sum + Number.parseInt(colour.slice(at, at + 2), 16), 0) / fabrics.length)
  return `rgb(${mean.map(Math.round).join(' ')})`
}

function drawSeams(pen: Pen, { ink }: Scene, tiles: readonly Tile[], frame: Frame, strength: number): void {
  pen.save()
  pen.transform(...frame.matrix)
  pen.strokeStyle = ink
  pen.lineWidth = 1 / frame.scale
  pen.globalAlpha = 0.55 * strength
  for (const { seams } of tiles) pen.stroke(seams)
  pen.restore()
}

function drawEdge(pen: Pen, { block, ink }: Scene, frame: Frame): void {
  const around = bordersAround(block)
  const [x0, y0] = frame.toPixels(-around, -around)
  const [x1, y1] = frame.toPixels(block.grid.columns + around, block.grid.rows + around)
  pen.save()
  pen.strokeStyle = ink
  pen.globalAlpha = 0.9
  pen.lineWidth = 1.5
  pen.strokeRect(Math.min(x0, x1), y0, Math.abs(x1 - x0), y1 - y0)
  pen.restore()
}
