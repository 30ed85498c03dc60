/** Beside the board: how a drag is meant, and how edits repeat. */
import { type KeyboardEvent, memo, type ReactNode, useEffect, useRef } from 'react'
import { REPEATS, type Repeat } from '../../geometry/index.ts'
import { useStore } from '../document/store.ts'
import { ActionButton } from '../controls/ActionButton.tsx'
import { said, t } from '../words/words.ts'
import { addToChosen, repeatBy, stepByHalves } from './actions/actions.ts'
import { copyByButton, pasteByButton } from './actions/clipboard.ts'
import { takeTool, TOOLS } from './tools.ts'
import './board.css'

const REPEAT_NAMES: Readonly<Record<Repeat, string>> = {
  off: said('off'),
  half: said('half turn'),
  quarters: said('quarter turns'),
  leftRight: said('mirror left and right'),
  topBottom: said('mirror top and bottom'),
}

/** What a drag means, and what is carried off and brought: upright, beside the board. */
export const BoardStrip = memo(function BoardStrip() {
  const tool = useStore(({ view }) => view.tool)
  const count = useStore(({ view }) => view.chosen.length)
  const halves = useStore(({ view }) => view.halves)
  const adding = useStore(({ view }) => view.adding)
  return (
    <Bar upright name={t('Tools')}>
      <fieldset>
        <legend className="unseen">{t('What a drag means')}</legend>
        {TOOLS.map(({ tool: one, name, sign }) => (
          <Tool key={one} name={t(name)} sign={sign} pressed={tool === one} act={() => takeTool(one)} />
        ))}
      </fieldset>
      <fieldset>
        <legend className="unseen">{t('While pressing and dragging')}</legend>
        <Tool name={t('Add to what is chosen')} sign="M-8 -8H1V1H-8ZM4 -1H8V8H-1V4M-3.5 -6V-1M-6 -3.5H-1" pressed={adding} act={addToChosen} />
        <Tool name={t('Halves of cells')} sign="M-8 -8H8V8H-8ZM0 -8V-5M0 -2V2M0 5V8" pressed={halves} act={stepByHalves} />
      </fieldset>
      <fieldset>
        <legend className="unseen">{t('Carry')}</legend>
        <Tool name={t('Copy as text')} sign="M-7 -7H3V3H-7ZM-3 3V7H7V-3H3" off={count === 0} act={() => void copyByButton(false)} />
        <Tool
          name={t('Cut out')}
          sign="M-5.5 -8.5L3.7 4.2M5.5 -8.5L-3.7 4.2M-7.6 6A2.4 2.4 0 1 0 -2.8 6A2.4 2.4 0 1 0 -7.6 6M2.8 6A2.4 2.4 0 1 0 7.6 6A2.4 2.4 0 1 0 2.8 6"
          off={count === 0}
          act={() => void copyByButton(true)}
        />
        <Tool name={t('Paste')} sign="M-6 -6H-3M3 -6H6V8H-6V-6M-3 -8H3V-4H-3ZM-3 1H3M-3 4H2" act={() => void pasteByButton()} />
      </fieldset>
    </Bar>
  )
})

const ON: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }

/** Buttons that are one stop of the Tab key: arrows go from one to the next. */
export function Bar({ name, upright = false, children }: { readonly name: string; readonly upright?: boolean; readonly children: ReactNode }) {
  const bar = useRef<HTMLDivElement>(null)
  const buttons = (): HTMLButtonElement[] => [...(bar.current?.querySelectorAll<HTMLButtonElement>('button') ?? [])]
  useEffect(() => {
    const all = buttons()
    const stop = all.find((button) => button === document.activeElement) ?? all[0]
    for (const button of all) button.tabIndex = button === stop ? 0 : -1
  })
  const key = (event: KeyboardEvent): void => {
    const all = buttons()
    const place = all.indexOf(document.activeElement as HTMLButtonElement)
    const next = all[(place + (ON[event.key] ?? 0) + all.length) % all.length]
    if (ON[event.key] === undefined || place < 0 || next === undefined) return
    event.preventDefault()
    for (const button of all) button.tabIndex = button === next ? 0 : -1
    next.focus()
  }
  return (
    <div
      ref={bar}
      className={upright ? 'tools upright' : 'tools'}
      role="toolbar"
      aria-orientation={upright ? 'vertical' : 'horizontal'}
      aria-label={name}
      onKeyDown={key}
    >
      {children}
    </div>
  )
}

/** How edits repeat over the block. */
export function Repeats() {
  const repeat = useStore(({ view }) => view.repeat)
  return (
    <label className="repeats">
      {t('Repeat edits')}
      <select value={repeat} onChange={(event) => repeatBy(event.target.value as Repeat)}>
        {REPEATS.map((one) => (
          <option key={one} value={one}>
            {t(REPEAT_NAMES[one])}
          </option>
        ))}
      </select>
    </label>
  )
}

interface ToolProps {
  readonly name: string
  readonly sign: string
  readonly act: () => void
  readonly pressed?: boolean
  readonly off?: boolean
}

export function Tool({ name, sign, act, pressed, off = false }: ToolProps): ReactNode {
  return (
    <ActionButton className="sign" aria-label={name} title={name} aria-pressed={pressed} disabled={off} onClick={act}>
      <svg viewBox="-11 -11 22 22" aria-hidden="true">
        <path d={sign} />
      </svg>
    </ActionButton>
  )
}
