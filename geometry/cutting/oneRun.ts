/**
 * What is cut for one run of a method, and what comes out of it.
 *
 * In      a unit of a block that has been read, the method, and how much larger than needed to cut (0 for nothing), in the measure's unit.
 * Out     the pieces of the smallest lot that leaves no triangle over, and how many units it makes; or why the method cannot make the unit.
 * How     a lot is what the method makes at once; where pieces are cut into triangles, the fewest units (1, 2 or 4) that use whole squares.
 * Source  geese [S3][S5][S6], triangles [S37][S31][S24], hourglasses [S37]; sizes are those of `cutSize.ts`.
 */
import { roundOf, seamOf, usableWidthOf } from '../block/lengthsOf.ts'
import type { Block, Method, Unit } from '../values/block.ts'
import { toNumber } from '../exact/rational.ts'
import { type BoardMessage, message } from '../values/messages.ts'
import type { Batch, UnitRow } from '../values/report.ts'
import { batchOf } from './batches/geeseBatches.ts'
import { type Piece, piecesOf } from './pieces.ts'
import { crossCuts, type Rule, STRAIGHTEN, unfinished } from './sizes/cutSize.ts'
import { type MatchingUnits, matchingUnits, twoByTwo } from './matchingUnits.ts'

export interface CutPiece extends Omit<Piece, 'share' | 'for'> {
  /** Before `then`. */
  readonly count: number
}

export interface OneRun {
  readonly method: Method
  /** Finished width and height at turn 0, in the measure's unit. */
  readonly finished: readonly [number, number]
  /** What each is trimmed to, or measures once sewn. */
  readonly unfinished: readonly [number, number]
  /** Units that come out of one run. */
  readonly makes: number
  /** Of these, how many are the unit as it is drawn: geese with different wings and hourglasses of one hand come with others. */
  readonly asDrawn: number
  readonly pieces: readonly CutPiece[]
}

/** The seam allowance and cutting step of a block, in its measure's unit, with what is added to each cut size. */
export const ruleOf = (block: Block, oversize = 0): Rule => ({
  seam: toNumber(seamOf(block)),
  round: toNumber(roundOf(block)),
  oversize,
  straighten: STRAIGHTEN[block.measure.unit],
})

export function oneRun(unit: Unit, block: Block, method: Method, oversize = 0): OneRun | BoardMessage {
  const rule = ruleOf(block, oversize)
  const width = toNumber(usableWidthOf(block))
  const [matching] = matchingUnits({ ...block, units: [{ ...unit, method }] })
  if (matching === undefined) throw new Error('impossible: a unit that is like no unit')
  if (method === 'qst-2' && !twoByTwo(unit)) return message('method-needs-pairs')
  if (method === 'strip-set' && crossCuts(matching.finished[1], rule, width) === 0) return message('method-strips-too-long')
  const { makes, pieces } = lotOf(matching, rule, width)
  const { finished } = matching
  const size = [unfinished(finished[0], rule), unfinished(finished[1], rule)] as const
  return { method, finished, unfinished: size, makes, asDrawn: Math.min(makes, drawn(matching.first, method)), pieces }
}

const AT_ONCE: Partial<Record<Method, number>> = { 'hst-2': 2, 'hst-4': 4, 'hst-8': 8, 'qst-2': 2, 'geese-4': 4, 'corner-flip': 1 }

function lotOf(matching: MatchingUnits, rule: Rule, width: number): { makes: number; pieces: readonly CutPiece[] } {
  const fixed = matching.method === 'strip-set' ? crossCuts(matching.finished[1], rule, width) : AT_ONCE[matching.method]
  const lots = (fixed === undefined ? [1, 2, 4] : [fixed]).map((makes) => ({
    makes,
    pieces: merged(piecesOf(matching, rowOf(matching, makes, rule), rule, width)),
  }))
  return lots.find(({ pieces }) => pieces.every(({ count }) => Number.isInteger(count))) ?? (lots.at(-1) as (typeof lots)[number])
}

function drawn(unit: Unit, method: Method): number {
  const { leftWing, rightWing, top, right, bottom, left } = unit.fabrics
  if (method === 'geese-4') return batchFor(unit).makes.filter((wings) => wings[0] === leftWing && wings[1] === rightWing).length
  if (method !== 'qst-2') return Number.POSITIVE_INFINITY
  // The two are of opposite hand. Where opposite patches have the same fabric, turning one does not give the other: the long seam runs the other way.
  return top === bottom && right === left && top !== right ? 1 : 2
}

/** The two wing fabrics alternate round the corners, so that at least every other goose comes out as drawn. */
function batchFor({ fabrics: { goose = '', leftWing = '', rightWing = '' } }: Unit): Batch {
  return batchOf(goose, [rightWing, leftWing, rightWing, leftWing])
}

function rowOf(matching: MatchingUnits, count: number, rule: Rule): UnitRow {
  const { first, finished, method } = matching
  return {
    kind: first.kind,
    finished,
    unfinished: [unfinished(finished[0], rule), unfinished(finished[1], rule)],
    method,
    fabrics: first.fabrics,
    hand: null,
    count,
    for: [first.id],
    batches: method === 'geese-4' ? [batchFor(first)] : [],
    goes: 1,
    spare: 0,
    bias: method === 'hst-4',
  }
}

function merged(pieces: readonly Piece[]): CutPiece[] {
  const kinds = new Map<string, CutPiece>()
  for (const { share, for: _, ...piece } of pieces) {
    const key = [piece.fabric, piece.shape, ...piece.size, piece.then].join('|')
    kinds.set(key, { ...piece, count: (kinds.get(key)?.count ?? 0) + share })
  }
  return [...kinds.values()]
}
