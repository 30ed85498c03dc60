import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import * as edits from '../../geometry/edits/unitEdits.ts'
import type { Edit } from '../../geometry/edits/unitEdits.ts'
import { readBlock, writeBlock } from '../../geometry/block/read.ts'
import type { Block, FilePoint, Turn, Unit } from '../../geometry/values/block.ts'
import { add, parseRational, type Rational, rational, subtract, toFile } from '../../geometry/exact/rational.ts'
import { type ExactPoint, exactPoint, shapeOf } from '../../geometry/units/kinds.ts'
import { applyEdit } from '../../web/document/history.ts'
import { checkEdit, checkEdits } from './editLaws.ts'
import { blockOf, FABRICS, square, star } from '../help.ts'

const unitOf = (block: Block, id: string): Unit => block.units.find((unit) => unit.id === id) as Unit

type Move = (point: ExactPoint) => ExactPoint
const still: Move = (point) => point

/** Each patch of the block as text: its unit, its name, its fabric and where its corners lie, whatever corner comes first. */
function picture(block: Block, ids: readonly string[] = block.units.map(({ id }) => id), move: Move = still): string[] {
  return ids
    .map((id) => unitOf(block, id))
    .flatMap((unit) => {
      const patches = unit.kind === 'polygon' ? [{ name: 'patch', corners: unit.corners.map(exactPoint) }] : shapeOf(unit).patches
      return patches.map(({ name, corners }) => {
        const places = corners.map(move).map(([x, y]) => `${toFile(x)},${toFile(y)}`)
        return `${unit.id} ${name} ${unit.fabrics[name]} ${places.sort().join(' ')}`
      })
    })
    .sort()
}

const place = fc.tuple(fc.integer({ min: -60, max: 60 }), fc.constantFrom(1, 2, 3, 4, 8)).map(([n, d]) => toFile(rational(n, d)))
const span = fc.tuple(fc.integer({ min: 1, max: 24 }), fc.constantFrom(1, 2, 3, 4)).map(([n, d]) => rational(n, d))
const cloth = fc.constantFrom('a', 'b', 'c', 'd')
const CORNER_NAMES = ['topLeft', 'topRight', 'bottomRight', 'bottomLeft'] as const

/** Any unit that stands in a box, as a file may write it. */
const boxUnit = fc
  .record({
    kind: fc.constantFrom('square', 'hst', 'hourglass', 'goose', 'diamond', 'cornered', 'strips', 'half-rectangle'),
    at: fc.tuple(place, place),
    w: span,
    h: span,
    turn: fc.constantFrom<Turn>(0, 1, 2, 3),
    mirror: fc.boolean(),
    cloths: fc.tuple(cloth, cloth, cloth, cloth, cloth),
  })
  .map(({ kind, at, w, h, turn, mirror, cloths }): Unit => {
    const names: Record<typeof kind, readonly string[]> = {
      square: ['patch'],
      hst: ['upper', 'lower'],
      hourglass: ['top', 'right', 'bottom', 'left'],
      goose: ['goose', 'leftWing', 'rightWing'],
      diamond: ['centre', ...CORNER_NAMES],
      cornered: ['centre', 'topLeft', 'bottomRight'],
      strips: ['strip1', 'strip2', 'strip3'],
      'half-rectangle': ['upper', 'lower'],
    }
    const high = kind === 'square' || kind === 'cornered' || kind === 'strips' || kind === 'half-rectangle' ? h : kind === 'goose' ? half(w) : w
    const size: FilePoint = turn % 2 === 0 ? [toFile(w), toFile(high)] : [toFile(high), toFile(w)]
    const fabrics = Object.fromEntries(names[kind].map((name, index) => [name, cloths[index] as string]))
    return { id: 'u', kind, at, size, turn, mirror, fabrics, ...(kind === 'cornered' ? { corner: '1/12' } : {}) }
  })

const half = ({ n, d }: Rational): Rational => rational(n, d * 2n)

