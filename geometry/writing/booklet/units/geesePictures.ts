/**
 * Geese made four at a time, one picture for each thing to do.
 *
 * In      sizes of the large and the small squares as cut, the fabrics of the small ones numbered clockwise from the top left, the seam.
 * Out     drawings to scale, in the measure's unit.
 * Source  four at a time [S3].
 */
import type { BookletContext, UnitVariant } from '../bookletContext.ts'
import { besideLine } from '../methodPictures.ts'
import { boxOfPatches, clippedBy, plus, withRawEdge } from '../pieceDrawing.ts'
import { boxAt, Sketch } from '../sketch.ts'
import { restingPatches } from '../unitPictures.ts'
import type { Drawing, Spot } from '../values.ts'

export interface GooseSet {
  readonly large: number
  readonly small: number
  readonly goose: string
  readonly corners: readonly string[]
}

const ROOT = Math.SQRT2

interface Area {
  readonly outline: readonly Spot[]
  readonly fabric: string
  readonly side: 'right' | 'wrong'
}

/** The large square and the first two small ones on it. */
function laid({ large, small, goose, corners }: GooseSet): Area[] {
  return [
    { outline: boxAt(0, 0, large, large), fabric: goose, side: 'right' },
    { outline: boxAt(0, 0, small, small), fabric: corners[0] as string, side: 'wrong' },
    { outline: boxAt(large - small, large - small, small, small), fabric: corners[2] as string, side: 'wrong' },
  ]
}

const put = (sketch: Sketch, areas: readonly Area[], move: Spot = [0, 0]): void => {
  for (const { outline, fabric, side } of areas)
    sketch.area(
      outline.map((spot) => plus(spot, move)),
      fabric,
      side,
      'cut',
    )
}

const clippedTo = (areas: readonly Area[], inside: (spot: Spot) => number): Area[] =>
  areas.map((area) => ({ ...area, outline: clippedBy(area.outline, inside) }))

/** The first two squares on the large one: only laid, or sewn. */
export function twoOnLarge(set: GooseSet, sewn: boolean, { seam, say }: BookletContext): Drawing {
  const { large, small } = set
  const sketch = new Sketch()
  put(sketch, laid(set))
  const whole = boxAt(0, 0, large, large)
  if (sewn) besideLine(sketch, [0, 0], [large, large], seam, whole, false)
  else
    sketch.line(
      [
        [0, 0],
        [large, large],
      ],
      'marked',
    )
  sketch.text([small * 0.68, small * 0.22], '1')
  sketch.text([large - small * 0.68, large - small * 0.22], '3')
  return sketch.drawing(sewn ? say.units.pictures.sewn : say.units.pictures.twoOnLarge, large * 0.03)
}

/** The two halves, apart from each other across the line. */
export function halvesApart(set: GooseSet, { seam, say }: BookletContext): Drawing {
  const { large } = set
  const apart = large * 0.07
  const d = seam * ROOT
  const sketch = new Sketch()
  put(
    sketch,
    clippedTo(laid(set), ([x, y]) => x - y),
    [apart, -apart],
  )
  put(
    sketch,
    clippedTo(laid(set), ([x, y]) => y - x),
    [-apart, apart],
  )
  sketch.line([plus([d, 0], [apart, -apart]), plus([large, large - d], [apart, -apart])], 'stitch')
  sketch.line([plus([0, d], [-apart, apart]), plus([large - d, large], [-apart, apart])], 'stitch')
  return sketch.drawing(say.units.pictures.cutApart, large * 0.03)
}

/** From the upper right half to the lower left one. */
const swapped = ([x, y]: Spot): Spot => [y, x]

/** The upper right half pressed: only what lies beyond the stitches is folded back. */
function heart({ large, small, goose, corners }: GooseSet, seam: number): Area[] {
  const d = seam * ROOT
  const folded = ([x, y]: Spot): Spot => [y + d, x - d]
  const beyond = ([x, y]: Spot): number => x - y - d
  return [
    {
      outline: [
        [d, 0],
        [large, 0],
        [large, large - d],
      ],
      fabric: goose,
      side: 'right',
    },
    { outline: clippedBy(boxAt(0, 0, small, small), beyond).map(folded), fabric: corners[0] as string, side: 'right' },
    {
      outline: clippedBy(boxAt(large - small, large - small, small, small), beyond).map(folded),
      fabric: corners[2] as string,
      side: 'right',
    },
  ]
}

