/** Pictures on a page of a PDF: the pen and the surface that every picture is drawn with. */
import type { Measure } from './lineBreaks.ts'
import type { Letters } from './missingLetters.ts'
import type { Style } from './pageStyle.ts'
import type { PdfDocument } from './pdfLibrary.ts'
import type { Pen, Surface } from './pen.ts'

/** To a thousandth of a point: far finer than any printer, and the pages stay small. */
const tidy = (length: number): number => Math.round(length * 1000) / 1000

/** The measuring and writing of words that a surface borrows from the page it lies on. */
interface TextWriter {
  readonly letters: Letters
  measure(style: Pick<Style, 'face' | 'size'>): Measure
  textLine(line: string, x: number, foot: number, style: Style): void
}

/** A surface on the current page of a PDF; places in points from the page's top left, y down. */
export function pdfSurface(pdf: PdfDocument, page: TextWriter): Surface {
  const pen: Pen = { moveTo: (x, y) => pdf.moveTo(tidy(x), tidy(y)), lineTo: (x, y) => pdf.lineTo(tidy(x), tidy(y)), close: () => pdf.closePath() }
  return {
    path: (path, { fill, line }) => {
      pdf.save()
      if (line !== undefined) {
        pdf.lineWidth(line.width)
        pdf.lineJoin('round')
        if (line.dash !== undefined) pdf.dash(line.dash)
      }
      path(pen)
      if (fill !== undefined && line !== undefined) pdf.fillAndStroke(fill, line.colour)
      else if (fill !== undefined) pdf.fill(fill)
      else if (line !== undefined) pdf.stroke(line.colour)
      pdf.restore()
    },
    within: (path, inside) => {
      pdf.save()
      path(pen)
      pdf.clip()
      inside()
      pdf.restore()
    },
    words: ({ text, at: [x, y], size, align, face, colour, ground }) => {
      const said = page.letters.printable(text)
      const style: Style = { face, size, lead: size, colour }
      const wide = page.measure(style)(said)
      const left = align === 'left' ? x : align === 'right' ? x - wide : x - wide / 2
      if (ground !== undefined) {
        pdf.roundedRect(left - size * 0.18, y - size * 0.58, wide + size * 0.36, size * 1.16, size * 0.25)
        pdf.fill(ground)
      }
      page.textLine(said, left, y + size * 0.36, style)
    },
    width: ({ text, size, face }) => page.measure({ face, size })(page.letters.printable(text)),
  }
}
