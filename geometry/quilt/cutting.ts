/**
 * The cut list of a whole quilt: the units of all places as those of one block, and the strips and pieces round them.
 *
 * In      a quilt, its laid places, its joints and borders.
 * Out     `units`, `cut` with the part each piece belongs to, `fabric`. Batches and shared squares are counted over the whole quilt.
 */
import { cellOf, usableWidthOf } from '../block/lengthsOf.ts'
import { cutList } from '../cutting/cutList.ts'
import { borderRounds, roundsOf } from '../cutting/finishing.ts'
import { ruleOf } from '../cutting/oneRun.ts'
import { squareOrRectangle } from '../cutting/pieces.ts'
import { fabricRows } from '../cutting/strips/stripsPerFabric.ts'
import { tidy } from '../exact/lengths.ts'
import { multiply, parseRational, type Rational, toFile, toNumber } from '../exact/rational.ts'
import type { Block, Fabric, FilePoint, Position, Unit } from '../values/block.ts'
import type { CutRow, FabricRow, UnitRow } from '../values/report.ts'
import type { Quilt } from '../values/quilt.ts'
import type { PlacedJoint } from './joinPlaces.ts'
import { type ExactSize, type Measures, times } from './measures.ts'
import { jointId } from './meetings.ts'
import type { LaidPlace } from './places.ts'
import type { SashRound } from './sashRound.ts'

type Part = 'block' | 'frame' | 'plain' | 'sash' | 'strip' | 'border'

export interface QuiltCutRow extends CutRow {
  readonly part: Part
  /** Strips across the usable width that one long strip is sewn from. */
  readonly pieced?: number
}

interface QuiltCutting {
  readonly units: readonly UnitRow[]
  readonly cut: readonly QuiltCutRow[]
  readonly fabric: readonly FabricRow[]
  readonly usableWidth: number
  readonly tooLarge: readonly QuiltCutRow[]
}

/** A piece to cut, before equal ones are gathered. */
interface QuiltPiece {
  readonly part: Part
  readonly fabric: string
  readonly size: readonly [number, number]
  readonly count: number
  readonly for: readonly string[]
  readonly pieced?: number
}

/** What goes round the outside: a sash, then the borders of a top of a finished size. */
interface QuiltEdge {
  readonly round: SashRound | null
  readonly top: ExactSize
}

/** The cut list of some places and joints of a quilt, or of all; with what goes round the outside, or null where that is cut another time. */
export function quiltCutting(
  quilt: Quilt,
  measures: Measures,
  places: readonly LaidPlace[],
  joints: readonly PlacedJoint[],
  edge: QuiltEdge | null,
): QuiltCutting {
  const block = allUnits(quilt, places)
  const width = usableWidthOf(block)
  const own = cutList(block, { depth: 'quick' })
  const pieces = [
    ...places.flatMap((laid) => [...blockBorders(laid), ...framePieces(laid), ...plainPiece(laid, measures)]),
    ...stripPieces(quilt, measures, joints, edge?.round ?? null, width),
    ...(edge === null ? [] : quiltBorders(quilt, block, edge.top)),
  ]
  const cut = [...own.cut.map((row): QuiltCutRow => ({ ...row, part: 'block' })), ...gathered(pieces)]
  const { rows, tooLarge } = fabricRows(block, cut, toNumber(width), 'proving')
  return { units: own.units, cut, fabric: rows, usableWidth: toNumber(width), tooLarge: tooLarge as QuiltCutRow[] }
}

/** One block of cells one unit of measure wide that holds the units of all places. */
function allUnits(quilt: Quilt, places: readonly LaidPlace[]): Block {
  const fabrics = new Map<string, Fabric>(quilt.fabrics.map((fabric) => [fabric.id, fabric]))
  const units: Unit[] = []
  for (const { block, place } of places) {
    if (block === null) continue
    for (const fabric of block.block.fabrics) if (!fabrics.has(fabric.id)) fabrics.set(fabric.id, fabric)
    const cell = cellOf(block.block)
    for (const unit of block.block.units) units.push(scaled(unit, cell, `${place.id}/${unit.id}`))
  }
  return {
    format: 'nestwright.block',
    version: 1,
    name: quilt.name,
    measure: quilt.measure,
    grid: { columns: 1, rows: 1, cell: 1 },
    fabrics: [...fabrics.values()],
    units,
    ...(quilt.cloth === undefined ? {} : { cloth: quilt.cloth }),
  }
}

function scaled(unit: Unit, cell: Rational, id: string): Unit {
  const one = (position: Position): Position => toFile(multiply(parseRational(position) as Rational, cell))
  const point = ([x, y]: FilePoint): FilePoint => [one(x), one(y)]
  if (unit.kind === 'polygon') return { ...unit, id, corners: unit.corners.map(point) }
  return { ...unit, id, at: point(unit.at), size: point(unit.size), ...(unit.corner === undefined ? {} : { corner: one(unit.corner) }) }
}

