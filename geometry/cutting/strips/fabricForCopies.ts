/**
 * Fabric for several copies of a block, all bought, or after using the stash.
 *
 * In      a block and how many of it are made; stash pieces with their fabrics and numbers on hand.
 * Out     the cut list of all copies together: halves and batches are shared between copies, so it is often less than one block's list times
 *         the number of copies. Per fabric its strips; with a stash what comes from it and what is still to buy.
 */
import { usableWidthOf } from '../../block/lengthsOf.ts'
import type { Block } from '../../values/block.ts'
import { toNumber } from '../../exact/rational.ts'
import type { Advice, CutRow, FabricRow, Problem, UnitRow } from '../../values/report.ts'
import { cutList } from '../cutList.ts'
import { type FromStash, fromStash, type StashPiece } from './stash.ts'
import { type FabricDepth, fitsAcross } from './stripsPerFabric.ts'
import { toBuyForStrips } from './yardage.ts'

export interface FabricForCopies {
  readonly copies: number
  readonly cut: readonly CutRow[]
  readonly fabric: readonly FabricRow[]
  readonly units: readonly UnitRow[]
  readonly advice: readonly Advice[]
  readonly problems: readonly Problem[]
}

export function fabricForCopies(block: Block, copies: number, depth: FabricDepth = 'proving'): FabricForCopies {
  const { units, cut, fabric, advice, problems } = cutList(block, { depth, copies })
  return { copies, units, cut, fabric, advice, problems: problems.filter(({ code }) => code === 'cloth' || code === 'method') }
}

export interface StashFor extends FromStash {
  readonly fabric: string
  /** Yards or metres. */
  readonly buy: number
}

/** Fabric to buy for some copies of a block, after cutting what the stash can give. */
export function stashFor(block: Block, stash: readonly StashPiece[], copies = 1): StashFor[] {
  const { cut } = cutList(block, { depth: 'quick', copies })
  const width = toNumber(usableWidthOf(block))
  return block.fabrics.flatMap(({ id }): StashFor[] => {
    const pieces = cut.filter((row) => row.fabric === id && fitsAcross(row, width))
    if (pieces.length === 0) return []
    const found = fromStash(
      pieces,
      stash.filter(({ fabric }) => fabric === id),
      width,
    )
    return [{ fabric: id, ...found, buy: toBuyForStrips(found.toBuy.length, block.measure.unit) }]
  })
}
