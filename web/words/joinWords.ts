/**
 * Describes a join in the maker's words.
 *
 * In      the findings.
 * Out     for each join: what is sewn to what, what needs care, which way to press and why, and the size of the piece it makes.
 */
import {
  type Findings,
  type Join,
  type Kind,
  type Meeting,
  type PieceName,
  pressedTo,
  sayLength,
  type SewnPiece,
  sewnPieces,
} from '../../geometry/index.ts'
import { label, t, tn, translate } from './words.ts'
import { patchName } from './unitWords.ts'

interface JoinWords {
  /** What is sewn to what. */
  readonly sew: string
  /** What needs care, which way to press and why. */
  readonly then: string
  /** The size of the piece it makes, where it is a rectangle square to the grid. */
  readonly size: string
}

const UNIT_NAMES: Readonly<Record<Kind, string>> = {
  square: label('the square {id}'),
  hst: label('the half-square triangle {id}'),
  hourglass: label('the hourglass {id}'),
  goose: label('the flying goose {id}'),
  diamond: label('the square in a square {id}'),
  cornered: label('the clipped corners {id}'),
  strips: label('the strips {id}'),
  'half-rectangle': label('the half rectangle {id}'),
  polygon: label('the free patch {id}'),
}

const BORDER_NAMES: Readonly<Record<string, string>> = {
  left: label('the left border'),
  right: label('the right border'),
  top: label('the top border'),
  bottom: label('the bottom border'),
}

const CORNER_NAMES: Readonly<Record<string, string>> = {
  topLeft: label('the top left corner square'),
  topRight: label('the top right corner square'),
  bottomRight: label('the bottom right corner square'),
  bottomLeft: label('the bottom left corner square'),
}

const WHOLE_NAMES: Readonly<Record<'section' | 'row' | 'column', string>> = {
  section: label('section {number}'),
  row: label('row {number}'),
  column: label('column {number}'),
}

const SO_FAR_NAMES: Readonly<Record<'section' | 'row' | 'column' | 'block', string>> = {
  section: label('the section so far'),
  row: label('the row so far'),
  column: label('the column so far'),
  block: label('the block so far'),
}

const PRESS_WORDS: Readonly<Record<string, string>> = {
  'up ': label('Press up, toward {piece}.'),
  'down ': label('Press down, toward {piece}.'),
  ' left': label('Press to the left, toward {piece}.'),
  ' right': label('Press to the right, toward {piece}.'),
  'up left': label('Press up and left, toward {piece}.'),
  'up right': label('Press up and right, toward {piece}.'),
  'down left': label('Press down and left, toward {piece}.'),
  'down right': label('Press down and right, toward {piece}.'),
  ' ': label('Press toward {piece}.'),
}

const SEW_WORDS: Readonly<Record<Join['kind'], string>> = {
  straight: label('Sew {a} to {b}.'),
  partial: label('Sew {a} to {b}, leaving the seam open at one end.'),
  'set-in': label('Set {b} into {a}, turning at each bend.'),
}

export function joinWords(report: Findings): (step: number) => JoinWords {
  const pieces = sewnPieces(report)
  const numbers = new Map(report.joins.map(({ id }, index) => [id, index + 1]))
  const names = patchNamesByPiece(report)
  const meetings = new Map<string, Meeting[]>()
  for (const meeting of report.meetings) meetings.set(meeting.join, [...(meetings.get(meeting.join) ?? []), meeting])
  return (step) => {
    const join = report.joins[step - 1] as Join
    const later = join.finishedAfter === undefined ? [] : [t('Finish it after seam {number}.', { number: numbers.get(join.finishedAfter) ?? 0 })]
    return {
      sew: sewWords(join, pieces, names),
      then: [...later, ...careWords(meetings.get(join.id) ?? []), pressWords(join, pieces, names), translate(join.press.why)].join(' '),
      size: sizeWords(join, report),
    }
  }
}

