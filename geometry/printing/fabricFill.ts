/**
 * Cloth as ink: a plain colour, a print to scale, the washed-out and hatched wrong side, greys, or nothing but its outline.
 */
import type { Fabric } from '../values/block.ts'
import { mixed } from '../colour/lightness.ts'
import { PRINT_FACTS, type PrintMark } from '../colour/print.ts'
import { parseRational, toNumber } from '../exact/rational.ts'
import type { Spot } from '../writing/booklet/values.ts'
import { edgeOf, greyOf, hatchOf, wrongSideOf } from './printColours.ts'
import { INK } from './pageStyle.ts'
import { polygon, round, type Surface } from './pen.ts'

/** `cloth` as it is; `value` in greys; `outline` to colour in. */
export type FabricStyle = 'cloth' | 'value' | 'outline'

export interface FabricFill {
  readonly fill: string
  readonly edge: string
  readonly hatch: string
  readonly wrong: string
  readonly print: PrintPattern | null
}

interface PrintPattern {
  readonly marks: readonly { readonly mark: PrintMark; readonly colour: string }[]
  /** One repeat, in the measure's unit. */
  readonly repeat: number
}

const PAPER: FabricFill = { fill: INK.white, edge: '#3c312b', hatch: '#b3a698', wrong: INK.white, print: null }

/** How each fabric is filled, by its id; plain paper for null and for ids the block does not have. */
export function fabricFills(fabrics: readonly Fabric[], fabricStyle: FabricStyle = 'cloth'): (fabric: string | null) => FabricFill {
  const known = new Map(fabrics.map((fabric) => [fabric.id, fabricStyle === 'outline' ? PAPER : fabricFillOf(fabric, fabricStyle)]))
  return (fabric) => (fabric === null ? PAPER : (known.get(fabric) ?? PAPER))
}

function fabricFillOf(fabric: Fabric, fabricStyle: FabricStyle): FabricFill {
  const { colour } = fabric
  const fill = fabricStyle === 'value' ? greyOf(colour) : colour
  return { fill, edge: edgeOf(colour), hatch: hatchOf(fill), wrong: wrongSideOf(fill), print: fabricStyle === 'cloth' ? printOf(fabric) : null }
}

function printOf({ colour, print }: Fabric): PrintPattern | null {
  const repeat = print === undefined ? null : parseRational(print.repeat)
  if (print?.second === undefined || repeat === null) return null
  const { second } = print
  return { repeat: toNumber(repeat), marks: PRINT_FACTS[print.kind].marks.map((mark) => ({ mark, colour: mixed(colour, second, mark.part) })) }
}

/** Fewest points of one repeat that are still seen, and most repeats drawn on one piece. */
const FINEST = 3.6
const MOST = 3_000

/** Prints begin at `origin`, the picture's top left. */
export function paintFabric(
  surface: Surface,
  outline: readonly Spot[],
  fabricFill: FabricFill,
  side: 'right' | 'wrong',
  scale: number,
  origin: Spot,
): void {
  const path = polygon(outline)
  surface.path(path, { fill: side === 'wrong' ? fabricFill.wrong : fabricFill.fill })
  if (side === 'wrong') surface.within(path, () => hatch(surface, boxOf(outline), fabricFill.hatch))
  else if (fabricFill.print !== null) paintPrint(surface, outline, fabricFill.print, scale, origin)
}

interface Box {
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
}

function boxOf(outline: readonly Spot[]): Box {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)]
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) }
}

const HATCH = 4.5

/** One way for all lines, so that a picture stays small; lines lie further apart on a piece that would take too many. */
function hatch(surface: Surface, { x0, y0, x1, y1 }: Box, colour: string): void {
  const lines = (x1 + y1 - x0 - y0) / HATCH
  const apart = HATCH * Math.max(1, 2 ** Math.ceil(Math.log2(lines / MOST)))
  const first = Math.ceil((x0 + y0) / apart)
  const last = Math.floor((x1 + y1) / apart)
  surface.path(
    (pen) => {
      for (let at = first; at <= last; at += 1) {
        const sum = at * apart
        const [top, foot] = [Math.max(y0, sum - x1), Math.min(y1, sum - x0)]
        pen.moveTo(sum - top, top)
        pen.lineTo(sum - foot, foot)
      }
    },
    { line: { colour, width: 0.35 } },
  )
}

function paintPrint(surface: Surface, outline: readonly Spot[], { marks, repeat }: PrintPattern, scale: number, [left, top]: Spot): void {
  const step = repeat * scale
  const { x0, y0, x1, y1 } = boxOf(outline)
  const repeats = ((x1 - x0) / step + 1) * ((y1 - y0) / step + 1)
  if (!(step >= FINEST) || repeats * marks.length > MOST) return
  surface.within(polygon(outline), () => {
    for (const { mark, colour } of marks) {
      // All repeats of one mark are one way of the pen, so that a picture stays small.
      surface.path(
        (pen) => {
          for (const y of repeatsIn(y0, y1, top, step)) for (const x of repeatsIn(x0, x1, left, step)) polygon(cornersOf(mark, [x, y], step))(pen)
        },
        { fill: colour },
      )
    }
  })
}

/** Where repeats begin that reach into a stretch. */
function repeatsIn(from: number, to: number, origin: number, step: number): number[] {
  const [first, last] = [Math.floor((from - origin) / step + 1e-6), Math.ceil((to - origin) / step - 1e-6)]
  return Array.from({ length: Math.max(0, last - first) }, (_, at) => origin + (first + at) * step)
}

function cornersOf(mark: PrintMark, [x, y]: Spot, step: number): Spot[] {
  const corners = mark.type === 'disc' ? round(mark.at, mark.radius, 14) : mark.corners
  return corners.map(([atX, atY]): Spot => [x + atX * step, y + atY * step])
}
