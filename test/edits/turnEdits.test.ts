import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { separateStrips, setStripCount } from '../../geometry/edits/stripEdits.ts'
import { turnAboutMiddle, turnEach } from '../../geometry/edits/turnEdits.ts'
import type { Block, Turn, Unit } from '../../geometry/values/block.ts'
import { blockOf, square } from '../help.ts'
import { checkEdit } from './editLaws.ts'

const goose = (at: [number, number]): Unit => ({ id: 'g', kind: 'goose', at, size: [2, 1], fabrics: { goose: 'a', leftWing: 'b', rightWing: 'b' } })
const placed = ({ units }: Block): unknown[] => units.map((unit) => (unit.kind === 'polygon' ? null : [unit.at, unit.size, unit.turn ?? 0]))

describe('turning units about their middle', () => {
  const turned = (unit: Unit, quarters: Turn = 1, halves = false): unknown =>
    placed(checkEdit(blockOf(4, 4, [unit]), turnAboutMiddle(['g'], quarters, halves)))[0]

  it('lands a goose of 2 × 1 cells on whole cells, on one of those it had', () => {
    expect(turned(goose([1, 1]))).toEqual([[1, 1], [1, 2], 1])
    expect(turned(goose([1, 1]), 3)).toEqual([[1, 1], [1, 2], 3])
    expect(turned(goose([1, 1]), 2)).toEqual([[1, 1], [2, 1], 2])
  })

  it('stays on the grid where it can', () => {
    expect(turned(goose([1, 3])), 'in the last row').toEqual([[1, 2], [1, 2], 1])
    const upright: Unit = { ...goose([3, 1]), size: [1, 2], turn: 1 } as Unit
    expect(turned(upright), 'in the last column').toEqual([[2, 1], [2, 1], 2])
  })

  it('keeps the middle exactly where halves are asked for, or the sides differ by even numbers', () => {
    expect(turned(goose([1, 1]), 1, true)).toEqual([[1.5, 0.5], [1, 2], 1])
    const long: Unit = { id: 'g', kind: 'square', at: [0, 1], size: [3, 1], fabrics: { patch: 'a' } }
    expect(turned(long)).toEqual([[1, 0], [1, 3], 1])
  })

  it('turns the four geese round a star each in its place, where turning them together would change nothing', () => {
    const geese: Unit[] = [
      { ...goose([1, 0]), id: 'top' },
      { ...goose([3, 1]), id: 'right', size: [1, 2], turn: 1 } as Unit,
      { ...goose([1, 3]), id: 'bottom', turn: 2 } as Unit,
      { ...goose([0, 1]), id: 'left', size: [1, 2], turn: 3 } as Unit,
    ]
    const ids = geese.map(({ id }) => id)
    const each = checkEdit(blockOf(4, 4, geese), turnEach(ids, 2, false))
    expect(placed(each)).toEqual([
      [[1, 0], [2, 1], 2],
      [[3, 1], [1, 2], 3],
      [[1, 3], [2, 1], 0],
      [[0, 1], [1, 2], 1],
    ])
  })

  it('comes back in four quarters, alone or with others', () => {
    const units = fc.array(
      fc.tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 20 }), fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 5 })),
      {
        minLength: 1,
        maxLength: 4,
      },
    )
    fc.assert(
      fc.property(units, fc.boolean(), (boxes, halves) => {
        // Far from the edges of the grid.
        const block = blockOf(
          90,
          90,
          boxes.map(([x, y, w, h], index) => square(`u${index}`, [x + 30, y + 30], [w, h])),
        )
        const ids = block.units.map(({ id }) => id)
        let after = block
        for (let quarter = 0; quarter < 4; quarter++) after = checkEdit(after, turnAboutMiddle(ids, 1, halves))
        expect(placed(after)).toEqual(placed(block))
        const half = checkEdit(checkEdit(block, turnAboutMiddle(ids, 1, halves)), turnAboutMiddle(ids, 1, halves))
        expect(placed(half)).toEqual(placed(checkEdit(block, turnAboutMiddle(ids, 2, halves))))
      }),
    )
  })
})

describe('strips', () => {
  const strips = (fabrics: readonly string[], more: Partial<Unit> = {}): Block =>
    blockOf(4, 4, [
      {
        id: 's',
        kind: 'strips',
        at: [1, 0],
        size: [2, 3],
        fabrics: Object.fromEntries(fabrics.map((one, index) => [`strip${index + 1}`, one])),
        ...more,
      } as Unit,
      square('q', [0, 0]),
    ])
  const fabricsAfter = (block: Block, count: number): string =>
    Object.values(checkEdit(block, setStripCount(['s', 'q'], count)).units[0]?.fabrics ?? {}).join('')

  it('become as many as asked, from 2 to 12, and new ones go on as the first began', () => {
    expect(fabricsAfter(strips(['a', 'b']), 5)).toBe('ababa')
    expect(fabricsAfter(strips(['a', 'b', 'a']), 6)).toBe('ababab')
    expect(fabricsAfter(strips(['a', 'b', 'c']), 7)).toBe('abcabca')
    expect(fabricsAfter(strips(['a', 'b', 'c', 'd']), 2)).toBe('ab')
    expect(fabricsAfter(strips(['a', 'b']), 12)).toHaveLength(12)
  })

  it('are taken apart where they lie, exactly, each its own rectangle', () => {
    const after = checkEdit(strips(['a', 'b', 'c']), separateStrips(['s', 'q']))
    expect(after.units.map((unit) => (unit.kind === 'polygon' ? [] : [unit.kind, unit.at, unit.size, unit.fabrics]))).toEqual([
      ['square', [1, 0], ['2/3', 3], { patch: 'a' }],
      ['square', ['5/3', 0], ['2/3', 3], { patch: 'b' }],
      ['square', ['7/3', 0], ['2/3', 3], { patch: 'c' }],
      ['square', [0, 0], [1, 1], { patch: 'a' }],
    ])
    expect(new Set(after.units.map(({ id }) => id)).size).toBe(4)
    const lying = checkEdit(strips(['a', 'b'], { turn: 1, size: [3, 2] } as Partial<Unit>), separateStrips(['s']))
    expect(placed(lying).slice(0, 2)).toEqual([
      [[1, 0], [3, 1], 0],
      [[1, 1], [3, 1], 0],
    ])
  })
})
