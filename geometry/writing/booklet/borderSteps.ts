/**
 * Borders: sides first, then top and bottom, corner squares sewn to their ends before.
 *
 * In      the booklet context: report and block, with lengths in the unit of measure (in or cm).
 * Out     two steps a border.
 * Source  measured through the middle [S128], sides first.
 */
import { tidy } from '../../exact/lengths.ts'
import { message } from '../../values/messages.ts'
import type { Join } from '../../values/report.ts'
import { type BookletContext, type MeasuredPatch, patchesIn } from './bookletContext.ts'
import { boundsOf, plus, withRawEdge } from './pieceDrawing.ts'
import type { SewingDraft } from './draftStep.ts'
import { matchingClauses, meetingsAlong } from './matchingPoints.ts'
import { Sketch } from './sketch.ts'
import type { Drawing, Spot } from './values.ts'

interface Pair {
  readonly what: 'sides' | 'top and bottom'
  /** From the inside, from 0. */
  readonly border: number
  readonly joins: readonly Join[]
}

export function borderSteps(context: BookletContext): SewingDraft[] {
  const pairs = pairsOf(context)
  const many = pairs.some(({ border }) => border > 0)
  return pairs.map((pair) => borderStep(pair, many, context))
}

/** Strips of one border are sewn left, right, top, bottom: a left one begins the next border. */
function pairsOf(context: BookletContext): Pair[] {
  const pairs: { what: Pair['what']; border: number; joins: Join[] }[] = []
  let border = -1
  for (const join of context.report.joins) {
    if (join.stage !== 'border') continue
    const names = newPatches(join, context).map(({ name }) => name)
    const sides = names.length === 1 && (names[0] === 'left' || names[0] === 'right')
    if (names.includes('left') && sides) border += 1
    const what = sides ? 'sides' : 'top and bottom'
    const last = pairs.at(-1)
    if (last?.what === what && last.border === border) last.joins.push(join)
    else pairs.push({ what, border, joins: [join] })
  }
  return pairs
}

/** The border's own patches on the sides of a join: a strip, a corner square, or a strip with its squares on. */
function newPatches(join: Join, context: BookletContext): MeasuredPatch[] {
  return join.sides.flatMap((side) => {
    const patch = context.patches.get(side)
    if (patch !== undefined) return patch.unit === null ? [patch] : []
    const patches = patchesIn(context, side)
    return patches.length <= 3 && patches.every(({ unit }) => unit === null) ? patches : []
  })
}

function borderStep(pair: Pair, many: boolean, context: BookletContext): SewingDraft {
  const { what, border, joins } = pair
  const last = joins.at(-1) as Join
  const strips = joins.flatMap((join) => newPatches(join, context))
  const squares = [...new Map(strips.filter(({ name }) => !PLAIN.has(name)).map((patch) => [patch.id, patch])).values()]
  const words = context.say.join
  const down = what === 'sides'
  const match = alongStrips(joins, context)
  return {
    keys: [`border:${border + 1}:${down ? 'sides' : 'ends'}`],
    heading: message('step-border', { border: many ? border + 1 : null, part: down ? 'sides' : 'ends' }),
    sentences: [
      ...measuring(pair, strips, context),
      ...(squares.length === 0 ? [] : [cornerSentence(squares, context)]),
      words.pinStrips(match),
      pressedOut(joins, context) ? words.pressBorder : words.pressAsArrows,
      ...(last.unfinished === null ? [] : [words.shouldMeasure(words.theBlock, context.size(last.unfinished))]),
    ],
    drawings: [borderPicture(joins, down, context)],
    cautions: ['needle', 'iron'],
    count: 1,
    joins: joins.map(({ id }) => id),
    units: [],
    cut: [],
  }
}

/** Strips are sewn one by one: what is alike along each is said once. */
function alongStrips(joins: readonly Join[], context: BookletContext): string[] {
  const match = (ids: readonly string[]): string[] => matchingClauses(meetingsAlong(context, ids), context)
  const [first, ...others] = joins.map(({ id }) => match([id]))
  if (first !== undefined && first.length > 0 && others.length > 0 && others.every((one) => one.join() === first.join()))
    return [context.say.join.alongEach(first[0] as string), ...first.slice(1)]
  return match(joins.map(({ id }) => id))
}

