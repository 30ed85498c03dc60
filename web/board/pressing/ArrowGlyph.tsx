/** The pressing arrow in a button or a list: the glyph of the board in the colour of the text. */
import { ARROW, OPEN_ARROW } from '../../drawing/pressArrow.ts'

const pathOf = (points: readonly (readonly [number, number])[]): string => `M${points.map(([x, y]) => `${x} ${y}`).join('L')}Z`
const PATHS = { arrow: pathOf(ARROW), open: pathOf(OPEN_ARROW) }

/** `angle`: degrees clockwise from the right. */
export function ArrowGlyph({ angle, open }: { readonly angle: number; readonly open: boolean }) {
  return (
    <svg viewBox="-11 -11 22 22" width="18" height="18" aria-hidden="true">
      <path d={open ? PATHS.open : PATHS.arrow} transform={`rotate(${Math.round(angle)})`} />
    </svg>
  )
}
