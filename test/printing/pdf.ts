/** A PDF read back by a reader that is not ours (pdfjs-dist): its words by page, its faces, its files, and where its pen went. */
import { getDocument, OPS, type PDFDocumentProxy, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'

export interface ReadPage {
  /** In points. */
  readonly size: readonly [number, number]
  readonly text: string
  /** Each line of words with its box, y down from the top. */
  readonly words: readonly { readonly text: string; readonly x: number; readonly y: number; readonly width: number; readonly size: number }[]
  /** Each stretch of the pen, in points from the top left. */
  readonly ways: readonly PenPath[]
  /** Photographs. */
  readonly photographs: number
  /** The number of the page that each link leads to, from 1; 0 where it leads nowhere. */
  readonly links: readonly number[]
  /** The kinds of the elements on it, each as a path from the outermost: `Root/Document/H1`. */
  readonly elements: readonly string[]
  /** What stands for each picture for somebody who can't see it; empty where nothing does. */
  readonly pictures: readonly string[]
}

export interface PenPath {
  readonly points: readonly (readonly [number, number])[]
  readonly closed: boolean
  readonly how: 'fill' | 'stroke' | 'both' | 'clip'
}

export interface ReadPdf {
  readonly pages: readonly ReadPage[]
  readonly title: string
  readonly author: string
  /** Title and creator as the metadata tell them, read as XML. */
  readonly metadata: { readonly title: string; readonly creator: string }
  readonly language: string
  readonly tagged: boolean
  readonly bookmarks: readonly string[]
  readonly attachments: ReadonlyMap<string, Uint8Array>
  readonly fonts: readonly { readonly name: string; readonly missing: boolean }[]
}

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0, fontExtraProperties: true, useSystemFonts: false, disableFontFace: true })
  const pdf = await task.promise
  try {
    return await readAll(pdf)
  } finally {
    await task.destroy()
  }
}

async function readAll(pdf: PDFDocumentProxy): Promise<ReadPdf> {
  const { info, metadata } = (await pdf.getMetadata()) as unknown as {
    info: Record<string, unknown>
    metadata: { get(name: string): unknown } | null
  }
  const pages: ReadPage[] = []
  const fonts = new Map<string, { name: string; missing: boolean }>()
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number)
    pages.push(await readPage(page, fonts, (name) => pageOf(pdf, name)))
  }
  const files = ((await pdf.getAttachments()) ?? {}) as Record<string, { filename: string; content: Uint8Array }>
  return {
    pages,
    title: String(info.Title ?? ''),
    author: String(info.Author ?? ''),
    metadata: { title: String(metadata?.get('dc:title') ?? ''), creator: [metadata?.get('dc:creator') ?? ''].flat().join() },
    language: String(info.Language ?? ''),
    tagged: (await pdf.getMarkInfo())?.Marked === true,
    bookmarks: titlesOf((await pdf.getOutline()) ?? []),
    attachments: new Map(Object.values(files).map(({ filename, content }) => [filename, content])),
    fonts: [...fonts.values()],
  }
}

interface Bookmark {
  readonly title: string
  readonly items: readonly Bookmark[]
}

const titlesOf = (marks: readonly Bookmark[]): string[] => marks.flatMap(({ title, items }) => [title, ...titlesOf(items)])

/** The number of the page that a named place lies on, from 1; 0 where there is none. */
async function pageOf(pdf: PDFDocumentProxy, name: unknown): Promise<number> {
  const place = typeof name === 'string' ? await pdf.getDestination(name) : null
  return place === null ? 0 : (await pdf.getPageIndex(place[0])) + 1
}

interface Element {
  readonly role?: string
  readonly alt?: string
  readonly children?: readonly Element[]
}

const elementsOf = ({ role, children = [] }: Element, path = ''): string[] =>
  role === undefined ? [] : [`${path}${role}`, ...children.flatMap((child) => elementsOf(child, `${path}${role}/`))]

const figuresOf = ({ role, alt = '', children = [] }: Element): string[] => [...(role === 'Figure' ? [alt] : []), ...children.flatMap(figuresOf)]

