/**
 * The report of a quilt: read → wear and lay → join, press and meet → cut.
 *
 * In      a quilt that has been read.
 * Out     the whole report. A quilt whose places leave a gap, overlap or don't fit is not joined: then what needs joints is empty.
 */
import { bindingFor, layersFor } from '../cutting/finishing.ts'
import { lengthOf, roundOf } from '../block/lengthsOf.ts'
import { tidy } from '../exact/lengths.ts'
import { add, compare, divide, type Rational, rational, toFile, toNumber, ZERO } from '../exact/rational.ts'
import { scorePressing } from '../pressing/press.ts'
import type { Block } from '../values/block.ts'
import { type Message, message } from '../values/messages.ts'
import type { ReportPoint, Verdict } from '../values/report.ts'
import type { Quilt, QuiltPlace } from '../values/quilt.ts'
import { chooseJoining, inOtherOrders, type Joining, underArmOf } from './chooseJoining.ts'
import { type QuiltCutRow, quiltCutting } from './cutting.ts'
import { type QuiltFix, quiltFixes } from './fixes.ts'
import { frontsMeet, most, type PlacedJoint } from './joinPlaces.ts'
import { layersOf, looseOf, type PlaceLayers } from './layers.ts'
import { type ExactSize, type Measures, measuresOf, spanOf, sum, times } from './measures.ts'
import { jointId } from './meetings.ts'
import { towardOf } from './outlineEnds.ts'
import { placeDitch } from './placeDitch.ts'
import { type LaidPlace, layPlace } from './places.ts'
import { blockProblems, fitProblems, hiddenPoints, keepsFromJoining, placeFaults, type QuiltProblem, unjoinable, wideSash } from './problems.ts'
import { type SashRound, sashRound } from './sashRound.ts'
import type { JointStrip } from './strips.ts'
import { type WornBlock, wornBlocks } from './wornBlocks.ts'

type Numbers = readonly [number, number]
const numbers = ([w, h]: ExactSize): Numbers => [toNumber(w), toNumber(h)]
const pointOf = ([x, y]: ExactSize): ReportPoint => [toFile(x), toFile(y)]

/** A quilt as it is laid and joined, before anything is said of it. */
interface QuiltWork {
  readonly quilt: Quilt
  readonly measures: Measures
  readonly blocks: ReadonlyMap<string, WornBlock>
  readonly faults: readonly QuiltProblem[]
  readonly joining: Joining | null
  readonly places: readonly LaidPlace[]
  readonly joints: readonly PlacedJoint[]
  readonly round: SashRound | null
  /** Finished, without borders; with them; and edge to edge. */
  readonly sashed: ExactSize
  readonly finished: ExactSize
  readonly raw: ExactSize
}

/** Wears, lays and joins. */
export function workOut(quilt: Quilt): QuiltWork {
  const measures = measuresOf(quilt)
  const blocks = wornBlocks(quilt)
  const laid = quilt.places.map((place) => layPlace(quilt, measures, blocks, place))
  const faults = [...placeFaults(quilt), ...fitProblems(laid), ...blockProblems(laid)]
  const joining = faults.some(keepsFromJoining) ? null : chooseJoining(quilt, measures, blocks, laid)
  const places = joining?.places ?? laid
  const joints = joining?.joined.joints ?? []
  const inner: ExactSize = [spanOf(measures, 0, quilt.grid.columns), spanOf(measures, 1, quilt.grid.rows)]
  const round = sashRound(quilt, measures, inner, joints)
  const sashed: ExactSize = round === null ? inner : larger(inner, times(measures.gap, 2))
  const borders = (quilt.borders ?? []).reduce<Rational>((all, { finishedWidth }) => add(all, times(lengthOf(finishedWidth), 2)), ZERO)
  const finished = larger(sashed, borders)
  return { quilt, measures, blocks, faults, joining, places, joints, round, sashed, finished, raw: larger(finished, times(measures.seam, 2)) }
}

