import { describe, expect, it } from 'vitest'
import type { Dot } from '../../geometry/plane/points.ts'
import { ditch, type Routes, type RouteOptions } from '../../geometry/quilting/ditchRoute.ts'
import type { Segment } from '../../geometry/quilting/seamGraph.ts'
import { planeOf } from '../../geometry/block/blockPlane.ts'
import { lay } from '../../geometry/block/lay.ts'
import { quilt } from '../../geometry/quilting/quiltingRoute.ts'
import { quiltingRoute, report } from '../../geometry/report/wholeReport.ts'
import { manyUnits } from '../bench/blocks.ts'
import { blockOf, sequence, square, star } from '../help.ts'
import { key, leastOfAll, lengthOf, partsOf, programOf, scattered, solvedLength } from './seams.ts'

const plain = [
  ['b', 'b'],
  ['b', 'b'],
  ['b', 'b'],
  ['b', 'b'],
] as const

const round = ({ points, closed }: Routes['routes'][number]): Dot[] => (closed ? [...points, points[0] as Dot] : [...points])

/** What holds of every route: all seams and nothing else, no leap, and lengths, starts and turns that add up. */
function checkRoutes(segments: readonly Segment[], found: Routes): void {
  const left = new Map(segments.map(([a, b]) => [key(a, b), 0]))
  let length = 0
  for (const route of found.routes) {
    const points = round(route)
    points.slice(1).forEach((to, place) => {
      const from = points[place] as Dot
      const times = left.get(key(from, to))
      expect(times, `no seam from ${from} to ${to}`).toBeDefined()
      left.set(key(from, to), (times as number) + 1)
      length += lengthOf([from, to])
    })
    const bends = points.slice(1, -1).filter((dot, place) => bearing(points[place] as Dot, dot) !== bearing(dot, points[place + 2] as Dot))
    expect(route.turns).toBe(bends.length)
  }
  const times = [...left.values()]
  expect(Math.min(...times)).toBeGreaterThanOrEqual(1)
  expect(Math.max(...times)).toBeLessThanOrEqual(2)
  expect(found.length).toBeCloseTo(length, 9)
  expect(found.length - found.retraced).toBeCloseTo(
    segments.reduce((sum, segment) => sum + lengthOf(segment), 0),
    9,
  )
  expect(found.starts).toBe(partsOf(segments).length)
  expect(found.turns).toBe(found.routes.reduce((sum, { turns }) => sum + turns, 0))
}

const bearing = ([x0, y0]: Dot, [x1, y1]: Dot): string => Math.atan2(y1 - y0, x1 - x0).toFixed(9)

const startOf = ({ routes }: { readonly routes: readonly { readonly points: readonly (readonly unknown[])[] }[] }): Dot =>
  routes.at(0)?.points.at(0) as unknown as Dot

const small = (seed: number): Segment[] => {
  const next = sequence(seed * 104729)
  return scattered(next, 2, 2, 0.8).slice(0, 12)
}

