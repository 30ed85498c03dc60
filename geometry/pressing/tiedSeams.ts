/**
 * Seams that are tied to each other, directly or through others: pressing one decides the rest.
 *
 * In      the crossings of a plan, the constraint of each seam, and which seams are pressed the same way.
 * Out     the group of each seam, and the seams of each group.
 */
import { tiesOf } from './press.ts'
import type { MatchingSeam } from './matchingSeams.ts'
import type { Crossing, Toward, PressConstraint } from './values.ts'

export interface SeamGroups {
  /** By seam: its group. */
  readonly of: readonly number[]
  /** By group: its seams. */
  readonly members: readonly (readonly number[])[]
}

export function tiedSeams(
  crossings: readonly Crossing[],
  constraints: readonly PressConstraint[],
  matching: readonly (MatchingSeam | null)[] | null,
): SeamGroups {
  const ties: readonly (readonly { other: number }[])[] = withMatches(tiesOf(crossings, constraints), matching)
  const of: number[] = constraints.map(() => -1)
  const members: number[][] = []
  constraints.forEach((_, first) => {
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

/** Ties matching seams as well, each to the next. */
function withMatches(
  ties: readonly (readonly { other: number }[])[],
  matching: readonly (MatchingSeam | null)[] | null,
): readonly (readonly { other: number }[])[] {
  if (matching === null) return ties
  const all = ties.map((own) => [...own])
  const last = new Map<number, number>()
  matching.forEach((one, seam) => {
    if (one === null) return
    const before = last.get(one.group)
    if (before !== undefined) {
      all[before]?.push({ other: seam })
      all[seam]?.push({ other: before })
    }
    last.set(one.group, seam)
  })
  return all
}

/**
 * The same seams pressed the opposite way where possible. All seams of a group change together, so what nests inside the block still nests; a group
 * with a settled seam stays. `settled`: what settles a seam, the rules of methods and the maker's choices, or those choices alone (the rules lifted).
 */
export function opposite(
  { members }: SeamGroups,
  constraints: readonly PressConstraint[],
  toward: readonly Toward[],
  settled: 'rules' | 'word',
): { readonly toward: readonly Toward[]; readonly turned: number } {
  const kept = (seam: number): boolean => (settled === 'rules' ? constraints[seam]?.fixed !== null : constraints[seam]?.rule === 'asked')
  const ways = [...toward]
  let turned = 0
  for (const group of members) {
    if (group.some(kept)) continue
    for (const seam of group) ways[seam] = toward[seam] === 0 ? 1 : 0
    turned += group.length
  }
  return { toward: ways, turned }
}
