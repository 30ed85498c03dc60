/**
 * A file of many blocks and quilts with their versions; each is written as in a file of its own.
 *
  const quilts = file.quilts ?? []
  if (!Array.isArray(quilts)) return fault('quilts', message('blocks-list'))
  const entries = [...checkedEntries(file.blocks, checkBlock, 'blocks'), ...checkedEntries(quilts, checkQuilt, 'quilts')]
  const refused = entries.flatMap(({ refused }) => refused ?? [])
  const blocks = entries.flatMap(({ entry, refused }) => (refused === null ? (entry as FiledBlock) : []))
  return blocks.length === 0 && refused[0] !== undefined ? refused[0] : { ok: true, value: { blocks, refused } }
 */
import { checkBlock, checkQuilt, LONGEST_WORDS, type Message, message, type Read } from '../../geometry/index.ts'
import { type Doc, isQuilt } from '../document/document.ts'

export interface FiledVersion {
  readonly made: number
  readonly name: string | null
  readonly block: Doc
}

export interface FiledBlock {
  readonly id: string
  readonly made: number
  readonly changed: number
  readonly block: Doc
  readonly versions: readonly FiledVersion[]
}

const FORMAT = 'nestwright.blocks'

export function writeBlocks(all: readonly FiledBlock[]): string {
  const quilts = all.filter(({ block }) => isQuilt(block))
  const file = { format: FORMAT, version: 1, blocks: all.filter(({ block }) => !isQuilt(block)), ...(quilts.length === 0 ? {} : { quilts }) }
  return `${JSON.stringify(file, null, 1)}\n`
}

/** Whether a file's format field says that it is a file of many blocks. */
export const isBlocksFile = (value: unknown): boolean => fieldsOf(value)?.format === FORMAT

type Fields = Readonly<Record<string, unknown>>
type ReadFault = Extract<Read<never>, { ok: false }>

const fieldsOf = (value: unknown): Fields | null => (typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Fields) : null)
const fault = (place: string, fault: Message): ReadFault => ({ ok: false, place, message: fault })
const ID = /^[A-Za-z0-9._-]{1,64}$/

/** What can be opened of a file of many blocks, and what cannot. */
interface CheckedBlocks {
  readonly blocks: readonly FiledBlock[]
  readonly refused: readonly ReadFault[]
}

/** Not read where nothing in it can be opened: then the first fault says why. */
export function checkBlocks(value: unknown): Read<CheckedBlocks> {
  const file = fieldsOf(value)
  if (file?.format !== FORMAT) return fault('format', message('other-blocks-format', { format: FORMAT }))
  if (typeof file.version === 'number' && Number.isInteger(file.version) && file.version > 1)
    return fault('version', message('newer-version', { version: file.version }))
  if (file.version !== 1) return fault('version', message('blocks-version'))
  if (!Array.isArray(file.blocks)) return fault('blocks', message('blocks-list'))
  const quilts = file.quilts ?? []
  if (!Array.isArray(quilts)) return fault('quilts', message('blocks-list'))
  const entries = [...checkedEntries(file.blocks, checkBlock, 'blocks'), ...checkedEntries(quilts, checkQuilt, 'quilts')]
  const refused = entries.flatMap(({ refused }) => refused ?? [])
  const blocks = entries.flatMap(({ entry, refused }) => (refused === null ? (entry as FiledBlock) : []))
  return blocks.length === 0 && refused[0] !== undefined ? refused[0] : { ok: true, value: { blocks, refused } }
}

const checkedEntries = (list: readonly unknown[], check: Check, name: string) =>
  list.map((entry, index) => ({ entry, refused: firstFault([entry], (one) => entryFault(one, check), name, index) }))

/** The first faulty entry, with its place in the file; `from`: the place of the list's first entry. */
function firstFault(list: readonly unknown[], refuse: (entry: unknown) => ReadFault | null, name: string, from = 0): ReadFault | null {
  for (const [index, entry] of list.entries()) {
    const refused = refuse(entry)
    if (refused !== null) return fault(`${name}[${from + index}]${refused.place === '' ? '' : `.${refused.place}`}`, refused.message)
  }
  return null
}

type Check = (value: unknown) => Read<Doc>

function entryFault(value: unknown, check: Check): ReadFault | null {
  const entry = fieldsOf(value)
  if (entry === null) return fault('', message('blocks-entry'))
  if (typeof entry.id !== 'string' || !ID.test(entry.id)) return fault('id', message('blocks-id'))
  if (!isTime(entry.changed)) return fault('changed', message('blocks-time'))
  if (!Array.isArray(entry.versions)) return fault('versions', message('blocks-list'))
  return datedFault(entry, check) ?? firstFault(entry.versions, (version) => versionFault(version, check), 'versions')
}

function versionFault(value: unknown, check: Check): ReadFault | null {
  const version = fieldsOf(value)
  if (version === null) return fault('', message('blocks-copy'))
  if (version.name !== null && typeof version.name !== 'string') return fault('name', message('blocks-copy-name'))
  if (version.name !== null && version.name.length > LONGEST_WORDS)
    return fault('name', message('name-too-long', { count: version.name.length, most: LONGEST_WORDS }))
  return datedFault(version, check)
}

function datedFault({ made, block }: Fields, check: Check): ReadFault | null {
  if (!isTime(made)) return fault('made', message('blocks-time'))
  const read = check(block)
  return read.ok ? null : fault(read.place === 'file' ? 'block' : `block.${read.place}`, read.message)
}

/** The latest time that JavaScript can represent, in milliseconds. Source: ECMA-262, 21.4.1.1. */
const LAST_TIME = 8.64e15
const isTime = (value: unknown): boolean => typeof value === 'number' && value >= 0 && value <= LAST_TIME
