/**
 * Symmetric arranging: an edit of one unit is repeated on its images.
 *
 * In      a block, the same block after an edit, and how edits repeat: by a half turn, quarter turns, or a mirror about the middle of the grid.
 * Out     what the images of the edited units become; one edit of both together, so that one undo takes back all.
 * An image is a unit that lies as the edited one would after the turn or mirror, patch on patch; its fabrics are its own. A unit that the maker
 * edits directly follows that edit, even where it is the image of another.
 */
import { rational, toFile } from '../exact/rational.ts'
import { exactPoint, shapeOf } from '../units/kinds.ts'
import { mirrorIn, turnIn } from '../block/boxes.ts'
import { boxOf, type ExactBox } from '../units/unitBox.ts'
import { type Edit, freshId } from './unitEdits.ts'
import type { Block, Mutable, Unit } from '../values/block.ts'

export const REPEATS = ['off', 'half', 'quarters', 'leftRight', 'topBottom'] as const
export type Repeat = (typeof REPEATS)[number]

interface Symmetry {
  readonly mirror: boolean
  /** Quarter turns clockwise, after the mirror. */
  readonly turns: number
}

const SYMMETRIES: Readonly<Record<Repeat, readonly Symmetry[]>> = {
  off: [],
  half: [{ mirror: false, turns: 2 }],
  quarters: [1, 2, 3].map((turns) => ({ mirror: false, turns })),
  leftRight: [{ mirror: true, turns: 0 }],
  topBottom: [{ mirror: true, turns: 2 }],
}

/** Quarter turns need a grid as wide as high. */
export const canRepeat = ({ grid }: Block, repeat: Repeat): boolean => repeat !== 'quarters' || grid.columns === grid.rows

/** The unit as it lies after the block is mirrored and turned about the middle of its grid. */
function imageOf(unit: Unit, { mirror, turns }: Symmetry, { columns, rows }: Block['grid']): Unit {
  const image = JSON.parse(JSON.stringify(unit)) as Mutable<Unit>
  let box: ExactBox = { low: [rational(0), rational(0)], high: [rational(columns), rational(rows)] }
  if (mirror) mirrorIn(image, box)
  for (let turn = 0; turn < turns; turn++) {
    turnIn(image, box)
    box = { low: box.low, high: [box.high[1], box.high[0]] }
  }
  return image as Unit
}

interface Images {
  /** The changed units. */
  readonly changed: readonly Unit[]
  readonly added: readonly Unit[]
  readonly removed: readonly string[]
}

const NONE: Images = { changed: [], added: [], removed: [] }

/** The units to change, add or remove so that an edit from `before` to `after` is repeated symmetrically. */
export function imagesOf(before: Block, after: Block, repeat: Repeat): Images {
  const symmetries = canRepeat(before, repeat) ? SYMMETRIES[repeat] : []
  if (symmetries.length === 0 || before.grid !== after.grid) return NONE
  const was = new Map(before.units.map((unit) => [unit.id, unit]))
  const is = new Map(after.units.map((unit) => [unit.id, unit]))
  const held = new Set(
    [...before.units.filter((unit) => is.get(unit.id) !== unit), ...after.units.filter((unit) => was.get(unit.id) !== unit)].map(({ id }) => id),
  )
  const lying = byPlace(before.units.filter(({ id }) => !held.has(id)))
  const changed = new Map<string, Unit>()
  const removed = new Set<string>()
  const added = new Map<string, Unit>()
  const taken = new Set<string>()
  for (const symmetry of symmetries)
    for (const id of held) {
      const [old, next] = [was.get(id), is.get(id)]
      if (old === undefined) {
        const image = imageOf(next as Unit, symmetry, before.grid)
        const key = placeKey(image)
        if (key === placeKey(next as Unit) || added.has(key) || lying.has(key)) continue
        const free = freshId(after, id.replace(/-\d+$/, ''), taken)
        taken.add(free)
        added.set(key, { ...image, id: free })
        continue
      }
      const partner = lying.get(placeKey(imageOf(old, symmetry, before.grid)))?.find((unit) => unit.kind === old.kind)
      if (partner === undefined || changed.has(partner.id) || removed.has(partner.id)) continue
      const names = namesBetween(old, partner, symmetry, before.grid)
      if (names === null) continue
      if (next === undefined) removed.add(partner.id)
      else changed.set(partner.id, follow(partner, old, next, names, symmetry, before.grid))
    }
  return { changed: [...changed.values()], added: [...added.values()], removed: [...removed] }
}

