/** Units sewn of paper come out at their size from what the cut list says; and their prints lie as the advice says. */
import { inEnglish } from '../../geometry/words/english.ts'
import { describe, expect, it } from 'vitest'
import type { Block, Direction, Turn, Unit } from '../../geometry/values/block.ts'
import { report } from '../../geometry/report/wholeReport.ts'
import { blockOf, FABRICS } from '../help.ts'
import {
  clipped,
  covers,
  eightTriangles,
  flippedCorner,
  fourGeese,
  fourTriangles,
  type Layer,
  type Line,
  type Quarters,
  sidesOf,
  type Spot,
  turned,
  twoHourglasses,
  twoTriangles,
  withAllowances,
} from './paper.ts'

/** What one go of a method cuts for a unit of this size, the largest first. */
function cutFor(unit: Partial<Unit>, method: string, size: readonly [number, number], seam: number, round: number): number[] {
  const one = { id: 'u', at: [0, 0], size: [size[0], size[1]], method, ...unit } as Unit
  const { cut } = report(blockOf(40, 40, [one], { grid: { columns: 40, rows: 40, cell: 1 }, measure: { unit: 'in', seam, round } }))
  return [...new Set(cut.map((row) => row.size[0]))].sort((a, b) => b - a)
}

const SEAMS = [
  [1 / 4, 1 / 8],
  [3 / 8, 1 / 16],
  [0.3, 0.1],
] as const
const SIZES = [1, 2.5, 4, 6.3]
const CASES = SEAMS.flatMap(([seam, round]) => SIZES.map((size) => [size, seam, round] as const))

const square = ([x, y]: Spot, side: number): Spot[] => [
  [x, y],
  [x + side, y],
  [x + side, y + side],
  [x, y + side],
]

/** Both halves of a square that finishes `size`, one corner of its diagonal above the other where the seam falls. */
function holdsTriangles(layers: readonly Layer[], [topLeft, topRight, bottomRight, bottomLeft]: readonly Spot[], seam: number): boolean {
  const outline = [topLeft, topRight, bottomRight, bottomLeft] as Spot[]
  const halves = [
    [topLeft, topRight, bottomLeft],
    [topRight, bottomRight, bottomLeft],
  ] as Spot[][]
  return [
    ['a', 'b'],
    ['b', 'a'],
  ].some((cloths) => halves.every((half, place) => covers(layers, cloths[place] as string, withAllowances(half, outline, seam))))
}

const HST = { kind: 'hst', fabrics: { upper: 'a', lower: 'b' } } as const

