/** Files that leave the page for the maker's disk. */
import { type Block, writeBlock } from '../../geometry/index.ts'

export function saveFile(block: Block): void {
  download(`${fileName(block.name)}.json`, writeBlock(block), 'application/json')
}

export const fileName = (name: string): string =>
  name
    .trim()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .toLowerCase() || 'block'

export function download(name: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
