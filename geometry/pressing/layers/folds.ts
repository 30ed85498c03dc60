/**
 * Layers of fabric: how many lie on each other at every point of the sewn block.
 *
 * In      the laid block, its plane, a plan and the way each seam is pressed.
 * Out     the pieces of fabric of the whole block as they lie, allowances folded; from them the thickest spot, or the block cut into cells by layers.
 * How     each patch begins as its cut shape, one allowance larger than finished. Join by join, the allowance of the side that the seam is pressed
 *         to is folded back over the seam, and that of the other side lies flat under it; pressed open, each is folded back. Then what
 *         reaches beyond the unfinished outline of the new piece (the ears at the seam's ends) is trimmed away. The pieces over a point are its layers.
 * Bounds  see `convex`: doubles, for bulk only.
 * Source  three layers on one side and one on the other: by arithmetic; trimming ears: common practice, no source.
 */
import { cellOf, seamOf } from '../../block/lengthsOf.ts'
import type { Laid } from '../../block/lay.ts'
import { divide, toNumber } from '../../exact/rational.ts'
import { otherDot } from '../../piecing/contact.ts'
import type { Seam } from '../../piecing/values.ts'
import { beyond, type Convex, clip, fold, type Half, type Patience, patient, reach } from '../../plane/convex.ts'
import type { Dot } from '../../plane/points.ts'
import type { Plane, PlaneEdge } from '../../plane/subdivide.ts'
import { cutShape } from './cutShape.ts'
import { edgeBetween, type MetSeams, type SideOf } from '../meet.ts'
import type { Toward } from '../values.ts'

/** A piece of fabric of one layer, with the patch it was cut from. */
export interface Ply {
  readonly poly: Convex
  readonly patch: number
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
}

type Point = readonly [number, number]

/** A straight stretch that is folded at once: from `start` to `end` along (tx, ty); its clockwise side lies at (−ty, tx). */
interface Crease {
  readonly x: number
  readonly y: number
  readonly tx: number
  readonly ty: number
  /** How far allowances reach along the seam before its start and beyond its end. */
  readonly from: number
  readonly to: number
}

interface Trim {
  readonly at: Point
  readonly halves: readonly Half[]
}

interface Folding {
  readonly seam: number
  readonly creases: readonly Crease[]
  readonly trims: readonly Trim[]
  /** Finishing a partial seam: both of its sides are one piece already. */
  readonly finishing: boolean
}

/** Everything that does not depend on how seams are pressed: computed once, used for many foldings. */
export interface Folds {
  readonly laid: Laid
  readonly seams: readonly Seam[]
  readonly clockwise: readonly (0 | 1)[]
  /** Width of one allowance, in cells. */
  readonly allowance: number
  /** The seams folded after each seam is sewn: that seam, then the partial seams it finishes. */
  readonly after: readonly (readonly Folding[])[]
  readonly middles: readonly Point[]
  /** Boxes of the patches, in cells. */
  readonly boxes: readonly (readonly [number, number, number, number])[]
}

/** Ears reach this many allowances from the end of a seam at the most. */
const EAR = 8

/** Everything about the folds of a plan that does not depend on how its seams are pressed. Lengths in cells. */
export function foldsOf(laid: Laid, plane: Plane, { seams, sideOf, met }: { seams: readonly Seam[]; sideOf: SideOf; met: MetSeams }): Folds {
  const allowance = toNumber(divide(seamOf(laid.block), cellOf(laid.block)))
  const after: Folding[][] = seams.map(() => [])
  seams.forEach((seam, index) => {
    const sewn = sewnStretch(plane, seam, index, sideOf)
    const ends = [...(sewn.from === 0 ? [0] : []), ...(sewn.to === seam.path.length - 1 ? [seam.path.length - 1] : [])]
    const trims = ends.flatMap((place) => trimAt(laid, plane, seam.path[place] as number, index, sideOf, allowance))
    after[index]?.push({ seam: index, creases: creasesOf(laid, plane, seam, sewn.from, sewn.to, allowance), trims, finishing: false })
  })
  seams.forEach((seam, index) => {
    if (seam.finishedAfter === null) return
    const sewn = sewnStretch(plane, seam, index, sideOf)
    const left = sewn.from === 0 ? ([sewn.to, seam.path.length - 1] as const) : ([0, sewn.from] as const)
    after[seam.finishedAfter]?.push({ seam: index, creases: creasesOf(laid, plane, seam, left[0], left[1], allowance), trims: [], finishing: true })
  })
  return {
    laid,
    seams,
    clockwise: met.clockwise,
    allowance,
    after,
    middles: laid.patches.map(({ corners }) => middleOfCorners(laid, corners)),
    boxes: laid.patches.map(({ corners }) => boxOfCorners(laid, corners)),
  }
}

