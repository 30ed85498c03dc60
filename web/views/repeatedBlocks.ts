/**
 * The block among copies of itself.
 *
 * In      the block's pieces, how each copy lies, and what was found where copies meet.
 * Out     a drawing in cells of the whole setting: cloth copy by copy, the edges between them, and the meetings on those edges; seams that clash are
 *         marked along the edge too.
 */
import type { Block, SettingReport, Turn } from '../../geometry/index.ts'
import { bordersAround, type PatchShape, type Point, pointOf } from '../document/shapes.ts'
import { fabricParts } from '../drawing/fabricParts.ts'
import type { ViewDrawing, DrawingPart } from '../drawing/viewDrawing.ts'

export interface Copy {
  readonly at: Point
  readonly turn: Turn
  readonly press: 'own' | 'opposite'
}

export interface SettingView {
  readonly drawing: ViewDrawing
  /** Width and height of one copy and of all of them, in cells. */
  readonly copy: Point
  readonly whole: Point
}

/** Half the stretch along an edge that is marked where seams clash, in cells. */
const STRETCH = 0.4

export function settingView(block: Block, pieces: readonly PatchShape[], { columns, rows, copies, joins, meetings }: Laid): SettingView {
  const out = bordersAround(block)
  const copy: Point = [block.grid.columns + 2 * out, block.grid.rows + 2 * out]
  const whole: Point = [copy[0] * columns, copy[1] * rows]
  return { drawing: [...cloth(block, pieces, copies, copy), ...between(columns, rows, copy), ...found(joins, meetings)], copy, whole }
}

export interface Laid {
  readonly columns: number
  readonly rows: number
  readonly copies: readonly Copy[]
  readonly joins: SettingReport['joins']
  readonly meetings: SettingReport['meetings']
}

function cloth(block: Block, pieces: readonly PatchShape[], copies: readonly Copy[], [wide, high]: Point): DrawingPart[] {
  const patches = copies.flatMap(({ at, turn }) => {
    const lies = turned(turn, [block.grid.columns / 2, block.grid.rows / 2], [(at[0] + 0.5) * wide, (at[1] + 0.5) * high])
    return pieces.map(({ fabric, unit, name, corners }) => ({ fabric, unit, name, ring: corners.map(lies), turned: turn }))
  })
  const opposite = copies.filter(({ press }) => press === 'opposite').map(({ at }): Point => [(at[0] + 0.5) * wide, (at[1] + 0.5) * high])
  return [...fabricParts(block, patches), ...(opposite.length === 0 ? [] : [{ what: 'opposite', spots: opposite } as const])]
}

/** A point of the block in a copy turned about its middle. */
function turned(turn: Turn, [fromX, fromY]: Point, [toX, toY]: Point): (at: Point) => Point {
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

function between(columns: number, rows: number, [wide, high]: Point): DrawingPart[] {
  const ways: Point[][] = []
  for (let column = 1; column < columns; column++)
    ways.push([
      [column * wide, 0],
      [column * wide, rows * high],
    ])
  for (let row = 1; row < rows; row++)
    ways.push([
      [0, row * high],
      [columns * wide, row * high],
    ])
  return ways.length === 0 ? [] : [{ what: 'between', ways }]
}

/** What nests first, so that what clashes lies on it. */
function found(joins: SettingReport['joins'], meetings: SettingReport['meetings']): DrawingPart[] {
  const upright = new Set(joins.filter(({ from, to }) => from[0] === to[0]).map(({ id }) => id))
  const ways = onePlaceOnce(meetings.filter(({ verdict }) => verdict === 'clashes')).map(({ at, join }): Point[] => {
    const [x, y] = pointOf(at)
    const [dx, dy] = upright.has(join) ? [0, STRETCH] : [STRETCH, 0]
    return [
      [x - dx, y - dy],
      [x + dx, y + dy],
    ]
  })
  const marks = (['nests', 'pin', 'tip', 'open', 'clashes'] as const).flatMap((verdict): DrawingPart[] => {
    const spots = onePlaceOnce(meetings.filter((meeting) => meeting.verdict === verdict)).map(({ at }) => pointOf(at))
    return spots.length === 0 ? [] : [{ what: 'mark', verdict, spots }]
  })
  return [...(ways.length === 0 ? [] : [{ what: 'stretch', ways } as const]), ...marks]
}

/** Two pairs of seams that meet at one place have one mark. */
const onePlaceOnce = (meetings: SettingReport['meetings']): SettingReport['meetings'] => [
  ...new Map(meetings.map((meeting) => [`${meeting.at.join()} ${meeting.join}`, meeting])).values(),
]
