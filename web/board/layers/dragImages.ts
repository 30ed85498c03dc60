/**
 * What a drag would make of the block, as images that are drawn over it.
 *
 * In      the gesture, or the item on its way from the tray.
 * Out     images of what is dragged, and what it leaves behind; while symmetry is on, the same for its images around the middle.
 */
import { type Block, type Edit, moveUnits, placeUnit, placeUnits, resizeUnits, swapUnits, type Repeat, type Unit } from '../../../geometry/index.ts'
import { editResult } from '../../document/editResult.ts'
import { toDecimal, type PatchShape, unitShapes, type Point, rectOf } from '../../document/shapes.ts'
import { symmetricEdit } from '../../document/symmetricEdit.ts'
import { withoutImages } from '../actions/attempt.ts'
import { recolourEdit } from '../actions/recolour.ts'
import { scaleBetween } from '../hand/resize.ts'
import type { TrayTarget } from '../hand/trayDrop.ts'
import type { Gesture, GestureOf } from '../hand/values.ts'
import { hasRoom, unitById, unitsById } from '../hitTest.ts'
import { type PatchPaths, patchPaths } from './patchPaths.ts'

export interface DragImage {
  readonly paths: PatchPaths
  /** Cells by which the paths are moved. */
  readonly by: Point
  readonly fits: boolean
}

const piecesOf = (units: readonly Unit[]): PatchShape[] => units.flatMap((unit) => unitShapes(unit))
const standing = (pieces: readonly PatchShape[], fits = true): DragImage => ({ paths: patchPaths(pieces), by: [0, 0], fits })

/** The units that the gesture takes from their places: ids, or null. */
export const idsDragged = (gesture: Gesture | null): readonly string[] | null => (gesture?.type === 'move' ? gesture.ids : null)

/** The paths of the units that a gesture takes from their places. */
export const pathsOfUnits = (block: Block, ids: readonly string[]): PatchPaths => patchPaths(piecesOf(unitsById(block, ids)))

/** What the gesture would do to the block if the hand let go now. */
export function editOnRelease(gesture: Gesture | null, tray: TrayTarget | null): Edit | null {
  if (gesture?.type === 'move')
    return gesture.swap === null ? moveUnits(gesture.ids, ...gesture.snapped.by) : swapUnits(gesture.ids[0] ?? '', gesture.swap)
  if (gesture?.type === 'fill') return placeUnits(withoutImages(gesture.units))
  if (gesture?.type === 'recolour') return recolourEdit(gesture.fabric, gesture.over)
  if (gesture?.type === 'resize') return resizeUnits(gesture.ids, gesture.to)
  return tray === null || tray.replaces !== null ? null : placeUnit(tray.unit)
}

/** `dragged` are the paths of the units that the gesture takes from their places, made when it began. */
export function dragImages(block: Block, gesture: Gesture | null, dragged: PatchPaths | null, tray: TrayTarget | null): readonly DragImage[] {
  if (gesture?.type === 'move' && dragged !== null) return movedImages(block, gesture, dragged)
  if (gesture?.type === 'fill') return [standing(piecesOf(withoutImages(gesture.units)))]
  if (gesture?.type === 'recolour') return [recolouredImage(block, gesture)]
  if (gesture?.type === 'resize') return [resizedImage(block, gesture)]
  if (tray === null) return []
  const { unit, replaces } = tray
  return [standing(unitShapes(unit), replaces !== null || hasRoom(block, [rectOf(unit)], new Set()))]
}

/** Two units that swap places are both shown where they would lie. */
function movedImages(block: Block, { ids, snapped, fits, swap }: GestureOf<'move'>, paths: PatchPaths): readonly DragImage[] {
  const [one, other] = [unitById(block, ids[0] ?? ''), swap === null ? undefined : unitById(block, swap)]
  if (one === undefined || other === undefined) return [{ paths, by: [toDecimal(snapped.by[0]), toDecimal(snapped.by[1])], fits }]
  const [a, b] = [rectOf(one).at, rectOf(other).at]
  const by: Point = [b[0] - a[0], b[1] - a[1]]
  return [
    { paths: patchPaths(unitShapes(other)), by: [-by[0], -by[1]], fits: true },
    { paths, by, fits: true },
  ]
}

function recolouredImage(block: Block, { fabric, over }: GestureOf<'recolour'>): DragImage {
  const pieces = over.flatMap(({ unit, name }) => piecesOf(unitsById(block, [unit])).filter((piece) => piece.name === name))
  return standing(pieces.map((piece) => ({ ...piece, fabric })))
}

function resizedImage(block: Block, { ids, box, to, fits }: GestureOf<'resize'>): DragImage {
  const scaled = scaleBetween(box, to)
  const pieces = piecesOf(unitsById(block, ids))
  return standing(
    pieces.map((piece) => ({ ...piece, corners: piece.corners.map(scaled) })),
    fits,
  )
}

/** In blocks with more units than this, symmetric images appear only when the hand lets go. */
const MOST_SHOWN = 1500

/** While symmetry is on: the symmetric images of an edit as they would lie, and the places that they leave. */
export function symmetricImages(
  block: Block,
  edit: Edit | null,
  repeat: Repeat,
): { readonly images: readonly DragImage[]; readonly left: readonly PatchPaths[] } {
  if (edit === null || repeat === 'off' || block.units.length > MOST_SHOWN) return { images: [], left: [] }
  const alone = editResult(block, edit)
  const all = editResult(block, symmetricEdit(block, edit, repeat))
  // What the edit itself changes is drawn by the gesture; everything else that changes is one of its images.
  const changed = all.units.filter(({ id }) => unitById(alone, id) === unitById(block, id) && unitById(all, id) !== unitById(block, id))
  const fits = changed.every((unit) => hasRoom(all, [rectOf(unit)], new Set([unit.id]), [unit]))
  const left = unitsById(
    block,
    changed.map(({ id }) => id),
  )
  return { images: [standing(piecesOf(changed), fits)], left: left.length === 0 ? [] : [patchPaths(piecesOf(left))] }
}

/** Cells by which a line of symmetry reaches beyond the block. */
const BEYOND = 0.35

/** The lines around which edits are repeated, in cells. */
export function symmetryLines(repeat: Repeat, { columns, rows }: Block['grid']): readonly (readonly [Point, Point])[] {
  const upright: readonly [Point, Point] = [
    [columns / 2, -BEYOND],
    [columns / 2, rows + BEYOND],
  ]
  const level: readonly [Point, Point] = [
    [-BEYOND, rows / 2],
    [columns + BEYOND, rows / 2],
  ]
  if (repeat === 'off') return []
  return repeat === 'leftRight' ? [upright] : repeat === 'topBottom' ? [level] : [upright, level]
}
