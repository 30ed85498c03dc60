/**
 * Which pieces are joined in which order, and along which lines. Known blocks: sources are named beside them, `[S…]` as in `test/published/SOURCES.md`;
 * what has none is common practice, no source, or follows from counting.
 */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Block, Unit } from '../../geometry/index.ts'
import { blockOf, sequence, square, star } from '../help.ts'
import { tiling } from '../layouts.ts'
import { joinFaults, lines, pieces, planned } from './planned.ts'

const ninePatch = (): Block =>
  blockOf(
    3,
    3,
    Array.from({ length: 9 }, (_, cell) => square(`u${cell}`, [cell % 3, Math.floor(cell / 3)])),
  )

const geese = [0, 1, 2, 3].map(() => ['b', 'c'] as const)

/** Four bars round a square: no line runs from edge to edge. */
const ring = (): Block =>
  blockOf(3, 3, [
    square('t', [0, 0], [2, 1]),
    square('r', [2, 0], [1, 2]),
    square('b', [1, 2], [2, 1]),
    square('l', [0, 1], [1, 2]),
    square('m', [1, 1]),
  ])

describe('rows', () => {
  it('joins the squares of a nine-patch left to right, then the rows top to bottom: common practice, no source', () => {
    expect(lines(planned(ninePatch(), 'rows'))).toEqual([
      'row 1,0 1,1',
      'row 2,0 2,1',
      'row 1,1 1,2',
      'row 2,1 2,2',
      'row 1,2 1,3',
      'row 2,2 2,3',
      'block 0,1 3,1',
      'block 0,2 3,2',
    ])
  })

  it('takes a unit that is two cells high as one item, and joins what lies beside it first', () => {
    const block = blockOf(3, 2, [square('tall', [0, 0], [1, 2]), square('a', [1, 0], [2, 1]), square('b', [1, 1], [2, 1])])
    expect(lines(planned(block, 'rows'))).toEqual(['section 1,1 3,1', 'row 1,0 1,2'])
    expect(pieces(planned(block, 'rows'))).toEqual(['a b', 'tall a b'])
  })

  it('finds slabs of different heights, whatever order the units are listed in', () => {
    const block = blockOf(2, 3, [square('low', [0, 1], [2, 2]), square('right', [1, 0]), square('left', [0, 0])])
    expect(pieces(planned(block, 'rows'))).toEqual(['right left', 'low right left'])
    expect(lines(planned(block, 'rows'))).toEqual(['row 1,0 1,1', 'block 0,1 2,1'])
  })

  it('sews a star of geese in three rows of three: common practice, no source', () => {
    const made = planned(star(geese), 'rows')
    expect(pieces(made)).toEqual(['g0 c0', 'g0 c0 c1', 'g3 m', 'g1 g3 m', 'g2 c3', 'g2 c2 c3', 'g0 g1 g3 c0 c1 m', 'g0 g1 g2 g3 c0 c1 c2 c3 m'])
    expect(lines(made).slice(-2)).toEqual(['block 0,1 4,1', 'block 0,3 4,3'])
  })

  it('has no straight cut where no line crosses the whole block', () => {
    expect(lines(planned(ring(), 'rows')).every((line) => line.startsWith('section'))).toBe(true)
  })
})

describe('columns', () => {
  it('joins the squares of a nine-patch top to bottom, then the columns left to right', () => {
    expect(lines(planned(ninePatch(), 'columns'))).toEqual([
      'column 0,1 1,1',
      'column 0,2 1,2',
      'column 1,1 2,1',
      'column 1,2 2,2',
      'column 2,1 3,1',
      'column 2,2 3,2',
      'block 1,0 1,3',
      'block 2,0 2,3',
    ])
  })

  it('is the same as rows of the block turned a quarter', () => {
    const turned = (unit: Unit): Unit =>
      unit.kind === 'polygon' ? unit : { ...unit, at: [unit.at[1], unit.at[0]], size: [unit.size[1], unit.size[0]] }
    const block = blockOf(3, 2, [square('tall', [0, 0], [1, 2]), square('a', [1, 0], [2, 1]), square('b', [1, 1], [2, 1])])
    const other = blockOf(2, 3, block.units.map(turned))
    expect(pieces(planned(other, 'columns'))).toEqual(pieces(planned(block, 'rows')))
  })
})

