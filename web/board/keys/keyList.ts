/** Every key of the board, and in a few words what it does, for the list of keys. */
import { said } from '../../words/words.ts'

export const KEYS: readonly (readonly [string, string])[] = [
  [said('Arrows'), said('walk over the cells')],
  [said('Enter'), said('choose at the cursor; again: the next patch of the cell (Shift adds)')],
  [said('C'), said('mark a corner at the cursor; again: choose all between')],
  [said('Alt + arrows'), said('move what is chosen')],
  [said('Alt + Shift + arrows'), said('make what is chosen larger or smaller')],
  [said('H'), said('move by halves of cells, or by whole ones again')],
  [said('T, Shift + T'), said('turn a quarter, half round; with nothing chosen, the unit in hand')],
  [said('M'), said('mirror')],
  [said('X'), said('two chosen units change places')],
  [said('B, Shift + B'), said('turn, mirror the whole block')],
  [said('D, Delete'), said('copy, remove')],
  [said('Ctrl + C, X, V'), said('copy, cut out, paste as text')],
  [said('P, Shift + P'), said('place the unit in hand at the cursor; fill from the last one to the cursor')],
  [said('R'), said('put the unit in hand in place of what is chosen')],
  [said('F'), said('recolour the patch chosen at the cursor with the fabric in hand')],
  [said('1, 2, 3, 4'), said('the hand, choosing by a box, drawing round, drawing a free patch')],
  [said('Space, Enter, Backspace'), said('while drawing a patch: a corner, close, take a corner back')],
  [said('+ − 0'), said('zoom in, out, fit')],
  [said('Shift + arrows'), said('pan')],
  [said('Ctrl + Z, Ctrl + Shift + Z'), said('undo, do again')],
  [said('Two fingers, three fingers'), said('tap the board: undo, do again; drawn apart or along: zoom and pan')],
  [said('Ctrl + A'), said('choose all')],
  [said('F6, Shift + F6'), said('from anywhere: to the next part of the page, to the one before')],
  [said('Escape'), said('forget a drag or a drawing; let go of everything')],
]
