/** Colours of the layers view: the thicker the cloth, the darker; the numbers say the rest. */
import { areaOf, type Layered } from '../../geometry/index.ts'

/** Layers at which the darkest colour is reached. */
const DARKEST = 15

export function layerColour(layers: number): string {
  const part = Math.min(1, Math.max(0, (layers - 1) / (DARKEST - 1)))
  // From pale sand over clay to deep plum.
  return `hsl(${(36 - 66 * part + 360) % 360} ${Math.round(52 - 8 * part)}% ${Math.round(90 - 70 * Math.sqrt(part))}%)`
}

export interface LayerArea {
  readonly layers: number
  /** Square cells. */
  readonly area: number
}

/** How much of the block lies under each number of layers, thinnest first; slivers too thin to see are left out. */
export function layerAreas(cells: Layered['cells']): LayerArea[] {
  const sums = new Map<number, number>()
  for (const { poly, layers } of cells) sums.set(layers, (sums.get(layers) ?? 0) + areaOf(poly))
  return [...sums]
    .map(([layers, area]) => ({ layers, area }))
    .filter(({ area }) => area > 1e-6)
    .sort((a, b) => a.layers - b.layers)
}
