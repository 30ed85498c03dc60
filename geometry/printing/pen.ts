/**
 * What every picture is drawn with, whatever it is drawn on: a pen of three verbs, and a surface that fills and lines what the pen drew.
 *
 * The printed page and SVG are surfaces; so is a recorder in tests. Places are in points.
 */
import type { Spot } from '../writing/booklet/values.ts'
import type { Face } from './pageStyle.ts'

export interface Pen {
  moveTo(x: number, y: number): void
  lineTo(x: number, y: number): void
  close(): void
}

/** One way of the pen. */
export type PenPath = (pen: Pen) => void

interface Stroke {
  readonly colour: string
  readonly width: number
  readonly dash?: readonly number[]
}

export interface Paint {
  readonly fill?: string
  readonly line?: Stroke
}

export interface TextLabel {
  readonly text: string
  /** The middle of their height, and the end that `align` names. */
  readonly at: Spot
  readonly size: number
  readonly align: 'left' | 'middle' | 'right'
  readonly face: Face
  readonly colour: string
  /** A ground under the words, so that they are read on any cloth. */
  readonly ground?: string
}

export interface Surface {
  path(path: PenPath, paint: Paint): void
  /** What is drawn inside shows only within the way. */
  within(path: PenPath, inside: () => void): void
  words(words: TextLabel): void
  /** How wide words will be; SVG can only guess. */
  width(words: Pick<TextLabel, 'text' | 'size' | 'face'>): number
}

/** A path from corner to corner, closed unless said otherwise; places in points. */
export const polygon =
  (corners: readonly Spot[], closed = true): PenPath =>
  (pen) => {
    corners.forEach(([x, y], place) => {
      if (place === 0) pen.moveTo(x, y)
      else pen.lineTo(x, y)
    })
    if (closed && corners.length > 0) pen.close()
  }

/** Corners of a circle, near enough for a mark. */
export const round = ([x, y]: Spot, radius: number, corners = 28): Spot[] =>
  Array.from({ length: corners }, (_, place): Spot => {
    const turn = (2 * Math.PI * place) / corners
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)]
  })
