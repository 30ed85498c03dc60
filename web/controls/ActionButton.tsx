/**
 * A button that stays in the Tab order while it is disabled.
 *
 * The last press of a row of buttons often leaves nothing more to do. A truly disabled button would lose the keyboard's focus then; this one only says that
 * it is disabled.
 */
import type { ButtonHTMLAttributes } from 'react'

interface Props extends Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'onClick' | 'type'> {
  readonly disabled: boolean
  readonly onClick: () => void
}

export function ActionButton({ disabled, onClick, ...button }: Props) {
  return <button {...button} type="button" aria-disabled={disabled} onClick={disabled ? undefined : onClick} />
}
