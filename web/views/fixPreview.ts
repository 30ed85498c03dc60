/**
 * What a fix would change, before it is made.
 *
 * In      the block, and the edit that the fix would be.
 * Out     the block and findings as they would be, the seams that would be pressed another way, the units that would be turned or mirrored, and the
 *         number of clashes before and after.
 */
import { type Block, type Edit, type Findings, findings, type Unit } from '../../geometry/index.ts'
import { produce } from 'immer'
import { drawnSeams, patchShapes, rectOf, type Point, pointOf } from '../document/shapes.ts'
import { fabricParts } from '../drawing/fabricParts.ts'
import type { Preview } from '../document/preview.ts'
import { markParts } from './markParts.ts'
import type { ViewDrawing, DrawingPart } from '../drawing/viewDrawing.ts'

export function previewOf(before: Block, { change }: Edit): Preview {
  const report = findingsOnce(before)
  const block = produce(before, (draft) => {
    change(draft as Parameters<typeof change>[0])
  })
  const after = findings(block)
  const pressedNow = new Map(drawnSeams(report).map((line) => [seamKey(line.points), line.lies?.map(rounded).join() ?? 'open']))
  const pressed = drawnSeams(after).filter(({ points, lies }) => pressedNow.get(seamKey(points)) !== (lies?.map(rounded).join() ?? 'open'))
  const units = block.units.filter((unit, index) => unit !== before.units[index] && orientationOf(unit) !== orientationOf(before.units[index]))
  return {
    block,
    report: after,
    pressed: report.joins.length === 0 ? [] : pressed,
    units: units.map(({ id }) => id),
    clashes: [clashesOf(report), clashesOf(after)],
    sewn: [report.joins.length > 0, after.joins.length > 0],
  }
}

export function drawPreview({ block, pressed, units }: Preview): ViewDrawing {
  const changed = block.units.filter(({ id }) => units.includes(id)).map(rectOf)
  const outlines = changed.map(({ at: [x, y], size: [w, h] }): Point[] => [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ])
  return pressed.length + outlines.length === 0 ? [] : [{ type: 'changed', lines: pressed.map(({ points }) => points), outlines }]
}

/** The whole block as it would be: for where the board is out of sight. */
export function drawBlockPreview(preview: Preview): ViewDrawing {
  const pieces = patchShapes(preview.report.patches)
  const patches = pieces.map(({ fabric, unit, name, corners }) => ({ fabric, unit, name, outline: corners }))
  const arrows = preview.pressed.map(
    ({ middle, across, lies, join }): DrawingPart => ({
      type: 'press',
      points: [middle],
      toward: across,
      open: lies === null,
      asked: join.press.rule === 'asked',
    }),
  )
  const marks = markParts(
    preview.report.meetings.map(({ at, verdict }) => ({ at: pointOf(at), verdict })),
    ['nests', 'clashes'],
  )
  return [
    ...fabricParts(preview.block, patches),
    { type: 'edge', outlines: patches.map(({ outline }) => outline) },
    ...drawPreview(preview),
    ...arrows,
    ...marks,
  ]
}

/** Both sides of the comparison are computed the same way, so that nothing differs except by the edit. */
const known = new WeakMap<Block, Findings>()
function findingsOnce(block: Block): Findings {
  const report = known.get(block) ?? findings(block)
  known.set(block, report)
  return report
}

/** How a unit is turned and mirrored, as a key. */
const orientationOf = (unit: Unit | undefined): string =>
  unit === undefined || unit.kind === 'polygon' ? '' : `${unit.turn ?? 0} ${unit.mirror === true}`
const rounded = (value: number): number => Math.round(value * 1e6) + 0
/** A key for a seam by where it runs, whichever end comes first. */
const seamKey = (points: readonly Point[]): string =>
  points
    .map((point) => point.map(rounded).join())
    .sort()
    .join(' ')
const clashesOf = ({ meetings }: Findings): number => meetings.filter(({ verdict }) => verdict === 'clashes').length
