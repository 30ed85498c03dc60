/**
 * The outlines of what does not lie as it should, worked out beside the page.
 *
 * In      the report's findings and the grid.
 * Out     outlines in cells; none while there is nothing to show, while they are worked out, or where that takes longer than `PATIENCE`.
 */
import { useEffect, useState } from 'react'
import type { Findings } from '../../../geometry/index.ts'
import type { Outlines, OutlineWish } from '../../workers/outline.worker.ts'
import { type Point, pointOf } from '../../document/shapes.ts'

/** Milliseconds before the work is ended: the marks of the findings show the places anyway. */
const PATIENCE = 2000
/** Cells are drawn in this many parts, so that halves, thirds, fifths and sevenths are whole numbers. */
const PARTS = 5040

export interface Outline {
  readonly sort: 'gap' | 'outside' | 'overlap'
  readonly ring: readonly Point[]
}

/** In the order in which the worker answers. */
const SORTS = ['gap', 'outside', 'overlap'] as const

export function useOutlines(report: Findings | null, columns: number, rows: number): readonly Outline[] {
  const [rings, setRings] = useState<readonly Outline[]>([])
  useEffect(() => {
    setRings([])
    // An empty grid is no gap to be mended.
    if (report === null || report.patches.length === 0 || !report.problems.some(({ area }) => area !== undefined)) return
    const whole = ([x, y]: Point): [number, number] => [Math.round(x * PARTS), Math.round(y * PARTS)]
    const grid: Point[] = [
      [0, 0],
      [columns, 0],
      [columns, rows],
      [0, rows],
    ]
    const wish: OutlineWish = {
      patches: report.patches.filter(({ unit }) => unit !== null).map(({ corners }) => corners.map((corner) => whole(pointOf(corner)))),
      grid: grid.map(whole),
    }
    const worker = new Worker(new URL('../../workers/outline.worker.ts', import.meta.url), { type: 'module' })
    const end = (): void => worker.terminate()
    const patience = setTimeout(end, PATIENCE)
    worker.onmessage = ({ data }: MessageEvent<Outlines>) => {
      const cells = ([x, y]: readonly [number, number]): Point => [x / PARTS, y / PARTS]
      setRings(
        data.flatMap((shapes, place) => shapes.flatMap((polygon) => polygon.map((ring) => ({ sort: SORTS[place] ?? 'gap', ring: ring.map(cells) })))),
      )
      end()
    }
    worker.onerror = (event) => {
      // A shape it cannot do: the findings name the place in words.
      event.preventDefault()
      end()
    }
    worker.postMessage(wish)
    return () => {
      clearTimeout(patience)
      end()
    }
  }, [report, columns, rows])
  return rings
}
