/**
 * Pressing seams the maker's way: to one side, open, or back to what the app proposes.
 *
 * In      the findings of the block before the edit, and for joins by their ids what the maker asks for.
 * Out     an edit of the block's `press` list; every request that already stood on those seams is replaced. A seam freed inside a unit whose seams are
 *         all pressed open takes that request apart: the unit's other seams stay open.
 * Exact   a request names a point on one seam only and a point of a patch beside it, as fractions.
 * Source  the contract of the block file: `press`, `at`, `toward`.
 */
import { file } from '../block/boxes.ts'
import { add, compare, divide, lcm, multiply, type Rational, rational, subtract, ZERO } from '../exact/rational.ts'
import { type Dot, insidePolygon } from '../plane/points.ts'
import { type ExactPoint, exactPoint } from '../units/kinds.ts'
import type { FilePoint, PressRequest } from '../values/block.ts'
import { type EditName, message } from '../values/messages.ts'
import type { Findings, Join, Patch } from '../values/report.ts'
import type { Draft, Edit } from './unitEdits.ts'

/** Toward a side of the join, by its number; open; or as the app proposes. */
export type PressChoice = 0 | 1 | 'open' | 'proposed'

/** Presses seams the maker's way. `name`: what undo calls it, where that is more than one seam or a whole row. */
export const pressSeams = (findings: Findings, choices: ReadonlyMap<string, PressChoice>, name?: EditName): Edit => ({
  name: name ?? nameOf([...choices.values()]),
  change: (draft) => {
    const lines = linesOf(findings)
    for (const [id, choice] of choices) {
      const line = lines.find(({ join }) => join.id === id)
      if (line !== undefined) pressSeam(draft, findings, lines, line, choice)
    }
  },
})

function nameOf(choices: readonly PressChoice[]): EditName {
  if (choices.every((choice) => choice === 'proposed')) return message('press-as-proposed', { seams: choices.length })
  return message(choices.every((choice) => choice === 'open') ? 'press-seam-open' : 'press-seam')
}

/** Removes the requests at a point: for those that no seam of the plan keeps. */
export const forgetPress = (point: FilePoint): Edit => ({
  name: message('forget-press'),
  change: (draft) => keepPress(draft, ({ at }) => !samePoint(exactPoint(at), exactPoint(point))),
})

/** A seam from end to end, through its bends. */
interface Line {
  readonly join: Join
  readonly path: readonly ExactPoint[]
}

const linesOf = ({ joins }: Findings): Line[] => joins.map((join) => ({ join, path: [join.from, ...join.via, join.to].map(exactPoint) }))

function pressSeam(draft: Draft, findings: Findings, lines: readonly Line[], line: Line, choice: PressChoice): void {
  keepPress(draft, ({ at }) => !liesWithin(exactPoint(at), line.path))
  const unit = draft.units.find(({ id }) => id === unitOf(findings, line.join))
  if (choice === 'proposed' && unit?.open === true) {
    delete unit.open
    for (const other of lines)
      if (other !== line && unitOf(findings, other.join) === unit.id && !isRequested(draft, other)) request(draft, pointOn(other, lines), 'open')
  }
  if (choice === 'proposed' || (choice === 'open' && unit?.open === true)) return
  const at = pointOn(line, lines)
  request(draft, at, choice === 'open' ? 'open' : pointBeside(findings, line, at, choice))
}

function keepPress(draft: Draft, keep: (word: PressRequest) => boolean): void {
  const kept = (draft.press ?? []).filter((word) => keep(word as PressRequest))
  if (kept.length === draft.press?.length) return
  if (kept.length === 0) delete draft.press
  else draft.press = kept
}

function request(draft: Draft, at: ExactPoint, toward: ExactPoint | 'open'): void {
  draft.press = [...(draft.press ?? []), { at: file(at), toward: toward === 'open' ? toward : file(toward) }]
}

const isRequested = (draft: Draft, { path }: Line): boolean => (draft.press ?? []).some(({ at }) => liesWithin(exactPoint(at as FilePoint), path))

