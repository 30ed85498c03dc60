/** What the colourings may change: which patches, which fabrics, and what has to stay as it is. */
import type { Block, ColouringRequest } from '../../../geometry/index.ts'
import { Swatch } from '../../drawing/FabricDefs.tsx'
import { t } from '../../words/words.ts'

export type Options = Omit<ColouringRequest, 'fabrics'>
export const FIRST_OPTIONS: Options = { what: 'points', keepBackground: true, sameAmounts: false, fewestBatches: false }

interface Props {
  readonly options: Options
  readonly change: (next: Partial<Options>) => void
  readonly block: Block
  readonly background: string | null
  readonly fabrics: readonly string[]
  readonly setFabrics: (fabrics: readonly string[]) => void
}

export function ColouringOptions({ options, change, block, background, fabrics, setFabrics }: Props) {
  const tick = (name: 'keepBackground' | 'sameAmounts' | 'fewestBatches', label: string) => (
    <label className="tick">
      <input type="checkbox" checked={options[name]} onChange={(event) => change({ [name]: event.target.checked })} />
      {label}
    </label>
  )
  const backgroundName = block.fabrics.find(({ id }) => id === background)?.name
  return (
    <>
      {block.units.some(({ kind }) => kind === 'goose') && tick('fewestBatches', t('Fewest batches only'))}
      <label>
        {t('Change')}
        <select value={options.what} onChange={(event) => change({ what: event.target.value as Options['what'] })}>
          <option value="points">{t('the points only')}</option>
          <option value="all">{t('all patches')}</option>
        </select>
      </label>
      <fieldset className="chips" disabled={options.sameAmounts}>
        <legend>{t('Use these fabrics')}</legend>
        {block.fabrics.map((fabric) => (
          <button
            key={fabric.id}
            type="button"
            aria-pressed={fabrics.includes(fabric.id)}
            onClick={() => setFabrics(fabrics.includes(fabric.id) ? fabrics.filter((id) => id !== fabric.id) : [...fabrics, fabric.id])}
          >
            <Swatch fabric={fabric} unit={block.measure.unit} />
            {fabric.name}
          </button>
        ))}
      </fieldset>
      {tick('keepBackground', backgroundName === undefined ? t('Keep the background') : t('Keep the background ({name})', { name: backgroundName }))}
      {tick('sameAmounts', t('Same amount of each fabric'))}
    </>
  )
}
