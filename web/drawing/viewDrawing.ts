/**
 * A drawing: what a view shows, in plain values in cells, before anything is painted.
 *
 * Views make drawings; the screen paints them through a pen of three verbs, and the tests read them as text. Order is the order in which they lie.
 */
import type { Verdict } from '../../geometry/index.ts'
import type { Point } from '../document/shapes.ts'

/** What is drawn, which says how it looks. */
export type PartType =
  /** Cloth in its colour; `faint` where it waits. */
  | 'cloth'
  /** The back of cloth, and its right side where an allowance is folded back. */
  | 'back'
  | 'folded'
  /** Cut and folded edges; sewn lines; the stitches of a seam as they show on the wrong side. */
  | 'edge'
  | 'seam'
  | 'stitches'
  /** Round the two sides of a join; the join itself. */
  | 'round'
  | 'join'
  /** Which way allowances lie; a seam pressed open. */
  | 'wedge'
  | 'bars'
  | 'number'
  /** A meeting, by its verdict; a stretch of an edge between copies where seams clash. */
  | 'mark'
  | 'stretch'
  /** Edges between copies; a copy pressed the opposite way. */
  | 'between'
  | 'opposite'
  /** What an edit changes: where something nests no longer, where something nests now. */
  | 'lost'
  | 'gained'
  | 'changed'

export interface DrawingPart {
  readonly what: PartType
  readonly colour?: string
  /** The fabric whose print it shows, and quarter turns in which the print lies. */
  readonly print?: { readonly fabric: string; readonly turn: number }
  readonly faint?: true
  readonly verdict?: Verdict
  readonly text?: string
  /** Closed. */
  readonly rings?: readonly (readonly Point[])[]
  /** Open. */
  readonly ways?: readonly (readonly Point[])[]
  readonly spots?: readonly Point[]
  /** Of a wedge or bars: the way across the seam, one cell long. */
  readonly toward?: Point
}

export type ViewDrawing = readonly DrawingPart[]

/** The three verbs. */
export interface PathPen {
  moveTo(x: number, y: number): void
  lineTo(x: number, y: number): void
  closePath(): void
}

export function tracePart(pen: PathPen, { rings = [], ways = [] }: DrawingPart, toPixels: (x: number, y: number) => readonly [number, number]): void {
  for (const ring of rings) {
    along(pen, ring, toPixels)
    pen.closePath()
  }
  for (const way of ways) along(pen, way, toPixels)
}

function along(pen: PathPen, spots: readonly Point[], toPixels: (x: number, y: number) => readonly [number, number]): void {
  spots.forEach(([x, y], index) => {
    const [px, py] = toPixels(x, y)
    if (index === 0) pen.moveTo(px, py)
    else pen.lineTo(px, py)
  })
}
