/**
 * The booklet of a quilt as text: numbered through, chapters as headings, pictures left out.
 *
 * In      a quilt's booklet.
 * Out     lines for a terminal or a mail.
 */
import { bookletWords } from '../../words/booklet/bookletWords.ts'
import { stepText, wrapped } from '../booklet/stepsText.ts'
import { sanitiseLines } from '../sanitiseText.ts'
import type { QuiltBooklet, QuiltChapter } from './quiltBooklet.ts'

export function quiltStepsText(booklet: QuiltBooklet): string {
  let number = 0
  const chapters = booklet.chapters.map(({ title, introduction, steps }: QuiltChapter) =>
    [
      [title.toUpperCase(), ...introduction.flatMap((line) => wrapped(line, '', ''))].join('\n'),
      ...steps.map((step) => {
        number += 1
        return stepText(step, number, bookletWords('en').text)
      }),
    ].join('\n\n'),
  )
  const cautions = ['TAKE CARE', '', ...booklet.cautions.flatMap(({ title, sentences }) => wrapped(`${title}: ${sentences.join(' ')}`, '', '  '))]
  return sanitiseLines(`${[head(booklet), ...chapters, cautions.join('\n')].join('\n\n')}\n`)
}

function head({ title, part, problems, introduction, facts, fabrics, needs }: QuiltBooklet): string {
  return [
    part === null ? title : `${title}, part ${part.number} of ${part.of}: ${part.title}`,
    '',
    ...problems.flatMap((problem) => wrapped(`Note: ${problem}`, '', '      ')),
    ...wrapped(introduction, '', ''),
    '',
    ...facts.flatMap(({ what, said }) => wrapped(`${what}: ${said}`, '', '  ')),
    ...fabrics.map(({ name, buy }) => `${name}: ${buy}`),
    ...needs.flatMap((line) => wrapped(line, '', '  ')),
  ].join('\n')
}
