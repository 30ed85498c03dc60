/** Fabric by the strip: against an integer program, published counts, and itself. */
import { message } from '../../geometry/values/messages.ts'
import { describe, expect, it } from 'vitest'
import { fabricForCopies, cutListCsv, cutListText, cuttingDiagram, findings, PRECUTS, report } from '../../geometry/index.ts'
import { fromStash } from '../../geometry/cutting/strips/stash.ts'
import { stripsFor } from '../../geometry/cutting/strips/stripsPerFabric.ts'
import { alone } from '../../geometry/cutting/strips/stash.ts'
import type { Strip } from '../../geometry/values/report.ts'
import { blockOf, sequence, square, star } from '../help.ts'
import { leastToBuy, type Size } from './stripsProgram.ts'

interface Rows {
  readonly size: Size
  readonly count: number
}

const eighths = (next: () => number, from: number, to: number): number => from + Math.floor(next() * 8 * (to - from)) / 8

function drawn(seed: number, kinds: number, most: number, longest = 12): Rows[] {
  const next = sequence(seed * 101)
  return Array.from({ length: kinds }, () => ({
    size: [eighths(next, 1.5, longest), eighths(next, 1.5, 8)],
    count: 1 + Math.floor(next() * most),
  }))
}

const oneByOne = (rows: readonly Rows[]): Size[] => rows.flatMap(({ size, count }) => Array.from({ length: count }, () => size))

/** Everything wrong with strips that should hold these pieces, each once. */
function faultsOf(strips: readonly Strip[], rows: readonly Rows[], width: number): string[] {
  const held = strips.flatMap(({ pieces }) => oneByOne(pieces))
  const sorted = (sizes: readonly Size[]): string[] => sizes.map((size) => [...size].sort((a, b) => b - a).join(' by ')).sort()
  const faults = JSON.stringify(sorted(held)) === JSON.stringify(sorted(oneByOne(rows))) ? [] : ['other pieces than asked for']
  for (const { height, pieces } of strips) {
    let wide = 0
    for (const size of oneByOne(pieces)) {
      const fitting = [size, [size[1], size[0]] as const].filter(([, high]) => high <= height + 1e-9).map(([across]) => across)
      if (fitting.length === 0) faults.push(`${size} does not fit a strip ${height} high`)
      wide += Math.min(...fitting)
    }
    if (wide > width + 1e-6) faults.push(`a strip ${height} high is ${wide} long`)
  }
  return faults
}

const totalHeight = (strips: readonly Strip[]): number => strips.reduce((sum, { height }) => sum + height, 0)

