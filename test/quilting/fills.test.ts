import { describe, expect, it } from 'vitest'
import { echoLines } from '../../geometry/quilting/echo.ts'
import { largestGap } from '../../geometry/quilting/largestGap.ts'
import { BATTINGS, holdsAcross, mostApart } from '../../geometry/quilting/battings.ts'
import {
  distanceBetween,
  awayFrom,
  liesIn,
  type StitchPoint,
  routeLines,
  type StitchedLine,
  stretchesOf,
} from '../../geometry/quilting/stitchedLines.ts'
import { squareSpiral } from '../../geometry/quilting/spiral.ts'
import { report } from '../../geometry/report/wholeReport.ts'
import { manyUnits } from '../bench/blocks.ts'
import { sequence } from '../help.ts'
import { lineLength } from './lineLength.ts'

const box = (width: number, height: number): StitchPoint[] => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
]

const turned = (corners: readonly StitchPoint[], angle: number): StitchPoint[] =>
  corners.map(([x, y]) => [x * Math.cos(angle) - y * Math.sin(angle) + 5, x * Math.sin(angle) + y * Math.cos(angle) - 3])

const away = (lines: readonly StitchedLine[], point: StitchPoint): number =>
  Math.min(...lines.flatMap(stretchesOf).map((stretch) => awayFrom(point, stretch)))

const along = (line: StitchedLine, share: number): StitchPoint[] =>
  stretchesOf(line).map(([[ax, ay], [bx, by]]) => [ax + (bx - ax) * share, ay + (by - ay) * share])

/** Simple by making: corners round a middle at growing angles, near and far by turns of chance. */
const star = (next: () => number, count: number): StitchPoint[] =>
  Array.from({ length: count }, (_, place) => {
    const [angle, far] = [(2 * Math.PI * (place + 0.6 * next())) / count, 3 + 7 * next()]
    return [far * Math.cos(angle), far * Math.sin(angle)]
  })

const SHAPES: readonly [string, readonly StitchPoint[]][] = [
  ['a square', box(6, 6)],
  ['a rectangle', box(9, 4)],
  ['a rectangle, corners the other way round', box(9, 4).reverse()],
  [
    'a triangle',
    [
      [0, 0],
      [8, 0],
      [0, 8],
    ],
  ],
  [
    'an L',
    [
      [0, 0],
      [8, 0],
      [8, 3],
      [3, 3],
      [3, 9],
      [0, 9],
    ],
  ],
  [
    'two rooms and a narrow door',
    [
      [0, 0],
      [4, 0],
      [4, 1.5],
      [6, 1.5],
      [6, 0],
      [10, 0],
      [10, 4],
      [6, 4],
      [6, 2.5],
      [4, 2.5],
      [4, 4],
      [0, 4],
    ],
  ],
  [
    'a turned L',
    turned(
      [
        [0, 0],
        [8, 0],
        [8, 3],
        [3, 3],
        [3, 9],
        [0, 9],
      ],
      0.7,
    ),
  ],
  [
    'a side that is all but straight',
    [
      [2.97, 1.72],
      [1.6, 8.24],
      [-6.24, 4.71],
      [-8.19, -1.54],
      [-2.03, -9.39],
      [4.38, -5],
    ],
  ],
  ...[1, 2, 3, 4, 5, 6].map((seed): [string, StitchPoint[]] => [`a shape of chance, ${seed}`, star(sequence(seed * 97), 5 + seed)]),
]

