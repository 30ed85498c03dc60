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
      <h2 id="palette-title">{t('Colours from a photo')}</h2>
      <div className="from-photo">
        {photo !== null && <img src={photo.url} alt={t('Photo {name}', { name: photo.name })} />}
        <div>
          <FileButton accept="image/*" inputLabel={t('Photo to take colours from')} onPick={([file]) => void open(file)}>
            {photo === null ? t('Select a photo') : t('Select another photo')}
          </FileButton>
          <CountField label={t('Number of colours')} value={count} choices={COUNTS} onChange={setCount} />
        </div>
      </div>
      {trouble !== null && (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
      {photo !== null && palette !== null && <Palette palette={palette} />}
      <p className="hint">{t('Your photo stays on this device.')}</p>
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
  if (palette.length === 0) return <p className="trouble">{t('No colours found. Try another photo.')}</p>
  return (
    <>
      <ul className="palette" aria-label={t('Colours of the photo, from light to dark')}>
        {palette.map(({ colour, share }) => (
          <li key={colour} style={{ flexGrow: 0.12 + share }}>
            <button
              type="button"
              aria-pressed={!leftOut.has(colour)}
              aria-label={t('{colour}, {part} % of the photo', { colour, part: Math.round(share * 100) })}
              style={{ background: colour }}
              onClick={() => toggle(colour)}
            />
          </li>
        ))}
      </ul>
      <p className="hint">{t('Click a colour to leave it out.')}</p>
      <div className="buttons">
        <button type="button" className="main" disabled={taken.length === 0} onClick={() => addAll(taken)}>
          {t('Add as fabrics')}
        </button>
        <button type="button" disabled={fabrics.length === 0 || taken.length === 0} onClick={() => recolour(taken)}>
          {t('Recolour my fabrics by value')}
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
    return { id, name: t('Photo {n}', { n: at + 1 }), colour }
  })
  edit(addFabrics(fabrics))
  setView({ notice: tn(fabrics.length, '1 fabric added at the end of the list.', '{n} fabrics added at the end of the list.') })
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
      ? t('Recoloured: light stays light, dark stays dark. Some fabrics now share a colour; more colours keep them apart.')
      : t('Recoloured: light stays light, dark stays dark.'),
  })
}
