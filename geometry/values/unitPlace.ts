/**
 * How a unit is pointed at: by what it is and where it lies, or by the name its maker gave it; never by its id.
 *
 * Rows are rows of the grid, counted from 1 at the top; a unit is in the row where it begins.
 */
import type { Kind } from './block.ts'

/** A square unit may be a rectangle. */
export type UnitNoun = Kind | 'rectangle'

export type UnitSide = 'top' | 'right' | 'bottom' | 'left' | 'topLeft' | 'topRight' | 'bottomRight' | 'bottomLeft' | 'centre'

export type UnitPlace =
  /** The maker's own name. */
  | { readonly type: 'named'; readonly name: string }
  /** The block has no other of its kind. */
  | { readonly type: 'only'; readonly noun: UnitNoun }
  /** No other of its kind lies on that side of the block's centre. */
  | { readonly type: 'side'; readonly noun: UnitNoun; readonly side: UnitSide }
  /** `nth` of its kind in the row, from the left, from 1; left out where it is alone. */
  | { readonly type: 'row'; readonly noun: UnitNoun; readonly row: number; readonly nth?: number }
