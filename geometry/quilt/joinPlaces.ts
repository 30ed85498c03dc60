/**
 * Places joined in one order: joints with their lengths, marks and strips, and what meets on them.
 *
 * In      laid places that fit, the quilt's measures, an order.
 * Out     joints with exact lengths in the measure's unit; null where these places cannot be joined by straight full-length joints.
 */
import { add, compare, multiply, type Rational, rational, subtract, ZERO } from '../exact/rational.ts'
import type { Quilt } from '../values/quilt.ts'
import { type AlongJoint, alongJoints } from './alongJoints.ts'
import { type CellBox, type CellJoint, type JointOrder, jointsOf } from './joints.ts'
import { type ExactSize, type Measures, spanOf, startOf, times } from './measures.ts'
import { type JointLine, meetAtJoints, type MetJoints } from './meetings.ts'
import type { Outline } from './outlineEnds.ts'
import type { LaidPlace } from './places.ts'
import { type JointStrip, jointStrip } from './strips.ts'

export interface PlacedJoint extends JointLine {
  readonly cells: CellJoint
  readonly length: Rational
  readonly underArm: Rational
  /** From `from`, rising. */
  readonly marks: readonly Rational[]
  readonly strip: JointStrip | null
}

export interface JoinedPlaces {
  readonly order: JointOrder
  readonly joints: readonly PlacedJoint[]
  readonly along: readonly AlongJoint[]
  /** Null where a gap or a sash keeps fronts apart. */
  readonly met: MetJoints | null
}

/** Whether fronts are sewn to fronts, so that seams of two places meet: no gap and no sash. */
export const frontsMeet = ({ gap }: Measures, quilt: Quilt): boolean =>
  gap.n === 0n && !(quilt.way?.sash !== undefined && (quilt.way.join ?? 'whole') === 'whole')

export function joinPlaces(
  quilt: Quilt,
  measures: Measures,
  places: readonly LaidPlace[],
  outlines: readonly Outline[],
  order: JointOrder,
): JoinedPlaces | null {
  const cells = jointsOf(places, order, (axis, count) => spanOf(measures, axis, count))
  if (cells === null) return null
  const along = alongJoints(places, cells)
  const joints = cells.map((joint, number) => placedJoint(quilt, measures, cells, joint, along[number] as AlongJoint))
  const met = frontsMeet(measures, quilt) ? meetAtJoints(outlines, cells, along, joints) : null
  return { order, joints, along, met }
}

function placedJoint(quilt: Quilt, measures: Measures, all: readonly CellJoint[], joint: CellJoint, beside: AlongJoint): PlacedJoint {
  const { axis, cut, from, to } = joint
  const along = axis === 0 ? 1 : 0
  const seams = times(measures.seam, 2)
  const start = startOf(measures, along, from)
  const end = subtract(startOf(measures, along, to), measures.gap)
  const line = middleOf(measures, axis, cut)
  const at = (place: Rational): ExactSize => (axis === 0 ? [line, place] : [place, line])
  const length = add(subtract(end, start), seams)
  const ends = [0, 1].map((side) => beside.joints.filter((one) => one.side === side).map((one) => (all[one.number] as CellJoint).cut))
  const distance = (other: number): Rational => subtract(middleOf(measures, along, other), start)
  const marks = [...new Set(ends.flat())].sort((a, b) => a - b).map(distance)
  const crossings = (ends[0] as number[]).filter((one) => (ends[1] as number[]).includes(one)).map(distance)
  const depth = (box: CellBox): Rational => add(spanOf(measures, axis, (box[axis + 2] as number) - (box[axis] as number)), seams)
  const [one, other] = joint.boxes.map(depth) as [Rational, Rational]
  return {
    cells: joint,
    from: at(start),
    to: at(end),
    length,
    underArm: compare(one, other) < 0 ? one : other,
    marks,
    strip: jointStrip(measures, quilt.way ?? {}, length, crossings),
  }
}

/** The middle of the gap at a grid line. */
const middleOf = (measures: Measures, axis: 0 | 1, line: number): Rational =>
  subtract(startOf(measures, axis, line), multiply(measures.gap, rational(1, 2)))

/** The greatest of some lengths; 0 for none. */
export const most = (lengths: readonly Rational[]): Rational => lengths.reduce((all, one) => (compare(one, all) > 0 ? one : all), ZERO)
