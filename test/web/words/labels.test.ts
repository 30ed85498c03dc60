/**
 * Every label of the screen, in English and German, so that all can be read in one go:
 * `NESTWRIGHT_LABELS=print npx vitest run test/web/words/labels.test.ts`.
 *
 * What they hold to is a choice of this project: the trade's word for the trade's things, everybody's word for everything else, never a name out
 * of the files.
 */
import { expect, it } from 'vitest'
import { german } from '../../../web/words/german.ts'
import { wordsUsed } from './wordsUsed.ts'

const LABELS = [...wordsUsed()].sort((a, b) => a.localeCompare(b, 'en'))

/** Rooms whose labels are in today's words throughout. */
const ROOMS = ['app', 'board', 'controls', 'document', 'drawing', 'keeping', 'library', 'sheets', 'tray', 'views', 'words', 'workers']
const PLAIN = ROOMS.flatMap((room) => [...wordsUsed(`web/${room}`)])

/** Nobody says these any more, or they have another word here: fabric, nest, flip, seam check, delete, archive, redo. */
const NOT_SAID = /\b(anew|whereof|wherein|thereof|cloth|clash\w*|mirror\w*|findings?|take away|taken away|do again|done again|for good|put aside)\b/i

/** Names of patches, fields and codes. */
const NAMES_IN_FILES = /\b[a-z]+[A-Z]\w*|\b(hst|qst|geese-4|corner-flip|strip-set)\b/
const withoutPlaces = (text: string): string => text.replace(/\{\w+\}/g, '')

it('are all here to be read', () => {
  if (process.env.NESTWRIGHT_LABELS === 'print') console.log(LABELS.map((text) => `${text}\n    ${JSON.stringify(german[text])}`).join('\n'))
  expect(LABELS.length).toBeGreaterThan(500)
})

it('say nothing in old words', () => {
  expect(PLAIN.length).toBeGreaterThan(200)
  expect(PLAIN.filter((text) => NOT_SAID.test(withoutPlaces(text)))).toEqual([])
})

it('show no name out of the files', () => {
  expect(LABELS.filter((text) => NAMES_IN_FILES.test(withoutPlaces(text)))).toEqual([])
})

it('name the unit that a length is asked for in, so that it never reads “in in”', () => {
  expect(LABELS.filter((text) => /\bin \{unit\}/.test(text))).toEqual([])
})
