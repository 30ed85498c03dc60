/** Every way of looking at a block, written down as text and compared with what was looked at and found right. */
import { recorder } from './recorder.ts'
import { describe, expect, it } from 'vitest'
import {
  type Block,
  layered,
  pressSeams,
  quiltingRoute,
  report,
  routeLines,
  type SettingRequest,
  settingReport,
  wrongSide,
} from '../../../geometry/index.ts'
import { fabricPainting } from '../../../web/board/layers/fabricLayer.ts'
import { drawMarks } from '../../../web/board/layers/marksLayer.ts'
import { type Frame, frameOf } from '../../../web/board/viewport.ts'
import { bordersAround, patchShapes } from '../../../web/document/shapes.ts'
import { createTileCache } from '../../../web/drawing/tiles.ts'
import { assembly } from '../../../web/views/assembly.ts'
import { inSteps, type SewingInSteps } from '../../../web/views/useSewingSteps.ts'
import type { ViewDrawing } from '../../../web/drawing/viewDrawing.ts'
import { paint } from '../../../web/drawing/paint.ts'
import { settingView } from '../../../web/views/repeatedBlocks.ts'
import { applyEdit, newHistory } from '../../../web/document/history.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'
import { lantern } from '../../../web/document/starters/lantern.ts'
import type { ViewMode } from '../../../web/document/store.ts'
import { star } from '../../help.ts'
import { marksPerPlace } from '../../../web/drawing/marks.ts'
import { paperBoat } from './paperBoat.ts'

const INKS = { ink: '#2b2320', paper: '#fffaf2' }
const SIZE = [800, 800] as const

const frameFor = (block: Block, mirrored: boolean): Frame =>
  frameOf({ columns: block.grid.columns, rows: block.grid.rows, around: bordersAround(block) }, ...SIZE, 1, [0, 0], mirrored)

/** The cloth as the board paints it. */
function lookedAt(block: Block, mode: ViewMode): string {
  const frame = frameFor(block, mode === 'wrong')
  const { findings, cells } = layered(block)
  const routes = mode === 'quilting' ? routeLines(quiltingRoute(block)) : []
  const stitching = mode === 'quilting' ? { block, routes, fills: [], part: 1 } : null
  const scene = { block, report: findings, mode, cells, stitching, wrongSide: mode === 'wrong' ? wrongSide(block) : null, ...INKS }
  const { pen, lines } = recorder(frame)
  fabricPainting(scene, createTileCache()(block)).paint(pen, frame, SIZE)
  return lines()
}

function marked(block: Block, pressing = false): string {
  const frame = frameFor(block, false)
  const { pen, lines } = recorder(frame)
  drawMarks(
    pen,
    { report: layered(block).findings, marks: true, numbers: true, pressing, seam: pressing ? 'j:1' : null, frame, size: SIZE, ...INKS },
    [],
    [],
  )
  return lines()
}

/** A drawing of a view of its own, in its cells. */
function drawn(drawing: ViewDrawing): string {
  const frame = frameOf({ columns: 8, rows: 8, around: 0 }, ...SIZE, 1, [0, 0], false)
  const { pen, lines } = recorder(frame)
  paint(pen, drawing, { scale: frame.scale, toPixels: frame.toPixels, ...INKS })
  return lines()
}

function sewn({ report: said, block, steps, letters }: SewingInSteps, step: number, part: number): string {
  return drawn(assembly(said, block, { steps: steps.map(({ places }) => ({ joins: places })), step, part }, letters).drawing)
}

function among(block: Block, ask: SettingRequest): string {
  const answer = settingReport(block, ask)
  if (!answer.ok) throw new Error(answer.message.code)
  const { columns, rows, places, joins, meetings } = answer.value
  return drawn(settingView(block, patchShapes(layered(block).findings.patches), { columns, rows, copies: places, joins, meetings }).drawing)
}

const BLOCKS: readonly (readonly [string, Block])[] = [
  ['star', eveningStar],
  ['lantern', lantern],
  ['boat', paperBoat],
]

describe.each(BLOCKS)('%s', (name, block) => {
  const file = (view: string): string => `pictures/${name}/${view}.txt`
  const known = layered(block)
  const square = block.grid.columns === block.grid.rows

  it.each(['cloth', 'value', 'wrong', 'layers', 'quilting'] as const)('looked at: %s', async (mode) => {
    await expect(lookedAt(block, mode)).toMatchFileSnapshot(file(mode))
  })

  it('numbers and marks', async () => {
    await expect(marked(block)).toMatchFileSnapshot(file('numbers'))
  })

  it('pressing, the first seam selected, the second pressed open by the maker', async () => {
    const own = pressSeams(known.findings, new Map([['j:2', 'open']]))
    await expect(marked(applyEdit(newHistory(block), own).block, true)).toMatchFileSnapshot(file('pressing'))
  })

  it('sewing order: nothing joined yet, units coming together, and all joined', async () => {
    const sewing = inSteps(report(block), block)
    await expect(sewn(sewing, 0, 1)).toMatchFileSnapshot(file('sewing-start'))
    await expect(sewn(sewing, 1, 0.4)).toMatchFileSnapshot(file('sewing-units'))
    await expect(sewn(sewing, sewing.steps.length, 1)).toMatchFileSnapshot(file('sewing-end'))
  })

  it('among copies', async () => {
    await expect(among(block, { columns: 2, rows: 2, turn: square ? 'alternate' : 'none', press: 'same' })).toMatchFileSnapshot(file('setting'))
  })
})

describe('marks of copies side by side', () => {
  /** How many clashing crossings the marks of a drawing stand for. */
  const clashesShown = (drawing: ViewDrawing): number =>
    drawing
      .filter(({ type, verdict }) => type === 'mark' && verdict === 'clashes')
      .reduce((sum, { points = [], text = '1' }) => sum + Number(text) * points.length, 0)

  it('show every crossing that the sentence counts: two at one place are a mark with a 2', () => {
    // Geese made four at a time, beside squares: where copies meet, a straight seam and a wing's seam end at one point.
    const wings = ['b', 'c'] as const
    const block = star([wings, wings, wings, wings])
    const counts = (['same', 'alternate'] as const).map((press) => {
      const answer = settingReport(block, { columns: 3, rows: 3, turn: 'none', press })
      if (!answer.ok) throw new Error(answer.message.code)
      const { columns, rows, places, joins, meetings, clashes } = answer.value
      const { drawing } = settingView(block, patchShapes(layered(block).findings.patches), { columns, rows, copies: places, joins, meetings })
      expect(clashesShown(drawing)).toBe(clashes.between)
      return clashes.between
    })
    expect(counts[1]).toBeLessThan(counts[0] as number)
  })
})

describe('marks of one block', () => {
  it('stand once for each place and verdict, with the number of crossings that clash there', () => {
    const at = [2, 1] as const
    const meetings = (['clashes', 'nests', 'clashes', 'nests'] as const).map((verdict) => ({ at, verdict }))
    expect(marksPerPlace([...meetings, { at: [0, 1], verdict: 'clashes' }])).toEqual([
      { at, verdict: 'clashes', count: 2 },
      { at, verdict: 'nests', count: 1 },
      { at: [0, 1], verdict: 'clashes', count: 1 },
    ])
  })
})
