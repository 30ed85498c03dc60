/**
 * Every edit a maker can make, as a named pure change of the block.
 *
 * In      ids, places in cells, fabrics.
 * Out     a name for the history and a change to apply to a draft of the block. A change that does not fit leaves the draft as it is.
 * Exact   places are added and turned as fractions, so four turns and a way there and back change nothing.
 */
import { type Rational, rational, subtract } from '../exact/rational.ts'
import { exactPoint, KIND_FACTS } from '../units/kinds.ts'
import { boxAround, file, mirrorIn, shift, turnIn } from '../block/boxes.ts'
import { boxOf, type ExactBox } from '../units/unitBox.ts'
import type { Block, Border, Fabric, FilePoint, Length, Method, Mutable, Order, Position, Turn, Unit } from '../values/block.ts'
import { type EditName, message } from '../values/messages.ts'

export type { Mutable }
export type Draft = Mutable<Block>

export interface Edit {
  readonly name: EditName
  /** Successive edits with the same value here are one step to undo: a name typed letter by letter. */
  readonly merge?: string
  readonly change: (draft: Draft) => void
  /** Where a point of the block lies after the edit, given the grid before it; left out where the block itself does not move. */
  readonly moved?: (at: readonly [number, number], grid: Block['grid']) => readonly [number, number]
}

type DraftUnit = Draft['units'][number]

const unitsOf = (draft: Draft, ids: readonly string[]): DraftUnit[] => {
  const wanted = new Set(ids)
  return draft.units.filter(({ id }) => wanted.has(id))
}

/** An id that no unit or fabric of the block has: `goose`, `goose-2`, … */
export function freshId(block: Block, stem: string, alsoTaken: ReadonlySet<string> = new Set()): string {
  const taken = new Set([...block.units.map(({ id }) => id), ...block.fabrics.map(({ id }) => id), ...alsoTaken])
  const clean = stem.replace(/[^A-Za-z0-9._-]/g, '').slice(0, 50) || 'unit'
  if (!taken.has(clean)) return clean
  let number = 2
  while (taken.has(`${clean}-${number}`)) number++
  return `${clean}-${number}`
}

/** Adds a unit, unless its id is taken. */
export const placeUnit = (unit: Unit): Edit => ({
  name: message('place-units', { units: 1 }),
  change: (draft) => {
    if (!draft.units.some(({ id }) => id === unit.id)) draft.units.push(JSON.parse(JSON.stringify(unit)) as DraftUnit)
  },
})

/** Moves units by `dx`, `dy` cells. */
export const moveUnits = (ids: readonly string[], dx: Position, dy: Position): Edit => ({
  name: message('move-units', { units: ids.length }),
  change: (draft) => {
    for (const unit of unitsOf(draft, ids)) shift(unit, dx, dy)
  },
})

/** Copies units `dx`, `dy` cells away, under the new ids, in the order of `ids`. */
export const copyUnits = (ids: readonly string[], dx: Position, dy: Position, newIds: readonly string[]): Edit => ({
  name: message('copy-units', { units: ids.length }),
  change: (draft) => {
    ids.forEach((id, index) => {
      const unit = draft.units.find((one) => one.id === id)
      const newId = newIds[index]
      if (unit === undefined || newId === undefined || draft.units.some((one) => one.id === newId)) return
      const copy = JSON.parse(JSON.stringify(unit)) as DraftUnit
      copy.id = newId
      shift(copy, dx, dy)
      draft.units.push(copy)
    })
  },
})

/** Removes the units with these ids. */
export const removeUnits = (ids: readonly string[]): Edit => ({
  name: message('remove-units', { units: ids.length }),
  change: (draft) => {
    const gone = new Set(ids)
    if (draft.units.some(({ id }) => gone.has(id))) draft.units = draft.units.filter(({ id }) => !gone.has(id))
  },
})

/** The box of a unit, in cells. */
export function boxOfUnit(unit: Unit): { readonly at: readonly [number, number]; readonly size: readonly [number, number] } {
  const { low, high } = boxOf(unit)
  const number = (value: Rational): number => Number(value.n) / Number(value.d)
  return { at: [number(low[0]), number(low[1])], size: [number(subtract(high[0], low[0])), number(subtract(high[1], low[1]))] }
}

/** Turns units a quarter clockwise together, as one piece. */
export const turnUnits = (ids: readonly string[]): Edit => ({
  name: message('turn-units', { units: ids.length }),
  change: (draft) => {
    const units = unitsOf(draft, ids)
    const box = boxAround(units)
    if (box !== null) for (const unit of units) turnIn(unit, box)
  },
})

/** Mirrors units left for right together, as one piece. */
export const mirrorUnits = (ids: readonly string[]): Edit => ({
  name: message('mirror-units', { units: ids.length }),
  change: (draft) => {
    const units = unitsOf(draft, ids)
    const box = boxAround(units)
    if (box !== null) for (const unit of units) mirrorIn(unit, box)
  },
})

