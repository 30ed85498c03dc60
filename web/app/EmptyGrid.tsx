/** On an empty grid: ways to start, in its middle. Gone once something lies there. */
import { type Block, message } from '../../geometry/index.ts'
import { eveningStar } from '../document/starters/eveningStar.ts'
import { lantern } from '../document/starters/lantern.ts'
import { getState, replaceDocument, setView } from '../document/store.ts'
import { focusPart } from '../controls/focus.ts'
import { t } from '../words/words.ts'
import './emptyGrid.css'

export function EmptyGrid() {
  return (
    <section className="empty-grid" aria-labelledby="empty-title">
      <h3 id="empty-title">{t('Start your block')}</h3>
      <div className="buttons">
        <button type="button" className="main" onClick={() => start(eveningStar)}>
          {t('Start with a star')}
        </button>
        <button type="button" onClick={() => start(lantern)}>
          {t('Start with a lantern')}
        </button>
        <button type="button" onClick={placeSquare}>
          {t('Place a square')}
        </button>
      </div>
      <p>{t('Or drag a unit from the tray onto the grid.')}</p>
    </section>
  )
}

/** The block keeps its name; one undo leads back to the empty grid. */
function start(starter: Block): void {
  replaceDocument({ ...starter, name: getState().history.block.name }, message('begin-again'))
  focusPart('board')
}

function placeSquare(): void {
  setView({ unitInHand: 'square', unitTurn: 0, notice: t('Click or tap a square of the grid to place it.') })
  focusPart('board')
}
