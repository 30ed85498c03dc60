/** Patches put together by their cloth: one part of a drawing for each fabric, and for each way a printed one lies. */
import { type Block, flatColour, type Turn } from '../../../geometry/index.ts'
import type { Spot } from '../shapes.ts'
import type { Part } from './drawing.ts'

export interface Patched {
  readonly fabric: string
  readonly unit: string | null
  readonly ring: readonly Spot[]
  /** Quarter turns of the whole that the patch lies in. */
  readonly turned?: Turn
}

/** For a fabric that the block does not have (a file is never read so). */
const UNKNOWN = '#888888'

export function clothParts(block: Block, patches: Iterable<Patched>, faint = false): Part[] {
  const fabrics = new Map(block.fabrics.map((fabric) => [fabric.id, { colour: flatColour(fabric), printed: fabric.print !== undefined }]))
  const turns = [...fabrics.values()].some(({ printed }) => printed) ? turnsOf(block) : null
  const parts = new Map<string, { part: Omit<Part, 'rings'>; rings: (readonly Spot[])[] }>()
  for (const { fabric, unit, ring, turned = 0 } of patches) {
    const { colour, printed } = fabrics.get(fabric) ?? { colour: UNKNOWN, printed: false }
    const turn = printed ? ((((turns?.get(unit ?? '') ?? 0) + turned) % 4) as Turn) : 0
    const key = printed ? `${fabric} ${turn}` : fabric
    const known = parts.get(key)
    if (known !== undefined) known.rings.push(ring)
    else
      parts.set(key, {
        part: { what: 'cloth', colour, ...(printed ? { print: { fabric, turn } } : {}), ...(faint ? { faint: true } : {}) },
        rings: [ring],
      })
  }
  return [...parts.values()].map(({ part, rings }): Part => ({ ...part, rings }))
}

/** Prints lie as their unit does; free patches and borders as the block does. */
const turnsOf = ({ units }: Block): ReadonlyMap<string, Turn> =>
  new Map(units.flatMap((unit) => (unit.kind === 'polygon' ? [] : [[unit.id, unit.turn ?? 0] as const])))
