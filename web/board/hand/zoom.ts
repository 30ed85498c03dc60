/** Zooming around a point of the board. */
import type { Point } from '../../document/shapes.ts'
import type { HandCommand, HandContext } from './values.ts'

/** How far out and in the maker can zoom; 1 fits the block to the board. */
export const ZOOM_RANGE = [0.3, 24] as const

/** Zooms by a factor; what lies under `at` (pixels) stays there. */
export function zoomAround({ zoom, pan, size }: HandContext, [x, y]: Point, by: number): HandCommand {
  const next = Math.min(ZOOM_RANGE[1], Math.max(ZOOM_RANGE[0], zoom * by))
  const [dx, dy] = [x - size[0] / 2 - pan[0], y - size[1] / 2 - pan[1]]
  const grown = next / zoom
  return { type: 'setView', zoom: next, pan: [pan[0] + dx - dx * grown, pan[1] + dy - dy * grown] }
}
