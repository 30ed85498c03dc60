/** A small picture of a unit as it lies in the block, in its own fabrics. */
import type { Block, Unit } from '../../../geometry/index.ts'
import { rectOf, unitShapes } from '../../document/shapes.ts'
import { svgFill } from '../../drawing/FabricDefs.tsx'

/** `fills` is the id under which the prints of the block's fabrics are defined. */
export function UnitPatchPicture({ unit, block, fills }: { readonly unit: Unit; readonly block: Block; readonly fills: string }) {
  const { at, size } = rectOf(unit)
  const [width, height] = size
  const fabrics = new Map(block.fabrics.map((fabric) => [fabric.id, fabric]))
  const stroke = Math.max(width, height) / 40
  return (
    <svg viewBox={`${at[0] - stroke} ${at[1] - stroke} ${width + 2 * stroke} ${height + 2 * stroke}`} aria-hidden="true">
      {unitShapes(unit).map(({ name, fabric, corners }) => (
        <polygon
          key={name}
          points={corners.map((corner) => corner.join()).join(' ')}
          fill={svgFill(fills, fabrics.get(fabric))}
          stroke="currentColor"
          strokeWidth={stroke}
          strokeLinejoin="round"
        />
      ))}
    </svg>
  )
}