/** Turns the whole block a quarter clockwise, with the maker's requests about pressing and the order of joining. */
export const turnBlock = (): Edit => ({
  name: message('turn-block'),
  moved: ([x, y], { rows }) => [rows - y, x],
  change: (draft) => {
    const { columns, rows } = draft.grid
    const box: ExactBox = { low: [rational(0), rational(0)], high: [rational(columns), rational(rows)] }
    for (const unit of draft.units) turnIn(unit, box)
    draft.grid.columns = rows
    draft.grid.rows = columns
    // Rows have become columns.
    if (draft.order === 'rows' || draft.order === 'columns') draft.order = draft.order === 'rows' ? 'columns' : 'rows'
    const turned = (point: FilePoint): [Position, Position] => {
      const [x, y] = exactPoint(point)
      return file([subtract(rational(rows), y), x])
    }
    for (const word of draft.press ?? []) {
      word.at = turned(word.at)
      if (word.toward !== 'open') word.toward = turned(word.toward)
    }
  },
})

/** Mirrors the whole block left for right, with the maker's requests about pressing. */
export const mirrorBlock = (): Edit => ({
  name: message('mirror-block'),
  moved: ([x, y], { columns }) => [columns - x, y],
  change: (draft) => {
    const { columns, rows } = draft.grid
    const box: ExactBox = { low: [rational(0), rational(0)], high: [rational(columns), rational(rows)] }
    for (const unit of draft.units) mirrorIn(unit, box)
    const mirrored = (point: FilePoint): [Position, Position] => {
      const [x, y] = exactPoint(point)
      return file([subtract(rational(columns), x), y])
    }
    for (const word of draft.press ?? []) {
      word.at = mirrored(word.at)
      if (word.toward !== 'open') word.toward = mirrored(word.toward)
    }
  },
})

/** Sets a unit's own turn and mirror; its box stays where it is. */
export const setTurn = (id: string, turn: Turn, mirror: boolean): Edit => ({
  name: message('turn-units', { units: 1 }),
  change: (draft) => {
    const unit = draft.units.find((one) => one.id === id)
    if (unit === undefined || unit.kind === 'polygon') return
    if (((unit.turn ?? 0) + turn) % 2 === 1) unit.size = [unit.size[1], unit.size[0]]
    unit.turn = turn
    unit.mirror = mirror
  },
})

const hasFabric = (draft: Draft, id: string): boolean => draft.fabrics.some((fabric) => fabric.id === id)

/** Gives one patch of a unit another fabric, where the unit has such a patch and the block such a fabric. */
export const recolourPatch = (unitId: string, patchName: string, fabricId: string): Edit => ({
  name: message('recolour-patches', { patches: 1 }),
  change: (draft) => {
    const unit = draft.units.find(({ id }) => id === unitId)
    if (unit !== undefined && hasFabric(draft, fabricId) && Object.hasOwn(unit.fabrics, patchName)) unit.fabrics[patchName] = fabricId
  },
})

/** Wings of geese by their ids: [left, right] as seen with the tip up, from the right side, so exchanged where a goose is mirrored. */
export const colourWings = (wings: Readonly<Record<string, readonly [string, string]>>): Edit => ({
  name: message('recolour-wings'),
  change: (draft) => {
    for (const unit of draft.units) {
      const seen = Object.hasOwn(wings, unit.id) ? wings[unit.id] : undefined
      if (unit.kind !== 'goose' || seen === undefined || !seen.every((fabric) => hasFabric(draft, fabric))) continue
      const [left, right] = unit.mirror === true ? [seen[1], seen[0]] : seen
      unit.fabrics.leftWing = left
      unit.fabrics.rightWing = right
    }
  },
})

/** Replaces one fabric by another in every patch and border. */
export const recolourAll = (from: string, to: string): Edit => ({
  name: message('recolour-fabric-everywhere'),
  change: (draft) => {
    if (!hasFabric(draft, to)) return
    for (const unit of draft.units) for (const name of Object.keys(unit.fabrics)) if (unit.fabrics[name] === from) unit.fabrics[name] = to
    for (const border of draft.borders ?? []) {
      if (border.fabric === from) border.fabric = to
      if (border.corner === from) border.corner = to
    }
  },
})

/** Adds a fabric, unless its id is taken. */
export const addFabric = (fabric: Fabric): Edit => ({
  name: message('add-fabrics', { fabrics: 1 }),
  change: (draft) => {
    if (!hasFabric(draft, fabric.id)) draft.fabrics.push({ ...fabric })
  },
})

