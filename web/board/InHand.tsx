/** Above the board, in a line of its own: what is in the hand, what can be done with it there, and Done. With an empty hand, a hint on a first visit. */
import { lazy } from 'react'
import { LazyPanel } from '../controls/LazyPanel.tsx'
import { displayName } from '../document/blockNames.ts'
import { useStore } from '../document/store.ts'
import { Swatch } from '../drawing/FabricDefs.tsx'
import { KIND_NAMES } from '../words/unitWords.ts'
import { t } from '../words/words.ts'
import { emptyHand, flipInHand, turnInHand } from './actions/modes.ts'
import { replaceSelection } from './actions/units.ts'
import type { TrayKind } from './newUnit.ts'
import { UnitPicture } from './UnitPicture.tsx'

const HintLine = lazy(async () => ({ default: (await import('./hints/HintLine.tsx')).HintLine }))

/** The line is there with an empty hand too, so that the board stays where it is. */
export function InHand() {
  const kind = useStore(({ view }) => view.unitInHand) as TrayKind | null
  // On an empty grid there is nothing to recolour or turn yet.
  const hints = useStore(({ view, history }) => view.hints.length > 0 && history.block.units.length > 0)
  const fabric = useStore(({ view }) => view.fabricInHand)
  return (
    <section className="inhand" aria-label={t('In hand')} data-part={kind === null && fabric === null ? undefined : 'inhand'}>
      {kind !== null ? (
        <Unit kind={kind} />
      ) : fabric !== null ? (
        <Fabric id={fabric} />
      ) : (
        !hints && <p>{t('Pick a unit to place, or a fabric to colour with.')}</p>
      )}
      {hints && (
        <LazyPanel>
          <HintLine shown={kind === null && fabric === null} />
        </LazyPanel>
      )}
    </section>
  )
}

function Unit({ kind }: { readonly kind: TrayKind }) {
  const { unitTurn, unitMirror, selected } = useStore(({ view }) => view)
  const block = useStore(({ history }) => history.block)
  return (
    <>
      <UnitPicture block={block} kind={kind} turn={unitTurn} mirror={unitMirror} />
      <strong>{t('Placing: {unit}', { unit: t(KIND_NAMES[kind]) })}</strong>
      <button type="button" onClick={turnInHand}>
        {t('Turn')}
      </button>
      <button type="button" onClick={flipInHand}>
        {t('Flip')}
      </button>
      {selected.length > 0 && (
        <button type="button" onClick={replaceSelection}>
          {t('Replace selected')}
        </button>
      )}
      <Done />
    </>
  )
}

function Fabric({ id }: { readonly id: string }) {
  const block = useStore(({ history }) => history.block)
  const fabric = block.fabrics.find((one) => one.id === id)
  if (fabric === undefined) return null
  return (
    <>
      <span className="fabric-in-hand">
        <Swatch fabric={fabric} unit={block.measure.unit} />
      </span>
      <strong>{t('Colouring with: {fabric}', { fabric: displayName(fabric) })}</strong>
      <Done />
    </>
  )
}

function Done() {
  return (
    <button
      type="button"
      className="main"
      onClick={() => {
        emptyHand()
        // The button goes with what was in the hand; the keyboard goes on at the board.
        document.querySelector<HTMLElement>('[data-part="board"]')?.focus({ preventScroll: true })
      }}
    >
      {t('Done')}
    </button>
  )
}
