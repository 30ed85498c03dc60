/**
 * A maker's words as they may stand among ours: nothing in them that a terminal would obey, or that turns the writing beside them round.
 *
 * In      words from anywhere.
 * Out     the same words; each run of what must not stand there is a space.
 * Source  control characters: ISO/IEC 6429, C0 and C1; overrides, embeddings and isolates: Unicode Standard Annex #9, section 2.
 */

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must go.
const UNPRINTABLE = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]+/g

/** Lines stay lines. */
export const sanitiseLines = (text: string): string => text.replace(UNPRINTABLE, ' ')

/** A name stands in a sentence: no line ends in it. */
export const sanitiseLine = (text: string): string => sanitiseLines(text).replace(/\s+/g, ' ').trim()
