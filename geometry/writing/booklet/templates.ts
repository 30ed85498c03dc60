import { type BookletContext, type MeasuredPatch, grouped } from './bookletContext.ts'
import {
  centreOf,
  cross,
  dot,
  type BoundingBox,
  boundsOf,
  grownBy,
  vectorLength,
  meeting,
  midpoint,
  minus,
  movedSide,
  outward,
  plus,
  shared,
  polygonSides,
  type LineSegment,
  unitVector,
} from './pieceDrawing.ts'
import { Sketch, tidyPlace } from './sketch.ts'
import type { Spot, Template } from './values.ts'

/** A template for each different shape that no strip, square or triangle gives. */
export function templatesOf(context: BookletContext): Template[] {
  const patches = [...context.patches.values()].filter((patch) => wantsTemplate(patch, context))
  const beside = neighbourFinder([...context.patches.values()])
  const shapes = new Map<string, { first: MeasuredPatch; cloth: Map<string, { count: number; mirrored: number }>; letters: Set<string> }>()
  for (const patch of patches) {
    const [own, over] = [shapeKey(patch.corners), shapeKey(mirror(patch.corners))]
    const key = shapes.has(own) || !shapes.has(over) ? own : over
    const shape = shapes.get(key) ?? { first: patch, cloth: new Map(), letters: new Set<string>() }
    shapes.set(key, shape)
    const counts = shape.cloth.get(patch.fabric) ?? { count: 0, mirrored: 0 }
    shape.cloth.set(patch.fabric, counts)
    if (key === own) counts.count += 1
    else counts.mirrored += 1
    shape.letters.add(context.variantOf.get(patch.unit as string)?.label ?? '')
  }
  return [...shapes].map(([key, { first, cloth, letters }]) =>
    templateOf(
      context,
      key,
      first,
      [...cloth].map(([fabric, counts]) => ({ fabric, ...counts })),
      [...letters].join(', '),
      beside(first),
    ),
  )
}

/** Rectangles, and the triangles that a square gives, need none. */
function wantsTemplate(patch: MeasuredPatch, context: BookletContext): boolean {
  const variant = patch.unit === null ? undefined : context.variantOf.get(patch.unit)
  if (variant === undefined) return false
  const { kind, method } = variant.row
  if (kind === 'polygon') return !isUprightBox(patch.corners)
  if (kind === 'half-rectangle') return true
  return kind === 'cornered' && method === 'plain' && patch.name === 'centre' && patch.corners.length > 4
}

const NEAR = 1e-6

/** Whether a shape is a rectangle that stands upright on the grid. */
export function isUprightBox(corners: readonly Spot[]): boolean {
  return corners.length === 4 && polygonSides(corners).every(([a, b]) => Math.abs(a[0] - b[0]) < NEAR || Math.abs(a[1] - b[1]) < NEAR)
}

const mirror = (corners: readonly Spot[]): Spot[] => corners.map(([x, y]): Spot => [-x, y]).reverse()

/** The same for a shape however it is turned: sides and turns from corner to corner, begun where that reads least. */
function shapeKey(corners: readonly Spot[]): string {
  const sides = polygonSides(corners)
  const words = sides.map(([a, b], index) => {
    const [, next] = sides[(index + 1) % sides.length] as LineSegment
    const [one, other] = [minus(b, a), minus(next, b)]
    return `${vectorLength(one).toFixed(4)}~${(cross(one, other) / (vectorLength(one) * vectorLength(other))).toFixed(4)}~${Math.sign(dot(one, other)).toFixed(0)}`
  })
  return words.map((_, index) => [...words.slice(index), ...words.slice(0, index)].join(' ')).sort()[0] as string
}

type Beside = (patch: MeasuredPatch) => readonly MeasuredPatch[]

/** Patches that touch a patch's box. */
function neighbourFinder(patches: readonly MeasuredPatch[]): Beside {
  const boxes = patches.map((patch) => ({ patch, ...boundsOf(patch.corners) }))
  return (own) => {
    const { left, right, top, bottom } = boundsOf(own.corners)
    return boxes
      .filter(
        (box) => box.patch !== own && box.left <= right + NEAR && box.right >= left - NEAR && box.top <= bottom + NEAR && box.bottom >= top - NEAR,
      )
      .map(({ patch }) => patch)
  }
}

