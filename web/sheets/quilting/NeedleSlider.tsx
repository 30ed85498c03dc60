/** Shows on the board how far the quilting line has been stitched: by hand with a slider, or as a film from start to end. */
import { useEffect, useState } from 'react'
import { getState, showStitching } from '../../document/store.ts'
import { t } from '../../words/words.ts'

/** Seconds that the film takes for the whole line. */
const SECONDS = 12

/** `part` is how much of the line is stitched, from 0 to 1. */
export function NeedleSlider({ part }: { readonly part: number }) {
  const [running, setRunning] = useState(false)
  const show = (next: number): void => {
    const { stitching } = getState()
    if (stitching !== null) showStitching({ ...stitching, part: next })
  }
  useEffect(() => {
    if (!running) return
    let last = performance.now()
    let frame = 0
    const step = (time: number): void => {
      const { stitching } = getState()
      const next = Math.min(1, (stitching?.part ?? 1) + (time - last) / 1000 / SECONDS)
      last = time
      if (stitching !== null) showStitching({ ...stitching, part: next })
      if (next < 1) frame = requestAnimationFrame(step)
      else setRunning(false)
    }
    frame = requestAnimationFrame(step)
    return () => cancelAnimationFrame(frame)
  }, [running])
  return (
    <>
      <label>
        {t('Follow the needle')}
        <input type="range" min={0} max={1000} value={Math.round(part * 1000)} onChange={(event) => show(Number(event.target.value) / 1000)} />
      </label>
      <div className="buttons">
        <button
          type="button"
          aria-pressed={running}
          onClick={() => {
            if (!running && part >= 1) show(0)
            setRunning(!running)
          }}
        >
          {running ? t('Stop') : t('Play the stitching')}
        </button>
      </div>
    </>
  )
}
