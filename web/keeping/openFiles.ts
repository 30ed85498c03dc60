/**
 * Files and links become blocks of the maker's own.
 *
 * In      files that were chosen or dropped; a block in the address.
 * Out     a sentence: what was opened, or why it cannot be. Opening never takes the place of what is there.
 */
import { type Block, isPdf, type Message, MOST_BYTES, readBlock } from '../../geometry/index.ts'
import { t, tn, translate } from '../words/words.ts'
import { beginBlock, canKeep, openBlock } from './openBlock.ts'
import { checkBlocks, isBlocksFile } from './blocksFile.ts'
import { addBlocks, findUntouched } from './blockActions.ts'
import { displayName, shortName } from '../document/blockNames.ts'
import { isFull } from './database.ts'
import { blockFromLink, isLink } from './shareLink.ts'
import { setView, getState } from '../document/store.ts'

/** What came of opening one file. */
interface FileResult {
  /** Whether it was opened. */
  readonly opened: boolean
  /** Whether a block of it lies on the board now. */
  readonly onBoard: boolean
  readonly notice: string
}

const refused = (sentence: string): FileResult => ({ opened: false, onBoard: false, notice: sentence })

/** Open files of one block or of many, one after the other; a broken one gives one sentence and changes nothing. Whether a block of them lies on the board now. */
export async function openFiles(files: readonly File[]): Promise<boolean> {
  const results: FileResult[] = []
  for (const file of files) results.push(await openFile(file))
  const [first] = results
  if (first !== undefined) setView({ notice: results.length === 1 ? first.notice : summaryOf(results) })
  return results.some(({ onBoard }) => onBoard)
}

/** Of several files: how many were opened, and what is wrong with the first that was not. */
function summaryOf(results: readonly FileResult[]): string {
  const opened = results.filter(({ opened }) => opened).length
  const trouble = results.find(({ opened }) => !opened)
  return [tn(opened, 'One file was opened.', '{n} files were opened.'), ...(trouble === undefined ? [] : [trouble.notice])].join(' ')
}

async function openFile(file: File): Promise<FileResult> {
  const name = shortName(file.name)
  if (file.size > MOST_BYTES) return refused(t('{file} is too large to be a block file; choose another file.', { file: name }))
  let text: string | null
  try {
    text = await textOf(file)
  } catch {
    return refused(t('{file} could not be read; choose another file.', { file: name }))
  }
  if (text === null) return refused(t('{file} is a PDF without a block inside; choose a block file, or a booklet printed here.', { file: name }))
  const many = parseBlocksFile(text)
  return many === null ? openOne(name, text) : openMany(name, many)
}

/** A file is a PDF by what stands in it, whatever it is called; null where a PDF holds no block. */
async function textOf(file: File): Promise<string | null> {
  const bytes = new Uint8Array(await file.arrayBuffer())
  return isPdf(bytes) ? (await import('./bookletFile.ts')).blockTextInside(bytes) : new TextDecoder(encodingOf(bytes)).decode(bytes)
}

/** As the mark at its beginning says: some programs write text in 16 bits. */
const encodingOf = ([first, second]: Uint8Array): string =>
  first === 0xff && second === 0xfe ? 'utf-16le' : first === 0xfe && second === 0xff ? 'utf-16be' : 'utf-8'

function parseBlocksFile(text: string): unknown {
  try {
    const value: unknown = JSON.parse(text)
    return isBlocksFile(value) ? value : null
  } catch {
    return null
  }
}

const notOpened = (file: string, place: string, message: Message): FileResult =>
  refused(t('{file} was not opened. {place}: {message}.', { file, place, message: translate(message) }))

async function openOne(file: string, text: string): Promise<FileResult> {
  const read = readBlock(text)
  if (!read.ok) return notOpened(file, read.place, read.message)
  const begun = await beginBlock(read.value)
  // Where it could not be begun, that was said.
  return begun ? { opened: true, onBoard: true, notice: t('{name} is open.', { name: displayName(read.value) }) } : refused(getState().view.notice)
}

async function openMany(file: string, value: unknown): Promise<FileResult> {
  const read = checkBlocks(value)
  if (!read.ok) return notOpened(file, read.place, read.message)
  if (!canKeep()) return refused(t('This browser keeps no blocks here; open one block at a time.'))
  try {
    const { added, known } = await addBlocks(read.value)
    const more = known === 0 ? '' : ` ${tn(known, 'One was here already.', '{n} were here already.')}`
    return { opened: true, onBoard: false, notice: tn(added, 'One block came in.', '{n} blocks came in.') + more }
  } catch (error) {
    return refused(isFull(error) ? t('The disk is full; nothing was brought in.') : t('The blocks could not be kept; nothing was brought in.'))
  }
}

const LINK_PROBLEMS = {
  broken: (): string => t('This link is broken: it holds no block; ask for it again, or for a file.'),
  newer: (): string => t('This link was made by a newer Nestwright; load this page anew, then open it again.'),
  'cannot press': (): string => t('This browser cannot read links; ask for a file.'),
}

/** A block in the address becomes a block of her own; the address is plain again, so that loading it anew brings no second one. */
export async function openLink(): Promise<void> {
  const { hash } = window.location
  if (!isLink(hash)) return
  window.history.replaceState(null, '', window.location.pathname + window.location.search)
  const opened = await blockFromLink(hash)
  if (!opened.ok) setView({ notice: LINK_PROBLEMS[opened.why]() })
  else await openLinked(opened.block).catch(() => setView({ notice: t('The browser refused: the block could not be opened. Load the page anew.') }))
}

/** Opened a second time, it is found among her blocks, as long as she has left it as it came. */
async function openLinked(block: Block): Promise<void> {
  const name = displayName(block)
  const known = canKeep() ? await findUntouched(block) : null
  if (known !== null && (await openBlock(known))) setView({ notice: t('{name} is among your blocks already.', { name }) })
  else if (known === null && (await beginBlock(block))) setView({ notice: t('{name} came by a link; it is among your blocks now.', { name }) })
}
