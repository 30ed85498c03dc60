/** A unit of the tray as a small picture, in the block's own fabrics. */
import type { Block, Turn } from '../../geometry/index.ts'
import { unitShapes, rectOf } from '../document/shapes.ts'
import { svgFill } from '../drawing/FabricDefs.tsx'
import { newUnit, type TrayKind } from './newUnit.ts'

interface Props {
  readonly block: Block
  readonly kind: TrayKind
  readonly turn?: Turn
  readonly mirror?: boolean
}

export function UnitPicture({ block, kind, turn = 0, mirror = false }: Props) {
  if (block.fabrics.length === 0) return null
  const unit = newUnit(block, kind, [0, 0], turn, undefined, mirror)
  const [w, h] = rectOf(unit).size
  const fabrics = new Map(block.fabrics.map((fabric) => [fabric.id, fabric]))
  return (
    <svg viewBox={`-0.05 -0.05 ${w + 0.1} ${h + 0.1}`} aria-hidden="true">
      {unitShapes(unit).map(({ name, fabric, corners, turn }) => (
        <polygon
          key={name}
          points={corners.map((corner) => corner.join()).join(' ')}
          fill={svgFill('cloth-', fabrics.get(fabric), turn)}
          stroke="currentColor"
          strokeWidth={0.035}
          strokeLinejoin="round"
        />
      ))}
    </svg>
  )
}
