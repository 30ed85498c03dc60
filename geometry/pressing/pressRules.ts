/**
 * The constraint on each seam before any pressing is chosen: the maker's request, a method's rule, or a preference.
 *
 * In      the laid block, its seams, and the seam ends inside each join.
 * Out     one constraint for each seam, and a note for each press entry of the block that found no seam.
 * Source  geese toward their wings, flipped corners toward the corner [S3][S12]; away from bulk, else toward the darker fabric:
 *         [S79][S80] (to the darker fabric unless bulk matters more). Lightness is CIE L*, sRGB under D65.
 */
import type { Laid } from '../block/lay.ts'
import type { Block, PressRequest, Unit } from '../values/block.ts'
import { lightnessOf } from '../colour/lightness.ts'
import { compare, multiply, type Rational, rational, subtract, toNumber } from '../exact/rational.ts'
import type { Seam } from '../piecing/values.ts'
import { type Dot, insidePolygon } from '../plane/points.ts'
import { type Box, type SpatialIndex, spatialIndex } from '../plane/spatialIndex.ts'
import type { Plane, PlaneEdge } from '../plane/subdivide.ts'
import { type ExactPoint, exactPoint, methodOf } from '../units/kinds.ts'
import { edgeBetween, type MetSeams, type SideOf } from './meet.ts'
import type { Toward, PressConstraint } from './values.ts'
import { type BoardMessage, message, type PressNotKept } from '../values/messages.ts'

export interface PressConstraints {
  readonly constraints: readonly PressConstraint[]
  /** Entries of the block's `press` list that are skipped, each with the reason. */
  readonly passedOver: readonly { readonly entry: number; readonly reason: PressNotKept }[]
}

/** The constraints on the seams of a plan. `units`: those on the first seams before the maker's requests, which all plans of a block share. */
export function constraintsOf(
  laid: Laid,
  plane: Plane,
  seams: readonly Seam[],
  { ends, clockwise }: Pick<MetSeams, 'ends' | 'clockwise'>,
  sideOf: SideOf,
  units: readonly PressConstraint[] = [],
): PressConstraints {
  const constraint = seamConstraint(laid, plane)
  const plain = seams.map((seam, index) => units[index] ?? constraint(seam, ends[index] as readonly [number, number], clockwise[index] as 0 | 1))
  return withRequestedPressing(laid, plane, seams, sideOf, plain)
}

/** Whether the maker says anywhere in the block how seams are pressed. */
export const hasRequests = ({ press = [], pressAlike, units }: Block): boolean =>
  press.length > 0 || pressAlike === true || units.some(({ open, pressFree }) => open === true || pressFree === true)

/** A sewn plan as if the maker had said nothing on pressing: the methods' rules alone. */
export function withoutRequests<Sewn extends PressConstraints & { readonly seams: readonly Seam[]; readonly met: MetSeams }>(
  laid: Laid,
  plane: Plane,
  sewn: Sewn,
): Sewn {
  const constraint = seamConstraint(laid, plane, 'ignore requests')
  const { seams, met } = sewn
  const constraints = sewn.constraints.map((own, index) => {
    const seam = seams[index] as Seam
    if (own.rule !== 'asked' && laid.block.units[seam.unit]?.pressFree !== true) return own
    return constraint(seam, met.ends[index] as readonly [number, number], met.clockwise[index] as 0 | 1)
  })
  return { ...sewn, constraints, passedOver: [] }
}

/** The constraint on a seam, before the maker's requests about places; what she says of a whole unit is kept unless it is to be ignored. */
export function seamConstraint(
  laid: Laid,
  plane: Plane,
  requests: 'keep requests' | 'ignore requests' = 'keep requests',
): (seam: Seam, ends: readonly [number, number], clockwise: 0 | 1) => PressConstraint {
  const lightness = new Map(laid.block.fabrics.map(({ id, colour }) => [id, lightnessOf(colour)]))
  const kept = requests === 'keep requests'
  return (seam, ends, clockwise) => {
    const unit = laid.block.units[seam.unit]
    if (unit?.open === true && kept) return { fixed: 'open', rule: 'asked', preference: null, why: REQUESTED_OPEN }
    const ruled = unit === undefined || (unit.pressFree === true && kept) ? null : methodRule(laid, unit, seam)
    if (ruled !== null)
      return { fixed: ruled, rule: 'method', preference: null, why: methodOf(unit as Unit) === 'geese-4' ? GEESE_RULE : CORNER_RULE }
    return preferenceOf(laid, plane, seam, ends, clockwise, lightness)
  }
}

