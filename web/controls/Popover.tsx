/** A panel that opens over the page from a button. Escape closes it, and so does moving the focus elsewhere. */
import { type KeyboardEvent, type MouseEvent, type ReactNode, useRef, useState } from 'react'

interface Props {
  readonly name: string
  readonly className?: string
  /** A menu: pressing one of its buttons closes it. */
  readonly menu?: boolean
  readonly children: ReactNode
}

export function Popover({ name, className = '', menu = false, children }: Props) {
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
  const closeAfterPress = ({ target }: MouseEvent): void => {
    if (!menu || !(target instanceof Element) || target.closest('button') === null) return
    details.current?.querySelector('summary')?.focus()
    close()
  }
  return (
    <details
      ref={details}
      className={`popover ${className}`}
      onToggle={(event) => setOpen(event.currentTarget.open)}
      onKeyDown={closeOnEscape}
      onClick={closeAfterPress}
      onBlur={({ currentTarget, relatedTarget }) => {
        if (relatedTarget !== null && !currentTarget.contains(relatedTarget)) close()
      }}
    >
      <summary>{name}</summary>
      {open && children}
    </details>
  )
}
