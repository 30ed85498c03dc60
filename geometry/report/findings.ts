/**
 * All that a hand waits for: patches, joins, pressing, meetings, edges, what to cut. The report but for the quilting route.
 *
 * In      the block as it is sewn (`sewnBlock`).
 * Out     `Findings`. A layout that leaves a gap, overlaps or runs beyond the grid cannot be sewn as it stands: then the parts that need sewn joins are empty
 *         and everything else is still said.
 */
import { cellOf, seamOf } from '../block/lengthsOf.ts'
import { type Laid, type LaidPatch, placeOf as placeOnGrid, realX, realY } from '../block/lay.ts'
import type { Block } from '../values/block.ts'
import type { CoverSolver } from '../cutting/batches/coverCache.ts'
import { cutList } from '../cutting/cutList.ts'
import { add, multiply, type Rational, rational, subtract, toFile, toNumber } from '../exact/rational.ts'
import { edgesOf } from '../neighbours/edges.ts'
import { shownBy } from '../neighbours/looseEnds.ts'
import { proofOf } from '../pressing/proof.ts'
import { fixesOf } from './fixes.ts'
import { repeatsOf } from '../piecing/matchingPieces.ts'
import { Again } from './reuseCache.ts'
import { Thickness } from '../pressing/layers/thickness.ts'
import type { PressedPlan } from '../pressing/plan.ts'
import { verdictOf } from '../pressing/press.ts'
import type { Crossing, Toward, Wish } from '../pressing/values.ts'
import type { Seam } from '../piecing/values.ts'
import { type Dot, doubleArea } from '../plane/points.ts'
import type { Plane, PlaneEdge } from '../plane/subdivide.ts'
import { edgeBetween } from '../pressing/meet.ts'
import { clashesOf, type SewnBlock, sewnBlock, unitsOf } from './sewing.ts'
import type { Edges, Findings, Join, Meeting, Patch, Problem, Report, ReportPoint } from '../values/report.ts'

/** Patches above which the least cloth is found at once and not proved. */
const PROVED_CLOTH = 20_000

const NO_EDGES: Edges = { top: [], right: [], bottom: [], left: [] }

/** All that is said while the hand is still on the block: the quilting route, layers of cloth and alike pieces take longer. */
export const findings = (block: Block): Findings => found(sewnBlock(block, 'quick'))

/** What was said of patches, seams and meetings before an edit; it is said again of those that are the very same. */
export class Said {
  readonly patches = new Again<LaidPatch, Patch>()
  readonly joins = new Again<Seam, SaidJoin>()
  readonly meetings = new Again<Crossing, Meeting>()
  /** The batch solver that remembers its answers. */
  readonly covers: CoverSolver

  constructor(covers: CoverSolver) {
    this.covers = covers
  }
}

interface SaidJoin {
  readonly join: Join
  readonly place: number
  readonly extent: Extent
  readonly wish: Wish
}

export function found(sewnBlock: SewnBlock, said: Said | null = null): Findings {
  const { laid, plane, faults, sewn } = sewnBlock
  const { block } = laid
  const depth = sewnBlock.depth === 'whole' && laid.patches.length <= PROVED_CLOTH ? 'proving' : 'quick'
  const cut = cutList(block, said === null ? { depth } : { depth, covers: said.covers })
  const problems = [...faults, ...(sewn === null ? [] : sewingProblems(laid, plane, sewn.taken)), ...cut.problems]
  return {
    format: 'nestwright.report',
    version: 1,
    measure: { unit: block.measure.unit, seam: toNumber(seamOf(block)) },
    block: { name: block.name, ...sizesOf(laid) },
    order: sewn?.taken.name ?? (block.order === 'columns' || block.order === 'sections' ? block.order : 'rows'),
    problems,
    patches: patchesOf(laid, said),
    ...(sewn === null
      ? {
          joins: [],
          pressing: { clashes: 0, against: 0, proof: 'Nothing is sewn while the layout has gaps or overlaps.' },
          crooked: { setIn: 0, partial: 0, proved: true },
          repeats: [],
          bulk: null,
          meetings: [],
          edges: NO_EDGES,
        }
      : sewnParts(sewnBlock, sewn.taken, sewn.others, said)),
    units: cut.units,
    cut: cut.cut,
    fabric: cut.fabric,
    cloth: cut.cloth,
    advice: cut.advice,
  }
}

