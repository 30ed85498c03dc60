/**
 * A whole block in a link.
 *
 * In      a block; or the part of an address after `#`.
 * Out     the part after `#`: the version of this way of writing, a dot, and the block's file, pressed and written in letters that addresses may hold. Nothing
 *         is sent anywhere: the part after `#` never leaves the browser. Photographs are left out. Or the block again, or one sentence why not.
 * Source  deflate: RFC 1951; base64url: RFC 4648, section 5.
 */
import { base64Of, type Block, bytesOfBase64, checkBlock } from '../../geometry/index.ts'

const MARK = '#block='
const VERSION = '1'
/** Longer links are cut short by some programs that pass them on. */
const LONGEST = 30_000
/** Bytes of a block that a link may unfold to; the largest link of ours stays far below. */
const MOST_UNFOLDED = 20_000_000

type Link =
  | { readonly ok: true; readonly link: string; readonly photographs: boolean }
  | { readonly ok: false; readonly why: 'too long' | 'cannot press' }

export async function linkTo(block: Block, address: string): Promise<Link> {
  if (typeof CompressionStream === 'undefined') return { ok: false, why: 'cannot press' }
  const [bare, photographs] = withoutPhotographs(block)
  const pressed = await through(new TextEncoder().encode(JSON.stringify(bare)), new CompressionStream('deflate-raw'))
  const link = `${address.split('#')[0]}${MARK}${VERSION}.${lettersOf(pressed)}`
  return link.length > LONGEST ? { ok: false, why: 'too long' } : { ok: true, link, photographs }
}

export const isLink = (fragment: string): boolean => fragment.startsWith(MARK)

type Opened = { readonly ok: true; readonly block: Block } | { readonly ok: false; readonly why: 'broken' | 'newer' | 'cannot press' }

export async function blockIn(fragment: string): Promise<Opened> {
  if (typeof DecompressionStream === 'undefined') return { ok: false, why: 'cannot press' }
  const [version = '', letters = ''] = fragment.slice(MARK.length).split('.')
  if (/^\d+$/.test(version) && version !== VERSION) return { ok: false, why: 'newer' }
  try {
    const bytes = await through(bytesOf(letters), new DecompressionStream('deflate-raw'))
    const read = checkBlock(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)))
    return version === VERSION && read.ok ? { ok: true, block: read.value } : { ok: false, why: 'broken' }
  } catch {
    return { ok: false, why: 'broken' }
  }
}

async function through(bytes: Uint8Array<ArrayBuffer>, stream: CompressionStream | DecompressionStream): Promise<Uint8Array<ArrayBuffer>> {
  const parts: Uint8Array<ArrayBuffer>[] = []
  let length = 0
  const reader = new Blob([bytes])
    .stream()
    .pipeThrough(stream as ReadableWritablePair<Uint8Array<ArrayBuffer>, Uint8Array<ArrayBuffer>>)
    .getReader()
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    length += part.value.length
    if (length > MOST_UNFOLDED) throw new RangeError('more than any link of ours holds')
    parts.push(part.value)
  }
  return new Uint8Array(await new Blob(parts).arrayBuffer())
}

const lettersOf = (bytes: Uint8Array): string => base64Of(bytes).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '')

const bytesOf = (letters: string): Uint8Array<ArrayBuffer> => bytesOfBase64(letters.replaceAll('-', '+').replaceAll('_', '/'))

const isPhotograph = (value: unknown): boolean => typeof value === 'string' && value.startsWith('data:')

/** A photographed fabric keeps its mean colour; any other photograph's field goes, and where nothing is left of a booklet without it, the booklet. */
export function withoutPhotographs(block: Block): readonly [block: Block, some: boolean] {
  const fabrics = block.fabrics.map((fabric) => (isPhotograph(fabric.print?.photo) ? { ...fabric, print: undefined } : fabric))
  const whole = JSON.stringify({ ...block, fabrics })
  const text = JSON.stringify({ ...block, fabrics }, (_, value: unknown) => (isPhotograph(value) ? undefined : value))
  const some = text !== whole || fabrics.some((fabric, place) => fabric !== block.fabrics[place])
  const bare = JSON.parse(text) as Block
  return [checkBlock(bare).ok ? bare : ({ ...bare, booklet: undefined } as Block), some]
}