/** The whole report of a quilt; lengths in the measure's unit, places of joints and meetings from the first place's finished corner. */
export function quiltReport(quilt: Quilt) {
  const { measures, blocks, faults, joining, places, joints, round, sashed, finished, raw } = workOut(quilt)
  const cutting = quiltCutting(quilt, measures, places, joints, { round, top: sashed })
  const blocked = faults.some(keepsFromJoining)
  const problems: QuiltProblem[] = [
    ...faults,
    ...(joining === null && !blocked ? [unjoinable(places)] : []),
    ...cutting.tooLarge.map(({ fabric, size, for: units }) => clothProblem(quilt, places, fabric, size, units)),
    ...wideSash(quilt, measures, places),
    ...hiddenPoints(measures, places),
  ]
  const byHand = measures.join === 'fronts' || (measures.join === 'strips' && quilt.way?.close === 'hand')
  return {
    format: 'nestwright.quilt-report',
    version: 1,
    name: quilt.name,
    measure: { unit: quilt.measure.unit, seam: toNumber(measures.seam) },
    way: { ...(quilt.way ?? {}), join: measures.join },
    gap: toNumber(measures.gap),
    size: { finished: numbers(finished), raw: numbers(raw) },
    order: joining?.joined.order ?? (quilt.order === undefined || quilt.order === 'auto' ? 'rows' : quilt.order),
    problems,
    places: places.map((place) => placeRow(quilt, measures, place)),
    joints: joints.map((joint, number) => jointRow(joining as Joining, places, joint, number)),
    ...met(quilt, measures, blocks, joining, places),
    underArm: underArm(measures, joining, raw),
    handSewn: byHand ? toNumber(sum(...joints.map(({ length }) => length))) : 0,
    machineLong: toNumber(most(joints.map(({ length }) => length))),
    ...(round === null ? {} : { round: roundRow(round) }),
    blocks: [...blocks.values()].map(({ id, block, finished: size, sewing }) => ({
      id,
      name: block.name,
      finished: numbers(size),
      unfinished: numbers(larger(size, times(measures.seam, 2))),
      clashes: sewing.plans?.taken.pressed.clashes ?? 0,
    })),
    units: cutting.units,
    cut: cutting.cut satisfies readonly QuiltCutRow[],
    fabric: cutting.fabric,
    cloth: { usableWidth: cutting.usableWidth },
    layers: measures.join === 'whole' ? wholeLayers(quilt, measures, raw, cutting.usableWidth) : gatheredLayers(quilt, measures, places, joints),
    binding: bindingRow(quilt, measures, raw, cutting.usableWidth),
  }
}

/** Everything that is worked out about a quilt. */
export type QuiltReport = ReturnType<typeof quiltReport>

const larger = ([w, h]: ExactSize, by: Rational): ExactSize => [add(w, by), add(h, by)]

function clothProblem(quilt: Quilt, places: readonly LaidPlace[], fabric: string, size: Numbers, units: readonly string[]): QuiltProblem {
  const name = quilt.fabrics.find(({ id }) => id === fabric)?.name ?? fabric
  const first = places.find(({ place }) => place.id === units[0]?.split('/')[0])
  return { code: 'cloth', at: first?.place.at ?? [0, 0], units, message: message('piece-too-large', { fabric: name, size }) }
}

function placeRow(quilt: Quilt, measures: Measures, laid: LaidPlace) {
  const { place, size, origin, finished, content, frame } = laid
  const layers = layersOf(measures, laid, quilt.grid.columns, quilt.grid.rows)
  const strip = (one: ExactSize | null) => (one === null ? null : { size: numbers(one), count: 2 })
  return {
    id: place.id,
    ...((place.block === undefined ? { plain: place.plain } : { block: place.block }) as { readonly block?: string; readonly plain?: string }),
    at: place.at,
    size,
    origin: pointOf(origin),
    finished: numbers(finished),
    unfinished: numbers(larger(finished, times(measures.seam, 2))),
    turn: place.turn ?? 0,
    press: place.press ?? 'planned',
    content: numbers(content),
    frame: frame.map(({ fabric, across, down, sides, topAndBottom, becomes }) => ({
      fabric,
      finished: numbers([across, down]),
      sides: strip(sides),
      topAndBottom: strip(topAndBottom),
      becomes: numbers(becomes),
    })),
    layers: layers === null ? null : layersRow(layers),
    ditch: placeDitch(laid, measures.seam, looseOf(layers)),
  }
}

const layersRow = ({ front, batting, backing, loose }: PlaceLayers) => ({
  front: numbers(front),
  batting: { cut: numbers(batting.cut), trim: numbers(batting.trim) },
  backing: { cut: numbers(backing.cut), trim: numbers(backing.trim) },
  loose: toNumber(loose),
})

function jointRow({ joined }: Joining, places: readonly LaidPlace[], joint: PlacedJoint, number: number) {
  const { cells, from, to, length, underArm: arm, marks, strip } = joint
  const name = (side: number): string => (side < places.length ? (places[side] as LaidPlace).place.id : jointId(side - places.length))
  return {
    id: jointId(number),
    stage: cells.stage,
    from: pointOf(from),
    to: pointOf(to),
    sides: [name(cells.sides[0]), name(cells.sides[1])],
    length: toNumber(length),
    underArm: toNumber(arm),
    marks: marks.map(toNumber),
    press: joined.met?.press[number] ?? null,
    strip: strip === null ? null : stripRow(strip),
  }
}

/** What is cut for one join: across each strip, then along it. */
interface StripRow {
  readonly front?: Numbers
  readonly cover?: Numbers
  readonly coverIs?: 'folded' | 'flat'
  readonly batting?: Numbers | null
  readonly sash?: readonly Numbers[]
  readonly corners?: number
  readonly corner?: Numbers | null
}