async function readPage(
  page: PDFPageProxy,
  fonts: Map<string, { name: string; missing: boolean }>,
  pageOfName: (name: unknown) => Promise<number>,
): Promise<ReadPage> {
  const [, , width, height] = page.view as [number, number, number, number]
  const content = await page.getTextContent()
  const items = content.items.flatMap((item) => ('str' in item ? [item] : []))
  const operators = await page.getOperatorList()
  for (const [at, operator] of operators.fnArray.entries()) {
    if (operator !== OPS.setFont) continue
    const id = (operators.argsArray[at] as [string])[0]
    const font = page.commonObjs.get(id) as { name: string; missingFile?: boolean }
    fonts.set(font.name, { name: font.name, missing: font.missingFile ?? false })
  }
  const tree = ((await page.getStructTree()) ?? {}) as Element
  const links = (await page.getAnnotations()).filter(({ subtype }) => subtype === 'Link')
  return {
    links: await Promise.all(links.map(({ dest }) => pageOfName(dest))),
    elements: elementsOf(tree),
    pictures: figuresOf(tree),
    size: [width, height],
    text: items.map(({ str, hasEOL }) => `${str}${hasEOL ? '\n' : ''}`).join(''),
    words: items
      .filter(({ str }) => str.trim() !== '')
      .map(({ str, transform, width: wide }) => ({
        text: str,
        x: transform[4],
        y: height - transform[5],
        width: wide,
        size: Math.hypot(transform[2], transform[3]),
      })),
    photographs: operators.fnArray.filter((operator) => operator === OPS.paintImageXObject).length,
    ways: waysOf(operators.fnArray, operators.argsArray, height),
  }
}

type Matrix = readonly [number, number, number, number, number, number]
const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + c * h,
  b * g + d * h,
  a * i + c * j,
  b * i + d * j,
  a * k + c * l + e,
  b * k + d * l + f,
]

const PAINTS: Readonly<Record<number, PenPath['how']>> = {
  [OPS.fill]: 'fill',
  [OPS.eoFill]: 'fill',
  [OPS.stroke]: 'stroke',
  [OPS.closeStroke]: 'stroke',
  [OPS.fillStroke]: 'both',
  [OPS.eoFillStroke]: 'both',
  [OPS.endPath]: 'clip',
}

function waysOf(operators: readonly number[], args: readonly unknown[], height: number): PenPath[] {
  const ways: PenPath[] = []
  let now: Matrix = [1, 0, 0, 1, 0, 0]
  const kept: Matrix[] = []
  let open: { points: [number, number][]; closed: boolean }[] = []
  operators.forEach((operator, at) => {
    if (operator === OPS.save) kept.push(now)
    else if (operator === OPS.restore) now = kept.pop() ?? now
    else if (operator === OPS.transform) now = times(now, args[at] as unknown as Matrix)
    else if (operator === OPS.constructPath) open.push(...subpaths(args[at] as [number[], number[]], now, height))
    else if (operator in PAINTS) {
      for (const { points, closed } of open) ways.push({ points, closed, how: PAINTS[operator] as PenPath['how'] })
      open = []
    }
  })
  return ways
}

/** Curves are passed over by their ends: only rounded corners have any. */
function subpaths(
  [operators, numbers]: readonly [number[], number[]],
  now: Matrix,
  height: number,
): { points: [number, number][]; closed: boolean }[] {
  const found: { points: [number, number][]; closed: boolean }[] = []
  let at = 0
  const put = (x: number, y: number): [number, number] => [now[0] * x + now[2] * y + now[4], height - (now[1] * x + now[3] * y + now[5])]
  for (const operator of operators) {
    if (operator === OPS.moveTo) found.push({ points: [put(numbers[at] as number, numbers[at + 1] as number)], closed: false })
    if (operator === OPS.lineTo) found.at(-1)?.points.push(put(numbers[at] as number, numbers[at + 1] as number))
    if (operator === OPS.curveTo) found.at(-1)?.points.push(put(numbers[at + 4] as number, numbers[at + 5] as number))
    if (operator === OPS.rectangle) {
      const [x, y, wide, high] = numbers.slice(at, at + 4) as [number, number, number, number]
      found.push({ points: [put(x, y), put(x + wide, y), put(x + wide, y + high), put(x, y + high)], closed: true })
    }
    if (operator === OPS.closePath) {
      const last = found.at(-1)
      if (last !== undefined) last.closed = true
    }
    at += NUMBERS[operator] ?? 0
  }
  return found
}

const NUMBERS: Readonly<Record<number, number>> = {
  [OPS.moveTo]: 2,
  [OPS.lineTo]: 2,
  [OPS.curveTo]: 6,
  [OPS.curveTo2]: 4,
  [OPS.curveTo3]: 4,
  [OPS.rectangle]: 4,
  [OPS.closePath]: 0,
}
