/**
 * The stops of a quilting line: the places where it starts, turns or ends, numbered in the order of stitching.
 *
 * In      lines.
 * Out     each place once, with every number it has: a line may come by more than once. With too many stops, the starts of lines alone.
 */
import { type StitchedLine, type StitchPoint, stitchedPoints } from './stitchedLines.ts'

interface NumberedStop {
  readonly at: StitchPoint
  /** From 1. */
  readonly numbers: readonly number[]
}

/** Stops above which only starts are numbered: more would hide the line. */
const MOST_NUMBERED = 90

export function numberedStops(lines: readonly StitchedLine[]): NumberedStop[] {
  const routes = lines.map(stitchedPoints)
  const points = routes.reduce((sum, route) => sum + route.length, 0)
  const numbered = points <= MOST_NUMBERED ? routes : routes.map((route) => route.slice(0, 1))
  const places = new Map<string, { readonly at: StitchPoint; readonly numbers: number[] }>()
  numbered.flat().forEach((at, place) => {
    const key = at.map((value) => value.toFixed(4)).join(' ')
    const known = places.get(key)
    if (known === undefined) places.set(key, { at, numbers: [place + 1] })
    else known.numbers.push(place + 1)
  })
  return [...places.values()]
}
