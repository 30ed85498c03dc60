/** From one block to a quilt: its borders, the fabric for all copies, the binding, the backing and the batting. */
import { useMemo, useState } from 'react'
import {
  bindingFor,
  type Block,
  fabricForCopies,
  type Findings,
  layersFor,
  message,
  QUILTED,
  type Quilted,
  roundOf,
  seamOf,
  type StashPiece,
  toNumber,
  usableWidthOf,
} from '../../../geometry/index.ts'
import { deepClient } from '../../workers/clients.ts'
import { useStore, useFindings } from '../../document/store.ts'
import { translateAny } from '../../words/translateAny.ts'
import { label, t, tn } from '../../words/words.ts'
import { CountField } from '../../controls/CountField.tsx'
import { sayBought, sayOneSize, saySides } from '../../words/sizes.ts'
import { useWorker } from '../../workers/useWorker.ts'
import { BorderStrips } from './BorderStrips.tsx'
import { SizeRow } from './SizeRow.tsx'
import '../cutting/cutting.css'

const QUILTED_NAMES: Readonly<Record<Quilted, string>> = {
  home: label('on a home machine'),
  longarm: label('on a longarm'),
}
const COUNTS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12]
/** Always the same array, so that the request to the worker is the same from one render to the next. */
const NO_STASH: readonly StashPiece[] = []

export function QuiltMaterials() {
  const block = useStore(({ history }) => history.block)
  const { report } = useFindings()
  const [open, setOpen] = useState(false)
  const [across, setAcross] = useState(3)
  const [down, setDown] = useState(3)
  const [quilted, setQuilted] = useState<Quilted>('home')
  const proved = useWorker(deepClient, 'cloth', open ? [block, across * down, NO_STASH] : null)
  // First a quick answer, then the proved one from the worker.
  const quick = useMemo(() => (open ? fabricForCopies(block, across * down, 'quick') : null), [open, block, across, down])
  const fabricNeeds = proved?.type === 'answer' ? proved.value.cloth : quick
  if (report === null) return null
  return (
    <section aria-labelledby="quilt-title">
      <h2 id="quilt-title">{t('The whole quilt')}</h2>
      {(block.borders ?? []).length > 0 && <BorderStrips block={block} />}
      <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>{t('Fabric, binding, backing, batting')}</summary>
        <div className="pairs">
          <CountField choices={COUNTS} label={t('Blocks across')} value={across} onChange={setAcross} />
          <CountField choices={COUNTS} label={t('Blocks down')} value={down} onChange={setDown} />
        </div>
        <label>
          {t('How you quilt it')}
          <select value={quilted} onChange={(event) => setQuilted(event.target.value as Quilted)}>
            {QUILTED.map((one) => (
              <option key={one} value={one}>
                {t(QUILTED_NAMES[one])}
              </option>
            ))}
          </select>
        </label>
        <MaterialList block={block} report={report} across={across} down={down} quilted={quilted} cloth={fabricNeeds} />
        {proved === null && open && <p className="hint">{t('Checking if less fabric is enough…')}</p>}
      </details>
    </section>
  )
}

interface MaterialsProps {
  readonly block: Block
  readonly report: Findings
  readonly across: number
  readonly down: number
  readonly quilted: Quilted
  /** The fabric for all copies, once it is known. */
  readonly cloth: ReturnType<typeof fabricForCopies> | null
}

function MaterialList({ block, report, across, down, quilted, cloth }: MaterialsProps) {
  const { unit } = block.measure
  const seam = toNumber(seamOf(block))
  const [width, height] = report.block.withBorders
  const top = [(width - 2 * seam) * across + 2 * seam, (height - 2 * seam) * down + 2 * seam] as const
  const usableWidth = toNumber(usableWidthOf(block))
  const binding = bindingFor(top, unit, usableWidth)
  const layers = layersFor(top, unit, quilted, usableWidth, { seam, round: toNumber(roundOf(block)) })
  return (
    <dl className="size" data-testid="quilt">
      <SizeRow name={t('Quilt top')} size={t('{size} unfinished', { size: saySides(top, unit) })} />
      {cloth?.fabric.map(({ fabric, length, buy }) => (
        <SizeRow
          key={fabric}
          name={block.fabrics.find(({ id }) => id === fabric)?.name ?? fabric}
          size={`${sayBought(buy, unit)} (${sayOneSize(length, unit)})`}
        />
      ))}
      <SizeRow
        name={t('Binding')}
        size={`${tn(binding.strips, '1 strip {wide} wide', '{n} strips {wide} wide', { wide: sayOneSize(binding.strip, unit) })}, ${sayBought(binding.buy, unit)}`}
      />
      <SizeRow
        name={t('Backing')}
        size={`${saySides(layers.backing, unit)}, ${sayBought(layers.panels.buy, unit)}${layers.panels.seams === null ? '' : tn(layers.panels.count, ' in 1 panel', ' in {n} panels')}`}
      />
      <SizeRow
        name={t('Batting')}
        size={`${saySides(layers.batting, unit)}${layers.sold === null ? '' : t('; sold as {name}', { name: translateAny(message('batting-size', { size: layers.sold.soldAs })) })}`}
      />
    </dl>
  )
}
