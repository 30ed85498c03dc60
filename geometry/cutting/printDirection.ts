/**
 * Prints that may not be turned: how their pieces lie on the fabric, and which units cannot show the print as drawn.
 *
 * In      matching units with their row and pieces; the block, for its fabrics. The print runs along the length of the fabric, and up the block.
 * Out     pieces with a fixed direction, cut as the block shows them; advice `print` for units in which a method turns the fabric.
 * How     pieces sewn as cut are laid as their unit lies. The triangles cut from one square lie in different directions: halves half a turn apart,
 *         quarters a quarter turn apart. Triangles two at a time do the same, eight at a time lie all four ways; of two hourglasses one stands and
 *         the other lies; the four geese of a batch lie all four ways round. What a run gives is shared out so that the fewest are left turned (for
 *         batches: batch after batch, each turned to what fits best). A two-way print looks the same upside down, so only quarter turns matter.
 * Source  geometry of the folds: each allowance is opened over its own seam. Common practice, no source: print along the length of the fabric.
 */
import { unitPlaces } from '../block/unitPlaces.ts'
import type { Block, Direction, Unit } from '../values/block.ts'
import { compare, toNumber } from '../exact/rational.ts'
import { type ExactPoint, exactPoint, shapeOf, sizeAtRest, stripNames } from '../units/kinds.ts'
import type { Advice, ReportPoint, UnitRow } from '../values/report.ts'
import { type Wings, wingsSeen } from './batches/geeseBatches.ts'
import type { Piece } from './pieces.ts'
import { type MatchingUnits, polygonSize } from './matchingUnits.ts'
import { message } from '../values/messages.ts'

/** By fabric, where its print may not be turned. */
export type Directions = ReadonlyMap<string, Direction>
/** Quarters clockwise: of a half the corner with the right angle, from the top left; of a quarter the long side, from the top. */
type Way = 0 | 1 | 2 | 3

interface Need {
  readonly unit: Unit
  readonly way: Way
  /** No turn is allowed; otherwise half a turn does no harm. */
  readonly strict: boolean
}

/** The fabrics of a block whose print has a direction, by id. */
export const directionsOf = ({ fabrics }: Block): Directions =>
  new Map(fabrics.flatMap(({ id, direction }) => (direction === undefined ? [] : [[id, direction] as const])))

/** Pieces of prints with a direction: units turned a quarter need pieces of their own. */
export function aligned(pieces: readonly Piece[], matching: MatchingUnits, directions: Directions): readonly Piece[] {
  if (!pieces.some(({ fabric }) => directions.has(fabric))) return pieces
  const turned = matching.units.filter((unit) => isTurned(unit, matching.first)).length
  const all = matching.units.length
  return pieces.flatMap((piece): Piece[] => {
    if (!directions.has(piece.fabric) || piece.shape === 'square') return [piece]
    // A long strip of a set is laid as most of its cross-cuts need it; in the unit it stands.
    const [wide, high] = piece.method === 'strip-set' ? [piece.size[1], piece.size[0]] : piece.size
    const most = piece.method === 'strip-set' ? (2 * turned > all ? all : 0) : turned
    const parts = [
      { size: [wide, high] as const, share: (piece.share * (all - most)) / all },
      { size: [high, wide] as const, share: (piece.share * most) / all },
    ]
    return parts.flatMap((part) => (part.share > 0 ? [{ ...piece, ...part, fixed: true as const }] : []))
  })
}

/** Whether a unit is turned a quarter from the first of its matching units at rest. */
function isTurned(unit: Unit, first: Unit): boolean {
  if (unit.kind === 'strips' && stripNames(unit).length > 1) return (unit.turn ?? 0) % 2 === 1
  const width = unit.kind === 'polygon' ? polygonSize(unit)[0] : exactPoint(unit.size)[0]
  return compare(width, (first.kind === 'polygon' ? polygonSize(first) : sizeAtRest(first))[0]) !== 0
}

