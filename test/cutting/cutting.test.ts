import { describe, expect, it } from 'vitest'
import { batchOf, leastBatches } from '../../geometry/cutting/batches/geeseBatches.ts'
import { report } from '../../geometry/report/wholeReport.ts'
import { sequence, star } from '../help.ts'

const row = (wings: Parameters<typeof star>[0]) => report(star(wings)).units.find(({ method }) => method === 'geese-4')

describe('geese four at a time', () => {
  it('a goose 6 by 3 finished trims to 6 1/2 by 3 1/2, from 7 1/4 and 3 7/8 [S1][S2][S10]', () => {
    const said = report(
      star([
        ['b', 'b'],
        ['b', 'b'],
        ['b', 'b'],
        ['b', 'b'],
      ]),
    )
    expect(said.units.find(({ kind }) => kind === 'goose')).toMatchObject({ finished: [6, 3], unfinished: [6.5, 3.5], count: 4, spare: 0 })
    expect(said.cut.filter(({ method }) => method === 'geese-4').map(({ size, count }) => [size[0], count])).toEqual([
      [7.25, 1],
      [3.875, 4],
    ])
  })

  it('one batch of A, A, B, B makes AA, BB and two mixed ones that are mirror images: common practice, no source', () => {
    const { makes } = batchOf('goose', ['A', 'A', 'B', 'B'])
    expect(makes.map((pair) => pair.join('')).sort()).toEqual(['AA', 'AB', 'BA', 'BB'])
  })

  it('half a star in A and half in B takes one batch; four geese with A left and B right take two: common practice, no source', () => {
    expect(
      row([
        ['b', 'b'],
        ['b', 'c'],
        ['c', 'c'],
        ['c', 'b'],
      ]),
    ).toMatchObject({ spare: 0, batchesProved: true })
    expect(
      row([
        ['b', 'b'],
        ['b', 'c'],
        ['c', 'c'],
        ['c', 'b'],
      ])?.batches,
    ).toHaveLength(1)
    expect(
      row([
        ['b', 'c'],
        ['b', 'c'],
        ['b', 'c'],
        ['b', 'c'],
      ])?.batches,
    ).toHaveLength(2)
    expect(
      row([
        ['b', 'c'],
        ['b', 'c'],
        ['b', 'c'],
        ['b', 'c'],
      ])?.spare,
    ).toBe(4)
  })

  it.each(Array.from({ length: 30 }, (_, seed) => seed + 1))('are as few as any search finds (colouring %i)', (seed) => {
    const next = sequence(seed)
    const names = ['a', 'b', 'c'].slice(0, 2 + (seed % 2))
    const pick = (): string => names[Math.floor(next() * names.length)] as string
    const wanted = Array.from({ length: 1 + Math.floor(next() * 7) }, () => [pick(), pick()] as const)
    const { batches, proved } = leastBatches('goose', wanted)
    expect(proved).toBe(true)
    expect(batches).toHaveLength(
      fewest(
        wanted.map((pair) => pair.join()),
        names,
      ),
    )
  })
})

/** Every way to choose the batches, one more at a time. */
function fewest(wanted: readonly string[], names: readonly string[]): number {
  const walks = names.flatMap((a) =>
    names.flatMap((b) => names.flatMap((c) => names.map((d) => batchOf('', [a, b, c, d]).makes.map((pair) => pair.join())))),
  )
  let left = new Set([[...wanted].sort().join('|')])
  for (let count = 0; ; count++) {
    if (left.has('')) return count
    const next = new Set<string>()
    for (const key of left)
      for (const made of walks) {
        const rest = key.split('|')
        for (const one of made) if (rest.includes(one)) rest.splice(rest.indexOf(one), 1)
        next.add(rest.join('|'))
      }
    left = next
  }
}