/** Units by the corners of their boxes. */
function byPlace(units: readonly Unit[]): Map<string, Unit[]> {
  const found = new Map<string, Unit[]>()
  for (const unit of units) {
    const key = placeKey(unit)
    found.set(key, [...(found.get(key) ?? []), unit])
  }
  return found
}

function placeKey(unit: Unit): string {
  const { low, high } = boxOf(unit)
  return [...low, ...high].map(toFile).join()
}

/** Corners of a unit's patches, whichever comes first, by the patches' names. */
function outlinesOf(unit: Unit): Map<string, string> {
  const patches = unit.kind === 'polygon' ? [{ name: 'patch', corners: unit.corners.map(exactPoint) }] : shapeOf(unit).patches
  return new Map(
    patches.map(({ name, corners }) => [
      corners
        .map(([x, y]) => `${toFile(x)},${toFile(y)}`)
        .sort()
        .join(' '),
      name,
    ]),
  )
}

/** Patch of the unit → patch of its image; null where the two do not lie patch on patch. */
function namesBetween(unit: Unit, partner: Unit, symmetry: Symmetry, grid: Block['grid']): ReadonlyMap<string, string> | null {
  const own = outlinesOf(imageOf(unit, symmetry, grid))
  const other = outlinesOf(partner)
  const names = new Map<string, string>()
  for (const [outline, name] of own) {
    const found = other.get(outline)
    if (found === undefined) return null
    names.set(name, found)
  }
  return names.size === other.size ? names : null
}

const SHAPE = ['kind', 'at', 'size', 'turn', 'mirror', 'corner', 'corners'] as const

type Fields = Record<string, unknown>

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

/** The partner after the unit's change is applied to it too. */
function follow(partner: Unit, old: Unit, next: Unit, names: ReadonlyMap<string, string>, symmetry: Symmetry, grid: Block['grid']): Unit {
  const [was, is] = [old as unknown as Fields, next as unknown as Fields]
  const followed: Fields = { ...partner }
  for (const key of new Set([...Object.keys(was), ...Object.keys(is)])) {
    if (key === 'id' || key === 'fabrics' || (SHAPE as readonly string[]).includes(key) || same(was[key], is[key])) continue
    if (is[key] === undefined) delete followed[key]
    else followed[key] = is[key]
  }
  if (SHAPE.every((key) => same(was[key], is[key]))) {
    const recoloured = Object.entries(next.fabrics).filter(([name, fabric]) => old.fabrics[name] !== fabric)
    return {
      ...followed,
      fabrics: { ...partner.fabrics, ...Object.fromEntries(recoloured.map(([name, fabric]) => [names.get(name) ?? name, fabric])) },
    } as Unit
  }
  const image = imageOf(next, symmetry, grid) as unknown as Fields
  for (const key of SHAPE) {
    if (image[key] === undefined) delete followed[key]
    else followed[key] = image[key]
  }
  const fabricOf = (name: string, fabric: string): string => {
    const own = partner.fabrics[names.get(name) ?? '']
    return old.kind === next.kind && old.fabrics[name] === fabric && own !== undefined ? own : fabric
  }
  return { ...followed, fabrics: Object.fromEntries(Object.entries(next.fabrics).map(([name, fabric]) => [name, fabricOf(name, fabric)])) } as Unit
}

/** An edit together with the change of its images, as one edit. */
export const withImages = (edit: Edit, { changed, added, removed }: Images): Edit => ({
  name: edit.name,
  change: (draft) => {
    edit.change(draft)
    const become = new Map(changed.map((unit) => [unit.id, unit]))
    const gone = new Set(removed)
    const copy = (unit: Unit): Mutable<Unit> => JSON.parse(JSON.stringify(unit)) as Mutable<Unit>
    draft.units.forEach((unit, place) => {
      const next = become.get(unit.id)
      if (next !== undefined) draft.units[place] = copy(next)
    })
    if (gone.size > 0) draft.units = draft.units.filter(({ id }) => !gone.has(id))
    draft.units.push(...added.map(copy))
  },
})
