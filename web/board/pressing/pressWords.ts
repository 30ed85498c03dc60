/** How a seam is pressed, in words: which way its sides lie on the table, and whose choice it is. */
import { type Findings, type Join, pressedTo, type SewnPiece, sewnPieces } from '../../../geometry/index.ts'
import { label, t } from '../../words/words.ts'

const WAYS: Readonly<Record<string, string>> = {
  'up ': label('up'),
  'down ': label('down'),
  ' left': label('to the left'),
  ' right': label('to the right'),
  'up left': label('up and to the left'),
  'up right': label('up and to the right'),
  'down left': label('down and to the left'),
  'down right': label('down and to the right'),
  ' ': label('to the other side'),
}

const known = new WeakMap<Findings['joins'], ReadonlyMap<string, SewnPiece>>()

function piecesOf(report: Findings): ReadonlyMap<string, SewnPiece> {
  const pieces = known.get(report.joins) ?? sewnPieces(report)
  known.set(report.joins, pieces)
  return pieces
}

/** Which way a side of a join lies, seen from its seam with the right side up. */
export function wayWords(report: Findings, join: Join, side: 0 | 1): string {
  const { vertical, sideways } = pressedTo(join, side, piecesOf(report))
  return t(WAYS[`${vertical} ${sideways}`] as string)
}

/** Where an arrow toward a side points on the table, in degrees clockwise from the right. */
export function angleOf(report: Findings, join: Join, side: 0 | 1): number {
  const { vertical, sideways } = pressedTo(join, side, piecesOf(report))
  const [x, y] = [sideways === 'left' ? -1 : sideways === 'right' ? 1 : 0, vertical === 'up' ? -1 : vertical === 'down' ? 1 : 0]
  return (Math.atan2(y, x) * 180) / Math.PI
}

/** `Pressed to the left: your choice.` */
export function pressState(report: Findings, join: Join): string {
  const { toward, rule } = join.press
  const own = rule === 'asked'
  if (toward === 'open') return own ? t('Pressed open: your choice.') : t('Pressed open.')
  const way = wayWords(report, join, toward)
  return own ? t('Pressed {way}: your choice.', { way }) : t('Pressed {way}, as proposed.', { way })
}
