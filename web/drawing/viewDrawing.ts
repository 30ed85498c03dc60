/**
 * What a view shows, as plain values in cells, before anything is painted.
 *
 * Views make drawings, `paint` paints them on a canvas, and tests read them as text. Parts lie over each other in their order.
 */
import type { Verdict } from '../../geometry/index.ts'
import type { Point } from '../document/shapes.ts'

/** What a part shows. `paint` decides what it looks like. */
export type PartType =
  /** Fabric, right side up; `faint` if it is not sewn yet. */
  | 'fabric'
  /** The wrong side of the fabric, and its right side where an allowance is folded back. */
  | 'back'
  | 'folded'
  /** Cut and folded edges; sewn seams; the stitches of a seam as they show on the wrong side. */
  | 'edge'
  | 'seam'
  | 'stitches'
  /** The outline of the two sides that are being joined; the seam that joins them. */
  | 'round'
  | 'join'
  /** The way a seam is pressed; a number in a badge. */
  | 'press'
  | 'number'
  /** A meeting, by its verdict, with their number as text if several clash at its place; a stretch of an edge between two copies where seams clash. */
  | 'mark'
  | 'stretch'
  /** The edges between copies; a copy that is pressed the opposite way. */
  | 'between'
  | 'opposite'
  /** What an edit changes: a place that no longer nests, a place that nests now, a seam pressed another way. */
  | 'lost'
  | 'gained'
  | 'changed'

export interface DrawingPart {
  readonly type: PartType
  readonly colour?: string
  /** The fabric whose print it shows, and the quarter turns that the print lies in. */
  readonly print?: { readonly fabric: string; readonly turn: number }
  readonly faint?: true
  readonly verdict?: Verdict
  readonly text?: string
  /** Closed outlines. */
  readonly outlines?: readonly (readonly Point[])[]
  /** Open lines. */
  readonly lines?: readonly (readonly Point[])[]
  readonly points?: readonly Point[]
  /** How a seam is pressed: the direction across it, one cell long; whether it lies open; whether that is the maker's own choice. */
  readonly toward?: Point
  readonly open?: boolean
  readonly asked?: boolean
}

export type ViewDrawing = readonly DrawingPart[]

/** The part of a canvas, or of a path, that outlines need. */
export interface PathPen {
  moveTo(x: number, y: number): void
  lineTo(x: number, y: number): void
  closePath(): void
}

/** Adds the outlines and lines of a part to a path. */
export function tracePart(
  pen: PathPen,
  { outlines = [], lines = [] }: DrawingPart,
  toPixels: (x: number, y: number) => readonly [number, number],
): void {
  for (const outline of outlines) {
    tracePath(pen, outline, toPixels)
    pen.closePath()
  }
  for (const line of lines) tracePath(pen, line, toPixels)
}

function tracePath(pen: PathPen, points: readonly Point[], toPixels: (x: number, y: number) => readonly [number, number]): void {
  points.forEach(([x, y], index) => {
    const [px, py] = toPixels(x, y)
    if (index === 0) pen.moveTo(px, py)
    else pen.lineTo(px, py)
  })
}
