/** What kinds, methods, patches and stages are called; said on the screen by `t`. */
import { said, t } from './words.ts'
import type { Kind, Method, Stage } from '../../geometry/index.ts'

export const KIND_NAMES: Readonly<Record<Kind, string>> = {
  square: said('Square'),
  hst: said('Half-square triangle'),
  hourglass: said('Hourglass'),
  goose: said('Flying goose'),
  diamond: said('Square in a square'),
  cornered: said('Clipped corners'),
  strips: said('Strips'),
  'half-rectangle': said('Half rectangle'),
  polygon: said('Free patch'),
}

export const METHOD_NAMES: Readonly<Record<Method, string>> = {
  plain: said('single pieces'),
  'hst-2': said('two at a time'),
  'hst-4': said('four at a time'),
  'hst-8': said('eight at a time'),
  'qst-2': said('two at a time'),
  'geese-4': said('four at a time, no waste'),
  'corner-flip': said('flipped corners'),
  'strip-set': said('strip set'),
}

export const PATCH_NAMES: Readonly<Record<string, string>> = {
  patch: said('Patch'),
  upper: said('Upper half'),
  lower: said('Lower half'),
  top: said('Top'),
  right: said('Right'),
  bottom: said('Bottom'),
  left: said('Left'),
  goose: said('Goose'),
  leftWing: said('Left wing'),
  rightWing: said('Right wing'),
  centre: said('Centre'),
  topLeft: said('Top left'),
  topRight: said('Top right'),
  bottomRight: said('Bottom right'),
  bottomLeft: said('Bottom left'),
}

export const STAGE_NAMES: Readonly<Record<Stage, string>> = {
  unit: said('unit'),
  row: said('row'),
  column: said('column'),
  section: said('section'),
  block: said('block'),
  border: said('border'),
}

/** A patch by its name within its unit; strips are counted. */
export const patchName = (name: string): string =>
  PATCH_NAMES[name] === undefined ? t('Strip {n}', { n: name.replace('strip', '') }) : t(PATCH_NAMES[name])
