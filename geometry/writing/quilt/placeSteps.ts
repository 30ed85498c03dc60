/**
 * Framing, layering and quilting what lies in each position; alike positions in one step.
 *
 * In      the quilt context.
 * Out     steps with pictures. Nothing is layered by position in a quilt that is quilted whole.
 * Source  framing like a border, sides first [S128]; an unquilted margin of 1 in [S155][S245]; all blocks of one batting [S280]; trimmed through all
 *         layers [S157]; ways of layering [S247][S248].
 */
import { tidy } from '../../exact/lengths.ts'
import { message, type QuiltTitle } from '../../values/messages.ts'
import { inEnglish } from '../../words/english.ts'
import { bookletWords } from '../../words/booklet/bookletWords.ts'
import { cautionLine } from '../booklet/cautions.ts'
import { boxAt, Sketch } from '../booklet/sketch.ts'
import { minus, plus, unitVector, vectorLength } from '../booklet/pieceDrawing.ts'
import type { BookletStep, Caution, Drawing, Spot } from '../booklet/values.ts'
import { count, listed, sayOne, saySize } from '../phrases.ts'
import { alike, blockName, numbersOf, type PlaceRow, type QuiltContext } from './quiltContext.ts'
import { drawPlace } from './quiltPicture.ts'

export interface QuiltStep extends BookletStep {
  readonly heading: QuiltTitle
}

/** A step of a quilt with its title in English. */
export function quiltStep(
  key: string,
  heading: QuiltTitle,
  sentences: readonly string[],
  drawings: readonly Drawing[],
  cautions: readonly Caution['about'][] = [],
): QuiltStep {
  return {
    key,
    heading,
    title: inEnglish(heading),
    sentences,
    drawings,
    cautions: cautions.map((about) => cautionLine(about, bookletWords('en'))),
    count: 1,
    joins: [],
    units: [],
    cut: [],
  }
}

const idsOf = (places: readonly PlaceRow[]): string[] => places.map(({ id }) => id)

/** How blocks are brought to the size of their positions. */
export function frameSteps(context: QuiltContext): QuiltStep[] {
  const groups = alike(context, ({ block, content, frame, unfinished }) => (frame.length === 0 ? null : { block, content, frame, unfinished }))
  return groups.map(({ key: { block, content, frame, unfinished }, places }) => {
    const { unit, seam } = context
    const rounds = frame.flatMap(({ fabric, sides, topAndBottom }) => {
      const name = context.fabric(fabric)
      const strips = [
        ...(sides === null ? [] : [`two side strips ${saySize(sides.size, unit)}`]),
        ...(topAndBottom === null ? [] : [`two strips ${saySize(topAndBottom.size, unit)} for top and bottom`]),
      ]
      return [`Cut ${listed(strips)} of ${name}${places.length > 1 ? ', for each block' : ''}.`]
    })
    const last = frame.at(-1) as (typeof frame)[number]
    const trimmed = last.becomes.some((side, axis) => side !== unfinished[axis])
    return quiltStep(
      `frame:${places[0]?.id}`,
      message('quilt-frame', { block: blockName(context, block as string), positions: numbersOf(context, idsOf(places)) }),
      [
        `Measure the block through the middle. It should be ${saySize([content[0] + 2 * seam, content[1] + 2 * seam], unit)}.`,
        ...rounds,
        `${frame.some(({ sides }) => sides !== null) ? 'Sew on the sides, then top and bottom' : 'Sew on top and bottom'}${frame.length > 1 ? ', one round after the other' : ''}. Press away from the block.`,
        trimmed
          ? `Trim it to ${saySize(unfinished, unit)}, the same off opposite sides.`
          : `The block should now measure ${saySize(unfinished, unit)}.`,
      ],
      [placePicture(context, places[0] as PlaceRow, 'The block in its frame.')],
      ['blade', 'needle', 'iron'],
    )
  })
}

function placePicture(context: QuiltContext, place: PlaceRow, title: string): Drawing {
  const sketch = new Sketch()
  drawPlace(sketch, context, place)
  return sketch.drawing(title, Math.max(...place.finished) * 0.02)
}

type Layers = NonNullable<PlaceRow['layers']>

/** How each position is layered before it is quilted. */
export function layerSteps(context: QuiltContext): QuiltStep[] {
  return alike(context, ({ layers }) => layers).map(({ key: layers, places }) => {
    const { unit } = context
    const each = places.length > 1 ? 'For each, cut' : 'Cut'
    return quiltStep(
      `layer:${places[0]?.id}`,
      message('quilt-layer', { positions: numbersOf(context, idsOf(places)) }),
      [
        `${each} batting ${saySize(layers.batting.cut, unit)} and backing ${saySize(layers.backing.cut, unit)}. Use one kind of batting for all blocks.`,
        'Lay the backing down wrong side up. Centre the batting on it, then the front, right side up.',
        'Pin or tack through all three layers, from the middle outward.',
        ...AFTER_LAYERING[context.report.way.join](layers, context),
      ],
      [layersPicture(layers, context)],
      ['blade', 'glue'],
    )
  })
}

const AFTER_LAYERING: Readonly<Record<QuiltContext['report']['way']['join'], (layers: Layers, context: QuiltContext) => string[]>> = {
  whole: () => [],
  strips: () => [],
  butted: () => [],
  fronts: (_, { seamText }) => [
    `Where another block will be joined, the batting ends ${seamText} inside the raw edge of the front, at the seam line. At the edge of the quilt it reaches the raw edge.`,
  ],
  'backing-over': ({ backing, front }, { unit }) => [
    `The backing sticks out ${sayOne((backing.cut[0] - front[0]) / 2, unit)} on every side. Leave it: it becomes the rim.`,
  ],
}

