/**
 * A table as comma-separated text.
 *
 * In      rows of cells; numbers, or words that a maker may have typed.
 * Out     lines that end in CR LF, quoted where needed.
 * Source  RFC 4180, Common Format and MIME Type for Comma-Separated Values.
 */
type Cell = string | number

/** Rows as comma-separated text. */
export function csv(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('')
}

function cell(value: Cell): string {
  if (typeof value === 'number') return String(value)
  const safe = harmless(value)
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}

/** A spreadsheet takes a word that begins like a formula for one and would carry it out; an apostrophe in front keeps it a word. */
function harmless(word: string): string {
  return /^\s*[=+\-@]|^[\t\r]/.test(word) ? `'${word}` : word
}