/** Inside a unit the patches are named; between units, the pieces. */
function sewWords(join: Join, pieces: ReadonlyMap<string, SewnPiece>, names: ReadonlyMap<string, readonly string[]>): string {
  if (join.stage !== 'unit') {
    const [a, b] = join.sides.map((side) => pieceName(pieces.get(side)))
    return capitalise(t(SEW_WORDS[join.kind], { a: a ?? '', b: b ?? '' }))
  }
  const [a, b] = join.sides.map((side) => patchWords(names.get(side) ?? []))
  return capitalise(t('In {unit}: sew “{a}” to “{b}”.', { unit: pieceName(pieces.get(join.id)), a: a ?? '', b: b ?? '' }))
}

function pressWords(join: Join, pieces: ReadonlyMap<string, SewnPiece>, names: ReadonlyMap<string, readonly string[]>): string {
  if (join.press.toward === 'open') return t('Press the seam open.')
  const { toward, vertical, sideways } = pressedTo(join, join.press.toward, pieces)
  const side = join.sides[join.press.toward]
  const piece = join.stage === 'unit' ? `“${patchWords(names.get(side) ?? [])}”` : pieceName(toward)
  return t(PRESS_WORDS[`${vertical} ${sideways}`] as string, { piece })
}

function careWords(meetings: readonly Meeting[]): string[] {
  const countOf = (verdict: Meeting['verdict']): number => meetings.filter((meeting) => meeting.verdict === verdict).length
  const wordsIfAny = (count: number, words: (count: number) => string): string[] => (count === 0 ? [] : [words(count)])
  return [
    ...wordsIfAny(countOf('nests'), (n) => tn(n, 'Butt one pair of nested seams.', 'Butt {n} pairs of nested seams.')),
    ...wordsIfAny(countOf('clashes'), (n) =>
      tn(n, 'Pin one pair of seams whose allowances lie the same way.', 'Pin {n} pairs of seams whose allowances lie the same way.'),
    ),
    ...wordsIfAny(countOf('open'), (n) =>
      tn(n, 'Pin one pair of seams, one of them pressed open.', 'Pin {n} pairs of seams, one of each pressed open.'),
    ),
    ...wordsIfAny(countOf('pin'), (n) => tn(n, 'Match one point by pinning.', 'Match {n} points by pinning.')),
    ...wordsIfAny(countOf('tip'), (n) => tn(n, 'Sew exactly across one tip.', 'Sew exactly across {n} tips.')),
  ]
}

function sizeWords({ unfinished }: Join, { measure: { unit } }: Findings): string {
  if (unfinished === null) return ''
  return t('Now {width} by {height} {unit}.', { width: sayLength(unfinished[0], unit), height: sayLength(unfinished[1], unit), unit })
}

/** The names of the patches of each piece inside a unit. */
function patchNamesByPiece({ patches, joins }: Findings): ReadonlyMap<string, readonly string[]> {
  const names = new Map<string, readonly string[]>(patches.map(({ id, name }) => [id, [name]]))
  for (const { id, sides, stage } of joins)
    if (stage === 'unit')
      names.set(
        id,
        sides.flatMap((side) => names.get(side) ?? []),
      )
  return names
}

const patchWords = (names: readonly string[]): string => names.map(patchName).join(' + ')

function pieceName(piece: SewnPiece | undefined): string {
  if (piece === undefined) return ''
  const { type, kind, id, number, soFar }: PieceName = piece.called
  if (type === 'unit') return t(UNIT_NAMES[kind as Kind] ?? '{id}', { id: id ?? '' })
  const border = t(BORDER_NAMES[id ?? ''] ?? '{id}', { id: id ?? '' })
  if (type === 'border') return border
  if (type === 'corner') return t(CORNER_NAMES[id ?? ''] ?? '{id}', { id: id ?? '' })
  if (type === 'framed') return number === 1 ? t('{border} with one corner square', { border }) : t('{border} with its corner squares', { border })
  if (type === 'bordered') return t('the block with its borders so far')
  if (soFar) return t(SO_FAR_NAMES[type])
  return type === 'block' ? t('the block') : t(WHOLE_NAMES[type], { number: number ?? 0 })
}

const capitalise = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
