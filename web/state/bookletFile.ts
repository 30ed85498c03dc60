/** A booklet is opened as the block that lies inside it. */
import { type Embedded, filesInPdf, readBlock } from '../../geometry/index.ts'

/** The text of the block file inside a PDF; null where there is none. */
export async function blockTextInside(bytes: Uint8Array<ArrayBuffer>): Promise<string | null> {
  for (const found of filesInPdf(bytes)) {
    const text = await unpacked(found)
    if (text.trimStart().startsWith('{') && readBlock(text).ok) return text
  }
  return null
}

async function unpacked({ bytes, packed }: Embedded): Promise<string> {
  try {
    const body = new Blob([bytes as Uint8Array<ArrayBuffer>]).stream()
    return await new Response(packed ? body.pipeThrough(new DecompressionStream('deflate')) : body).text()
  } catch {
    return ''
  }
}
