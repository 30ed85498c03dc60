/**
 * The way in: what was kept is brought back before the page is drawn, and files and links become blocks of the maker's own.
 *
 * Out     the block on the board; a sentence where something cannot be opened. Opening never takes the place of what is there.
 */
import { MOST_BYTES, readBlock } from '../../geometry/index.ts'
import { t, tn } from '../words/words.ts'
import { begin as beginBlocks, beginAgain, beginBlock, canKeep, close, remembered } from './blocks.ts'
import { checkBlocks, holdsBlocks } from './blocksFile.ts'
import { bringBlocksIn } from './blocksShelf.ts'
import { type Base, type Calls, isFull, openBase } from './saveBase.ts'
import { blockIn, isLink } from './share.ts'
import { look, lookDeeper, now, setDesk, setSaved } from './store.ts'

/** Milliseconds to wait for an older page that holds the database open, before the page is shown without it. */
const PATIENCE = 1500

const CALLS: Calls = { blocked: () => setDesk({ trouble: 'older' }), closed: givenAway, lost: () => void again() }

/** Bring back what was kept, and keep every change from now on. */
export async function begin(): Promise<void> {
  const opening = openBase('nestwright', CALLS)
  const late = new Promise<'late'>((resolve) => setTimeout(() => resolve('late'), PATIENCE))
  const first = await Promise.race([opening, late]).catch(() => null)
  if (first === 'late') void opening.then(beginLate, cannotKeep)
  else if (first === null) cannotKeep()
  else await beginWith(first)
  lookDeeper()
  await openLink()
  window.addEventListener('hashchange', () => void openLink())
  window.addEventListener('beforeunload', warn)
}

async function beginWith(base: Base): Promise<void> {
  try {
    await beginBlocks(base, remembered())
  } catch {
    cannotKeep()
  }
}

/** What was done while the database could not be had becomes a block of its own. */
async function beginLate(base: Base): Promise<void> {
  const { history } = now()
  setDesk({ trouble: null })
  await beginWith(base)
  if (history.past.length > 0) await beginBlock(history.block, history)
}

function cannotKeep(): void {
  setSaved('failed')
  setDesk({ trouble: 'none' })
}

/** Milliseconds until a database that was taken away is asked for again. */
const PAUSES = [0, 300, 1000, 3000]

/** The maker has cleared what the browser keeps, or the disk failed. */
async function again(): Promise<void> {
  close()
  setSaved('failed')
  for (const pause of PAUSES) {
    await new Promise((resolve) => setTimeout(resolve, pause))
    const base = await openBase('nestwright', CALLS).catch(() => null)
    if (base !== null) return beginAgain(base).catch(cannotKeep)
  }
  cannotKeep()
}

function givenAway(): void {
  close()
  setSaved('failed')
  setDesk({ trouble: 'newer', elsewhere: true })
}

/** The browser asks before it closes a page whose last changes are kept nowhere. */
function warn(event: BeforeUnloadEvent): void {
  const { saved, history } = now()
  if (saved === 'failed' && history.past.length > 0 && !now().desk.elsewhere) event.preventDefault()
}

/** Open a file of one block or of many; a broken one gives one sentence and changes nothing. Whether a block of it lies on the board now. */
export async function openFile(file: File): Promise<boolean> {
  if (file.size > MOST_BYTES) {
    look({ notice: t('{file} is too large to be a block file; choose another file.', { file: file.name }) })
    return false
  }
  let text: string | null
  try {
    text = isBooklet(file) ? await (await import('./bookletFile.ts')).blockTextInside(new Uint8Array(await file.arrayBuffer())) : await file.text()
  } catch {
    look({ notice: t('{file} could not be read; choose another file.', { file: file.name }) })
    return false
  }
  if (text === null) {
    look({ notice: t('{file} is a PDF without a block inside; choose a block file, or a booklet printed here.', { file: file.name }) })
    return false
  }
  const many = manyIn(text)
  if (many === null) return openOne(file.name, text)
  await openMany(file.name, many)
  return false
}

const isBooklet = ({ name, type }: File): boolean => type === 'application/pdf' || /\.pdf$/i.test(name)

function manyIn(text: string): unknown {
  try {
    const value: unknown = JSON.parse(text)
    return holdsBlocks(value) ? value : null
  } catch {
    return null
  }
}

const notOpened = (file: string, place: string, message: string): void =>
  look({ notice: t('{file} was not opened. {place}: {message}.', { file, place, message }) })

async function openOne(file: string, text: string): Promise<boolean> {
  const read = readBlock(text)
  if (!read.ok) {
    notOpened(file, read.place, read.message)
    return false
  }
  const begun = await beginBlock(read.value)
  if (begun) look({ notice: t('{name} is open.', { name: read.value.name }) })
  return begun
}

async function openMany(file: string, value: unknown): Promise<void> {
  const read = checkBlocks(value)
  if (!read.ok) {
    notOpened(file, read.place, read.message)
    return
  }
  if (!canKeep()) {
    look({ notice: t('This browser keeps no blocks here; open one block at a time.') })
    return
  }
  try {
    const { came, known } = await bringBlocksIn(read.value)
    const more = known === 0 ? '' : ` ${tn(known, 'One was here already.', '{n} were here already.')}`
    look({ notice: tn(came, 'One block came in.', '{n} blocks came in.') + more })
  } catch (error) {
    look({ notice: isFull(error) ? t('The disk is full; nothing was brought in.') : t('The blocks could not be kept; nothing was brought in.') })
  }
}

const LINK_TROUBLE = {
  broken: (): string => t('This link is broken: it holds no block; ask for it again, or for a file.'),
  newer: (): string => t('This link was made by a newer Nestwright; load this page anew, then open it again.'),
  'cannot press': (): string => t('This browser cannot read links; ask for a file.'),
}

/** A block in the address becomes a block of her own; the address is plain again, so that loading it anew brings no second one. */
async function openLink(): Promise<void> {
  const { hash } = window.location
  if (!isLink(hash)) return
  window.history.replaceState(null, '', window.location.pathname + window.location.search)
  const opened = await blockIn(hash)
  if (!opened.ok) look({ notice: LINK_TROUBLE[opened.why]() })
  else if (await beginBlock(opened.block)) look({ notice: t('{name} came by a link; it is among your blocks now.', { name: opened.block.name }) })
}
