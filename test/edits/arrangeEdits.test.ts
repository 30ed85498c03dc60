import fc from 'fast-check'
import { message } from '../../geometry/values/messages.ts'
import { inEnglish } from '../../geometry/words/english.ts'
import { describe, expect, it } from 'vitest'
import * as arrange from '../../geometry/edits/arrangeEdits.ts'
import { boxOf } from '../../geometry/units/unitBox.ts'
import { broughtInto, pasteUnits, readUnits, writeUnits } from '../../geometry/edits/clipboardText.ts'
import { moveUnits, placeUnit, recolourPatch, removeUnits, turnUnits } from '../../geometry/edits/unitEdits.ts'
import type { Edit } from '../../geometry/edits/unitEdits.ts'
import { canRepeat, imagesOf, REPEATS, type Repeat, withImages } from '../../geometry/edits/symmetry.ts'
import { crossesPath, exactRing, inParts, onePatch, outlineTrouble, reshape } from '../../geometry/edits/freePatches.ts'
import type { Block, BoxUnit, FilePoint, Kind, Turn, Unit } from '../../geometry/values/block.ts'
import { compare, rational, subtract, toFile, toNumber } from '../../geometry/exact/rational.ts'
import { exactPoint, shapeOf } from '../../geometry/units/kinds.ts'
import { applyEdit } from '../../web/document/history.ts'
import { checkEdit, checkEdits } from './editLaws.ts'
import { blockOf, square, star } from '../help.ts'

const unitOf = (block: Block, id: string): Unit => block.units.find((unit) => unit.id === id) as Unit
const atOf = (block: Block, id: string): FilePoint => (unitOf(block, id) as BoxUnit).at
const ids = (block: Block): string[] => block.units.map(({ id }) => id)
const goose = (id: string, at: FilePoint, turn: Turn = 0): Unit => ({
  id,
  kind: 'goose',
  at,
  size: turn % 2 === 0 ? [2, 1] : [1, 2],
  turn,
  fabrics: { goose: 'a', leftWing: 'b', rightWing: 'c' },
})

/** Patches by where they lie and of what fabric, whatever unit or name they have: what is seen. */
function seen(block: Block): string[] {
  return block.units
    .flatMap((unit) =>
      (unit.kind === 'polygon' ? [{ name: 'patch', corners: unit.corners.map(exactPoint) }] : shapeOf(unit).patches).map(
        (patch) => [unit, patch] as const,
      ),
    )
    .map(
      ([unit, { name, corners }]) =>
        `${unit.fabrics[name]} ${corners
          .map(([x, y]) => `${toFile(x)},${toFile(y)}`)
          .sort()
          .join(' ')}`,
    )
    .sort()
}

describe('changing places', () => {
  it('exchanges two units of one size, and again gives back the block', () => {
    const block = blockOf(6, 4, [goose('g', ['1/3', 0]), goose('h', [4, 3]), square('s', [0, 2])])
    const after = checkEdit(block, arrange.swapUnits('g', 'h'))
    expect([atOf(after, 'g'), atOf(after, 'h'), atOf(after, 's')]).toEqual([
      [4, 3],
      ['1/3', 0],
      [0, 2],
    ])
    expect(checkEdit(after, arrange.swapUnits('h', 'g'))).toEqual(block)
  })

  it.each([
    ['of another size', 's'],
    ['with itself', 'g'],
    ['that is not there', 'zz'],
  ])('leaves the block as it is: a unit %s', (_, other) => {
    const history = { block: blockOf(6, 4, [goose('g', [0, 0]), square('s', [0, 2])]), past: [], future: [] }
    expect(applyEdit(history, arrange.swapUnits('g', other))).toBe(history)
  })
})

const spot = fc.tuple(fc.integer({ min: 0, max: 40 }), fc.constantFrom(1, 2, 3, 4)).map(([n, d]) => toFile(rational(n, d)))
const crowd = fc
  .array(fc.tuple(spot, spot, fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 })), { minLength: 3, maxLength: 6 })
  .map((list) =>
    blockOf(
      50,
      50,
      list.map(([x, y, w, h], index) => ({ ...square(`u${index}`, [0, 0], [w, h]), at: [x, y] }) as Unit),
    ),
  )

