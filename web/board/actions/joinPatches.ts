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

const FAILED = label('These shapes could not be worked out; move a corner a little and try again.')
const HOLE = label('A patch cannot have a hole, nor be closed round another; cut it in two first.')

export async function joinSelection(): Promise<void> {
  const units = selectedShapes()
  if (units === null) return
  const shapes = await requestShapes('join', units)
  if (shapes === null) return
  const [first, ...others] = units as [Unit, ...Unit[]]
  if (shapes.length === units.length) return setView({ notice: t('They do not touch along an edge, so there is nothing to join.') })
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
  if (next.size === 0) return setView({ notice: t('The shape chosen last lies over none of the others.') })
  attempt(reshape(getState().history.block, message('cut-shapes'), next), t('Cut away where the shape chosen last lies.'))
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
      ? t('Choose two shapes or more.')
      : units.some((unit) => onePatch(unit) === null)
        ? t('Only free patches and squares can be joined or cut: other units have seams of their own.')
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
