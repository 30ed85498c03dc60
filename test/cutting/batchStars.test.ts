import { describe, expect, it } from 'vitest'
import { batchOf, leastBatches, type Wings } from '../../geometry/cutting/batches/geeseBatches.ts'
import { starsIn, starsOfOneBatch } from '../../geometry/cutting/batches/batchStars.ts'
import { report } from '../../geometry/report/wholeReport.ts'
import { blockOf, sequence, star } from '../help.ts'

type Corners = Parameters<typeof starsOfOneBatch>[0]

const turned = (wings: readonly Wings[], by: number): string => [...wings.slice(by), ...wings.slice(0, by)].join(' ')
const upToTurning = (wings: readonly Wings[]): string => [0, 1, 2, 3].map((by) => turned(wings, by)).sort()[0] as string

/** Every order of four things. */
function ordersOf<T>(things: readonly T[]): T[][] {
  if (things.length < 2) return [[...things]]
  return things.flatMap((thing, place) => ordersOf([...things.slice(0, place), ...things.slice(place + 1)]).map((rest) => [thing, ...rest]))
}

describe('stars of one batch', () => {
  it.each([
    [['a', 'a', 'a', 'a'], 1],
    [['a', 'a', 'a', 'b'], 3],
    [['a', 'b', 'a', 'b'], 2],
    [['a', 'a', 'b', 'b'], 6],
    [['a', 'b', 'c', 'd'], 6],
  ] as const)('%j: as many as by trying every order: by counting', (corners, many) => {
    const stars = starsOfOneBatch(corners as Corners)
    const makes = batchOf('', corners as Corners).makes
    expect(new Set(stars.map(upToTurning))).toEqual(new Set(ordersOf(makes).map(upToTurning)))
    expect(stars).toHaveLength(many)
  })

  it('each take one batch, whatever the corners, and lie in the block as listed', () => {
    const next = sequence(3)
    const pick = (): string => ['a', 'b', 'c', 'd'][Math.floor(next() * 4)] as string
    for (let turn = 0; turn < 8; turn++) {
      for (const wings of starsOfOneBatch([pick(), pick(), pick(), pick()])) {
        expect(leastBatches('', wings)).toMatchObject({ atLeast: 1, proved: true, batches: [{}] })
        expect(report(star(wings)).units.find(({ method }) => method === 'geese-4')?.batches).toHaveLength(1)
      }
    }
  })

  it('the first has, where two geese with their tips inward meet, wings of one fabric', () => {
    const [first] = starsOfOneBatch(['a', 'b', 'c', 'd'])
    expect(first?.map(([left], place) => left === first[(place + 1) % 4]?.[1])).toEqual([true, true, true, true])
  })
})

describe('the stars of a block', () => {
  const block = star([
    ['b', 'b'],
    ['b', 'c'],
    ['c', 'c'],
    ['c', 'b'],
  ])

  it('are found from the top, clockwise', () => {
    expect(starsIn(block)).toEqual([['g0', 'g1', 'g2', 'g3']])
  })

  it('are none where one goose is missing, or looks elsewhere', () => {
    expect(starsIn({ ...block, units: block.units.filter(({ id }) => id !== 'g2') })).toEqual([])
    const other = block.units.map((unit) => (unit.id === 'g3' && unit.kind === 'goose' ? { ...unit, turn: 3 as const } : unit))
    expect(starsIn({ ...block, units: other })).toEqual([])
  })

  it('are found with the tips outward, at thirds of a cell, and each by itself where two lie side by side', () => {
    const geese = ([0, 1, 2, 3] as const).flatMap((turn) =>
      [0, 6].map((right) => {
        const at = [
          [`${4 + 3 * right}/3`, '1/3'],
          [`${10 + 3 * right}/3`, '4/3'],
          [`${4 + 3 * right}/3`, '10/3'],
          [`${1 + 3 * right}/3`, '4/3'],
        ][turn] as [string, string]
        const size: [number, number] = turn % 2 === 0 ? [2, 1] : [1, 2]
        return { id: `g${turn}-${right}`, kind: 'goose' as const, at, size, turn, fabrics: { goose: 'a', leftWing: 'b', rightWing: 'c' } }
      }),
    )
    expect(starsIn(blockOf(12, 6, geese))).toEqual([0, 6].map((right) => [0, 1, 2, 3].map((turn) => `g${turn}-${right}`)))
  })
})
