/**
 * The block repeated beside itself: the maker's choices, and the answer that a worker gives to them. The sheet and the board show the same one.
 *
 * How many copies there are, how they are turned (by a pattern, or each by hand) and pressed is not part of the document and never undone.
 */
import { useEffect } from 'react'
import { create } from 'zustand'
import { type Block, type Message, message, type SettingRequest, type SettingReport, type Turn } from '../../geometry/index.ts'
import { deepClient } from '../workers/clients.ts'
import { useStore } from '../document/store.ts'

export interface SettingChoice {
  readonly columns: number
  readonly rows: number
  readonly turn: SettingRequest['turn'] | 'hand'
  readonly press: SettingRequest['press']
  /** Of each copy, row by row, where they are turned by hand. */
  readonly turns: readonly Turn[]
}

export interface SettingState {
  readonly choice: SettingChoice
  /** The last answer, and what it answers; it stays in sight until the next one comes. */
  readonly report: SettingReport | null
  readonly trouble: Message | null
  readonly of: { readonly block: Block; readonly choice: SettingChoice } | null
  /** Clashes between copies before the last change, if there were as many copies of the same block. */
  readonly before: number | null
}

const useSettingState = create<SettingState>(() => ({
  choice: { columns: 3, rows: 3, turn: 'none', press: 'same', turns: [] },
  report: null,
  trouble: null,
  of: null,
  before: null,
}))
const setSetting = useSettingState.setState
const client = deepClient()
let requested: { readonly block: Block; readonly choice: SettingChoice } | null = null

export const changeSetting = (change: Partial<SettingChoice>): void => setSetting(({ choice }) => ({ choice: { ...choice, ...change } }))

/** Turns one copy; half round where a quarter would change its outline. */
export function turnCopy(place: number, quarters: 1 | 2): void {
  const { choice, report } = useSettingState.getState()
  const turns = report === null || choice.turn === 'hand' ? [...choice.turns] : report.places.map(({ turn }) => turn)
  const all = Array.from({ length: choice.columns * choice.rows }, (_, at) => turns[at] ?? 0)
  all[place] = (((all[place] as number) + quarters) % 4) as Turn
  changeSetting({ turn: 'hand', turns: all })
}

async function requestSetting(block: Block, choice: SettingChoice): Promise<void> {
  if (requested?.block === block && requested.choice === choice) return
  const request = { block, choice }
  requested = request
  const { columns, rows, press } = choice
  const turns = Array.from({ length: columns * rows }, (_, at) => choice.turns[at] ?? 0)
  const turn = choice.turn === 'hand' ? ({ turn: 'none', turns } as const) : { turn: choice.turn }
  const reply = await client.request('setting', block, { columns, rows, press, ...turn })
  if (reply.type === 'dropped') {
    if (requested === request) requested = null
    return
  }
  const answer = reply.type === 'failed' ? { ok: false as const, message: message('program-error', { error: reply.reason }) } : reply.value
  if (!answer.ok) return setSetting({ report: null, trouble: answer.message, of: request, before: null })
  const { report, of } = useSettingState.getState()
  const comparable = of?.block === block && of.choice.columns === columns && of.choice.rows === rows
  setSetting({ report: answer.value, trouble: null, of: request, before: comparable ? (report?.clashes.between ?? null) : null })
}

/** The setting of the block on the board; computed while it is shown. */
export function useSetting(shown: boolean): SettingState {
  const block = useStore(({ history }) => history.block)
  const setting = useSettingState()
  useEffect(() => (shown ? client.retain() : undefined), [shown])
  useEffect(() => {
    if (shown) void requestSetting(block, setting.choice)
  }, [shown, block, setting.choice])
  return setting
}