function sewingProblems(laid: Laid, plane: Plane, plan: PressedPlan): Problem[] {
  const crooked = plan.seams.flatMap((seam): Problem[] => {
    if (seam.kind === 'straight') return []
    const message =
      seam.kind === 'partial'
        ? 'This seam is sewn only part of the way at first, and finished once its neighbours are on.'
        : 'This seam bends: it is set in, stopping at the bend with the needle down.'
    return [
      { code: 'not-straight', at: placeOf(laid, plane, seam.path[seam.bends[0] ?? 0] as number), units: besideSeam(laid, plane, seam), message },
    ]
  })
  const passed = plan.passedOver.map(({ entry, reason }): Problem => {
    const word = laid.block.press?.[entry]
    return { code: 'press', at: (word?.at ?? [0, 0]) as ReportPoint, units: [], message: `Your word on pressing here was passed over: ${reason}.` }
  })
  const odd = (plan.together?.tied.odd ?? []).map((seam): Problem => {
    const path = (plan.seams[seam] as Seam).path
    return {
      code: 'press',
      at: placeOf(laid, plane, path[0] as number),
      units: unitsOf(laid, [(plan.seams[seam] as Seam).unit]),
      message: 'Alike units are to be pressed alike, but this seam and its likes are settled in different ways: each keeps its own.',
    }
  })
  return [...crooked, ...passed, ...odd]
}

function besideSeam(laid: Laid, plane: Plane, { path }: Seam): string[] {
  const patches = path.slice(1).flatMap((dot, place) => {
    const { plus, minus } = plane.edges[edgeBetween(plane, path[place] as number, dot)] as PlaneEdge
    return [plus, minus]
  })
  return unitsOf(
    laid,
    patches.sort((a, b) => a - b).map((patch) => laid.patches[patch]?.unit ?? -1),
  )
}

const placeOf = (laid: Laid, plane: Plane, dot: number): ReportPoint => pointOf(laid, plane.dots[dot] as Dot)
/** A unit may lie beyond the grid, where a border would be: its corners are as they are drawn. */
const gridPoint = ({ den }: Laid, [x, y]: Dot): ReportPoint => [toFile(rational(x, den)), toFile(rational(y, den))]
const pointOf = placeOnGrid

function sizesOf(laid: Laid): { finished: [number, number]; unfinished: [number, number]; withBorders: [number, number] } {
  const { block } = laid
  const cell = cellOf(block)
  const seams = multiply(seamOf(block), rational(2))
  const around = multiply(multiply(laid.depths.at(-1) as Rational, cell), rational(2))
  const finished = [multiply(rational(block.grid.columns), cell), multiply(rational(block.grid.rows), cell)] as const
  const both = (change: (length: Rational) => Rational): [number, number] => [toNumber(change(finished[0])), toNumber(change(finished[1]))]
  return {
    finished: both((length) => length),
    unfinished: both((length) => add(length, seams)),
    withBorders: both((length) => add(add(length, seams), around)),
  }
}

function patchesOf(laid: Laid, said: Said | null): Patch[] {
  const cell = toNumber(cellOf(laid.block))
  if (said === null) return laid.patches.map((patch) => patchOf(laid, patch, cell))
  const { patches } = said
  patches.begin()
  return laid.patches.map((patch) => patches.tell(patch, patches.of(patch) ?? patchOf(laid, patch, cell)))
}

function patchOf(laid: Laid, { id, unit, name, fabric, corners }: LaidPatch, cell: number): Patch {
  const places = corners.map((corner) => (unit >= 0 ? gridPoint(laid, corner) : pointOf(laid, corner)))
  const area = unit >= 0 ? Number(doubleArea(corners)) / (2 * laid.den * laid.den) : stripArea(laid, corners)
  return { id, unit: laid.block.units[unit]?.id ?? null, name, fabric, corners: places, area: area * cell * cell }
}

