import { describe, expect, it } from 'vitest'
import { message } from '../../geometry/values/messages.ts'
import { inEnglish } from '../../geometry/words/english.ts'
import type { Block, BoxUnit, Method, Unit } from '../../geometry/values/block.ts'
import { compareMethods, type PossibleChoice } from '../../geometry/cutting/sizes/compareMethods.ts'
import { cutList } from '../../geometry/cutting/cutList.ts'
import { halved, unfinished } from '../../geometry/cutting/sizes/cutSize.ts'
import { KIND_FACTS } from '../../geometry/units/kinds.ts'
import { blockOf } from '../help.ts'

const RULE = { seam: 1 / 4, round: 1 / 8 }
const CORNERS = { topLeft: 'b', topRight: 'b', bottomRight: 'b', bottomLeft: 'b' }
const box = (kind: BoxUnit['kind'], size: readonly [number, number], fabrics: BoxUnit['fabrics'], more: Partial<BoxUnit> = {}): BoxUnit => ({
  id: kind,
  kind,
  at: [0, 0],
  size,
  fabrics,
  ...more,
})
const UNITS: readonly Unit[] = [
  box('square', [2, 1], { patch: 'a' }),
  box('hst', [1, 1], { upper: 'a', lower: 'b' }),
  box('hourglass', [1, 1], { top: 'a', right: 'b', bottom: 'a', left: 'b' }),
  box('goose', [2, 1], { goose: 'a', leftWing: 'b', rightWing: 'b' }),
  box('diamond', [2, 2], { centre: 'a', ...CORNERS }),
  box('cornered', [2, 2], { centre: 'a', ...CORNERS }, { corner: 0.5 }),
  box('strips', [1, 1], { strip1: 'a', strip2: 'b' }),
  box('half-rectangle', [1, 2], { upper: 'a', lower: 'b' }),
  {
    id: 'free',
    kind: 'polygon',
    corners: [
      [0, 0],
      [2, 0],
      [1, 1],
    ],
    fabrics: { patch: 'a' },
  },
]
/** Cells of 3 in. */
const on = (units: readonly Unit[], more: Partial<Block> = {}): Block => blockOf(4, 4, units, more)
const unitOf = (kind: Unit['kind']): Unit => UNITS.find((unit) => unit.kind === kind) as Unit

function choice(unit: Unit, method: Method, oversize = 0, more: Partial<Block> = {}): PossibleChoice {
  const found = compareMethods(unit, on([unit], more), oversize).find((one) => one.method === method)
  if (found?.possible !== true) throw new Error(`${method} should make a ${unit.kind}`)
  return found
}

describe('methods of one unit beside each other', () => {
  it.each(UNITS)('$kind: each method its kind offers, in order, none wasting more than it uses', (unit) => {
    const choices = compareMethods(unit, on([unit]))
    expect(choices.map(({ method }) => method)).toEqual(KIND_FACTS[unit.kind].methods)
    for (const one of choices) {
      if (!one.possible) throw new Error(inEnglish(one.why))
      expect(one.wasted).toBeGreaterThanOrEqual(0)
      expect(one.wasted).toBeLessThan(one.fabricArea)
      expect(one.saved).toBeLessThanOrEqual(one.wasted)
      expect(one.pieces.every(({ count }) => Number.isInteger(count))).toBe(true)
    }
  })

  it.each(UNITS.flatMap((unit) => KIND_FACTS[unit.kind].methods.map((method) => ({ unit, method, kind: unit.kind }))))(
    '$kind by $method: a block of as many as one go makes is cut from the same pieces',
    ({ unit, method }) => {
      const go = choice(unit, method)
      const units = Array.from({ length: go.makes }, (_, index): Unit => ({ ...unit, id: `u${index}`, method }))
      const { cut } = cutList(on(units))
      const said = (rows: readonly { size: readonly [number, number]; count: number; then: string }[]) =>
        rows.map(({ size, count, then }) => [...size.map((side) => side.toFixed(6)), count, then].join(' ')).sort()
      expect(said(cut)).toEqual(said(go.pieces))
    },
  )

  // Seams along edges cut on the bias, outside edges on the bias, units at once [S33][S35].
  it.each([
    ['hst', 'hst-2', 0, 0, 2],
    ['hst', 'hst-4', 0, 4, 4],
    ['hst', 'hst-8', 0, 0, 8],
    ['hst', 'plain', 1, 0, 2],
    ['hourglass', 'qst-2', 0, 0, 2],
    ['hourglass', 'plain', 3, 0, 2],
    ['goose', 'geese-4', 0, 0, 4],
    ['goose', 'corner-flip', 0, 0, 1],
    ['goose', 'plain', 2, 0, 4],
    ['diamond', 'plain', 4, 0, 1],
    ['strips', 'strip-set', 0, 0, 12],
    ['half-rectangle', 'plain', 1, 0, 2],
    ['polygon', 'plain', 0, 2, 1],
  ] as const)('%s by %s: %d seams and %d edges on the bias, %d at once', (kind, method, biasSeams, biasEdges, makes) => {
    expect(choice(unitOf(kind), method)).toMatchObject({ biasSeams, biasEdges, makes })
  })

  it('rectangles and strips waste nothing; geese four at a time take less fabric than flipped corners and keep what those keep: geometry', () => {
    for (const [kind, method] of [
      ['square', 'plain'],
      ['strips', 'plain'],
      ['strips', 'strip-set'],
    ] as const) {
      expect(choice(unitOf(kind), method).wasted).toBeCloseTo(0, 9)
    }
    const each = (method: Method) => {
      const { fabricArea, wasted, makes } = choice(unitOf('goose'), method)
      return { fabric: fabricArea / makes, kept: (fabricArea - wasted) / makes }
    }
    expect(each('geese-4').fabric).toBeLessThan(each('corner-flip').fabric)
    // Squares that are flipped bring no dog ears to the tip: the square of an allowance less for each wing.
    expect(each('geese-4').kept - each('corner-flip').kept).toBeCloseTo(2 * RULE.seam ** 2, 9)
  })

  it('geese with two different wings come as drawn every other time; two hourglasses are of opposite hand: by geometry', () => {
    const mixed = box('goose', [2, 1], { goose: 'a', leftWing: 'b', rightWing: 'c' })
    expect(choice(mixed, 'geese-4')).toMatchObject({ makes: 4, asDrawn: 2 })
    expect(choice(mixed, 'geese-4').pieces.map(({ fabric, count }) => [fabric, count])).toEqual([
      ['a', 1],
      ['c', 2],
      ['b', 2],
    ])
    expect(choice(unitOf('goose'), 'geese-4')).toMatchObject({ makes: 4, asDrawn: 4 })
    expect(choice(unitOf('hourglass'), 'qst-2')).toMatchObject({ makes: 2, asDrawn: 1 })
  })

  it('says why a method cannot make the unit', () => {
    const four = box('hourglass', [1, 1], { top: 'a', right: 'b', bottom: 'c', left: 'd' })
    expect(compareMethods(four, on([four]))[0]).toMatchObject({ method: 'qst-2', possible: false, why: message('method-needs-pairs') })
    const long = box('strips', [1, 4], { strip1: 'a', strip2: 'b' })
    expect(compareMethods(long, on([long], { cloth: { usableWidth: 10 } }))[1]).toMatchObject({ method: 'strip-set', possible: false })
  })
})

