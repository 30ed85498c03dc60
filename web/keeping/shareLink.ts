/**
 * A whole block or quilt in a link.
 *
 * In      a block or quilt; or the part of an address after `#`.
 * Out     the part after `#`: the version of this encoding, a dot, and its file, compressed and written as base64url. Nothing
 *         is sent anywhere: the part after `#` never leaves the browser. Photographs are left out. Or the block or quilt again, or why there is none.
 * Source  deflate: RFC 1951; base64url: RFC 4648, section 5.
 */
import { base64Of, type Block, bytesOfBase64, checkBlock, type Quilt, readBlock, readQuilt } from '../../geometry/index.ts'
import { type Doc, isQuilt } from '../document/document.ts'

const PREFIX = '#block='
const QUILT_PREFIX = '#quilt='
const VERSION = '1'
/** Longer links may be cut short by programs that pass them on. */
const MOST_LETTERS = 30_000
/** The most bytes that a link may decompress to; the largest link we make stays far below. */
const MOST_BYTES = 20_000_000

type Link =
  | { readonly ok: true; readonly link: string; readonly photographs: boolean }
  | { readonly ok: false; readonly why: 'too long' | 'cannot press' }

export async function linkTo(doc: Doc, address: string): Promise<Link> {
  if (typeof CompressionStream === 'undefined') return { ok: false, why: 'cannot press' }
  const [bare, photographs] = isQuilt(doc) ? quiltWithoutPhotographs(doc) : withoutPhotographs(doc)
  const compressed = await pipe(new TextEncoder().encode(JSON.stringify(bare)), new CompressionStream('deflate-raw'))
  const link = `${address.split('#')[0]}${isQuilt(doc) ? QUILT_PREFIX : PREFIX}${VERSION}.${toBase64Url(compressed)}`
  return link.length > MOST_LETTERS ? { ok: false, why: 'too long' } : { ok: true, link, photographs }
}

export const isLink = (fragment: string): boolean => fragment.startsWith(PREFIX) || fragment.startsWith(QUILT_PREFIX)

type OpenedLink = { readonly ok: true; readonly block: Doc } | { readonly ok: false; readonly why: 'broken' | 'newer' | 'cannot press' }

export async function documentFromLink(fragment: string): Promise<OpenedLink> {
  if (typeof DecompressionStream === 'undefined') return { ok: false, why: 'cannot press' }
  const [version = '', letters = ''] = fragment.slice(PREFIX.length).split('.')
  if (/^\d+$/.test(version) && version !== VERSION) return { ok: false, why: 'newer' }
  try {
    const bytes = await pipe(fromBase64Url(letters), new DecompressionStream('deflate-raw'))
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    const read = fragment.startsWith(QUILT_PREFIX) ? readQuilt(text) : readBlock(text)
    return version === VERSION && read.ok ? { ok: true, block: read.value } : { ok: false, why: 'broken' }
  } catch {
    return { ok: false, why: 'broken' }
  }
}

async function pipe(bytes: Uint8Array<ArrayBuffer>, stream: CompressionStream | DecompressionStream): Promise<Uint8Array<ArrayBuffer>> {
  const parts: Uint8Array<ArrayBuffer>[] = []
  let length = 0
  const reader = new Blob([bytes])
    .stream()
    .pipeThrough(stream as ReadableWritablePair<Uint8Array<ArrayBuffer>, Uint8Array<ArrayBuffer>>)
    .getReader()
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    length += part.value.length
    if (length > MOST_BYTES) throw new RangeError('more than any link of ours holds')
    parts.push(part.value)
  }
  return new Uint8Array(await new Blob(parts).arrayBuffer())
}

const toBase64Url = (bytes: Uint8Array): string => base64Of(bytes).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '')

const fromBase64Url = (letters: string): Uint8Array<ArrayBuffer> => bytesOfBase64(letters.replaceAll('-', '+').replaceAll('_', '/'))

const isPhotograph = (value: unknown): boolean => typeof value === 'string' && value.startsWith('data:')

/** Removes all photographs. A photographed fabric keeps its mean colour; a booklet that is not valid without its photographs is removed too. */
export function withoutPhotographs(block: Block): readonly [block: Block, some: boolean] {
  const fabrics = block.fabrics.map((fabric) => (isPhotograph(fabric.print?.photo) ? { ...fabric, print: undefined } : fabric))
  const whole = JSON.stringify({ ...block, fabrics })
  const text = JSON.stringify({ ...block, fabrics }, (_, value: unknown) => (isPhotograph(value) ? undefined : value))
  const removed = text !== whole || fabrics.some((fabric, place) => fabric !== block.fabrics[place])
  const bare = JSON.parse(text) as Block
  return [checkBlock(bare).ok ? bare : ({ ...bare, booklet: undefined } as Block), removed]
}

function quiltWithoutPhotographs(quilt: Quilt): readonly [quilt: Quilt, some: boolean] {
  const blocks = quilt.blocks.map((item) => ({ item, bare: withoutPhotographs(item.block) }))
  const fabrics = quilt.fabrics.map((fabric) => (isPhotograph(fabric.print?.photo) ? { ...fabric, print: undefined } : fabric))
  const removed = blocks.some(({ bare }) => bare[1]) || fabrics.some((fabric, place) => fabric !== quilt.fabrics[place])
  const bare = { ...quilt, fabrics, blocks: blocks.map(({ item, bare: [block] }) => ({ ...item, block })) }
  // As text, so that a print that was removed is no field any more.
  return [JSON.parse(JSON.stringify(bare)) as Quilt, removed]
}
