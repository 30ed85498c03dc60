/**
 * What every page of a quilt's booklet is written and drawn from.
 *
 * In      a quilt and its report.
 * Out     places and joins by their ids, positions numbered row by row as the overview shows them, the names of fabrics, the blocks as they are worn.
 */
import type { QuiltReport } from '../../quilt/report.ts'
import { type WornBlock, wornBlocks } from '../../quilt/wornBlocks.ts'
import type { Fabric, MeasureUnit } from '../../values/block.ts'
import type { Quilt } from '../../values/quilt.ts'
import { oneLine } from '../booklet/bookletContext.ts'
import { runsOf } from '../../words/runsOf.ts'
import { listed, sayExact } from '../phrases.ts'

export type PlaceRow = QuiltReport['places'][number]
export type JointRow = QuiltReport['joints'][number]

export interface QuiltContext {
  readonly quilt: Quilt
  readonly report: QuiltReport
  readonly blocks: ReadonlyMap<string, WornBlock>
  readonly unit: MeasureUnit
  readonly seam: number
  readonly seamText: string
  /** The quilt's fabrics and those that blocks bring, by the ids that the report uses. */
  readonly fabrics: readonly Fabric[]
  readonly fabric: (id: string) => string
  /** Row by row. */
  readonly places: readonly PlaceRow[]
  readonly place: ReadonlyMap<string, PlaceRow>
  readonly joint: ReadonlyMap<string, JointRow>
  /** The number of a position in the overview, from 1, by the place's id. */
  readonly number: ReadonlyMap<string, number>
}

/** What all chapters share, derived once from a quilt and its report. */
export function quiltContext(quilt: Quilt, report: QuiltReport): QuiltContext {
  const blocks = wornBlocks(quilt)
  const fabrics = fabricsOf(quilt, blocks)
  const places = [...report.places].sort((a, b) => a.at[1] - b.at[1] || a.at[0] - b.at[0])
  const { unit, seam } = report.measure
  return {
    quilt,
    report,
    blocks,
    unit,
    seam,
    seamText: sayExact(seam, unit),
    fabrics: [...fabrics.values()],
    fabric: (id) => oneLine(fabrics.get(id)?.name ?? id),
    places,
    place: new Map(places.map((place) => [place.id, place])),
    joint: new Map(report.joints.map((joint) => [joint.id, joint])),
    number: new Map(places.map(({ id }, index) => [id, index + 1])),
  }
}

/** A block's own fabric that is called like another one says which block it is of. */
function fabricsOf(quilt: Quilt, blocks: QuiltContext['blocks']): ReadonlyMap<string, Fabric> {
  const fabrics = new Map(quilt.fabrics.map((fabric) => [fabric.id, fabric]))
  const names = new Map<string, number>()
  const own = [...blocks.values()].flatMap(({ block }) => block.fabrics.filter(({ id }) => !fabrics.has(id)).map((fabric) => ({ block, fabric })))
  for (const { name } of [...quilt.fabrics, ...own.map(({ fabric }) => fabric)]) names.set(name, (names.get(name) ?? 0) + 1)
  for (const { block, fabric } of own) {
    const shared = (names.get(fabric.name) ?? 0) > 1
    fabrics.set(fabric.id, shared ? { ...fabric, name: `${fabric.name} (${block.name})` } : fabric)
  }
  return fabrics
}

/** The places of a piece: a place, or what a join has made. */
export function placesIn({ joint }: QuiltContext, piece: string): string[] {
  const found: string[] = []
  const left = [piece]
  while (left.length > 0) {
    const id = left.pop() as string
    const join = joint.get(id)
    if (join === undefined) found.push(id)
    else left.push(...[...join.sides].reverse())
  }
  return found
}

/** The numbers of positions, rising. */
export const numbersOf = ({ number }: QuiltContext, ids: readonly string[]): number[] =>
  ids.map((id) => number.get(id) as number).sort((a, b) => a - b)

/** `position 4`, `positions 1, 3 and 5–8`. */
export const positionsSaid = (context: QuiltContext, ids: readonly string[]): string =>
  `position${ids.length === 1 ? '' : 's'} ${listed(runsOf(numbersOf(context, ids)))}`

/** The name of a block as it stands in a sentence. */
export const blockName = ({ blocks }: QuiltContext, id: string): string => `“${oneLine(blocks.get(id)?.block.name ?? '')}”`

/** Places by what is done alike with them, in the order of the overview. */
export function alike<Key>(
  context: QuiltContext,
  keyOf: (place: PlaceRow) => Key | null,
): { readonly key: Key; readonly places: readonly PlaceRow[] }[] {
  const groups = new Map<string, { key: Key; places: PlaceRow[] }>()
  for (const place of context.places) {
    const key = keyOf(place)
    if (key === null) continue
    const name = JSON.stringify(key)
    const there = groups.get(name)
    if (there === undefined) groups.set(name, { key, places: [place] })
    else there.places.push(place)
  }
  return [...groups.values()]
}