describe('triangles', () => {
  it.each(CASES)('two at a time that finish %f at a seam of %f: both come out, and of squares one step smaller neither does', (size, seam, round) => {
    const [side = 0] = cutFor(HST, 'hst-2', [size, size], seam, round)
    const comesOut = (cut: number): boolean[] =>
      twoTriangles(cut, seam, 0, 0).map((layers, half) => {
        // The seam runs where x + y is the cut less (or more) what the allowance takes.
        const middle = (cut + (half === 0 ? -1 : 1) * seam * Math.SQRT2) / 2
        return holdsTriangles(layers, square([middle - size / 2, middle - size / 2], size), seam)
      })
    expect(comesOut(side)).toEqual([true, true])
    expect(comesOut(side - round)).toEqual([false, false])
  })

  it.each(CASES)(
    'four at a time that finish %f at a seam of %f: all four come out, and of squares one step smaller none does',
    (size, seam, round) => {
      const [side = 0] = cutFor(HST, 'hst-4', [size, size], seam, round)
      const comesOut = (cut: number): boolean[] =>
        fourTriangles(cut, seam).map((layers, quarter) => {
          // On point: its middle on the seam, at the middle of the edge.
          const reach = size * Math.SQRT1_2
          const middle = turnedAbout([cut / 2, seam], cut, quarter as Quarters)
          const tips = [
            [-1, 0],
            [0, -1],
            [1, 0],
            [0, 1],
          ].map(([x, y]) => turned([(x as number) * reach, (y as number) * reach], quarter as Quarters))
          const at = tips.map(([x, y]): Spot => [middle[0] + x, middle[1] + y])
          return holdsTriangles(layers, [at[1], at[2], at[3], at[0]] as Spot[], seam)
        })
      expect(comesOut(side)).toEqual([true, true, true, true])
      expect(comesOut(side - round)).toEqual([false, false, false, false])
    },
  )

  it.each(CASES)(
    'eight at a time that finish %f at a seam of %f: all eight come out, and of squares two steps smaller none does',
    (size, seam, round) => {
      const [side = 0] = cutFor(HST, 'hst-8', [size, size], seam, round)
      const comesOut = (cut: number): boolean[] =>
        eightTriangles(cut, seam, 0, 0).map((layers, place) => {
          const falls = [0, 1, 6, 7].includes(place)
          const half = cut / 2
          const lost = (seam * Math.SQRT2) / 2
          const away = place % 2 === 0 ? -lost : lost
          // Of a falling diagonal the two lie at the bottom left and the top right of it.
          const middle: Spot = falls ? [half / 2 + away, half / 2 - away] : [half / 2 + away, half / 2 + away]
          const corners = square([middle[0] - size / 2, middle[1] - size / 2], size)
          return holdsTriangles(layers, falls ? ([corners[1], corners[2], corners[3], corners[0]] as Spot[]) : corners, seam)
        })
      expect(comesOut(side)).toEqual(Array.from({ length: 8 }, () => true))
      expect(comesOut(side - 2 * round)).toEqual(Array.from({ length: 8 }, () => false))
    },
  )
})

/** A spot turned about the middle of a square. */
function turnedAbout([x, y]: Spot, side: number, quarters: Quarters): Spot {
  const [tx, ty] = turned([x - side / 2, y - side / 2], quarters)
  return [tx + side / 2, ty + side / 2]
}

describe('hourglasses', () => {
  it.each(CASES)('two at a time that finish %f at a seam of %f: both come out, and of squares one step smaller neither does', (size, seam, round) => {
    const [side = 0] = cutFor({ kind: 'hourglass', fabrics: { top: 'a', right: 'b', bottom: 'a', left: 'b' } }, 'qst-2', [size, size], seam, round)
    const comesOut = (cut: number): boolean[] =>
      twoHourglasses(cut, seam, 0, 0).map((layers, place) => {
        const lost = seam * Math.SQRT2
        const [x, y] = [(cut - lost) / 2 + (place === 0 ? lost : -lost) / 2, (cut - lost) / 2 - (place === 0 ? lost : -lost) / 2]
        const outline = square([x - size / 2, y - size / 2], size)
        const cloths = place === 0 ? ['a', 'b', 'a', 'b'] : ['b', 'a', 'b', 'a']
        return outline.every((corner, index) =>
          covers(layers, cloths[index] as string, withAllowances([corner, outline[(index + 1) % 4] as Spot, [x, y]], outline, seam)),
        )
      })
    expect(comesOut(side)).toEqual([true, true])
    expect(comesOut(side - round)).toEqual([false, false])
  })
})

const GOOSE = { kind: 'goose', fabrics: { goose: 'a', leftWing: 'b', rightWing: 'b' } } as const

/** With its base at the top, tip down, in the order goose, wing at the left, wing at the right. */
function goosePatches([x, y]: Spot, wide: number): Spot[][] {
  const [left, right, high] = [x - wide / 2, x + wide / 2, y - wide / 2]
  return [
    [
      [left, high],
      [right, high],
      [x, y],
    ],
    [
      [left, high],
      [x, y],
      [left, y],
    ],
    [
      [right, high],
      [right, y],
      [x, y],
    ],
  ]
}

