/**
 * What to do about a clash between blocks: each fix, once applied, takes that clash away and makes no other.
 *
 * In      a joining in which seams clash, the same places joined in the other orders, and how else a place may lie.
 * Out     for each clashing meeting its fixes; there may be none.
 * How     a fix is tried, not guessed. A place that is pressed or turned otherwise changes only what its own outline meets, so its new seam ends are
 *         looked up among those that lie across its joints, which stay pressed as they are.
 */
import { scorePressing } from '../pressing/press.ts'
import type { Toward } from '../pressing/values.ts'
import type { PressedPlan } from '../pressing/plan.ts'
import type { Turn } from '../values/block.ts'
import { type Message, message } from '../values/messages.ts'
import type { PlacePressing, QuiltPlace } from '../values/quilt.ts'
import type { AlongJoint } from './alongJoints.ts'
import type { Joining } from './chooseJoining.ts'
import type { JoinedPlaces, PlacedJoint } from './joinPlaces.ts'
import type { ExactSize } from './measures.ts'
import { edgeToward, type QuiltMeeting } from './meetings.ts'
import { endKey, type Outline, placeOutline, towardOf } from './outlineEnds.ts'
import type { LaidPlace } from './places.ts'
import type { WornBlock } from './wornBlocks.ts'

export interface QuiltFix {
  readonly do: 'press' | 'turn' | 'order'
  /** A place, a seam of the block in it (`place/j:n`), or the name of an order. */
  readonly what: string
  readonly message: Message
  readonly turn?: Turn
}

/** A place laid another way; null where it does not fit so. */
type LayAnew = (place: QuiltPlace) => LaidPlace | null

/** By meeting, in the order of the joining's own. */
export function quiltFixes({ places, joined, outlines }: Joining, others: readonly JoinedPlaces[], layAnew: LayAnew): QuiltFix[][] {
  const meetings = joined.met?.meetings ?? []
  const clashing = meetings.filter(({ verdict }) => verdict === 'clashes')
  if (clashing.length === 0) return meetings.map(() => [])
  const trial = new Trial(places, outlines, joined, clashing, layAnew)
  const points = clashPoints(clashing)
  const orders = others
    .map(({ order, met }) => ({ order, points: clashPoints(met?.meetings ?? []) }))
    .filter((other) => [...other.points].every((point) => points.has(point)))
  return meetings.map((meeting) => {
    if (meeting.verdict !== 'clashes') return []
    const here = pointKey(meeting.at)
    return [
      ...trial.fixes(meeting),
      ...orders
        .filter((other) => !other.points.has(here))
        .map(
          (other): QuiltFix => ({
            do: 'order',
            what: other.order,
            message: message('join-by-order', { order: other.order, all: other.points.size === 0 }),
          }),
        ),
    ]
  })
}

const clashPoints = (meetings: readonly QuiltMeeting[]): ReadonlySet<string> =>
  new Set(meetings.filter(({ verdict }) => verdict === 'clashes').map(({ at }) => pointKey(at)))

const pointKey = ([x, y]: ExactSize): string => `${x.n}/${x.d} ${y.n}/${y.d}`

function countedBy<One>(all: readonly One[], by: (one: One) => string): Map<string, number> {
  const counts = new Map<string, number>()
  for (const one of all) counts.set(by(one), (counts.get(by(one)) ?? 0) + 1)
  return counts
}

/** One way to lay a place, with the clashes on its outline when it lies so. */
interface Tried {
  readonly fix: QuiltFix
  readonly clashes: readonly string[]
}

class Trial {
  private readonly places: readonly LaidPlace[]
  private readonly joined: JoinedPlaces
  private readonly layAnew: LayAnew
  private readonly numbers: ReadonlyMap<string, number>
  /** By joint and side: the leans of the seam ends there. */
  private readonly leans: readonly (readonly [Map<string, number>, Map<string, number>])[]
  /** By place: the joints along it. */
  private readonly touching: { readonly joint: number; readonly side: 0 | 1 }[][]
  /** How many seams clash at each point of each joint. */
  private readonly clashing: ReadonlyMap<string, number>
  private readonly before: readonly (readonly string[])[]
  private readonly tried = new Map<string, Tried | null>()

  constructor(places: readonly LaidPlace[], outlines: readonly Outline[], joined: JoinedPlaces, clashing: readonly QuiltMeeting[], layAnew: LayAnew) {
    this.places = places
    this.joined = joined
    this.layAnew = layAnew
    this.numbers = new Map(places.map(({ place }, number) => [place.id, number]))
    this.clashing = countedBy(clashing, ({ joint, at }) => `${joint} ${pointKey(at)}`)
    this.touching = places.map(() => [])
    this.leans = joined.joints.map((_, joint) => this.endsAlong(joint, outlines))
    this.before = outlines.map((outline, place) => this.clashesOf(place, outline))
  }

