/** Patches grouped by fabric: one part of a drawing for each fabric, and for each turn of a printed one. */
import { type Block, flatColour, lieOf, type Turn } from '../../geometry/index.ts'
import type { Point } from '../document/shapes.ts'
import type { DrawingPart } from './viewDrawing.ts'

/** For a fabric that the block does not have. Files with such a fabric are rejected, so this is only a safeguard. */
export const UNKNOWN_COLOUR = '#888888'

interface PlacedPatch {
  readonly fabric: string
  readonly unit: string | null
  readonly name: string
  readonly outline: readonly Point[]
  /** Quarter turns of the whole drawing. */
  readonly turned?: Turn
}

export function fabricParts(block: Block, patches: Iterable<PlacedPatch>, faint = false): DrawingPart[] {
  const fabrics = new Map(block.fabrics.map((fabric) => [fabric.id, { colour: flatColour(fabric), printed: fabric.print !== undefined }]))
  const units = [...fabrics.values()].some(({ printed }) => printed) ? new Map(block.units.map((unit) => [unit.id, unit])) : null
  const parts = new Map<string, { part: Omit<DrawingPart, 'outlines'>; outlines: (readonly Point[])[] }>()
  for (const { fabric, unit: id, name, outline, turned = 0 } of patches) {
    const { colour, printed } = fabrics.get(fabric) ?? { colour: UNKNOWN_COLOUR, printed: false }
    const unit = printed ? units?.get(id ?? '') : undefined
    const turn = ((unit === undefined ? 0 : lieOf(unit, name)) + turned) % 4
    const key = printed ? `${fabric} ${turn}` : fabric
    const known = parts.get(key)
    if (known !== undefined) known.outlines.push(outline)
    else
      parts.set(key, {
        part: { type: 'fabric', colour, ...(printed ? { print: { fabric, turn } } : {}), ...(faint ? { faint: true } : {}) },
        outlines: [outline],
      })
  }
  return [...parts.values()].map(({ part, outlines }): DrawingPart => ({ ...part, outlines }))
}
