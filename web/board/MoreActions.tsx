/** What is done to selected units more rarely: half a turn, selecting their like, and where there are several, turning each, lining up and joining. */
import { type Block, pictureOf, type Side, type Unit } from '../../geometry/index.ts'
import { ActionButton } from '../controls/ActionButton.tsx'
import { setView, useStore } from '../document/store.ts'
import { label, t, tn } from '../words/words.ts'
import { alignSelection, spreadSelection } from './actions/arrange.ts'
import { cutAwaySelection, joinSelection } from './actions/joinPatches.ts'
import { halfTurnSelection, turnEachSelected } from './actions/turn.ts'
import { unitsById } from './hitTest.ts'

interface Action {
  readonly name: string
  /** An SVG path in a box from −10 to 10. */
  readonly icon: string
  readonly run: () => unknown
  /** How many units it needs. */
  readonly least: number
}

const align = (side: Side, name: string, icon: string): Action => ({ name, icon, run: () => alignSelection(side), least: 2 })

const ARRANGE: readonly Action[] = [
  align('left', label('Align left'), 'M-8 -8V8M-6 -5H7M-6 4H2'),
  align('centre', label('Align on a vertical line'), 'M0 -8V8M-7 -5H7M-4 4H4'),
  align('right', label('Align right'), 'M8 -8V8M6 -5H-7M6 4H-2'),
  align('top', label('Align top'), 'M-8 -8H8M-5 -6V7M4 -6V2'),
  align('middle', label('Align on a horizontal line'), 'M-8 0H8M-5 -7V7M4 -4V4'),
  align('bottom', label('Align bottom'), 'M-8 8H8M-5 6V-7M4 6V-2'),
  { name: label('Space evenly across'), icon: 'M-8 -7V7M8 -7V7M-3 -4H3V4H-3Z', run: () => spreadSelection('across'), least: 3 },
  { name: label('Space evenly down'), icon: 'M-7 -8H7M-7 8H7M-4 -3V3H4V-3Z', run: () => spreadSelection('down'), least: 3 },
  { name: label('Join shapes'), icon: 'M-7 -7H2V-2H7V7H-2V2H-7Z', run: joinSelection, least: 2 },
  { name: label('Cut away the last shape selected'), icon: 'M-7 -7H2V-2H-2V2H-7ZM2 1V2H1M4 2H7V7H-2V4', run: cutAwaySelection, least: 2 },
]

export function MoreActions() {
  const block = useStore(({ history }) => history.block)
  const ids = useStore(({ view }) => view.selected)
  const [first] = unitsById(block, ids)
  return (
    <div className="popover-content menu">
      <button type="button" onClick={halfTurnSelection}>
        {t('Turn 180°')}
      </button>
      {ids.length > 1 && (
        <>
          <button type="button" onClick={() => turnEachSelected(1)}>
            {t('Turn each one 90°')}
          </button>
          <button type="button" onClick={() => turnEachSelected(2)}>
            {t('Turn each one 180°')}
          </button>
        </>
      )}
      {first !== undefined && (
        <button type="button" onClick={() => selectMatching(block, first)}>
          {t('Select all like this')}
        </button>
      )}
      {ids.length > 1 &&
        ARRANGE.map(({ name, icon, run, least }) => (
          <ActionButton key={name} disabled={ids.length < least} onClick={() => void run()}>
            <svg viewBox="-11 -11 22 22" width="20" height="20" aria-hidden="true">
              <path d={icon} />
            </svg>
            {t(name)}
          </ActionButton>
        ))}
    </div>
  )
}

function selectMatching(block: Block, unit: Unit): void {
  const picture = pictureOf(unit)
  const selected = block.units.filter((other) => other.kind === unit.kind && pictureOf(other) === picture).map(({ id }) => id)
  setView({ selected, patch: null, notice: tn(selected.length, 'No other unit matches it.', '{n} matching units selected.') })
}
