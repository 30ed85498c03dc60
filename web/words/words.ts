/**
 * The page's language: the labels of the interface, and what the geometry says.
 *
 * In      a label in English, which is its own key, with what stands in its places (`{name}`); or a message of the geometry.
 * Out     the words in the maker's language; a label in English where the catalogue has none.
 * The words of a language are fetched only when it is chosen. English comes with the page, as far as a block on the board needs it: see `translateAny`.
 */
import { type BoardCode, boardEnglish, type BoardMessage, germanWords, say, type Words } from '../../geometry/index.ts'
import type { Catalogue, Plural } from './catalogue.ts'

export const LANGUAGES = { en: 'English (UK)', 'en-US': 'English (US)', de: 'Deutsch' } as const
export type Language = keyof typeof LANGUAGES
type Params = Readonly<Record<string, string | number>>

const STORAGE_KEY = 'nestwright.language'
let language: Language = 'en'
let catalogue: Catalogue = {}
let messageWords: Words | null = null
type Spelling = (text: string, params?: object) => string
const asWritten: Spelling = (text) => text
let spelling = asWritten
let plural = new Intl.PluralRules('en')

export const currentLanguage = (): Language => language

/** The language of steps and booklets: English has one spelling there. */
export const bookletLanguage = (): 'en' | 'de' => (currentLanguage() === 'de' ? 'de' : 'en')

/** How times and dates are written: as in the browser's region where it speaks the page's language; else as in Britain or Germany. */
export const pageLocale = (): string =>
  navigator.language.slice(0, 2) === language ? navigator.language : { en: 'en-GB', 'en-US': 'en-US', de: 'de-DE' }[language]

/** Marks words that are kept in a list and translated later by `t`. */
export const label = (text: string): string => text

/** A sentence with its placeholders filled. */
export function t(text: string, params: Params = {}): string {
  const said = catalogue[text]
  return filled(spelling(typeof said === 'object' ? said.other : (said ?? text)), params)
}

/** A sentence with a count, `{n}`. The plural form is the key. */
export function tn(count: number, one: string, many: string, params: Params = {}): string {
  const said = catalogue[many]
  const forms: Plural = typeof said === 'object' ? said : { one, other: many }
  return filled(spelling(forms[plural.select(count)] ?? forms.other), { n: count, ...params })
}

/** What the geometry says of the block on the board, in the maker's language. All else that it says: `translateAny`. */
export const translate = (message: BoardMessage): string => spelt(say<BoardCode>(messageWords ?? boardEnglish, message), message.params)

/** A message as the page's language spells it; what the maker wrote in it stays as it is. */
export const spelt = (text: string, params: object): string => spelling(text, params)

/** What the geometry says in the language chosen; null in English, whose words are loaded in parts. */
export const chosenWords = (): Words | null => messageWords

/** The form of a table that the maker's spreadsheet reads. */
export const tableForm = (): { german?: Words } => (messageWords !== null && language === 'de' ? { german: messageWords } : {})

function filled(text: string, params: Params): string {
  return text.replace(/\{(\w+)\}/g, (place, name: string) => String(params[name] ?? place))
}

/** Called before the page is rendered. Loads the language chosen last, else the browser's own if we have it. */
export async function loadLanguage(): Promise<void> {
  await setLanguage(languageOf(storedLanguage()) ?? languageOf(navigator.language) ?? languageOf(navigator.language.slice(0, 2)) ?? 'en')
}

export async function setLanguage(next: Language): Promise<void> {
  if (next === 'de') {
    const [{ german }, messages] = await Promise.all([import('./german.ts'), germanWords()])
    setWords(next, german, messages)
  } else setWords(next, {}, null)
  spelling = next === 'en-US' ? (await import('./americanSpelling.ts')).americanSpelling : asWritten
  document.documentElement.lang = next
}

/** Sets the words of the page: the labels of the interface, and the words for the geometry's messages (null: English). */
export function setWords(next: Language, labels: Catalogue, messages: Words | null): void {
  catalogue = labels
  messageWords = messages
  language = next
  plural = new Intl.PluralRules(next)
}

/** Changes the language and remembers it for the next visit. */
export async function chooseLanguage(next: Language): Promise<void> {
  await setLanguage(next)
  try {
    localStorage.setItem(STORAGE_KEY, next)
  } catch {
    // If nothing can be stored, the choice lasts as long as the page.
  }
}

const languageOf = (name: string | null): Language | null => (name !== null && name in LANGUAGES ? (name as Language) : null)

function storedLanguage(): string | null {
  try {
    return localStorage.getItem(STORAGE_KEY)
  } catch {
    return null
  }
}