describe('bonus triangles of flipped corners', () => {
  it('a goose 6 by 3: two, from offcuts whose legs are 3 + 0.586 seams: finished 2 1/4; geometry', () => {
    const { bonus, wasted, saved } = choice(unitOf('goose'), 'corner-flip')
    expect(bonus).toEqual([{ fabrics: ['a', 'b'], finished: 2.25, count: 2 }])
    const leg = 3 + (2 - Math.SQRT2) / 4
    expect(wasted).toBeCloseTo(2 * leg * leg, 9)
    // The offcut is large enough for half of that square, and not for one an eighth larger.
    const exact = { seam: 1 / 4, round: 1e-9 }
    expect(halved(2.25, exact)).toBeLessThanOrEqual(leg)
    expect(halved(2.375, exact)).toBeGreaterThan(leg)
    expect(saved).toBeGreaterThan(0.8 * wasted)
    expect(unfinished(2.25, RULE)).toBe(2.75)
  })

  it('corners of two fabrics are counted apart; corners too small give none', () => {
    const two = box('cornered', [2, 2], { centre: 'a', topLeft: 'b', topRight: 'c', bottomRight: 'b' }, { corner: 0.5 })
    expect(choice(two, 'corner-flip').bonus.map(({ fabrics, count }) => [fabrics[1], count])).toEqual([
      ['b', 2],
      ['c', 1],
    ])
    const tiny = box('cornered', [2, 2], { centre: 'a', topLeft: 'b' }, { corner: 0.25 })
    expect(choice(tiny, 'corner-flip').bonus).toEqual([])
  })
})

describe('cut a little larger, trim to size', () => {
  it.each([
    ['hst', 'hst-2', [0.125, 0.125]],
    ['hst', 'hst-4', [0.125, 0.125]],
    ['hst', 'hst-8', [0.125, 0.125]],
    ['hst', 'plain', [0.125, 0.125]],
    ['hourglass', 'qst-2', [0.125, 0.125]],
    // The small squares follow the large one: half of it and an allowance, to the next eighth.
    ['goose', 'geese-4', [0.125, 0.125]],
    ['goose', 'corner-flip', [0, 0]],
    ['diamond', 'plain', [0, 0.125]],
    ['cornered', 'corner-flip', [0, 0]],
    ['half-rectangle', 'plain', [0.125, 0.125]],
    ['square', 'plain', [0]],
    ['strips', 'plain', [0, 0]],
  ] as const)('%s by %s', (kind, method, more) => {
    const [as, larger] = [0, 1 / 8].map((oversize) => choice(unitOf(kind), method, oversize).pieces.map(({ size }) => size[0]))
    expect(larger?.map((size, index) => size - (as?.[index] as number))).toEqual(more)
    expect(choice(unitOf(kind), method).trimmed).toBe(more.some((by) => by > 0))
  })

  it('in centimetres the amount is added as it is: 10 cm at a seam of 0.75 from 13.3 and not 13; the seam [S20]', () => {
    const unit = unitOf('hst')
    const cm: Partial<Block> = { measure: { unit: 'cm' }, grid: { columns: 4, rows: 4, cell: 10 } }
    expect(choice(unit, 'hst-2', 0, cm).pieces[0]?.size[0]).toBe(13)
    expect(choice(unit, 'hst-2', 0.3, cm).pieces[0]?.size[0]).toBeCloseTo(13.3, 9)
  })
})
