/**
 * What a booklet tells a maker to cut, read from its sentences, against printed cut lists.
 *
 * Source  printed cut lists; the source's tag (see `SOURCES.md`) stands beside each block; `once` and `twice`: then cut corner to corner.
 */
import { describe, expect, it } from 'vitest'
import { type Block, bookletOf, report } from '../../geometry/index.ts'
import * as draw from './blocks.ts'

// biome-ignore format: one block a line reads like the table it is
const PRINTED: readonly (readonly [Block, string, string])[] = [
  [draw.churnDash(2), '4 x 2 7/8 once, 8 x 1 1/2 x 2 1/2, 1 x 2 1/2', 'Churn Dash 6 [S182]'],
  [draw.shooFly(), '4 x 4 7/8, 5 x 4 1/2', 'Shoo Fly 12 [S192]'],
  [draw.friendshipStar(2, 'plain'), '4 x 2 7/8 once, 5 x 2 1/2', 'Friendship Star 6 [S190]'],
  [draw.sawtoothStar(2, 'corner-flip'), '1 x 4 1/2, 4 x 2 1/2 x 4 1/2, 12 x 2 1/2', 'Sawtooth Star 8 [S194]'],
  [draw.sawtoothStar(2, 'plain'), '1 x 5 1/4 twice, 4 x 2 7/8 once, 4 x 2 1/2, 1 x 4 1/2', 'Sawtooth Star 8, triangles [S195]'],
  [draw.sawtoothStar('1 1/2', 'corner-flip'), '4 x 2 x 3 1/2, 1 x 3 1/2, 12 x 2', 'Sawtooth Star 6 [S196]'],
  [draw.ohioStar(4, 'plain'), '4 x 5 1/4 twice, 5 x 4 1/2', 'Ohio Star 12 [S197]'],
  [draw.ohioStar('3 1/2', 'qst-2'), '4 x 4 3/4, 5 x 4', 'Ohio Star 10 1/2 [S199]'],
  [draw.jacobsLadder(), '20 x 2 1/2, 4 x 4 7/8', "Jacob's Ladder 12 [S201]"],
  [draw.brokenDishes(), '4 x 3', 'Broken Dishes 4 1/4 [S204]'],
  [draw.railFence(), '3 x 2 1/2 x 6 1/2', 'Rail Fence 6 [S212]'],
  [draw.atticWindows(), '1 x 6 1/2, 2 x 2 1/2 x 6 1/2, 2 x 2 7/8 once', 'Attic Windows 8 [S101]'],
]

describe.each(PRINTED)('%#', (block, printed, source) => {
  const booklet = bookletOf(report(block), block)

  it(`cuts what is printed: ${source}`, () => {
    const told = booklet.parts.filter(({ key }) => key === 'cut').flatMap(({ steps }) => steps.flatMap(({ sentences }) => sentences.flatMap(cutIn)))
    expect(summed(told)).toEqual(summed(printed.split(', ').map(fromPrint)))
  })

  it('ends with a block of the printed size and two seam allowances', () => {
    const joined = booklet.parts
      .find(({ key }) => key === 'join')
      ?.steps.at(-1)
      ?.sentences.at(-1)
    const size = booklet.facts.find(({ what }) => what === 'Unfinished size')?.said
    if (joined !== undefined) expect(joined).toBe(`The block should measure ${size}.`)
  })
})

interface Cut {
  readonly count: number
  readonly what: string
}

const SAID = /^Cut (\d+) (?:squares?|rectangles?) (.+?) × (.+?) in,.*?(?:Cut (?:it|each) (once|twice) from corner to corner)?[^.]*\.?$/

function cutIn(sentence: string): Cut[] {
  // Strips are cut first; what is cut from them is counted.
  if (!/^Cut \d/.test(sentence) || /^Cut \d+ strips? /.test(sentence)) return []
  const found = SAID.exec(sentence)
  if (found === null) throw new Error(`a sentence that cannot be read: ${sentence}`)
  const [, count, width, height] = found as unknown as [string, string, string, string]
  const then = / (once|twice) from corner/.exec(sentence)?.[1] ?? ''
  return [{ count: Number(count), what: named([width, height], then) }]
}

function fromPrint(text: string): Cut {
  const [count, ...rest] = text.split(' x ')
  const [, then = ''] = /(once|twice)$/.exec(text) ?? []
  const sizes = rest.map((size) => size.replace(/ (once|twice)$/, ''))
  return { count: Number(count), what: named([sizes[0] as string, sizes[1] ?? (sizes[0] as string)], then) }
}

const named = (sizes: readonly string[], then: string): string => `${[...sizes].sort().join(' x ')} ${then}`.trim()

function summed(cuts: readonly Cut[]): Record<string, number> {
  const sums: Record<string, number> = {}
  for (const { count, what } of cuts) sums[what] = (sums[what] ?? 0) + count
  return sums
}
