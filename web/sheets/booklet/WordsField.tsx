/** A text field of the booklet. What was typed is committed when the field loses the focus: one edit, one undo. */
import { useEffect, useId, useRef, useState } from 'react'
import { LONGEST_WORDS } from '../../../geometry/index.ts'
import { currentLanguage } from '../../words/words.ts'

interface Props {
  readonly label: string
  readonly value: string
  readonly placeholder?: string
  readonly multiline?: boolean
  /** The label is for screen readers only. */
  readonly hideLabel?: boolean
  readonly autoFocus?: boolean
  readonly onCommit: (words: string) => void
}

export function WordsField({ label, value, placeholder, multiline = false, hideLabel = false, autoFocus = false, onCommit }: Props) {
  const [text, setText] = useState(value)
  const field = useRef<HTMLTextAreaElement & HTMLInputElement>(null)
  const id = useId()
  useEffect(() => setText(value), [value])
  useEffect(() => {
    if (autoFocus) field.current?.focus()
  }, [autoFocus])
  const commit = (): void => {
    if (text !== value) onCommit(text)
  }
  const common = {
    id,
    ref: field,
    value: text,
    placeholder,
    maxLength: LONGEST_WORDS,
    onChange: ({ target }: { readonly target: { readonly value: string } }): void => setText(target.value),
    onBlur: commit,
  }
  return (
    <div className="words" lang={currentLanguage()}>
      <label htmlFor={id} className={hideLabel ? 'unseen' : undefined}>
        {label}
      </label>
      {multiline ? (
        <textarea {...common} rows={Math.min(14, Math.max(2, text.split('\n').length + Math.floor(text.length / 60)))} />
      ) : (
        <input {...common} />
      )}
    </div>
  )
}