const polygonUnit = fc.tuple(place, place, span, span).map(([x, y, w, h]): Unit => {
  const [left, top] = exactPoint([x, y])
  const [right, bottom] = [add(left, w), add(top, h)]
  const corners: FilePoint[] = [
    [x, y],
    [toFile(right), y],
    [toFile(right), toFile(bottom)],
    [toFile(add(left, half(w))), toFile(add(top, half(h)))],
  ]
  return { id: 'u', kind: 'polygon', corners, fabrics: { patch: 'c' } }
})

const blocks = fc.array(fc.oneof({ weight: 4, arbitrary: boxUnit }, polygonUnit), { minLength: 1, maxLength: 4 }).map((units) =>
  blockOf(
    5,
    3,
    units.map((unit, index) => ({ ...unit, id: `u${index}` })),
  ),
)

const all = (block: Block): string[] => block.units.map(({ id }) => id)
const quarterAbout =
  (low: ExactPoint, height: Rational): Move =>
  ([x, y]) => [add(low[0], subtract(height, subtract(y, low[1]))), add(low[1], subtract(x, low[0]))]

/** The box round patches, from their corners alone. */
function boxOf(block: Block, ids: readonly string[]): { low: ExactPoint; high: ExactPoint } {
  const points = ids.map((id) => unitOf(block, id)).flatMap((unit) => (unit.kind === 'polygon' ? unit.corners.map(exactPoint) : boxCorners(unit)))
  const sorted = ([0, 1] as const).map((axis) => points.map((point) => point[axis]).sort((a, b) => Number(a.n * b.d - b.n * a.d)))
  return { low: [sorted[0]?.[0], sorted[1]?.[0]] as unknown as ExactPoint, high: [sorted[0]?.at(-1), sorted[1]?.at(-1)] as unknown as ExactPoint }
}

function boxCorners({ at, size }: Extract<Unit, { at: unknown }>): ExactPoint[] {
  const [low, [w, h]] = [exactPoint(at), exactPoint(size)]
  return [low, [add(low[0], w), add(low[1], h)]]
}

