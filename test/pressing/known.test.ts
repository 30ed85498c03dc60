/** Cases that makers know: what must clash, what nests, and what order or which word changes it. Common practice, no source, unless named. */
import { inEnglish } from '../../geometry/words/english.ts'
import { describe, expect, it } from 'vitest'
import { type Block, report, type Unit } from '../../geometry/index.ts'
import { blockOf, square, star } from '../help.ts'

const wings = { goose: 'a', leftWing: 'b', rightWing: 'b' }
const goose = (id: string, at: readonly [number, number], turn: 0 | 2): Unit => ({ id, kind: 'goose', at, size: [2, 1], turn, fabrics: wings })
const clashes = (block: Block): number => report(block).pressing.clashes
const freed = (block: Block, id: string): Block => ({
  ...block,
  units: block.units.map((unit) => (unit.id === id ? { ...unit, pressFree: true } : unit)),
})

describe('a star of four-at-a-time geese', () => {
  it('nests whole by rows and by columns', () => {
    for (const order of ['rows', 'columns'] as const)
      expect(
        clashes(
          star(
            [0, 1, 2, 3].map(() => ['b', 'b'] as const),
            { order },
          ),
        ),
      ).toBe(0)
  })
})

describe('geese that mirror each other', () => {
  it.each([
    ['tip to tip', 2, 0],
    ['base to base', 0, 2],
  ] as const)('%s, clash while their rule holds, and nest once one is pressed the other way', (_, upper, lower) => {
    const block = blockOf(4, 2, [goose('u', [0, 0], upper), goose('v', [2, 0], upper), goose('l', [0, 1], lower), goose('m', [2, 1], lower)], {
      order: 'rows',
    })
    expect(clashes(block)).toBeGreaterThan(0)
    expect(clashes(freed(freed(block, 'l'), 'm'))).toBe(0)
    expect(clashes(freed(freed(block, 'u'), 'v'))).toBe(0)
  })

  it('flying one after the other, do not meet as mirror images at all', () => {
    expect(clashes(blockOf(2, 2, [goose('u', [0, 0], 0), goose('l', [0, 1], 0)]))).toBe(0)
  })
})

describe('clipped corners of two neighbours', () => {
  const clipped = (id: string, x: number, corner: string): Unit => ({
    id,
    kind: 'cornered',
    at: [x, 0],
    size: [2, 2],
    corner: 1,
    fabrics: { centre: 'a', [corner]: 'b' },
  })
  // Corners that come together where the two join: mirror images, each pressed toward its corner.
  const block = blockOf(4, 2, [clipped('l', 0, 'topRight'), clipped('r', 2, 'topLeft')])

  it('clash while their rule holds, and nest once one is pressed the other way', () => {
    expect(clashes(block)).toBe(1)
    expect(clashes(freed(block, 'r'))).toBe(0)
  })
})

describe('a ring of five', () => {
  const hst = (id: string, at: readonly [number, number], turn: 0 | 1): Unit => ({
    id,
    kind: 'hst',
    at,
    size: [1, 1],
    turn,
    fabrics: { upper: 'a', lower: 'b' },
  })
  const block = blockOf(4, 4, [
    { id: 'q', kind: 'hourglass', at: [1, 1], size: [1, 1], method: 'plain', fabrics: { top: 'a', right: 'b', bottom: 'c', left: 'd' } },
    hst('ne', [2, 1], 1),
    hst('sw', [1, 2], 1),
    hst('se', [2, 2], 0),
    ...[0, 2].flatMap((y) => [square(`w${y}`, [0, y], [1, 2]), square(`e${y}`, [3, y], [1, 2])]),
    ...[0, 3].flatMap((y) => [square(`n${y}`, [1, y]), square(`s${y}`, [2, y])]),
  ])

  it('cannot nest by rows and can by columns; the proof names its seams', () => {
    const rows = report({ ...block, order: 'rows' })
    expect(rows.pressing.clashes).toBe(1)
    expect(inEnglish(rows.pressing.proof).match(/\d+/g)?.length).toBe(5)
    expect(inEnglish(rows.pressing.proof)).toContain('doesn’t come out even')
    expect(clashes({ ...block, order: 'columns' })).toBe(0)
    expect(report({ ...block, order: 'auto' }).pressing.clashes).toBe(0)
    expect(rows.meetings.find(({ verdict }) => verdict === 'clashes')?.fix.some((fix) => fix.do === 'order' && fix.what === 'columns')).toBe(true)
  })
})

describe('the maker’s request', () => {
  it('is kept by every order, and of two that are at odds the later one is kept and the earlier is named', () => {
    const four = (press: Block['press']): Block =>
      blockOf(2, 2, [square('a', [0, 0]), square('b', [1, 0], [1, 1], 'b'), square('c', [0, 1], [1, 1], 'b'), square('d', [1, 1])], {
        press: press ?? [],
      })
    for (const order of ['rows', 'columns', 'sections', 'auto'] as const) {
      const { joins, problems } = report({ ...four([{ at: [1, 0.5], toward: 'open' }]), order })
      const asked = joins.filter(({ press }) => press.rule === 'asked')
      expect([asked.map(({ press }) => press.toward), problems]).toEqual([['open'], []])
    }
    const said = report({
      ...four([
        { at: [1, 0.5], toward: [0.5, 0.5] },
        { at: [1, 0.25], toward: [1.5, 0.5] },
      ]),
      order: 'rows',
    })
    expect(said.joins.filter(({ press }) => press.rule === 'asked').map(({ press }) => press.toward)).toEqual([1])
    expect(said.problems.map(({ code, at }) => [code, at])).toEqual([['press', [1, 0.5]]])
  })
})
