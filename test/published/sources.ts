/** Printed figures as numbers, and where they are printed. Rows and sources stand in `tables.json`. */
import { parseRational, toNumber } from '../../geometry/exact/rational.ts'
import tables from './tables.json' with { type: 'json' }

const titles: Readonly<Record<string, { readonly title: string; readonly publisher: string }>> = tables.sources

/** Stands in the failure. */
export const from = (tag: string): string => (titles[tag] === undefined ? 'from memory' : `${tag}: ${titles[tag].title}, ${titles[tag].publisher}`)

/** `2 7/8` */
export function length(text: string | undefined): number {
  const found = parseRational(text)
  if (found === null) throw new Error(`impossible: a table's figure that is no length: ${text}`)
  return toNumber(found)
}

/** `2 1/2 x 4 1/2`; one length alone is a square. */
export function pair(text: string): readonly [number, number] {
  const [wide, high = wide] = text.split(' x ').map(length)
  return [wide as number, high as number]
}