describe('geese', () => {
  const comeOut = (large: number, small: number, seam: number, wide: number): boolean[] =>
    fourGeese(large, small, seam, 0, [0, 0, 0, 0]).map((layers, quarter) => {
      const tip: Spot = [large / 2, large / 2 - seam * Math.SQRT2]
      const place = (spot: Spot): Spot => turnedAbout(spot, large, quarter as Quarters)
      const patches = goosePatches(tip, wide).map((patch) => patch.map(place))
      const [left, right] = [tip[0] - wide / 2, tip[0] + wide / 2]
      const outline = (
        [
          [left, tip[1] - wide / 2],
          [right, tip[1] - wide / 2],
          [right, tip[1]],
          [left, tip[1]],
        ] as Spot[]
      ).map(place)
      const cloths = ['goose', `p${quarter + 1}`, `p${((quarter + 1) % 4) + 1}`]
      // At the tip a wing runs as far as the cut along the other seam, and no farther.
      const cutOff = sidesOf(patches[0] as Spot[]).map(({ n, at }) => ({ n, at: at - seam }))
      const needs = patches.map((patch, index) => {
        const whole = withAllowances(patch, outline, seam)
        return index === 0 ? whole : clipped(whole, cutOff[index] as Line)
      })
      return needs.every((shape, index) => covers(layers, cloths[index] as string, shape))
    })

  it.each(CASES)('four at a time, %f high, at a seam of %f: all four come out, of smaller squares none does', (high, seam, round) => {
    const [large = 0, small = 0] = cutFor(GOOSE, 'geese-4', [2 * high, high], seam, round)
    const [all, none] = [Array.from({ length: 4 }, () => true), Array.from({ length: 4 }, () => false)]
    expect(comeOut(large, small, seam, 2 * high)).toEqual(all)
    expect(comeOut(large - round, small, seam, 2 * high)).toEqual(none)
    expect(comeOut(large, high + (2 + Math.SQRT2) * seam - 0.01, seam, 2 * high)).toEqual(none)
  })

  it.each(CASES)(
    'by flipped corners, %f high, at a seam of %f: the wing reaches every edge, of a smaller square it does not',
    (high, seam, round) => {
      const [wide = 0, side = 0] = cutFor(GOOSE, 'corner-flip', [2 * high, high], seam, round)
      const reach = high + 2 * seam
      // Over the corner as far as the seam, and one allowance beyond it where the finished seam ends.
      const beyond = seam * Math.SQRT1_2
      const ends: Spot[] = [
        [seam + high + beyond, seam + beyond],
        [seam + beyond, seam + high + beyond],
      ]
      const reaches = (cut: number): boolean[] =>
        [
          [
            [0, 0],
            [reach, 0],
            [0, reach],
          ] as Spot[],
          ends,
        ].map((shape) => covers(flippedCorner([wide, side], cut), 'corner', shape))
      expect([wide, side]).toEqual([2 * high + 2 * seam, reach].map((length) => expect.closeTo(length, 9)))
      expect(reaches(side)).toEqual([true, true])
      expect(reaches(side - 0.01)[0]).toBe(false)
    },
  )
})

/** Every way to give each of a number of things one of several numbers. */
const everyWay = (things: number, many: number): number[][] =>
  things === 0 ? [[]] : everyWay(things - 1, many).flatMap((before) => Array.from({ length: many }, (_, one) => [...before, one]))

const ordersOf = (things: readonly number[]): number[][] =>
  things.length < 2
    ? [[...things]]
    : things.flatMap((thing, place) => ordersOf(things.filter((_, other) => other !== place)).map((rest) => [thing, ...rest]))

/** By unit of one go, quarters by which it may be turned with every print that counts pointing up. */
type Upright = readonly ReadonlySet<number>[]

