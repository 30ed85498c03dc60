/**
 * The cut list: unit rows, the pieces to cut, the fabric to buy, and what a method cannot make.
 *
 * In      a block that has been read; its layout may still have gaps.
 * Out     `units`, `cut`, `fabric`, `cloth`, `advice` of the report and problems (`method`, `cloth`, `bias-edge`, `hand`).
 */
import { cellOf, usableWidthOf } from '../block/lengthsOf.ts'
import type { Block, Unit } from '../values/block.ts'
import { EPSILON, tidy } from '../exact/lengths.ts'
import { compare, rational, toNumber } from '../exact/rational.ts'
import { exactPoint } from '../units/kinds.ts'
import type { Advice, CutRow, FabricRow, Problem, ReportPoint, UnitRow } from '../values/report.ts'
import type { CoverSolver } from './batches/coverCache.ts'
import type { CutListCache } from './cutListCache.ts'
import { BATCH_WORK, leastBatches, wingsSeen } from './batches/geeseBatches.ts'
import { borderRounds, type CutStrip, roundsOf } from './finishing.ts'
import { ruleOf } from './oneRun.ts'
import { AT_A_TIME, runsNeeded } from './runsNeeded.ts'
import { grainAdvice } from './edgeGrain.ts'
import { type Piece, piecesOf, squareOrRectangle } from './pieces.ts'
import { aligned, type Directions, directionsOf, printAdvice } from './printDirection.ts'
import { type Rule, stripSets, unfinished } from './sizes/cutSize.ts'
import { fabricRows, type FabricDepth } from './strips/stripsPerFabric.ts'
import { type MatchingUnits, matchingUnits, twoByTwo } from './matchingUnits.ts'
import { type BoardMessage, message } from '../values/messages.ts'

interface CutListParts {
  readonly units: readonly UnitRow[]
  readonly cut: readonly CutRow[]
  readonly fabric: readonly FabricRow[]
  readonly cloth: { readonly usableWidth: number }
  readonly problems: readonly Problem[]
  readonly advice: readonly Advice[]
}

interface CutListOptions {
  /** How hard to look for the least fabric; `proving` by default. */
  readonly depth?: FabricDepth
  /** How many copies of the block are made, 1 by default; the rows count the units of all copies. */
  readonly copies?: number
  /** Saves repeating the searches after an edit elsewhere. */
  readonly cache?: CutListCache
}

/**
 * The cut list of a block.
 *
 * In      a block that has been read, and how to work it out.
 * Out     rows and pieces with sizes in the measure's unit; what a method or the fabric cannot do stands in `problems`. Throws nothing.
 */
export function cutList(one: Block, { depth = 'proving', copies = 1, cache }: CutListOptions = {}): CutListParts {
  const block = copies === 1 ? one : { ...one, units: Array.from({ length: copies }, () => one.units).flat() }
  const plain = ruleOf(block)
  const width = toNumber(usableWidthOf(block))
  const problems: Problem[] = []
  const rows: UnitRow[] = []
  const pieces: Piece[] = []
  const advice: Advice[] = [...grainAdvice(one)]
  const directions = directionsOf(block)
  for (const matching of matchingUnits(block)) {
    const rule: Rule = { ...plain, oversize: matching.oversize }
    const cannot = whyNot(matching, rule, width)
    if (cannot !== null) {
      problems.push({ code: 'method', at: placeOf(matching.first), units: matching.units.map(({ id }) => id), message: cannot })
      continue
    }
    const row = rowOf(matching, rule, width, cache?.covers)
    rows.push(row)
    pieces.push(...aligned(piecesOf(matching, row, rule, width), matching, directions))
    advice.push(...printAdvice(matching, row, block, directions), ...notLarger(matching))
    if (matching.method === 'qst-2') problems.push(...handProblem(matching))
  }
  for (let copy = 0; copy < copies; copy++) pieces.push(...borderPieces(block, plain, directions))
  const cut = gathered(pieces).map((row) => {
    // A piece wider than the fabric is cut along it, whatever its print.
    if (row.fixed !== true || row.size[0] <= width + EPSILON) return row
    const { fixed: _, ...free } = row
    if (row.size[1] <= width + EPSILON) advice.push(turnedToFit(block, row))
    return free
  })
  const { rows: fabric, tooLarge } = fabricRows(block, cut, width, depth, cache?.strips)
  problems.push(...biasEdge(block), ...tooLarge.map((piece) => tooLargeProblem(block, piece)))
  return { units: rows, cut, fabric, cloth: { usableWidth: width }, problems, advice }
}

