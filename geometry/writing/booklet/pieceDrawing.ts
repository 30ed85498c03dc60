/**
 * Sewn pieces as they are drawn: every patch with the allowance that still shows at the piece's raw edge, and on the wrong side the allowances
 * folded the way they are pressed.
 *
 * In      patches of one piece in the measure's unit, and the seam allowance.
 * Out     outlines to paint in order.
 * How     a side that no other patch of the piece lies along is raw: it is moved out by one allowance, and the seams beside it go on along their own
 *         lines. So above the tip of a goose its two wings cross, as they do in cloth. Pressed to one side, what is seen from behind is
 *         the cloth of the other side, lying flat on across the seam.
 */
import type { MeasuredPatch } from './bookletContext.ts'
import type { Spot } from './values.ts'

const NEAR = 1e-6

export type LineSegment = readonly [Spot, Spot]

// Plane vectors, x to the right and y down, in the unit of measure.

/** a − b. */
export const minus = (a: Spot, b: Spot): Spot => [a[0] - b[0], a[1] - b[1]]
/** a + b, b taken so many times. */
export const plus = (a: Spot, b: Spot, times = 1): Spot => [a[0] + b[0] * times, a[1] + b[1] * times]
/** The scalar product. */
export const dot = (a: Spot, b: Spot): number => a[0] * b[0] + a[1] * b[1]
/** Above nothing where b points clockwise of a. */
export const cross = (a: Spot, b: Spot): number => a[0] * b[1] - a[1] * b[0]
/** How long a vector is. */
export const vectorLength = (a: Spot): number => Math.hypot(a[0], a[1])
/** Half way from one point to the other. */
export const midpoint = (a: Spot, b: Spot): Spot => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]
/** The same direction, one unit long; nothing for a vector that is too short to have one. */
export function unitVector(a: Spot): Spot {
  const length = vectorLength(a)
  return length < NEAR ? [0, 0] : [a[0] / length, a[1] / length]
}
/** Clockwise with y down, outside lies to the left of each side. */
export const outward = (a: Spot, b: Spot): Spot => {
  const [x, y] = unitVector(minus(b, a))
  return [y, -x]
}

/** Each side of a polygon, from corner to corner, closed. */
export const polygonSides = (corners: readonly Spot[]): LineSegment[] => corners.map((a, index) => [a, corners[(index + 1) % corners.length] as Spot])

export interface BoundingBox {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** The smallest upright box round some points. */
export function boundsOf(spots: readonly Spot[]): BoundingBox {
  let [left, top, right, bottom] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const [x, y] of spots) {
    left = Math.min(left, x)
    top = Math.min(top, y)
    right = Math.max(right, x)
    bottom = Math.max(bottom, y)
  }
  return { left, top, right, bottom }
}

/** All corners of all patches. */
export const cornersOf = (patches: readonly MeasuredPatch[]): Spot[] => patches.flatMap(({ corners }) => corners)

/** In square units of measure. */
function polygonArea(corners: readonly Spot[]): number {
  return Math.abs(polygonSides(corners).reduce((sum, [a, b]) => sum + cross(a, b), 0)) / 2
}

/** The balance point of a polygon. */
export function centreOf(corners: readonly Spot[]): Spot {
  const twice = polygonSides(corners).reduce((sum, [a, b]) => sum + cross(a, b), 0)
  if (Math.abs(twice) < NEAR) return corners[0] as Spot
  const sum = polygonSides(corners).reduce<Spot>(([x, y], [a, b]) => [x + (a[0] + b[0]) * cross(a, b), y + (a[1] + b[1]) * cross(a, b)], [0, 0])
  return [sum[0] / (3 * twice), sum[1] / (3 * twice)]
}

/** The balance point of a piece of several patches. */
export function centreOfAll(patches: readonly MeasuredPatch[]): Spot {
  let [x, y, all] = [0, 0, 0]
  for (const { corners } of patches) {
    const [cx, cy] = centreOf(corners)
    const area = polygonArea(corners)
    x += cx * area
    y += cy * area
    all += area
  }
  return all < NEAR ? [x, y] : [x / all, y / all]
}

/** The stretch that two sides have in common, along the first; null where they only touch or miss. */
export function shared([a, b]: LineSegment, [c, d]: LineSegment): LineSegment | null {
  const along = unitVector(minus(b, a))
  if (Math.abs(cross(along, minus(c, a))) > NEAR || Math.abs(cross(along, minus(d, a))) > NEAR) return null
  const [p, q] = [dot(along, minus(c, a)), dot(along, minus(d, a))]
  const from = Math.max(0, Math.min(p, q))
  const to = Math.min(vectorLength(minus(b, a)), Math.max(p, q))
  return to - from < NEAR ? null : [plus(a, along, from), plus(a, along, to)]
}