describe('aligning and spreading', () => {
  it.each([
    ['left', 0, 'low'],
    ['right', 0, 'high'],
    ['top', 1, 'low'],
    ['bottom', 1, 'high'],
  ] as const)('puts every %s edge on one line, and moves nothing the other way', (side, axis, end) => {
    fc.assert(
      fc.property(crowd, (block) => {
        const after = checkEdit(block, arrange.alignUnits(ids(block), side))
        expect(new Set(after.units.map((unit) => String(toFile(boxOf(unit)[end][axis])))).size).toBe(1)
        expect(after.units.map((unit) => boxOf(unit).low[1 - axis])).toEqual(block.units.map((unit) => boxOf(unit).low[1 - axis]))
        expect(checkEdit(after, arrange.alignUnits(ids(block), side))).toEqual(after)
      }),
      { numRuns: 40 },
    )
  })

  it('centres on the middle of the box round them, to the exact fraction', () => {
    const block = blockOf(9, 9, [square('a1', [0, 0], [4, 1]), square('a2', [1, 2], [1, 1]), { ...square('a3', [0, 4]), at: ['1/3', 4] } as Unit])
    const after = checkEdit(block, arrange.alignUnits(ids(block), 'centre'))
    expect(['a1', 'a2', 'a3'].map((id) => atOf(after, id)[0])).toEqual([0, 1.5, 1.5])
  })

  it('leaves the same gap between all neighbours; the first and last stay', () => {
    fc.assert(
      fc.property(crowd, (block) => {
        const after = checkEdit(block, arrange.spreadUnits(ids(block), 'across'))
        const order = [...block.units].sort((a, b) => compare(boxOf(a).low[0], boxOf(b).low[0])).map(({ id }) => boxOf(unitOf(after, id)))
        const gaps = order.slice(1).map((box, index) => String(toFile(subtract(box.low[0], order[index]?.high[0] ?? rational(0)))))
        expect(new Set(gaps).size).toBe(1)
      }),
      { numRuns: 40 },
    )
  })
})

describe('resizing', () => {
  it('makes a box of any proportion larger, and smaller again', () => {
    const block = blockOf(9, 9, [square('s', [1, 1], [2, 3])])
    const after = checkEdit(block, arrange.resizeUnits(['s'], { at: [1, 1], size: [3.5, '7/3'] }))
    expect(unitOf(after, 's')).toMatchObject({ at: [1, 1], size: [3.5, '7/3'] })
    expect(checkEdit(after, arrange.resizeUnits(['s'], { at: [1, 1], size: [2, 3] }))).toEqual(block)
  })

  it('grows a group as one picture: every corner is scaled about the fixed one', () => {
    const block = blockOf(20, 20, [goose('g', [2, 2]), square('s', [2, 3], [2, 1])])
    const after = checkEdit(block, arrange.resizeUnits(['g', 's'], { at: [2, 2], size: [6, 6] }))
    expect([unitOf(after, 'g'), unitOf(after, 's')]).toMatchObject([
      { at: [2, 2], size: [6, 3] },
      { at: [2, 5], size: [6, 3] },
    ])
  })

  it('refuses what a goose cannot be, and an empty box', () => {
    const history = { block: blockOf(9, 9, [goose('g', [0, 0])]), past: [], future: [] }
    for (const size of [
      [3, 1],
      [0, 0],
      [-2, -1],
    ] as FilePoint[])
      expect(applyEdit(history, arrange.resizeUnits(['g'], { at: [0, 0], size }))).toBe(history)
  })

  it('scales free patches and the legs of clipped corners', () => {
    const clipped: Unit = { id: 'c', kind: 'cornered', at: [0, 0], size: [2, 2], corner: 0.5, fabrics: { centre: 'a', topLeft: 'b' } }
    const free: Unit = {
      id: 'p',
      kind: 'polygon',
      corners: [
        [0, 2],
        [2, 2],
        [0, 4],
      ],
      fabrics: { patch: 'a' },
    }
    const after = checkEdit(blockOf(9, 9, [clipped, free]), arrange.resizeUnits(['c', 'p'], { at: [0, 0], size: [3, 6] }))
    expect(after.units).toMatchObject([
      { size: [3, 3], corner: 0.75 },
      {
        corners: [
          [0, 3],
          [3, 3],
          [0, 6],
        ],
      },
    ])
  })
})

