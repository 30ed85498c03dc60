/** How two pieces touch. Which contacts can be sewn straight: common practice, no source. */
import { describe, expect, it } from 'vitest'
import { planeOf } from '../../geometry/block/blockPlane.ts'
import { lay } from '../../geometry/block/lay.ts'
import { type Contact, contactOf } from '../../geometry/piecing/contact.ts'
import type { Dot } from '../../geometry/plane/points.ts'
import type { Unit } from '../../geometry/index.ts'
import { blockOf, square } from '../help.ts'

/** The contact of two pieces of single-patch units, by the numbers of the units; its runs in cells. */
function contact(
  columns: number,
  rows: number,
  units: readonly Unit[],
  near: readonly number[],
  far: readonly number[],
  order: 'as found' | 'the other way round' = 'as found',
): { runs: string[]; straight: boolean } {
  const laid = lay(blockOf(columns, rows, units))
  const plane = planeOf(laid)
  const side = (patch: number): -1 | 0 | 1 => (near.includes(patch) ? 0 : far.includes(patch) ? 1 : -1)
  const edges = plane.edges.flatMap(({ plus, minus }, edge) =>
    side(plus) + side(minus) === 1 && side(plus) !== -1 && side(minus) !== -1 ? [edge] : [],
  )
  const found: Contact = contactOf(plane, order === 'as found' ? edges : edges.reverse(), side)
  const at = (dot: number | undefined): string => laid.places.cells(plane.dots[dot as number] as Dot).join()
  return { runs: found.runs.map(({ dots }) => `${at(dots[0])} ${at(dots.at(-1))}`), straight: found.straight }
}

const grid = (columns: number, rows: number): Unit[] =>
  Array.from({ length: columns * rows }, (_, cell) => square(`u${cell}`, [cell % columns, Math.floor(cell / columns)]))

describe('two pieces', () => {
  it.each([
    ['side by side', 2, 1, [0], [1], ['1,0 1,1'], true],
    ['side by side, over several units', 2, 3, [0, 2, 4], [1, 3, 5], ['1,0 1,3'], true],
    ['one on the other, over several units', 3, 2, [0, 1, 2], [3, 4, 5], ['0,1 3,1'], true],
    ['of different length: the longer carries on beyond the shorter', 3, 2, [0, 1], [3, 4, 5], ['0,1 2,1'], true],
    ['one in the corner of the other', 2, 2, [0, 1, 2], [3], ['1,2 1,1', '1,1 2,1'], false],
    ['one between two arms of the other', 3, 2, [0, 2, 3, 4, 5], [1], ['1,0 1,1', '1,1 2,1', '2,1 2,0'], false],
    ['one all round the other: it could never be turned', 3, 3, [0, 1, 2, 3, 5, 6, 7, 8], [4], [], false],
    ['that touch along two lines that do not meet', 3, 1, [0, 2], [1], [], false],
    ['that touch on one line with a gap between', 3, 2, [0, 1, 2], [3, 5], [], false],
    ['that touch at a point only', 2, 2, [0], [3], [], false],
  ] as const)('%s', (_, columns, rows, near, far, runs, straight) => {
    expect(contact(columns, rows, grid(columns, rows), near, far)).toEqual({ runs: [...runs], straight })
    // A line is read from its left or upper end, in whatever order its parts are listed.
    expect(contact(columns, rows, grid(columns, rows), near, far, 'the other way round')).toEqual({ runs: [...runs], straight })
  })

  it('whose line ends in an inner corner cannot be sewn straight: the seam would have to stop there', () => {
    // The piece of 0 and 3 has an inner corner at the lower end of its line with 1.
    expect(contact(2, 2, grid(2, 2), [0], [1])).toEqual({ runs: ['1,0 1,1'], straight: true })
    expect(contact(2, 3, grid(2, 3), [0, 2, 3], [1])).toMatchObject({ straight: false })
    const units = [square('l', [0, 0], [1, 2]), square('t', [1, 0]), square('b', [0, 2], [2, 1]), square('m', [1, 1])]
    expect(contact(2, 3, units, [0, 2], [1])).toEqual({ runs: ['1,0 1,1'], straight: true })
    expect(contact(2, 3, units, [0, 2], [3])).toMatchObject({ straight: false })
  })
})
