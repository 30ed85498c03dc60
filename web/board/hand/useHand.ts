/**
 * The hand in the page: takes pointer events, the wheel and keys from the board's element, feeds them to the machine in `hand.ts`, and carries out the
 * commands that come back.
 */
import { type KeyboardEvent, type PointerEvent, type RefObject, useEffect, useRef, useState } from 'react'
import type { Point } from '../../document/shapes.ts'
import { cachedFindings } from '../../document/findingsCache.ts'
import { getState, type ViewState } from '../../document/store.ts'
import type { TrayKind } from '../newUnit.ts'
import { boardFrame } from '../boardFrame.ts'
import { handle, IDLE } from './hand.ts'
import { runCommand } from './runCommand.ts'
import { onTrayDrop } from './trayDrag.ts'
import type { HandCommand, HandState, HandContext, HandEvent, PointerInput } from './values.ts'

/** Marks of meetings are drawn in every view that shows the block as it is sewn. */
export const showsMeetings = ({ marks, mode }: ViewState): boolean => marks !== 'none' && mode !== 'layers' && mode !== 'quilting'

/** What the board shows now, as the hand needs it; `size` is the board's in pixels. */
export function handContext(size: Point): HandContext {
  const { history, view, preview, layers } = getState()
  const block = preview?.block ?? history.block
  return {
    block,
    document: history.block,
    report: preview === null ? cachedFindings(history.block, layers).report : preview.report,
    showsMeetings: showsMeetings(view),
    pressing: view.mode === 'pressing',
    seam: view.seam,
    selected: view.selected,
    tool: view.tool,
    unitInHand: view.unitInHand as TrayKind | null,
    unitTurn: view.unitTurn,
    unitMirror: view.unitMirror,
    fabricInHand: view.fabricInHand,
    halfCells: view.halfCells,
    adding: view.adding,
    frame: boardFrame(block, view, size),
    size,
    zoom: view.zoom,
    pan: view.pan,
  }
}

interface HandListeners {
  readonly onPointerDown: (event: PointerEvent<HTMLDivElement>) => void
  readonly onPointerMove: (event: PointerEvent<HTMLDivElement>) => void
  readonly onPointerUp: (event: PointerEvent<HTMLDivElement>) => void
  readonly onPointerCancel: (event: PointerEvent<HTMLDivElement>) => void
  readonly onPointerLeave: () => void
  readonly onKeyDown: (event: KeyboardEvent<HTMLDivElement>) => void
  readonly onKeyUp: (event: KeyboardEvent<HTMLDivElement>) => void
}

/** The hand as it is, and what the board's element must listen to. */
export function useHand(board: RefObject<HTMLDivElement | null>, size: Point): { readonly hand: HandState; readonly listeners: HandListeners } {
  const [hand, setHand] = useState(() => ({ ...IDLE, coarse: window.matchMedia('(pointer: coarse)').matches }))
  // Events can come faster than the page is rendered, so each continues from the last state, rendered or not.
  const latest = useRef<HandState>(hand)
  const boardSize = useRef(size)
  boardSize.current = size

  const feed = useRef((event: HandEvent): boolean => {
    const result = handle(latest.current, event, handContext(boardSize.current))
    latest.current = result.hand
    setHand(result.hand)
    for (const command of result.commands) run(board.current, command)
    return result.handled
  }).current

  useEffect(() => listenToBoard(board.current as HTMLDivElement, feed), [board, feed])

  const pointer = (event: PointerEvent<HTMLDivElement>): PointerInput => ({
    id: event.pointerId,
    at: positionIn(event.currentTarget, event),
    pointerType: event.pointerType,
    alt: event.altKey,
    add: event.shiftKey || event.ctrlKey || event.metaKey,
  })
  const listeners: HandListeners = {
    onPointerDown: (event) => {
      event.currentTarget.setPointerCapture(event.pointerId)
      feed({ type: 'press', pointer: pointer(event), button: event.button, time: event.timeStamp })
    },
    onPointerMove: (event) => void feed({ type: 'move', pointer: pointer(event) }),
    onPointerUp: (event) => void feed({ type: 'release', pointer: pointer(event), time: event.timeStamp }),
    onPointerCancel: (event) => void feed({ type: 'cancel', pointer: pointer(event) }),
    onPointerLeave: () => void feed({ type: 'leave' }),
    onKeyDown: (event) => {
      const { key, shiftKey: shift, altKey: alt, ctrlKey, metaKey } = event
      if (feed({ type: 'keyDown', press: { key, shift, alt, control: ctrlKey || metaKey } })) event.preventDefault()
    },
    onKeyUp: ({ key }) => void feed({ type: 'keyUp', key }),
  }
  return { hand, listeners }
}

function run(board: HTMLDivElement | null, command: HandCommand): void {
  if (command.type === 'focusBoard') board?.focus({ preventScroll: true })
  else if (command.type === 'showCursor') board?.style.setProperty('cursor', command.cursor)
  else runCommand(command)
}

function positionIn(board: HTMLElement, { clientX, clientY }: { readonly clientX: number; readonly clientY: number }): Point {
  const box = board.getBoundingClientRect()
  return [clientX - box.left, clientY - box.top]
}

/** What React cannot listen to: events that must be kept from the browser, and drops from the tray. Gives back what ends it. */
function listenToBoard(board: HTMLDivElement, feed: (event: HandEvent) => boolean): () => void {
  const listening = new AbortController()
  const options = { passive: false, signal: listening.signal }
  const wheel = (event: WheelEvent): void => {
    event.preventDefault()
    feed({ type: 'wheel', at: positionIn(board, event), delta: event.deltaY, fine: event.ctrlKey })
  }
  // Only the board follows a finger: else some browsers take its lifting for a fling, and the next press anywhere for stopping it; or they send a mouse
  // event after it, which moves the focus away from where the press has put it.
  const keepTouch = (event: TouchEvent): void => {
    if (event.cancelable) event.preventDefault()
  }
  board.addEventListener('wheel', wheel, options)
  board.addEventListener('touchmove', keepTouch, options)
  board.addEventListener('touchend', keepTouch, options)
  onTrayDrop(({ x, y, ...item }) => {
    const box = board.getBoundingClientRect()
    const inside = x >= box.left && x <= box.right && y >= box.top && y <= box.bottom
    return feed({ type: 'trayDrop', item, at: inside ? [x - box.left, y - box.top] : null })
  })
  return () => listening.abort()
}