/** Sides that lie on one line share a key, so that only they need be compared. Odd shares keep places that makers use off the edges between keys. */
function lineKey([a, b]: LineSegment): string {
  const [x, y] = unitVector(minus(b, a))
  const [u, v] = x < -NEAR || (Math.abs(x) <= NEAR && y < 0) ? [-x, -y] : [x, y]
  return `${Math.floor(u * 1e3 + 0.1371)} ${Math.floor(v * 1e3 + 0.1371)} ${Math.floor(cross([u, v], a) * 1e3 + 0.1371)}`
}

interface Side {
  readonly patch: MeasuredPatch
  readonly side: LineSegment
}

const keyedSides = (patch: MeasuredPatch): readonly (Side & { readonly key: string })[] =>
  polygonSides(patch.corners).map((side) => ({ patch, side, key: lineKey(side) }))

function byLine(patches: readonly MeasuredPatch[]): ReadonlyMap<string, readonly Side[]> {
  const lines = new Map<string, Side[]>()
  for (const patch of patches) {
    for (const { side, key } of keyedSides(patch)) {
      const there = lines.get(key)
      if (there === undefined) lines.set(key, [{ patch, side }])
      else there.push({ patch, side })
    }
  }
  return lines
}

/** Where two groups of patches lie along each other. */
export function seamBetween(
  one: readonly MeasuredPatch[],
  other: readonly MeasuredPatch[],
): { stretch: LineSegment; one: MeasuredPatch; other: MeasuredPatch }[] {
  const far = byLine(other)
  return one.flatMap((patch) =>
    keyedSides(patch).flatMap(({ side, key }) =>
      (far.get(key) ?? []).flatMap(({ patch: beside, side: there }) => {
        const stretch = shared(side, there)
        return stretch === null ? [] : [{ stretch, one: patch, other: beside }]
      }),
    ),
  )
}

/** Patches above which a piece is drawn without its raw edges: they are too small to be seen then. */
const MOST_DRAWN = 300

/** Every patch with the allowance at the piece's raw edge. */
export function withRawEdge(patches: readonly MeasuredPatch[], seam: number): { readonly patch: MeasuredPatch; readonly outline: readonly Spot[] }[] {
  if (patches.length > MOST_DRAWN) return patches.map((patch) => ({ patch, outline: patch.corners }))
  const box = rectangleOf(patches)
  const lines = byLine(patches)
  return patches.map((patch) => {
    const raw = keyedSides(patch).map(({ side, key }) => isRaw(side, patch, lines.get(key) ?? []))
    const outline = movedOut(patch.corners, raw, seam)
    return { patch, outline: box === null ? outline : clipped(outline, grownBy(box, seam)) }
  })
}

/** A box, larger by a length on each side. */
export const grownBy = ({ left, top, right, bottom }: BoundingBox, by: number): BoundingBox => ({
  left: left - by,
  top: top - by,
  right: right + by,
  bottom: bottom + by,
})

/** The box of a piece that fills it; null for other shapes. */
export function rectangleOf(patches: readonly MeasuredPatch[]): BoundingBox | null {
  const box = boundsOf(cornersOf(patches))
  const area = patches.reduce((sum, { corners }) => sum + polygonArea(corners), 0)
  return Math.abs((box.right - box.left) * (box.bottom - box.top) - area) < NEAR * (1 + area) ? box : null
}

function isRaw(side: LineSegment, patch: MeasuredPatch, onLine: readonly Side[]): boolean {
  const covered = onLine.reduce((sum, { patch: other, side: there }) => {
    const both = other === patch ? null : shared(side, there)
    return both === null ? sum : sum + vectorLength(minus(both[1], both[0]))
  }, 0)
  return covered < vectorLength(minus(side[1], side[0])) / 2
}

/** Further than this many allowances no tip is drawn. */
const REACH = 3.5

/** The sides marked are moved out; where a moved side meets one that stays, the latter goes on along its own line. */
export function movedOut(corners: readonly Spot[], raw: readonly boolean[], seam: number): Spot[] {
  const sides = polygonSides(corners)
  return corners.flatMap((corner, index) => {
    const before = (index + corners.length - 1) % corners.length
    const [one, other] = [sides[before] as LineSegment, sides[index] as LineSegment]
    const [rawOne, rawOther] = [raw[before] === true, raw[index] === true]
    if (!rawOne && !rawOther) return [corner]
    const lineOne = rawOne ? movedSide(one, seam) : one
    const lineOther = rawOther ? movedSide(other, seam) : other
    const met = meeting(lineOne, lineOther)
    if (met === null) return [lineOther[0]]
    const away = minus(met, corner)
    if (vectorLength(away) <= REACH * seam) return [met]
    return [lineOne[1], lineOther[0]].map((end) => plus(end, unitVector(minus(met, end)), seam * 2))
  })
}