describe('echo lines', () => {
  it.each(SHAPES)('lie everywhere at their distance from the outline: %s', (_, corners) => {
    const outline: StitchedLine = { points: corners, closed: true }
    const spacing = 0.45
    const lines = echoLines(corners, spacing)
    let last = 0
    for (const line of lines) {
      const first = away([outline], line.points[0] as StitchPoint)
      const round = Math.round(first / spacing)
      expect(round).toBeGreaterThanOrEqual(Math.max(1, last))
      last = round
      for (const share of [0, 0.25, 0.5, 0.75])
        for (const point of along(line, share)) {
          expect(liesIn(corners, point)).toBe(true)
          // Bends are drawn by chords that leave them by a thousandth.
          expect(Math.abs(away([outline], point) - round * spacing)).toBeLessThan(round * spacing * 1.01e-3)
        }
    }
  })

  it.each(SHAPES)('leave no such point of the patch out, and are closed: %s', (_, corners) => {
    const outline: StitchedLine = { points: corners, closed: true }
    const spacing = 0.45
    const lines = echoLines(corners, spacing)
    expect(lines.every(({ closed }) => closed)).toBe(true)
    // From any point the way out to the outline crosses a line at every multiple of the distance: so one is no farther than to the next multiple.
    const next = sequence(corners.length)
    for (let tries = 0; tries < 300; tries++) {
      const point: StitchPoint = [next() * 24 - 10, next() * 24 - 12]
      const deep = liesIn(corners, point) ? away([outline], point) : 0
      if (deep >= spacing) expect(away(lines, point)).toBeLessThanOrEqual((deep % spacing) + spacing * 0.01 * Math.ceil(deep / spacing))
    }
  })

  it('are squares in a square', () => {
    const lines = echoLines(box(6, 6), 1)
    // Inset by one each: sides of four, then two; the third would be a point.
    expect(lines.map(lineLength)).toEqual([16, 8].map((length) => expect.closeTo(length, 9)))
  })

  it('part where the patch is narrow', () => {
    const [, rooms] = SHAPES.find(([name]) => name === 'two rooms and a narrow door') as [string, StitchPoint[]]
    // The door is one wide: the first line passes through it, the second splits in two.
    expect(echoLines(rooms, 0.4)).toHaveLength(1 + 2 * 4)
  })

  it('run once along the middle where two sides meet', () => {
    const lines = echoLines(box(6, 2), 1)
    expect(lines).toHaveLength(1)
    expect(lines[0]?.closed).toBe(false)
    expect(lineLength(lines[0] as StitchedLine)).toBeCloseTo(4, 9)
  })

  it('are none at no distance', () => {
    expect(echoLines(box(6, 2), 0)).toEqual([])
  })
})

describe('a square spiral on point', () => {
  it.each([0, 0.3, Math.PI / 4])('starts at the middle of a side, turns squarely and stays inside (turned by %f)', (angle) => {
    const corners = turned(box(8, 8), angle)
    const spiral = squareSpiral(corners, 0.5) as StitchedLine
    const [[ax, ay], [bx, by]] = [corners[0] as StitchPoint, corners[1] as StitchPoint]
    expect(distanceBetween(spiral.points[0] as StitchPoint, [(ax + bx) / 2, (ay + by) / 2])).toBeCloseTo(0, 9)
    expect(spiral.closed).toBe(false)
    const stretches = stretchesOf(spiral)
    const middle = turned([[4, 4]], angle)[0] as StitchPoint
    for (const [from, to] of stretches) {
      expect(distanceBetween(from, to)).toBeGreaterThanOrEqual(0.5 - 1e-9)
      for (const point of [from, to]) expect(distanceBetween(point, middle)).toBeLessThanOrEqual(4 + 1e-9)
    }
    stretches.slice(1).forEach(([from, to], place) => {
      const [start] = stretches[place] as readonly [StitchPoint, StitchPoint]
      expect((from[0] - start[0]) * (to[0] - from[0]) + (from[1] - start[1]) * (to[1] - from[1])).toBeCloseTo(0, 9)
    })
  })

  it('has its turns at one distance from each other', () => {
    const spiral = squareSpiral(box(8, 8), 0.5) as StitchedLine
    const stretches = stretchesOf(spiral)
    stretches.slice(4).forEach(([from, to], place) => {
      const outer = stretches[place] as readonly [StitchPoint, StitchPoint]
      for (const point of [from, to]) if (place > 0) expect(Math.abs(awayFromLine(point, outer))).toBeCloseTo(0.5, 9)
    })
    expect(stretches.length).toBeGreaterThan(20)
  })

  it('is none in what is no square', () => {
    expect(squareSpiral(box(8, 7), 0.5)).toBeNull()
    expect(
      squareSpiral(
        [
          [0, 0],
          [4, 1],
          [5, 5],
          [1, 4],
        ],
        0.5,
      ),
    ).toBeNull()
    expect(squareSpiral(box(8, 8).slice(0, 3), 0.5)).toBeNull()
  })
})

function awayFromLine([px, py]: StitchPoint, [[ax, ay], [bx, by]]: readonly [StitchPoint, StitchPoint]): number {
  return ((px - ax) * (by - ay) - (py - ay) * (bx - ax)) / Math.hypot(bx - ax, by - ay)
}

