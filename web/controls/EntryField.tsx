/** A text field for one length, count or name. Text that is not valid shows a message and changes nothing; Enter commits, Escape restores. */
import { useId, useLayoutEffect, useState } from 'react'

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
  useLayoutEffect(() => setText(value), [value])
  const error = text === value ? null : validate(text)
  const commit = (): void => {
    if (text === value || error !== null) return
    onCommit(text)
    // Another way to write the same length changes nothing: the field shows it as the block does.
    setText(value)
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
