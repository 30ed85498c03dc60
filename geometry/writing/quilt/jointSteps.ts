/**
 * Joining the positions: one step and one picture for every join, in sewing order.
 *
 * In      the quilt context.
 * Out     steps that say which sides, which strips, what to mark, how to press; by the way of joining.
 * Source  narrow strips [S152][S229]; fronts joined, the backing closed by hand [S240][S247]; backings sewn together and folded over [S248]; zigzag and
 *         strips [S258]; a sash pressed toward itself [S305][S314]; marks on a long sash [S307].
 */
import { message } from '../../values/messages.ts'
import { inWords } from '../../words/englishPhrases.ts'
import { Sketch } from '../booklet/sketch.ts'
import type { Drawing, Spot } from '../booklet/values.ts'
import { listed, sayOne, saySize } from '../phrases.ts'
import { type QuiltStep, quiltStep } from './placeSteps.ts'
import { type JointRow, numbersOf, placesIn, type PlaceRow, positionsSaid, type QuiltContext } from './quiltContext.ts'
import { drawPlace, drawStrip, isUpright, positionMiddle } from './quiltPicture.ts'

/** A step for each join, or for those named. */
export function jointSteps(context: QuiltContext, only: ReadonlySet<string> | null = null): QuiltStep[] {
  return context.report.joints
    .filter(({ id }) => only === null || only.has(id))
    .map((joint) => {
      const sides = joint.sides.map((side) => placesIn(context, side)) as [string[], string[]]
      return quiltStep(
        `join:${joint.id}`,
        message('quilt-join', { sides: [numbersOf(context, sides[0]), numbersOf(context, sides[1])] }),
        [...WAYS[context.report.way.join](joint, context, sides), ...matching(joint, context)],
        [jointPicture(joint, context, sides)],
        ['needle', 'iron'],
      )
    })
}

type Sides = readonly [readonly string[], readonly string[]]
type Sentences = (joint: JointRow, context: QuiltContext, sides: Sides) => string[]

/** Where the side lies as the quilt lies on the table. */
const sideWord = (joint: JointRow, side: 0 | 1): string => (isUpright(joint) ? ['left', 'right'] : ['top', 'bottom'])[side] as string

const WAYS: Readonly<Record<QuiltContext['report']['way']['join'], Sentences>> = {
  whole: (joint, context, sides) => (joint.strip === null ? frontToFront(joint, context, sides) : withSash(joint, context, sides)),
  strips: withStrips,
  fronts: (joint, context, sides) => [
    ...frontToFront(joint, context, sides, 'the fronts alone; fold batting and backing out of the way'),
    'Lay the quilt face down. The two battings should meet edge to edge: trim any overlap, and tack them together loosely.',
    `Lay one backing flat over the join. Turn under ${context.seamText} of the other, lay it on top and sew it down by hand, ${sayOne(joint.length, context.unit)} of it. Don’t stitch through to the front.`,
    'Then finish the quilting across the loose edges if you like.',
  ],
  'backing-over': overTheFront,
  butted,
}

function frontToFront(joint: JointRow, context: QuiltContext, [one, other]: Sides, what = ''): string[] {
  const way = joint.press === null ? null : ([one, other] as const)[joint.press]
  return [
    `Lay ${positionsSaid(context, other)} on ${positionsSaid(context, one)}, right sides together, and pin${what === '' ? '' : ` ${what}`}.`,
    `Sew the ${sayOne(joint.length, context.unit)} seam.`,
    ...(way === null
      ? []
      : [`Press toward ${positionsSaid(context, way)}, ${isUpright(joint) ? 'to the' : 'toward the'} ${sideWord(joint, joint.press as 0 | 1)}.`]),
  ]
}

function withSash(joint: JointRow, context: QuiltContext, [one, other]: Sides): string[] {
  const { unit } = context
  const { sash = [], corners = 0, corner = null } = joint.strip ?? {}
  const { fabric = '', corner: square = '' } = context.report.way.sash ?? {}
  const strips = sash.map((size) => saySize(size, unit))
  const made =
    corners === 0
      ? [`Take a strip of ${context.fabric(fabric)} ${strips[0]}.`]
      : [
          `Sew the long strip together from ${inWords(sash.length, 'strip')} of ${context.fabric(fabric)}, ${listed([...new Set(strips)])}, with ${inWords(corners, 'corner square')} of ${context.fabric(square)} ${saySize(corner ?? [0, 0], unit)} between them. Press toward the strips.`,
        ]
  return [
    ...made,
    `Sew it between ${positionsSaid(context, one)} and ${positionsSaid(context, other)}: the ${sideWord(joint, 0)} side first. Press toward the strip.`,
  ]
}

function withStrips(joint: JointRow, context: QuiltContext, [one, other]: Sides): string[] {
  const { unit } = context
  const { front, cover, coverIs, batting = null } = joint.strip ?? {}
  const { fabric = '', coverFabric = fabric, close } = context.report.way
  if (front === undefined || cover === undefined) return []
  return [
    `Take a front strip of ${context.fabric(fabric)} ${saySize(front, unit)} and a cover strip of ${context.fabric(coverFabric)} ${saySize(cover, unit)}${coverIs === 'folded' ? ', folded in half lengthwise, wrong sides together' : ''}.`,
    `On ${positionsSaid(context, one)}, lay the front strip on the front, right sides together, and the cover strip on the back, raw edges level. Sew through everything at once.`,
    `Press both strips outward. Sew the other edge of the front strip alone to the front of ${positionsSaid(context, other)}, right sides together, through its batting and backing.`,
    ...(batting === null ? ['The two battings should just meet under the strip.'] : [`Lay a batting strip ${saySize(batting, unit)} in the gap.`]),
    `Lay the cover strip over the seam on the back${coverIs === 'flat' ? `, turn under ${context.seamText}` : ''} and ${close === 'hand' ? 'sew it down by hand' : 'stitch it down, or stitch in the ditch from the front so that the fold is caught'}.`,
  ]
}

