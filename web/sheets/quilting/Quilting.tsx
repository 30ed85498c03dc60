/** Stitching in the ditch: where the line begins, how it runs, what fills the patches, and whether the batting allows the gaps between the lines. */
import { useEffect, useMemo, useState } from 'react'
import {
  BATTINGS,
  type Block,
  type Ditch,
  fillsOf,
  lengthOfLine,
  QUILTING_STARTS,
  quiltingOf,
  type QuiltingStart,
  quiltingSvg,
  routeLines,
  sayLength,
  setQuiltingStart,
  type StitchedLine,
} from '../../../geometry/index.ts'
import { toDecimal } from '../../document/shapes.ts'
import { edit, setView, showStitching, useFindings, useStore } from '../../document/store.ts'
import { fileName, saveAndSay } from '../../keeping/download.ts'
import { label, t, tn } from '../../words/words.ts'
import { deepClient } from '../../workers/clients.ts'
import { useClient } from '../../workers/useWorker.ts'
import { BattingField } from './BattingField.tsx'
import { FillFields } from './FillFields.tsx'
import { NeedleSlider } from './NeedleSlider.tsx'
import { widestGap } from './widestGap.ts'

/** Where the line may start, as the panel calls it. */
const START_NAMES: Readonly<Record<QuiltingStart, string>> = {
  centre: label('in the centre'),
  topLeft: label('top left'),
  topRight: label('top right'),
  bottomRight: label('bottom right'),
  bottomLeft: label('bottom left'),
}

export function Quilting() {
  const shown = useStore(({ view }) => view.mode === 'quilting')
  const block = useStore(({ history }) => history.block)
  const selected = useStore(({ view }) => view.selected)
  const stitching = useStore((state) => state.stitching)
  const { report } = useFindings()
  const [batting, setBatting] = useState(BATTINGS[0]?.id ?? '')
  const ditch = useRoute(block, shown)
  const { lines: fills, tooSmall } = useMemo(() => fillsOf(block, report?.patches ?? []), [report, block])
  useEffect(() => {
    if (ditch !== null) showStitching({ block, routes: routeLines(ditch), fills, part: 1 })
  }, [block, ditch, fills])
  const gap = useMemo(() => (ditch === null ? null : widestGap([...routeLines(ditch), ...fills], block)), [ditch, fills, block])
  if (!shown)
    return (
      <section aria-labelledby="quilting-title">
        <h2 id="quilting-title">{t('Quilting')}</h2>
        <p className="hint">{t('Plan a line to quilt in the ditch, along the seams.')}</p>
        <div className="buttons">
          <button type="button" className="main" onClick={() => setView({ mode: 'quilting' })}>
            {t('Show the quilting line')}
          </button>
        </div>
      </section>
    )
  const { unit } = block.measure
  return (
    <section aria-labelledby="quilting-title">
      <h2 id="quilting-title">{t('Quilting')}</h2>
      <label>
        {t('Start')}
        <select
          value={quiltingOf(block).begin ?? ''}
          onChange={({ target: { value } }) => edit(setQuiltingStart(value === '' ? null : (value as QuiltingStart)))}
        >
          <option value="">{t('wherever is easiest')}</option>
          {QUILTING_STARTS.map((value) => (
            <option key={value} value={value}>
              {t(START_NAMES[value])}
            </option>
          ))}
        </select>
      </label>
      {/* Always on the page, so that a screen reader announces the route when it arrives. */}
      <p className={ditch === null || ditch.routes.length === 0 ? 'hint' : 'sum'} data-testid="route" role="status">
        {ditch === null ? t('Working…') : ditch.routes.length === 0 ? t('No seams to stitch along yet.') : routeWords(ditch, unit)}
      </p>
      {ditch !== null && ditch.routes.length > 0 && <NeedleSlider part={stitching?.part ?? 1} />}
      <FillFields block={block} selected={selected} />
      <p className="hint" data-testid="fills" role="status">
        {fillWords(fills, tooSmall, block)}
      </p>
      <BattingField unit={unit} batting={batting} setBatting={setBatting} gap={gap} />
      {ditch !== null && ditch.routes.length > 0 && (
        <div className="buttons">
          <button type="button" className="main" onClick={() => savePicture(block, ditch, fills)}>
            {t('Save quilting line as SVG')}
          </button>
        </div>
      )}
      <p className="caution">{t('Keep your fingers clear of the needle, and take out each pin before you reach it.')}</p>
    </section>
  )
}

/** The quilting route, found by a worker while the quilting line is shown; null until it arrives. */
function useRoute(block: Block, shown: boolean): Ditch | null {
  const [found, setFound] = useState<{ readonly block: Block; readonly ditch: Ditch } | null>(null)
  const client = useClient(deepClient, shown)
  useEffect(() => {
    if (!shown) return
    void client.request('route', block).then((reply) => {
      if (reply.type === 'answer') setFound({ block, ditch: reply.value })
    })
  }, [shown, block, client])
  return found?.block === block ? found.ditch : null
}

function routeWords({ routes, retraced, length, starts, turns, proved }: Ditch, unit: 'in' | 'cm'): string {
  const say = (value: number): string => `${sayLength(value, unit)} ${unit}`
  const lines = tn(routes.length, '1 line, {length} long', '{n} lines, {length} long', { length: say(length) })
  const least = proved
    ? t('{length} stitched twice, the least possible', { length: say(retraced) })
    : t('{length} stitched twice', { length: say(retraced) })
  const twice = retraced === 0 ? t('nothing stitched twice') : least
  return `${lines}; ${twice}; ${tn(starts, '1 start', '{n} starts')}, ${tn(turns, '1 turn', '{n} turns')}.`
}

/** Fills are not joined to the line along the seams: each of their lines is a start more. */
function fillWords(fills: readonly StitchedLine[], tooSmall: number, { grid, measure: { unit } }: Block): string {
  const length = fills.reduce((sum, line) => sum + lengthOfLine(line), 0) * toDecimal(grid.cell)
  return [
    ...(fills.length === 0
      ? []
      : [
          tn(
            fills.length,
            'Fills: 1 line more, {length} long, with a start of its own.',
            'Fills: {n} lines more, {length} long, each with its own start.',
            {
              length: `${sayLength(length, unit)} ${unit}`,
            },
          ),
        ]),
    ...(tooSmall === 0
      ? []
      : [tn(tooSmall, '1 patch is too small for lines that far apart.', '{n} patches are too small for lines that far apart.')]),
  ].join(' ')
}

function savePicture(block: Block, ditch: Ditch, fills: readonly StitchedLine[]): void {
  const { columns, rows, cell } = block.grid
  const picture = quiltingSvg({
    title: t('{name}: quilting line', { name: block.name }),
    unit: block.measure.unit,
    cell: toDecimal(cell),
    columns,
    rows,
    routes: routeLines(ditch),
    fills,
  })
  saveAndSay(t('Quilting line'), `${fileName(block.name)}-quilting.svg`, picture, 'image/svg+xml')
}
