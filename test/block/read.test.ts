import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inEnglish } from '../../geometry/words/english.ts'
import { checkBlock, readBlock, writeBlock } from '../../geometry/block/read.ts'
import type { Unit } from '../../geometry/values/block.ts'
import { blockOf, square } from '../help.ts'

type Loose = Record<string, unknown>
const good = (): Loose =>
  JSON.parse(
    JSON.stringify(blockOf(2, 2, [square('s', [0, 0]), { id: 'h', kind: 'hst', at: [1, 0], size: [1, 1], fabrics: { upper: 'a', lower: 'b' } }])),
  ) as Loose
const unit =
  (change: Loose): ((block: Loose) => void) =>
  (block) => {
    Object.assign((block.units as Loose[])[0] as Loose, change)
  }

describe('a block file', () => {
  it.each<[string, (block: Loose) => void]>([
    ['format', (block) => Object.assign(block, { format: 'other' })],
    ['version', (block) => Object.assign(block, { version: 2 })],
    ['measure.unit', (block) => Object.assign(block, { measure: { unit: 'ell' } })],
    ['measure.seam', (block) => Object.assign(block, { measure: { unit: 'in', seam: 0 } })],
    ['measure.round', (block) => Object.assign(block, { measure: { unit: 'in', round: '-1/8' } })],
    ['grid.columns', (block) => Object.assign(block, { grid: { columns: 1.5, rows: 2, cell: 1 } })],
    ['grid.cell', (block) => Object.assign(block, { grid: { columns: 2, rows: 2, cell: '1/0' } })],
    ['fabrics', (block) => Object.assign(block, { fabrics: {} })],
    ['fabrics[0].colour', (block) => Object.assign((block.fabrics as Loose[])[0] as Loose, { colour: 'red' })],
    ['fabrics[1].id', (block) => Object.assign((block.fabrics as Loose[])[1] as Loose, { id: 'a' })],
    ['order', (block) => Object.assign(block, { order: 'spiral' })],
    ['borders[0].fabric', (block) => Object.assign(block, { borders: [{ finishedWidth: 1, fabric: 'zz' }] })],
    ['borders[0].corner', (block) => Object.assign(block, { borders: [{ finishedWidth: 1, fabric: 'a', corner: 'zz' }] })],
    ['fabrics[0].direction', (block) => Object.assign((block.fabrics as Loose[])[0] as Loose, { direction: 'upwards' })],
    ['units[0].oversize', unit({ oversize: 0 })],
    ['units[0].oversize', unit({ oversize: 'a bit' })],
    ['name', (block) => Object.assign(block, { name: 'x'.repeat(20_001) })],
    ['fabrics[0].name', (block) => Object.assign((block.fabrics as Loose[])[0] as Loose, { name: 'x'.repeat(20_001) })],
    ['booklet.title', (block) => Object.assign(block, { booklet: { title: 'x'.repeat(20_001) } })],
    ['booklet.introduction', (block) => Object.assign(block, { booklet: { introduction: 'x'.repeat(20_001) } })],
    ['booklet.steps["a"].note', (block) => Object.assign(block, { booklet: { steps: { a: { note: 'x'.repeat(20_001) } } } })],
    ['file', (block) => Object.assign(block, { kept: JSON.parse(`${'['.repeat(101)}${']'.repeat(101)}`) as unknown })],
    [
      'file',
      (block) => Object.assign((block.units as Loose[])[0] as Loose, { kept: JSON.parse(`${'{"a":'.repeat(500)}1${'}'.repeat(500)}`) as unknown }),
    ],
    ['measure.seam', (block) => Object.assign(block, { measure: { unit: 'in', seam: 1e-9 } })],
    ['grid.cell', (block) => Object.assign(block, { grid: { columns: 2, rows: 2, cell: '1/55440' } })],
    ['borders', (block) => Object.assign(block, { borders: Array.from({ length: 61 }, () => ({ finishedWidth: 1, fabric: 'a' })) })],
    ['press', (block) => Object.assign(block, { press: Array.from({ length: 100_001 }, () => ({ at: [1, 0.5], toward: 'open' })) })],
    ['cloth.usableWidth', (block) => Object.assign(block, { cloth: { usableWidth: 0 } })],
    ['press[0].at', (block) => Object.assign(block, { press: [{ at: [1], toward: 'open' }] })],
    ['units', (block) => Object.assign(block, { units: null })],
    ['units[0].id', unit({ id: 'p:1' })],
    ['units[0].kind', unit({ kind: 'constructor' })],
    ['units[0].method', unit({ method: 'geese-4' })],
    ['units[0].fabrics', unit({ fabrics: { patch: '__proto__' } })],
    ['units[0].fabrics', unit({ fabrics: { patch: 'a', sleeve: 'a' } })],
    ['units[0].size', unit({ size: [0, 1] })],
    ['units[0].size', unit({ size: ['1e999', 1] })],
    ['units[0].turn', unit({ turn: 4 })],
    ['units[0].mirror', unit({ mirror: 'yes' })],
    ['units[0].at', unit({ at: ['1/55441', 0] })],
    ['units[0].at', unit({ at: [10001, 0] })],
    [
      'units[0].corners',
      unit({
        kind: 'polygon',
        corners: [
          [0, 0],
          [1, 1],
          [1, 0],
          [0, 1],
        ],
      }),
    ],
    [
      'units[0].corners',
      unit({
        kind: 'polygon',
        corners: [
          [0, 0],
          [1, 1],
          [2, 2],
        ],
      }),
    ],
    ['units[0].corner', unit({ kind: 'cornered', corner: 0.75, fabrics: { centre: 'a', topLeft: 'b', topRight: 'b' } })],
    ['units[0].fabrics', unit({ kind: 'strips', fabrics: { strip1: 'a', strip3: 'b' } })],
    ['units[0].size', unit({ kind: 'hst', size: [2, 1], fabrics: { upper: 'a', lower: 'b' } })],
    ['units[0].size', unit({ kind: 'goose', size: [1, 1], fabrics: { goose: 'a', leftWing: 'b', rightWing: 'b' } })],
  ])('is refused at %s', (place, spoil) => {
    const block = good()
    spoil(block)
    const read = readBlock(JSON.stringify(block))
    expect(read).toMatchObject({ ok: false, place })
    if (!read.ok) expect(inEnglish(read.message)).not.toMatch(/\n|undefined/)
  })

  const zigzag = (teeth: number): (readonly [number, number])[] => [
    ...Array.from({ length: teeth }, (_, x) => [x / 4, (x % 2) / 4] as const),
    [teeth / 4, 0],
    [teeth / 4, 9],
    [0, 9],
  ]
  /** In parts of a cell as fine as positions may be, far enough out that products of two pass what a double holds exactly. */
  const parts = (x: number, y: number): readonly [string, string] => [`${x}/55440`, `${y}/55440`]
  const FAR = 9000 * 55_440
  const outline = (...corners: unknown[]): ((block: Loose) => void) => unit({ kind: 'polygon', corners })

  it.each<[string, string, (block: Loose) => void]>([
    ['a repeated corner', 'units[0].corners', outline([0, 0], [2, 0], [2, 0], [0, 2])],
    ['a corner passed twice', 'units[0].corners', outline([0, 0], [1, 1], [2, 0], [2, 2], [1, 1], [0, 2])],
    ['a spike', 'units[0].corners', outline([0, 0], [2, 0], [2, 2], [2, 3], [2, 2.5], [0, 2])],
    ['a spike at the first corner', 'units[0].corners', outline([0, 0], [2, 0], [2, 2], [0, 2], [0, -1])],
    ['a corner on another side', 'units[0].corners', outline([0, 0], [4, 0], [4, 4], [2, 0], [0, 4])],
    [
      'a corner on a side, too far out for doubles to tell',
      'units[0].corners',
      outline([0, 0], parts(FAR, FAR - 2), parts(FAR, 0), parts(FAR / 2, FAR / 2 - 1)),
    ],
    ['two corners', 'units[0].corners', outline([0, 0], [1, 1])],
    ['one tooth among many that is crossed', 'units[0].corners', outline(...zigzag(800), [-1, 3], [150, 3])],
    ['one corner more than a patch may have', 'units[0].corners', outline(...zigzag(9998))],
    ['a text as long as a book', 'units[0].at', unit({ at: [`0.${'1234567891'.repeat(20_000)}`, 0] })],
    ['a length as long as a book', 'grid.cell', (block) => Object.assign(block, { grid: { columns: 2, rows: 2, cell: '7'.repeat(100_000) } })],
    ['true where a place belongs', 'units[0].at', unit({ at: [true, 0] })],
    ['lists in lists', 'units[0].at', unit({ at: JSON.parse('['.repeat(50) + ']'.repeat(50)) })],
    ['lists in far too many lists', 'file', unit({ at: JSON.parse('['.repeat(500) + ']'.repeat(500)) })],
    ['half a turn', 'units[0].turn', unit({ turn: 1.5 })],
    ['a turn in quotes', 'units[0].turn', unit({ turn: '1' })],
    ['no corner leg', 'units[0].corner', unit({ kind: 'cornered', fabrics: { centre: 'a', topLeft: 'b' } })],
    [
      'nothing left of the centre',
      'units[0].corner',
      unit({ kind: 'cornered', corner: 1, fabrics: { centre: 'a', topLeft: 'b', bottomRight: 'b' } }),
    ],
    ['a patch of no fabric', 'units[1].fabrics', (block) => Object.assign((block.units as Loose[])[1] as Loose, { fabrics: { upper: 'a' } })],
    ['more strips than a unit has', 'units[0].fabrics', unit({ kind: 'strips', fabrics: strips(1001) })],
    [
      'denominators that do not go together',
      'units[1].at',
      (block) => {
        unit({ at: ['1/11', '1/13'] })(block)
        Object.assign((block.units as Loose[])[1] as Loose, { at: ['1/512', 0] })
      },
    ],
    [
      'a word on pressing with a part too fine',
      'press[0].toward',
      (block) => Object.assign(block, { press: [{ at: [0, '1/11'], toward: [0, '1/10007'] }] }),
    ],
    ['no columns', 'grid.columns', (block) => Object.assign(block, { grid: { columns: 0, rows: 2, cell: 1 } })],
    ['endless columns', 'grid.columns', (block) => Object.assign(block, { grid: { columns: 1e9, rows: 2, cell: 1 } })],
    ['a border of no width', 'borders[0].finishedWidth', (block) => Object.assign(block, { borders: [{ finishedWidth: 0, fabric: 'a' }] })],
    ['a version in quotes', 'version', (block) => Object.assign(block, { version: '1' })],
    ['nothing where the order belongs', 'order', (block) => Object.assign(block, { order: null })],
  ])('is refused, in one short line: %s', (_, place, spoil) => {
    const block = good()
    spoil(block)
    const read = readBlock(JSON.stringify(block))
    expect(read).toMatchObject({ ok: false, place })
    if (!read.ok) expect(inEnglish(read.message)).toMatch(/^[^\n]{1,200}$/)
  })

  it.each<[string, (block: Loose) => void]>([
    ['a cell of a third, as a number', (block) => Object.assign(block, { grid: { columns: 2, rows: 2, cell: 10 / 3 } })],
    ['a cell with what doubles lose', (block) => Object.assign(block, { grid: { columns: 2, rows: 2, cell: 0.1 + 0.2 } })],
    ['parts that go together up to 55,440', unit({ at: ['1/11', '1/7'], size: ['1/5', '1/144'] })],
    ['a leg as long as the side, on one corner', unit({ kind: 'cornered', corner: 1, fabrics: { centre: 'a', topLeft: 'b' } })],
    [
      'four legs of half the side',
      unit({ kind: 'cornered', corner: '1/2', fabrics: { centre: 'a', topLeft: 'b', topRight: 'b', bottomRight: 'b', bottomLeft: 'b' } }),
    ],
    ['a corner in the middle of a straight side', outline([0, 0], [1, 0], [2, 0], [2, 2], [0, 2])],
    ['an outline anticlockwise', outline([0, 0], [0, 2], [2, 2], [2, 0])],
    ['an outline that misses itself by less than doubles tell', outline([0, 0], parts(FAR, FAR - 1), parts(FAR, 0), parts(FAR - 1, FAR - 2))],
    ['an outline of many teeth', outline(...zigzag(800))],
    ['as many corners as a patch may have', outline(...zigzag(9997))],
    ['a booklet in which no step has words of its own', (block) => Object.assign(block, { booklet: { title: 'Samples' } })],
    ['a place at the last cell', unit({ at: [10_000, -10_000] })],
    ['as many strips as a unit has', unit({ kind: 'strips', fabrics: strips(1000) })],
  ])('is taken: %s', (_, change) => {
    const block = good()
    change(block)
    expect(readBlock(JSON.stringify(block))).toEqual({ ok: true, value: JSON.parse(JSON.stringify(block)) })
  })

  it('shows up to 40 signs of what it refuses, and the beginning of anything longer', () => {
    const said = (turn: string): string => {
      const block = good()
      unit({ turn })(block)
      const read = readBlock(JSON.stringify(block))
      return read.ok ? 'taken' : inEnglish(read.message)
    }
    // Two of the signs are the quotation marks.
    expect(said('x'.repeat(38))).toContain(`"${'x'.repeat(38)}"`)
    expect(said('x'.repeat(39))).toContain(`"${'x'.repeat(36)}…`)
    expect(said('x'.repeat(39))).not.toContain('x'.repeat(37))
  })

  it('holds 100,000 units and no more', () => {
    const units = Array.from({ length: 100_000 }, (_, index) => square(`s${index}`, [index % 300, Math.floor(index / 300)]))
    expect(checkBlock(blockOf(300, 400, units)).ok).toBe(true)
    expect(checkBlock(blockOf(300, 400, [...units, square('last', [0, 0])]))).toMatchObject({ ok: false, place: 'units' })
  })

  it('answers any value in any place by taking or refusing it, never by failing', () => {
    const paths = everyPath(good())
    fc.assert(
      fc.property(
        fc.constantFrom(...paths),
        fc.oneof(fc.jsonValue(), fc.constantFrom('__proto__', 'constructor', -1, 1e308, '1/0', 'NaN', null)),
        (path, value) => {
          const block = good()
          put(block, path, value)
          const read = readBlock(JSON.stringify(block))
          if (read.ok) expect(readBlock(writeBlock(read.value))).toEqual(read)
          else expect(`${read.place}: ${inEnglish(read.message)}`).toMatch(/^[^\n]{3,300}$/)
        },
      ),
      { numRuns: 2000 },
    )
  })

  it('finds one simple loop exactly where every pair of sides keeps apart', () => {
    const point = fc.tuple(fc.integer({ min: 0, max: 5 }), fc.integer({ min: 0, max: 5 }))
    fc.assert(
      fc.property(fc.array(point, { minLength: 3, maxLength: 6 }), (corners) => {
        const block = good()
        outline(...corners)(block)
        expect(readBlock(JSON.stringify(block)).ok).toBe(isSimple(corners))
      }),
      { numRuns: 2000 },
    )
  })

  it.each(['', '{', '[]', 'null', '3', '"text"', '\u0000'])('is refused where the text is %j', (text) => {
    expect(readBlock(text).ok).toBe(false)
  })

  it('keeps fields it does not know, and ids such as __proto__', () => {
    const text = JSON.stringify(good()).replace('"id":"s"', '"id":"__proto__","later":{"x":1}')
    const read = readBlock(text)
    expect(read.ok).toBe(true)
    if (read.ok) expect(JSON.stringify(read.value)).toBe(text)
  })

  it('takes a free patch with an inner corner', () => {
    const corners = [
      [0, 0],
      [2, 0],
      [2, 2],
      [1, 2],
      [1, 1],
      [0, 1],
    ] as const
    const ell: Unit = { id: 'l', kind: 'polygon', corners, fabrics: { patch: 'a' } }
    expect(readBlock(JSON.stringify(blockOf(2, 2, [ell]))).ok).toBe(true)
  })
})

