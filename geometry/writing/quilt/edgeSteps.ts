/**
 * From the joined quilt to one that can be used and shown: sashing and borders round it, layers, quilting, binding or rim, label, hanging sleeve.
 *
 * In      the quilt context.
 * Out     a step each, where there is something to do.
 * Source  borders measured through the middle [S128]; backing and batting [S145]; binding [S139]; a rim all round [S250]; label low on the back [S348],
 *         what it says [S346]; a sleeve cut 8 1/2 in for shows [S342][S340][S337], 6 1/2 in under 30 in wide [S340], 2 in shorter than the quilt
 *         [S340][S341][S345], hems 1/4 in twice [S340][S338], 1 in below the binding [S342]. Centimetres are the inches rounded, from memory.
 */
import { borderRounds, layersFor, roundsOf } from '../../cutting/finishing.ts'
import { roundOf } from '../../block/lengthsOf.ts'
import { toNumber } from '../../exact/rational.ts'
import type { Block } from '../../values/block.ts'
import { message } from '../../values/messages.ts'
import { inWords } from '../../words/englishPhrases.ts'
import { bookletWords } from '../../words/booklet/bookletWords.ts'
import { layersText } from '../booklet/finishSteps.ts'
import { boxAt, Sketch } from '../booklet/sketch.ts'
import type { Drawing } from '../booklet/values.ts'
import { purchaseText, sayOne, saySize } from '../phrases.ts'
import { type QuiltStep, quiltStep } from './placeSteps.ts'
import type { QuiltContext } from './quiltContext.ts'
import { quiltDrawing } from './quiltPicture.ts'

/** Everything after the last join. */
export function edgeSteps(context: QuiltContext): QuiltStep[] {
  const whole = context.report.way.join === 'whole'
  return [
    ...(whole ? [...roundStep(context), ...borderStep(context), ...wholeSteps(context)] : []),
    edgeStep(context),
    labelStep(context),
    sleeveStep(context),
  ]
}

const finishing = (step: Parameters<typeof message<'quilt-finish'>>[1]['step']) => message('quilt-finish', { step })

function roundStep(context: QuiltContext): QuiltStep[] {
  const { round, way } = context.report
  if (round === undefined) return []
  const { unit } = context
  const corners =
    round.corners > 0
      ? `, with ${inWords(round.corners, 'corner square')} of ${context.fabric(way.sash?.corner ?? '')} in the corners and where the sashing ends`
      : ''
  const list = (pieces: readonly (readonly [number, number])[]): string => [...new Set(pieces.map((size) => saySize(size, unit)))].join('; ')
  return [
    quiltStep(
      'sash:round',
      finishing('sash'),
      [
        `For the sides, use strips ${list(round.sides)}; for top and bottom, strips ${list(round.topAndBottom)}${corners}.`,
        'Sew on the sides, then top and bottom, matching the seams. Press toward the sashing.',
      ],
      [],
      ['needle', 'iron'],
    ),
  ]
}

function borderStep(context: QuiltContext): QuiltStep[] {
  const { quilt, report, unit } = context
  const rounds = roundsOf({ borders: quilt.borders ?? [] } as unknown as Block)
  if (rounds.length === 0) return []
  const wide = rounds.reduce((sum, { finishedWidth }) => sum + 2 * finishedWidth, 0)
  const inner = report.size.finished.map((side) => side - wide) as unknown as readonly [number, number]
  const rows = borderRounds(inner, rounds, { seam: context.seam, round: 0 })
  return [
    quiltStep(
      'borders',
      finishing('borders'),
      [
        'Measure the quilt through its middle, not along its edges, before you cut each pair of strips.',
        ...rows.map(({ sides, topAndBottom, corners, becomes }, index) => {
          const which = rows.length > 1 ? `Border ${index + 1}: two` : 'Two'
          const squares = corners === null ? '' : `, with a corner square ${saySize(corners.size, unit)} on each end of the top and bottom strips`
          return `${which} side strips ${saySize(sides.size, unit)} and two top and bottom strips ${saySize(topAndBottom.size, unit)} of ${context.fabric(sides.fabric)}${squares}. The quilt should then measure ${saySize(becomes, unit)}.`
        }),
        'Press toward the border.',
      ],
      [quiltDrawing(context)],
      ['blade', 'needle', 'iron'],
    ),
  ]
}

