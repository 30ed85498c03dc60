/**
 * The shapes of gaps, overlaps and fabric beyond the grid, only for drawing: which there are, and how large, comes from the exact subdivision. Also shapes that
 * the maker joins or cuts; their corners are made exact afterwards.
 *
 * polygon-clipping throws on some shapes and never returns on others, so it gets only whole numbers, and runs in a worker that can be ended.
 */
import clipping, { type MultiPolygon, type Polygon } from 'polygon-clipping'
import { serveJobs } from './serveJobs.ts'

type Ring = readonly (readonly [number, number])[]

/** Polygons, each an outline and its holes. */
export type Shapes = MultiPolygon
/** Gaps in the grid, fabric beyond it, and overlaps. */
export type Outlines = readonly Shapes[]

const jobs = { outlines, join, cut }
export type ShapeJobs = typeof jobs

serveJobs(jobs)

const polygon = (corners: Ring): Polygon => [corners.map(([x, y]): [number, number] => [x, y])]

/** Shapes put together: whole numbers in, polygons out. */
function join(shapes: readonly Ring[]): Shapes {
  const [first, ...rest] = shapes.map(polygon)
  return first === undefined ? [] : clipping.union(first, ...rest)
}

/** The first shape with the others cut away. */
function cut(shapes: readonly Ring[]): Shapes {
  const [first, ...rest] = shapes.map(polygon)
  return first === undefined ? [] : clipping.difference(first, ...rest)
}

function outlines(patches: readonly Ring[], grid: Ring): Outlines {
  const own = patches.map(polygon)
  const [first, ...rest] = own
  const ground = polygon(grid)
  if (first === undefined) return [[ground]]
  const cloth = clipping.union(first, ...rest)
  return [clipping.difference([ground], cloth), clipping.difference(cloth, [ground]), overlaps(own)]
}

function overlaps(patches: readonly Polygon[]): Shapes {
  const boxes = patches.map(boxOf)
  return patches.flatMap((patch, index) =>
    patches
      .slice(index + 1)
      .flatMap((other, after) => (apart(boxes[index] as Box, boxes[index + 1 + after] as Box) ? [] : clipping.intersection(patch, other))),
  )
}

type Box = readonly [number, number, number, number]

function boxOf([ring]: Polygon): Box {
  const xs = (ring ?? []).map(([x]) => x)
  const ys = (ring ?? []).map(([, y]) => y)
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]
}

const apart = (a: Box, b: Box): boolean => a[2] <= b[0] || b[2] <= a[0] || a[3] <= b[1] || b[3] <= a[1]
