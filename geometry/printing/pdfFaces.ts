/** What is asked of the two faces of a PDF: whether they have a letter, and how fractions are set and read back. */
import { escapeXml } from './escapeXml.ts'
import type { PdfDocument } from './pdfLibrary.ts'

/** Type smaller than this has fractions too small to read at a sewing machine. */
const SMALLEST_FRACTION = 8

/** A half is set as a half: a slash between figures becomes the slash of fractions. */
export const withFractionSlash = (text: string, size: number): string =>
  size < SMALLEST_FRACTION ? text : text.replace(/(?<![\d/.])(\d{1,3})\/(\d{1,3})(?![\d/.])/g, '$1\u2044$2')

/** What the library keeps of a face, as far as it must be asked or told. */
interface FaceInside {
  readonly font: { hasGlyphForCodePoint(codePoint: number): boolean }
  /** What a reader finds for each letter that was used. */
  readonly unicode: readonly (number[] | undefined)[]
}

const facesOf = (pdf: PdfDocument): FaceInside[] =>
  (['text', 'strong'] as const).map((face) => {
    pdf.font(face)
    return (pdf as unknown as { readonly _font: FaceInside })._font
  })

/** Both faces have a letter. */
export function bothFacesHave(pdf: PdfDocument): (codePoint: number) => boolean {
  const faces = facesOf(pdf)
  return (codePoint) => faces.every(({ font }) => font.hasGlyphForCodePoint(codePoint))
}

/** Who reads or searches the pages finds `3/4` as it was typed, whatever slash it was set with. */
export function keepPlainSlashes(pdf: PdfDocument): void {
  for (const { unicode } of facesOf(pdf)) for (const codes of unicode) if (codes?.[0] === 0x2044) codes[0] = 0x2f
}

/** What the library keeps of a document's title, author and subject. */
interface DocumentInside {
  info: Readonly<Record<string, string | Date>>
  _addInfo(): void
}

/** The library writes a title into XML as it stands: a name with `&` in it would break what readers look for there. */
export function escapeMetadata(pdf: PdfDocument): void {
  const inside = pdf as unknown as DocumentInside
  const addInfo = inside._addInfo
  inside._addInfo = () => {
    const { info } = inside
    inside.info = Object.fromEntries(Object.entries(info).map(([key, value]) => [key, typeof value === 'string' ? escapeXml(value) : value]))
    addInfo.call(inside)
    inside.info = info
  }
}
