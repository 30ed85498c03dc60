/** A panel that opens over the page from a button. Escape closes it, and so does moving the focus elsewhere. */
import { type KeyboardEvent, type ReactNode, useRef, useState } from 'react'

interface Props {
  readonly name: string
  readonly className?: string
  readonly children: ReactNode
}

export function Popover({ name, className = '', children }: Props) {
  const details = useRef<HTMLDetailsElement>(null)
  const [open, setOpen] = useState(false)
  const close = (): void => {
    if (details.current !== null) details.current.open = false
  }
  const closeOnEscape = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || details.current?.open !== true) return
    event.preventDefault()
    details.current.querySelector('summary')?.focus()
    close()
  }
  return (
    <details
      ref={details}
      className={`popover ${className}`}
      onToggle={(event) => setOpen(event.currentTarget.open)}
      onKeyDown={closeOnEscape}
      onBlur={({ currentTarget, relatedTarget }) => {
        if (relatedTarget !== null && !currentTarget.contains(relatedTarget)) close()
      }}
    >
      <summary>{name}</summary>
      {open && children}
    </details>
  )
}
