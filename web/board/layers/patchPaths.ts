/** Patches as canvas paths, made once and then moved with the hand. */
import type { PatchShape } from '../../document/shapes.ts'
import { fillKey, tracePolygon } from '../../drawing/tiles.ts'

export interface PatchPaths {
  /** One for each fabric and direction of its print, in quarter turns. */
  readonly fills: readonly { readonly fabric: string; readonly turn: number; readonly path: Path2D }[]
  readonly outlines: Path2D
}

/** More patches than this are not drawn while they are dragged. */
const MOST_DRAGGED = 3000

export function patchPaths(pieces: readonly PatchShape[]): PatchPaths {
  const fills = new Map<string, PatchPaths['fills'][number]>()
  const outlines = new Path2D()
  for (const { fabric, corners, turn = 0 } of pieces.slice(0, MOST_DRAGGED)) {
    const key = fillKey(fabric, turn)
    const fill = fills.get(key) ?? { fabric, turn, path: new Path2D() }
    tracePolygon(fill.path, corners)
    tracePolygon(outlines, corners)
    fills.set(key, fill)
  }
  return { fills: [...fills.values()], outlines }
}
