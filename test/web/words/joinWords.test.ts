/** Each join in a maker's words: whole sentences, every place filled, and the size that the ruler shows. */
import { describe, expect, it } from 'vitest'
import { type Block, findings } from '../../../geometry/index.ts'
import { joinWords } from '../../../web/words/joinWords.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'
import { lantern } from '../../../web/document/starters/lantern.ts'
import { blockOf, sequence, square } from '../../help.ts'
import { tiling } from '../../layouts.ts'
import { paperBoat } from '../views/paperBoat.ts'

const random = sequence(37)
const fabric = eveningStar.fabrics[0]?.id ?? ''
const BLOCKS: readonly (readonly [string, Block])[] = [
  ['star', eveningStar],
  [
    'star with borders',
    {
      ...eveningStar,
      borders: [
        { finishedWidth: 1, fabric, corner: fabric },
        { finishedWidth: 2, fabric },
      ],
    },
  ],
  ['lantern', lantern],
  ['boat', paperBoat],
  ...Array.from({ length: 8 }, (_, index): readonly [string, Block] => [`tiling ${index}`, blockOf(4, 4, tiling(random, 4, 4))]),
]

it.each(BLOCKS)('%s is told join by join', (_, block) => {
  const report = findings(block)
  const words = joinWords(report)
  report.joins.forEach((join, index) => {
    const { sew, then, size } = words(index + 1)
    for (const sentence of [sew, then]) expect(sentence).toMatch(/^[A-Z][^{}]+\.$/)
    expect(`${sew} ${then}`).not.toMatch(/undefined|null|“”|\{/)
    expect(size === '').toBe(join.unfinished === null)
  })
})

describe('the words of known blocks', () => {
  // A star of 12 inches is 12 1/2 before it is sewn to others: common practice, no source.
  it('end with the size of the whole block', () => {
    const report = findings(eveningStar)
    expect(joinWords(report)(report.joins.length).size).toBe('Now 12 1/2 by 12 1/2 in.')
  })

  it('say two squares and the way to press them', () => {
    const report = findings(
      blockOf(2, 1, [square('left', [0, 0]), square('right', [1, 0], [1, 1], 'b')], { press: [{ at: [1, 0.5], toward: [1.5, 0.5] }] }),
    )
    expect(joinWords(report)(1)).toEqual({
      sew: 'Sew the square left to the square right.',
      then: 'Press to the right, toward the square right. You asked for this.',
      size: 'Now 6 1/2 by 3 1/2 in.',
    })
  })

  it('say what to look after: a pair of nested seams', () => {
    const block = blockOf(2, 2, [square('a', [0, 0]), square('b', [1, 0], [1, 1], 'b'), square('c', [0, 1], [1, 1], 'b'), square('d', [1, 1])], {
      order: 'rows',
    })
    expect(joinWords(findings(block))(3).then).toMatch(/^Butt one pair of nested seams\. Press (up|down), toward row [12]\./)
  })
})