/** Adds the maker's requests about places, which override everything else. */
export function withRequestedPressing(
  laid: Laid,
  plane: Plane,
  seams: readonly Seam[],
  sideOf: SideOf,
  plain: readonly PressConstraint[],
): PressConstraints {
  const words = laid.block.press ?? []
  if (words.length === 0) return { constraints: plain, passedOver: [] }
  const where = indexesOf(laid, plane, seams)
  const requested = new Map<number, { toward: Toward; entry: number }>()
  const passedOver: { entry: number; reason: PressNotKept }[] = []
  words.forEach((word, entry) => {
    const found = requestedSeam(laid, plane, seams, sideOf, word, where)
    if (typeof found === 'string') passedOver.push({ entry, reason: found })
    else {
      const earlier = requested.get(found.seam)
      if (earlier !== undefined && earlier.toward !== found.toward) passedOver.push({ entry: earlier.entry, reason: 'later-word' })
      requested.set(found.seam, { toward: found.toward, entry })
    }
  })
  const constraints = [...plain]
  for (const [seam, { toward }] of requested) constraints[seam] = { fixed: toward, rule: 'asked', preference: null, why: REQUESTED }
  return { constraints, passedOver }
}

const REQUESTED = message('asked-for-seam')
const REQUESTED_OPEN = message('asked-for-unit')
const GEESE_RULE = message('geese-rule')
const CORNER_RULE = message('corner-rule')

/** The side that a method's rule presses to: a wing or a flipped corner is always a single patch. */
function methodRule(laid: Laid, unit: Unit, { sides }: Seam): 0 | 1 | null {
  const method = methodOf(unit)
  if (method !== 'geese-4' && method !== 'corner-flip') return null
  const corner = sides.findIndex((piece) => {
    const name = laid.patches[piece]?.name
    return name !== undefined && name !== 'goose' && name !== 'centre'
  })
  return corner === 0 || corner === 1 ? corner : null
}

/** Seams and patches by where they lie: a maker may press each of thousands of seams by a word of its own. */
interface Indexes {
  readonly seams: SpatialIndex<number>
  readonly patches: SpatialIndex<number>
}

const indexesOf = (laid: Laid, { dots }: Plane, seams: readonly Seam[]): Indexes => ({
  seams: spatialIndex([...seams.keys()], (seam) => boxOver((seams[seam] as Seam).path.map((dot) => dots[dot] as Dot))),
  patches: spatialIndex([...laid.patches.keys()], (patch) => boxOver(laid.patches[patch]?.corners ?? [])),
})

function boxOver(dots: readonly Dot[]): Box {
  const { POSITIVE_INFINITY: far } = Number
  return dots.reduce<Box>(
    ([[x0, y0], [x1, y1]], [x, y]) => [
      [Math.min(x0, x), Math.min(y0, y)],
      [Math.max(x1, x), Math.max(y1, y)],
    ],
    [
      [far, far],
      [-far, -far],
    ],
  )
}

/** What may lie under a point: whatever has it in the box around it, a step wider for the point's rounding. */
function around(index: SpatialIndex<number>, point: ExactPoint): number[] {
  const [x, y] = [toNumber(point[0]), toNumber(point[1])]
  return index.touching([x - 1, y - 1], [x + 1, y + 1])
}

