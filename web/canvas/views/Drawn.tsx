/** A drawing on a canvas of its own, as large as its place allows; what lies over it is told where its cells lie. */
import { type ReactNode, useEffect, useRef, useState } from 'react'
import { type Block, cellOf, type Fabric, toNumber } from '../../../geometry/index.ts'
import { fillOf, usePrints } from '../prints.ts'
import type { Spot } from '../shapes.ts'
import { useInk } from '../useInk.ts'
import type { Drawing } from './drawing.ts'
import { paint } from './paint.ts'

interface Props {
  /** Whose fabrics it is drawn in. */
  readonly block: Block
  readonly drawing: Drawing
  /** Left, top, right, bottom, in cells. */
  readonly reach: readonly [number, number, number, number]
  /** What a screen reader says of it. */
  readonly label: string
  readonly className: string
  /** Pixels left round it. */
  readonly margin: number
  readonly over?: (scale: number, origin: Spot) => ReactNode
}

export function Drawn({ block, drawing, reach: [x0, y0, x1, y1], label, className, margin, over }: Props) {
  const place = useRef<HTMLDivElement>(null)
  const canvas = useRef<HTMLCanvasElement>(null)
  const [[width, height], setSize] = useState<Spot>([0, 0])
  const { ink, paper } = useInk()
  usePrints()
  const scale = Math.max(1, Math.min((width - 2 * margin) / (x1 - x0), (height - 2 * margin) / (y1 - y0)))
  const origin: Spot = [width / 2 - ((x0 + x1) / 2) * scale, height / 2 - ((y0 + y1) / 2) * scale]
  useEffect(() => {
    if (place.current === null) return
    const watch = new ResizeObserver(([entry]) => {
      if (entry !== undefined) setSize([entry.contentRect.width, entry.contentRect.height])
    })
    watch.observe(place.current)
    return () => watch.disconnect()
  }, [])
  useEffect(() => {
    const pen = canvas.current?.getContext('2d')
    if (canvas.current === null || pen == null || width === 0) return
    const dense = window.devicePixelRatio || 1
    canvas.current.width = Math.round(width * dense)
    canvas.current.height = Math.round(height * dense)
    pen.setTransform(dense, 0, 0, dense, 0, 0)
    const seen = { cell: toNumber(cellOf(block)), pixels: scale * dense }
    const fabrics = new Map(block.fabrics.map((fabric) => [fabric.id, fabric]))
    paint(pen, drawing, {
      scale,
      toPixels: (x, y) => [origin[0] + x * scale, origin[1] + y * scale],
      ink,
      paper,
      fillOf: (fabric, turn) => fillOf(fabrics.get(fabric) as Fabric, 'cloth', turn, seen),
    })
  })
  return (
    <div ref={place} className={className}>
      <canvas ref={canvas} role="img" aria-label={label} style={{ width, height }} />
      {width > 0 && over?.(scale, origin)}
    </div>
  )
}
