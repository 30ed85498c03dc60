/**
 * How a fabric looks on the board: the one place that says so.
 *
 * In      a fabric and how the cloth is looked at.
 * Out     what a canvas fills its patches with.
 */
import { type Fabric, lightnessOf } from '../../geometry/index.ts'
import type { Look } from '../state/store.ts'

/** For a fabric that the block does not have (a file is never read so). */
export const UNKNOWN = '#888888'

/** As it is; in greys of the same lightness; or paler, as the back of a print. */
export function fillOf({ colour }: Fabric, look: Look): string | CanvasPattern {
  if (look === 'value') return `hsl(0 0% ${Math.round(lightnessOf(colour))}%)`
  if (look !== 'wrong') return colour
  const channels = [1, 3, 5].map((at) => Math.round(Number.parseInt(colour.slice(at, at + 2), 16) * 0.55 + 255 * 0.45))
  return `rgb(${channels.join(' ')})`
}
