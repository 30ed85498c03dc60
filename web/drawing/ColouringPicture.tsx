/**
 * A small picture of a block in other fabrics, with one path for each fabric and each turn of its print.
 *
 * In      the block's outlines, computed once, and the fabrics of patches that differ.
 * Out     an SVG in cells. Its prints are the patterns that `FabricDefs` defines under the same id.
 */
import type { Block, Fabric } from '../../geometry/index.ts'
import { bordersAround, borderShapes, unitShapes } from '../document/shapes.ts'
import { svgFill } from './FabricDefs.tsx'

export interface BlockOutlines {
  readonly viewBox: string
  readonly shapes: readonly { readonly patch: string; readonly fabric: string; readonly turn: number; readonly path: string }[]
}

export const patchKey = (unit: string | null, name: string): string => `${unit ?? ''} ${name}`

export function blockOutlines(block: Block): BlockOutlines {
  const around = bordersAround(block)
  const pieces = [...borderShapes(block), ...block.units.flatMap((unit) => unitShapes(unit))]
  const { columns, rows } = block.grid
  return {
    viewBox: [-around, -around, columns + 2 * around, rows + 2 * around].join(' '),
    shapes: pieces.map(({ unit, name, fabric, turn, corners }) => ({
      patch: patchKey(unit, name),
      fabric,
      turn: turn ?? 0,
      path: `M${corners.map((corner) => corner.join()).join('L')}Z`,
    })),
  }
}

/** Up to this many patches the seams are drawn; with more, nothing but seams would be seen. */
const MOST_SEAMS = 500

interface Props {
  readonly id: string
  readonly outlines: BlockOutlines
  readonly fabrics: readonly Fabric[]
  /** Fabric by `patchKey`, where it is not the block's own. */
  readonly colours?: ReadonlyMap<string, string>
}

export function ColouringPicture({ id, outlines, fabrics, colours }: Props) {
  const paths = new Map<string, { fabric: string; turn: number; path: string }>()
  for (const { patch, fabric: own, turn, path } of outlines.shapes) {
    const fabric = colours?.get(patch) ?? own
    const key = `${fabric} ${turn}`
    const group = paths.get(key)
    if (group === undefined) paths.set(key, { fabric, turn, path })
    else group.path += path
  }
  const known = new Map(fabrics.map((fabric) => [fabric.id, fabric]))
  const seams = outlines.shapes.length <= MOST_SEAMS
  return (
    <svg viewBox={outlines.viewBox} className="block-picture" aria-hidden="true">
      {[...paths].map(([key, { fabric, turn, path }]) => (
        <path
          key={key}
          d={path}
          fill={svgFill(id, known.get(fabric), turn)}
          {...(seams ? { stroke: '#2b2320', strokeOpacity: 0.45, strokeWidth: 0.75, vectorEffect: 'non-scaling-stroke' as const } : {})}
        />
      ))}
    </svg>
  )
}
