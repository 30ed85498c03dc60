/**
 * Drawn prints: what one repeat of a cloth shows, as plain shapes that a canvas, an SVG and a page can all draw.
 *
 * In      a print's kind.
 * Out     marks in a square of side 1, which continue seamlessly from one repeat to the next; no two lie over each other. The top of the cloth is up.
 * Exact   drawing only: no verdict rests on it.
 * Source  the trade's words; their proportions are ours.
 */
import type { Fabric, Length, Print, PrintKind } from '../values/block.ts'
import { lightnessOf, mixed } from './lightness.ts'

export type PrintPoint = readonly [number, number]

/** `part` of the second colour over the first: 1, or between for the half tones of a woven check. */
export type PrintMark = { readonly part: number } & (
  | { readonly type: 'disc'; readonly at: PrintPoint; readonly radius: number }
  | { readonly type: 'shape'; readonly corners: readonly PrintPoint[] }
)

interface KindOfPrint {
  readonly marks: readonly PrintMark[]
  /** Whether such a cloth has a top (`one-way`), runs along (`two-way`) or may be turned as one likes (null). */
  readonly direction: 'one-way' | 'two-way' | null
  /** A usual repeat, in inches and in centimetres. */
  readonly repeat: { readonly in: Length; readonly cm: Length }
}

const disc = (x: number, y: number, radius: number): PrintMark => ({ type: 'disc', at: [x, y], radius, part: 1 })

const box = (x0: number, y0: number, x1: number, y1: number, part = 1): PrintMark => ({
  type: 'shape',
  part,
  corners: [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ],
})

/** Steps along one side of a leaf. */
const LEAF_STEPS = 6

/** A leaf that grows from a point, `angle` degrees clockwise from straight up. */
function leaf([x, y]: PrintPoint, angle: number, length: number, width: number): PrintMark {
  const turn = (angle * Math.PI) / 180
  const place = (along: number, across: number): PrintPoint => [
    x + Math.sin(turn) * along + Math.cos(turn) * across,
    y - Math.cos(turn) * along + Math.sin(turn) * across,
  ]
  const side = (sign: 1 | -1): PrintPoint[] =>
    Array.from({ length: LEAF_STEPS }, (_, step) => {
      const part = (step + (sign === 1 ? 0 : 1)) / LEAF_STEPS
      return place(part * length, sign * width * Math.sin(Math.PI * part ** 0.8))
    })
  return { type: 'shape', part: 1, corners: [...side(1), ...side(-1).reverse()] }
}

/** A bud on a stem with two pairs of leaves, its foot at a point. */
function sprig(x: number, y: number): PrintMark[] {
  return [
    box(x - 0.011, y - 0.25, x + 0.011, y),
    disc(x, y - 0.3, 0.046),
    ...[-1, 1].flatMap((side) => [
      leaf([x + side * 0.012, y - 0.03], side * 58, 0.15, 0.032),
      leaf([x + side * 0.012, y - 0.13], side * 46, 0.13, 0.028),
    ]),
  ]
}

/** What is drawn of each kind; a photograph brings its own picture. */
export const PRINT_FACTS: Readonly<Record<PrintKind, KindOfPrint>> = {
  dots: { marks: [disc(0.25, 0.25, 0.13), disc(0.75, 0.75, 0.13)], direction: null, repeat: { in: '1/2', cm: 1 } },
  stripes: {
    marks: [box(0.32, 0, 0.68, 1), box(0, 0, 0.05, 1), box(0.95, 0, 1, 1)],
    direction: 'two-way',
    repeat: { in: '1/2', cm: 1 },
  },
  checks: {
    marks: [box(0, 0.5, 0.5, 1, 0.5), box(0.5, 0, 1, 0.5, 0.5), box(0, 0, 0.5, 0.5)],
    direction: null,
    repeat: { in: '1/2', cm: 1 },
  },
  sprigs: { marks: [...sprig(0.25, 0.44), ...sprig(0.75, 0.94)], direction: 'one-way', repeat: { in: 1, cm: 2.5 } },
  photo: { marks: [], direction: null, repeat: { in: 4, cm: 10 } },
}

/** The marks of a print in order, each with the colour it is filled with, on a ground of the fabric's own colour. */
export function marksOf(fabric: Fabric, print: Print): { readonly mark: PrintMark; readonly colour: string }[] {
  return PRINT_FACTS[print.kind].marks.map((mark) => ({ mark, colour: mixed(fabric.colour, print.second ?? fabric.colour, mark.part) }))
}

function areaOfMark(mark: PrintMark): number {
  if (mark.type === 'disc') return Math.PI * mark.radius ** 2
  const { corners } = mark
  const sum = corners.reduce((area, [x, y], at) => {
    const [nx, ny] = corners[(at + 1) % corners.length] as PrintPoint
    return area + x * ny - nx * y
  }, 0)
  return Math.abs(sum) / 2
}

/** The mean L* of a fabric as it hangs far away: each colour of a print by the part of the cloth it covers. A photograph's own colour is its mean. */
export function meanLightness(fabric: Fabric): number {
  const { print } = fabric
  const ground = lightnessOf(fabric.colour)
  if (print === undefined || print.kind === 'photo') return ground
  return marksOf(fabric, print).reduce((sum, { mark, colour }) => sum + areaOfMark(mark) * (lightnessOf(colour) - ground), ground)
}

/** One colour for a cloth whose print is too small to be seen: by channel, by the part of the cloth that each covers. */
export function flatColour(fabric: Fabric): string {
  const { print } = fabric
  if (print === undefined || print.kind === 'photo') return fabric.colour
  const part = PRINT_FACTS[print.kind].marks.reduce((sum, mark) => sum + areaOfMark(mark) * mark.part, 0)
  return mixed(fabric.colour, print.second ?? fabric.colour, part)
}