describe('another kind in place', () => {
  const kinds: Kind[] = ['square', 'hst', 'hourglass', 'goose', 'diamond', 'cornered', 'strips', 'half-rectangle']

  it('keeps box and fabrics wherever the box can hold the kind', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.constantFrom<FilePoint>([2, 2], [2, 1], [1, 2], [3, 1]), (kind, size) => {
        const strips: Unit = { id: 'u', kind: 'strips', at: [1, 1], size, turn: 1, fabrics: { strip1: 'a', strip2: 'b', strip3: 'd' } }
        const before = blockOf(5, 5, [strips])
        const after = unitOf(checkEdit(before, arrange.replaceKind(['u'], kind)), 'u')
        expect(after.kind).toBe(arrange.canBecome(strips, kind) ? kind : 'strips')
        expect(after).toMatchObject({ at: [1, 1], size })
        for (const fabric of Object.values(after.fabrics)) expect(['a', 'b', 'd']).toContain(fabric)
      }),
    )
  })

  it('keeps patches that have the same name, and loses no fabric that finds a place', () => {
    const clipped: Unit = {
      id: 'c',
      kind: 'cornered',
      at: [0, 0],
      size: [2, 2],
      corner: 0.5,
      fabrics: { centre: 'd', topLeft: 'b', bottomRight: 'c' },
    }
    expect(unitOf(checkEdit(blockOf(2, 2, [clipped]), arrange.replaceKind(['c'], 'diamond')), 'c').fabrics).toMatchObject({
      centre: 'd',
      topLeft: 'b',
      bottomRight: 'c',
    })
    expect(Object.values(unitOf(checkEdit(blockOf(2, 2, [clipped]), arrange.replaceKind(['c'], 'hst')), 'c').fabrics)).toEqual(['d', 'b'])
  })

  it('turns a goose to fit its box', () => {
    const upright = square('s', [0, 0], [1, 2])
    expect(unitOf(checkEdit(blockOf(2, 2, [upright]), arrange.replaceKind(['s'], 'goose')), 's')).toMatchObject({
      kind: 'goose',
      turn: 1,
      size: [1, 2],
    })
  })
})

describe('units as text', () => {
  const block = star([
    ['b', 'c'],
    ['b', 'b'],
    ['b', 'b'],
    ['b', 'b'],
  ])

  it('round-trips with the fabrics it uses and no others', () => {
    const text = writeUnits(block, ['g0', 'c0'])
    expect(JSON.parse(text)).toMatchObject({ format: 'nestwright.units', version: 1 })
    const read = readUnits(text)
    expect(read.ok && read.value.units.map(({ id }) => id)).toEqual(['g0', 'c0'])
    expect(read.ok && read.value.fabrics.map(({ id }) => id)).toEqual(['a', 'b', 'c'])
  })

  it('brings unknown fabrics along and takes the block’s own for those it knows', () => {
    const read = readUnits(writeUnits(block, ['g0']))
    if (!read.ok) throw new Error(inEnglish(read.message))
    const other: Block = {
      ...blockOf(4, 4, [square('g0', [3, 3], [1, 1], 'x')]),
      fabrics: [
        { id: 'x', name: 'Oat', colour: '#efe6d2' },
        { id: 'b', name: 'Rust', colour: '#8f3a1f' },
      ],
    }
    const brought = broughtInto(other, read.value)
    const after = checkEdit(other, pasteUnits(brought))
    expect(after.fabrics.map(({ name }) => name)).toEqual(['Oat', 'Rust', 'Fern', 'Dusk'])
    const pasted = after.units[1] as Unit
    expect(pasted.id).not.toBe('g0')
    expect(pasted.fabrics.goose).toBe('x')
    expect(new Set(after.fabrics.map(({ id }) => id)).size).toBe(4)
    expect(after.fabrics.find(({ id }) => id === pasted.fabrics.leftWing)?.name).toBe('Fern')
  })

  it.each([
    ['', 'text'],
    ['hello', 'text'],
    ['[]', 'format'],
    ['{"format":"nestwright.block","version":1}', 'format'],
    ['{"format":"nestwright.units","version":2}', 'version'],
    ['{"format":"nestwright.units","version":1,"units":[],"fabrics":[]}', 'units'],
    [
      '{"format":"nestwright.units","version":1,"units":[{"id":"u","kind":"square","at":[0,0],"size":[0,1],"fabrics":{"patch":"a"}}],"fabrics":[{"id":"a","name":"A","colour":"#000000"}]}',
      'units[0].size',
    ],
    [
      '{"format":"nestwright.units","version":1,"units":[{"id":"u","kind":"square","at":[0,0],"size":[1,1],"fabrics":{"patch":"b"}}],"fabrics":[]}',
      'units[0].fabrics',
    ],
  ])('says where the text is wrong: %s', (text, place) => {
    const read = readUnits(text)
    expect(read).toMatchObject({ ok: false, place })
    expect(read.ok || inEnglish(read.message)).toMatch(/^[^\n]+$/)
  })
})

/** The edit with its images, as one step. */
function repeated(block: Block, edit: Edit, repeat: Repeat): Block {
  const after = applyEdit({ block, past: [], future: [] }, edit).block
  return checkEdit(block, withImages(edit, imagesOf(block, after, repeat)))
}

