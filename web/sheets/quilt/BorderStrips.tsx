/** The strips of the borders, from the inside out: the sides first, then top and bottom, and what the block measures with each border. */
import {
  type Block,
  borderRounds,
  type CutStrip,
  MEASURE_FIRST,
  parseRational,
  roundOf,
  roundsOf,
  seamOf,
  toNumber,
} from '../../../geometry/index.ts'
import { saySides } from '../../words/sizes.ts'
import { translateAny } from '../../words/translateAny.ts'
import { t, tn } from '../../words/words.ts'
import { BorderLength } from './BorderLength.tsx'
import { SizeRow } from './SizeRow.tsx'

export function BorderStrips({ block }: { readonly block: Block }) {
  const { unit } = block.measure
  const cell = toNumber(parseRational(block.grid.cell) ?? { n: 1n, d: 1n })
  const rule = { seam: toNumber(seamOf(block)), round: toNumber(roundOf(block)) }
  const rounds = borderRounds([block.grid.columns * cell, block.grid.rows * cell], roundsOf(block), rule)
  const name = (id: string): string => block.fabrics.find((fabric) => fabric.id === id)?.name ?? id
  const strip = ({ fabric, size: [width, length], count }: CutStrip): string => `${count} × ${saySides([width, length], unit)}, ${name(fabric)}`
  return (
    <details className="order" open>
      <summary>{tn(rounds.length, 'The border', 'The {n} borders, from the inside out')}</summary>
      {rounds.map(({ sides, corners, topAndBottom, becomes }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a border is its place, counted from the block outward
        <dl className="size" key={index}>
          <SizeRow name={t('Sides first')} size={strip(sides)} />
          {corners !== null && <SizeRow name={t('Corner squares')} size={strip(corners)} />}
          <SizeRow name={corners === null ? t('Top and bottom') : t('Top and bottom, with a corner square at each end')} size={strip(topAndBottom)} />
          <SizeRow name={t('Size with this border')} size={saySides(becomes, unit)} />
        </dl>
      ))}
      <p className="hint">{translateAny(MEASURE_FIRST)}</p>
      <BorderLength unit={unit} />
    </details>
  )
}