function stripRow({ front, cover, coverIs, batting, sash, corners, corner }: JointStrip): StripRow {
  const orNull = (size: ExactSize | null): Numbers | null => (size === null ? null : numbers(size))
  return {
    ...(front === undefined ? {} : { front: numbers(front) }),
    ...(cover === undefined ? {} : { cover: numbers(cover) }),
    ...(coverIs === undefined ? {} : { coverIs }),
    ...(batting === undefined ? {} : { batting: orNull(batting) }),
    ...(sash === undefined ? {} : { sash: sash.map(numbers) }),
    ...(corners === undefined ? {} : { corners }),
    ...(corner === undefined ? {} : { corner: orNull(corner) }),
  }
}

const roundRow = ({ sides, topAndBottom, corners }: SashRound) => ({ sides: sides.map(numbers), topAndBottom: topAndBottom.map(numbers), corners })

interface MeetingRow {
  readonly at: ReportPoint
  readonly joint: string
  readonly seams: readonly string[]
  readonly verdict: Verdict
  readonly fix: readonly QuiltFix[]
}

function met(quilt: Quilt, measures: Measures, blocks: ReadonlyMap<string, WornBlock>, joining: Joining | null, places: readonly LaidPlace[]) {
  const found = joining?.joined.met ?? null
  const layAnew = (place: QuiltPlace): LaidPlace | null => {
    const laid = layPlace(quilt, measures, blocks, place)
    return laid.fit === 'fits' ? laid : null
  }
  const fixes = joining === null || found === null || found.between === 0 ? [] : quiltFixes(joining, inOtherOrders(quilt, measures, joining), layAnew)
  const inside = places.reduce((all, laid) => all + insideOf(laid), 0)
  const between = found?.between ?? 0
  const atLeast = joining?.atLeast ?? 0
  const proof: Message =
    joining === null
      ? message('nothing-sewn')
      : !frontsMeet(measures, quilt)
        ? message('fronts-apart')
        : between === 0
          ? message('fronts-nest')
          : message(atLeast === between ? 'fronts-proved' : 'fronts-searched', { clashes: between, atLeast })
  return {
    meetings: (found?.meetings ?? []).map(
      ({ at, joint, seams, verdict }, index): MeetingRow => ({ at: pointOf(at), joint: jointId(joint), seams, verdict, fix: fixes[index] ?? [] }),
    ),
    pressing: { between, inside, against: found?.against ?? 0, atLeast, proved: atLeast === between, proof },
  }
}

function insideOf({ block, place }: LaidPlace): number {
  const taken = block?.sewing.plans?.taken
  if (block === null || taken === undefined) return 0
  if (place.press !== 'opposite') return taken.pressed.clashes
  return scorePressing(taken.met.crossings, taken.constraints, towardOf(block, taken, 'opposite')).clashes
}

function underArm({ join }: Measures, joining: Joining | null, raw: ExactSize): number {
  if (join === 'whole') return toNumber(divide(compare(raw[0], raw[1]) < 0 ? raw[0] : raw[1], rational(2)))
  return joining === null ? 0 : toNumber(underArmOf(joining.joined))
}

/** A piece of batting or backing, as it is cut. */
export interface LayerRow {
  readonly what: 'batting' | 'backing'
  readonly size: Numbers
  readonly count: number
}

function wholeLayers({ measure }: Quilt, { seam }: Measures, raw: ExactSize, usableWidth: number): LayerRow[] {
  const rule = { seam: toNumber(seam), round: toNumber(roundOf({ measure } as Block)) }
  const { batting, backing } = layersFor(numbers(raw), measure.unit, 'home', usableWidth, rule)
  return [
    { what: 'batting', size: batting, count: 1 },
    { what: 'backing', size: backing, count: 1 },
  ]
}

/** Batting and backing of places that are quilted by themselves, and batting strips of joints, alike ones together. */
export function gatheredLayers({ grid }: Quilt, measures: Measures, places: readonly LaidPlace[], joints: readonly PlacedJoint[]): LayerRow[] {
  const rows = new Map<string, LayerRow>()
  const put = (what: LayerRow['what'], size: Numbers): void => {
    const key = `${what} ${size.map(tidy)}`
    rows.set(key, { what, size, count: (rows.get(key)?.count ?? 0) + 1 })
  }
  for (const laid of places) {
    const layers = layersOf(measures, laid, grid.columns, grid.rows)
    if (layers === null) continue
    put('batting', numbers(layers.batting.cut))
    put('backing', numbers(layers.backing.cut))
  }
  for (const { strip } of joints) if (strip?.batting != null) put('batting', numbers(strip.batting))
  return [...rows.values()]
}

/** Null where the backing that is brought over is the edge [S248]. */
function bindingRow({ measure }: Quilt, { join }: Measures, raw: ExactSize, usableWidth: number) {
  if (join === 'backing-over') return null
  const { strips, strip, length } = bindingFor(numbers(raw), measure.unit, usableWidth)
  return { strips, width: strip, length }
}
