/**
 * Layers of fabric: known counts, fabric neither made nor lost, and the count at a point by the rule of folding itself.
 *
 * The rule, used here as an independent judge: pressed toward B, a point on A's side lies under the layers of A there; a point on B's side within one
 * allowance of the seam lies under those of B, those of B at its mirror image in the seam, and those of A there; farther off under those of B. Beyond its
 * unfinished outline a piece has none.
 */
import { describe, expect, it } from 'vitest'
import { type Block, report, type Unit } from '../../geometry/index.ts'
import { areaOf, type Convex, type Counted, splitByLayers, patient } from '../../geometry/plane/convex.ts'
import { cellsByLayers, layersNear, blockBounds, type Thickest, thickest } from '../../geometry/pressing/layers/countLayers.ts'
import { folded, foldsOf, type Ply, plyOf } from '../../geometry/pressing/layers/folds.ts'
import { sewBlock } from '../../geometry/report/report.ts'
import type { Plans } from '../../geometry/report/sewing.ts'
import { blockOf, sequence, square, star } from '../help.ts'
import { squaresAndBars } from '../layouts.ts'

function clothOf(block: Block): { plies: Ply[]; folds: ReturnType<typeof foldsOf>; plans: Plans } {
  const { laid, plane, plans } = sewBlock(block, 'quick')
  if (plans === null) throw new Error('not sewn')
  const folds = foldsOf(laid, plane, plans.taken)
  return { plies: folded(folds, plans.taken.pressed.toward) as Ply[], folds, plans }
}

function holds(poly: Convex, x: number, y: number): boolean {
  for (let i = 0; i < poly.length; i += 2) {
    const j = (i + 2) % poly.length
    const [ax, ay, bx, by] = [poly[i], poly[i + 1], poly[j], poly[j + 1]] as [number, number, number, number]
    if ((bx - ax) * (y - ay) - (by - ay) * (x - ax) < 0) return false
  }
  return true
}

const layersAt = (plies: readonly Ply[], x: number, y: number): number => plies.filter(({ poly }) => holds(poly, x, y)).length

const four = (press: Block['press'] = []): Block =>
  blockOf(2, 2, [square('a', [0, 0]), square('b', [1, 0], [1, 1], 'b'), square('c', [0, 1], [1, 1], 'c'), square('d', [1, 1], [1, 1], 'd')], {
    order: 'rows',
    press,
  })

describe('known layers', () => {
  // By arithmetic: pressed to one side, three layers on one side of a seam and one on the other.
  it('lays three layers on one side of a seam and one on the other', () => {
    const { plies } = clothOf(
      blockOf(2, 1, [square('a', [0, 0]), square('b', [1, 0], [1, 1], 'b')], { press: [{ at: [1, 0.5], toward: [1.5, 0.5] }] }),
    )
    expect([layersAt(plies, 0.97, 0.5), layersAt(plies, 1.03, 0.5), layersAt(plies, 1.2, 0.5)]).toEqual([1, 3, 1])
  })

  it('lays two layers on each side of a seam pressed open', () => {
    const { plies } = clothOf(blockOf(2, 1, [square('a', [0, 0]), square('b', [1, 0], [1, 1], 'b')], { press: [{ at: [1, 0.5], toward: 'open' }] }))
    expect([layersAt(plies, 0.97, 0.5), layersAt(plies, 1.03, 0.5)]).toEqual([2, 2])
  })

  // Common practice, no source: four seams that nest make less of a lump than four on one side. The numbers by arithmetic.
  it('counts seven where four square seams nest, nine where they clash, and says what fanning saves', () => {
    const nested = report(four())
    expect(nested.bulk?.most).toBe(7)
    expect(nested.meetings[0]).toMatchObject({ verdict: 'nests', spin: true, layers: { now: 7, fanned: 4 } })
    const clashing = report(
      four([
        { at: [1, 0.5], toward: [1.5, 0.5] },
        { at: [1, 1.5], toward: [1.5, 1.5] },
      ]),
    )
    expect(clashing.bulk?.most).toBe(9)
    expect(clashing.meetings[0]).toMatchObject({ verdict: 'clashes', layers: { now: 9, nested: 7 } })
    expect(clashing.meetings[0]?.spin).toBeUndefined()
  })

  it('fans no point where more than four seams meet', () => {
    expect(report(star([0, 1, 2, 3].map(() => ['b', 'b'] as const))).meetings.filter(({ spin }) => spin === true)).toEqual([])
  })
})

