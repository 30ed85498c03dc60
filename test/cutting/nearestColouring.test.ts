import { produce } from 'immer'
import { describe, expect, it } from 'vitest'
import { colourWings } from '../../geometry/edits/unitEdits.ts'
import { batchOf, leastBatches, type Wings, wingsSeen } from '../../geometry/cutting/batches/geeseBatches.ts'
import { nearestColouring } from '../../geometry/cutting/batches/nearestColouring.ts'
import { report } from '../../geometry/report/wholeReport.ts'
import { sequence, star } from '../help.ts'

const changedBetween = (before: readonly Wings[], after: readonly Wings[]): number =>
  before.flatMap(([left, right], goose) => [left !== after[goose]?.[0], right !== after[goose]?.[1]]).filter(Boolean).length

/** Every colouring, one changed wing more at a time, until one needs no more batches. */
function fewestChanges(geese: readonly Wings[], batches: number): number {
  const fabrics = [...new Set(geese.flat())]
  const wings = geese.flat()
  const ways = (from: number, changes: number): boolean => {
    if (changes === 0) {
      const pairs = geese.map((_, goose): Wings => [wings[2 * goose] as string, wings[2 * goose + 1] as string])
      return leastBatches('', pairs).batches.length <= batches
    }
    for (let wing = from; wing < wings.length; wing++) {
      const kept = wings[wing] as string
      for (const fabric of fabrics) {
        if (fabric === kept) continue
        wings[wing] = fabric
        if (ways(wing + 1, changes - 1)) return true
      }
      wings[wing] = kept
    }
    return false
  }
  for (let changes = 0; ; changes++) if (ways(0, changes)) return changes
}

function check(geese: readonly Wings[], batches: number): ReturnType<typeof nearestColouring> {
  const found = nearestColouring(geese, batches)
  if (found === null) throw new Error('there are batches enough')
  expect(found.wings).toHaveLength(geese.length)
  expect(changedBetween(geese, found.wings)).toBe(found.changed)
  expect(found.corners.length).toBeLessThanOrEqual(batches)
  const made = found.corners.flatMap((corners) => batchOf('', corners).makes.map((wings) => wings.join()))
  for (const wings of found.wings) {
    const place = made.indexOf(wings.join())
    expect(place, `goose ${wings}`).toBeGreaterThanOrEqual(0)
    made.splice(place, 1)
  }
  return found
}

describe('the nearest colouring', () => {
  it('of four geese with the same two different wings for one batch changes as few wings as any: by trying all', () => {
    const geese: Wings[] = Array.from({ length: 4 }, () => ['a', 'b'])
    expect(check(geese, 1)).toMatchObject({ proved: true, changed: fewestChanges(geese, 1) })
    expect(check(geese, 2)).toMatchObject({ proved: true, changed: 0, wings: geese })
  })

  it('changes as few wings as any of all colourings', () => {
    const next = sequence(11)
    for (let turn = 0; turn < 60; turn++) {
      const names = ['a', 'b', 'c'].slice(0, 2 + (turn % 2))
      const pick = (): string => names[Math.floor(next() * names.length)] as string
      const geese = Array.from({ length: 3 + Math.floor(next() * 6) }, (): Wings => [pick(), pick()])
      const batches = Math.ceil(geese.length / 4)
      expect(check(geese, batches), JSON.stringify(geese)).toMatchObject({ proved: true, changed: fewestChanges(geese, batches) })
    }
  })

  it('is none where there are more geese than the batches make', () => {
    expect(
      nearestColouring(
        Array.from({ length: 5 }, (): Wings => ['a', 'b']),
        1,
      ),
    ).toBeNull()
  })

  it('of many geese is a colouring within the batches, and none is changed where they are enough', () => {
    const next = sequence(4)
    const pick = (): string => 'abcdefgh'[Math.floor(next() * 8)] as string
    const geese = Array.from({ length: 100 }, (): Wings => [pick(), pick()])
    const needs = leastBatches('', geese).batches.length
    for (const batches of [needs, needs - 1, 25]) {
      const found = check(geese, batches)
      if (batches === needs) expect(found).toMatchObject({ changed: 0, proved: true })
      else expect(found?.changed).toBeGreaterThan(0)
    }
  })

  it('found by changing places is hardly ever worse than the best of all ways, and proved only where it is not', () => {
    const next = sequence(21)
    const pick = (): string => 'abcd'[Math.floor(next() * 4)] as string
    let [best, found, proved] = [0, 0, 0]
    for (let turn = 0; turn < 60; turn++) {
      const sorts = Array.from({ length: 5 }, (): Wings => [pick(), pick()])
      const geese = Array.from({ length: 5 + Math.floor(next() * 16) }, (_, goose) => sorts[goose % 5] as Wings)
      const batches = Math.ceil(geese.length / 4)
      const all = nearestColouring(geese, batches)
      const swapped = nearestColouring(geese, batches, 0)
      expect(all?.proved).toBe(true)
      expect(swapped?.changed).toBeGreaterThanOrEqual(all?.changed as number)
      if (swapped?.proved) expect(swapped.changed).toBe(all?.changed)
      // Every change of one wing is tried: none is missed, and two are known to be the fewest.
      if ((all?.changed as number) <= 1) expect(swapped).toMatchObject({ changed: all?.changed, proved: true })
      best += all?.changed as number
      found += swapped?.changed as number
      proved += swapped?.proved ? 1 : 0
    }
    expect(found).toBeLessThanOrEqual(1.1 * best)
    expect(proved).toBeGreaterThan(0)
  })
})

describe('the colouring, given to a block', () => {
  it('makes the block need that many batches, also where a goose is mirrored', () => {
    const wings: Wings[] = Array.from({ length: 4 }, () => ['b', 'c'])
    const drawn = star(wings)
    const block = { ...drawn, units: drawn.units.map((unit) => (unit.id === 'g1' ? { ...unit, mirror: true } : unit)) }
    const geese = block.units.filter(({ kind }) => kind === 'goose')
    const found = nearestColouring(geese.map(wingsSeen), 1)
    const edit = colourWings(Object.fromEntries(geese.map(({ id }, goose) => [id, found?.wings[goose] as Wings])))
    const after = produce(block, edit.change as never)
    expect(after.units.filter(({ kind }) => kind === 'goose').map(wingsSeen)).toEqual(found?.wings)
    expect(report(after).units.find(({ method }) => method === 'geese-4')?.batches).toHaveLength(1)
    expect(after.units.filter(({ kind }) => kind !== 'goose')).toEqual(block.units.filter(({ kind }) => kind !== 'goose'))
  })

  it('skips units that are not geese, and fabrics that the block does not have', () => {
    const block = star(Array.from({ length: 4 }, () => ['b', 'c'] as const))
    const edit = colourWings({ g0: ['b', 'no-such-cloth'], m: ['b', 'b'], 'no-such-unit': ['b', 'b'] })
    expect(produce(block, edit.change as never)).toBe(block)
  })
})
