/** Checks quilts that were kept or linked; loaded with the first quilt, because a maker of blocks never needs it. */
import { checkQuilt } from '../../geometry/index.ts'

export const isSoundQuilt = (value: unknown): boolean => checkQuilt(value).ok
