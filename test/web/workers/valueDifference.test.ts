/** What goes between the page and the worker: the second value again, sharing with the first whatever did not change. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applyDifference, valueDifference } from '../../../web/workers/valueDifference.ts'

const THINGS = Array.from({ length: 90 }, (_, id) => ({ id }))
const aList = fc.array(fc.nat(THINGS.length - 1), { maxLength: 120 }).map((places) => places.map((place) => THINGS[place]))
const aValue = fc.dictionary(fc.constantFrom('units', 'joins', 'name', 'order'), fc.oneof(aList, fc.constantFrom(...THINGS), fc.string()))

describe('what is sent', () => {
  it('put onto the value before is the value after, with the very same things in it', () => {
    fc.assert(
      fc.property(aValue, aValue, (before, after) => {
        const again = applyDifference(before, valueDifference(before, after)) as Record<string, unknown>
        expect(again).toEqual(after)
        for (const [name, value] of Object.entries(after))
          if (Array.isArray(value)) expect(value.every((thing, place) => (again[name] as unknown[])[place] === thing)).toBe(true)
      }),
      { numRuns: 300 },
    )
  })

  it('holds little where little changed, and nothing where nothing did', () => {
    const before = { units: THINGS, name: 'Star' }
    const after = { units: THINGS.with(40, { id: 400 }).toSpliced(60, 1), name: 'Star' }
    const list = [{ from: 0, count: 40 }, { items: [{ id: 400 }] }, { from: 41, count: 19 }, { from: 61, count: 29 }]
    expect(valueDifference(before, after)).toEqual({ fields: { units: { list } }, gone: [] })
    expect(valueDifference(before, before)).toEqual({ fields: {}, gone: [] })
  })
})
