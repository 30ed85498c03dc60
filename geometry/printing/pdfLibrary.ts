/**
 * What the pages need of the PDF library, handed in by whoever prints: so geometry stands without it, and it is loaded only when somebody prints.
 *
 * The names are the library's own (pdfkit). Units are points, 72 an inch; x to the right, y down from the page's top left.
 */
export interface PdfDocument {
  readonly page: { readonly width: number; readonly height: number }
  readonly outline: PdfOutline
  addPage(options: { size: readonly [number, number]; margin: number }): unknown
  switchToPage(page: number): unknown
  bufferedPageRange(): { start: number; count: number }
  registerFont(name: string, bytes: Uint8Array): unknown
  font(name: string): unknown
  fontSize(size: number): unknown
  widthOfString(text: string): number
  text(text: string, x: number, y: number, options: { lineBreak: false; baseline: 'alphabetic'; characterSpacing?: number }): unknown
  image(bytes: Uint8Array | ArrayBuffer, x: number, y: number, options: { width: number; height: number }): unknown
  openImage(bytes: Uint8Array | ArrayBuffer): PdfImage
  save(): unknown
  restore(): unknown
  moveTo(x: number, y: number): unknown
  lineTo(x: number, y: number): unknown
  closePath(): unknown
  rect(x: number, y: number, width: number, height: number): unknown
  roundedRect(x: number, y: number, width: number, height: number, radius: number): unknown
  circle(x: number, y: number, radius: number): unknown
  clip(): unknown
  fill(colour: string): unknown
  stroke(colour: string): unknown
  fillAndStroke(fill: string, stroke: string): unknown
  fillColor(colour: string): unknown
  lineWidth(width: number): unknown
  lineJoin(join: 'round' | 'miter'): unknown
  lineCap(cap: 'round' | 'butt'): unknown
  dash(length: number | readonly number[], options?: { space?: number }): unknown
  undash(): unknown
  struct(type: string, options: PdfStructOptions, children?: readonly (() => void)[]): PdfStruct
  addStructure(element: PdfStruct): unknown
  markContent(tag: 'Artifact', options: { type: string }): unknown
  endMarkedContent(): unknown
  addNamedDestination(name: string, type: 'XYZ', x: number, y: number, zoom: null): unknown
  goTo(x: number, y: number, width: number, height: number, name: string, options: { structParent: PdfStruct; Contents: object }): unknown
  file(bytes: Uint8Array, options: { name: string; type: string; description: string; relationship: string }): unknown
  on(event: 'data', listener: (chunk: Uint8Array) => void): unknown
  on(event: 'end', listener: () => void): unknown
  on(event: 'error', listener: (error: unknown) => void): unknown
  end(): unknown
}

export interface PdfImage {
  readonly width: number
  readonly height: number
}

export interface PdfOutline {
  addItem(title: string, options?: { expanded?: boolean }): PdfOutline
}

export interface PdfStructOptions {
  readonly title?: string
  readonly alt?: string
  readonly actual?: string
  readonly scope?: 'Column' | 'Row'
}

export interface PdfStruct {
  add(child: PdfStruct | (() => void)): unknown
  end(): unknown
}

export interface PdfOptions {
  readonly font: null
  readonly autoFirstPage: false
  readonly bufferPages: true
  readonly pdfVersion: '1.7'
  readonly lang: string
  readonly tagged: true
  readonly displayTitle: true
  readonly subset: 'PDF/UA'
  readonly info: Readonly<Record<string, string | Date>>
}

export type NewPdf = new (options: PdfOptions) => PdfDocument

/** What whoever prints brings along: the library, and the faces as bytes of TrueType files with Latin, Greek and Cyrillic. */
export interface PrintTools {
  readonly Pdf: NewPdf
  readonly faces: { readonly text: Uint8Array; readonly strong: Uint8Array }
}
