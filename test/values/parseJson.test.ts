import fc from 'fast-check'
import { expect, it } from 'vitest'
import { DEEPEST, parseJson } from '../../geometry/values/parseJson.ts'

const nested = (depth: number): string => `${'['.repeat(depth)}${']'.repeat(depth)}`

it('reads what JSON.parse reads, with a byte order mark before it too', () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 8 }), (value) => {
      const text = JSON.stringify(value)
      expect(parseJson(text)).toEqual({ ok: true, value: JSON.parse(text) })
      expect(parseJson(`\uFEFF${text}`)).toEqual({ ok: true, value: JSON.parse(text) })
    }),
  )
})

it('says that text is no JSON', () => {
  for (const text of ['', '{', '"', '"\\', '[1,]', 'null null']) expect(parseJson(text)).toMatchObject({ ok: false, message: { code: 'not-json' } })
})

it('refuses lists and objects that lie too deep, whole or cut short', () => {
  expect(parseJson(nested(DEEPEST))).toMatchObject({ ok: true })
  for (const text of [nested(DEEPEST + 1), '['.repeat(DEEPEST + 1), '{"a":'.repeat(DEEPEST + 1), `${'[{"b":'.repeat(DEEPEST)}1`])
    expect(parseJson(text)).toMatchObject({ ok: false, message: { code: 'too-deep' } })
})

it('refuses more values than a file of ours holds, and takes commas in strings for letters', () => {
  const list = (count: number): string => JSON.stringify(Array.from({ length: count }, () => ({})))
  expect(parseJson(list(10), 10)).toMatchObject({ ok: true })
  expect(parseJson(list(11), 10)).toMatchObject({ ok: false, message: { code: 'too-many-values' } })
  expect(parseJson(JSON.stringify([','.repeat(50)]), 10)).toMatchObject({ ok: true })
})

it('takes brackets in strings for letters, after an escaped quotation mark too', () => {
  const words = `${'['.repeat(500)}"${'{'.repeat(500)}\\`
  expect(parseJson(JSON.stringify({ words }))).toEqual({ ok: true, value: { words } })
})
