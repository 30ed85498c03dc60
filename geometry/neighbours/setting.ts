/**
 * Copies of one block set edge to edge: how each is turned and pressed, and where seams meet between them.
 *
 * In      the seam ends along the block's edges, its pressing and the opposite one, and how copies may be turned and pressed.
 * Out     a state for every place with the fewest clashes between blocks; the touches along every shared edge.
 * How     blocks are joined into rows, then the rows to each other [S190]. The short seams between blocks end inside the long
 *         ones: they meet in pairs of their own and can always alternate. Everything else depends on two neighbours at a time, so `leastStates` finds
 *         the minimum. Among choices with equally few clashes, fewer blocks pressed the opposite way, then fewer turned.
 */
import type { Turn } from '../values/block.ts'
import type { Toward } from '../pressing/values.ts'
import { compare } from '../exact/rational.ts'
import { beside, type LaidEdge, NO_CORNERS, type Passed, type EdgeTouch, turnedEdges } from './blocksSideBySide.ts'
import { leastStates, type StateProblem } from '../solvers/frontier.ts'
import type { ShownEdges } from './looseEnds.ts'

export const TURNINGS = ['none', 'alternate', 'free'] as const
type Turning = (typeof TURNINGS)[number]
export const PRESSINGS = ['same', 'alternate', 'free'] as const
type Pressing = (typeof PRESSINGS)[number]

export interface CopyState {
  readonly turn: Turn
  readonly press: 'own' | 'opposite'
  readonly edges: readonly LaidEdge[]
}

export interface ChosenSetting {
  readonly columns: number
  readonly rows: number
  /** Row by row. */
  readonly states: readonly CopyState[]
  readonly clashes: number
  /** A lower bound: no allowed choice of turns and pressings has fewer. */
  readonly atLeast: number
}

export interface SettingRequest {
  readonly columns: number
  readonly rows: number
  readonly turn: Turning
  readonly press: Pressing
  /** Turned by hand: quarter turns clockwise of each copy, row by row, whatever `turn` says. */
  readonly turns?: readonly Turn[]
}

/** One clash outweighs all constraints about how blocks are turned and pressed: see `CALM`. */
const CLASH = 2 ** 20
const OPPOSITE = 4
const TURNED = 1
/** The places of a setting above which those constraints are no longer weighed. */
const CALM = CLASH / (2 * (OPPOSITE + TURNED))

/** A turn and a pressing for each copy of the setting; `own` and `opposite` are the two ways to press the block's seams. */
export function chooseSetting(shown: ShownEdges, own: readonly Toward[], opposite: readonly Toward[], request: SettingRequest): ChosenSetting {
  const { all, at } = statesOf(shown, own, opposite, request)
  const weight = request.columns * request.rows > CALM ? 0 : 1
  const known = new Map<number, number>()
  const clashes = (key: number, find: () => readonly EdgeTouch[]): number => {
    const before = known.get(key)
    if (before !== undefined) return before
    const count = find().filter(({ verdict }) => verdict === 'clashes').length * CLASH
    known.set(key, count)
    return count
  }
  const pair = (state: number, neighbour: number, kind: number): number => (kind * 8 + state) * 8 + neighbour
  const grid: StateProblem = {
    columns: request.columns,
    rows: request.rows,
    states: at,
    own: (state) => (all[state]?.press === 'opposite' ? OPPOSITE * weight : 0) + (all[state]?.turn === 0 ? 0 : TURNED * weight),
    right: (state, neighbour) => clashes(pair(state, neighbour, 0), () => across(all[state] as CopyState, all[neighbour] as CopyState)),
    below: (state, neighbour, column) => {
      const passed = passedAt(column, request.columns)
      return clashes(pair(state, neighbour, 1 + (passed.start ? 1 : 0) + (passed.end ? 2 : 0)), () =>
        down(all[state] as CopyState, all[neighbour] as CopyState, passed),
      )
    },
  }
  const { states, cost, atLeast } = leastStates(grid)
  return {
    columns: request.columns,
    rows: request.rows,
    states: states.map((state) => all[state] as CopyState),
    clashes: Math.floor(cost / CLASH),
    atLeast: Math.floor(atLeast / CLASH),
  }
}

/** Along the edge between a block and the one on its right, from top to bottom. */
export const across = (left: CopyState, right: CopyState): EdgeTouch[] => beside(left.edges[1] as LaidEdge, right.edges[3] as LaidEdge, NO_CORNERS)

/** Along the edge between a block and the one below it, from right to left. */
export const down = (upper: CopyState, lower: CopyState, passed: Passed): EdgeTouch[] =>
  beside(upper.edges[2] as LaidEdge, lower.edges[0] as LaidEdge, passed)

/** The long seam between two rows passes every corner but those at its two ends. */
export const passedAt = (column: number, columns: number): Passed => ({ start: column + 1 < columns, end: column > 0 })

/** Whether a block is as wide as it is high, so that quarter turns fit. */
export const isSquare = ({ width, height }: ShownEdges): boolean => compare(width, height) === 0

/** The states that differ along some edge, and which of them each place may take. */
function statesOf(
  shown: ShownEdges,
  own: readonly Toward[],
  opposite: readonly Toward[],
  request: SettingRequest,
): { all: readonly CopyState[]; at: (column: number, row: number) => readonly number[] } {
  const all: CopyState[] = []
  const byHand = request.turns
  const turns: readonly Turn[] = byHand !== undefined ? [...new Set<Turn>([0, ...byHand])] : turnsOf(shown, request.turn)
  const looks = new Map<string, number>()
  const numbers = new Map<string, number>()
  for (const press of ['own', 'opposite'] as const)
    for (const turn of turns) {
      const state: CopyState = { turn, press, edges: turnedEdges(shown, turn, press === 'own' ? own : opposite) }
      // Where copies must alternate they do, even if it makes no visible difference.
      const look = `${request.turn === 'free' && byHand === undefined ? '' : turn}${request.press === 'free' ? '' : press} ${lookOf(state)}`
      const number = looks.get(look) ?? all.length
      if (number === all.length) all.push(state)
      looks.set(look, number)
      numbers.set(`${turn} ${press}`, number)
    }
  const number = (turn: Turn, press: CopyState['press']): number => numbers.get(`${turn} ${press}`) as number
  const listOf = (odd: number, ways: readonly Turn[]): readonly number[] => {
    const presses =
      request.press === 'free' ? (['own', 'opposite'] as const) : ([request.press === 'alternate' && odd === 1 ? 'opposite' : 'own'] as const)
    return [...new Set(presses.flatMap((press) => ways.map((turn) => number(turn, press))))]
  }
  if (byHand !== undefined) return { all, at: (column, row) => listOf((column + row) % 2, [byHand[row * request.columns + column] ?? 0]) }
  const lists = [0, 1].map((odd) => listOf(odd, request.turn === 'alternate' ? [odd as Turn] : turns))
  return { all, at: (column, row) => lists[(column + row) % 2] as readonly number[] }
}

const turnsOf = (shown: ShownEdges, turn: Turning): readonly Turn[] =>
  turn === 'none' ? [0] : turn === 'alternate' ? [0, 1] : isSquare(shown) ? [0, 1, 2, 3] : [0, 2]

const lookOf = ({ edges }: CopyState): string =>
  edges
    .map(({ ends }) =>
      ends
        .map(({ place, along, inward, lean, corner }) => `${place.n}/${place.d} ${along} ${inward} ${lean} ${corner}`)
        .sort()
        .join(),
    )
    .join(';')
