/** Handles on the one selected place: a knob that turns its block by quarters, and a corner that stretches it over more cells. */
import type { KonvaEventObject } from 'konva/lib/Node.js'
import { memo } from 'react'
import { Group, Shape } from 'react-konva/lib/ReactKonvaCore.js'
import type { Point } from '../../document/shapes.ts'
import { useInk } from '../../drawing/useInk.ts'

interface Props {
  /** Left, top, width and height of the place, in pixels. */
  readonly box: readonly [number, number, number, number]
  readonly turns: boolean
  readonly onTurn: () => void
  readonly onStretch: (corner: Point) => void
  readonly onStretched: (corner: Point) => void
}

let pressed = false

/** Whether the press under way began on a handle; asked once for each press. */
export function wasHandlePressed(): boolean {
  const was = pressed
  pressed = false
  return was
}
const onHandle = (): void => {
  pressed = true
}

/** Pixels; for a finger the part that can be pressed is larger than what is seen. */
const KNOB = 12
const REACH = 22

export const PlaceHandles = memo(function PlaceHandles({ box: [x, y, w, h], turns, onTurn, onStretch, onStretched }: Props) {
  const corner: Point = [x + w, y + h]
  const where = (event: KonvaEventObject<DragEvent>): Point => [event.target.x(), event.target.y()]
  const press = (event: KonvaEventObject<Event>): void => {
    event.cancelBubble = true
    onTurn()
  }
  return (
    <>
      {turns && (
        <Group x={x + w / 2} y={y} onPointerDown={onHandle} onClick={press} onTap={press}>
          <Knob icon={(pen) => turnIcon(pen)} />
        </Group>
      )}
      <Group
        x={corner[0]}
        y={corner[1]}
        draggable
        onPointerDown={onHandle}
        onDragMove={(event) => onStretch(where(event))}
        onDragEnd={(event) => {
          const at = where(event)
          event.target.position({ x: corner[0], y: corner[1] })
          onStretched(at)
        }}
      >
        <Knob icon={(pen) => stretchIcon(pen)} />
      </Group>
    </>
  )
})

function Knob({ icon }: { readonly icon: (pen: CanvasRenderingContext2D) => void }) {
  const { accent, paper } = useInk()
  return (
    <Shape
      perfectDrawEnabled={false}
      sceneFunc={({ _context }) => {
        const pen = _context as CanvasRenderingContext2D
        pen.beginPath()
        pen.arc(0, 0, KNOB, 0, Math.PI * 2)
        pen.fillStyle = paper
        pen.fill()
        pen.strokeStyle = accent
        pen.lineWidth = 2
        pen.stroke()
        icon(pen)
      }}
      hitFunc={(context, shape) => {
        context.beginPath()
        context.arc(0, 0, REACH, 0, Math.PI * 2, false)
        context.closePath()
        context.fillStrokeShape(shape)
      }}
    />
  )
}

function turnIcon(pen: CanvasRenderingContext2D): void {
  pen.beginPath()
  pen.arc(0, 0, 6, Math.PI * 0.9, Math.PI * 2.3)
  pen.stroke()
  pen.beginPath()
  pen.moveTo(0, 5.5)
  pen.lineTo(4.6, 3.6)
  pen.lineTo(5.2, 8.2)
  pen.stroke()
}

function stretchIcon(pen: CanvasRenderingContext2D): void {
  pen.beginPath()
  pen.moveTo(-5, -5)
  pen.lineTo(5, 5)
  pen.moveTo(0, 5.5)
  pen.lineTo(5.5, 5.5)
  pen.lineTo(5.5, 0)
  pen.moveTo(0, -5.5)
  pen.lineTo(-5.5, -5.5)
  pen.lineTo(-5.5, 0)
  pen.stroke()
}
