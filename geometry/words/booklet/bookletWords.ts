/**
 * All that a booklet says, in each language: phrases by name, made of numbers, lengths and names as they are said.
 *
 * A phrase has the same name and parameters in every language; the type holds it.
 */
import type { Kind } from '../../values/block.ts'
import type { Message } from '../../values/messages.ts'
import { english } from '../english.ts'
import { unitRowWords } from '../englishPhrases.ts'
import { GERMAN_KINDS, ONE_GERMAN_KIND } from '../germanPhrases.ts'
import { germanMessages } from '../german.ts'
import { say } from '../words.ts'
import { bookEnglish } from './bookEnglish.ts'
import { bookGerman } from './bookGerman.ts'
import { cutEnglish } from './cutEnglish.ts'
import { cutGerman } from './cutGerman.ts'
import { joinEnglish } from './joinEnglish.ts'
import { joinGerman } from './joinGerman.ts'
import { pagesEnglish } from './pagesEnglish.ts'
import { pagesGerman } from './pagesGerman.ts'
import { unitsEnglish } from './unitsEnglish.ts'
import { unitsGerman } from './unitsGerman.ts'

export const BOOKLET_LANGUAGES = ['en', 'de'] as const
export type BookletLanguage = (typeof BOOKLET_LANGUAGES)[number]

export interface BookletPhrases {
  readonly language: BookletLanguage
  readonly message: (message: Message) => string
  /** A size that no ruler shows, with the size itself. */
  readonly about: (said: string, exactly: string) => string
  /** `a, b and c`. */
  readonly list: (words: readonly string[]) => string
  /** `goose`, `geese`. */
  readonly kind: (row: { readonly kind: Kind; readonly finished: readonly [number, number] }, count: number) => string
  /** What stands in the booklet as text besides. */
  readonly text: {
    readonly stale: string
    readonly note: (words: string) => string
    readonly by: (title: string, by: string) => string
    readonly allowance: string
    readonly templates: string
    readonly takeCare: string
  }
  readonly units: typeof unitsEnglish
  readonly join: typeof joinEnglish
  readonly cut: typeof cutEnglish
  readonly book: typeof bookEnglish
  readonly pages: typeof pagesEnglish
}

const listedWith =
  (and: string) =>
  (words: readonly string[]): string =>
    words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} ${and} ${words.at(-1)}`

const WORDS: Readonly<Record<BookletLanguage, BookletPhrases>> = {
  en: {
    language: 'en',
    message: (message) => say(english, message),
    about: (said, exactly) => `about ${said} (exactly ${exactly})`,
    list: listedWith('and'),
    text: {
      stale: '(The block has changed since you wrote this.)',
      note: (words) => `Note: ${words}`,
      by: (title, by) => `${title}, by ${by}`,
      allowance: 'About your seam allowance',
      templates: 'Templates',
      takeCare: 'Take care',
    },
    units: unitsEnglish,
    join: joinEnglish,
    cut: cutEnglish,
    book: bookEnglish,
    pages: pagesEnglish,
    kind: unitRowWords,
  },
  de: {
    language: 'de',
    message: (message) => say(germanMessages, message),
    about: (said, exactly) => `etwa ${said} (genau ${exactly})`,
    list: listedWith('und'),
    text: {
      stale: '(Der Block hat sich geändert, seit du das geschrieben hast.)',
      note: (words) => `Hinweis: ${words}`,
      by: (title, by) => `${title}, von ${by}`,
      allowance: 'Zu deiner Nahtzugabe',
      templates: 'Schablonen',
      takeCare: 'Pass auf',
    },
    units: unitsGerman,
    join: joinGerman,
    cut: cutGerman,
    book: bookGerman,
    pages: pagesGerman,
    kind: ({ kind, finished: [width, height] }, count) =>
      kind === 'square' && width !== height ? (count === 1 ? 'Rechteck' : 'Rechtecke') : count === 1 ? ONE_GERMAN_KIND[kind] : GERMAN_KINDS[kind],
  },
}

/** What a booklet says in a language. */
export const bookletWords = (language: BookletLanguage): BookletPhrases => WORDS[language]
