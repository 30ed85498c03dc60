/**
 * Templates at their own size: 1 in on the page is 1 in of cloth.
 *
 * In      templates: the outline to cut and the outline to sew, in the measure's unit.
 * Out     small ones side by side; one larger than the sheet in tiles that overlap, with crosses to lay on each other. A test square on every sheet.
 * Exact   places are the templates' own, times the points of one unit; nothing is fitted.
 */
import { boxAt } from '../../writing/booklet/sketch.ts'
import type { Spot, Template } from '../../writing/booklet/values.ts'
import { INK, STYLES } from '../pageStyle.ts'
import type { PrintJob } from '../printJob.ts'
import type { PdfOutline } from '../pdfLibrary.ts'
import { POINTS } from '../paper.ts'
import { polygon, round, type Surface } from '../pen.ts'
import { squareNote, testSquare, testSquareSide } from '../testSquare.ts'
import { chapter } from '../titles.ts'

/** Most printers leave a quarter of an inch blank; half of one is safe. */
const EDGE = 36
const STRIP = 84
const GAP = 20
/** Two tiles share so much. */
const OVERLAP = 36

/** All templates of the booklet at full size, on pages of their own; nothing where the block needs none. */
export function templatePages(job: PrintJob): void {
  const { pages, booklet } = job
  const { templates } = booklet
  if (templates.length === 0) return
  const region = regionOf(job)
  const room: Region = { ...region, x: pages.left, width: pages.width }
  const fits = (template: Template): boolean => {
    const size = sizeOf(job, template)
    return size.width <= room.width && size.height + captionOf(job, template).height <= region.height
  }
  const [few, large] = [templates.filter(fits), templates.filter((template) => !fits(template))]
  const whole = large.flatMap((template) => wholeSheet(job, template) ?? [])
  const tilings = large.filter((template) => wholeSheet(job, template) === null).map((template) => tilingOf(job, template, region))
  // How sheets go together is shown where there is room, so that no page has nothing else.
  if (few.length > 0) pages.newPage()
  const item = chapter(pages, job.say.pages.templates, few.length > 0 ? 0 : tilings.length > 0 ? OVERVIEW + 130 : 80)
  if (few.length === 0 && tilings.length === 0) pages.paragraph(job.say.pages.templatesFollow, STYLES.body)
  const shelf: Shelf = { x: room.x, y: pages.top, high: 0 }
  if (few.length > 0) foot(job, region)
  for (const template of few) small(job, template, room, shelf, item)
  for (const tiling of tilings) overview(job, tiling, region, room, shelf)
  pages.top = shelf.y + shelf.high
  for (const one of whole) wholeOn(job, one, item)
  for (const tiling of tilings) tiled(job, tiling, region, item)
  pages.top = pages.end
}

/** Blank round a template that takes a whole sheet: at the sides and top, and at the foot for the page's number. */
const SHEET = { side: 24, top: 30, bottom: 46 } as const
/** What the words and the test square beside it need. */
const BESIDE = 150

interface WholeSheet {
  /** Turned a quarter where only so it fits. */
  readonly template: Template
  /** Whether the words stand to the right of it; else inside it. */
  readonly beside: boolean
}

/** A template that no shelf holds, but one sheet does; null where it must be tiled. */
function wholeSheet(job: PrintJob, template: Template): WholeSheet | null {
  const [width, height] = job.pages.paper
  const fitting = [template, quarterTurned(template)].filter((one) => {
    const size = sizeOf(job, one)
    return size.width <= width - 2 * SHEET.side && size.height <= height - SHEET.top - SHEET.bottom
  })
  const beside = fitting.find((one) => sizeOf(job, one).width <= width - 2 * SHEET.side - BESIDE)
  const [any] = fitting
  return beside !== undefined ? { template: beside, beside: true } : any !== undefined ? { template: any, beside: false } : null
}

