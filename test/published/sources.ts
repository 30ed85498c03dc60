/** Printed figures as numbers, and where they are printed. Rows stand in `tables.json`, titles and addresses in `SOURCES.md`. */
import { readFileSync } from 'node:fs'
import { parseRational, toNumber } from '../../geometry/exact/rational.ts'

export interface Source {
  readonly title: string
  readonly publisher: string
  readonly address: string
}

/** The rows of `SOURCES.md`: `| S17 | title | publisher | <address> |`. */
export const SOURCES: ReadonlyMap<string, Source> = new Map(
  [...readFileSync(new URL('SOURCES.md', import.meta.url), 'utf8').matchAll(/^\| (S\d+) \| (.+) \| (.+) \| <(.+)> \|$/gm)].map(
    ([, tag = '', title = '', publisher = '', address = '']) => [tag, { title, publisher, address }],
  ),
)

/** Stands in the message of a failure. */
export function from(tag: string): string {
  const source = SOURCES.get(tag)
  return source === undefined ? 'from memory' : `${tag}: ${source.title}, ${source.publisher}`
}

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
