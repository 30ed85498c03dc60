/**
 * Joins shapes, and cuts one away from others, in a worker, because the library that does it sometimes never returns.
 *
 * In      the selected units, each a single patch.
 * Out     one edit, or one sentence that says why not. Every corner is made exact again before it goes into the block.
 */
import { exactRing, type FilePoint, inParts, message, onePatch, reshape, toFile, type Unit, type WholeOutlines } from '../../../geometry/index.ts'
import { setView, getState } from '../../document/store.ts'
import { label, t } from '../../words/words.ts'
import { attempt } from './attempt.ts'
import { unitsById } from '../hitTest.ts'
import { shapeClient } from '../../workers/clients.ts'
import type { Shapes } from '../../workers/outline.worker.ts'

const FAILED = label('These shapes can’t be combined. Move a corner a little and try again.')
const HOLE = label('A patch can’t have a hole. Cut it in two first.')

export async function joinSelection(): Promise<void> {
  const units = selectedShapes()
  if (units === null) return
  const shapes = await requestShapes('join', units)
  if (shapes === null) return
  const [first, ...others] = units as [Unit, ...Unit[]]
  if (shapes.length === units.length) return setView({ notice: t('These shapes don’t share an edge, so they can’t be joined.') })
  const next = new Map<string, readonly (readonly FilePoint[])[]>([[first.id, shapes], ...others.map(({ id }) => [id, []] as const)])
  if (attempt(reshape(getState().history.block, message('join-shapes'), next), t('Joined into one patch.')))
    setView({ selected: [first.id], patch: null })
}

/** Cuts what lies under the shape that was selected last away from the others; that shape stays. */
export async function cutAwaySelection(): Promise<void> {
  const units = selectedShapes()
  const knife = units?.at(-1)
  if (units === null || knife === undefined) return
  const next = new Map<string, readonly (readonly FilePoint[])[]>()
  for (const unit of units.slice(0, -1)) {
    const shapes = await requestShapes('cut', [unit, knife])
    if (shapes === null) return
    if (!(shapes.length === 1 && sameCorners(shapes[0] ?? [], unit))) next.set(unit.id, shapes)
  }
  if (next.size === 0) return setView({ notice: t('The last shape selected doesn’t overlap the others.') })
  attempt(reshape(getState().history.block, message('cut-shapes'), next), t('The last shape selected is cut away from the others.'))
}

function sameCorners(corners: readonly FilePoint[], unit: Unit): boolean {
  const own = new Set((onePatch(unit) ?? []).map(([x, y]) => `${toFile(x)},${toFile(y)}`))
  return corners.length === own.size && corners.every((corner) => own.has(corner.join()))
}

function selectedShapes(): Unit[] | null {
  const { history, view } = getState()
  const units = unitsById(history.block, view.selected)
  const trouble =
    units.length < 2
      ? t('Select at least two shapes.')
      : units.some((unit) => onePatch(unit) === null)
        ? t('Only free patches and squares can be joined or cut. Other units have seams inside.')
        : null
  if (trouble !== null) setView({ notice: trouble })
  return trouble === null ? units : null
}

/** Outlines with exact corners; null if there are none, and then a notice says why. */
async function requestShapes(job: 'join' | 'cut', units: readonly Unit[]): Promise<readonly (readonly FilePoint[])[] | null> {
  const { block } = getState().history
  const whole = inParts(units.map((unit) => onePatch(unit) ?? []))
  const client = shapeClient()
  const reply = await client.request(job, whole.outlines)
  client.close()
  if (getState().history.block !== block) return null
  const outlines = reply.type === 'answer' ? exactOutlines(reply.value, whole) : null
  if (typeof outlines === 'string' || outlines === null) {
    setView({ notice: outlines ?? t(FAILED) })
    return null
  }
  return outlines
}

function exactOutlines(answer: Shapes, whole: WholeOutlines): readonly (readonly FilePoint[])[] | string | null {
  if (answer.some((polygon) => polygon.length > 1)) return t(HOLE)
  const outlines = answer.flatMap(([outline]) => (outline === undefined ? [] : [exactRing(outline.slice(0, -1), whole)]))
  return outlines.some((outline) => outline === null) ? null : (outlines as readonly (readonly FilePoint[])[])
}
