import { describe, expect, it } from 'vitest'
import { readBlock } from '../../geometry/block/read.ts'
import type { Unit } from '../../geometry/block/values.ts'
import { blockOf, square } from '../help.ts'

type Loose = Record<string, unknown>
const good = (): Loose =>
  JSON.parse(
    JSON.stringify(blockOf(2, 2, [square('s', [0, 0]), { id: 'h', kind: 'hst', at: [1, 0], size: [1, 1], fabrics: { upper: 'a', lower: 'b' } }])),
  ) as Loose
const unit =
  (change: Loose): ((block: Loose) => void) =>
  (block) => {
    Object.assign((block.units as Loose[])[0] as Loose, change)
  }

describe('a block file', () => {
  it.each<[string, (block: Loose) => void]>([
    ['format', (block) => Object.assign(block, { format: 'other' })],
    ['version', (block) => Object.assign(block, { version: 2 })],
    ['measure.unit', (block) => Object.assign(block, { measure: { unit: 'ell' } })],
    ['measure.seam', (block) => Object.assign(block, { measure: { unit: 'in', seam: 0 } })],
    ['measure.round', (block) => Object.assign(block, { measure: { unit: 'in', round: '-1/8' } })],
    ['grid.columns', (block) => Object.assign(block, { grid: { columns: 1.5, rows: 2, cell: 1 } })],
    ['grid.cell', (block) => Object.assign(block, { grid: { columns: 2, rows: 2, cell: '1/0' } })],
    ['fabrics', (block) => Object.assign(block, { fabrics: {} })],
    ['fabrics[0].colour', (block) => Object.assign((block.fabrics as Loose[])[0] as Loose, { colour: 'red' })],
    ['fabrics[1].id', (block) => Object.assign((block.fabrics as Loose[])[1] as Loose, { id: 'a' })],
    ['order', (block) => Object.assign(block, { order: 'spiral' })],
    ['borders[0].fabric', (block) => Object.assign(block, { borders: [{ finishedWidth: 1, fabric: 'zz' }] })],
    ['cloth.usableWidth', (block) => Object.assign(block, { cloth: { usableWidth: 0 } })],
    ['press[0].at', (block) => Object.assign(block, { press: [{ at: [1], toward: 'open' }] })],
    ['units', (block) => Object.assign(block, { units: null })],
    ['units[0].id', unit({ id: 'p:1' })],
    ['units[0].kind', unit({ kind: 'constructor' })],
    ['units[0].method', unit({ method: 'geese-4' })],
    ['units[0].fabrics', unit({ fabrics: { patch: '__proto__' } })],
    ['units[0].fabrics', unit({ fabrics: { patch: 'a', sleeve: 'a' } })],
    ['units[0].size', unit({ size: [0, 1] })],
    ['units[0].size', unit({ size: ['1e999', 1] })],
    ['units[0].turn', unit({ turn: 4 })],
    ['units[0].mirror', unit({ mirror: 'yes' })],
    ['units[0].at', unit({ at: ['1/55441', 0] })],
    ['units[0].at', unit({ at: [10001, 0] })],
    [
      'units[0].corners',
      unit({
        kind: 'polygon',
        corners: [
          [0, 0],
          [1, 1],
          [1, 0],
          [0, 1],
        ],
      }),
    ],
    [
      'units[0].corners',
      unit({
        kind: 'polygon',
        corners: [
          [0, 0],
          [1, 1],
          [2, 2],
        ],
      }),
    ],
    ['units[0].corner', unit({ kind: 'cornered', corner: 0.75, fabrics: { centre: 'a', topLeft: 'b', topRight: 'b' } })],
    ['units[0].fabrics', unit({ kind: 'strips', fabrics: { strip1: 'a', strip3: 'b' } })],
    ['units[0].size', unit({ kind: 'goose', size: [1, 1], fabrics: { goose: 'a', leftWing: 'b', rightWing: 'b' } })],
  ])('is refused at %s', (place, spoil) => {
    const block = good()
    spoil(block)
    const read = readBlock(JSON.stringify(block))
    expect(read).toMatchObject({ ok: false, place })
    if (!read.ok) expect(read.message).not.toMatch(/\n|undefined/)
  })

  it.each(['', '{', '[]', 'null', '3', '"text"', '\u0000'])('is refused where the text is %j', (text) => {
    expect(readBlock(text).ok).toBe(false)
  })

  it('keeps fields it does not know, and ids such as __proto__', () => {
    const text = JSON.stringify(good()).replace('"id":"s"', '"id":"__proto__","later":{"x":1}')
    const read = readBlock(text)
    expect(read.ok).toBe(true)
    if (read.ok) expect(JSON.stringify(read.value)).toBe(text)
  })

  it('takes a free patch with an inner corner', () => {
    const corners = [
      [0, 0],
      [2, 0],
      [2, 2],
      [1, 2],
      [1, 1],
      [0, 1],
    ] as const
    const ell: Unit = { id: 'l', kind: 'polygon', corners, fabrics: { patch: 'a' } }
    expect(readBlock(JSON.stringify(blockOf(2, 2, [ell]))).ok).toBe(true)
  })
})