/** The patches whose boxes reach within `far` of a point. */
export function patchesNear({ boxes }: Folds, [x, y]: Point, far: number): ReadonlySet<number> {
  const near = new Set<number>()
  boxes.forEach(([x0, y0, x1, y1], patch) => {
    if (x0 < x + far && x1 > x - far && y0 < y + far && y1 > y - far) near.add(patch)
  })
  return near
}

function boxOfCorners(laid: Laid, corners: readonly Dot[]): [number, number, number, number] {
  const points = corners.map((corner) => laid.places.cells(corner))
  const xs = points.map(([x]) => x)
  const ys = points.map(([, y]) => y)
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]
}

/** The stretch of the path along which both pieces of a seam are already there: all of it, except for a partial seam. */
function sewnStretch(plane: Plane, seam: Seam, index: number, sideOf: SideOf): { from: number; to: number } {
  const last = seam.path.length - 1
  if (seam.finishedAfter === null) return { from: 0, to: last }
  const sewn = (place: number): boolean => {
    const { plus, minus } = plane.edges[edgeBetween(plane, seam.path[place] as number, seam.path[place + 1] as number)] as PlaneEdge
    return sideOf(index, plus) !== -1 && sideOf(index, minus) !== -1
  }
  let from = 0
  let to = last
  while (from < to && !sewn(from)) from++
  while (to > from && !sewn(to - 1)) to--
  return { from, to }
}

function creasesOf(laid: Laid, plane: Plane, seam: Seam, from: number, to: number, allowance: number): Crease[] {
  const stops = [from, ...seam.bends.filter((place) => place > from && place < to), to]
  return stops.slice(1).flatMap((stop, index): Crease[] => {
    const start = stops[index] as number
    const [x, y] = laid.places.cells(plane.dots[seam.path[start] as number] as Dot)
    const [endX, endY] = laid.places.cells(plane.dots[seam.path[stop] as number] as Dot)
    const length = Math.hypot(endX - x, endY - y)
    if (length === 0) return []
    // An allowance reaches beyond the seam where the seam runs to the raw edge, not where it bends or is left open.
    const ear = (place: number): number => {
      if (place !== 0 && place !== seam.path.length - 1) return 0
      const [dot, inner] = [seam.path[place] as number, seam.path[place === 0 ? 1 : place - 1] as number]
      return allowance * Math.min(EAR, earAt(laid, plane, dot, inner))
    }
    return [{ x, y, tx: (endX - x) / length, ty: (endY - y) / length, from: -ear(start), to: length + ear(stop) }]
  })
}

/** How many allowances fabric reaches beyond a seam's end: the sharper another line meets it there, the further. */
function earAt(laid: Laid, plane: Plane, dot: number, inner: number): number {
  const at = laid.places.cells(plane.dots[dot] as Dot)
  const way = (other: number): Point => {
    const [x, y] = laid.places.cells(plane.dots[other] as Dot)
    const length = Math.hypot(x - at[0], y - at[1])
    return [(x - at[0]) / length, (y - at[1]) / length]
  }
  const [tx, ty] = way(inner)
  let most = 1
  for (const edge of plane.around[dot] ?? []) {
    const [x, y] = way(otherDot(plane, edge, dot))
    const sine = Math.abs(tx * y - ty * x)
    if (sine > 1e-9) most = Math.max(most, (1 + Math.abs(tx * x + ty * y)) / sine)
  }
  return most
}

