/** Reads the block file that is embedded in a booklet's PDF. */
import { beginsLikeBlock, blockAmong, type Embedded, filesInPdf, MOST_UNPACKED } from '../../geometry/index.ts'

/** The text of the block file inside a PDF; null if there is none. */
export async function blockTextInside(bytes: Uint8Array<ArrayBuffer>): Promise<string | null> {
  const texts: string[] = []
  let room = MOST_UNPACKED
  for (const found of filesInPdf(bytes)) {
    const text = await unpacked(found, room)
    if (text === null) break
    room -= text.length
    if (text !== '') texts.push(text)
  }
  return blockAmong(texts)
}

/** Reads part by part. Empty if the first letters are not those of a block file; null if it is too large. */
async function unpacked({ bytes, packed }: Embedded, room: number): Promise<string | null> {
  const body = new Blob([bytes as Uint8Array<ArrayBuffer>]).stream()
  const reader = (packed ? body.pipeThrough(new DecompressionStream('deflate')) : body).getReader()
  const decoder = new TextDecoder()
  const parts: string[] = []
  let left = room
  try {
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      const text = decoder.decode(part.value, { stream: true })
      left -= text.length
      if (left >= 0 && (parts.length > 0 || beginsLikeBlock(text))) parts.push(text)
      else {
        void reader.cancel().catch(() => undefined)
        return left < 0 ? null : ''
      }
    }
    return parts.join('')
  } catch {
    return ''
  }
}
