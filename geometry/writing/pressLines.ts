/**
 * Pressing at a glance: row by row, or column by column, which way the seams are pressed.
 *
 * In      a report's findings.
 * Out     for each row or column that the block is joined from, its pieces, its seams and one message; the seams that join them; and whether
 *         neighbours are pressed opposite ways so that they nest. null where the block is not joined from rows or columns.
 * How     the block's last joins tell its rows; the joins of a row's own stage tell its pieces.
 * Exact   which piece lies first follows from the middles of the pieces, as decimals; which way a seam is pressed is read from the report.
 */
import { type Message, message, type PressHow, type PressWay } from '../values/messages.ts'
import type { Findings, Join } from '../values/report.ts'
import type { UnitNoun } from '../values/unitPlace.ts'
import { pointInCells, pressedTo, type SewnPiece, sewnPieces } from './pieceNames.ts'

/** A seam of a row, with the number of its place in the row, from the left or the top. */
export interface LineSeam {
  readonly join: Join
  readonly way: Exclude<PressWay, 'proposed'>
  /** Which of the join's sides lies to the left of it, or above. */
  readonly first: 0 | 1
  /** The middle of the seam, in cells. */
  readonly middle: readonly [number, number]
}

export interface PressLine {
  readonly line: 'row' | 'column'
  readonly number: number
  /** Ids of patches or joins, from the left or the top. */
  readonly pieces: readonly string[]
  readonly seams: readonly LineSeam[]
  readonly message: Message
}

interface PressLines {
  readonly line: 'row' | 'column'
  readonly lines: readonly PressLine[]
  /** The seams that join the rows, from the top; of columns, from the left. */
  readonly between: readonly LineSeam[]
  readonly betweenMessage: Message
  /** Where neighbouring lines nest because they are pressed opposite ways. */
  readonly why: Message | null
}

export function pressLines(report: Findings): PressLines | null {
  const { order: line } = report
  if (line === 'sections') return null
  const reader: Reader = { joins: new Map(report.joins.map((join) => [join.id, join])), pieces: sewnPieces(report), nouns: nounsOf(report) }
  const last = report.joins.findLast(({ stage }) => stage === 'block')
  if (last === undefined) return null
  const [word, axis] = line === 'rows' ? (['row', 0] as const) : (['column', 1] as const)
  const whole = strip(reader, last.id, 'block', axis === 0 ? 1 : 0)
  const lines = whole.pieces.map((piece): Omit<PressLine, 'message'> & { readonly how: PressHow } => {
    const { pieces, seams } = strip(reader, piece, word, axis)
    return { line: word, number: whole.pieces.indexOf(piece) + 1, pieces, seams, how: howOf(reader, pieces, seams, axis) }
  })
  return {
    line: word,
    lines: lines.map(({ how, ...one }, index) => {
      const same = lines.slice(0, index).find((other) => one.seams.length > 0 && JSON.stringify(other.how) === JSON.stringify(how))
      return {
        ...one,
        message: message('press-line', { line: word, number: one.number, how: same === undefined ? how : { type: 'as', number: same.number } }),
      }
    }),
    between: whole.seams,
    betweenMessage: message('press-between', { line: word, how: waysOf(whole.seams) }),
    why: nestAcross(report, lines) ? message('lines-alternate', { line: word }) : null,
  }
}

interface Reader {
  readonly joins: ReadonlyMap<string, Join>
  readonly pieces: ReadonlyMap<string, SewnPiece>
  /** By the id of a unit. */
  readonly nouns: ReadonlyMap<string, UnitNoun>
}

/** A square unit that is wider than high, or higher than wide, is a rectangle. */
const nounsOf = ({ units }: Findings): ReadonlyMap<string, UnitNoun> =>
  new Map(
    units.flatMap(({ kind, finished, for: ids }) =>
      ids.map((id): [string, UnitNoun] => [id, kind === 'square' && Math.abs(finished[0] - finished[1]) > 1e-9 ? 'rectangle' : kind]),
    ),
  )

/** What a piece was joined from at one stage, along an axis: its parts, and the seams between them. */
function strip({ joins, pieces }: Reader, piece: string, stage: Join['stage'], axis: 0 | 1): { pieces: string[]; seams: LineSeam[] } {
  const [parts, seams]: [string[], LineSeam[]] = [[], []]
  const left = [piece]
  while (left.length > 0) {
    const id = left.pop() as string
    const join = joins.get(id)
    if (join?.stage !== stage) parts.push(id)
    else {
      left.push(...join.sides)
      const [from, to] = [pointInCells(join.from), pointInCells(join.to)]
      seams.push({ join, ...wayOf(join, pieces), middle: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] })
    }
  }
  const along = (id: string): number => pieces.get(id)?.middle[axis] ?? 0
  return { pieces: parts.sort((a, b) => along(a) - along(b)), seams: seams.sort((a, b) => a.middle[axis] - b.middle[axis]) }
}

/** Seams between the pieces of rows and columns are square to the grid. */
function wayOf(join: Join, pieces: ReadonlyMap<string, SewnPiece>): Pick<LineSeam, 'way' | 'first'> {
  const { toward } = join.press
  const [one, other] = ([0, 1] as const).map((side) => pressedTo(join, side, pieces))
  const first = one?.sideways === 'left' || one?.vertical === 'up' ? 0 : 1
  const pressed = toward === 0 ? one : other
  return { way: toward === 'open' ? toward : pressed?.vertical || pressed?.sideways || 'open', first }
}

/** Toward the geese, where that says it all; else the ways as they lie on the table. */
function howOf({ pieces, nouns }: Reader, parts: readonly string[], seams: readonly LineSeam[], axis: 0 | 1): PressHow {
  if (seams.length === 0) return { type: 'none' }
  const noun = (index: number): UnitNoun | undefined => {
    const called = pieces.get(parts[index] ?? '')?.called
    return called?.type === 'unit' ? nouns.get(called.id ?? '') : undefined
  }
  const forward = axis === 0 ? 'right' : 'down'
  const toward = seams.map(({ way }, index) => index + (way === forward ? 1 : 0))
  const away = seams.map(({ way }, index) => index + (way === forward ? 0 : 1))
  const [first] = toward
  const target = noun(first as number)
  const told = target !== undefined && toward.every((index) => noun(index) === target) && away.every((index) => noun(index) !== target)
  if (!told || seams.some(({ way }) => way === 'open')) return waysOf(seams)
  return { type: 'toward', noun: target, many: new Set(toward).size > 1 }
}

function waysOf(seams: readonly LineSeam[]): PressHow {
  const ways = seams.map(({ way }) => way)
  const [first] = ways
  if (first === undefined) return { type: 'none' }
  return ways.every((way) => way === first) ? { type: 'way', way: first } : { type: 'ways', ways }
}

/** Whether, somewhere, a seam of one line nests with a seam of the next. */
function nestAcross({ meetings }: Findings, lines: readonly Pick<PressLine, 'seams' | 'number'>[]): boolean {
  const lineOf = new Map(lines.flatMap(({ seams, number }) => seams.map(({ join }) => [join.id, number] as const)))
  return meetings.some(({ verdict, seams }) => verdict === 'nests' && seams.every((id) => lineOf.has(id)))
}
