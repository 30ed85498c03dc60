/**
 * Templates at their own size: 1 in on the page is 1 in of cloth.
 *
 * In      templates: the outline to cut and the outline to sew, in the measure's unit.
 * Out     small ones side by side; one larger than the sheet in tiles that overlap, with crosses to lay on each other. A test square on every sheet.
 * Exact   places are the templates' own, times the points of one unit; nothing is fitted.
 */
import type { Spot, Template } from '../../writing/booklet/values.ts'
import { count } from '../../writing/say.ts'
import { INK, STYLES } from '../ink.ts'
import type { Job } from '../job.ts'
import { POINTS } from '../paper.ts'
import { polygon, type Surface } from '../pen.ts'
import { squareNote, testSquare, testSquareSide } from '../testSquare.ts'
import { chapter } from '../titles.ts'

/** Most printers leave a quarter of an inch blank; half of one is safe. */
const EDGE = 36
const STRIP = 84
const GAP = 20
/** Two tiles share so much. */
const OVERLAP = 36

export function templatePages(job: Job): void {
  const { sheets, booklet } = job
  const { templates } = booklet
  if (templates.length === 0) return
  sheets.newSheet()
  const item = chapter(sheets, 'Templates, full size', 0)
  sheets.write(
    'Cut on the solid line, sew on the dashed line; the arrow lies along the grain. Match the short marks with those of the neighbours.',
    STYLES.body,
    { after: 8 },
  )
  const region = regionOf(job)
  foot(job, region)
  const shelf: Shelf = { x: region.x, y: sheets.top, high: 0 }
  for (const template of templates) {
    const size = sizeOf(job, template)
    if (size.width <= region.width && size.height + captionOf(job, template).height <= region.height) small(job, template, region, shelf, item)
    else tiled(job, template, region, shelf, item)
  }
  sheets.top = sheets.end
}

