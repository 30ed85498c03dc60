/** The block among copies of itself, large: seams that clash are marked along the edges between copies, and a press on a copy turns it. */
import { type KeyboardEvent, useMemo, useState } from 'react'
import type { Block, SettingReport } from '../../geometry/index.ts'
import { type Setting, turnCopy, useSetting } from './settingRequest.ts'
import { setView, useStore, useFindings } from '../document/store.ts'
import { t, tell, tn } from '../words/words.ts'
import { bordersAround, patchShapes, type Point } from '../document/shapes.ts'
import { FittedDrawing } from '../drawing/FittedDrawing.tsx'
import { settingView } from './repeatedBlocks.ts'
import './views.css'

export function Copies() {
  const setting = useSetting(true)
  const block = useStore(({ history }) => history.block)
  const marks = useStore(({ view }) => view.marks)
  if (setting.trouble !== null || setting.said === null || setting.said.problems.length > 0)
    return (
      <div className="board drawn">
        <p className="nothing">{waiting(setting)}</p>
      </div>
    )
  return <SettingPicture className="board drawn copies" block={block} said={setting.said} marks={marks} margin={24} turning />
}

const waiting = ({ trouble, said }: Setting): string => {
  if (trouble !== null) return t('The copies cannot be set like that: {reason}.', { reason: tell(trouble) })
  return said === null ? t('Being worked out…') : t('Mend the layout first: it cannot be sewn as it stands.')
}

interface Props {
  readonly className: string
  readonly block: Block
  readonly said: SettingReport
  readonly marks: boolean
  readonly margin: number
  /** Whether a press on a copy turns it. */
  readonly turning?: boolean
}

export function SettingPicture({ className, block, said, marks, margin, turning = false }: Props) {
  const { report } = useFindings()
  const pieces = useMemo(() => (report === null ? [] : patchShapes(report.patches)), [report])
  const view = useMemo(
    () =>
      settingView(block, pieces, {
        columns: said.columns,
        rows: said.rows,
        copies: said.places,
        joins: said.joins,
        meetings: marks ? said.meetings : said.meetings.filter(({ verdict }) => verdict === 'clashes'),
      }),
    [block, pieces, said, marks],
  )
  const label = t('{across} by {down} copies of {name}: {clashes}', {
    across: said.columns,
    down: said.rows,
    name: said.block,
    clashes: clashWords(said.clashes.between),
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
        ? { over: (scale: number, origin: Point) => <Handholds block={block} said={said} copy={view.copy} scale={scale} origin={origin} /> }
        : {})}
    />
  )
}

export const clashWords = (count: number): string =>
  count === 0 ? t('nothing clashes between blocks') : tn(count, 'one clash between blocks', '{n} clashes between blocks')

interface Holds {
  readonly block: Block
  readonly said: SettingReport
  readonly copy: Point
  readonly scale: number
  readonly origin: Point
}

/** One button over each copy; arrows walk from copy to copy, so that all of them are one stop of the Tab key. */
function Handholds({ block, said, copy: [wide, high], scale, origin }: Holds) {
  const [here, setHere] = useState(0)
  const out = bordersAround(block)
  const square = block.grid.columns + 2 * out === block.grid.rows + 2 * out
  const at = Math.min(here, said.places.length - 1)
  const walk = (event: KeyboardEvent<HTMLElement>): void => {
    const by = { ArrowLeft: -1, ArrowRight: 1, ArrowUp: -said.columns, ArrowDown: said.columns }[event.key]
    if (by === undefined) return
    event.preventDefault()
    const next = at + by
    const sameRow = Math.floor(next / said.columns) === Math.floor(at / said.columns)
    if (next < 0 || next >= said.places.length || (Math.abs(by) === 1 && !sameRow)) return
    setHere(next)
    ;(event.currentTarget.children[next] as HTMLElement | undefined)?.focus()
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid over the picture in every browser
    <div className="handholds" data-part="board" role="group" aria-label={t('Copies: press one to turn it, arrows walk')} onKeyDown={walk}>
      {said.places.map(({ at: [column, row], turn, press }, place) => (
        <button
          key={`${column} ${row}`}
          type="button"
          tabIndex={place === at ? 0 : -1}
          aria-label={copyWords(column, row, turn, press)}
          style={{ left: origin[0] + column * wide * scale, top: origin[1] + row * high * scale, width: wide * scale, height: high * scale }}
          onFocus={() => setHere(place)}
          onClick={() => {
            turnCopy(place, square ? 1 : 2)
            setView({ notice: square ? t('That copy is turned a quarter.') : t('That copy is turned half round.') })
          }}
        />
      ))}
    </div>
  )
}

function copyWords(column: number, row: number, turn: number, press: 'own' | 'opposite'): string {
  const turned = [t('as laid'), t('turned a quarter'), t('turned half round'), t('turned three quarters')][turn] ?? ''
  const how = press === 'opposite' ? `, ${t('pressed the opposite way')}` : ''
  return `${t('Copy in column {column}, row {row}', { column: column + 1, row: row + 1 })}: ${turned}${how}`
}
