/**
 * The outlines of what does not lie as it should, worked out beside the page.
 *
 * In      the report's findings and the grid.
 * Out     outlines in cells; none while there is nothing to show, while they are worked out, or where that takes too long: the marks of the findings show the places anyway.
 */
import { useEffect, useState } from 'react'
import type { Findings } from '../../../geometry/index.ts'
import { shapeClient } from '../../workers/clients.ts'
import type { Outlines } from '../../workers/outline.worker.ts'
import { useClient } from '../../workers/useWorker.ts'
import { type Point, pointOf } from '../../document/shapes.ts'

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
  const client = useClient(shapeClient)
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
    const patches = report.patches.filter(({ unit }) => unit !== null).map(({ corners }) => corners.map((corner) => whole(pointOf(corner))))
    let current = true
    // Where a shape cannot be done, the findings name the place in words.
    void client.request('outlines', patches, grid.map(whole)).then((reply) => {
      if (current && reply.type === 'answer') setRings(ringsOf(reply.value))
    })
    return () => {
      current = false
    }
  }, [report, columns, rows, client])
  return rings
}

function ringsOf(outlines: Outlines): Outline[] {
  const cells = ([x, y]: readonly [number, number]): Point => [x / PARTS, y / PARTS]
  return outlines.flatMap((shapes, place) =>
    shapes.flatMap((polygon) => polygon.map((ring): Outline => ({ sort: SORTS[place] ?? 'gap', ring: ring.map(cells) }))),
  )
}
