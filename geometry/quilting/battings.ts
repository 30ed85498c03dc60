/**
 * How far apart stitches may be on a batting: what packages say, and what cautious makers keep.
 *
 * Source  beside each [S168]; a label gives the limit at which the batting holds, not a recommendation [S169].
 */
import type { BattingId } from '../values/messages.ts'
import type { Gap } from './largestGap.ts'

interface Batting {
  readonly id: BattingId
  /** In inches, the lower figure where two are given. */
  readonly most: number
  readonly source: string
}

export const BATTINGS: readonly Batting[] = [
  { id: 'cotton-scrim', most: 10, source: 'S168' },
  { id: 'cotton-needled', most: 8, source: 'S168' },
  { id: 'bamboo', most: 8, source: 'S168' },
  { id: 'cotton-natural', most: 4, source: 'S170' },
  { id: 'wool', most: 3, source: 'S168' },
  { id: 'polyester-thick', most: 3, source: 'S168' },
  { id: 'cotton-no-scrim', most: 2, source: 'S171' },
  { id: 'cotton-bleached', most: 1.5, source: 'S168' },
  { id: 'in-use', most: 3, source: 'S169' },
]

const CM = 2.54

/** The widest gap between quilting lines that a batting allows, in inches or cm. */
export const mostApart = ({ most }: Batting, unit: 'in' | 'cm'): number => (unit === 'in' ? most : most * CM)

/** Whether a batting holds across a gap (widths in `unit`); `close` where its limit lies between the two widths. */
export function holdsAcross({ width, atMost }: Pick<Gap, 'width' | 'atMost'>, unit: 'in' | 'cm', batting: Batting): 'holds' | 'close' | 'too wide' {
  const most = mostApart(batting, unit)
  if (atMost <= most) return 'holds'
  return width > most ? 'too wide' : 'close'
}