function layersPicture({ front, batting, backing }: Layers, context: QuiltContext): Drawing {
  const sketch = new Sketch()
  const centred = ([wide, high]: readonly [number, number]): Spot[] => boxAt(-wide / 2, -high / 2, wide, high)
  const layers = [
    { size: backing.cut, side: 'wrong' as const },
    { size: batting.cut, side: 'right' as const },
    { size: front, side: 'right' as const },
  ].sort((a, b) => b.size[0] * b.size[1] - a.size[0] * a.size[1])
  for (const { size, side } of layers) sketch.area(centred(size), null, side, 'cut')
  const said = `backing ${saySize(backing.cut, context.unit)}, batting ${saySize(batting.cut, context.unit)}, front ${saySize(front, context.unit)}`
  return sketch.drawing(`The layers, the largest at the bottom: ${said}.`, Math.max(...backing.cut) * 0.04)
}

/** The quilting line of each position, and what stays loose or is trimmed. */
export function quiltingSteps(context: QuiltContext): QuiltStep[] {
  const whole = context.report.way.join === 'whole'
  return alike(context, ({ block, plain, turn, frame, ditch, layers, finished }) => ({
    content: block ?? (plain === undefined ? '' : 'plain'),
    turn: block === undefined ? 0 : turn,
    frame,
    ditch,
    layers,
    finished,
  })).flatMap(({ key: { ditch, layers }, places }) => {
    const first = places[0] as PlaceRow
    if (whole && ditch.routes.length === 0) return []
    return [
      quiltStep(
        `quilt:${first.id}`,
        message('quilt-positions', { positions: numbersOf(context, idsOf(places)) }),
        [...stitching(context, first), ...(layers === null ? [] : trimming(layers, context))],
        [routePicture(context, first)],
        ['needle'],
      ),
    ]
  })
}

function stitching({ unit }: QuiltContext, { ditch, layers }: PlaceRow): string[] {
  const loose = layers?.loose ?? 0
  const stop = loose > 0 ? [`Stop ${sayOne(loose, unit)} inside the raw edge, at the dotted line. That edge stays loose for joining.`] : []
  const { length } = ditch.routes
  if (length === 0) return ['Quilt it as you like. A few straight lines or a loose wandering line will hold the layers.', ...stop]
  return [
    `Stitch along the seams: ${count(length, 'line')}, ${sayOne(tidy(ditch.length), unit)} of stitching${ditch.retraced > 0 ? `, ${sayOne(tidy(ditch.retraced), unit)} of it twice` : ''}.`,
    length === 1 ? 'Start at 1 and follow the arrows.' : 'Start at 1 and follow the arrows, then go on to the next number.',
    ...stop,
    'Secure both ends of every line.',
  ]
}

function trimming({ front, batting, backing }: Layers, context: QuiltContext): string[] {
  const { unit } = context
  const { join } = context.report.way
  if (join === 'strips' || join === 'butted') return [`Trim through all layers to ${saySize(front, unit)}, with square corners.`]
  if (join === 'fronts')
    return batting.cut.some((side, axis) => side !== batting.trim[axis])
      ? [`Trim the batting alone to ${saySize(batting.trim, unit)}. Leave the backing ${saySize(backing.trim, unit)}.`]
      : []
  return ['Don’t trim anything: the batting is level with the front, and the backing becomes the rim.']
}

/** Arrows on a line above which they would hide it. */
const MOST_ARROWS = 40

function routePicture(context: QuiltContext, place: PlaceRow): Drawing {
  const sketch = new Sketch()
  const { ditch, layers, finished } = place
  const left: Spot = [-Number(place.origin[0]), -Number(place.origin[1])]
  const still = new Sketch()
  drawPlace(still, context, place, true)
  sketch.add(still, ...left)
  const raw = context.seam
  const [w, h] = finished
  sketch.box(-raw, -raw, w + 2 * raw, h + 2 * raw, 'thin')
  const loose = (layers?.loose ?? 0) - raw
  if (loose > 0) sketch.box(loose, loose, w - 2 * loose, h - 2 * loose, 'marked')
  ditch.routes.forEach(({ points, closed }, index) => {
    const spots = points.map(([x, y]): Spot => [Number(x), Number(y)])
    sketch.line(spots, 'stitch', closed)
    const legs = spots.slice(1).map((to, at) => [spots[at] as Spot, to] as const)
    const every = Math.max(1, Math.ceil(legs.length / MOST_ARROWS))
    legs.forEach(([from, to], at) => {
      if (at % every !== 0) return
      const way = minus(to, from)
      const middle = plus(from, way, 0.45)
      sketch.arrow(middle, plus(middle, unitVector(way), Math.min(Math.max(w, h) * 0.06, vectorLength(way) * 0.3)), 'turn')
    })
    if (spots[0] !== undefined) sketch.point(spots[0], 'number', String(index + 1))
  })
  const stops = loose > 0 ? ' The dotted line shows where the quilting stops.' : ''
  return sketch.drawing(`The quilting line: numbers show where each line starts, arrows which way it runs.${stops}`, Math.max(w, h) * 0.03)
}