function templateOf(
  context: BookletContext,
  key: string,
  patch: MeasuredPatch,
  counts: Template['counts'],
  letter: string,
  beside: readonly MeasuredPatch[],
): Template {
  const outline = cutOutline(patch.corners, context.seam, beside)
  const { left, top, right, bottom } = boundsOf(outline)
  const moved = (spot: Spot): Spot => [tidyPlace(spot[0] - left), tidyPlace(spot[1] - top)]
  const grain = grainArrow(patch, context)
  const finished = patch.corners.map(moved)
  const cut = outline.map(moved)
  const notches = notchesOf(patch, beside, context.seam).map(([from, to]) => ({ from: moved(from), to: moved(to) }))
  const arrow = { from: moved(grain[0]), to: moved(grain[1]) }
  const words = context.say.book
  const row = context.variantOf.get(patch.unit as string)?.row
  const name = words.template(letter, row === undefined ? '' : context.say.kind(row, 1))
  const dots = wantsDots(patch, context) ? finished : []
  const [width, height] = [tidyPlace(right - left), tidyPlace(bottom - top)]
  return {
    key: `template:${patch.unit ?? key}:${patch.name}`,
    letter,
    name,
    counts,
    width,
    height,
    finished,
    cut,
    grain: arrow,
    notches,
    dots,
    drawing: picture(context, patch, name, cut, finished, arrow, notches, letter),
    sentences: [
      ...counts.map(({ fabric, count: plain, mirrored }) => words.cutWithTemplate(context.fabric(fabric), plain, mirrored)),
      words.howToCutTemplate(context.seamText, notches.length > 0),
      ...(dots.length > 0 ? [words.markCornerDots] : []),
    ],
  }
}

/** Where seams start and stop: at the ends of a half rectangle's seam, and at every corner where some seam of the block bends. */
const wantsDots = ({ unit }: MeasuredPatch, { report, variantOf }: BookletContext): boolean =>
  variantOf.get(unit ?? '')?.row.kind === 'half-rectangle' || report.joins.some(({ kind }) => kind === 'set-in')

function picture(
  context: BookletContext,
  { fabric }: MeasuredPatch,
  name: string,
  cut: readonly Spot[],
  finished: readonly Spot[],
  grain: Template['grain'],
  notches: Template['notches'],
  letter: string,
) {
  const sketch = new Sketch()
  sketch.area(cut, fabric, 'right', 'cut')
  sketch.line(finished, 'seam', true)
  for (const { from, to } of notches) sketch.line([from, to], 'marked')
  sketch.arrow(grain.from, grain.to, 'grain')
  sketch.text(plus(centreOf(finished), unitVector(turned(minus(grain.to, grain.from))), vectorLength(minus(grain.to, grain.from)) * 0.15), letter)
  return sketch.drawing(context.say.book.templatePicture(name, notches.length > 0), 0.1)
}

const turned = ([x, y]: Spot): Spot => [-y, x]

/** The outline to cut by: mitred, tips trimmed to match the ears of the neighbours. */
export function cutOutline(corners: readonly Spot[], seam: number, beside: readonly MeasuredPatch[]): Spot[] {
  const sides = polygonSides(corners)
  const count = corners.length
  const box = boxLines(grownBy(boundsOf(corners), seam))
  return corners.flatMap((corner, index) => {
    const one = sides[(index + count - 1) % count] as LineSegment
    const other = sides[index] as LineSegment
    const [rawOne, rawOther] = [movedSide(one, seam), movedSide(other, seam)]
    const tip = meeting(rawOne, rawOther)
    if (tip === null) return [rawOther[0]]
    const inner = cross(minus(one[1], one[0]), minus(other[1], other[0])) < 0
    if (inner) return [tip]
    const ears = [...earLines(corner, one, 'end', beside, seam), ...earLines(corner, other, 'start', beside, seam)]
    return trimmedTip(corner, tip, rawOne, rawOther, [...ears, ...box])
  })
}

/** A line across a tip: what lies on the far side of it from the corner goes. */
type Across = readonly [Spot, Spot]

/** Patches round one corner that are looked at from one of them: ears pass from neighbour to neighbour. */
const MOST_ROUND = 12

/**
 * The lines by which a neighbour's ear ends beyond a corner, as they lie under the patch when both are laid right sides together: its raw edge, the
 * cloth it is cut from, and what its own next neighbour cuts it by.
 */
