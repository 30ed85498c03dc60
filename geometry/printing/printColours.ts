/** Colours of cloth in print: lines that are seen on any of them, the wrong side, greys. */
import { lightnessOf, mixed } from '../colour/lightness.ts'
import { INK } from './pageStyle.ts'

/** Lightness below which a dark line is lost. */
const DARK = 42

/** The outline of a fabric: dark on light fabric, pale on dark, so that neighbours of one fabric can be told apart. */
export const edgeOf = (colour: string): string => (lightnessOf(colour) < DARK ? '#e6dccf' : '#3c312b')

/** The wrong side of a cloth: the same, washed out. */
export const wrongSideOf = (colour: string): string => mixed(colour, INK.white, 0.66)

/** Lines that mark the wrong side, seen on white cloth too. */
export const hatchOf = (colour: string): string => mixed(wrongSideOf(colour), '#6b6058', 0.34)

/** The grey that is as light as a colour: `#rrggbb` in, `#rrggbb` out. */
export function greyOf(colour: string): string {
  const level = Math.round((lightnessOf(colour) / 100) * 255)
    .toString(16)
    .padStart(2, '0')
  return `#${level.repeat(3)}`
}
