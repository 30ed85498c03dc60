/** A drawing on a canvas of its own, scaled to fit its place. Elements over it get the scale and the origin, to find the cells. */
import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react'
import { type Block, cellOf, type Fabric, toNumber } from '../../geometry/index.ts'
import { canvasFill, useDecodedPhotos } from './fabricPattern.ts'
import type { Point } from '../document/shapes.ts'
import { useInk } from './useInk.ts'
import { DrawingCanvas } from './DrawingCanvas.tsx'
import type { ViewDrawing } from './viewDrawing.ts'
import type { PaintContext } from './paint.ts'

interface Props {
  /** The block whose fabrics are used. */
  readonly block: Block
  readonly drawing: ViewDrawing
  /** Left, top, right, bottom, in cells. */
  readonly reach: readonly [number, number, number, number]
  /** The accessible name. */
  readonly label: string
  readonly className: string
  /** Pixels left free around it. */
  readonly margin: number
  readonly over?: (scale: number, origin: Point) => ReactNode
}

export function FittedDrawing({ block, drawing, reach: [x0, y0, x1, y1], label, className, margin, over }: Props) {
  const place = useRef<HTMLDivElement>(null)
  const [[width, height], setSize] = useState<Point>([0, 0])
  const { ink, paper } = useInk()
  const scale = Math.max(1, Math.min((width - 2 * margin) / (x1 - x0), (height - 2 * margin) / (y1 - y0)))
  const [left, top] = [width / 2 - ((x0 + x1) / 2) * scale, height / 2 - ((y0 + y1) / 2) * scale]
  useEffect(() => {
    if (place.current === null) return
    const observer = new ResizeObserver(([entry]) => {
      if (entry !== undefined) setSize([entry.contentRect.width, entry.contentRect.height])
    })
    observer.observe(place.current)
    return () => observer.disconnect()
  }, [])
  const photos = useDecodedPhotos()
  // biome-ignore lint/correctness/useExhaustiveDependencies: when a photograph has been decoded, the drawing is painted again
  const context = useMemo((): PaintContext => {
    const cellScale = { cell: toNumber(cellOf(block)), pixels: scale * (window.devicePixelRatio || 1) }
    const fabrics = new Map(block.fabrics.map((fabric) => [fabric.id, fabric]))
    return {
      scale,
      toPixels: (x, y) => [left + x * scale, top + y * scale],
      ink,
      paper,
      fillOf: (fabric, turn) => canvasFill(fabrics.get(fabric) as Fabric, 'cloth', turn, cellScale),
    }
  }, [block, scale, left, top, ink, paper, photos])
  return (
    <div ref={place} className={className}>
      <div role="img" aria-label={label}>
        {width > 0 && <DrawingCanvas drawing={drawing} context={context} size={[width, height]} />}
      </div>
      {width > 0 && over?.(scale, [left, top])}
    </div>
  )
}
