/** Keys pressed on the board, and what they mean: plain values. */
import type { Point } from '../../document/shapes.ts'
import type { DragTool } from '../../document/store.ts'

export interface KeyPress {
  /** As the browser names it: `ArrowLeft`, `t`, `Enter`. */
  readonly key: string
  readonly shift: boolean
  readonly alt: boolean
  /** Ctrl or Cmd. */
  readonly control: boolean
}

/** In the view of the pressing arrows: another seam, as the arrow key points on the screen; or how the selected one is pressed. */
export type SeamKey =
  | { readonly type: 'stepSeam'; readonly by: Point }
  | { readonly type: 'pressSeam'; readonly how: 'next' | 'turn' | 'open' | 'proposed' }

export type KeyCommand =
  /** One step: on the block, and as the arrow points on the screen; they differ where the wrong side is shown mirrored. */
  | { readonly type: 'step'; readonly by: Point; readonly onScreen: Point; readonly shift: boolean; readonly alt: boolean }
  | { readonly type: 'zoom'; readonly by: number }
  | SeamKey
  | { readonly type: 'useTool'; readonly tool: DragTool }
  | { readonly type: 'selectAtCursor'; readonly add: boolean }
  | {
      readonly type:
        | 'fitToBoard'
        | 'undo'
        | 'redo'
        | 'selectAll'
        | 'selectBetween'
        | 'turn'
        | 'halfTurn'
        | 'turnInHand'
        | 'halfTurnInHand'
        | 'flipInHand'
        | 'mirror'
        | 'turnBlock'
        | 'mirrorBlock'
        | 'duplicate'
        | 'remove'
        | 'swap'
        | 'replace'
        | 'toggleHalves'
        | 'placeAtCursor'
        | 'fillToCursor'
        | 'recolourAtCursor'
        | 'addCorner'
        | 'closeOutline'
        | 'removeCorner'
        | 'letGo'
    }

/** Those that change the block or the view state; zooming and seams are left to the hand, which knows what the board shows. */
export type StoreKeyCommand = Exclude<KeyCommand, { type: 'zoom' } | SeamKey>
