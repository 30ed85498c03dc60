/**
 * Colours as the eye weighs them: sRGB to CIE L*a*b* and back, under D65.
 *
 * In      three channels from 0 to 255.
 * Out     L* from 0 to 100, a* and b*; back again the nearest colour that a screen shows.
 * Exact   decimals: no verdict reads them.
 * Source  IEC 61966-2-1 (sRGB) and CIE 15 (L*a*b*), white point D65.
 */
import { hexOf, KNEE, linear, SLOPE } from './lightness.ts'

/** L*, a*, b*. */
export type Lab = readonly [number, number, number]

/** The share of each linear channel in X, Y and Z, the white being 1. */
const WHITE = [0.95047, 1, 1.08883] as const
const TO_XYZ = [
  [0.4124564, 0.3575761, 0.1804375],
  [0.2126, 0.7152, 0.0722],
  [0.0193339, 0.119192, 0.9503041],
] as const
const FROM_XYZ = [
  [3.2404542, -1.5371385, -0.4985314],
  [-0.969266, 1.8760108, 0.041556],
  [0.0556434, -0.2040259, 1.0572252],
] as const

const screen = (value: number): number => {
  const shown = value <= 0.0031308 ? value * 12.92 : 1.055 * value ** (1 / 2.4) - 0.055
  return Math.min(255, Math.max(0, Math.round(shown * 255)))
}

/** The CIE L*a*b* colour of an sRGB one; channels from 0 to 255. */
export function labOf(red: number, green: number, blue: number): Lab {
  const light = [linear(red), linear(green), linear(blue)] as const
  const [x, y, z] = TO_XYZ.map((row, axis) => {
    const part = (row[0] * light[0] + row[1] * light[1] + row[2] * light[2]) / (WHITE[axis] as number)
    return part > KNEE ? Math.cbrt(part) : (SLOPE * part + 16) / 116
  }) as [number, number, number]
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)]
}

/** The nearest `#rrggbb`; what no screen shows is cut off at its bounds. */
export function colourOfLab([lightness, a, b]: Lab): string {
  const y = (lightness + 16) / 116
  const [x, , z] = [y + a / 500, y, y - b / 200]
  const whole = (root: number): number => (root ** 3 > KNEE ? root ** 3 : (116 * root - 16) / SLOPE)
  const xyz = [whole(x) * WHITE[0], whole(y) * WHITE[1], whole(z) * WHITE[2]] as const
  return hexOf(FROM_XYZ.map((row) => screen(row[0] * xyz[0] + row[1] * xyz[1] + row[2] * xyz[2])))
}
