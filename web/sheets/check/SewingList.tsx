/** The steps in sewing order, as the booklet has them; under each its seams: how each is pressed, why, and what needs care. */
import { useMemo } from 'react'
import type { Block, Findings } from '../../../geometry/index.ts'
import { PressButton } from '../../board/pressing/PressButton.tsx'
import { PagedList } from '../../controls/PagedList.tsx'
import { setView, useStore } from '../../document/store.ts'
import { pointOf } from '../../document/shapes.ts'
import { type StepOnScreen, useSewingSteps } from '../../views/useSewingSteps.ts'
import { joinWords } from '../../words/joinWords.ts'
import { translateAny } from '../../words/translateAny.ts'
import { t, tn } from '../../words/words.ts'

/** While the board shows the block being sewn step by step, a press goes to that step. */
export function SewingList({ report, step }: { readonly report: Findings; readonly step: number | null }) {
  const block = useStore(({ history }) => history.block)
  const { sewing, trouble } = useSewingSteps(block)
  if (trouble !== null) return <p className="trouble">{trouble}</p>
  if (sewing === null) return <p className="hint">{t('Writing the steps…')}</p>
  return (
    <ol className="sewing-steps">
      <PagedList
        items={sewing.steps}
        upTo={(step ?? 0) - 1}
        render={(one, index) => (
          <StepEntry key={one.key} step={one} number={index + 1} report={report} block={block} current={step === null ? null : step === index + 1} />
        )}
      />
    </ol>
  )
}

interface StepEntryProps {
  readonly step: StepOnScreen
  readonly number: number
  readonly report: Findings
  readonly block: Block
  /** Null where the board does not show the steps. */
  readonly current: boolean | null
}

function StepEntry({ step, number, report, block, current }: StepEntryProps) {
  const lines = useMemo(
    () =>
      step.places.flatMap((place) => {
        const join = report.joins[place]
        return join === undefined ? [] : [[join.from, ...join.via, join.to].map(pointOf)]
      }),
    [step, report],
  )
  return (
    <li className={current === true ? 'pointed' : ''}>
      <button
        type="button"
        className="plain"
        onClick={() => setView({ pointedLines: lines, ...(current === null ? {} : { step: number }) })}
        onPointerEnter={() => setView({ pointedLines: lines })}
        onPointerLeave={() => setView({ pointedLines: null })}
        onFocus={() => setView({ pointedLines: lines })}
        onBlur={() => setView({ pointedLines: null })}
      >
        {translateAny(step.heading)}
      </button>
      {step.places.length > 0 && (
        <details>
          <summary>{tn(step.places.length, 'One seam', '{n} seams in this step')}</summary>
          <SeamList step={step} report={report} block={block} />
        </details>
      )}
    </li>
  )
}

/** As the board has them now: an arrow that is turned here answers at once. */
function SeamList({ step, report, block }: { readonly step: StepOnScreen; readonly report: Findings; readonly block: Block }) {
  const words = useMemo(() => joinWords(report, block), [report, block])
  return (
    <ul>
      <PagedList
        items={step.places}
        upTo={-1}
        render={(place) => {
          const join = report.joins[place]
          if (join === undefined) return null
          const { sew, then, size } = words(place + 1)
          const point = (): void => setView({ finding: `join ${place}` })
          return (
            <li key={place}>
              <button type="button" className="plain" onClick={point} onPointerEnter={point} onFocus={point}>
                {sew} {then} {size}
              </button>
              <PressButton report={report} join={join} name={t('Seam {number}', { number: place + 1 })} onPoint={point} />
            </li>
          )
        }}
      />
    </ul>
  )
}
