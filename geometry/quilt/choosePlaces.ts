/**
 * How each free place is turned and pressed, so that the fewest seams clash on the joints.
 *
 * In      for each place the ways it may lie, the first as it is; the joints with what lies along them.
 * Out     a way for each place: the fewest clashes, then the fewest places changed; and a number of clashes that no choice can be below.
 * How     two seams clash or nest whatever a third does, and every pair is of two places, of a place and a joint, or of two joints. So places and
 *         joints are nodes of a network where only pairs cost something: see `leastChoices`.
 */
import { equal } from '../exact/rational.ts'
import { leastChoices, type PairProblem } from '../solvers/pairChoices.ts'
import type { AlongJoint } from './alongJoints.ts'
import type { PlacedJoint } from './joinPlaces.ts'
import { edgeToward } from './meetings.ts'
import { endKey, type Outline, type OutlineEnd } from './outlineEnds.ts'
import type { LaidPlace } from './places.ts'

interface ChosenPlaces {
  /** By place: which of its ways. */
  readonly ways: readonly number[]
  readonly clashes: number
  readonly atLeast: number
}

/** Seam ends by where they lie along a joint and how they run: leans along it, +1 right or down, 0 open. */
type Leans = ReadonlyMap<string, number>

export function choosePlaces(
  places: readonly LaidPlace[],
  outlines: readonly (readonly Outline[])[],
  joints: readonly PlacedJoint[],
  along: readonly AlongJoint[],
): ChosenPlaces {
  const network = new Network(outlines, joints)
  joints.forEach((joint, number) => {
    const { places: beside, joints: ending } = along[number] as AlongJoint
    const [near, far] = [beside.filter(({ side }) => side === 0), beside.filter(({ side }) => side === 1)]
    for (const one of near)
      for (const other of far)
        if (overlap(places[one.number] as LaidPlace, places[other.number] as LaidPlace, joint)) network.placesMeet(joint, one.number, other.number)
    for (const end of ending) {
      const across = ending.find(({ number: other, side }) => side !== end.side && joints[other]?.cells.cut === joints[end.number]?.cells.cut)
      if (across !== undefined && end.side === 0) network.jointsMeet(end.number, across.number)
      for (const { number: place, side } of beside)
        if (side !== end.side && passes(joints[end.number] as PlacedJoint, places[place] as LaidPlace))
          network.placeMeetsJoint(joint, place, side, end.number)
    }
  })
  return network.chosen(places)
}

function overlap(one: LaidPlace, other: LaidPlace, { cells: { axis } }: PlacedJoint): boolean {
  const along = axis === 0 ? 1 : 0
  const [a, b] = [one.place.at[along], other.place.at[along]]
  return a < b + other.size[along] && b < a + one.size[along]
}

/** Whether a joint ends between the two ends of a place's edge. */
function passes({ cells: { axis, cut } }: PlacedJoint, { place: { at }, size }: LaidPlace): boolean {
  return at[axis] < cut && cut < at[axis] + size[axis]
}

class Network {
  private readonly outlines: readonly (readonly Outline[])[]
  private readonly joints: readonly PlacedJoint[]
  private readonly weight: number
  private readonly costs = new Map<string, { nodes: readonly [number, number]; costs: number[][] }>()
  private readonly leans = new Map<string, Leans>()

  constructor(outlines: readonly (readonly Outline[])[], joints: readonly PlacedJoint[]) {
    this.outlines = outlines
    this.joints = joints
    // One clash outweighs a change of every place.
    this.weight = outlines.length + 1
  }

  placesMeet(joint: PlacedJoint, near: number, far: number): void {
    const { axis } = joint.cells
    this.add(near, far, this.waysOf(near), this.waysOf(far), (one, other) => {
      const [a, b] = [this.leansOf(near, one, edgeToward(axis, 0), joint), this.leansOf(far, other, edgeToward(axis, 1), joint)]
      let clashes = 0
      for (const [end, lean] of a) if (lean !== 0 && b.get(end) === lean) clashes++
      return clashes
    })
  }