function earLines(
  corner: Spot,
  seamSide: LineSegment,
  at: 'start' | 'end',
  beside: readonly MeasuredPatch[],
  seam: number,
  more = MOST_ROUND,
): Across[] {
  for (const patch of beside) {
    const sides = polygonSides(patch.corners)
    const place = sides.findIndex((side) => shared(seamSide, side) !== null)
    if (place < 0) continue
    const along = sides[place] as LineSegment
    // The neighbour runs the other way along the seam.
    const mine = at === 'end' ? along[0] : along[1]
    if (vectorLength(minus(mine, corner)) > NEAR) continue
    const next = sides[(place + (at === 'end' ? sides.length - 1 : 1)) % sides.length] as LineSegment
    const others = beside.filter((one) => one !== patch)
    const further = more > 0 ? earLines(corner, next, at, others, seam, more - 1) : []
    const lines = [movedSide(next, seam), ...boxLines(grownBy(boundsOf(patch.corners), seam)), ...further]
    return lines.map(([a, b]) => [mirroredIn(a, seamSide), mirroredIn(b, seamSide)])
  }
  return []
}

function mirroredIn(spot: Spot, [a, b]: LineSegment): Spot {
  const along = unitVector(minus(b, a))
  const away = minus(spot, a)
  return plus(a, minus([2 * dot(away, along) * along[0], 2 * dot(away, along) * along[1]], away))
}

function boxLines({ left, top, right, bottom }: BoundingBox): Across[] {
  const corners: Spot[] = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ]
  return polygonSides(corners)
}

/** The tip cut by each line that crosses both of its raw edges, or ends within them. */
function trimmedTip(corner: Spot, tip: Spot, rawOne: LineSegment, rawOther: LineSegment, lines: readonly Across[]): Spot[] {
  const back = unitVector(minus(rawOne[0], rawOne[1]))
  const on = unitVector(minus(rawOther[1], rawOther[0]))
  // A small triangle at the tip stands for the corner; lines cut it down.
  const far = Math.min(vectorLength(minus(tip, rawOne[0])), vectorLength(minus(tip, rawOther[1])))
  const start: Spot[] = [plus(tip, back, far), tip, plus(tip, on, far)]
  const cut = lines.reduce<Spot[]>((shape, [a, b]) => {
    const side = Math.sign(cross(minus(b, a), minus(corner, a)))
    const inside = (spot: Spot): number => side * cross(unitVector(minus(b, a)), minus(spot, a))
    // A line that would take away more than the tip is no ear: the allowance beside both seams stays whole to their ends.
    if (inside(rawOne[1]) < -NEAR || inside(rawOther[0]) < -NEAR) return shape
    const kept = clippedOpen(shape, inside)
    return kept.length >= 2 && near(kept[0] as Spot, shape[0] as Spot) && near(kept.at(-1) as Spot, shape.at(-1) as Spot) ? kept : shape
  }, start)
  return plainer(cut.slice(1, -1), corner, vectorLength(minus(rawOne[1], corner)))
}

/** Of an allowance, what stays round the patch's own corner however its tip is cut. Beside the seams the whole allowance stays. */
const ROUND_CORNERS = 0.7

/** Few straight cuts instead of many: corners of the tip go while the cut keeps its distance from the patch's own corner. Its two ends stay. */
function plainer(way: readonly Spot[], corner: Spot, seam: number): Spot[] {
  const place = way.findIndex(
    (_, index) =>
      index > 0 && index < way.length - 1 && fromStretch(corner, [way[index - 1] as Spot, way[index + 1] as Spot]) >= seam * ROUND_CORNERS,
  )
  return place < 0 ? [...way] : plainer([...way.slice(0, place), ...way.slice(place + 1)], corner, seam)
}

function fromStretch(spot: Spot, [a, b]: LineSegment): number {
  const way = minus(b, a)
  const part = Math.max(0, Math.min(1, dot(minus(spot, a), way) / (dot(way, way) || 1)))
  return vectorLength(minus(spot, plus(a, way, part)))
}

const near = (a: Spot, b: Spot): boolean => vectorLength(minus(a, b)) < NEAR

