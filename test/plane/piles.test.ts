/** Layouts thrown over each other, judged against other ways to find the same regions. */
import clipper from 'clipper-lib'
import { describe, expect, it } from 'vitest'
import { type Rational, toNumber } from '../../geometry/exact/rational.ts'
import { type Dot, doubleArea, insidePolygon } from '../../geometry/plane/points.ts'
import { type Region, type RegionKind, regions } from '../../geometry/plane/regions.ts'
import { subdivide } from '../../geometry/plane/subdivide.ts'
import { sequence } from '../help.ts'

type Polygon = readonly Dot[]

const box = (x0: number, y0: number, x1: number, y1: number): Polygon => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
]

const found = (patches: readonly Polygon[], width: number, height: number): Region[] =>
  regions(subdivide(patches, box(0, 0, width, height)).faults, patches, width, height)

/** As lines that can be compared whatever the order of the regions. */
const sorted = (list: readonly { kind: RegionKind; area: number; patches: readonly number[] }[]): string[] =>
  list.map(({ kind, area, patches }) => `${kind} ${area} ${patches.join()}`).sort()

const whole = (next: () => number, below: number): number => Math.floor(next() * below)

function triangles(next: () => number, count: number, size: number): Polygon[] {
  const list: Polygon[] = []
  while (list.length < count) {
    const corner = (): Dot => [whole(next, size + 3) - 1, whole(next, size + 3) - 1]
    const corners = [corner(), corner(), corner()]
    const area = doubleArea(corners)
    if (area !== 0n) list.push(area < 0n ? corners.reverse() : corners)
  }
  return list
}

const sum = (list: readonly Region[], kind: RegionKind): number => list.reduce((total, one) => total + (one.kind === kind ? one.area : 0), 0)

describe('triangles thrown over each other on a small grid', () => {
  const SCALE = 1e6
  const path = (corners: Polygon): clipper.IntPoint[] => corners.map(([x, y]) => ({ X: x * SCALE, Y: y * SCALE }))

  function clipped(type: clipper.ClipType, subject: clipper.IntPoint[][], clip: clipper.IntPoint[][]): clipper.IntPoint[][] {
    const engine = new clipper.Clipper()
    engine.AddPaths(subject, clipper.PolyType.ptSubject, true)
    engine.AddPaths(clip, clipper.PolyType.ptClip, true)
    const solution: clipper.IntPoint[][] = []
    engine.Execute(type, solution, clipper.PolyFillType.pftNonZero, clipper.PolyFillType.pftNonZero)
    return solution
  }

  const areaOf = (paths: clipper.IntPoint[][]): number => paths.reduce((total, one) => total + clipper.Clipper.Area(one), 0) / SCALE ** 2

  it.each([3, 8, 20, 60].flatMap((count) => [1, 2, 3, 4, 5].map((seed) => [count, seed] as const)))(
    '%i triangles have the areas of an independent polygon library, clipper-lib 6.4.2 (pile %i)',
    (count, seed) => {
      const size = 12
      const patches = triangles(sequence(seed * 100 + count), count, size)
      const list = found(patches, size, size)
      const { ctDifference, ctIntersection, ctUnion } = clipper.ClipType
      const paths = patches.map(path)
      const grid = [path(box(0, 0, size, size))]
      let under: clipper.IntPoint[][] = []
      let twice: clipper.IntPoint[][] = []
      for (const one of paths) {
        twice = clipped(ctUnion, [...twice, ...clipped(ctIntersection, under, [one])], [])
        under = clipped(ctUnion, under, [one])
      }
      expect(sum(list, 'gap')).toBeCloseTo(areaOf(clipped(ctDifference, grid, paths)), 3)
      expect(sum(list, 'outside')).toBeCloseTo(areaOf(clipped(ctDifference, paths, grid)), 3)
      expect(sum(list, 'overlap')).toBeCloseTo(areaOf(twice), 3)
    },
  )

  it.each([1, 2, 3, 4, 5, 6])('names a point in each region, and the patches that hold it are among those named (pile %i)', (seed) => {
    const size = 10
    const patches = triangles(sequence(seed), 12, size)
    for (const { kind, at, patches: named } of found(patches, size, size)) {
      const over = at[0].d * at[1].d
      const scaled = ({ n, d }: Rational): number => Number(n * (over / d))
      const spot: Dot = [scaled(at[0]), scaled(at[1])]
      const holding = patches.flatMap((corners, patch) => {
        const large = corners.map(([x, y]): Dot => [x * Number(over), y * Number(over)])
        return insidePolygon(large, spot) > 0 ? [patch] : []
      })
      const inGrid = [toNumber(at[0]), toNumber(at[1])].every((place) => place > 0 && place < size)
      if (kind === 'gap') expect([inGrid, holding]).toEqual([true, []])
      if (kind === 'overlap') expect(holding.length).toBeGreaterThan(1)
      if (kind === 'outside') expect([inGrid, holding.length > 0]).toEqual([false, true])
      if (kind !== 'gap') expect(named).toEqual(expect.arrayContaining(holding))
    }
  })
})

