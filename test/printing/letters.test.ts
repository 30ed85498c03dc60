/** Letters and lines: what the face lacks is shown as a box and listed; a size is never torn from its fraction. */
import { describe, expect, it } from 'vitest'
import { codeOf, lettersOf } from '../../geometry/printing/missingLetters.ts'
import { fittingSize, wrapText } from '../../geometry/printing/lineBreaks.ts'

/** A face of Latin letters, figures and a few signs. */
const latin = lettersOf((code) => code < 0x250 || code === 0x25a1)

describe('letters', () => {
  it.each([
    ['Moss & “rust”', 'Moss & □rust□', 'two quotes that the face lacks'],
    ['猫 quilt', '□ quilt', 'one box for one letter'],
    ['e\u0301', 'é', 'composed before it is looked up'],
    ['a\u200db\ufe0f', 'ab', 'joiners and selectors need no box of their own'],
    ['a\tb\u00a0c', 'a b\u00a0c', 'white stays white'],
    ['a\r\nb', 'a\nb', 'one line end'],
    ['a\u0007b', 'a b', 'what no page can show'],
  ])('%j is printed as %j', (typed, printed, why) => {
    expect(latin.printable(typed), why).toBe(printed)
  })

  it('keeps each letter that it could not print, once, with the first words where it stood', () => {
    const letters = lettersOf((code) => code < 0x250)
    for (const words of ['猫 and 犬', 'again 猫', 'a 🐈']) letters.printable(words)
    expect([...letters.missing]).toEqual([
      ['猫', '猫 and 犬'],
      ['犬', '猫 and 犬'],
      ['🐈', 'a 🐈'],
    ])
    // The Unicode code charts: CAT FACE is U+1F431, CAT is U+1F408 (from memory).
    expect(codeOf('🐈')).toBe('U+1F408')
  })
})

describe('lines', () => {
  const measure = (text: string): number => text.length

  it('breaks at spaces, never inside a size', () => {
    expect(wrapText('Trim each to 3 7/8 × 3 7/8 in, unfinished.', 20, measure)).toEqual(['Trim each to ', '3 7/8 × 3 7/8 in, ', 'unfinished.'])
  })

  it('breaks a word that no line holds, and loses no letter', () => {
    const lines = wrapText('A patch called Supercalifragilisticexpialidocious', 12, measure)
    expect(lines.every((line) => line.trimEnd().length <= 12)).toBe(true)
    expect(lines.join('').replaceAll(' ', '')).toBe('ApatchcalledSupercalifragilisticexpialidocious')
  })

  it('measure no more of an endless word for each line than the line holds', () => {
    let measured = 0
    const lines = wrapText('x'.repeat(20_000), 100, (text) => {
      measured += text.length
      return text.length
    })
    expect([lines.length, lines.join('').length]).toEqual([200, 20_000])
    expect(measured).toBeLessThan(20_000 * 30)
  })

  it('keeps line ends that the maker typed', () => {
    expect(wrapText('one\n\ntwo', 12, measure)).toEqual(['one', '', 'two'])
  })

  it('makes words smaller where they must stand on one line', () => {
    const at = (size: number) => (text: string) => text.length * size
    expect(fittingSize('ten letter', 100, 10, 1, at)).toBe(10)
    expect(fittingSize('twenty letters long.', 100, 10, 1, at)).toBe(5)
  })
})
