/**
 * A drawing on a canvas of its own, in two layers: the fabric below, all marks above it.
 *
 * It is painted again only if the drawing or its frame has changed, however often the page around it is rendered.
 */
import { memo, useMemo } from 'react'
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore.js'
import type { Point } from '../document/shapes.ts'
import type { ViewDrawing, PartType } from './viewDrawing.ts'
import { paint, type PaintContext } from './paint.ts'

const FABRIC_LAYER: ReadonlySet<PartType> = new Set(['fabric', 'back', 'folded', 'edge', 'seam', 'stitches'])

interface Props {
  readonly drawing: ViewDrawing
  readonly context: PaintContext
  readonly size: Point
}

export function DrawingCanvas({ drawing, context, size: [width, height] }: Props) {
  const fabric = useMemo(() => drawing.filter(({ type }) => FABRIC_LAYER.has(type)), [drawing])
  const marks = useMemo(() => drawing.filter(({ type }) => !FABRIC_LAYER.has(type)), [drawing])
  return (
    <Stage width={width} height={height} listening={false}>
      <PaintedLayer drawing={fabric} context={context} />
      <PaintedLayer drawing={marks} context={context} />
    </Stage>
  )
}

const PaintedLayer = memo(function PaintedLayer({ drawing, context }: Pick<Props, 'drawing' | 'context'>) {
  return (
    <Layer listening={false}>
      <Shape
        perfectDrawEnabled={false}
        listening={false}
        sceneFunc={({ _context }) => paint(_context as CanvasRenderingContext2D, drawing, context)}
      />
    </Layer>
  )
})