export function noTemplates(job: Job): void {
  chapter(job.sheets, 'Templates', 60)
  job.sheets.write('This block needs no templates: every patch is cut as a square, a rectangle or a triangle from strips.', STYLES.body)
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

function regionOf({ sheets }: Job): Region {
  const [width, height] = sheets.paper
  return { x: EDGE, y: EDGE, width: width - 2 * EDGE, height: height - EDGE - STRIP - 48 - EDGE / 2 }
}

const sizeOf = ({ unit }: Job, { width, height }: Template): { readonly width: number; readonly height: number } => ({
  width: width * POINTS[unit],
  height: height * POINTS[unit],
})

/** The test square and its words, under the templates of every sheet. */
function foot(job: Job, region: Region, more: readonly string[] = []): void {
  const { sheets, unit } = job
  const y = region.y + region.height + 8
  const side = testSquareSide(unit)
  const x = region.x + region.width - side - 1
  testSquare(sheets, x, y, unit)
  squareNote(sheets, x - 158, y + 14, 146)
  more.forEach((words, at) => {
    sheets.tagged('P', () => sheets.sayFitting(words, sheets.left, y + 16 + at * 13, at === 0 ? STYLES.strong : STYLES.small, x - 178 - sheets.left))
  })
}

interface Caption {
  readonly title: readonly string[]
  readonly body: readonly string[]
  readonly width: number
  readonly height: number
}

function captionOf(job: Job, template: Template): Caption {
  const { sheets } = job
  const width = Math.max(132, Math.min(230, sizeOf(job, template).width))
  const title = sheets.lines(`${template.letter}  ${template.name}`, STYLES.strong, width)
  const body = [...countsOf(job, template), ...template.sentences].flatMap((words) => sheets.lines(words, STYLES.small, width))
  return { title, body, width, height: 6 + title.length * STYLES.strong.lead + body.length * STYLES.small.lead }
}

function countsOf({ block }: Job, { counts }: Template): string[] {
  const names = new Map(block.fabrics.map(({ id, name }) => [id, name]))
  return counts.map(({ fabric, count: number, mirrored }) => {
    const turned = mirrored === 0 ? '' : number === 0 ? ', template turned over' : ` and ${mirrored} with the template turned over`
    return `Cut ${number === 0 ? mirrored : number} of ${names.get(fabric) ?? fabric}${turned}.`
  })
}

function small(job: Job, template: Template, region: Region, shelf: Shelf, item: ReturnType<typeof chapter>): void {
  const { sheets, unit } = job
  const size = sizeOf(job, template)
  const caption = captionOf(job, template)
  const [wide, high] = [Math.max(size.width, caption.width), size.height + caption.height]
  if (shelf.x > region.x && shelf.x + wide > region.x + region.width) {
    shelf.x = region.x
    shelf.y += shelf.high + GAP
    shelf.high = 0
  }
  if (shelf.y + high > region.y + region.height) {
    sheets.newSheet()
    foot(job, region)
    Object.assign(shelf, { x: region.x, y: region.y, high: 0 })
  }
  const { x, y } = shelf
  sheets.bookmark(`${template.letter} ${template.name}`, item)
  sheets.group('Sect', () => {
    sheets.figure(alt(template, unit), (surface) => outline(surface, template, [x, y], POINTS[unit]))
    sheets.tagged('P', () => sheets.block(caption.title, STYLES.strong, x, y + size.height + 5))
    sheets.tagged('P', () => sheets.block(caption.body, STYLES.small, x, y + size.height + 5 + caption.title.length * STYLES.strong.lead))
  })
  shelf.x += wide + GAP
  shelf.high = Math.max(shelf.high, high)
}

const alt = ({ letter, name, width, height }: Template, unit: string): string =>
  `Template ${letter}, ${name}, at its own size: ${Math.round(width * 1000) / 1000} by ${Math.round(height * 1000) / 1000} ${unit} with its seam allowances`

function outline(surface: Surface, template: Template, [x, y]: Spot, scale: number): void {
  const put = ([px, py]: Spot): Spot => [x + px * scale, y + py * scale]
  surface.path(polygon(template.cut.map(put)), { line: { colour: INK.ink, width: 0.8 } })
  surface.path(polygon(template.finished.map(put)), { line: { colour: INK.soft, width: 0.7, dash: [4, 2.5] } })
  for (const { from, to } of template.notches) surface.path(polygon([put(from), put(to)], false), { line: { colour: INK.ink, width: 1.1 } })
  grain(surface, put(template.grain.from), put(template.grain.to))
  const middle = put(middleOf(template.finished))
  surface.words({ text: template.letter, at: [middle[0], middle[1]], size: 15, align: 'middle', face: 'strong', colour: INK.ink, ground: INK.white })
}

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

function tiled(job: Job, template: Template, region: Region, shelf: Shelf, item: ReturnType<typeof chapter>): void {
  const size = sizeOf(job, template)
  const across = tilesFor(size.width, region.width)
  const down = tilesFor(size.height, region.height)
  const caption = [`${template.letter}  ${template.name}`, ...countsOf(job, template)]
  for (let row = 0; row < down; row += 1)
    for (let column = 0; column < across; column += 1) {
      job.sheets.newSheet()
      if (row === 0 && column === 0) job.sheets.bookmark(caption[0] as string, item)
      const tile = `Sheet ${row * across + column + 1} of ${across * down}: row ${row + 1}, column ${column + 1} of ${count(down, 'row')} and ${count(across, 'column')}`
      const how = across * down > 1 ? [tile, 'Lay each sheet on the one before it until the crosses lie on each other; then tape.'] : []
      foot(job, region, [...caption.slice(0, 3), ...how])
      tileOn(job, template, region, { row, column, across, down })
    }
  Object.assign(shelf, { x: region.x, y: region.y + region.height + 1, high: 0 })
}

const tilesFor = (long: number, room: number): number => (long <= room ? 1 : Math.ceil((long - OVERLAP) / (room - OVERLAP)))

interface Tile {
  readonly row: number
  readonly column: number
  readonly across: number
  readonly down: number
}

function tileOn({ sheets, unit }: Job, template: Template, region: Region, tile: Tile): void {
  const at: Spot = [region.x - tile.column * (region.width - OVERLAP), region.y - tile.row * (region.height - OVERLAP)]
  const { x, y, width, height } = region
  const frame = polygon([
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ])
  sheets.figure(`${alt(template, unit)}; part in row ${tile.row + 1}, column ${tile.column + 1}`, (surface) => {
    surface.within(frame, () => outline(surface, template, at, POINTS[unit]))
    joins(surface, region, tile)
  })
}

/** Crosses in the middle of each band that two tiles share, and the line to which the next sheet reaches. */
function joins(surface: Surface, { x, y, width, height }: Region, { row, column, across, down }: Tile): void {
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
