/** The block as it comes together: nothing lies on anything, what is joined stays joined, and at the end it is the block. */
import ClipperLib from 'clipper-lib'
import { describe, expect, it } from 'vitest'
import { type Block, report } from '../../../geometry/index.ts'
import { type Point, pointOf } from '../../../web/document/shapes.ts'
import { assembly } from '../../../web/views/assembly.ts'
import { inSteps, type SewingInSteps } from '../../../web/views/useSewingSteps.ts'
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

const assemblyAt = ({ report: said, block, steps, letters }: SewingInSteps, step: number, part: number) =>
  assembly(said, block, { steps: steps.map(({ places }) => ({ joins: places })), step, part }, letters)

/** Where the patches lie at a step. */
function patchesAt(sewing: SewingInSteps, step: number, part: number): readonly (readonly Point[])[] {
  return assemblyAt(sewing, step, part).drawing.flatMap(({ type, outlines: rings = [] }) => (type === 'edge' ? rings : []))
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
  const sewing = inSteps(report(block), block)
  const last = sewing.steps.length
  const { patches } = sewing.report

  it('lies side by side at every step, halfway too', () => {
    expect(last).toBeGreaterThan(0)
    for (let step = 0; step <= last; step++)
      for (const part of [0, 0.4, 1]) {
        const rings = patchesAt(sewing, step, part)
        expect(rings.length).toBe(patches.length)
        rings.forEach((ring, index) => {
          for (const other of rings.slice(index + 1)) expect(common(ring, other)).toBeLessThan(1e-5)
        })
      }
  })

  it('is the block once all is joined, and reaches no further than it says before', () => {
    const joined = patchesAt(sewing, last, 1)
      .map((ring) => ring.map((at) => at.map((value) => value.toFixed(9)).join(' ')).join())
      .sort()
    const laid = patches
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
    expect(joined).toEqual(laid)
    const [x0, y0, x1, y1] = assemblyAt(sewing, 0, 1).reach
    for (let step = 0; step <= last; step++)
      for (const [x, y] of patchesAt(sewing, step, 0.3).flat()) {
        expect([x >= x0 - 1e-9, y >= y0 - 1e-9, x <= x1 + 1e-9, y <= y1 + 1e-9]).toEqual([true, true, true, true])
      }
  })
})

describe('a star step by step', () => {
  const sewing = inSteps(report(eveningStar), eveningStar)

  it('makes all geese in one step, then grows row by row', () => {
    const [geese] = sewing.steps
    expect(geese?.units.length).toBe(4)
    expect(geese?.places.length).toBe(8)
    const lines = (step: number, part: number) => assemblyAt(sewing, step, part).drawing.filter(({ type }) => type === 'press').length
    // In the middle of the step one wing of each goose is on; at its end both are.
    expect(lines(1, 0.5)).toBe(4)
    expect(lines(1, 1)).toBe(8)
    expect(lines(sewing.steps.length, 1)).toBe(sewing.steps.at(-1)?.places.length)
  })

  it('has the letters of its units where they are sewn', () => {
    const texts = assemblyAt(sewing, 1, 1).drawing.flatMap(({ type, text }) => (type === 'number' ? [text] : []))
    expect(texts).toEqual(['C', 'C', 'C', 'C'])
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
    const sewing = inSteps(report(block), block)
    expect(sewing.report.crooked.setIn).toBe(1)
    const [one, other] = patchesAt(sewing, sewing.steps.length, 0) as [readonly Point[], readonly Point[]]
    expect(common(one, other)).toBeLessThan(1e-5)
  })
})
