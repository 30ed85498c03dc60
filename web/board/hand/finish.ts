/**
 * What a gesture does when the hand lets go.
 *
 * In      the gesture as it stands, when it ended (milliseconds of the page), and what lies on the board.
 * Out     commands.
 */
import { meetingAt } from '../hitTest.ts'
import { unitsInBox, unitsInLoop } from '../selectArea.ts'
import { pressAt } from './drag.ts'
import { fingerTap } from './pinch.ts'
import { pressArrowAt } from './pressing.ts'
import { cornerAt } from './snapContext.ts'
import type { HandCommand, Gesture, GestureOf, HandContext, Pinch, PointerState } from './values.ts'

export function finish(gesture: Gesture, time: number, context: HandContext): readonly HandCommand[] {
  switch (gesture.type) {
    case 'press':
      return tap(gesture, context)
    case 'move':
      return dropMoved(gesture)
    case 'resize':
      // A corner that was not dragged was pressed for what lies under it.
      return gesture.dragged ? [{ type: 'resizeUnits', ids: gesture.ids, to: gesture.to }] : tap(pressAt(gesture.from, context), context)
    case 'recolour':
      return [{ type: 'recolourPatches', fabric: gesture.fabric, over: gesture.over }]
    case 'fill':
      return [{ type: 'placeUnits', units: gesture.units }]
    case 'corner':
      return [addCorner(gesture.to, context)]
    case 'box':
    case 'loop':
      return [{ type: 'selectArea', ids: unitsInArea(gesture, context) }]
    case 'pinch':
      return liftFingers(gesture, time)
    case 'pan':
      return []
  }
}

const addCorner = (at: PointerState, context: HandContext): HandCommand => ({ type: 'addCorner', corner: cornerAt(at, context) })

function liftFingers(pinch: Pinch, time: number): readonly HandCommand[] {
  const type = fingerTap(pinch, time)
  return type === null ? [] : [{ type }]
}

function dropMoved({ ids, snapped, fits, swap, inTheWay }: GestureOf<'move'>): readonly HandCommand[] {
  if (fits || (swap === null && inTheWay === null)) return [{ type: 'moveUnits', ids, by: snapped.by }]
  return swap === null ? [{ type: 'refuseSwap' }] : [{ type: 'swapUnits', one: ids[0] as string, other: swap }]
}

/** Units that the box touches, or whose middle lies in the loop; after those already selected, where the hand adds. */
function unitsInArea(gesture: GestureOf<'box' | 'loop'>, { block, selected }: HandContext): string[] {
  const units =
    gesture.type === 'box'
      ? unitsInBox(block, gesture.from.cells, gesture.to.cells)
      : unitsInLoop(
          block,
          gesture.points.map(({ cells }) => cells),
        )
  return [...new Set([...(gesture.from.add ? selected : []), ...units.map(({ id }) => id)])]
}

/** Pixels from the middle of a mark within which a tap is on it. */
const MARK_REACH = 9

/** A press that went nowhere. */
function tap({ patch, from }: GestureOf<'press'>, context: HandContext): readonly HandCommand[] {
  const { tool, fabricInHand, unitInHand, selected, frame, report, showsMeetings } = context
  if (context.pressing) return pressArrowAt(from, context)
  if (tool === 'patch') return [addCorner(from, context)]
  if (fabricInHand !== null && !from.add) return [{ type: 'recolourAt', fabric: fabricInHand, at: from.cells }]
  const meeting = showsMeetings && tool === 'hand' && report !== null ? meetingAt(report, from.cells, MARK_REACH / frame.scale) : null
  if (meeting !== null) return [{ type: 'showMeeting', index: meeting }]
  if (patch === null && unitInHand !== null) return [{ type: 'placeAround', kind: unitInHand, at: from.cells }]
  if (patch === null) return [{ type: 'select', ids: from.add ? selected : [] }]
  const { unit } = patch
  const toggled = selected.includes(unit) ? selected.filter((id) => id !== unit) : [...selected, unit]
  return [{ type: 'selectPatch', ids: from.add ? toggled : [unit], patch, add: from.add }]
}
