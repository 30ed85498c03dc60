/**
 * Which order the places are joined in, and, where the maker leaves them free, how each is turned and pressed.
 *
 * In      a quilt whose places fit.
 * Out     the joining taken, with the places as they lie in it; null where no straight order exists.
 * How     `auto` compares the orders with the places as the file has them; of free turns and pressings every choice is tried while they are few
 *         (then the fewest clashes are proved), else one place after another is changed as long as that helps.
 */
import { compare } from '../exact/rational.ts'
import type { Turn } from '../values/block.ts'
import type { PlacePressing, Quilt, QuiltPlace } from '../values/quilt.ts'
import { type JoinedPlaces, joinPlaces, most } from './joinPlaces.ts'
import { JOINT_ORDERS, type JointOrder } from './joints.ts'
import type { Measures } from './measures.ts'
import { type Outline, placeOutline } from './outlineEnds.ts'
import { type LaidPlace, layPlace } from './places.ts'
import type { WornBlock } from './wornBlocks.ts'

/** Choices of turns and pressings that are all tried. */
const ALL_TRIED = 20_000

export interface Joining {
  readonly places: readonly LaidPlace[]
  readonly joined: JoinedPlaces
  readonly atLeast: number
}

interface State {
  readonly laid: LaidPlace
  readonly outline: Outline
  readonly changed: boolean
}

export function chooseJoining(
  quilt: Quilt,
  measures: Measures,
  blocks: ReadonlyMap<string, WornBlock>,
  places: readonly LaidPlace[],
): Joining | null {
  const asFiled = places.map((laid) => stateOf(laid, false))
  const joined = chooseOrder(quilt, measures, asFiled)
  if (joined === null) return null
  const states = places.map((laid, index) => statesOf(quilt, measures, blocks, laid, asFiled[index] as State))
  if (joined.met === null || joined.met.between === 0 || states.every((own) => own.length === 1))
    return { places, joined, atLeast: joined.met?.between ?? 0 }
  const clashes = (chosen: readonly State[]): number => joinAs(quilt, measures, chosen, joined.order)?.met?.between ?? 0
  const count = states.reduce((all, own) => all * own.length, 1)
  const chosen = count <= ALL_TRIED ? bestOfAll(states, clashes) : improved(states, clashes)
  const best = joinAs(quilt, measures, chosen, joined.order) as JoinedPlaces
  return { places: chosen.map(({ laid }) => laid), joined: best, atLeast: count <= ALL_TRIED ? (best.met?.between ?? 0) : 0 }
}

const stateOf = (laid: LaidPlace, changed: boolean): State => ({
  laid,
  outline: placeOutline(laid, laid.place.turn ?? 0, laid.place.press ?? 'planned'),
  changed,
})

const joinAs = (quilt: Quilt, measures: Measures, states: readonly State[], order: JointOrder): JoinedPlaces | null =>
  joinPlaces(
    quilt,
    measures,
    states.map(({ laid }) => laid),
    states.map(({ outline }) => outline),
    order,
  )

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
      return lies.fit === 'fits' ? [stateOf(lies, true)] : []
    }),
  )
  return [own, ...others]
}

const changes = (chosen: readonly State[]): number => chosen.filter(({ changed }) => changed).length

function bestOfAll(states: readonly (readonly State[])[], clashes: (chosen: readonly State[]) => number): readonly State[] {
  let best = states.map((own) => own[0] as State)
  let [least, fewest] = [clashes(best), 0]
  const tryFrom = (chosen: readonly State[]): void => {
    const place = chosen.length
    if (place < states.length) {
      for (const state of states[place] as readonly State[]) tryFrom([...chosen, state])
      return
    }
    const [count, changed] = [clashes(chosen), changes(chosen)]
    if (count < least || (count === least && changed < fewest)) {
      best = [...chosen]
      least = count
      fewest = changed
    }
  }
  tryFrom([])
  return best
}

function improved(states: readonly (readonly State[])[], clashes: (chosen: readonly State[]) => number): readonly State[] {
  const chosen = states.map((own) => own[0] as State)
  let least = clashes(chosen)
  for (let better = true; better && least > 0; ) {
    better = false
    for (let place = 0; place < states.length; place++)
      for (const state of states[place] as readonly State[]) {
        const before = chosen[place] as State
        chosen[place] = state
        const count = clashes(chosen)
        if (count < least) {
          least = count
          better = true
        } else chosen[place] = before
      }
  }
  return chosen
}
