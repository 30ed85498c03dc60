/**
 * Cutting strips as an integer program: a judge that knows nothing of prices, dives and searches.
 *
 * In      pieces one by one, the fabric's width, and sheets on hand.
 * Out     the least length to buy.
 * How     every strip is led by a highest piece, lying or standing: y is 1 where that piece leads a strip in that place, x where another lies in
 *         the strip it leads. A strip's pieces lie side by side within its length; strips cut from a sheet are together no higher than it, and it is
 *         laid one way or the other.
 * Source  strips across the fabric, sub-cuts side by side [S115].
 */
import loadSolver from 'highs'

export type Size = readonly [number, number]
/** Pieces, by number, that may not be turned: they stand as they are given, across and along. */
export type Fixed = (piece: number) => boolean
const noneFixed: Fixed = () => false

const highs = await loadSolver()

interface Place {
  readonly name: string
  readonly wide: number
  /** Null for the fabric. */
  readonly high: number | null
}

const HAIR = 1e-9

export function leastToBuy(pieces: readonly Size[], width: number, sheets: readonly Size[] = [], fixed: Fixed = noneFixed): number {
  const { Status, ObjectiveValue } = highs.solve(programOf(pieces, width, sheets, fixed), { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 1e-4 })
  if (Status !== 'Optimal') throw new Error(`the solver ends with: ${Status}`)
  return ObjectiveValue
}

/** The solver's result within a number of seconds, and whether it is proved to be the least; null where it has none. */
export function solvedWithin(program: string, seconds: number): { length: number; proved: boolean } | null {
  const { Status, ObjectiveValue } = highs.solve(program, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 1e-4, time_limit: seconds })
  const known = (Status === 'Optimal' || Status === 'Time limit reached') && Number.isFinite(ObjectiveValue) && ObjectiveValue > 0
  return known ? { length: ObjectiveValue, proved: Status === 'Optimal' } : null
}

/** The program in LP text. */
export function programOf(pieces: readonly Size[], width: number, sheets: readonly Size[] = [], fixed: Fixed = noneFixed): string {
  const places: Place[] = [
    { name: 'c', wide: width, high: null },
    ...sheets.flatMap(([a, b], sheet) => [
      { name: `s${sheet}a`, wide: a, high: b },
      { name: `s${sheet}b`, wide: b, high: a },
    ]),
  ]
  const costs: string[] = []
  const rows: string[] = []
  const binary: string[] = []
  const laid = pieces.map((): string[] => [])
  for (const { name, wide: room, high: limit } of places) {
    const stacked: string[] = []
    pieces.forEach((leader, index) => {
      for (const [way, [wide, high]] of ways(leader, fixed(index))) {
        if (wide > room + HAIR || (limit !== null && high > limit + HAIR)) continue
        const y = `y${name}_${index}${way}`
        binary.push(y)
        laid[index]?.push(y)
        if (limit === null) costs.push(`${high} ${y}`)
        else stacked.push(`${high} ${y}`)
        const beside: string[] = []
        pieces.forEach((other, place) => {
          const taken = wideBelow(other, high, room, fixed(place))
          if (place === index || taken === null) return
          const x = `x${name}_${index}${way}_${place}`
          binary.push(x)
          laid[place]?.push(x)
          beside.push(`${taken} ${x}`)
        })
        if (beside.length > 0) rows.push(`${beside.join(' + ')} - ${room - wide + HAIR} ${y} <= 0`)
      }
    })
    if (limit === null) continue
    binary.push(`z${name}`)
    if (stacked.length > 0) rows.push(`${stacked.join(' + ')} - ${limit + HAIR} z${name} <= 0`)
  }
  sheets.forEach((_, sheet) => {
    rows.push(`zs${sheet}a + zs${sheet}b <= 1`)
  })
  for (const once of laid) rows.push(`${once.join(' + ')} = 1`)
  const numbered = rows.map((row, index) => ` r${index}: ${row}`)
  return ['Minimize', ` ${costs.join(' + ')}`, 'Subject To', ...numbered, 'Binary', ...binary.map((name) => ` ${name}`), 'End', ''].join('\n')
}

/** [wide, high], lying and standing. */
function ways([a, b]: Size, fixed: boolean): (readonly [string, Size])[] {
  if (fixed) return [['f', [a, b]]]
  const [long, short] = [Math.max(a, b), Math.min(a, b)]
  const lying = ['l', [long, short]] as const
  return long === short ? [lying] : [lying, ['s', [short, long]]]
}

/** In a strip at least so high, standing takes less of its length than lying. */
function wideBelow(size: Size, high: number, room: number, fixed: boolean): number | null {
  const fitting = ways(size, fixed).flatMap(([, [wide, own]]) => (own <= high + HAIR && wide <= room + HAIR ? [wide] : []))
  return fitting.length === 0 ? null : Math.min(...fitting)
}
