/** One step of the booklet: its pictures and words, the maker's own words, note and photograph, and the buttons to change them. */
import { useId, useState } from 'react'
import {
  type Block,
  type Booklet,
  type BookletStep as Step,
  editStep,
  keepStepWords,
  programWords,
  restoreStep,
  setStepNote,
  wordsOf,
} from '../../../geometry/index.ts'
import { edit } from '../../document/store.ts'
import { StepPicture } from '../../drawing/StepPicture.tsx'
import { currentLanguage, t } from '../../words/words.ts'
import { StepPhotograph } from './StepPhotograph.tsx'
import { WordsField } from './WordsField.tsx'

interface Props {
  readonly step: Step
  readonly number: number
  readonly block: Block
  readonly unit: Booklet['unit']
}

export function StepItem({ step, number, block, unit }: Props) {
  const [editingWords, setEditingWords] = useState(false)
  const [editingNote, setEditingNote] = useState(false)
  const { key, edited, note, photograph } = step
  const heading = useId()
  return (
    <li className="step" aria-labelledby={heading}>
      <h4 id={heading}>
        <span className="number">{number}</span> {step.title}
      </h4>
      {step.drawings.length > 0 && (
        <div className="pictures">
          {step.drawings.map((drawing, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: pictures have no name but their place
            <StepPicture key={index} drawing={drawing} fabrics={block.fabrics} unit={unit} />
          ))}
        </div>
      )}
      <StepWords step={step} number={number} editing={editingWords} />
      {editingNote ? (
        <WordsField
          label={t('Note for step {number}', { number })}
          multiline
          autoFocus
          value={note ?? ''}
          onCommit={(words) => edit(setStepNote(key, words))}
        />
      ) : (
        note !== undefined && <p className="note">{note}</p>
      )}
      {photograph !== undefined && <img className="photograph" src={photograph} alt={t('Your photo of step {number}', { number })} />}
      <div className="buttons" lang={currentLanguage()}>
        <button
          type="button"
          aria-label={editingWords ? t('Done editing the text of step {number}', { number }) : t('Edit text of step {number}', { number })}
          onClick={() => setEditingWords(!editingWords)}
        >
          {editingWords ? t('Done') : t('Edit text')}
        </button>
        <button type="button" aria-label={noteLabel(editingNote, note, number)} onClick={() => setEditingNote(!editingNote)}>
          {editingNote ? t('Done') : note === undefined ? t('Add note') : t('Edit note')}
        </button>
        <StepPhotograph stepKey={key} number={number} exists={photograph !== undefined} />
        {/* Last, because leaving the words field makes it appear: no other button may move from under the pointer. */}
        {edited !== undefined && (
          <button
            type="button"
            aria-label={t('Restore original text of step {number}', { number })}
            onClick={() => {
              setEditingWords(false)
              edit(restoreStep(key))
            }}
          >
            {t('Restore original text')}
          </button>
        )}
      </div>
    </li>
  )
}

/** The words of a step, or the field to change them, and below them the step's cautions, which nobody can change. */
function StepWords({ step, number, editing }: { readonly step: Step; readonly number: number; readonly editing: boolean }) {
  const { key, edited } = step
  const program = programWords(step.sentences)
  return (
    <>
      {edited?.stale === true && <OutdatedWords stepKey={key} program={program} />}
      {editing ? (
        <WordsField
          label={t('Text of step {number}', { number })}
          hideLabel
          multiline
          autoFocus
          value={edited?.words ?? program}
          onCommit={(words) => edit(editStep(key, words, program))}
        />
      ) : (
        wordsOf(step).map((sentence, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: sentences have no name but their place
          <p key={index}>{sentence}</p>
        ))
      )}
      {step.cautions.map((caution) => (
        <p key={caution} className="caution">
          {caution}
        </p>
      ))}
    </>
  )
}

function noteLabel(editing: boolean, note: string | undefined, number: number): string {
  if (editing) return t('Done editing the note for step {number}', { number })
  return note === undefined ? t('Add note to step {number}', { number }) : t('Edit note for step {number}', { number })
}

/** The maker's words were written for an earlier state of the block. They stay, marked, until the maker decides. */
function OutdatedWords({ stepKey, program }: { readonly stepKey: string; readonly program: string }) {
  return (
    <div className="stale">
      <p lang={currentLanguage()}>{t('The block has changed since you wrote this.')}</p>
      <details>
        <summary lang={currentLanguage()}>{t('New original text')}</summary>
        {program.split('\n').map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </details>
      <button type="button" lang={currentLanguage()} onClick={() => edit(keepStepWords(stepKey, program))}>
        {t('Keep my text')}
      </button>
    </div>
  )
}
