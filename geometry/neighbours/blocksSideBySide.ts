/**
 * Two blocks side by side: what happens where their seams meet on the edge they share.
 *
 * In      the edge of one block and the edge of the other that is laid against it, each as it lies once turned and pressed.
 * Out     one touch for each pair of mirror images, else one for all the ends at a place; `alone` where nothing lies opposite.
 * Exact   places are rationals and directions whole numbers.
 * Source  blocks nest as seams within a block do (seams that meet must be pressed opposite ways [S81][S89]).
 */
import { compare, type Rational, subtract } from '../exact/rational.ts'
import type { Turn } from '../values/block.ts'
import type { Toward } from '../pressing/values.ts'
import { leanOf, type ShownEdges, type ShownEnd } from './looseEnds.ts'

type EdgeVerdict = 'nests' | 'clashes' | 'open' | 'pin' | 'tip' | 'alone'

export interface EdgeTouch {
  /** Cells from the start of the first block's edge, going clockwise round that block. */
  readonly place: Rational
  /** Seams of the first block, and of the second. */
  readonly near: readonly number[]
  readonly far: readonly number[]
  readonly verdict: EdgeVerdict
}

interface PressedEnd extends ShownEnd {
  readonly lean: -1 | 0 | 1
}

/** One edge of a block as it lies: its ends by place, and its length. */
export interface LaidEdge {
  readonly ends: readonly PressedEnd[]
  readonly length: Rational
}

/** The top, right, bottom and left edges of a block after `turn` quarter turns clockwise. */
export function turnedEdges({ edges, width, height }: ShownEdges, turn: Turn, toward: readonly Toward[]): readonly LaidEdge[] {
  return [0, 1, 2, 3].map((side) => {
    const own = (side - turn + 4) % 4
    return {
      ends: (edges[own] as readonly ShownEnd[]).map((end) => ({ ...end, lean: leanOf(end, toward) })),
      length: own % 2 === 0 ? width : height,
    }
  })
}

/** Which corners of the first block's edge the joining seam passes: there, seam ends at a corner meet as well. */
export interface Passed {
  readonly start: boolean
  readonly end: boolean
}

export const NO_CORNERS: Passed = { start: false, end: false }

/** What happens on the edge that two blocks share, from the start of the first block's edge; `passed` says at which corners ends meet too. */
export function beside(one: LaidEdge, other: LaidEdge, passed: Passed = NO_CORNERS): EdgeTouch[] {
  const near = one.ends.filter((end) => end.inward > 0 && inReach(end, passed))
  const far = other.ends
    .filter((end) => end.inward > 0 && inReach(end, { start: passed.end, end: passed.start }))
    .map((end) => ({ ...end, place: subtract(one.length, end.place) }))
  const places = new Map<string, { place: Rational; near: PressedEnd[]; far: PressedEnd[] }>()
  const at = (place: Rational): { near: PressedEnd[]; far: PressedEnd[] } => {
    const key = `${place.n}/${place.d}`
    const there = places.get(key) ?? { place, near: [], far: [] }
    places.set(key, there)
    return there
  }
  for (const end of near) at(end.place).near.push(end)
  for (const end of far) at(end.place).far.push(end)
  return [...places.values()].sort((a, b) => compare(a.place, b.place)).flatMap(touchesAt)
}

const inReach = ({ corner }: ShownEnd, passed: Passed): boolean => corner === null || passed[corner]

function touchesAt({ place, near, far }: { place: Rational; near: readonly PressedEnd[]; far: readonly PressedEnd[] }): EdgeTouch[] {
  const pairs = near.flatMap((a) =>
    far.filter((b) => mirrored(a, b)).map((b): EdgeTouch => ({ place, near: [a.seam], far: [b.seam], verdict: nesting(a.lean, b.lean) })),
  )
  if (pairs.length > 0) return pairs
  const all = { place, near: near.map(({ seam }) => seam), far: far.map(({ seam }) => seam) }
  if (near.length > 0 && far.length > 0) return [{ ...all, verdict: 'pin' }]
  return [{ ...all, verdict: near.length + far.length > 1 ? 'tip' : 'alone' }]
}

/** Both edges run clockwise, so in opposite directions: mirror images run opposite ways along them. */
const mirrored = (a: ShownEnd, b: ShownEnd): boolean => BigInt(a.along) * BigInt(b.inward) === -BigInt(b.along) * BigInt(a.inward)

/** Along the shared edge, two seams lean opposite ways when both lean the same way clockwise. */
function nesting(a: -1 | 0 | 1, b: -1 | 0 | 1): EdgeVerdict {
  if (a === 0 || b === 0) return 'open'
  return a === b ? 'nests' : 'clashes'
}