/** What to watch when units use prints that have a direction: one message for each way such units are turned. */
export function printAdvice(matching: MatchingUnits, row: UnitRow, block: Block, directions: Directions): Advice[] {
  if (directions.size === 0) return []
  const directed = matching.units.filter((unit) => Object.values(unit.fabrics).some((fabric) => directions.has(fabric)))
  if (directed.length === 0) return []
  const { units, how } = turnedIn(matching, directed, row, directions)
  const first = units[0]
  if (first === undefined) return []
  const fabrics = [...new Set(units.flatMap((unit) => Object.values(unit.fabrics)))].filter((fabric) => directions.has(fabric))
  const names = fabrics.map((fabric) => block.fabrics.find(({ id }) => id === fabric)?.name ?? fabric)
  const ids = units.map(({ id }) => id)
  const named = ids.length <= FEW_IDS && ids.length < matching.units.length ? ids.map(unitPlaces(block)) : []
  const reason = message('print-turned', { fabrics: names, how, units: units.length, of: matching.units.length, named })
  return [{ code: 'print', at: placeOf(first), units: ids, message: reason }]
}

/** Up to this many units are named. */
const FEW_IDS = 6

const placeOf = (unit: Unit): ReportPoint => (unit.kind === 'polygon' ? unit.corners[0] : unit.at) as ReportPoint

interface Turned {
  readonly units: readonly Unit[]
  readonly how: 'slanting' | 'turned'
}

function turnedIn(matching: MatchingUnits, directed: readonly Unit[], row: UnitRow, directions: Directions): Turned {
  const { first, method } = matching
  if (method === 'hst-4') return { units: directed, how: 'slanting' }
  if (method === 'plain' && first.kind === 'diamond' && directions.has(first.fabrics.centre as string)) return { units: directed, how: 'slanting' }
  return { units: once(overIn(matching, directed, row, directions)), how: 'turned' }
}

const once = (needs: readonly Need[]): Unit[] => [...new Set(needs.map(({ unit }) => unit))]

/** Triangles, or units, that the cut pieces cannot show as drawn. */
function overIn({ first, units, method }: MatchingUnits, directed: readonly Unit[], row: UnitRow, directions: Directions): Need[] {
  const strict = (...fabrics: (string | undefined)[]): boolean => fabrics.some((fabric) => directions.get(fabric ?? '') === 'one-way')
  const { upper, lower, top, right, bottom } = first.fabrics
  const seen = (name: string): Need[] => directed.map((unit) => ({ unit, way: wayOf(unit, name), strict: strict(...Object.values(unit.fabrics)) }))
  if (method === 'hst-2') return overHalves(seen('upper'), row.goes)
  if (method === 'hst-8')
    // Of the square that lies underneath all prints point the same way: opened, half of them are upside down.
    return strict(upper) && strict(lower) ? overHalves(seen('upper'), 2 * row.goes) : over(seen('upper'), evenly(2 * row.goes))
  if (method === 'qst-2') return top === bottom && top !== right ? over(loosely(seen('top')), [row.goes, row.goes, 0, 0]) : []
  if (method === 'geese-4') return overBatches(seen('goose'), row)
  if (method === 'strip-set') return overStrips(directed, units, directions)
  return method === 'plain' ? overTriangles(first, units, directions) : []
}

/** Half a turn gives the same picture. */
const loosely = (needs: readonly Need[]): Need[] => needs.map((need) => ({ ...need, strict: false }))
const evenly = (each: number): number[] => [each, each, each, each]

/** Needs left over when each direction is available this many times. */
function over(needs: readonly Need[], held: readonly number[]): Need[] {
  const left = [...held]
  return needs.filter(({ way, strict }) => {
    const fits = [way, (way + 2) % 4].find((one, place) => (left[one] as number) > 0 && (place === 0 || !strict))
    if (fits === undefined) return true
    left[fits] = (left[fits] as number) - 1
    return false
  })
}

/** Each square is halved along one diagonal or the other, and gives two triangles half a turn apart. */
function overHalves(needs: readonly Need[], squares: number): Need[] {
  const count = [0, 1, 2, 3].map((way) => needs.filter((need) => need.way === way).length)
  const strict = needs.some((need) => need.strict)
  const lost = (pair: 0 | 1, held: number): number => {
    const [one, other] = [count[pair] as number, count[pair + 2] as number]
    return strict ? Math.max(0, one - held) + Math.max(0, other - held) : Math.max(0, one + other - 2 * held)
  }
  let best = 0
  for (let one = 1; one <= squares; one++) if (lost(0, one) + lost(1, squares - one) < lost(0, best) + lost(1, squares - best)) best = one
  return over(needs, [best, squares - best, best, squares - best])
}

