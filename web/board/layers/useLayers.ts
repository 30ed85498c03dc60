/** The board's canvas layers in the page: made once, and redrawn when what they show changes. */
import { type RefObject, useEffect, useLayoutEffect, useMemo, useRef } from 'react'
import type { Block, Findings, Layered } from '../../../geometry/index.ts'
import type { Preview } from '../../document/preview.ts'
import type { Point } from '../../document/shapes.ts'
import { useStore, type ViewState } from '../../document/store.ts'
import { useDecodedPhotos } from '../../drawing/fabricPattern.ts'
import { paint } from '../../drawing/paint.ts'
import { createTileCache } from '../../drawing/tiles.ts'
import { useInk } from '../../drawing/useInk.ts'
import { drawPreview } from '../../views/fixPreview.ts'
import { drawNestingChanges } from '../../views/nestingChanges.ts'
import { useNestingChanges } from '../../views/useNestingChanges.ts'
import { useWrongSide } from '../../views/useWrongSide.ts'
import { wholeFrame } from '../boardFrame.ts'
import type { Frame } from '../viewport.ts'
import { type BitmapCache, createBitmapCache } from './bitmapCache.ts'
import { fabricPainting } from './fabricLayer.ts'
import { drawMarks, type MarksScene } from './marksLayer.ts'
import { seamsTiedTo } from './pointedFinding.ts'
import { type CanvasLayers, createLayers } from './stage.ts'
import { useFaultOutlines } from './useFaultOutlines.ts'

/** The block on the board, or with a fix in it while that is tried, and how it is looked at. */
export interface ShownBlock {
  readonly block: Block
  readonly report: Findings | null
  readonly preview: Preview | null
  readonly view: ViewState
}

export interface BoardLayers {
  readonly canvas: CanvasLayers
  readonly fabric: BitmapCache
}

export function useLayers(container: RefObject<HTMLDivElement | null>, { block, view }: ShownBlock, size: Point): RefObject<BoardLayers | null> {
  const layers = useRef<BoardLayers | null>(null)
  const shown = useRef({ block, view })
  shown.current = { block, view }
  useLayoutEffect(() => {
    if (container.current === null) return
    const canvas = createLayers(container.current)
    const fabric = createBitmapCache(canvas.fabric, (pixels) => wholeFrame(shown.current.block, shown.current.view, pixels))
    layers.current = { canvas, fabric }
    return () => {
      fabric.close()
      canvas.close()
    }
  }, [container])
  useLayoutEffect(() => layers.current?.canvas.resize(size), [size])
  return layers
}

const NO_CELLS: Layered['cells'] = []

/** Draws the fabric; gives back whether the wrong side is shown as it is pressed. */
export function useFabricLayer(layers: RefObject<BoardLayers | null>, { block, report, view }: ShownBlock, frame: Frame, size: Point): boolean {
  const { mode } = view
  const { ink, paper } = useInk()
  const tiles = useMemo(createTileCache, [])
  const layered = useStore((state) => (state.layers?.block === block ? state.layers.layered : null))
  const stitching = useStore((state) => (state.stitching?.block === block ? state.stitching : null))
  const wrongSide = useWrongSide(block, mode === 'wrong')
  const cells = layered?.cells ?? NO_CELLS
  const scene = useMemo(
    () => ({ block, report, mode, cells, stitching, wrongSide, ink, paper }),
    [block, report, mode, cells, stitching, wrongSide, ink, paper],
  )
  const photos = useDecodedPhotos()
  // biome-ignore lint/correctness/useExhaustiveDependencies: a photograph that has just been decoded has to be drawn
  const painting = useMemo(() => fabricPainting(scene, tiles(block)), [scene, tiles, block, photos])
  useEffect(() => layers.current?.fabric.show(painting, frame, size), [layers, painting, frame, size])
  return wrongSide !== null
}

/** Draws seam numbers, marks and faults, what a fix would change, and what the last edit changed. */
export function useMarksLayer(layers: RefObject<BoardLayers | null>, { block, report, preview, view }: ShownBlock, scene: MarksScene): void {
  const faults = useFaultOutlines(report, block.grid.columns, block.grid.rows)
  const changes = useNestingChanges()
  const tied = useMemo(() => view.pointedLines ?? seamsTiedTo(view.finding, report), [view.pointedLines, view.finding, report])
  useEffect(() => {
    const { frame, ink, paper } = scene
    const context = { scale: frame.scale, toPixels: frame.toPixels, ink, paper }
    layers.current?.canvas.marks.show((pen) => {
      if (preview !== null) paint(pen, drawPreview(preview), context)
      drawMarks(pen, scene, faults, tied)
      if (preview === null && changes?.sewn === true) paint(pen, drawNestingChanges(changes.changes), context)
    })
  }, [layers, scene, faults, tied, preview, changes])
}
