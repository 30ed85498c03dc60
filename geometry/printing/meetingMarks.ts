/** Marks of meetings as corners in a box from −8 to 8: the shapes that the board shows, drawn with straight lines. */
import type { PointMark, Spot } from '../writing/booklet/values.ts'
import { round } from './pen.ts'

interface Shape {
  readonly colour: string
  readonly whole: readonly Spot[]
  /** Left blank inside. */
  readonly blank?: readonly Spot[]
}

/** An eye: two shallow bows. */
const EYE: readonly Spot[] = [
  ...Array.from({ length: 13 }, (_, at): Spot => [-7 + (14 * at) / 12, -4.6 * Math.sin((Math.PI * at) / 12)]),
  ...Array.from({ length: 11 }, (_, at): Spot => [7 - (14 * (at + 1)) / 12, 4.6 * Math.sin((Math.PI * (at + 1)) / 12)]),
]
const HEAD = round([0, -4], 4, 24).filter(([, y]) => y <= 0)

export const SHAPES: Readonly<Record<Exclude<PointMark, 'number'>, Shape>> = {
  nests: { colour: '#2f7d6b', whole: EYE, blank: round([0, 0], 1.8, 12) },
  clashes: {
    colour: '#c22f3d',
    whole: [
      [-7, -7],
      [-1, -3],
      [1, -8],
      [3, -2],
      [8, -1],
      [3, 2],
      [6, 7],
      [0, 4],
      [-4, 8],
      [-4, 2],
      [-8, 0],
      [-4, -2],
    ],
  },
  open: {
    colour: '#3f6fb0',
    whole: [
      [-6, -6],
      [6, -6],
      [6, 6],
      [-6, 6],
    ],
    blank: [
      [-3, -3],
      [3, -3],
      [3, 3],
      [-3, 3],
    ],
  },
  pin: {
    colour: '#a66a12',
    whole: [
      ...HEAD.filter(([x]) => x >= 0).sort((a, b) => b[1] - a[1]),
      ...HEAD.filter(([x]) => x < 0).sort((a, b) => a[1] - b[1]),
      [-1, 0],
      [-0.6, 8],
      [0.6, 8],
      [1, 0],
    ],
  },
  dot: { colour: '#241c18', whole: round([0, 0], 4.6, 24) },
  tip: {
    colour: '#7a4a8c',
    whole: [
      [0, -7],
      [8, 6],
      [-8, 6],
    ],
    blank: [
      [0, -2],
      [3, 4],
      [-3, 4],
    ],
  },
}
