/**
 * The kinds of unit: the shape of each at turn 0, the names of its patches, the order in which its own seams are sewn, the methods it offers.
 *
 * In      a box unit (or only its kind and size).
 * Out     patches as polygons in cells, clockwise as seen from the right side, from the top left of the unturned box.
 * Exact   rationals throughout.
 * Source  common practice, no source: seams inside a unit are sewn in the order in which the unit is usually made.
 */
import type { BoxUnit, Kind, Method, Position, Turn } from '../values/block.ts'
import { add, compare, divide, multiply, parseRational, type Rational, rational, subtract, ZERO } from '../exact/rational.ts'

/** x, y in cells. */
export type ExactPoint = readonly [Rational, Rational]

interface UnitPatch {
  readonly name: string
  readonly corners: readonly ExactPoint[]
}

/** A patch by its name, or two pieces sewn together: the order of sewing inside a unit. */
export type Sewn = string | readonly [Sewn, Sewn]

interface UnitShape {
  readonly patches: readonly UnitPatch[]
  readonly sewn: Sewn
}

export interface KindFacts {
  /** Names of the patches in order; strips have as many as the unit names. */
  readonly names: readonly string[]
  readonly methods: readonly Method[]
  /** The width that goes with the height at turn 0. */
  readonly proportion: 'any' | 'square' | 'twice as wide as high'
}

const CORNERS = ['topLeft', 'topRight', 'bottomRight', 'bottomLeft'] as const

export const KIND_FACTS: Readonly<Record<Kind, KindFacts>> = {
  square: { names: ['patch'], methods: ['plain'], proportion: 'any' },
  hst: { names: ['upper', 'lower'], methods: ['hst-2', 'hst-4', 'hst-8', 'plain'], proportion: 'square' },
  hourglass: { names: ['top', 'right', 'bottom', 'left'], methods: ['qst-2', 'plain'], proportion: 'square' },
  goose: { names: ['goose', 'leftWing', 'rightWing'], methods: ['geese-4', 'corner-flip', 'plain'], proportion: 'twice as wide as high' },
  diamond: { names: ['centre', ...CORNERS], methods: ['plain', 'corner-flip'], proportion: 'square' },
  cornered: { names: ['centre', ...CORNERS], methods: ['corner-flip', 'plain'], proportion: 'any' },
  strips: { names: [], methods: ['plain', 'strip-set'], proportion: 'any' },
  'half-rectangle': { names: ['upper', 'lower'], methods: ['plain'], proportion: 'any' },
  polygon: { names: ['patch'], methods: ['plain'], proportion: 'any' },
}

/** The method that makes a unit: its own, or the first that its kind lists. */
export function methodOf(unit: { readonly kind: Kind; readonly method?: Method }): Method {
  return unit.method ?? (KIND_FACTS[unit.kind].methods[0] as Method)
}

const exact = (value: Position): Rational => {
  const found = parseRational(value)
  if (found === null) throw new Error('impossible: a position that was never read')
  return found
}

/** A point of a block file as exact fractions, in cells. */
export const exactPoint = ([x, y]: readonly [Position, Position]): ExactPoint => [exact(x), exact(y)]

/** Width and height at turn 0, in cells. */
export function sizeAtRest(unit: BoxUnit): ExactPoint {
  const [width, height] = exactPoint(unit.size)
  return (unit.turn ?? 0) % 2 === 0 ? [width, height] : [height, width]
}

/** The unit at turn 0, not mirrored, from 0, 0. */
export function shapeAtRest(unit: BoxUnit): UnitShape {
  const [w, h] = sizeAtRest(unit)
  return SHAPES[unit.kind](unit, w, h)
}

/** The unit where it lies on the grid: mirrored, then turned, then moved to `at`. */
export function shapeOf(unit: BoxUnit): UnitShape {
  const { patches, sewn } = shapeAtRest(unit)
  const size = sizeAtRest(unit)
  const at = exactPoint(unit.at)
  return { sewn, patches: patches.map(({ name, corners }) => ({ name, corners: place(corners, size, unit.mirror === true, unit.turn ?? 0, at) })) }
}

/** Corners of a patch at rest, mirrored left for right, turned clockwise and moved so that the turned box begins at `at`. Stays clockwise. */
export function place(corners: readonly ExactPoint[], [w, h]: ExactPoint, mirror: boolean, turn: Turn, at: ExactPoint): ExactPoint[] {
  const flipped = mirror ? corners.map(([x, y]): ExactPoint => [subtract(w, x), y]).reverse() : corners
  return flipped.map(([x, y]) => {
    const [tx, ty]: ExactPoint =
      turn === 0 ? [x, y] : turn === 1 ? [subtract(h, y), x] : turn === 2 ? [subtract(w, x), subtract(h, y)] : [y, subtract(w, x)]
    return [add(tx, at[0]), add(ty, at[1])]
  })
}

const HALF = rational(1, 2)
const point = (x: Rational, y: Rational): ExactPoint => [x, y]
const patch = (name: string, ...corners: ExactPoint[]): UnitPatch => ({ name, corners })

