/**
 * The quilting route of a block: every seam of the block, and the seam between the block and its first border.
 *
 * In      a block as laid and its plane; where the maker wants to begin, in cells.
 * Out     the report's `ditch`: positions in cells, lengths in the measure's unit.
 */
import { cellOf } from '../block/lengthsOf.ts'
import type { Laid } from '../block/lay.ts'
import { toNumber } from '../exact/rational.ts'
import type { Dot } from '../plane/points.ts'
import type { Plane } from '../plane/subdivide.ts'
import type { Ditch } from '../values/report.ts'
import { ditch } from './ditchRoute.ts'
import type { Segment } from './seamGraph.ts'

type BlockCorner = 'topLeft' | 'topRight' | 'bottomRight' | 'bottomLeft'

export interface QuiltingOptions {
  /** A corner of the block, its centre, or a place in cells. */
  readonly begin?: BlockCorner | 'centre' | readonly [number, number]
  /** Begin at the seam point nearest to `begin` even if more is stitched twice; otherwise at the nearest where it costs nothing. */
  readonly atAnyCost?: boolean
  /** From the centre outwards (the default where it begins in the centre), or with few turns (the default elsewhere): they are easier to follow. */
  readonly order?: 'centre' | 'straight'
}

/** The quilting route along all of a block's seams. */
export function quilt(laid: Laid, plane: Plane, options: QuiltingOptions = {}): Ditch {
  return quiltSeams(laid, stitchedSeams(laid, plane), options)
}

/** The stretches of seam that are quilted, in steps: all of the block, and those between the block and its first border. */
export function stitchedSeams(laid: Laid, plane: Plane): Segment[] {
  const inBlock = (patch: number): boolean => (laid.patches[patch]?.unit ?? -1) >= 0
  return plane.edges
    .filter(({ plus, minus }) => plus >= 0 && minus >= 0 && (inBlock(plus) || inBlock(minus)))
    .map(({ a, b }) => [plane.dots[a] as Dot, plane.dots[b] as Dot])
}

/** The route along some of a block's seams. */
export function quiltSeams(laid: Laid, seams: readonly Segment[], { begin, ...options }: QuiltingOptions = {}): Ditch {
  const centre: Dot = [laid.width / 2, laid.height / 2]
  const found = ditch(seams, {
    ...options,
    order: options.order ?? (begin === 'centre' ? 'centre' : 'straight'),
    centre,
    ...(begin === undefined ? {} : { begin: dotOf(laid, begin) }),
  })
  const scale = toNumber(cellOf(laid.block)) / laid.den
  return {
    ...found,
    routes: found.routes.map((route) => ({ ...route, points: route.points.map((dot) => laid.places.written(dot)) })),
    retraced: found.retraced * scale,
    length: found.length * scale,
  }
}

/** The starting place in steps; not always a whole number. */
function dotOf({ width, height, den }: Laid, begin: NonNullable<QuiltingOptions['begin']>): Dot {
  if (typeof begin !== 'string') return [begin[0] * den, begin[1] * den]
  if (begin === 'centre') return [width / 2, height / 2]
  return [begin.endsWith('Left') ? 0 : width, begin.startsWith('top') ? 0 : height]
}