describe('boxes on whole cells', () => {
  /** Cell by cell: every cell is of one sort throughout, and cells that share a side are one region. */
  function cellByCell(patches: readonly Polygon[], width: number, height: number): { kind: RegionKind; area: number; patches: number[] }[] {
    const around = 8
    const [columns, rows] = [width + 2 * around, height + 2 * around]
    const cells = Array.from({ length: columns * rows }, (_, cell) => {
      const [x, y] = [(cell % columns) - around, Math.floor(cell / columns) - around]
      const on = patches.flatMap(([a, , c], patch) => (a && c && a[0] <= x && x < c[0] && a[1] <= y && y < c[1] ? [patch] : []))
      return { on, inside: x >= 0 && y >= 0 && x < width && y < height }
    })
    const sorts: Record<RegionKind, (cell: number) => boolean> = {
      gap: (cell) => cells[cell]?.inside === true && cells[cell].on.length === 0,
      overlap: (cell) => (cells[cell]?.on.length ?? 0) > 1,
      outside: (cell) => cells[cell]?.inside === false && cells[cell].on.length > 0,
    }
    return (['gap', 'overlap', 'outside'] as const).flatMap((kind) => {
      const seen = new Set<number>()
      return cells.flatMap((_, start) => {
        if (seen.has(start) || !sorts[kind](start)) return []
        const members = [start]
        seen.add(start)
        for (const cell of members)
          for (const beside of [cell - 1, cell + 1, cell - columns, cell + columns])
            if (!seen.has(beside) && sorts[kind](beside)) {
              seen.add(beside)
              members.push(beside)
            }
        const named = kind === 'gap' ? [] : [...new Set(members.flatMap((cell) => cells[cell]?.on ?? []))].sort((a, b) => a - b)
        return [{ kind, area: members.length, patches: named }]
      })
    })
  }

  const boxes = (next: () => number, count: number, size: number, side: number): Polygon[] =>
    Array.from({ length: count }, () => {
      const [x, y] = [whole(next, size + 4) - 3, whole(next, size + 4) - 3]
      return box(x, y, x + 1 + whole(next, side), y + 1 + whole(next, side))
    })

  it.each(Array.from({ length: 40 }, (_, seed) => seed + 1))('make the regions that cells make one by one (boxes %i)', (seed) => {
    const next = sequence(seed * 7)
    const [size, count, side] = [4 + whole(next, 12), 2 + whole(next, 30), 1 + whole(next, 6)]
    const patches = boxes(next, count, size, side)
    expect(sorted(found(patches, size, size))).toEqual(sorted(cellByCell(patches, size, size)))
  })

  it.each([1, 2, 3])('thrown on a block that is whole: every patch under them is named (boxes %i)', (seed) => {
    const next = sequence(seed)
    const size = 9
    const patches = Array.from({ length: size * size }, (_, cell) => {
      const [x, y] = [cell % size, Math.floor(cell / size)]
      return box(x, y, x + 1, y + 1)
    })
    patches.push(...boxes(next, 6, size, 3))
    expect(sorted(found(patches, size, size))).toEqual(sorted(cellByCell(patches, size, size)))
  })

  it('a patch that lies under a region on all sides is named though none of its own sides runs there', () => {
    const patches = [box(0, 0, 9, 9), box(2, 3, 4, 5), box(6, 6, 7, 8)]
    expect(sorted(found(patches, 9, 9))).toEqual(['overlap 2 0,2', 'overlap 4 0,1'])
  })

  it('a patch whose hollow lies under a region, or that lies deep within one, is named only where it has fabric', () => {
    // A horseshoe open at the top, a box in its hollow on another box, and a box in its fabric.
    const horseshoe: Polygon = [
      [0, 0],
      [3, 0],
      [3, 6],
      [6, 6],
      [6, 0],
      [9, 0],
      [9, 9],
      [0, 9],
    ]
    const patches = [horseshoe, box(3, 0, 6, 6), box(4, 2, 5, 3), box(1, 7, 8, 8)]
    expect(sorted(found(patches, 9, 9))).toEqual(['overlap 1 1,2', 'overlap 7 0,3'])
  })

  it('two whole layers are one overlap of all patches, though no fault runs within', () => {
    const patches = Array.from({ length: 32 }, (_, cell) => box(cell % 4, (cell >> 2) % 4, (cell % 4) + 1, ((cell >> 2) % 4) + 1))
    expect(sorted(found(patches, 4, 4))).toEqual([`overlap 16 ${patches.map((_, patch) => patch).join()}`])
  })

  it('only the few patches near a fault are named where there are thousands', () => {
    const [columns, rows] = [60, 50]
    const patches = Array.from({ length: columns * rows }, (_, cell) => {
      const [x, y] = [cell % columns, Math.floor(cell / columns)]
      return box(x * 2, y * 2, x * 2 + 2, y * 2 + 2)
    })
    patches[1510] = box(21, 50, 23, 52)
    expect(sorted(found(patches, columns * 2, rows * 2))).toEqual(['gap 2 ', 'overlap 2 1510,1511'])
  })
})

