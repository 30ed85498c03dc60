/**
 * Which patches a piece holds, in one step.
 *
 * In      the binary tree of seams over the patches.
 * Out     a lookup: whether a patch is on side 0 of a seam, on side 1, or in neither piece.
 * How     patches are listed so that every piece is one stretch of the list; a seam then needs only three numbers.
 */
import type { Seam } from '../piecing/values.ts'
import type { SideOf } from './meet.ts'

export function sideLookup(patches: number, seams: readonly Pick<Seam, 'sides'>[]): SideOf {
  const near = Int32Array.from(seams, ({ sides }) => sides[0])
  const far = Int32Array.from(seams, ({ sides }) => sides[1])
  return sideLookupOf(patches, near, far)
}

/** The same lookup from the numbers of the pieces on the two sides of each seam. */
export function sideLookupOf(patches: number, near: Int32Array, far: Int32Array): SideOf {
  const pieces = patches + near.length
  const size = new Int32Array(pieces).fill(1, 0, patches)
  const used = new Uint8Array(pieces)
  for (let seam = 0; seam < near.length; seam++) {
    const [one, other] = [near[seam] as number, far[seam] as number]
    size[patches + seam] = (size[one] as number) + (size[other] as number)
    used[one] = 1
    used[other] = 1
  }
  const start = new Int32Array(pieces)
  let next = 0
  for (let piece = pieces - 1; piece >= 0; piece--) {
    if (used[piece] !== 1) {
      start[piece] = next
      next += size[piece] as number
    }
    if (piece < patches) continue
    const one = near[piece - patches] as number
    start[one] = start[piece] as number
    start[far[piece - patches] as number] = (start[piece] as number) + (size[one] as number)
  }
  return (seam, patch) => {
    if (patch < 0) return -1
    const [one, other] = [near[seam] as number, far[seam] as number]
    const place = start[patch] as number
    const middle = start[other] as number
    if (place < (start[one] as number) || place >= middle + (size[other] as number)) return -1
    return place < middle ? 0 : 1
  }
}
