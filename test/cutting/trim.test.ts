import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BoxUnit, Turn } from '../../geometry/values/block.ts'
import { HANDS, type RulerCut, trimCuts } from '../../geometry/cutting/sizes/trim.ts'
import { blockOf } from '../help.ts'

const FABRICS: Partial<Record<BoxUnit['kind'], BoxUnit['fabrics']>> = {
  hst: { upper: 'a', lower: 'b' },
  'half-rectangle': { upper: 'a', lower: 'b' },
  hourglass: { top: 'a', right: 'b', bottom: 'a', left: 'b' },
  goose: { goose: 'a', leftWing: 'b', rightWing: 'b' },
  diamond: { centre: 'a', topLeft: 'b', topRight: 'b', bottomRight: 'b', bottomLeft: 'b' },
  cornered: { centre: 'a', topRight: 'b' },
  strips: { strip1: 'a', strip2: 'b' },
  square: { patch: 'a' },
}
const unit = (kind: BoxUnit['kind'], size: readonly [number, number], more: Partial<BoxUnit> = {}): BoxUnit => ({
  id: 'u',
  kind,
  at: [1, 1],
  size,
  fabrics: FABRICS[kind] as BoxUnit['fabrics'],
  ...more,
})
/** Cells of 2 in. */
const cuts = (one: BoxUnit, hand: (typeof HANDS)[number]): RulerCut[] =>
  trimCuts(one, blockOf(8, 8, [one], { grid: { columns: 8, rows: 8, cell: 2 } }), hand)
const points = (cut: RulerCut | undefined): string[] => (cut?.points ?? []).map(({ type, at }) => `${type} ${at.fromSide} ${at.fromTop}`).sort()

describe('where the ruler lies', () => {
  it('a goose 4 by 2: the tip 1/4 below the edge, at half of 4 1/2, the seams at 45° [S17][S8]', () => {
    for (const hand of HANDS) {
      const [first, second] = cuts(unit('goose', [2, 1]), hand)
      expect(first).toMatchObject({ turn: 0, edges: [hand, 'top'], size: [4.5, 2.5] })
      expect(points(first)).toContain('tip 2.25 0.25')
      expect(first?.seams.map(({ angle }) => angle)).toEqual([45, 45])
      // Then base up: a seam runs out of the trimming corner, the tip an allowance inside the line of the height.
      expect(second).toMatchObject({ turn: 2, size: [4.5, 2.5] })
      expect(points(second)).toContain('tip 2.25 2.25')
      expect(second?.seams.flatMap(({ ends }) => ends)).toContainEqual({ fromSide: 0, fromTop: 0 })
    }
  })

  it.each(HANDS)(
    'a half-square triangle for a %s hand: the seam runs out of the trimming corner to the far one; common practice, no source',
    (hand) => {
      for (const mirror of [false, true]) {
        for (const cut of cuts(unit('hst', [1, 1], { mirror }), hand)) {
          const ends = cut.seams[0]?.ends.map(({ fromSide, fromTop }) => [fromSide, fromTop]).sort()
          expect(ends).toEqual([
            [0, 0],
            [2.5, 2.5],
          ])
        }
      }
    },
  )

  it('an hourglass: its middle at half the unfinished size; geometry', () => {
    expect(points(cuts(unit('hourglass', [2, 2]), 'right')[0])).toContain('middle 2.25 2.25')
  })

  it('a half rectangle 2 by 4: the seam passes 1/4 in from both sides of the corners, dots at 1/4, 1/4 and 2 1/4, 4 1/4 [S46]', () => {
    expect(points(cuts(unit('half-rectangle', [1, 2]), 'right')[0])).toEqual(['end 0.25 0.25', 'end 2.25 4.25'])
    // A left hand turns it: what was high is wide.
    expect(points(cuts(unit('half-rectangle', [1, 2]), 'left')[0])).toEqual(['end 0.25 0.25', 'end 4.25 2.25'])
  })

  it('a square in a square: four tips at the middles of the sides, an allowance inside; geometry', () => {
    expect(points(cuts(unit('diamond', [2, 2]), 'right')[0])).toEqual(['tip 0.25 2.25', 'tip 2.25 0.25', 'tip 2.25 4.25', 'tip 4.25 2.25'])
  })

  it('squares and strips have no line to lay the ruler on', () => {
    expect([cuts(unit('square', [1, 1]), 'right'), cuts(unit('strips', [1, 1]), 'left')]).toEqual([[], []])
  })

  it('a left hand sees the mirror image; how the unit is turned in the block changes nothing', () => {
    const turns = fc.constantFrom<Turn>(0, 1, 2, 3)
    const kinds = fc.constantFrom<[BoxUnit['kind'], [number, number], Partial<BoxUnit>]>(
      ['hst', [1, 1], {}],
      ['goose', [2, 1], {}],
      ['hourglass', [2, 2], {}],
      ['cornered', [3, 2], { corner: 1 }],
      ['half-rectangle', [1, 3], {}],
    )
    fc.assert(
      fc.property(kinds, turns, fc.boolean(), ([kind, [wide, high], more], turn, mirror) => {
        const plain = unit(kind, [wide, high], { ...more, mirror })
        const turned = unit(kind, turn % 2 === 0 ? [wide, high] : [high, wide], { ...more, mirror, turn })
        expect(cuts(turned, 'right')).toEqual(cuts(plain, 'right'))
        const mirrored = unit(kind, [wide, high], { ...more, mirror: !mirror })
        const seen = (cut: RulerCut | undefined) => [...points(cut), ...(cut?.size ?? [])]
        expect(cuts(mirrored, 'left').map(seen)).toEqual(cuts(plain, 'right').map(seen))
      }),
      { numRuns: 60 },
    )
  })
})
