/** Shapes of units: areas by hand, and what every kind keeps however it is turned and mirrored. */
import { describe, expect, it } from 'vitest'
import { equal, multiply, type Rational, rational, subtract, toNumber } from '../../geometry/exact/rational.ts'
import { type ExactPoint, KIND_FACTS, methodOf, type Sewn, shapeAtRest, shapeOf, sizeAtRest, stripNames } from '../../geometry/units/kinds.ts'
import { boxOf } from '../../geometry/units/unitBox.ts'
import { pictureOf, pictures, sewnOf, viewOf } from '../../geometry/units/unitPicture.ts'
import type { BoxUnit, Turn, Unit } from '../../geometry/values/block.ts'

const named = (names: readonly string[]): Record<string, string> => Object.fromEntries(names.map((name) => [name, name]))
const unit = (kind: BoxUnit['kind'], size: readonly [number | string, number | string], more: Partial<BoxUnit> = {}): BoxUnit => ({
  id: 'u',
  kind,
  at: [2, 3],
  size: size as never,
  fabrics: kind === 'strips' ? named(['strip1', 'strip2', 'strip3']) : named(KIND_FACTS[kind].names),
  ...(kind === 'cornered' ? { corner: '1/3' } : {}),
  ...more,
})

const UNITS: readonly BoxUnit[] = [
  unit('square', [2, 1]),
  unit('hst', [2, 2]),
  unit('half-rectangle', [3, 1]),
  unit('hourglass', [2, 2]),
  unit('goose', [2, 1]),
  unit('diamond', [2, 2]),
  unit('cornered', [2, 1]),
  unit('strips', [2, 1]),
]

const doubleArea = (corners: readonly ExactPoint[]): Rational =>
  corners.reduce((sum, [ax, ay], place) => {
    const [bx, by] = corners[(place + 1) % corners.length] as ExactPoint
    const part = subtract(multiply(ax, by), multiply(bx, ay))
    return rational(sum.n * part.d + part.n * sum.d, sum.d * part.d)
  }, rational(0))

const leaves = (sewn: Sewn): string[] => (typeof sewn === 'string' ? [sewn] : sewn.flatMap(leaves))

describe('a unit', () => {
  it.each([
    // twice the area of each patch, at rest, in square cells
    [unit('square', [2, 1]), { patch: 4 }],
    [unit('hst', [2, 2]), { upper: 4, lower: 4 }],
    [unit('half-rectangle', [3, 1]), { upper: 3, lower: 3 }],
    [unit('hourglass', [2, 2]), { top: 2, right: 2, bottom: 2, left: 2 }],
    [unit('goose', [2, 1]), { goose: 2, leftWing: 1, rightWing: 1 }],
    [unit('diamond', [2, 2]), { centre: 4, topLeft: 1, topRight: 1, bottomRight: 1, bottomLeft: 1 }],
    [unit('cornered', [2, 1]), { centre: 4 - 4 / 9, topLeft: 1 / 9, topRight: 1 / 9, bottomRight: 1 / 9, bottomLeft: 1 / 9 }],
    [unit('strips', [2, 1]), { strip1: 4 / 3, strip2: 4 / 3, strip3: 4 / 3 }],
  ] as const)('has patches of these areas: %j', (one, areas) => {
    const { patches, sewn } = shapeAtRest(one)
    expect(Object.fromEntries(patches.map(({ name, corners }) => [name, toNumber(doubleArea(corners))]))).toEqual(areas)
    expect(leaves(sewn).sort()).toEqual(patches.map(({ name }) => name).sort())
  })

  it.each(UNITS)('fills its box clockwise however it is turned and mirrored: %j', (one) => {
    for (const turn of [0, 1, 2, 3] as const)
      for (const mirror of [false, true]) {
        const turned: BoxUnit = { ...one, turn, mirror, size: turn % 2 === 0 ? one.size : [one.size[1], one.size[0]] }
        const { low, high } = boxOf(turned)
        const { patches } = shapeOf(turned)
        const areas = patches.map(({ corners }) => doubleArea(corners))
        for (const area of areas) expect(area.n > 0n).toBe(true)
        const sum = areas.reduce((a, b) => rational(a.n * b.d + b.n * a.d, a.d * b.d))
        expect(equal(sum, multiply(rational(2), multiply(subtract(high[0], low[0]), subtract(high[1], low[1]))))).toBe(true)
        expect([low.map(toNumber), sizeAtRest(turned).map(toNumber)]).toEqual([[2, 3], sizeAtRest(one).map(toNumber)])
        for (const { corners } of patches)
          for (const [x, y] of corners) {
            expect(toNumber(x)).toBeGreaterThanOrEqual(2)
            expect(toNumber(y)).toBeGreaterThanOrEqual(3)
            expect(toNumber(subtract(high[0], x))).toBeGreaterThanOrEqual(0)
            expect(toNumber(subtract(high[1], y))).toBeGreaterThanOrEqual(0)
          }
      }
  })

  it('is mirrored before it is turned', () => {
    const corner = (turn: Turn, mirror: boolean): number[] => {
      const [first] = shapeOf(unit('hst', [2, 2], { at: [0, 0], turn, mirror })).patches
      // The right angle of `upper`.
      const corners = (first?.corners ?? []).map((point) => point.map(toNumber))
      return corners.find(([x, y]) => corners.some(([a, b]) => a === x && b !== y) && corners.some(([a, b]) => a !== x && b === y)) as number[]
    }
    expect([corner(0, false), corner(1, false), corner(2, false), corner(3, false)]).toEqual([
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ])
    expect([corner(0, true), corner(1, true)]).toEqual([
      [2, 0],
      [2, 2],
    ])
  })

  it('has corners clipped where they are named only, and none left over where the legs meet', () => {
    const some = shapeAtRest(unit('cornered', [2, 1], { fabrics: named(['centre', 'topRight']), corner: 0.5 }))
    expect(some.patches.map(({ name, corners }) => [name, corners.length])).toEqual([
      ['centre', 5],
      ['topRight', 3],
    ])
    const met = shapeAtRest(unit('cornered', [1, 1], { corner: 0.5 }))
    expect(met.patches[0]?.corners).toHaveLength(4)
  })

  it('is made by the method it names, or by the first of its kind', () => {
    expect(methodOf(unit('goose', [2, 1]))).toBe('geese-4')
    expect(methodOf(unit('goose', [2, 1], { method: 'plain' }))).toBe('plain')
    expect(stripNames(unit('strips', [2, 1]))).toEqual(['strip1', 'strip2', 'strip3'])
  })
})

