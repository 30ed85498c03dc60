/**
 * The hand on the board: what a press, a drag, a tap, the wheel and the keys mean. A state machine without a screen.
 *
 * In      the hand so far, one event, and what lies on the board around it.
 * Out     the hand after it, and commands as plain values: nothing is changed or drawn here.
 * The steps of each gesture are in the files beside this one: `drag.ts` says what a drag becomes, `finish.ts` what a release does.
 */
import type { Point } from '../../document/shapes.ts'
import { pieceAt } from '../hitTest.ts'
import { keyCommand } from '../keys/keyCommand.ts'
import { continueDrag, pressAt, startDrag } from './drag.ts'
import { isDrag } from './dragStart.ts'
import { finish } from './finish.ts'
import { cursorOver, handleAt, handlesFor, pressHandle } from './handles.ts'
import { addFinger, movePinch, pinchView, startPinch } from './pinch.ts'
import { arrowAt, seamKey } from './pressing.ts'
import { dropFromTray } from './trayDrop.ts'
import type { HandCommand, Gesture, HandState, HandContext, HandEvent, HandResult, PointerInput, PointerState } from './values.ts'
import { ZOOM_RANGE, zoomAround } from './zoom.ts'

export const IDLE: HandState = { gesture: null, block: null, pointers: new Map(), since: 0, panKey: false, coarse: false, hover: null }

/** One event. */
export function handle(before: HandState, event: HandEvent, context: HandContext): HandResult {
  const hand = withoutStaleGesture(before, context)
  switch (event.type) {
    case 'press':
      return press(hand, event, context)
    case 'move':
      return move(hand, event.pointer, context)
    case 'release':
    case 'cancel':
      return release(hand, event, context)
    case 'leave':
      return result(hand.hover === null ? hand : { ...hand, hover: null })
    case 'wheel':
      return result(hand, zoomAround(context, event.at, Math.exp(-event.delta * (event.fine ? FINE_WHEEL : WHEEL))))
    case 'keyDown':
      return keyDown(hand, event, context)
    case 'keyUp':
      return result(event.key === ' ' ? { ...hand, panKey: false } : hand)
    case 'trayDrop':
      return event.at === null ? { hand, commands: [], handled: false } : result(hand, dropFromTray(event.item, event.at, context))
  }
}

/** How much one pixel of the wheel zooms: as the power of e. */
const WHEEL = 0.0016
const FINE_WHEEL = 0.01

const result = (hand: HandState, ...commands: HandCommand[]): HandResult => ({ hand, commands, handled: true })

const withGesture = (hand: HandState, gesture: Gesture | null, { document }: HandContext): HandState => ({ ...hand, gesture, block: document })

/**
 * The gesture that continues, or null.
 *
 * Undo, or a change from another tab, can take away or move the units that a drag holds; then the drag is over.
 */
export function gestureOf({ gesture, block }: HandState, document: HandContext['document']): Gesture | null {
  const holdsUnits = gesture !== null && (gesture.type === 'move' || gesture.type === 'resize' || gesture.type === 'fill')
  return holdsUnits && block !== document ? null : gesture
}

function withoutStaleGesture(hand: HandState, context: HandContext): HandState {
  return gestureOf(hand, context.document) === hand.gesture ? hand : withGesture(hand, null, context)
}

function pointerState({ at, pointerType, alt, add }: PointerInput, { frame, halfCells, adding }: HandContext): PointerState {
  return { at, cells: frame.toCells(...at), half: alt || halfCells, add: add || adding, pointerType }
}

