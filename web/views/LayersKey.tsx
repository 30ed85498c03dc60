/** What the colours of the layers view mean, and how much of the block each covers. */
import { useMemo } from 'react'
import { layerColour, layerAreas } from '../drawing/layerColours.ts'
import { t, tn } from '../words/words.ts'
import { useStore } from '../document/store.ts'

export function LayersKey() {
  const block = useStore(({ history }) => history.block)
  const layers = useStore((state) => state.layers)
  const cells = layers?.block === block ? layers.layered.cells : null
  const areas = useMemo(() => (cells !== null ? layerAreas(cells) : []), [cells])
  const total = areas.reduce((sum, { area }) => sum + area, 0)
  if (areas.length === 0)
    return (
      <p className="layers">
        {cells === null ? t('Counting layers…') : t('Layers are counted once the block is full and can be sewn. Very large blocks aren’t counted.')}
      </p>
    )
  return (
    <ul className="layers" aria-label={t('Layers of fabric by colour')}>
      {areas.map(({ layers, area }) => (
        <li key={layers}>
          <span className="dot" style={{ background: layerColour(layers) }} />
          {tn(layers, '{n} layer', '{n} layers')} <small>{percent(area / total)}</small>
        </li>
      ))}
    </ul>
  )
}

const percent = (part: number): string => (part < 0.001 ? t('under 0.1%') : `${(part * 100).toFixed(part < 0.1 ? 1 : 0)} %`)
