/**
 * What can be done with the selected units: a bar just outside the block, at their column, so that it covers neither fabric nor marks. Above the block for
 * units of its upper half, below it for the others; where the block is larger than the board, at the board's edge.
 */
import { type CSSProperties, type KeyboardEvent, lazy } from 'react'
import type { Block } from '../../geometry/index.ts'
import { LazyPanel } from '../controls/LazyPanel.tsx'
import { Popover } from '../controls/Popover.tsx'
import { around, bordersAround, type Point, rectOf } from '../document/shapes.ts'
import { t } from '../words/words.ts'
import { mirrorSelection, turnSelection } from './actions/turn.ts'
import { duplicateSelection, removeSelection } from './actions/units.ts'
import { runKeyCommand } from './keys/runKeyCommand.ts'
import { unitsById } from './hitTest.ts'
import './selectionBar.css'
import { Toolbar, ToolButton } from './Toolbar.tsx'
import type { Frame } from './viewport.ts'

const MoreActions = lazy(async () => ({ default: (await import('./MoreActions.tsx')).MoreActions }))

interface Props {
  readonly block: Block
  /** Ids of units. */
  readonly selected: readonly string[]
  readonly frame: Frame
  /** The board's, in pixels. */
  readonly size: Point
}

export function SelectionBar({ block, selected, frame, size }: Props) {
  const box = around(unitsById(block, selected).map(rectOf))
  if (box === null) return null
  const { columns, rows } = block.grid
  const border = bordersAround(block)
  const below = box.at[1] + box.size[1] / 2 > rows / 2
  const edge = frame.toPixels(columns / 2, below ? rows + border : -border)[1]
  const middle = frame.toPixels(box.at[0] + box.size[0] / 2, 0)[0]
  const across = Math.min(1, Math.max(0, middle / size[0]))
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape in it means what it means on the board
    <div
      className={below ? 'selection-bar below' : 'selection-bar'}
      onKeyDown={deselectOnEscape}
      // The free room is shared out by where the units lie: the bar is at them, and never beyond the board.
      style={{ '--edge': `${edge}px`, gridTemplateColumns: `minmax(0, ${across}fr) auto minmax(0, ${1 - across}fr)` } as CSSProperties}
    >
      <div className="selection-buttons">
        <Toolbar name={t('Selected units')}>
          <ToolButton name={t('Turn 90°')} caption={t('Turn 90°')} icon="M-6.5 2A6.5 6.5 0 1 1 0 8M0 8l3 -3.2M0 8l3.4 2.4" onClick={turnSelection} />
          <ToolButton name={t('Flip')} caption={t('Flip')} icon="M0 -9V9M-3 -5L-9 5H-3ZM3 -5L9 5H3Z" onClick={mirrorSelection} />
          <ToolButton name={t('Duplicate')} caption={t('Duplicate')} icon="M-8 -8H3V3H-8ZM-3 3V8H8V-3H3" onClick={duplicateSelection} />
          <ToolButton
            name={t('Delete')}
            caption={t('Delete')}
            icon="M-8 -6H8M-3 -6V-9H3V-6M-6 -6L-5 8H5L6 -6M-2 -2V4M2 -2V4"
            danger
            onClick={deleteSelection}
          />
        </Toolbar>
        <Popover menu name={t('More')} className={below ? 'upward more-actions' : 'more-actions'}>
          <LazyPanel>
            <MoreActions />
          </LazyPanel>
        </Popover>
      </div>
    </div>
  )
}

function deselectOnEscape(event: KeyboardEvent): void {
  if (event.key !== 'Escape' || event.defaultPrevented) return
  event.preventDefault()
  runKeyCommand({ type: 'letGo' })
  focusBoard()
}

const focusBoard = (): void => document.querySelector<HTMLElement>('[data-part="board"]')?.focus({ preventScroll: true })

/** The bar goes with what was selected; the keyboard goes on at the board. */
function deleteSelection(): void {
  removeSelection()
  focusBoard()
}
