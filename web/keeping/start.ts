/**
 * Starts the app: opens the database and the last block before the page is rendered, and passes on files and links.
 *
 * Out     the block on the board, and whether it can be saved.
 */
import { startSaving as beginBlocks, beginAgain, beginBlock, close, blockOfTab } from './openBlock.ts'
import { loadChunk } from './loadChunk.ts'
import { type DatabaseEvents, openBase } from './database.ts'
import type { Base } from './schema.ts'
import { startDeriving } from '../workers/derive.ts'
import { getState, openDocument, setCurrentBlock, setSaved } from '../document/store.ts'

/** Milliseconds to wait for an older page that holds the database open, before the page is shown without it. */
const LONGEST_WAIT = 1500

const DATABASE_EVENTS: DatabaseEvents = { blocked: () => setCurrentBlock({ trouble: 'older' }), closed: closedForNewer, lost: () => void reopen() }

/** Opens the last block and saves every change from now on. */
export async function start(): Promise<void> {
  const opening = openBase('nestwright', DATABASE_EVENTS)
  const late = new Promise<'late'>((resolve) => setTimeout(() => resolve('late'), LONGEST_WAIT))
  await Promise.race([opening, late]).then((first) => {
    if (first !== 'late') return beginWith(first)
    void opening.then(beginLate, cannotKeep)
  }, cannotKeep)
  startDeriving()
  await openLink()
  window.addEventListener('hashchange', () => void openLink())
  window.addEventListener('beforeunload', warn)
}

async function beginWith(base: Base): Promise<void> {
  try {
    await beginBlocks(base, blockOfTab())
  } catch {
    close()
    cannotKeep()
  }
}

/** Edits made before the database could be opened become a block of their own. */
async function beginLate(base: Base): Promise<void> {
  const open = openDocument(getState())
  setCurrentBlock({ trouble: null })
  await beginWith(base)
  if (open.past.length > 0) await beginBlock(open.block, open)
}

function cannotKeep(error?: unknown): void {
  setSaved('failed')
  setCurrentBlock({ trouble: error instanceof DOMException && error.name === 'VersionError' ? 'later' : 'none' })
}

/** Milliseconds before each try to open a lost database again. */
const RETRY_PAUSES = [0, 300, 1000, 3000]

/** The maker has cleared what the browser keeps, or the disk failed. */
async function reopen(): Promise<void> {
  close()
  setSaved('failed')
  for (const pause of RETRY_PAUSES) {
    await new Promise((resolve) => setTimeout(resolve, pause))
    const base = await openBase('nestwright', DATABASE_EVENTS).catch(() => null)
    if (base !== null) return beginAgain(base).catch(cannotKeep)
  }
  cannotKeep()
}

function closedForNewer(): void {
  close()
  setSaved('failed')
  setCurrentBlock({ trouble: 'newer', readOnly: true })
}

/** Has the browser ask before it closes a page whose last changes are not saved. */
function warn(event: BeforeUnloadEvent): void {
  const open = openDocument(getState())
  if (getState().saved === 'failed' && open.past.length > 0 && !getState().currentBlock.readOnly) event.preventDefault()
}

/** The code that opens files and links is loaded when it is needed. */
const loadOpenFiles = () => loadChunk(() => import('./openFiles.ts'))

/** Returns whether a block of the files is on the board now. */
export const openDroppedFiles = async (files: readonly File[]): Promise<boolean> => (await loadOpenFiles())?.openFiles(files) ?? false

async function openLink(): Promise<void> {
  if (window.location.hash !== '') await (await loadOpenFiles())?.openLink()
}