/** A side moved outward by a length. */
export const movedSide = ([a, b]: LineSegment, by: number): LineSegment => {
  const out = outward(a, b)
  return [plus(a, out, by), plus(b, out, by)]
}

/** Where two lines cross; null where they run alike. */
export function meeting([a, b]: LineSegment, [c, d]: LineSegment): Spot | null {
  const [u, v] = [minus(b, a), minus(d, c)]
  const turn = cross(u, v)
  if (Math.abs(turn) < NEAR * vectorLength(u) * vectorLength(v)) return null
  return plus(a, u, cross(minus(c, a), v) / turn)
}

/** A polygon cut to a box. */
export function clipped(corners: readonly Spot[], { left, top, right, bottom }: BoundingBox): Spot[] {
  const within: readonly ((spot: Spot) => number)[] = [([x]) => x - left, ([x]) => right - x, ([, y]) => y - top, ([, y]) => bottom - y]
  return within.reduce<Spot[]>((outline, inside) => clippedBy(outline, inside), [...corners])
}

/** The part of a polygon where a measure is not below nothing. */
export function clippedBy(corners: readonly Spot[], inside: (spot: Spot) => number): Spot[] {
  return polygonSides(corners).flatMap(([a, b]) => {
    const [here, there] = [inside(a), inside(b)]
    const kept = here >= -NEAR ? [a] : []
    if (here >= -NEAR === there >= -NEAR || Math.abs(here - there) < NEAR) return kept
    return [...kept, plus(a, minus(b, a), here / (here - there))]
  })
}

export interface SeamBetweenPatches {
  /** Patches on the two sides. */
  readonly sides: readonly [readonly MeasuredPatch[], readonly MeasuredPatch[]]
  readonly toward: 0 | 1 | 'open'
}

interface Folded {
  readonly fabric: string
  readonly side: 'right' | 'wrong'
  readonly outline: readonly Spot[]
}

/** What is seen of one seam's allowances from behind, before the picture is turned over. */
export function foldedAllowances({ sides, toward }: SeamBetweenPatches, seam: number, box: BoundingBox | null): Folded[] {
  return seamBetween(sides[0], sides[1]).flatMap(({ stretch, one, other }): Folded[] => {
    const out = outward(...stretch)
    const strip = (patch: MeasuredPatch, way: 1 | -1, side: Folded['side']): Folded => {
      const [a, b] = reaching(stretch, seam, box)
      const outline: Spot[] = [a, b, plus(b, out, way * seam), plus(a, out, way * seam)]
      return { fabric: patch.fabric, side, outline: box === null ? outline : clipped(outline, grownBy(box, seam)) }
    }
    // `out` points from the first side's patch to the other's.
    if (toward === 'open') return [strip(one, -1, 'right'), strip(other, 1, 'right')]
    return toward === 1 ? [strip(one, 1, 'wrong')] : [strip(other, -1, 'wrong')]
  })
}

/** A seam that ends at the raw edge runs on to it. */
function reaching([a, b]: LineSegment, seam: number, box: BoundingBox | null): LineSegment {
  if (box === null) return [a, b]
  const along = unitVector(minus(b, a))
  const atEdge = ([x, y]: Spot): boolean => [x - box.left, box.right - x, y - box.top, box.bottom - y].some((far) => Math.abs(far) < NEAR)
  return [atEdge(a) ? plus(a, along, -2 * seam) : a, atEdge(b) ? plus(b, along, 2 * seam) : b]
}

/** The smallest upright box round some patches. */
export const boxOfPatches = (patches: readonly MeasuredPatch[]): BoundingBox => boundsOf(cornersOf(patches))

/** Patches by the unit they belong to, each unit once. */
export function patchesByUnit(patches: readonly MeasuredPatch[]): { readonly unit: string; readonly patches: readonly MeasuredPatch[] }[] {
  const units = new Map<string, MeasuredPatch[]>()
  for (const patch of patches) {
    if (patch.unit === null) continue
    const there = units.get(patch.unit)
    if (there === undefined) units.set(patch.unit, [patch])
    else there.push(patch)
  }
  return [...units].map(([unit, own]) => ({ unit, patches: own }))
}