/** Where corner squares follow, top and bottom are as long as the piece was wide before its sides went on: both ways are measured then. */
function measuring({ what, border, joins }: Pair, strips: readonly MeasuredPatch[], context: BookletContext): string[] {
  const down = what === 'sides'
  const cornered = context.block.borders?.[border]?.corner !== undefined
  const words = context.say.join
  const fabrics = [...new Set(strips.filter(({ name }) => PLAIN.has(name)).map(({ fabric }) => context.fabric(fabric)))]
  const exactly = stripLength(joins, context, down)
  const length = exactly === null ? null : context.one(exactly)
  if (cornered && !down) return [words.cutToMeasured(length, fabrics)]
  return [words.measureThrough({ down, length, fabrics }), ...(cornered ? [words.measureOtherWay] : [])]
}

function cornerSentence(squares: readonly MeasuredPatch[], context: BookletContext): string {
  const own = new Set(squares.map(({ id }) => id))
  const cloth = [...new Set(squares.map(({ fabric }) => context.fabric(fabric)))]
  const joins = context.report.joins.filter(({ sides }) => sides.some((side) => own.has(side)))
  const toStrip = joins.every(({ sides, press }) => press.toward !== 'open' && !own.has(sides[press.toward]))
  const toSquare = joins.every(({ sides, press }) => press.toward !== 'open' && own.has(sides[press.toward]))
  return context.say.join.cornerSquares(cloth, toStrip ? 'strips' : toSquare ? 'squares' : null)
}

const PLAIN: ReadonlySet<string> = new Set(['left', 'right', 'top', 'bottom'])

/** The length of a strip without corner squares, unfinished. */
function stripLength(joins: readonly Join[], context: BookletContext, down: boolean): number | null {
  const strip = joins.flatMap((join) => newPatches(join, context)).find(({ name }) => PLAIN.has(name))
  if (strip === undefined) return null
  const { left, right, top, bottom } = boundsOf(strip.corners)
  return tidy((down ? bottom - top : right - left) + 2 * context.seam)
}

function pressedOut(joins: readonly Join[], context: BookletContext): boolean {
  return joins.every((join) => {
    if (join.press.toward === 'open') return false
    const side = join.sides[join.press.toward]
    return patchesIn(context, side).every(({ unit }) => unit === null)
  })
}

function borderPicture(joins: readonly Join[], down: boolean, context: BookletContext): Drawing {
  const strips = new Map(joins.flatMap((join) => newPatches(join, context)).map((patch) => [patch.id, patch]))
  const all = patchesIn(context, (joins.at(-1) as Join).id)
  const inner = all.filter(({ id }) => !strips.has(id))
  const box = boundsOf(inner.flatMap(({ corners }) => corners))
  const far = Math.max(box.right - box.left, box.bottom - box.top) * 0.06 + context.seam * 2
  const sketch = new Sketch()
  for (const { patch, outline } of withRawEdge(inner, context.seam)) sketch.area(outline, patch.fabric)
  for (const patch of strips.values()) {
    const { left, top } = boundsOf(patch.corners)
    const way: Spot = down ? [left < box.left ? -1 : 1, 0] : [0, top < box.top ? -1 : 1]
    sketch.area(
      (withRawEdge([patch], context.seam)[0]?.outline ?? []).map((spot) => plus(spot, way, far)),
      patch.fabric,
    )
  }
  for (const join of joins) {
    const patch = newPatches(join, context).find(({ name }) => PLAIN.has(name))
    const toBlock = join.sides.some((side) => patchesIn(context, side).some(({ unit }) => unit !== null))
    if (patch === undefined || !toBlock || join.press.toward === 'open') continue
    const { left, top, right, bottom } = boundsOf(patch.corners)
    const way: Spot = down ? [left < box.left ? -1 : 1, 0] : [0, top < box.top ? -1 : 1]
    const edge: Spot = down ? [way[0] < 0 ? box.left : box.right, (top + bottom) / 2] : [(left + right) / 2, way[1] < 0 ? box.top : box.bottom]
    const out = patchesIn(context, join.sides[join.press.toward]).every(({ unit }) => unit === null)
    const [near, away] = [plus(edge, way, -far * 0.3), plus(edge, way, far * 0.95)]
    sketch.arrow(out ? near : away, out ? away : near)
  }
  return sketch.drawing(context.say.join.pictures.border(down), far / 3)
}
