/**
 * What seam joins two pieces: a straight one, a straight one that finishes partial seams, or one that is set in.
 *
 * In      where two pieces touch, and the earlier seams that end there.
 * Out     the path of the seam, its bends, and the earlier seams that it finishes.
 * How     where the pieces touch along a bent line, and an end of that line only carries on an earlier straight seam, nothing is set in: the earlier
 *         seam was left open there, and is finished now. That makes the earlier one a partial seam.
 * Source  partial seams [S90][S104].
 */
import type { Plane, PlaneEdge } from '../plane/subdivide.ts'
import { type Contact, keepsItsSide, type StraightRun } from './contact.ts'
import type { Seam } from './values.ts'

/** One empty list shared by all seams without bends or finished seams. */
const STRAIGHT: readonly number[] = []
const NOTHING: readonly never[] = []

/** What a later seam needs to know of an earlier one that it may continue. */
type Begun = Pick<Seam, 'kind' | 'path'>

/** The line that sews two pieces together, and the seams left open before that it finishes. */
interface SewnLine<Earlier extends Begun> extends Pick<Seam, 'kind' | 'path' | 'bends'> {
  readonly finishes: readonly { readonly seam: Earlier; readonly run: StraightRun }[]
}

/** The seam between two pieces that touch. `endingAt`: the earlier seams of the plan that end at a dot, in sewing order. */
export function lineOf<Earlier extends Begun>(
  plane: Plane,
  { runs, straight }: Contact,
  side: (patch: number) => -1 | 0 | 1,
  endingAt: (dot: number) => readonly Earlier[],
): SewnLine<Earlier> {
  if (runs.length === 0) throw new Error('impossible: two pieces that do not meet along one line')
  if (straight) return { kind: 'straight', path: (runs[0] as StraightRun).dots, bends: STRAIGHT, finishes: NOTHING }
  const left = [...runs]
  const finishes: { seam: Earlier; run: StraightRun }[] = []
  const finish = (run: StraightRun | undefined, dot: number | undefined): boolean => {
    if (run === undefined || dot === undefined || left.length < 2) return false
    const seam = endingAt(dot).find((earlier) => carriesOn(earlier, dot, run, plane, side))
    if (seam === undefined) return false
    finishes.push({ seam, run })
    return true
  }
  if (finish(left.at(-1), left.at(-1)?.dots[0])) left.pop()
  if (finish(left[0], left[0]?.dots.at(-1))) left.shift()
  const only = left[0] as StraightRun
  const bentAt = new Set(finishes.map(({ run }) => (run.dots[0] === only.dots.at(-1) ? (run.dots[0] as number) : (run.dots.at(-1) as number))))
  const holds = (place: number): boolean => bentAt.has(only.dots[place] as number) || keepsItsSide(plane, only, place, side)
  if (left.length === 1 && finishes.length > 0 && holds(0) && holds(only.dots.length - 1))
    return { kind: 'straight', path: only.dots, bends: STRAIGHT, finishes }
  return { kind: 'set-in', ...bent(runs), finishes: NOTHING }
}

/** Whether an earlier seam, sewn up to `dot`, would carry straight on along `run`. */
function carriesOn({ kind, path }: Begun, dot: number, run: StraightRun, plane: Plane, side: (patch: number) => -1 | 0 | 1): boolean {
  if (kind !== 'straight') return false
  const [first, last] = [path[0] as number, path.at(-1) as number]
  if (dot !== first && dot !== last) return false
  const next = dot === first ? (path[1] as number) : (path.at(-2) as number)
  const shared = plane.around[dot]?.find((edge) => {
    const { a, b } = plane.edges[edge] as PlaneEdge
    return (a === dot ? b : a) === next
  })
  if (shared === undefined || (plane.edges[shared] as PlaneEdge).line !== run.line) return false
  return side((plane.edges[shared] as PlaneEdge).plus) !== -1
}

/** The whole seam, once the part that was left open is finished along `run`. */
export function carriedOn(path: readonly number[], run: StraightRun): readonly number[] {
  const forward = path.at(-1) === run.dots[0] || path[0] === run.dots[0] ? run.dots : [...run.dots].reverse()
  return path.at(-1) === forward[0] ? [...path, ...forward.slice(1)] : [...[...forward].reverse(), ...path.slice(1)]
}

function bent(runs: readonly StraightRun[]): { path: number[]; bends: number[] } {
  const path = [...(runs[0] as StraightRun).dots]
  const bends: number[] = []
  for (const run of runs.slice(1)) {
    bends.push(path.length - 1)
    path.push(...run.dots.slice(1))
  }
  return { path, bends }
}
