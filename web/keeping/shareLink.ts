/**
 * A whole block in a link.
 *
 * In      a block; or the part of an address after `#`.
 * Out     the part after `#`: the version of this encoding, a dot, and the block file, compressed and written as base64url. Nothing
 *         is sent anywhere: the part after `#` never leaves the browser. Photographs are left out. Or the block again, or why there is none.
 * Source  deflate: RFC 1951; base64url: RFC 4648, section 5.
 */
import { base64Of, type Block, bytesOfBase64, checkBlock } from '../../geometry/index.ts'

const PREFIX = '#block='
const VERSION = '1'
/** Longer links may be cut short by programs that pass them on. */
const MOST_LETTERS = 30_000
/** The most bytes that a link may decompress to; the largest link we make stays far below. */
const MOST_BYTES = 20_000_000

type Link =
  | { readonly ok: true; readonly link: string; readonly photographs: boolean }
  | { readonly ok: false; readonly why: 'too long' | 'cannot press' }

export async function linkTo(block: Block, address: string): Promise<Link> {
  if (typeof CompressionStream === 'undefined') return { ok: false, why: 'cannot press' }
  const [bare, photographs] = withoutPhotographs(block)
  const compressed = await pipe(new TextEncoder().encode(JSON.stringify(bare)), new CompressionStream('deflate-raw'))
  const link = `${address.split('#')[0]}${PREFIX}${VERSION}.${toBase64Url(compressed)}`
  return link.length > MOST_LETTERS ? { ok: false, why: 'too long' } : { ok: true, link, photographs }
}

export const isLink = (fragment: string): boolean => fragment.startsWith(PREFIX)

type OpenedLink = { readonly ok: true; readonly block: Block } | { readonly ok: false; readonly why: 'broken' | 'newer' | 'cannot press' }

export async function blockFromLink(fragment: string): Promise<OpenedLink> {
  if (typeof DecompressionStream === 'undefined') return { ok: false, why: 'cannot press' }
  const [version = '', letters = ''] = fragment.slice(PREFIX.length).split('.')
  if (/^\d+$/.test(version) && version !== VERSION) return { ok: false, why: 'newer' }
  try {
    const bytes = await pipe(fromBase64Url(letters), new DecompressionStream('deflate-raw'))
    const read = checkBlock(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)))
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
