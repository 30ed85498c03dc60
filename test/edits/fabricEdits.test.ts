import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import * as edits from '../../geometry/edits/fabricEdits.ts'
import { convertMeasure } from '../../geometry/edits/sizeEdits.ts'
import type { Edit } from '../../geometry/edits/unitEdits.ts'
import { readBlock, writeBlock } from '../../geometry/block/read.ts'
import type { Block, Print } from '../../geometry/values/block.ts'
import { applyEdit, redoStep, undoStep } from '../../web/document/history.ts'
import { FABRICS, star } from '../help.ts'

/** What holds of every edit: the block before stays, the way back and forth is exact, and the block after is a good file. */
function checkEdit(before: Block, edit: Edit): Block {
  const kept = JSON.stringify(before)
  const history = applyEdit({ block: before, past: [], future: [] }, edit)
  expect(JSON.stringify(before)).toBe(kept)
  expect(undoStep(history).block).toEqual(before)
  expect(redoStep(undoStep(history)).block).toEqual(history.block)
  expect(readBlock(writeBlock(history.block)).ok).toBe(true)
  return history.block
}

const id = fc.constantFrom('a', 'b', 'c', 'd', 'nobody')
const pair = fc.tuple(id, id)
const block = fc
  .array(fc.tuple(fc.constantFrom('b', 'c', 'd'), fc.constantFrom('b', 'c', 'd')), { minLength: 4, maxLength: 4 })
  .map((wings) => star(wings, { borders: [{ finishedWidth: 1, fabric: 'c' }] }))
const clothsOf = ({ units, borders }: Block): string[] => [
  ...units.flatMap(({ fabrics }) => Object.values(fabrics)),
  ...(borders ?? []).map(({ fabric }) => fabric),
]
const plain = star([
  ['b', 'b'],
  ['b', 'b'],
  ['b', 'b'],
  ['b', 'b'],
])
const print: Print = { kind: 'stripes', second: '#102030', repeat: '1/2' }

