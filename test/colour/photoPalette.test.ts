import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { labOf } from '../../geometry/colour/lab.ts'
import { channelsOf, hexOf } from '../../geometry/colour/lightness.ts'
import { coloursByValue, meanColour, paletteOf } from '../../geometry/colour/photoPalette.ts'
import { meanLightness } from '../../geometry/colour/print.ts'
import { FABRICS } from '../help.ts'

const pixelsOf = (colours: readonly (readonly [string, number])[]): number[] =>
  colours.flatMap(([colour, times]) => Array.from({ length: times }, () => [...channelsOf(colour), 255]).flat())
const hex = fc.tuple(...([0, 1, 2] as const).map(() => fc.integer({ min: 0, max: 255 }))).map(hexOf)
const apart = (a: string, b: string): number => {
  const [p, q] = [labOf(...channelsOf(a)), labOf(...channelsOf(b))]
  return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2])
}

describe('a palette from a picture', () => {
  it('of a few plain colours is those colours, the lightest first, each with its part', () => {
    const palette = paletteOf(
      pixelsOf([
        ['#3a4a6b', 10],
        ['#efe6d2', 50],
        ['#b8643f', 20],
        ['#4f7a4a', 20],
      ]),
      4,
    )
    expect(palette).toEqual([
      { colour: '#efe6d2', share: 0.5 },
      { colour: '#b8643f', share: 0.2 },
      { colour: '#4f7a4a', share: 0.2 },
      { colour: '#3a4a6b', share: 0.1 },
    ])
  })

  it('has no more colours than the picture, passes over what cannot be seen, and is empty for nothing', () => {
    expect(paletteOf(pixelsOf([['#112233', 9]]), 6)).toEqual([{ colour: '#112233', share: 1 }])
    expect(paletteOf([255, 0, 0, 0, 17, 34, 51, 255], 4)).toEqual([{ colour: '#112233', share: 1 }])
    expect(paletteOf([], 4)).toEqual([])
    expect(meanColour([])).toBe('#808080')
  })

  it('does not depend on where in the picture a colour lies, and every pixel is counted once', () => {
    fc.assert(
      fc.property(fc.array(hex, { minLength: 1, maxLength: 60 }), fc.integer({ min: 4, max: 8 }), (colours, count) => {
        const palette = paletteOf(pixelsOf(colours.map((colour) => [colour, 1])), count)
        expect(palette.length).toBeLessThanOrEqual(count)
        expect(palette.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9)
        expect(paletteOf(pixelsOf([...colours].reverse().map((colour) => [colour, 1])), count)).toEqual(palette)
      }),
    )
  })

  it('lies closer to the picture than one colour alone does', () => {
    fc.assert(
      fc.property(fc.array(hex, { minLength: 12, maxLength: 40 }), (colours) => {
        const pixels = pixelsOf(colours.map((colour) => [colour, 1]))
        const cost = (palette: readonly string[]): number =>
          colours.reduce((sum, colour) => sum + Math.min(...palette.map((one) => apart(one, colour))) ** 2, 0)
        // Rounding to what a screen shows may cost a little.
        expect(cost(paletteOf(pixels, 5).map(({ colour }) => colour))).toBeLessThanOrEqual(cost([meanColour(pixels)]) * 1.02 + colours.length)
      }),
    )
  })
})

describe('recolouring by value', () => {
  it('keeps light light and dark dark', () => {
    fc.assert(
      fc.property(fc.array(hex, { minLength: 1, maxLength: 8 }), (colours) => {
        const light = [...colours].sort((a, b) => labOf(...channelsOf(b))[0] - labOf(...channelsOf(a))[0])
        const taken = coloursByValue(FABRICS, light)
        for (const { colour, second } of Object.values(taken)) {
          expect(light).toContain(second)
          if (new Set(colours).size === colours.length && colours.length > 1) expect(second).not.toBe(colour)
        }
        const sorted = [...FABRICS].sort((a, b) => meanLightness(b) - meanLightness(a)).map(({ id }) => light.indexOf(taken[id]?.colour as string))
        expect(sorted).toEqual([...sorted].sort((a, b) => a - b))
        if (colours.length >= FABRICS.length && new Set(colours).size === colours.length)
          expect(new Set(Object.values(taken).map(({ colour }) => colour)).size).toBe(FABRICS.length)
      }),
    )
  })
})