describe('turning, mirroring and moving', () => {
  it('reads every block that the properties are tried on', () => {
    fc.assert(
      fc.property(blocks, (block) => {
        expect(readBlock(writeBlock(block))).toEqual({ ok: true, value: JSON.parse(JSON.stringify(block)) })
      }),
    )
  })

  it('moves there and back, and every corner by as much', () => {
    fc.assert(
      fc.property(blocks, place, place, (block, dx, dy) => {
        const [x, y] = exactPoint([dx, dy])
        const there = checkEdit(block, edits.moveUnits(all(block), dx, dy))
        expect(picture(there)).toEqual(picture(block, all(block), ([px, py]) => [add(px, x), add(py, y)]))
        const back = checkEdit(there, edits.moveUnits(all(block), toFile(subtract(rational(0), x)), toFile(subtract(rational(0), y))))
        expect(picture(back)).toEqual(picture(block))
      }),
    )
  })

  it('turns every corner clockwise about the box, whose top left stays; four turns change nothing', () => {
    fc.assert(
      fc.property(blocks, (block) => {
        const ids = all(block)
        const { low, high } = boxOf(block, ids)
        const once = checkEdit(block, edits.turnUnits(ids))
        expect(picture(once)).toEqual(picture(block, ids, quarterAbout(low, subtract(high[1], low[1]))))
        expect(boxOf(once, ids).low).toEqual(low)
        expect(picture(checkEdits(once, edits.turnUnits(ids), edits.turnUnits(ids), edits.turnUnits(ids)))).toEqual(picture(block))
      }),
    )
  })

  it('mirrors every corner left for right in the box; twice changes nothing', () => {
    fc.assert(
      fc.property(blocks, (block) => {
        const ids = all(block)
        const { low, high } = boxOf(block, ids)
        const once = checkEdit(block, edits.mirrorUnits(ids))
        expect(picture(once)).toEqual(picture(block, ids, ([x, y]) => [subtract(add(low[0], high[0]), x), y]))
        expect(picture(checkEdit(once, edits.mirrorUnits(ids)))).toEqual(picture(block))
      }),
    )
  })

  it('turns the whole block about its grid, with the requests about pressing; four turns change nothing', () => {
    fc.assert(
      fc.property(blocks, place, place, (units, x, y) => {
        const block: Block = {
          ...units,
          press: [
            { at: [x, y], toward: [y, x] },
            { at: [y, 1], toward: 'open' },
          ],
        }
        const turned = quarterAbout([rational(0), rational(0)], rational(3))
        const once = checkEdit(block, edits.turnBlock())
        expect(picture(once)).toEqual(picture(block, all(block), turned))
        expect([once.grid.columns, once.grid.rows]).toEqual([3, 5])
        expect(once.press?.map(({ at }) => exactPoint(at))).toEqual(block.press?.map(({ at }) => turned(exactPoint(at))))
        const round = checkEdits(once, edits.turnBlock(), edits.turnBlock(), edits.turnBlock())
        expect(picture(round)).toEqual(picture(block))
        expect(exactPoint(round.press?.[0]?.toward as FilePoint)).toEqual(exactPoint([y, x]))
      }),
    )
  })

  it('mirrors the whole block with the requests about pressing: twice changes nothing, and a mirror undoes a turn as it should', () => {
    fc.assert(
      fc.property(blocks, (units) => {
        const block: Block = { ...units, press: [{ at: [1, '1/3'], toward: ['2/3', 0.5] }] }
        const { columns } = block.grid
        const flip: Move = ([x, y]) => [subtract(rational(columns), x), y]
        const once = checkEdit(block, edits.mirrorBlock())
        expect(picture(once)).toEqual(picture(block, all(block), flip))
        expect(once.grid).toEqual(block.grid)
        expect(once.press).toEqual([{ at: [columns - 1, '1/3'], toward: [`${3 * columns - 2}/3`, 0.5] }])
        expect(picture(checkEdit(once, edits.mirrorBlock()))).toEqual(picture(block))
        // Turn, mirror, turn, mirror: nothing.
        const round = checkEdits(block, edits.turnBlock(), edits.mirrorBlock(), edits.turnBlock(), edits.mirrorBlock())
        expect(picture(round)).toEqual(picture(block))
      }),
    )
  })

  it('gives the new place of each point of the block', () => {
    const grid = { columns: 5, rows: 3, cell: 1 }
    expect(edits.turnBlock().moved?.([4, 1], grid)).toEqual([2, 4])
    expect(edits.mirrorBlock().moved?.([4, 1], grid)).toEqual([1, 1])
  })

  it('leaves a turned goose where it was, its box upright', () => {
    const after = checkEdit(
      star([
        ['b', 'c'],
        ['b', 'b'],
        ['b', 'b'],
        ['b', 'b'],
      ]),
      edits.turnUnits(['g0']),
    )
    expect(unitOf(after, 'g0')).toMatchObject({ at: [1, 0], size: [1, 2], turn: 3 })
  })

  it.each<[Turn, boolean, Turn, boolean]>([
    // A mirror after t quarter turns is a mirror before t turns the other way.
    [0, false, 0, true],
    [1, false, 3, true],
    [2, false, 2, true],
    [3, true, 1, false],
  ])('mirrors a goose of turn %d, mirror %s into turn %d, mirror %s', (turn, mirror, wantedTurn, wantedMirror) => {
    const size: FilePoint = turn % 2 === 0 ? [2, 1] : [1, 2]
    const goose: Unit = { id: 'g', kind: 'goose', at: [0, 0], size, turn, mirror, fabrics: { goose: 'a', leftWing: 'b', rightWing: 'c' } }
    expect(unitOf(checkEdit(blockOf(2, 2, [goose]), edits.mirrorUnits(['g'])), 'g')).toMatchObject({ turn: wantedTurn, mirror: wantedMirror, size })
  })

  it('sets a unit’s own turn and mirror, the top left of its box staying', () => {
    fc.assert(
      fc.property(boxUnit, fc.constantFrom<Turn>(0, 1, 2, 3), fc.boolean(), (unit, turn, mirror) => {
        const before = blockOf(5, 3, [unit])
        const after = checkEdit(before, edits.setTurn('u', turn, mirror))
        expect(unitOf(after, 'u')).toMatchObject({ turn, mirror, at: 'at' in unit ? unit.at : null })
        const { turn: was, mirror: wasMirror } = unit as { turn: Turn; mirror: boolean }
        expect(picture(checkEdit(after, edits.setTurn('u', was, wasMirror)))).toEqual(picture(before))
      }),
    )
  })
})

