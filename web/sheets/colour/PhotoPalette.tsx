/** Colours from a photograph. They become new fabrics, or recolour the fabrics in use, light for light and dark for dark. */
import { useEffect, useState } from 'react'
import { addFabrics, coloursByValue, fabricsUsed, freshId, type PaletteColour, recolourFabrics } from '../../../geometry/index.ts'
import { colourClient } from '../../workers/clients.ts'
import { useClient } from '../../workers/useWorker.ts'
import { photoPixels } from '../../keeping/readPhoto.ts'
import { edit, setView, getState, useStore } from '../../document/store.ts'
import { t, tn } from '../../words/words.ts'
import { FileButton } from '../../controls/FileButton.tsx'
import { CountField } from '../../controls/CountField.tsx'

const COUNTS = [4, 5, 6, 7, 8] as const

interface Photo {
  readonly url: string
  readonly name: string
  readonly pixels: Uint8ClampedArray
}

export function PhotoPalette() {
  const [photo, setPhoto] = useState<Photo | null>(null)
  const [trouble, setTrouble] = useState<string | null>(null)
  const [count, setCount] = useState(5)
  const palette = usePalette(photo, count)
  useEffect(() => () => URL.revokeObjectURL(photo?.url ?? ''), [photo])
  const open = async (file: File): Promise<void> => {
    const pixels = await photoPixels(file)
    setTrouble(pixels.ok ? null : pixels.message)
    if (pixels.ok) setPhoto({ url: URL.createObjectURL(file), name: file.name, pixels: pixels.value })
  }
  return (
    <section aria-labelledby="palette-title">
      <h2 id="palette-title">{t('Colours from a photograph')}</h2>
      <div className="from-photo">
        {photo !== null && <img src={photo.url} alt={t('The photograph {name}', { name: photo.name })} />}
        <div>
          <FileButton accept="image/*" inputLabel={t('Photograph for a palette')} onPick={([file]) => void open(file)}>
            {photo === null ? t('Choose a photograph') : t('Change photo')}
          </FileButton>
          <CountField label={t('Colours')} value={count} choices={COUNTS} onChange={setCount} />
        </div>
      </div>
      {trouble !== null && (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
      {photo !== null && palette !== null && <Palette palette={palette} />}
      <p className="hint">{t('The photograph stays on this machine: nothing is sent anywhere.')}</p>
    </section>
  )
}

function usePalette(photo: Photo | null, count: number): readonly PaletteColour[] | null {
  const [palette, setPalette] = useState<readonly PaletteColour[] | null>(null)
  const client = useClient(colourClient)
  useEffect(() => {
    if (photo === null) return
    let current = true
    void client.request('palette', photo.pixels, count).then((reply) => {
      if (current) setPalette(reply.type === 'answer' ? reply.value : null)
    })
    return () => {
      current = false
    }
  }, [photo, count, client])
  return palette
}

function Palette({ palette }: { readonly palette: readonly PaletteColour[] }) {
  const fabrics = useStore(({ history }) => history.block.fabrics)
  const [leftOut, setLeftOut] = useState<ReadonlySet<string>>(new Set())
  const taken = palette.filter(({ colour }) => !leftOut.has(colour))
  const toggle = (colour: string): void =>
    setLeftOut(new Set(leftOut.has(colour) ? [...leftOut].filter((one) => one !== colour) : [...leftOut, colour]))
  if (palette.length === 0) return <p className="trouble">{t('There is no colour to be seen in this picture.')}</p>
  return (
    <>
      <ul className="palette" aria-label={t('Colours of the photograph, from light to dark')}>
        {palette.map(({ colour, share }) => (
          <li key={colour} style={{ flexGrow: 0.12 + share }}>
            <button
              type="button"
              aria-pressed={!leftOut.has(colour)}
              aria-label={t('{colour}, {part} of 100 parts', { colour, part: Math.round(share * 100) })}
              style={{ background: colour }}
              onClick={() => toggle(colour)}
            />
          </li>
        ))}
      </ul>
      <p className="hint">{t('Press a colour to leave it out.')}</p>
      <div className="buttons">
        <button type="button" disabled={taken.length === 0} onClick={() => addAll(taken)}>
          {t('Add as fabrics')}
        </button>
        <button type="button" disabled={fabrics.length === 0 || taken.length === 0} onClick={() => recolour(taken)}>
          {t('Recolour the fabrics by value')}
        </button>
      </div>
    </>
  )
}

function addAll(palette: readonly PaletteColour[]): void {
  const { block } = getState().history
  const taken = new Set<string>()
  const fabrics = palette.map(({ colour }, at) => {
    const id = freshId(block, 'photo', taken)
    taken.add(id)
    return { id, name: t('Photograph {n}', { n: at + 1 }), colour }
  })
  edit(addFabrics(fabrics))
  setView({ notice: tn(fabrics.length, 'One fabric is added at the end of the list.', '{n} fabrics are added at the end of the list.') })
}

/** Recolours the fabrics in use, or all of them if none is used yet. */
function recolour(palette: readonly PaletteColour[]): void {
  const { block } = getState().history
  const used = fabricsUsed(block)
  const fabrics = block.fabrics.filter(({ id }) => used.size === 0 || used.has(id))
  const colours = coloursByValue(
    fabrics,
    palette.map(({ colour }) => colour),
  )
  edit(recolourFabrics(colours))
  const fewer = new Set(Object.values(colours).map(({ colour }) => colour)).size < fabrics.length
  setView({
    notice: fewer
      ? t('Recoloured, light for light and dark for dark; some fabrics share a colour now: ask for more colours.')
      : t('Recoloured, light for light and dark for dark.'),
  })
}
