/**
 * Triangles and hourglasses made from squares in pairs, action by action.
 *
 * In      a row of the report, its first variant, and the booklet context.
 * Out     one picture beside each thing to do.
 * Source  triangles [S37][S31][S24], hourglasses [S37].
 */
import { lightnessOf } from '../../../colour/lightness.ts'
import type { UnitRow } from '../../../values/report.ts'
import type { BookletContext, UnitVariant } from '../bookletContext.ts'
import { withRawEdge } from '../pieceDrawing.ts'
import { Sketch } from '../sketch.ts'
import { restingPatches } from '../unitPictures.ts'
import type { Drawing, StepAction } from '../values.ts'
import { cutSize } from './cutSizes.ts'
import { type PairWay, pairApart, pairPicture, topHalves, topSquare } from './pairPictures.ts'

type Actions = (row: UnitRow, variant: UnitVariant, context: BookletContext) => StepAction[]

const twoFabrics = ({ row, first }: UnitVariant): [string, string] => {
  const names = row.kind === 'hourglass' ? ['top', 'right'] : ['upper', 'lower']
  return names.map((name) => first.fabrics[name] as string) as [string, string]
}

/** The lighter of two fabrics shows a pencil line best. */
const lighterOf = ({ colour }: BookletContext, [one, other]: readonly [string, string]): string =>
  lightnessOf(colour(one)) >= lightnessOf(colour(other)) ? one : other

function pairing(row: UnitRow, [one, other]: readonly [string, string], { fabric, say }: BookletContext): string {
  return say.units.pairSquares({ pairs: row.goes, one: fabric(one), other: fabric(other), makes: row.count + row.spare, spare: row.spare })
}

const drawnOn = (cloth: readonly [string, string], context: BookletContext): string | null =>
  cloth[0] === cloth[1] ? null : context.fabric(lighterOf(context, cloth))

/** Laid and drawn, sewn, cut apart. */
function triangles(way: PairWay, each: number): Actions {
  return (row, variant, context) => {
    const { units: words } = context.say
    const cloth = twoFabrics(variant)
    const top = topSquare(cutSize(context, row), lighterOf(context, cloth))
    const drawn = drawnOn(cloth, context)
    const draw = { 'one line': words.drawOneLine(drawn, row.goes), 'two lines': words.drawTwoLines(drawn, row.goes), 'all round': '' }[way]
    const sew = { 'one line': words.sewBesideLine, 'two lines': words.sewBesideLines, 'all round': words.sewAllRound }[way](context.seamText)
    const cut = { 'one line': words.cutOnLine, 'two lines': words.cutMiddleAndLines, 'all round': words.cutBothWays }[way]
    const { pictures } = words
    const first = [...(draw === '' ? [] : [draw]), pairing(row, cloth, context)]
    const cutting = [cut, ...(row.goes === 1 ? [] : [words.eachPairMakes(each)])]
    const apart = { sentences: cutting, drawings: [pairApart(top, way, context, pictures.pairCut)] }
    if (way === 'all round') return [{ sentences: [...first, sew], drawings: [pairPicture(top, way, 'sewn', context, pictures.pairRound)] }, apart]
    const drawing = pairPicture(top, way, 'drawn', context, way === 'one line' ? pictures.pair : pictures.pairLines)
    return [
      { sentences: first, drawings: [drawing] },
      { sentences: [sew], drawings: [pairPicture(top, way, 'sewn', context, pictures.pairSewn)] },
      apart,
    ]
  }
}

/** Two at a time; four at a time, sewn all round; eight at a time. */
export const twoTriangles = triangles('one line', 2)
export const fourTriangles = triangles('all round', 4)
export const eightTriangles = triangles('two lines', 8)

/** Two hourglasses from two squares, one of each hand. */
export const hourglasses: Actions = (row, variant, context) => {
  const { units: words } = context.say
  const { pictures } = words
  const size = cutSize(context, row)
  const cloth = twoFabrics(variant)
  // What is left of the squares after one seam.
  const halves = topHalves(size - Math.SQRT2 * context.seam, cloth)
  const sewn: Drawing = pairPicture(halves, 'one line', 'sewn', context, pictures.crossedSewn)
  return [
    ...twoTriangles(row, variant, context).map((action, at) =>
      at < 2 ? action : { ...action, sentences: [...action.sentences, words.pressHalves(halvesToward(variant, context))] },
    ),
    { sentences: [words.crossHalves], drawings: [pairPicture(halves, 'one line', 'drawn', context, pictures.crossed)] },
    { sentences: [words.sewBesideLine(context.seamText), words.cutOnLine], drawings: [sewn] },
    { sentences: [words.twoHands(row.spare > 0)], drawings: [twoHands(variant, context)] },
  ]
}

/** As the plan presses the short seams; both halves alike, so that they nest where they cross. Null: any fabric, but the same. */
function halvesToward({ seams, first }: UnitVariant, context: BookletContext): string | null {
  const ways = new Set(
    seams.slice(0, 2).map(({ sides, toward }) => {
      if (toward === 'open') return null
      const cloth = new Set(sides[toward].map((name) => first.fabrics[name] as string))
      return cloth.size === 1 ? ([...cloth][0] as string) : null
    }),
  )
  const [way] = ways
  return ways.size === 1 && way !== null && way !== undefined ? context.fabric(way) : null
}

/** The unit with its letter, and the other one that its squares make: its mirror image. */
function twoHands(variant: UnitVariant, context: BookletContext): Drawing {
  const sketch = new Sketch()
  const flipped: UnitVariant = {
    ...variant,
    first: { ...variant.first, mirror: !('mirror' in variant.first && variant.first.mirror === true) } as UnitVariant['first'],
  }
  const apart = variant.row.finished[0] + context.seam * 5
  for (const [place, one] of [variant, flipped].entries())
    for (const { patch, outline } of withRawEdge(restingPatches(one, context), context.seam))
      sketch.area(
        outline.map(([x, y]) => [x + place * apart, y]),
        patch.fabric,
      )
  return sketch.drawing(context.say.units.pictures.hands, context.seam)
}
