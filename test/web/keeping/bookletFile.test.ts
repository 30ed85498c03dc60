/** A block inside a PDF, as the app finds it: bounded, whatever the PDF unfolds to. */
import { deflateSync } from 'node:zlib'
import { expect, it } from 'vitest'
import { blockTextInside } from '../../../web/keeping/bookletFile.ts'
import { STAR } from '../../writing/star.ts'

const star = JSON.stringify(STAR)

const pdfOf = (...files: readonly (string | Uint8Array)[]): Uint8Array<ArrayBuffer> =>
  new Uint8Array(
    Buffer.concat([
      Buffer.from('%PDF-1.7\n'),
      ...files
        .map((file) => deflateSync(file))
        .flatMap((bytes) => [
          Buffer.from(`1 0 obj\n<< /Filter /FlateDecode /Length ${bytes.length} >>\nstream\n`),
          bytes,
          Buffer.from('\nendstream\nendobj\n'),
        ]),
    ]),
  )

it('is found among pages', async () => {
  expect(await blockTextInside(pdfOf('BT (page) ET', star, 'BT (more) ET'))).toBe(star)
})

it('is given as it is where it cannot be read, so that it can be said what is wrong', async () => {
  const newer = JSON.stringify({ ...STAR, version: 2 })
  expect(await blockTextInside(pdfOf('{}', newer))).toBe(newer)
  expect(await blockTextInside(pdfOf('{}', star, newer))).toBe(star)
})

it('is not sought in what unfolds without end', async () => {
  const page = Buffer.alloc(80_000_000, 0x20)
  page[0] = 0x42
  expect(await blockTextInside(pdfOf(page, star))).toBe(star)
  const like = Buffer.alloc(70_000_000, 0x20)
  like[0] = 0x7b
  expect(await blockTextInside(pdfOf(like, star))).toBeNull()
})

it('is nothing in a file cut short', async () => {
  const whole = pdfOf(star)
  expect(await blockTextInside(whole.slice(0, whole.length - 200))).toBeNull()
})
