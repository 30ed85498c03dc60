/** Words for kinds, methods, patches and stages: the one catalogue of the panels. */
import type { Kind, Method, Stage } from '../../geometry/index.ts'

export const KIND_NAMES: Readonly<Record<Kind, string>> = {
  square: 'Square',
  hst: 'Half-square triangle',
  hourglass: 'Hourglass',
  goose: 'Flying goose',
  diamond: 'Square in a square',
  cornered: 'Clipped corners',
  strips: 'Strips',
  'half-rectangle': 'Half rectangle',
  polygon: 'Free patch',
}

export const METHOD_NAMES: Readonly<Record<Method, string>> = {
  plain: 'single pieces',
  'hst-2': 'two at a time',
  'hst-4': 'four at a time',
  'hst-8': 'eight at a time',
  'qst-2': 'two at a time',
  'geese-4': 'four at a time, no waste',
  'corner-flip': 'flipped corners',
  'strip-set': 'strip set',
}

export const PATCH_NAMES: Readonly<Record<string, string>> = {
  patch: 'Patch',
  upper: 'Upper half',
  lower: 'Lower half',
  top: 'Top',
  right: 'Right',
  bottom: 'Bottom',
  left: 'Left',
  goose: 'Goose',
  leftWing: 'Left wing',
  rightWing: 'Right wing',
  centre: 'Centre',
  topLeft: 'Top left',
  topRight: 'Top right',
  bottomRight: 'Bottom right',
  bottomLeft: 'Bottom left',
}

export const STAGE_NAMES: Readonly<Record<Stage, string>> = {
  unit: 'unit',
  row: 'row',
  column: 'column',
  section: 'section',
  block: 'block',
  border: 'border',
}