function requestedSeam(
  laid: Laid,
  plane: Plane,
  seams: readonly Seam[],
  sideOf: SideOf,
  word: PressRequest,
  where: Indexes,
): { seam: number; toward: Toward } | PressNotKept {
  const at = laid.places.steps(exactPoint(word.at))
  const on = at === null ? [] : around(where.seams, at).filter((seam) => passes(plane, seams[seam] as Seam, at))
  if (on.length !== 1) return on.length === 0 ? 'no-seam' : 'several-seams'
  const seam = on[0] as number
  if (!within(plane, seams[seam] as Seam, at as ExactPoint)) return 'end-of-seam'
  if (word.toward === 'open') return { seam, toward: 'open' }
  const toward = laid.places.steps(exactPoint(word.toward))
  const held = new Set(
    toward === null
      ? []
      : around(where.patches, toward)
          .filter((patch) => holds(laid.patches[patch]?.corners ?? [], toward))
          .map((patch) => sideOf(seam, patch)),
  )
  held.delete(-1)
  return held.size === 1 ? { seam, toward: [...held][0] as 0 | 1 } : 'neither-side'
}

function passes(plane: Plane, seam: Seam, at: ExactPoint): boolean {
  return seam.path.slice(1).some((dot, place) => onStretch(plane.dots[seam.path[place] as number] as Dot, plane.dots[dot] as Dot, at))
}

function within(plane: Plane, { path }: Seam, at: ExactPoint): boolean {
  return ![path[0] as number, path.at(-1) as number].some((dot) => {
    const [x, y] = plane.dots[dot] as Dot
    return compare(rational(x), at[0]) === 0 && compare(rational(y), at[1]) === 0
  })
}

function onStretch(a: Dot, b: Dot, [x, y]: ExactPoint): boolean {
  const between = (p: number, q: number, v: Rational): boolean =>
    compare(v, rational(Math.min(p, q))) >= 0 && compare(v, rational(Math.max(p, q))) <= 0
  if (!between(a[0], b[0], x) || !between(a[1], b[1], y)) return false
  const area = subtract(multiply(rational(b[0] - a[0]), subtract(y, rational(a[1]))), multiply(rational(b[1] - a[1]), subtract(x, rational(a[0]))))
  return area.n === 0n
}

function holds(corners: readonly Dot[], [x, y]: ExactPoint): boolean {
  const scale = Number(x.d * y.d)
  const point: Dot = [Number(x.n * y.d), Number(y.n * x.d)]
  return (
    insidePolygon(
      corners.map(([px, py]): Dot => [px * scale, py * scale]),
      point,
    ) >= 0
  )
}

/** The constraint of a free seam; one shared value for all that prefer the same way for the same reason. */
const free = (preference: 0 | 1 | null, why: BoardMessage): PressConstraint => ({ fixed: null, rule: null, preference, why })
const both = (why: BoardMessage): readonly [PressConstraint, PressConstraint] => [free(0, why), free(1, why)]
const AWAY = both(message('less-bulk'))
const DARKER = both(message('darker-side'))
const EITHER = free(null, message('both-sides-alike'))

function preferenceOf(
  laid: Laid,
  plane: Plane,
  seam: Seam,
  ends: readonly [number, number],
  clockwise: 0 | 1,
  lightness: ReadonlyMap<string, number>,
): PressConstraint {
  if (ends[0] !== ends[1]) return AWAY[ends[0] < ends[1] ? 0 : 1]
  const total = [0, 0]
  const weight = [0, 0]
  const flip = clockwise === 1
  for (let place = 0; place + 1 < seam.path.length; place++) {
    const from = seam.path[place] as number
    const to = seam.path[place + 1] as number
    const { a, plus, minus } = plane.edges[edgeBetween(plane, from, to)] as PlaneEdge
    const [x0, y0] = laid.places.cells(plane.dots[from] as Dot)
    const [x1, y1] = laid.places.cells(plane.dots[to] as Dot)
    const length = Math.hypot(x1 - x0, y1 - y0)
    const [clockwise, other] = a === from ? [plus, minus] : [minus, plus]
    for (const [patch, side] of [
      [clockwise, flip ? 1 : 0],
      [other, flip ? 0 : 1],
    ] as const) {
      total[side] = (total[side] as number) + length * (lightness.get(laid.patches[patch]?.fabric ?? '') ?? 0)
      weight[side] = (weight[side] as number) + length
    }
  }
  const [near, far] = [(total[0] as number) / (weight[0] as number), (total[1] as number) / (weight[1] as number)]
  if (Math.abs(near - far) < 1e-9) return EITHER
  return DARKER[near < far ? 0 : 1]
}
