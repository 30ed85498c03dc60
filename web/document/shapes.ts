/** What lies on the board, in plain numbers for drawing and pointing: derived from the document and its report, never stored. */
import {
  type Block,
  type BoxUnit,
  boxOfUnit,
  cellOf,
  type Join,
  type Patch,
  type Findings,
  lieOf,
  parseRational,
  type ReportPoint,
  shapeOf,
  toNumber,
  type Unit,
} from '../../geometry/index.ts'

export type Point = readonly [number, number]

export interface PatchShape {
  readonly unit: string | null
  readonly name: string
  readonly fabric: string
  readonly corners: readonly Point[]
  /** How its fabric lies, in quarter turns: see `lieOf`. */
  readonly turn?: number
}

export const toDecimal = (value: number | string): number => (typeof value === 'number' ? value : toNumber(parseRational(value) ?? { n: 0n, d: 1n }))
export const pointOf = ([x, y]: ReportPoint): Point => [toDecimal(x), toDecimal(y)]

export const patchShapes = (patches: readonly Patch[]): PatchShape[] =>
  patches.map(({ unit, name, fabric, corners }) => ({ unit, name, fabric, corners: corners.map(pointOf) }))

interface Outline {
  readonly name: string
  readonly corners: readonly Point[]
}

/** Shapes from 0, 0: a block of ten thousand units has few that differ. */
const shapes = new Map<string, readonly Outline[]>()
const MOST_SHAPES = 4000

function outlinesOf(unit: BoxUnit): readonly Outline[] {
  const key = `${unit.kind} ${unit.size} ${unit.turn} ${unit.mirror} ${unit.corner} ${unit.kind === 'strips' || unit.kind === 'cornered' ? Object.keys(unit.fabrics) : ''}`
  const known = shapes.get(key)
  if (known !== undefined) return known
  if (shapes.size > MOST_SHAPES) shapes.clear()
  const made = shapeOf({ ...unit, at: [0, 0] }).patches.map(({ name, corners }) => ({
    name,
    corners: corners.map(([x, y]): Point => [toNumber(x), toNumber(y)]),
  }))
  shapes.set(key, made)
  return made
}

/** One unit's patches where they lie, moved by some cells. */
export function unitShapes(unit: Unit, dx = 0, dy = 0): PatchShape[] {
  const outlines = unit.kind === 'polygon' ? [{ name: 'patch', corners: unit.corners.map(pointOf) }] : outlinesOf(unit)
  const [left, top] = unit.kind === 'polygon' ? [dx, dy] : [toDecimal(unit.at[0]) + dx, toDecimal(unit.at[1]) + dy]
  return outlines.map(({ name, corners }) => ({
    unit: unit.id,
    name,
    fabric: unit.fabrics[name] as string,
    corners: corners.map(([x, y]): Point => [x + left, y + top]),
    turn: lieOf(unit, name),
  }))
}

/** The strips of the borders, inner first: sides, then top and bottom; and their corner squares. */
export function borderShapes(block: Block): PatchShape[] {
  const [cell, { columns, rows }] = [toNumber(cellOf(block)), block.grid]
  let inner = 0
  return (block.borders ?? []).flatMap(({ fabric, corner, finishedWidth }) => {
    const outer = inner + toDecimal(finishedWidth) / cell
    const strip = (name: string, x0: number, y0: number, x1: number, y1: number, stripFabric = fabric): PatchShape => ({
      unit: null,
      name,
      fabric: stripFabric,
      corners: [
        [x0, y0],
        [x1, y0],
        [x1, y1],
        [x0, y1],
      ],
    })
    const strips = [
      strip('left', -outer, -inner, -inner, rows + inner),
      strip('right', columns + inner, -inner, columns + outer, rows + inner),
      ...(corner === undefined
        ? [strip('top', -outer, -outer, columns + outer, -inner), strip('bottom', -outer, rows + inner, columns + outer, rows + outer)]
        : [
            strip('top', -inner, -outer, columns + inner, -inner),
            strip('topLeft', -outer, -outer, -inner, -inner, corner),
            strip('topRight', columns + inner, -outer, columns + outer, -inner, corner),
            strip('bottom', -inner, rows + inner, columns + inner, rows + outer),
            strip('bottomLeft', -outer, rows + inner, -inner, rows + outer, corner),
            strip('bottomRight', columns + inner, rows + inner, columns + outer, rows + outer, corner),
          ]),
    ]
    inner = outer
    return strips
  })
}