describe('strips', () => {
  it.each(Array.from({ length: 14 }, (_, seed) => seed + 1))('are as short as an integer program finds (pieces %i)', (seed) => {
    const rows = drawn(seed, 2 + (seed % 4), 2)
    const { strips, length, atLeast } = stripsFor(rows, 20)
    expect(faultsOf(strips, rows, 20)).toEqual([])
    expect(totalHeight(strips)).toBeCloseTo(length, 9)
    expect(atLeast, 'proved').toBe(length)
    expect(length).toBeCloseTo(leastToBuy(oneByOne(rows), 20), 6)
  })

  it.each([1, 2, 3, 4])('are as short where sizes lie on no ruler, and where pieces are longer than the fabric is wide (pieces %i)', (seed) => {
    const next = sequence(seed * 7)
    const rows = Array.from({ length: 4 }, (): Rows => ({ size: [2 + 22 * Math.sqrt(next()), 1.5 + 5 * next()], count: 1 + Math.floor(next() * 2) }))
    const { strips, length, atLeast } = stripsFor(rows, 20)
    expect(faultsOf(strips, rows, 20).filter((fault) => fault !== 'other pieces than asked for')).toEqual([])
    expect(atLeast, 'proved').toBe(length)
    expect(length).toBeCloseTo(leastToBuy(oneByOne(rows), 20), 5)
  })

  it.each([1, 2, 3, 4, 5, 6, 7, 8])('are as short where some prints may not be turned, and those stand as they are given (pieces %i)', (seed) => {
    const rows = drawn(seed + 40, 4, 2).map((row, index) => (index % 2 === 0 ? { ...row, fixed: true as const } : row))
    const { strips, length, atLeast } = stripsFor(rows, 20)
    const held = strips.flatMap(({ height, pieces }) => pieces.flatMap((piece) => (piece.fixed ? [{ ...piece, height }] : [])))
    expect(held.every(({ size, height }) => size[1] <= height)).toBe(true)
    const given = rows.flatMap(({ size, count, fixed }: Rows & { fixed?: true }) => (fixed && size[0] !== size[1] ? oneByOne([{ size, count }]) : []))
    expect(oneByOne(held).map(String).sort()).toEqual(given.map(String).sort())
    for (const { height, pieces } of strips) {
      const wide = pieces.reduce(
        (sum, { size, count, fixed }) => sum + count * (fixed || Math.max(...size) > height ? size[0] : Math.min(...size)),
        0,
      )
      expect(wide).toBeLessThanOrEqual(20)
    }
    expect(atLeast, 'proved').toBe(length)
    const flags = rows.flatMap((row: Rows & { fixed?: true }) => Array.from({ length: row.count }, () => row.fixed === true))
    expect(length).toBeCloseTo(
      leastToBuy(oneByOne(rows), 20, [], (piece) => flags[piece] === true),
      6,
    )
  })

  it.each([1, 2, 3, 4, 5, 6])('never say a bound above what is found, nor get longer with more steps (pieces %i)', (seed) => {
    const rows = drawn(seed, 14, 6)
    const found = [100_000, 1_000_000, 20_000_000].map((steps) => stripsFor(rows, 42, steps))
    for (const { strips, length, atLeast } of found) {
      expect(faultsOf(strips, rows, 42)).toEqual([])
      expect(atLeast).toBeLessThanOrEqual(length)
      for (const other of found) expect(atLeast).toBeLessThanOrEqual(other.length)
    }
    expect(found[2]?.length).toBeLessThanOrEqual(found[0]?.length as number)
  })

  it('hold 900 different pieces, within a tenth of their area', () => {
    const next = sequence(900)
    const rows = Array.from({ length: 900 }, (): Rows => ({ size: [eighths(next, 1.5, 12), eighths(next, 1.5, 8)], count: 1 }))
    const { strips, length } = stripsFor(rows, 42, 1_000_000)
    expect(faultsOf(strips, rows, 42)).toEqual([])
    expect(length).toBeLessThan((1.1 * rows.reduce((sum, { size }) => sum + size[0] * size[1], 0)) / 42)
  })
})

describe('published counts', () => {
  it.each([
    // square, at 40, at 42
    [1.5, 624, 672],
    [2, 360, 378],
    [2.5, 224, 224],
    [3.5, 110, 120],
    [4.5, 64, 72],
    [6, 36, 42],
    [7, 25, 30],
    [10, 12, 12],
    [12, 9, 9],
  ])('a yard gives so many squares of %f [S114]', (side, at40, at42) => {
    for (const [width, count] of [
      [40, at40],
      [42, at42],
    ] as const) {
      const cloth = (squares: number): number => stripsFor([{ size: [side, side], count: squares }], width).length
      expect(cloth(count)).toBeLessThanOrEqual(36)
      expect(cloth(count + 1)).toBeGreaterThan(36)
    }
  })

  it('16 squares of 4 1/2 take two strips of a fabric 40 wide, eight from each [S115]', () => {
    const { strips, length } = stripsFor([{ size: [4.5, 4.5], count: 16 }], 40)
    expect(strips.map(({ height, pieces }) => [height, pieces[0]?.count])).toEqual([
      [4.5, 8],
      [4.5, 8],
    ])
    expect(length).toBe(9)
  })

  it.each([
    [3.5, 10],
    [5, 7],
    [5.5, 6],
    [7, 5],
  ])('a yard gives so many strips %f wide [S120] (where its table leaves nothing for straightening)', (high, count) => {
    const full = (strips: number): number => stripsFor([{ size: [42, high], count: strips }], 42).length
    expect(full(count)).toBeLessThanOrEqual(36)
    expect(full(count + 1)).toBeGreaterThan(36)
  })

  it.each([
    [2, 99],
    [2.5, 56],
    [2.875, 42],
    [3.5, 30],
    [3.875, 20],
    [4.5, 16],
    [5, 12],
    [5.875, 9],
    [6.5, 6],
    [6.875, 6],
  ])('a fat quarter 18 by 22 gives so many squares of %f [S118][S120][S121]', (side, count) => {
    expect(alone({ long: side, short: side, fixed: false }, { wide: 22, high: 18 })).toBe(count)
    const [quarter] = fromStash([{ size: [side, side], count }], [{ id: 'q', fabric: 'a', size: [18, 22], onHand: 1 }], 42).serves
    expect(quarter?.pieces[0]?.each).toBe(count)
  })
})