describe('symmetric arranging', () => {
  const whole = star([
    ['b', 'c'],
    ['b', 'c'],
    ['b', 'c'],
    ['b', 'c'],
  ])
  const turned = (block: Block, turns: number): Block => ({ ...block, units: block.units.map((unit) => imageAfter(unit, turns)) })
  const imageAfter = (unit: Unit, turns: number): Unit => {
    const all = checkEdits(
      blockOf(4, 4, [square('frame', [0, 0], [4, 4]), unit]),
      ...Array.from({ length: turns }, () => turnUnits(['frame', unit.id])),
    )
    return unitOf(all, unit.id)
  }

  it('keeps a star symmetric by quarter turns, whatever is done to one goose', () => {
    const edits: Edit[] = [
      turnUnits(['c0']),
      recolourPatch('g0', 'leftWing', 'd'),
      removeUnits(['g0']),
      moveUnits(['c0'], '1/2', 0),
      recolourPatch('m', 'patch', 'a'),
    ]
    for (const edit of edits) {
      const after = repeated(whole, edit, 'quarters')
      expect(after).not.toEqual(whole)
      expect(seen(turned(after, 1)), edit.name.code).toEqual(seen(after))
    }
  })

  it.each<[Repeat, FilePoint[]]>([
    ['off', [[0, 1]]],
    [
      'half',
      [
        [0, 1],
        [3, 2],
      ],
    ],
    [
      'quarters',
      [
        [0, 1],
        [2, 0],
        [3, 2],
        [1, 3],
      ],
    ],
    [
      'leftRight',
      [
        [0, 1],
        [3, 1],
      ],
    ],
    [
      'topBottom',
      [
        [0, 1],
        [0, 2],
      ],
    ],
  ])('lays a square and its images: %s', (repeat, places) => {
    const after = repeated(blockOf(4, 4, []), placeUnit(square('s', [0, 1])), repeat)
    expect(after.units.map((unit) => (unit as BoxUnit).at)).toEqual(places)
    expect(new Set(ids(after)).size).toBe(places.length)
  })

  it('lays nothing twice where the image is the unit itself', () => {
    for (const repeat of REPEATS) expect(repeated(blockOf(4, 4, []), placeUnit(square('s', [1, 1], [2, 2])), repeat).units).toHaveLength(1)
  })

  it('mirrors a goose with its wings where they lie', () => {
    const after = repeated(
      blockOf(4, 4, [goose('g', [0, 0]), { ...goose('h', [2, 0]), fabrics: { goose: 'a', leftWing: 'c', rightWing: 'b' } } as Unit]),
      recolourPatch('g', 'leftWing', 'd'),
      'leftRight',
    )
    expect(unitOf(after, 'h').fabrics, 'the outer wing of the other goose is its right one').toEqual({ goose: 'a', leftWing: 'c', rightWing: 'd' })
  })

  it('follows the direct edit where both a unit and its image are edited', () => {
    const block = blockOf(4, 4, [square('s', [0, 0]), square('t', [3, 0])])
    expect(repeated(block, moveUnits(['s', 't'], 0, 1), 'leftRight').units.map((unit) => (unit as BoxUnit).at)).toEqual([
      [0, 1],
      [3, 1],
    ])
  })

  it('turns by quarters only on a grid as wide as high', () => {
    expect(canRepeat(blockOf(4, 3, []), 'quarters')).toBe(false)
    expect(repeated(blockOf(4, 3, []), placeUnit(square('s', [0, 0])), 'quarters').units).toHaveLength(1)
  })
})

