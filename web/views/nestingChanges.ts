/**
 * What an edit changed where seams meet: which meetings no longer nest, and which do now.
 *
 * In      the findings before and after, and where each point of the block moved to (only an edit of the whole block moves any).
 * Out     places in cells, and counts. Two pairs of seams may meet at one place: there the numbers of pairs that nest are compared.
 */
import type { Findings, Meeting, Verdict } from '../../geometry/index.ts'
import { type Point, pointOf } from '../document/shapes.ts'
import type { ViewDrawing } from '../drawing/viewDrawing.ts'

export interface NestingComparison {
  /** One place for each meeting that no longer nests, and for each that nests now and did not. */
  readonly lost: readonly Point[]
  readonly gained: readonly Point[]
  /** Of those that no longer nest: what is there now. */
  readonly now: Readonly<Record<Exclude<Verdict, 'nests'> | 'nothing', number>>
  /** Before and after: clashes, and tips that must not be cut off. */
  readonly clashes: readonly [number, number]
  readonly tips: readonly [number, number]
}

type Moved = (at: Point) => Point

/** `moved` gives where a point of the block before the edit lies after it, in cells. */
export function compareNesting(before: Findings, after: Findings, moved: Moved = (at) => at): NestingComparison {
  const old = byPlace(before.meetings, moved)
  const fresh = byPlace(after.meetings, (at) => at)
  const lost: Point[] = []
  const gained: Point[] = []
  const now: Record<Exclude<Verdict, 'nests'> | 'nothing', number> = { clashes: 0, open: 0, pin: 0, tip: 0, nothing: 0 }
  for (const [key, { at }] of new Map([...old, ...fresh])) {
    const less = nesting(old.get(key)) - nesting(fresh.get(key))
    for (let one = 0; one < less; one++) {
      lost.push(at)
      now[insteadOf(fresh.get(key))]++
    }
    for (let one = 0; one < -less; one++) gained.push(at)
  }
  return {
    lost,
    gained,
    now,
    clashes: [countOf(before, 'clashes'), countOf(after, 'clashes')],
    tips: [countOf(before, 'tip'), countOf(after, 'tip')],
  }
}

interface Place {
  readonly at: Point
  readonly verdicts: Verdict[]
}

function byPlace(meetings: readonly Meeting[], moved: Moved): Map<string, Place> {
  const places = new Map<string, Place>()
  for (const { at, verdict } of meetings) {
    const there = moved(pointOf(at))
    // Halves, thirds and the like: this many parts of a cell tell any two places of one block apart.
    const key = there.map((value) => Math.round(value * 55_440)).join()
    const place = places.get(key) ?? { at: there, verdicts: [] }
    place.verdicts.push(verdict)
    places.set(key, place)
  }
  return places
}

const nesting = (place: Place | undefined): number => place?.verdicts.filter((verdict) => verdict === 'nests').length ?? 0
const countOf = ({ meetings }: Findings, wanted: Verdict): number => meetings.filter(({ verdict }) => verdict === wanted).length

const insteadOf = (place: Place | undefined): Exclude<Verdict, 'nests'> | 'nothing' =>
  (['clashes', 'pin', 'open', 'tip'] as const).find((verdict) => place?.verdicts.includes(verdict)) ?? 'nothing'

export function drawNestingChanges({ lost, gained }: NestingComparison): ViewDrawing {
  return [
    ...(lost.length === 0 ? [] : [{ type: 'lost', points: lost } as const]),
    ...(gained.length === 0 ? [] : [{ type: 'gained', points: gained } as const]),
  ]
}