/** The unit that a seam is sewn inside; undefined where it joins units or borders. */
function unitOf({ patches, joins }: Findings, join: Join): string | undefined {
  if (join.stage !== 'unit') return undefined
  const [piece] = patchesOf(patches, joins, join.sides[0])
  return piece?.unit ?? undefined
}

function patchesOf(patches: readonly Patch[], joins: readonly Join[], piece: string): Patch[] {
  const own = patches.find(({ id }) => id === piece)
  if (own !== undefined) return [own]
  const made = joins.find(({ id }) => id === piece)
  return made === undefined ? [] : made.sides.flatMap((side) => patchesOf(patches, joins, side))
}

/** A point of a seam that lies on no other: halfway from its start to the first place where another seam ends on it. */
function pointOn({ path, join }: Line, lines: readonly Line[]): ExactPoint {
  const [a, b] = path as [ExactPoint, ExactPoint]
  const way = minus(b, a)
  const length = dotProduct(way, way)
  let first: Rational = rational(1)
  for (const other of lines)
    for (const point of other.join.id === join.id ? [] : other.path) {
      if (!onSegment(point, a, b)) continue
      const part = divide(dotProduct(minus(point, a), way), length)
      if (compare(part, ZERO) > 0 && compare(part, first) < 0) first = part
    }
  return along(a, way, multiply(first, HALF))
}

/**
 * A point inside the patch that lies along a seam at `at`, on one side of it: halfway to a corner that can be seen from there. There is one: of the
 * triangles that a patch can be cut into, the one along the seam has a third corner.
 */
function pointBeside({ patches, joins }: Findings, { join }: Line, at: ExactPoint, side: 0 | 1): ExactPoint {
  for (const { corners } of patchesOf(patches, joins, join.sides[side])) {
    const outline = corners.map(exactPoint)
    if (!outline.some((corner, index) => onSegment(at, corner, outline[(index + 1) % outline.length] as ExactPoint))) continue
    const inner = outline.map((corner) => along(at, minus(corner, at), HALF)).find((point) => isInside(outline, point))
    if (inner !== undefined) return inner
  }
  throw new Error('impossible: along every seam lies a patch on either side')
}

const HALF = rational(1, 2)

const minus = (a: ExactPoint, b: ExactPoint): ExactPoint => [subtract(a[0], b[0]), subtract(a[1], b[1])]
const dotProduct = (a: ExactPoint, b: ExactPoint): Rational => add(multiply(a[0], b[0]), multiply(a[1], b[1]))
const cross = (a: ExactPoint, b: ExactPoint): Rational => subtract(multiply(a[0], b[1]), multiply(a[1], b[0]))
const along = (from: ExactPoint, way: ExactPoint, part: Rational): ExactPoint => [
  add(from[0], multiply(way[0], part)),
  add(from[1], multiply(way[1], part)),
]
const samePoint = (a: ExactPoint, b: ExactPoint): boolean => compare(a[0], b[0]) === 0 && compare(a[1], b[1]) === 0

function onSegment(point: ExactPoint, a: ExactPoint, b: ExactPoint): boolean {
  const within = (axis: 0 | 1): boolean => compare(point[axis], a[axis]) * compare(point[axis], b[axis]) <= 0
  return within(0) && within(1) && cross(minus(b, a), minus(point, a)).n === 0n
}

const liesOn = (point: ExactPoint, path: readonly ExactPoint[]): boolean =>
  path.slice(1).some((end, index) => onSegment(point, path[index] as ExactPoint, end))

const liesWithin = (point: ExactPoint, path: readonly ExactPoint[]): boolean =>
  liesOn(point, path) && !samePoint(point, path[0] as ExactPoint) && !samePoint(point, path.at(-1) as ExactPoint)

function isInside(outline: readonly ExactPoint[], point: ExactPoint): boolean {
  const parts = [...outline, point].flat().reduce((all, { d }) => lcm(all, d), 1n)
  const dot = ([x, y]: ExactPoint): Dot => [Number((x.n * parts) / x.d), Number((y.n * parts) / y.d)]
  return insidePolygon(outline.map(dot), dot(point)) > 0
}
