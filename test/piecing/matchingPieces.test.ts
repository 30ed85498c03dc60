/** Matching pieces: moved or turned pieces match, those in other fabrics or mirrored do not. */
import { describe, expect, it } from 'vitest'
import type { Block, Unit } from '../../geometry/index.ts'
import { countShapes, fingerprints, repeatsOf } from '../../geometry/piecing/matchingPieces.ts'
import { sewBlock } from '../../geometry/report/report.ts'
import { blockOf, square } from '../help.ts'

/** Fingerprints of the pieces that two units make, pair after pair, sewn by rows. */
function pairs(...all: readonly (readonly [Unit, Unit])[]): string[] {
  return all.map(([one, other]) => prints(blockOf(20, 20, [one, other])).at(-1) as string)
}

function prints(block: Block): string[] {
  // The two units alone leave gaps: only their own seam is looked at.
  const { laid } = sewBlock(block, 'quick')
  return fingerprints(laid, [{ stage: 'row', kind: 'straight', sides: [0, 1], path: [], bends: [], finishedAfter: null, unit: -1 }])
}

const bar = (at: readonly [number, number], size: readonly [number, number], patch: string): Unit => square(`u${at.join('-')}`, at, size, patch)

describe('a piece', () => {
  // Matching: one is the other turned, in the same fabrics. The report's format.
  const here = [bar([0, 0], [2, 1], 'a'), bar([2, 0], [1, 1], 'b')] as const

  it('matches wherever it lies, and turned by any number of quarters', () => {
    const [first, ...others] = pairs(
      here,
      [bar([7, 13], [2, 1], 'a'), bar([9, 13], [1, 1], 'b')],
      [bar([5, 5], [1, 2], 'a'), bar([5, 7], [1, 1], 'b')],
      [bar([4, 3], [2, 1], 'a'), bar([3, 3], [1, 1], 'b')],
      [bar([9, 9], [1, 2], 'a'), bar([9, 8], [1, 1], 'b')],
    )
    expect(others).toEqual(others.map(() => first))
  })

  it('is another in other fabrics, other sizes, or with its parts elsewhere', () => {
    const all = pairs(
      here,
      [bar([0, 0], [2, 1], 'b'), bar([2, 0], [1, 1], 'a')],
      [bar([0, 0], [2, 1], 'a'), bar([2, 0], [1, 1], 'c')],
      [bar([0, 0], [3, 1], 'a'), bar([3, 0], [1, 1], 'b')],
      [bar([0, 0], [2, 1], 'a'), bar([0, 1], [1, 1], 'b')],
    )
    expect(new Set(all).size).toBe(all.length)
  })

  it('is another than its mirror image, where no turn brings them together', () => {
    const [one, other] = pairs([bar([0, 0], [2, 1], 'a'), bar([0, 1], [1, 1], 'b')], [bar([0, 0], [2, 1], 'a'), bar([1, 1], [1, 1], 'b')])
    expect(one).not.toBe(other)
  })
})

describe('a plan', () => {
  it('counts its different pieces and finds the like ones, however many patches they have', () => {
    const [columns, fabric] = [700, ['a', 'b', 'c', 'd', 'b'] as const]
    const units = [0, 1].flatMap((row) => Array.from({ length: columns }, (_, x) => square(`u${row}-${x}`, [x, row], [1, 1], fabric[x % 5])))
    const { laid, plans } = sewBlock(blockOf(columns, 2, units, { order: 'rows' }), 'quick')
    const seams = plans?.taken.seams ?? []
    // Two rows, made of the same squares one by one: 699 lengths, each twice, and the whole.
    expect(countShapes(laid, seams)).toBe(columns)
    expect(repeatsOf(laid, seams).map((like) => like.length)).toEqual(Array.from({ length: columns - 1 }, () => 2))
  })
})
