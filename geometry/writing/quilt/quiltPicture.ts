/**
 * The quilt as a picture: places with their blocks and frames, sashing, strips and borders.
 *
 * In      the quilt context.
 * Out     marks in the measure's unit, from the first position's finished corner; or a drawing.
 */
import { cellOf } from '../../block/lengthsOf.ts'
import { roundsOf } from '../../cutting/finishing.ts'
import { toNumber } from '../../exact/rational.ts'
import type { Block } from '../../values/block.ts'
import { oneLine } from '../booklet/bookletContext.ts'
import { boxAt, Sketch } from '../booklet/sketch.ts'
import type { Drawing, PointMark, Spot } from '../booklet/values.ts'
import type { JointRow, PlaceRow, QuiltContext } from './quiltContext.ts'

interface Shown {
  /** Each position's number in its middle. */
  readonly numbered?: boolean
  /** Marks on the crossings between blocks. */
  readonly marks?: readonly { readonly at: Spot; readonly mark: PointMark }[]
}

/** The whole quilt as it will lie. */
export function quiltDrawing(context: QuiltContext, { numbered = false, marks = [] }: Shown = {}): Drawing {
  const sketch = new Sketch()
  const [w, h] = context.report.size.finished
  const outside = bordersWide(context) + (context.report.round === undefined ? 0 : context.report.gap)
  sketch.area(boxAt(-outside, -outside, w, h), null, 'right', 'none')
  drawBorders(sketch, context)
  drawRound(sketch, context)
  for (const joint of context.report.joints) drawStrip(sketch, context, joint)
  for (const place of context.places) drawPlace(sketch, context, place)
  drawCrossings(sketch, context)
  if (numbered) for (const place of context.places) sketch.text(positionMiddle(place), String(context.number.get(place.id)))
  for (const { at, mark } of marks) sketch.point(at, mark)
  return sketch.drawing(`${oneLine(context.quilt.name)}, the whole quilt${numbered ? ', each position with its number' : ''}.`, Math.max(w, h) * 0.01)
}

/** The middle of a position. */
export const positionMiddle = ({ origin, finished: [w, h] }: PlaceRow): Spot => [Number(origin[0]) + w / 2, Number(origin[1]) + h / 2]

/** What lies in a position: plain fabric, or a block as it is turned, with its frame. `bare` leaves the fabric out. */
export function drawPlace(sketch: Sketch, context: QuiltContext, place: PlaceRow, bare = false): void {
  const { finished, frame, content } = place
  const origin: Spot = [Number(place.origin[0]), Number(place.origin[1])]
  if (place.plain !== undefined) return sketch.area(boxAt(...origin, ...finished), bare ? null : place.plain)
  let [w, h] = content
  let [x, y] = [origin[0] + (finished[0] - w) / 2, origin[1] + (finished[1] - h) / 2]
  drawBlock(sketch, context, place, [x, y], bare)
  const strip = (left: number, top: number, wide: number, high: number, fabric: string): void =>
    sketch.area(boxAt(left, top, wide, high), bare ? null : fabric)
  for (const {
    fabric,
    finished: [across, down],
  } of frame) {
    if (across > 0) for (const left of [x - across, x + w]) strip(left, y, across, h, fabric)
    ;[x, w] = [x - across, w + 2 * across]
    if (down > 0) for (const top of [y - down, y + h]) strip(x, top, w, down, fabric)
    ;[y, h] = [y - down, h + 2 * down]
  }
}

function drawBlock(sketch: Sketch, { blocks }: QuiltContext, { block, turn }: PlaceRow, [left, top]: Spot, bare: boolean): void {
  const worn = blocks.get(block as string)
  if (worn === undefined) return
  const { laid } = worn.sewing
  const cell = toNumber(cellOf(worn.block))
  const border = toNumber(laid.depths.at(-1) ?? { n: 0n, d: 1n }) * cell
  const [w, h] = [toNumber(worn.finished[0]), toNumber(worn.finished[1])]
  for (const { corners, fabric } of laid.patches) {
    const outline = corners.map(([x, y]): Spot => {
      const at: Spot = [toNumber(laid.places.x(x)) * cell + border, toNumber(laid.places.y(y)) * cell + border]
      const [tx, ty] = turned(at, w, h, turn)
      return [tx + left, ty + top]
    })
    sketch.area(outline, bare ? null : fabric)
  }
}

function turned([x, y]: Spot, w: number, h: number, turn: number): Spot {
  return turn === 1 ? [h - y, x] : turn === 2 ? [w - x, h - y] : turn === 3 ? [y, w - x] : [x, y]
}

/** Whether a join stands upright. */
export const isUpright = ({ from, to }: JointRow): boolean => from[0] === to[0]