  /** Joints are pressed toward either side: away from the start of what they end on, or toward it. */
  placeMeetsJoint(joint: PlacedJoint, place: number, side: 0 | 1, ending: number): void {
    const { axis } = joint.cells
    const line = this.joints[ending] as PlacedJoint
    const key = endKey(line.from[axis === 0 ? 1 : 0], { along: 0, inward: 1 })
    this.add(place, this.outlines.length + ending, this.waysOf(place), 2, (way, toward) => {
      const lean = this.leansOf(place, way, edgeToward(axis, side), joint).get(key)
      return lean !== undefined && lean === (toward === 0 ? -1 : 1) ? 1 : 0
    })
  }

  jointsMeet(one: number, other: number): void {
    const before = this.outlines.length
    this.add(before + one, before + other, 2, 2, (a, b) => (a === b ? 1 : 0))
  }

  private readonly waysOf = (place: number): number => (this.outlines[place] as readonly Outline[]).length

  private add(one: number, other: number, ways: number, otherWays: number, clashes: (one: number, other: number) => number): void {
    const key = `${one} ${other}`
    const there = this.costs.get(key) ?? { nodes: [one, other] as const, costs: Array.from({ length: ways }, () => new Array(otherWays).fill(0)) }
    this.costs.set(key, there)
    for (let a = 0; a < ways; a++)
      for (let b = 0; b < otherWays; b++) (there.costs[a] as number[])[b] = ((there.costs[a] as number[])[b] as number) + this.weight * clashes(a, b)
  }

  /** The ends on one edge of a place, strictly inside the joint that it lies along: each edge lies along one joint. */
  private leansOf(place: number, way: number, edge: 0 | 1 | 2 | 3, joint: PlacedJoint): Leans {
    const key = `${place} ${way} ${edge}`
    const known = this.leans.get(key)
    if (known !== undefined) return known
    const along = joint.cells.axis === 0 ? 1 : 0
    const ends = this.outlines[place]?.[way]?.[edge] as readonly OutlineEnd[]
    const [from, to] = [joint.from[along], joint.to[along]]
    const leans = new Map(
      ends.filter(({ at }) => !equal(at[along], from) && !equal(at[along], to)).map((end) => [endKey(end.at[along], end), end.lean]),
    )
    this.leans.set(key, leans)
    return leans
  }

  chosen(places: readonly LaidPlace[]): ChosenPlaces {
    const joints = this.joints.length
    const problem: PairProblem = {
      own: [...this.outlines.map((ways) => ways.map((_, way) => (way === 0 ? 0 : 1))), ...Array.from({ length: joints }, () => [0, 0])],
      pairs: [...this.costs.values()],
      orders: this.orders(places),
    }
    const { states, cost, atLeast } = leastChoices(problem)
    return {
      ways: states.slice(0, this.outlines.length),
      clashes: Math.floor(cost / this.weight),
      atLeast: Math.floor(atLeast / this.weight),
    }
  }

  /** Row by row and column by column; each joint before the place where it begins. */
  private orders(places: readonly LaidPlace[]): number[][] {
    const corners = [
      ...places.map(({ place: { at } }) => at),
      ...this.joints.map(({ cells: { axis, cut, from } }) => (axis === 0 ? ([cut, from] as const) : ([from, cut] as const))),
    ]
    const nodes = corners.map((_, node) => node)
    const at = (node: number): readonly [number, number] => corners[node] as readonly [number, number]
    return [
      [...nodes].sort((a, b) => at(a)[1] - at(b)[1] || at(a)[0] - at(b)[0]),
      [...nodes].sort((a, b) => at(a)[0] - at(b)[0] || at(a)[1] - at(b)[1]),
    ]
  }
}
