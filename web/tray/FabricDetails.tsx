/** What can be done with one fabric: its colour and print, how its cloth may be turned, its place on the list, another in its stead. */
import { useState } from 'react'
import {
  changeFabric,
  exchangeFabrics,
  type Fabric,
  lightnessOf,
  mixed,
  moveFabric,
  PRINT_FACTS,
  PRINTS,
  type PrintKind,
  recolourAll,
  removeFabric,
  setDirection,
  setPrint,
  setPrintColour,
} from '../../geometry/index.ts'
import { displayName } from '../document/blockNames.ts'
import { photoOfCloth } from '../keeping/readPhoto.ts'
import { edit, setView, getState, useStore } from '../document/store.ts'
import { t } from '../words/words.ts'
import { ActionButton } from '../controls/ActionButton.tsx'
import { FabricOptions } from '../controls/FabricOptions.tsx'
import { FileButton } from '../controls/FileButton.tsx'
import { EntryField } from '../controls/EntryField.tsx'
import { lengthProblem, lengthForFile } from '../controls/lengthEntry.ts'

const PRINT_NAMES: Readonly<Record<PrintKind, () => string>> = {
  dots: () => t('dots'),
  stripes: () => t('stripes'),
  checks: () => t('checks'),
  sprigs: () => t('sprigs'),
  photo: () => t('photograph'),
}

/** Wider cloth than this is not sold, narrower than this is not seen. */
const WIDEST = 300
const NARROWEST = 0.05

export function FabricDetails({ fabric, used }: { readonly fabric: Fabric; readonly used: boolean }) {
  const fabrics = useStore(({ history }) => history.block.fabrics)
  const { id, name, colour } = fabric
  const others = fabrics.filter((other) => other.id !== id)
  const place = fabrics.findIndex((other) => other.id === id)
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
        {fabric.print?.second !== undefined && fabric.print.kind !== 'photo' && <Second fabric={fabric} second={fabric.print.second} />}
      </div>
      <Printed fabric={fabric} />
      <label>
        {t('How its cloth may lie')}
        <select
          value={fabric.direction ?? 'any'}
          onChange={(event) => edit(setDirection(id, event.target.value === 'any' ? null : (event.target.value as 'one-way' | 'two-way')))}
        >
          <option value="any">{t('any way')}</option>
          <option value="two-way">{t('two-way: half turns')}</option>
          <option value="one-way">{t('one-way: has a top')}</option>
        </select>
      </label>
      {others.length > 0 && (
        <>
          <Other label={t('Use instead everywhere')} others={others} take={(other) => instead(fabric, other)} />
          <Other label={t('Exchange with')} others={others} take={(other) => exchange(fabric, other)} />
        </>
      )}
      <div className="buttons">
        <ActionButton disabled={place === 0} onClick={() => move(fabric, -1, place)}>
          {t('Move up')}
        </ActionButton>
        <ActionButton disabled={place === fabrics.length - 1} onClick={() => move(fabric, 1, place)}>
          {t('Move down')}
        </ActionButton>
        <button type="button" onClick={() => drop(fabric, used)}>
          {t('Remove from the list')}
        </button>
      </div>
    </>
  )
}

function Second({ fabric, second }: { readonly fabric: Fabric; readonly second: string }) {
  return (
    <label>
      {t('Print')}
      <input
        type="color"
        aria-label={t('Colour of the print of {name}', { name: fabric.name })}
        value={second}
        onChange={(event) => edit(setPrintColour(fabric.id, event.target.value))}
      />
    </label>
  )
}

/** The colour of a new print: some way from the cloth's own toward ink or paper, whichever is farther. */
const secondFor = (colour: string): string => mixed(colour, lightnessOf(colour) > 55 ? '#2b2320' : '#fffaf2', 0.55)

function choosePrint({ id, colour, print }: Fabric, kind: string): void {
  if (kind === 'photo') return
  if (kind === 'plain') return edit(setPrint(id, null))
  const { unit } = getState().history.block.measure
  const chosen = kind as PrintKind
  edit(setPrint(id, { kind: chosen, second: print?.second ?? secondFor(colour), repeat: PRINT_FACTS[chosen].repeat[unit] }))
}