function press(before: HandState, { pointer, button, time }: Extract<HandEvent, { type: 'press' }>, context: HandContext): HandResult {
  const at = pointerState(pointer, context)
  const touch = at.pointerType === 'touch'
  const pointers = new Map(before.pointers).set(pointer.id, at.at)
  const hand: HandState = { ...before, pointers, since: pointers.size === 1 ? time : before.since, coarse: touch }
  const commands: HandCommand[] = [{ type: 'endPreview' }, ...(touch ? [{ type: 'focusBoard' } as const] : [])]
  const next = (gesture: Gesture | null): HandResult => result(withGesture(hand, gesture, context), ...commands)
  const { gesture } = hand
  if (pointers.size > 2) return next(gesture?.type === 'pinch' ? addFinger(gesture) : null)
  if (pointers.size === 2) {
    const begun = gesture !== null && gesture.type !== 'press'
    return next(startPinch(firstTwo(hand), begun ? null : hand.since, context.zoom, context.pan))
  }
  if (button === 1 || hand.panKey) return next({ type: 'pan', from: at.at, pan: context.pan })
  if (button !== 0) return result(hand, ...commands)
  // The handles are as large as they were drawn before this press.
  const handles = handlesFor(before, context)
  const pressed = (handles === null ? null : pressHandle(handles, at, context)) ?? pressAt(at, context)
  const hover = pressed.type === 'press' && context.tool === 'patch' ? at : hand.hover
  return result(withGesture({ ...hand, hover }, pressed, context), ...commands)
}

const firstTwo = ({ pointers }: HandState): [Point, Point] => [...pointers.values()].slice(0, 2) as [Point, Point]

function move(before: HandState, pointer: PointerInput, context: HandContext): HandResult {
  const at = pointerState(pointer, context)
  const pointers = before.pointers.has(pointer.id) ? new Map(before.pointers).set(pointer.id, at.at) : before.pointers
  const hover = context.tool === 'patch' ? at : before.hover
  const hand = pointers === before.pointers && hover === before.hover ? before : { ...before, pointers, hover }
  const { gesture } = hand
  if (gesture === null) return at.pointerType === 'mouse' ? result(hand, { type: 'showCursor', cursor: cursorAt(hand, at, context) }) : result(hand)
  if (gesture.type === 'pinch') {
    const next = movePinch(gesture, firstTwo(hand))
    const middle: Point = [context.size[0] / 2, context.size[1] / 2]
    return result(withGesture(hand, next, context), { type: 'setView', ...pinchView(next, firstTwo(hand), middle, ZOOM_RANGE) })
  }
  if (gesture.type === 'pan') {
    const { from, pan } = gesture
    return result(hand, { type: 'setView', zoom: context.zoom, pan: [pan[0] + at.at[0] - from[0], pan[1] + at.at[1] - from[1]] })
  }
  if (gesture.type !== 'press') return result(withGesture(hand, continueDrag(gesture, at, context), context))
  if (!isDrag(gesture.from, at)) return result(hand)
  const begun = startDrag(gesture, at, context)
  return result(withGesture(hand, begun, context), ...(begun.type === 'move' ? [{ type: 'select', ids: begun.ids } as const] : []))
}

/** A mouse shows what a press would do. */
function cursorAt(hand: HandState, at: PointerState, context: HandContext): string {
  if (context.pressing) return arrowAt(at, context) === null ? 'default' : 'pointer'
  const handles = handlesFor(hand, context)
  return cursorOver(handles === null ? null : handleAt(handles, at.at), pieceAt(context.block, at.cells)?.unit ?? null, context)
}

function release(before: HandState, event: Extract<HandEvent, { type: 'release' | 'cancel' }>, context: HandContext): HandResult {
  const pointers = new Map(before.pointers)
  pointers.delete(event.pointer.id)
  const { gesture } = before
  const hand = withGesture({ ...before, pointers }, null, context)
  if (gesture === null || event.type === 'cancel') return result(hand)
  const commands = finish(gesture, event.time, context)
  // A finger does not hover: the next corner is shown only where a mouse is.
  const corner = commands.some(({ type }) => type === 'addCorner') && hand.coarse
  return result(corner ? { ...hand, hover: null } : hand, ...commands)
}

function keyDown(hand: HandState, { press }: Extract<HandEvent, { type: 'keyDown' }>, context: HandContext): HandResult {
  if (press.key === ' ' && context.tool !== 'patch') return result(hand.panKey ? hand : { ...hand, panKey: true })
  if (press.key === 'Escape' && hand.gesture !== null) return result(withGesture(hand, null, context))
  const command = keyCommand(press, context)
  if (command === null) return { hand, commands: [], handled: false }
  if (command.type === 'stepSeam' || command.type === 'pressSeam') return result(hand, ...seamKey(command, context))
  if (command.type !== 'zoom') return result(hand, { type: 'key', command })
  return result(hand, zoomAround(context, [context.size[0] / 2, context.size[1] / 2], command.by))
}