/** Changes a fabric's name or colour (`#rrggbb`). */
export const changeFabric = (id: string, change: { readonly name?: string; readonly colour?: string }): Edit => ({
  name: message('change-fabric'),
  merge: `fabric ${id} ${Object.keys(change).join()}`,
  change: (draft) => {
    const fabric = draft.fabrics.find((one) => one.id === id)
    if (fabric !== undefined) Object.assign(fabric, change)
  },
})

/** Fabrics that some patch, border or corner square is cut from. */
export const fabricsUsed = ({ units, borders }: Block): Set<string> =>
  new Set([
    ...units.flatMap(({ fabrics }) => Object.values(fabrics)),
    ...(borders ?? []).flatMap(({ fabric, corner }) => [fabric, ...(corner === undefined ? [] : [corner])]),
  ])

/** Removes a fabric, unless some patch or border uses it. */
export const removeFabric = (id: string): Edit => ({
  name: message('remove-fabric'),
  change: (draft) => {
    if (!fabricsUsed(draft as Block).has(id) && hasFabric(draft, id)) draft.fabrics = draft.fabrics.filter((fabric) => fabric.id !== id)
  },
})

/** Sets the method of the named units whose kind offers it. */
export const setMethod = (ids: readonly string[], method: Method): Edit => ({
  name: message('set-method'),
  change: (draft) => {
    for (const unit of unitsOf(draft, ids)) if (KIND_FACTS[unit.kind].methods.includes(method)) unit.method = method
  },
})

/** A method for each of some units, by id. */
export const setMethods = (methods: Readonly<Record<string, Method>>): Edit => ({
  name: message('set-methods'),
  change: (draft) => {
    for (const unit of unitsOf(draft, Object.keys(methods))) {
      const method = methods[unit.id]
      if (method !== undefined && KIND_FACTS[unit.kind].methods.includes(method)) unit.method = method
    }
  },
})

/** Sets how much larger these units are cut, to be trimmed once sewn; null for not at all. */
export const setOversize = (ids: readonly string[], oversize: Length | null): Edit => ({
  name: message(oversize === null ? 'cut-as-needed' : 'cut-larger'),
  change: (draft) => {
    for (const unit of unitsOf(draft, ids)) {
      if (oversize === null) delete unit.oversize
      else unit.oversize = oversize
    }
  },
})

/** How the block is joined: the order that the block file asks for. */
export const setOrder = (order: Order): Edit => ({
  name: message('set-order'),
  change: (draft) => {
    draft.order = order
  },
})

/** The block's name. */
export const setName = (name: string): Edit => ({
  name: message('name-block'),
  merge: 'name',
  change: (draft) => {
    draft.name = name
  },
})

/** The seam allowance, in the measure's unit. */
export const setSeam = (seam: Length): Edit => ({
  name: message('set-seam'),
  change: (draft) => {
    draft.measure.seam = seam
  },
})

/** Columns and rows of the grid, or the finished size of a cell in the measure's unit. Units stay in their cells. */
export const setGrid = (change: { readonly columns?: number; readonly rows?: number; readonly cell?: Length }): Edit => ({
  name: message('set-grid'),
  change: (draft) => {
    Object.assign(draft.grid, change)
  },
})

/** The borders from the inner one out, their finished widths in the measure's unit; none removes them. */
export const setBorders = (borders: readonly Border[]): Edit => ({
  name: message('set-borders'),
  change: (draft) => {
    if (borders.length === 0) delete draft.borders
    else draft.borders = borders.map((border) => ({ ...border }))
  },
})

/** The usable width of the fabrics, in the measure's unit. */
export const setUsableWidth = (usableWidth: Length): Edit => ({
  name: message('set-cloth-width'),
  change: (draft) => {
    draft.cloth = { ...draft.cloth, usableWidth }
  },
})

/** Sets whether matching units are pressed the same way. */
export const setPressAlike = (alike: boolean): Edit => ({
  name: message(alike ? 'press-units-alike' : 'press-units-apart'),
  change: (draft) => {
    if (alike) draft.pressAlike = true
    else delete draft.pressAlike
  },
})

/** Lifts, or keeps, the rule that a unit's method sets for pressing its seams. */
export const setPressFree = (ids: readonly string[], free: boolean): Edit => ({
  name: message(free ? 'lift-press-rule' : 'keep-press-rule'),
  change: (draft) => {
    for (const unit of unitsOf(draft, ids)) {
      if (free) unit.pressFree = true
      else delete unit.pressFree
    }
  },
})

/** Whether the seams inside these units are pressed open. */
export const setPressedOpen = (ids: readonly string[], open: boolean): Edit => ({
  name: message(open ? 'press-unit-open' : 'press-unit-to-one-side'),
  change: (draft) => {
    for (const unit of unitsOf(draft, ids)) {
      if (open) unit.open = true
      else delete unit.open
    }
  },
})
