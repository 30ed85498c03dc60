/**
 * A file's text as JSON, checked before it is parsed.
 *
 * In      text; a byte order mark at its head is no part of it.
 * Out     the value; or that it is no JSON, or that its lists and objects lie deeper in each other than any file of ours.
 * Why     the parser takes gigabytes for a text that only opens lists, and what lies too deep could not be written again.
 * Source  JSON: RFC 8259; only what opens or closes a string, a list or an object matters for the depth.
 */
import { message, type Read } from './messages.ts'

/** What a file keeps for others may lie in lists and objects; no file of ours comes near. */
export const DEEPEST = 100

export function parseJson(text: string): Read<unknown> {
  if (isTooDeep(text)) return { ok: false, place: 'file', message: message('too-deep', { most: DEEPEST }) }
  try {
    return { ok: true, value: JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text) }
  } catch {
    return { ok: false, place: 'file', message: message('not-json') }
  }
}

const [QUOTE, BACKSLASH, LIST, LIST_END, OBJECT, OBJECT_END] = [...'"\\[]{}'].map((letter) => letter.charCodeAt(0))

function isTooDeep(text: string): boolean {
  let depth = 0
  for (let at = 0; at < text.length; at++) {
    const letter = text.charCodeAt(at)
    if (letter === QUOTE) at = endOfString(text, at)
    else if (letter === LIST || letter === OBJECT) depth += 1
    else if (letter === LIST_END || letter === OBJECT_END) depth -= 1
    if (depth > DEEPEST) return true
  }
  return false
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
