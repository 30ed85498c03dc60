/**
 * Where the sewn block is thickest, and the block cut into cells by layers of fabric.
 *
 * In      the fabric as it lies (see `folds.ts`).
 * Out     the most layers and a point well inside the thickest place; or convex cells, each with its layers; null where there are so many slivers
 *         that counting them would keep the maker waiting.
 * How     the block is cut into squares; in each, the pieces that reach into it are overlaid one by one. No square can have more layers than
 *         pieces that reach into it, so the fullest squares are counted first.
 */
import { areaOf, type Convex, type Counted, clip, middleOf, splitByLayers, type Patience, patient, sidesOfConvex } from '../../plane/convex.ts'
import { type Rational, toNumber } from '../../exact/rational.ts'
import { type Folds, folded, type Ply, patchesNear, plyOf } from './folds.ts'
import type { Toward } from '../values.ts'

export interface Thickest {
  readonly most: number
  /** Cells. */
  readonly at: readonly [number, number]
  /** Square cells as thick as that. */
  readonly spread: number
}

interface LayerBounds {
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
}

/** Squares across the block at the most: a hundred thousand patches need no finer cut. */
const MOST_ACROSS = 512

/** The thickest place within some bounds (cells); `allowance` in cells. Null where patience runs out. */
export function thickest(plies: readonly Ply[], place: LayerBounds, allowance: number, patience: Patience = patient()): Thickest | null {
  const squares = squaresOf(plies, place, allowance).sort((a, b) => b.plies.length - a.plies.length)
  let most = 0
  let spread = 0
  let widest = 0
  let at: readonly [number, number] = [place.x0, place.y0]
  const counted = (cells: readonly Counted[]): void => {
    for (const { poly, layers } of cells) {
      if (layers < most) continue
      const area = areaOf(poly)
      if (layers > most) [most, spread, widest] = [layers, 0, 0]
      spread += area
      // Where several places are as thick, the widest is the one a finger finds.
      if (area <= widest * (1 + 1e-6)) continue
      widest = area
      at = middleOf(poly)
    }
  }
  for (const square of squares) {
    if (square.plies.length < most) break
    if (!cellsOf(square, allowance, patience, (pieces) => pieces >= most, counted)) return null
  }
  return { most, at, spread }
}

/** All places of the block by their layers. */
export function cellsByLayers(plies: readonly Ply[], place: LayerBounds, allowance: number): Counted[] | null {
  const patience = patient()
  const found: Counted[] = []
  const all = (cells: readonly Counted[]): void => {
    for (const cell of cells) found.push(cell)
  }
  const whole = squaresOf(plies, place, allowance).every((square) => cellsOf(square, allowance, patience, () => true, all))
  return whole ? found : null
}

interface Square extends LayerBounds {
  readonly plies: Ply[]
}

function squaresOf(plies: readonly Ply[], { x0, y0, x1, y1 }: LayerBounds, allowance: number): Square[] {
  const size = Math.max(4 * allowance, Math.sqrt(((x1 - x0) * (y1 - y0)) / Math.max(1, plies.length)), Math.max(x1 - x0, y1 - y0) / MOST_ACROSS)
  const [across, down] = [Math.max(1, Math.ceil((x1 - x0) / size)), Math.max(1, Math.ceil((y1 - y0) / size))]
  const [wide, high] = [(x1 - x0) / across, (y1 - y0) / down]
  const squares: Square[] = Array.from({ length: across * down }, (_, index) => {
    const [column, row] = [index % across, Math.floor(index / across)]
    return { x0: x0 + column * wide, y0: y0 + row * high, x1: x0 + (column + 1) * wide, y1: y0 + (row + 1) * high, plies: [] }
  })
  const clamp = (value: number, most: number): number => Math.min(most - 1, Math.max(0, Math.floor(value)))
  for (const ply of plies) {
    if (ply.x1 <= x0 || ply.x0 >= x1 || ply.y1 <= y0 || ply.y0 >= y1) continue
    const [left, right] = [clamp((ply.x0 - x0) / wide, across), clamp((ply.x1 - x0) / wide, across)]
    const [top, bottom] = [clamp((ply.y0 - y0) / high, down), clamp((ply.y1 - y0) / high, down)]
    for (let row = top; row <= bottom; row++) for (let column = left; column <= right; column++) squares[row * across + column]?.plies.push(ply)
  }
  return squares
}

/** Pieces in one square above which it is cut into four, as long as it is wider than a hem. */
const MANY = 48

/** Cuts a square into cells, or quarter by quarter where many pieces reach into it; false where patience ran out. */
function cellsOf(
  { x0, y0, x1, y1, plies }: Square,
  allowance: number,
  patience: Patience,
  wanted: (pieces: number) => boolean,
  each: (cells: readonly Counted[]) => void,
): boolean {
  const place: Convex = [x0, y0, x1, y0, x1, y1, x0, y1]
  const halves = sidesOfConvex(place)
  const inside = plies.flatMap((ply) => {
    let rest: Convex | null = ply.poly
    for (const half of halves) if (rest !== null) rest = clip(rest, half)
    return rest === null ? [] : [rest === ply.poly ? ply : plyOf(rest, ply.patch)]
  })
  if (!wanted(inside.length)) return true
  if (inside.length > MANY && Math.max(x1 - x0, y1 - y0) > allowance) {
    patience.tests -= inside.length
    return quarters({ x0, y0, x1, y1 }, inside).every((quarter) => cellsOf(quarter, allowance, patience, wanted, each))
  }
  const cells = splitByLayers(
    place,
    inside.map(({ poly }) => poly),
    patience,
  )
  if (cells !== null) each(cells)
  return cells !== null
}

/** The fullest first. */
function quarters({ x0, y0, x1, y1 }: LayerBounds, plies: readonly Ply[]): Square[] {
  const [x, y] = [(x0 + x1) / 2, (y0 + y1) / 2]
  const places: readonly LayerBounds[] = [
    { x0, y0, x1: x, y1: y },
    { x0: x, y0, x1, y1: y },
    { x0, y0: y, x1: x, y1 },
    { x0: x, y0: y, x1, y1 },
  ]
  return places
    .map((place) => ({
      ...place,
      plies: plies.filter((ply) => ply.x1 > place.x0 && ply.x0 < place.x1 && ply.y1 > place.y0 && ply.y0 < place.y1),
    }))
    .sort((a, b) => b.plies.length - a.plies.length)
}

/** The most layers within one allowance of a point, worked out from the patches near it alone; null where patience runs out. */
export function layersNear(
  folds: Folds,
  toward: readonly Toward[],
  [x, y]: readonly [number, number],
  patience: Patience = patient(),
): number | null {
  const { allowance } = folds
  // Each fold moves fabric by at most an allowance, and few folds meet at one point.
  const only = patchesNear(folds, [x, y], 7 * allowance)
  const plies = folded(folds, toward, only, patience)
  const place = { x0: x - allowance, y0: y - allowance, x1: x + allowance, y1: y + allowance }
  return plies === null ? null : (thickest(plies, place, allowance, patience)?.most ?? null)
}

/** The whole block, its borders included, in cells. */
export function blockBounds({ laid }: Folds): LayerBounds {
  const out = toNumber(laid.depths.at(-1) as Rational)
  return { x0: -out, y0: -out, x1: laid.block.grid.columns + out, y1: laid.block.grid.rows + out }
}
