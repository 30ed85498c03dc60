/** The print of a fabric: its pattern, or a photograph, and how large one repeat is. */
import { useState } from 'react'
import { type Fabric, lightnessOf, mixed, PRINT_FACTS, PRINTS, type PrintKind, setPrint } from '../../geometry/index.ts'
import { EntryField } from '../controls/EntryField.tsx'
import { FileButton } from '../controls/FileButton.tsx'
import { lengthForFile, lengthProblem } from '../controls/lengthEntry.ts'
import { displayName } from '../document/blockNames.ts'
import { edit, getState, setView, useStore } from '../document/store.ts'
import { fabricPhoto } from '../keeping/readPhoto.ts'
import { t } from '../words/words.ts'

const PRINT_NAMES: Readonly<Record<PrintKind, () => string>> = {
  dots: () => t('dots'),
  stripes: () => t('stripes'),
  checks: () => t('checks'),
  sprigs: () => t('sprigs'),
  photo: () => t('photo'),
}

/** Bounds of a repeat, in the unit of the block: wider fabric is not sold, and a smaller repeat cannot be seen. */
const MOST_REPEAT = 300
const LEAST_REPEAT = 0.05

export function FabricPrint({ fabric }: { readonly fabric: Fabric }) {
  const unit = useStore(({ history }) => history.block.measure.unit)
  const { id, name, print } = fabric
  const kind = print?.kind ?? 'plain'
  return (
    <>
      <label>
        {t('Pattern')}
        <select aria-label={t('Pattern of {name}', { name })} value={kind} onChange={(event) => choosePrint(fabric, event.target.value)}>
          <option value="plain">{t('plain')}</option>
          {PRINTS.filter((one) => one !== 'photo' || kind === 'photo').map((one) => (
            <option key={one} value={one}>
              {PRINT_NAMES[one]()}
            </option>
          ))}
        </select>
      </label>
      {print !== undefined && (
        <EntryField
          label={print.kind === 'photo' ? t('Width of fabric in the photo ({unit})', { unit }) : t('Pattern repeat ({unit})', { unit })}
          value={String(print.repeat)}
          validate={repeatProblem}
          onCommit={(repeat) => edit(setPrint(id, { ...print, repeat: lengthForFile(repeat) }))}
        />
      )}
      <PhotoButton fabric={fabric} />
      {print !== undefined && <p className="hint">{t('The print follows how each patch is cut, and turns with its unit.')}</p>}
    </>
  )
}

const repeatProblem = (text: string): string | null => lengthProblem(text, { least: LEAST_REPEAT, most: MOST_REPEAT })

/** The second colour of a new print: the fabric's own, mixed with dark or pale, whichever contrasts more. */
const secondColourFor = (colour: string): string => mixed(colour, lightnessOf(colour) > 55 ? '#2b2320' : '#fffaf2', 0.55)

function choosePrint({ id, colour, print }: Fabric, kind: string): void {
  if (kind === 'photo') return
  if (kind === 'plain') return edit(setPrint(id, null))
  const { unit } = getState().history.block.measure
  const chosen = kind as PrintKind
  edit(setPrint(id, { kind: chosen, second: print?.second ?? secondColourFor(colour), repeat: PRINT_FACTS[chosen].repeat[unit] }))
}

function PhotoButton({ fabric }: { readonly fabric: Fabric }) {
  const [trouble, setTrouble] = useState<string | null>(null)
  const open = async (file: File): Promise<void> => {
    const { id } = getState().currentBlock
    const read = await fabricPhoto(file)
    // Reading takes a moment: if another block was opened meanwhile, the photograph does not belong to it.
    if (getState().currentBlock.id !== id) return
    setTrouble(read.ok ? null : read.message)
    if (!read.ok) return
    const { unit } = getState().history.block.measure
    const repeat = fabric.print?.kind === 'photo' ? fabric.print.repeat : PRINT_FACTS.photo.repeat[unit]
    edit(setPrint(fabric.id, { kind: 'photo', repeat, photo: read.value.photo }, read.value.colour))
    setView({ notice: t('Photo added to {name}. Now enter the width of fabric it shows.', { name: displayName(fabric) }) })
  }
  return (
    <>
      <FileButton accept="image/*" inputLabel={t('Photo of {name}', { name: fabric.name })} onPick={([file]) => void open(file)}>
        {fabric.print?.kind === 'photo' ? t('Change photo') : t('Use a photo')}
      </FileButton>
      {trouble !== null && (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
    </>
  )
}
