/**
 * Findings that follow the hand: a block told again after each edit, at the cost of what the edit changed.
 *
 * In      blocks one after the other; an edit leaves the units it does not touch the very same (units are never changed in place).
 * Out     for each exactly what `findings` says of it.
 * How     only lines of the plane on which a patch changed are cut anew, only pieces with a part that changed are sewn anew (see `resew`), and what was
 *         said of the same patch, seam or meeting is said again. Where the grid, the measure, the borders or the fabrics change, or a cell needs to
 *         be cut into more steps, all begins anew.
 */
import { type Laid, lay } from '../block/lay.ts'
import type { Block, Unit } from '../values/block.ts'
import { type CoverSolver, cachedCovers } from '../cutting/batches/coverCache.ts'
import type { Dot } from '../plane/points.ts'
import { Subdivision } from '../plane/subdivide.ts'
import { plansOf } from './plans.ts'
import { Resewing } from '../pressing/live/incrementalSew.ts'
import { found, Said } from './findings.ts'
import { faultsOf, outlineOf } from './sewing.ts'
import type { Findings } from '../values/report.ts'

/**
 * Each answer is worked out from the block asked before; any block may follow any other. `covers` finds the fewest batches of geese: its answers
 * hold for other fabrics and another grid too, so they outlive the table.
 */
export function following(covers: CoverSolver = cachedCovers()): (block: Block) => Findings {
  let table: Table | null = null
  return (block) => {
    try {
      if (!table?.moves(block)) table = new Table(block, covers)
      return table.tell()
    } catch (error) {
      table = null
      throw error
    }
  }
}

/** So many times more dots than there were at first: most lie where no patch is any more. */
const MOST_DOTS = 2

class Table {
  private readonly first: Block
  private laid: Laid
  private readonly plane: Subdivision
  private readonly dots: number
  private readonly resewing = new Resewing()
  private readonly said: Said
  /** Since it was sewn last: the units that changed; null where units are numbered anew. */
  private changed: readonly number[] | null = null

  constructor(block: Block, covers: CoverSolver) {
    this.said = new Said(covers)
    this.first = block
    this.laid = lay(block)
    this.plane = new Subdivision(
      this.laid.patches.map(({ corners }) => corners),
      outlineOf(this.laid),
    )
    this.dots = this.plane.dots.length
  }

  /** On to another block, if it can follow. */
  moves(block: Block): boolean {
    const { first, laid: before } = this
    if (block === before.block) return true
    const { grid, measure, borders, fabrics, units } = block
    const same = grid === first.grid && measure === first.measure && borders === first.borders && fabrics === first.fabrics
    if (!same || this.plane.dots.length > MOST_DOTS * this.dots + 1000 || !this.resewing.inOrder(units)) return false
    const laid = lay(block, before.den)
    if (laid.den !== before.den) return false
    const { gone, come, numbers, changed } = movesOf(before, laid)
    this.plane.change(gone, come, numbers, laid.patches.length)
    this.changed = this.changed === null || changed === null ? null : [...this.changed, ...changed]
    this.laid = laid
    return true
  }

  tell(): Findings {
    const { laid, plane } = this
    const faults = faultsOf(laid, plane)
    if (faults.length > 0) return found({ laid, plane, faults, depth: 'quick', sewn: null, cloth: null }, this.said)
    this.resewing.next(laid, plane, this.changed)
    this.changed = []
    const sewn = plansOf(laid, plane, laid.block.order ?? 'auto', this.resewing)
    return found({ laid, plane, faults, depth: 'quick', sewn, cloth: null }, this.said)
  }
}

interface Moves {
  readonly gone: ReadonlyMap<number, readonly Dot[]>
  readonly come: ReadonlyMap<number, readonly Dot[]>
  readonly numbers: Int32Array | null
  readonly changed: readonly number[] | null
}

/** What lies otherwise than before: patches by their numbers before and now, and the units that are new; null where others are numbered anew. */
function movesOf(before: Laid, now: Laid): Moves {
  const [old, units] = [before.block.units, now.block.units]
  const was = placesBefore(old, units)
  const numbers = new Int32Array(before.patches.length).fill(-1)
  const come = new Map<number, readonly Dot[]>()
  let renumbered = false
  now.parts.forEach(({ patches }, part) => {
    const place = part < units.length ? (was[part] as number) : part - units.length + old.length
    if (place < 0) {
      for (const patch of patches) come.set(patch, now.patches[patch]?.corners ?? [])
      return
    }
    const first = before.parts[place]?.patches[0] as number
    if (first !== patches[0]) renumbered = true
    for (let index = 0; index < patches.length; index++) numbers[first + index] = patches[index] as number
  })
  const gone = new Map<number, readonly Dot[]>()
  numbers.forEach((number, patch) => {
    if (number < 0) gone.set(patch, before.patches[patch]?.corners ?? [])
  })
  const stays = was.every((place, unit) => place < 0 || place === unit)
  const changed = stays ? was.flatMap((place, unit) => (place < 0 ? [unit] : [])) : null
  return { gone, come, numbers: renumbered ? numbers : null, changed }
}

/** Where each unit was in the list before; −1 where it was not. */
function placesBefore(old: readonly Unit[], units: readonly Unit[]): number[] {
  let known: Map<Unit, number> | null = null
  return units.map((unit, place) => {
    if (old[place] === unit) return place
    known ??= new Map(old.map((one, index) => [one, index]))
    return known.get(unit) ?? -1
  })
}
