/**
 * Cutting diagrams to scale: every cut, in the order in which it is made.
 *
 * In      strips, and how long they are (the usable width of the fabric), in the measure's unit.
 * Out     rectangles on the fabric, in the measure's unit from its top left corner, x along the strips: each strip with its
 *         numbered pieces side by side; where a piece is lower than its strip, it is trimmed by a later cut and the offcut is listed too,
 *         as is what is left at the end of the strip.
 * How     the highest strip first; in a strip the highest pieces first, so that one cut trims all neighbours of one height.
 */
import { tidy } from '../exact/lengths.ts'
import type { Strip } from '../values/report.ts'

export interface DiagramBox {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

interface DiagramPiece extends DiagramBox {
  /** Counted over the whole picture, from 1. */
  readonly number: number
  readonly size: readonly [number, number]
  /** Its long side runs along the length of the fabric. */
  readonly upright: boolean
}

export interface DiagramCut {
  readonly number: number
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
  readonly type: 'strip' | 'across' | 'trim'
}

export interface DiagramStrip extends DiagramBox {
  readonly number: number
  readonly pieces: readonly DiagramPiece[]
  /** The strip off the fabric, then across it, then down to height; numbered over the whole picture. */
  readonly cuts: readonly DiagramCut[]
  readonly leftover: readonly DiagramBox[]
}

export interface CuttingDiagram {
  readonly width: number
  readonly height: number
  readonly strips: readonly DiagramStrip[]
}

/** Too small for any ruler to show: sizes come rounded to a billionth, and many of them are added up. */
const UNSEEN = 1e-6

/** `width`: what a strip is long. */
export function cuttingDiagram(strips: readonly Strip[], width: number): CuttingDiagram {
  const drawn: DiagramStrip[] = []
  let [y, pieces, cuts] = [0, 0, 0]
  for (const strip of [...strips].sort((a, b) => b.height - a.height)) {
    const box: DiagramBox = { x: 0, y, width, height: strip.height }
    const laid = piecesIn(strip, box, pieces)
    const made = cutsOf(box, laid, cuts)
    drawn.push({ ...box, number: drawn.length + 1, pieces: laid, cuts: made, leftover: leftovers(box, laid) })
    y = tidy(y + strip.height)
    pieces += laid.length
    cuts += made.length
  }
  return { width, height: y, strips: drawn }
}

function piecesIn({ height, pieces }: Strip, box: DiagramBox, before: number): DiagramPiece[] {
  const ways = pieces.map(({ size, count, fixed = false }) => {
    const [long, short] = [Math.max(...size), Math.min(...size)]
    const stands = long <= height + UNSEEN
    const [wide, high] = fixed ? size : stands ? [short, long] : [long, short]
    return { size, count, upright: high >= wide, high, wide }
  })
  ways.sort((a, b) => b.high - a.high || b.wide - a.wide)
  let x = box.x
  let number = before
  return ways.flatMap(({ size, count, upright, high, wide }) =>
    Array.from({ length: count }, (): DiagramPiece => {
      const piece = { x, y: box.y, width: wide, height: high, number: ++number, size, upright }
      x = tidy(x + wide)
      return piece
    }),
  )
}

function cutsOf(box: DiagramBox, pieces: readonly DiagramPiece[], before: number): DiagramCut[] {
  const bottom = tidy(box.y + box.height)
  const cuts: Omit<DiagramCut, 'number'>[] = [{ from: [box.x, bottom], to: [tidy(box.x + box.width), bottom], type: 'strip' }]
  for (const { x, width } of pieces) {
    const end = tidy(x + width)
    if (end < box.x + box.width - UNSEEN) cuts.push({ from: [end, box.y], to: [end, bottom], type: 'across' })
  }
  for (const { x, width, y, height } of pieces) {
    if (height < box.height - UNSEEN) cuts.push({ from: [x, tidy(y + height)], to: [tidy(x + width), tidy(y + height)], type: 'trim' })
  }
  return cuts.map((cut, index) => ({ number: before + index + 1, ...cut }))
}

function leftovers(box: DiagramBox, pieces: readonly DiagramPiece[]): DiagramBox[] {
  const trimmed = pieces.flatMap(({ x, width, height }): DiagramBox[] =>
    height < box.height - UNSEEN ? [{ x, y: tidy(box.y + height), width, height: tidy(box.height - height) }] : [],
  )
  const last = pieces.at(-1)
  const end = last === undefined ? box.x : tidy(last.x + last.width)
  const rest = tidy(box.x + box.width - end)
  return rest > UNSEEN ? [...trimmed, { x: end, y: box.y, width: rest, height: box.height }] : trimmed
}
