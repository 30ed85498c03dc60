/**
 * The plane of a layout against independent polygon libraries: what is covered, each gap, each overlap and each piece of fabric beyond the
 * grid. clipper-lib 6.4.2 gives areas, of unions and intersections only: where sides lie on each other its differences go wrong, and its
 * outlines leave neighbours apart or tie regions by a line of no width. jsts 2.12.1 gives the regions.
 *
 * Exact   corners lie on halves and thirds of a cell and outlines rise by 0, 1/2, 1, 2 or stand upright, so that every crossing is a whole
 *         number of the libraries' steps: they round nothing, and regions that only touch at a point are two for all.
 */
import clipper from 'clipper-lib'
import SimplePointInAreaLocator from 'jsts/org/locationtech/jts/algorithm/locate/SimplePointInAreaLocator.js'
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js'
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js'
import Location from 'jsts/org/locationtech/jts/geom/Location.js'
import PrecisionModel from 'jsts/org/locationtech/jts/geom/PrecisionModel.js'
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js'
import UnaryUnionOp from 'jsts/org/locationtech/jts/operation/union/UnaryUnionOp.js'
import { describe, expect, it } from 'vitest'
import type { BoxUnit, Unit } from '../../geometry/values/block.ts'
import { parseRational, type Rational, toFile, toNumber } from '../../geometry/exact/rational.ts'
import { report } from '../../geometry/report/wholeReport.ts'
import { shapeOf } from '../../geometry/units/kinds.ts'
import type { Report, ReportPoint } from '../../geometry/values/report.ts'
import { blockOf, sequence } from '../help.ts'
import { oneOf, SIZES, tiling, unitAtRandom } from '../layouts.ts'

const CODES = ['gap', 'overlap', 'outside'] as const

type Code = (typeof CODES)[number]

type Spot = readonly [number, number]

/** Library steps to a cell. */
const STEPS = 28_800

const spot = ([x, y]: ReportPoint): Spot => [toNumber(parseRational(x) as Rational), toNumber(parseRational(y) as Rational)]

/** Corners in library steps. */
function outlineOf(corners: readonly ReportPoint[]): Spot[] {
  return corners.map(spot).map(([x, y]) => [Math.round(x * STEPS), Math.round(y * STEPS)])
}

type Path = clipper.IntPoint[]

const { ctIntersection, ctUnion } = clipper.ClipType

function cut(type: clipper.ClipType, subject: readonly Path[], clip: readonly Path[]): Path[] {
  const engine = new clipper.Clipper()
  engine.AddPaths([...subject], clipper.PolyType.ptSubject, true)
  engine.AddPaths([...clip], clipper.PolyType.ptClip, true)
  const found: Path[] = []
  engine.Execute(type, found, clipper.PolyFillType.pftNonZero, clipper.PolyFillType.pftNonZero)
  return found
}

/** Total areas by clipper-lib, in square cells. */
function areasOf(patches: readonly (readonly Spot[])[], grid: readonly Spot[]): Record<Code | 'covered', number> {
  const [around, ...paths] = [grid, ...patches].map((outline) => {
    const path = outline.map(([x, y]) => ({ X: x, Y: y }))
    return clipper.Clipper.Orientation(path) ? path : path.reverse()
  }) as [Path, ...Path[]]
  const twice = paths.flatMap((one, index) => paths.slice(index + 1).flatMap((other) => cut(ctIntersection, [one], [other])))
  const area = (found: readonly Path[]): number => found.reduce((sum, path) => sum + clipper.Clipper.Area(path), 0) / STEPS ** 2
  const covered = area(cut(ctUnion, paths, []))
  const inside = area(cut(ctIntersection, paths, [around]))
  return { covered, gap: area([around]) - inside, overlap: area(cut(ctUnion, twice, [])), outside: covered - inside }
}

/** What is used of the values of jsts. */
interface Area {
  readonly getArea: () => number
  readonly getNumGeometries: () => number
  readonly getGeometryN: (index: number) => Area
}

const factory = new GeometryFactory(new PrecisionModel(1))

const polygon = (outline: readonly Spot[]): Area => factory.createPolygon([...outline, outline[0] as Spot].map(([x, y]) => new Coordinate(x, y)))

/** Polygons of a geometry; points and lines where two only touch are none. */
const polygonsOf = (area: Area): Area[] =>
  Array.from({ length: area.getNumGeometries() }, (_, index) => area.getGeometryN(index)).filter((part) => part.getArea() > 0)

const union = (areas: readonly Area[]): Area => UnaryUnionOp.union(factory.createGeometryCollection([...areas]))

