/**
 * Which order the places are joined in, and, where the maker leaves them free, how each is turned and pressed.
 *
 * In      a quilt whose places fit.
 * Out     the joining taken, with the places as they lie in it; null where no straight order exists.
 * How     `auto` compares the orders with the places as the file has them; turns and pressings are chosen after that (`choosePlaces`).
 */
import { compare } from '../exact/rational.ts'
import type { Turn } from '../values/block.ts'
import type { PlacePressing, Quilt, QuiltPlace } from '../values/quilt.ts'
import { choosePlaces } from './choosePlaces.ts'
import { type JoinedPlaces, joinPlaces, most } from './joinPlaces.ts'
import { JOINT_ORDERS, type JointOrder } from './joints.ts'
import type { Measures } from './measures.ts'
import { type Outline, placeOutline } from './outlineEnds.ts'
import { type LaidPlace, layPlace } from './places.ts'
import type { WornBlock } from './wornBlocks.ts'

export interface Joining {
  readonly places: readonly LaidPlace[]
  readonly outlines: readonly Outline[]
  readonly joined: JoinedPlaces
  readonly atLeast: number
}

interface State {
  readonly laid: LaidPlace
  readonly outline: Outline
}

export function chooseJoining(
  quilt: Quilt,
  measures: Measures,
  blocks: ReadonlyMap<string, WornBlock>,
  places: readonly LaidPlace[],
): Joining | null {
  const asFiled = places.map(stateOf)
  const joined = chooseOrder(quilt, measures, asFiled)
  if (joined === null) return null
  const states = places.map((laid, index) => statesOf(quilt, measures, blocks, laid, asFiled[index] as State))
  if (joined.met === null || joined.met.between === 0 || states.every((own) => own.length === 1))
    return { places, outlines: asFiled.map(({ outline }) => outline), joined, atLeast: joined.met?.between ?? 0 }
  const all = states.map((own) => own.map(({ outline }) => outline))
  const { ways, atLeast } = choosePlaces(places, all, joined.joints, joined.along)
  const chosen = ways.map((way, place) => (states[place] as readonly State[])[way] as State)
  const outlines = chosen.map(({ outline }) => outline)
  return { places: chosen.map(({ laid }) => laid), outlines, joined: joinAs(quilt, measures, chosen, joined.order) as JoinedPlaces, atLeast }
}

const stateOf = (laid: LaidPlace): State => ({ laid, outline: placeOutline(laid, laid.place.turn ?? 0, laid.place.press ?? 'planned') })

const joinAs = (quilt: Quilt, measures: Measures, states: readonly State[], order: JointOrder): JoinedPlaces | null =>
  joinPlaces(
    quilt,
    measures,
    states.map(({ laid }) => laid),
    states.map(({ outline }) => outline),
    order,
  )

/** The same places, as they lie, joined in the other orders. */
export const inOtherOrders = (quilt: Quilt, measures: Measures, { places, outlines, joined }: Joining): JoinedPlaces[] =>
  JOINT_ORDERS.filter((order) => order !== joined.order).flatMap((order) => joinPlaces(quilt, measures, places, outlines, order) ?? [])

function chooseOrder(quilt: Quilt, measures: Measures, states: readonly State[]): JoinedPlaces | null {
  const named = quilt.order ?? 'auto'
  if (named !== 'auto') return joinAs(quilt, measures, states, named)
  let best: JoinedPlaces | null = null
  for (const order of JOINT_ORDERS) {
    const one = joinAs(quilt, measures, states, order)
    if (one !== null && (best === null || better(one, best))) best = one
  }
  return best
}

function better(one: JoinedPlaces, other: JoinedPlaces): boolean {
  const clashes = (one.met?.between ?? 0) - (other.met?.between ?? 0)
  return clashes !== 0 ? clashes < 0 : compare(underArmOf(one), underArmOf(other)) < 0
}

/** The most that has to lie under the machine's arm at any joint, in the measure's unit; 0 where there are no joints. */
export const underArmOf = ({ joints }: JoinedPlaces) => most(joints.map(({ underArm }) => underArm))

function statesOf(quilt: Quilt, measures: Measures, blocks: ReadonlyMap<string, WornBlock>, laid: LaidPlace, own: State): State[] {
  const { place } = laid
  if (place.fixed === true || place.plain !== undefined) return [own]
  const { turn: turns = 'none', press = false } = quilt.free ?? {}
  const turn = place.turn ?? 0
  const steps = turns === 'none' ? [0] : turns === 'half' ? [0, 2] : [0, 1, 2, 3]
  const pressings: readonly PlacePressing[] = press ? ['planned', 'opposite'] : [place.press ?? 'planned']
  const others = steps.flatMap((step) =>
    pressings.flatMap((pressing): State[] => {
      if (step === 0 && pressing === (place.press ?? 'planned')) return []
      const changed: QuiltPlace = { ...place, turn: ((turn + step) % 4) as Turn, press: pressing }
      const lies = layPlace(quilt, measures, blocks, changed)
      return lies.fit === 'fits' ? [stateOf(lies)] : []
    }),
  )
  return [own, ...others]
}
