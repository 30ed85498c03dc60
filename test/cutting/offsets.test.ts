/**
 * Every piece of the method `plain` derived again from the patch itself: its outline moved out by one allowance, corners mitred, must lie in what is cut,
 * and in nothing a step smaller. Nothing is known here of add-ons. Source: geometry; full corners, as templates are drawn, common practice, no source.
 */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BoxUnit, Unit } from '../../geometry/values/block.ts'
import { toNumber } from '../../geometry/exact/rational.ts'
import { report } from '../../geometry/report/wholeReport.ts'
import { shapeAtRest } from '../../geometry/units/kinds.ts'
import type { CutRow } from '../../geometry/values/report.ts'
import { blockOf } from '../help.ts'
import { sidesOf, type Spot, withAllowances } from './paper.ts'

const NAMES: Partial<Record<Unit['kind'], readonly string[]>> = {
  square: ['patch'],
  hst: ['upper', 'lower'],
  hourglass: ['top', 'right', 'bottom', 'left'],
  goose: ['goose', 'leftWing', 'rightWing'],
  diamond: ['centre', 'topLeft', 'topRight', 'bottomRight', 'bottomLeft'],
  cornered: ['centre', 'topLeft', 'bottomRight'],
  strips: ['strip1', 'strip2', 'strip3'],
  'half-rectangle': ['upper', 'lower'],
}
/** A fabric for each patch, so that each has a row of its own. */
const FABRICS = ['a', 'b', 'c', 'd', 'e'].map((id) => ({ id, name: id, colour: '#888888' }))

const FAR = 1e4
const EVERYWHERE: Spot[] = [
  [-FAR, -FAR],
  [FAR, -FAR],
  [FAR, FAR],
  [-FAR, FAR],
]

/** Width and height of a shape along a direction and across it. */
function reach(shape: readonly Spot[], [dx, dy]: Spot): Spot {
  const along = shape.map(([x, y]) => x * dx + y * dy)
  const across = shape.map(([x, y]) => y * dx - x * dy)
  return [Math.max(...along) - Math.min(...along), Math.max(...across) - Math.min(...across)]
}

const kinds = fc.constantFrom(...(Object.keys(NAMES) as BoxUnit['kind'][]))
const sizes = fc.integer({ min: 8, max: 80 }).map((eighths) => eighths / 8)
const seams = fc.constantFrom(1 / 4, 3 / 8, 0.3, 1 / 8)

describe('pieces cut one by one', () => {
  it('hold each patch with its allowances, and would not a step smaller', () => {
    fc.assert(
      fc.property(kinds, sizes, sizes, seams, fc.constantFrom(1 / 8, 1 / 16, 0.1), (kind, wide, other, seam, round) => {
        const high = kind === 'goose' ? wide / 2 : ['square', 'strips', 'half-rectangle'].includes(kind) ? other : wide
        const fabrics = Object.fromEntries((NAMES[kind] as string[]).map((name, place) => [name, FABRICS[place]?.id as string]))
        const unit: BoxUnit = {
          id: 'u',
          kind,
          at: [0, 0],
          size: [wide, high],
          method: 'plain',
          fabrics,
          ...(kind === 'cornered' ? { corner: wide / 4 } : {}),
        }
        const { cut } = report(
          blockOf(20, 20, [unit], { grid: { columns: 20, rows: 20, cell: 1 }, fabrics: FABRICS, measure: { unit: 'in', seam, round } }),
        )
        for (const { name, corners } of shapeAtRest(unit).patches) {
          const row = cut.find(({ fabric }) => fabric === fabrics[name]) as CutRow
          const patch = corners.map(([x, y]): Spot => [toNumber(x), toNumber(y)])
          const grown = withAllowances(patch, EVERYWHERE, seam)
          const [w, h] = reach(grown, [1, 0])
          const [cutW, cutH] = row.size
          const said = `${kind} ${name} ${wide} by ${high}, seam ${seam}`
          const about = (needed: number, cutSize: number, exact: boolean): void => {
            if (exact) return expect(cutSize, said).toBeCloseTo(needed, 3)
            expect(cutSize, said).toBeGreaterThanOrEqual(needed - 1e-9)
            expect(cutSize - round, said).toBeLessThan(needed)
          }
          if (row.then === 'none' && kind === 'diamond') {
            const [n] = sidesOf(patch)
            for (const [place, needed] of reach(grown, n?.n as Spot).entries()) about(needed, [cutW, cutH][place] as number, true)
          } else if (row.then === 'quarter') about(Math.max(w, h), cutW, false)
          else {
            about(w, cutW, row.then === 'none')
            about(h, cutH, row.then === 'none')
          }
        }
      }),
      { numRuns: 300 },
    )
  })
})
