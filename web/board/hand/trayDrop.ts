/** Where an item from the tray would land, and what dropping it does. */
import { canBecome, type ExactBox, rational, type Turn, type Unit } from '../../../geometry/index.ts'
import { type Point, rectOf } from '../../document/shapes.ts'
import { pieceAt, unitById } from '../hitTest.ts'
import { newUnit, sizeOfKind, type TrayKind } from '../newUnit.ts'
import { snapContext } from './snapContext.ts'
import { type Guide, type Snapped, snapMove } from './snapping.ts'
import type { HandCommand, HandContext, TrayItem } from './values.ts'

/** A unit on its way from the tray, as it would lie; `replaces` is the unit that it would take the place of. */
export interface TrayTarget {
  readonly unit: Unit
  readonly replaces: Unit | null
  readonly guides: readonly Guide[]
}

/** `at` is in pixels of the board. */
export function trayTarget({ kind, half }: Extract<TrayItem, { type: 'unit' }>, at: Point, context: HandContext): TrayTarget {
  const cells = context.frame.toCells(...at)
  const replaces = unitToReplace(kind, cells, context)
  if (replaces !== null) return { unit: newUnit(context.block, kind, replaces.kind === 'polygon' ? [0, 0] : replaces.at), replaces, guides: [] }
  const { turn, mirror } = poseFromTray(kind, context)
  const { by, guides } = snapFromTray(kind, turn, cells, half, context)
  return { unit: newUnit(context.block, kind, by, turn, undefined, mirror), replaces, guides }
}

/** `at` is in pixels of the board. */
export function dropFromTray(item: TrayItem, at: Point, context: HandContext): HandCommand {
  const cells = context.frame.toCells(...at)
  if (item.type === 'fabric') return { type: 'recolourAt', fabric: item.fabric, at: cells }
  const replaces = unitToReplace(item.kind, cells, context)
  if (replaces !== null) return { type: 'replaceUnit', kind: item.kind, unit: replaces.id }
  const { turn, mirror } = poseFromTray(item.kind, context)
  return { type: 'placeUnit', kind: item.kind, at: snapFromTray(item.kind, turn, cells, item.half, context).by, turn, mirror }
}

/** As it was turned and flipped in the hand; a unit of another kind comes off the tray as it lies there. */
const poseFromTray = (kind: TrayKind, { unitInHand, unitTurn, unitMirror }: HandContext): { readonly turn: Turn; readonly mirror: boolean } =>
  kind === unitInHand ? { turn: unitTurn, mirror: unitMirror } : { turn: 0, mirror: false }

/** Its middle under the pointer, then snapped. */
function snapFromTray(kind: TrayKind, turn: Turn, [x, y]: Point, half: boolean, context: HandContext): Snapped {
  const [w, h] = sizeOfKind(kind, turn)
  const low: Point = [x - w / 2, y - h / 2]
  const box: ExactBox = { low: [rational(0), rational(0)], high: [rational(w), rational(h)] }
  return snapMove(box, low, snapContext(context, low, [low[0] + w, low[1] + h], new Set(), half))
}

/** The unit under the pointer, if it has the size of the new one and can become one of its kind. */
function unitToReplace(kind: TrayKind, cells: Point, { block }: HandContext): Unit | null {
  const id = pieceAt(block, cells)?.unit
  const unit = id == null ? undefined : unitById(block, id)
  if (unit === undefined || !canBecome(unit, kind)) return null
  const [w, h] = rectOf(unit).size
  const size = sizeOfKind(kind)
  return w === size[0] && h === size[1] ? unit : null
}