describe('copies', () => {
  const wings = Array.from({ length: 4 }, () => ['b', 'c'] as const)

  it('make up batches over all of them: two stars of four matching geese each need two batches of four small squares of each wing', () => {
    const large = (copies: number): number =>
      fabricForCopies(star(wings), copies)
        .cut.filter(({ method, fabric }) => method === 'geese-4' && fabric === 'a')
        .reduce((sum, { count }) => sum + count, 0)
    // Left b, right c needs each step b to c answered by one back: a batch holds two of them (from memory).
    expect(large(1)).toBe(2)
    expect(large(2)).toBe(4)
  })

  it('cut triangles of all copies from as few squares as hold them: two copies with one half each share a square', () => {
    const half = blockOf(1, 1, [{ id: 'h', kind: 'hst', at: [0, 0], size: [1, 1], method: 'plain', fabrics: { upper: 'a', lower: 'b' } }])
    const squares = (copies: number): number[] => fabricForCopies(half, copies).cut.map(({ count }) => count)
    expect(squares(1)).toEqual([1, 1])
    expect(squares(2)).toEqual([1, 1])
    expect(squares(5)).toEqual([3, 3])
  })

  it('each have borders, and never take more fabric than the same number of single ones', () => {
    const block = blockOf(2, 2, [square('s', [0, 0], [2, 2])], { borders: [{ finishedWidth: 2, fabric: 'b' }] })
    const [one, five] = [fabricForCopies(block, 1), fabricForCopies(block, 5)]
    expect(five.cut.map(({ count }) => count)).toEqual(one.cut.map(({ count }) => 5 * count))
    five.fabric.forEach(({ length }, index) => {
      expect(length).toBeLessThanOrEqual(5 * (one.fabric[index]?.length as number))
    })
  })
})

describe('a stash', () => {
  const piece = (id: string, size: Size, onHand = 1) => ({ id, fabric: 'a', size, onHand })

  it('of a strip roll serves what is no higher than the strip: 16 squares of 2 1/2 from one strip 42 long (42 / 2 1/2, [S126])', () => {
    const rows = [
      { size: [2.5, 2.5], count: 16 },
      { size: [3, 3], count: 2 },
    ] as const
    const { serves, cuts, toBuy, proved } = fromStash(rows, [piece('roll', PRECUTS.strip, 40)], 42)
    expect(serves).toEqual([{ id: 'roll', pieces: [{ size: [2.5, 2.5], each: 16 }] }])
    expect(cuts).toHaveLength(1)
    expect(toBuy.length).toBe(3)
    expect(proved).toBe(true)
  })

  it('of squares and a quarter that hold everything leaves nothing to buy', () => {
    const rows = [
      { size: [5, 5], count: 2 },
      { size: [9, 10.5], count: 4 },
    ] as const
    const { toBuy, cuts, proved } = fromStash(rows, [piece('charm', PRECUTS.charm, 2), piece('quarter', PRECUTS.quarter)], 42)
    expect(toBuy).toEqual({ strips: [], length: 0, atLeast: 0 })
    expect(proved).toBe(true)
    expect(cuts.map(({ id }) => id).sort()).toEqual(['charm', 'charm', 'quarter'])
  })

  it.each(Array.from({ length: 16 }, (_, seed) => seed + 1))('leaves as little to buy as an integer program finds (pieces %i)', (seed) => {
    const next = sequence(seed * 31)
    const rows = Array.from({ length: 3 }, (): Rows => ({ size: [eighths(next, 2, 9), eighths(next, 2, 6)], count: 1 + Math.floor(next() * 2) }))
    const sheets = Array.from({ length: 1 + (seed % 3) }, (): Size => [eighths(next, 3, 14), eighths(next, 3, 10)])
    const { cuts, toBuy, proved } = fromStash(
      rows,
      sheets.map((size, index) => piece(`s${index}`, size)),
      16,
    )
    expect(proved).toBe(true)
    expect(toBuy.length).toBeCloseTo(leastToBuy(oneByOne(rows), 16, sheets), 6)
    const strips = [...cuts.flatMap((cut) => cut.strips), ...toBuy.strips]
    expect(faultsOf(strips, rows, 16)).toEqual([])
    for (const { id, along, strips: own } of cuts) {
      const [a, b] = sheets[Number(id.slice(1))] as Size
      expect([a, b]).toContain(along)
      expect(totalHeight(own)).toBeLessThanOrEqual((along === a ? b : a) + 1e-9)
      for (const strip of own) expect(faultsOf([strip], strip.pieces, along)).toEqual([])
    }
  })
})