  private endsAlong(number: number, outlines: readonly Outline[]): [Map<string, number>, Map<string, number>] {
    const { axis } = (this.joined.joints[number] as PlacedJoint).cells
    const along = axis === 0 ? 1 : 0
    const { places, joints } = this.joined.along[number] as AlongJoint
    const leans: [Map<string, number>, Map<string, number>] = [new Map(), new Map()]
    for (const { number: place, side } of places) {
      this.touching[place]?.push({ joint: number, side })
      for (const end of (outlines[place] as Outline)[edgeToward(axis, side)]) leans[side].set(endKey(end.at[along], end), end.lean)
    }
    for (const { number: joint, side } of joints) {
      const { from } = this.joined.joints[joint] as PlacedJoint
      leans[side].set(endKey(from[along], { along: 0, inward: 1 }), this.joined.met?.press[joint] === 0 ? -1 : 1)
    }
    return leans
  }

  /** Where a place with such an outline clashes: a joint and a point for each. */
  private clashesOf(place: number, outline: Outline): string[] {
    return (this.touching[place] as Trial['touching'][number]).flatMap(({ joint, side }) => {
      const { cells, from, to } = this.joined.joints[joint] as PlacedJoint
      const along = cells.axis === 0 ? 1 : 0
      const across = (this.leans[joint] as Trial['leans'][number])[side === 0 ? 1 : 0]
      return outline[edgeToward(cells.axis, side)]
        .filter((end) => end.lean !== 0 && across.get(endKey(end.at[along], end)) === end.lean)
        .filter(({ at }) => pointKey(at) !== pointKey(from) && pointKey(at) !== pointKey(to))
        .map(({ at }) => `${joint} ${pointKey(at)}`)
    })
  }

  fixes({ seams, joint, at }: QuiltMeeting): QuiltFix[] {
    const here = `${joint} ${pointKey(at)}`
    return seams.flatMap((seam) => {
      const [id, own] = seam.split('/')
      const place = this.numbers.get(id as string)
      if (own === undefined || place === undefined || (this.places[place] as LaidPlace).place.fixed === true) return []
      return [...this.otherWays(place), this.seamTurned(place, own)].flatMap((tried) =>
        tried !== null && this.helps(place, here, tried) ? [tried.fix] : [],
      )
    })
  }

  private helps(place: number, here: string, { clashes }: Tried): boolean {
    const before = this.before[place] as readonly string[]
    return before.includes(here) && clashes.length < before.length && clashes.every((one) => one !== here && this.clashing.has(one))
  }

  /** The place pressed the other way, and turned in every way in which it fits. */
  private otherWays(number: number): (Tried | null)[] {
    const { place } = this.places[number] as LaidPlace
    const press: PlacePressing = place.press === 'opposite' ? 'planned' : 'opposite'
    const turned = [1, 2, 3].map((quarters) => ({ quarters: quarters as Turn, turn: (((place.turn ?? 0) + quarters) % 4) as Turn }))
    const position = { column: place.at[0] + 1, row: place.at[1] + 1 }
    return [
      this.tryPlace(number, { ...place, press }, { do: 'press', what: place.id, message: message('press-position', { ...position, press }) }),
      ...turned.map(({ quarters, turn }) =>
        this.tryPlace(number, { ...place, turn }, { do: 'turn', what: place.id, turn, message: message('turn-position', { ...position, quarters }) }),
      ),
    ]
  }

  private tryPlace(number: number, changed: QuiltPlace, fix: QuiltFix): Tried | null {
    return this.once(`${number} ${fix.do} ${fix.turn ?? ''}`, () => {
      const laid = this.layAnew(changed)
      const block = laid?.block?.sewing.plans?.taken
      if (laid === null || laid.block === null || block === undefined) return null
      const toward = towardOf(laid.block, block, changed.press ?? 'planned')
      return { fix, clashes: this.clashesOf(number, placeOutline(laid, changed.turn ?? 0, toward)) }
    })
  }

  /** One seam of the block the other way: only where nothing settles it, and where no seams clash inside the block for it. */
  private seamTurned(number: number, name: string): Tried | null {
    const laid = this.places[number] as LaidPlace
    const { block, place } = laid
    const taken = block?.sewing.plans?.taken
    const seam = Number(name.slice(2)) - 1
    if (block === null || taken === undefined || !name.startsWith('j:') || taken.constraints[seam]?.fixed !== null) return null
    if ((taken.matched?.matching[seam] ?? null) !== null) return null
    return this.once(`${number} ${name}`, () => {
      const toward = turnedAlone(block, taken, place.press ?? 'planned', seam)
      if (toward === null) return null
      const said = message('press-position-seam', { column: place.at[0] + 1, row: place.at[1] + 1 })
      return {
        fix: { do: 'press', what: `${place.id}/${name}`, message: said },
        clashes: this.clashesOf(number, placeOutline(laid, place.turn ?? 0, toward)),
      }
    })
  }

  private once(key: string, find: () => Tried | null): Tried | null {
    const known = this.tried.get(key)
    if (known !== undefined) return known
    const tried = find()
    this.tried.set(key, tried)
    return tried
  }
}

function turnedAlone(block: WornBlock, taken: PressedPlan, press: PlacePressing, seam: number): readonly Toward[] | null {
  const before = towardOf(block, taken, press)
  const toward = before.map((way, index): Toward => (index === seam && way !== 'open' ? (way === 0 ? 1 : 0) : way))
  const [old, now] = [before, toward].map((ways) => scorePressing(taken.met.crossings, taken.constraints, ways).clashing) as [
    readonly number[],
    readonly number[],
  ]
  return now.every((crossing) => old.includes(crossing)) ? toward : null
}