function placeOf(unit: Unit): ReportPoint {
  return (unit.kind === 'polygon' ? unit.corners[0] : unit.at) as ReportPoint
}

function whyNot({ first, method, finished }: MatchingUnits, rule: Rule, width: number): BoardMessage | null {
  if (method === 'qst-2' && !twoByTwo(first)) return message('hourglass-pairs-differ')
  if (method === 'strip-set' && unfinished(finished[1], rule) > width + EPSILON) return message('strip-set-too-long')
  return null
}

function rowOf(matching: MatchingUnits, rule: Rule, width: number, covers?: CoverSolver): UnitRow {
  const { first, units, finished, method } = matching
  const count = units.length
  const base = {
    kind: first.kind,
    finished,
    unfinished: [unfinished(finished[0], rule), unfinished(finished[1], rule)] as const,
    method,
    fabrics: method === 'geese-4' ? { goose: first.fabrics.goose as string } : { ...first.fabrics },
    hand: handOf(matching),
    count,
    for: units.map(({ id }) => id),
    bias: method === 'hst-4',
    ...(matching.oversize > 0 ? { oversize: matching.oversize } : {}),
  }
  if (method === 'geese-4') {
    const { batches, proved, atLeast } = leastBatches(first.fabrics.goose as string, units.map(wingsSeen), BATCH_WORK, covers)
    return {
      ...base,
      batches,
      ...(proved ? { batchesProved: true as const } : { batchesAtLeast: atLeast }),
      goes: batches.length,
      spare: 4 * batches.length - count,
    }
  }
  if (method === 'strip-set') {
    const { sets, spare } = stripSets(count, finished[1], rule, width)
    return { ...base, batches: [], goes: sets, spare }
  }
  const { runs, spare } = runsNeeded(count, AT_A_TIME[method] ?? 1)
  return { ...base, batches: [], goes: runs, spare }
}

/** `right` where, clockwise from the right angle, the longer leg comes first. */
function handOf({ first, finished: [w, h] }: MatchingUnits): 'left' | 'right' | null {
  if (first.kind !== 'half-rectangle' || w === h) return null
  return w > h === (first.mirror !== true) ? 'right' : 'left'
}

/** Two squares make one hourglass of each hand. Which hand a drawn one is follows from its long seam and its picture together. */
function handProblem({ units, first }: MatchingUnits): Problem[] {
  const { top, right, bottom, left } = first.fabrics
  // Where the picture is its own mirror image across the long seam, turning one hand gives the other.
  if (top !== bottom || right !== left || top === right) return []
  const ofHand = (unit: Unit): boolean => {
    if (unit.kind !== 'hourglass') return false
    const { mirror, turn = 0, fabrics } = unit
    const leansBack = (mirror === true) !== (turn % 2 === 1)
    const upright = (turn % 2 === 0 ? fabrics.top : fabrics.right) === top
    return leansBack === upright
  }
  const one = units.filter(ofHand)
  const other = units.filter((unit) => !ofHand(unit))
  const most = one.length > other.length ? one : other
  if (most.length <= Math.ceil(units.length / 2)) return []
  const reason = message('hourglass-hands', { most: most.length, all: units.length })
  return [{ code: 'hand', at: placeOf(most[0] as Unit), units: most.map(({ id }) => id), message: reason }]
}

function biasEdge(block: Block): Problem[] {
  if ((block.borders ?? []).length > 0) return []
  const edge = block.units.filter((unit) => unit.method === 'hst-4' && unit.kind !== 'polygon' && atEdge(block, unit))
  if (edge.length === 0) return []
  return [
    {
      code: 'bias-edge',
      at: placeOf(edge[0] as Unit),
      units: edge.map(({ id }) => id),
      message: message('bias-at-edge'),
    },
  ]
}

