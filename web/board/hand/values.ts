/**
 * What the hand on the board is made of: events in, its state, the gestures it can be in the middle of, and the commands that come out. Plain values,
 * no screen.
 */
import type { Block, ExactBox, FileBox, FilePoint, Findings, Position, PressChoice, Turn, Unit } from '../../../geometry/index.ts'
import type { DragTool } from '../../document/store.ts'
import type { Point } from '../../document/shapes.ts'
import type { KeyPress, StoreKeyCommand } from '../keys/values.ts'
import type { TrayKind } from '../newUnit.ts'
import type { Frame } from '../viewport.ts'
import type { Snapped } from './snapping.ts'

/** A pointer event with only what the hand needs of it. */
export interface PointerInput {
  readonly id: number
  /** Pixels from the top left corner of the board. */
  readonly at: Point
  /** `mouse`, `pen` or `touch`. */
  readonly pointerType: string
  /** Alt is held: snap to half cells too. */
  readonly alt: boolean
  /** Shift, Ctrl or Cmd is held: add to the selection. */
  readonly add: boolean
}

/** What the maker carries over from the tray or the fabric list. */
export type TrayItem =
  | { readonly type: 'unit'; readonly kind: TrayKind /** Snap to half cells too. */; readonly half: boolean }
  | { readonly type: 'fabric'; readonly fabric: string }

/** `time` is in milliseconds of the page. */
export type HandEvent =
  | { readonly type: 'press'; readonly pointer: PointerInput; readonly button: number; readonly time: number }
  | { readonly type: 'move'; readonly pointer: PointerInput }
  | { readonly type: 'release'; readonly pointer: PointerInput; readonly time: number }
  /** The browser has taken the pointer away. */
  | { readonly type: 'cancel'; readonly pointer: PointerInput }
  /** The mouse has left the board. */
  | { readonly type: 'leave' }
  /** `fine` is a pinch on a touchpad, which comes as a wheel with Ctrl. */
  | { readonly type: 'wheel'; readonly at: Point; readonly delta: number; readonly fine: boolean }
  | { readonly type: 'keyDown'; readonly press: KeyPress }
  | { readonly type: 'keyUp'; readonly key: string }
  /** An item from the tray is dropped; null where that is off the board. */
  | { readonly type: 'trayDrop'; readonly item: TrayItem; readonly at: Point | null }

/** Where a pointer is, and what its modifier keys and the tool buttons ask for. */
export interface PointerState {
  /** Pixels. */
  readonly at: Point
  readonly cells: Point
  /** Snap to half cells too. */
  readonly half: boolean
  /** Add to the selection. */
  readonly add: boolean
  readonly pointerType: string
}

/** Everything outside the hand that decides what an event means. */
export interface HandContext {
  /** The block as it is shown: with a fix in it while one is tried. */
  readonly block: Block
  /** The block itself. */
  readonly document: Block
  /** The findings of the block that is shown; null until they are known. */
  readonly report: Findings | null
  /** The marks of meetings can be seen, and so pressed. */
  readonly showsMeetings: boolean
  /** Pressing arrows are shown: a press is on one of them, and units stay where they are. */
  readonly pressing: boolean
  /** The seam that is selected there, by the id of its join. */
  readonly seam: string | null
  /** Ids of units. */
  readonly selected: readonly string[]
  readonly tool: DragTool
  readonly unitInHand: TrayKind | null
  /** Quarter turns clockwise of the unit in hand. */
  readonly unitTurn: Turn
  /** The unit in hand is flipped left for right, before it is turned. */
  readonly unitMirror: boolean
  readonly fabricInHand: string | null
  /** The button that snaps to half cells is on. */
  readonly halfCells: boolean
  /** The button that adds to the selection is on. */
  readonly adding: boolean
  readonly frame: Frame
  /** The board's width and height in pixels. */
  readonly size: Point
  /** 1 fits the block to the board. */
  readonly zoom: number
  /** Pixels. */
  readonly pan: Point
}

export interface PatchRef {
  readonly unit: string
  readonly name: string
}

/** A corner of a box: 0 low, 1 high, across and down. */
export type Corner = readonly [0 | 1, 0 | 1]

/** Two or more fingers. */
export interface Pinch {
  readonly type: 'pinch'
  readonly fingers: number
  /** When the first finger came down; null if it had started something else, for then lifting it is not a tap. */
  readonly since: number | null
  /** No finger has moved yet: the view stays as it is, so that a tap does not shake it. */
  readonly resting: boolean
  readonly at: readonly [Point, Point]
  readonly zoom: number
  readonly pan: Point
}

