/**
 * A file's text as JSON, checked before it is parsed.
 *
 * In      text; a byte order mark at its head is no part of it.
 * Out     the value; or that it is no JSON, or that its lists and objects lie deeper in each other, or are more, than any file of ours holds.
 * Why     the parser takes gigabytes for a text that only opens lists, and minutes for one of endless empty ones; what lies too deep could not be
 *         written again.
 * Source  JSON: RFC 8259; only strings, commas and what opens or closes a list or an object matter for that.
 */
import { message, type Read } from './messages.ts'

/** What a file keeps for others may lie in lists and objects; no file of ours comes near. */
export const DEEPEST = 100
/** A block of 100,000 units holds half as many. */
const MOST_VALUES = 3_000_000
/** A whole library of blocks in one file, with all their versions. */
export const MOST_VALUES_OF_MANY = 20_000_000

/** `most`: how many values the file may hold. */
export function parseJson(text: string, most = MOST_VALUES): Read<unknown> {
  const { depth, values } = extentOf(text, most)
  if (depth > DEEPEST) return { ok: false, place: 'file', message: message('too-deep', { most: DEEPEST }) }
  if (values > most) return { ok: false, place: 'file', message: message('too-many-values', { most }) }
  try {
    return { ok: true, value: JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text) }
  } catch {
    return { ok: false, place: 'file', message: message('not-json') }
  }
}

const [QUOTE, BACKSLASH, COMMA, LIST, LIST_END, OBJECT, OBJECT_END] = [...'"\\,[]{}'].map((letter) => letter.charCodeAt(0))

/** How deep lists and objects lie in each other, and how many values there are at least; it stops at the first that is too much. */
function extentOf(text: string, most: number): { readonly depth: number; readonly values: number } {
  let [depth, values] = [0, 1]
  for (let at = 0; at < text.length; at++) {
    const letter = text.charCodeAt(at)
    if (letter === QUOTE) at = endOfString(text, at)
    else if (letter === LIST || letter === OBJECT) depth += 1
    else if (letter === LIST_END || letter === OBJECT_END) depth -= 1
    else if (letter === COMMA) values += 1
    if (depth > DEEPEST || values > most) break
  }
  return { depth, values }
}

/** The place of the quotation mark that ends the string; the end of the text where none does. */
function endOfString(text: string, start: number): number {
  for (let at = start + 1; at < text.length; at++) {
    const letter = text.charCodeAt(at)
    if (letter === BACKSLASH) at += 1
    else if (letter === QUOTE) return at
  }
  return text.length
}