describe('sections', () => {
  const cells = (columns: number, rows: number): Block =>
    blockOf(
      columns,
      rows,
      Array.from({ length: columns * rows }, (_, cell) => square(`u${cell}`, [cell % columns, Math.floor(cell / columns)])),
    )

  it('halves sixteen squares, then halves the halves: four four-patches are sewn first', () => {
    const made = pieces(planned(cells(4, 4), 'sections')).map((piece) => piece.split(' ').length)
    expect(made.filter((count) => count === 4)).toHaveLength(4)
    expect(made.at(-1)).toBe(16)
    expect(made.at(-2)).toBe(8)
    expect(lines(planned(cells(4, 4), 'sections')).at(-1)).toMatch(/^section (2,0 2,4|0,2 4,2)$/)
  })

  it('cuts a long piece across its middle first', () => {
    expect(lines(planned(cells(6, 1), 'sections')).at(-1)).toBe('section 3,0 3,1')
    expect(lines(planned(cells(6, 1), 'sections', { skippedCuts: 1 })).at(-1)).not.toBe('section 3,0 3,1')
  })

  it('peels strips from the outside, so that a log cabin is sewn from its centre out, side after side [S109]', () => {
    const cabin = blockOf(3, 3, [
      square('centre', [1, 1]),
      square('log1', [1, 0]),
      square('log2', [2, 0], [1, 2]),
      square('log3', [1, 2], [2, 1]),
      square('log4', [0, 0], [1, 3]),
    ])
    expect(pieces(planned(cabin, 'sections', { cutOrder: 'outside' }))).toEqual([
      'centre log1',
      'centre log1 log2',
      'centre log1 log2 log3',
      'centre log1 log2 log3 log4',
    ])
  })

  it('runs along a slanted line from edge to edge', () => {
    const half = (id: string, corners: Extract<Unit, { kind: 'polygon' }>['corners']): Unit => ({
      id,
      kind: 'polygon',
      corners,
      fabrics: { patch: 'a' },
    })
    const block = blockOf(2, 2, [
      half('upper', [
        [0, 0],
        [2, 0],
        [2, 2],
      ]),
      half('lower', [
        [0, 0],
        [2, 2],
        [0, 2],
      ]),
    ])
    expect(lines(planned(block, 'sections'))).toEqual(['section 0,0 2,2'])
  })
})

describe('borders', () => {
  it('come last: left and right before top and bottom', () => {
    const made = planned({ ...blockOf(1, 1, [square('u', [0, 0])]), borders: [{ finishedWidth: 1, fabric: 'b' }] }, 'rows')
    const third = 1 / 3
    expect(lines(made)).toEqual(['border 0,0 0,1', 'border 1,0 1,1', `border ${-third},0 ${1 + third},0`, `border ${-third},1 ${1 + third},1`])
  })

  it('with corner squares, has them sewn to the ends of the top and the bottom strip first', () => {
    const made = planned({ ...blockOf(1, 1, [square('u', [0, 0])]), borders: [{ finishedWidth: 3, fabric: 'b', corner: 'c' }] }, 'rows')
    expect(lines(made)).toEqual([
      'border 0,0 0,1',
      'border 1,0 1,1',
      'border 0,-1 0,0',
      'border 1,-1 1,0',
      'border -1,0 2,0',
      'border 0,1 0,2',
      'border 1,1 1,2',
      'border -1,1 2,1',
    ])
  })
})

describe('where no straight seam keeps units whole', () => {
  it('goes round a centre with one partial seam and none set in [S91]', () => {
    const made = planned(ring(), 'sections')
    expect(made.seams.map(({ kind }) => kind).sort()).toEqual(['partial', 'straight', 'straight', 'straight'])
    const partial = made.seams.find(({ kind }) => kind === 'partial')
    expect(partial?.finishedAfter).toBe(made.seams.length - 1)
    expect(made.plan.proved).toBe(true)
  })

  it('sets in the mitred frame of an attic window, with one bend [S102]', () => {
    const corner = (id: string, corners: Extract<Unit, { kind: 'polygon' }>['corners']): Unit => ({
      id,
      kind: 'polygon',
      corners,
      fabrics: { patch: 'b' },
    })
    const made = planned(
      blockOf(3, 3, [
        square('glass', [1, 0], [2, 2]),
        corner('side', [
          [0, 0],
          [1, 0],
          [1, 2],
          [0, 3],
        ]),
        corner('sill', [
          [0, 3],
          [1, 2],
          [3, 2],
          [3, 3],
        ]),
      ]),
      'sections',
    )
    expect(made.seams.map(({ kind }) => kind).sort()).toEqual(['set-in', 'straight'])
    expect(made.seams.find(({ kind }) => kind === 'set-in')?.bends).toHaveLength(1)
  })

  it('does not prove what has more than twelve parts, and says so', () => {
    const rings = [1, 2, 3].flatMap((round) => {
      const [near, far, length] = [3 - round, 3 + round, 2 * round]
      return [
        square(`t${round}`, [near, near], [length, 1]),
        square(`r${round}`, [far, near], [1, length]),
        square(`b${round}`, [near + 1, far], [length, 1]),
        square(`l${round}`, [near, near + 1], [1, length]),
      ]
    })
    const made = planned(blockOf(7, 7, [square('m', [3, 3]), ...rings]), 'sections')
    expect(made.plan.proved).toBe(false)
    expect(made.seams.filter(({ kind }) => kind === 'partial')).toHaveLength(3)
  })
})

describe('the joins of any layout', () => {
  it.each(['rows', 'columns', 'sections'] as const)('by %s sew every stretch once, keep units whole and run where the pieces touch', (name) => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.constantFrom('middle' as const, 'outside' as const), (seed, cutOrder) => {
        const next = sequence(seed)
        const [columns, rows] = [1 + Math.floor(next() * 4), 1 + Math.floor(next() * 4)]
        const borders = next() < 0.3 ? [{ finishedWidth: 2, fabric: 'd', ...(next() < 0.5 ? { corner: 'c' } : {}) }] : []
        expect(joinFaults(planned(blockOf(columns, rows, tiling(next, columns, rows), { borders }), name, { cutOrder }))).toEqual([])
      }),
      { numRuns: 40 },
    )
  })
})
