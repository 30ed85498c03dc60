/**
 * Three sheets of canvas over each other: the cloth; numbers and marks; what the hand holds. Each is one shape, drawn anew by itself.
 *
 * So a drag draws only the topmost, however much cloth lies under it.
 */
import { Layer } from 'konva/lib/Layer.js'
import { Shape } from 'konva/lib/Shape.js'
import { Stage } from 'konva/lib/Stage.js'
import type { Point } from '../../document/shapes.ts'

export type Pen = CanvasRenderingContext2D
export type Draw = (pen: Pen) => void

export interface Sheet {
  /** Draws in the next frame, and whenever the board's size changes. */
  readonly show: (draw: Draw) => void
  /** Draws at once. */
  readonly showNow: (draw: Draw) => void
  /** What is on it now, and how many of its pixels make one of the page's. */
  readonly picture: () => { readonly canvas: HTMLCanvasElement; readonly ratio: number }
}

export interface Sheets {
  readonly cloth: Sheet
  readonly marks: Sheet
  readonly held: Sheet
  readonly resize: (size: Point) => void
  readonly close: () => void
}

export function sheetsIn(container: HTMLDivElement): Sheets {
  const stage = new Stage({ container, width: 1, height: 1, listening: false })
  return {
    cloth: sheetOn(stage),
    marks: sheetOn(stage),
    held: sheetOn(stage),
    resize: ([width, height]) => {
      stage.size({ width, height })
    },
    close: () => {
      stage.destroy()
    },
  }
}

function sheetOn(stage: Stage): Sheet {
  const layer = new Layer({ listening: false })
  let drawn: Draw = () => {}
  layer.add(new Shape({ perfectDrawEnabled: false, listening: false, sceneFunc: ({ _context }) => drawn(_context as Pen) }))
  stage.add(layer)
  return {
    show: (draw) => {
      drawn = draw
      layer.batchDraw()
    },
    showNow: (draw) => {
      drawn = draw
      layer.draw()
    },
    picture: () => ({ canvas: layer.getNativeCanvasElement(), ratio: layer.getCanvas().getPixelRatio() }),
  }
}
