/** An empty grid, with a few invented fabrics to begin with. */
import type { Block } from '../../../geometry/index.ts'
import { eveningStar } from './eveningStar.ts'

export const emptyGrid: Block = { ...eveningStar, name: 'New block', units: [] }
