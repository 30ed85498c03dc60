/** How long a stitched line is, in cells. */
import { distanceBetween, type StitchedLine, stretchesOf } from '../../geometry/quilting/stitchedLines.ts'

export const lineLength = (line: StitchedLine): number => stretchesOf(line).reduce((sum, [from, to]) => sum + distanceBetween(from, to), 0)