export function inside(corners: readonly Point[], [x, y]: Point): boolean {
  let within = false
  corners.forEach(([ax, ay], index) => {
    const [bx, by] = corners[(index + 1) % corners.length] as Point
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) within = !within
  })
  return within
}

export interface DrawnSeam {
  readonly join: Join
  readonly number: number
  readonly points: readonly Point[]
  /** The middle of the seam, and the direction (one cell long) in which its allowances lie; null where they lie open. */
  readonly middle: Point
  readonly lies: Point | null
  /** The direction across it in which its arrow points, one cell long. */
  readonly across: Point
}

/** Where along a seam its number can be, the best place first. */
const PLACES = [0.5, 0.375, 0.625, 0.3125, 0.1875]

const known = new WeakMap<Findings['joins'], readonly DrawnSeam[]>()

/** A report's seams as lines, computed once. */
export function drawnSeams(report: Findings): readonly DrawnSeam[] {
  const lines = known.get(report.joins) ?? seamsCache(report)
  known.set(report.joins, lines)
  return lines
}

function seamsCache(report: Findings): DrawnSeam[] {
  const busy = new Set(report.meetings.map(({ at }) => pointKey(pointOf(at))))
  return report.joins.map((join, index) => {
    const points = [join.from, ...join.via, join.to].map(pointOf)
    const [[ax, ay], [bx, by]] = points as [Point, Point]
    const length = Math.hypot(bx - ax, by - ay) || 1
    const clockwise: Point = [-(by - ay) / length, (bx - ax) / length]
    const { toward } = join.press
    const lies: Point | null = toward === 'open' ? null : toward === join.clockwise ? clockwise : [-clockwise[0], -clockwise[1]]
    // Off the middle if something meets there, so that the number hides no mark.
    const part = PLACES.find((along) => !busy.has(pointKey([ax + (bx - ax) * along, ay + (by - ay) * along]))) ?? 0.5
    return { join, number: index + 1, points, middle: [ax + (bx - ax) * part, ay + (by - ay) * part], lies, across: lies ?? clockwise }
  })
}

/** A point as a key, so that a third of a cell computed in two ways is the same point. */
const pointKey = ([x, y]: Point): string => `${Math.round(x * 1e6)},${Math.round(y * 1e6)}`

/** The seams that are tied to those of one meeting through other meetings: the ring or chain of a proof. */
export function seamsTiedThroughMeetings(report: Findings, meeting: number): readonly string[] {
  const pairs = report.meetings.filter(({ verdict }) => verdict === 'nests' || verdict === 'clashes')
  const tied = [...(report.meetings[meeting]?.seams ?? [])]
  for (const seam of tied)
    for (const { seams } of pairs) if (seams.includes(seam)) for (const other of seams) if (!tied.includes(other)) tied.push(other)
  return tied
}

export interface Rect {
  readonly at: Point
  readonly size: Point
}

export const rectOf = (unit: Unit): Rect =>
  unit.kind === 'polygon'
    ? boxOfUnit(unit)
    : { at: [toDecimal(unit.at[0]), toDecimal(unit.at[1])], size: [toDecimal(unit.size[0]), toDecimal(unit.size[1])] }

export function around(rects: readonly Rect[]): Rect | null {
  if (rects.length === 0) return null
  const low: Point = [Math.min(...rects.map(({ at }) => at[0])), Math.min(...rects.map(({ at }) => at[1]))]
  const high: Point = [Math.max(...rects.map(({ at, size }) => at[0] + size[0])), Math.max(...rects.map(({ at, size }) => at[1] + size[1]))]
  return { at: low, size: [high[0] - low[0], high[1] - low[1]] }
}

/** Border width all round, in cells. */
export const bordersAround = (block: Block): number =>
  (block.borders ?? []).reduce((sum, { finishedWidth }) => sum + toDecimal(finishedWidth), 0) / toNumber(cellOf(block))