function wholeSteps(context: QuiltContext): QuiltStep[] {
  const { report, unit, quilt } = context
  const rule = { seam: context.seam, round: toNumber(roundOf({ measure: quilt.measure } as Block)) }
  const { backing, batting, panels } = layersFor(report.size.raw, unit, 'home', report.cloth.usableWidth, rule)
  const pieced =
    panels.count === 1
      ? `The backing takes ${purchaseText(panels.buy, unit)} of fabric.`
      : `Sew the backing from ${inWords(panels.count, 'length')} of fabric, each ${sayOne(panels.length, unit)} long: ${purchaseText(panels.buy, unit)} in all. The seams run ${panels.seams === 'across' ? 'from side to side' : 'from top to bottom'}.`
  return [
    quiltStep(
      'layer',
      finishing('layer'),
      [
        'Press the top once more, and snip loose threads.',
        `Cut ${layersText(backing, batting, { say: bookletWords('en'), size: (size) => saySize(size, unit) })}. ${pieced}`,
        'Tape the backing down wrong side up, smooth but not stretched. Centre the batting on it, then the top, right side up.',
        'Pin or tack through all three layers, from the middle outward, about a hand’s width apart.',
      ],
      [],
      ['glue'],
    ),
    quiltStep(
      'quilt',
      finishing('quilt'),
      [
        `Work from the middle outward. Up to ${sayOne(report.underArm, unit)} of the quilt lies under the machine’s arm: roll it.`,
        'Stitch each block’s line as its picture shows, and along the seams between the blocks. Stitch on the low side of each seam.',
      ],
      [],
      ['needle'],
    ),
  ]
}

function edgeStep(context: QuiltContext): QuiltStep {
  const { report, unit } = context
  const { binding } = report
  if (binding === null)
    return quiltStep(
      'rim',
      finishing('rim'),
      [
        'At the edge of the quilt, fold the margin of the backing in half, raw edge to the edge of the front, then over onto the front.',
        'Fold a mitre in each corner, and topstitch all round.',
      ],
      [],
      ['needle'],
    )
  return quiltStep(
    'binding',
    finishing('binding'),
    [
      ...(report.way.join === 'whole'
        ? ['Trim backing and batting level with the top, with square corners.']
        : report.way.join === 'fronts'
          ? ['Trim the backing level with the front all round.']
          : []),
      `Cut ${inWords(binding.strips, 'strip')} ${sayOne(binding.width, unit)} wide across the fabric. Join them with slanting seams to make ${sayOne(Math.floor(binding.length), unit)}. Press the strip in half lengthwise, wrong sides together.`,
      'Sew it to the front along the raw edges, with a mitre at each corner. Fold it to the back and stitch it down.',
    ],
    [],
    ['blade', 'needle', 'iron'],
  )
}

const labelStep = (context: QuiltContext): QuiltStep =>
  quiltStep(
    'label',
    finishing('label'),
    [
      'Sew a label on the back, at the bottom right: the quilt’s name, who made it, where and when. You can add who it is for, and how to wash it.',
      `It should measure ${saySize(Math.max(...context.report.size.finished) < small(context) ? ([2, 4].map((side) => inUnit(side, context)) as unknown as readonly [number, number]) : [inUnit(3.25, context), inUnit(4, context)], context.unit)} or so.`,
    ],
    [],
  )

/** Inches, or the centimetres that stand for them. */
const inUnit = (inches: number, { unit }: QuiltContext): number => (unit === 'in' ? inches : Math.round(inches * 5.08) / 2)

/** A quilt narrower than this is small, for label and sleeve. */
const small = (context: QuiltContext): number => inUnit(30, context)
/** A quilt at least so wide hangs on a sleeve in two parts [S340]. */
const WIDE = 90

function sleeveStep(context: QuiltContext): QuiltStep {
  const { unit, report } = context
  const [wide] = report.size.raw
  const depth = inUnit(wide < small(context) ? 6.5 : 8.5, context)
  const finished = wide - inUnit(2, context)
  const cut = finished + 4 * inUnit(0.25, context)
  const two = wide > inUnit(WIDE, context)
  return quiltStep(
    'sleeve',
    finishing('sleeve'),
    [
      `To hang the quilt at a show, cut a strip ${saySize([depth, cut], unit)}${two ? ', in two halves, so that a hanger fits in the middle' : ''}. Many shows ask for a sleeve ${sayOne(inUnit(4, context), unit)} deep; ask yours.`,
      `Turn under ${sayOne(inUnit(0.25, context), unit)} twice at both ends and stitch. Sew the long edges together, wrong sides inside: a tube.`,
      `Pin it to the back ${sayOne(inUnit(1, context), unit)} below the top edge, centred. Push the tube up a little as you pin, so that the pole has room. Sew its top and bottom edges to the backing by hand, not through to the front.`,
    ],
    [sleevePicture(context, depth, finished)],
    ['needle'],
  )
}

function sleevePicture(context: QuiltContext, depth: number, length: number): Drawing {
  const sketch = new Sketch()
  const [w, h] = context.report.size.raw
  sketch.area(boxAt(0, 0, w, h), null, 'wrong', 'cut')
  sketch.area(boxAt((w - length) / 2, inUnit(1, context), length, (depth - 2 * inUnit(0.25, context)) / 2), null, 'right', 'seam')
  sketch.area(boxAt(w - inUnit(5, context), h - inUnit(4.25, context), inUnit(4, context), inUnit(3.25, context)), null, 'right', 'seam')
  return sketch.drawing('The back: the sleeve at the top, the label at the bottom right.', Math.max(w, h) * 0.03)
}