/** The same marks on both halves, the lower left one with its places swapped. */
function onBoth(draw: (place: (spot: Spot) => Spot, which: 0 | 1) => void, apart: number): void {
  draw((spot) => plus(spot, [apart, -apart]), 0)
  draw((spot) => plus(swapped(spot), [-apart, apart]), 1)
}

const heartsApart = ({ large, small }: GooseSet, seam: number): number => (small - seam * ROOT) / 2 + large * 0.04

/** Both halves pressed; with the third and fourth square laid on them, or sewn. */
export function hearts(set: GooseSet, state: 'pressed' | 'laid' | 'sewn', { seam, say }: BookletContext): Drawing {
  const { large, small, corners } = set
  const sketch = new Sketch()
  onBoth(
    (place, which) => {
      for (const { outline, fabric, side } of heart(set, seam)) sketch.area(outline.map(place), fabric, side, 'cut')
      if (state === 'pressed') return
      const square = boxAt(large - small, 0, small, small).map(place)
      sketch.area(square, (which === 0 ? corners[1] : corners[3]) as string, 'wrong', 'cut')
      const [from, to] = [place([large, 0]), place([large - small, small])]
      if (state === 'sewn') besideLine(sketch, from, to, seam, which === 0 ? square : [...square].reverse(), false)
      else sketch.line([from, to], 'marked')
      sketch.text(place([large - small * 0.25, small * 0.62]), which === 0 ? '2' : '4')
    },
    heartsApart(set, seam),
  )
  const { pictures } = say.units
  return sketch.drawing({ pressed: pictures.hearts, laid: pictures.thirdSquare, sewn: pictures.thirdSewn }[state], large * 0.03)
}

/** Both halves cut along the lines of the last squares. */
export function piecesApart(set: GooseSet, { seam, say }: BookletContext): Drawing {
  const { large, small, corners } = set
  const apart = large * 0.06
  const sketch = new Sketch()
  onBoth(
    (place, which) => {
      const areas: Area[] = [
        ...heart(set, seam),
        { outline: boxAt(large - small, 0, small, small), fabric: (which === 0 ? corners[1] : corners[3]) as string, side: 'wrong' },
      ]
      for (const way of [1, -1]) {
        const move = (spot: Spot): Spot => place(plus(spot, [way * apart, way * apart]))
        for (const { outline, fabric, side } of clippedTo(areas, ([x, y]) => way * (x + y - large)))
          sketch.area(outline.map(move), fabric, side, 'cut')
        const d = way * seam * ROOT
        const stitch: readonly [Spot, Spot] =
          way > 0
            ? [
                [large, d],
                [large - small + d, small],
              ]
            : [
                [large + d, 0],
                [large - small, small + d],
              ]
        sketch.line(stitch.map(move), 'stitch')
      }
    },
    heartsApart(set, seam),
  )
  return sketch.drawing(say.units.pictures.thirdCut, large * 0.03)
}

/** Four geese as they come out, two under two; their letters where the block has them. */
export function fourGeese(geese: readonly { readonly variant: UnitVariant; readonly label: string }[], context: BookletContext): Drawing {
  const sketch = new Sketch()
  geese.forEach(({ variant, label }, place) => {
    const patches = restingPatches(variant, context)
    const { left, top, right, bottom } = boxOfPatches(patches)
    const [wide, high] = [right - left + context.seam * 5, bottom - top + context.seam * 5]
    const move: Spot = [(place % 2) * wide - left, Math.floor(place / 2) * high - top]
    for (const { patch, outline } of withRawEdge(patches, context.seam))
      sketch.area(
        outline.map((spot) => plus(spot, move)),
        patch.fabric,
      )
    sketch.text(plus([(left + right) / 2, top + (bottom - top) * 0.62], move), label)
  })
  return sketch.drawing(context.say.units.pictures.fourGeese, context.seam)
}
