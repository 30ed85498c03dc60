/** The booklet on the screen: the maker's title and name, every step with its pictures, her own words, notes and photographs. */
import { type ReactNode, useEffect, useId, useMemo, useRef, useState } from 'react'
import {
  type Block,
  type Booklet,
  type BookletStep,
  bookletOf,
  dropStepWords,
  editStep,
  keepStepWords,
  programWords,
  type RehearsalRow,
  type Report,
  restoreStep,
  sayLength,
  setBookletBy,
  setBookletTitle,
  setIntroduction,
  setStepNote,
  setStepPhotograph,
  wordsOf,
  LONGEST_WORDS,
} from '../../../geometry/index.ts'
import { asker } from '../../workers/deepClient.ts'
import { photoOfStep } from '../../keeping/readPhoto.ts'
import { edit, setView, getState, useStore } from '../../document/store.ts'
import { spoken, t, tell, tn } from '../../words/words.ts'
import { StepPicture } from '../../drawing/StepPicture.tsx'
import './bookletPanel.css'

export function BookletPanel() {
  const block = useStore(({ history }) => history.block)
  const said = useReport(block)
  const report = said.report
  const booklet = useMemo(
    () => (report === null ? null : bookletOf(report.report, { ...report.block, booklet: block.booklet })),
    [report, block.booklet],
  )
  return (
    <section aria-labelledby="booklet-title" className="booklet">
      <h2 id="booklet-title">{t('Booklet')}</h2>
      <Front block={block} />
      {said.trouble !== null && <p className="trouble">{tell(said.trouble)}</p>}
      {booklet === null && said.trouble === null && <p className="hint">{t('The steps are being written…')}</p>}
      {booklet !== null && (
        // The program's words are English; what the page says round them is in the maker's language.
        <div className={said.report?.block === undefined || same(said.report.block, block) ? '' : 'behind'} lang="en">
          <Steps booklet={booklet} block={block} />
        </div>
      )}
    </section>
  )
}

interface Worked {
  readonly block: Block
  readonly report: Report
}

/** The report of the block but for its words, worked out beside the page; the last one stays until the next is there. */
function useReport(block: Block): { readonly report: Worked | null; readonly trouble: string | null } {
  const [worked, setWorked] = useState<Worked | null>(null)
  const [trouble, setTrouble] = useState<string | null>(null)
  const asking = useRef<ReturnType<typeof asker> | null>(null)
  const about = useRef(block)
  if (!same(about.current, block)) about.current = block
  const cloth = about.current
  useEffect(() => {
    asking.current ??= asker()
    asking.current({ sort: 'report', block: cloth }, (answer) => {
      if (answer.sort === 'trouble') setTrouble(answer.message)
      if (answer.sort !== 'report') return
      setTrouble(null)
      setWorked({ block: cloth, report: answer.value })
    })
  }, [cloth])
  return { report: worked, trouble }
}

/** Whether two states of the block differ in their words alone. */
function same(one: Block, other: Block): boolean {
  const names = new Set([...Object.keys(one), ...Object.keys(other)]) as Set<keyof Block>
  names.delete('booklet')
  return [...names].every((name) => one[name] === other[name])
}

function Front({ block }: { readonly block: Block }) {
  const { title = '', by = '', introduction = '' } = block.booklet ?? {}
  return (
    <div className="front">
      <Words label={t('Title')} value={title} hint={block.name} take={(words) => edit(setBookletTitle(words))} />
      <Words label={t('By')} value={by} hint={t('your name')} take={(words) => edit(setBookletBy(words))} />
      <Words label={t('Introduction')} value={introduction} long take={(words) => edit(setIntroduction(words))} />
    </div>
  )
}

interface WordsProps {
  readonly label: string
  readonly value: string
  readonly hint?: string
  readonly long?: boolean
  readonly unseen?: boolean
  readonly focus?: boolean
  readonly take: (words: string) => void
}

/** A field whose words are taken once the hand leaves it: one edit, one undo. */
function Words({ label, value, hint, long = false, unseen = false, focus = false, take }: WordsProps) {
  const [text, setText] = useState(value)
  const field = useRef<HTMLTextAreaElement & HTMLInputElement>(null)
  const id = useId()
  useEffect(() => setText(value), [value])
  useEffect(() => {
    if (focus) field.current?.focus()
  }, [focus])
  const settle = (): void => {
    if (text !== value) take(text)
  }
  const common = {
    id,
    ref: field,
    value: text,
    placeholder: hint,
    maxLength: LONGEST_WORDS,
    onChange: ({ target }: { readonly target: { readonly value: string } }): void => setText(target.value),
    onBlur: settle,
  }
  return (
    <div className="words" lang={spoken()}>
      <label htmlFor={id} className={unseen ? 'unseen' : undefined}>
        {label}
      </label>
      {long ? (
        <textarea {...common} rows={Math.min(14, Math.max(2, text.split('\n').length + Math.floor(text.length / 60)))} />
      ) : (
        <input {...common} />
      )}
    </div>
  )
}

