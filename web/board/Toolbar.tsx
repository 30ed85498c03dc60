/** Toolbars of the board: buttons with icons in a row or a column. */
import { type KeyboardEvent, type ReactNode, useEffect, useRef } from 'react'
import { ActionButton } from '../controls/ActionButton.tsx'
import './board.css'

/** One button on or back. */
const STEPS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }

/** A row of buttons that is one stop of the Tab key: arrows go from one to the next. */
export function Toolbar({ name, upright = false, children }: { readonly name: string; readonly upright?: boolean; readonly children: ReactNode }) {
  const toolbar = useRef<HTMLDivElement>(null)
  const buttons = (): HTMLButtonElement[] => [...(toolbar.current?.querySelectorAll<HTMLButtonElement>('button') ?? [])]
  useEffect(() => {
    const all = buttons()
    const stop = all.find((button) => button === document.activeElement) ?? all[0]
    for (const button of all) button.tabIndex = button === stop ? 0 : -1
  })
  const key = (event: KeyboardEvent): void => {
    const all = buttons()
    const index = all.indexOf(document.activeElement as HTMLButtonElement)
    const next = all[(index + (STEPS[event.key] ?? 0) + all.length) % all.length]
    if (STEPS[event.key] === undefined || index < 0 || next === undefined) return
    event.preventDefault()
    for (const button of all) button.tabIndex = button === next ? 0 : -1
    next.focus()
  }
  return (
    <div
      ref={toolbar}
      className={upright ? 'tools upright' : 'tools'}
      role="toolbar"
      aria-orientation={upright ? 'vertical' : 'horizontal'}
      aria-label={name}
      onKeyDown={key}
    >
      {children}
    </div>
  )
}

interface ToolButtonProps {
  readonly name: string
  /** A word of the name, written below the icon. */
  readonly caption?: string
  /** An SVG path in a box from −10 to 10. */
  readonly icon: string
  readonly onClick: () => void
  readonly pressed?: boolean
  /** It takes something away: red. */
  readonly danger?: boolean
  readonly disabled?: boolean
}

/** A button with an icon; `name` is its label and its tooltip. */
export function ToolButton({ name, caption, icon, onClick, pressed, danger = false, disabled = false }: ToolButtonProps): ReactNode {
  return (
    <ActionButton
      className={`sign${caption === undefined ? '' : ' captioned'}${danger ? ' danger' : ''}`}
      aria-label={name}
      title={name}
      aria-pressed={pressed}
      disabled={disabled}
      onClick={onClick}
    >
      <svg viewBox="-11 -11 22 22" aria-hidden="true">
        <path d={icon} />
      </svg>
      {caption !== undefined && <span aria-hidden="true">{caption}</span>}
    </ActionButton>
  )
}
