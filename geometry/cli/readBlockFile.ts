/** A block from a file on disk, from standard input, or from inside a booklet. */
import { readFileSync } from 'node:fs'
import { constants, inflateSync } from 'node:zlib'
import {
  beginsLikeBlock,
  type Block,
  blockAmong,
  type Embedded,
  filesInPdf,
  inEnglish,
  isPdf,
  MOST_BYTES,
  MOST_UNPACKED,
  readBlock,
} from '../index.ts'
import { printable, Refusal, refuse } from './result.ts'

/** The block in a file (`-`: on standard input). Refuses what is no block, and names the place in the file. */
export function readBlockFile(file: string): Block {
  const read = readBlock(textOf(file))
  return read.ok ? read.value : refuse(read.place === 'file' ? printable(file) : read.place, inEnglish(read.message))
}

/** The text of a file that is UTF-8, or of the block inside a booklet. */
export function textOf(file: string): string {
  const bytes = bytesOf(file)
  if (isPdf(bytes)) return blockInside(file, bytes)
  if (bytes.length === 0) return refuse(printable(file), 'the file is empty')
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf)
    return refuse(printable(file), 'begins with a byte order mark; save it as UTF-8 without one')
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return refuse(printable(file), 'is not text in UTF-8')
  }
}

/** A booklet carries its block file inside. */
function blockInside(file: string, bytes: Uint8Array): string {
  return (
    blockAmong(textsInside(bytes)) ?? refuse(printable(file), 'is a PDF without a block file inside; give a block file, or a booklet printed here')
  )
}

/** The files inside a PDF that begin like a block, up to a limit on what they unpack to: a small file can hold gigabytes. */
function textsInside(bytes: Uint8Array): string[] {
  const texts: string[] = []
  let room = MOST_UNPACKED
  for (const embedded of filesInPdf(bytes)) {
    if (!beginsLikeBlock(firstLetters(embedded))) continue
    const text = unpack(embedded, room)
    if (text === null) break
    room -= text.length
    texts.push(text)
  }
  return texts
}

/** The first letters of a file inside a PDF: enough to see what it is. */
function firstLetters({ bytes, packed }: Embedded): string {
  const first = bytes.subarray(0, 256)
  try {
    return new TextDecoder().decode(packed ? inflateSync(first, { finishFlush: constants.Z_SYNC_FLUSH }) : first)
  } catch {
    return ''
  }
}

/** Empty where it is no text; null where it takes more than `room` bytes. */
function unpack({ bytes, packed }: Embedded, room: number): string | null {
  if (room <= 0 || (!packed && bytes.length > room)) return null
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(packed ? inflateSync(bytes, { maxOutputLength: room }) : bytes)
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'ERR_BUFFER_TOO_LARGE' ? null : ''
  }
}

function bytesOf(file: string): Uint8Array {
  try {
    const bytes = readFileSync(file === '-' ? 0 : file)
    return bytes.length > MOST_BYTES ? refuse(printable(file), TOO_LARGE) : bytes
  } catch (error) {
    if (error instanceof Refusal) throw error
    return refuse(printable(file), CANNOT_READ[(error as NodeJS.ErrnoException).code ?? ''] ?? 'cannot be read')
  }
}

const TOO_LARGE = 'is too large to be a block file; give another'

const CANNOT_READ: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  EISDIR: 'is a folder; give a block file',
  EACCES: 'may not be read by this user',
  ENOTDIR: 'no such file',
  ENAMETOOLONG: 'is too long a name; give the name of a block file',
  ERR_FS_FILE_TOO_LARGE: TOO_LARGE,
}