/** Regions by jsts. */
function regionsOf(patches: readonly Area[], grid: Area): Record<Code, Area[]> {
  const covered = union(patches)
  const twice = patches.flatMap((one, index) => patches.slice(index + 1).flatMap((other) => polygonsOf(OverlayOp.intersection(one, other))))
  return {
    gap: polygonsOf(OverlayOp.difference(grid, covered)),
    overlap: twice.length === 0 ? [] : polygonsOf(union(twice)),
    outside: polygonsOf(OverlayOp.difference(covered, grid)),
  }
}

const within = ([x, y]: Spot, region: Area): boolean =>
  SimplePointInAreaLocator.locate(new Coordinate(x * STEPS, y * STEPS), region) === Location.INTERIOR

/** Everything the report says of a layout's plane is so by the libraries; gives the number of its regions. */
function agrees(columns: number, rows: number, units: readonly Unit[]): number {
  const said = report(blockOf(columns, rows, units))
  const outlines = said.patches.map(({ corners }) => outlineOf(corners))
  const grid = outlineOf([
    [0, 0],
    [columns, 0],
    [columns, rows],
    [0, rows],
  ])
  const patches = outlines.map(polygon)
  const areas = areasOf(outlines, grid)
  const regions = regionsOf(patches, polygon(grid))
  const total = { gap: 0, overlap: 0, outside: 0 }
  for (const code of CODES) {
    const own = said.problems.filter((problem) => problem.code === code)
    for (const { area } of own) total[code] += area as number
    expect(total[code], `${code}: area`).toBeCloseTo(areas[code], 9)
    expect(own.length, `${code}: regions`).toBe(regions[code].length)
    const found = own.map(({ at }) => regions[code].filter((region) => within(spot(at), region)))
    expect(new Set(found.flat()).size, `${code}: a point in each region`).toBe(regions[code].length)
    own.forEach(({ area, units: named }, index) => {
      expect(found[index], `${code}: a point in one region`).toHaveLength(1)
      const region = found[index]?.[0] as Area
      expect(area, `${code}: area of a region`).toBeCloseTo(region.getArea() / STEPS ** 2, 9)
      expect([...named].sort(), `${code}: units of a region`).toEqual(code === 'gap' ? [] : unitsIn(region, said, patches))
    })
  }
  expect(columns * rows - total.gap + total.outside, 'covered').toBeCloseTo(areas.covered, 9)
  return said.problems.filter(({ area }) => area !== undefined).length
}

function unitsIn(region: Area, { patches }: Report, areas: readonly Area[]): string[] {
  const there = patches.flatMap(({ unit }, patch) => (OverlayOp.intersection(region, areas[patch]).getArea() > 0 ? [unit as string] : []))
  return [...new Set(there)].sort()
}

/** Of the units that tile and of `over` more, on half cells and partly beyond the grid, some are there, and of some only single patches. */
function muddled(next: () => number, columns: number, rows: number, kept: number, over: number): Unit[] {
  const half = (most: number): number => Math.floor(next() * (2 * most + 1)) / 2 - 0.5
  const more = Array.from({ length: over }, (_, index) => unitAtRandom(next, `over${index}`, [half(columns), half(rows)], oneOf(next, SIZES)))
  const units = [...tiling(next, columns, rows), ...more].flatMap((unit): Unit[] => {
    if (next() < kept) return [unit]
    return patchesAlone(unit).filter(() => next() < kept)
  })
  return units
}

/** A unit's patches, each a polygon by itself. */
function patchesAlone(unit: BoxUnit): Unit[] {
  return shapeOf(unit).patches.map(({ name, corners }) => ({
    id: `${unit.id} ${name}`,
    kind: 'polygon',
    corners: corners.map(([x, y]) => [toFile(x), toFile(y)] as const),
    fabrics: { patch: 'a' },
  }))
}

describe.each([1, 2, 3])('layouts at random (%i)', (seed) => {
  const next = sequence(seed * 101)
  const sized = (): [number, number] => [2 + Math.floor(next() * 3), 2 + Math.floor(next() * 3)]
  /** The regions of many layouts: units kept of those that tile, units laid over them. */
  const regions = (layouts: number, kept: number, over: () => number): number[] =>
    Array.from({ length: layouts }, () => {
      const [columns, rows] = sized()
      return agrees(columns, rows, muddled(next, columns, rows, kept, over()))
    })

  it('that tile', () => {
    expect(regions(50, 1, () => 0).every((count) => count === 0)).toBe(true)
  })

  it('that have gaps', () => {
    expect(regions(80, 0.6, () => 0).filter((count) => count > 0).length).toBeGreaterThan(40)
  })

  it('that overlap, have gaps and run beyond the grid', () => {
    expect(regions(80, 0.7, () => 1 + Math.floor(next() * 4)).filter((count) => count > 3).length).toBeGreaterThan(25)
  })
})
