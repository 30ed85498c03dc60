/**
 * The block among copies of itself: what is asked, and the answer from beside the page. The sheet and the board show the same one.
 *
 * Kept    how many copies, how they are turned (a habit, or each by hand) and pressed; never undone, no part of the document.
 */
import { useEffect } from 'react'
import { create } from 'zustand'
import type { Block, SettingAsk, SettingReport, Turn } from '../../geometry/index.ts'
import { deepClient } from '../workers/clients.ts'
import { useStore } from '../document/store.ts'

export interface Wish {
  readonly columns: number
  readonly rows: number
  readonly turn: SettingAsk['turn'] | 'hand'
  readonly press: SettingAsk['press']
  /** Row by row, while they are turned by hand. */
  readonly turns: readonly Turn[]
}

export interface Setting {
  readonly wish: Wish
  /** The last answer, and to what; an answer stays in sight until the next is there. */
  readonly said: SettingReport | null
  readonly trouble: string | null
  readonly of: { readonly block: Block; readonly wish: Wish } | null
  /** Clashes between copies before the last change, of as many copies of the same block. */
  readonly before: number | null
}

const useSettingState = create<Setting>(() => ({
  wish: { columns: 3, rows: 3, turn: 'none', press: 'same', turns: [] },
  said: null,
  trouble: null,
  of: null,
  before: null,
}))
const set = useSettingState.setState
const client = deepClient()
let asked: { readonly block: Block; readonly wish: Wish } | null = null

export const wishFor = (change: Partial<Wish>): void => set(({ wish }) => ({ wish: { ...wish, ...change } }))

/** Presses one copy round: by as much as keeps the copies' outline. */
export function turnCopy(place: number, quarters: 1 | 2): void {
  const { wish, said } = useSettingState.getState()
  const turns = said === null || wish.turn === 'hand' ? [...wish.turns] : said.places.map(({ turn }) => turn)
  const all = Array.from({ length: wish.columns * wish.rows }, (_, at) => turns[at] ?? 0)
  all[place] = (((all[place] as number) + quarters) % 4) as Turn
  wishFor({ turn: 'hand', turns: all })
}

async function requestSetting(block: Block, wish: Wish): Promise<void> {
  if (asked?.block === block && asked.wish === wish) return
  const own = { block, wish }
  asked = own
  const { columns, rows, press } = wish
  const byHand = Array.from({ length: columns * rows }, (_, at) => wish.turns[at] ?? 0)
  const turn = wish.turn === 'hand' ? ({ turn: 'none', turns: byHand } as const) : { turn: wish.turn }
  const reply = await client.request('setting', block, { columns, rows, press, ...turn })
  if (reply.type === 'dropped') {
    if (asked === own) asked = null
    return
  }
  const answer = reply.type === 'failed' ? { ok: false as const, message: reply.reason } : reply.value
  if (!answer.ok) return set({ said: null, trouble: answer.message, of: own, before: null })
  const { said, of } = useSettingState.getState()
  const comparable = of?.block === block && of.wish.columns === columns && of.wish.rows === rows
  set({ said: answer.value, trouble: null, of: own, before: comparable ? (said?.clashes.between ?? null) : null })
}

/** The setting of the block on the board; worked out while anyone looks. */
export function useSetting(looking: boolean): Setting {
  const block = useStore(({ history }) => history.block)
  const setting = useSettingState()
  useEffect(() => (looking ? client.retain() : undefined), [looking])
  useEffect(() => {
    if (looking) void requestSetting(block, setting.wish)
  }, [looking, block, setting.wish])
  return setting
}
