/** The size of an element, in pixels, as it changes; at least 200 each way, so that there is always something to draw on. */
import { type RefObject, useEffect, useState } from 'react'
import type { Point } from '../document/shapes.ts'

const LEAST = 200

export function useElementSize(element: RefObject<HTMLElement | null>, before: Point): Point {
  const [size, setSize] = useState(before)
  useEffect(() => {
    if (element.current === null) return
    const observer = new ResizeObserver(([entry]) => {
      if (entry === undefined) return
      const next: Point = [Math.max(LEAST, entry.contentRect.width), Math.max(LEAST, entry.contentRect.height)]
      setSize((last) => (last[0] === next[0] && last[1] === next[1] ? last : next))
    })
    observer.observe(element.current)
    return () => observer.disconnect()
  }, [element])
  return size
}
