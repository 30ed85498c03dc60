/**
 * A file of many blocks, each as its own block file would hold it, with its versions.
 *
 * In      blocks with ids and versions; or the text of such a file.
 * Out     the text; or the blocks, or the place and the message that says what to do there. One bad block refuses the file: nothing is brought in by halves.
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

/** Whether a file says of itself that it holds many blocks. */
export const holdsBlocks = (value: unknown): boolean => fieldsOf(value)?.format === FORMAT

type Fields = Readonly<Record<string, unknown>>
type Refused = Extract<Read<never>, { ok: false }>

const fieldsOf = (value: unknown): Fields | null => (typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Fields) : null)
const bad = (place: string, fault: Message): Refused => ({ ok: false, place, message: fault })
const ID = /^[A-Za-z0-9._-]{1,64}$/

export function checkBlocks(value: unknown): Read<readonly FiledBlock[]> {
  const file = fieldsOf(value)
  if (file?.format !== FORMAT) return bad('format', message('other-blocks-format', { format: FORMAT }))
  if (typeof file.version === 'number' && Number.isInteger(file.version) && file.version > 1)
    return bad('version', message('newer-version', { version: file.version }))
  if (file.version !== 1) return bad('version', message('blocks-version'))
  if (!Array.isArray(file.blocks)) return bad('blocks', message('blocks-list'))
  const refused = firstOf(file.blocks, refusedEntry, 'blocks')
  return refused ?? { ok: true, value: file.blocks as readonly FiledBlock[] }
}

/** The first entry that will not do, with its place in the file. */
function firstOf(list: readonly unknown[], refuse: (entry: unknown) => Refused | null, name: string): Refused | null {
  for (const [index, entry] of list.entries()) {
    const refused = refuse(entry)
    if (refused !== null) return bad(`${name}[${index}]${refused.place === '' ? '' : `.${refused.place}`}`, refused.message)
  }
  return null
}

function refusedEntry(value: unknown): Refused | null {
  const entry = fieldsOf(value)
  if (entry === null) return bad('', message('blocks-entry'))
  if (typeof entry.id !== 'string' || !ID.test(entry.id)) return bad('id', message('blocks-id'))
  if (!isTime(entry.changed)) return bad('changed', message('blocks-time'))
  if (!Array.isArray(entry.versions)) return bad('versions', message('blocks-list'))
  return refusedDated(entry) ?? firstOf(entry.versions, refusedVersion, 'versions')
}

function refusedVersion(value: unknown): Refused | null {
  const version = fieldsOf(value)
  if (version === null) return bad('', message('blocks-copy'))
  if (version.name !== null && typeof version.name !== 'string') return bad('name', message('blocks-copy-name'))
  if (version.name !== null && version.name.length > LONGEST_WORDS)
    return bad('name', message('name-too-long', { count: version.name.length, most: LONGEST_WORDS }))
  return refusedDated(version)
}

function refusedDated({ made, block }: Fields): Refused | null {
  if (!isTime(made)) return bad('made', message('blocks-time'))
  const read = checkBlock(block)
  return read.ok ? null : bad(read.place === 'file' ? 'block' : `block.${read.place}`, read.message)
}

/** The last time that a clock of the language holds: ECMA-262, 21.4.1.1. */
const LAST_TIME = 8.64e15
const isTime = (value: unknown): boolean => typeof value === 'number' && value >= 0 && value <= LAST_TIME
