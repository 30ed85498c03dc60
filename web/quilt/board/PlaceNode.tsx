/** One place of the quilt as a node of the canvas: konva drags it; dropped, it snaps to the cell below it. */
import type { Group as GroupNode } from 'konva/lib/Group.js'
import type { Layer as LayerNode } from 'konva/lib/Layer.js'
import type { KonvaEventObject } from 'konva/lib/Node.js'
import { memo } from 'react'
import { Group, Shape } from 'react-konva/lib/ReactKonvaCore.js'
import type { DrawnPlace, Quilt } from '../../../geometry/index.ts'
import { paintPlace } from '../../drawing/quiltPainting.ts'
import type { Point } from '../../document/shapes.ts'

interface Props {
  readonly quilt: Quilt
  readonly drawn: DrawnPlace
  readonly left: number
  readonly top: number
  readonly scale: number
  readonly mode: 'cloth' | 'value'
  readonly draggable: boolean
  /** Changes when a photograph has been decoded, so that it is painted. */
  readonly decoded: number
  /** The layer of what is being dragged, so that the others are not drawn again with every move. */
  readonly dragLayer: () => LayerNode | null
  readonly onDrag: (id: string, middle: Point) => void
  readonly onDrop: (id: string, middle: Point) => void
}

export const PlaceNode = memo(function PlaceNode({ quilt, drawn, left, top, scale, mode, draggable, dragLayer, onDrag, onDrop }: Props) {
  const { place, at, size } = drawn
  const home: Point = [left + at[0] * scale, top + at[1] * scale]
  const middleOf = (node: GroupNode): Point => [node.x() + (size[0] * scale) / 2, node.y() + (size[1] * scale) / 2]
  const asGroup = (event: KonvaEventObject<DragEvent>): GroupNode => event.currentTarget as GroupNode
  return (
    <Group
      name={place.id}
      x={home[0]}
      y={home[1]}
      draggable={draggable}
      onDragStart={(event) => {
        const layer = dragLayer()
        if (layer === null) return
        const node = asGroup(event)
        node.setAttr('home', node.getLayer())
        node.moveTo(layer)
        node.opacity(0.85)
      }}
      onDragMove={(event) => onDrag(place.id, middleOf(asGroup(event)))}
      onDragEnd={(event) => {
        const node = asGroup(event)
        const middle = middleOf(node)
        // Back where it belongs before the edit is drawn: what has moved is what lies in it, not the place.
        node.moveTo(node.getAttr('home') as LayerNode)
        node.opacity(1)
        node.position({ x: home[0], y: home[1] })
        onDrop(place.id, middle)
      }}
    >
      <Shape
        width={size[0] * scale}
        height={size[1] * scale}
        perfectDrawEnabled={false}
        sceneFunc={({ _context }) => {
          const pen = _context as CanvasRenderingContext2D
          pen.scale(scale, scale)
          paintPlace(pen, quilt, drawn, scale * (window.devicePixelRatio || 1), mode)
        }}
        hitFunc={(context, shape) => {
          context.beginPath()
          context.rect(0, 0, shape.width(), shape.height())
          context.closePath()
          context.fillStrokeShape(shape)
        }}
      />
    </Group>
  )
})
