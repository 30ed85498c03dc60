/**
 * The booklet's steps as text: numbered through, parts as headings, pictures left out.
 *
 * In      a booklet.
 * Out     lines of at most `WIDE` characters, for a terminal or a mail.
 */
import { type BookletPhrases, bookletWords } from '../../words/booklet/bookletWords.ts'
import { sanitiseLines } from '../sanitiseText.ts'
import { wordsOf } from './booklet.ts'
import type { Booklet, BookletStep } from './values.ts'

const WIDE = 100

type Texts = BookletPhrases['text']

/** The whole booklet as plain text. */
export function stepsText(booklet: Booklet): string {
  const { text } = bookletWords(booklet.language)
  let number = 0
  const parts = booklet.parts.map(({ title, steps }) => {
    const said = steps.map((step) => {
      number += 1
      return stepText(step, number, text)
    })
    return [heading(title), ...said].join('\n\n')
  })
  return sanitiseLines(
    `${[head(booklet, text), ...parts, allowanceTest(booklet, text), templates(booklet, text), cautions(booklet, text)].filter((part) => part !== '').join('\n\n')}\n`,
  )
}

const heading = (title: string): string => `${title.toUpperCase()}`

function head({ title, by, introduction, facts, fabrics, problems, needs }: Booklet, text: Texts): string {
  const lines = [
    by === '' ? title : text.by(title, by),
    '',
    ...problems.flatMap((problem) => wrapped(text.note(problem), '', '      ')),
    ...(problems.length > 0 ? [''] : []),
  ]
  const naming = [
    ...introduction.split('\n').flatMap((line) => wrapped(line, '', '')),
    '',
    ...facts.map(({ what, said }) => `${what}: ${said}`),
    ...fabrics.filter(({ buy }) => buy !== '').map(({ name, buy }) => `${name}: ${buy}`),
    ...needs.flatMap((line) => wrapped(line, '', '  ')),
  ]
  return [...lines, ...naming].join('\n')
}

/** A step with its number, its words wrapped. */
export function stepText(step: BookletStep, number: number, text: Texts): string {
  const stale = step.edited?.stale === true ? [text.stale] : []
  const note = step.note === undefined ? [] : step.note.split('\n').map((line) => text.note(line))
  const lines = [...wordsOf(step), ...stale, ...note, ...step.cautions.map((caution) => `! ${caution}`)]
  return [`${number}. ${step.title}`, ...lines.flatMap((line) => wrapped(line, '   ', '   '))].join('\n')
}

function allowanceTest({ allowanceTest: { sentences, rows }, seamAdvice }: Booklet, text: Texts): string {
  const said = [...seamAdvice, ...(rows.length === 0 ? [] : sentences)].flatMap((line) => wrapped(line, '', ''))
  return [heading(text.allowance), '', ...said].join('\n')
}

function templates({ templates: all }: Booklet, text: Texts): string {
  if (all.length === 0) return ''
  return [
    heading(text.templates),
    '',
    ...all.flatMap(({ name, sentences }) => [name, ...sentences.flatMap((line) => wrapped(line, '   ', '   '))]),
  ].join('\n')
}

function cautions({ cautions: all }: Booklet, text: Texts): string {
  return [heading(text.takeCare), '', ...all.flatMap(({ title, sentences }) => wrapped(`${title}: ${sentences.join(' ')}`, '', '  '))].join('\n')
}

/** A length is not broken: `3 1/2 in`, `3 1/2 × 4 in`. */
const BREAKS = / (?!\d+\/\d|(?:in|cm|×)(?:[ .,;:)]|$))(?<!× )/

/** Broken between words; a word that is too long by itself stays whole. */
export function wrapped(text: string, first: string, rest: string, wide = WIDE): string[] {
  const lines: string[] = []
  let line = first
  let empty = true
  for (const word of text.split(BREAKS)) {
    if (!empty && line.length + 1 + word.length > wide) {
      lines.push(line)
      line = rest
      empty = true
    }
    line += empty ? word : ` ${word}`
    empty = false
  }
  return [...lines, line]
}
