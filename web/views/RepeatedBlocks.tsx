/** The block repeated beside itself: seams that clash are marked along the edges between copies, and a press on a copy turns it. */
import { type KeyboardEvent, useMemo, useState } from 'react'
import type { Block, SettingReport } from '../../geometry/index.ts'
import { type SettingState, turnCopy, useSetting } from './settingRequest.ts'
import { setView, useStore, useFindings } from '../document/store.ts'
import { translateAny } from '../words/translateAny.ts'
import { t, tn } from '../words/words.ts'
import { bordersAround, patchShapes, type Point } from '../document/shapes.ts'
import { FittedDrawing } from '../drawing/FittedDrawing.tsx'
import { settingView } from './repeatedBlocks.ts'
import './views.css'

export function RepeatedBlocks() {
  const setting = useSetting(true)
  const block = useStore(({ history }) => history.block)
  const marks = useStore(({ view }) => view.marks !== 'none')
  if (setting.trouble !== null || setting.report === null || setting.report.problems.length > 0)
    return (
      <div className="board drawn">
        <p className="nothing">{messageFor(setting)}</p>
      </div>
    )
  return <SettingPicture className="board drawn copies" block={block} report={setting.report} marks={marks} margin={24} turning />
}

const messageFor = ({ trouble, report }: SettingState): string => {
  if (trouble !== null) return t('The blocks can’t be set like that: {reason}.', { reason: translateAny(trouble) })
  return report === null ? t('Working…') : t('Finish the block first: it can’t be sewn yet.')
}

interface Props {
  readonly className: string
  readonly block: Block
  readonly report: SettingReport
  readonly marks: boolean
  readonly margin: number
  /** A press on a copy turns it. */
  readonly turning?: boolean
}

export function SettingPicture({ className, block, report, marks, margin, turning = false }: Props) {
  const findings = useFindings().report
  const pieces = useMemo(() => (findings === null ? [] : patchShapes(findings.patches)), [findings])
  const view = useMemo(
    () =>
      settingView(block, pieces, {
        columns: report.columns,
        rows: report.rows,
        copies: report.places,
        joins: report.joins,
        meetings: marks ? report.meetings : report.meetings.filter(({ verdict }) => verdict === 'clashes'),
      }),
    [block, pieces, report, marks],
  )
  const label = t('{across} by {down} blocks, {name}: {clashes}', {
    across: report.columns,
    down: report.rows,
    name: report.block,
    clashes: clashCount(report.clashes.between),
  })
  return (
    <FittedDrawing
      className={className}
      block={block}
      drawing={view.drawing}
      reach={[0, 0, ...view.whole]}
      margin={margin}
      label={label}
      {...(turning
        ? { over: (scale: number, origin: Point) => <CopyButtons block={block} report={report} copy={view.copy} scale={scale} origin={origin} /> }
        : {})}
    />
  )
}

export const clashCount = (count: number): string =>
  count === 0 ? t('no problems between blocks') : tn(count, 'one crossing between blocks doesn’t nest', '{n} crossings between blocks don’t nest')

interface CopyButtonsProps {
  readonly block: Block
  readonly report: SettingReport
  readonly copy: Point
  readonly scale: number
  readonly origin: Point
}

/** One button over each copy; arrows go from one to the next, so that all of them are one stop of the Tab key. */
function CopyButtons({ block, report, copy: [wide, high], scale, origin }: CopyButtonsProps) {
  const [current, setCurrent] = useState(0)
  const borders = bordersAround(block)
  const square = block.grid.columns + 2 * borders === block.grid.rows + 2 * borders
  const at = Math.min(current, report.places.length - 1)
  const walk = (event: KeyboardEvent<HTMLElement>): void => {
    const by = { ArrowLeft: -1, ArrowRight: 1, ArrowUp: -report.columns, ArrowDown: report.columns }[event.key]
    if (by === undefined) return
    event.preventDefault()
    const next = at + by
    const sameRow = Math.floor(next / report.columns) === Math.floor(at / report.columns)
    if (next < 0 || next >= report.places.length || (Math.abs(by) === 1 && !sameRow)) return
    setCurrent(next)
    ;(event.currentTarget.children[next] as HTMLElement | undefined)?.focus()
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid over the picture in every browser
    <div className="handholds" data-part="board" role="group" aria-label={t('Blocks: click one to turn it, use arrow keys to move')} onKeyDown={walk}>
      {report.places.map(({ at: [column, row], turn, press }, place) => (
        <button
          key={`${column} ${row}`}
          type="button"
          tabIndex={place === at ? 0 : -1}
          aria-label={copyLabel(column, row, turn, press)}
          style={{ left: origin[0] + column * wide * scale, top: origin[1] + row * high * scale, width: wide * scale, height: high * scale }}
          onFocus={() => setCurrent(place)}
          onClick={() => {
            turnCopy(place, square ? 1 : 2)
            setView({ notice: square ? t('Block turned a quarter.') : t('Block turned 180°.') })
          }}
        />
      ))}
    </div>
  )
}

function copyLabel(column: number, row: number, turn: number, press: 'own' | 'opposite'): string {
  const turned = [t('not turned'), t('quarter turn'), t('half turn'), t('three-quarter turn')][turn] ?? ''
  const how = press === 'opposite' ? `, ${t('pressed the other way')}` : ''
  return `${t('Block in column {column}, row {row}', { column: column + 1, row: row + 1 })}: ${turned}${how}`
}
