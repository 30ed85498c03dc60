/**
 * Fills the pages of a PDF from the top: words in lines, pictures, what must stay together. Everything is tagged as what it is, or as an
 * ornament that a screen reader passes over.
 *
 * Units   points, 72 an inch, from the top left of the page, y down.
 * Kept    what is drawn lies between the margins; `top` is where the next thing goes. A page is begun only when something is to be put on it.
 */
import type { BookletPhrases } from '../words/booklet/bookletWords.ts'
import type { Drawing, Spot } from '../writing/booklet/values.ts'
import type { FabricFill } from './fabricFill.ts'
import { drawPicture } from './drawPicture.ts'
import { INK, type Face, STYLES, type Style } from './pageStyle.ts'
import { type Letters, lettersOf } from './missingLetters.ts'
import { fittingSize, wrapText, type Measure } from './lineBreaks.ts'
import type { PdfDocument, PdfImage, PdfOptions, PdfOutline, PdfStruct, PdfStructOptions, PrintTools } from './pdfLibrary.ts'
import { FOOT, MARGIN, type Paper, SIZES } from './paper.ts'
import { bothFacesHave, escapeMetadata, keepPlainSlashes, withFractionSlash } from './pdfFaces.ts'
import { pdfSurface } from './pdfSurface.ts'
import type { Surface } from './pen.ts'

interface About {
  readonly title: string
  readonly by: string
  readonly subject: string
  readonly language: string
  readonly say: BookletPhrases['pages']
  /** Said above the first page of single pages: what they belong to. */
  readonly banner: string
}

/** Where the banner stands, above the margin. */
const BANNER = 40

/** The same block gives the same bytes, whenever it is printed. */
const ALWAYS = new Date(Date.UTC(2000, 0, 1))

export class PageWriter {
  readonly left: number = MARGIN.side
  readonly width: number
  /** The lowest place for anything but the foot. */
  readonly end: number
  readonly letters: Letters
  top = 0
  private readonly about: About
  private readonly pdf: PdfDocument
  private readonly size: readonly [number, number]
  private readonly parents: PdfStruct[]
  private readonly chunks: Uint8Array[] = []
  private readonly finished: Promise<void>
  private readonly images = new Map<string, PdfImage | null>()
  private face: Face | null = null
  private begun = false
  private readonly chapters: { readonly title: string; readonly page: number; readonly name: string }[] = []
  private list: ContentsPlace | null = null

  constructor({ Pdf, faces }: PrintTools, paper: Paper, about: About) {
    this.about = about
    this.size = SIZES[paper]
    this.width = this.size[0] - 2 * MARGIN.side
    this.end = this.size[1] - MARGIN.bottom
    // Letters that the face lacks are known before the title is written anywhere.
    this.pdf = new Pdf(optionsFor(about))
    escapeMetadata(this.pdf)
    this.finished = new Promise((resolve, reject) => {
      this.pdf.on('data', (chunk) => this.chunks.push(chunk))
      this.pdf.on('end', resolve)
      this.pdf.on('error', reject)
    })
    this.pdf.registerFont('text', faces.text)
    this.pdf.registerFont('strong', faces.strong)
    this.letters = lettersOf(bothFacesHave(this.pdf))
    const whole = this.pdf.struct('Document', {})
    this.pdf.addStructure(whole)
    this.parents = [whole]
  }

  /** Pages begun so far. */
  get pageCount(): number {
    return this.pdf.bufferedPageRange().count
  }

  /** The paper's own width and height. */
  get paper(): readonly [number, number] {
    return this.size
  }

  /** Begins a page, with the banner on the first one. */
  newPage(): void {
    this.pdf.addPage({ size: this.size, margin: 0 })
    this.begun = true
    this.face = null
    this.top = MARGIN.top
    const { banner } = this.about
    if (banner !== '' && this.pageCount === 1) this.tagged('P', () => this.textLineFitting(banner, this.left, BANNER, STYLES.small, this.width))
  }

  /** Makes sure of so much height, on this page or a new one. */
  ensureRoom(height: number): void {
    if (!this.begun || this.top + height > this.end) this.newPage()
  }

  /** The height that is left on this page. */
  get room(): number {
    return this.begun ? this.end - this.top : 0
  }

