/** Stitching in the ditch: where the line begins, how it runs, what fills the patches, how far apart the stitches lie; as a picture to scale. */
import { useEffect, useMemo, useState } from 'react'
import {
  BATTINGS,
  type Block,
  type Ditch,
  echoLines,
  type Findings,
  holdsAcross,
  largestGap,
  mostApart,
  type Place,
  quiltingSvg,
  type QuiltingWishes,
  routeLines,
  sayLength,
  squareSpiral,
  type StitchedLine,
} from '../../../geometry/index.ts'
import { decimal, pointOf } from '../../document/shapes.ts'
import { asker } from '../../workers/deepClient.ts'
import { download, fileName } from '../../keeping/download.ts'
import { said, t, tell, tn } from '../../words/words.ts'
import { setView, getState, showStitching, useStore, useFindings } from '../../document/store.ts'

const BEGINNINGS: readonly (readonly [string, string])[] = [
  ['', said('where it costs nothing')],
  ['centre', said('in the centre')],
  ['topLeft', said('top left')],
  ['topRight', said('top right')],
  ['bottomRight', said('bottom right')],
  ['bottomLeft', said('bottom left')],
]
const FILLS = { none: said('nothing'), echo: said('echo lines'), spiral: said('a square spiral') } as const
type Fill = keyof typeof FILLS
const SPACINGS = { in: [0.25, 0.5, 1, 2], cm: [0.5, 1, 2.5, 5] } as const
/** Seconds a whole quilting line takes to be drawn. */
const SECONDS = 12

export function Quilting() {
  const shown = useStore(({ view }) => view.mode === 'quilting')
  const block = useStore(({ history }) => history.block)
  const chosen = useStore(({ view }) => view.chosen)
  const stitching = useStore((state) => state.stitching)
  const { report } = useFindings()
  const [begin, setBegin] = useState('')
  const [fill, setFill] = useState<Fill>('none')
  const [spacing, setSpacing] = useState(1)
  const [batting, setBatting] = useState(BATTINGS[0]?.id ?? '')
  const [found, setFound] = useState<{ block: Block; ditch: Ditch } | null>(null)
  const ask = useMemo(asker, [])
  useEffect(() => {
    if (!shown) return
    const wishes = (begin === '' ? {} : { begin, atAnyCost: true }) as QuiltingWishes
    ask({ sort: 'route', block, wishes }, (answer) => {
      if (answer.sort === 'route') setFound({ block, ditch: answer.value })
    })
  }, [shown, block, begin, ask])
  const ditch = found?.block === block ? found.ditch : null
  const fills = useMemo(() => (report === null ? [] : fillsOf(report, block, chosen, fill, spacing)), [report, block, chosen, fill, spacing])
  useEffect(() => {
    if (ditch !== null) showStitching({ block, routes: routeLines(ditch), fills, part: 1 })
  }, [block, ditch, fills])
  const gap = useMemo(() => (ditch === null ? null : gapOf([...routeLines(ditch), ...fills], block)), [ditch, fills, block])
  if (!shown)
    return (
      <section aria-labelledby="quilting-title">
        <h2 id="quilting-title">{t('Quilting')}</h2>
        <p className="hint">{t('One line along the seams, stitched in the ditch.')}</p>
        <div className="buttons">
          <button type="button" onClick={() => setView({ mode: 'quilting' })}>
            {t('Show the quilting line')}
          </button>
        </div>
      </section>
    )
  const { unit } = block.measure
  const chosenBatting = BATTINGS.find(({ id }) => id === batting)
  return (
    <section aria-labelledby="quilting-title">
      <h2 id="quilting-title">{t('Quilting')}</h2>
      <label>
        {t('Begin')}
        <select value={begin} onChange={(event) => setBegin(event.target.value)}>
          {BEGINNINGS.map(([value, name]) => (
            <option key={value} value={value}>
              {t(name)}
            </option>
          ))}
        </select>
      </label>
      {/* There from the first, so that what is found is said. */}
      <p className={ditch === null || ditch.routes.length === 0 ? 'hint' : 'sum'} data-testid="route" role="status">
        {ditch === null ? t('Being worked out…') : ditch.routes.length === 0 ? t('There are no seams to stitch along yet.') : inWords(ditch, unit)}
      </p>
      {ditch !== null && ditch.routes.length > 0 && <Needle part={stitching?.part ?? 1} />}
      <div className="pairs">
        <label>
          {chosen.length > 0 ? t('Fill the chosen units with') : t('Fill each patch with')}
          <select value={fill} onChange={(event) => setFill(event.target.value as Fill)}>
            {Object.entries(FILLS).map(([value, name]) => (
              <option key={value} value={value}>
                {t(name)}
              </option>
            ))}
          </select>
        </label>
        <label>
          {t('Lines apart ({unit})', { unit })}
          <select value={spacing} onChange={(event) => setSpacing(Number(event.target.value))}>
            {SPACINGS[unit].map((value) => (
              <option key={value} value={value}>
                {sayLength(value, unit)}
              </option>
            ))}
          </select>
        </label>
      </div>
      <label>
        {t('Batting')}
        <select value={batting} onChange={(event) => setBatting(event.target.value)}>
          {BATTINGS.map((one) => (
            <option key={one.id} value={one.id}>
              {tell(one.name)}: {sayLength(mostApart(one, unit), unit)} {unit}
            </option>
          ))}
        </select>
      </label>
      {gap !== null && chosenBatting !== undefined && (
        <p className="hint">
          {t(GAPS[holdsAcross(gap, unit, chosenBatting)])}{' '}
          {t('The widest place without a stitch is {width} across. The package has the last word.', {
            width: `${sayLength(gap.width, unit)} ${unit}`,
          })}
        </p>
      )}
      {ditch !== null && ditch.routes.length > 0 && (
        <div className="buttons">
          <button type="button" onClick={() => save(block, ditch, fills)}>
            {t('Save as a picture to scale')}
          </button>
        </div>
      )}
      <p className="caution">{t('Keep your fingers beside the presser foot, and take every pin out before the needle comes to it.')}</p>
    </section>
  )
}

