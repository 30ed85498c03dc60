import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { base64Of, bytesOfBase64 } from '../../geometry/exact/base64.ts'
import { photographOf } from '../../geometry/printing/dataUrl.ts'

describe('bytes as base64', () => {
  // The examples of RFC 4648, section 10.
  it.each([
    ['', ''],
    ['f', 'Zg=='],
    ['fo', 'Zm8='],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg=='],
    ['fooba', 'Zm9vYmE='],
    ['foobar', 'Zm9vYmFy'],
  ])('of "%s" are "%s"', (text, letters) => {
    const bytes = Uint8Array.from(text, (letter) => letter.charCodeAt(0))
    expect(base64Of(bytes)).toBe(letters)
    expect(bytesOfBase64(letters)).toEqual(bytes)
    expect(bytesOfBase64(letters.replace(/=+$/, ''))).toEqual(bytes)
  })

  it('come back as they were', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect([...bytesOfBase64(base64Of(bytes))]).toEqual([...bytes])
      }),
    )
  })
})

describe('a photograph in a block file', () => {
  it('is its bytes where it is a picture that can be printed, else nothing', () => {
    expect(photographOf('data:image/jpeg;base64,Zm9vYg==')).toEqual(Uint8Array.of(102, 111, 111, 98))
    expect(photographOf('data:image/png;base64,Zm9v')).toEqual(Uint8Array.of(102, 111, 111))
    expect(photographOf('data:image/gif;base64,Zm9v')).toBeNull()
    expect(photographOf('data:image/png;base64,Zm9 ')).toBeNull()
    expect(photographOf('data:image/png;base64,Zm9vY')).toBeNull()
  })
})
