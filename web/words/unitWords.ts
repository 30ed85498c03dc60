/** The names of kinds, methods, patches and stages. `t` translates them when they are shown. */
import type { Block, Kind, Method, Unit } from '../../geometry/index.ts'
import { label, t } from './words.ts'

export const KIND_NAMES: Readonly<Record<Kind, string>> = {
  square: label('Square'),
  hst: label('Half-square triangle'),
  hourglass: label('Hourglass'),
  goose: label('Flying goose'),
  diamond: label('Square in a square'),
  cornered: label('Clipped corners'),
  strips: label('Strips'),
  'half-rectangle': label('Half rectangle'),
  polygon: label('Free patch'),
}

export const METHOD_NAMES: Readonly<Record<Method, string>> = {
  plain: label('traditional piecing'),
  'hst-2': label('two at a time'),
  'hst-4': label('four at a time'),
  'hst-8': label('eight at a time'),
  'qst-2': label('two at a time'),
  'geese-4': label('four at a time, no waste'),
  'corner-flip': label('stitch and flip'),
  'strip-set': label('strip set'),
}

export const PATCH_NAMES: Readonly<Record<string, string>> = {
  patch: label('Patch'),
  upper: label('Upper half'),
  lower: label('Lower half'),
  top: label('Top'),
  right: label('Right'),
  bottom: label('Bottom'),
  left: label('Left'),
  goose: label('Centre triangle'),
  leftWing: label('Left wing'),
  rightWing: label('Right wing'),
  centre: label('Centre'),
  topLeft: label('Top left'),
  topRight: label('Top right'),
  bottomRight: label('Bottom right'),
  bottomLeft: label('Bottom left'),
}

/** The name of a patch within its unit; strips are numbered. */
export const patchName = (name: string): string =>
  PATCH_NAMES[name] === undefined ? t('Strip {n}', { n: name.replace('strip', '') }) : t(PATCH_NAMES[name])

/** A unit where it is plain which one is meant: the name its maker gave it, else its kind. */
export const unitName = ({ name, kind }: Unit): string => name?.trim() || t(KIND_NAMES[kind])

export function nameOfUnit({ units }: Block, id: string): string {
  const unit = units.find((one) => one.id === id)
  return unit === undefined ? '' : unitName(unit)
}