describe('cutting pictures', () => {
  it('show every piece once, apart from the others and within its strip, and number cuts in order', () => {
    const rows = drawn(3, 8, 5)
    const { strips, length } = stripsFor(rows, 42)
    const picture = cuttingDiagram(strips, 42)
    expect(picture.height).toBeCloseTo(length, 9)
    const pieces = picture.strips.flatMap((strip) => strip.pieces)
    expect(pieces.map(({ number }) => number)).toEqual(pieces.map((_, index) => index + 1))
    expect(pieces).toHaveLength(oneByOne(rows).length)
    const cuts = picture.strips.flatMap((strip) => strip.cuts)
    expect(cuts.map(({ number }) => number)).toEqual(cuts.map((_, index) => index + 1))
    for (const { pieces: own, leftover, x, y, width, height } of picture.strips) {
      const boxes = [...own, ...leftover]
      const area = boxes.reduce((sum, box) => sum + box.width * box.height, 0)
      // Within the strip, none on another, and together as large as it.
      expect(area).toBeCloseTo(width * height, 6)
      for (const box of boxes) {
        expect(box.x).toBeGreaterThanOrEqual(x)
        expect(box.y).toBeGreaterThanOrEqual(y)
        expect(box.x + box.width).toBeLessThanOrEqual(x + width + 1e-6)
        expect(box.y + box.height).toBeLessThanOrEqual(y + height + 1e-6)
      }
      boxes.forEach((one, index) => {
        for (const other of boxes.slice(index + 1)) {
          const apartX = one.x + one.width <= other.x + 1e-6 || other.x + other.width <= one.x + 1e-6
          const apartY = one.y + one.height <= other.y + 1e-6 || other.y + other.height <= one.y + 1e-6
          expect(apartX || apartY).toBe(true)
        }
      })
    }
  })

  it('trim a lower piece after the strip is cut across, and say what falls away', () => {
    const [strip] = cuttingDiagram(
      [
        {
          height: 4,
          pieces: [
            { size: [3, 3], count: 1 },
            { size: [4, 4], count: 1 },
          ],
        },
      ],
      8,
    ).strips
    expect(strip?.pieces.map(({ x, width, height }) => [x, width, height])).toEqual([
      [0, 4, 4],
      [4, 3, 3],
    ])
    expect(strip?.cuts.map(({ type, from, to }) => [type, from, to])).toEqual([
      ['strip', [0, 4], [8, 4]],
      ['across', [4, 0], [4, 4]],
      ['across', [7, 0], [7, 4]],
      ['trim', [4, 3], [7, 3]],
    ])
    expect(strip?.leftover).toEqual([
      { x: 4, y: 3, width: 3, height: 1 },
      { x: 7, y: 0, width: 1, height: 4 },
    ])
  })
})

