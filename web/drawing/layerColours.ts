/** The colours of the layers view: more layers, darker. */
import { areaOf, type Layered } from '../../geometry/index.ts'

/** The number of layers with the darkest colour. */
const DARKEST = 15

export function layerColour(layers: number): string {
  const part = Math.min(1, Math.max(0, (layers - 1) / (DARKEST - 1)))
  // From pale sand over clay to deep plum.
  return `hsl(${(36 - 66 * part + 360) % 360} ${Math.round(52 - 8 * part)}% ${Math.round(90 - 70 * Math.sqrt(part))}%)`
}

interface LayerArea {
  readonly layers: number
  /** Square cells. */
  readonly area: number
}

/** How much of the block has each number of layers, fewest first. Slivers too thin to see are left out. */
export function layerAreas(cells: Layered['cells']): LayerArea[] {
  const areas = new Map<number, number>()
  for (const { poly, layers } of cells) areas.set(layers, (areas.get(layers) ?? 0) + areaOf(poly))
  return [...areas]
    .map(([layers, area]) => ({ layers, area }))
    .filter(({ area }) => area > 1e-6)
    .sort((a, b) => a.layers - b.layers)
}
