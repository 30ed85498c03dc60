/**
 * What lies along each joint of a quilt: places that show it an edge, and earlier joints that end on it.
 *
 * In      places as boxes of cells, joints in sewing order.
 * Out     for each joint, by its number: the places on its two sides and the joints that end on it, from its start on.
 */
import type { CellJoint } from './joints.ts'
import type { LaidPlace } from './places.ts'

interface BesideJoint {
  /** A place, or an earlier joint, by its number. */
  readonly number: number
  /** Side 0 lies above or left. */
  readonly side: 0 | 1
}

export interface AlongJoint {
  readonly places: readonly BesideJoint[]
  readonly joints: readonly BesideJoint[]
}

export function alongJoints(places: readonly LaidPlace[], joints: readonly CellJoint[]): AlongJoint[] {
  const edges = new Lines()
  places.forEach(({ place: { at }, size }, number) => {
    for (const axis of [0, 1] as const) {
      edges.put(axis, at[axis] + size[axis], { number, side: 0 })
      edges.put(axis, at[axis], { number, side: 1 })
    }
  })
  const ends = new Lines()
  return joints.map(({ axis, cut, from, to }, number): AlongJoint => {
    const along = axis === 0 ? 1 : 0
    const start = (one: BesideJoint): number => (places[one.number] as LaidPlace).place.at[along]
    const cutOf = (one: BesideJoint): number => (joints[one.number] as CellJoint).cut
    const found = {
      places: edges.at(axis, cut).filter((one) => start(one) >= from && start(one) < to),
      joints: ends.at(axis, cut).filter((one) => cutOf(one) > from && cutOf(one) < to),
    }
    // It runs along the other axis, so it ends on joints across that one.
    ends.put(along, to, { number, side: 0 })
    ends.put(along, from, { number, side: 1 })
    return { places: found.places.sort((a, b) => start(a) - start(b)), joints: found.joints.sort((a, b) => cutOf(a) - cutOf(b)) }
  })
}

/** What touches each grid line, by axis. */
class Lines {
  private readonly lines = new Map<string, BesideJoint[]>()

  put(axis: 0 | 1, line: number, one: BesideJoint): void {
    const key = `${axis} ${line}`
    const there = this.lines.get(key)
    if (there === undefined) this.lines.set(key, [one])
    else there.push(one)
  }

  at(axis: 0 | 1, line: number): readonly BesideJoint[] {
    return this.lines.get(`${axis} ${line}`) ?? []
  }
}