function Steps({ booklet, block }: { readonly booklet: Booklet; readonly block: Block }) {
  let number = 0
  return (
    <>
      {booklet.problems.length > 0 && (
        <ul className="problems">
          {booklet.problems.map((problem) => (
            <li key={problem}>{tell(problem)}</li>
          ))}
        </ul>
      )}
      {booklet.parts.map(({ key, title, steps }) => (
        <section key={key} className="part" aria-label={tell(title)}>
          <h3>{tell(title)}</h3>
          <ol start={number + 1}>
            {steps.map((step) => {
              number += 1
              return <Step key={step.key} step={step} number={number} block={block} unit={booklet.unit} />
            })}
          </ol>
        </section>
      ))}
      <Orphans booklet={booklet} />
      <Rehearsal booklet={booklet} />
      <Templates booklet={booklet} block={block} />
      <Cautions booklet={booklet} />
    </>
  )
}

interface StepProps {
  readonly step: BookletStep
  readonly number: number
  readonly block: Block
  readonly unit: Booklet['unit']
}

function Step({ step, number, block, unit }: StepProps) {
  const [writing, setWriting] = useState(false)
  const [noting, setNoting] = useState(false)
  const { key, edited, note, photograph } = step
  const program = programWords(step.sentences)
  const heading = useId()
  return (
    <li className="step" aria-labelledby={heading}>
      <h4 id={heading}>
        <span className="number">{number}</span> {tell(step.title)}
      </h4>
      {step.drawings.length > 0 && (
        <div className="pictures">
          {step.drawings.map((drawing, place) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: pictures have no name but their place
            <StepPicture key={place} drawing={drawing} fabrics={block.fabrics} unit={unit} />
          ))}
        </div>
      )}
      {edited?.stale === true && <Stale stepKey={key} program={program} />}
      {writing ? (
        <Words
          label={t('Words of step {number}', { number })}
          unseen
          long
          focus
          value={edited?.words ?? program}
          take={(words) => edit(editStep(key, words, program))}
        />
      ) : (
        wordsOf(step).map((sentence, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: sentences have no name but their place
          <p key={place}>{edited === undefined ? tell(sentence) : sentence}</p>
        ))
      )}
      {step.cautions.map((caution) => (
        <p key={caution} className="caution">
          {tell(caution)}
        </p>
      ))}
      {noting ? (
        <Words label={t('Note on step {number}', { number })} long focus value={note ?? ''} take={(words) => edit(setStepNote(key, words))} />
      ) : (
        note !== undefined && <p className="note">{note}</p>
      )}
      {photograph !== undefined && <img className="photograph" src={photograph} alt={t('Your photograph of step {number}', { number })} />}
      <div className="buttons" lang={spoken()}>
        <button
          type="button"
          aria-label={writing ? t('Done with the words of step {number}', { number }) : t('Change the words of step {number}', { number })}
          onClick={() => setWriting(!writing)}
        >
          {writing ? t('Done') : t('Change the words')}
        </button>
        <button type="button" aria-label={noteLabel(noting, note, number)} onClick={() => setNoting(!noting)}>
          {noting ? t('Done') : note === undefined ? t('Add a note') : t('Change the note')}
        </button>
        <Photograph stepKey={key} number={number} there={photograph !== undefined} />
        {/* Last, so that no button moves from under the hand that has just left the words. */}
        {edited !== undefined && (
          <button
            type="button"
            aria-label={t('Put step {number} back to the program’s words', { number })}
            onClick={() => {
              setWriting(false)
              edit(restoreStep(key))
            }}
          >
            {t('Put back the program’s words')}
          </button>
        )}
      </div>
    </li>
  )
}

function noteLabel(noting: boolean, note: string | undefined, number: number): string {
  if (noting) return t('Done with the note on step {number}', { number })
  return note === undefined ? t('Add a note to step {number}', { number }) : t('Change the note on step {number}', { number })
}

/** Her words stay, marked, until she says what is to become of them. */
function Stale({ stepKey, program }: { readonly stepKey: string; readonly program: string }) {
  return (
    <div className="stale">
      <p lang={spoken()}>{t('The block has moved on since you wrote these words.')}</p>
      <details>
        <summary lang={spoken()}>{t('What the program says now')}</summary>
        {program.split('\n').map((sentence) => (
          <p key={sentence}>{tell(sentence)}</p>
        ))}
      </details>
      <button type="button" lang={spoken()} onClick={() => edit(keepStepWords(stepKey, program))}>
        {t('Mine still hold')}
      </button>
    </div>
  )
}

