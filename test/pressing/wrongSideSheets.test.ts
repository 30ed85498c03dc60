/**
 * The wrong side: which sheet lies on which, and that no fabric is lost on the way.
 *
 * The rule of folding, used here as an independent judge: pressed toward B, within one allowance of the seam on B's side lie, from the board up, the pile of
 * B there, the pile of B at its mirror image in the seam turned over, and the pile of A there.
 */
import { describe, expect, it } from 'vitest'
import { type Block, report } from '../../geometry/index.ts'
import { areaOf, type Convex } from '../../geometry/plane/convex.ts'
import { outlineOf } from '../../geometry/plane/outline.ts'
import { folded, foldsOf, type Ply } from '../../geometry/pressing/layers/folds.ts'
import { type FabricSheet, wrongSideSheets } from '../../geometry/pressing/layers/wrongSideSheets.ts'
import { sewBlock } from '../../geometry/report/report.ts'
import { blockBounds } from '../../geometry/pressing/layers/countLayers.ts'
import { blockOf, sequence, square, star } from '../help.ts'
import { squaresAndBars, tiling } from '../layouts.ts'

function clothOf(block: Block) {
  const { laid, plane, plans } = sewBlock(block, 'quick')
  if (plans === null) throw new Error('not sewn')
  const folds = foldsOf(laid, plane, plans.taken)
  const { toward } = plans.taken.pressed
  const seen = (x: number, y: number): string | undefined =>
    laid.patches.find(({ corners }) =>
      holdsAll(
        corners.flatMap((corner) => laid.places.cells(corner)),
        x,
        y,
      ),
    )?.id
  return {
    seen,
    folds,
    toward,
    sheets: wrongSideSheets(folds, toward) as FabricSheet[],
    plies: folded(folds, toward) as Ply[],
    name: (patch: number) => laid.patches[patch]?.id,
  }
}

function holds(poly: Convex, x: number, y: number): boolean {
  for (let i = 0; i < poly.length; i += 2) {
    const j = (i + 2) % poly.length
    const [ax, ay, bx, by] = [poly[i], poly[i + 1], poly[j], poly[j + 1]] as [number, number, number, number]
    if ((bx - ax) * (y - ay) - (by - ay) * (x - ax) < 0) return false
  }
  return true
}

/** By crossings, so for patches with inner corners too. */
function holdsAll(poly: Convex, x: number, y: number): boolean {
  let within = false
  for (let i = 0; i < poly.length; i += 2) {
    const j = (i + 2) % poly.length
    const [ax, ay, bx, by] = [poly[i], poly[i + 1], poly[j], poly[j + 1]] as [number, number, number, number]
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) within = !within
  }
  return within
}

const pileAt = ({ sheets, name }: ReturnType<typeof clothOf>, x: number, y: number): string[] =>
  sheets.filter(({ plies }) => plies.some(({ poly }) => holds(poly, x, y))).map(({ patch, face }) => `${name(patch)} ${face}`)

const two = (toward: readonly [number, number] | 'open'): Block =>
  blockOf(2, 1, [square('a', [0, 0]), square('b', [1, 0], [1, 1], 'b')], { press: [{ at: [1, 0.5], toward }] })

describe('a seam on the ironing board', () => {
  // Common practice, no source: right sides together, so the two allowances show their right sides to each other.
  it('shows the wrong side of the fabric that is pressed over', () => {
    const cloth = clothOf(two([1.5, 0.5]))
    expect(pileAt(cloth, 1.03, 0.5)).toEqual(['p:2 wrong', 'p:2 right', 'p:1 wrong'])
    expect(pileAt(cloth, 0.97, 0.5)).toEqual(['p:1 wrong'])
    expect(pileAt(clothOf(two([0.5, 0.5])), 0.97, 0.5)).toEqual(['p:1 wrong', 'p:1 right', 'p:2 wrong'])
  })

  it('shows the right side of both allowances where it is pressed open', () => {
    const cloth = clothOf(two('open'))
    expect(pileAt(cloth, 0.97, 0.5)).toEqual(['p:1 wrong', 'p:1 right'])
    expect(pileAt(cloth, 1.03, 0.5)).toEqual(['p:2 wrong', 'p:2 right'])
  })
})

describe('the rule of folding', () => {
  it('gives the same pile at any point of any block of squares, bars and borders', () => {
    const random = sequence(23)
    for (let round = 0; round < 25; round++) {
      const block = squaresAndBars(random)
      const cloth = clothOf(block)
      const rule = byRule(block, cloth.toward)
      const place = blockBounds(cloth.folds)
      for (let point = 0; point < 60; point++) {
        const [x, y] = [place.x0 + random() * (place.x1 - place.x0), place.y0 + random() * (place.y1 - place.y0)]
        expect(pileAt(cloth, x, y)).toEqual(rule(x, y))
      }
    }
  })
})