/** The two sides of the new piece's unfinished outline at the end of a seam; none at an inner corner. */
function trimAt(laid: Laid, plane: Plane, dot: number, index: number, sideOf: SideOf, allowance: number): Trim[] {
  const at = laid.places.cells(plane.dots[dot] as Dot)
  const halves: { half: Half; dx: number; dy: number }[] = []
  for (const edge of plane.around[dot] ?? []) {
    const { plus, minus, a } = plane.edges[edge] as PlaneEdge
    const [inPlus, inMinus] = [sideOf(index, plus) !== -1, sideOf(index, minus) !== -1]
    if (inPlus === inMinus) continue
    const [x, y] = laid.places.cells(plane.dots[otherDot(plane, edge, dot)] as Dot)
    const length = Math.hypot(x - at[0], y - at[1])
    const [dx, dy] = [(x - at[0]) / length, (y - at[1]) / length]
    // `plus` lies clockwise of a → b, at (−dy, dx) of the way from this dot where this dot is a.
    const outward = (a === dot) === inPlus ? 1 : -1
    const [nx, ny] = [dy * outward, -dx * outward]
    halves.push({ half: { nx, ny, c: nx * at[0] + ny * at[1] + allowance }, dx, dy })
  }
  if (halves.length !== 2) return []
  const [one, other] = halves as [(typeof halves)[number], (typeof halves)[number]]
  if (other.dx * one.half.nx + other.dy * one.half.ny > 1e-9) return []
  return [{ at, halves: halves.map(({ half }) => half) }]
}

function middleOfCorners(laid: Laid, corners: readonly Dot[]): Point {
  const points = corners.map((corner) => laid.places.cells(corner))
  return [points.reduce((sum, [x]) => sum + x, 0) / points.length, points.reduce((sum, [, y]) => sum + y, 0) / points.length]
}

/** A convex piece of a patch's fabric (cells) with the box it lies in. */
export function plyOf(poly: Convex, patch: number): Ply {
  let [x0, y0, x1, y1] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (let i = 0; i < poly.length; i += 2) {
    const x = poly[i] as number
    const y = poly[i + 1] as number
    if (x < x0) x0 = x
    if (x > x1) x1 = x
    if (y < y0) y0 = y
    if (y > y1) y1 = y
  }
  return { poly, patch, x0, y0, x1, y1 }
}

/** Corners of a patch with inner corners above which its cut shape has too many slivers. */
export const MOST_CORNERS = 1_000

/** Pieces of fabric in a block: a patch is seldom folded into more than five. */
const MOST_PLIES = 200_000

/** How many box comparisons cost as much as cutting one piece. */
const GLANCES = 32

/**
 * All the fabric of the block as it lies once sewn; `only` limits it to some patches and the seams between them. Null where it would be folded into too
 * many pieces to count, for instance where allowances are wider than the patches themselves.
 */
export function folded(
  folds: Folds,
  toward: readonly Toward[],
  only: ReadonlySet<number> | null = null,
  patience: Patience = patient(),
): Ply[] | null {
  const { laid, seams, after, allowance } = folds
  const patches = laid.patches.length
  if (laid.patches.some(({ corners }) => corners.length > MOST_CORNERS)) return null
  const held: (Ply[] | undefined)[] = laid.patches.map((patch, index) =>
    only === null || only.has(index) ? cutShape(laid, patch.corners, allowance).map((poly) => plyOf(poly, index)) : undefined,
  )
  for (const [index, { sides }] of seams.entries()) {
    const [near, far] = [held[sides[0]], held[sides[1]]]
    held[sides[0]] = undefined
    held[sides[1]] = undefined
    if (near === undefined || far === undefined) {
      held[patches + index] = near ?? far
      continue
    }
    const [first, ...finishing] = after[index] as readonly [Folding, ...Folding[]]
    foldSeam(folds, first, toward[index] as Toward, near, far, patience)
    const [small, large] = near.length < far.length ? [near, far] : [far, near]
    for (const ply of small) large.push(ply)
    for (const trim of first.trims) trimmed(large, trim, allowance)
    for (const one of finishing) foldSeam(folds, one, toward[one.seam] as Toward, large, large, patience)
    if (patience.tests < 0) return null
    held[patches + index] = large
  }
  return held.flatMap((plies) => plies ?? [])
}

/** Folds one seam; stops halfway where patience runs out. */
function foldSeam(folds: Folds, folding: Folding, toward: Toward, near: Ply[], far: Ply[], patience: Patience): void {
  const pieces = [near, far] as const
  for (const side of [0, 1] as const) {
    for (const over of foldsOver(folds, folding, toward, side)) {
      const before = pieces[side].length
      if (before > MOST_PLIES) patience.tests = -1
      if (patience.tests < 0) return
      foldBack(pieces[side], over)
      patience.tests -= before / GLANCES + (pieces[side].length - before)
    }
  }
}

/** One stretch of a seam over which the allowance of one side is folded back: the line, how far it reaches, and whose fabric it is. */
export interface FoldOver {
  readonly line: Half
  readonly limits: readonly Half[]
  readonly box: { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number }
  /** Where a partial seam is finished both sides are one piece: only the fabric of this side is folded. */
  readonly own: ((ply: Ply) => boolean) | null
}

