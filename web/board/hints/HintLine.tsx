/**
 * A hint for a first visit, in the line above the board: one at a time, and gone once its thing has been done or it has been dismissed.
 *
 * It watches what is done from the first hint on, also while something is in the hand and the line says that instead.
 */
import { useEffect } from 'react'
import { focusPart } from '../../controls/focus.ts'
import { HINTS, type Hint, rememberHints } from '../../document/hints.ts'
import { type AppState, getState, setView, subscribe, useStore } from '../../document/store.ts'
import { t } from '../../words/words.ts'

const WORDS: Readonly<Record<Hint, () => string>> = {
  recolour: () => t('Recolour: pick a fabric, then a patch.'),
  turn: () => t('Turn: select a unit, then press Turn 90°. Undo turns it back.'),
  check: () => t('The Seam check says which seam crossings nest.'),
}

export function HintLine({ shown }: { readonly shown: boolean }) {
  const hint = useStore(({ view }) => view.hints[0])
  useEffect(() => subscribe(finishDone), [])
  return (
    <div className="hint-line" aria-live="polite">
      {shown && hint !== undefined && (
        <>
          <p>
            <small>{t('Hint {number} of {all}', { number: HINTS.indexOf(hint) + 1, all: HINTS.length })}</small> {WORDS[hint]()}
          </p>
          {hint === 'check' && (
            <button type="button" onClick={showCheck}>
              {t('Show me')}
            </button>
          )}
          <button type="button" onClick={() => dismiss(hint)}>
            {t('Got it')}
          </button>
        </>
      )}
    </div>
  )
}

/** The button goes with the last hint; the keyboard goes on at the board. */
function dismiss(hint: Hint): void {
  finish(hint)
  if (getState().view.hints.length === 0) focusPart('board')
}

function showCheck(): void {
  setView({ sheet: 'findings' })
  finish('check')
  const sheet = document.getElementById('sheet')
  sheet?.scrollIntoView({ block: 'nearest' })
  focusPart('sheet')
}

function finish(hint: Hint): void {
  const hints = getState().view.hints.filter((other) => other !== hint)
  rememberHints(hints)
  setView({ hints })
}

function finishDone(now: AppState, before: AppState): void {
  const done = now.view.hints.filter((hint) => isDone[hint](now, before))
  for (const hint of done) finish(hint)
}

/** Whether a change of the state is what the hint is about. */
const isDone: Readonly<Record<Hint, (now: AppState, before: AppState) => boolean>> = {
  recolour: (now, before) => made(now, before, 'recolour-'),
  turn: (now, before) => made(now, before, 'turn-units'),
  check: (now, before) => now.view.finding !== null && now.view.finding !== before.view.finding,
}

/** Whether an edit whose code begins so has just been made; an undo is none. */
function made({ history }: AppState, before: AppState, code: string): boolean {
  const name = history.past.at(-1)?.name
  return history !== before.history && history.past.length > before.history.past.length && typeof name === 'object' && name.code.startsWith(code)
}
