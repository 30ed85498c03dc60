/** Whole quilts: sizes and counts against printed settings, meetings against one block sewn alike, and files that are refused. */
import { describe, expect, it } from 'vitest'
import { quiltReport, readQuilt, report } from '../../geometry/index.ts'
import type { Unit } from '../../geometry/values/block.ts'
import { block, pieced, plainQuilt, UNITS } from './quilts.ts'

/** Each printed size counts from finished edge to finished edge. */
const PRINTED_SIZES = [
  { source: 'S265', across: 2, down: 3, cell: 18, seam: '3/4', size: [36, 54] },
  { source: 'S265', across: 5, down: 6, cell: 18, seam: '3/4', size: [90, 108] },
  { source: 'S267', across: 10, down: 13, cell: 5, seam: '1/2', size: [50, 65] },
  { source: 'S267', across: 8, down: 11, cell: 6, seam: '1/4', size: [48, 66] },
  { source: 'S268', across: 5, down: 5, cell: 7, seam: '1/2', size: [35, 35] },
  { source: 'S246', across: 8, down: 8, cell: 12, seam: '1/4', size: [96, 96] },
] as const

describe('printed settings', () => {
  it.each(PRINTED_SIZES)('have the size of [$source]: $across by $down', ({ across, down, cell, seam, size }) => {
    expect(quiltReport(plainQuilt(across, down, cell, { join: 'fronts' }, seam)).size.finished).toEqual(size)
  })

  it('butted blocks of 14 make 56 by 84 [S261]', () => {
    expect(quiltReport(plainQuilt(4, 6, '13 1/2', { join: 'butted', fabric: 'deep' })).size.raw).toEqual([56, 84])
  })

  it('a block over three places is cut 13 1/2 and shows 13 between narrow strips [S259]', () => {
    const quilt = plainQuilt(3, 1, 4, { join: 'strips', fabric: 'deep' })
    const [place] = quiltReport({ ...quilt, places: [{ id: 'long', at: [0, 0], size: [3, 1], plain: 'pale' }] }).places
    expect(place?.finished).toEqual([13, 4])
    expect(place?.unfinished).toEqual([13.5, 4.5])
  })

  it.each([
    { source: 'S297', across: 4, down: 5, cell: 6, width: 1, sashes: 49, squares: 30 },
    { source: 'S298', across: 2, down: 3, cell: 12, width: 2, sashes: 17, squares: 12, size: [30, 44] },
    { source: 'S299', across: 3, down: 4, cell: '7 3/4', width: 2, sashes: 31, squares: 20, size: [31.25, 41] },
    { source: 'S304', across: 3, down: 3, cell: 14, width: 3, sashes: 24, squares: 16, size: [54, 54] },
  ])('sashes and corner squares all round are as many as in [$source]', ({ across, down, cell, width, sashes, squares, size }) => {
    const found = quiltReport(plainQuilt(across, down, cell, { sash: { width, fabric: 'deep', corner: 'pale', round: true } }))
    const of = (fabric: string): number =>
      found.cut.filter((row) => row.part === 'sash' && row.fabric === fabric).reduce((all, { count }) => all + count, 0)
    expect([of('deep'), of('pale')]).toEqual([sashes, squares])
    if (size !== undefined) expect(found.size.finished).toEqual(size)
  })

  it('sashes between the blocks alone: 24 and 9 squares, 47 1/2 each way [S305]', () => {
    const found = quiltReport(plainQuilt(4, 4, 10, { sash: { width: '2 1/2', fabric: 'deep', corner: 'pale' } }))
    const sash = found.cut.filter(({ part }) => part === 'sash')
    expect(sash.map(({ count }) => count).sort()).toEqual([24, 9])
    expect(found.size.finished).toEqual([47.5, 47.5])
  })
})

describe('meetings', () => {
  it('along the long joint lie where one block of the same four blocks has them', () => {
    const units = [0, 1].flatMap((row) =>
      [0, 1].flatMap((column) =>
        UNITS.map((unit) => {
          if (unit.kind === 'polygon') return unit
          return { ...unit, id: `${unit.id}${row}${column}`, at: [Number(unit.at[0]) + 2 * column, Number(unit.at[1]) + 2 * row] as const }
        }),
      ),
    )
    const whole = report({ ...block(units, 4), order: 'rows' })
    const long = whole.joins.find(({ from, to }) => from[1] === 2 && to[1] === 2)?.id
    const expected = whole.meetings.filter(({ join }) => join === long).map(({ at }) => at.map((one) => Number(one) * 3).join())
    const quilt = quiltReport(pieced(2))
    const last = quilt.joints.at(-1)?.id
    const found = quilt.meetings.filter(({ joint }) => joint === last).map(({ at }) => at.join())
    expect(found.sort()).toEqual(expected.sort())
    expect(found.length).toBeGreaterThan(0)
  })

  it('free turns and pressings clash as seldom as the best of all choices, each tried as a file', () => {
    const free = pieced(2)
    const quilt = { ...free, places: free.places.map((place, index) => (index < 2 ? place : { ...place, fixed: true })) }
    const all = Array.from({ length: 8 ** 2 }, (_, number) => number)
    const least = Math.min(
      ...all.map((number) => {
        const places = quilt.places.map((place, index) => {
          if (index > 1) return place
          const state = Math.floor(number / 8 ** index) % 8
          return { ...place, turn: (state % 4) as 0 | 1 | 2 | 3, press: state < 4 ? ('planned' as const) : ('opposite' as const) }
        })
        return quiltReport({ ...quilt, places }).pressing.between
      }),
    )
    const { pressing } = quiltReport({ ...quilt, free: { turn: 'quarter', press: true } })
    expect(pressing.between).toBe(least)
    expect(pressing.proved).toBe(true)
  })

  it('are none where strips keep the fronts apart', () => {
    const found = quiltReport(pieced(2, { way: { join: 'strips', fabric: 'deep' } }))
    expect([found.meetings, found.pressing.between]).toEqual([[], 0])
  })
})

describe('files that are refused', () => {
  const refused = (change: Record<string, unknown>): string => {
    const read = readQuilt(JSON.stringify({ ...pieced(2), ...change }))
    return read.ok ? 'read' : read.place
  }
  it.each([
    ['blocks[0].block.units[0].size', { blocks: [{ id: 'one', block: block([{ ...UNITS[0], size: [1, 2] } as Unit]) }] }],
    ['blocks[0].block.measure.unit', { blocks: [{ id: 'one', block: { ...block(UNITS), measure: { unit: 'cm' } } }] }],
    ['blocks[0].wear.rose', { blocks: [{ id: 'one', block: block(UNITS), wear: { rose: 'pale' } }] }],
    ['places[0]', { places: [{ id: 'a', at: [0, 0] }] }],
    ['places[0].at', { places: [{ id: 'a', at: [0.5, 0], plain: 'pale' }] }],
    ['places[1].id', { places: [0, 1].map((x) => ({ id: 'a', at: [x, 0], plain: 'pale' })) }],
    ['way.join', { way: { join: 'glue' } }],
    ['way.sash.width', { way: { sash: { width: -1, fabric: 'pale' } } }],
    ['borders', { way: { join: 'fronts' }, borders: [{ finishedWidth: 1, fabric: 'pale' }] }],
    ['frame[0].finishedWidth', { frame: [{ fabric: 'pale' }, { fabric: 'deep' }] }],
    ['parts[0].places[0]', { parts: [{ title: 'One', places: ['nowhere'] }] }],
    ['free.turn', { free: { turn: 'sideways' } }],
  ])('name %s', (place, change) => {
    expect(refused(change)).toBe(place)
  })
})
