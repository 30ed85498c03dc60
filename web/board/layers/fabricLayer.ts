/** The bottom layer: the grid, the patches a colour at a time, what the view lays over them, and the seams. Only what is in sight is drawn. */
import { type Block, cellOf, toNumber } from '../../../geometry/index.ts'
import { type FabricScene, OVER_PATCHES, OVER_SEAMS } from './overlays.ts'
import { type Frame, visibleCells } from '../viewport.ts'
import { UNKNOWN_COLOUR } from '../../drawing/fabricParts.ts'
import { canvasFill } from '../../drawing/fabricPattern.ts'
import { bordersAround, type Point } from '../../document/shapes.ts'
import type { CanvasPen } from './stage.ts'
import type { Painting } from './bitmapCache.ts'
import { fillKey, type Tile, type Tiles } from '../../drawing/tiles.ts'

/** Pixels along a patch's side: below the first no seams are drawn, they would hide the patch; above the second they are drawn in full. */
const NO_SEAMS = 8
const FULL_SEAMS = 18

export function fabricPainting(scene: FabricScene, all: Tiles): Painting {
  return {
    paint: (pen, frame, size) => {
      const tiles = inSight(all.tiles, frame, size)
      const seams = seamStrength(scene.block, all, frame)
      drawGrid(pen, scene, frame)
      pen.save()
      pen.transform(...frame.matrix)
      drawPatches(pen, scene, tiles, frame)
      pen.restore()
      OVER_PATCHES[scene.mode]?.(pen, scene, frame)
      if (seams > 0 && (scene.mode !== 'wrong' || scene.wrongSide === null)) drawSeams(pen, tiles, frame, seams)
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
  return Math.min(1, Math.max(0, (side - NO_SEAMS) / (FULL_SEAMS - NO_SEAMS)))
}

function inSight(tiles: readonly Tile[], frame: Frame, size: Point): readonly Tile[] {
  const { low, high } = visibleCells(frame, size)
  return tiles.filter((tile) => tile.low[0] <= high[0] && tile.high[0] >= low[0] && tile.low[1] <= high[1] && tile.high[1] >= low[1])
}

/** The lines between cells smaller than this many pixels are not drawn. */
const LEAST_CELL = 5

function drawGrid(pen: CanvasPen, { block, ink }: FabricScene, frame: Frame): void {
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

function line(pen: CanvasPen, frame: Frame, a: Point, b: Point): void {
  pen.moveTo(...frame.toPixels(...a))
  pen.lineTo(...frame.toPixels(...b))
}

/** All directions in which a print can lie, in quarter turns: see `lieOf`. */
const PRINT_TURNS = [0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5] as const

/** The patches alone, a colour at a time. */
export function drawPatches(pen: CanvasPen, { block, mode }: Pick<FabricScene, 'block' | 'mode'>, tiles: readonly Tile[], frame: Frame): void {
  const scale = { cell: toNumber(cellOf(block)), pixels: frame.scale * window.devicePixelRatio }
  const fills = block.fabrics.flatMap((fabric) =>
    fabric.print === undefined
      ? [[fabric.id, canvasFill(fabric, mode, 0, scale)] as const]
      : PRINT_TURNS.map((turn) => [fillKey(fabric.id, turn), canvasFill(fabric, mode, turn, scale)] as const),
  )
  pen.fillStyle = meanColour(block)
  for (const { ground } of tiles) pen.fill(ground)
  for (const [id, fill] of fills) {
    pen.fillStyle = fill
    for (const { fills: paths } of tiles) {
      const path = paths.get(id)
      if (path !== undefined) pen.fill(path)
    }
  }
}

/** The mean of all fabrics: it shows through between two patches, where it should be no brighter and no darker than they are. */
function meanColour({ fabrics }: Block): string {
  if (fabrics.length === 0) return UNKNOWN_COLOUR
  const mean = [1, 3, 5].map((at) => fabrics.reduce((sum, { colour }) => sum + Number.parseInt(colour.slice(at, at + 2), 16), 0) / fabrics.length)
  return `rgb(${mean.map(Math.round).join(' ')})`
}

/** Fabric looks the same in every theme: a dark line in a pale one is seen between light fabrics and between dark ones. Colour, pixels, strength. */
const SEAM_LINES = [
  ['#fffaf2', 2.2, 0.4],
  ['#2b2320', 1, 0.65],
] as const

function drawSeams(pen: CanvasPen, tiles: readonly Tile[], frame: Frame, strength: number): void {
  pen.save()
  pen.transform(...frame.matrix)
  for (const [colour, width, alpha] of SEAM_LINES) {
    pen.strokeStyle = colour
    pen.lineWidth = width / frame.scale
    pen.globalAlpha = alpha * strength
    for (const { seams } of tiles) pen.stroke(seams)
  }
  pen.restore()
}

function drawEdge(pen: CanvasPen, { block, ink }: FabricScene, frame: Frame): void {
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
