/**
 * Letters that the printed face has, and those it has not.
 *
 * In      words as a maker typed them, and whether the face has a letter.
 * Out     words to print: each letter that it lacks is a box, and is kept with the words where it stood; nothing is dropped.
 */
export interface Letters {
  /** The words to print. */
  readonly printable: (words: string) => string
  /** Each letter that could not be printed, with the first words where it stood, in the order in which they came. */
  readonly missing: ReadonlyMap<string, string>
}

const BOX = '□'
/** Marks that only change the letter before them: they need no box of their own. */
const SILENT = /^[\p{Variation_Selector}\u200b-\u200f\u2060\ufeff]$/u
const WHITE = /[\p{Zs}\t]/u
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what no page can show.
const CONTROL = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/g

/** A filter for the words of one booklet. `has` says whether the face has a letter, by its code point. */
export function lettersOf(has: (codePoint: number) => boolean): Letters {
  const missing = new Map<string, string>()
  const known = new Map<string, boolean>()
  const inFace = (letter: string): boolean => {
    const seen = known.get(letter) ?? has(letter.codePointAt(0) as number)
    known.set(letter, seen)
    return seen
  }
  const printable = (words: string): string => {
    const text = words.normalize('NFC').replace(/\r\n?/g, '\n').replace(CONTROL, ' ')
    return [...text].map((letter) => shown(letter, text)).join('')
  }
  const shown = (letter: string, words: string): string => {
    if (letter === '\n' || letter === ' ') return letter
    if (WHITE.test(letter)) return letter === '\u00a0' || letter === '\u202f' ? '\u00a0' : ' '
    if (SILENT.test(letter)) return ''
    if (inFace(letter)) return letter
    if (!missing.has(letter)) missing.set(letter, words)
    return BOX
  }
  return { printable, missing }
}

/** `U+732B`, as letters are looked up. */
export const codeOf = (letter: string): string => `U+${(letter.codePointAt(0) as number).toString(16).toUpperCase().padStart(4, '0')}`
