import { expect, it } from 'vitest'
import { hasRoom, pieceAt, unitsOver } from '../../../web/board/hitTest.ts'
import { inside, unitShapes } from '../../../web/document/shapes.ts'
import { manyUnits } from '../../bench/blocks.ts'
import { blockOf, square } from '../../help.ts'

it('finds the patch that asking every patch finds, the topmost of several', () => {
  const block = manyUnits(9)
  const over = { ...block, units: [...block.units, square('top', [3, 3], [2, 2])] }
  const all = over.units.flatMap((unit) => unitShapes(unit))
  for (let turn = 0; turn < 200; turn++) {
    const at = [((turn * 0.7319) % 9) + 0.003, ((turn * 1.9173) % 9) + 0.007] as const
    expect(pieceAt(over, at)).toEqual(all.findLast(({ corners }) => inside(corners, at)))
  }
})

it('lets free patches lie over others, and no two boxes', () => {
  const free = {
    id: 'p',
    kind: 'polygon',
    corners: [
      [0, 0],
      [2, 0],
      [0, 2],
    ],
    fabrics: { patch: 'a' },
  } as const
  const block = blockOf(4, 4, [free, square('s', [2, 2])])
  expect(hasRoom(block, [{ at: [0, 0], size: [1, 1] }], new Set())).toBe(true)
  expect(hasRoom(block, [{ at: [2, 2], size: [1, 1] }], new Set())).toBe(false)
  expect(hasRoom(block, [{ at: [2, 2], size: [1, 1] }], new Set(['s']))).toBe(true)
  expect(hasRoom(block, [{ at: [3.5, 0], size: [1, 1] }], new Set())).toBe(false)
  expect(
    unitsOver(block, { at: [1, 1], size: [1, 1] }).map(({ id }) => id),
    'an edge in common is nothing in common',
  ).toEqual(['p'])
})