describe('free patches', () => {
  it.each<[string, FilePoint[], ReturnType<typeof outlineTrouble>]>([
    [
      'a triangle',
      [
        [0, 0],
        [2, 0],
        [0, 2],
      ],
      null,
    ],
    [
      'two corners',
      [
        [0, 0],
        [2, 0],
      ],
      'few',
    ],
    [
      'a bow',
      [
        [0, 0],
        [2, 2],
        [2, 0],
        [0, 2],
      ],
      'crossed',
    ],
    [
      'a flat one',
      [
        [0, 0],
        [1, 0],
        [2, 0],
      ],
      'crossed',
    ],
    [
      'an L',
      [
        [0, 0],
        [2, 0],
        [2, 1],
        [1, 1],
        [1, 2],
        [0, 2],
      ],
      null,
    ],
  ])('judges an outline: %s', (_, corners, wanted) => expect(outlineTrouble(corners)).toBe(wanted))

  it.each<[string, FilePoint[], FilePoint, boolean]>([
    [
      'onward',
      [
        [0, 0],
        [2, 0],
      ],
      [2, 2],
      false,
    ],
    [
      'the same corner again',
      [
        [0, 0],
        [2, 0],
      ],
      [2, 0],
      true,
    ],
    [
      'back along the side before',
      [
        [0, 0],
        [2, 0],
      ],
      [1, 0],
      true,
    ],
    [
      'straight on',
      [
        [0, 0],
        [2, 0],
      ],
      [3, 0],
      false,
    ],
    [
      'across the first side',
      [
        [0, 0],
        [2, 0],
        [2, 2],
        ['1/3', 2],
      ],
      ['1/3', -1],
      true,
    ],
    [
      'onto the first side',
      [
        [0, 0],
        [2, 0],
        [2, 2],
      ],
      [1, 0],
      true,
    ],
    [
      'closing at the first corner',
      [
        [0, 0],
        [2, 0],
        [2, 2],
      ],
      [0, 0],
      false,
    ],
    [
      'closing along the first side',
      [
        [0, 0],
        [2, 0],
        [2, 2],
        [3, 0],
      ],
      [0, 0],
      true,
    ],
  ])('knows a way that crosses what is drawn: %s', (_, corners, next, wanted) => expect(crossesPath(corners, next)).toBe(wanted))

  it('finds the exact corners of what was put together in doubles', () => {
    const whole = inParts([
      [
        [0, 0],
        [3, 0],
        [0, 3],
      ].map(([x, y]) => exactPoint([x as number, y as number])),
      [
        [1, 1],
        [3, 1],
        [3, 2],
        [1, 2],
      ].map(([x, y]) => exactPoint([x as number, y as number])),
      [
        ['1/3', 0],
        [1, 0],
        [1, 1],
      ].map(([x, y]) => exactPoint([x as string, y as number])),
    ])
    expect(whole.parts).toBe(3)
    // The long side of the triangle crosses the rectangle's lower side at (2, 1) cells, its left one at (1, 2).
    expect(
      exactRing(
        [
          [0, 0],
          [9, 0],
          [6.0000001, 3],
          [3, 6],
          [0, 9],
        ],
        whole,
      ),
    ).toEqual([
      [0, 0],
      [3, 0],
      [0, 3],
    ])
    expect(
      exactRing(
        [
          [0, 0],
          [9, 0],
          [6, 3],
          [9, 3],
          [9, 6],
          [3, 6],
          [0, 9],
        ],
        whole,
      ),
    ).toEqual([
      [0, 0],
      [3, 0],
      [2, 1],
      [3, 1],
      [3, 2],
      [1, 2],
      [0, 3],
    ])
    expect(
      exactRing(
        [
          [0, 0],
          [9, 0],
          [4.4, 2.2],
        ],
        whole,
      ),
      'a corner that nothing gives',
    ).toBeNull()
  })

  it('takes new outlines: the first under the old id, the fabric kept', () => {
    const block = blockOf(4, 4, [square('s', [0, 0], [3, 1], 'c'), square('t', [1, 0], [1, 1], 'b')])
    const after = checkEdit(
      block,
      reshape(
        block,
        message('cut-shapes'),
        new Map([
          [
            's',
            [
              [
                [0, 0],
                [1, 0],
                [1, 1],
                [0, 1],
              ],
              [
                [2, 0],
                [3, 0],
                [3, 1],
                [2, 1],
              ],
            ],
          ],
        ]),
      ),
    )
    expect(after.units).toMatchObject([
      { id: 't' },
      { id: 's', kind: 'polygon', fabrics: { patch: 'c' } },
      { id: 's-2', kind: 'polygon', fabrics: { patch: 'c' } },
    ])
    expect(onePatch(goose('g', [0, 0])), 'a goose has seams of its own').toBeNull()
  })

  it('holds a ring of exact corners to the double it stands for', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: -60, max: 60 }), fc.integer({ min: -60, max: 60 })), { minLength: 3, maxLength: 8 }),
        (corners) => {
          const whole = inParts([corners.map(([x, y]) => exactPoint([toFile(rational(x, 12)), toFile(rational(y, 12))]))])
          const ring = exactRing(whole.outlines[0] ?? [], whole)
          for (const point of ring ?? [])
            expect(
              corners.some(
                ([x, y]) => Math.abs(toNumber(exactPoint(point)[0]) - x / 12) < 1e-9 && Math.abs(toNumber(exactPoint(point)[1]) - y / 12) < 1e-9,
              ),
            ).toBe(true)
        },
      ),
      { numRuns: 50 },
    )
  })
})
