/**
 * The fabric of the block as paths that are made once and drawn at any zoom, in square tiles.
 *
 * In      the block.
 * Out     tiles in cells. Each has a path for each fabric and one for its seams, and is made again only when one of its units has changed. A tile out of
 *         view is not drawn. Units are drawn fabric by fabric, which differs from their own order only where units overlap.
 */
import type { Block, Unit } from '../../geometry/index.ts'
import type { PathPen } from './viewDrawing.ts'
import { toDecimal, type PatchShape, borderShapes, unitShapes, type Rect, rectOf, type Point } from '../document/shapes.ts'

export interface Tile {
  readonly low: Point
  readonly high: Point
  readonly corners: number
  /** By the fabric's id; for a printed fabric by `fillKey`. */
  readonly fills: ReadonlyMap<string, Path2D>
  readonly seams: Path2D
  /** The boxes of its units, row by row, drawn below the patches so that the background does not show through between two of them. */
  readonly ground: Path2D
}

export interface Tiles {
  readonly tiles: readonly Tile[]
  readonly corners: number
  readonly patches: number
}

/** Units in a tile, about. */
const UNITS_IN_TILE = 80

interface CachedTile {
  readonly units: readonly Unit[]
  readonly tile: Tile
  readonly patches: number
}

/** Returns a function that makes the tiles of a block, and reuses those of the block before. */
export function createTileCache(): (block: Block) => Tiles {
  let cached = new Map<string, CachedTile>()
  let last: { readonly block: Block; readonly tiles: Tiles } | null = null
  return (block) => {
    if (last !== null && sameFabric(last.block, block)) return last.tiles
    const printed = printedOf(block)
    if (last !== null && !samePrinted(printedOf(last.block), printed)) cached = new Map()
    const next = new Map<string, CachedTile>()
    for (const [key, units] of unitsByTile(block)) {
      const before = cached.get(key)
      next.set(key, before !== undefined && sameUnits(before.units, units) ? before : makeTile(units, printed))
    }
    cached = next
    const all = [...next.values()]
    const border = tileOf(borderShapes(block), [], printed)
    const tiles = border.corners > 0 ? [border, ...all.map(({ tile }) => tile)] : all.map(({ tile }) => tile)
    last = {
      block,
      tiles: { tiles, corners: tiles.reduce((sum, { corners }) => sum + corners, 0), patches: all.reduce((sum, { patches }) => sum + patches, 0) },
    }
    return last.tiles
  }
}

const sameFabric = (a: Block, b: Block): boolean =>
  a.units === b.units && a.grid === b.grid && a.borders === b.borders && samePrinted(printedOf(a), printedOf(b))

/** A print lies as its patch was cut, so a printed fabric has a path for each turn; a plain one has a single path. */
export const fillKey = (fabric: string, turn: number): string => `${fabric} ${turn}`
type Printed = ReadonlySet<string>
const printedOf = ({ fabrics }: Block): Printed => new Set(fabrics.flatMap(({ id, print }) => (print === undefined ? [] : [id])))
const samePrinted = (a: Printed, b: Printed): boolean => a.size === b.size && [...a].every((id) => b.has(id))
const sameUnits = (a: readonly Unit[], b: readonly Unit[]): boolean => a.length === b.length && a.every((unit, index) => unit === b[index])

/** Each unit belongs to the tile that its top left corner is in. */
function unitsByTile({ units, grid }: Block): Map<string, Unit[]> {
  const side = Math.max(1, Math.ceil(Math.sqrt((grid.columns * grid.rows * UNITS_IN_TILE) / Math.max(1, units.length))))
  const found = new Map<string, Unit[]>()
  for (const unit of units) {
    const [x, y] = unit.kind === 'polygon' ? rectOf(unit).at : [toDecimal(unit.at[0]), toDecimal(unit.at[1])]
    const key = `${side} ${Math.floor(x / side)} ${Math.floor(y / side)}`
    const list = found.get(key)
    if (list === undefined) found.set(key, [unit])
    else list.push(unit)
  }
  return found
}

function makeTile(units: readonly Unit[], printed: Printed): CachedTile {
  const pieces = units.flatMap((unit) => unitShapes(unit))
  return { units, tile: tileOf(pieces, units, printed), patches: pieces.length }
}

function tileOf(pieces: readonly PatchShape[], units: readonly Unit[], printed: Printed): Tile {
  const fills = new Map<string, Path2D>()
  const seams = new Path2D()
  let [x0, y0, x1, y1, corners] = [Infinity, Infinity, -Infinity, -Infinity, 0]
  for (const piece of pieces) {
    const name = printed.has(piece.fabric) ? fillKey(piece.fabric, piece.turn ?? 0) : piece.fabric
    let fill = fills.get(name)
    if (fill === undefined) {
      fill = new Path2D()
      fills.set(name, fill)
    }
    tracePolygon(fill, piece.corners)
    tracePolygon(seams, piece.corners)
    corners += piece.corners.length
    for (const [x, y] of piece.corners) {
      x0 = Math.min(x0, x)
      y0 = Math.min(y0, y)
      x1 = Math.max(x1, x)
      y1 = Math.max(y1, y)
    }
  }
  return { low: [x0, y0], high: [x1, y1], corners, fills, seams, ground: groundOf(units) }
}

export function tracePolygon(pen: PathPen, corners: readonly Point[]): void {
  corners.forEach(([x, y], index) => {
    if (index === 0) pen.moveTo(x, y)
    else pen.lineTo(x, y)
  })
  pen.closePath()
}

/** Boxes side by side in a row become one rectangle. */
function groundOf(units: readonly Unit[]): Path2D {
  const path = new Path2D()
  const boxes = units.flatMap((unit) => (unit.kind === 'polygon' ? [] : [rectOf(unit)]))
  boxes.sort((a, b) => a.at[1] - b.at[1] || a.size[1] - b.size[1] || a.at[0] - b.at[0])
  let run: Rect | null = null
  for (const box of boxes) {
    if (run !== null && run.at[1] === box.at[1] && run.size[1] === box.size[1] && run.at[0] + run.size[0] === box.at[0])
      run = { at: run.at, size: [run.size[0] + box.size[0], run.size[1]] }
    else {
      if (run !== null) path.rect(...run.at, ...run.size)
      run = box
    }
  }
  if (run !== null) path.rect(...run.at, ...run.size)
  return path
}
