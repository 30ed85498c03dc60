/**
 * Describes a join in the maker's words, each piece by its kind and place.
 *
 * In      the findings and their block.
 * Out     for each join: what is sewn to what, what needs care, which way to press and why, and the size of the piece it makes. A seam inside a unit
 *         that is not sewn from single patches (geese four at a time) is only pointed at: how it is sewn, the step says.
 */
import {
  type Block,
  type Findings,
  type Join,
  type Meeting,
  message,
  type PieceName,
  pressedTo,
  sayLength,
  type SewnPiece,
  sewnPieces,
  unitPlaces,
  type UnitRow,
} from '../../geometry/index.ts'
import { label, t, tn, translate } from './words.ts'

interface JoinWords {
  /** What is sewn to what, or which seam it is. */
  readonly sew: string
  /** What needs care, which way to press and why. */
  readonly then: string
  /** The size of the piece it makes, where it is a rectangle square to the grid. */
  readonly size: string
}

/** Patches inside a unit, in a sentence. */
const PATCHES: Readonly<Record<string, string>> = {
  patch: label('the patch'),
  upper: label('the upper half'),
  lower: label('the lower half'),
  top: label('the top triangle'),
  right: label('the right-hand triangle'),
  bottom: label('the bottom triangle'),
  left: label('the left-hand triangle'),
  goose: label('the centre triangle'),
  leftWing: label('the left wing'),
  rightWing: label('the right wing'),
  centre: label('the centre'),
  topLeft: label('the top left corner'),
  topRight: label('the top right corner'),
  bottomRight: label('the bottom right corner'),
  bottomLeft: label('the bottom left corner'),
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

const ADD_WORDS: Readonly<Record<'section' | 'row' | 'column' | 'block', string>> = {
  section: label('Add {piece} to the section.'),
  row: label('Add {piece} to the row.'),
  column: label('Add {piece} to the column.'),
  block: label('Add {piece} to the block.'),
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

export function joinWords(report: Findings, block: Block): (step: number) => JoinWords {
  const pieces = sewnPieces(report)
  const place = unitPlaces(block)
  const numbers = new Map(report.joins.map(({ id }, index) => [id, index + 1]))
  const words: Naming = {
    pieces,
    patches: patchNamesByPiece(report),
    unit: (id) => translate(message('unit', { place: place(id) })),
    unitLabel: (id) => translate(message('unit-label', { place: place(id) })),
    rows: new Map(report.units.flatMap((row) => row.for.map((id) => [id, row] as const))),
  }
  const meetings = new Map<string, Meeting[]>()
  for (const meeting of report.meetings) meetings.set(meeting.join, [...(meetings.get(meeting.join) ?? []), meeting])
  return (step) => {
    const join = report.joins[step - 1] as Join
    const later = join.finishedAfter === undefined ? [] : [t('Finish it after seam {number}.', { number: numbers.get(join.finishedAfter) ?? 0 })]
    return {
      sew: sewWords(join, words),
      then: [...later, ...careWords(meetings.get(join.id) ?? []), pressWords(join, words), translate(join.press.why)].join(' '),
      size: sizeWords(join, report),
    }
  }
}

/** How everything that a join joins is called. */
interface Naming {
  readonly pieces: ReadonlyMap<string, SewnPiece>
  readonly patches: ReadonlyMap<string, readonly string[]>
  readonly unit: (id: string) => string
  readonly unitLabel: (id: string) => string
  readonly rows: ReadonlyMap<string, UnitRow>
}

function sewWords(join: Join, words: Naming): string {
  if (join.stage === 'unit') return seamInUnit(join, words)
  const [one, other] = join.sides.map((side) => words.pieces.get(side)) as [SewnPiece, SewnPiece]
  const grown = [one, other].find(({ called }) => called.soFar)
  if (join.kind === 'straight' && grown !== undefined) {
    const added = grown === one ? other : one
    return t(ADD_WORDS[grown.called.type as keyof typeof ADD_WORDS], { piece: pieceName(added, words) })
  }
  return t(SEW_WORDS[join.kind], { a: pieceName(one, words), b: pieceName(other, words) })
}

const MIDDLES: ReadonlySet<string> = new Set(['goose', 'centre'])

/** Single patches are sewn one to the other, the smaller to the middle one; of a unit made another way the seam is named by its place. */
function seamInUnit(join: Join, words: Naming): string {
  const id = words.pieces.get(join.id)?.called.id ?? ''
  const unit = words.unitLabel(id)
  const sides = join.sides.map((side) => words.patches.get(side) ?? []) as [readonly string[], readonly string[]]
  const [a, b] = sides[0].some((name) => MIDDLES.has(name)) ? [sides[1], sides[0]] : sides
  if (words.rows.get(id)?.method === 'plain') return t('{unit}: sew {a} to {b}.', { unit, a: patchesWords(a), b: patchesWords(b) })
  if (b.some((name) => MIDDLES.has(name))) return t('{unit}: the seam at {a}.', { unit, a: patchesWords(a) })
  return t('{unit}: the seam between {a} and {b}.', { unit, a: patchesWords(a), b: patchesWords(b) })
}

function pressWords(join: Join, words: Naming): string {
  if (join.press.toward === 'open') return t('Press the seam open.')
  const { toward, vertical, sideways } = pressedTo(join, join.press.toward, words.pieces)
  const names = words.patches.get(join.sides[join.press.toward]) ?? []
  const middle = names.find((name) => MIDDLES.has(name))
  const single = words.rows.get(toward?.called.id ?? '')?.method === 'plain'
  const inUnit = middle === undefined ? names : [single ? middle : 'centre']
  const piece = join.stage === 'unit' ? patchesWords(inUnit) : pieceName(toward, words)
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

/** A centre that is already part of more goes for the whole. */
function patchesWords(names: readonly string[]): string {
  const middle = names.find((name) => MIDDLES.has(name))
  return names.length > 1 && middle !== undefined ? t('the piece so far') : joined(names.map(patchInSentence))
}

/** `the top triangle and the right-hand triangle`. */
const joined = (words: readonly string[]): string => words.reduce((all, one) => (all === '' ? one : t('{all} and {one}', { all, one })), '')

const patchInSentence = (name: string): string => (PATCHES[name] === undefined ? t('strip {n}', { n: name.replace('strip', '') }) : t(PATCHES[name]))

function pieceName(piece: SewnPiece | undefined, words: Naming): string {
  if (piece === undefined) return ''
  const { type, id, number, soFar }: PieceName = piece.called
  if (type === 'unit') return words.unit(id ?? '')
  const border = t(BORDER_NAMES[id ?? ''] ?? '{id}', { id: id ?? '' })
  if (type === 'border') return border
  if (type === 'corner') return t(CORNER_NAMES[id ?? ''] ?? '{id}', { id: id ?? '' })
  if (type === 'framed') return number === 1 ? t('{border} with one corner square', { border }) : t('{border} with its corner squares', { border })
  if (type === 'bordered') return t('the block with its borders so far')
  if (soFar) return t(SO_FAR_NAMES[type])
  return type === 'block' ? t('the block') : t(WHOLE_NAMES[type], { number: number ?? 0 })
}
