/** The button of one finding: pointing at it, or focusing it, shows its place on the board. A press on a mark of the board comes back to it. */
import { type ReactNode, useEffect } from 'react'
import type { ReportPoint } from '../../../geometry/index.ts'
import { pointOf } from '../../document/shapes.ts'
import { getState, showBoard, setView, useStore } from '../../document/store.ts'
import { placeWords } from '../../document/placeWords.ts'

/** `finding` names a meeting, problem or join by its index in the report, such as `meeting 3`. */
export function FindingButton({ finding, children }: { readonly finding: string; readonly children: ReactNode }) {
  const show = (): void => setView({ finding })
  return (
    <button
      type="button"
      className="plain"
      id={elementId(finding)}
      onClick={() => {
        show()
        showBoard()
      }}
      onPointerEnter={show}
      onFocus={show}
    >
      {children}
    </button>
  )
}

/** When a press on the board asks for a finding, scrolls to it and focuses it. */
export function useFocusFinding(): void {
  const sought = useStore(({ view }) => view.requestedFinding)
  useEffect(() => {
    if (sought === null) return
    const frame = requestAnimationFrame(() => {
      document.getElementById(elementId(sought))?.focus()
      setView({ requestedFinding: null })
    })
    return () => cancelAnimationFrame(frame)
  }, [sought])
}

const elementId = (finding: string): string => `finding-${finding.replace(' ', '-')}`

/** Where a finding lies on the board: its column and row. */
export const positionWords = (at: ReportPoint): string => placeWords(pointOf(at), getState().history.block.grid)
