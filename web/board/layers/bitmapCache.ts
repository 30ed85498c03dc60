/**
 * Keeps panning and zooming smooth over a block that takes long to draw.
 *
 * A light painting is drawn in full for every frame. A heavy one is moved and stretched as a bitmap while the gesture lasts, and drawn sharp as soon as it
 * rests; where the bitmap ends, an older one of the whole block shows through.
 */
import type { Point } from '../../document/shapes.ts'
import type { Frame } from '../viewport.ts'
import type { CanvasLayer, CanvasPen } from './stage.ts'

/** Draws what is under the hand, in a frame of so many pixels. */
export interface Painting {
  readonly paint: (pen: CanvasPen, frame: Frame, size: Point) => void
  /** What a drawing costs: about how many corners are in sight. */
  readonly cost: (frame: Frame, size: Point) => number
}

interface Bitmap {
  readonly canvas: HTMLCanvasElement
  readonly frame: Frame
  /** Pixels of the bitmap to one of the page. */
  readonly ratio: number
}

/** Corners that can be drawn in every frame and leave time for everything else. */
const LIGHT = 8_000
/** Milliseconds of rest before the block is drawn sharp. */
const REST = 60
/** Milliseconds of rest before the bitmap of the whole block is made. */
const LONG_REST = 500
/** Pixels along the longer side of that bitmap. */
const WHOLE_BLOCK_PIXELS = 1400

export interface BitmapCache {
  readonly show: (painting: Painting, frame: Frame, size: Point) => void
  readonly close: () => void
}

/** `wholeFrame` gives a frame with the whole block in so many pixels, and its size. */
export function createBitmapCache(layer: CanvasLayer, wholeFrame: (pixels: number) => { readonly frame: Frame; readonly size: Point }): BitmapCache {
  let sharp: { readonly painting: Painting; readonly frame: Frame; readonly size: Point } | null = null
  let bitmap: Bitmap | null = null
  let whole: (Bitmap & { readonly painting: Painting }) | null = null
  let rest: ReturnType<typeof setTimeout> | undefined
  let longRest: ReturnType<typeof setTimeout> | undefined

  function drawSharp(painting: Painting, frame: Frame, size: Point): void {
    bitmap = null
    sharp = { painting, frame, size }
    layer.show((pen) => {
      painting.paint(pen, frame, size)
      layer.canvas().element.dataset.drawn = 'sharp'
    })
    clearTimeout(longRest)
    if (whole?.painting === painting) return
    const all = wholeFrame(WHOLE_BLOCK_PIXELS)
    if (painting.cost(all.frame, all.size) > LIGHT) longRest = setTimeout(() => keepWhole(painting), LONG_REST)
  }

  function keepWhole(painting: Painting): void {
    const { frame, size } = wholeFrame(WHOLE_BLOCK_PIXELS)
    const canvas = document.createElement('canvas')
    canvas.width = Math.ceil(size[0])
    canvas.height = Math.ceil(size[1])
    const pen = canvas.getContext('2d')
    if (pen === null) return
    painting.paint(pen, frame, size)
    whole = { canvas, frame, ratio: 1, painting }
  }

  function drawStretched(painting: Painting, frame: Frame, size: Point): void {
    bitmap ??= sharp === null ? null : copyOf(layer, sharp.frame)
    const bitmaps = [whole?.painting === painting ? whole : null, bitmap]
    layer.show((pen) => {
      for (const one of bitmaps) if (one !== null) stretch(pen, one, frame)
      layer.canvas().element.dataset.drawn = 'stretched'
    })
    clearTimeout(rest)
    rest = setTimeout(() => drawSharp(painting, frame, size), REST)
  }

  return {
    show: (painting, frame, size) => {
      clearTimeout(rest)
      const onlyMoved = sharp !== null && sharp.painting === painting && sharp.size === size && sharp.frame !== frame
      if (onlyMoved && painting.cost(frame, size) > LIGHT) drawStretched(painting, frame, size)
      else drawSharp(painting, frame, size)
    },
    close: () => {
      clearTimeout(rest)
      clearTimeout(longRest)
    },
  }
}

function copyOf(layer: CanvasLayer, frame: Frame): Bitmap {
  const { element, ratio } = layer.canvas()
  const canvas = document.createElement('canvas')
  canvas.width = element.width
  canvas.height = element.height
  canvas.getContext('2d')?.drawImage(element, 0, 0)
  return { canvas, frame, ratio }
}

/** Lays a bitmap made in one frame where its cells lie in another. */
function stretch(pen: CanvasPen, { canvas, frame: from, ratio }: Bitmap, to: Frame): void {
  const grown = to.scale / from.scale
  const [ox, oy] = from.toPixels(0, 0)
  const [nx, ny] = to.toPixels(0, 0)
  pen.imageSmoothingQuality = 'low'
  pen.drawImage(canvas, nx - ox * grown, ny - oy * grown, (canvas.width / ratio) * grown, (canvas.height / ratio) * grown)
}
