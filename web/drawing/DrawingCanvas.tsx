/**
 * A drawing on a canvas of its own, in two layers: what is cloth, and what is said of it, so that no mark ever lies under cloth.
 *
 * Painted anew only when the drawing or the frame has changed, however often the page round it is told anew.
 */
import { memo, useMemo } from 'react'
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore.js'
import type { Point } from '../document/shapes.ts'
import type { ViewDrawing, PartType } from './viewDrawing.ts'
import { paint, type PaintContext } from './paint.ts'

const CLOTH: ReadonlySet<PartType> = new Set(['cloth', 'back', 'folded', 'edge', 'seam', 'stitches'])

interface Props {
  readonly drawing: ViewDrawing
  readonly sight: PaintContext
  readonly size: Point
}

export function DrawingCanvas({ drawing, sight, size: [width, height] }: Props) {
  const cloth = useMemo(() => drawing.filter(({ what }) => CLOTH.has(what)), [drawing])
  const above = useMemo(() => drawing.filter(({ what }) => !CLOTH.has(what)), [drawing])
  return (
    <Stage width={width} height={height} listening={false}>
      <Painted drawing={cloth} sight={sight} />
      <Painted drawing={above} sight={sight} />
    </Stage>
  )
}

const Painted = memo(function Painted({ drawing, sight }: Pick<Props, 'drawing' | 'sight'>) {
  return (
    <Layer listening={false}>
      <Shape perfectDrawEnabled={false} listening={false} sceneFunc={({ _context }) => paint(_context as CanvasRenderingContext2D, drawing, sight)} />
    </Layer>
  )
})