export type Gesture =
  /** A press that is not a drag yet. */
  | { readonly type: 'press'; readonly from: PointerState; readonly patch: PatchRef | null }
  /** A fabric drawn across patches. */
  | { readonly type: 'recolour'; readonly fabric: string; readonly over: readonly PatchRef[]; readonly last: Point }
  | {
      readonly type: 'move'
      readonly from: PointerState
      readonly ids: readonly string[]
      readonly box: ExactBox
      readonly snapped: Snapped
      readonly fits: boolean
      /** The unit that would swap places with the dragged one; or one that is in the way and cannot. */
      readonly swap: string | null
      readonly inTheWay: string | null
    }
  | {
      readonly type: 'resize'
      readonly from: PointerState
      readonly dragged: boolean
      readonly ids: readonly string[]
      readonly box: ExactBox
      readonly corner: Corner
      readonly to: FileBox
      readonly fits: boolean
    }
  /** The unit in hand placed on cell after cell; a square as one large square, unless the hand adds or something is in the way. */
  | { readonly type: 'fill'; readonly kind: TrayKind; readonly from: Point; readonly units: readonly Unit[] }
  /** A corner of a free patch under a finger, which hides it until it lifts. */
  | { readonly type: 'corner'; readonly to: PointerState }
  | { readonly type: 'box'; readonly from: PointerState; readonly to: PointerState }
  | { readonly type: 'loop'; readonly from: PointerState; readonly points: readonly PointerState[] }
  /** Pixels. */
  | { readonly type: 'pan'; readonly from: Point; readonly pan: Point }
  | Pinch

export type GestureOf<T extends Gesture['type']> = Extract<Gesture, { readonly type: T }>

export interface HandState {
  readonly gesture: Gesture | null
  /** The document's block when the gesture was last brought up to date. */
  readonly block: Block | null
  /** Pointers that are pressed, by id, in the order in which they came down. */
  readonly pointers: ReadonlyMap<number, Point>
  /** When the first of them came down. */
  readonly since: number
  /** Space is held: a drag pans. */
  readonly panKey: boolean
  /** A finger was the last to press, and needs larger handles than a mouse. */
  readonly coarse: boolean
  /** Where the next corner of a free patch would lie. */
  readonly hover: PointerState | null
}

/** What is to be done; each is carried out by `runCommand`, or by the board itself where it concerns the page. */
export type HandCommand =
  /** Stops showing a fix that is only tried. */
  | { readonly type: 'endPreview' }
  | { readonly type: 'focusBoard' }
  /** A CSS cursor. */
  | { readonly type: 'showCursor'; readonly cursor: string }
  | { readonly type: 'setView'; readonly zoom: number; readonly pan: Point }
  | { readonly type: 'undo' }
  | { readonly type: 'redo' }
  | { readonly type: 'select'; readonly ids: readonly string[] }
  /** Selected by a box or a loop. */
  | { readonly type: 'selectArea'; readonly ids: readonly string[] }
  /** Selected by pressing a patch; where a press adds, no single patch is selected. */
  | { readonly type: 'selectPatch'; readonly ids: readonly string[]; readonly patch: PatchRef; readonly add: boolean }
  | { readonly type: 'showMeeting'; readonly index: number }
  | { readonly type: 'moveUnits'; readonly ids: readonly string[]; readonly by: readonly [Position, Position] }
  | { readonly type: 'swapUnits'; readonly one: string; readonly other: string }
  | { readonly type: 'refuseSwap' }
  | { readonly type: 'resizeUnits'; readonly ids: readonly string[]; readonly to: FileBox }
  | { readonly type: 'recolourAt'; readonly fabric: string; readonly at: Point }
  | { readonly type: 'recolourPatches'; readonly fabric: string; readonly over: readonly PatchRef[] }
  | { readonly type: 'placeUnits'; readonly units: readonly Unit[] }
  | { readonly type: 'placeUnit'; readonly kind: TrayKind; readonly at: FilePoint; readonly turn: Turn; readonly mirror: boolean }
  /** On whole cells around a point where there is room. */
  | { readonly type: 'placeAround'; readonly kind: TrayKind; readonly at: Point }
  | { readonly type: 'replaceUnit'; readonly kind: TrayKind; readonly unit: string }
  | { readonly type: 'addCorner'; readonly corner: FilePoint }
  | { readonly type: 'selectSeam'; readonly join: string | null }
  | { readonly type: 'pressSeam'; readonly join: string; readonly choice: PressChoice }
  | { readonly type: 'key'; readonly command: StoreKeyCommand }

export interface HandResult {
  readonly hand: HandState
  readonly commands: readonly HandCommand[]
  /** False where the event means nothing to the board, and is left to the browser. */
  readonly handled: boolean
}
