/** Convex pieces cut, folded and counted, judged by points and by areas that need no cutting. */
import { describe, expect, it } from 'vitest'
import {
  areaOf,
  beyond,
  clip,
  type Convex,
  fold,
  type Half,
  middleOf,
  splitByLayers,
  patient,
  reach,
  sidesOfConvex,
} from '../../geometry/plane/convex.ts'
import { outlineOf } from '../../geometry/plane/outline.ts'
import { sequence } from '../help.ts'

const SQUARE: Convex = [0, 0, 4, 0, 4, 4, 0, 4]
/** All x up to 1. */
const LEFT: Half = { nx: 1, ny: 0, c: 1 }

const pointsOf = (poly: Convex): [number, number][] =>
  Array.from({ length: poly.length / 2 }, (_, corner) => [poly[2 * corner] as number, poly[2 * corner + 1] as number])

const isIn = (poly: Convex, x: number, y: number): boolean => sidesOfConvex(poly).every(({ nx, ny, c }) => nx * x + ny * y < c)

/** A triangle whose corners run clockwise with y down. */
function triangle(next: () => number): Convex {
  for (;;) {
    const poly = Array.from({ length: 6 }, () => next() * 10)
    if (areaOf(poly) > 1) return poly
  }
}

describe('a convex piece', () => {
  it('has a positive area where its corners run clockwise, and its sides hold it', () => {
    expect(areaOf(SQUARE)).toBe(16)
    expect(areaOf([0, 4, 4, 4, 4, 0, 0, 0])).toBe(-16)
    expect(middleOf(SQUARE)).toEqual([2, 2])
    expect(sidesOfConvex(SQUARE).map(({ nx, ny, c }) => [nx + 0, ny + 0, c + 0])).toEqual([
      [0, -1, 0],
      [1, 0, 4],
      [0, 1, 4],
      [-1, 0, 0],
    ])
    // A corner given twice is no side.
    expect(sidesOfConvex([0, 0, 4, 0, 4, 0, 4, 4, 0, 4])).toHaveLength(4)
  })

  it('reaches beyond a line by its farthest and its nearest corner', () => {
    expect(reach(SQUARE, LEFT)).toEqual({ least: -1, most: 3 })
    expect(reach(SQUARE, beyond(LEFT))).toEqual({ least: -3, most: 1 })
  })

  it('is cut by a line: the same object where all of it is within, null where none is, even where it only touches', () => {
    expect(pointsOf(clip(SQUARE, LEFT) as Convex).sort()).toEqual([
      [0, 0],
      [0, 4],
      [1, 0],
      [1, 4],
    ])
    expect(clip(SQUARE, { nx: 1, ny: 0, c: 4 })).toBe(SQUARE)
    expect(clip(SQUARE, { nx: 1, ny: 0, c: 0 })).toBeNull()
    expect(clip(SQUARE, { nx: 1, ny: 0, c: -1 })).toBeNull()
    // Through two corners: half of it.
    expect(areaOf(clip(SQUARE, { nx: Math.SQRT1_2, ny: -Math.SQRT1_2, c: 0 }) as Convex)).toBeCloseTo(8, 9)
  })

  it('cut along any line, its two parts are as large as the whole', () => {
    const next = sequence(7)
    for (let run = 0; run < 200; run++) {
      const poly = triangle(next)
      const angle = next() * 7
      const half: Half = { nx: Math.cos(angle), ny: Math.sin(angle), c: next() * 12 - 2 }
      const parts = [clip(poly, half), clip(poly, beyond(half))]
      expect(parts.reduce((sum, part) => sum + (part === null ? 0 : areaOf(part)), 0)).toBeCloseTo(areaOf(poly), 6)
    }
  })

  it('folded over a line is its mirror image, as large and still clockwise; folded twice it lies where it was', () => {
    expect(pointsOf(fold(SQUARE, LEFT)).sort()).toEqual([
      [-2, 0],
      [-2, 4],
      [2, 0],
      [2, 4],
    ])
    expect(areaOf(fold(SQUARE, LEFT))).toBe(16)
    expect(pointsOf(fold(fold(SQUARE, LEFT), LEFT))).toEqual(pointsOf(SQUARE))
  })
})

describe('pieces over a place', () => {
  it('are counted as points are: every cell has as many layers as pieces its middle lies in, and the cells fill the place', () => {
    const next = sequence(11)
    for (let run = 0; run < 60; run++) {
      const pieces = Array.from({ length: 4 }, () => triangle(next))
      const place: Convex = [0, 0, 10, 0, 10, 10, 0, 10]
      const cells = splitByLayers(place, pieces, patient()) ?? []
      expect(cells.reduce((sum, { poly }) => sum + areaOf(poly), 0)).toBeCloseTo(100, 5)
      for (const { poly, layers } of cells) {
        if (areaOf(poly) < 1e-3) continue
        const [x, y] = middleOf(poly)
        expect(layers).toBe(pieces.filter((piece) => isIn(piece, x, y)).length)
      }
    }
  })

  it('that only touch the place leave it as it is', () => {
    expect(splitByLayers(SQUARE, [[4, 0, 8, 0, 8, 4, 4, 4]], patient())).toEqual([{ poly: SQUARE, layers: 0 }])
    expect(splitByLayers(SQUARE, [SQUARE], patient())).toEqual([{ poly: SQUARE, layers: 1 }])
  })

  it('are given up once patience runs out, and not before', () => {
    expect(splitByLayers(SQUARE, [SQUARE, SQUARE], { tests: 1 })).toBeNull()
    expect(splitByLayers(SQUARE, [SQUARE, SQUARE], { tests: 2 })).not.toBeNull()
  })
})

describe('the outline of pieces side by side', () => {
  const lengthOf = (pieces: readonly Convex[]): number => outlineOf(pieces).reduce((sum, [x0, y0, x1, y1]) => sum + Math.hypot(x1 - x0, y1 - y0), 0)

  it('of one piece is its sides', () => {
    expect(outlineOf([SQUARE])).toEqual([
      [0, 0, 4, 0],
      [4, 0, 4, 4],
      [4, 4, 0, 4],
      [0, 4, 0, 0],
    ])
  })

  it('leaves out what two share, also where they share only a part of a side', () => {
    expect(lengthOf([SQUARE, [4, 0, 8, 0, 8, 4, 4, 4]])).toBeCloseTo(24, 9)
    // One inch of the two's common line is not shared on either end.
    expect(lengthOf([SQUARE, [4, 1, 8, 1, 8, 5, 4, 5]])).toBeCloseTo(16 + 16 - 2 * 3, 9)
    expect(lengthOf([SQUARE, [4, 1, 8, 1, 8, 3, 4, 3]])).toBeCloseTo(16 + 12 - 2 * 2, 9)
  })

  it('keeps what lies on one line but runs the same way, and pieces that only touch at a corner', () => {
    expect(lengthOf([SQUARE, [4, 4, 8, 4, 8, 8, 4, 8]])).toBeCloseTo(32, 9)
    expect(lengthOf([SQUARE, [5, 0, 9, 0, 9, 4, 5, 4]])).toBeCloseTo(32, 9)
    expect(lengthOf([SQUARE, [0, 5, 4, 5, 4, 9, 0, 9]])).toBeCloseTo(32, 9)
  })

  it('of a square of triangles is the square', () => {
    const pieces: Convex[] = [
      [0, 0, 4, 0, 2, 2],
      [4, 0, 4, 4, 2, 2],
      [4, 4, 0, 4, 2, 2],
      [0, 4, 0, 0, 2, 2],
    ]
    expect(lengthOf(pieces)).toBeCloseTo(16, 9)
  })
})
