/** How far the grid is filled. Until it is full nothing is wrong: the check and the board only say how far the maker has come. */
import type { Block, Findings } from '../../geometry/index.ts'

/** Some of the grid is still empty. */
export const isUnfinished = ({ problems }: Pick<Findings, 'problems'>): boolean => problems.some(({ code }) => code === 'gap')

/** The part of the grid from which on its last empty places are named. */
const NEARLY = 0.75

/** So much is filled that what is missing can be pointed at. */
export function isNearlyFull({ patches, block: { finished } }: Findings): boolean {
  const filled = patches.reduce((sum, { unit, area }) => sum + (unit === null ? 0 : area), 0)
  return filled >= NEARLY * finished[0] * finished[1]
}

/** Whole squares of the grid that are filled, and all there are. */
export function squaresFilled({ problems }: Findings, { columns, rows }: Block['grid']): { readonly n: number; readonly all: number } {
  const empty = problems.reduce((sum, { code, area = 0 }) => sum + (code === 'gap' ? area : 0), 0)
  // Areas such as three thirds of a cell are not whole in decimals.
  return { n: Math.floor(columns * rows - empty + 1e-9), all: columns * rows }
}
