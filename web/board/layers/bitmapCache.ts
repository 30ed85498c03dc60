/**
 * What lies still, shown while the maker pans and zooms.
 *
 * A light drawing is drawn anew for every frame. A heavy one is moved and stretched as a picture while the gesture lasts, and drawn sharp as soon as it
 * rests; where the picture ends, an older one of the whole block shows through.
 */
import type { Frame } from '../viewport.ts'
import type { Pen, Sheet } from './stage.ts'

/** Draws the still things in a frame of so many pixels. */
export interface Painting {
  readonly paint: (pen: Pen, frame: Frame, size: readonly [number, number]) => void
  /** Corners that it draws in a frame, about: what it costs. */
  readonly cost: (frame: Frame, size: readonly [number, number]) => number
}

interface Picture {
  readonly canvas: HTMLCanvasElement
  readonly frame: Frame
  /** Pixels of the picture to one of the page. */
  readonly ratio: number
}

/** Corners that can be drawn in a frame and leave time for all else. */
const LIGHT = 8_000
/** Milliseconds of rest before the cloth is drawn sharp. */
const REST = 60
/** Milliseconds of rest before the picture of the whole block is made. */
const LONG_REST = 500
/** Pixels along the longer side of that picture. */
const WHOLE = 1400

export interface Still {
  readonly show: (painting: Painting, frame: Frame, size: readonly [number, number]) => void
  readonly close: () => void
}

export function stillOn(sheet: Sheet, wholeFrame: (pixels: number) => { readonly frame: Frame; readonly size: readonly [number, number] }): Still {
  let shown: { readonly painting: Painting; readonly frame: Frame; readonly size: readonly [number, number] } | null = null
  let picture: Picture | null = null
  let whole: (Picture & { readonly painting: Painting }) | null = null
  let rest: ReturnType<typeof setTimeout> | undefined
  let longRest: ReturnType<typeof setTimeout> | undefined

  function sharp(painting: Painting, frame: Frame, size: readonly [number, number]): void {
    picture = null
    shown = { painting, frame, size }
    sheet.show((pen) => {
      painting.paint(pen, frame, size)
      sheet.picture().canvas.dataset.drawn = 'sharp'
    })
    clearTimeout(longRest)
    if (whole?.painting === painting) return
    const all = wholeFrame(WHOLE)
    if (painting.cost(all.frame, all.size) > LIGHT) longRest = setTimeout(() => keepWhole(painting), LONG_REST)
  }

  function keepWhole(painting: Painting): void {
    const { frame, size } = wholeFrame(WHOLE)
    const canvas = document.createElement('canvas')
    canvas.width = Math.ceil(size[0])
    canvas.height = Math.ceil(size[1])
    const pen = canvas.getContext('2d')
    if (pen === null) return
    painting.paint(pen, frame, size)
    whole = { canvas, frame, ratio: 1, painting }
  }

  function quick(painting: Painting, frame: Frame, size: readonly [number, number]): void {
    picture ??= shown === null ? null : copyOf(sheet, shown.frame)
    const pictures = [whole?.painting === painting ? whole : null, picture]
    sheet.show((pen) => {
      for (const one of pictures) if (one !== null) stretch(pen, one, frame)
      sheet.picture().canvas.dataset.drawn = 'stretched'
    })
    clearTimeout(rest)
    rest = setTimeout(() => sharp(painting, frame, size), REST)
  }

  return {
    show: (painting, frame, size) => {
      clearTimeout(rest)
      const onlyMoved = shown !== null && shown.painting === painting && shown.size === size && shown.frame !== frame
      if (onlyMoved && painting.cost(frame, size) > LIGHT) quick(painting, frame, size)
      else sharp(painting, frame, size)
    },
    close: () => {
      clearTimeout(rest)
      clearTimeout(longRest)
    },
  }
}

function copyOf(sheet: Sheet, frame: Frame): Picture {
  const { canvas: from, ratio } = sheet.picture()
  const canvas = document.createElement('canvas')
  canvas.width = from.width
  canvas.height = from.height
  canvas.getContext('2d')?.drawImage(from, 0, 0)
  return { canvas, frame, ratio }
}

/** A picture made in one frame, laid where its cells lie in another. */
function stretch(pen: Pen, { canvas, frame: from, ratio }: Picture, to: Frame): void {
  const grown = to.scale / from.scale
  const [ox, oy] = from.toPixels(0, 0)
  const [nx, ny] = to.toPixels(0, 0)
  pen.imageSmoothingQuality = 'low'
  pen.drawImage(canvas, nx - ox * grown, ny - oy * grown, (canvas.width / ratio) * grown, (canvas.height / ratio) * grown)
}
