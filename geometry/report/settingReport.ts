/**
 * Copies of a block set edge to edge: one report out.
 *
 * In      a block, the columns and rows of the setting, and how copies may be turned and pressed.
 * Out     how each copy lies, the seams between copies (joined into rows, then row to row) with their pressing, every meeting on them, the number of
 *         clashes and whether fewer are possible. Positions in cells of the whole setting, borders of the blocks included.
 * Source  two pressing versions set alternately for odd grids, all the same for even ones [S82]; it refers to the short seams.
 */
import { cellOf, seamOf } from '../block/lengthsOf.ts'
import type { Block, Turn } from '../values/block.ts'
import { add, multiply, type Rational, rational, toFile, toNumber } from '../exact/rational.ts'
import { isSquare, type ChosenSetting, type SettingRequest, type CopyState, chooseSetting } from '../neighbours/setting.ts'
import { type ShownEdges, shownEdges } from '../neighbours/looseEnds.ts'
import { tiedSeams, opposite } from '../pressing/tiedSeams.ts'
import type { PressedPlan } from '../pressing/plan.ts'
import { sewBlock } from './report.ts'
import { type SettingJoin, type SettingMeeting, seamsBetweenCopies } from './settingSeams.ts'
import type { Problem } from '../values/report.ts'
import { type Message, message } from '../values/messages.ts'

export type { SettingRequest } from '../neighbours/setting.ts'
export { PRESSINGS, TURNINGS } from '../neighbours/setting.ts'

/** The most copies across or down: more than any bed quilt needs. */
export const MOST_COPIES = 100

export interface SettingReport {
  readonly format: 'nestwright.setting'
  readonly version: 1
  readonly block: string
  readonly columns: number
  readonly rows: number
  readonly turn: SettingRequest['turn']
  readonly press: SettingRequest['press']
  /** Unfinished, in the measure's unit. */
  readonly unfinished: readonly [number, number]
  readonly problems: readonly Problem[]
  readonly places: readonly { readonly at: readonly [number, number]; readonly turn: Turn; readonly press: CopyState['press'] }[]
  readonly joins: readonly SettingJoin[]
  readonly meetings: readonly SettingMeeting[]
  /** Between copies, inside all of them, and both. */
  readonly clashes: { readonly between: number; readonly inside: number; readonly total: number }
  /** A lower bound on the clashes between copies, over all allowed turns and pressings. */
  readonly atLeast: number
  readonly proved: boolean
  /** Clashes between copies that would be left if every other copy, or those that gain by it, were pressed against its methods' rules. */
  readonly rulesLifted: number | null
  readonly why: readonly Message[]
}

type SettingAnswer = { readonly ok: true; readonly value: SettingReport } | { readonly ok: false; readonly place: string; readonly message: Message }

export function settingReport(block: Block, request: SettingRequest): SettingAnswer {
  const { laid, plane, faults, plans } = sewBlock(block, 'whole')
  if (plans === null) return { ok: true, value: unsewn(block, request, faults) }
  const { taken } = plans
  const shown = shownEdges(laid, plane, taken.met.loose)
  const quarters = request.turns === undefined ? request.turn === 'alternate' : request.turns.some((turn) => turn % 2 === 1)
  if (quarters && !isSquare(shown)) return { ok: false, place: 'turn', message: message('quarter-turn-not-square') }
  const ways = versions(taken)
  const chosen = chooseSetting(shown, taken.pressed.toward, ways.opposite, request)
  const { joins, meetings } = seamsBetweenCopies(shown, chosen)
  const inside = taken.pressed.clashes * request.columns * request.rows
  const ruled = meetings.some(({ verdict, seams }) => verdict === 'clashes' && seams.some((seam) => ruleOf(taken, seam) === 'method'))
  const lifted = ruled
    ? chooseSetting(shown, taken.pressed.toward, ways.lifted, { ...request, press: request.press === 'free' ? 'free' : 'alternate' }).clashes
    : null
  const rulesLifted = lifted !== null && lifted < chosen.clashes ? lifted : null
  return {
    ok: true,
    value: {
      ...head(block, request, shown),
      problems: [],
      places: chosen.states.map(({ turn, press }, place) => ({ at: [place % request.columns, Math.floor(place / request.columns)], turn, press })),
      joins,
      meetings,
      clashes: { between: chosen.clashes, inside, total: chosen.clashes + inside },
      atLeast: chosen.atLeast,
      proved: chosen.atLeast === chosen.clashes,
      rulesLifted,
      why: reasons(shown, chosen, request, meetings, rulesLifted, taken.pressed.clashes),
    },
  }
}

