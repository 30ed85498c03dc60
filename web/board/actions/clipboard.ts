/** Copying units to the clipboard and pasting them, as text that another tab, another block or another program can read. */
import { broughtInto, type Message, moveUnits, pasteUnits, readUnits, removeUnits, writeUnits } from '../../../geometry/index.ts'
import { edit, setView, getState } from '../../document/store.ts'
import { loadChunk } from '../../keeping/loadChunk.ts'
import { editResult } from '../../document/editResult.ts'
import { t, tn } from '../../words/words.ts'
import { attempt } from './attempt.ts'
import { freePlace } from './freeSpace.ts'

/**
 * Copies, cuts and pastes with the browser's own keys while the board has the focus. Returns a function that stops listening.
 *
 * It listens on the whole page: where no text is selected, Firefox sends these events not to the focused element but to where the pointer clicked last.
 */
export function listenToClipboard(board: HTMLElement): () => void {
  const listening = new AbortController()
  const listen = (name: 'copy' | 'cut' | 'paste', act: (event: ClipboardEvent) => void): void =>
    document.addEventListener(name, (event) => board.contains(document.activeElement) && act(event), { signal: listening.signal })
  listen('copy', (event) => copyByKey(event, sayCopied))
  listen('cut', (event) => copyByKey(event, cutAfterCopy))
  listen('paste', (event) => {
    event.preventDefault()
    pasteText(event.clipboardData?.getData('text/plain') ?? '')
  })
  return () => listening.abort()
}

function copyByKey(event: ClipboardEvent, then: () => void): void {
  const text = selectionText()
  if (text === null) return
  event.preventDefault()
  event.clipboardData?.setData('text/plain', text)
  then()
}

/** The text of the selected units; null where nothing is selected. */
function selectionText(): string | null {
  const { history, view } = getState()
  if (view.selected.length > 0) return writeUnits(history.block, view.selected)
  setView({ notice: t('Select a unit first.') })
  return null
}

const sayCopied = (): void =>
  setView({
    notice: tn(
      getState().view.selected.length,
      'Unit copied. Paste it here or in another block.',
      '{n} units copied. Paste them here or in another block.',
    ),
  })

function cutAfterCopy(): void {
  const { selected } = getState().view
  edit(removeUnits(selected))
  setView({
    notice: tn(selected.length, 'Unit cut. Paste it here or in another block.', '{n} units cut. Paste them here or in another block.'),
  })
}

/** The words for what is wrong with a file are loaded once something is. */
async function sayNotPasted(place: string, message: Message): Promise<void> {
  const words = await loadChunk(() => import('../../words/translateAny.ts'))
  if (words !== null) setView({ notice: t('Nothing was pasted. {place}: {message}.', { place, message: words.translateAny(message) }) })
}

/** Where they lay, if there is room, or at the nearest free place. */
function pasteText(text: string): void {
  const read = readUnits(text)
  if (!read.ok) return void sayNotPasted(read.place, read.message)
  const { block } = getState().history
  const incoming = broughtInto(block, read.value)
  const place = freePlace(block, incoming.units)
  if (place === null) return setView({ notice: t('There’s no room to paste. Make the grid larger or delete a unit.') })
  const ids = incoming.units.map(({ id }) => id)
  const [dx, dy] = place
  const pasted = editResult(editResult(block, pasteUnits(incoming)), moveUnits(ids, dx, dy))
  const units = pasted.units.filter(({ id }) => ids.includes(id))
  if (attempt(pasteUnits({ units, fabrics: incoming.fabrics }), tn(ids.length, 'Unit pasted.', '{n} units pasted.')))
    setView({ selected: ids, patch: null })
}

export async function copyByButton(cut: boolean): Promise<void> {
  const text = selectionText()
  if (text === null) return
  try {
    await navigator.clipboard.writeText(text)
    if (cut) cutAfterCopy()
    else sayCopied()
  } catch {
    setView({ notice: t('Your browser blocks this button. Press Ctrl + C to copy.') })
  }
}

export async function pasteByButton(): Promise<void> {
  try {
    pasteText(await navigator.clipboard.readText())
  } catch {
    setView({ notice: t('Your browser blocks this button. Press Ctrl + V to paste.') })
  }
}
