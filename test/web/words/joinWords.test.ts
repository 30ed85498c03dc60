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
  const words = joinWords(report, block)
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
    expect(joinWords(report, eveningStar)(report.joins.length).size).toBe('Now 12 1/2 by 12 1/2 in.')
  })

  it('say two squares and the way to press them', () => {
    const block = blockOf(2, 1, [square('one', [0, 0]), square('two', [1, 0], [1, 1], 'b')], { press: [{ at: [1, 0.5], toward: [1.5, 0.5] }] })
    expect(joinWords(findings(block), block)(1)).toEqual({
      sew: 'Sew the left-hand square to the right-hand square.',
      then: 'Press to the right, toward the right-hand square. You asked for this.',
      size: 'Now 6 1/2 by 3 1/2 in.',
    })
  })

  it('say what to look after: a pair of nested seams', () => {
    const block = blockOf(2, 2, [square('a', [0, 0]), square('b', [1, 0], [1, 1], 'b'), square('c', [0, 1], [1, 1], 'b'), square('d', [1, 1])], {
      order: 'rows',
    })
    expect(joinWords(findings(block), block)(3).then).toMatch(/^Butt one pair of nested seams\. Press (up|down), toward row [12]\./)
  })

  it('point at the seams of geese made four at a time, and sew those of single pieces', () => {
    const [goose] = eveningStar.units.filter(({ kind }) => kind === 'goose')
    const made = (method: 'geese-4' | 'plain') => {
      const block: Block = { ...eveningStar, units: eveningStar.units.map((unit) => (unit.kind === 'goose' ? { ...unit, method } : unit)) }
      const report = findings(block)
      const words = joinWords(report, block)
      const own = new Set(report.patches.flatMap(({ id, unit }) => (unit === goose?.id ? [id] : [])))
      return report.joins.flatMap(({ sides }, index) => (sides.some((side) => own.has(side)) ? [words(index + 1).sew] : [])).slice(0, 2)
    }
    expect(made('geese-4').sort()).toEqual(['Top goose: the seam at the left wing.', 'Top goose: the seam at the right wing.'])
    expect(made('plain')[0]).toMatch(/^Top goose: sew the (left|right) wing to the centre triangle\.$/)
  })

  it('add one unit after another to a row, then one row to the other', () => {
    const block = blockOf(
      3,
      2,
      [0, 1, 2, 3, 4, 5].map((n) => square(`s${n}`, [n % 3, Math.floor(n / 3)], [1, 1], n % 2 === 0 ? 'a' : 'b')),
      { order: 'rows' },
    )
    const report = findings(block)
    const words = joinWords(report, block)
    const said = report.joins.map((_, index) => words(index + 1).sew)
    expect(said).toContain('Sew the top left square to the top square.')
    expect(said).toContain('Add the top right square to the row.')
    expect(said.at(-1)).toBe('Sew row 1 to row 2.')
  })

  it('never have the id of a unit', () => {
    for (const [, block] of BLOCKS) {
      const words = joinWords(findings(block), block)
      const ids = block.units.map(({ id }) => id).filter((id) => /\d/.test(id))
      findings(block).joins.forEach((_, index) => {
        const { sew, then } = words(index + 1)
        for (const id of ids) expect(`${sew} ${then}`.split(/[^\w-]/)).not.toContain(id)
      })
    }
  })
})