const uprightBy = (layers: readonly Layer[], directions: Readonly<Record<string, Direction>>): Set<number> =>
  new Set(
    [0, 1, 2, 3].filter((quarters) =>
      layers.every(({ cloth, up }) => {
        const direction = directions[cloth]
        const [x, y] = turned(up, quarters as Quarters)
        return direction === undefined || (Math.abs(x) < 1e-9 && (direction === 'two-way' || y < 0))
      }),
    ),
  )

/** The most units that lie as drawn: every way to lay the squares, every unit in every place. `ways`: quarters from as sewn to as drawn. */
function mostUpright(runs: readonly Upright[], drawn: readonly number[], quartersTo: (unit: number, place: number) => number): number {
  let most = 0
  for (const upright of runs)
    for (const order of ordersOf([...upright.keys()])) {
      const right = drawn.filter((_, place) => upright[order[place] as number]?.has(quartersTo(order[place] as number, place) % 4)).length
      most = Math.max(most, right)
    }
  return most
}

const directed = (directions: Readonly<Record<string, Direction>>): Block['fabrics'] =>
  FABRICS.map((fabric) => ({ ...fabric, ...(directions[fabric.id] === undefined ? {} : { direction: directions[fabric.id] as Direction }) }))

function adviceFor(units: readonly Unit[], directions: Readonly<Record<string, Direction>>): number {
  const said = report(blockOf(12, 12, units, { fabrics: directed(directions) }))
  return said.advice.flatMap(({ code, units: named }) => (code === 'print' ? named : [])).length
}

const PRINTS: Readonly<Record<string, Direction>>[] = [
  { a: 'one-way' },
  { a: 'two-way' },
  { a: 'one-way', b: 'one-way' },
  { a: 'one-way', b: 'two-way' },
  { b: 'two-way' },
]

