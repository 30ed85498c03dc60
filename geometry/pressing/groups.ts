/**
 * Seams that are tied to each other, directly or through others: pressing one decides the rest.
 *
 * In      the crossings of a plan and what is asked of each seam.
 * Out     the group of each seam, and the seams of each group.
 */
import { tied } from './chains.ts'
import type { Crossing, Toward, Wish } from './values.ts'

export interface Groups {
  readonly of: readonly number[]
  readonly members: readonly (readonly number[])[]
}

export function groupsOf(crossings: readonly Crossing[], wishes: readonly Wish[]): Groups {
  const ties = tied(crossings, wishes)
  const of: number[] = wishes.map(() => -1)
  const members: number[][] = []
  wishes.forEach((_, first) => {
    if (of[first] !== -1) return
    const group: number[] = [first]
    of[first] = members.length
    for (const seam of group)
      for (const { other } of ties[seam] ?? []) {
        if (of[other] !== -1) continue
        of[other] = members.length
        group.push(other)
      }
    members.push(group)
  })
  return { of, members }
}

/**
 * The same seams pressed the opposite way, as far as may be: a group turns whole, so what nests inside the block still nests; a group in which one seam
 * is settled stays. `settled` says which: by the rules of methods and the maker's word, or by the maker's word alone (the rules lifted).
 */
export function opposite(
  { members }: Groups,
  wishes: readonly Wish[],
  toward: readonly Toward[],
  settled: 'rules' | 'word',
): { readonly toward: readonly Toward[]; readonly turned: number } {
  const kept = (seam: number): boolean => (settled === 'rules' ? wishes[seam]?.fixed !== null : wishes[seam]?.rule === 'asked')
  const ways = [...toward]
  let turned = 0
  for (const group of members) {
    if (group.some(kept)) continue
    for (const seam of group) ways[seam] = toward[seam] === 0 ? 1 : 0
    turned += group.length
  }
  return { toward: ways, turned }
}
