/**
 * Stars of four geese, and which of them one batch makes.
 *
 * In      the corners of a batch, clockwise; or a block that has been read.
 * Out     wing pairs [left, right], as seen with the tip up, of the goose on top, at the right, below and at the left; the units of each star.
 * How     the four geese of a batch may stand in any order round the star, and a turned star is the same star: so the first goose stays on top
 *         and the others change places.
 * Exact   places are compared as fractions of a cell.
 * Source  by counting.
 */
import type { Block, BoxUnit } from '../../values/block.ts'
import { add, multiply, type Rational, rational, subtract } from '../../exact/rational.ts'
import { type ExactPoint, exactPoint, sizeAtRest } from '../../units/kinds.ts'
import type { Batch } from '../../values/report.ts'
import { batchOf, type Wings } from './geeseBatches.ts'

/** From the top, clockwise. */
export type Star = readonly [Wings, Wings, Wings, Wings]

const ORDERS = [
  [0, 1, 2, 3],
  [0, 1, 3, 2],
  [0, 2, 1, 3],
  [0, 2, 3, 1],
  [0, 3, 1, 2],
  [0, 3, 2, 1],
] as const

/** Every different star of the four geese of one batch, up to turning; first those in which most neighbouring wings match. */
export function starsOfOneBatch(corners: Batch['corners']): Star[] {
  const makes = batchOf('', corners).makes
  const found = new Map<string, Star>()
  for (const order of ORDERS) {
    const star = order.map((place) => makes[place] as Wings) as unknown as Star
    const key = turnsOf(star).map(nameOf).sort()[0] as string
    if (!found.has(key)) found.set(key, star)
  }
  return [...found.values()].sort((one, other) => matchingNeighbours(other) - matchingNeighbours(one))
}

const turnsOf = (star: Star): Star[] => [0, 1, 2, 3].map((turn) => [...star.slice(turn), ...star.slice(0, turn)] as unknown as Star)
const nameOf = (star: Star): string => star.flat().join(' ')

/** How often, going round with the tips inward, a goose's left wing lies beside a right wing of the same fabric. */
function matchingNeighbours(star: Star): number {
  return star.filter(([left], place) => left === (star[(place + 1) % 4] as Wings)[1]).length
}

/** Each four geese of one size that a quarter turn round a point takes to each other: unit ids from the top, clockwise. */
export function starsIn(block: Block): (readonly [string, string, string, string])[] {
  const geese = block.units.filter((unit): unit is BoxUnit => unit.kind === 'goose')
  const there = new Map(geese.map((goose) => [placeName(middleOf(goose), goose.turn ?? 0, goose), goose.id]))
  const across = new Map<string, BoxUnit[]>()
  for (const goose of geese) {
    const [x, y] = middleOf(goose)
    const line = lineName(subtract(x, y), goose.turn ?? 0, goose)
    across.set(line, [...(across.get(line) ?? []), goose])
  }
  return geese.flatMap((top) => {
    const [x, y] = middleOf(top)
    const turn = top.turn ?? 0
    // The goose at the right is as far to the right as it is lower.
    const rights = across.get(lineName(subtract(x, y), (turn + 1) % 4, top)) ?? []
    return rights.flatMap((right) => {
      const reach = subtract(middleOf(right)[0], x)
      if (reach.n <= 0n) return []
      const below = there.get(placeName([x, add(y, multiply(reach, rational(2)))], (turn + 2) % 4, top))
      const left = there.get(placeName([subtract(x, reach), add(y, reach)], (turn + 3) % 4, top))
      return below === undefined || left === undefined ? [] : [[top.id, right.id, below, left] as const]
    })
  })
}

function middleOf(unit: BoxUnit): ExactPoint {
  const [at, size] = [exactPoint(unit.at), exactPoint(unit.size)]
  const half = rational(1, 2)
  return [add(at[0], multiply(size[0], half)), add(at[1], multiply(size[1], half))]
}

const textOf = ({ n, d }: Rational): string => `${n}/${d}`
const lineName = (line: Rational, turn: number, unit: BoxUnit): string => [textOf(line), turn, ...sizeAtRest(unit).map(textOf)].join(' ')
const placeName = ([x, y]: ExactPoint, turn: number, unit: BoxUnit): string => [textOf(x), textOf(y), turn, ...sizeAtRest(unit).map(textOf)].join(' ')
