/**
 * A few colours that stand for a picture.
 *
 * In      pixels as red, green, blue, alpha from 0 to 255, and how many colours are wanted.
 * Out     at most so many colours, the lightest first, each with the part of the picture it stands for.
 * How     pixels of nearly one colour are gathered; the gathered colours are cut in two at the mean of their widest spread until there are enough
 *         heaps; then each goes to the heap with the nearest mean, again and again until none moves (k-means in L*a*b*). No chance is in it.
 */
import type { Fabric } from '../values/block.ts'
import { colourOfLab, type Lab, labOf } from './lab.ts'
import { meanLightness } from './print.ts'

export interface PaletteColour {
  readonly colour: string
  /** Of the picture, 0 to 1. */
  readonly share: number
}

/** Five bits a channel. */
const STEP = 8
/** Rounds after which hardly anything moves. */
const ROUNDS = 30

interface Dye {
  readonly lab: Lab
  readonly weight: number
}

/** Up to `count` colours that stand for a picture, from its pixels as red, green, blue and alpha (0 to 255) in a row. */
export function paletteOf(pixels: ArrayLike<number>, count: number): PaletteColour[] {
  const dyes = gathered(pixels)
  const whole = dyes.reduce((sum, { weight }) => sum + weight, 0)
  let heaps = cutInTwo(dyes, count)
  for (let round = 0, moved = true; moved && round < ROUNDS; round++) {
    const means = heaps.map(meanOf)
    const next: Dye[][] = means.map(() => [])
    for (const dye of dyes) next[nearest(dye.lab, means)]?.push(dye)
    moved = next.some((heap, at) => heap.length !== heaps[at]?.length || heap.some((dye, place) => dye !== heaps[at]?.[place]))
    heaps = next.filter((heap) => heap.length > 0)
  }
  return heaps
    .map((heap) => ({ lab: meanOf(heap), share: heap.reduce((sum, { weight }) => sum + weight, 0) / whole }))
    .sort((one, other) => other.lab[0] - one.lab[0])
    .map(({ lab, share }) => ({ colour: colourOfLab(lab), share }))
}

/** The mean colour of a picture, as the eye weighs it; grey where there is nothing to see. */
export function meanColour(pixels: ArrayLike<number>): string {
  const dyes = gathered(pixels)
  return dyes.length === 0 ? '#808080' : colourOfLab(meanOf(dyes))
}

function gathered(pixels: ArrayLike<number>): Dye[] {
  const sums = new Map<number, [number, number, number, number]>()
  for (let at = 0; at + 3 < pixels.length; at += 4) {
    if ((pixels[at + 3] as number) < 128) continue
    const [red, green, blue] = [pixels[at] as number, pixels[at + 1] as number, pixels[at + 2] as number]
    const key = (Math.floor(red / STEP) * 32 + Math.floor(green / STEP)) * 32 + Math.floor(blue / STEP)
    const sum = sums.get(key) ?? [0, 0, 0, 0]
    sum[0] += red
    sum[1] += green
    sum[2] += blue
    sum[3] += 1
    sums.set(key, sum)
  }
  return [...sums]
    .sort(([one], [other]) => one - other)
    .map(([, [red, green, blue, weight]]) => ({ lab: labOf(red / weight, green / weight, blue / weight), weight }))
}

const AXES = [0, 1, 2] as const

function meanOf(heap: readonly Dye[]): Lab {
  const weight = heap.reduce((sum, one) => sum + one.weight, 0)
  return AXES.map((axis) => heap.reduce((sum, one) => sum + one.lab[axis] * one.weight, 0) / weight) as unknown as Lab
}

interface Spread {
  readonly axis: 0 | 1 | 2
  readonly mean: number
  /** Sum of squares. */
  readonly spread: number
}

/** The axis on which a heap spreads most. */
function spreadOf(heap: readonly Dye[]): Spread {
  const mean = meanOf(heap)
  return AXES.map(
    (axis): Spread => ({
      axis,
      mean: mean[axis],
      spread: heap.reduce((sum, { lab, weight }) => sum + weight * (lab[axis] - mean[axis]) ** 2, 0),
    }),
  ).reduce((most, one) => (one.spread > most.spread ? one : most))
}

function cutInTwo(dyes: readonly Dye[], count: number): Dye[][] {
  const heaps: Dye[][] = dyes.length === 0 ? [] : [[...dyes]]
  while (heaps.length > 0 && heaps.length < count) {
    const spreads = heaps.map(spreadOf)
    const widest = spreads.reduce<number>((best, { spread }, at) => (spread > (spreads[best]?.spread as number) ? at : best), 0)
    const { axis, mean } = spreads[widest] as Spread
    const heap = heaps[widest] as Dye[]
    const low = heap.filter(({ lab }) => lab[axis] < mean)
    if (low.length === 0 || low.length === heap.length) break
    heaps.splice(
      widest,
      1,
      low,
      heap.filter(({ lab }) => lab[axis] >= mean),
    )
  }
  return heaps
}

function nearest(lab: Lab, means: readonly Lab[]): number {
  let best = 0
  let least = Number.POSITIVE_INFINITY
  means.forEach((mean, at) => {
    const apart = AXES.reduce<number>((sum, axis) => sum + (lab[axis] - mean[axis]) ** 2, 0)
    if (apart < least) [best, least] = [at, apart]
  })
  return best
}

/** A colour for a cloth, and the colour beside it on the palette for what may be printed on it. */
export interface ClothColours {
  readonly colour: string
  readonly second: string
}

/** The lightest fabric takes the lightest colour and the darkest the darkest: light stays light, dark stays dark. Colours as `paletteOf` gives them. */
export function coloursByValue(fabrics: readonly Fabric[], colours: readonly string[]): Record<string, ClothColours> {
  const sorted = fabrics.map((fabric) => ({ id: fabric.id, lightness: meanLightness(fabric) })).sort((one, other) => other.lightness - one.lightness)
  const last = Math.max(1, sorted.length - 1)
  return Object.fromEntries(
    sorted.map(({ id }, rank) => {
      const place = Math.round((rank * (colours.length - 1)) / last)
      const colour = colours[place] as string
      return [id, { colour, second: colours[place + 1] ?? colours[place - 1] ?? colour }]
    }),
  )
}
