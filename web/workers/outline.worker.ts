/**
 * The shapes of gaps, overlaps and cloth beyond the grid, for drawing only: what and how much they are comes from the exact subdivision. And shapes that
 * a maker joins or cuts, whose corners are made exact afterwards.
 *
 * polygon-clipping throws on some shapes and never ends on others. So it gets whole numbers only and runs here, where it can be ended from outside.
 */
import clipping, { type MultiPolygon, type Polygon } from 'polygon-clipping'

export interface OutlineWish {
  readonly patches: readonly (readonly (readonly [number, number])[])[]
  readonly grid: readonly (readonly [number, number])[]
}

export type Outlines = readonly MultiPolygon[]

/** Shapes put together, or the first with the second cut away: whole numbers in, polygons out. */
export interface ShapeWish {
  readonly sort: 'join' | 'cut'
  readonly outlines: readonly (readonly (readonly [number, number])[])[]
}

export type ShapeAnswer = MultiPolygon

self.onmessage = ({ data }: MessageEvent<OutlineWish | ShapeWish>) => {
  self.postMessage('sort' in data ? shaped(data) : outlines(data))
}

function shaped({ sort, outlines }: ShapeWish): ShapeAnswer {
  const [first, ...rest] = outlines.map((corners): Polygon => [corners.map(([x, y]): [number, number] => [x, y])])
  if (first === undefined) return []
  return sort === 'join' ? clipping.union(first, ...rest) : clipping.difference(first, ...rest)
}

function outlines({ patches, grid }: OutlineWish): Outlines {
  const own: Polygon[] = patches.map((corners) => [corners.map(([x, y]): [number, number] => [x, y])])
  const [first, ...rest] = own
  const ground: Polygon = [grid.map(([x, y]): [number, number] => [x, y])]
  if (first === undefined) return [[ground]]
  const cloth = clipping.union(first, ...rest)
  return [clipping.difference([ground], cloth), clipping.difference(cloth, [ground]), overlaps(own)]
}

function overlaps(patches: readonly Polygon[]): MultiPolygon {
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
