/**
 * Three sheets of canvas over each other: the cloth; numbers and marks; what the hand holds. Each is drawn anew by itself.
 *
 * So a drag draws only the topmost, however much cloth lies under it.
 */
import { SceneCanvas } from 'konva/lib/Canvas.js'
import type { Spot } from './shapes.ts'

export type Pen = CanvasRenderingContext2D
export type Draw = (pen: Pen) => void

export interface Sheet {
  /** Draws in the next frame, and whenever the board's size changes. */
  readonly show: (draw: Draw) => void
  /** What is on it now, and how many of its pixels make one of the page's. */
  readonly picture: () => { readonly canvas: HTMLCanvasElement; readonly ratio: number }
}

export interface Sheets {
  readonly cloth: Sheet
  readonly marks: Sheet
  readonly held: Sheet
  readonly resize: (size: Spot) => void
  readonly close: () => void
}

export function sheetsIn(container: HTMLDivElement): Sheets {
  const [cloth, marks, held] = [sheetIn(container), sheetIn(container), sheetIn(container)]
  const all = [cloth, marks, held]
  return {
    cloth,
    marks,
    held,
    resize: (size) => {
      for (const sheet of all) sheet.resize(size)
    },
    close: () => {
      for (const sheet of all) sheet.close()
    },
  }
}

interface OwnSheet extends Sheet {
  readonly resize: (size: Spot) => void
  readonly close: () => void
}

/** A canvas at the screen's own pixel ratio, drawn at most once a frame. */
function sheetIn(container: HTMLDivElement): OwnSheet {
  const sheet = new SceneCanvas({ width: 1, height: 1 })
  const canvas = sheet._canvas
  const pen = sheet.getContext()._context as Pen
  container.append(canvas)
  let drawn: Draw = () => {}
  let frame = 0
  const draw = (): void => {
    frame = 0
    const ratio = sheet.getPixelRatio()
    pen.setTransform(1, 0, 0, 1, 0, 0)
    pen.clearRect(0, 0, canvas.width, canvas.height)
    pen.setTransform(ratio, 0, 0, ratio, 0, 0)
    pen.save()
    drawn(pen)
    pen.restore()
  }
  const soon = (): void => {
    frame ||= requestAnimationFrame(draw)
  }
  return {
    show: (next) => {
      drawn = next
      soon()
    },
    resize: ([width, height]) => {
      // A new size empties the canvas: what lay on it is there again before the eye sees it gone.
      sheet.setSize(width, height)
      draw()
    },
    close: () => {
      cancelAnimationFrame(frame)
      canvas.remove()
    },
    picture: () => ({ canvas, ratio: sheet.getPixelRatio() }),
  }
}
