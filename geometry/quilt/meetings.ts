/**
 * Where seams of neighbouring places meet across the joints that sew fronts to fronts.
 *
 * In      joints in sewing order, the places, the seam ends on the outline of each.
 * Out     what meets at each joint, and the pressing of the joints: the fewest clashes, then the fewest joints pressed toward the side with more seam
 *         ends inside. Exact: the pressing of chains and rings that a block's own seams get (`geometry/pressing/press.ts`).
 */
import { compare, equal } from '../exact/rational.ts'
import { press } from '../pressing/press.ts'
import { verdictOf } from '../pressing/nesting.ts'
import type { Crossing, PressConstraint, Pressed } from '../pressing/values.ts'
import { message } from '../values/messages.ts'
import type { Verdict } from '../values/report.ts'
import type { AlongJoint } from './alongJoints.ts'
import type { CellJoint } from './joints.ts'
import type { ExactSize } from './measures.ts'
import type { Outline } from './outlineEnds.ts'

export interface QuiltMeeting {
  readonly at: ExactSize
  readonly joint: number
  readonly seams: readonly string[]
  readonly verdict: Verdict
}

export interface MetJoints {
  readonly meetings: readonly QuiltMeeting[]
  readonly press: readonly (0 | 1)[]
  readonly between: number
  readonly against: number
}

/** A joint on the quilt: its middle line in units of measure. */
export interface JointLine {
  readonly from: ExactSize
  readonly to: ExactSize
}

interface End {
  readonly at: ExactSize
  readonly side: 0 | 1
  readonly along: number
  readonly inward: number
  /** Leans when pressed toward its side 0; 0: open. */
  readonly lean: -1 | 0 | 1
  /** A joint that is still to be pressed; null: its lean is settled. */
  readonly joint: number | null
  readonly name: string
}

/** The name of a joint in the report; the colon keeps it apart from the maker's own ids. */
export const jointId = (joint: number): string => `q:${joint + 1}`

/** Where seams meet across the joints: the outlines of the places and the joints go in, every crossing with its seams and verdict comes out. */
export function meetAtJoints(
  outlines: readonly Outline[],
  joints: readonly CellJoint[],
  along: readonly AlongJoint[],
  lines: readonly JointLine[],
): MetJoints {
  const crossings: Crossing[] = []
  const constraints: PressConstraint[] = joints.map(() => free(null))
  const found: { crossing: number; at: ExactSize; seams: readonly string[] }[] = []
  const node = ({ joint, lean }: End): number => {
    if (joint !== null) return joint
    constraints.push({ fixed: lean === 0 ? 'open' : 0, rule: 'asked', preference: null, why: message('nothing-sewn') })
    return constraints.length - 1
  }
  joints.forEach((joint, number) => {
    const ends = endsAt(outlines, joint, along[number] as AlongJoint, lines, number)
    const inside = [0, 1].map((side) => ends.filter((end) => end.side === side).length) as [number, number]
    constraints[number] = free(inside[0] === inside[1] ? null : inside[0] > inside[1] ? 1 : 0)
    for (const there of byPlace(ends))
      for (const { type, seams } of touching(there)) {
        const leans = type === 'pair' ? ([(seams[0] as End).lean || 1, (seams[1] as End).lean || 1] as const) : null
        found.push({ crossing: crossings.length, at: (seams[0] as End).at, seams: seams.map(({ name }) => name) })
        crossings.push({ dot: 0, join: number, seams: type === 'pair' ? seams.map(node) : [], type, leans })
      }
  })
  const pressed: Pressed = press(crossings, constraints)
  return {
    meetings: found.map(({ crossing, at, seams }) => {
      const own = crossings[crossing] as Crossing
      return { at, joint: own.join, seams, verdict: verdictOf(own, pressed.toward) }
    }),
    press: joints.map((_, joint) => pressed.toward[joint] as 0 | 1),
    between: pressed.clashes,
    against: pressed.against,
  }
}

const free = (preference: 0 | 1 | null): PressConstraint => ({ fixed: null, rule: null, preference, why: message('nothing-sewn') })

/** The edge (top, right, bottom, left) that a place on one side shows a joint. */
export const edgeToward = (axis: 0 | 1, side: 0 | 1): 0 | 1 | 2 | 3 => (axis === 0 ? (side === 0 ? 1 : 3) : side === 0 ? 2 : 0)

/** The seam ends strictly inside a joint, of places that lie along it and of earlier joints. */
function endsAt(
  outlines: readonly Outline[],
  { axis }: CellJoint,
  { places, joints }: AlongJoint,
  lines: readonly JointLine[],
  number: number,
): End[] {
  const { from, to } = lines[number] as JointLine
  const along = axis === 0 ? 1 : 0
  const inside = (at: ExactSize): boolean => compare(at[along], from[along]) > 0 && compare(at[along], to[along]) < 0
  const ends: End[] = []
  for (const { number: place, side } of places)
    for (const end of outlines[place]?.[edgeToward(axis, side)] ?? []) if (inside(end.at)) ends.push({ ...end, side, joint: null, name: end.seam })
  for (const { number: other, side } of joints) {
    const line = lines[other] as JointLine
    ends.push({ at: side === 0 ? line.to : line.from, side, along: 0, inward: 1, lean: -1, joint: other, name: jointId(other) })
  }
  return ends.sort((a, b) => compare(a.at[along], b.at[along]))
}

function byPlace(ends: readonly End[]): End[][] {
  const groups: End[][] = []
  for (const end of ends) {
    const last = groups.at(-1)
    const there = last?.[0]?.at
    if (last !== undefined && there !== undefined && equal(there[0], end.at[0]) && equal(there[1], end.at[1])) last.push(end)
    else groups.push([end])
  }
  return groups
}

const mirrored = (a: End, b: End): boolean => BigInt(a.along) * BigInt(b.inward) === BigInt(b.along) * BigInt(a.inward)

function touching(ends: readonly End[]): { type: Crossing['type']; seams: readonly End[] }[] {
  const near = ends.filter(({ side }) => side === 0)
  const far = ends.filter(({ side }) => side === 1)
  const pairs = near.flatMap((a) => far.filter((b) => mirrored(a, b)).map((b) => ({ type: 'pair' as const, seams: [a, b] })))
  if (pairs.length > 0) return pairs
  if (near.length > 0 && far.length > 0) return [{ type: 'pin', seams: ends }]
  return ends.length > 1 ? [{ type: 'tip', seams: ends }] : []
}
