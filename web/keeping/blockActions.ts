/**
 * What a maker can do with her blocks, whether on the board or not.
 *
 * In      the id of a block or version.
 * Out     the list is up to date, and a notice says what was done. Nothing is lost: an archived block stays for thirty days of use, and restoring a version is a step
 *         like any other.
 */
import { message } from '../../geometry/index.ts'
import type { Doc } from '../document/document.ts'
import { t } from '../words/words.ts'
import {
  beginBlock,
  documentOf,
  listChanged,
  autosave,
  keepVersion,
  openBlock,
  database,
  renaming,
  isSameBlock,
  broadcast,
  STARTERS,
} from './openBlock.ts'
import type { FiledBlock, FiledVersion } from './blocksFile.ts'
import { applyEdit as applied } from '../document/history.ts'
import { copyName, displayName, shortName } from '../document/blockNames.ts'
import { importBlocks, cards, changeVersions, deleteBlock, isFull, takeLease, versionBlock, versionsOf } from './database.ts'
import { setArchived } from './archive.ts'
import { type Card, newId, type Version } from './schema.ts'
import { autosaver } from './autosave.ts'
import { isLocked } from './tabLocks.ts'
import { openDocument, setView, getState, replaceDocument } from '../document/store.ts'

/** Does something; if the browser refuses, a notice says so. Returns whether it was done. */
export async function tryOrNotify(act: () => Promise<unknown>): Promise<boolean> {
  try {
    await act()
    return true
  } catch (error) {
    setView({ notice: isFull(error) ? t('Your disk is full, so this couldn’t be saved.') : t('Your browser couldn’t save this.') })
    return false
  }
}

export async function copyBlock(id: string): Promise<void> {
  const block = await documentOf(id)
  if (block === null) return
  const name = copyName(block.name)
  await importBlocks(database(), [{ id: newId(), made: Date.now(), changed: Date.now(), block: { ...block, name }, versions: [] }])
  listChanged()
  setView({ notice: t('{name} is in My blocks.', { name: shortName(name) }) })
}

/** Renames by an edit, so that it can be undone; not while another tab is changing the block. */
export async function renameBlock(id: string, name: string): Promise<'done' | 'in another tab'> {
  if (id === getState().currentBlock.id) throw new RangeError('the open document is renamed by an edit')
  if (await isLocked(id)) return 'in another tab'
  const taken = await takeLease(database(), id)
  if (taken === null) return 'done'
  const saver = autosaver(database, () => {})
  saver.take(taken.cursor, taken.history)
  saver.keep(applied(taken.history, renaming(taken.history.block, name)))
  await saver.settled()
  broadcast({ type: 'kept', id })
  listChanged()
  return 'done'
}

export async function archiveBlock(id: string): Promise<void> {
  const name = displayName({ name: (await documentOf(id))?.name ?? '' })
  await setArchived(database(), id, Date.now())
  if (id === getState().currentBlock.id && !(await openAnother(id))) {
    await setArchived(database(), id, null)
    return
  }
  listChanged()
  setView({ notice: t('{name} is in the archive.', { name }) })
}

/** Opens the block that was changed last, or an empty grid. */
async function openAnother(id: string): Promise<boolean> {
  const others = (await cards(database())).filter((card) => card.aside === null && card.id !== id)
  for (const next of others.sort((a, b) => b.changed - a.changed)) if (await openBlock(next.id)) return true
  return beginBlock(STARTERS.empty)
}

export async function restoreBlock(id: string): Promise<void> {
  await setArchived(database(), id, null)
  listChanged()
}

export async function deleteBlocks(ids: readonly string[]): Promise<void> {
  for (const id of ids) await deleteBlock(database(), id)
  listChanged()
}

// Versions.

export async function keepNamedVersion(id: string, name: string): Promise<void> {
  const block = await documentOf(id)
  if (block !== null) await keepVersion(id, block, 'asked', name)
}

/** Newest first. */
export async function versionsFor(id: string): Promise<Version[]> {
  return (await versionsOf(database(), id)).sort((a, b) => b.made - a.made)
}

/** Puts the block of a version on the board. The present state is kept as a version, and the step can be undone. */
export async function goBackTo(version: Version): Promise<void> {
  const block = await versionBlock(database(), version.id)
  if (block === undefined) return
  if (getState().currentBlock.id !== version.of && !(await openBlock(version.of))) return
  if (!getState().currentBlock.readOnly) await keepVersion(version.of, openDocument(getState()).block, 'going back')
  replaceDocument(block, message('go-back-to-version'))
}

export async function deleteVersion(id: string): Promise<void> {
  await changeVersions(database(), [], [id])
  listChanged()
}

export async function versionAsBlock({ id }: Version): Promise<boolean> {
  const block = await versionBlock(database(), id)
  return block !== undefined && beginBlock({ ...block, name: copyName(block.name) })
}

export const blockOfVersion = async ({ id }: Version): Promise<Doc | null> => (await versionBlock(database(), id)) ?? null

// Files.

/** Every block that is not archived, with its versions. */
export async function blocksToSave(): Promise<FiledBlock[]> {
  await autosave.settled()
  const shown = (await cards(database())).filter(({ aside }) => aside === null)
  const filed = await Promise.all(shown.map((card) => fileEntryOf(card)))
  return filed.filter((one) => one !== null)
}

async function fileEntryOf({ id, made, changed }: Card): Promise<FiledBlock | null> {
  const block = await documentOf(id)
  if (block === null) return null
  const versions = await Promise.all((await versionsOf(database(), id)).map(filedVersion))
  return { id, made, changed, block, versions: versions.filter((version) => version !== null) }
}

async function filedVersion(version: Version): Promise<FiledVersion | null> {
  const block = await blockOfVersion(version)
  return block === null ? null : { made: version.made, name: version.name, block }
}

/** The id of a block that is the same as this one, never edited and not archived; null if there is none. */
export async function findUntouched(block: Doc): Promise<string | null> {
  await autosave.settled()
  const named = (await cards(database())).filter(({ name, aside, past }) => aside === null && past === 0 && name === block.name)
  for (const { id } of named) {
    const here = await documentOf(id)
    if (here !== null && isSameBlock(here, block)) return id
  }
  return null
}

interface ImportResult {
  readonly added: number
  readonly copies: number
  /** How many were here already, unchanged. */
  readonly known: number
}

/** Adds blocks to those that are here. A block whose id is taken becomes a copy, unless it is the same block. */
export async function addBlocks(filed: readonly FiledBlock[]): Promise<ImportResult> {
  await autosave.settled()
  const taken = new Map((await cards(database())).map((card) => [card.id, card]))
  const added: FiledBlock[] = []
  const addedIds = new Set<string>()
  let copies = 0
  for (const one of filed) {
    const here = taken.has(one.id) ? await documentOf(one.id) : null
    if (here !== null && isSameBlock(here, one.block) && taken.get(one.id)?.aside === null) continue
    const isCopy = taken.has(one.id) || addedIds.has(one.id)
    addedIds.add(one.id)
    copies += isCopy ? 1 : 0
    added.push(isCopy ? { ...one, id: newId(), block: { ...one.block, name: copyName(one.block.name) } } : one)
  }
  await importBlocks(database(), added)
  listChanged()
  return { added: added.length, copies, known: filed.length - added.length }
}