function atEdge({ grid }: Block, unit: Exclude<Unit, { kind: 'polygon' }>): boolean {
  const [x, y] = exactPoint(unit.at)
  const [w, h] = exactPoint(unit.size)
  const reaches = (low: typeof x, size: typeof w, count: number): boolean =>
    low.n <= 0n || compare({ n: low.n * size.d + size.n * low.d, d: low.d * size.d }, rational(count)) >= 0
  return reaches(x, w, grid.columns) || reaches(y, h, grid.rows)
}

/** The side strips stand upright in the block, the top and bottom strips lie flat. */
function borderPieces(block: Block, rule: Rule, directions: Directions): Piece[] {
  const cell = toNumber(cellOf(block))
  const piece = ({ fabric, count }: CutStrip, size: CutStrip['size']): Piece => {
    const shape = squareOrRectangle(size)
    const fixed = shape === 'rectangle' && directions.has(fabric) ? { fixed: true as const } : {}
    return { fabric, shape, size, share: count, then: 'none', method: 'plain', for: [], ...fixed }
  }
  return borderRounds([block.grid.columns * cell, block.grid.rows * cell], roundsOf(block), rule).flatMap(({ sides, corners, topAndBottom }) => [
    piece(sides, sides.size),
    ...(corners === null ? [] : [piece(corners, corners.size)]),
    piece(topAndBottom, [topAndBottom.size[1], topAndBottom.size[0]]),
  ])
}

function notLarger({ units, first, method, oversize }: MatchingUnits): Advice[] {
  const oversized = units.filter((unit) => unit.oversize !== undefined)
  if (oversized.length === 0 || oversize > 0) return []
  return [{ code: 'oversize', at: placeOf(first), units: oversized.map(({ id }) => id), message: message('not-trimmed', { method }) }]
}

function turnedToFit(block: Block, { fabric, size, for: units }: CutRow): Advice {
  const first = block.units.find(({ id }) => id === units[0])
  const reason = message('print-turned-to-fit', { fabric: nameOf(block, fabric), size, measure: block.measure.unit })
  return { code: 'print', at: first === undefined ? [0, 0] : placeOf(first), units, message: reason }
}

/** One row for each different piece; squares that several units share are rounded up once. */
function gathered(pieces: readonly Piece[]): CutRow[] {
  const rows = new Map<string, { piece: Piece; share: number; units: Set<string> }>()
  for (const piece of pieces) {
    const [long, short] = [Math.max(...piece.size), Math.min(...piece.size)]
    const ordered = piece.shape === 'polygon' || piece.fixed ? piece.size : [long, short]
    const how = [piece.then, piece.method, piece.hand ?? '', piece.fixed ?? '']
    const key = [piece.fabric, piece.shape, ...ordered.map((length) => tidy(length as number)), ...how].join('|')
    const row = rows.get(key) ?? { piece, share: 0, units: new Set<string>() }
    row.share += piece.share
    for (const id of piece.for) row.units.add(id)
    rows.set(key, row)
  }
  return [...rows.values()].map(({ piece, share, units }) => ({
    fabric: piece.fabric,
    shape: piece.shape,
    size: [tidy(piece.size[0]), tidy(piece.size[1])],
    count: Math.ceil(share - EPSILON),
    then: piece.then,
    method: piece.method,
    for: [...units],
    ...(piece.fixed ? { fixed: true as const } : {}),
  }))
}

const nameOf = ({ fabrics }: Block, fabric: string): string => fabrics.find(({ id }) => id === fabric)?.name ?? fabric

function tooLargeProblem(block: Block, { size, fabric, for: units }: CutRow): Problem {
  const first = block.units.find(({ id }) => id === units[0])
  return {
    code: 'cloth',
    at: first === undefined ? [0, 0] : placeOf(first),
    units,
    message: message('piece-too-large', { fabric: nameOf(block, fabric), size }),
  }
}