function stripArea(laid: Laid, corners: readonly Dot[]): number {
  const [from, , to] = corners as readonly [Dot, Dot, Dot]
  const wide = toNumber(realX(laid, to[0])) - toNumber(realX(laid, from[0]))
  return wide * (toNumber(realY(laid, to[1])) - toNumber(realY(laid, from[1])))
}

function sewnParts(
  { laid, plane, cloth, depth }: SewnBlock,
  plan: PressedPlan,
  others: readonly PressedPlan[],
  said: Said | null,
): Pick<Report, 'joins' | 'pressing' | 'crooked' | 'repeats' | 'bulk' | 'meetings' | 'edges'> {
  const joinId = (seam: number): string => `j:${seam + 1}`
  const fixes = fixesOf(laid, plane, plan, others, joinId, clashesOf)
  const { met, pressed } = plan
  const thick = cloth === null ? null : new Thickness(plane, plan, cloth.folds)
  said?.meetings.begin()
  const meetings = met.crossings.map((crossing, index): Meeting => {
    const verdict = verdictOf(crossing, pressed.toward)
    const last = said?.meetings.of(crossing)
    if (said !== null && last?.verdict === verdict && verdict !== 'clashes') return said.meetings.tell(crossing, last)
    const made: Meeting = {
      at: placeOf(laid, plane, crossing.dot),
      join: joinId(crossing.join),
      seams: crossing.seams.map(joinId),
      verdict,
      fix: fixes.get(index) ?? [],
      ...thick?.at(crossing),
    }
    return said?.meetings.tell(crossing, made) ?? made
  })
  return {
    joins: joinsOf(laid, plane, plan, joinId, said),
    pressing: {
      clashes: pressed.clashes,
      against: pressed.against,
      proof: proofOf(plan, joinId),
      ...(pressed.atLeast < pressed.clashes ? { atLeast: pressed.atLeast } : {}),
    },
    crooked: {
      setIn: plan.seams.filter(({ kind }) => kind === 'set-in').length,
      partial: plan.seams.filter(({ kind }) => kind === 'partial').length,
      proved: plan.proved,
    },
    repeats: depth === 'quick' ? [] : repeatsOf(laid, plan.seams).map((seams) => seams.map(joinId)),
    bulk: cloth === null ? null : { most: cloth.thickest.most, at: cloth.thickest.at },
    meetings,
    edges: edgesOf(shownBy(laid, plane, met.loose), pressed.toward),
  }
}

function joinsOf(laid: Laid, plane: Plane, plan: PressedPlan, joinId: (seam: number) => string, said: Said | null): Join[] {
  const patches = laid.patches.length
  said?.joins.begin()
  const sizes = new Sizes(laid)
  const costly = costlyTurns(plan)
  const pieceId = (piece: number): string => (piece < patches ? (laid.patches[piece]?.id as string) : joinId(piece - patches))
  return plan.seams.map((seam, index): Join => {
    const [toward, wish] = [plan.pressed.toward[index] as Toward, plan.wishes[index] as Wish]
    const last = said?.joins.of(seam)
    const extent = sizes.next(seam, last?.extent)
    const press = last?.wish === wish ? pressOf(toward, wish, costly[index] === 1, last.join.press) : pressOf(toward, wish, costly[index] === 1)
    if (said !== null && last?.place === index && last.join.press === press) return said.joins.tell(seam, last).join
    const join: Join = {
      id: joinId(index),
      stage: seam.stage,
      kind: seam.kind,
      from: placeOf(laid, plane, seam.path[0] as number),
      to: placeOf(laid, plane, seam.path.at(-1) as number),
      via: seam.bends.map((place) => placeOf(laid, plane, seam.path[place] as number)),
      sides: [pieceId(seam.sides[0]), pieceId(seam.sides[1])],
      unfinished: sizes.of(extent),
      press,
      clockwise: plan.met.clockwise[index] as 0 | 1,
      ...(seam.finishedAfter === null ? {} : { finishedAfter: joinId(seam.finishedAfter) }),
    }
    return said?.joins.tell(seam, { join, place: index, extent, wish }).join ?? join
  })
}