function wholeOn(job: PrintJob, { template, beside }: WholeSheet, item: PdfOutline): void {
  const { pages, unit } = job
  pages.newPage()
  pages.bookmark(template.name, item)
  const size = sizeOf(job, template)
  const [x, y]: Spot = [SHEET.side, SHEET.top]
  const [middleX, middleY] = middleOf(template.finished)
  const middle: Spot = [x + middleX * POINTS[unit], y + middleY * POINTS[unit]]
  pages.figure(alt(job, template), (surface) => {
    outline(surface, template, [x, y], POINTS[unit])
    letterOn(surface, template, middle)
  })
  // Inside it the words stand under its letter.
  const [left, top] = beside ? [x + size.width + 16, y + 8] : [middle[0] - 60, middle[1] + 20]
  pages.tagged('P', () => pages.textBlock(pages.breakLines(template.name, STYLES.strong, BESIDE - 24), STYLES.strong, left, top))
  const words = template.sentences.flatMap((sentence) => pages.breakLines(sentence, STYLES.small, BESIDE - 24))
  pages.tagged('P', () => pages.textBlock(words, STYLES.small, left, top + 30))
  const under = top + 30 + words.length * STYLES.small.lead + 12
  testSquare(pages, left, under, unit, job.say.pages)
  squareNote(pages, left, under + testSquareSide(unit) + 8, BESIDE - 24, job.say.pages)
  pages.top = pages.end
}

/** Says on a page that the block needs no templates. */
export function noTemplates(job: PrintJob): void {
  chapter(job.pages, job.say.pages.templates, 60)
  job.pages.paragraph(job.say.pages.noTemplates, STYLES.body)
}