describe('one line of quilting', () => {
  it.each([
    ['without a border', {}],
    ['with a border', { borders: [{ finishedWidth: 1, fabric: 'b' }] }],
  ])('draws a star with its tips to the centre in one go, nothing twice, %s: common practice, no source', (_, more) => {
    const { ditch: route } = report(star(plain, more))
    expect(route.routes).toHaveLength(1)
    expect(route).toMatchObject({ retraced: 0, starts: 1, proved: true })
  })

  it('counts what it stitches twice on a grid of five by five', () => {
    const lines: Segment[] = []
    for (let y = 1; y < 5; y++)
      for (let x = 0; x < 5; x++) {
        lines.push([
          [x, y],
          [x + 1, y],
        ])
        lines.push([
          [y, x],
          [y, x + 1],
        ])
      }
    const found = ditch(lines)
    checkRoutes(lines, found)
    // Sixteen loose ends on the rim: the four pairs round the corners are two stitches apart, the four along the sides three; one of those stays open.
    expect(found.retraced).toBe(4 * 2 + 3 * 3)
  })

  it('retraces no more than the best of all choices of seams, part by part', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const segments = small(seed)
      const found = ditch(segments)
      checkRoutes(segments, found)
      const least = partsOf(segments).reduce((sum, part) => sum + leastOfAll(part).least, 0)
      expect(found.retraced, `case ${seed}`).toBeCloseTo(least, 9)
      expect(found.proved).toBe(true)
    }
  })

  it('retraces no more than an integer program says', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const next = sequence(seed * 15485863)
      const segments = scattered(next, 6, 5, 0.5 + 0.4 * next())
      const found = ditch(segments)
      checkRoutes(segments, found)
      expect(found.retraced, `case ${seed}`).toBeCloseTo(solvedLength(programOf(partsOf(segments))), 6)
    }
  })

  it.each([2, 3])('retraces no more than that where crowds of loose ends lie far apart (case %i)', (seed) => {
    const crowd = scattered(sequence(seed * 31), 4, 4, 0.93)
    const places: readonly Dot[] = [
      [0, 0],
      [100, 0],
      [0, 100],
      [100, 100],
    ]
    const moved = ([x, y]: Dot, place: number): Dot => [x + (places[place] as Dot)[0], y + (places[place] as Dot)[1]]
    const first = (crowd[0] as Segment)[0]
    // One crowd is tied to each of the three others, so that each has an odd number of loose ends.
    const ties = [1, 2, 3].map((place): Segment => [moved(first, 0), moved(first, place)])
    const segments = [...places.flatMap((_, place) => crowd.map(([a, b]): Segment => [moved(a, place), moved(b, place)])), ...ties]
    const found = ditch(segments)
    checkRoutes(segments, found)
    expect(found.retraced).toBeCloseTo(solvedLength(programOf(partsOf(segments))), 6)
    expect(found.retraced).toBeGreaterThan(100)
  })

  it.each([
    ['a star', star(plain)],
    ['a star with a border', star(plain, { borders: [{ finishedWidth: 1, fabric: 'b' }] })],
    ['a block with a gap', blockOf(2, 1, [square('a', [0, 0])])],
    ['a block with a gap and a border', blockOf(2, 1, [square('a', [0, 0])], { borders: [{ finishedWidth: 1, fabric: 'b' }] })],
    ['cloth in the border', blockOf(1, 1, [square('a', [0, 0]), square('b', [1, 0])], { borders: [{ finishedWidth: 3, fabric: 'b' }] })],
  ])('is the same alone as in the report: %s', (_, block) => {
    expect(quiltingRoute(block)).toEqual(report(block).ditch)
  })

  it('holds for a block of hundreds of units, proved', () => {
    const route = quiltingRoute(manyUnits(20))
    expect(route.proved).toBe(true)
    expect(route.routes).toHaveLength(1)
  })
})

describe('where the maker begins', () => {
  const routesFrom = (segments: readonly Segment[], wishes: RouteOptions): Routes => {
    const found = ditch(segments, wishes)
    checkRoutes(segments, found)
    return found
  }

  it('is at the nearest seam point whatever it costs, and then costs no more than it must', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const part = partsOf(small(seed)).sort((a, b) => b.length - a.length)[0] as Segment[]
      const { from } = leastOfAll(part)
      for (const start of new Map(part.flat().map((dot) => [dot.join(), dot])).values()) {
        const found = routesFrom(part, { begin: start, atAnyCost: true })
        expect(found.routes[0]?.points[0]).toEqual(start)
        expect(found.retraced, `case ${seed}, from ${start}`).toBeCloseTo(from.get(start.join()) as number, 9)
      }
    }
  })

  it('is at the nearest of the points where beginning costs nothing', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const part = partsOf(small(seed)).sort((a, b) => b.length - a.length)[0] as Segment[]
      const { least, from } = leastOfAll(part)
      const free = part.flat().filter((dot) => (from.get(dot.join()) as number) <= least + 1e-9)
      const begin: Dot = [0, 0]
      const found = routesFrom(part, { begin })
      expect(found.retraced, `case ${seed}`).toBeCloseTo(least, 9)
      const away = Math.min(...free.map((dot) => Math.hypot(...dot)))
      expect(Math.hypot(...startOf(found)), `case ${seed}`).toBeCloseTo(away, 9)
    }
  })

  it.each([
    ['topLeft', 0],
    ['topRight', 1],
    ['bottomRight', 2],
    ['bottomLeft', 3],
  ] as const)('is, at the %s of a star, no farther from there than from any other corner', (corner, place) => {
    const [x, y] = startOf(quiltingRoute(star(plain, { quilting: { begin: corner } })))
    const away = [
      [0, 0],
      [4, 0],
      [4, 4],
      [0, 4],
    ].map(([cx, cy]) => Math.hypot(x - (cx as number), y - (cy as number)))
    expect(away[place]).toBeCloseTo(Math.min(...away), 9)
  })

  it('is in the centre where that costs nothing, and otherwise only on request', () => {
    // One cross of two seams: its four ends are odd, its middle is not; begun there, one arm more is stitched twice.
    const cross = blockOf(2, 2, [square('a', [0, 0]), square('b', [1, 0], [1, 1], 'b'), square('c', [0, 1], [1, 1], 'b'), square('d', [1, 1])])
    const free = quiltingRoute(cross)
    const centred = quiltingRoute({ ...cross, quilting: { begin: 'centre' } })
    expect(free.retraced).toBe(2 * 3)
    expect(centred.retraced).toBe(3 * 3)
    expect(centred.routes[0]?.points[0]).toEqual([1, 1])
    const laid = lay(cross)
    expect(quilt(laid, planeOf(laid), { begin: 'centre' }).retraced).toBe(free.retraced)
    // All points of a star's seams are even, so it may begin anywhere; nearest the centre are the tips of its geese.
    const [x, y] = startOf(quiltingRoute(star(plain)))
    expect(Math.hypot(x - 2, y - 2)).toBeCloseTo(1, 9)
  })
})