function Printed({ fabric }: { readonly fabric: Fabric }) {
  const unit = useStore(({ history }) => history.block.measure.unit)
  const { id, name, print } = fabric
  const kind = print?.kind ?? 'plain'
  return (
    <>
      <label>
        {t('Pattern')}
        <select aria-label={t('Pattern of {name}', { name })} value={kind} onChange={(event) => choosePrint(fabric, event.target.value)}>
          <option value="plain">{t('one colour')}</option>
          {PRINTS.filter((one) => one !== 'photo' || kind === 'photo').map((one) => (
            <option key={one} value={one}>
              {PRINT_NAMES[one]()}
            </option>
          ))}
        </select>
      </label>
      {print !== undefined && (
        <EntryField
          label={print.kind === 'photo' ? t('Width of cloth it shows ({unit})', { unit }) : t('One repeat ({unit})', { unit })}
          value={String(print.repeat)}
          validate={wrongRepeat}
          onCommit={(repeat) => edit(setPrint(id, { ...print, repeat: lengthForFile(repeat) }))}
        />
      )}
      <Photo fabric={fabric} />
      {print !== undefined && <p className="hint">{t('It lies as each patch is cut, and turns with its unit.')}</p>}
    </>
  )
}

const wrongRepeat = (text: string): string | null => lengthProblem(text, { least: NARROWEST, most: WIDEST })

function Photo({ fabric }: { readonly fabric: Fabric }) {
  const [trouble, setTrouble] = useState<string | null>(null)
  const open = async (file: File): Promise<void> => {
    const { id } = getState().currentBlock
    const seen = await photoOfCloth(file)
    // Another block may have been opened meanwhile: the photograph is not of its cloth.
    if (getState().currentBlock.id !== id) return
    setTrouble(seen.ok ? null : seen.message)
    if (!seen.ok) return
    const { unit } = getState().history.block.measure
    const repeat = fabric.print?.kind === 'photo' ? fabric.print.repeat : PRINT_FACTS.photo.repeat[unit]
    edit(setPrint(fabric.id, { kind: 'photo', repeat, photo: seen.value.photo }, seen.value.colour))
    setView({ notice: t('{name} is shown by its photograph. Say how wide a stretch of cloth it shows.', { name: displayName(fabric) }) })
  }
  return (
    <>
      <FileButton accept="image/*" inputLabel={t('Photograph of {name}', { name: fabric.name })} onPick={([file]) => void open(file)}>
        {fabric.print?.kind === 'photo' ? t('Another photograph') : t('Use a photograph')}
      </FileButton>
      {trouble !== null && (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
    </>
  )
}

interface OtherProps {
  readonly label: string
  readonly others: readonly Fabric[]
  readonly take: (other: Fabric) => void
}

function Other({ label, others, take }: OtherProps) {
  return (
    <label>
      {label}
      <select
        value=""
        onChange={(event) => {
          const other = others.find(({ id }) => id === event.target.value)
          if (other !== undefined) take(other)
        }}
      >
        <option value="">{t('choose a fabric')}</option>
        <FabricOptions fabrics={others} />
      </select>
    </label>
  )
}

function move({ id, name }: Fabric, by: 1 | -1, place: number): void {
  edit(moveFabric(id, by))
  setView({ notice: t('{name} is number {n} of the list now.', { name, n: place + by + 1 }) })
}

function instead(fabric: Fabric, other: Fabric): void {
  edit(recolourAll(fabric.id, other.id))
  setView({ notice: t('{other} is used instead of {name} everywhere.', { other: displayName(other), name: displayName(fabric) }) })
}

function exchange(fabric: Fabric, other: Fabric): void {
  edit(exchangeFabrics(fabric.id, other.id))
  setView({ notice: t('{name} and {other} have changed places.', { other: displayName(other), name: displayName(fabric) }) })
}

function drop(fabric: Fabric, used: boolean): void {
  const { id } = fabric
  const name = displayName(fabric)
  if (!used) edit(removeFabric(id))
  setView({ notice: used ? t('Some patch is cut from {name}; recolour it first.', { name }) : t('{name} is removed from the list.', { name }) })
}
