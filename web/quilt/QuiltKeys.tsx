/** The list of the quilt's keys. */
import { label, t } from '../words/words.ts'

const KEYS: readonly (readonly [string, string])[] = [
  [label('Arrow keys'), label('go from position to position')],
  [label('Enter'), label('select the position (Shift adds), or put down what you hold')],
  [label('Shift + arrow keys'), label('select everything from here on')],
  [label('Alt + arrow keys'), label('move the block; what lies there comes back in its stead')],
  [label('Alt + Shift + arrow keys'), label('make the position larger or smaller')],
  [label('T, Shift + T'), label('turn 90° to the right, to the left')],
  [label('P'), label('press the other way, or as planned again')],
  [label('F'), label('fill the selection with its first block')],
  [label('Delete'), label('clear the positions')],
  [label('Ctrl + A'), label('select all')],
  [label('+ − 0'), label('zoom in, zoom out, fit to window')],
  [label('Ctrl + Z, Ctrl + Shift + Z'), label('undo, redo')],
  [label('F6, Shift + F6'), label('go to the next part of the page, to the one before')],
  [label('Escape'), label('hold nothing any more; deselect everything')],
]

export function QuiltKeys() {
  return (
    <dl id="keys" className="popover-content">
      {KEYS.map(([keys, what]) => (
        <div key={keys}>
          <dt>{t(keys)}</dt>
          <dd>{t(what)}</dd>
        </div>
      ))}
    </dl>
  )
}
