/**
 * The block among copies of itself: what is asked, and the answer from beside the page. The sheet and the board show the same one.
 *
 * Kept    how many copies, how they are turned (a habit, or each by hand) and pressed; never undone, no part of the document.
 */
import { useEffect, useSyncExternalStore } from 'react'
import type { Block, SettingAsk, SettingReport, Turn } from '../../geometry/index.ts'
import { asker } from '../workers/deepClient.ts'
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

let setting: Setting = {
  wish: { columns: 3, rows: 3, turn: 'none', press: 'same', turns: [] },
  said: null,
  trouble: null,
  of: null,
  before: null,
}
const listeners = new Set<() => void>()
const ask = asker()
let asked: { block: Block; wish: Wish } | null = null

function set(next: Setting): void {
  setting = next
  for (const listener of listeners) listener()
}

export const wishFor = (change: Partial<Wish>): void => set({ ...setting, wish: { ...setting.wish, ...change } })

/** Presses one copy round: by as much as keeps the copies' outline. */
export function turnCopy(place: number, quarters: 1 | 2): void {
  const { wish, said } = setting
  const turns = said === null || wish.turn === 'hand' ? [...wish.turns] : said.places.map(({ turn }) => turn)
  const all = Array.from({ length: wish.columns * wish.rows }, (_, at) => turns[at] ?? 0)
  all[place] = (((all[place] as number) + quarters) % 4) as Turn
  wishFor({ turn: 'hand', turns: all })
}

function askFor(block: Block, wish: Wish): void {
  if (asked?.block === block && asked.wish === wish) return
  asked = { block, wish }
  const { columns, rows, press } = wish
  const byHand = Array.from({ length: columns * rows }, (_, at) => wish.turns[at] ?? 0)
  ask(
    {
      sort: 'setting',
      block,
      ask: wish.turn === 'hand' ? { columns, rows, press, turn: 'none', turns: byHand } : { columns, rows, press, turn: wish.turn },
    },
    (answer) => {
      if (answer.sort === 'trouble') set({ ...setting, said: null, trouble: answer.message, of: { block, wish }, before: null })
      if (answer.sort !== 'setting') return
      const { said, of } = setting
      const comparable = of?.block === block && of.wish.columns === columns && of.wish.rows === rows
      const before = comparable ? (said?.clashes.between ?? null) : null
      if (answer.value.ok) set({ ...setting, said: answer.value.value, trouble: null, of: { block, wish }, before })
      else set({ ...setting, said: null, trouble: answer.value.message, of: { block, wish }, before: null })
    },
  )
}

/** The setting of the block on the board; worked out while anyone looks. */
export function useSetting(looking: boolean): Setting {
  const block = useStore(({ history }) => history.block)
  const now = useSyncExternalStore(
    (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    () => setting,
  )
  useEffect(() => {
    if (looking) askFor(block, now.wish)
  }, [looking, block, now.wish])
  return now
}
