/** A button that opens the browser's file picker. The same file can be picked twice in a row. */
import { type ReactNode, useRef } from 'react'

interface Props {
  readonly accept: string
  readonly multiple?: boolean
  /** The accessible name of the hidden file input. */
  readonly inputLabel: string
  /** The accessible name of the button, if it is not its text. */
  readonly buttonLabel?: string
  /** Called only when at least one file was picked. */
  readonly onPick: (files: readonly [File, ...File[]]) => void
  readonly children: ReactNode
}

export function FileButton({ accept, multiple = false, inputLabel, buttonLabel, onPick, children }: Props) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button type="button" aria-label={buttonLabel} onClick={() => input.current?.click()}>
        {children}
      </button>
      <input
        ref={input}
        type="file"
        multiple={multiple}
        accept={accept}
        hidden
        aria-label={inputLabel}
        onChange={({ target }) => {
          const [first, ...others] = target.files ?? []
          target.value = ''
          if (first !== undefined) onPick([first, ...others])
        }}
      />
    </>
  )
}
