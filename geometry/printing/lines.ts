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

export function linesOf(words: string, width: number, measure: Measure): string[] {
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
  while (rest.length > 1 && measure(rest.join('')) > width) {
    let fits = mostThatFit(rest, width, measure)
    const kind = Math.max(rest.lastIndexOf(TIED, fits - 1), rest.lastIndexOf('-', fits - 1))
    if (kind > 0 && kind < fits) fits = kind + 1
    pieces.push(rest.slice(0, fits).join(''))
    rest = rest.slice(fits)
  }
  return [...pieces, rest.join('')]
}

function mostThatFit(letters: readonly string[], width: number, measure: Measure): number {
  let [low, high] = [1, letters.length]
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if (measure(letters.slice(0, middle).join('')) <= width) low = middle
    else high = middle - 1
  }
  return low
}

/** The size, no larger than `most`, at which words fit a width on one line; never below `least`. */
export function fittingSize(words: string, width: number, most: number, least: number, measureAt: (size: number) => Measure): number {
  const wide = measureAt(most)(words)
  return wide <= width ? most : Math.max(least, Math.floor(((most * width) / wide) * 4) / 4)
}
