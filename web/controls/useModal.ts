/** The ref of a dialog that opens over the page as soon as it is rendered. */
import { type RefObject, useEffect, useRef } from 'react'

export function useModal(): RefObject<HTMLDialogElement | null> {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    // While developing, React runs each effect twice.
    if (dialog.current?.open === false) dialog.current.showModal()
  }, [])
  return dialog
}
