/**
 * A file of many blocks with their versions; each is written as in a block file of its own.
 *
 * In      blocks with ids and versions; or the text of such a file.
 * Out     the text; or the blocks, or the place of the first fault and a message that says what to do. One faulty block rejects the whole file.
 */
import { type Block, checkBlock, LONGEST_WORDS, type Message, message, type Read } from '../../geometry/index.ts'

export interface FiledVersion {
  readonly made: number
  readonly name: string | null
  readonly block: Block
}

export interface FiledBlock {
  readonly id: string
  readonly made: number
  readonly changed: number
  readonly block: Block
  readonly versions: readonly FiledVersion[]
}

const FORMAT = 'nestwright.blocks'

export const writeBlocks = (blocks: readonly FiledBlock[]): string => `${JSON.stringify({ format: FORMAT, version: 1, blocks }, null, 1)}\n`

/** Whether a file's format field says that it is a file of many blocks. */
export const isBlocksFile = (value: unknown): boolean => fieldsOf(value)?.format === FORMAT

type Fields = Readonly<Record<string, unknown>>
type ReadFault = Extract<Read<never>, { ok: false }>

const fieldsOf = (value: unknown): Fields | null => (typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Fields) : null)
const fault = (place: string, fault: Message): ReadFault => ({ ok: false, place, message: fault })
const ID = /^[A-Za-z0-9._-]{1,64}$/

export function checkBlocks(value: unknown): Read<readonly FiledBlock[]> {
  const file = fieldsOf(value)
  if (file?.format !== FORMAT) return fault('format', message('other-blocks-format', { format: FORMAT }))
  if (typeof file.version === 'number' && Number.isInteger(file.version) && file.version > 1)
    return fault('version', message('newer-version', { version: file.version }))
  if (file.version !== 1) return fault('version', message('blocks-version'))
  if (!Array.isArray(file.blocks)) return fault('blocks', message('blocks-list'))
  const refused = firstFault(file.blocks, entryFault, 'blocks')
  return refused ?? { ok: true, value: file.blocks as readonly FiledBlock[] }
}

/** The first faulty entry, with its place in the file. */
function firstFault(list: readonly unknown[], refuse: (entry: unknown) => ReadFault | null, name: string): ReadFault | null {
  for (const [index, entry] of list.entries()) {
    const refused = refuse(entry)
    if (refused !== null) return fault(`${name}[${index}]${refused.place === '' ? '' : `.${refused.place}`}`, refused.message)
  }
  return null
}

function entryFault(value: unknown): ReadFault | null {
  const entry = fieldsOf(value)
  if (entry === null) return fault('', message('blocks-entry'))
  if (typeof entry.id !== 'string' || !ID.test(entry.id)) return fault('id', message('blocks-id'))
  if (!isTime(entry.changed)) return fault('changed', message('blocks-time'))
  if (!Array.isArray(entry.versions)) return fault('versions', message('blocks-list'))
  return datedBlockFault(entry) ?? firstFault(entry.versions, versionFault, 'versions')
}

function versionFault(value: unknown): ReadFault | null {
  const version = fieldsOf(value)
  if (version === null) return fault('', message('blocks-copy'))
  if (version.name !== null && typeof version.name !== 'string') return fault('name', message('blocks-copy-name'))
  if (version.name !== null && version.name.length > LONGEST_WORDS)
    return fault('name', message('name-too-long', { count: version.name.length, most: LONGEST_WORDS }))
  return datedBlockFault(version)
}

function datedBlockFault({ made, block }: Fields): ReadFault | null {
  if (!isTime(made)) return fault('made', message('blocks-time'))
  const read = checkBlock(block)
  return read.ok ? null : fault(read.place === 'file' ? 'block' : `block.${read.place}`, read.message)
}

/** The latest time that JavaScript can represent, in milliseconds. Source: ECMA-262, 21.4.1.1. */
const LAST_TIME = 8.64e15
const isTime = (value: unknown): boolean => typeof value === 'number' && value >= 0 && value <= LAST_TIME