const strips = (count: number): Loose => Object.fromEntries(Array.from({ length: count }, (_, index) => [`strip${index + 1}`, 'a']))

type Path = readonly (string | number)[]

/** The way to every value inside a value. */
function everyPath(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path]
  return [...(path.length === 0 ? [] : [path]), ...Object.entries(value).flatMap(([key, item]) => everyPath(item, [...path, key]))]
}

function put(value: Loose, [key = '', ...rest]: Path, item: unknown): void {
  if (rest.length === 0) value[key] = item
  else put(value[key] as Loose, rest, item)
}

/** Another way to the same answer: count the points that each two sides share, by solving for the place along both. */
function isSimple(corners: readonly (readonly [number, number])[]): boolean {
  const count = corners.length
  const side = (index: number) => [corners[index % count], corners[(index + 1) % count]] as [readonly [number, number], readonly [number, number]]
  for (let i = 0; i < count; i++)
    for (let j = i + 1; j < count; j++) {
      const shared = commonPoints(side(i), side(j))
      // Neighbours share the corner between them and nothing else; of three sides each pair are neighbours.
      const neighbours = j === i + 1 || (i === 0 && j === count - 1)
      if (shared > (neighbours ? 1 : 0)) return false
    }
  return corners.every((corner, index) => corner[0] !== corners[(index + 1) % count]?.[0] || corner[1] !== corners[(index + 1) % count]?.[1])
}

/** How many points two sides have in common: none, one, or two for a stretch. */
function commonPoints([a, b]: readonly (readonly [number, number])[], [c, d]: readonly (readonly [number, number])[]): 0 | 1 | 2 {
  if (a === undefined || b === undefined || c === undefined || d === undefined) return 0
  const [ux, uy, vx, vy, wx, wy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1], c[0] - a[0], c[1] - a[1]]
  const cross = ux * vy - uy * vx
  if (cross !== 0) {
    // a + s u = c + t v, with s and t as numerators over the one denominator.
    const sign = Math.sign(cross)
    const [s, t] = [(wx * vy - wy * vx) * sign, (wx * uy - wy * ux) * sign]
    return s >= 0 && s <= Math.abs(cross) && t >= 0 && t <= Math.abs(cross) ? 1 : 0
  }
  if (wx * uy - wy * ux !== 0) return 0
  const along = ([x, y]: readonly [number, number]): number => (x - a[0]) * ux + (y - a[1]) * uy
  const [low, high] = [Math.max(0, Math.min(along(c), along(d))), Math.min(along(b), Math.max(along(c), along(d)))]
  return low > high ? 0 : low === high ? 1 : 2
}
