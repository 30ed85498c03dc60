/**
 * Lay the units on the table: every patch as a polygon of whole numbers on one common denominator, borders round it.
 *
 * In      a block that has been read.
 * Out     patches with clockwise corners, grouped by unit; each border strip and each of its corner squares is a patch of its own.
 * Exact   a border's width may be any length, so borders stand one cell wide in the whole-number plane, whatever their width;
 *         `places` gives back the true position in cells. Nothing that is decided depends on a border's width.
 */
import { add, divide, lcm, type Rational, ZERO } from '../exact/rational.ts'
import { type Dot, doubleArea } from '../plane/points.ts'
import { type ExactPoint, exactPoint, type Sewn, shapeOf } from '../units/kinds.ts'
import { cellOf, lengthOf } from './lengthsOf.ts'
import { Places } from './places.ts'
import type { Block, Unit } from '../values/block.ts'

export interface LaidPatch {
  readonly id: string
  /** The place of the unit in the block's list; −1 in a border. */
  readonly unit: number
  readonly name: string
  readonly fabric: string
  readonly corners: readonly Dot[]
}

/** One whole unit, or one strip or corner square of a border. */
interface Part {
  readonly patches: readonly number[]
  readonly sewn: SewnPatches
  /** The box it lies in, in steps. */
  readonly low: Dot
  readonly high: Dot
}

/** A patch by its number, or two pieces sewn together. */
export type SewnPatches = number | readonly [SewnPatches, SewnPatches]

/** One part by its number; or three: the strip, then the squares that are sewn to its ends. */
type FramePiece = number | readonly [number, number, number]

export interface Laid {
  readonly block: Block
  /** Steps to a cell. */
  readonly den: number
  /** Of the grid, in steps. */
  readonly width: number
  readonly height: number
  readonly patches: readonly LaidPatch[]
  /** Parts 0 … units − 1 are the units; those of the borders follow. */
  readonly parts: readonly Part[]
  /** What the block is framed with, in the order in which it is sewn on, inner border first: a part, or a strip between its corner squares. */
  readonly frame: readonly FramePiece[]
  readonly borders: number
  /** Total border width up to each border, in cells: `depths[0]` is 0. */
  readonly depths: readonly Rational[]
  /** Where steps really are. */
  readonly places: Places
}

interface Shape {
  readonly patches: readonly { readonly name: string; readonly corners: readonly ExactPoint[] }[]
  readonly sewn: Sewn
  /** The least number of steps to a cell that holds all its corners. */
  readonly den: number
}

interface Placed {
  readonly shape: Shape
  readonly at: ExactPoint
  readonly den: number
  laid: LaidUnit | null
}

/** A unit laid down: whose numbers they are, and its patches. */
interface LaidUnit {
  readonly den: number
  readonly unit: number
  readonly first: number
  readonly patches: readonly LaidPatch[]
  readonly part: Part
}

/** Where each unit lies, and how it was laid down last. */
const placedUnits = new WeakMap<Unit, Placed>()

/** `steps`: a cell may be cut into more steps than it needs, a multiple of these. */
export function lay(block: Block, steps = 1): Laid {
  const placed = placedOf(block)
  const den = commonDenominator(placed, steps)
  const width = block.grid.columns * den
  const height = block.grid.rows * den
  const patches: LaidPatch[] = []
  const parts: Part[] = []
  const dots = new Map<Shape, readonly (readonly Dot[])[]>()
  for (let unit = 0; unit < placed.length; unit++) {
    const own = placed[unit] as Placed
    let { laid } = own
    if (laid?.den !== den || laid.unit !== unit || laid.first !== patches.length) {
      laid = laidUnit(block.units[unit] as Unit, own, { den, unit, first: patches.length }, dots)
      own.laid = laid
    }
    for (const patch of laid.patches) patches.push(patch)
    parts.push(laid.part)
  }
  const borders = block.borders ?? []
  const put = ([name, corners]: [string, Dot[]], fabric: string): number => {
    parts.push({ patches: [patches.length], sewn: patches.length, low: corners[0] as Dot, high: corners[2] as Dot })
    patches.push({ id: `p:${patches.length + 1}`, unit: -1, name, fabric, corners })
    return parts.length - 1
  }
  const frame = borders.flatMap(({ fabric, corner }, depth): FramePiece[] => {
    const [sides, across] = strips(width, height, depth, den, corner !== undefined)
    const sewnOn: FramePiece[] = sides.map((side) => put(side, fabric))
    const squares = corner === undefined ? null : squaresAt(width, height, depth, den)
    across.forEach((strip, place) => {
      const part = put(strip, fabric)
      const ends = squares?.[place]
      sewnOn.push(ends === undefined ? part : [part, put(ends[0], corner as string), put(ends[1], corner as string)])
    })
    return sewnOn
  })
  const depths: Rational[] = [ZERO]
  for (const border of borders) depths.push(add(depths.at(-1) as Rational, divide(lengthOf(border.finishedWidth), cellOf(block))))
  return { block, den, width, height, patches, parts, frame, borders: borders.length, depths, places: new Places({ den, width, height, depths }) }
}

