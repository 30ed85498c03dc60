import clipper from 'clipper-lib'
import { describe, expect, it } from 'vitest'
import type { Unit } from '../../geometry/values/block.ts'
import { report } from '../../geometry/report/wholeReport.ts'
import { blockOf, sequence, square } from '../help.ts'

describe('what does not lie as it should', () => {
  it('finds a gap, its area and a point in it', () => {
    const { problems } = report(blockOf(2, 2, [square('a', [0, 0]), square('b', [1, 0]), square('c', [0, 1])]))
    expect(problems).toMatchObject([{ code: 'gap', area: 1, units: [] }])
    const [x, y] = (problems[0] as (typeof problems)[number]).at as [number, number]
    expect(x >= 1 && y >= 1).toBe(true)
  })

  it('counts a point under three units once, and names all three', () => {
    const { problems } = report(blockOf(1, 1, [square('a', [0, 0]), square('b', [0, 0]), square('c', [0, 0])]))
    expect(problems).toMatchObject([{ code: 'overlap', area: 1, units: ['a', 'b', 'c'] }])
  })

  it('finds fabric beyond the grid, with borders or without', () => {
    const lone = blockOf(1, 1, [square('a', [0, 0]), square('b', [1, 0])])
    for (const borders of [[], [{ finishedWidth: 1, fabric: 'b' }]])
      expect(report({ ...lone, borders }).problems.map(({ code }) => code)).toContain('outside')
  })

  it.each(Array.from({ length: 40 }, (_, seed) => seed + 1))(
    'areas agree with an independent polygon library, clipper-lib 6.4.2 (layout %i)',
    (seed) => {
      const next = sequence(seed)
      const units: Unit[] = Array.from({ length: 5 }, (_, index) => {
        const corner = (): [number, number] => [Math.floor(next() * 9) / 2 - 0.5, Math.floor(next() * 9) / 2 - 0.5]
        const corners = [corner(), corner(), corner()] as const
        const [a, b, c] = corners
        const flat = (b[0] - a[0]) * (c[1] - a[1]) === (b[1] - a[1]) * (c[0] - a[0])
        return flat ? square(`u${index}`, [0, 0]) : { id: `u${index}`, kind: 'polygon', corners, fabrics: { patch: 'a' } }
      })
      const { problems } = report(blockOf(3, 3, units))
      const area = (code: string): number =>
        problems.filter((problem) => problem.code === code).reduce((sum, problem) => sum + (problem.area as number), 0)
      const SCALE = 1e7
      const path = (points: readonly (readonly [number, number])[]): clipper.IntPoint[] =>
        points.map(([x, y]) => ({ X: Math.round(x * SCALE), Y: Math.round(y * SCALE) }))
      const outlines = units.map((unit) =>
        path(
          unit.kind === 'polygon'
            ? (unit.corners as [number, number][])
            : [
                [0, 0],
                [1, 0],
                [1, 1],
                [0, 1],
              ],
        ),
      )
      const wound = outlines.map((outline) => (clipper.Clipper.Orientation(outline) ? outline : [...outline].reverse()))
      const grid = path([
        [0, 0],
        [3, 0],
        [3, 3],
        [0, 3],
      ])
      const sum = (type: clipper.ClipType, subject: clipper.IntPoint[][], clip: clipper.IntPoint[][]): number => {
        const engine = new clipper.Clipper()
        engine.AddPaths(subject, clipper.PolyType.ptSubject, true)
        engine.AddPaths(clip, clipper.PolyType.ptClip, true)
        const found: clipper.IntPoint[][] = []
        engine.Execute(type, found, clipper.PolyFillType.pftNonZero, clipper.PolyFillType.pftNonZero)
        return found.reduce((total, one) => total + clipper.Clipper.Area(one), 0) / SCALE ** 2
      }
      const { ctDifference, ctIntersection } = clipper.ClipType
      const pairs: clipper.IntPoint[][] = []
      wound.forEach((one, index) => {
        for (const other of wound.slice(index + 1)) {
          const engine = new clipper.Clipper()
          engine.AddPath(one, clipper.PolyType.ptSubject, true)
          engine.AddPath(other, clipper.PolyType.ptClip, true)
          const found: clipper.IntPoint[][] = []
          engine.Execute(ctIntersection, found, clipper.PolyFillType.pftNonZero, clipper.PolyFillType.pftNonZero)
          pairs.push(...found)
        }
      })
      expect(area('gap')).toBeCloseTo(sum(ctDifference, [grid], wound), 5)
      expect(area('outside')).toBeCloseTo(sum(ctDifference, wound, [grid]), 5)
      expect(area('overlap')).toBeCloseTo(sum(clipper.ClipType.ctUnion, pairs, []), 5)
    },
  )
})
