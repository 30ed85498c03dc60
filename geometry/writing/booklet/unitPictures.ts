import type { BoxUnit, MeasureUnit } from '../../values/block.ts'
import { toNumber } from '../../exact/rational.ts'
import { shapeOf } from '../../units/kinds.ts'
import { isOnRuler, sayLength } from '../../exact/lengths.ts'
import { toThousandths } from '../phrases.ts'
import type { BookletContext, MeasuredPatch, UnitVariant } from './bookletContext.ts'
import {
  boxOfPatches,
  centreOf,
  centreOfAll,
  type SeamBetweenPatches,
  boundsOf,
  cornersOf,
  foldedAllowances,
  vectorLength,
  midpoint,
  minus,
  movedOut,
  outward,
  plus,
  rectangleOf,
  seamBetween,
  type LineSegment,
  unitVector,
  withRawEdge,
} from './pieceDrawing.ts'
import { Sketch } from './sketch.ts'
import type { Drawing, Spot } from './values.ts'

/** The unit's patches, not mirrored unless it is drawn so, turned so many quarters, from 0, 0. */
export function restingPatches(variant: UnitVariant, context: BookletContext, turn: 0 | 1 | 2 | 3 = 0): MeasuredPatch[] {
  const { first } = variant
  if (first.kind === 'polygon') return []
  const lying: BoxUnit = { ...first, at: [0, 0], turn, size: turn % 2 === (first.turn ?? 0) % 2 ? first.size : [first.size[1], first.size[0]] }
  return shapeOf(lying).patches.map(({ name, corners }) => ({
    id: name,
    unit: first.id,
    name,
    fabric: first.fabrics[name] as string,
    corners: corners.map(([x, y]): Spot => [toNumber(x) * context.cell, toNumber(y) * context.cell]),
  }))
}

function seamsIn(variant: UnitVariant, patches: readonly MeasuredPatch[]): SeamBetweenPatches[] {
  const named = (names: readonly string[]): MeasuredPatch[] => patches.filter(({ name }) => names.includes(name))
  return variant.seams.map(({ sides, toward }) => ({ sides: [named(sides[0]), named(sides[1])], toward }))
}

/** Sewn and pressed, from behind. */
export function pressedPicture(variant: UnitVariant, context: BookletContext): Drawing {
  const patches = restingPatches(variant, context)
  const sketch = wrongSideSketch(patches, seamsIn(variant, patches), context.seam)
  return sketch.drawing(context.say.join.pictures.pressedUnit(variant.label), marginOf(patches))
}

/** All units made in one go that differ, right side up, four beside each other, each with its letter. */
export function variantsPicture(variants: readonly UnitVariant[], context: BookletContext): Drawing {
  const sketch = new Sketch()
  variants.forEach((variant, place) => {
    const patches = restingPatches(variant, context)
    const { right, bottom, left, top } = boxOfPatches(patches)
    const apart = context.seam * 5
    const move: Spot = [(place % ABREAST) * (right - left + apart) - left, Math.floor(place / ABREAST) * (bottom - top + apart) - top]
    for (const { patch, outline } of withRawEdge(patches, context.seam)) {
      sketch.area(
        outline.map((spot) => plus(spot, move)),
        patch.fabric,
      )
    }
    sketch.text(plus([(left + right) / 2, top + (bottom - top) * 0.6], move), variant.label)
  })
  return sketch.drawing(context.say.join.pictures.looks(variants.map(({ label }) => label)), context.seam)
}

const ABREAST = 4

const marginOf = (patches: readonly MeasuredPatch[]): number => {
  const { left, right, top, bottom } = boundsOf(cornersOf(patches))
  return Math.max(right - left, bottom - top) * 0.05
}

