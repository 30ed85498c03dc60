/** Light and dark: the fabrics by their lightness, and neighbours that can hardly be told apart from across the room. */
import { type Block, type Blur, BLURS_BELOW, type Fabric, fabricsUsed, meanLightness, sayLength } from '../../../geometry/index.ts'
import { useBlurs } from '../../workers/useBlurs.ts'
import { setView, useStore } from '../../document/store.ts'
import { t, tn } from '../../words/words.ts'
import { Swatch } from '../../drawing/FabricDefs.tsx'

export function FabricValues() {
  const block = useStore(({ history }) => history.block)
  const seen = useStore(({ view }) => view.mode)
  const found = useBlurs(block)
  return (
    <section aria-labelledby="value-title">
      <h2 id="value-title">{t('Light and dark')}</h2>
      <Scale block={block} />
      <button type="button" aria-pressed={seen === 'value'} onClick={() => setView({ mode: seen === 'value' ? 'cloth' : 'value' })}>
        {t('Show values')}
      </button>
      {found !== null && <Blurs found={found} block={block} />}
      <p className="hint">
        {t('Values go from 0 (black) to 100 (white); a print has its average. Neighbouring fabrics less than {n} apart look alike.', {
          n: BLURS_BELOW,
        })}
      </p>
    </section>
  )
}

/** The fabrics that are used, the lightest first, each over its grey. */
function Scale({ block }: { readonly block: Block }) {
  const used = fabricsUsed(block)
  const scale = block.fabrics
    .filter(({ id }) => used.has(id))
    .map((fabric) => ({ fabric, lightness: meanLightness(fabric) }))
    .sort((one, other) => other.lightness - one.lightness)
  return (
    <ol className="scale" aria-label={t('Fabrics from light to dark')}>
      {scale.map(({ fabric, lightness }) => (
        <li key={fabric.id} title={fabric.name}>
          <span className="over">
            <Swatch fabric={fabric} unit={block.measure.unit} />
          </span>
          <span className="grey" style={{ background: `hsl(0 0% ${lightness.toFixed(1)}%)`, color: lightness > 50 ? '#000000' : '#ffffff' }}>
            {Math.round(lightness)}
          </span>
          <span className="unseen">{fabric.name}</span>
        </li>
      ))}
    </ol>
  )
}

function Blurs({ found, block }: { readonly found: readonly Blur[]; readonly block: Block }) {
  if (found.length === 0) return <p className="sum">{t('Neighbouring fabrics stand out.')}</p>
  const { unit } = block.measure
  const named = (id: string): Fabric | undefined => block.fabrics.find((fabric) => fabric.id === id)
  return (
    <>
      <p className="sum">{tn(found.length, 'One pair of neighbouring fabrics looks alike.', '{n} pairs of neighbouring fabrics look alike.')}</p>
      <ul className="blurs">
        {found.map(({ fabrics: [one, other], difference, length, lines }) => (
          <li key={`${one} ${other}`}>
            <button
              type="button"
              className="plain"
              onPointerEnter={() => setView({ pointedLines: lines })}
              onPointerLeave={() => setView({ pointedLines: null })}
              onFocus={() => setView({ pointedLines: lines })}
              onBlur={() => setView({ pointedLines: null })}
            >
              <span className="pair" aria-hidden="true">
                {[one, other].map((id) => {
                  const fabric = named(id)
                  return fabric && <Swatch key={id} fabric={fabric} unit={unit} />
                })}
              </span>
              {t('{one} and {other}: {difference} apart, along {length} {unit} of seam', {
                one: named(one)?.name ?? one,
                other: named(other)?.name ?? other,
                difference: difference.toFixed(1),
                length: sayLength(length, unit),
                unit,
              })}
            </button>
          </li>
        ))}
      </ul>
    </>
  )
}
