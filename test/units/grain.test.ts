import { describe, expect, it } from 'vitest'
import type { BoxUnit, Unit } from '../../geometry/values/block.ts'
import { lieOf } from '../../geometry/units/fabricGrain.ts'
import { shapeOf } from '../../geometry/units/kinds.ts'
import { toNumber } from '../../geometry/exact/rational.ts'

const unit = (kind: BoxUnit['kind'], names: readonly string[], more: Partial<BoxUnit> = {}): BoxUnit => ({
  id: 'u',
  kind,
  at: [0, 0],
  size: [2, 2],
  fabrics: Object.fromEntries(names.map((name) => [name, 'a'])),
  ...more,
})
const CORNERS = ['topLeft', 'topRight', 'bottomRight', 'bottomLeft']

describe('how fabric lies', () => {
  it('turns with the unit, and is straight in a free patch', () => {
    for (const turn of [0, 1, 2, 3] as const) expect(lieOf(unit('square', ['patch'], { turn }), 'patch')).toBe(turn)
    const free: Unit = {
      id: 'p',
      kind: 'polygon',
      corners: [
        [0, 0],
        [1, 0],
        [0, 1],
      ],
      fabrics: { patch: 'a' },
    }
    expect(lieOf(free, 'patch')).toBe(0)
  })

  it.each([
    // unit                                                              patch      half a quarter   why
    [unit('diamond', ['centre', ...CORNERS]), 'centre', true, 'a square set on point: common practice, no source'],
    [
      unit('diamond', ['centre', ...CORNERS], { method: 'corner-flip' }),
      'centre',
      false,
      'the whole square is cut straight: common practice, no source',
    ],
    [unit('diamond', ['centre', ...CORNERS]), 'topLeft', false, 'a square cut once: common practice, no source'],
    [unit('hst', ['upper', 'lower'], { method: 'hst-4' }), 'upper', true, 'outside edges on the bias [S33]'],
    [unit('hst', ['upper', 'lower'], { method: 'hst-2' }), 'lower', false, 'a square cut once [S37]'],
    [unit('hst', ['upper', 'lower']), 'lower', false, 'two at a time unless the maker says otherwise'],
  ] as const)('row %#', (one, patch, onPoint, why) => {
    for (const turn of [0, 1, 2, 3] as const) expect(lieOf({ ...one, turn }, patch), why).toBe(turn + (onPoint ? 0.5 : 0))
  })

  it('follows an edge of the patch along or across the grain, whatever the kind', () => {
    // A patch cut with some edge along the grain has an edge that runs as its fabric lies, or square to that: common practice, no source.
    const all = [
      unit('square', ['patch']),
      unit('hst', ['upper', 'lower']),
      unit('hourglass', ['top', 'right', 'bottom', 'left']),
      unit('goose', ['goose', 'leftWing', 'rightWing'], { size: [2, 1] }),
      unit('diamond', ['centre', ...CORNERS]),
      unit('half-rectangle', ['upper', 'lower'], { size: [1, 2] }),
    ]
    for (const one of all)
      for (const { name, corners } of shapeOf(one).patches) {
        const lie = (lieOf(one, name) * Math.PI) / 2
        const straight = corners.some(([x, y], at) => {
          const [nx, ny] = corners[(at + 1) % corners.length] as (typeof corners)[number]
          const angle = Math.atan2(toNumber(ny) - toNumber(y), toNumber(nx) - toNumber(x)) - lie
          return Math.abs(Math.sin(2 * angle)) < 1e-9
        })
        expect(straight, `${one.kind} ${name}`).toBe(true)
      }
  })
})
