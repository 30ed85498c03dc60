/** What holds of every block, whatever lies in it: random tilings of all kinds of unit, turned, mirrored, with borders and with free patches. */
import { describe, expect, it } from 'vitest'
import { type Block, type BoxUnit, report, type Report, turnBlock, type Turn, type Unit } from '../../geometry/index.ts'
import { blockOf, sequence } from '../help.ts'
import { oneOf, tiling } from '../layouts.ts'

const BLOCKS = Array.from({ length: 40 }, (_, seed): Block => {
  const next = sequence(seed + 101)
  const [columns, rows] = [1 + Math.floor(next() * 5), 1 + Math.floor(next() * 5)]
  const borders = seed % 3 === 0 ? [{ finishedWidth: '1 1/2', fabric: 'a' }] : []
  return blockOf(columns, rows, tiling(next, columns, rows), { borders, order: oneOf(next, ['auto', 'rows', 'columns', 'sections'] as const) })
})

const number = (place: number | string): number => {
  const [n, d] = String(place).split('/').map(Number)
  return (n as number) / (d ?? 1)
}

describe('every block that can be sewn', () => {
  it('has patches whose areas add up to its own, borders and all', () => {
    for (const block of BLOCKS) {
      const { patches, block: size, measure } = report(block)
      const whole = (size.withBorders[0] - 2 * measure.seam) * (size.withBorders[1] - 2 * measure.seam)
      expect(patches.reduce((sum, { area }) => sum + area, 0)).toBeCloseTo(whole, 6)
    }
  })

  it('is one tree of joins: every patch once, every earlier piece once, each seam between two pieces', () => {
    for (const block of BLOCKS) {
      const { patches, joins } = report(block)
      const known = new Set(patches.map(({ id }) => id))
      for (const { id, sides } of joins) {
        expect(sides[0]).not.toBe(sides[1])
        for (const side of sides) expect(known.delete(side)).toBe(true)
        known.add(id)
      }
      expect(known.size).toBe(1)
    }
  })

  it('has seams as long on either side: the outlines of all patches are each seam twice and the edge once', () => {
    for (const block of BLOCKS) {
      const said = report(block)
      const cell = number(block.grid.cell)
      const along = (points: readonly (readonly [number | string, number | string])[]): number =>
        points.slice(1).reduce((sum, [x, y], index) => {
          const [px, py] = points[index] as (typeof points)[number]
          return sum + Math.hypot(number(x) - number(px), number(y) - number(py))
        }, 0)
      const outlines = said.patches.reduce((sum, { corners }) => sum + along([...corners, corners[0] as (typeof corners)[number]]), 0)
      const seams = said.joins.reduce((sum, { from, via, to }) => sum + along([from, ...via, to]), 0)
      const edge = (2 * (said.block.withBorders[0] + said.block.withBorders[1] - 4 * said.measure.seam)) / cell
      expect(2 * seams + edge).toBeCloseTo(outlines, 6)
    }
  })

  it('counts as many clashes as it shows, and fixes each of them', () => {
    for (const block of BLOCKS) {
      const { meetings, pressing } = report(block)
      const clashes = meetings.filter(({ verdict }) => verdict === 'clashes')
      expect(clashes).toHaveLength(pressing.clashes)
      for (const { fix } of clashes) expect(fix.length).toBeGreaterThan(0)
    }
  })
})

/** The block seen in a mirror, left for right. */
function mirroredBlock(block: Block): Block {
  const { columns } = block.grid
  const units = block.units.map((unit): Unit => {
    if (unit.kind === 'polygon') return { ...unit, corners: unit.corners.map(([x, y]) => [columns - number(x), y] as const) }
    const turn = ((4 - (unit.turn ?? 0)) % 4) as Turn
    const mirrored: BoxUnit = { ...unit, at: [columns - number(unit.at[0]) - number(unit.size[0]), unit.at[1]], turn, mirror: unit.mirror !== true }
    return mirrored
  })
  return { ...block, units }
}

const meetingsAt = ({ meetings }: Report, place: (x: number, y: number) => readonly [number, number]): string[] =>
  meetings
    .map(({ at, seams }) => {
      const [x, y] = place(number(at[0]), number(at[1]))
      return `${x.toFixed(6)},${y.toFixed(6)} ${seams.length}`
    })
    .sort()

describe('a block turned or mirrored', () => {
  const grids = [1, 2, 3, 4, 5, 6].map((seed) => grid(sequence(seed)))

  it('turned a quarter, meets by columns as it met by rows', () => {
    for (const block of grids) {
      const rows = report({ ...block, order: 'rows' })
      const turned = structuredClone(block)
      turnBlock().change(turned as never)
      const columns = report({ ...turned, order: 'columns' })
      expect(meetingsAt(columns, (x, y) => [x, y])).toEqual(meetingsAt(rows, (x, y) => [block.grid.rows - y, x]))
      expect([columns.pressing.clashes, columns.pressing.against]).toEqual([rows.pressing.clashes, rows.pressing.against])
      expect(columns.patches.map(({ area }) => area)).toEqual(rows.patches.map(({ area }) => area))
    }
  })

  it('mirrored, meets where the mirror image of each meeting lies', () => {
    for (const block of grids) {
      const plain = report({ ...block, order: 'rows' })
      const mirrored = report({ ...mirroredBlock(block), order: 'rows' })
      expect(meetingsAt(mirrored, (x, y) => [x, y])).toEqual(meetingsAt(plain, (x, y) => [block.grid.columns - x, y]))
      expect([mirrored.pressing.clashes, mirrored.pressing.against]).toEqual([plain.pressing.clashes, plain.pressing.against])
    }
  })
})

/** Units of one cell each: geese and halves of rectangles need another box and are scorePressing above. */
function grid(random: () => number): Block {
  const [columns, rows] = [2 + Math.floor(random() * 3), 2 + Math.floor(random() * 3)]
  const fabric = (): string => 'abcd'[Math.floor(random() * 4)] as string
  const units = Array.from({ length: columns * rows }, (_, index): Unit => {
    const base = {
      id: `u${index}`,
      at: [index % columns, Math.floor(index / columns)],
      size: [1, 1],
      turn: Math.floor(random() * 4) as Turn,
    } as const
    switch (Math.floor(random() * 4)) {
      case 0:
        return { ...base, kind: 'square', fabrics: { patch: fabric() } }
      case 1:
        return { ...base, kind: 'hst', fabrics: { upper: fabric(), lower: fabric() } }
      case 2:
        return { ...base, kind: 'hourglass', method: 'plain', fabrics: { top: fabric(), right: fabric(), bottom: fabric(), left: fabric() } }
      default:
        return {
          ...base,
          kind: 'diamond',
          fabrics: { centre: fabric(), topLeft: fabric(), topRight: fabric(), bottomRight: fabric(), bottomLeft: fabric() },
        }
    }
  })
  return blockOf(columns, rows, units)
}
