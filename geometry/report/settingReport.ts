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
import { add, compare, multiply, type Rational, rational, subtract, toFile, toNumber } from '../exact/rational.ts'
import type { EdgeTouch } from '../neighbours/blocksSideBySide.ts'
import { across, down, isSquare, passedAt, type ChosenSetting, type SettingRequest, type CopyState, chooseSetting } from '../neighbours/setting.ts'
import { type ShownEdges, shownEdges } from '../neighbours/looseEnds.ts'
import { tiedSeams, opposite } from '../pressing/tiedSeams.ts'
import type { PressedPlan } from '../pressing/plan.ts'
import { sewBlock } from './report.ts'
import type { Problem, ReportPoint, Verdict } from '../values/report.ts'
import { type Message, message } from '../values/messages.ts'

export type { SettingRequest } from '../neighbours/setting.ts'
export { PRESSINGS, TURNINGS } from '../neighbours/setting.ts'

/** The most copies across or down: more than any bed quilt needs. */
export const MOST_COPIES = 100

interface SettingJoin {
  readonly id: string
  readonly stage: 'row' | 'block'
  readonly from: ReportPoint
  readonly to: ReportPoint
  /** Copies (`b:column.row`) or earlier seams of the setting. */
  readonly sides: readonly [string, string]
  readonly press: { readonly toward: 0 | 1; readonly rule: 'meeting' | 'preference' | 'none' }
}

interface SettingMeeting {
  readonly at: ReportPoint
  readonly join: string
  /** Seams of copies as `b:column.row/j:n`, seams of the setting by their id. */
  readonly seams: readonly string[]
  readonly verdict: Verdict
}

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
  const { joins, meetings } = between(shown, chosen)
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

/** The seams between copies in sewing order, and the meetings on them. */
function between(shown: ShownEdges, { columns, rows, states }: ChosenSetting): Pick<SettingReport, 'joins' | 'meetings'> {
  const state = (column: number, row: number): CopyState => states[row * columns + column] as CopyState
  const times = (length: Rational, count: number): Rational => multiply(length, rational(count))
  const point = (x: Rational, y: Rational): ReportPoint => [toFile(x), toFile(y)]
  const copy = (column: number, row: number): string => `b:${column}.${row}`
  const seamsOf = (column: number, row: number, seams: readonly number[]): string[] => seams.map((seam) => `${copy(column, row)}/j:${seam + 1}`)
  const shortId = (column: number, row: number): string => `s:${row * (columns - 1) + column + 1}`
  const longId = (row: number): string => `s:${rows * (columns - 1) + row + 1}`
  const rowPiece = (row: number): string => (columns === 1 ? copy(0, row) : shortId(columns - 2, row))
  const joins: SettingJoin[] = []
  const meetings: SettingMeeting[] = []

  const rightTouches = (column: number, row: number): EdgeTouch[] => across(state(column, row), state(column + 1, row))
  const short = shortPresses(columns, rows, rightTouches)
  for (let row = 0; row < rows; row++)
    for (let column = 0; column + 1 < columns; column++) {
      const x = times(shown.width, column + 1)
      const top = times(shown.height, row)
      joins.push({
        id: shortId(column, row),
        stage: 'row',
        from: point(x, top),
        to: point(x, add(top, shown.height)),
        sides: [column === 0 ? copy(0, row) : shortId(column - 1, row), copy(column + 1, row)],
        press: short(column, row),
      })
      for (const { place, near, far, verdict } of rightTouches(column, row))
        if (verdict !== 'alone')
          meetings.push({
            at: point(x, add(top, place)),
            join: shortId(column, row),
            seams: [...seamsOf(column, row, near), ...seamsOf(column + 1, row, far)],
            verdict,
          })
    }
  for (let row = 0; row + 1 < rows; row++) {
    const y = times(shown.height, row + 1)
    const ends = [0, 0]
    for (let column = columns - 1; column >= 0; column--) {
      const corner = times(shown.width, column + 1)
      if (column + 1 < columns)
        meetings.push({ at: point(corner, y), join: longId(row), seams: [shortId(column, row), shortId(column, row + 1)], verdict: 'nests' })
      for (const { place, near, far, verdict } of down(state(column, row), state(column, row + 1), passedAt(column, columns))) {
        ends[0] = (ends[0] as number) + near.length
        ends[1] = (ends[1] as number) + far.length
        const atCorner = place.n === 0n || compare(place, shown.width) === 0
        // At a corner the short seams are a pair already: only other pairs meet there.
        if (verdict === 'alone' || (atCorner && (verdict === 'pin' || verdict === 'tip'))) continue
        meetings.push({
          at: point(subtract(corner, place), y),
          join: longId(row),
          seams: [...seamsOf(column, row, near), ...seamsOf(column, row + 1, far)],
          verdict,
        })
      }
    }
    const [above, below] = ends as [number, number]
    joins.push({
      id: longId(row),
      stage: 'block',
      from: point(rational(0), y),
      to: point(times(shown.width, columns), y),
      sides: [row === 0 ? rowPiece(0) : longId(row - 1), rowPiece(row + 1)],
      press: above === below ? { toward: 0, rule: 'none' } : { toward: above < below ? 0 : 1, rule: 'preference' },
    })
  }
  return { joins, meetings }
}

/** Short seams one above the other are pressed by turns left and right; the seam ends inside them decide which way comes first. */
function shortPresses(
  columns: number,
  rows: number,
  touches: (column: number, row: number) => readonly EdgeTouch[],
): (column: number, row: number) => SettingJoin['press'] {
  const wanted = Array.from({ length: Math.max(0, columns - 1) }, (_, column) =>
    Array.from({ length: rows }, (_, row) => {
      const more = touches(column, row).reduce((sum, { near, far }) => sum + near.length - far.length, 0)
      return more === 0 ? null : more < 0 ? 0 : 1
    }),
  )
  const first = wanted.map((ways) => {
    const against = [0, 1].map((start) => ways.filter((way, row) => way !== null && way !== (start + row) % 2).length)
    return (against[0] as number) <= (against[1] as number) ? 0 : 1
  })
  return (column, row) => {
    const toward = (((first[column] as number) + row) % 2) as 0 | 1
    const way = wanted[column]?.[row]
    return { toward, rule: rows > 1 ? 'meeting' : way === toward ? 'preference' : 'none' }
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
  const said: Message[] = []
  const byHand = turns !== undefined
  if (chosen.clashes === 0) said.push(message('copies-nest'))
  else {
    const through = clashes.filter(({ seams: [one, other] }) => one?.split('/')[1] === other?.split('/')[1]).length
    said.push(message('copies-clash', { clashes: chosen.clashes }))
    if (through > 0 && !byHand && turn === 'none' && press === 'same') said.push(message('copies-clash-through', { clashes: through }))
    if (rulesLifted !== null) said.push(message('copies-clash-by-rule', { clashes: rulesLifted }))
    if (chosen.clashes > chosen.atLeast) said.push(message('copies-searched-in-bands', { atLeast: chosen.atLeast }))
    else if (byHand && press === 'free') said.push(message('copies-pressing-proved'))
    else if (!byHand && (turn === 'free' || press === 'free')) said.push(message('copies-proved'))
  }
  if (inside > 0) said.push(message('clashes-inside', { clashes: inside }))
  return byHand ? said : [...said, ...ruleOfThumb(shown, chosen, turn, press)]
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
