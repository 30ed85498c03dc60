/**
 * The page's language: the labels of the interface, and what the geometry says.
 *
 * In      a label in English, which is its own key, with values for its placeholders (`{name}`); or a message of the geometry.
 * Out     the words in the maker's language; a label that the catalogue lacks stays English.
 * The words of a language are loaded only when it is chosen; English comes with the page.
 */
import { english, germanWords, type Message, say, type Words } from '../../geometry/index.ts'
import type { Catalogue, Plural } from './catalogue.ts'

export const LANGUAGES = { en: 'English', de: 'Deutsch' } as const
export type Language = keyof typeof LANGUAGES
type Params = Readonly<Record<string, string | number>>

const STORAGE_KEY = 'nestwright.language'
let language: Language = 'en'
let catalogue: Catalogue = {}
let messageWords: Words = english
let plural = new Intl.PluralRules('en')

export const currentLanguage = (): Language => language

/** Marks words that are kept in a list and translated later by `t`. */
export const label = (text: string): string => text

/** A sentence with its placeholders filled. */
export function t(text: string, params: Params = {}): string {
  const said = catalogue[text]
  return filled(typeof said === 'object' ? said.other : (said ?? text), params)
}

/** A sentence with a count, `{n}`. The plural form is the key. */
export function tn(count: number, one: string, many: string, params: Params = {}): string {
  const said = catalogue[many]
  const forms: Plural = typeof said === 'object' ? said : { one, other: many }
  return filled(forms[plural.select(count)] ?? forms.other, { n: count, ...params })
}

/** A message of the geometry in the maker's language. */
export const translate = (message: Message): string => say(messageWords, message)

function filled(text: string, params: Params): string {
  return text.replace(/\{(\w+)\}/g, (place, name: string) => String(params[name] ?? place))
}

/** Called before the page is rendered. Loads the language chosen last, else the browser's own if we have it. */
export async function loadLanguage(): Promise<void> {
  await setLanguage(languageOf(storedLanguage()) ?? languageOf(navigator.language.slice(0, 2)) ?? 'en')
}

async function setLanguage(next: Language): Promise<void> {
  if (next === 'de') {
    const [{ german }, messages] = await Promise.all([import('./german.ts'), germanWords()])
    setWords(next, german, messages)
  } else setWords(next, {}, english)
  document.documentElement.lang = next
}

/** Sets the words of the page: the labels of the interface, and the words for the geometry's messages. */
export function setWords(next: Language, labels: Catalogue, messages: Words): void {
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