type Shape = (unit: BoxUnit, w: Rational, h: Rational) => UnitShape

const twoHalves: Shape = (_, w, h) => ({
  patches: [patch('upper', point(ZERO, ZERO), point(w, ZERO), point(ZERO, h)), patch('lower', point(w, ZERO), point(w, h), point(ZERO, h))],
  sewn: ['upper', 'lower'],
})

const SHAPES: Readonly<Record<BoxUnit['kind'], Shape>> = {
  square: (_, w, h) => ({ patches: [patch('patch', point(ZERO, ZERO), point(w, ZERO), point(w, h), point(ZERO, h))], sewn: 'patch' }),
  hst: twoHalves,
  'half-rectangle': twoHalves,
  hourglass: (_, w, h) => {
    const middle = point(multiply(w, HALF), multiply(h, HALF))
    return {
      patches: [
        patch('top', point(ZERO, ZERO), point(w, ZERO), middle),
        patch('right', point(w, ZERO), point(w, h), middle),
        patch('bottom', point(w, h), point(ZERO, h), middle),
        patch('left', point(ZERO, h), point(ZERO, ZERO), middle),
      ],
      sewn: [
        ['top', 'right'],
        ['bottom', 'left'],
      ],
    }
  },
  goose: (_, w, h) => {
    const tip = point(multiply(w, HALF), ZERO)
    return {
      patches: [
        patch('goose', tip, point(w, h), point(ZERO, h)),
        patch('leftWing', point(ZERO, ZERO), tip, point(ZERO, h)),
        patch('rightWing', tip, point(w, ZERO), point(w, h)),
      ],
      sewn: [['goose', 'leftWing'], 'rightWing'],
    }
  },
  diamond: (_, w, h) => {
    const x = multiply(w, HALF)
    const y = multiply(h, HALF)
    return {
      patches: [
        patch('centre', point(x, ZERO), point(w, y), point(x, h), point(ZERO, y)),
        patch('topLeft', point(ZERO, ZERO), point(x, ZERO), point(ZERO, y)),
        patch('topRight', point(x, ZERO), point(w, ZERO), point(w, y)),
        patch('bottomRight', point(w, y), point(w, h), point(x, h)),
        patch('bottomLeft', point(ZERO, y), point(x, h), point(ZERO, h)),
      ],
      // Opposite sides of a square in a square first [S55].
      sewn: [[[['centre', 'topLeft'], 'bottomRight'], 'topRight'], 'bottomLeft'],
    }
  },
  cornered: clippedCorners,
  strips: (unit, w, h) => {
    const names = stripNames(unit)
    const across = divide(w, rational(names.length))
    const patches = names.map((name, index) => {
      const left = multiply(across, rational(index))
      const right = multiply(across, rational(index + 1))
      return patch(name, point(left, ZERO), point(right, ZERO), point(right, h), point(left, h))
    })
    return { patches, sewn: names.slice(1).reduce<Sewn>((sewn, name) => [sewn, name], names[0] as string) }
  },
}

/** `strip1` … `stripN` in order. */
export function stripNames(unit: { readonly fabrics: Readonly<Record<string, string>> }): string[] {
  return Object.keys(unit.fabrics).map((_, index) => `strip${index + 1}`)
}

function clippedCorners(unit: BoxUnit, w: Rational, h: Rational): UnitShape {
  const leg = exact(unit.corner ?? 0)
  const farX = subtract(w, leg)
  const farY = subtract(h, leg)
  const clips: Record<(typeof CORNERS)[number], { triangle: ExactPoint[]; centre: ExactPoint[]; whole: ExactPoint }> = {
    topLeft: {
      triangle: [point(ZERO, ZERO), point(leg, ZERO), point(ZERO, leg)],
      centre: [point(ZERO, leg), point(leg, ZERO)],
      whole: point(ZERO, ZERO),
    },
    topRight: { triangle: [point(farX, ZERO), point(w, ZERO), point(w, leg)], centre: [point(farX, ZERO), point(w, leg)], whole: point(w, ZERO) },
    bottomRight: { triangle: [point(w, farY), point(w, h), point(farX, h)], centre: [point(w, farY), point(farX, h)], whole: point(w, h) },
    bottomLeft: { triangle: [point(ZERO, farY), point(leg, h), point(ZERO, h)], centre: [point(leg, h), point(ZERO, farY)], whole: point(ZERO, h) },
  }
  const clipped = CORNERS.filter((corner) => Object.hasOwn(unit.fabrics, corner))
  const centre = CORNERS.flatMap((corner) => (clipped.includes(corner) ? clips[corner].centre : [clips[corner].whole]))
  const distinct = centre.filter((corner, index) => !same(corner, centre[(index + centre.length - 1) % centre.length] as ExactPoint))
  return {
    patches: [patch('centre', ...distinct), ...clipped.map((corner) => patch(corner, ...clips[corner].triangle))],
    sewn: clipped.reduce<Sewn>((sewn, corner) => [sewn, corner], 'centre'),
  }
}

function same(a: ExactPoint, b: ExactPoint): boolean {
  return compare(a[0], b[0]) === 0 && compare(a[1], b[1]) === 0
}
