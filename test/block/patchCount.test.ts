/** The number of patches is what laying the block out gives, whatever its units and borders. */
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { lay } from '../../geometry/block/lay.ts'
import { patchCount } from '../../geometry/block/patchCount.ts'
import { hasLayers, type Unit } from '../../geometry/index.ts'
import { blockOf, sequence } from '../help.ts'
import { tiling } from '../layouts.ts'

it('counts the patches of units and borders as they are laid', () => {
  const borders = fc.array(fc.constantFrom({ finishedWidth: 1, fabric: 'a' }, { finishedWidth: 2, fabric: 'a', corner: 'b' }), { maxLength: 3 })
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e6 }), borders, (seed, around) => {
      const block = blockOf(4, 4, tiling(sequence(seed), 4, 4), { borders: around })
      expect(patchCount(block)).toBe(lay(block).patches.length)
    }),
    { numRuns: 50 },
  )
})

it('measures a block by its patches, not its units, where layers are to be counted', () => {
  const hourglasses = (count: number): Unit[] =>
    Array.from({ length: count }, (_, index) => ({
      id: `u${index}`,
      kind: 'hourglass',
      at: [index % 64, Math.floor(index / 64)],
      size: [1, 1],
      fabrics: { top: 'a', right: 'b', bottom: 'a', left: 'b' },
    }))
  expect(hasLayers(blockOf(64, 64, hourglasses(3_000)))).toBe(true)
  expect(hasLayers(blockOf(64, 64, hourglasses(4_000)))).toBe(false)
})
