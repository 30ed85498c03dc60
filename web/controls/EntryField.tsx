/** A field for one length or count: what is not one is said in a sentence, and changes nothing. */
import { useEffect, useId, useState } from 'react'

interface Props {
  readonly label: string
  readonly value: string
  /** A sentence where the text will not do, else null; only then is it taken. */
  readonly wrong: (text: string) => string | null
  readonly take: (text: string) => void
}

export function EntryField({ label, value, wrong, take }: Props) {
  const [text, setText] = useState(value)
  const id = useId()
  useEffect(() => setText(value), [value])
  const trouble = text === value ? null : wrong(text)
  const settle = (): void => {
    if (text !== value && trouble === null) take(text)
  }
  return (
    <label>
      {label}
      <input
        value={text}
        inputMode="text"
        aria-invalid={trouble !== null}
        aria-describedby={trouble === null ? undefined : id}
        onChange={(event) => setText(event.target.value)}
        onBlur={settle}
        onKeyDown={(event) => {
          if (event.key === 'Enter') settle()
          if (event.key === 'Escape') setText(value)
        }}
      />
      {trouble !== null && (
        <span className="trouble" id={id}>
          {trouble}
        </span>
      )}
    </label>
  )
}
