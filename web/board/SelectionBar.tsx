/** Over the board's lower edge: what is done to several units at once, and what is in hand. */
import { memo } from 'react'
import type { Side } from '../../geometry/index.ts'
import { UnitPicture } from './UnitPicture.tsx'
import { KIND_NAMES } from '../words/unitWords.ts'
import { setView, useStore } from '../document/store.ts'
import { said, t } from '../words/words.ts'
import { alignChosen, replaceChosen, spreadChosen, turnInHand } from './actions/actions.ts'
import { Bar, Tool } from './BoardTools.tsx'
import type { TrayKind } from './newUnit.ts'

const SIDES: readonly (readonly [Side, string, string])[] = [
  ['left', said('Align left'), 'M-8 -8V8M-6 -5H7M-6 4H2'],
  ['centre', said('Align on an upright line'), 'M0 -8V8M-7 -5H7M-4 4H4'],
  ['right', said('Align right'), 'M8 -8V8M6 -5H-7M6 4H-2'],
  ['top', said('Align at the top'), 'M-8 -8H8M-5 -6V7M4 -6V2'],
  ['middle', said('Align on a level line'), 'M-8 0H8M-5 -7V7M4 -4V4'],
  ['bottom', said('Align at the bottom'), 'M-8 8H8M-5 6V-7M4 6V-2'],
]

export function Overboard() {
  // One line at a time, so that the block lies free: who lays units does not arrange them yet.
  const inHand = useStore(({ view }) => view.taking !== null)
  return <div className="overboard">{inHand ? <InHand /> : <Arranging />}</div>
}

/** What is done to several units at once: over the board, as soon as two are chosen, so that nothing moves away under the hand. */
const Arranging = memo(function Arranging() {
  const count = useStore(({ view }) => view.chosen.length)
  if (count < 2) return null
  return (
    <div className="arranging">
      <Bar name={t('Arranging')}>
        <fieldset>
          <legend className="unseen">{t('Align')}</legend>
          {SIDES.map(([side, name, sign]) => (
            <Tool key={side} name={t(name)} sign={sign} act={() => alignChosen(side)} />
          ))}
          <Tool name={t('Spread evenly across')} sign="M-8 -7V7M8 -7V7M-3 -4H3V4H-3Z" off={count < 3} act={() => spreadChosen('across')} />
          <Tool name={t('Spread evenly down')} sign="M-7 -8H7M-7 8H7M-4 -3V3H4V-3Z" off={count < 3} act={() => spreadChosen('down')} />
        </fieldset>
        <fieldset>
          <legend className="unseen">{t('Shapes')}</legend>
          <Tool name={t('Join shapes')} sign="M-7 -7H2V-2H7V7H-2V2H-7Z" act={() => void shaping('join')} />
          <Tool name={t('Cut away the last chosen')} sign="M-7 -7H2V-2H-2V2H-7ZM2 1V2H1M4 2H7V7H-2V4" act={() => void shaping('cut')} />
        </fieldset>
      </Bar>
    </div>
  )
})

/** What was taken from the tray stays in hand until it is put back. */
const InHand = memo(function InHand() {
  const taking = useStore(({ view }) => view.taking)
  const turned = useStore(({ view }) => view.turned)
  const count = useStore(({ view }) => view.chosen.length)
  const block = useStore(({ history }) => history.block)
  if (taking === null) return null
  return (
    <div className="inhand">
      <UnitPicture block={block} kind={taking as TrayKind} turn={turned} />
      <span>{t('In hand: {unit}', { unit: t(KIND_NAMES[taking]) })}</span>
      <button type="button" onClick={turnInHand}>
        {t('Turn it')}
      </button>
      <button type="button" disabled={count === 0} onClick={replaceChosen}>
        {t('Put in place of the chosen')}
      </button>
      <button type="button" onClick={() => setView({ taking: null, turned: 0, notice: t('The unit is put back.') })}>
        {t('Put back')}
      </button>
    </div>
  )
})

async function shaping(what: 'join' | 'cut'): Promise<void> {
  const { cutAwayChosen, joinChosen } = await import('./actions/joinPatches.ts')
  await (what === 'join' ? joinChosen() : cutAwayChosen())
}