function versions({ met, constraints, pressed, matched }: PressedPlan): {
  opposite: PressedPlan['pressed']['toward']
  lifted: PressedPlan['pressed']['toward']
} {
  const groups = tiedSeams(met.crossings, constraints, matched?.matching ?? null)
  return {
    opposite: opposite(groups, constraints, pressed.toward, 'rules').toward,
    lifted: opposite(groups, constraints, pressed.toward, 'word').toward,
  }
}

const ruleOf = ({ constraints }: PressedPlan, seam: string): string | null | undefined => constraints[Number(seam.split('/j:')[1]) - 1]?.rule

function head(
  block: Block,
  { columns, rows, turn, press }: SettingRequest,
  shown: ShownEdges | null,
): Pick<SettingReport, 'format' | 'version' | 'block' | 'columns' | 'rows' | 'turn' | 'press' | 'unfinished'> {
  const seams = multiply(seamOf(block), rational(2))
  const size = (cells: Rational, copies: number): number => toNumber(add(multiply(multiply(cells, cellOf(block)), rational(copies)), seams))
  return {
    format: 'nestwright.setting',
    version: 1,
    block: block.name,
    columns,
    rows,
    turn,
    press,
    unfinished: shown === null ? [0, 0] : [size(shown.width, columns), size(shown.height, rows)],
  }
}

function unsewn(block: Block, request: SettingRequest, problems: readonly Problem[]): SettingReport {
  return {
    ...head(block, request, null),
    problems,
    places: [],
    joins: [],
    meetings: [],
    clashes: { between: 0, inside: 0, total: 0 },
    atLeast: 0,
    proved: false,
    rulesLifted: null,
    why: [message('nothing-sewn')],
  }
}

function reasons(
  shown: ShownEdges,
  chosen: ChosenSetting,
  { turn, press, turns }: SettingRequest,
  meetings: readonly SettingMeeting[],
  rulesLifted: number | null,
  inside: number,
): Message[] {
  const clashes = meetings.filter(({ verdict }) => verdict === 'clashes')
  const messages: Message[] = []
  const byHand = turns !== undefined
  if (chosen.clashes === 0) messages.push(message('copies-nest'))
  else {
    const through = clashes.filter(({ seams: [one, other] }) => one?.split('/')[1] === other?.split('/')[1]).length
    messages.push(message('copies-clash', { clashes: chosen.clashes }))
    if (through > 0 && !byHand && turn === 'none' && press === 'same') messages.push(message('copies-clash-through', { clashes: through }))
    if (rulesLifted !== null) messages.push(message('copies-clash-by-rule', { clashes: rulesLifted }))
    if (chosen.clashes > chosen.atLeast) messages.push(message('copies-searched-in-bands', { atLeast: chosen.atLeast }))
    else if (byHand && press === 'free') messages.push(message('copies-pressing-proved'))
    else if (!byHand && (turn === 'free' || press === 'free')) messages.push(message('copies-proved'))
  }
  if (inside > 0) messages.push(message('clashes-inside', { clashes: inside }))
  return byHand ? messages : [...messages, ...ruleOfThumb(shown, chosen, turn, press)]
}

/** The printed rule of thumb for blocks with an odd or even number of units a side, and where the geometry differs from it. */
function ruleOfThumb({ edges }: ShownEdges, { clashes }: ChosenSetting, turn: SettingRequest['turn'], press: SettingRequest['press']): Message[] {
  const units = 1 + new Set((edges[0] ?? []).filter(({ corner }) => corner === null).map(({ place }) => toFile(place))).size
  if (turn !== 'none' || press === 'free' || units === 1) return []
  const [even, alike] = [units % 2 === 0, press === 'same']
  const promised = even === alike
  const outcome = promised && clashes > 0 ? 'clashes-all-the-same' : !promised && clashes === 0 ? 'nests-without' : 'as-said'
  return [message('rule-of-thumb', { units, outcome })]
}
