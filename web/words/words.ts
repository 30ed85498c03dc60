/**
 * The one way to words on the screen.
 *
 * In      an English sentence, which is its own key, and what stands in its places (`{name}`).
 * Out     the sentence in the maker's language; in English where the catalogue has none.
 * A catalogue is fetched only when its language is chosen, so English costs nothing.
 */
import { english, germanWords, type Message, say, type Words } from '../../geometry/index.ts'
import type { Catalogue, Plural } from './catalogue.ts'

export const LANGUAGES = { en: 'English', de: 'Deutsch' } as const
export type Language = keyof typeof LANGUAGES
type Params = Readonly<Record<string, string | number>>

const KEPT = 'nestwright.language'
let language: Language = 'en'
let catalogue: Catalogue = {}
let findings: Catalogue = {}
let messageWords: Words = english
let plural = new Intl.PluralRules('en')

export const spoken = (): Language => language

/** Marks words that are kept in a list and said later, by `t`. */
export const said = (text: string): string => text

/** A sentence with its places filled. */
export function t(text: string, params: Params = {}): string {
  const said = catalogue[text]
  return filled(typeof said === 'object' ? said.other : (said ?? text), params)
}

/** A sentence that counts: `{n}` is the count. The second form is the key. */
export function tn(count: number, one: string, many: string, params: Params = {}): string {
  const said = catalogue[many]
  const forms: Plural = typeof said === 'object' ? said : { one, other: many }
  return filled(forms[plural.select(count)] ?? forms.other, { n: count, ...params })
}

/** What the geometry says, in the maker's language. */
export const translate = (message: Message): string => say(messageWords, message)

/**
 * A sentence that the geometry made, in English: said in the maker's language by the entry whose places it fits.
 * What stands in a place is told in its turn where it is a sentence itself.
 */
export function tell(sentence: string): string {
  if (language === 'en') return sentence
  const said = findings[sentence] ?? catalogue[sentence]
  if (typeof said === 'string') return said
  for (const { shape, names, words } of patterns()) {
    const found = shape.exec(sentence)
    if (found !== null) return filled(words, Object.fromEntries(names.map((name, place) => [name, inner(found[place + 1] as string)])))
  }
  return sentence
}

/** A lone word may be a name; what the geometry puts in as one is plural and small. */
const inner = (part: string): string => (part.includes(' ') || /^[a-z-]+s$|^geese$/.test(part) ? tell(part) : part)

interface Pattern {
  readonly shape: RegExp
  readonly names: readonly string[]
  readonly words: string
}

let known: { readonly of: Catalogue; readonly patterns: readonly Pattern[] } | null = null

/** The entries with places, those with the most words of their own first. */
function patterns(): readonly Pattern[] {
  if (known?.of === findings) return known.patterns
  const entries = Object.entries(findings).flatMap(([key, words]) => (typeof words === 'string' && key.includes('{') ? [[key, words] as const] : []))
  const made = entries
    .sort(([a], [b]) => wordsOf(b).length - wordsOf(a).length)
    .map(([key, words]): Pattern => ({ shape: shapeOf(key), names: [...key.matchAll(PLACE)].map(([, name]) => name as string), words }))
  known = { of: findings, patterns: made }
  return made
}

const PLACE = /\{(\w+)\}/g
const wordsOf = (key: string): string => key.replace(PLACE, '')
const shapeOf = (key: string): RegExp =>
  new RegExp(
    `^${key
      .split(/\{\w+\}/)
      .map((part) => part.replace(/[.*+?^${'$'}{}()|[\]\\]/g, '\\$&'))
      .join('(.+?)')}$`,
    's',
  )

function filled(text: string, params: Params): string {
  return text.replace(/\{(\w+)\}/g, (place, name: string) => String(params[name] ?? place))
}

/** Before anything is drawn: the language chosen last, else the browser's own where we speak it. */
export async function beginWords(): Promise<void> {
  await speak(spokenHere(keptLanguage()) ?? spokenHere(navigator.language.slice(0, 2)) ?? 'en')
}

export async function speak(next: Language): Promise<void> {
  if (next === 'de') {
    const [{ german }, { germanFindings }, messages] = await Promise.all([import('./german.ts'), import('./germanFindings.ts'), germanWords()])
    sayWith(next, german, germanFindings, messages)
  } else sayWith(next, {}, {}, english)
  document.documentElement.lang = next
}

/** From now on all is said by these: the words of the screen, and the sentences of the geometry. */
export function sayWith(next: Language, labels: Catalogue, found: Catalogue, messages: Words): void {
  catalogue = labels
  findings = found
  messageWords = messages
  language = next
  plural = new Intl.PluralRules(next)
}

/** A language once chosen is kept for the next visit. */
export async function chooseLanguage(next: Language): Promise<void> {
  await speak(next)
  try {
    localStorage.setItem(KEPT, next)
  } catch {
    // Where nothing can be kept, the choice lasts as long as the page.
  }
}

const spokenHere = (name: string | null): Language | null => (name !== null && name in LANGUAGES ? (name as Language) : null)

function keptLanguage(): string | null {
  try {
    return localStorage.getItem(KEPT)
  } catch {
    return null
  }
}