describe('great piles', () => {
  /** A star of five points that lies on whole steps. */
  function star(next: () => number, reach: number, span: number): Polygon {
    const [x, y, turn] = [whole(next, span), whole(next, span), next() * 6]
    return Array.from({ length: 10 }, (_, corner): Dot => {
      const far = corner % 2 === 0 ? reach : reach * 0.4
      const angle = turn + (corner * Math.PI) / 5
      return [Math.round(x + far * Math.cos(angle)), Math.round(y + far * Math.sin(angle))]
    })
  }

  it('300 stars of which most lie under two others are one overlap that names them all', () => {
    const next = sequence(11)
    const span = 30_000
    const patches = Array.from({ length: 300 }, () => star(next, 9000, span))
    const list = found(patches, span, span)
    const overlap = list.filter(({ kind }) => kind === 'overlap').sort((a, b) => b.area - a.area)
    expect(overlap[0]?.patches).toEqual(patches.map((_, patch) => patch))
  })

  it('the finest fractions of the farthest cells are distinguished', () => {
    const far = 10_000 * 55_440
    const slim: Polygon[] = [
      [
        [0, 0],
        [far, far - 1],
        [0, 1],
      ],
      [
        [0, 1],
        [far, far - 2],
        [far, far],
      ],
    ]
    // Both lie between sides that part from each other by a step in all the way: at x they share x/far before the middle and 1 − x/far after it.
    expect(sorted(found(slim, far, far).filter(({ kind }) => kind === 'overlap'))).toEqual([`overlap ${far / 4} 0,1`])
  })
})
