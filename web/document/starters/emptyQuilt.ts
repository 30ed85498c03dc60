/** An empty quilt: nine places of a usual size, whose blocks are framed to it in one invented fabric. */
import type { Quilt } from '../../../geometry/index.ts'
import { t } from '../../words/words.ts'
import { usualUnit } from '../region.ts'

/** Finished sides of a place, in inches and centimetres: usual for a sampler, common practice, no source. */
const USUAL = { in: 12, cm: 30 } as const

export function emptyQuilt(): Quilt {
  const unit = usualUnit()
  return {
    format: 'nestwright.quilt',
    version: 1,
    name: t('New quilt'),
    measure: { unit },
    grid: { columns: 3, rows: 3, cell: USUAL[unit] },
    fabrics: [{ id: 'frame', name: t('Frame and strips'), colour: '#efe6d6' }],
    blocks: [],
    places: [],
    frame: [{ fabric: 'frame' }],
  }
}