  /** Whether anything stands on this page yet. */
  get blank(): boolean {
    return !this.begun || this.top <= MARGIN.top
  }

  /** Leaves a blank height, but not at the top of a page. */
  gap(height: number): void {
    if (!this.blank) this.top += height
  }

  /** An entry for this page in the PDF's outline; inside another entry where one is given. */
  bookmark(title: string, inside: PdfOutline = this.pdf.outline): PdfOutline {
    return inside.addItem(title.replace(/\s+/g, ' '), { expanded: false })
  }

  /** A chapter begins on this page at a height: the list of what is in the booklet names it and leads to it. */
  addToContents(title: string, top: number): void {
    const name = `chapter-${this.chapters.length + 1}`
    this.pdf.addNamedDestination(name, 'XYZ', 0, Math.max(0, top - BANNER), null)
    this.chapters.push({ title, page: this.pageCount, name })
  }

  /** Here the list of chapters will stand, once their pages are known; nothing where the page has no room left for it. */
  reserveContents(): void {
    const list = this.pdf.struct('TOC', {})
    this.parents.at(-1)?.add(list)
    this.list = { page: this.pageCount - 1, top: this.top, room: this.room, element: list }
  }

  /** In two columns; in three where there is less room. */
  private writeContents({ page, top, room, element }: ContentsPlace): void {
    const columns = [2, 3].find((number) => CONTENTS_HEAD + Math.ceil(this.chapters.length / number) * CONTENTS_ROW <= room)
    if (columns === undefined || this.chapters.length < 2) {
      element.end()
      return
    }
    const rows = Math.ceil(this.chapters.length / columns)
    this.pdf.switchToPage(page)
    this.face = null
    const width = (this.width - CONTENTS_GAP * (columns - 1)) / columns
    const head = this.pdf.struct('Caption', {}, [() => this.textBlock([this.about.say.contents], STYLES.heading, this.left, top)])
    element.add(head)
    this.chapters.forEach(({ title, page: number, name }, at) => {
      const x = this.left + Math.floor(at / rows) * (width + CONTENTS_GAP)
      const y = top + CONTENTS_HEAD + (at % rows) * CONTENTS_ROW
      this.rule(x, y, width)
      const said = String(number)
      const link = this.nested(element, ['TOCI', 'Reference', 'Link'])
      link.add(() => {
        this.textLineFitting(`${title} `, x, y + 12.5, STYLES.body, width - 22)
        this.textLineRight(said, x + width, y + 12.5, STYLES.body)
      })
      // A plain string would be written as a name; the library takes words as objects.
      this.pdf.goTo(x, y, width, CONTENTS_ROW, name, { structParent: link, Contents: new String(`${title}, ${said}`) })
      link.end()
    })
    element.end()
  }

  /** An element inside others, the outermost first. */
  private nested(parent: PdfStruct, types: readonly string[]): PdfStruct {
    return types.reduce((outer, type) => {
      const inner = this.pdf.struct(type, {})
      outer.add(inner)
      return inner
    }, parent)
  }

  /** What is drawn inside is one thing of a kind: a part, a table, a list. */
  group(type: string, inside: () => void, options: PdfStructOptions = {}): void {
    const element = this.pdf.struct(type, options)
    this.parents.at(-1)?.add(element)
    this.parents.push(element)
    inside()
    this.parents.pop()
    element.end()
  }

  /** Words or a picture that a screen reader reads: nothing inside may begin a page. */
  tagged(type: string, drawn: () => void, options: PdfStructOptions = {}): void {
    const element = this.pdf.struct(type, options, [drawn])
    this.parents.at(-1)?.add(element)
  }

  /** Drawn for the eye only. */
  ornament(drawn: () => void): void {
    this.pdf.markContent('Artifact', { type: 'Layout' })
    drawn()
    this.pdf.endMarkedContent()
  }

  private use({ face, size }: Pick<Style, 'face' | 'size'>): void {
    if (this.face !== face) this.pdf.font(face)
    this.face = face
    this.pdf.fontSize(size)
  }

