/**
 * How many batches of geese a colouring takes, counted again and again for one layout.
 *
 * In      a laid block; then the fabric of each of its patches.
 * Out     the least number of four-at-a-time batches, all sizes and goose fabrics together; 0 where no goose is made four at a time.
 */
import type { Laid } from '../block/lay.ts'
import { leastBatches, type Wings } from '../cutting/batches/geeseBatches.ts'
import { toNumber } from '../exact/rational.ts'
import { methodOf, sizeAtRest } from '../units/kinds.ts'

/** Work allowed for proving the count of one colouring. */
const WORK = 20_000_000

interface Goose {
  readonly size: string
  readonly body: number
  /** As seen with the tip up: a mirrored goose has its wings exchanged. */
  readonly left: number
  readonly right: number
}

function geeseOf(laid: Laid): Goose[] {
  const { units } = laid.block
  return laid.parts.slice(0, units.length).flatMap(({ patches }, place): Goose[] => {
    const unit = units[place]
    if (unit?.kind !== 'goose' || methodOf(unit) !== 'geese-4') return []
    const patch = (name: string): number => patches.find((one) => laid.patches[one]?.name === name) as number
    const [left, right] = unit.mirror === true ? ['rightWing', 'leftWing'] : ['leftWing', 'rightWing']
    return [{ size: sizeAtRest(unit).map(toNumber).join(), body: patch('goose'), left: patch(left as string), right: patch(right as string) }]
  })
}

/** Prepares a laid block; the returned function takes a fabric id for each patch and gives the number of batches. */
export function batchesIn(laid: Laid): (fabrics: readonly string[]) => number {
  const geese = geeseOf(laid)
  const known = new Map<string, number>()
  return (fabrics) => {
    const wanted = new Map<string, Wings[]>()
    for (const { size, body, left, right } of geese) {
      const key = `${size} ${fabrics[body]}`
      const wings: Wings = [fabrics[left] as string, fabrics[right] as string]
      wanted.set(key, [...(wanted.get(key) ?? []), wings])
    }
    let sum = 0
    for (const wings of wanted.values()) {
      const key = wings.map(String).sort().join(' ')
      const count = known.get(key) ?? leastBatches('', wings, WORK).batches.length
      known.set(key, count)
      sum += count
    }
    return sum
  }
}

/** No colouring of the wings takes fewer: four geese come of a batch, and each size and goose fabric has its own. */
export function leastPossible(laid: Laid): number {
  const geese = new Map<string, number>()
  for (const { size, body } of geeseOf(laid)) {
    const key = `${size} ${laid.patches[body]?.fabric}`
    geese.set(key, (geese.get(key) ?? 0) + 1)
  }
  return [...geese.values()].reduce((sum, count) => sum + Math.ceil(count / 4), 0)
}