const GAPS = {
  holds: said('The batting holds.'),
  close: said('That is just about what the batting bears.'),
  'too wide': said('That is wider than this batting bears: add lines.'),
} as const

function inWords({ routes, retraced, length, starts, turns, proved }: Ditch, unit: 'in' | 'cm'): string {
  const say = (value: number): string => `${sayLength(value, unit)} ${unit}`
  const lines = tn(routes.length, 'One line, {length} long', '{n} lines, {length} long', { length: say(length) })
  const least = proved
    ? t('{length} stitched twice, the least there can be', { length: say(retraced) })
    : t('{length} stitched twice', { length: say(retraced) })
  const twice = retraced === 0 ? t('nothing stitched twice') : least
  return `${lines}; ${twice}; ${tn(starts, 'one start', '{n} starts')}, ${tn(turns, 'one turn', '{n} turns')}.`
}

function Needle({ part }: { readonly part: number }) {
  const [running, setRunning] = useState(false)
  const set = (next: number): void => {
    const { stitching } = getState()
    if (stitching !== null) showStitching({ ...stitching, part: next })
  }
  useEffect(() => {
    if (!running) return
    let last = performance.now()
    let frame = 0
    const step = (time: number): void => {
      const { stitching } = getState()
      const next = Math.min(1, (stitching?.part ?? 1) + (time - last) / 1000 / SECONDS)
      last = time
      if (stitching !== null) showStitching({ ...stitching, part: next })
      if (next < 1) frame = requestAnimationFrame(step)
      else setRunning(false)
    }
    frame = requestAnimationFrame(step)
    return () => cancelAnimationFrame(frame)
  }, [running])
  return (
    <>
      <label>
        {t('The needle, from start to end')}
        <input type="range" min={0} max={1000} value={Math.round(part * 1000)} onChange={(event) => set(Number(event.target.value) / 1000)} />
      </label>
      <div className="buttons">
        <button
          type="button"
          aria-pressed={running}
          onClick={() => {
            if (!running && part >= 1) set(0)
            setRunning(!running)
          }}
        >
          {running ? t('Stop') : t('Stitch it')}
        </button>
      </div>
    </>
  )
}

function fillsOf(report: Findings, block: Block, chosen: readonly string[], fill: Fill, spacing: number): StitchedLine[] {
  if (fill === 'none') return []
  const cells = spacing / decimal(block.grid.cell)
  return report.patches
    .filter(({ unit }) => unit !== null && (chosen.length === 0 || chosen.includes(unit)))
    .flatMap(({ corners }) => {
      const places = corners.map((corner): Place => pointOf(corner))
      if (fill === 'echo') return echoLines(places, cells)
      const spiral = squareSpiral(inset(places, report.measure.seam / decimal(block.grid.cell)), cells)
      return spiral === null ? [] : [spiral]
    })
}

/** One allowance in from the sides of a square: edges stay loose for joining, and no stitch lies on a ridge. */
function inset(places: readonly Place[], by: number): Place[] {
  const [x, y] = [0, 1].map((axis) => places.reduce((sum, place) => sum + (place[axis] as number), 0) / places.length) as [number, number]
  const [first, second] = places as readonly [Place, Place]
  const side = Math.hypot(second[0] - first[0], second[1] - first[1])
  const kept = Math.max(0, 1 - (2 * by) / side)
  return places.map(([px, py]): Place => [x + (px - x) * kept, y + (py - y) * kept])
}

/** In the measure's unit; the edges of the block are held once it is joined or bound. */
function gapOf(lines: readonly StitchedLine[], block: Block): { width: number; atMost: number } | null {
  const { columns, rows } = block.grid
  const gap = largestGap(lines, [
    [0, 0],
    [columns, 0],
    [columns, rows],
    [0, rows],
  ])
  const cell = decimal(block.grid.cell)
  return gap === null ? null : { width: gap.width * cell, atMost: gap.atMost * cell }
}

function save(block: Block, ditch: Ditch, fills: readonly StitchedLine[]): void {
  const { columns, rows, cell } = block.grid
  const picture = quiltingSvg({
    title: t('{name}: quilting line', { name: block.name }),
    unit: block.measure.unit,
    cell: decimal(cell),
    columns,
    rows,
    routes: routeLines(ditch),
    fills,
  })
  download(`${fileName(block.name)}-quilting.svg`, picture, 'image/svg+xml')
}
