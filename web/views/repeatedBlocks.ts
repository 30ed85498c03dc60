/**
 * A drawing of the block repeated beside itself.
 *
 * In      the block's patches, how each copy lies, and what was found where copies meet.
 * Out     a drawing in cells of the whole setting: the fabric copy by copy, the edges between copies, and the meetings on those edges; seams that clash
 *         are marked along the edge too.
 */
import type { Block, SettingReport, Turn } from '../../geometry/index.ts'
import { bordersAround, type PatchShape, type Point, pointOf } from '../document/shapes.ts'
import { fabricParts } from '../drawing/fabricParts.ts'
import { markParts } from './markParts.ts'
import type { ViewDrawing, DrawingPart } from '../drawing/viewDrawing.ts'

interface Copy {
  readonly at: Point
  readonly turn: Turn
  readonly press: 'own' | 'opposite'
}

interface SettingView {
  readonly drawing: ViewDrawing
  /** Width and height of one copy and of all of them, in cells. */
  readonly copy: Point
  readonly whole: Point
}

/** Cells to each side of a clash that are marked along the edge. */
const MARKED = 0.4

export function settingView(block: Block, pieces: readonly PatchShape[], { columns, rows, copies, joins, meetings }: SettingLayout): SettingView {
  const borders = bordersAround(block)
  const copy: Point = [block.grid.columns + 2 * borders, block.grid.rows + 2 * borders]
  const whole: Point = [copy[0] * columns, copy[1] * rows]
  return {
    drawing: [...fabricOfCopies(block, pieces, copies, copy), ...edgesBetween(columns, rows, copy), ...meetingParts(joins, meetings)],
    copy,
    whole,
  }
}

interface SettingLayout {
  readonly columns: number
  readonly rows: number
  readonly copies: readonly Copy[]
  readonly joins: SettingReport['joins']
  readonly meetings: SettingReport['meetings']
}

function fabricOfCopies(block: Block, pieces: readonly PatchShape[], copies: readonly Copy[], [wide, high]: Point): DrawingPart[] {
  const patches = copies.flatMap(({ at, turn }) => {
    const toCopy = turnedInto(turn, [block.grid.columns / 2, block.grid.rows / 2], [(at[0] + 0.5) * wide, (at[1] + 0.5) * high])
    return pieces.map(({ fabric, unit, name, corners }) => ({ fabric, unit, name, outline: corners.map(toCopy), turned: turn }))
  })
  const opposite = copies.filter(({ press }) => press === 'opposite').map(({ at }): Point => [(at[0] + 0.5) * wide, (at[1] + 0.5) * high])
  return [...fabricParts(block, patches), ...(opposite.length === 0 ? [] : [{ type: 'opposite', points: opposite } as const])]
}

/** Takes a point of the block to where it lies in a copy, turned around its middle. */
function turnedInto(turn: Turn, [fromX, fromY]: Point, [toX, toY]: Point): (at: Point) => Point {
  const [cos, sin] = (
    [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ] as const
  )[turn]
  return ([x, y]) => [toX + (x - fromX) * cos - (y - fromY) * sin, toY + (x - fromX) * sin + (y - fromY) * cos]
}

function edgesBetween(columns: number, rows: number, [wide, high]: Point): DrawingPart[] {
  const edges: Point[][] = []
  for (let column = 1; column < columns; column++)
    edges.push([
      [column * wide, 0],
      [column * wide, rows * high],
    ])
  for (let row = 1; row < rows; row++)
    edges.push([
      [0, row * high],
      [columns * wide, row * high],
    ])
  return edges.length === 0 ? [] : [{ type: 'between', lines: edges }]
}

/** Clashes last, so that their marks lie on top. */
function meetingParts(joins: SettingReport['joins'], meetings: SettingReport['meetings']): DrawingPart[] {
  const upright = new Set(joins.filter(({ from, to }) => from[0] === to[0]).map(({ id }) => id))
  const lines = oncePerPlace(meetings.filter(({ verdict }) => verdict === 'clashes')).map(({ at, join }): Point[] => {
    const [x, y] = pointOf(at)
    const [dx, dy] = upright.has(join) ? [0, MARKED] : [MARKED, 0]
    return [
      [x - dx, y - dy],
      [x + dx, y + dy],
    ]
  })
  const placed = meetings.map(({ at, verdict }) => ({ at: pointOf(at), verdict }))
  return [...(lines.length === 0 ? [] : [{ type: 'stretch', lines } as const]), ...markParts(placed, ['nests', 'pin', 'tip', 'open', 'clashes'])]
}

/** Two pairs of seams that clash at one place are marked along one stretch of the edge. */
const oncePerPlace = (meetings: SettingReport['meetings']): SettingReport['meetings'] => [
  ...new Map(meetings.map((meeting) => [`${meeting.at.join()} ${meeting.join}`, meeting])).values(),
]