describe('the report', () => {
  it('takes longer than the findings on the canvas, and gives no more fabric', () => {
    const next = sequence(5)
    const widths = Array.from({ length: 9 }, () => eighths(next, 1, 6))
    let x = 0
    const units = widths.map((wide, index) => {
      const unit = square(`u${index}`, [x, 0], [wide, 1 + (index % 3) / 4])
      x += wide
      return unit
    })
    const block = blockOf(Math.ceil(x), 2, units)
    const [quick, whole] = [findings(block).fabric[0], report(block).fabric[0]]
    expect(whole?.length).toBeLessThanOrEqual(quick?.length as number)
    expect(whole?.proved).toBe(true)
  })
})

describe('a print that may not be turned', () => {
  const directed = (units: Parameters<typeof blockOf>[2], more: Parameters<typeof blockOf>[3] = {}) =>
    blockOf(8, 8, units, { fabrics: [{ id: 'a', name: 'Oat', colour: '#efe6d2', direction: 'two-way' }], ...more })

  it('is cut as each unit lies in the block: two matching units, one turned a quarter, take two different pieces', () => {
    const block = directed([square('s', [0, 0], [3, 1]), square('t', [4, 0], [1, 3]), square('u', [0, 4], [3, 1])])
    expect(report(block).cut.map(({ size, count, fixed }) => [size, count, fixed])).toEqual([
      [[9.5, 3.5], 2, true],
      [[3.5, 9.5], 1, true],
    ])
    expect(report(block).advice).toEqual([])
    expect(cutListCsv(report(block), block).match(/,upright\r\n/g)).toHaveLength(2)
    expect(cutListText(report(block), block)).toContain('2 rectangles 9 1/2 × 3 1/2 in, the first across the fabric and the print upright')
  })

  it('stands in the cutting picture as it is cut, and is served by the stash across its print only', () => {
    const [strip] = stripsFor([{ size: [9.5, 3.5], count: 2, fixed: true }], 42).strips
    const [drawn] = cuttingDiagram([strip as Strip], 42).strips
    expect(drawn?.pieces.map(({ width, height }) => [width, height])).toEqual([
      [9.5, 3.5],
      [9.5, 3.5],
    ])
    const rows = [{ size: [9.5, 3.5], count: 2, fixed: true }] as const
    const sheet = (size: Size) => fromStash(rows, [{ id: 's', fabric: 'a', size, onHand: 1 }], 42).toBuy.length
    expect([sheet([19, 3.5]), sheet([3.5, 19])]).toEqual([0, 3.5])
  })

  it('of a border wider than the fabric lies turned, and advice says so; a border that fits lies upright', () => {
    const block = directed([square('s', [0, 0], [8, 8])], { borders: [{ finishedWidth: 3, fabric: 'a' }], grid: { columns: 8, rows: 8, cell: 5.5 } })
    const said = report({
      ...block,
      fabrics: [...block.fabrics, { id: 'b', name: 'Fern', colour: '#4f7a4a' }],
      units: block.units.map((unit) => ({ ...unit, fabrics: { patch: 'b' } })) as never,
      cloth: { usableWidth: 46 },
    })
    expect(said.problems).toEqual([])
    expect(said.cut.filter((row) => row.for.length === 0).map(({ size, fixed }) => [size, fixed])).toEqual([
      [[3.5, 44.5], true],
      [[50.5, 3.5], undefined],
    ])
    expect(said.advice).toMatchObject([
      { code: 'print', units: [], message: message('print-turned-to-fit', { fabric: 'Oat', size: [50.5, 3.5], measure: 'in' }) },
    ])
  })

  it('of free patches at the outside of a block is not mentioned, but their grain is: straight grain on the outer edge [S63]', () => {
    const triangle = (id: string, corners: [number, number][]) => ({ id, kind: 'polygon' as const, corners, fabrics: { patch: 'a' } })
    const block = blockOf(2, 1, [
      triangle('t', [
        [0, 0],
        [2, 0],
        [1, 1],
      ]),
      triangle('l', [
        [0, 0],
        [1, 1],
        [0, 1],
      ]),
      triangle('r', [
        [2, 0],
        [2, 1],
        [1, 1],
      ]),
    ])
    expect(report(block).advice).toMatchObject([{ code: 'grain', units: ['t', 'l', 'r'] }])
    expect(report({ ...block, borders: [{ finishedWidth: 1, fabric: 'b' }] }).advice).toEqual([])
  })
})
