/** Over the board: what is done to several units at once. */
import { memo } from 'react'
import type { Side } from '../../geometry/index.ts'
import { useStore } from '../document/store.ts'
import { label, t } from '../words/words.ts'
import { alignSelection, spreadSelection } from './actions/arrange.ts'
import { Toolbar, ToolButton } from './Toolbar.tsx'

const SIDES: readonly (readonly [Side, string, string])[] = [
  ['left', label('Align left'), 'M-8 -8V8M-6 -5H7M-6 4H2'],
  ['centre', label('Align on a vertical line'), 'M0 -8V8M-7 -5H7M-4 4H4'],
  ['right', label('Align right'), 'M8 -8V8M6 -5H-7M6 4H-2'],
  ['top', label('Align top'), 'M-8 -8H8M-5 -6V7M4 -6V2'],
  ['middle', label('Align on a horizontal line'), 'M-8 0H8M-5 -7V7M4 -4V4'],
  ['bottom', label('Align bottom'), 'M-8 8H8M-5 6V-7M4 6V-2'],
]

export function SelectionBar() {
  // One line at a time, so that the block stays in sight: whoever places units is not arranging them yet.
  const inHand = useStore(({ view }) => view.unitInHand !== null)
  return <div className="overboard">{!inHand && <ArrangeBar />}</div>
}

/** Appears over the board as soon as two units are selected, so that nothing moves away under the hand. */
const ArrangeBar = memo(function ArrangeBar() {
  const count = useStore(({ view }) => view.selected.length)
  if (count < 2) return null
  return (
    <div className="arranging">
      <Toolbar name={t('Arrange')}>
        <fieldset>
          <legend className="unseen">{t('Align')}</legend>
          {SIDES.map(([side, name, icon]) => (
            <ToolButton key={side} name={t(name)} icon={icon} onClick={() => alignSelection(side)} />
          ))}
          <ToolButton
            name={t('Space evenly across')}
            icon="M-8 -7V7M8 -7V7M-3 -4H3V4H-3Z"
            disabled={count < 3}
            onClick={() => spreadSelection('across')}
          />
          <ToolButton
            name={t('Space evenly down')}
            icon="M-7 -8H7M-7 8H7M-4 -3V3H4V-3Z"
            disabled={count < 3}
            onClick={() => spreadSelection('down')}
          />
        </fieldset>
        <fieldset>
          <legend className="unseen">{t('Shapes')}</legend>
          <ToolButton name={t('Join shapes')} icon="M-7 -7H2V-2H7V7H-2V2H-7Z" onClick={() => void changeShapes('join')} />
          <ToolButton
            name={t('Cut away the last shape selected')}
            icon="M-7 -7H2V-2H-2V2H-7ZM2 1V2H1M4 2H7V7H-2V4"
            onClick={() => void changeShapes('cut')}
          />
        </fieldset>
      </Toolbar>
    </div>
  )
})

async function changeShapes(what: 'join' | 'cut'): Promise<void> {
  const { cutAwaySelection, joinSelection } = await import('./actions/joinPatches.ts')
  await (what === 'join' ? joinSelection() : cutAwaySelection())
}
