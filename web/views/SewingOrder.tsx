/** The block sewn join by join: its pieces as they come together, and under them a slider that walks through the joins. */
import { useEffect, useMemo, useRef, useState } from 'react'
import type { Block, Findings } from '../../geometry/index.ts'
import { ActionButton } from '../controls/ActionButton.tsx'
import { joinWords } from '../words/joinWords.ts'
import { setView, useStore, useFindings } from '../document/store.ts'
import { t, tn } from '../words/words.ts'
import { assembly } from './assembly.ts'
import { FittedDrawing } from '../drawing/FittedDrawing.tsx'
import './views.css'

/** Milliseconds in which two sides come together, and in which a join stays in sight before the next begins. */
const TOGETHER = 700
const REST = 1500
/** With more patches than this, they cannot be drawn often enough to be seen moving. */
const MOST_MOVED = 1500

export function SewingOrder() {
  const { report } = useFindings()
  const block = useStore(({ history }) => history.block)
  if (report === null || report.joins.length === 0)
    return (
      <div className="board drawn">
        <p className="nothing">{t('There is nothing to sew yet: fill the gaps of the layout first, and move apart what overlaps.')}</p>
      </div>
    )
  return <Steps report={report} block={block} />
}

function Steps({ report, block }: { readonly report: Findings; readonly block: Block }) {
  const most = report.joins.length
  const step = Math.min(
    most,
    useStore(({ view }) => view.step),
  )
  const part = useComingTogether(step, report.patches.length <= MOST_MOVED)
  const words = useMemo(() => joinWords(report), [report])
  const { drawing, reach } = useMemo(() => assembly(report, block, step, part), [report, block, step, part])
  const join = step === 0 ? null : words(step)
  const sentence = join === null ? startSentence(report) : [join.sew, join.then, join.size].filter((one) => one !== '').join(' ')
  const [playing, setPlaying] = usePlaying(step, most)
  return (
    <>
      <FittedDrawing
        className="board drawn"
        block={block}
        drawing={drawing}
        reach={reach}
        margin={28}
        label={t('The block in sewing order, {step} of {most} joins made. {sentence}', { step, most, sentence })}
      />
      <section className="stepper" data-part="board" aria-label={t('Sewing order')}>
        <StepControls step={step} most={most} playing={playing} setPlaying={setPlaying} />
        <p className="step-text" data-testid="join" aria-live={playing ? 'off' : 'polite'}>
          {join === null ? (
            sentence
          ) : (
            <>
              <strong>{join.sew}</strong> {join.then} {join.size !== '' && <b className="now">{join.size}</b>}
            </>
          )}
        </p>
      </section>
    </>
  )
}

/** While it plays, one step follows the other until all joins are made. */
function usePlaying(step: number, most: number): [boolean, (playing: boolean) => void] {
  const [playing, setPlaying] = useState(false)
  useEffect(() => {
    if (!playing) return
    if (step === most) return setPlaying(false)
    const next = setTimeout(() => setView({ step: step + 1 }), step === 0 ? REST / 3 : TOGETHER + REST)
    return () => clearTimeout(next)
  }, [playing, step, most])
  return [playing, setPlaying]
}

interface StepControlsProps {
  readonly step: number
  readonly most: number
  readonly playing: boolean
  readonly setPlaying: (playing: boolean) => void
}

function StepControls({ step, most, playing, setPlaying }: StepControlsProps) {
  const go = (to: number): void => setView({ step: Math.max(0, Math.min(most, to)) })
  return (
    <div className="stepping">
      <ActionButton disabled={step === 0} onClick={() => go(step - 1)}>
        {t('Back')}
      </ActionButton>
      <button
        type="button"
        aria-pressed={playing}
        onClick={() => {
          if (step === most) go(0)
          setPlaying(!playing)
        }}
      >
        {playing ? t('Pause') : t('Play')}
      </button>
      <ActionButton disabled={step === most} onClick={() => go(step + 1)}>
        {t('Next')}
      </ActionButton>
      <input
        type="range"
        min={0}
        max={most}
        step={1}
        value={step}
        aria-label={t('Join')}
        aria-valuetext={t('{step} of {most}', { step, most })}
        onChange={(event) => {
          setPlaying(false)
          go(Number(event.target.value))
        }}
      />
      {/* The slider says its place, and the sentence below is read out: once is enough. */}
      <output aria-live="off">{t('{step} of {most}', { step, most })}</output>
    </div>
  )
}

const startSentence = ({ patches, joins }: Findings): string =>
  t('{patches} lie on the table, {joins} sew them into the block.', {
    patches: tn(patches.length, 'One patch', '{n} patches'),
    joins: tn(joins.length, 'one join', '{n} joins'),
  })

/** From 0 to 1 while the sides of the newest join come together; at once where motion is unwanted, or more than one step was taken. */
function useComingTogether(step: number, moving: boolean): number {
  const [at, setAt] = useState({ step, part: 1 })
  const moves = moving && step === at.step + 1 && !window.matchMedia('(prefers-reduced-motion: reduce)').matches
  const start = useRef(0)
  useEffect(() => {
    if (!moves) return setAt((before) => (before.step === step ? before : { step, part: 1 }))
    start.current = performance.now()
    setAt({ step, part: 0 })
  }, [step, moves])
  useEffect(() => {
    if (at.part === 1) return
    const frame = requestAnimationFrame((now) => {
      const part = Math.min(1, Math.max(0, (now - start.current) / TOGETHER))
      setAt({ step: at.step, part })
    })
    return () => cancelAnimationFrame(frame)
  }, [at])
  if (at.step !== step) return moves ? 0 : 1
  // Apart for a moment, then together, slower at the end.
  return 1 - (1 - Math.max(0, at.part - 0.25) / 0.75) ** 3
}
