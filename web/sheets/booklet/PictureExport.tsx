/** A picture of the block to scale, in any view, saved as SVG or PNG. */
import { useState } from 'react'
import { type Block, layersSvg, quiltingRoute, VIEWS, type View, viewSvg } from '../../../geometry/index.ts'
import { setView, useStore, useFindings } from '../../document/store.ts'
import { layerColour } from '../../drawing/layerColours.ts'
import { fileName, saveAndSay } from '../../keeping/download.ts'
import { label, t } from '../../words/words.ts'
import { svgToPng } from './svgToPng.ts'

type PictureView = View | 'layers'

const VIEW_NAMES: Readonly<Record<PictureView, string>> = {
  cloth: label('in fabric'),
  value: label('values in grey'),
  outline: label('outlines only'),
  wrong: label('wrong side'),
  seams: label('with seam numbers'),
  quilting: label('with the quilting line'),
  layers: label('with the number of layers'),
}

export function PictureExport({ block }: { readonly block: Block }) {
  const [pickedView, setChosen] = useState<PictureView>('cloth')
  const { report } = useFindings()
  const layers = useStore((state) => state.layers)
  if (report === null) return null
  // A worker counts the layers. Until it has answered there is no picture of them to offer.
  const views: readonly PictureView[] = layers?.block === block && layers.layered.cells.length > 0 ? [...VIEWS, 'layers'] : VIEWS
  const view = views.includes(pickedView) ? pickedView : 'cloth'
  const name = `${fileName(block.name)}-${view}`
  const svg = (): string => {
    if (view === 'layers') return layersSvg(layers?.layered.cells ?? [], report, block, layerColour)
    return viewSvg(view, view === 'quilting' ? { ...report, ditch: quiltingRoute(block) } : report, block)
  }
  return (
    <>
      <h3>{t('Picture to scale')}</h3>
      <label className="view">
        {t('Show the block')}
        <select value={view} onChange={(event) => setChosen(event.target.value as PictureView)}>
          {views.map((one) => (
            <option key={one} value={one}>
              {t(VIEW_NAMES[one])}
            </option>
          ))}
        </select>
      </label>
      <div className="buttons">
        <button type="button" onClick={() => saveAndSay(t('Picture'), `${name}.svg`, svg(), 'image/svg+xml')}>
          {t('Save as SVG')}
        </button>
        <button type="button" onClick={() => void savePng(name, svg())}>
          {t('Save as PNG')}
        </button>
      </div>
    </>
  )
}

async function savePng(name: string, svg: string): Promise<void> {
  try {
    saveAndSay(t('Picture'), `${name}.png`, await svgToPng(svg), 'image/png')
  } catch {
    setView({ notice: t('Your browser can’t make the PNG. Save the picture as SVG instead.') })
  }
}
