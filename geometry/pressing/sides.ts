/**
 * Which patches a piece holds, in one step.
 *
 * In      the binary tree of seams over the patches.
 * Out     a question: is this patch on side 0 of that seam, on side 1, or in neither piece?
 * How     patches are listed so that every piece is one stretch of the list; a seam then needs only three numbers.
 */
import type { Seam } from '../piecing/values.ts'
import type { SideOf } from './meet.ts'

export function sidesOf(patches: number, seams: readonly Seam[]): SideOf {
  const size: number[] = new Array(patches).fill(1)
  const used: boolean[] = []
  for (const { sides } of seams) {
    size.push((size[sides[0]] as number) + (size[sides[1]] as number))
    for (const side of sides) used[side] = true
  }
  const start: number[] = []
  let next = 0
  for (let piece = size.length - 1; piece >= 0; piece--) {
    if (used[piece] !== true) {
      start[piece] = next
      next += size[piece] as number
    }
    if (piece < patches) continue
    const { sides } = seams[piece - patches] as Seam
    start[sides[0]] = start[piece] as number
    start[sides[1]] = (start[piece] as number) + (size[sides[0]] as number)
  }
  return (seam, patch) => {
    if (patch < 0) return -1
    const [near, far] = (seams[seam] as Seam).sides
    const place = start[patch] as number
    const begin = start[near] as number
    const middle = start[far] as number
    if (place < begin || place >= middle + (size[far] as number)) return -1
    return place < middle ? 0 : 1
  }
}
