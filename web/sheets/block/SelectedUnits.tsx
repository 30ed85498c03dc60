/** The selected units: buttons to turn, flip, duplicate and delete them, their method, their fabrics and how they are pressed. */
import { lazy } from 'react'
import {
  type Block,
  KIND_FACTS,
  message,
  type Method,
  methodOf,
  pictureOf,
  recolourPatch,
  setMethod,
  setPressedOpen,
  setPressFree,
  type Unit,
  unitPlaces,
} from '../../../geometry/index.ts'
import { halfTurnSelection, mirrorSelection, turnSelection } from '../../board/actions/turn.ts'
import { duplicateSelection, removeSelection } from '../../board/actions/units.ts'
import { unitsById } from '../../board/hitTest.ts'
import { edit, setView, useStore } from '../../document/store.ts'
import { t, tn, translate } from '../../words/words.ts'
import { FabricOptions } from '../../controls/FabricOptions.tsx'
import { patchName } from '../../words/unitWords.ts'
import { MethodOptions } from '../methods/MethodOptions.tsx'
import { LazyPanel } from '../../controls/LazyPanel.tsx'

const MethodsAndTrimming = lazy(async () => ({ default: (await import('../methods/MethodsAndTrimming.tsx')).MethodsAndTrimming }))

const UnitSize = lazy(async () => ({ default: (await import('./UnitSize.tsx')).UnitSize }))

export function SelectedUnits() {
  const block = useStore(({ history }) => history.block)
  const ids = useStore(({ view }) => view.selected)
  const units = unitsById(block, ids)
  const [first] = units
  if (first === undefined) return null
  const alike = units.every(({ kind }) => kind === first.kind)
  return (
    <section aria-labelledby="chosen-title" className="chosen">
      <h2 id="chosen-title">
        {units.length === 1
          ? translate(message('unit-label', { place: unitPlaces(block)(first.id) }))
          : tn(units.length, '1 unit selected', '{n} units selected')}
      </h2>
      <div className="buttons">
        <button type="button" onClick={turnSelection}>
          {t('Turn 90°')}
        </button>
        <button type="button" onClick={halfTurnSelection}>
          {t('Turn 180°')}
        </button>
        <button type="button" onClick={mirrorSelection}>
          {t('Flip')}
        </button>
        <button type="button" onClick={duplicateSelection}>
          {t('Duplicate')}
        </button>
        <button
          type="button"
          onClick={() => {
            removeSelection()
            // This panel disappears with the selection; the board stays where it is.
            void import('../../controls/focus.ts').then(({ focusPart }) => focusPart('board'))
          }}
        >
          {t('Delete')}
        </button>
        <button type="button" onClick={() => chooseAlike(block, first)}>
          {t('Select all like this')}
        </button>
      </div>
      <LazyPanel>
        <UnitSize block={block} units={units} />
      </LazyPanel>
      {alike && KIND_FACTS[first.kind].methods.length > 1 && (
        <label>
          {t('Method')}
          <select value={methodOf(first)} onChange={(event) => edit(setMethod(ids, event.target.value as Method))}>
            <MethodOptions kind={first.kind} />
          </select>
        </label>
      )}
      <LazyPanel>{alike && <MethodsAndTrimming unit={first} block={block} ids={ids} />}</LazyPanel>
      {units.length === 1 &&
        Object.entries(first.fabrics).map(([name, fabric]) => (
          <label key={name}>
            {patchName(name)}
            <select value={fabric} onChange={(event) => edit(recolourPatch(first.id, name, event.target.value))}>
              <FabricOptions fabrics={block.fabrics} />
            </select>
          </label>
        ))}
      {units.some(hasSeams) && <Pressing units={units} ids={ids} />}
    </section>
  )
}

/** A unit of one patch has no seam of its own to press. */
const hasSeams = ({ fabrics }: Unit): boolean => Object.keys(fabrics).length > 1

function Pressing({ units, ids }: { readonly units: readonly Unit[]; readonly ids: readonly string[] }) {
  return (
    <>
      <label className="tick">
        <input
          type="checkbox"
          checked={units.every(({ pressFree }) => pressFree === true)}
          onChange={(event) => edit(setPressFree(ids, event.target.checked))}
        />
        {t('Press this unit my way')}
      </label>
      <label className="tick">
        <input
          type="checkbox"
          checked={units.every(({ open }) => open === true)}
          onChange={(event) => edit(setPressedOpen(ids, event.target.checked))}
        />
        {t('Press the seams inside it open')}
      </label>
    </>
  )
}

function chooseAlike(block: Block, unit: Unit): void {
  const picture = pictureOf(unit)
  const selected = block.units.filter((other) => other.kind === unit.kind && pictureOf(other) === picture).map(({ id }) => id)
  setView({ selected, patch: null, notice: tn(selected.length, 'No other unit matches it.', '{n} matching units selected.') })
}