describe('a named edit', () => {
  const block = blockOf(2, 2, [square('s', [0, 0]), { id: 'h', kind: 'hst', at: [1, 0], size: [1, 1], fabrics: { upper: 'a', lower: 'b' } }], {
    borders: [{ finishedWidth: 1, fabric: 'c' }],
    press: [{ at: ['1/2', 1], toward: 'open' }],
    measure: { unit: 'in', seam: '3/8', round: '1/4' },
    cloth: { usableWidth: 40 },
  })
  const first = (result: Block): unknown => result.units[0]

  it.each<[string, Edit, (after: Block) => unknown, unknown]>([
    ['place', edits.placeUnit(square('t', [1, 1])), (after) => after.units.map(({ id }) => id), ['s', 'h', 't']],
    ['copy', edits.copyUnits(['h', 's'], '1/3', -1, ['h2', 's2']), (after) => after.units.slice(2).map(({ id }) => id), ['h2', 's2']],
    ['copy by fractions', edits.copyUnits(['h'], '1/3', 0.5, ['h2']), (after) => after.units[2], { ...block.units[1], id: 'h2', at: ['4/3', 0.5] }],
    ['remove', edits.removeUnits(['s']), (after) => after.units.map(({ id }) => id), ['h']],
    ['recolour a patch', edits.recolourPatch('h', 'lower', 'd'), (after) => after.units[1]?.fabrics, { upper: 'a', lower: 'd' }],
    ['recolour all', edits.recolourAll('a', 'd'), (after) => after.units.map(({ fabrics }) => fabrics), [{ patch: 'd' }, { upper: 'd', lower: 'b' }]],
    ['recolour borders too', edits.recolourAll('c', 'd'), (after) => after.borders, [{ finishedWidth: 1, fabric: 'd' }]],
    ['add a fabric', edits.addFabric({ id: 'e', name: 'Plum', colour: '#553355' }), (after) => after.fabrics.length, FABRICS.length + 1],
    ['change a fabric', edits.changeFabric('a', { colour: '#000000' }), (after) => after.fabrics[0], { ...FABRICS[0], colour: '#000000' }],
    ['remove a fabric', edits.removeFabric('d'), (after) => after.fabrics.map(({ id }) => id), ['a', 'b', 'c']],
    ['method', edits.setMethod(['s', 'h'], 'hst-4'), (after) => after.units.map(({ method }) => method), [undefined, 'hst-4']],
    ['methods', edits.setMethods({ s: 'hst-8', h: 'hst-8' }), (after) => after.units.map(({ method }) => method), [undefined, 'hst-8']],
    ['cut larger', edits.setOversize(['s'], '1/8'), first, { ...block.units[0], oversize: '1/8' }],
    ['corner squares', edits.setBorders([{ finishedWidth: 2, fabric: 'd', corner: 'a' }]), (after) => after.borders?.[0]?.corner, 'a'],
    ['order', edits.setOrder('columns'), (after) => after.order, 'columns'],
    ['name', edits.setName('Dawn'), (after) => after.name, 'Dawn'],
    ['seam', edits.setSeam('1/2'), (after) => after.measure, { unit: 'in', seam: '1/2', round: '1/4' }],
    ['grid', edits.setGrid({ columns: 3, cell: '2 1/2' }), (after) => after.grid, { columns: 3, rows: 2, cell: '2 1/2' }],
    ['borders', edits.setBorders([{ finishedWidth: 2, fabric: 'd' }]), (after) => after.borders, [{ finishedWidth: 2, fabric: 'd' }]],
    ['no borders', edits.setBorders([]), (after) => 'borders' in after, false],
    ['cloth', edits.setUsableWidth(44), (after) => after.cloth, { usableWidth: 44 }],
    ['lift a rule', edits.setPressFree(['s'], true), first, { ...block.units[0], pressFree: true }],
    ['open', edits.setPressedOpen(['s'], true), first, { ...block.units[0], open: true }],
  ])('does what it says: %s', (_, edit, look, wanted) => {
    expect(look(checkEdit(block, edit))).toEqual(wanted)
  })

  it.each<[string, Edit]>([
    ['an id that is taken', edits.placeUnit(square('s', [1, 1]))],
    ['a copy under an id that is taken', edits.copyUnits(['s'], 1, 1, ['h'])],
    ['units that are not there', edits.removeUnits(['constructor', '__proto__'])],
    ['a patch that the unit does not have', edits.recolourPatch('s', 'constructor', 'b')],
    ['a fabric that is not there', edits.recolourPatch('s', 'patch', '__proto__')],
    ['every patch to a fabric that is not there', edits.recolourAll('a', 'constructor')],
    ['a fabric that a patch is cut from', edits.removeFabric('b')],
    ['a fabric that a border is cut from', edits.removeFabric('c')],
    ['a fabric that is not there to remove', edits.removeFabric('zz')],
    ['a fabric id that is taken', edits.addFabric({ id: 'a', name: 'Ash', colour: '#111111' })],
    ['a method of another kind', edits.setMethod(['s'], 'geese-4')],
    ['a turn of nothing', edits.turnUnits([])],
  ])('leaves the block and the history as they are: %s', (_, edit) => {
    const history = { block, past: [], future: [] }
    expect(applyEdit(history, edit)).toBe(history)
  })

  it('removes the maker’s request on a unit', () => {
    expect(
      checkEdits(
        block,
        edits.setPressedOpen(['s'], true),
        edits.setPressFree(['s'], true),
        edits.setPressedOpen(['s'], false),
        edits.setPressFree(['s'], false),
      ),
    ).toEqual(block)
  })

  it('finds an id that nothing has', () => {
    expect(edits.freshId(block, 'goose')).toBe('goose')
    expect(edits.freshId(block, 's')).toBe('s-2')
    expect(edits.freshId(block, 's', new Set(['s-2']))).toBe('s-3')
    expect(edits.freshId(block, 'a'), 'a fabric has it').toBe('a-2')
    expect(edits.freshId(block, ':: ')).toBe('unit')
    expect(edits.freshId(block, 'x'.repeat(100)).length).toBeLessThanOrEqual(64)
  })

  it('keeps the fields of a unit that it does not know', () => {
    const later: Unit = Object.assign(square('s', [0, 0]), { later: { x: [1] } })
    const after = checkEdits(blockOf(2, 2, [later]), edits.turnUnits(['s']), edits.mirrorUnits(['s']), edits.copyUnits(['s'], 1, 0, ['t']))
    expect(after.units).toMatchObject([{ later: { x: [1] } }, { later: { x: [1] } }])
  })
})

it('reads positions as exactly as they were written', () => {
  expect(
    parseRational(unitAt(checkEdits(blockOf(1, 1, [square('s', [0, 0])]), ...Array.from({ length: 3 }, () => edits.moveUnits(['s'], '1/3', 0))))),
  ).toEqual(rational(1))
})

const unitAt = (block: Block): unknown => {
  const unit = unitOf(block, 's')
  return unit.kind === 'polygon' ? null : unit.at[0]
}
