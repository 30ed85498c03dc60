/** The corners of units whose corners are clipped: which patches they are, and how long their legs. */
import { parseRational, toNumber } from '../../exact/rational.ts'
import type { UnitVariant } from './bookletContext.ts'

export interface Flip {
  readonly corner: 'topLeft' | 'topRight' | 'bottomRight' | 'bottomLeft'
  readonly fabric: string
}

/** The finished leg of a clipped corner, in the measure's unit. */
export function pictureLeg({ first, row }: UnitVariant): number {
  const [wide, high] = row.finished
  if (first.kind === 'goose') return high
  if (first.kind === 'diamond') return wide / 2
  if (first.kind === 'polygon') return 0
  const number = (value: number | string): number => toNumber(parseRational(value) ?? { n: 0n, d: 1n })
  const across = number((first.turn ?? 0) % 2 === 0 ? first.size[0] : first.size[1])
  return (number(first.corner ?? 0) * wide) / across
}

const CORNERS = ['topLeft', 'bottomRight', 'topRight', 'bottomLeft'] as const

/** Opposite corners first; the wings of a goose are its upper corners. As the unit lies at rest, so mirrored where it is. */
export function flipsOf({ first }: UnitVariant): Flip[] {
  const named: Partial<Record<Flip['corner'], string>> =
    first.kind === 'goose' ? { topLeft: first.fabrics.leftWing as string, topRight: first.fabrics.rightWing as string } : first.fabrics
  const mirrored = first.kind !== 'polygon' && first.mirror === true
  return CORNERS.flatMap((corner) => {
    const fabric = named[corner]
    return fabric === undefined ? [] : [{ corner: mirrored ? OPPOSITE[corner] : corner, fabric }]
  })
}

const OPPOSITE = { topLeft: 'topRight', topRight: 'topLeft', bottomLeft: 'bottomRight', bottomRight: 'bottomLeft' } as const