/** The stretches of a seam over which the fabric of a side is folded; none where it lies flat under the other's. */
export function foldsOver(folds: Folds, { seam, creases, finishing }: Folding, toward: Toward, side: 0 | 1): FoldOver[] {
  if (toward !== side && toward !== 'open') return []
  const clockwise = folds.clockwise[seam] === side
  return creases.map((crease) => {
    // Away from this side, over the seam.
    const [nx, ny] = clockwise ? [crease.ty, -crease.tx] : [-crease.ty, crease.tx]
    const line: Half = { nx, ny, c: nx * crease.x + ny * crease.y }
    const along = crease.tx * crease.x + crease.ty * crease.y
    return {
      line,
      limits: [
        { nx, ny, c: line.c + folds.allowance },
        { nx: crease.tx, ny: crease.ty, c: along + crease.to },
        { nx: -crease.tx, ny: -crease.ty, c: -(along + crease.from) },
      ],
      box: boxOfCrease(crease, line, folds.allowance),
      own: finishing ? (ply: Ply): boolean => sideIs(folds.middles[ply.patch] as Point, line) : null,
    }
  })
}

const sideIs = ([x, y]: Point, { nx, ny, c }: Half): boolean => nx * x + ny * y <= c

/** Folds back whatever reaches over the line, within one allowance of it and along the seam. */
function foldBack(plies: Ply[], over: FoldOver): void {
  const count = plies.length
  for (let index = 0; index < count; index++) {
    const ply = plies[index] as Ply
    const laid = laidBack(ply, over)
    if (laid === null) continue
    plies[index] = plyOf(laid.back, ply.patch)
    for (const poly of laid.kept) plies.push(plyOf(poly, ply.patch))
  }
}

/** The part of a piece that is folded back, in its new place, and the part that stays; null where nothing reaches over. */
export function laidBack(ply: Ply, { line, limits, box, own }: FoldOver): { readonly back: Convex; readonly kept: readonly Convex[] } | null {
  if (ply.x1 < box.x0 || ply.x0 > box.x1 || ply.y1 < box.y0 || ply.y0 > box.y1) return null
  if (own !== null && !own(ply)) return null
  if (reach(ply.poly, line).most <= 1e-7) return null
  let over = clip(ply.poly, beyond(line))
  const kept: Convex[] = []
  const before = over === null ? null : clip(ply.poly, line)
  if (before !== null) kept.push(before)
  for (const limit of limits) {
    if (over === null) break
    const outside = clip(over, beyond(limit))
    if (outside !== null) kept.push(outside)
    over = clip(over, limit)
  }
  return over === null ? null : { back: fold(over, line), kept }
}

function boxOfCrease({ x, y, tx, ty, from, to }: Crease, { nx, ny }: Half, allowance: number): { x0: number; y0: number; x1: number; y1: number } {
  const xs = [x + tx * from, x + tx * to]
  const ys = [y + ty * from, y + ty * to]
  const [ax, ay] = [nx * allowance, ny * allowance]
  return {
    x0: Math.min(...xs) + Math.min(0, ax),
    x1: Math.max(...xs) + Math.max(0, ax),
    y0: Math.min(...ys) + Math.min(0, ay),
    y1: Math.max(...ys) + Math.max(0, ay),
  }
}

/** Trims away whatever reaches beyond the unfinished outline at the end of a seam. */
export function trimmed(plies: Ply[], { at: [x, y], halves }: Trim, allowance: number): void {
  const far = EAR * allowance
  let kept = 0
  for (let index = 0; index < plies.length; index++) {
    let ply: Ply | null = plies[index] as Ply
    if (ply.x1 >= x - far && ply.x0 <= x + far && ply.y1 >= y - far && ply.y0 <= y + far) {
      for (const half of halves) {
        if (ply === null || reach(ply.poly, half).most <= 1e-7) continue
        const ear = clip(ply.poly, beyond(half))
        if (ear === null || !within(ear, x, y, far)) continue
        const rest = clip(ply.poly, half)
        ply = rest === null ? null : plyOf(rest, ply.patch)
      }
    }
    if (ply !== null) plies[kept++] = ply
  }
  plies.length = kept
}

function within(poly: Convex, x: number, y: number, far: number): boolean {
  for (let i = 0; i < poly.length; i += 2) if (Math.hypot((poly[i] as number) - x, (poly[i + 1] as number) - y) > far) return false
  return true
}
