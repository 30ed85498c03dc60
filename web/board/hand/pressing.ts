/**
 * Pressing seams on the board: which arrow is meant, and what a press on it, or a key, asks for.
 *
 * In      where the pointer or the selected seam is, and the seams as they are pressed now.
 * Out     commands. A press on an arrow turns it; a second one presses the seam open; a third leaves it to the app again.
 */
import { type DrawnSeam, drawnSeams, type Point } from '../../document/shapes.ts'
import type { SeamKey } from '../keys/values.ts'
import { ROOM_FOR_ARROWS, seamsInSight } from '../seamsInSight.ts'
import { nextChoice } from './nextChoice.ts'
import type { HandCommand, HandContext, PointerState } from './values.ts'

/** Pixels from the middle of an arrow within which a press is on it: a finger has a target of 46. */
const REACH = { mouse: 18, touch: 23 } as const

/** The nearest arrow within reach; null where there is none, or while a fix is tried. */
export function arrowAt({ at, pointerType }: PointerState, { report, block, document, frame, size }: HandContext): DrawnSeam | null {
  if (report === null || block !== document) return null
  let [nearest, least]: [DrawnSeam | null, number] = [null, pointerType === 'touch' ? REACH.touch : REACH.mouse]
  for (const seam of seamsInSight(report, frame, size, ROOM_FOR_ARROWS)) {
    const [x, y] = frame.toPixels(...seam.middle)
    const away = Math.hypot(x - at[0], y - at[1])
    if (away <= least) [nearest, least] = [seam, away]
  }
  return nearest
}

/** A press on an arrow selects its seam and presses it the next way; one beside all arrows lets go of the seam. */
export function pressArrowAt(at: PointerState, context: HandContext): readonly HandCommand[] {
  const seam = arrowAt(at, context)
  if (seam === null) return [{ type: 'selectSeam', join: null }]
  return [
    { type: 'selectSeam', join: seam.join.id },
    { type: 'pressSeam', join: seam.join.id, choice: nextChoice(seam.join) },
  ]
}

/** What a key does to the selected seam, or which seam it selects. */
export function seamKey(key: SeamKey, context: HandContext): readonly HandCommand[] {
  if (context.report === null) return []
  const seams = drawnSeams(context.report)
  const selected = seams.find(({ join }) => join.id === context.seam)
  if (key.type === 'stepSeam' || selected === undefined) {
    const next = selected === undefined || key.type !== 'stepSeam' ? firstSeam(seams) : seamBeyond(seams, selected, key.by)
    return next === undefined ? [] : [{ type: 'selectSeam', join: next.join.id }]
  }
  const { join } = selected
  const turned = join.press.toward === 0 ? 1 : 0
  const choice = key.how === 'next' ? nextChoice(join) : key.how === 'turn' ? turned : key.how
  return [{ type: 'pressSeam', join: join.id, choice }]
}

/** The topmost, and of those the leftmost. */
const firstSeam = (seams: readonly DrawnSeam[]): DrawnSeam | undefined =>
  seams.reduce<DrawnSeam | undefined>((first, seam) => {
    const [x, y] = seam.middle
    return first === undefined || y < first.middle[1] || (y === first.middle[1] && x < first.middle[0]) ? seam : first
  }, undefined)

/** The nearest seam that way, one straight ahead before one to the side; the same where there is none. */
function seamBeyond(seams: readonly DrawnSeam[], from: DrawnSeam, [bx, by]: Point): DrawnSeam {
  let [best, least] = [from, Number.POSITIVE_INFINITY]
  for (const seam of seams) {
    const [dx, dy] = [seam.middle[0] - from.middle[0], seam.middle[1] - from.middle[1]]
    const [ahead, aside] = [dx * bx + dy * by, Math.abs(dx * by) + Math.abs(dy * bx)]
    if (ahead <= 1e-9 || aside > 2 * ahead) continue
    const cost = ahead + 2 * aside
    if (cost < least) [best, least] = [seam, cost]
  }
  return best
}
