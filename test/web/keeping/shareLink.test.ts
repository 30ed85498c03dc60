import { deflateRawSync, inflateRawSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import type { Block } from '../../../geometry/index.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'
import { lantern } from '../../../web/document/starters/lantern.ts'
import { documentFromLink, isLink, linkTo, withoutPhotographs } from '../../../web/keeping/shareLink.ts'

const PAGE = 'https://example.org/quilts/?x=1'
const fragmentOf = (link: string): string => new URL(link).hash

async function linkOf(block: Block): Promise<string> {
  const made = await linkTo(block, PAGE)
  if (!made.ok) throw new Error(made.why)
  return made.link
}

describe('a link that holds a block', () => {
  it.each([eveningStar, lantern, { ...eveningStar, name: 'Überall ½ 🪡', later: [1] } as Block])('gives back $name', async (block) => {
    const link = await linkOf(block)
    expect(link.startsWith(`${PAGE}#block=1.`)).toBe(true)
    expect(isLink(fragmentOf(link))).toBe(true)
    expect(await documentFromLink(fragmentOf(link))).toEqual({ ok: true, block })
  })

  // Source: Node's own zlib and base64url, written by others to RFC 1951 and RFC 4648.
  it('is what other programs read and write', async () => {
    const letters = fragmentOf(await linkOf(eveningStar)).split('.')[1] as string
    expect(JSON.parse(inflateRawSync(Buffer.from(letters, 'base64url')).toString())).toEqual(eveningStar)
    const theirs = deflateRawSync(Buffer.from(JSON.stringify(lantern))).toString('base64url')
    expect(await documentFromLink(`#block=1.${theirs}`)).toEqual({ ok: true, block: lantern })
  })

  it.each([
    '',
    '1',
    '1.',
    '1.%%%',
    '1.AAAA',
    '.abc',
    'x.abc',
    `1.${deflateRawSync(Buffer.from('{"format":"nestwright.block"}')).toString('base64url')}`,
  ])('that is broken (%s) says so', async (rest) => {
    expect(await documentFromLink(`#block=${rest}`)).toEqual({ ok: false, why: 'broken' })
  })

  it('of a later version says so', async () => {
    expect(await documentFromLink('#block=2.AAAA')).toEqual({ ok: false, why: 'newer' })
  })

  it('that unfolds without end is given up', async () => {
    const bomb = deflateRawSync(Buffer.alloc(40_000_000, ' ')).toString('base64url')
    expect(await documentFromLink(`#block=1.${bomb}`)).toEqual({ ok: false, why: 'broken' })
  })

  it('that would be too long is not made', async () => {
    const units = Array.from({ length: 5000 }, (_, n) => ({
      id: `u${n}-${((n * 7919) % 100_003).toString(36)}${((n * 104_729) % 1_000_003).toString(36)}`,
      kind: 'square' as const,
      at: [n % 80, Math.floor(n / 80)] as const,
      size: [1, 1] as const,
      fabrics: { patch: 'moss' },
    }))
    expect(await linkTo({ ...eveningStar, units }, PAGE)).toEqual({ ok: false, why: 'too long' })
  })
})

describe('photographs', () => {
  const photo = 'data:image/jpeg;base64,/9j/4AAQSkZJRg=='

  it('are left out of a link, and that is said; the fabric keeps its colour', async () => {
    const [first, ...rest] = eveningStar.fabrics
    const block = { ...eveningStar, fabrics: [{ ...first, print: { kind: 'photo', repeat: 4, photo } }, ...rest] } as Block
    const made = await linkTo(block, PAGE)
    expect(made).toMatchObject({ ok: true, photographs: true })
    expect(made.ok && (await documentFromLink(fragmentOf(made.link)))).toEqual({ ok: true, block: eveningStar })
  })

  it('go from wherever they are, and nothing else does', () => {
    const block = { ...eveningStar, booklet: { title: 'Mine', photograph: photo } } as Block
    expect(withoutPhotographs(block)).toEqual([{ ...eveningStar, booklet: { title: 'Mine' } }, true])
    expect(withoutPhotographs(lantern)).toEqual([lantern, false])
  })
})
