/** What unfolds over the page from a word: Escape folds it up again, and so does going on to something else. */
import { type KeyboardEvent, type ReactNode, useRef, useState } from 'react'

interface Props {
  readonly name: string
  readonly className?: string
  readonly children: ReactNode
}

export function Popover({ name, className = '', children }: Props) {
  const drop = useRef<HTMLDetailsElement>(null)
  const [open, setOpen] = useState(false)
  const fold = (): void => {
    if (drop.current !== null) drop.current.open = false
  }
  const key = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || drop.current?.open !== true) return
    event.preventDefault()
    drop.current.querySelector('summary')?.focus()
    fold()
  }
  return (
    <details
      ref={drop}
      className={`drop ${className}`}
      onToggle={(event) => setOpen(event.currentTarget.open)}
      onKeyDown={key}
      onBlur={({ currentTarget, relatedTarget }) => {
        if (relatedTarget !== null && !currentTarget.contains(relatedTarget)) fold()
      }}
    >
      <summary>{name}</summary>
      {open && children}
    </details>
  )
}
