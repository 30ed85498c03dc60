/** From one block to a quilt: its borders, cloth for all copies, the binding, the backing and the batting. */
import { useMemo, useState } from 'react'
import {
  bindingFor,
  type Block,
  borderRounds,
  clothFor,
  type CutStrip,
  layersFor,
  MEASURE_FIRST,
  parseRational,
  QUILTED,
  type Quilted,
  roundOf,
  roundsOf,
  sayLength,
  type StashPiece,
  seamOf,
  stripFor,
  toNumber,
  usableWidthOf,
} from '../../../geometry/index.ts'
import { asker } from '../../workers/deepClient.ts'
import { useStore, useFindings } from '../../document/store.ts'
import { said, t, tell, tn } from '../../words/words.ts'
import { CountField } from '../../controls/CountField.tsx'
import { parseLengthEntry, lengthProblem } from '../../controls/lengthEntry.ts'
import { type MeasureUnit, sayBought, sayOneSize, saySides } from '../../words/sizes.ts'
import { useDeep } from '../../workers/useDeep.ts'
import '../cutting/cutting.css'

const QUILTED_NAMES: Readonly<Record<Quilted, string>> = {
  home: said('under a home machine'),
  longarm: said('on a frame'),
  block: said('block by block, then joined'),
}
const COUNTS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12]
const ask = asker()
/** The same each time: a wish is known again by what stands in it. */
const NO_STASH: readonly StashPiece[] = []

export function QuiltMaterials() {
  const block = useStore(({ history }) => history.block)
  const { report } = useFindings()
  const [open, setOpen] = useState(false)
  const [across, setAcross] = useState(3)
  const [down, setDown] = useState(3)
  const [quilted, setQuilted] = useState<Quilted>('home')
  const told = useDeep(ask, open ? { sort: 'cloth', block, copies: across * down, stash: NO_STASH } : null)
  // At once what is found quickly, then what is proved.
  const quick = useMemo(() => (open ? clothFor(block, across * down, 'quick') : null), [open, block, across, down])
  const cloth = told?.sort === 'cloth' ? told.value.cloth : quick
  if (report === null) return null
  const { unit } = block.measure
  const seam = toNumber(seamOf(block))
  const [w, h] = report.block.withBorders
  const top = [(w - 2 * seam) * across + 2 * seam, (h - 2 * seam) * down + 2 * seam] as const
  const width = toNumber(usableWidthOf(block))
  const binding = bindingFor(top, unit, width)
  const layers = layersFor(top, unit, quilted, width, { seam, round: toNumber(roundOf(block)) })
  return (
    <section aria-labelledby="quilt-title">
      <h2 id="quilt-title">{t('The whole quilt')}</h2>
      {(block.borders ?? []).length > 0 && <Borders block={block} />}
      <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>{t('Cloth, binding, backing, batting')}</summary>
        <div className="pairs">
          <CountField choices={COUNTS} label={t('Blocks across')} value={across} onChange={setAcross} />
          <CountField choices={COUNTS} label={t('Blocks down')} value={down} onChange={setDown} />
        </div>
        <label>
          {t('Quilted')}
          <select value={quilted} onChange={(event) => setQuilted(event.target.value as Quilted)}>
            {QUILTED.map((one) => (
              <option key={one} value={one}>
                {t(QUILTED_NAMES[one])}
              </option>
            ))}
          </select>
        </label>
        <dl className="size" data-testid="quilt">
          <Row name={t('Top')} said={t('{size} unfinished', { size: saySides(top, unit) })} />
          {cloth?.fabric.map(({ fabric, length, buy }) => (
            <Row
              key={fabric}
              name={block.fabrics.find(({ id }) => id === fabric)?.name ?? fabric}
              said={`${sayBought(buy, unit)} (${sayOneSize(length, unit)})`}
            />
          ))}
          <Row
            name={t('Binding')}
            said={`${tn(binding.strips, 'one strip {wide} wide', '{n} strips {wide} wide', { wide: sayOneSize(binding.strip, unit) })}, ${sayBought(binding.buy, unit)}`}
          />
          <Row
            name={t('Backing')}
            said={`${saySides(layers.backing, unit)}, ${sayBought(layers.panels.buy, unit)}${layers.panels.seams === null ? '' : tn(layers.panels.count, ' in one panel', ' in {n} panels')}`}
          />
          <Row
            name={t('Batting')}
            said={`${saySides(layers.batting, unit)}${layers.sold === null ? '' : t('; sold as {name}', { name: tell(layers.sold.name) })}`}
          />
        </dl>
        {told === null && open && <p className="hint">{t('Whether less cloth does is being worked out beside the page…')}</p>}
      </details>
    </section>
  )
}