describe('prints', () => {
  it.each(PRINTS)(
    'of triangles two at a time lie as the advice says, however both are drawn: every way to lay the squares tried (%o)',
    (directions) => {
      const sewn = everyWay(2, 4).flatMap(([a, b]) =>
        (['rising', 'falling'] as const).map((leaning) => ({
          leaning,
          upright: twoTriangles(4, 0.25, a as Quarters, b as Quarters, leaning).map((layers) => uprightBy(layers, directions)),
        })),
      )
      for (const drawn of everyWay(2, 4)) {
        const most = Math.max(
          ...(['rising', 'falling'] as const).map((leaning) => {
            // As sewn, `a` lies at the top left and at the bottom right; along the other diagonal at the bottom left and at the top right.
            const lies = leaning === 'rising' ? [0, 2] : [3, 1]
            const runs = sewn.filter((one) => one.leaning === leaning).map(({ upright }) => upright)
            return mostUpright(runs, drawn, (unit, place) => (drawn[place] as number) - (lies[unit] as number) + 4)
          }),
        )
        const units = drawn.map(
          (turn, place): Unit => ({ id: `u${place}`, at: [place, 0], size: [1, 1], turn: turn as Turn, method: 'hst-2', ...HST }),
        )
        expect(adviceFor(units, directions), `drawn ${drawn}`).toBe(2 - most)
      }
    },
  )

  it.each(PRINTS)('of hourglasses two at a time lie as the advice says (%o)', (directions) => {
    const runs = everyWay(2, 4).map(([a, b]) => twoHourglasses(6, 0.25, a as Quarters, b as Quarters).map((layers) => uprightBy(layers, directions)))
    for (const drawn of everyWay(2, 2)) {
      // As sewn the first has `a` above and below, the second at the sides; half a turn shows the same.
      const most = Math.max(
        ...everyWay(2, 2).map((halves) =>
          mostUpright(runs, drawn, (unit, place) => (drawn[place] as number) - unit + 2 * (halves[place] as number) + 4),
        ),
      )
      const fabrics = { top: 'a', right: 'b', bottom: 'a', left: 'b' }
      const units = drawn.map(
        (turn, place): Unit => ({ id: `u${place}`, kind: 'hourglass', at: [place, 0], size: [1, 1], turn: turn as Turn, method: 'qst-2', fabrics }),
      )
      expect(adviceFor(units, directions), `drawn ${drawn}`).toBe(2 - most)
    }
  })

  it.each([{ goose: 'one-way' }, { goose: 'two-way' }, { wings: 'one-way' }, { goose: 'one-way', wings: 'two-way' }] as const)(
    'of four geese lie as the advice says, however they are drawn (%o)',
    (which: { goose?: Direction; wings?: Direction }) => {
      const cloths: Record<string, Direction> = {}
      if (which.goose !== undefined) cloths.goose = which.goose
      for (const square of ['p1', 'p2', 'p3', 'p4']) if (which.wings !== undefined) cloths[square] = which.wings
      const runs = everyWay(4, 4).map((quarters) =>
        fourGeese(7.25, 3.875, 0.25, 0, quarters as [Quarters, Quarters, Quarters, Quarters]).map((layers) => uprightBy(layers, cloths)),
      )
      const directions = { ...(which.goose === undefined ? {} : { a: which.goose }), ...(which.wings === undefined ? {} : { b: which.wings }) }
      for (const drawn of [
        [0, 1, 2, 3],
        [0, 0, 0, 0],
        [0, 0, 2, 2],
        [3, 1, 1, 2],
        [1, 1, 3, 3],
        [0, 2, 2, 2],
      ]) {
        // As sewn the bases lie at the top, at the right, below, at the left: turns 2, 3, 0, 1 of a goose.
        const most = mostUpright(runs, drawn, (unit, place) => (drawn[place] as number) - unit + 2)
        const units = drawn.map(
          (turn, place): Unit => ({
            id: `u${place}`,
            at: [2 * place, 0],
            size: turn % 2 === 0 ? [2, 1] : [1, 2],
            turn: turn as Turn,
            method: 'geese-4',
            ...GOOSE,
          }),
        )
        expect(adviceFor(units, directions), `drawn ${drawn}`).toBe(4 - most)
      }
    },
  )

  it('of triangles eight at a time lie all four ways; where both fabrics have a top, half of them are upside down', () => {
    const drawn = [0, 0, 1, 1, 2, 2, 3, 3]
    const units = drawn.map((turn, place): Unit => ({ id: `u${place}`, at: [place, 0], size: [1, 1], turn: turn as Turn, method: 'hst-8', ...HST }))
    for (const directions of [{ a: 'one-way' }, { a: 'one-way', b: 'two-way' }, { a: 'one-way', b: 'one-way' }] as Readonly<
      Record<string, Direction>
    >[]) {
      const best = Math.max(
        ...everyWay(2, 4).map(([a, b]) => {
          const upright = eightTriangles(8, 0.25, a as Quarters, b as Quarters).map((layers) => uprightBy(layers, directions))
          // They are drawn just as they come: two each way.
          return upright.filter((one) => one.has(0)).length
        }),
      )
      expect(adviceFor(units, directions)).toBe(8 - best)
    }
  })

  it('of triangles four at a time lie on the slant, and so does the centre of a square in a square', () => {
    const four: Unit = { id: 'u', at: [0, 0], size: [1, 1], method: 'hst-4', ...HST }
    const corners = { topLeft: 'b', topRight: 'b', bottomRight: 'b', bottomLeft: 'b' }
    const diamond: Unit = { id: 'v', kind: 'diamond', at: [1, 0], size: [1, 1], method: 'plain', fabrics: { centre: 'a', ...corners } }
    const said = report(blockOf(2, 1, [four, diamond], { fabrics: directed({ a: 'two-way' }) })).advice
    expect(said.map(({ units, message }) => [units, /on the slant/.test(inEnglish(message))])).toEqual([
      [['u'], true],
      [['v'], true],
    ])
  })
})
