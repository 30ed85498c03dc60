/**
 * A table as comma-separated text.
 *
 * In      rows of cells; numbers, or words that a maker may have typed.
 * Out     lines that end in CR LF, quoted where needed.
 * Source  RFC 4180, Common Format and MIME Type for Comma-Separated Values.
 */
type Cell = string | number

/** Rows as text. With semicolons, numbers have decimal commas, as German spreadsheets read them. */
export function csv(rows: readonly (readonly Cell[])[], form: 'comma' | 'semicolon' = 'comma'): string {
  const between = form === 'comma' ? ',' : ';'
  return rows.map((row) => `${row.map((value) => cell(value, form)).join(between)}\r\n`).join('')
}

function cell(value: Cell, form: 'comma' | 'semicolon'): string {
  if (typeof value === 'number') return form === 'comma' ? String(value) : String(value).replace('.', ',')
  const safe = harmless(value)
  return (form === 'comma' ? /[",\r\n]/ : /[";\r\n]/).test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}

/** A spreadsheet takes a word that begins like a formula for one and would carry it out; an apostrophe in front keeps it a word. */
function harmless(word: string): string {
  return /^\s*[=+\-@]|^[\t\r]/.test(word) ? `'${word}` : word
}