/** The strip of a join as it shows; nothing where fronts are sewn to fronts. */
export function drawStrip(sketch: Sketch, context: QuiltContext, joint: JointRow): void {
  const { gap, way } = context.report
  const fabric = way.join === 'whole' ? way.sash?.fabric : way.join === 'backing-over' ? null : way.fabric
  if (gap === 0 || fabric === undefined) return
  const [x, y] = [Number(joint.from[0]), Number(joint.from[1])]
  const long = joint.length - 2 * context.seam
  if (isUpright(joint)) sketch.area(boxAt(x - gap / 2, y, gap, long), fabric)
  else sketch.area(boxAt(x, y - gap / 2, long, gap), fabric)
}

/** Corner squares lie between the pieces of a pieced sash. */
function drawCrossings(sketch: Sketch, context: QuiltContext): void {
  const { gap, joints, way } = context.report
  const corner = way.sash?.corner
  if (corner === undefined || way.join !== 'whole') return
  for (const joint of joints) {
    const [x, y] = [Number(joint.from[0]), Number(joint.from[1])]
    for (const at of squaresAlong(joint.strip?.sash ?? [], gap, context.seam)) {
      if (isUpright(joint)) sketch.area(boxAt(x - gap / 2, y + at, gap, gap), corner)
      else sketch.area(boxAt(x + at, y - gap / 2, gap, gap), corner)
    }
  }
}

/** Where the squares between the pieces of a sash begin, from its start. */
function squaresAlong(pieces: readonly (readonly [number, number])[], gap: number, seam: number): number[] {
  let at = 0
  return pieces.slice(0, -1).map(([, length]) => {
    const begins = at + length - 2 * seam
    at = begins + gap
    return begins
  })
}

function drawRound(sketch: Sketch, context: QuiltContext): void {
  const { gap, way, size, round } = context.report
  const { sash } = way
  if (round === undefined || sash === undefined) return
  const borders = (context.quilt.borders ?? []).length === 0 ? 0 : bordersWide(context)
  const [w, h] = [size.finished[0] - 2 * borders, size.finished[1] - 2 * borders]
  sketch.area(boxAt(-gap, -gap, w, h), sash.fabric)
  if (sash.corner === undefined) return
  for (const [x, y] of [
    [-gap, -gap],
    [w - 2 * gap, -gap],
    [-gap, h - 2 * gap],
    [w - 2 * gap, h - 2 * gap],
  ] as const)
    sketch.area(boxAt(x, y, gap, gap), sash.corner)
  for (const joint of context.report.joints) {
    const [x, y, toX, toY] = [...joint.from, ...joint.to].map(Number) as [number, number, number, number]
    if (isUpright(joint) && y === 0) sketch.area(boxAt(x - gap / 2, -gap, gap, gap), sash.corner)
    if (isUpright(joint) && toY === h - 2 * gap) sketch.area(boxAt(x - gap / 2, toY, gap, gap), sash.corner)
    if (!isUpright(joint) && x === 0) sketch.area(boxAt(-gap, y - gap / 2, gap, gap), sash.corner)
    if (!isUpright(joint) && toX === w - 2 * gap) sketch.area(boxAt(toX, y - gap / 2, gap, gap), sash.corner)
  }
}

const bordersWide = ({ quilt }: QuiltContext): number =>
  roundsOf({ borders: quilt.borders ?? [] } as unknown as Block).reduce((sum, { finishedWidth }) => sum + finishedWidth, 0)

/** From the outside in: each border is covered by the next. */
function drawBorders(sketch: Sketch, context: QuiltContext): void {
  const { quilt, report } = context
  const rounds = roundsOf({ borders: quilt.borders ?? [] } as unknown as Block)
  const round = report.round === undefined ? 0 : report.gap
  let [x, y] = [-bordersWide(context) - round, -bordersWide(context) - round]
  let [w, h] = report.size.finished
  for (const { finishedWidth: wide, fabric, corners } of [...rounds].reverse()) {
    const inner = corners === undefined ? w : w - 2 * wide
    const from = corners === undefined ? x : x + wide
    for (const left of [x, x + w - wide]) sketch.area(boxAt(left, y + wide, wide, h - 2 * wide), fabric)
    for (const top of [y, y + h - wide]) sketch.area(boxAt(from, top, inner, wide), fabric)
    if (corners !== undefined)
      for (const left of [x, x + w - wide]) for (const top of [y, y + h - wide]) sketch.area(boxAt(left, top, wide, wide), corners)
    ;[x, y, w, h] = [x + wide, y + wide, w - 2 * wide, h - 2 * wide]
  }
}
