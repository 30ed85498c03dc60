/** Pressing at a glance: each row drawn apart with the arrows of its seams, what is pressed which way, and why rows alternate. */
import { useMemo } from 'react'
import { type Findings, type LineSeam, message, type PressChoice, type PressLine, pressLines } from '../../../geometry/index.ts'
import { pressLine } from '../../board/actions/press.ts'
import { type Choice, PressChoices } from '../../board/pressing/PressChoices.tsx'
import { PagedList } from '../../controls/PagedList.tsx'
import { setView, useStore } from '../../document/store.ts'
import { translateAny } from '../../words/translateAny.ts'
import { label, t } from '../../words/words.ts'
import { RowPicture } from './RowPicture.tsx'

export function RowPressing({ report }: { readonly report: Findings }) {
  const block = useStore(({ history }) => history.block)
  const mode = useStore(({ view }) => view.mode)
  const lines = useMemo(() => pressLines(report), [report])
  return (
    <div className="row-pressing">
      {lines !== null && (
        <>
          <ul className={lines.line === 'row' ? 'press-lines' : 'press-lines columns'}>
            <PagedList
              items={lines.lines}
              upTo={-1}
              render={(line) => (
                <li key={line.number}>
                  <span>{translateAny(line.message)}</span>
                  <RowPicture block={block} report={report} line={line} />
                  <LineChoices line={line.line} number={line.number} seams={line.seams} name={translateAny(line.message)} />
                </li>
              )}
            />
            {lines.between.length > 0 && (
              <li>
                <span>{translateAny(lines.betweenMessage)}</span>
                <LineChoices line={lines.line} number={null} seams={lines.between} name={translateAny(lines.betweenMessage)} />
              </li>
            )}
          </ul>
          {lines.why !== null && <p className="hint">{translateAny(lines.why)}</p>}
        </>
      )}
      {mode !== 'pressing' && (
        <button type="button" className="plain" onClick={() => setView({ mode: 'pressing' })}>
          {t('Press seams on the board')}
        </button>
      )}
    </div>
  )
}

interface LineProps {
  readonly line: PressLine['line']
  /** null: the seams between the rows or columns. */
  readonly number: number | null
  readonly seams: readonly LineSeam[]
  readonly name: string
}

/** All seams of a row one way, in one edit. */
function LineChoices({ line, number, seams, name }: LineProps) {
  if (seams.length === 0) return null
  const upright = (line === 'row') === (number === null)
  const ways = upright ? (['up', 'down', 'open', 'proposed'] as const) : (['left', 'right', 'open', 'proposed'] as const)
  const choices = ways.map((way): Choice => {
    const asked = seams.every(({ join }) => join.press.rule === 'asked')
    const words = t(WAYS[way])
    return {
      key: way === 'open' || way === 'proposed' ? way : way === 'left' || way === 'up' ? 0 : 1,
      words,
      angle: way === 'proposed' ? null : ANGLES[way === 'open' && upright ? 'down' : way],
      chosen: way === 'proposed' ? seams.every(({ join }) => join.press.rule !== 'asked') : asked && seams.every((seam) => seam.way === way),
      choose: () => {
        const edit = number === null ? undefined : message('press-row', { line, number, way })
        pressLine(
          new Map(seams.map((seam) => [seam.join.id, choiceFor(seam, way)])),
          edit,
          t('{row}: pressed {way}.', { row: rowName(line, number), way: words }),
        )
      },
    }
  })
  return <PressChoices name={t('Press all of it: {row}', { row: name })} choices={choices} brief />
}

type LineWay = 'left' | 'right' | 'up' | 'down' | 'open' | 'proposed'

const ANGLES = { left: 180, right: 0, up: -90, down: 90, open: 0 } as const

/** What is asked of a seam so that it lies that way. */
function choiceFor({ first }: LineSeam, way: LineWay): PressChoice {
  if (way === 'open' || way === 'proposed') return way
  return way === 'left' || way === 'up' ? first : first === 0 ? 1 : 0
}

const WAYS: Readonly<Record<LineWay, string>> = {
  left: label('to the left'),
  right: label('to the right'),
  up: label('up'),
  down: label('down'),
  open: label('open'),
  proposed: label('as proposed'),
}

function rowName(line: PressLine['line'], number: number | null): string {
  if (number !== null) return line === 'row' ? t('Row {number}', { number }) : t('Column {number}', { number })
  return line === 'row' ? t('Between the rows') : t('Between the columns')
}
