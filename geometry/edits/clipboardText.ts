/**
 * Units on the clipboard, as text that any program can read.
 *
 * In      `{ "format": "nestwright.units", "version": 1, "units": […], "fabrics": […] }`: units as in a block file, and the fabrics they are of.
 * Out     the units and fabrics, or the place and a message that says what is wrong; then the same units under ids that are free in the block.
 */
import { freshId, type Edit } from './unitEdits.ts'
import { checkBlock } from '../block/read.ts'
import type { Block, Fabric, Mutable, Unit } from '../values/block.ts'
import { message, type Read } from '../values/messages.ts'
import { parseJson } from '../values/parseJson.ts'

interface Carried {
  readonly units: readonly Unit[]
  readonly fabrics: readonly Fabric[]
}

/** The units with these ids and the fabrics they use, as text for the clipboard. */
export function writeUnits({ units, fabrics }: Block, ids: readonly string[]): string {
  const wanted = new Set(ids)
  const taken = units.filter(({ id }) => wanted.has(id))
  const used = new Set(taken.flatMap((unit) => Object.values(unit.fabrics)))
  return JSON.stringify({ format: 'nestwright.units', version: 1, units: taken, fabrics: fabrics.filter(({ id }) => used.has(id)) }, null, 1)
}

/** Units and fabrics from clipboard text that `writeUnits` made, or a message that says why there are none. */
export function readUnits(text: string): Read<Carried> {
  const parsed = parseJson(text)
  if (!parsed.ok) return { ok: false, place: 'text', message: message('no-copied-units') }
  const { value } = parsed
  const fields = (typeof value === 'object' && value !== null && !Array.isArray(value) ? value : {}) as Record<string, unknown>
  if (fields.format !== 'nestwright.units') return { ok: false, place: 'format', message: message('no-copied-units') }
  if (fields.version !== 1) return { ok: false, place: 'version', message: message('newer-copied-units') }
  // The rules for units and fabrics are in one place: a block with nothing else is checked.
  const read = checkBlock({
    format: 'nestwright.block',
    version: 1,
    name: '',
    measure: { unit: 'in' },
    grid: { columns: 1, rows: 1, cell: 1 },
    units: fields.units,
    fabrics: fields.fabrics,
  })
  if (!read.ok) return read
  const { units, fabrics } = read.value
  return units.length === 0 ? { ok: false, place: 'units', message: message('no-copied-units') } : { ok: true, value: { units, fabrics } }
}

/** Gives units ids that are free in the block; a fabric the block already has (same name, same looks) is reused. */
export function broughtInto(block: Block, { units, fabrics }: Carried): Carried {
  const taken = new Set<string>()
  const fresh = (id: string): string => {
    const made = freshId(block, id.replace(/-\d+$/, ''), taken)
    taken.add(made)
    return made
  }
  const called = new Map<string, string>()
  const added: Fabric[] = []
  for (const fabric of fabrics) {
    const known = block.fabrics.find((own) => isSameFabric(own, fabric))
    if (known === undefined) {
      const free = !block.fabrics.some(({ id }) => id === fabric.id) && !block.units.some(({ id }) => id === fabric.id)
      const id = free ? fabric.id : fresh(fabric.id)
      taken.add(id)
      added.push({ ...fabric, id })
      called.set(fabric.id, id)
    } else called.set(fabric.id, known.id)
  }
  const renamed = units.map((unit): Unit => {
    const fabrics = Object.fromEntries(Object.entries(unit.fabrics).map(([name, id]) => [name, called.get(id) ?? id]))
    return { ...unit, id: fresh(unit.id), fabrics }
  })
  return { units: renamed, fabrics: added }
}

const isSameFabric = ({ id: _, ...a }: Fabric, { id: __, ...b }: Fabric): boolean =>
  JSON.stringify(Object.entries(a).sort()) === JSON.stringify(Object.entries(b).sort())

/** Adds units and fabrics; those whose ids are taken are left out. */
export const pasteUnits = ({ units, fabrics }: Carried): Edit => ({
  name: message('paste-units', { units: units.length }),
  change: (draft) => {
    const plain = JSON.parse(JSON.stringify({ units, fabrics })) as Mutable<Carried>
    draft.fabrics.push(...plain.fabrics.filter(({ id }) => !draft.fabrics.some((own) => own.id === id)))
    draft.units.push(...plain.units.filter(({ id }) => !draft.units.some((own) => own.id === id)))
  },
})