interface Region {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** Where the next small template stands. */
interface Shelf {
  x: number
  y: number
  high: number
}

function regionOf({ pages }: PrintJob): Region {
  const [width, height] = pages.paper
  return { x: EDGE, y: EDGE, width: width - 2 * EDGE, height: height - EDGE - STRIP - 48 - EDGE / 2 }
}

const sizeOf = ({ unit }: PrintJob, { width, height }: Template): { readonly width: number; readonly height: number } => ({
  width: width * POINTS[unit],
  height: height * POINTS[unit],
})

/** The test square and its words, under the templates of every sheet. */
function foot(job: PrintJob, region: Region, more: readonly string[] = []): void {
  const { pages, unit } = job
  const y = region.y + region.height + 8
  const side = testSquareSide(unit)
  const x = region.x + region.width - side - 1
  testSquare(pages, x, y, unit, job.say.pages)
  squareNote(pages, x - 158, y + 14, 146, job.say.pages)
  more.forEach((words, at) => {
    pages.tagged('P', () => pages.textLineFitting(words, pages.left, y + 16 + at * 13, at === 0 ? STYLES.strong : STYLES.small, x - 178 - pages.left))
  })
}

interface Caption {
  readonly title: readonly string[]
  readonly body: readonly string[]
  readonly width: number
  readonly height: number
}

function captionOf(job: PrintJob, template: Template): Caption {
  const { pages } = job
  const width = Math.max(132, Math.min(230, sizeOf(job, template).width))
  const title = pages.breakLines(template.name, STYLES.strong, width)
  const body = template.sentences.flatMap((words) => pages.breakLines(words, STYLES.small, width))
  return { title, body, width, height: 6 + title.length * STYLES.strong.lead + body.length * STYLES.small.lead }
}

function countsOf({ block, say }: PrintJob, { counts }: Template): string[] {
  const names = new Map(block.fabrics.map(({ id, name }) => [id, name]))
  return counts.map(({ fabric, count: number, mirrored }) => {
    const name = names.get(fabric) ?? fabric
    return mirrored === 0 ? say.pages.cutOf(number, name) : say.pages.cutOfFlipped(number, mirrored, name)
  })
}

/** The next place for so much, on this shelf, the next, or a new sheet. */
function makeRoom(job: PrintJob, region: Region, shelf: Shelf, wide: number, high: number): void {
  if (shelf.x > region.x && shelf.x + wide > region.x + region.width) {
    shelf.x = region.x
    shelf.y += shelf.high + GAP
    shelf.high = 0
  }
  if (shelf.y + high <= region.y + region.height) return
  job.pages.newPage()
  foot(job, regionOf(job))
  Object.assign(shelf, { x: region.x, y: region.y, high: 0 })
}

function small(job: PrintJob, template: Template, room: Region, shelf: Shelf, item: PdfOutline): void {
  const { pages, unit } = job
  const size = sizeOf(job, template)
  const caption = captionOf(job, template)
  const [wide, high] = [Math.max(size.width, caption.width), size.height + caption.height]
  makeRoom(job, room, shelf, wide, high)
  const { x, y } = shelf
  pages.bookmark(template.name, item)
  pages.group('Sect', () => {
    pages.figure(alt(job, template), (surface) => {
      outline(surface, template, [x, y], POINTS[unit])
      const [middleX, middleY] = middleOf(template.finished)
      letterOn(surface, template, [x + middleX * POINTS[unit], y + middleY * POINTS[unit]])
    })
    pages.tagged('P', () => pages.textBlock(caption.title, STYLES.strong, x, y + size.height + 5))
    pages.tagged('P', () => pages.textBlock(caption.body, STYLES.small, x, y + size.height + 5 + caption.title.length * STYLES.strong.lead))
  })
  shelf.x += wide + GAP
  shelf.high = Math.max(shelf.high, high)
}

const alt = ({ unit, say }: PrintJob, { name, width, height }: Template): string =>
  say.pages.atFullSize(name, `${[width, height].map((length) => Math.round(length * 1000) / 1000).join(' × ')} ${unit}`)

function outline(surface: Surface, template: Template, [x, y]: Spot, scale: number): void {
  const put = ([px, py]: Spot): Spot => [x + px * scale, y + py * scale]
  surface.path(polygon(template.cut.map(put)), { line: { colour: INK.ink, width: 0.8 } })
  surface.path(polygon(template.finished.map(put)), { line: { colour: INK.soft, width: 0.7, dash: [4, 2.5] } })
  for (const { from, to } of template.notches) surface.path(polygon([put(from), put(to)], false), { line: { colour: INK.ink, width: 1.1 } })
  for (const dot of template.dots) surface.path(polygon(round(put(dot), 2.4)), { fill: INK.ink })
  grain(surface, put(template.grain.from), put(template.grain.to))
}

const letterOn = (surface: Surface, { letter }: Template, at: Spot): void =>
  surface.words({ text: letter, at, size: 15, align: 'middle', face: 'strong', colour: INK.ink, ground: INK.white })

function grain(surface: Surface, from: Spot, to: Spot): void {
  const line = { colour: INK.ink, width: 0.7 }
  surface.path(polygon([from, to], false), { line })
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1
  const [ux, uy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long]
  const head = ([x, y]: Spot, way: 1 | -1): void =>
    surface.path(
      polygon([
        [x, y],
        [x - way * (ux * 7) - uy * 2.6, y - way * (uy * 7) + ux * 2.6],
        [x - way * (ux * 7) + uy * 2.6, y - way * (uy * 7) - ux * 2.6],
      ]),
      { fill: INK.ink },
    )
  head(to, 1)
  head(from, -1)
}

/** The middle of a shape's area: inside it wherever it is convex. */
function middleOf(corners: readonly Spot[]): Spot {
  let [area, x, y] = [0, 0, 0]
  corners.forEach(([ax, ay], at) => {
    const [bx, by] = corners[(at + 1) % corners.length] as Spot
    const cross = ax * by - bx * ay
    area += cross
    x += (ax + bx) * cross
    y += (ay + by) * cross
  })
  return area === 0 ? (corners[0] ?? [0, 0]) : [x / (3 * area), y / (3 * area)]
}

interface Tile {
  readonly row: number
  readonly column: number
}

interface Tiling {
  /** Turned a quarter where that takes fewer sheets. */
  readonly template: Template
  readonly across: number
  readonly down: number
  /** Those that have a part of it. */
  readonly tiles: readonly Tile[]
}

function tilingOf(job: PrintJob, template: Template, region: Region): Tiling {
  const [upright, turned] = [template, quarterTurned(template)].map((one) => tilesOf(job, one, region)) as [Tiling, Tiling]
  return turned.tiles.length < upright.tiles.length ? turned : upright
}

function tilesOf(job: PrintJob, template: Template, region: Region): Tiling {
  const size = sizeOf(job, template)
  const [across, down] = [tilesFor(size.width, region.width), tilesFor(size.height, region.height)]
  const cut = scaled(template.cut, POINTS[job.unit])
  const all = Array.from({ length: across * down }, (_, at): Tile => ({ row: Math.floor(at / across), column: at % across }))
  return { template, across, down, tiles: all.filter((tile) => areaOf(within(cut, boxOf(tile, region))) > 1) }
}

const scaled = (corners: readonly Spot[], scale: number): Spot[] => corners.map(([x, y]): Spot => [x * scale, y * scale])

const tilesFor = (long: number, room: number): number => (long <= room ? 1 : Math.ceil((long - OVERLAP) / (room - OVERLAP)))

/** A tile's box on the whole template, in points. */
const boxOf = ({ row, column }: Tile, { width, height }: Region): Region => ({
  x: column * (width - OVERLAP),
  y: row * (height - OVERLAP),
  width,
  height,
})

/** Top to the right; what was left of the way up is so still. */
function quarterTurned(template: Template): Template {
  const { height } = template
  const turn = ([x, y]: Spot): Spot => [height - y, x]
  const line = ({ from, to }: { readonly from: Spot; readonly to: Spot }): { from: Spot; to: Spot } => ({ from: turn(from), to: turn(to) })
  return {
    ...template,
    width: height,
    height: template.width,
    cut: template.cut.map(turn),
    finished: template.finished.map(turn),
    grain: line(template.grain),
    notches: template.notches.map(line),
    dots: template.dots.map(turn),
  }
}

/** A shape cut off at the sides of a box, one side after the other (Sutherland and Hodgman, 1974). */
function within(corners: readonly Spot[], { x, y, width, height }: Region): Spot[] {
  const sides: readonly ((spot: Spot) => number)[] = [([px]) => px - x, ([px]) => x + width - px, ([, py]) => py - y, ([, py]) => y + height - py]
  return sides.reduce<Spot[]>(
    (left, depth) => {
      return left.flatMap((spot, at): Spot[] => {
        const before = left.at(at - 1) as Spot
        const [from, to] = [depth(before), depth(spot)]
        const part = from / (from - to)
        const between: Spot = [before[0] + (spot[0] - before[0]) * part, before[1] + (spot[1] - before[1]) * part]
        return [...(from > 0 !== to > 0 ? [between] : []), ...(to > 0 ? [spot] : [])]
      })
    },
    [...corners],
  )
}

const areaOf = (corners: readonly Spot[]): number =>
  Math.abs(corners.reduce((sum, [x, y], at) => sum + x * (corners.at(at - 1) as Spot)[1] - (corners.at(at - 1) as Spot)[0] * y, 0)) / 2

const OVERVIEW = 150

/** How the sheets of a large template go together: small, with the tiles drawn over it. */
function overview(job: PrintJob, { template, across, down, tiles }: Tiling, region: Region, room: Region, shelf: Shelf): void {
  const { pages, unit } = job
  const whole = { width: across * (region.width - OVERLAP) + OVERLAP, height: down * (region.height - OVERLAP) + OVERLAP }
  const small = Math.min(OVERVIEW / whole.width, OVERVIEW / whole.height)
  const words = [template.name, ...countsOf(job, template), job.say.pages.sheetsToTape(tiles.length)]
  const lines = words.flatMap((text, at) => pages.breakLines(text, at === 0 ? STYLES.strong : STYLES.small, OVERVIEW))
  const high = whole.height * small + 8 + lines.length * STYLES.strong.lead
  makeRoom(job, room, shelf, OVERVIEW, high)
  const { x, y } = shelf
  pages.figure(job.say.pages.howSheetsGo(template.letter, down, across), (surface) => {
    for (const [at, tile] of tiles.entries()) {
      const box = boxOf(tile, region)
      const corner: Spot = [x + box.x * small, y + box.y * small]
      surface.path(polygon(boxAt(...corner, box.width * small, box.height * small)), { line: { colour: '#8a7d72', width: 0.5, dash: [2, 2] } })
      const middle: Spot = [corner[0] + 9, corner[1] + 9]
      surface.words({ text: String(at + 1), at: middle, size: 7, align: 'middle', face: 'text', colour: INK.soft })
    }
    const put = ([px, py]: Spot): Spot => [x + px * POINTS[unit] * small, y + py * POINTS[unit] * small]
    surface.path(polygon(template.cut.map(put)), { line: { colour: INK.ink, width: 0.8 } })
  })
  let foot = y + whole.height * small + 6
  words.forEach((text, at) => {
    const style = at === 0 ? STYLES.strong : STYLES.small
    const said = pages.breakLines(text, style, OVERVIEW)
    pages.tagged('P', () => pages.textBlock(said, style, x, foot))
    foot += said.length * style.lead
  })
  shelf.x += OVERVIEW + GAP
  shelf.high = Math.max(shelf.high, high)
}

function tiled(job: PrintJob, { template, across, down, tiles }: Tiling, region: Region, item: PdfOutline): void {
  tiles.forEach((tile, at) => {
    job.pages.newPage()
    if (at === 0) job.pages.bookmark(template.name, item)
    const place = job.say.pages.sheet(at + 1, tiles.length, [tile.row + 1, down], [tile.column + 1, across])
    foot(job, region, [template.name, ...countsOf(job, template).slice(0, 2), ...(tiles.length > 1 ? [place, job.say.pages.crossesOnCrosses] : [])])
    tileOn(job, template, region, tile, { across, down })
  })
}

function tileOn(job: PrintJob, template: Template, region: Region, tile: Tile, grid: Grid): void {
  const { pages, unit } = job
  const box = boxOf(tile, region)
  const frame = polygon(boxAt(region.x, region.y, region.width, region.height))
  pages.figure(`${alt(job, template)}; ${tile.row + 1} | ${tile.column + 1}`, (surface) => {
    surface.within(frame, () => outline(surface, template, [region.x - box.x, region.y - box.y], POINTS[unit]))
    joins(surface, region, tile, grid)
    const [middleX, middleY] = middleOf(within(scaled(template.cut, POINTS[unit]), box))
    letterOn(surface, template, [region.x - box.x + middleX, region.y - box.y + middleY])
  })
}

interface Grid {
  readonly across: number
  readonly down: number
}

/** Crosses in the middle of each band that two tiles share, and the line to which the next sheet reaches. */
function joins(surface: Surface, { x, y, width, height }: Region, { row, column }: Tile, { across, down }: Grid): void {
  const half = OVERLAP / 2
  const edge = (from: Spot, to: Spot): void => surface.path(polygon([from, to], false), { line: { colour: '#8a7d72', width: 0.5, dash: [2, 2] } })
  const uprights = [...(column > 0 ? [x] : []), ...(column < across - 1 ? [x + width - OVERLAP] : [])]
  const levels = [...(row > 0 ? [y] : []), ...(row < down - 1 ? [y + height - OVERLAP] : [])]
  for (const left of uprights) {
    edge([left, y], [left, y + height])
    edge([left + OVERLAP, y], [left + OVERLAP, y + height])
    for (const part of [0.25, 0.75]) cross(surface, [left + half, y + height * part])
  }
  for (const top of levels) {
    edge([x, top], [x + width, top])
    edge([x, top + OVERLAP], [x + width, top + OVERLAP])
    for (const part of [0.25, 0.75]) cross(surface, [x + width * part, top + half])
  }
}

function cross(surface: Surface, [x, y]: Spot): void {
  const line = { colour: INK.accent, width: 0.6 }
  surface.path(
    polygon(
      [
        [x - 8, y],
        [x + 8, y],
      ],
      false,
    ),
    { line },
  )
  surface.path(
    polygon(
      [
        [x, y - 8],
        [x, y + 8],
      ],
      false,
    ),
    { line },
  )
  surface.path(
    polygon([
      [x - 4, y],
      [x, y - 4],
      [x + 4, y],
      [x, y + 4],
    ]),
    { line },
  )
}
