/** Plans of blocks, sewn, for the tests of this room; and a checker that lists everything wrong with a list of seams. */
import { planeOf } from '../../geometry/block/blockPlane.ts'
import { type Laid, lay } from '../../geometry/block/lay.ts'
import { plan } from '../../geometry/piecing/plan.ts'
import { sew, sewUnits } from '../../geometry/piecing/sew.ts'
import type { Plan, PlanChoice, Seam } from '../../geometry/piecing/values.ts'
import type { Dot } from '../../geometry/plane/points.ts'
import type { Plane } from '../../geometry/plane/subdivide.ts'
import type { Block } from '../../geometry/values/block.ts'

export interface Planned {
  readonly laid: Laid
  readonly plane: Plane
  readonly plan: Plan
  readonly seams: readonly Seam[]
}

export function planned(block: Block, name: Plan['name'], more: Partial<PlanChoice> = {}): Planned {
  const laid = lay(block)
  const plane = planeOf(laid)
  const made = plan(laid, plane, { name, cutOrder: 'middle', skippedCuts: 0, ...more }, { known: new Map(), cache: null, edgesOf: null })
  return { laid, plane, plan: made, seams: sew(laid, plane, sewUnits(laid, plane), made.tree) }
}

/** Joins in words: the stage, then the line from end to end by way of its bends, in cells. */
export function lines({ laid, plane, seams }: Planned): string[] {
  const at = (dot: number): string => laid.places.cells(plane.dots[dot] as Dot).join()
  return seams
    .filter(({ unit }) => unit < 0)
    .map(({ stage, kind, path, bends }) => {
      const stops = [0, ...bends, path.length - 1].map((place) => at(path[place] as number))
      return `${stage}${kind === 'straight' ? '' : ` ${kind}`} ${stops.join(' ')}`
    })
}

/** The units in each piece that a seam makes, by their ids; seams inside units left out. */
export function pieces({ laid, seams }: Planned): string[] {
  const made = held(laid, seams)
  return seams.flatMap(({ unit }, seam) => {
    if (unit >= 0) return []
    const units = (made[laid.patches.length + seam] as number[]).map((patch) => laid.patches[patch]?.unit ?? -1)
    return [[...new Set(units)].map((one) => laid.block.units[one]?.id ?? 'border').join(' ')]
  })
}

/** The patches that each piece holds. */
function held(laid: Laid, seams: readonly Seam[]): number[][] {
  const made: number[][] = laid.patches.map((_, patch) => [patch])
  for (const { sides } of seams) made.push([...(made[sides[0]] ?? []), ...(made[sides[1]] ?? [])].sort((a, b) => a - b))
  return made
}

/** What is wrong with the joins of a block; nothing where they sew it. */
export function joinFaults({ laid, plane, seams }: Planned): string[] {
  const faults: string[] = []
  const patches = laid.patches.length
  if (seams.length !== patches - 1) faults.push(`${patches} patches take ${patches - 1} joins, not ${seams.length}`)
  const made = held(laid, seams)
  const used = new Set<number>()
  seams.forEach((seam, index) => {
    for (const side of seam.sides) {
      if (side >= patches + index) faults.push(`join ${index} uses a piece before it is made`)
      if (used.has(side)) faults.push(`piece ${side} is used twice`)
      used.add(side)
    }
    faults.push(...wholeUnits(laid, made, seam, index), ...lineFaults(plane, made, seam, index, seams))
  })
  const sewn = seams.reduce((sum, { path }) => sum + path.length - 1, 0)
  const inner = plane.edges.filter(({ plus, minus }) => plus >= 0 && minus >= 0).length
  if (sewn !== inner) faults.push(`${inner} stretches are to be sewn, not ${sewn}`)
  return faults
}

/** Units are whole: inside one, only its own patches are joined; outside, only whole units. */
function wholeUnits(laid: Laid, made: readonly number[][], { sides, unit }: Seam, index: number): string[] {
  return sides.flatMap((side) => {
    const patches = made[side] as number[]
    if (unit >= 0)
      return patches.every((patch) => laid.patches[patch]?.unit === unit) ? [] : [`join ${index} is inside unit ${unit}, yet has other cloth`]
    const whole = patches.every((patch) => laid.parts.find((part) => part.patches.includes(patch))?.patches.every((one) => patches.includes(one)))
    return whole ? [] : [`join ${index} cuts through a unit`]
  })
}

/** A seam runs where its two pieces touch, everywhere they touch, and bends where it says. */
function lineFaults(plane: Plane, made: readonly number[][], seam: Seam, index: number, seams: readonly Seam[]): string[] {
  const faults: string[] = []
  const { path, bends, kind, sides, finishedAfter } = seam
  const between = path
    .slice(1)
    .map((dot, place) => plane.edges.find(({ a, b }) => (a === path[place] && b === dot) || (b === path[place] && a === dot)))
  if (between.some((edge) => edge === undefined)) return [`join ${index} leaves the outlines of its patches`]
  const [near, far] = sides.map((side) => new Set(made[side])) as [Set<number>, Set<number>]
  const parts = between.filter((edge) => {
    const { plus, minus } = edge as Plane['edges'][number]
    return (near.has(plus) && far.has(minus)) || (near.has(minus) && far.has(plus))
  }).length
  const finishing = seams.some((other) => other.finishedAfter === index)
  if ((kind === 'partial') !== (finishedAfter !== null)) faults.push(`join ${index} is partial and never finished, or finished and not partial`)
  if (kind === 'partial' ? parts === 0 || parts === between.length : parts !== between.length)
    faults.push(`join ${index} does not run between its pieces`)
  const touching = plane.edges.filter(({ plus, minus }) => (near.has(plus) && far.has(minus)) || (near.has(minus) && far.has(plus))).length
  if (!finishing && touching !== parts) faults.push(`join ${index} leaves open where its pieces touch`)
  const turns = between.flatMap((edge, place) => (place > 0 && edge?.line !== between[place - 1]?.line ? [place] : []))
  if (turns.join() !== bends.join()) faults.push(`join ${index} bends at ${turns}, not at ${bends}`)
  if (kind !== 'set-in' && bends.length > 0) faults.push(`join ${index} is ${kind} and bends`)
  return faults
}
