/**
 * Files inside a PDF: so that a booklet is opened as the block that it was printed from.
 *
 * In      the bytes of a PDF, ours or one that another program has saved again.
 * Out     its embedded files as they lie there, those named as such first; each may still be packed (zlib), which whoever asks can unpack.
 * Source  ISO 32000-1, 7.3.8 (streams), 7.11.4 (embedded files). A stream is never inside another object, so each is found by its own words.
 */
import { readBlock } from '../block/read.ts'

export const FILE_NAME = 'block.json'

export interface Embedded {
  readonly bytes: Uint8Array
  readonly packed: boolean
}

/** A block file in a booklet is small beside its photographs; a PDF of thousands of streams is something else. */
const MOST = 4_000
/** What is said of one stream is short; looking further back for each of thousands would take minutes in a file made for it. */
const LONGEST_DICTIONARY = 8192

/** Bytes of a file: far more than a block of 100,000 units, or a booklet full of photographs, takes. */
export const MOST_BYTES = 1 << 27

/** Letters in all that a PDF's files may unfold to: more than any block file holds, and one made to fill the memory does not. */
export const MOST_UNPACKED = 1 << 26

/** Only what begins like a block file is worth unfolding. */
export const beginsLikeBlock = (text: string): boolean => text.trimStart().startsWith('{')

/** The block file among texts; where none can be read, the one that says it is a block file, so that it can be said what is wrong with it. */
export const blockAmong = (texts: readonly string[]): string | null =>
  texts.find((text) => readBlock(text).ok) ?? texts.find((text) => text.includes('"nestwright.block"')) ?? null

/** Whether a file is a PDF, by its first bytes. */
export const isPdf = (bytes: Uint8Array): boolean => textAt(bytes, 0, 1024).includes('%PDF-')

/** The files that lie inside a PDF, those named as embedded files first. */
export function filesInPdf(bytes: Uint8Array): Embedded[] {
  const named: Embedded[] = []
  const others: Embedded[] = []
  const text = textAt(bytes, 0, bytes.length)
  let at = 0
  for (let tried = 0; tried < MOST; tried += 1) {
    const word = text.indexOf('stream', at)
    if (word < 0) break
    at = word + 6
    if (text.slice(word - 3, word) === 'end') continue
    const before = text.slice(Math.max(0, word - LONGEST_DICTIONARY), word)
    const dictionary = before.slice(Math.max(before.lastIndexOf(' obj'), before.lastIndexOf('endobj'), 0))
    const filter = /\/Filter[\s[]*\/([A-Za-z0-9]+)([^\]>]*)/.exec(dictionary)
    if (/\/Subtype\s*\/(?:Image|Form)\b|\/FunctionType\b|\/Length1\b/.test(dictionary)) continue
    if (filter !== null && (filter[1] !== 'FlateDecode' || /\/[A-Za-z0-9]+Decode/.test(filter[2] as string) || /\/DecodeParms/.test(dictionary)))
      continue
    const begin = text.startsWith('\r\n', at) ? at + 2 : at + 1
    const end = endOf(text, dictionary, begin)
    const file = { bytes: bytes.subarray(begin, end), packed: filter !== null }
    if (/\/Type\s*\/EmbeddedFile\b/.test(dictionary)) named.push(file)
    else others.push(file)
    at = end
  }
  return [...named, ...others]
}

/** The length that is said, where the stream really ends there; else up to the next end of a stream. */
function endOf(text: string, dictionary: string, begin: number): number {
  const said = /\/Length\s+(\d+)(?!\s+\d+\s+R)\b/.exec(dictionary)
  const length = said === null ? -1 : Number(said[1])
  if (length >= 0 && /^\s*endstream/.test(text.slice(begin + length, begin + length + 12))) return begin + length
  const end = text.indexOf('endstream', begin)
  return end < 0 ? text.length : end
}

const PART = 8192

/** Each byte one letter. */
function textAt(bytes: Uint8Array, from: number, to: number): string {
  let text = ''
  const last = Math.min(to, bytes.length)
  for (let at = from; at < last; at += PART) text += String.fromCharCode(...bytes.subarray(at, Math.min(at + PART, last)))
  return text
}
