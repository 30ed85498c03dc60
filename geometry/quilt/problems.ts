/**
 * What keeps a quilt from being joined as it stands, and what its maker may want to know.
 *
 * In      a quilt, its measures, its worn blocks and laid places.
 * Out     problems with a place in cells; `isError` tells those that make the exit status 1.
 */
import { add, compare, multiply, type Rational, rational, subtract, ZERO } from '../exact/rational.ts'
import { lay } from '../block/lay.ts'
import { planeOf } from '../block/blockPlane.ts'
import { cutList } from '../cutting/cutList.ts'
import { layoutFaults } from '../report/layoutFaults.ts'
import type { Block } from '../values/block.ts'
import { type BoardMessage, type Message, message } from '../values/messages.ts'
import { type Problem, ERRORS, type ReportPoint } from '../values/report.ts'
import type { Quilt } from '../values/quilt.ts'
import { type Measures, times } from './measures.ts'
import { placeOutline } from './outlineEnds.ts'
import type { LaidPlace } from './places.ts'
import type { WornBlock } from './wornBlocks.ts'

type QuiltProblemCode = Problem['code'] | 'too-large' | 'too-small' | 'no-straight-order' | 'points' | 'wide-sash'

export interface QuiltProblem {
  readonly code: QuiltProblemCode
  readonly at: ReportPoint
  readonly units: readonly string[]
  readonly message: Message
  readonly area?: number
}

const QUILT_ERRORS: ReadonlySet<string> = new Set([...ERRORS, 'too-large', 'too-small', 'no-straight-order'])
/** Whether a problem keeps the quilt from being sewn as it stands. */
export const isError = ({ code }: QuiltProblem): boolean => QUILT_ERRORS.has(code)
/** After these nothing that needs joints is said. */
export const keepsFromJoining = (problem: QuiltProblem): boolean => isError(problem) && problem.code !== 'method' && problem.code !== 'cloth'

const AMONG_PLACES = { gap: message('positions-empty'), overlap: message('positions-overlap'), outside: message('position-outside') } as const

/** Gaps, overlaps and what lies beyond the grid: places are squares of a block to those who look for them. */
export function placeFaults(quilt: Quilt): QuiltProblem[] {
  if (fillsGrid(quilt)) return []
  const { columns, rows } = quilt.grid
  const block: Block = {
    format: 'nestwright.block',
    version: 1,
    name: quilt.name,
    measure: quilt.measure,
    grid: { columns, rows, cell: 1 },
    fabrics: [],
    units: quilt.places.map(({ id, at, size = [1, 1] }) => ({ id, kind: 'square', at, size, fabrics: { patch: '' } })),
  }
  const laid = lay(block)
  return layoutFaults(laid, planeOf(laid).faults).map((fault) => ({ ...fault, message: AMONG_PLACES[fault.code as keyof typeof AMONG_PLACES] }))
}

/** Whether the places cover each cell of the grid once. */
function fillsGrid({ grid: { columns, rows }, places }: Quilt): boolean {
  const taken = new Uint8Array(columns * rows)
  let left = columns * rows
  for (const {
    at: [x, y],
    size: [w, h] = [1, 1],
  } of places) {
    left -= w * h
    if (x < 0 || y < 0 || x + w > columns || y + h > rows || left < 0) return false
    for (let row = y; row < y + h; row++)
      for (let column = x; column < x + w; column++) {
        if (taken[row * columns + column] === 1) return false
        taken[row * columns + column] = 1
      }
  }
  return left === 0
}

/** Blocks that don't fit their places. */
export const fitProblems = (places: readonly LaidPlace[]): QuiltProblem[] =>
  places.flatMap(({ place, fit }) =>
    fit === 'fits'
      ? []
      : [{ code: fit, at: place.at, units: [place.id], message: message(fit === 'too-large' ? 'block-too-large' : 'block-too-small') }],
  )

/** A block's own errors, once for each place it lies in. */
export function blockProblems(places: readonly LaidPlace[]): QuiltProblem[] {
  const known = new Map<WornBlock, readonly Problem[]>()
  return places.flatMap(({ place, block }) => {
    if (block === null) return []
    const own = known.get(block) ?? [
      ...block.sewing.faults,
      ...cutList(block.block, { depth: 'quick' }).problems.filter(({ code }) => code === 'method'),
    ]
    known.set(block, own)
    return own.map(
      ({ code, message: says, area }): QuiltProblem => ({
        code,
        at: place.at,
        units: [place.id],
        message: message('in-block', { block: block.block.name, says: says as BoardMessage }),
        ...(area === undefined ? {} : { area }),
      }),
    )
  })
}

/** A sash wider than a quarter of the smaller side of some block [S296]. */
export function wideSash({ way }: Quilt, { gap, join }: Measures, places: readonly LaidPlace[]): QuiltProblem[] {
  if (join !== 'whole' || way?.sash === undefined) return []
  const narrow = places.filter(({ content }) => compare(times(gap, 4), smaller(content)) > 0)
  const [first] = narrow
  if (first === undefined) return []
  return [{ code: 'wide-sash', at: first.place.at, units: narrow.map(({ place }) => place.id), message: message('sash-wide') }]
}

const smaller = ([w, h]: readonly [Rational, Rational]): Rational => (compare(w, h) < 0 ? w : h)

/** What is folded or sewn over an edge hides points there, unless a frame is wide enough. */
export function hiddenPoints({ join, width, seam }: Measures, places: readonly LaidPlace[]): QuiltProblem[] {
  const over = join === 'backing-over' ? width : join === 'butted' ? multiply(width, rational(1, 2)) : ZERO
  const hidden = subtract(over, seam)
  if (hidden.n <= 0n) return []
  const found = places.filter((laid) => hasPoints(laid, hidden))
  const [first] = found
  if (first === undefined) return []
  return [{ code: 'points', at: first.place.at, units: found.map(({ place }) => place.id), message: message('points-hidden') }]
}

/** Seams that end aslant, or two at one point, on an edge of the block that no wide enough frame keeps away from the place's edge. */
function hasPoints(laid: LaidPlace, hidden: Rational): boolean {
  const bare = { ...laid, frame: [] }
  const kept = laid.frame.reduce((all, { across, down }) => [add(all[0] as Rational, across), add(all[1] as Rational, down)], [ZERO, ZERO])
  return placeOutline(bare, laid.place.turn ?? 0, 'planned').some((ends, side) => {
    if (compare(kept[side % 2 === 1 ? 0 : 1] as Rational, hidden) >= 0) return false
    const seen = new Set<string>()
    return ends.some(({ at: [x, y], along }) => {
      const key = `${x.n}/${x.d},${y.n}/${y.d}`
      const two = seen.has(key)
      seen.add(key)
      return along !== 0 || two
    })
  })
}

/** The problem of places that no straight full-length joints can join. */
export const unjoinable = (places: readonly LaidPlace[]): QuiltProblem => ({
  code: 'no-straight-order',
  at: places[0]?.place.at ?? [0, 0],
  units: places.map(({ place }) => place.id),
  message: message('no-straight-order'),
})
