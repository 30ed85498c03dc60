/**
 * How light a colour is, and what lies between two.
 *
 * In      `#rrggbb`.
 * Out     CIE L* from 0 (black) to 100 (white); channels from 0 to 255.
 * Exact   decimals: the only verdict that reads them is the preference for the darker side of a seam.
 * Source  IEC 61966-2-1 (sRGB) and CIE 15 (L*), white point D65.
 */

/** Below this the curve of lightness is a straight line. */
export const KNEE = 216 / 24389
export const SLOPE = 24389 / 27

/** A channel from 0 to 255 as light, from 0 to 1. */
export function linear(channel: number): number {
  const value = channel / 255
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4
}

/** Red, green and blue of `#rrggbb`, 0 to 255. */
export const channelsOf = (colour: string): [number, number, number] => {
  const channel = (at: number): number => Number.parseInt(colour.slice(at, at + 2), 16)
  return [channel(1), channel(3), channel(5)]
}

/** `#rrggbb` from red, green and blue, each from 0 to 255, rounded to whole numbers. */
export const hexOf = (channels: readonly number[]): string =>
  `#${channels.map((channel) => Math.round(channel).toString(16).padStart(2, '0')).join('')}`

/** CIE L* of an sRGB colour. */
export function lightnessOf(colour: string): number {
  const [red, green, blue] = channelsOf(colour)
  const luminance = 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue)
  return luminance > KNEE ? 116 * Math.cbrt(luminance) - 16 : luminance * SLOPE
}

/** The colour between two, `part` of the way, as threads or inks of both lie side by side: by channel. */
export function mixed(from: string, to: string, part: number): string {
  const [a, b] = [channelsOf(from), channelsOf(to)]
  return hexOf(a.map((channel, at) => channel + ((b[at] as number) - channel) * part))
}
