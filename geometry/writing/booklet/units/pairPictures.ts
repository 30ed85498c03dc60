/**
 * Squares sewn in pairs and cut apart, one picture for each thing to do.
 *
 * In      the square as cut, which fabric lies on top with its wrong side up, and the lines that are drawn, sewn beside and cut.
 * Out     drawings to scale, in the measure's unit.
 * Source  two, four and eight triangles at a time [S37][S31][S25], hourglasses [S37].
 */
import type { BookletContext } from '../bookletContext.ts'
import { besideLine, withinOutline } from '../methodPictures.ts'
import { centreOf, clippedBy, cross, type LineSegment, minus, plus } from '../pieceDrawing.ts'
import { boxAt, Sketch } from '../sketch.ts'
import type { Drawing, Spot } from '../values.ts'

/** How a pair is sewn: beside one line, beside two, or all round. */
export type PairWay = 'one line' | 'two lines' | 'all round'

interface Face {
  readonly outline: readonly Spot[]
  readonly fabric: string
}

/** The square on top; in the second round of hourglasses its two triangles. */
interface TopSquare {
  readonly side: number
  readonly faces: readonly Face[]
}

/** A square of one fabric, its wrong side up. */
export const topSquare = (side: number, fabric: string): TopSquare => ({ side, faces: [{ outline: boxAt(0, 0, side, side), fabric }] })

/** Half of a sewn pair, turned over: the seam runs from top left to bottom right. */
export function topHalves(side: number, [one, other]: readonly [string, string]): TopSquare {
  const [a, b, c, d] = boxAt(0, 0, side, side) as [Spot, Spot, Spot, Spot]
  return {
    side,
    faces: [
      { outline: [a, b, c], fabric: one },
      { outline: [a, c, d], fabric: other },
    ],
  }
}

const diagonals = (side: number): readonly [LineSegment, LineSegment] => [
  [
    [0, side],
    [side, 0],
  ],
  [
    [0, 0],
    [side, side],
  ],
]

const drawnLines = (way: PairWay, side: number): readonly LineSegment[] =>
  way === 'all round' ? [] : way === 'one line' ? diagonals(side).slice(0, 1) : diagonals(side)

function cutLines(way: PairWay, side: number): readonly LineSegment[] {
  if (way !== 'two lines') return way === 'one line' ? diagonals(side).slice(0, 1) : diagonals(side)
  const half = side / 2
  return [
    ...diagonals(side),
    [
      [half, 0],
      [half, side],
    ],
    [
      [0, half],
      [side, half],
    ],
  ]
}

/** The pair, its lines drawn; sewn where it is said so. */
export function pairPicture({ side, faces }: TopSquare, way: PairWay, state: 'drawn' | 'sewn', { seam }: BookletContext, title: string): Drawing {
  const sketch = new Sketch()
  const outline = boxAt(0, 0, side, side)
  for (const face of faces) sketch.area(face.outline, face.fabric, 'wrong', 'cut')
  if (way === 'all round') sketch.line(boxAt(seam, seam, side - 2 * seam, side - 2 * seam), 'stitch', true)
  for (const [from, to] of drawnLines(way, side)) {
    if (state === 'sewn') besideLine(sketch, from, to, seam, outline, false)
    else sketch.line([from, to], 'marked')
  }
  return sketch.drawing(title, side * 0.03)
}

/** The pair cut along all its lines, its pieces moved apart. */
export function pairApart({ side, faces }: TopSquare, way: PairWay, { seam }: BookletContext, title: string): Drawing {
  const sketch = new Sketch()
  const middle: Spot = [side / 2, side / 2]
  const lines = cutLines(way, side)
  for (const piece of piecesOf(boxAt(0, 0, side, side), lines)) {
    const move: Spot = minus(plus([0, 0], minus(centreOf(piece), middle), 0.24), [0, 0])
    const moved = (spot: Spot): Spot => plus(spot, move)
    for (const { outline, fabric } of faces) {
      const part = insideOf(outline, piece)
      sketch.area(part.map(moved), fabric, 'wrong', 'cut')
    }
    for (const stitch of stitchesOf(way, side, seam)) {
      const part = withinOutline(stitch, piece)
      if (part !== null) sketch.line(part.map(moved), 'stitch')
    }
  }
  return sketch.drawing(title, side * 0.03)
}

function stitchesOf(way: PairWay, side: number, seam: number): LineSegment[] {
  if (way === 'all round') {
    const [a, b, c, d] = boxAt(seam, seam, side - 2 * seam, side - 2 * seam) as [Spot, Spot, Spot, Spot]
    return [
      [a, b],
      [b, c],
      [c, d],
      [d, a],
    ]
  }
  const off = seam * Math.SQRT1_2
  return drawnLines(way, side).flatMap(([a, b]): LineSegment[] => {
    const out: Spot = b[1] < a[1] ? [-off, -off] : [off, -off]
    return [1, -1].map((sign): LineSegment => [plus(a, out, sign), plus(b, out, sign)])
  })
}

/** A convex outline cut by lines. */
function piecesOf(outline: readonly Spot[], lines: readonly LineSegment[]): (readonly Spot[])[] {
  return lines.reduce<(readonly Spot[])[]>(
    (pieces, [a, b]) =>
      pieces.flatMap((piece) =>
        [1, -1].map((sign) => clippedBy(piece, (spot) => sign * cross(minus(b, a), minus(spot, a)))).filter((part) => part.length > 2),
      ),
    [outline],
  )
}

/** The part of one convex outline inside another, clockwise. */
function insideOf(outline: readonly Spot[], piece: readonly Spot[]): readonly Spot[] {
  return piece.reduce<readonly Spot[]>((left, a, index) => {
    const b = piece[(index + 1) % piece.length] as Spot
    return clippedBy(left, (spot) => cross(minus(b, a), minus(spot, a)))
  }, outline)
}
