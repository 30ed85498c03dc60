/** The keys that work on the whole page: undo, redo, Escape to empty the hand, and F6 to go to the next part. Focus is watched from the first key that is pressed. */
import { useEffect } from 'react'
import { emptyHand } from '../board/actions/modes.ts'
import { getState, redo, undo } from '../document/store.ts'
import { loadFocus } from './loadFocus.ts'

export function usePageKeys(): void {
  useEffect(() => {
    const watch = (): void => void loadFocus().then((focus) => focus?.watchFocus())
    window.addEventListener('keydown', watch, { once: true })
    return () => window.removeEventListener('keydown', watch)
  }, [])
  useEffect(() => {
    window.addEventListener('keydown', onKeyDown)
    return () => window.removeEventListener('keydown', onKeyDown)
  }, [])
}

function onKeyDown(event: KeyboardEvent): void {
  if (event.key === 'F6' && !event.ctrlKey && !event.metaKey && !event.altKey) {
    event.preventDefault()
    void loadFocus().then((focus) => focus?.focusNextPart(event.shiftKey ? -1 : 1))
  }
  if (event.key === 'Escape' && !event.defaultPrevented) letGoOfHand()
  if (!(event.ctrlKey || event.metaKey) || event.defaultPrevented || isTextField(event.target)) return
  const name = event.key.toLowerCase()
  if (name !== 'z' && name !== 'y') return
  event.preventDefault()
  if (name === 'y' || event.shiftKey) redo()
  else undo()
}

/** Where a dialog is open, Escape closes that first. */
function letGoOfHand(): void {
  const { unitInHand, fabricInHand } = getState().view
  if ((unitInHand !== null || fabricInHand !== null) && document.querySelector('dialog[open]') === null) emptyHand()
}

/** A text field has an undo of its own. */
const isTextField = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && !TYPES_WITHOUT_TEXT.has(target.type))
const TYPES_WITHOUT_TEXT: ReadonlySet<string> = new Set(['checkbox', 'range', 'color', 'file'])