describe('the order of equally short routes', () => {
  /** The mean distance from the centre of one half of a line's stitches. */
  const meanAway = (points: readonly Dot[], [cx, cy]: Dot): [number, number] => {
    const lengths = points.slice(1).map((to, place) => lengthOf([points[place] as Dot, to]))
    const half = lengths.reduce((sum, length) => sum + length, 0) / 2
    let done = 0
    const sums = [
      [0, 0],
      [0, 0],
    ] as [[number, number], [number, number]]
    lengths.forEach((length, place) => {
      const [[ax, ay], [bx, by]] = [points[place] as Dot, points[place + 1] as Dot]
      const sum = sums[done < half ? 0 : 1]
      sum[0] += length * Math.hypot((ax + bx) / 2 - cx, (ay + by) / 2 - cy)
      sum[1] += length
      done += length
    })
    return [sums[0][0] / sums[0][1], sums[1][0] / sums[1][1]]
  }

  it('does the centre before the rim [S167]', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const segments = scattered(sequence(seed * 7), 7, 5, 0.9)
      for (const route of ditch(segments).routes) {
        if (route.points.length < 60) continue
        const points = round(route)
        const range = (axis: 0 | 1): number => {
          const along = segments.flat().map((dot) => dot[axis])
          return (Math.min(...along) + Math.max(...along)) / 2
        }
        const [first, second] = meanAway(points, [range(0), range(1)])
        expect(second, `case ${seed}`).toBeGreaterThan(first * 1.2)
      }
    }
  })

  it('turns no more often where few turns are requested, and is as long', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const segments = scattered(sequence(seed * 7), 7, 5, 0.9)
      const [outwards, straight] = [ditch(segments), ditch(segments, { order: 'straight' })]
      checkRoutes(segments, straight)
      expect(straight.turns).toBeLessThan(outwards.turns)
      expect(straight.retraced).toBeCloseTo(outwards.retraced, 9)
    }
  })

  it('begins with the part nearest the centre', () => {
    const box = (x: number, y: number, size: number): Segment[] => [
      [
        [x, y],
        [x + size, y],
      ],
      [
        [x + size, y],
        [x + size, y + size],
      ],
      [
        [x + size, y + size],
        [x, y + size],
      ],
      [
        [x, y + size],
        [x, y],
      ],
    ]
    const { routes, starts } = ditch([...box(0, 0, 2), ...box(18, 18, 2), ...box(9, 9, 2)])
    expect(starts).toBe(3)
    expect(routes[0]?.points).toContainEqual([9, 9])
    expect(routes.map(({ turns }) => turns)).toEqual([3, 3, 3])
  })
})
