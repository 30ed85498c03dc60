/** Files that leave the page for the maker's disk. */
import { writeBlock } from '../../geometry/index.ts'
import { type Doc, isQuilt } from '../document/document.ts'
import { setView } from '../document/store.ts'
import { t } from '../words/words.ts'

export function saveFile(doc: Doc): void {
  download(`${fileName(doc.name)}.json`, isQuilt(doc) ? `${JSON.stringify(doc, null, 1)}\n` : writeBlock(doc), 'application/json')
}

export const fileName = (name: string): string =>
  name
    .trim()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .toLowerCase() || 'block'

/** Saves a file and says so: what was saved, and under which name. `what` is a name in the maker's language, such as `Cut list`. */
export function saveAndSay(what: string, name: string, content: BlobPart, type: string): void {
  download(name, content, type)
  setView({ notice: t('{what} saved as {file}.', { what, file: name }) })
}

export function download(name: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
