/** What lies on the board, in plain numbers for drawing and pointing: derived from the document and its report, never stored. */
import {
  type Block,
  boxOfUnit,
  cellOf,
  type Join,
  type Patch,
  type Findings,
  parseRational,
  type ReportPoint,
  shapeOf,
  toNumber,
  type Unit,
} from '../../geometry/index.ts'

export type Spot = readonly [number, number]

export interface Piece {
  readonly unit: string | null
  readonly name: string
  readonly fabric: string
  readonly corners: readonly Spot[]
}

export const number = (value: number | string): number => toNumber(parseRational(value) ?? { n: 0n, d: 1n })
export const spot = ([x, y]: ReportPoint): Spot => [number(x), number(y)]

export const piecesOf = (patches: readonly Patch[]): Piece[] =>
  patches.map(({ unit, name, fabric, corners }) => ({ unit, name, fabric, corners: corners.map(spot) }))

/** One unit's patches where they lie, moved by some cells. */
export function piecesOfUnit(unit: Unit, dx = 0, dy = 0): Piece[] {
  const shapes =
    unit.kind === 'polygon'
      ? [{ name: 'patch', corners: unit.corners.map(spot) }]
      : shapeOf(unit).patches.map(({ name, corners }) => ({ name, corners: corners.map(([x, y]): Spot => [toNumber(x), toNumber(y)]) }))
  return shapes.map(({ name, corners }) => ({
    unit: unit.id,
    name,
    fabric: unit.fabrics[name] as string,
    corners: corners.map(([x, y]): Spot => [x + dx, y + dy]),
  }))
}

export function inside(corners: readonly Spot[], [x, y]: Spot): boolean {
  let within = false
  corners.forEach(([ax, ay], index) => {
    const [bx, by] = corners[(index + 1) % corners.length] as Spot
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) within = !within
  })
  return within
}

/** The topmost piece under a spot. */
export const pieceAt = (pieces: readonly Piece[], at: Spot): Piece | undefined => pieces.findLast(({ corners }) => inside(corners, at))

/** Spots of a cell that are asked one after the other; off the middle and the diagonals, where seams run. */
const SPOTS = [0.47, 0.13, 0.83, 0.29, 0.67]

/** The pieces that lie in a cell, the one in its middle first. */
export function piecesIn(pieces: readonly Piece[], [x, y]: Spot): Piece[] {
  const found = new Set<Piece>()
  for (const dy of SPOTS)
    for (const dx of SPOTS) {
      const piece = pieceAt(pieces, [x + dx, y + dy - 0.05])
      if (piece !== undefined) found.add(piece)
    }
  return [...found]
}

export interface Line {
  readonly join: Join
  readonly number: number
  readonly points: readonly Spot[]
  /** The middle of the seam, and the direction (one cell long) in which its allowances lie; null where they lie open. */
  readonly middle: Spot
  readonly lies: Spot | null
}

/** Where along a seam its number may stand, the best first. */
const PLACES = [0.5, 0.375, 0.625, 0.3125, 0.1875]

export function linesOf(report: Findings): Line[] {
  const busy = new Set(report.meetings.map(({ at }) => spot(at).join()))
  return report.joins.map((join, index) => {
    const points = [join.from, ...join.via, join.to].map(spot)
    const [[ax, ay], [bx, by]] = points as [Spot, Spot]
    const length = Math.hypot(bx - ax, by - ay) || 1
    const clockwise: Spot = [-(by - ay) / length, (bx - ax) / length]
    const { toward } = join.press
    const lies: Spot | null = toward === 'open' ? null : toward === join.clockwise ? clockwise : [-clockwise[0], -clockwise[1]]
    // Off the middle where something meets there, so that the number hides no mark.
    const part = PLACES.find((along) => !busy.has(`${ax + (bx - ax) * along},${ay + (by - ay) * along}`)) ?? 0.5
    return { join, number: index + 1, points, middle: [ax + (bx - ax) * part, ay + (by - ay) * part], lies }
  })
}

/** The seams that decide one another through meetings, beginning with those of one meeting: the ring or chain that a proof speaks of. */
export function tiedTo(report: Findings, meeting: number): readonly string[] {
  const pairs = report.meetings.filter(({ verdict }) => verdict === 'nests' || verdict === 'clashes')
  const tied = [...(report.meetings[meeting]?.seams ?? [])]
  for (const seam of tied)
    for (const { seams } of pairs) if (seams.includes(seam)) for (const other of seams) if (!tied.includes(other)) tied.push(other)
  return tied
}

export interface Rect {
  readonly at: Spot
  readonly size: Spot
}

export const rectOf = (unit: Unit): Rect => boxOfUnit(unit)

export function around(rects: readonly Rect[]): Rect | null {
  if (rects.length === 0) return null
  const low: Spot = [Math.min(...rects.map(({ at }) => at[0])), Math.min(...rects.map(({ at }) => at[1]))]
  const high: Spot = [Math.max(...rects.map(({ at, size }) => at[0] + size[0])), Math.max(...rects.map(({ at, size }) => at[1] + size[1]))]
  return { at: low, size: [high[0] - low[0], high[1] - low[1]] }
}

/** Whether boxes lie inside the grid and over no other unit's box. */
export function fits(block: Block, rects: readonly Rect[], besides: ReadonlySet<string>): boolean {
  const { columns, rows } = block.grid
  if (rects.some(({ at, size }) => at[0] < 0 || at[1] < 0 || at[0] + size[0] > columns || at[1] + size[1] > rows)) return false
  const others = block.units.filter(({ id }) => !besides.has(id)).map(rectOf)
  return !rects.some((rect) => others.some((other) => over(rect, other)))
}

const over = (a: Rect, b: Rect): boolean =>
  ([0, 1] as const).every((axis) => a.at[axis] < b.at[axis] + b.size[axis] && b.at[axis] < a.at[axis] + a.size[axis])

/** Border width all round, in cells. */
export const bordersAround = (block: Block): number =>
  (block.borders ?? []).reduce((sum, { finishedWidth }) => sum + number(finishedWidth), 0) / toNumber(cellOf(block))