  /** How wide words are in a style. */
  measure(style: Pick<Style, 'face' | 'size'>): Measure {
    return (text) => {
      this.use(style)
      return this.pdf.widthOfString(withFractionSlash(text, style.size))
    }
  }

  /** Words as lines of a width, ready for `textBlock`. */
  breakLines(words: string, style: Style, width = this.width): string[] {
    return wrapText(this.letters.printable(words), width, this.measure(style))
  }

  /** The largest style, no smaller than `least`, in which words that must not wrap fit. */
  fitting(words: string, style: Style, width: number, least: number): Style {
    const size = fittingSize(this.letters.printable(words), width, style.size, least, (at) => this.measure({ ...style, size: at }))
    return size === style.size ? style : { ...style, size, lead: (style.lead * size) / style.size }
  }

  /** One line, ready to print, its letters standing at a height. */
  textLine(line: string, x: number, foot: number, style: Style): void {
    if (line === '') return
    this.use(style)
    this.pdf.fillColor(style.colour)
    this.pdf.text(withFractionSlash(line, style.size), x, foot, { lineBreak: false, baseline: 'alphabetic' })
  }

  /** Words of a maker or ours on one line that ends no later than `width` allows: smaller where they must be, cut short never. */
  textLineFitting(words: string, x: number, foot: number, style: Style, width: number): void {
    this.textLine(this.letters.printable(words), x, foot, this.fitting(words, style, width, 1))
  }

  /** Words that stand whole elsewhere, on one line: cut off with dots where they are too long. */
  private shortened(words: string, room: number): string {
    const width = this.measure(STYLES.small)
    const text = this.letters.printable(words)
    if (width(text) <= room) return text
    const letters = [...text]
    const fits = letters.findIndex((_, at) => width(`${letters.slice(0, at + 1).join('')}…`) > room)
    return `${letters.slice(0, fits).join('').trimEnd()}…`
  }

  /** One line that ends at `right`. */
  textLineRight(words: string, right: number, foot: number, style: Style): void {
    const text = this.letters.printable(words)
    this.textLine(text, right - this.measure(style)(text), foot, style)
  }

  /** A paragraph that may run on to the next page; no line of it stands alone. */
  paragraph(words: string, style: Style, { tag = 'P', x = this.left, width = this.width, after = 0 }: WriteOptions = {}): void {
    const lines = this.breakLines(words, style, width)
    const element = this.pdf.struct(tag, {})
    this.parents.at(-1)?.add(element)
    let said = 0
    while (said < lines.length) {
      this.ensureRoom(Math.min(2, lines.length - said) * style.lead)
      let fits = Math.min(lines.length - said, Math.max(1, Math.floor((this.room + 0.01) / style.lead)))
      if (lines.length - said - fits === 1 && fits > 2) fits -= 1
      const part = lines.slice(said, said + fits)
      element.add(() => this.textBlock(part, style, x, this.top))
      this.top += part.length * style.lead
      said += fits
      if (said < lines.length) this.newPage()
    }
    element.end()
    this.top += after
  }

  /** Lines one under the other from a place; it is for the caller to know that there is room. */
  textBlock(lines: readonly string[], style: Style, x: number, top: number): void {
    for (const [at, line] of lines.entries()) this.textLine(line, x, top + at * style.lead + footOf(style), style)
  }

  /** How high lines are. */
  height(lines: readonly string[], style: Style): number {
    return lines.length * style.lead
  }

  /** A level line, for the eye only. */
  rule(x: number, y: number, width: number, colour: string = INK.line, thick = 0.6): void {
    this.ornament(() => {
      this.pdf.lineWidth(thick)
      this.pdf.moveTo(x, y)
      this.pdf.lineTo(x + width, y)
      this.pdf.stroke(colour)
    })
  }

  /** A filled box with rounded corners, for the eye only. */
  panel(x: number, y: number, width: number, height: number, fill: string, edge?: string): void {
    this.ornament(() => {
      this.pdf.lineWidth(0.6)
      this.pdf.roundedRect(x, y, width, height, Math.min(3, width / 4, height / 4))
      if (edge === undefined) this.pdf.fill(fill)
      else this.pdf.fillAndStroke(fill, edge)
    })
  }