function overTriangles(first: Unit, units: readonly Unit[], directions: Directions): Need[] {
  if (first.kind === 'polygon' || first.kind === 'square' || first.kind === 'strips') return []
  const halves = new Map<string, Need[]>()
  const quarters = new Map<string, Need[]>()
  for (const unit of units)
    for (const [name, fabric] of Object.entries(unit.fabrics)) {
      const direction = directions.get(fabric)
      if (direction === undefined || name === 'centre') continue
      const quartered = name === 'goose' || first.kind === 'hourglass'
      const same = quartered ? quarters : halves
      // Halves of a rectangle that stands are no halves of one that lies.
      const key = first.kind === 'half-rectangle' ? `${fabric} ${isTurned(unit, first)}` : fabric
      same.set(key, [...(same.get(key) ?? []), { unit, way: wayOf(unit, name), strict: direction === 'one-way' }])
    }
  return [
    ...[...halves.values()].flatMap((needs) => overHalves(needs, Math.ceil(needs.length / 2))),
    ...[...quarters.values()].flatMap((needs) => over(needs, evenly(Math.ceil(needs.length / 4)))),
  ]
}

/** Round a batch each goose lies a quarter turn further than the last; the batch may start with any of them. */
function overBatches(needs: readonly Need[], { batches }: UnitRow): Need[] {
  const waiting = new Map<string, Need[]>()
  const keyOf = ([left, right]: Wings, way: number, strict: boolean): string => `${left} ${right} ${strict ? way : `half ${way % 2}`}`
  for (const need of needs) {
    const key = keyOf(wingsSeen(need.unit), need.way, need.strict)
    waiting.set(key, [...(waiting.get(key) ?? []), need])
  }
  const taken = (makes: readonly Wings[], begun: number): Need[] => {
    const found: Need[] = []
    makes.forEach((wings, side) => {
      const keys = [true, false].map((strict) => keyOf(wings, (side + begun) % 4, strict))
      const need = keys.map((key) => waiting.get(key)?.find((one) => !found.includes(one))).find((one) => one !== undefined)
      if (need !== undefined) found.push(need)
    })
    return found
  }
  for (const { makes } of batches) {
    const best = [0, 1, 2, 3].map((begun) => taken(makes, begun)).reduce((one, other) => (other.length > one.length ? other : one))
    for (const need of best) {
      const key = keyOf(wingsSeen(need.unit), need.way, need.strict)
      const rest = (waiting.get(key) as Need[]).filter((one) => one !== need)
      waiting.set(key, rest)
    }
  }
  return [...waiting.values()].flat()
}

/** Cross-cuts of one strip set all lie the same way, until one is turned in the block. */
function overStrips(directed: readonly Unit[], units: readonly Unit[], directions: Directions): Need[] {
  const turnOf = (unit: Unit): number => (unit.kind === 'polygon' ? 0 : (unit.turn ?? 0))
  const most = 2 * units.filter((unit) => turnOf(unit) % 2 === 1).length > units.length ? 1 : 0
  const needs = directed.map((unit): Need => {
    const strict = Object.values(unit.fabrics).some((fabric) => directions.get(fabric) === 'one-way')
    return { unit, way: turnOf(unit) as Way, strict }
  })
  const upright = needs.filter(({ way }) => way === most).length
  const upsideDown = needs.filter(({ way }) => way === most + 2).length
  const kept = upright >= upsideDown ? most : most + 2
  return needs.filter(({ way, strict }) => (strict ? way !== kept : way % 2 !== most))
}

/** How a triangle of a unit lies in the block. */
function wayOf(unit: Unit, name: string): Way {
  if (unit.kind === 'polygon') return 0
  const corners = shapeOf(unit).patches.find((patch) => patch.name === name)?.corners ?? []
  const points = corners.map(([x, y]: ExactPoint) => [toNumber(x), toNumber(y)] as const)
  const square = points.find(([x, y]) => points.filter((one) => one[0] === x).length === 2 && points.filter((one) => one[1] === y).length === 2)
  const tip = square ?? points.find(([x, y]) => points.every((one) => (one[0] === x) === (one[1] === y)))
  if (tip === undefined) return 0
  const [dx, dy] = [0, 1].map((axis) => points.reduce((sum, one) => sum + (one[axis] as number) - (tip[axis] as number), 0)) as [number, number]
  // Of a half the rest lies right of its right angle and below it, where that is at the top left; of a quarter above its tip.
  if (square !== undefined) return dx > 0 ? (dy > 0 ? 0 : 3) : dy > 0 ? 1 : 2
  return Math.abs(dx) < Math.abs(dy) ? (dy < 0 ? 0 : 2) : dx > 0 ? 1 : 3
}
