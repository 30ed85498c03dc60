import fc from 'fast-check'
import { applyPatches, enablePatches, type Objectish, type Patch, produceWithPatches } from 'immer'
import { describe, expect, it } from 'vitest'
import { applyChanges, changesBetween, packChanges, unpackChanges } from '../../../web/document/difference.ts'

enablePatches()

/** Documents as makers' files are: lists of things with ids, points, fields that come and go. */
const thingWith = (...names: string[]) =>
  fc.record(
    {
      id: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'),
      at: fc.tuple(fc.integer({ min: 0, max: 9 }), fc.constantFrom<number | string>(0, 1, '1/3')),
      turn: fc.integer({ min: 0, max: 3 }),
      fabrics: fc.dictionary(fc.constantFrom(...names), fc.constantFrom('moss', 'dusk')),
      corners: fc.array(fc.tuple(fc.nat(9), fc.nat(9)), { maxLength: 5 }),
    },
    { requiredKeys: ['id'] },
  )
const listOf = (...names: string[]) => fc.uniqueArray(thingWith(...names), { selector: ({ id }) => id, maxLength: 6 })
const value = fc.record(
  { name: fc.string(), units: listOf('patch', 'upper', '__proto__', 'constructor'), rest: fc.jsonValue({ maxDepth: 3 }) },
  { requiredKeys: ['units'] },
)
const plain = (given: unknown): unknown => JSON.parse(JSON.stringify(given))

describe('the difference of two values', () => {
  it('leads from one to the other and back, also when written down', () => {
    fc.assert(
      fc.property(value, value, (one, other) => {
        const [a, b] = [plain(one), plain(other)]
        const there = changesBetween(a, b)
        expect(applyChanges(a, there)).toEqual(b)
        expect(applyChanges(a, unpackChanges(packChanges(there)))).toEqual(b)
        expect(applyChanges(b, changesBetween(b, a))).toEqual(a)
      }),
      { numRuns: 1000 },
    )
  })

  it('leaves what it was given as it was, and shares what did not change', () => {
    const before = Object.freeze({
      units: Object.freeze([Object.freeze({ id: 'a', at: [0, 0] }), Object.freeze({ id: 'b', at: [1, 0] })]),
      name: 'x',
    })
    const after = applyChanges(before, [{ op: 'replace', path: ['units', 1, 'at'], value: [2, 0] }])
    expect(before.units[1]).toEqual({ id: 'b', at: [1, 0] })
    expect(after.units[0]).toBe(before.units[0])
  })

  // Source: immer 11, which made the histories of before. (It forgets a field called `__proto__`; that one stands in the first test.)
  it('makes the changes that immer writes as immer makes them', () => {
    fc.assert(
      fc.property(
        listOf('patch', 'upper'),
        fc.array(fc.tuple(fc.constantFrom('drop', 'filter', 'insert', 'turn', 'clear'), fc.nat(5)), { maxLength: 4 }),
        (units, acts) => {
          const base = plain({ units }) as { units: { id: string; turn?: number }[] }
          const [, redo, undo] = produceWithPatches(base, (draft) => {
            for (const [act, place] of acts) {
              if (act === 'drop') draft.units.splice(place, 1)
              if (act === 'filter') draft.units = draft.units.filter((_, index) => index !== place)
              if (act === 'insert') draft.units.splice(place, 0, { id: `n${place}` })
              if (act === 'turn' && draft.units[place] !== undefined) draft.units[place].turn = 7
              if (act === 'clear') draft.units.length = Math.min(place, draft.units.length)
            }
          })
          const after = applyPatches(base as Objectish, redo as Patch[])
          expect(applyChanges(base, redo)).toEqual(after)
          expect(applyChanges(after, unpackChanges(packChanges(undo)))).toEqual(base)
        },
      ),
      { numRuns: 1000 },
    )
  })

  it('says that one of many was taken out in one change', () => {
    const units = Array.from({ length: 400 }, (_, index) => ({ id: `u${index}`, at: [index, 0] }))
    const without = units.filter(({ id }) => id !== 'u7')
    expect(changesBetween({ units }, { units: without })).toEqual([{ op: 'remove', path: ['units', 7] }])
    expect(changesBetween({ units: without }, { units })).toEqual([{ op: 'add', path: ['units', 7], value: { id: 'u7', at: [7, 0] } }])
  })

  it('writes a move of all of 400 units in less than 6,000 letters for both ways', () => {
    const units = Array.from({ length: 400 }, (_, index) => ({ id: `u${index}`, kind: 'square', at: [index % 20, Math.floor(index / 20)] }))
    const later = units.map((unit) => ({ ...unit, at: [(unit.at[0] as number) + 1, unit.at[1]] }))
    const both = packChanges(changesBetween({ units }, { units: later })) + packChanges(changesBetween({ units: later }, { units }))
    expect(both.length).toBeLessThan(6000)
    expect(applyChanges({ units }, unpackChanges(packChanges(changesBetween({ units }, { units: later }))))).toEqual({ units: later })
  })
})
