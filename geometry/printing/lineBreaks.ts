/**
 * Words broken into lines.
 *
 * In      words, the width of a line, and how wide words are.
 * Out     lines, each with the space that it was broken at, so that who has them read aloud hears two words; a size is never torn (`3 7/8 in` stays on one line), and a word longer than a line is broken where it must be.
 */
export type Measure = (text: string) => number

/** Spaces inside a size, by which lines are not broken: `3 7/8`, `7/8 in`, `2 ×`, `× 3`. */
const INSIDE_A_SIZE = /(?<=\d) (?=\d+\/\d)|(?<=\d) (?=(?:in|cm|yd|m|pt)\b)|(?<=\d) (?=×)|(?<=×) (?=\d)/g
const TIED = '\u00a0'

/** Words as lines no wider than `width`, in whatever unit `measure` answers. Line breaks of the words stay. */
export function wrapText(words: string, width: number, measure: Measure): string[] {
  return words.split('\n').flatMap((paragraph) => paragraphLines(paragraph, width, measure))
}

function paragraphLines(paragraph: string, width: number, measure: Measure): string[] {
  const lines: string[] = []
  let line = ''
  for (const word of wordsOf(paragraph)) {
    const longer = line === '' ? word : `${line} ${word}`
    if (measure(longer) <= width) line = longer
    else {
      if (line !== '') lines.push(`${line} `)
      const pieces = measure(word) <= width ? [word] : broken(word, width, measure)
      lines.push(...pieces.slice(0, -1))
      line = pieces.at(-1) as string
    }
  }
  return [...lines, line].map((one) => one.replaceAll(TIED, ' '))
}

const wordsOf = (paragraph: string): string[] =>
  paragraph
    .replace(INSIDE_A_SIZE, TIED)
    .split(/ +/)
    .filter((word, place) => word !== '' || place === 0)

/** At the last space or hyphen that fits, else at the last letter that does. */
function broken(word: string, width: number, measure: Measure): string[] {
  const pieces: string[] = []
  let rest = [...word]
  for (let fits = mostThatFit(rest, width, measure); fits < rest.length; fits = mostThatFit(rest, width, measure)) {
    const kind = Math.max(rest.lastIndexOf(TIED, fits - 1), rest.lastIndexOf('-', fits - 1))
    const taken = kind > 0 && kind < fits ? kind + 1 : fits
    pieces.push(rest.slice(0, taken).join(''))
    rest = rest.slice(taken)
  }
  return [...pieces, rest.join('')]
}

/** At least one. From few letters up: a word of thousands is not measured whole for each of its lines. */
function mostThatFit(letters: readonly string[], width: number, measure: Measure): number {
  const fits = (count: number): boolean => measure(letters.slice(0, count).join('')) <= width
  let low = 1
  while (low < letters.length && fits(low * 2)) low *= 2
  let high = Math.min(low * 2, letters.length)
  low = Math.min(low, high)
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if (fits(middle)) low = middle
    else high = middle - 1
  }
  return low
}

/** The size, no larger than `most`, at which words fit a width on one line; never below `least`. */
export function fittingSize(words: string, width: number, most: number, least: number, measureAt: (size: number) => Measure): number {
  const wide = measureAt(most)(words)
  return wide <= width ? most : Math.max(least, Math.floor(((most * width) / wide) * 4) / 4)
}
