/**
 * How the maker quilts a block: what is kept with it, or the usual.
 *
 * In      a block. Its `quilting`, and that of its units, may be anything: what isn't understood is kept in the file and passed over here.
 * Out     where the line starts (null: wherever is easiest), the distance between the lines of a fill in the measure's unit, and each unit's fill.
 * Source  lines half an inch, or a centimetre, apart (common practice, no source).
 */
import { parseLength } from '../exact/lengths.ts'
import { toNumber } from '../exact/rational.ts'
import { type Block, type Fill, FILLS, QUILTING_STARTS, type QuiltingStart, type Unit } from '../values/block.ts'

interface QuiltingChoice {
  readonly begin: QuiltingStart | null
  readonly spacing: number
  readonly fillOf: (unit: Unit) => Fill
}

const USUAL_SPACING = { in: 0.5, cm: 1 } as const

export function quiltingOf({ measure, quilting }: Block): QuiltingChoice {
  const { begin, fill, spacing } = isObject(quilting) ? quilting : {}
  const length = parseLength(spacing)
  const all = FILLS.find((known) => known === fill) ?? 'none'
  return {
    begin: QUILTING_STARTS.find((known) => known === begin) ?? null,
    spacing: length !== null && length.n > 0n ? toNumber(length) : USUAL_SPACING[measure.unit],
    fillOf: (unit) => FILLS.find((known) => known === unit.quilting) ?? all,
  }
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null && !Array.isArray(value)