/** The part of a way where a measure is not below nothing. */
function clippedOpen(way: readonly Spot[], inside: (spot: Spot) => number): Spot[] {
  return way.flatMap((spot, index) => {
    const here = inside(spot)
    const kept = here >= -NEAR ? [spot] : []
    const next = way[index + 1]
    if (next === undefined) return kept
    const there = inside(next)
    return here >= -NEAR === there >= -NEAR ? kept : [...kept, plus(spot, minus(next, spot), here / (here - there))]
  })
}

/** Along the side at the block's outside, else along one square to the grid, else along the longest. */
function grainArrow({ corners }: MeasuredPatch, context: BookletContext): LineSegment {
  const [wide, high] = context.report.block.finished
  const ranked = polygonSides(corners).map((side) => ({ side, rank: rankOf(side, wide, high), length: vectorLength(minus(side[1], side[0])) }))
  const best = ranked.reduce((a, b) => (b.rank > a.rank || (b.rank === a.rank && b.length > a.length + NEAR) ? b : a))
  return chordAlong(corners, best.side)
}

function rankOf([a, b]: LineSegment, wide: number, high: number): number {
  const upright = Math.abs(a[0] - b[0]) < NEAR
  const level = Math.abs(a[1] - b[1]) < NEAR
  if (!upright && !level) return 0
  const outside = upright ? Math.abs(a[0]) < NEAR || Math.abs(a[0] - wide) < NEAR : Math.abs(a[1]) < NEAR || Math.abs(a[1] - high) < NEAR
  return outside ? 2 : 1
}

/** The middle part of the longest stretch inside the patch that runs along a side. */
function chordAlong(corners: readonly Spot[], [a, b]: LineSegment): LineSegment {
  const along = unitVector(minus(b, a))
  const inward = outward(b, a)
  const deep = Math.max(...corners.map((corner) => dot(minus(corner, a), inward)))
  const chords = Array.from({ length: 15 }, (_, index) => chordAt(corners, plus(a, inward, (deep * (index + 1)) / 16), along)).filter(
    (chord) => chord !== null,
  )
  // Long, and well inside: a chord near an edge would lie on the seam line.
  const best = chords.reduce<LineSegment | null>(
    (one, other) => (one === null || vectorLength(minus(other[1], other[0])) > vectorLength(minus(one[1], one[0])) * 1.15 ? other : one),
    middleChord(chords),
  )
  const [from, to] = best ?? [a, b]
  const middle = midpoint(from, to)
  return [plus(middle, minus(from, middle), 0.6), plus(middle, minus(to, middle), 0.6)]
}

const middleChord = (chords: readonly LineSegment[]): LineSegment | null => chords[Math.floor(chords.length / 3)] ?? null

/** The longest stretch of a line inside a polygon. */
function chordAt(corners: readonly Spot[], at: Spot, along: Spot): LineSegment | null {
  const places = polygonSides(corners)
    .flatMap(([a, b]) => {
      const [here, there] = [cross(along, minus(a, at)), cross(along, minus(b, at))]
      if (here > 0 === there > 0) return []
      return [dot(along, minus(plus(a, minus(b, a), here / (here - there)), at))]
    })
    .sort((a, b) => a - b)
  let best: LineSegment | null = null
  for (let index = 0; index + 1 < places.length; index += 2) {
    const chord: LineSegment = [plus(at, along, places[index]), plus(at, along, places[index + 1])]
    if (best === null || vectorLength(minus(chord[1], chord[0])) > vectorLength(minus(best[1], best[0]))) best = chord
  }
  return best
}

/** From the seam line to the cutting line wherever a neighbour's corner lies within a side. */
function notchesOf({ corners }: MeasuredPatch, beside: readonly MeasuredPatch[], seam: number): LineSegment[] {
  const found = polygonSides(corners).flatMap((side) => {
    const along = unitVector(minus(side[1], side[0]))
    const length = vectorLength(minus(side[1], side[0]))
    const meets = beside
      .flatMap((patch) => patch.corners)
      .filter((corner) => {
        const away = minus(corner, side[0])
        const far = dot(away, along)
        return Math.abs(cross(along, away)) < NEAR && far > NEAR && far < length - NEAR
      })
    const places = grouped(meets, ([x, y]) => `${x.toFixed(4)} ${y.toFixed(4)}`)
    return [...places.values()].map((same): LineSegment => [same[0] as Spot, plus(same[0] as Spot, outward(...side), seam)])
  })
  return found
}
