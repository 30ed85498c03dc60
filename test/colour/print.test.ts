import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inEnglish } from '../../geometry/words/english.ts'
import { readBlock } from '../../geometry/block/read.ts'
import { type Fabric, PRINTS } from '../../geometry/values/block.ts'
import { colourOfLab, labOf } from '../../geometry/colour/lab.ts'
import { channelsOf, hexOf, lightnessOf, mixed } from '../../geometry/colour/lightness.ts'
import { photoSize, pictureSize } from '../../geometry/colour/pictureSize.ts'
import { flatColour, marksOf, meanLightness, PRINT_FACTS, type PrintMark, type PrintPoint } from '../../geometry/colour/print.ts'
import { blockOf, square } from '../help.ts'

const hex = fc.tuple(...([0, 1, 2] as const).map(() => fc.integer({ min: 0, max: 255 }))).map(hexOf)

describe('colours as the eye weighs them', () => {
  it.each([
    // The three lights of a screen and white: widely printed values of L*a*b* under D65, from memory.
    ['#ff0000', 53.24, 80.09, 67.2],
    ['#00ff00', 87.74, -86.18, 83.18],
    ['#0000ff', 32.3, 79.19, -107.86],
    ['#ffffff', 100, 0, 0],
  ])('%s', (colour, lightness, a, b) => {
    const lab = labOf(...channelsOf(colour))
    expect(lab[0]).toBeCloseTo(lightness, 1)
    expect(lab[1]).toBeCloseTo(a, 1)
    expect(lab[2]).toBeCloseTo(b, 1)
  })

  it('goes there and back, and its L* is the lightness that pressing weighs', () => {
    fc.assert(
      fc.property(hex, (colour) => {
        const lab = labOf(...channelsOf(colour))
        expect(colourOfLab(lab)).toBe(colour)
        expect(lab[0]).toBeCloseTo(lightnessOf(colour), 9)
      }),
    )
  })
})

const drawn = PRINTS.filter((kind) => kind !== 'photo')
const fabricOf = (kind: (typeof drawn)[number], colour: string, second: string): Fabric => ({
  id: 'f',
  name: 'Fern',
  colour,
  print: { kind, second, repeat: 1 },
})

describe('drawn prints', () => {
  it.each(drawn)('%s: the mean lightness is that of a fine grid of points over one repeat', (kind) => {
    const fabric = fabricOf(kind, '#efe6d2', '#3a4a6b')
    const GRID = 240
    let sum = 0
    let most = 0
    for (let y = 0; y < GRID; y++)
      for (let x = 0; x < GRID; x++) {
        const at: PrintPoint = [(x + 0.5) / GRID, (y + 0.5) / GRID]
        const on = marksOf(fabric, fabric.print as NonNullable<Fabric['print']>).filter(({ mark }) => holds(mark, at))
        most = Math.max(most, on.length)
        sum += lightnessOf(on[0]?.colour ?? fabric.colour)
      }
    expect(most, 'no two marks lie over each other').toBe(1)
    expect(meanLightness(fabric)).toBeCloseTo(sum / GRID ** 2, 0)
    const [low, high] = [lightnessOf('#3a4a6b'), lightnessOf('#efe6d2')]
    expect(meanLightness(fabric)).toBeGreaterThan(low)
    expect(lightnessOf(flatColour(fabric))).toBeLessThan(high)
  })

  it.each(drawn)('%s: nothing is cut off at the edge of a repeat', (kind) => {
    // What touches the right edge goes on at the left, and what touches the bottom goes on at the top.
    const edge = (axis: 0 | 1, at: number): number =>
      Array.from({ length: 500 }, (_, step) => {
        const along = (step + 0.5) / 500
        const point: PrintPoint = axis === 0 ? [at, along] : [along, at]
        return PRINT_FACTS[kind].marks.filter((mark) => holds(mark, point)).reduce((sum, { part }) => sum + part, 0)
      }).reduce((sum, part) => sum + part, 0)
    // A check changes where a repeat ends: that is its weave.
    if (kind === 'checks') return expect(edge(0, 0.001)).toBeCloseTo(edge(1, 0.001), 6)
    expect(edge(0, 0.001)).toBe(edge(0, 0.999))
    expect(edge(1, 0.001)).toBe(edge(1, 0.999))
  })

  it('stripes look the same turned half round, sprigs do not, dots and checks also by a quarter: as their direction says', () => {
    const sameTurned = (kind: (typeof drawn)[number], turn: (point: PrintPoint) => PrintPoint): boolean =>
      [0, 0.25, 0.5, 0.75].some((dx) =>
        [0, 0.25, 0.5, 0.75].some((dy) =>
          points.every((point) => {
            const [x, y] = turn(point)
            return tone(kind, point) === tone(kind, [(x + dx + 2) % 1, (y + dy + 2) % 1])
          }),
        ),
      )
    const points = Array.from({ length: 400 }, (_, at): PrintPoint => [((at % 20) + 0.31) / 20, (Math.floor(at / 20) + 0.37) / 20])
    const half = ([x, y]: PrintPoint): PrintPoint => [1 - x, 1 - y]
    const quarter = ([x, y]: PrintPoint): PrintPoint => [1 - y, x]
    for (const kind of drawn) {
      expect(sameTurned(kind, half), kind).toBe(PRINT_FACTS[kind].direction !== 'one-way')
      expect(sameTurned(kind, quarter), kind).toBe(PRINT_FACTS[kind].direction === null)
    }
  })
})