describe('the rule of folding', () => {
  it('gives the same count at any point of any block of squares, bars and borders', () => {
    const random = sequence(17)
    for (let round = 0; round < 25; round++) {
      const block = squaresAndBars(random)
      const { plies, folds } = clothOf(block)
      const rule = byRule(block)
      const place = blockBounds(folds)
      for (let point = 0; point < 60; point++) {
        const [x, y] = [place.x0 + random() * (place.x1 - place.x0), place.y0 + random() * (place.y1 - place.y0)]
        expect(layersAt(plies, x, y)).toBe(rule(x, y))
      }
      const { at, most } = thickest(plies, place, folds.allowance) as Thickest
      expect(rule(...at)).toBe(most)
    }
  })
})

/** Layers at a point from the report's own joins; every piece of these blocks is a rectangle. */
function byRule(block: Block): (x: number, y: number) => number {
  const { joins, patches } = report(block)
  const toward = clothOf(block).plans.taken.pressed.toward
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
  const layers = (piece: string, x: number, y: number): number => {
    const [x0, y0, x1, y1] = boxes.get(piece) as Box
    if (x < x0 - s || x > x1 + s || y < y0 - s || y > y1 + s) return 0
    const number = numbers.get(piece)
    if (number === undefined) return 1
    const { from, to, sides } = joins[number] as (typeof joins)[number]
    const upright = from[0] === to[0]
    const line = fraction(upright ? from[0] : from[1])
    const [q, mirror] = upright ? [x, [2 * line - x, y] as const] : [y, [x, 2 * line - y] as const]
    const first = boxes.get(sides[0]) as Box
    const near = q < line === (upright ? first[0] : first[1]) < line ? 0 : 1
    const [own, other] = [sides[near], sides[1 - near]] as [string, string]
    const within = Math.abs(q - line) < s
    if (toward[number] === 'open') return layers(own, x, y) + (within ? layers(own, ...mirror) : 0)
    if (toward[number] !== near || !within) return layers(own, x, y)
    return layers(own, x, y) + layers(own, ...mirror) + layers(other, x, y)
  }
  return (x, y) => layers(joins.at(-1)?.id ?? patches[0]?.id ?? '', x, y)
}

function fraction(place: number | string): number {
  if (typeof place === 'number') return place
  const [n, d] = place.split('/').map(Number)
  return (n as number) / (d ?? 1)
}

