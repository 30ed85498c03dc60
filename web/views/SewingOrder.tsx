/** The block sewn step by step, as the booklet says it: its pieces as they come together, and under them a slider that walks through the steps. */
import { useEffect, useMemo, useRef, useState } from 'react'
import { type Findings, wordsOf } from '../../geometry/index.ts'
import { ActionButton } from '../controls/ActionButton.tsx'
import { setView, useStore, useFindings } from '../document/store.ts'
import { FittedDrawing } from '../drawing/FittedDrawing.tsx'
import { StepPicture } from '../drawing/StepPicture.tsx'
import { translateAny } from '../words/translateAny.ts'
import { bookletLanguage, t, tn } from '../words/words.ts'
import { assembly, wavesIn } from './assembly.ts'
import { type SewingInSteps, type StepOnScreen, useSewingSteps } from './useSewingSteps.ts'
import './views.css'

/** Milliseconds in which two sides come together, the most that a step of many takes, and how long it stays in sight before the next begins. */
const TOGETHER = 700
const LONGEST = 4200
const REST = 2400
/** With more patches than this, they cannot be drawn often enough to be seen moving. */
const MOST_MOVED = 1500

export function SewingOrder() {
  const { report } = useFindings()
  if (report === null || report.joins.length === 0)
    return <EmptyBoard words={t('There is nothing to sew yet: fill the gaps of the layout first, and move apart what overlaps.')} />
  return <SewingSteps />
}

const EmptyBoard = ({ words }: { readonly words: string }) => (
  <div className="board drawn">
    <p className="nothing">{words}</p>
  </div>
)

function SewingSteps() {
  const block = useStore(({ history }) => history.block)
  const { sewing, trouble } = useSewingSteps(block)
  if (trouble !== null) return <EmptyBoard words={trouble} />
  return sewing === null ? <EmptyBoard words={t('Writing the steps…')} /> : <StepByStep sewing={sewing} />
}

function StepByStep({ sewing }: { readonly sewing: SewingInSteps }) {
  const { report, block, steps, letters } = sewing
  const most = steps.length
  const step = Math.min(
    most,
    useStore(({ view }) => view.step),
  )
  const now = steps[step - 1] ?? null
  const places = useMemo(() => steps.map(({ places: joins }) => ({ joins })), [steps])
  const length = now === null ? 0 : Math.min(LONGEST, TOGETHER * wavesIn(report, { joins: now.places }))
  const part = useComingTogether(step, length, report.patches.length <= MOST_MOVED)
  const { drawing, reach } = useMemo(
    () => assembly(report, block, { steps: places, step, part }, letters),
    [report, block, places, step, part, letters],
  )
  const [playing, setPlaying] = usePlaying(step, most, length + REST)
  const title = now === null ? startSentence(report) : translateAny(now.heading)
  return (
    <>
      <FittedDrawing
        className="board drawn"
        block={block}
        drawing={drawing}
        reach={reach}
        margin={28}
        label={t('Sewing order, step {step} of {most}: {title}', { step, most, title })}
      />
      <section className="stepper" data-part="board" aria-label={t('Sewing order')}>
        <StepControls step={step} most={most} playing={playing} setPlaying={setPlaying} />
        <div className="step-text" data-testid="step" aria-live={playing ? 'off' : 'polite'}>
          {now === null ? <p>{title}</p> : <StepWords step={now} title={title} />}
        </div>
        {now !== null && <StepPictures step={now} sewing={sewing} />}
      </section>
    </>
  )
}

/** What to do in a step, as the booklet says it; the maker's own words where she wrote some. */
function StepWords({ step, title }: { readonly step: StepOnScreen; readonly title: string }) {
  return (
    <>
      <h3>{title}</h3>
      {/* The program writes its steps in English; the page around them is in the maker's language. */}
      <ol lang={bookletLanguage()}>
        {wordsOf(step).map((sentence, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: sentences have no name but their place
          <li key={index}>{sentence}</li>
        ))}
      </ol>
      {step.note !== undefined && <p className="note">{step.note}</p>}
      {step.cautions.map((caution) => (
        <p key={caution} className="caution" lang={bookletLanguage()}>
          {caution}
        </p>
      ))}
    </>
  )
}

function StepPictures({ step, sewing: { block, report } }: { readonly step: StepOnScreen; readonly sewing: SewingInSteps }) {
  if (step.drawings.length === 0) return null
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a row that scrolls sideways must be reached with the keyboard
    <section className="step-pictures" lang={bookletLanguage()} aria-label={t('Pictures of this step')} tabIndex={0}>
      {step.drawings.map((drawing, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: pictures have no name but their place
        <StepPicture key={index} drawing={drawing} fabrics={block.fabrics} unit={report.measure.unit} />
      ))}
    </section>
  )
}

/** While it plays, one step follows the other until all are done. `stay`: milliseconds that a step is in sight. */
function usePlaying(step: number, most: number, stay: number): [boolean, (playing: boolean) => void] {
  const [playing, setPlaying] = useState(false)
  useEffect(() => {
    if (!playing) return
    if (step === most) return setPlaying(false)
    const next = setTimeout(() => setView({ step: step + 1 }), step === 0 ? REST / 3 : stay)
    return () => clearTimeout(next)
  }, [playing, step, most, stay])
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
        aria-label={t('Step')}
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
  t('{patches}, {seams} to sew.', { patches: tn(patches.length, 'One patch', '{n} patches'), seams: tn(joins.length, 'one seam', '{n} seams') })

/** From 0 to 1 in so many milliseconds while a step's pieces come together; at once where motion is unwanted, or more than one step was taken. */
function useComingTogether(step: number, length: number, moving: boolean): number {
  const [at, setAt] = useState({ step, part: 1 })
  const moves = moving && length > 0 && step === at.step + 1 && !window.matchMedia('(prefers-reduced-motion: reduce)').matches
  const start = useRef(0)
  useEffect(() => {
    if (!moves) return setAt((before) => (before.step === step ? before : { step, part: 1 }))
    start.current = performance.now()
    setAt({ step, part: 0 })
  }, [step, moves])
  useEffect(() => {
    if (at.part === 1) return
    const frame = requestAnimationFrame((now) => setAt({ step: at.step, part: Math.min(1, Math.max(0, (now - start.current) / length)) }))
    return () => cancelAnimationFrame(frame)
  }, [at, length])
  return at.step === step ? at.part : moves ? 0 : 1
}
