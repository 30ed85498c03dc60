/** Everything that can be changed about one fabric: its colour and print, its print direction, its place on the list, another fabric in its place. */
import {
  changeFabric,
  exchangeFabrics,
  type Fabric,
  moveFabric,
  recolourAll,
  removeFabric,
  setDirection,
  setPrintColour,
} from '../../geometry/index.ts'
import { ActionButton } from '../controls/ActionButton.tsx'
import { FabricOptions } from '../controls/FabricOptions.tsx'
import { displayName } from '../document/blockNames.ts'
import { edit, setView, useStore } from '../document/store.ts'
import { t } from '../words/words.ts'
import { FabricPrint } from './FabricPrint.tsx'

export function FabricDetails({ fabric, used }: { readonly fabric: Fabric; readonly used: boolean }) {
  const fabrics = useStore(({ history }) => history.block.fabrics)
  const { id, name, colour } = fabric
  const others = fabrics.filter((other) => other.id !== id)
  const index = fabrics.findIndex((other) => other.id === id)
  return (
    <>
      <div className="colours">
        {fabric.print?.kind !== 'photo' && (
          <label>
            {t('Colour')}
            <input
              type="color"
              aria-label={t('Colour of {name}', { name })}
              value={colour}
              onChange={(event) => edit(changeFabric(id, { colour: event.target.value }))}
            />
          </label>
        )}
        {fabric.print?.second !== undefined && fabric.print.kind !== 'photo' && <SecondColour fabric={fabric} second={fabric.print.second} />}
      </div>
      <FabricPrint fabric={fabric} />
      <label>
        {t('Print direction')}
        <select
          value={fabric.direction ?? 'any'}
          onChange={(event) => edit(setDirection(id, event.target.value === 'any' ? null : (event.target.value as 'one-way' | 'two-way')))}
        >
          <option value="any">{t('any')}</option>
          <option value="two-way">{t('two-way')}</option>
          <option value="one-way">{t('one-way')}</option>
        </select>
      </label>
      {others.length > 0 && (
        <>
          <FabricPicker label={t('Use this fabric instead')} others={others} onPick={(other) => replaceEverywhere(fabric, other)} />
          <FabricPicker label={t('Swap with')} others={others} onPick={(other) => swap(fabric, other)} />
        </>
      )}
      <div className="buttons">
        <ActionButton disabled={index === 0} onClick={() => moveInList(fabric, -1, index)}>
          {t('Move up')}
        </ActionButton>
        <ActionButton disabled={index === fabrics.length - 1} onClick={() => moveInList(fabric, 1, index)}>
          {t('Move down')}
        </ActionButton>
        <button className="danger" type="button" onClick={() => removeFromList(fabric, used)}>
          {t('Delete fabric')}
        </button>
      </div>
    </>
  )
}

function SecondColour({ fabric, second }: { readonly fabric: Fabric; readonly second: string }) {
  return (
    <label>
      {t('Print')}
      <input
        type="color"
        aria-label={t('Print colour of {name}', { name: fabric.name })}
        value={second}
        onChange={(event) => edit(setPrintColour(fabric.id, event.target.value))}
      />
    </label>
  )
}

interface PickerProps {
  readonly label: string
  readonly others: readonly Fabric[]
  readonly onPick: (other: Fabric) => void
}

function FabricPicker({ label, others, onPick }: PickerProps) {
  return (
    <label>
      {label}
      <select
        value=""
        onChange={(event) => {
          const other = others.find(({ id }) => id === event.target.value)
          if (other !== undefined) onPick(other)
        }}
      >
        <option value="">{t('select a fabric')}</option>
        <FabricOptions fabrics={others} />
      </select>
    </label>
  )
}

function moveInList({ id, name }: Fabric, by: 1 | -1, index: number): void {
  edit(moveFabric(id, by))
  setView({ notice: t('{name} is now number {n} in the list.', { name, n: index + by + 1 }) })
}

function replaceEverywhere(fabric: Fabric, other: Fabric): void {
  edit(recolourAll(fabric.id, other.id))
  setView({ notice: t('{other} now replaces {name} everywhere.', { other: displayName(other), name: displayName(fabric) }) })
}

function swap(fabric: Fabric, other: Fabric): void {
  edit(exchangeFabrics(fabric.id, other.id))
  setView({ notice: t('{name} and {other} are swapped.', { other: displayName(other), name: displayName(fabric) }) })
}

function removeFromList(fabric: Fabric, used: boolean): void {
  const { id } = fabric
  const name = displayName(fabric)
  if (!used) edit(removeFabric(id))
  setView({ notice: used ? t('{name} is still in the block. Recolour its patches first.', { name }) : t('{name} is deleted.', { name }) })
}
