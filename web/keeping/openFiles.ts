/**
 * Opens files and links as blocks and quilts of the maker's own.
 *
 * In      files that were picked or dropped; a link to a block in the page's address.
 * Out     a notice: what was opened, or why it was not. Opening never overwrites another block.
 */
import { checkBlock, checkQuilt, isPdf, type Message, MOST_BYTES, MOST_VALUES_OF_MANY, parseJson, type Read } from '../../geometry/index.ts'
import type { Doc } from '../document/document.ts'
import { translateAny } from '../words/translateAny.ts'
import { t, tn } from '../words/words.ts'
import { beginBlock, canKeep, openBlock } from './openBlock.ts'
import { checkBlocks, isBlocksFile } from './blocksFile.ts'
import { addBlocks, findUntouched } from './blockActions.ts'
import { displayName, shortName } from '../document/blockNames.ts'
import { isFull } from './database.ts'
import { documentFromLink, isLink } from './shareLink.ts'
import { setView, getState } from '../document/store.ts'

/** The result of opening one file. */
interface FileResult {
  /** Whether the file could be opened. */
  readonly opened: boolean
  /** Whether its block is on the board now. */
  readonly onBoard: boolean
  readonly notice: string
}

const refused = (sentence: string): FileResult => ({ opened: false, onBoard: false, notice: sentence })

/** Opens files of one block or of many, one after the other. A faulty file gives one sentence and changes nothing. Returns whether one of their blocks is on the board now. */
export async function openFiles(files: readonly File[]): Promise<boolean> {
  const results: FileResult[] = []
  for (const file of files) results.push(await openFile(file))
  const [first] = results
  if (first !== undefined) setView({ notice: results.length === 1 ? first.notice : summaryOf(results) })
  return results.some(({ onBoard }) => onBoard)
}

/** How many of several files were opened, and what is wrong with the first that was not. */
function summaryOf(results: readonly FileResult[]): string {
  const opened = results.filter(({ opened }) => opened).length
  const trouble = results.find(({ opened }) => !opened)
  return [tn(opened, 'One file opened.', '{n} files opened.'), ...(trouble === undefined ? [] : [trouble.notice])].join(' ')
}

async function openFile(file: File): Promise<FileResult> {
  const name = shortName(file.name)
  if (file.size > MOST_BYTES) return refused(t('{file} is too large to be a block file. Open another file.', { file: name }))
  let text: string | null
  try {
    text = await textOf(file)
  } catch {
    return refused(t('{file} couldn’t be read. Open another file.', { file: name }))
  }
  if (text === null)
    return refused(t('{file} is a PDF without a block inside. Open a block file, or a booklet saved from Nestwright.', { file: name }))
  const parsed = parseJson(text, MOST_VALUES_OF_MANY)
  if (!parsed.ok) return notOpened(name, parsed.place, parsed.message)
  return isBlocksFile(parsed.value) ? openMany(name, parsed.value) : openOne(name, parsed.value)
}

/** The text of a block file. A PDF is recognised by its content, whatever its name; null if it contains no block. */
async function textOf(file: File): Promise<string | null> {
  const bytes = new Uint8Array(await file.arrayBuffer())
  return isPdf(bytes) ? (await import('./bookletFile.ts')).blockTextInside(bytes) : new TextDecoder(encodingOf(bytes)).decode(bytes)
}

/** The encoding by the byte order mark, because some programs write text in UTF-16. */
const encodingOf = ([first, second]: Uint8Array): string =>
  first === 0xff && second === 0xfe ? 'utf-16le' : first === 0xfe && second === 0xff ? 'utf-16be' : 'utf-8'

const isQuiltFile = (value: unknown): boolean => (value as { readonly format?: unknown } | null)?.format === 'nestwright.quilt'

const notOpened = (file: string, place: string, message: Message): FileResult =>
  refused(t('{file} wasn’t opened. {place}: {message}.', { file, place, message: translateAny(message) }))

async function openOne(file: string, value: unknown): Promise<FileResult> {
  const read: Read<Doc> = isQuiltFile(value) ? checkQuilt(value) : checkBlock(value)
  if (!read.ok) return notOpened(file, read.place, read.message)
  const begun = await beginBlock(read.value)
  // If it could not be opened, there is a notice already.
  return begun ? { opened: true, onBoard: true, notice: t('{name} is open.', { name: displayName(read.value) }) } : refused(getState().view.notice)
}

async function openMany(file: string, value: unknown): Promise<FileResult> {
  const read = checkBlocks(value)
  if (!read.ok) return notOpened(file, read.place, read.message)
  if (!canKeep()) return refused(t('This browser can’t save blocks. Open one block at a time.'))
  try {
    const { blocks, refused: broken } = read.value
    const { added, known } = await addBlocks(blocks)
    const more = known === 0 ? '' : ` ${tn(known, 'One was already here.', '{n} were already here.')}`
    const [first] = broken
    const left =
      first === undefined
        ? ''
        : ` ${tn(broken.length, 'One couldn’t be read: {place} {message}.', '{n} couldn’t be read. The first: {place} {message}.', { place: first.place, message: translateAny(first.message) })}`
    return { opened: true, onBoard: false, notice: tn(added, 'One block added.', '{n} blocks added.') + more + left }
  } catch (error) {
    return refused(isFull(error) ? t('Your disk is full, so nothing was added.') : t('The blocks couldn’t be saved, so nothing was added.'))
  }
}

const LINK_PROBLEMS = {
  broken: (): string => t('This link is broken: there’s no block in it. Ask for it again, or for a file.'),
  newer: (): string => t('This link was made by a newer version of Nestwright. Reload this page, then open it again.'),
  'cannot press': (): string => t('This browser can’t read links. Ask for a file instead.'),
}

/** Opens the block in the page's address, and removes it from the address so that a reload does not open it twice. */
export async function openLink(): Promise<void> {
  const { hash } = window.location
  if (!isLink(hash)) return
  window.history.replaceState(null, '', window.location.pathname + window.location.search)
  const opened = await documentFromLink(hash)
  if (!opened.ok) setView({ notice: LINK_PROBLEMS[opened.why]() })
  else await openLinked(opened.block).catch(() => setView({ notice: t('Your browser couldn’t open the block. Reload the page.') }))
}

/** If the same block is already among the maker's blocks and was not changed, it is opened instead of a second copy. */
async function openLinked(block: Doc): Promise<void> {
  const name = displayName(block)
  const known = canKeep() ? await findUntouched(block) : null
  if (known !== null && (await openBlock(known))) setView({ notice: t('{name} is already in My blocks.', { name }) })
  else if (known === null && (await beginBlock(block))) setView({ notice: t('{name} was opened from a link and added to your blocks.', { name }) })
}
