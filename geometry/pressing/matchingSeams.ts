/**
 * Which seams lie in the same place in matching units. If the block says so (`pressAlike`), they are pressed the same way.
 *
 * In      the laid block, its plane and seams, and which side of each lies clockwise.
 * Out     for each seam inside a unit that has others like it, its group of matching seams; null for all other seams. Units match when turning
 *         one gives the other: the same fabrics in the same places, the same seams, the same method and the same choice about pressing.
 */
import type { Laid } from '../block/lay.ts'
import type { Seam } from '../piecing/values.ts'
import type { Dot } from '../plane/points.ts'
import type { Plane } from '../plane/subdivide.ts'
import { methodOf } from '../units/kinds.ts'

/** A seam that has matches in matching units. */
export interface MatchingSeam {
  /** The same number for all seams that match. */
  readonly group: number
  /** Which of its sides the group counts as side 0. */
  readonly side0: 0 | 1
}

type Turned = (dot: Dot) => Dot

export function matchingSeams(laid: Laid, plane: Plane, seams: readonly Seam[], clockwise: readonly (0 | 1)[]): (MatchingSeam | null)[] {
  const inUnits = new Map<number, number[]>()
  seams.forEach(({ unit }, seam) => {
    if (unit < 0) return
    const there = inUnits.get(unit)
    if (there === undefined) inUnits.set(unit, [seam])
    else there.push(seam)
  })
  const groups = new Map<string, { seam: number; side0: 0 | 1 }[]>()
  for (const [unit, own] of inUnits) {
    const { key, turn } = pictureOf(laid, plane, seams, unit, own)
    for (const seam of own) {
      const { line, forward } = lineOf(plane, seams[seam] as Seam, turn)
      // Side 0 of the group is the one clockwise of the line from its lower end to its higher.
      const clockwiseOfLine = forward ? (clockwise[seam] as 0 | 1) : clockwise[seam] === 0 ? 1 : 0
      const name = `${key} ${line}`
      const there = groups.get(name)
      if (there === undefined) groups.set(name, [{ seam, side0: clockwiseOfLine }])
      else there.push({ seam, side0: clockwiseOfLine })
    }
  }
  const matching: (MatchingSeam | null)[] = seams.map(() => null)
  let group = 0
  for (const members of groups.values()) {
    if (members.length < 2) continue
    for (const { seam, side0 } of members) matching[seam] = { group, side0 }
    group++
  }
  return matching
}

function pictureOf(laid: Laid, plane: Plane, seams: readonly Seam[], unit: number, own: readonly number[]): { key: string; turn: Turned } {
  const { patches } = laid.parts[unit] as Laid['parts'][number]
  const corners = patches.flatMap((patch) => (laid.patches[patch] as Laid['patches'][number]).corners)
  const [x0, x1] = [Math.min(...corners.map(([x]) => x)), Math.max(...corners.map(([x]) => x))]
  const [y0, y1] = [Math.min(...corners.map(([, y]) => y)), Math.max(...corners.map(([, y]) => y))]
  const turns: Turned[] = [([x, y]) => [x - x0, y - y0], ([x, y]) => [y1 - y, x - x0], ([x, y]) => [x1 - x, y1 - y], ([x, y]) => [y - y0, x1 - x]]
  const pictures = turns.map((turn) => {
    const fabrics = patches.map((patch) => {
      const { fabric, corners: all } = laid.patches[patch] as Laid['patches'][number]
      return `${fabric}:${all.map((corner) => turn(corner).join()).sort()}`
    })
    const lines = own.map((seam) => lineOf(plane, seams[seam] as Seam, turn).line)
    return { picture: `${fabrics.sort()};${lines.sort()}`, turn }
  })
  const least = pictures.reduce((best, one) => (one.picture < best.picture ? one : best))
  const { pressFree, open } = laid.block.units[unit] as Laid['block']['units'][number]
  const made = `${methodOf(laid.block.units[unit] as Laid['block']['units'][number])} ${pressFree === true} ${open === true}`
  return { key: `${made} ${least.picture}`, turn: least.turn }
}

function lineOf(plane: Plane, { path }: Seam, turn: Turned): { line: string; forward: boolean } {
  const [first, last] = [turn(plane.dots[path[0] as number] as Dot), turn(plane.dots[path.at(-1) as number] as Dot)]
  const forward = first[0] < last[0] || (first[0] === last[0] && first[1] < last[1])
  return { line: forward ? `${first}-${last}` : `${last}-${first}`, forward }
}
