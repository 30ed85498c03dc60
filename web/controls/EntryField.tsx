/** A text field for one length, count or name. Text that is not valid shows a message and changes nothing; Enter commits, Escape restores. */
import { useEffect, useId, useState } from 'react'

interface Props {
  readonly label: string
  readonly value: string
  /** A message if the text is not valid, else null. Only valid text is committed. */
  readonly validate: (text: string) => string | null
  readonly onCommit: (text: string) => void
}

export function EntryField({ label, value, validate, onCommit }: Props) {
  const [text, setText] = useState(value)
  const id = useId()
  useEffect(() => setText(value), [value])
  const error = text === value ? null : validate(text)
  const commit = (): void => {
    if (text !== value && error === null) onCommit(text)
  }
  return (
    <label>
      {label}
      <input
        value={text}
        inputMode="text"
        aria-invalid={error !== null}
        aria-describedby={error === null ? undefined : id}
        onChange={(event) => setText(event.target.value)}
        onBlur={commit}
        onKeyDown={(event) => {
          if (event.key === 'Enter') commit()
          if (event.key === 'Escape') setText(value)
        }}
      />
      {error !== null && (
        <span className="trouble" id={id}>
          {error}
        </span>
      )}
    </label>
  )
}
