/**
 * What a class gets at a time: the places of one part, and what they need.
 *
 * In      a quilt with its parts; places in no part come with the last.
 * Out     the part's places, the joins that can be sewn once it is made, its cut list, fabric and layers. What goes round the outside comes with the last.
 */
import type { FabricRow, UnitRow } from '../values/report.ts'
import type { Quilt } from '../values/quilt.ts'
import { type QuiltCutRow, quiltCutting } from './cutting.ts'
import { jointId } from './meetings.ts'
import { gatheredLayers, type LayerRow, workOut } from './report.ts'

interface QuiltPart {
  readonly title: string
  /** From 1. */
  readonly number: number
  readonly places: readonly string[]
  readonly joints: readonly string[]
  readonly units: readonly UnitRow[]
  readonly cut: readonly QuiltCutRow[]
  readonly fabric: readonly FabricRow[]
  readonly layers: readonly LayerRow[]
}

/** How many parts a quilt is handed out in; one where it names none. */
export const partCount = ({ parts = [] }: Quilt): number => Math.max(1, parts.length)

/** The part of each place, from 1, by the place's id. */
function partsOfPlaces({ parts = [], places }: Quilt): ReadonlyMap<string, number> {
  const numbers = new Map(parts.flatMap(({ places: own }, index) => own.map((id) => [id, index + 1] as const)))
  return new Map(places.map(({ id }) => [id, numbers.get(id) ?? Math.max(1, parts.length)]))
}

/** One part of a quilt, `number` from 1 to `partCount`. */
export function quiltPart(quilt: Quilt, number: number): QuiltPart {
  const { measures, places, joints, round, sashed } = workOut(quilt)
  const partOf = partsOfPlaces(quilt)
  /** By place and joint: the part with which it is finished. */
  const made = places.map(({ place }) => partOf.get(place.id) as number)
  for (const { cells } of joints) made.push(Math.max(...cells.sides.map((side) => made[side] as number)))
  const own = places.filter((_, index) => made[index] === number)
  const ownJoints = joints.flatMap((joint, index) => (made[places.length + index] === number ? [{ joint, id: jointId(index) }] : []))
  const ids = new Map(ownJoints.map(({ id }, index) => [jointId(index), id]))
  const last = number === partCount(quilt)
  const strips = ownJoints.map(({ joint }) => joint)
  const { units, cut, fabric } = quiltCutting(quilt, measures, own, strips, last ? { round, top: sashed } : null)
  return {
    title: quilt.parts?.[number - 1]?.title ?? quilt.name,
    number,
    places: own.map(({ place }) => place.id),
    joints: ownJoints.map(({ id }) => id),
    units,
    cut: cut.map((row) => ({ ...row, for: row.for.map((id) => ids.get(id) ?? id) })),
    fabric,
    layers: gatheredLayers(quilt, measures, own, strips),
  }
}
