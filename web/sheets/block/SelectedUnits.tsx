/** The selected units: their size, their method, their fabrics and how they are pressed. */
import { lazy } from 'react'
import {
  KIND_FACTS,
  message,
  type Method,
  methodOf,
  recolourPatch,
  setMethod,
  setPressedOpen,
  setPressFree,
  type Unit,
  unitPlaces,
} from '../../../geometry/index.ts'
import { unitsById } from '../../board/hitTest.ts'
import { edit, useStore } from '../../document/store.ts'
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
