/**
 * What batches of four make, and which of it is spare.
 *
 * In      the wings [left, right] of the geese that each batch makes, and of those the block needs, as seen with the tip up.
 * Out     each different goose once, in the order it is first made: how many are made, and how many of them the block does not need.
 */
import type { Wings } from './geeseBatches.ts'

interface GeeseMade {
  readonly wings: Wings
  readonly made: number
  readonly spare: number
}

export function geeseMade(batches: readonly { readonly makes: readonly Wings[] }[], needed: readonly Wings[]): GeeseMade[] {
  const counts = new Map<string, { wings: Wings; made: number }>()
  for (const wings of batches.flatMap(({ makes }) => makes)) {
    const key = keyOf(wings)
    counts.set(key, { wings, made: (counts.get(key)?.made ?? 0) + 1 })
  }
  return [...counts].map(([key, one]) => ({ ...one, spare: Math.max(0, one.made - needed.filter((wings) => keyOf(wings) === key).length) }))
}

const keyOf = (wings: Wings): string => wings.join('\n')
