/**
 * Edits of fabrics and of many patches at once: prints, the order of the list, swaps, whole colourings.
 *
 * In      ids of fabrics; patches by unit and name.
 * Out     named changes, as in `unitEdits.ts`; a change that does not fit leaves the draft as it is.
 */
import type { ClothColours } from '../colour/photoPalette.ts'
import { PRINT_FACTS } from '../colour/print.ts'
import type { Draft, Edit } from './unitEdits.ts'
import type { Fabric, Print } from '../values/block.ts'
import { type EditName, message } from '../values/messages.ts'

type Direction = NonNullable<Fabric['direction']>

const fabricOf = (draft: Draft, id: string): Draft['fabrics'][number] | undefined => draft.fabrics.find((fabric) => fabric.id === id)

/** Sets a fabric's print, and that kind of print's usual direction; null makes the fabric plain. A photographed fabric takes the photograph's mean colour. */
export const setPrint = (id: string, print: Print | null, colour?: string): Edit => ({
  name: message(print === null ? 'make-fabric-plain' : 'choose-print'),
  change: (draft) => {
    const fabric = fabricOf(draft, id)
    if (fabric === undefined) return
    if (print?.kind !== fabric.print?.kind) turnAs(fabric, print === null ? null : PRINT_FACTS[print.kind].direction)
    if (print === null) delete fabric.print
    else fabric.print = { ...print }
    if (colour !== undefined) fabric.colour = colour
  },
})

/** A colour chosen by dragging is one step to undo. */
export const setPrintColour = (id: string, second: string): Edit => ({
  name: message('recolour-print'),
  merge: `print ${id}`,
  change: (draft) => {
    const print = fabricOf(draft, id)?.print
    if (print !== undefined) print.second = second
  },
})

/** Sets whether a print is one-way, two-way, or may be turned freely (null). */
export const setDirection = (id: string, direction: Direction | null): Edit => ({
  name: message('set-print-direction'),
  change: (draft) => {
    const fabric = fabricOf(draft, id)
    if (fabric !== undefined) turnAs(fabric, direction)
  },
})

function turnAs(fabric: Draft['fabrics'][number], direction: Direction | null): void {
  if (direction === null) delete fabric.direction
  else fabric.direction = direction
}

/** Moves a fabric up the list (−1) or down (+1). */
export const moveFabric = (id: string, by: -1 | 1): Edit => ({
  name: message(by < 0 ? 'move-fabric-up' : 'move-fabric-down'),
  change: (draft) => {
    const from = draft.fabrics.findIndex((fabric) => fabric.id === id)
    const [one, other] = [draft.fabrics[from], draft.fabrics[from + by]]
    if (one === undefined || other === undefined) return
    draft.fabrics[from] = { ...other }
    draft.fabrics[from + by] = { ...one }
  },
})

/** Swaps two fabrics in every patch and border. */
export const exchangeFabrics = (one: string, other: string): Edit => ({
  name: message('swap-fabrics'),
  change: (draft) => {
    if (fabricOf(draft, one) === undefined || fabricOf(draft, other) === undefined || one === other) return
    const swapped = (fabric: string): string => (fabric === one ? other : fabric === other ? one : fabric)
    for (const unit of draft.units) for (const name of Object.keys(unit.fabrics)) unit.fabrics[name] = swapped(unit.fabrics[name] as string)
    for (const border of draft.borders ?? []) {
      border.fabric = swapped(border.fabric)
      if (border.corner !== undefined) border.corner = swapped(border.corner)
    }
  },
})

/** A patch of a unit, by the unit's id and its own name. */
export interface PatchName {
  readonly unit: string
  readonly name: string
}

export interface PatchColour extends PatchName {
  readonly fabric: string
}

/** Gives each named patch its fabric, as one step to undo. */
export const colourPatches = (colours: readonly PatchColour[], name: EditName = message('take-colouring')): Edit => ({
  name,
  change: (draft) => {
    const fabrics = new Set(draft.fabrics.map(({ id }) => id))
    const units = new Map(draft.units.map((unit) => [unit.id, unit]))
    for (const { unit: id, name: patch, fabric } of colours) {
      const unit = units.get(id)
      if (unit !== undefined && Object.hasOwn(unit.fabrics, patch) && fabrics.has(fabric) && unit.fabrics[patch] !== fabric)
        unit.fabrics[patch] = fabric
    }
  },
})

/** Colours for the fabrics named, in one step, for fabric and print; they become plain where they were photographs. */
export const recolourFabrics = (colours: Readonly<Record<string, ClothColours>>): Edit => ({
  name: message('recolour-fabrics'),
  change: (draft) => {
    for (const fabric of draft.fabrics) {
      const taken = Object.hasOwn(colours, fabric.id) ? colours[fabric.id] : undefined
      if (taken === undefined) continue
      fabric.colour = taken.colour
      if (fabric.print?.kind === 'photo') delete fabric.print
      else if (fabric.print !== undefined) fabric.print.second = taken.second
    }
  },
})

/** Adds fabrics the block does not have yet, at the end of the list. */
export const addFabrics = (fabrics: readonly Fabric[]): Edit => ({
  name: message('add-fabrics', { fabrics: fabrics.length }),
  change: (draft) => {
    for (const fabric of fabrics) if (fabricOf(draft, fabric.id) === undefined) draft.fabrics.push(JSON.parse(JSON.stringify(fabric)) as Fabric)
  },
})