const numbers = ([across, along]: ExactSize): readonly [number, number] => [toNumber(across), toNumber(along)]

function blockBorders({ block, place }: LaidPlace): QuiltPiece[] {
  if (block === null) return []
  const cell = toNumber(cellOf(block.block))
  const { columns, rows } = block.block.grid
  return borderRounds([columns * cell, rows * cell], roundsOf(block.block), ruleOf(block.block)).flatMap(({ sides, corners, topAndBottom }) =>
    [sides, ...(corners === null ? [] : [corners]), topAndBottom].map((strip) => ({ ...strip, part: 'block' as const, for: [place.id] })),
  )
}

const framePieces = ({ frame, place }: LaidPlace): QuiltPiece[] =>
  frame.flatMap(({ fabric, sides, topAndBottom }) =>
    [sides, topAndBottom].flatMap((size) =>
      size === null ? [] : [{ part: 'frame' as const, fabric, size: numbers(size), count: 2, for: [place.id] }],
    ),
  )

function plainPiece({ place, finished: [w, h] }: LaidPlace, { seam }: Measures): QuiltPiece[] {
  if (place.plain === undefined) return []
  const seams = 2 * toNumber(seam)
  return [{ part: 'plain', fabric: place.plain, size: [toNumber(w) + seams, toNumber(h) + seams], count: 1, for: [place.id] }]
}

function quiltBorders(quilt: Quilt, block: Block, [w, h]: ExactSize): QuiltPiece[] {
  const rounds = roundsOf({ ...block, borders: quilt.borders ?? [] })
  return borderRounds([toNumber(w), toNumber(h)], rounds, ruleOf(block)).flatMap(({ sides, corners, topAndBottom }) =>
    [sides, ...(corners === null ? [] : [corners]), topAndBottom].map((strip) => ({ ...strip, part: 'border' as const, for: [] })),
  )
}

function stripPieces(
  { way = {} }: Quilt,
  measures: Measures,
  joints: readonly PlacedJoint[],
  round: SashRound | null,
  width: Rational,
): QuiltPiece[] {
  const pieces: QuiltPiece[] = []
  const put = (part: Part, fabric: string, size: ExactSize, ids: readonly string[], count = 1): void => {
    pieces.push({ part, fabric, count, for: ids, ...acrossWidth(size, width, measures.seam) })
  }
  joints.forEach(({ strip }, number) => {
    const ids = [jointId(number)]
    if (strip?.front !== undefined) put('strip', way.fabric as string, strip.front, ids)
    if (strip?.cover !== undefined) put('strip', way.coverFabric ?? (way.fabric as string), strip.cover, ids)
    for (const size of strip?.sash ?? []) put('sash', way.sash?.fabric as string, size, ids)
    if (strip?.corner != null) put('sash', way.sash?.corner as string, strip.corner, ids, strip.corners)
  })
  for (const size of [...(round?.sides ?? []), ...(round?.topAndBottom ?? [])]) put('sash', way.sash?.fabric as string, size, [])
  if (round !== null && round.corners > 0) put('sash', way.sash?.corner as string, round.corner, [], round.corners)
  return pieces.map((piece) => (piece.pieced === undefined ? piece : { ...piece, count: piece.count * piece.pieced }))
}

/** A strip longer than the usable width is sewn from strips across it, straight: each join takes two seam allowances. */
function acrossWidth(size: ExactSize, width: Rational, seam: Rational): Pick<QuiltPiece, 'size' | 'pieced'> {
  const [, length] = size
  if (length.n * width.d <= width.n * length.d) return { size: numbers(size) }
  const seams = times(seam, 2)
  const each = { n: width.n * seams.d - seams.n * width.d, d: width.d * seams.d }
  const needed = { n: length.n * seams.d - seams.n * length.d, d: length.d * seams.d }
  const [top, bottom] = [needed.n * each.d, needed.d * each.n]
  return { size: [toNumber(size[0]), toNumber(width)], pieced: Number((top + bottom - 1n) / bottom) }
}

function gathered(pieces: readonly QuiltPiece[]): QuiltCutRow[] {
  const rows = new Map<string, { piece: QuiltPiece; count: number; for: Set<string> }>()
  for (const piece of pieces) {
    const [long, short] = [Math.max(...piece.size), Math.min(...piece.size)]
    const key = [piece.part, piece.fabric, tidy(long), tidy(short), piece.pieced ?? ''].join('|')
    const row = rows.get(key) ?? { piece, count: 0, for: new Set<string>() }
    row.count += piece.count
    for (const id of piece.for) row.for.add(id)
    rows.set(key, row)
  }
  return [...rows.values()].map(({ piece, count, for: ids }) => ({
    fabric: piece.fabric,
    shape: squareOrRectangle(piece.size),
    size: [tidy(piece.size[0]), tidy(piece.size[1])],
    count,
    then: 'none',
    method: 'plain',
    for: [...ids],
    part: piece.part,
    ...(piece.pieced === undefined ? {} : { pieced: piece.pieced }),
  }))
}
