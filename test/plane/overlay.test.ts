/** Outlines laid over each other, judged by counting which of them hold a point. */
import { describe, expect, it } from 'vitest'
import { overlay, type PatchSide } from '../../geometry/plane/overlay.ts'
import type { Stretch } from '../../geometry/plane/intersections.ts'
import { type Dot, doubleArea, insidePolygon } from '../../geometry/plane/points.ts'
import { Points } from '../../geometry/plane/vertices.ts'
import { sequence } from '../help.ts'

/** The sides of a clockwise polygon: each adds one to what lies on its inside. */
function stretchesOf(points: Points, corners: readonly Dot[]): Stretch[] {
  return corners.flatMap((from, place): Stretch[] => {
    const to = corners[(place + 1) % corners.length] as Dot
    if (from[0] === to[0] && from[1] === to[1]) return []
    const right = from[0] < to[0] || (from[0] === to[0] && from[1] < to[1])
    const [a, b] = right ? [from, to] : [to, from]
    return [{ line: points.line(a, b), from: points.dot(a), to: points.dot(b), jump: right ? 1 : -1 }]
  })
}

function polygon(next: () => number, size: number): Dot[] {
  for (;;) {
    const corner = (): Dot => [Math.floor(next() * size), Math.floor(next() * size)]
    const corners = [corner(), corner(), corner()]
    const area = doubleArea(corners)
    if (area !== 0n) return area > 0n ? corners : corners.reverse()
  }
}

const inside = (corners: readonly Dot[], x: number, y: number): boolean => {
  let odd = false
  corners.forEach(([ax, ay], place) => {
    const [bx, by] = corners[(place + 1) % corners.length] as Dot
    if (ay <= y !== by <= y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) odd = !odd
  })
  return odd
}

describe('polygons laid over each other', () => {
  it('have faces over and under each edge that as many polygons hold as are counted', () => {
    const next = sequence(3)
    for (let run = 0; run < 150; run++) {
      const size = run % 2 === 0 ? 6 : 40
      const polygons = Array.from({ length: 4 }, () => polygon(next, size))
      const points = new Points()
      const { edges, sums, windows, same } = overlay(points, { groups: polygons.map((corners) => stretchesOf(points, corners)), windows: true })
      expect(sums[0]).toBe(0)
      for (const { from, to, above, below, jump } of edges) {
        const [x, y] = [(points.x(from) + points.x(to)) / 2, (points.y(from) + points.y(to)) / 2]
        const [dx, dy] = [points.x(to) - points.x(from), points.y(to) - points.y(from)]
        // So near the edge that nothing lies between, and to its right, which is below an edge that runs right.
        const step = 1e-7 / Math.hypot(dx, dy)
        const count = (sign: 1 | -1): number => polygons.filter((corners) => inside(corners, x - sign * dy * step, y + sign * dx * step)).length
        expect(sums[below]).toBe(count(1))
        expect(sums[above]).toBe(count(-1))
        expect((sums[below] as number) - (sums[above] as number)).toBe(jump)
      }
      for (const [one, other] of same) expect(sums[one]).toBe(sums[other])
      // A window is looked at between two upright lines: its middle lies in its face.
      for (const [face, { top, bottom, left, right }] of windows) {
        const x = (points.x(left) + points.x(right)) / 2
        const at = ({ from, to }: { from: number; to: number }): number =>
          points.y(from) + ((x - points.x(from)) / (points.x(to) - points.x(from))) * (points.y(to) - points.y(from))
        expect(polygons.filter((corners) => inside(corners, x, (at(top) + at(bottom)) / 2)).length).toBe(sums[face])
        expect(top.below).toBe(face)
      }
    }
  })

  it('that lie on each other are one outline, counted twice; one that is taken off again divides nothing', () => {
    const corners: Dot[] = [
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ]
    const points = new Points()
    const own = stretchesOf(points, corners)
    const twice = overlay(points, { groups: [own, own] })
    expect(twice.edges).toHaveLength(4)
    expect(Math.max(...twice.sums)).toBe(2)
    const none = overlay(points, { groups: [own, own.map((stretch) => ({ ...stretch, jump: -stretch.jump }))] })
    // An edge alone where nothing is added may stay: it parts nothing.
    for (const { jump, above, below } of none.edges) expect([jump, none.sums[above]]).toEqual([0, none.sums[below]])
    expect(new Set(none.sums)).toEqual(new Set([0]))
  })

  it('say in which face a patch has its fabric along each side', () => {
    const points = new Points()
    const outer: Dot[] = [
      [0, 0],
      [4, 0],
      [4, 4],
      [0, 4],
    ]
    const inner: Dot[] = [
      [1, 1],
      [3, 1],
      [2, 3],
    ]
    const sides = stretchesOf(points, inner).map((stretch): PatchSide => ({ ...stretch, jump: 0, patch: 7, below: stretch.jump > 0 }))
    const { held, sums } = overlay(points, { groups: [stretchesOf(points, outer)], sides })
    expect(new Set(held.map(({ patch }) => patch))).toEqual(new Set([7]))
    expect(held.length).toBeGreaterThanOrEqual(3)
    for (const { face } of held) expect(sums[face]).toBe(1)
    expect(insidePolygon(outer, inner[0] as Dot)).toBe(1)
  })
})
