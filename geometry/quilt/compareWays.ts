/**
 * What each way of joining means for a quilt, side by side.
 *
 * In      a quilt.
 * Out     for each way: finished size, strips to cut, what is sewn by hand, what lies under the machine's arm, where quilting has to stop. Lengths in the
 *         measure's unit, from the quilt's own report.
 */
import type { Mutable } from '../values/block.ts'
import { type Quilt, type Way, WAYS } from '../values/quilt.ts'
import { joinBy } from './edits/wayEdits.ts'
import { quiltReport } from './report.ts'

export interface WayFacts {
  readonly join: Way
  readonly finished: readonly [number, number]
  /** Strips for joining, covering and sashing. */
  readonly strips: number
  readonly handSewn: number
  readonly underArm: number
  readonly machineLong: number
  /** How far inside a place's raw edge its quilting stops. */
  readonly loose: number
  /** Crossings between blocks that don't nest; null where none of their seams meet. */
  readonly between: number | null
}

/** All ways, in the order in which they are listed everywhere. */
export const compareWays = (quilt: Quilt): WayFacts[] => WAYS.map((join) => factsOf(joinedBy(quilt, join), join))

function joinedBy(quilt: Quilt, join: Way): Quilt {
  if ((quilt.way?.join ?? 'whole') === join) return quilt
  const draft = JSON.parse(JSON.stringify(quilt)) as Mutable<Quilt>
  joinBy(join, quilt.fabrics[0]?.id).change(draft)
  return draft as Quilt
}

function factsOf(quilt: Quilt, join: Way): WayFacts {
  const report = quiltReport(quilt)
  const strips = report.cut.filter(({ part }) => part === 'strip' || part === 'sash')
  return {
    join,
    finished: report.size.finished,
    strips: strips.reduce((all, { count }) => all + count, 0),
    handSewn: report.handSewn,
    underArm: report.underArm,
    machineLong: report.machineLong,
    loose: Math.max(0, ...report.places.map(({ layers }) => layers?.loose ?? 0)),
    between: report.gap > 0 ? null : report.pressing.between,
  }
}
