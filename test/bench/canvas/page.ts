/**
 * The measured page: the app's own cloth beside a bare canvas that fills one path a colour, and beside one konva node a patch.
 *
 * Each run ends by reading a pixel, so that the browser has really drawn.
 */
import { Layer } from 'konva/lib/Layer.js'
import { Line } from 'konva/lib/shapes/Line.js'
import { Stage } from 'konva/lib/Stage.js'
import type { Block } from '../../../geometry/index.ts'
import { fabricPainting, drawPatches } from '../../../web/board/layers/fabricLayer.ts'
import { pieceAt } from '../../../web/board/hitTest.ts'
import { type Frame, frameOf } from '../../../web/board/viewport.ts'
import { unitShapes, type Point } from '../../../web/document/shapes.ts'
import { tracePolygon, createTileCache } from '../../../web/drawing/tiles.ts'
import { manyUnits } from '../blocks.ts'

const SIZE: Point = [800, 640]

export interface Measured {
  readonly patches: number
  /** Milliseconds, the least of several runs: a full redraw at another zoom, and from the block to the first picture. */
  readonly ours: Cost
  /** Of ours, the patches alone: without the grid's lines, the seams and the edge, which the bare canvas does not draw. */
  readonly patchesAlone: number
  readonly bare: Cost
  readonly nodes: Cost
  readonly pick: { readonly first: number; readonly middle: number; readonly most: number }
}

interface Cost {
  readonly redraw: number
  readonly opening: number
}

const middle = (times: readonly number[]): number => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] as number

/** What a run costs when nothing else is in its way. */
const least = (times: readonly number[]): number => Math.min(...times)

function timed(run: () => void): number {
  const start = performance.now()
  run()
  return performance.now() - start
}

function penOf(): CanvasRenderingContext2D {
  const canvas = document.createElement('canvas')
  canvas.width = SIZE[0]
  canvas.height = SIZE[1]
  document.body.replaceChildren(canvas)
  return canvas.getContext('2d') as CanvasRenderingContext2D
}

const settle = (pen: CanvasRenderingContext2D): void => {
  pen.getImageData(0, 0, 1, 1)
}

const frameAt = (n: number, zoom: number): Frame => frameOf({ columns: n, rows: n, around: 0 }, SIZE[0], SIZE[1], zoom, [0, 0], false)
/** All of the cloth in sight, at a zoom of its own each time. */
const ZOOMS = [1, 0.98, 0.96, 0.94, 0.92, 0.9, 0.88]

function ours(block: Block): Cost {
  const n = block.grid.columns
  const scene = { block, report: null, mode: 'cloth', stitching: null, cells: [], wrongSide: null, ink: '#2b2320', paper: '#fffaf2' } as const
  const openings = ZOOMS.map(() => {
    const pen = penOf()
    return timed(() => {
      fabricPainting(scene, createTileCache()(block)).paint(pen, frameAt(n, 1), SIZE)
      settle(pen)
    })
  })
  const painting = fabricPainting(scene, createTileCache()(block))
  const pen = penOf()
  const redraws = ZOOMS.map((zoom) =>
    timed(() => {
      pen.clearRect(0, 0, ...SIZE)
      painting.paint(pen, frameAt(n, zoom), SIZE)
      settle(pen)
    }),
  )
  return { redraw: least(redraws), opening: least(openings) }
}

function patchesAlone(block: Block): number {
  const n = block.grid.columns
  const { tiles } = createTileCache()(block)
  const pen = penOf()
  return least(
    ZOOMS.map((zoom) =>
      timed(() => {
        const frame = frameAt(n, zoom)
        pen.clearRect(0, 0, ...SIZE)
        pen.save()
        pen.transform(...frame.matrix)
        drawPatches(pen, { block, mode: 'cloth' }, tiles, frame)
        pen.restore()
        settle(pen)
      }),
    ),
  )
}

/** What a page would do that knows nothing but the outlines: one path a colour, filled. */
function bare(block: Block): Cost {
  const n = block.grid.columns
  const colours = new Map(block.fabrics.map(({ id, colour }) => [id, colour]))
  const outlines = block.units.flatMap((unit) => unitShapes(unit)).map(({ fabric, corners }) => ({ colour: colours.get(fabric) as string, corners }))
  const pathsOf = (): Map<string, Path2D> => {
    const paths = new Map<string, Path2D>()
    for (const { colour, corners } of outlines) {
      const path = paths.get(colour) ?? new Path2D()
      tracePolygon(path, corners)
      paths.set(colour, path)
    }
    return paths
  }
  const draw = (pen: CanvasRenderingContext2D, paths: Map<string, Path2D>, zoom: number): void => {
    pen.clearRect(0, 0, ...SIZE)
    pen.save()
    pen.transform(...frameAt(n, zoom).matrix)
    for (const [colour, path] of paths) {
      pen.fillStyle = colour
      pen.fill(path)
    }
    pen.restore()
    settle(pen)
  }
  const openings = ZOOMS.map(() => {
    const pen = penOf()
    return timed(() => draw(pen, pathsOf(), 1))
  })
  const paths = pathsOf()
  const pen = penOf()
  return { redraw: least(ZOOMS.map((zoom) => timed(() => draw(pen, paths, zoom)))), opening: least(openings) }
}

/** As konva's own pages show it: a node a patch that can be pressed, so that it is drawn a second time to be found. */
function nodes(block: Block): Cost {
  const n = block.grid.columns
  const colours = new Map(block.fabrics.map(({ id, colour }) => [id, colour]))
  const container = document.createElement('div')
  document.body.replaceChildren(container)
  let layer = new Layer()
  const stage = new Stage({ container, width: SIZE[0], height: SIZE[1] })
  const look = (zoom: number): void => {
    const { scale, matrix } = frameAt(n, zoom)
    layer.scale({ x: scale, y: scale })
    layer.position({ x: matrix[4], y: matrix[5] })
    layer.draw()
    settle(layer.getContext()._context as CanvasRenderingContext2D)
  }
  const opening = timed(() => {
    layer = new Layer()
    for (const unit of block.units)
      for (const { fabric, corners } of unitShapes(unit))
        layer.add(new Line({ points: corners.flat(), closed: true, fill: colours.get(fabric) ?? '' }))
    stage.add(layer)
    look(1)
  })
  const redraw = least(ZOOMS.slice(0, 3).map((zoom) => timed(() => look(zoom))))
  stage.destroy()
  return { redraw, opening }
}

function picks(block: Block): Measured['pick'] {
  const n = block.grid.columns
  const first = timed(() => pieceAt(block, [n / 3, n / 3]))
  const times = Array.from({ length: 1000 }, (_, turn) => timed(() => pieceAt(block, [((turn * 37.3) % n) + 0.01, ((turn * 91.7) % n) + 0.02])))
  return { first, middle: middle(times), most: Math.max(...times) }
}

export function measure(n: number): Measured {
  const block = manyUnits(n)
  const patches = block.units.reduce((sum, { fabrics }) => sum + Object.keys(fabrics).length, 0)
  // What is seen often is compiled; the first runs are not what a maker waits for.
  ours(manyUnits(10))
  bare(manyUnits(10))
  return { patches, ours: ours(block), patchesAlone: patchesAlone(block), bare: bare(block), nodes: nodes(block), pick: picks(block) }
}

Object.assign(window, { measure })