function Row({ name, said: words }: { readonly name: string; readonly said: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{words}</dd>
    </>
  )
}

function Borders({ block }: { readonly block: Block }) {
  const { unit } = block.measure
  const cell = toNumber(parseRational(block.grid.cell) ?? { n: 1n, d: 1n })
  const rule = { seam: toNumber(seamOf(block)), round: toNumber(roundOf(block)) }
  const rounds = borderRounds([block.grid.columns * cell, block.grid.rows * cell], roundsOf(block), rule)
  const name = (id: string): string => block.fabrics.find((fabric) => fabric.id === id)?.name ?? id
  const strip = ({ fabric, size: [wide, long], count }: CutStrip): string => `${count} × ${saySides([wide, long], unit)}, ${name(fabric)}`
  return (
    <details className="order" open>
      <summary>{tn(rounds.length, 'The border', 'The {n} borders, from the inside')}</summary>
      {rounds.map(({ sides, corners, topAndBottom, becomes }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a border is its place, counted from the block outward
        <dl className="size" key={index}>
          <Row name={t('Sides first')} said={strip(sides)} />
          {corners !== null && <Row name={t('Corner squares')} said={strip(corners)} />}
          <Row name={corners === null ? t('Top and bottom') : t('Top and bottom, a square at each end')} said={strip(topAndBottom)} />
          <Row name={t('It measures')} said={saySides(becomes, unit)} />
        </dl>
      ))}
      <p className="hint">{tell(MEASURE_FIRST)}</p>
      <Measured unit={unit} />
    </details>
  )
}

/** Three measurements, and what both strips of a pair are cut to. */
function Measured({ unit }: { readonly unit: MeasureUnit }) {
  const [texts, setTexts] = useState<readonly string[]>(['', '', ''])
  const lengths = texts.flatMap((text) => parseLengthEntry(text) ?? [])
  const troubles = texts.map((text) => (text.trim() === '' ? null : lengthProblem(text)))
  const trouble = troubles.find((one) => one !== null)
  const found = lengths.length === 0 ? null : stripFor(lengths, unit)
  const names = [t('Through the middle'), t('One edge'), t('The other edge')]
  return (
    <>
      <div className="threes">
        {texts.map((text, place) => (
          <label key={names[place]}>
            {names[place]}
            <input
              value={text}
              inputMode="text"
              aria-invalid={troubles[place] !== null}
              onChange={(event) => setTexts(texts.map((one, other) => (other === place ? event.target.value : one)))}
            />
          </label>
        ))}
      </div>
      <p className={trouble === undefined ? 'hint' : 'trouble'} role="status">
        {trouble !== undefined
          ? trouble
          : found === null
            ? t('Measure the sewn piece in up to three places, in {unit}.', { unit })
            : `${t('Cut both strips {length} long.', { length: `${sayLength(found.length, unit)} ${unit}` })} ${
                found.eases.every(Boolean) ? t('The edges can be eased on.') : t('One edge is too far off to be eased on: see where it stretched.')
              }`}
      </p>
    </>
  )
}
