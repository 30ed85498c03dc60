/** Beside the board: how a drag is meant, how edits repeat, and what is done to several units at once. */
import { type KeyboardEvent, memo, type ReactNode, useEffect, useRef } from 'react'
import { REPEATS, type Repeat, type Side } from '../../geometry/index.ts'
import { Picture } from '../panels/Tray.tsx'
import { KIND_NAMES } from '../panels/words.ts'
import { look, useStore } from '../state/store.ts'
import { said, t } from '../words/words.ts'
import { addToChosen, alignChosen, repeatBy, replaceChosen, spreadChosen, stepByHalves, turnInHand } from './actions.ts'
import { copyByButton, pasteByButton } from './clipboard.ts'
import type { TrayKind } from './newUnit.ts'
import { takeTool, TOOLS } from './tools.ts'
import './board.css'

const REPEAT_NAMES: Readonly<Record<Repeat, string>> = {
  off: said('off'),
  half: said('half turn'),
  quarters: said('quarter turns'),
  leftRight: said('mirror left and right'),
  topBottom: said('mirror top and bottom'),
}

const SIDES: readonly (readonly [Side, string, string])[] = [
  ['left', said('Align left'), 'M-8 -8V8M-6 -5H7M-6 4H2'],
  ['centre', said('Align on an upright line'), 'M0 -8V8M-7 -5H7M-4 4H4'],
  ['right', said('Align right'), 'M8 -8V8M6 -5H-7M6 4H-2'],
  ['top', said('Align at the top'), 'M-8 -8H8M-5 -6V7M4 -6V2'],
  ['middle', said('Align on a level line'), 'M-8 0H8M-5 -7V7M4 -4V4'],
  ['bottom', said('Align at the bottom'), 'M-8 8H8M-5 6V-7M4 6V-2'],
]

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

/** What is done to several units at once: over the board, as soon as two are chosen, so that nothing moves away under the hand. */
export const Arranging = memo(function Arranging() {
  const count = useStore(({ view }) => view.chosen.length)
  if (count < 2) return null
  return (
    <div className="arranging">
      <Bar name={t('Arranging')}>
        <fieldset>
          <legend className="unseen">{t('Align')}</legend>
          {SIDES.map(([side, name, sign]) => (
            <Tool key={side} name={t(name)} sign={sign} act={() => alignChosen(side)} />
          ))}
          <Tool name={t('Spread evenly across')} sign="M-8 -7V7M8 -7V7M-3 -4H3V4H-3Z" off={count < 3} act={() => spreadChosen('across')} />
          <Tool name={t('Spread evenly down')} sign="M-7 -8H7M-7 8H7M-4 -3V3H4V-3Z" off={count < 3} act={() => spreadChosen('down')} />
        </fieldset>
        <fieldset>
          <legend className="unseen">{t('Shapes')}</legend>
          <Tool name={t('Join shapes')} sign="M-7 -7H2V-2H7V7H-2V2H-7Z" act={() => void shaping('join')} />
          <Tool name={t('Cut away the last chosen')} sign="M-7 -7H2V-2H-2V2H-7ZM2 1V2H1M4 2H7V7H-2V4" act={() => void shaping('cut')} />
        </fieldset>
      </Bar>
    </div>
  )
})

const ON: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }

/** Buttons that are one stop of the Tab key: arrows go from one to the next. */
function Bar({ name, upright = false, children }: { readonly name: string; readonly upright?: boolean; readonly children: ReactNode }) {
  const bar = useRef<HTMLDivElement>(null)
  const buttons = (): HTMLButtonElement[] => [...(bar.current?.querySelectorAll<HTMLButtonElement>('button:not(:disabled)') ?? [])]
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

async function shaping(what: 'join' | 'cut'): Promise<void> {
  const { cutAwayChosen, joinChosen } = await import('./shaping.ts')
  await (what === 'join' ? joinChosen() : cutAwayChosen())
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

/** What was taken from the tray stays in hand until it is put back. */
export const InHand = memo(function InHand() {
  const taking = useStore(({ view }) => view.taking)
  const turned = useStore(({ view }) => view.turned)
  const count = useStore(({ view }) => view.chosen.length)
  const block = useStore(({ history }) => history.block)
  if (taking === null) return null
  return (
    <div className="inhand">
      <Picture block={block} kind={taking as TrayKind} turn={turned} />
      <span>{t('In hand: {unit}', { unit: t(KIND_NAMES[taking]) })}</span>
      <button type="button" onClick={turnInHand}>
        {t('Turn it')}
      </button>
      <button type="button" disabled={count === 0} onClick={replaceChosen}>
        {t('Put in place of the chosen')}
      </button>
      <button type="button" onClick={() => look({ taking: null, turned: 0, notice: t('The unit is put back.') })}>
        {t('Put back')}
      </button>
    </div>
  )
})

interface ToolProps {
  readonly name: string
  readonly sign: string
  readonly act: () => void
  readonly pressed?: boolean
  readonly off?: boolean
}

function Tool({ name, sign, act, pressed, off = false }: ToolProps): ReactNode {
  return (
    <button type="button" className="sign" aria-label={name} title={name} aria-pressed={pressed} disabled={off} onClick={act}>
      <svg viewBox="-11 -11 22 22" aria-hidden="true">
        <path d={sign} />
      </svg>
    </button>
  )
}