/** The pile at a point from the report's own joins; every piece of these blocks is a rectangle. */
function byRule(block: Block, toward: readonly (0 | 1 | 'open')[]): (x: number, y: number) => string[] {
  const { joins, patches } = report(block)
  const s = 0.25 / 3
  type Box = readonly [number, number, number, number]
  const boxes = new Map<string, Box>()
  for (const { id, corners } of patches) {
    const [xs, ys] = [corners.map(([x]) => fraction(x)), corners.map(([, y]) => fraction(y))]
    boxes.set(id, [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)])
  }
  for (const { id, sides } of joins) {
    const [a, b] = sides.map((side) => boxes.get(side)) as [Box, Box]
    boxes.set(id, [Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[2], b[2]), Math.max(a[3], b[3])])
  }
  const numbers = new Map(joins.map(({ id }, index) => [id, index]))
  const pile = (piece: string, x: number, y: number): string[] => {
    const [x0, y0, x1, y1] = boxes.get(piece) as Box
    if (x < x0 - s || x > x1 + s || y < y0 - s || y > y1 + s) return []
    const number = numbers.get(piece)
    if (number === undefined) return [`${piece} wrong`]
    const { from, to, sides } = joins[number] as (typeof joins)[number]
    const upright = from[0] === to[0]
    const line = fraction(upright ? from[0] : from[1])
    const [q, mirror] = upright ? [x, [2 * line - x, y] as const] : [y, [x, 2 * line - y] as const]
    const first = boxes.get(sides[0]) as Box
    const near = q < line === (upright ? first[0] : first[1]) < line ? 0 : 1
    const [own, other] = [sides[near], sides[1 - near]] as [string, string]
    const within = Math.abs(q - line) < s
    if (!within || (toward[number] !== 'open' && toward[number] !== near)) return pile(own, x, y)
    return [...pile(own, x, y), ...turnedOver(pile(own, ...mirror)), ...(toward[number] === 'open' ? [] : pile(other, x, y))]
  }
  return (x, y) => pile(joins.at(-1)?.id ?? patches[0]?.id ?? '', x, y)
}

const turnedOver = (pile: readonly string[]): string[] =>
  [...pile].reverse().map((sheet) => (sheet.endsWith('wrong') ? sheet.replace('wrong', 'right') : sheet.replace('right', 'wrong')))

function fraction(place: number | string): number {
  if (typeof place === 'number') return place
  const [n, d] = place.split('/').map(Number)
  return (n as number) / (d ?? 1)
}

describe('fabric', () => {
  it('is the fabric that the layers count, at any point of any tiling of units', () => {
    const random = sequence(5)
    for (let round = 0; round < 12; round++) {
      const cloth = clothOf(blockOf(4, 4, tiling(random, 4, 4)))
      for (let point = 0; point < 80; point++) {
        const [x, y] = [random() * 4, random() * 4]
        const pile = pileAt(cloth, x, y)
        expect(pile.length).toBe(cloth.plies.filter(({ poly }) => holds(poly, x, y)).length)
        // On the board lies the patch that is seen from the right side there.
        expect(pile[0]).toBe(`${cloth.seen(x, y)} wrong`)
      }
    }
  })

  it('goes round a partial seam: the fold goes under the allowance that lies flat already', () => {
    const ring = [square('t', [0, 0], [2, 1]), square('r', [2, 0], [1, 2], 'b'), square('b', [1, 2], [2, 1], 'c'), square('l', [0, 1], [1, 2], 'd')]
    const cloth = clothOf(blockOf(3, 3, [...ring, square('m', [1, 1], [1, 1], 'b')]))
    expect(report(blockOf(3, 3, [...ring, square('m', [1, 1], [1, 1], 'b')])).crooked.partial).toBe(1)
    const random = sequence(11)
    for (let point = 0; point < 400; point++) {
      const [x, y] = [random() * 3, random() * 3]
      const pile = pileAt(cloth, x, y)
      expect(pile.length).toBe(cloth.plies.filter(({ poly }) => holds(poly, x, y)).length)
      // On the board lies the patch itself, and of a seam pressed to one side no right side is ever on top.
      expect([pile[0]?.endsWith('wrong'), pile.at(-1)?.endsWith('wrong')]).toEqual([true, true])
    }
  })
})

describe('an outline', () => {
  it('runs round pieces side by side and not between them', () => {
    const length = (stretches: ReturnType<typeof outlineOf>): number =>
      stretches.reduce((sum, [x0, y0, x1, y1]) => sum + Math.hypot(x1 - x0, y1 - y0), 0)
    expect(length(outlineOf([[0, 0, 2, 0, 2, 1, 0, 1]]))).toBe(6)
    expect(
      length(
        outlineOf([
          [0, 0, 1, 0, 1, 1, 0, 1],
          [1, 0, 2, 0, 2, 0.5, 1, 0.5],
          [1, 0.5, 2, 0.5, 2, 1, 1, 1],
        ]),
      ),
    ).toBeCloseTo(6, 12)
  })

  it('encloses the area of the pieces, by the sum of its stretches', () => {
    const { sheets } = clothOf(star([0, 1, 2, 3].map(() => ['b', 'c'] as const)))
    for (const { plies } of sheets) {
      const polys = plies.map(({ poly }) => poly)
      // The area within a closed way is half the sum of its cross products: Green's theorem.
      const enclosed = outlineOf(polys).reduce((sum, [x0, y0, x1, y1]) => sum + (x0 * y1 - y0 * x1) / 2, 0)
      expect(enclosed).toBeCloseTo(
        polys.reduce((sum, poly) => sum + areaOf(poly), 0),
        5,
      )
    }
  })
})
