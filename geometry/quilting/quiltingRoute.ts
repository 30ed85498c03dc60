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

type BlockCorner = 'topLeft' | 'topRight' | 'bottomRight' | 'bottomLeft'

export interface QuiltingOptions {
  /** A corner of the block, its centre, or a place in cells. */
  readonly begin?: BlockCorner | 'centre' | readonly [number, number]
  /** Begin at the seam point nearest to `begin` even if more is stitched twice; otherwise at the nearest where it costs nothing. */
  readonly atAnyCost?: boolean
  /** From the centre outwards (the default), or with few turns. */
  readonly order?: 'centre' | 'straight'
}

export function quilt(laid: Laid, plane: Plane, { begin, ...options }: QuiltingOptions = {}): Ditch {
  const inBlock = (patch: number): boolean => (laid.patches[patch]?.unit ?? -1) >= 0
  const stitched = plane.edges.filter(({ plus, minus }) => plus >= 0 && minus >= 0 && (inBlock(plus) || inBlock(minus)))
  const found = ditch(
    stitched.map(({ a, b }) => [plane.dots[a] as Dot, plane.dots[b] as Dot]),
    { ...options, centre: [laid.width / 2, laid.height / 2], ...(begin === undefined ? {} : { begin: dotOf(laid, begin) }) },
  )
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