/** A piece from behind: cloth, stitches, folded allowances, an arrow across each seam. Turned over already. */
export function wrongSideSketch(patches: readonly MeasuredPatch[], seams: readonly SeamBetweenPatches[], seam: number, arrows = seams): Sketch {
  const sketch = new Sketch()
  const box = rectangleOf(patches)
  for (const { patch, outline } of withRawEdge(patches, seam)) sketch.area(outline, patch.fabric, 'wrong')
  for (const one of seams) {
    for (const { outline, fabric, side } of foldedAllowances(one, seam, box)) sketch.area(outline, fabric, side, 'cut')
    for (const { stretch } of seamBetween(one.sides[0], one.sides[1])) sketch.line(stretch, 'stitch')
  }
  for (const one of arrows) pressArrow(sketch, one, seam)
  sketch.turnOver()
  return sketch
}

/** Across the middle of a seam, the way its allowances go; both ways where it is pressed open. */
function pressArrow(sketch: Sketch, { sides, toward }: SeamBetweenPatches, seam: number): void {
  const stretches = seamBetween(sides[0], sides[1]).map(({ stretch }) => stretch)
  const longest = longestOf(stretches)
  if (longest === null) return
  const out = outward(...longest)
  const at = midpoint(...longest)
  const far = seam * 2.4
  const ways: readonly (1 | -1)[] = toward === 'open' ? [1, -1] : toward === 1 ? [1] : [-1]
  for (const way of ways) sketch.arrow(plus(at, out, toward === 'open' ? 0 : -way * far * 0.5), plus(at, out, way * far))
}

/** The longest of some segments, the first of equals; null where there are none. */
export function longestOf(stretches: readonly LineSegment[]): LineSegment | null {
  return stretches.reduce<LineSegment | null>(
    (best, one) => (best === null || vectorLength(minus(one[1], one[0])) > vectorLength(minus(best[1], best[0])) + 1e-9 ? one : best),
    null,
  )
}

/** The pieces as cut, apart from each other, the seams numbered in sewing order. */
export function apartPicture(variant: UnitVariant, context: BookletContext): Drawing {
  const patches = restingPatches(variant, context)
  const centre = centreOfAll(patches)
  const apart = context.seam * 5
  const shifts = new Map(
    patches.map(({ name, corners }) => {
      const away = minus(centreOf(corners), centre)
      return [name, vectorLength(away) < 1e-6 ? ([0, 0] as Spot) : spreadOf(away, variant, apart)]
    }),
  )
  const sketch = new Sketch()
  const shiftOf = ({ name }: MeasuredPatch): Spot => shifts.get(name) as Spot
  for (const patch of patches) {
    const moved = patch.corners.map((corner) => plus(corner, shiftOf(patch)))
    sketch.area(
      movedOut(
        moved,
        moved.map(() => true),
        context.seam,
      ),
      patch.fabric,
      'right',
      'cut',
    )
    sketch.line(moved, 'seam', true)
  }
  seamsIn(variant, patches).forEach(({ sides }, index) => {
    const met = seamBetween(sides[0], sides[1])
    const longest = longestOf(met.map(({ stretch }) => stretch))
    const one = met.find(({ stretch }) => stretch === longest)
    if (longest === null || one === undefined) return
    sketch.point(plus(midpoint(...longest), midpoint(shiftOf(one.one), shiftOf(one.other))), 'number', String(index + 1))
  })
  return sketch.drawing(context.say.join.pictures.unitApart(variant.label), marginOf(patches))
}

/** Strips stand side by side at equal distances; other pieces move away from the middle. */
function spreadOf(away: Spot, { row }: UnitVariant, apart: number): Spot {
  if (row.kind !== 'strips') return plus([0, 0], unitVector(away), apart)
  const number = Object.keys(row.fabrics).length
  const place = away[0] / (row.finished[0] / number)
  return [place * apart * 0.8, 0]
}

/** A length on the ruler, or the nearest. */
export const onRuler = (length: number, unit: MeasureUnit): string =>
  isOnRuler(length, unit) ? `${sayLength(length, unit)} ${unit}` : `${sayLength(length, unit)} ${unit} (${toThousandths(length)})`