const tone = (kind: (typeof drawn)[number], point: PrintPoint): number => PRINT_FACTS[kind].marks.find((mark) => holds(mark, point))?.part ?? 0

function holds(mark: PrintMark, [x, y]: PrintPoint): boolean {
  if (mark.type === 'disc') return Math.hypot(x - mark.at[0], y - mark.at[1]) < mark.radius
  let inside = false
  mark.corners.forEach(([ax, ay], index) => {
    const [bx, by] = mark.corners[(index + 1) % mark.corners.length] as PrintPoint
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside
  })
  return inside
}

/** The smallest JPEG that says how large it is: start, a comment, a frame header of 40 by 30, end. */
const bytes = [0xff, 0xd8, 0xff, 0xfe, 0, 4, 65, 66, 0xff, 0xc0, 0, 11, 8, 0, 30, 0, 40, 1, 1, 0x11, 0, 0xff, 0xd9]
const photo = `data:image/jpeg;base64,${Buffer.from(bytes).toString('base64')}`

describe('prints in a block file', () => {
  const withPrint = (print: unknown): string =>
    JSON.stringify({ ...blockOf(1, 1, [square('s', [0, 0])]), fabrics: [{ id: 'a', name: 'Oat', colour: '#efe6d2', print }] })

  it.each([
    [{ kind: 'dots', second: '#123456', repeat: '1/2' }],
    [{ kind: 'photo', repeat: 4, photo }],
    [{ kind: 'sprigs', second: '#ABCDEF', repeat: 2.5, later: true }],
  ])('row %# is read and kept', (print) => {
    const read = readBlock(withPrint(print))
    expect(read.ok && read.value.fabrics[0]?.print).toEqual(print)
  })

  it.each([
    ['fabrics[0].print', 'dots'],
    ['fabrics[0].print.kind', { kind: 'plaid', second: '#123456', repeat: 1 }],
    ['fabrics[0].print.kind', { kind: 'constructor', second: '#123456', repeat: 1 }],
    ['fabrics[0].print.second', { kind: 'dots', repeat: 1 }],
    ['fabrics[0].print.second', { kind: 'dots', second: 'red', repeat: 1 }],
    ['fabrics[0].print.repeat', { kind: 'dots', second: '#123456', repeat: 0 }],
    ['fabrics[0].print.repeat', { kind: 'dots', second: '#123456' }],
    ['fabrics[0].print.photo', { kind: 'photo', repeat: 1 }],
    ['fabrics[0].print.photo', { kind: 'photo', repeat: 1, photo: 'https://example.org/a.jpg' }],
    ['fabrics[0].print.photo', { kind: 'photo', repeat: 1, photo: 'data:image/svg+xml;base64,AAAA' }],
    ['fabrics[0].print.photo', { kind: 'photo', repeat: 1, photo: 'data:image/jpeg;base64,AAAA' }],
    ['fabrics[0].print.photo', { kind: 'dots', second: '#123456', repeat: 1, photo: 7 }],
  ])('%s is named where it will not do (row %#)', (place, print) => {
    const read = readBlock(withPrint(print))
    expect(read.ok).toBe(false)
    if (!read.ok) {
      expect(read.place).toBe(place)
      expect(inEnglish(read.message)).not.toMatch(/\n/)
    }
  })

  it('reads the size of a photograph from its own header, and never falls over', () => {
    expect(photoSize(photo)).toEqual({ width: 40, height: 30 })
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 60 }), (tail) => {
        const text = `data:image/jpeg;base64,${Buffer.from([0xff, 0xd8, ...tail]).toString('base64')}`
        const size = photoSize(text)
        expect(size === null || (size.width > 0 && size.height > 0)).toBe(true)
      }),
    )
  })

  /** A PNG's signature and its header, which says how large it is: ISO/IEC 15948, 5.2 and 11.2.2. */
  const png = (width: number, height: number): string => {
    const header = Buffer.alloc(24)
    header.set([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52])
    header.writeUInt32BE(width, 16)
    header.writeUInt32BE(height, 20)
    return `data:image/png;base64,${header.toString('base64')}`
  }
  const withStep = (photograph: string): string =>
    JSON.stringify({ ...blockOf(1, 1, [square('s', [0, 0])]), booklet: { steps: { layout: { photograph } } } })

  it('refuses a photograph of a step that says it is far too large or empty, before it is unpacked', () => {
    expect(pictureSize(png(1200, 900))).toEqual({ width: 1200, height: 900 })
    expect(readBlock(withStep(png(1200, 900))).ok).toBe(true)
    expect(readBlock(withStep(photo)).ok).toBe(true)
    const claims = Buffer.from(bytes)
    claims.writeUInt16BE(0xffff, 13)
    claims.writeUInt16BE(0xffff, 15)
    for (const picture of [png(30_000, 30_000), png(0, 0), png(1, 0), `data:image/jpeg;base64,${claims.toString('base64')}`])
      expect(readBlock(withStep(picture))).toMatchObject({
        ok: false,
        place: 'booklet.steps["layout"].photograph',
        message: { code: 'photograph-size' },
      })
  })

  it('mixes by channel', () => {
    expect(mixed('#000000', '#ffffff', 0.5)).toBe('#808080')
  })
})