describe('the box of a unit', () => {
  it('of a free patch reaches to its outermost corners', () => {
    const free: Unit = {
      id: 'f',
      kind: 'polygon',
      corners: [
        [1, 5],
        ['1/3', 2],
        [4, 3],
      ],
      fabrics: { patch: 'a' },
    }
    const { low, high } = boxOf(free)
    expect([low, high].map((point) => point.map(toNumber))).toEqual([
      [1 / 3, 2],
      [4, 5],
    ])
  })
})

describe('the picture of a unit', () => {
  it('of a free patch is the same turned and moved, and another mirrored: a triangle of three different sides', () => {
    const free = (corners: readonly (readonly [number, number])[]): Unit => ({ id: 'f', kind: 'polygon', corners, fabrics: { patch: 'a' } })
    const triangle = free([
      [0, 0],
      [2, 0],
      [0, 1],
    ])
    const turned = free([
      [4, 3],
      [4, 5],
      [3, 3],
    ])
    const mirrored = free([
      [2, 0],
      [2, 1],
      [0, 0],
    ])
    expect(pictureOf(turned)).toBe(pictureOf(triangle))
    const remembered = pictures()
    expect([triangle, turned, mirrored].map(remembered)).toEqual([triangle, turned, mirrored].map(pictureOf))
    expect(pictureOf(mirrored)).not.toBe(pictureOf(triangle))
    expect(viewOf(triangle, 1)).toBe(viewOf(turned))
  })

  it('is the same however it is turned, and its view another', () => {
    for (const one of UNITS) {
      const turned: BoxUnit = { ...one, turn: 1, size: [one.size[1], one.size[0]] }
      expect(pictureOf(turned)).toBe(pictureOf(one))
      expect(pictures()(turned)).toBe(pictureOf(one))
      expect(viewOf(one, 1)).toBe(viewOf(turned))
    }
  })

  it('of a mirror image is another, unless it looks the same', () => {
    const goose = unit('goose', [2, 1])
    expect(pictureOf({ ...goose, mirror: true })).not.toBe(pictureOf(goose))
    const alike = { ...goose, fabrics: { goose: 'a', leftWing: 'b', rightWing: 'b' } }
    expect(pictureOf({ ...alike, mirror: true })).toBe(pictureOf(alike))
  })

  it('shows which patches are sewn to which by where they lie', () => {
    const hourglass = unit('hourglass', [2, 2])
    expect(sewnOf({ ...hourglass, turn: 2 })).toBe(sewnOf(hourglass))
    expect(sewnOf({ ...hourglass, turn: 1 })).not.toBe(sewnOf(hourglass))
  })
})
