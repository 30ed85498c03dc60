/** Letters that the pages could not show: each was printed as a box, and is named here with the words where it stands. */
import { STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import { codeOf } from '../missingLetters.ts'
import { table } from '../table.ts'
import { chapter } from '../titles.ts'

/** Of long words, so much round the letter. */
const SHOWN = 60

export function missingPage({ pages }: Pick<PrintJob, 'pages'>): void {
  const missing = [...pages.letters.missing]
  if (missing.length === 0) return
  chapter(pages, 'Letters shown as boxes', 140)
  pages.paragraph(
    'The type of this booklet has Latin, Greek and Cyrillic letters. Any other is shown as a box; here is what each box stands for. The block file inside this booklet has them all.',
    STYLES.body,
    {
      after: 6,
    },
  )
  table(
    pages,
    [
      { title: 'Letter', share: 0.5, strong: true },
      { title: 'Where it stands', share: 2 },
    ],
    missing.map(([letter, words]) => [codeOf(letter), around(words, letter)]),
  )
}

function around(words: string, letter: string): string {
  const at = words.indexOf(letter)
  const from = Math.max(0, at - SHOWN / 2)
  return `${from > 0 ? '…' : ''}${words.slice(from, from + SHOWN).replace(/\n/g, ' ')}${words.length > from + SHOWN ? '…' : ''}`
}