function overTheFront(_: JointRow, context: QuiltContext, [one, other]: Sides): string[] {
  const { unit } = context
  const rim = context.report.way.width ?? (unit === 'in' ? '3/4' : '2')
  return [
    `Hold ${positionsSaid(context, one)} and ${positionsSaid(context, other)} with their backings facing each other, edges of the fronts level. Sew the backings together right along the raw edges of the fronts.`,
    `Open the blocks out. Fold each margin in half, raw edge to the seam, then over onto its own block: a rim ${rim} ${unit} wide on each side.`,
    'Topstitch along the folded edge of each rim.',
  ]
}

function butted(joint: JointRow, context: QuiltContext, [one, other]: Sides): string[] {
  const { unit } = context
  const { front, cover } = joint.strip ?? {}
  const { fabric = '', coverFabric = fabric } = context.report.way
  if (front === undefined || cover === undefined) return []
  const turned = unit === 'in' ? '1/4 in' : '0.6 cm'
  return [
    `Lay the trimmed edges of ${positionsSaid(context, one)} and ${positionsSaid(context, other)} side by side, touching, and join them with a wide zigzag.`,
    `Take a front strip of ${context.fabric(fabric)} ${saySize(front, unit)} and a cover strip of ${context.fabric(coverFabric)} ${saySize(cover, unit)}. Press under ${turned} along both long edges.`,
    'Centre one strip over the zigzag on the front and the other on the back, and stitch along both edges.',
  ]
}

/** Marks along the edges, and crossings that nest, don't, or want a pin. */
function matching(joint: JointRow, context: QuiltContext): string[] {
  const { unit } = context
  const there = context.report.meetings.filter((meeting) => meeting.joint === joint.id)
  const number = (verdict: string): number => there.filter((meeting) => meeting.verdict === verdict).length
  const said = (
    [
      ['nests', (n: number) => `${inWords(n, 'crossing nests', 'crossings nest')}`],
      ['clashes', (n: number) => `${inWords(n, 'crossing doesn’t nest', 'crossings don’t nest')}: pin on both sides`],
      ['open', (n: number) => `${inWords(n, 'crossing is', 'crossings are')} pressed open: pin through the seams`],
      ['pin', (n: number) => `pin ${inWords(n, 'crossing', 'crossings')}`],
      ['tip', (n: number) => `keep ${inWords(n, 'point', 'points')}: sew a thread’s width above`],
    ] as const
  ).flatMap(([verdict, words]) => (number(verdict) > 0 ? [words(number(verdict))] : []))
  const from = isUpright(joint) ? 'top' : 'left'
  return [
    ...(joint.marks.length === 0
      ? []
      : [
          `Mark both long edges ${listed(joint.marks.map((at) => sayOne(at + context.seam, unit)))} from the ${from} end, so that the joins on both sides lie level.`,
        ]),
    ...(said.length === 0 ? [] : [`As you pin: ${said.join('; ')}.`]),
  ]
}

function jointPicture(joint: JointRow, context: QuiltContext, sides: Sides): Drawing {
  const sketch = new Sketch()
  const places = sides.flat().map((id) => context.place.get(id) as PlaceRow)
  const far = Math.max(context.seam * 4, Math.max(...places.map(({ finished }) => Math.max(...finished))) * 0.06)
  const way: Spot = isUpright(joint) ? [far, 0] : [0, far]
  sides.forEach((side, index) => {
    const own = new Sketch()
    const inside = new Set(side)
    for (const earlier of context.report.joints)
      if (earlier.sides.every((one) => placesIn(context, one).every((id) => inside.has(id)))) drawStrip(own, context, earlier)
    for (const id of side) drawPlace(own, context, context.place.get(id) as PlaceRow)
    for (const id of side) own.text(positionMiddle(context.place.get(id) as PlaceRow), String(context.number.get(id)))
    sketch.add(own, index === 0 ? -way[0] : way[0], index === 0 ? -way[1] : way[1])
  })
  drawStrip(sketch, context, joint)
  const [x, y, toX, toY] = [...joint.from, ...joint.to].map(Number) as [number, number, number, number]
  sketch.line(
    [
      [x, y],
      [toX, toY],
    ],
    'stitch',
  )
  for (const at of joint.marks) {
    const [mx, my]: Spot = isUpright(joint) ? [x, y + at] : [x + at, y]
    sketch.line(
      isUpright(joint)
        ? [
            [mx - far / 2, my],
            [mx + far / 2, my],
          ]
        : [
            [mx, my - far / 2],
            [mx, my + far / 2],
          ],
      'marked',
    )
  }
  if (joint.press !== null) {
    const middle: Spot = [(x + toX) / 2, (y + toY) / 2]
    const sign = joint.press === 0 ? -1 : 1
    sketch.arrow(middle, [middle[0] + way[0] * sign, middle[1] + way[1] * sign])
  }
  return sketch.drawing(
    `${positionsSaid(context, sides[0])} and ${positionsSaid(context, sides[1])} before they are joined${joint.press === null ? '' : '; the arrow shows which way to press'}.`,
    far / 2,
  )
}
