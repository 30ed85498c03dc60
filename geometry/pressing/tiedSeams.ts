/**
 * Seams that are tied to each other, directly or through others: pressing one decides the rest.
 *
 * In      the crossings of a plan, what is asked of each seam, and which seams are to be pressed alike.
 * Out     the group of each seam, and the seams of each group.
 */
import { tied } from './press.ts'
import type { Like } from './matchingSeams.ts'
import type { Crossing, Toward, Wish } from './values.ts'

export interface Groups {
  readonly of: readonly number[]
  readonly members: readonly (readonly number[])[]
}

export function groupsOf(crossings: readonly Crossing[], wishes: readonly Wish[], like: readonly (Like | null)[] | null): Groups {
  const ties: readonly (readonly { other: number }[])[] = withLikes(tied(crossings, wishes), like)
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

/** Seams of one likeness, each tied to the next. */
function withLikes(
  ties: readonly (readonly { other: number }[])[],
  like: readonly (Like | null)[] | null,
): readonly (readonly { other: number }[])[] {
  if (like === null) return ties
  const all = ties.map((own) => [...own])
  const last = new Map<number, number>()
  like.forEach((one, seam) => {
    if (one === null) return
    const before = last.get(one.likeness)
    if (before !== undefined) {
      all[before]?.push({ other: seam })
      all[seam]?.push({ other: before })
    }
    last.set(one.likeness, seam)
  })
  return all
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
