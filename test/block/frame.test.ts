/** Corner squares in borders: laid, sewn, cut. */
import { produce } from 'immer'
import { describe, expect, it } from 'vitest'
import { fabricsUsed, recolourAll, removeFabric, setOversize } from '../../geometry/edits/unitEdits.ts'
import { exchangeFabrics } from '../../geometry/edits/fabricEdits.ts'
import type { Border } from '../../geometry/values/block.ts'
import { report } from '../../geometry/report/wholeReport.ts'
import type { Report } from '../../geometry/values/report.ts'
import { star } from '../help.ts'

const WINGS = Array.from({ length: 4 }, () => ['b', 'b'] as const)
const framed = (borders: readonly Border[]): Report => report(star(WINGS, { borders }))
const BORDERS: readonly Border[] = [
  { finishedWidth: 1, fabric: 'b' },
  { finishedWidth: '2 1/2', fabric: 'c', corner: 'd' },
]

/** The pieces that each join takes, by the names of border patches and `block` for all that holds the block. */
function bordering({ joins, patches }: Report): string[] {
  const made = new Map(patches.map(({ id, unit, name }) => [id, unit === null ? name : 'block']))
  return joins.flatMap(({ id, stage, sides }) => {
    const names = sides.map((side) => made.get(side) as string)
    made.set(id, names.includes('block') ? 'block' : names.join('-'))
    return stage === 'border' ? [names.join(' + ')] : []
  })
}

describe('corner squares', () => {
  it('are sewn to the ends of top and bottom, which are then joined; sides first [S128]', () => {
    expect(bordering(framed(BORDERS))).toEqual([
      ...['left', 'right', 'top', 'bottom'].map((name) => `block + ${name}`),
      ...['left', 'right'].map((name) => `block + ${name}`),
      ...['topLeft + top', 'topLeft-top + topRight', 'block + topLeft-top-topRight'],
      ...['bottomLeft + bottom', 'bottomLeft-bottom + bottomRight', 'block + bottomLeft-bottom-bottomRight'],
    ])
  })

  it('leave one join less than patches, no piece used twice, all of them straight, and the size as it was', () => {
    const [with4, without] = [framed(BORDERS), framed(BORDERS.map(({ corner: _, ...border }) => border))]
    expect(with4.joins).toHaveLength(with4.patches.length - 1)
    expect(new Set(with4.joins.flatMap(({ sides }) => sides)).size).toBe(2 * with4.joins.length)
    expect(with4.joins.filter(({ kind }) => kind !== 'straight')).toEqual([])
    expect(with4.block).toEqual(without.block)
    expect(with4.patches.reduce((sum, { area }) => sum + area, 0)).toBeCloseTo(19 * 19, 6)
    expect(with4.joins.at(-1)?.unfinished).toEqual(with4.block.withBorders)
  })

  it('meet the seams of the sides, nest there, and show where they end at the edge; the ditch passes them by', () => {
    const said = framed(BORDERS)
    const at = ['-1/3', '13/3']
    const corners = said.meetings.filter(({ at: [x, y] }) => at.includes(String(x)) && at.includes(String(y)))
    expect(corners.map(({ verdict }) => verdict)).toEqual(['nests', 'nests', 'nests', 'nests'])
    expect(said.edges.top.map((end) => end.at)).toEqual(['5/6', 5.5])
    expect(said.ditch.length).toBe(framed(BORDERS.slice(0, 1)).ditch.length)
  })

  it('are four squares of the strip’s width; the strips between are no longer than the piece: by geometry', () => {
    const pieces = framed(BORDERS).cut.filter((row) => row.for.length === 0 && row.fabric !== 'b')
    expect(pieces.map(({ fabric, shape, size, count }) => [fabric, shape, size, count])).toEqual([
      ['c', 'rectangle', [3, 14.5], 4],
      ['d', 'square', [3, 3], 4],
    ])
  })

  it('keep their fabric from being removed, and follow when it is replaced everywhere', () => {
    const block = star(WINGS, { borders: [{ finishedWidth: 1, fabric: 'b', corner: 'c' }] })
    expect(produce(block, removeFabric('c').change as never)).toBe(block)
    expect(produce(block, recolourAll('c', 'd').change as never).borders).toEqual([{ finishedWidth: 1, fabric: 'b', corner: 'd' }])
  })
})

describe('units cut larger', () => {
  const block = star(WINGS)

  it('have larger squares and the same trimmed size: 6 x 3 geese from 7 1/2 and 4 [S9]', () => {
    const larger = report(produce(block, setOversize(['g0', 'g1', 'g2', 'g3'], '1/4').change as never))
    const [geese] = larger.units
    expect(geese).toMatchObject({ unfinished: [6.5, 3.5], oversize: 0.25, count: 4 })
    expect(larger.cut.filter(({ method }) => method === 'geese-4').map(({ size }) => size[0])).toEqual([7.5, 4])
    expect(larger.advice).toEqual([])
  })

  it('are cut by themselves where others are not, and advice says so where a method trims nothing', () => {
    const some = report(produce(block, setOversize(['g0', 'm'], 0.25).change as never))
    expect(some.units.filter(({ kind }) => kind === 'goose').map(({ count, oversize }) => [count, oversize])).toEqual([
      [1, 0.25],
      [3, undefined],
    ])
    expect(some.advice).toMatchObject([{ code: 'oversize', units: ['m'] }])
    expect(some.units.find(({ kind }) => kind === 'square')).toEqual(report(block).units.find(({ kind }) => kind === 'square'))
  })
})

describe('fabrics of corner squares', () => {
  const block = star(WINGS, { borders: [{ finishedWidth: 1, fabric: 'b', corner: 'c' }] })

  it('are exchanged with the rest, and counted as used', () => {
    expect(produce(block, exchangeFabrics('c', 'd').change as never).borders).toEqual([{ finishedWidth: 1, fabric: 'b', corner: 'd' }])
    expect([...fabricsUsed(block)].sort()).toEqual(['a', 'b', 'c', 'd'])
  })
})