describe('the largest gap', () => {
  it.each([
    // what                                    outline       edge     width                          why
    ['an empty square, its edge held', box(6, 6), 'held', 6, 'the circle in a square'],
    [
      'a right triangle of 3, 4 and 5',
      [
        [0, 0],
        [4, 0],
        [0, 3],
      ],
      'held',
      2,
      'the circle in a triangle: area 6 over half its edge, 6, twice',
    ],
  ] as const)('%s', (_, outline, edge, width, why) => {
    const gap = largestGap([], outline, edge)
    expect(gap?.width, why).toBeLessThanOrEqual(width + 1e-9)
    expect(gap?.atMost, why).toBeGreaterThanOrEqual(width - 1e-9)
    expect((gap?.atMost ?? 0) - (gap?.width ?? 0)).toBeLessThanOrEqual(0.02)
  })

  it('is measured to the stitches alone where the edge is loose, and is none where nothing is stitched', () => {
    const cross: StitchedLine[] = [
      {
        points: [
          [3, 0],
          [3, 6],
        ],
        closed: false,
      },
      {
        points: [
          [0, 3],
          [6, 3],
        ],
        closed: false,
      },
    ]
    expect(largestGap(cross, box(6, 6), 'held')?.width).toBeCloseTo(3, 2)
    // The farthest points are the corners, three from either line.
    expect(largestGap(cross, box(6, 6), 'loose')?.width).toBeGreaterThan(5.97)
    expect(largestGap(cross, box(6, 6), 'loose')?.atMost).toBeGreaterThanOrEqual(6)
    expect(largestGap([], box(6, 6), 'loose')).toBeNull()
  })

  it('is at least as wide as at any point that is tried, and no stitch enters it', () => {
    for (let seed = 1; seed <= 8; seed++) {
      const next = sequence(seed * 13)
      const outline = star(next, 9)
      const point = (): StitchPoint => [next() * 16 - 8, next() * 16 - 8]
      const lines = Array.from({ length: 6 }, (): StitchedLine => ({ points: [point(), point(), point()], closed: seed % 2 === 0 }))
      for (const edge of ['held', 'loose'] as const) {
        const stitched = edge === 'held' ? [...lines, { points: outline, closed: true }] : lines
        const gap = largestGap(lines, outline, edge)
        if (gap === null) throw new Error('no gap')
        expect(liesIn(outline, gap.at)).toBe(true)
        expect(2 * away(stitched, gap.at)).toBeCloseTo(gap.width, 9)
        for (let tries = 0; tries < 400; tries++) {
          const at = point()
          if (liesIn(outline, at)) expect(2 * away(stitched, at)).toBeLessThanOrEqual(gap.atMost + 1e-9)
        }
      }
    }
  })

  it('is found among thousands of stretches, and grows no wider by a fill', () => {
    const { ditch } = report(manyUnits(12))
    const routes = routeLines(ditch)
    const gap = largestGap(routes, box(12, 12))
    // The squares of one cell are the widest patches.
    expect(gap?.width).toBeLessThanOrEqual(1)
    expect(gap?.atMost).toBeGreaterThanOrEqual(1)
    const filled = largestGap([...routes, ...echoLines(box(1, 1), 0.2)], box(1, 1))
    expect(filled?.atMost).toBeLessThan(0.5)
  })
})

describe('what a batting holds across', () => {
  it.each([
    ['cotton-scrim', 10, '[S168]'],
    ['cotton-needled', 8, '[S168]'],
    ['bamboo', 8, '[S168]'],
    ['wool', 3, '[S168]'],
    ['polyester-thick', 3, '[S168]'],
    ['cotton-bleached', 1.5, '[S168], the lower of 1 1/2 to 2'],
    ['cotton-natural', 4, '[S170]'],
    ['cotton-no-scrim', 2, '[S171]'],
    ['in-use', 3, '[S169]'],
  ] as const)('%s: %d in', (id, most, why) => {
    const batting = BATTINGS.find((one) => one.id === id)
    if (batting === undefined) throw new Error('no such batting')
    expect(batting.most, why).toBe(most)
    expect(why).toContain(batting.source)
    expect(mostApart(batting, 'cm')).toBeCloseTo(most * 2.54, 9)
    expect(holdsAcross({ width: most - 0.02, atMost: most }, 'in', batting)).toBe('holds')
    expect(holdsAcross({ width: most - 0.01, atMost: most + 0.01 }, 'in', batting)).toBe('close')
    expect(holdsAcross({ width: most + 0.01, atMost: most + 0.02 }, 'in', batting)).toBe('too wide')
    expect(holdsAcross({ width: most + 0.01, atMost: most + 0.02 }, 'cm', batting)).toBe('holds')
  })
})
