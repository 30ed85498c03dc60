/** What keys, buttons and handles do alike: each acts on what is chosen and says what it did. */
import {
  copyUnits,
  freshId,
  mirrorBlock,
  mirrorUnits,
  moveUnits,
  placeUnit,
  recolourPatch,
  removeUnits,
  setTurn,
  turnBlock,
  turnUnits,
  type Turn,
} from '../../geometry/index.ts'
import { edit, look, now } from '../state/store.ts'
import { t } from '../words/words.ts'
import { newUnit, type TrayKind } from './newUnit.ts'
import { fits, pieceAt, unitsById } from './find.ts'
import { around, rectOf, type Spot } from './shapes.ts'

const block = () => now().history.block
const chosen = (): readonly string[] => now().view.chosen

function some(act: (ids: readonly string[]) => void): void {
  if (chosen().length === 0) look({ notice: 'Choose a unit first.' })
  else act(chosen())
}

export const turnChosen = (): void =>
  some((ids) => {
    edit(turnUnits(ids))
    look({ notice: 'Turned a quarter clockwise.' })
  })

/** Half a turn keeps a long unit in its cells. */
export const halfTurnChosen = (): void =>
  some((ids) => {
    const [only] = ids
    const unit = block().units.find(({ id }) => id === only)
    if (ids.length === 1 && unit !== undefined && unit.kind !== 'polygon')
      edit(setTurn(unit.id, (((unit.turn ?? 0) + 2) % 4) as Turn, unit.mirror === true))
    else {
      edit({
        name: 'turn units half round',
        change: (draft) => {
          turnUnits(ids).change(draft)
          turnUnits(ids).change(draft)
        },
      })
    }
    look({ notice: 'Turned half round.' })
  })

export const mirrorChosen = (): void =>
  some((ids) => {
    edit(mirrorUnits(ids))
    look({ notice: 'Mirrored left for right.' })
  })

export function turnWhole(): void {
  edit(turnBlock())
  look({ notice: t('The whole block is turned a quarter clockwise.') })
}

export function mirrorWhole(): void {
  edit(mirrorBlock())
  look({ notice: t('The whole block is mirrored left for right.') })
}

export const removeChosen = (): void =>
  some((ids) => {
    edit(removeUnits(ids))
    look({ notice: ids.length === 1 ? 'Unit removed.' : `${ids.length} units removed.` })
  })

export const moveChosen = (dx: number, dy: number): void =>
  some((ids) => {
    const rects = unitsById(block(), ids).map((unit) => shifted(rectOf(unit), dx, dy))
    if (!fits(block(), rects, new Set(ids))) look({ notice: 'There is no room there: the cells are taken, or lie beyond the grid.' })
    else {
      edit(moveUnits(ids, dx, dy))
      look({ notice: 'Moved.' })
    }
  })

const shifted = <R extends { at: Spot; size: Spot }>({ at, size }: R, dx: number, dy: number) => ({ at: [at[0] + dx, at[1] + dy] as Spot, size })

/** Copies go to the nearest room that is free. */
export const copyChosen = (): void =>
  some((ids) => {
    const rects = unitsById(block(), ids).map(rectOf)
    const place = freePlace(rects)
    if (place === null) {
      look({ notice: 'There is no free room for a copy; make the grid larger or remove a unit.' })
      return
    }
    const taken = new Set<string>()
    const fresh = ids.map((id) => {
      const made = freshId(block(), id.replace(/-\d+$/, ''), taken)
      taken.add(made)
      return made
    })
    edit(copyUnits(ids, place[0], place[1], fresh))
    look({ chosen: fresh, notice: 'Copied.' })
  })

function freePlace(rects: readonly { at: Spot; size: Spot }[]): Spot | null {
  const all = around(rects)
  if (all === null) return null
  const { columns, rows } = block().grid
  const places: Spot[] = []
  for (let y = 0; y + all.size[1] <= rows; y++) for (let x = 0; x + all.size[0] <= columns; x++) places.push([x - all.at[0], y - all.at[1]])
  places.sort((a, b) => Math.hypot(...a) - Math.hypot(...b))
  return (
    places.find(([dx, dy]) =>
      fits(
        block(),
        rects.map((rect) => shifted(rect, dx, dy)),
        new Set(),
      ),
    ) ?? null
  )
}

export function placeAt(kind: TrayKind, at: Spot): void {
  const unit = newUnit(block(), kind, at)
  if (!fits(block(), [rectOf(unit)], new Set())) {
    look({ notice: 'It does not fit there: the cells are taken, or lie beyond the grid.' })
    return
  }
  edit(placeUnit(unit))
  look({ chosen: [unit.id], patch: null, notice: 'Placed.' })
}

export function pourAt(fabric: string, at: Spot): void {
  const piece = pieceAt(block(), at)
  if (piece?.unit == null) {
    look({ notice: 'There is no patch there to recolour.' })
    return
  }
  edit(recolourPatch(piece.unit, piece.name, fabric))
  look({ notice: `Recoloured to ${block().fabrics.find(({ id }) => id === fabric)?.name ?? fabric}.` })
}