/** By seam: 1 where its turning, with those tied to be pressed alike, would cost a clash. */
function costlyTurns({ met, pressed, seams, together }: PressedPlan): Uint8Array {
  const choice = (seam: number): number => together?.tied.choiceOf[seam] ?? seam
  const cost = new Int32Array(seams.length)
  for (const crossing of met.crossings) {
    const verdict = verdictOf(crossing, pressed.toward)
    if (verdict !== 'nests' && verdict !== 'clashes') continue
    const [one, other] = [choice(crossing.seams[0] as number), choice(crossing.seams[1] as number)]
    if (one === other) continue
    const more = verdict === 'nests' ? 1 : -1
    cost[one] = (cost[one] as number) + more
    cost[other] = (cost[other] as number) + more
  }
  return Uint8Array.from(seams, (_, seam) => ((cost[choice(seam)] as number) > 0 ? 1 : 0))
}

/** `last`: what was said before; the same again where nothing else is to be said. */
function pressOf(toward: Toward, wish: Wish, costly: boolean, last?: Join['press']): Join['press'] {
  const [rule, why] = reasonOf(toward, wish, costly)
  return last?.toward === toward && last.rule === rule ? last : { toward, rule, why }
}

function reasonOf(toward: Toward, wish: Wish, costly: boolean): [Join['press']['rule'], string] {
  if (wish.rule !== null) return [wish.rule, wish.why]
  if (costly) return ['meeting', 'So that it nests where it meets other seams.']
  if (wish.preference !== null && wish.preference === toward) return ['preference', wish.why]
  return ['none', 'Either way will do.']
}

/** The unfinished size of each piece a seam makes, where it is a rectangle square to the grid. Seams are asked for in sewing order. */
class Sizes {
  private readonly laid: Laid
  private readonly cell: Rational
  private readonly allowances: Rational
  private readonly known = new Map<number, number>()
  private readonly made: Extent[] = []

  constructor(laid: Laid) {
    this.laid = laid
    this.cell = cellOf(laid.block)
    this.allowances = multiply(seamOf(laid.block), rational(2))
  }

  /** The extent of the next piece, where it is not known. */
  next({ sides }: Seam, known: Extent | undefined): Extent {
    const extent = known ?? together(this.extent(sides[0]), this.extent(sides[1]))
    this.made.push(extent)
    return extent
  }

  private extent(piece: number): Extent {
    const { patches } = this.laid
    return piece < patches.length ? extentOf((patches[piece] as LaidPatch).corners) : (this.made[piece - patches.length] as Extent)
  }

  of({ x0, y0, x1, y1, area }: Extent): [number, number] | null {
    if (BigInt(x1 - x0) * BigInt(y1 - y0) * 2n !== area) return null
    const { laid } = this
    if (x0 >= 0 && y0 >= 0 && x1 <= laid.width && y1 <= laid.height) return [this.plain(x1 - x0), this.plain(y1 - y0)]
    return [this.length(realX(laid, x0), realX(laid, x1)), this.length(realY(laid, y0), realY(laid, y1))]
  }

  private plain(steps: number): number {
    const seen = this.known.get(steps) ?? this.length(rational(0), rational(steps, this.laid.den))
    this.known.set(steps, seen)
    return seen
  }

  private length(from: Rational, to: Rational): number {
    return toNumber(add(multiply(subtract(to, from), this.cell), this.allowances))
  }
}

const together = (a: Extent, b: Extent): Extent => ({
  x0: Math.min(a.x0, b.x0),
  y0: Math.min(a.y0, b.y0),
  x1: Math.max(a.x1, b.x1),
  y1: Math.max(a.y1, b.y1),
  area: a.area + b.area,
})

interface Extent {
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
  /** Twice the area, in square steps. */
  readonly area: bigint
}

function extentOf(corners: readonly Dot[]): Extent {
  const xs = corners.map(([x]) => x)
  const ys = corners.map(([, y]) => y)
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys), area: doubleArea(corners) }
}