function Photograph({ stepKey, number, there }: { readonly stepKey: string; readonly number: number; readonly there: boolean }) {
  const field = useRef<HTMLInputElement>(null)
  const take = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return
    const { id } = getState().currentBlock
    const seen = await photoOfStep(file)
    if (!seen.ok) setView({ notice: seen.message })
    // Another block may have been opened meanwhile: the photograph is not its.
    else if (getState().currentBlock.id === id) edit(setStepPhotograph(stepKey, seen.value))
  }
  return (
    <>
      <input
        ref={field}
        type="file"
        accept="image/*"
        hidden
        aria-label={t('Photograph for step {number}', { number })}
        onChange={(event) => {
          void take(event.target.files?.[0])
          event.target.value = ''
        }}
      />
      <button
        type="button"
        aria-label={there ? t('Change the photograph of step {number}', { number }) : t('Add a photograph to step {number}', { number })}
        onClick={() => field.current?.click()}
      >
        {there ? t('Change the photograph') : t('Add a photograph')}
      </button>
      {there && (
        <button
          type="button"
          aria-label={t('Take away the photograph of step {number}', { number })}
          onClick={() => edit(setStepPhotograph(stepKey, null))}
        >
          {t('Take it away')}
        </button>
      )}
    </>
  )
}

/** Nothing that was written is thrown away unasked. */
function Orphans({ booklet: { orphans } }: { readonly booklet: Booklet }) {
  if (orphans.length === 0) return null
  return (
    <section className="part orphans" lang={spoken()} aria-label={t('Words whose step is gone')}>
      <h3>{t('Words whose step is gone')}</h3>
      <p className="hint">{t('The block no longer has the steps that these belong to. They stay in its file, and come back with the step.')}</p>
      <ul>
        {orphans.map(({ key, words, note, photograph }) => (
          <li key={key}>
            {words !== undefined && <p>{words}</p>}
            {note !== undefined && <p className="note">{note}</p>}
            {photograph !== undefined && <img className="photograph" src={photograph} alt={t('Your photograph of a step that is gone')} />}
            <button type="button" onClick={() => edit(dropStepWords(key))}>
              {t('Throw away')}
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}

function Folded({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <details className="part">
      <summary lang={spoken()}>{title}</summary>
      {children}
    </details>
  )
}

function Rehearsal({ booklet: { rehearsal, seamAdvice, unit } }: { readonly booklet: Booklet }) {
  const size = ([wide, high]: RehearsalRow['planned']): string => `${fine(wide, unit)} × ${fine(high, unit)}`
  return (
    <Folded title={t('Which seam where, and a rehearsal')}>
      {[...seamAdvice, ...rehearsal.sentences].map((sentence) => (
        <p key={sentence}>{tell(sentence)}</p>
      ))}
      {rehearsal.rows.length > 0 && (
        <table className="rehearsal">
          <caption lang={spoken()}>
            {unit === 'in'
              ? t('If every allowance is off by 1/32 in; all sizes in inches')
              : t('If every allowance is off by 0.1 cm; all sizes in centimetres')}
          </caption>
          <thead lang={spoken()}>
            <tr>
              <th scope="col">{t('Piece')}</th>
              <th scope="col">{t('Seams')}</th>
              <th scope="col">{t('Planned')}</th>
              <th scope="col">{t('Too wide')}</th>
              <th scope="col">{t('Too narrow')}</th>
            </tr>
          </thead>
          <tbody>
            {rehearsal.rows.map(({ what, seams, planned, wide, narrow }) => (
              <tr key={what}>
                <th scope="row">{tell(what)}</th>
                <td>{t('{across} across, {down} down', { across: seams[0], down: seams[1] })}</td>
                <td>{size(planned)}</td>
                <td>{size(wide)}</td>
                <td>{size(narrow)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </Folded>
  )
}

/** A rehearsal is about hairs: thirty-seconds of an inch. */
function fine(length: number, unit: 'in' | 'cm'): string {
  const parts = Math.round(length * 32)
  if (unit === 'cm' || parts % 2 === 0) return sayLength(unit === 'cm' ? length : parts / 32, unit)
  const whole = Math.floor(parts / 32)
  return `${whole > 0 ? `${whole} ` : ''}${parts % 32}/32`
}

function Templates({ booklet: { templates, unit }, block }: { readonly booklet: Booklet; readonly block: Block }) {
  if (templates.length === 0) return null
  return (
    <Folded title={tn(templates.length, 'One template', '{n} templates')}>
      {templates.map(({ key, name, sentences, drawing }) => (
        <div key={key} className="template">
          <h4>{tell(name)}</h4>
          <StepPicture drawing={drawing} fabrics={block.fabrics} unit={unit} />
          {sentences.map((sentence) => (
            <p key={sentence}>{tell(sentence)}</p>
          ))}
        </div>
      ))}
    </Folded>
  )
}

function Cautions({ booklet: { cautions } }: { readonly booklet: Booklet }) {
  return (
    <Folded title={t('Take care')}>
      {cautions.map(({ about, title, sentences }) => (
        <div key={about}>
          <h4>{tell(title)}</h4>
          {sentences.map((sentence) => (
            <p key={sentence}>{tell(sentence)}</p>
          ))}
        </div>
      ))}
    </Folded>
  )
}
