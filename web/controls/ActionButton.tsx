/**
 * A button that cannot always act.
 *
 * While it cannot, it says so and stays a stop of the Tab key: where the last press of a row leaves nothing more to do, the focus is not lost.
 */
import type { ButtonHTMLAttributes } from 'react'

interface Props extends Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'disabled' | 'onClick' | 'type'> {
  readonly off: boolean
  readonly act: () => void
}

export function ActionButton({ off, act, ...button }: Props) {
  return <button {...button} type="button" aria-disabled={off} onClick={off ? undefined : act} />
}
