/** Turns and pressings chosen for the fewest clashes, against every choice tried as a file; and fixes, each applied. */
import { describe, expect, it } from 'vitest'
import { quiltReport } from '../../geometry/index.ts'
import type { Quilt, QuiltPlace } from '../../geometry/values/quilt.ts'
import { chooseJoining } from '../../geometry/quilt/chooseJoining.ts'
import { measuresOf } from '../../geometry/quilt/measures.ts'
import { layPlace } from '../../geometry/quilt/places.ts'
import { wornBlocks } from '../../geometry/quilt/wornBlocks.ts'
import { randomQuilt } from './quilts.ts'

/** Clashes between blocks as the places lie. */
function clashesOf(quilt: Quilt): number {
  const measures = measuresOf(quilt)
  const blocks = known.get(quilt.blocks) ?? wornBlocks(quilt)
  known.set(quilt.blocks, blocks)
  const laid = quilt.places.map((place) => layPlace(quilt, measures, blocks, place))
  return chooseJoining(quilt, measures, blocks, laid)?.joined.met?.between ?? 0
}

const known = new WeakMap<Quilt['blocks'], ReturnType<typeof wornBlocks>>()

/** The fewest clashes and, among those, the fewest places changed, of every way to turn and press the places. */
function bestOfAll(quilt: Quilt, turns: readonly number[]): { between: number; changed: number } {
  let best = { between: Number.POSITIVE_INFINITY, changed: 0 }
  const tryFrom = (places: readonly QuiltPlace[], changed: number): void => {
    const next = quilt.places[places.length]
    if (next === undefined) {
      const between = clashesOf({ ...quilt, places })
      if (between < best.between || (between === best.between && changed < best.changed)) best = { between, changed }
      return
    }
    for (const by of turns)
      for (const press of ['planned', 'opposite'] as const) {
        const turn = (((next.turn ?? 0) + by) % 4) as 0 | 1 | 2 | 3
        tryFrom([...places, { ...next, turn, press }], changed + (by === 0 && press === 'planned' ? 0 : 1))
      }
  }
  tryFrom([], 0)
  return best
}

describe('free turns and pressings', () => {
  it.each([1, 2, 3, 4, 5, 6].map((seed) => ({ seed, spans: seed > 3 })))(
    'clash as seldom as the best of all choices, and change as few places (seed $seed, spans $spans)',
    ({ seed, spans }) => {
      const quilt = randomQuilt(spans ? 3 : 2, 2, seed, { spans })
      const found = quiltReport({ ...quilt, free: { turn: 'half', press: true } })
      const changed = found.places.filter(({ turn, press }, index) => turn !== (quilt.places[index]?.turn ?? 0) || press !== 'planned').length
      expect({ between: found.pressing.between, changed }).toEqual(bestOfAll({ ...quilt, order: found.order }, [0, 2]))
      expect(found.pressing.proved).toBe(true)
    },
  )

  it('of 6 × 6 blocks are proved, and the file of what was chosen has as many clashes', () => {
    const quilt = randomQuilt(6, 6, 11, { kinds: 9 })
    const found = quiltReport({ ...quilt, free: { turn: 'half', press: true } })
    const { between, atLeast, proved } = found.pressing
    expect([proved, atLeast]).toEqual([true, between])
    const places = quilt.places.map((place, index) => ({
      ...place,
      turn: found.places[index]?.turn ?? 0,
      press: found.places[index]?.press ?? 'planned',
    }))
    expect(quiltReport({ ...quilt, places, order: found.order }).pressing.between).toBe(between)
    expect(between).toBeLessThan(quiltReport(quilt).pressing.between)
  })
})

describe('fixes of clashes between blocks', () => {
  it.each([1, 2, 4, 7].map((seed) => ({ seed })))('each take a clash away and make no other (seed $seed)', ({ seed }) => {
    const quilt = randomQuilt(3, 3, seed, { spans: seed % 2 === 0 })
    const before = quiltReport(quilt)
    const points = (report: typeof before): string[] => report.meetings.filter(({ verdict }) => verdict === 'clashes').map(({ at }) => at.join())
    const known = points(before)
    let tried = 0
    for (const { at, fix } of before.meetings)
      for (const { do: doing, what, turn } of fix) {
        if (what.includes('/')) continue
        const places = quilt.places.map((place): QuiltPlace => {
          if (place.id !== what) return place
          return doing === 'turn' ? { ...place, turn: turn ?? 0 } : { ...place, press: 'opposite' }
        })
        const after = points(quiltReport({ ...quilt, places, order: doing === 'order' ? (what as 'rows') : before.order }))
        expect(after.length).toBeLessThan(known.length)
        expect(after).not.toContain(at.join())
        expect(known).toEqual(expect.arrayContaining(after))
        tried++
      }
    expect(tried).toBeGreaterThan(0)
  })
})