describe('fabric', () => {
  it('is neither made nor lost by cutting the block into cells', () => {
    for (const block of [four(), star([0, 1, 2, 3].map(() => ['b', 'c'] as const))]) {
      const { plies, folds } = clothOf(block)
      const place = blockBounds(folds)
      const cells = cellsByLayers(plies, place, folds.allowance) as Counted[]
      const inside: Convex = [place.x0, place.y0, place.x1, place.y0, place.x1, place.y1, place.x0, place.y1]
      const laid = plies.reduce(
        (sum, { poly }) =>
          sum + (splitByLayers(poly, [inside], patient()) as Counted[]).reduce((all, cell) => all + cell.layers * areaOf(cell.poly), 0),
        0,
      )
      expect(cells.reduce((sum, { poly }) => sum + areaOf(poly), 0)).toBeCloseTo(areaOf(inside), 9)
      expect(cells.reduce((sum, { poly, layers }) => sum + layers * areaOf(poly), 0)).toBeCloseTo(laid, 6)
    }
  })

  it('has an odd number of layers wherever every seam is pressed to one side', () => {
    // Each fold of an allowance adds two layers to the one that is seen.
    const { plies, folds } = clothOf(star([0, 1, 2, 3].map(() => ['b', 'c'] as const)))
    const cells = (cellsByLayers(plies, blockBounds(folds), folds.allowance) as Counted[]).filter(({ poly }) => areaOf(poly) > 1e-6)
    expect(cells.every(({ layers }) => layers % 2 === 1)).toBe(true)
  })

  it('counts the layers of sharp tips, inner corners and free patches without losing the block', () => {
    const corner: Unit = {
      id: 'l',
      kind: 'polygon',
      corners: [
        [0, 0],
        [3, 0],
        [3, 1],
        [1, 1],
        [1, 3],
        [0, 3],
      ],
      fabrics: { patch: 'a' },
    }
    const block = blockOf(3, 3, [corner, square('s', [1, 1], [2, 2], 'b')])
    const { bulk, crooked } = report(block)
    expect(crooked).toEqual({ setIn: 1, partial: 0, proved: true })
    expect(bulk?.most).toBeGreaterThanOrEqual(3)
    const { plies } = clothOf(block)
    expect([layersAt(plies, 0.45, 0.55), layersAt(plies, 2.4, 2.5)]).toEqual([1, 1])
  })
})

describe('patience', () => {
  const { plies, folds, plans } = clothOf(four())
  const toward = plans.taken.pressed.toward

  it('gives no count rather than half a count', () => {
    const place = blockBounds(folds)
    expect(thickest(plies, place, folds.allowance, { tests: 10 })).toBeNull()
    expect(thickest(plies, place, folds.allowance)?.most).toBe(7)
    expect(folded(folds, toward, null, { tests: 0 })).toBeNull()
    expect(layersNear(folds, toward, [1, 1], { tests: 10 })).toBeNull()
    expect(layersNear(folds, toward, [1, 1])).toBe(7)
  })

  it('counts as much in squares cut into quarters as all at once', () => {
    // Sixty large triangles reach into every square: more than are counted at once.
    const random = sequence(29)
    const heap = Array.from({ length: 60 }, (_, patch): Ply => plyOf([random(), 0, 1, random(), 0, 1], patch))
    const place = { x0: 0, y0: 0, x1: 1, y1: 1 }
    const polys = heap.map(({ poly }) => poly)
    const areas = (cells: readonly Counted[]): number[] =>
      [...polys, []].map((_, layers) => cells.reduce((sum, cell) => sum + (cell.layers === layers ? areaOf(cell.poly) : 0), 0))
    const whole = areas(splitByLayers([0, 0, 1, 0, 1, 1, 0, 1], polys, patient()) as Counted[])
    areas(cellsByLayers(heap, place, 0.01) as Counted[]).forEach((area, layers) => {
      expect(area).toBeCloseTo(whole[layers] as number, 4)
    })
    const { most, spread } = thickest(heap, place, 0.01) as Thickest
    expect([most, spread]).toEqual([60, expect.closeTo(whole[60] as number, 4)])
  })

  it('still sews what it cannot count: a comb of twelve hundred corners', () => {
    const teeth = 300
    const line = Array.from({ length: teeth }, (_, tooth): (readonly [number, number])[] => [
      [2 * tooth, 1],
      [2 * tooth + 1, 1],
      [2 * tooth + 1, 2],
      [2 * tooth + 2, 2],
    ]).flat()
    const comb = (id: string, corners: readonly (readonly [number, number])[], patch: string): Unit => ({
      id,
      kind: 'polygon',
      corners,
      fabrics: { patch },
    })
    const { bulk, crooked, joins } = report(
      blockOf(2 * teeth, 3, [comb('u', [[0, 0], [2 * teeth, 0], ...[...line].reverse()], 'a'), comb('l', [...line, [2 * teeth, 3], [0, 3]], 'b')]),
    )
    expect([joins.length, crooked.setIn, bulk]).toEqual([1, 1, null])
  })
})
