/**
 * Findings that follow edits: the pipeline with a cache, so that each answer costs what the edit changed.
 *
 * In      blocks one after the other; an edit keeps the unit objects it does not touch (units are never changed in place). Any block may
 *         follow any other.
 * Out     for each exactly what `findings` gives.
 * How     only lines of the plane on which a patch changed are cut again, only pieces with a part that changed are sewn again (see `IncrementalSew`), and
 *         rows about the same patch, seam or crossing object are kept. Where the grid, the measure, the borders or the fabrics change, or a cell needs
 *         more steps, the cache starts again.
 */
import { editablePlaneOf } from '../block/blockPlane.ts'
import { type Laid, lay } from '../block/lay.ts'
import { type CutListCache, cutListCache } from '../cutting/cutListCache.ts'
import type { Dot } from '../plane/points.ts'
import type { Subdivision } from '../plane/subdivide.ts'
import { IncrementalSew } from '../pressing/live/incrementalSew.ts'
import type { PlanSewer } from '../pressing/plan.ts'
import type { Block, Unit } from '../values/block.ts'
import type { Findings } from '../values/report.ts'
import { FindingsCache } from './findingsCache.ts'
import { findingsOf, sewBlock } from './report.ts'
import type { SewingCache } from './sewing.ts'

/**
 * A function to be called with each block in turn. The cut list's cache is still right for other fabrics and another grid, so it
 * outlives all other caches.
 */
export function liveFindings(cutList: CutListCache = cutListCache()): (block: Block) => Findings {
  let cache: LiveCache | null = null
  return (block) => {
    cache ??= new LiveCache(cutList)
    try {
      return findingsOf(sewBlock(block, 'quick', cache), cache.findings)
    } catch (error) {
      // The caches may be half updated.
      cache = null
      throw error
    }
  }
}

/** The cache starts again when there are this many times the dots there were at first: most lie where no patch is any more. */
const MOST_DOTS = 2

/** The caches for a series of edits on one grid. */
interface Kept {
  readonly first: Block
  readonly plane: Subdivision
  /** Dots at first. */
  readonly dots: number
  readonly sewing: IncrementalSew
  readonly findings: FindingsCache
  laid: Laid
  /** Since it was sewn last: the parts that changed; null where parts are numbered again. */
  changed: readonly number[] | null
}

class LiveCache implements SewingCache {
  private readonly cutList: CutListCache
  private kept: Kept | null = null

  constructor(cutList: CutListCache) {
    this.cutList = cutList
  }

  get findings(): FindingsCache | null {
    return this.kept?.findings ?? null
  }

  lay(block: Block): Laid {
    const { kept } = this
    if (kept !== null && follows(kept, block)) {
      if (block === kept.laid.block) return kept.laid
      const laid = lay(block, kept.laid.den)
      if (laid.den === kept.laid.den) return laid
    }
    this.kept = null
    return lay(block)
  }

  subdivide(laid: Laid): Subdivision {
    const { kept } = this
    if (kept === null) return this.begin(laid)
    if (kept.laid === laid) return kept.plane
    const { gone, come, numbers, changed } = movesOf(kept.laid, laid)
    kept.plane.change(gone, come, numbers, laid.patches.length)
    kept.changed = kept.changed === null || changed === null ? null : [...kept.changed, ...changed]
    kept.laid = laid
    return kept.plane
  }

  sewer(laid: Laid): PlanSewer {
    const { sewing, plane, changed } = this.kept as Kept
    sewing.next(laid, plane, changed)
    ;(this.kept as Kept).changed = []
    return sewing
  }

  private begin(laid: Laid): Subdivision {
    const plane = editablePlaneOf(laid)
    this.kept = {
      first: laid.block,
      plane,
      dots: plane.dots.length,
      sewing: new IncrementalSew(),
      findings: new FindingsCache(this.cutList),
      laid,
      changed: null,
    }
    return plane
  }
}

/** Whether the caches can be used for a block. */
function follows({ first, laid, plane, dots, sewing }: Kept, block: Block): boolean {
  if (block === laid.block) return true
  const { grid, measure, borders, fabrics, units } = block
  const same = grid === first.grid && measure === first.measure && borders === first.borders && fabrics === first.fabrics
  return same && plane.dots.length <= MOST_DOTS * dots + 1000 && sewing.inOrder(units)
}

interface Moves {
  readonly gone: ReadonlyMap<number, readonly Dot[]>
  readonly come: ReadonlyMap<number, readonly Dot[]>
  readonly numbers: Int32Array | null
  readonly changed: readonly number[] | null
}
/** What an edit changed: patches by their numbers before and now, and the parts that are new; null where other parts have new numbers. */
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