function laidUnit(
  { fabrics }: Unit,
  { shape, at }: Placed,
  place: Pick<LaidUnit, 'den' | 'unit' | 'first'>,
  dots: Map<Shape, readonly (readonly Dot[])[]>,
): LaidUnit {
  const { den, unit, first } = place
  const [x, y] = whole(at, den)
  const own = dots.get(shape) ?? shape.patches.map(({ corners }) => clockwise(corners.map((corner) => whole(corner, den))))
  dots.set(shape, own)
  const patches = shape.patches.map(
    ({ name }, index): LaidPatch => ({
      id: `p:${first + index + 1}`,
      unit,
      name,
      fabric: fabrics[name] as string,
      corners: (own[index] as readonly Dot[]).map(([dx, dy]): Dot => [x + dx, y + dy]),
    }),
  )
  const part = {
    patches: patches.map((_, index) => first + index),
    sewn: numbered(shape.sewn, new Map(patches.map(({ name }, index) => [name, first + index]))),
    ...boxOf(patches),
  }
  return { ...place, patches, part }
}

function boxOf(patches: readonly LaidPatch[]): { readonly low: Dot; readonly high: Dot } {
  const low: [number, number] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
  const high: [number, number] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const { corners } of patches)
    for (const [x, y] of corners) {
      if (x < low[0]) low[0] = x
      if (y < low[1]) low[1] = y
      if (x > high[0]) high[0] = x
      if (y > high[1]) high[1] = y
    }
  return { low, high }
}

const ORIGIN: ExactPoint = [ZERO, ZERO]

/** Units of one kind, size and turn share one shape, moved to where each lies. */
function placedOf(block: Block): Placed[] {
  const shapes = new Map<string, Shape>()
  return block.units.map((unit) => {
    const known = placedUnits.get(unit)
    if (known !== undefined) return known
    const placed = placedUnit(unit, shapes)
    placedUnits.set(unit, placed)
    return placed
  })
}

function placedUnit(unit: Unit, shapes: Map<string, Shape>): Placed {
  if (unit.kind === 'polygon') {
    const shape = shapeWith([{ name: 'patch', corners: unit.corners.map(exactPoint) }], 'patch')
    return { shape, at: ORIGIN, den: shape.den, laid: null }
  }
  const names = unit.kind === 'strips' || unit.kind === 'cornered' ? Object.keys(unit.fabrics).join() : ''
  const key = `${unit.kind} ${unit.size} ${unit.turn ?? 0} ${unit.mirror === true} ${unit.corner} ${names}`
  let shape = shapes.get(key)
  if (shape === undefined) {
    const { patches, sewn } = shapeOf({ ...unit, at: [0, 0] })
    shape = shapeWith(patches, sewn)
    shapes.set(key, shape)
  }
  const at = exactPoint(unit.at)
  return { shape, at, den: Number(lcm(BigInt(shape.den), lcm(at[0].d, at[1].d))), laid: null }
}

function shapeWith(patches: Shape['patches'], sewn: Sewn): Shape {
  let den = 1n
  for (const { corners } of patches) for (const [x, y] of corners) den = lcm(den, lcm(x.d, y.d))
  return { patches, sewn, den: Number(den) }
}

/** The file's limit keeps it far below what a double holds. */
function commonDenominator(placed: readonly Placed[], steps: number): number {
  let common = steps
  for (const { den } of placed) common = Number(lcm(BigInt(common), BigInt(den)))
  return common
}

const whole = ([x, y]: ExactPoint, den: number): Dot => {
  const steps = BigInt(den)
  return [Number((x.n * steps) / x.d), Number((y.n * steps) / y.d)]
}

/** Clockwise, without corners that lie on a straight side. */
function clockwise(corners: Dot[]): Dot[] {
  return doubleArea(corners) < 0n ? corners.reverse() : corners
}

function numbered(sewn: Sewn, numbers: ReadonlyMap<string, number>): SewnPatches {
  return typeof sewn === 'string' ? (numbers.get(sewn) as number) : [numbered(sewn[0], numbers), numbered(sewn[1], numbers)]
}

type Named = [string, Dot[]]

/** `+ 0`: the inner edge of the first border is 0, never −0. */
const box = (x0: number, y0: number, x1: number, y1: number): Dot[] => [
  [x0 + 0, y0 + 0],
  [x1 + 0, y0 + 0],
  [x1 + 0, y1 + 0],
  [x0 + 0, y1 + 0],
]

/** Sides first, then top and bottom [S128]. With corner squares top and bottom are no wider than what they are sewn to between them. */
function strips(width: number, height: number, depth: number, den: number, corners: boolean): readonly [Named[], Named[]] {
  const inner = depth * den
  const outer = inner + den
  const reach = corners ? inner : outer
  return [
    [
      ['left', box(-outer, -inner, -inner, height + inner)],
      ['right', box(width + inner, -inner, width + outer, height + inner)],
    ],
    [
      ['top', box(-reach, -outer, width + reach, -inner)],
      ['bottom', box(-reach, height + inner, width + reach, height + outer)],
    ],
  ]
}

/** The two of the top, then the two of the bottom. */
function squaresAt(width: number, height: number, depth: number, den: number): [Named, Named][] {
  const inner = depth * den
  const outer = inner + den
  const row = (end: 'top' | 'bottom', y0: number, y1: number): [Named, Named] => [
    [`${end}Left`, box(-outer, y0, -inner, y1)],
    [`${end}Right`, box(width + inner, y0, width + outer, y1)],
  ]
  return [row('top', -outer, -inner), row('bottom', height + inner, height + outer)]
}
