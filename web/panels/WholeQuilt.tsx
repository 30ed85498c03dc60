/** From one block to a quilt: cloth for all copies, the binding, the backing and the batting. */
import { useMemo, useState } from 'react'
import {
  bindingFor,
  clothFor,
  layersFor,
  MEASURE_FIRST,
  QUILTED,
  type Quilted,
  sayLength,
  seamOf,
  toNumber,
  roundOf,
  usableWidthOf,
} from '../../geometry/index.ts'
import { Count } from './Count.tsx'
import { useStore, useTold } from '../state/store.ts'

const QUILTED_NAMES: Readonly<Record<Quilted, string>> = {
  home: 'under a home machine',
  longarm: 'on a frame',
  block: 'block by block, then joined',
}
const COUNTS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12]

export function WholeQuilt() {
  const block = useStore(({ history }) => history.block)
  const { report } = useTold()
  const [open, setOpen] = useState(false)
  const [across, setAcross] = useState(3)
  const [down, setDown] = useState(3)
  const [quilted, setQuilted] = useState<Quilted>('home')
  const cloth = useMemo(() => (open ? clothFor(block, across * down, 'quick') : null), [open, block, across, down])
  if (report === null) return null
  const { unit } = block.measure
  const seam = toNumber(seamOf(block))
  const [w, h] = report.block.withBorders
  const top = [(w - 2 * seam) * across + 2 * seam, (h - 2 * seam) * down + 2 * seam] as const
  const width = toNumber(usableWidthOf(block))
  const rule = { seam, round: toNumber(roundOf(block)) }
  const binding = bindingFor(top, unit, width)
  const layers = layersFor(top, unit, quilted, width, rule)
  const say = (length: number): string => sayLength(length, unit)
  const size = ([a, b]: readonly [number, number]): string => `${say(a)} × ${say(b)} ${unit}`
  const bought = (length: number): string => (unit === 'in' ? `${sayLength(length, 'in')} yd` : `${length} m`)
  return (
    <section aria-labelledby="quilt-title">
      <h2 id="quilt-title">The whole quilt</h2>
      <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>Cloth, binding, backing, batting</summary>
        <div className="pairs">
          <Count choices={COUNTS} label="Blocks across" value={across} take={setAcross} />
          <Count choices={COUNTS} label="Blocks down" value={down} take={setDown} />
        </div>
        <label>
          Quilted
          <select value={quilted} onChange={(event) => setQuilted(event.target.value as Quilted)}>
            {QUILTED.map((one) => (
              <option key={one} value={one}>
                {QUILTED_NAMES[one]}
              </option>
            ))}
          </select>
        </label>
        <dl className="size" data-testid="quilt">
          <dt>Top</dt>
          <dd>{size(top)} unfinished</dd>
          {cloth?.fabric.map(({ fabric, length, buy }) => (
            <Fabric
              key={fabric}
              name={block.fabrics.find(({ id }) => id === fabric)?.name ?? fabric}
              said={`${bought(buy)} (${say(length)} ${unit})`}
            />
          ))}
          <dt>Binding</dt>
          <dd>
            {binding.strips} {binding.strips === 1 ? 'strip' : 'strips'} {say(binding.strip)} {unit} wide, {bought(binding.buy)}
          </dd>
          <dt>Backing</dt>
          <dd>
            {size(layers.backing)}, {bought(layers.panels.buy)}
            {layers.panels.seams === null ? '' : ` in ${layers.panels.count} panels`}
          </dd>
          <dt>Batting</dt>
          <dd>
            {size(layers.batting)}
            {layers.sold === null ? '' : `; sold as ${layers.sold.name}`}
          </dd>
        </dl>
        {(block.borders ?? []).length > 0 && <p className="hint">{MEASURE_FIRST}</p>}
      </details>
    </section>
  )
}

function Fabric({ name, said }: { readonly name: string; readonly said: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{said}</dd>
    </>
  )
}
