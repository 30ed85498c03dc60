/**
 * The outlines of gaps, overlaps and what lies outside the grid, computed in a worker.
 *
 * In      the findings and the size of the grid in cells.
 * Out     outlines in cells; none while there is nothing to show, while they are being computed, or if that takes too long: the marks of the findings show
 *         the places anyway.
 */
import { useEffect, useState } from 'react'
import type { Findings } from '../../../geometry/index.ts'
import { shapeClient } from '../../workers/clients.ts'
import type { Outlines } from '../../workers/outline.worker.ts'
import { useClient } from '../../workers/useWorker.ts'
import { type Point, pointOf } from '../../document/shapes.ts'

/** Parts of a cell in which the worker counts: so halves, thirds, fifths and sevenths are whole numbers. */
const PARTS = 5040

export interface FaultOutline {
  readonly type: 'gap' | 'outside' | 'overlap'
  readonly outline: readonly Point[]
}

/** In the order of the worker's answer. */
const TYPES = ['gap', 'outside', 'overlap'] as const

export function useFaultOutlines(report: Findings | null, columns: number, rows: number): readonly FaultOutline[] {
  const [outlines, setOutlines] = useState<readonly FaultOutline[]>([])
  const client = useClient(shapeClient)
  useEffect(() => {
    setOutlines([])
    // An empty grid is no gap that has to be filled.
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
    // If the library cannot handle a shape, the findings still name the place in words.
    void client.request('outlines', patches, grid.map(whole)).then((reply) => {
      if (current && reply.type === 'answer') setOutlines(outlinesIn(reply.value))
    })
    return () => {
      current = false
    }
  }, [report, columns, rows, client])
  return outlines
}

function outlinesIn(answer: Outlines): FaultOutline[] {
  const cells = ([x, y]: readonly [number, number]): Point => [x / PARTS, y / PARTS]
  return answer.flatMap((shapes, place) =>
    shapes.flatMap((polygon) => polygon.map((outline): FaultOutline => ({ type: TYPES[place] ?? 'gap', outline: outline.map(cells) }))),
  )
}
