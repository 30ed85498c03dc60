/** The block as it comes together: nothing lies on anything, what is joined stays joined, and at the end it is the block. */
import ClipperLib from 'clipper-lib'
import { describe, expect, it } from 'vitest'
import { type Block, type Findings, findings } from '../../../geometry/index.ts'
import { type Point, pointOf } from '../../../web/document/shapes.ts'
import { assembly } from '../../../web/views/assembly.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'
import { lantern } from '../../../web/document/starters/lantern.ts'
import { blockOf, sequence, square } from '../../help.ts'
import { tiling } from '../../layouts.ts'
import { paperBoat } from './paperBoat.ts'

const random = sequence(71)
const tilings = Array.from({ length: 6 }, (_, index): readonly [string, Block] => [`tiling ${index}`, blockOf(4, 3, tiling(random, 4, 3))])
const bordered: Block = { ...eveningStar, borders: [{ finishedWidth: 1, fabric: eveningStar.fabrics[0]?.id ?? '' }] }
const BLOCKS: readonly (readonly [string, Block])[] = [
  ['star', eveningStar],
  ['bordered', bordered],
  ['lantern', lantern],
  ['boat', paperBoat],
  ...tilings,
]

/** Where the patches lie at a step. */
function patchesAt(report: Findings, block: Block, step: number, part: number): readonly (readonly Point[])[] {
  return assembly(report, block, step, part).drawing.flatMap(({ type, outlines: rings = [] }) => (type === 'edge' ? rings : []))
}

const GRAIN = 1e6
const path = (ring: readonly Point[]) => ring.map(([x, y]) => ({ X: Math.round(x * GRAIN), Y: Math.round(y * GRAIN) }))

/** Square cells that two rings have in common, by a polygon library that is not ours. */
function common(a: readonly Point[], b: readonly Point[]): number {
  const clipper = new ClipperLib.Clipper()
  clipper.AddPath(path(a), ClipperLib.PolyType.ptSubject, true)
  clipper.AddPath(path(b), ClipperLib.PolyType.ptClip, true)
  const found: ClipperLib.Path[] = []
  clipper.Execute(ClipperLib.ClipType.ctIntersection, found)
  return found.reduce((sum, one) => sum + Math.abs(ClipperLib.Clipper.Area(one)), 0) / GRAIN ** 2
}

describe.each(BLOCKS)('%s', (_, block) => {
  const report = findings(block)
  const joins = report.joins.length

  it('lies side by side at every step, halfway too', () => {
    expect(joins).toBeGreaterThan(0)
    for (let step = 0; step <= joins; step += 3)
      for (const part of [0, 0.5, 1]) {
        const rings = patchesAt(report, block, step, part)
        expect(rings.length).toBe(report.patches.length)
        rings.forEach((ring, index) => {
          for (const other of rings.slice(index + 1)) expect(common(ring, other)).toBeLessThan(1e-5)
        })
      }
  })

  it('is the block once all is joined, and reaches no further than it says before', () => {
    const last = patchesAt(report, block, joins, 1)
      .map((ring) => ring.map((at) => at.map((value) => value.toFixed(9)).join(' ')).join())
      .sort()
    const laid = report.patches
      .map(({ corners }) =>
        corners
          .map((corner) =>
            pointOf(corner)
              .map((value) => value.toFixed(9))
              .join(' '),
          )
          .join(),
      )
      .sort()
    expect(last).toEqual(laid)
    const [x0, y0, x1, y1] = assembly(report, block, 0, 1).reach
    for (let step = 0; step <= joins; step++)
      for (const [x, y] of patchesAt(report, block, step, 0.3).flat()) {
        expect([x >= x0 - 1e-9, y >= y0 - 1e-9, x <= x1 + 1e-9, y <= y1 + 1e-9]).toEqual([true, true, true, true])
      }
  })
})

describe('a piece set into a corner', () => {
  it('comes from outside, off the cloth that it is set into', () => {
    const corner = {
      id: 'l',
      kind: 'polygon',
      corners: [
        [0, 0],
        [3, 0],
        [3, 1],
        [1, 1],
        [1, 3],
        [0, 3],
      ],
      fabrics: { patch: 'a' },
    } as const
    const block = blockOf(3, 3, [corner, square('s', [1, 1], [2, 2], 'b')])
    const report = findings(block)
    expect(report.crooked.setIn).toBe(1)
    const [one, other] = patchesAt(report, block, 1, 0) as [readonly Point[], readonly Point[]]
    expect(common(one, other)).toBeLessThan(1e-5)
  })
})
