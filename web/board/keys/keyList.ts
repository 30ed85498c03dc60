/** Every key of the board, and in a few words what it does, for the list of keys. */
import { label } from '../../words/words.ts'

export const KEYS: readonly (readonly [string, string])[] = [
  [label('Arrows'), label('walk over the cells')],
  [label('Enter'), label('choose at the cursor; again: the next patch of the cell (Shift adds)')],
  [label('C'), label('mark a corner at the cursor; again: choose all between')],
  [label('Alt + arrows'), label('move what is chosen')],
  [label('Alt + Shift + arrows'), label('make what is chosen larger or smaller')],
  [label('H'), label('move by halves of cells, or by whole ones again')],
  [label('T, Shift + T'), label('turn a quarter, half round; with nothing chosen, the unit in hand')],
  [label('M'), label('mirror')],
  [label('X'), label('two chosen units change places')],
  [label('B, Shift + B'), label('turn, mirror the whole block')],
  [label('D, Delete'), label('copy, remove')],
  [label('Ctrl + C, X, V'), label('copy, cut out, paste as text')],
  [label('P, Shift + P'), label('place the unit in hand at the cursor; fill from the last one to the cursor')],
  [label('R'), label('put the unit in hand in place of what is chosen')],
  [label('F'), label('recolour the patch chosen at the cursor with the fabric in hand')],
  [label('1, 2, 3, 4'), label('the hand, choosing by a box, drawing round, drawing a free patch')],
  [label('Space, Enter, Backspace'), label('while drawing a patch: a corner, close, take a corner back')],
  [label('+ − 0'), label('zoom in, out, fit')],
  [label('Shift + arrows'), label('pan')],
  [label('Ctrl + Z, Ctrl + Shift + Z'), label('undo, do again')],
  [label('Two fingers, three fingers'), label('tap the board: undo, do again; drawn apart or along: zoom and pan')],
  [label('Ctrl + A'), label('choose all')],
  [label('F6, Shift + F6'), label('from anywhere: to the next part of the page, to the one before')],
  [label('Escape'), label('forget a drag or a drawing; let go of everything')],
]
