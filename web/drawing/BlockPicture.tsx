/**
 * A small picture of a block or quilt, drawn when it comes into view. Of a long list only the pictures drawn last stay in memory.
 *
 * In      how to load the block, and a text that changes whenever the block does.
 * Out     a square canvas with the block in the middle. It is hidden from screen readers, because the name stands beside it.
 */
import { useEffect, useRef } from 'react'
import type { Block } from '../../geometry/index.ts'
import { paintBlock } from './blockPainting.ts'
import { useDecodedPhotos } from './fabricPattern.ts'
import { type Doc, isQuilt } from '../document/document.ts'
import { bordersAround } from '../document/shapes.ts'

interface Props {
  readonly load: () => Promise<Doc | null>
  readonly stamp: string
  /** Width and height, in CSS pixels. */
  readonly side: number
}

export function BlockPicture({ load, stamp, side }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const loading = useRef(load)
  loading.current = load
  const decoded = useDecodedPhotos()
  // biome-ignore lint/correctness/useExhaustiveDependencies: the stamp changes with the block, and a decoded photograph has to be painted
  useEffect(() => {
    const paper = canvas.current
    if (paper === null) return
    let gone = false
    const show = async (doc: Doc | null): Promise<void> => {
      if (doc === null || gone) return
      if (isQuilt(doc)) (await import('./quiltPainting.ts')).drawQuilt(paper, doc, side)
      else draw(paper, doc, side)
      remember(paper, () => seen.observe(paper))
    }
    const seen = new IntersectionObserver(([entry]) => {
      if (entry?.isIntersecting !== true) return
      seen.disconnect()
      // A block that cannot be read or drawn has no picture. Opening it says why.
      loading
        .current()
        .then(show)
        .catch(() => {})
    })
    seen.observe(paper)
    return () => {
      gone = true
      seen.disconnect()
      drawn.delete(paper)
    }
  }, [stamp, side, decoded])
  return (
    <span className="blockpicture" style={{ width: side, height: side }} aria-hidden="true">
      <canvas ref={canvas} />
    </span>
  )
}

/** Far more than are in view at once. */
const MOST_DRAWN = 400
/** The pictures in memory, the oldest first, each with what to do when it is dropped. */
const drawn = new Map<HTMLCanvasElement, () => void>()

function remember(canvas: HTMLCanvasElement, onDrop: () => void): void {
  drawn.delete(canvas)
  drawn.set(canvas, onDrop)
  const [oldest] = drawn
  if (drawn.size <= MOST_DRAWN || oldest === undefined) return
  drawn.delete(oldest[0])
  oldest[0].width = 0
  oldest[1]()
}

function draw(canvas: HTMLCanvasElement, block: Block, side: number): void {
  const size = Math.round(side * Math.min(3, window.devicePixelRatio || 1))
  canvas.width = size
  canvas.height = size
  const { columns, rows } = block.grid
  const scale = size / (Math.max(columns, rows) + 2 * bordersAround(block))
  paintBlock(canvas.getContext('2d') as CanvasRenderingContext2D, block, scale, [(size - columns * scale) / 2, (size - rows * scale) / 2])
}
