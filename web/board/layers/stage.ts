/**
 * Three canvas layers over each other: the fabric; seam numbers and marks; and what the hand drags. Each is a single shape that is redrawn by itself.
 *
 * So a drag redraws only the topmost, however much fabric lies under it.
 */
import { Layer } from 'konva/lib/Layer.js'
import { Shape } from 'konva/lib/Shape.js'
import { Stage } from 'konva/lib/Stage.js'
import type { Point } from '../../document/shapes.ts'

export type CanvasPen = CanvasRenderingContext2D
type Draw = (pen: CanvasPen) => void

export interface CanvasLayer {
  /** Draws in the next frame, and again whenever the size of the board changes. */
  readonly show: (draw: Draw) => void
  /** The canvas as it is now, and how many of its pixels make one of the page's. */
  readonly canvas: () => { readonly element: HTMLCanvasElement; readonly ratio: number }
}

export interface CanvasLayers {
  readonly fabric: CanvasLayer
  readonly marks: CanvasLayer
  readonly drag: CanvasLayer
  readonly resize: (size: Point) => void
  readonly close: () => void
}

export function createLayers(container: HTMLDivElement): CanvasLayers {
  const stage = new Stage({ container, width: 1, height: 1, listening: false })
  return {
    fabric: createLayer(stage),
    marks: createLayer(stage),
    drag: createLayer(stage),
    resize: ([width, height]) => {
      stage.size({ width, height })
    },
    close: () => {
      stage.destroy()
    },
  }
}

function createLayer(stage: Stage): CanvasLayer {
  const layer = new Layer({ listening: false })
  let shown: Draw = () => {}
  layer.add(new Shape({ perfectDrawEnabled: false, listening: false, sceneFunc: ({ _context }) => shown(_context as CanvasPen) }))
  stage.add(layer)
  return {
    show: (draw) => {
      shown = draw
      layer.batchDraw()
    },
    canvas: () => ({ element: layer.getNativeCanvasElement(), ratio: layer.getCanvas().getPixelRatio() }),
  }
}
