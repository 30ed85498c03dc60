/**
 * How many different pieces a plan makes: two are alike when one is the other turned, in the same fabrics.
 *
 * In      the laid block and its seams.
 * Out     a fingerprint for each piece that a seam makes, the same for alike pieces (none for units, which every plan makes alike); `null` where the
 *         plan is too long to compare.
 * How     each patch's corners, seen from each of the piece's four turned boxes, are mixed into a number that does not depend on their order;
 *         the least of the four stands for the piece. Used to choose between equal plans and to make alike pieces together, for no verdict.
 */
import type { Laid } from '../block/lay.ts'
import type { Dot } from '../plane/dots.ts'
import type { Seam } from './values.ts'

/** Patches looked at over all pieces before the comparison is given up. */
const MOST = 500_000

export function fingerprints(laid: Laid, seams: readonly Seam[], inFabric: 'fabrics' | 'shapes' = 'fabrics'): string[] | null {
  const held: number[][] = laid.patches.map((_, patch) => [patch])
  const fabric = new Map(laid.block.fabrics.map(({ id }, index) => [id, inFabric === 'fabrics' ? index + 1 : 1]))
  const prints: string[] = []
  let looked = 0
  for (const { sides, stage } of seams) {
    const patches = [...(held[sides[0]] as number[]), ...(held[sides[1]] as number[])]
    held.push(patches)
    held[sides[0]] = []
    held[sides[1]] = []
    if (stage === 'unit') {
      prints.push('')
      continue
    }
    looked += patches.length
    if (looked > MOST) return null
    prints.push(printOf(laid, patches, fabric))
  }
  return prints
}

/** Different pieces, or different shapes whatever their fabrics. */
export function countDifferent(laid: Laid, seams: readonly Seam[], by: 'fabrics' | 'shapes' = 'fabrics'): number {
  const prints = fingerprints(laid, seams, by)
  return prints === null ? 0 : new Set(prints).size
}

/** Pieces that are alike, two or more of a kind, each by the seam that finishes it, in sewing order. */
export function repeatsOf(laid: Laid, seams: readonly Seam[]): number[][] {
  const alike = new Map<string, number[]>()
  fingerprints(laid, seams)?.forEach((print, seam) => {
    if (print === '') return
    const there = alike.get(print)
    if (there === undefined) alike.set(print, [seam])
    else there.push(seam)
  })
  return [...alike.values()].filter((pieces) => pieces.length > 1)
}

function printOf(laid: Laid, patches: readonly number[], fabric: ReadonlyMap<string, number>): string {
  let [x0, y0, x1, y1] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const patch of patches)
    for (const [x, y] of laid.patches[patch]?.corners ?? []) {
      x0 = Math.min(x0, x)
      y0 = Math.min(y0, y)
      x1 = Math.max(x1, x)
      y1 = Math.max(y1, y)
    }
  const turned: ((dot: Dot) => Dot)[] = [
    ([x, y]) => [x - x0, y - y0],
    ([x, y]) => [y1 - y, x - x0],
    ([x, y]) => [x1 - x, y1 - y],
    ([x, y]) => [y - y0, x1 - x],
  ]
  const prints = turned.map((turn) => {
    let low = 0
    let high = 0
    for (const patch of patches) {
      const { corners, fabric: id } = laid.patches[patch] as Laid['patches'][number]
      let shape = 0
      for (const corner of corners) {
        const [x, y] = turn(corner)
        shape = (shape + mix(mix(x | 0, 0x9e3779b1), y | 0)) | 0
      }
      low = (low + mix(shape, fabric.get(id) ?? 0)) | 0
      high = (high + mix(mix(shape, 0x85ebca6b), fabric.get(id) ?? 0)) | 0
    }
    return `${patches.length}:${low}:${high}`
  })
  return prints.sort()[0] as string
}

function mix(a: number, b: number): number {
  let h = Math.imul(a ^ (b + 0x7f4a7c15), 0x2c1b3c6d)
  h = Math.imul(h ^ (h >>> 13), 0x297a2d39)
  return (h ^ (h >>> 16)) | 0
}
