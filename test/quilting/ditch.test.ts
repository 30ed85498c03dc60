import { describe, expect, it } from 'vitest'
import type { Dot } from '../../geometry/plane/dots.ts'
import { ditch } from '../../geometry/quilting/ditch.ts'
import { leastPairing } from '../../geometry/quilting/matching.ts'
import { report } from '../../geometry/report.ts'
import { sequence, star } from '../help.ts'

const plain = [
  ['b', 'b'],
  ['b', 'b'],
  ['b', 'b'],
  ['b', 'b'],
] as const

/** The least sum over all pairings, one by one. */
function bestOfAll(left: readonly number[], cost: (a: number, b: number) => number): number {
  const [first, ...rest] = left
  if (first === undefined) return 0
  return Math.min(
    ...rest.map(
      (other) =>
        cost(first, other) +
        bestOfAll(
          rest.filter((one) => one !== other),
          cost,
        ),
    ),
  )
}

describe('the least pairing', () => {
  it.each(Array.from({ length: 60 }, (_, seed) => seed + 1))('equals the best of all pairings (case %i)', (seed) => {
    const next = sequence(seed)
    const count = 2 + 2 * (seed % 4)
    const costs = Array.from({ length: count }, () => Array.from({ length: count }, () => Math.floor(next() * (seed % 3 === 0 ? 5 : 1000))))
    const cost = (a: number, b: number): number => (costs[Math.min(a, b)] as number[])[Math.max(a, b)] as number
    const partner = leastPairing(count, cost)
    partner.forEach((other, one) => {
      expect(partner[other]).toBe(one)
    })
    const sum = partner.reduce((total, other, one) => (other > one ? total + cost(one, other) : total), 0)
    expect(sum).toBe(
      bestOfAll(
        partner.map((_, one) => one),
        cost,
      ),
    )
  })
})

describe('one line of quilting', () => {
  it.each([
    ['without a border', {}],
    ['with a border', { borders: [{ finishedWidth: 1, fabric: 'b' }] }],
  ])('draws a star with its tips to the centre in one go, nothing twice, %s: common practice, no source', (_, more) => {
    const { ditch: route } = report(star(plain, more))
    expect(route.routes).toHaveLength(1)
    expect(route.retraced).toBe(0)
  })

  it('stitches every seam, walks along seams only, and counts what it stitches twice', () => {
    const segments: [Dot, Dot][] = []
    for (let y = 1; y < 5; y++)
      for (let x = 0; x < 5; x++)
        segments.push([
          [x, y],
          [x + 1, y],
        ])
    for (let x = 1; x < 5; x++)
      for (let y = 0; y < 5; y++)
        segments.push([
          [x, y],
          [x, y + 1],
        ])
    const { routes, retraced, length } = ditch(segments)
    const key = (a: Dot, b: Dot): string => [a.join(), b.join()].sort().join(' ')
    const known = new Set(segments.map(([a, b]) => key(a, b)))
    const walked = routes.flatMap(({ points, closed }) =>
      (closed ? [...points, points[0] as Dot] : points).slice(1).map((point, index) => key(points[index] as Dot, point)),
    )
    for (const one of walked) expect(known.has(one)).toBe(true)
    expect(new Set(walked).size).toBe(segments.length)
    expect(walked).toHaveLength(length)
    expect(length).toBe(segments.length + retraced)
    // Sixteen loose ends on the rim: the four pairs round the corners are two stitches apart, the four along the sides three; one of those stays open.
    expect(retraced).toBe(4 * 2 + 3 * 3)
  })
})