describe('edits of fabrics', () => {
  it('exchange two fabrics everywhere; twice is as before, and a missing fabric changes nothing', () => {
    fc.assert(
      fc.property(block, pair, (before, [one, other]) => {
        const after = checkEdit(before, edits.exchangeFabrics(one, other))
        const known = one !== other && one !== 'nobody' && other !== 'nobody'
        expect(clothsOf(after)).toEqual(
          known ? clothsOf(before).map((cloth) => (cloth === one ? other : cloth === other ? one : cloth)) : clothsOf(before),
        )
        expect(checkEdit(after, edits.exchangeFabrics(other, one))).toEqual(before)
      }),
      { numRuns: 40 },
    )
  })

  it('move a fabric by one place, and not beyond the list', () => {
    fc.assert(
      fc.property(block, id, fc.constantFrom<-1 | 1>(-1, 1), (before, which, by) => {
        const order = FABRICS.map((fabric) => fabric.id as string)
        const [from, to] = [order.indexOf(which), order.indexOf(which) + by]
        if (from >= 0 && to >= 0 && to < order.length) [order[from], order[to]] = [order[to] as string, order[from] as string]
        expect(checkEdit(before, edits.moveFabric(which, by)).fabrics.map((fabric) => fabric.id)).toEqual(order)
      }),
      { numRuns: 40 },
    )
  })

  it('colour the patches named, and no other', () => {
    const before = star([
      ['b', 'b'],
      ['b', 'b'],
      ['b', 'b'],
      ['b', 'b'],
    ])
    const after = checkEdit(
      before,
      edits.colourPatches([
        { unit: 'g0', name: 'leftWing', fabric: 'c' },
        { unit: 'g1', name: 'rightWing', fabric: 'nobody' },
        { unit: 'g2', name: 'constructor', fabric: 'c' },
        { unit: 'nobody', name: 'goose', fabric: 'c' },
      ]),
    )
    const changed = after.units.flatMap((unit, at) =>
      Object.entries(unit.fabrics).flatMap(([name, cloth]) => (before.units[at]?.fabrics[name] === cloth ? [] : [`${unit.id} ${name} ${cloth}`])),
    )
    expect(changed).toEqual(['g0 leftWing c'])
  })

  it('bring the direction of a new kind of print, keep the maker’s own direction while the kind stays, and remove it with the print', () => {
    const before = star([
      ['b', 'b'],
      ['b', 'b'],
      ['b', 'b'],
      ['b', 'b'],
    ])
    const fern = (one: Block) => one.fabrics.find((fabric) => fabric.id === 'b')
    const striped = checkEdit(before, edits.setPrint('b', print))
    expect(fern(striped)).toMatchObject({ print, direction: 'two-way' })
    const oneWay = checkEdit(striped, edits.setDirection('b', 'one-way'))
    expect(fern(checkEdit(oneWay, edits.setPrint('b', { ...print, repeat: 2 })))?.direction).toBe('one-way')
    expect(fern(checkEdit(oneWay, edits.setPrint('b', { ...print, kind: 'dots' })))?.direction).toBeUndefined()
    expect(fern(checkEdit(oneWay, edits.setPrint('b', { ...print, kind: 'sprigs' })))?.direction).toBe('one-way')
    expect(checkEdit(striped, edits.setPrint('b', null))).toEqual(before)
  })

  it('make a colour dragged over a print one step, and each other change of it a step of its own', () => {
    let history = { block: plain, past: [], future: [] } as ReturnType<typeof applyEdit>
    history = {
      ...history,
      block: star([
        ['b', 'b'],
        ['b', 'b'],
        ['b', 'b'],
        ['b', 'b'],
      ]),
    }
    for (const edit of [
      edits.setPrint('b', print),
      edits.setPrintColour('b', '#111111'),
      edits.setPrintColour('b', '#222222'),
      edits.setPrint('b', { ...print, second: '#222222', repeat: 3 }),
    ])
      history = applyEdit(history, edit)
    expect(history.past).toHaveLength(3)
  })

  it('keep a print as large as it was when the measure changes: an inch is 2.54 cm by definition', () => {
    const cm = (repeat: Print['repeat']): unknown => {
      const before = checkEdit(plain, edits.setPrint('b', { ...print, repeat }))
      return checkEdit(before, convertMeasure('cm')).fabrics[1]?.print?.repeat
    }
    expect([cm('1/2'), cm(4), cm('1/1000')]).toEqual([1.3, 10.2, 0.1])
    const back = checkEdit({ ...plain, measure: { unit: 'cm' } }, edits.setPrint('b', { ...print, repeat: 2.5 }))
    expect(checkEdit(back, convertMeasure('in')).fabrics[1]?.print?.repeat).toBe(1)
  })

  it('recolour several fabrics in one step: photographs give way to the colour', () => {
    const photo = `data:image/jpeg;base64,${Buffer.from([0xff, 0xd8, 0xff, 0xc0, 0, 11, 8, 0, 30, 0, 40, 1, 1, 0x11, 0, 0xff, 0xd9]).toString('base64')}`
    const before = checkEdit(
      star([
        ['b', 'b'],
        ['b', 'b'],
        ['b', 'b'],
        ['b', 'b'],
      ]),
      edits.setPrint('b', { kind: 'photo', repeat: 4, photo }, '#334455'),
    )
    const after = checkEdit(
      before,
      edits.recolourFabrics({ b: { colour: '#abcdef', second: '#111111' }, c: { colour: '#123456', second: '#111111' } }),
    )
    expect(after.fabrics.map(({ colour }) => colour)).toEqual([FABRICS[0].colour, '#abcdef', '#123456', FABRICS[3].colour])
    expect(after.fabrics[1]?.print).toBeUndefined()
    const striped = checkEdit(plain, edits.setPrint('c', print))
    const other = checkEdit(striped, edits.recolourFabrics({ c: { colour: '#123456', second: '#fedcba' } }))
    expect(other.fabrics[2]).toMatchObject({ colour: '#123456', print: { ...print, second: '#fedcba' } })
  })
})
