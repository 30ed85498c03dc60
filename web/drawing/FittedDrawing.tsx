/** A drawing on a canvas of its own, as large as its place allows; what lies over it is told where its cells lie. */
import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react'
import { type Block, cellOf, type Fabric, toNumber } from '../../geometry/index.ts'
import { canvasFill, useDecodedPhotos } from './fabricPattern.ts'
import type { Point } from '../document/shapes.ts'
import { useInk } from './useInk.ts'
import { DrawingCanvas } from './DrawingCanvas.tsx'
import type { ViewDrawing } from './viewDrawing.ts'
import type { PaintContext } from './paint.ts'

interface Props {
  /** Whose fabrics it is drawn in. */
  readonly block: Block
  readonly drawing: ViewDrawing
  /** Left, top, right, bottom, in cells. */
  readonly reach: readonly [number, number, number, number]
  /** What a screen reader says of it. */
  readonly label: string
  readonly className: string
  /** Pixels left round it. */
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
    const watch = new ResizeObserver(([entry]) => {
      if (entry !== undefined) setSize([entry.contentRect.width, entry.contentRect.height])
    })
    watch.observe(place.current)
    return () => watch.disconnect()
  }, [])
  const prints = useDecodedPhotos()
  // biome-ignore lint/correctness/useExhaustiveDependencies: a photograph that has just been decoded is drawn anew
  const sight = useMemo((): PaintContext => {
    const seen = { cell: toNumber(cellOf(block)), pixels: scale * (window.devicePixelRatio || 1) }
    const fabrics = new Map(block.fabrics.map((fabric) => [fabric.id, fabric]))
    return {
      scale,
      toPixels: (x, y) => [left + x * scale, top + y * scale],
      ink,
      paper,
      fillOf: (fabric, turn) => canvasFill(fabrics.get(fabric) as Fabric, 'cloth', turn, seen),
    }
  }, [block, scale, left, top, ink, paper, prints])
  return (
    <div ref={place} className={className}>
      <div role="img" aria-label={label}>
        {width > 0 && <DrawingCanvas drawing={drawing} sight={sight} size={[width, height]} />}
      </div>
      {width > 0 && over?.(scale, [left, top])}
    </div>
  )
}