  /** A picture that says in words what is to be seen. */
  picture(drawing: Drawing, at: Spot, scale: number, fabricFill: (fabric: string | null) => FabricFill): void {
    this.figure(drawing.title, (surface) => drawPicture(surface, drawing, { at, scale, fabricFill }))
  }

  /** What `drawn` draws, with words for those who cannot see it. */
  figure(title: string, drawn: (surface: Surface) => void): void {
    this.tagged('Figure', () => drawn(this.surface()), { alt: title })
  }

  /** A photograph, as large as it may be in a box; nothing where it cannot be shown. */
  photograph(bytes: Uint8Array, key: string, title: string, at: Spot, box: readonly [number, number]): void {
    const image = this.image(bytes, key)
    if (image === null) return
    const { width, height } = within(image, box)
    this.tagged('Figure', () => this.pdf.image(image as never, at[0], at[1], { width, height }), { alt: title })
  }

  /** How large a photograph is shown in a box; null where the file is no picture that can be printed. */
  photographSize(bytes: Uint8Array, key: string, box: readonly [number, number]): { width: number; height: number } | null {
    const image = this.image(bytes, key)
    return image === null ? null : within(image, box)
  }

  private image(bytes: Uint8Array, key: string): PdfImage | null {
    const known = this.images.get(key)
    if (known !== undefined) return known
    let image: PdfImage | null = null
    try {
      image = this.pdf.openImage(bytes)
    } catch {
      // The library throws plain words at what it cannot read.
    }
    this.images.set(key, image)
    return image
  }

  /** A surface for pictures on this page. */
  surface(): Surface {
    return pdfSurface(this.pdf, this)
  }

  /** Puts a file inside the PDF. */
  attach(bytes: Uint8Array, name: string, description: string): void {
    this.pdf.file(bytes, { name, type: 'application/json', description, relationship: 'Source' })
  }

  /** The foot of every page, then the bytes. */
  async bytes(): Promise<Uint8Array> {
    const { start, count } = this.pdf.bufferedPageRange()
    if (this.list !== null) this.writeContents(this.list)
    for (let at = 0; at < count; at += 1) {
      this.pdf.switchToPage(start + at)
      this.face = null
      this.foot(at + 1, count)
    }
    this.parents[0]?.end()
    keepPlainSlashes(this.pdf)
    this.pdf.end()
    await this.finished
    return joined(this.chunks)
  }

  private foot(number: number, count: number): void {
    const y = this.size[1] - FOOT
    const page = this.about.say.page(number, count)
    const room = this.width - this.measure(STYLES.small)(page) - 18
    const words = this.about.by === '' ? this.about.title : `${this.about.title} · ${this.about.by}`
    this.ornament(() => {
      this.textLine(this.shortened(words, room), this.left, y, STYLES.small)
      this.textLineRight(page, this.left + this.width, y, STYLES.small)
    })
  }
}

interface ContentsPlace {
  readonly page: number
  readonly top: number
  readonly room: number
  readonly element: PdfStruct
}

const CONTENTS_HEAD = 24
const CONTENTS_ROW = 18
const CONTENTS_GAP = 24

interface WriteOptions {
  readonly tag?: string
  readonly x?: number
  readonly width?: number
  readonly after?: number
}

/** How far below its top a line's letters stand. */
export const footOf = ({ size, lead }: Style): number => (lead - size) / 2 + size * 0.86

function optionsFor({ title, by, subject, language }: About): PdfOptions {
  const info: Record<string, string | Date> = { Title: title, Subject: subject, Producer: 'Nestwright', Creator: 'Nestwright', CreationDate: ALWAYS }
  if (by !== '') info.Author = by
  return {
    font: null,
    autoFirstPage: false,
    bufferPages: true,
    pdfVersion: '1.7',
    lang: language,
    tagged: true,
    displayTitle: true,
    subset: 'PDF/UA',
    info,
  }
}

function within({ width, height }: PdfImage, [wide, high]: readonly [number, number]): { width: number; height: number } {
  const scale = Math.min(wide / width, high / height)
  return { width: width * scale, height: height * scale }
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0))
  let at = 0
  for (const chunk of chunks) {
    bytes.set(chunk, at)
    at += chunk.length
  }
  return bytes
}
