/**
 * What the geometry says, as data: a code and its parameters. `geometry/words` says each in English and in German.
 *
 * Parameters are ids, counts, lengths and choices by name, never parts of a sentence. A name that a maker gave (of a fabric) stands as she wrote it
 * and is not translated.
 */
import type { Kind, Method, Turn } from './block.ts'
import type { UnitNoun, UnitPlace } from './unitPlace.ts'

/** A message that has no parameters. */
type None = Readonly<Record<never, never>>

/** What stands in a file where something else belongs: nothing, a list, an object, or a value as JSON writes it, cut short. */
export type FoundValue = 'missing' | 'list' | 'object' | { readonly text: string }

interface Found {
  readonly value: FoundValue
}
interface Most {
  readonly most: number
}
interface TooMany extends Most {
  readonly count: number
}
interface OneOf extends Found {
  readonly known: readonly string[]
}

/** What is wrong at one place of a file. */
interface FileFaults {
  readonly 'not-json': None
  readonly 'other-format': Found
  readonly 'newer-version': { readonly version: number }
  readonly 'other-version': Found
  readonly 'not-object': Found
  readonly 'not-list': Found
  readonly 'list-too-long': TooMany
  readonly 'not-one-of': OneOf
  readonly 'not-flag': Found
  readonly 'too-deep': Most
  readonly 'too-many-values': Most
  readonly 'not-length': Found
  readonly 'length-not-above-zero': Found
  readonly 'length-beyond-rulers': Found
  readonly 'not-measure': Found
  readonly 'not-cell-count': Found & Most
  readonly 'not-block-count': Found & Most
  readonly 'not-id': Found
  readonly 'id-taken': Found
  readonly 'not-name': Found
  readonly 'name-too-long': TooMany
  readonly 'not-text': Found
  readonly 'text-too-long': TooMany
  readonly 'not-colour': Found
  readonly 'not-print-colour': Found
  readonly 'not-print-photo': Found & Most
  readonly 'not-photograph': Found
  readonly 'photograph-size': { readonly width: number; readonly height: number } & Most
  readonly 'unknown-fabric': Found
  readonly 'unknown-block': Found
  readonly 'unknown-place': Found
  readonly 'unknown-worn': None
  readonly 'block-or-plain': None
  readonly 'another-measure': None
  readonly 'another-seam': None
  readonly 'length-below-zero': Found
  readonly 'borders-need-whole': None
  readonly 'round-without-width': None
  readonly 'not-whole-cells': Found & { readonly least: number }
  readonly 'not-position': Found
  readonly 'position-too-far': Found & Most
  readonly 'position-not-exact': Found
  readonly 'not-pair': Found
  readonly 'too-many-units': TooMany
  readonly 'method-of-another-kind': OneOf & { readonly kind: Kind }
  readonly 'too-many-patches': TooMany
  readonly 'strips-with-hole': Found
  readonly 'unknown-patch': OneOf & { readonly kind: Kind }
  readonly 'patch-without-fabric': { readonly patch: string }
  readonly 'size-not-above-zero': Found
  readonly 'not-turn': Found
  readonly 'not-square': Found & { readonly kind: Kind }
  readonly 'not-goose': Found
  readonly 'corner-not-above-zero': Found
  readonly 'corners-overlap': Found
  readonly 'corners-leave-no-centre': Found
  readonly 'too-few-corners': { readonly count: number }
  readonly 'too-many-corners': TooMany
  readonly 'crossed-outline': None
  readonly 'no-copied-units': None
  readonly 'newer-copied-units': None
  readonly 'other-blocks-format': { readonly format: string }
  readonly 'blocks-version': None
  readonly 'blocks-list': None
  readonly 'blocks-entry': None
  readonly 'blocks-id': None
  readonly 'blocks-time': None
  readonly 'blocks-copy': None
  readonly 'blocks-copy-name': None
}

/** A unit by itself, in a sentence (`dative`: as German says it after „an“, „von“ and „zu“) or at the head of a line. */
interface UnitNames {
  readonly unit: { readonly place: UnitPlace; readonly dative?: true }
  readonly 'unit-label': { readonly place: UnitPlace }
}

/** What the maker does next, in a few words. */
interface StepTitles {
  /** `labels`: the letters of the units in the layout picture. */
  readonly 'step-make-units': {
    readonly count: number
    readonly kind: Kind
    readonly hand: 'left' | 'right' | null
    readonly labels: readonly string[]
  }
  readonly 'step-lay-out': None
  /** Rows and columns by their places in the block, from 1; a section by its number. `alike`: how many are made in one go. */
  readonly 'step-sew-line': { readonly line: BlockLine; readonly places: readonly number[]; readonly alike: number }
  readonly 'step-join-lines': { readonly line: BlockLine }
  /** All units are sewn together at once. */
  readonly 'step-sew-block': None
  /** `border`: which of several, from 1 inside; null where there is one. */
  readonly 'step-border': { readonly border: number | null; readonly part: 'sides' | 'ends' }
}

export type BlockLine = 'row' | 'column' | 'section'

interface Units {
  readonly units: number
}
interface Fabrics {
  readonly fabrics: number
}

/** Which way a seam is pressed, as the block lies on the table, right side up. */
export type PressWay = 'left' | 'right' | 'up' | 'down' | 'open' | 'proposed'

/** What undo and redo call an edit. */
interface EditNames {
  readonly 'place-units': Units
  readonly 'swap-units': None
  readonly 'align-units': None
  readonly 'spread-units': None
  readonly 'resize-units': Units
  readonly 'replace-units': Units
  readonly 'move-units': Units
  readonly 'copy-units': Units
  readonly 'remove-units': Units
  readonly 'turn-units': Units
  readonly 'turn-units-half-round': None
  readonly 'mirror-units': Units
  readonly 'paste-units': Units
  readonly 'turn-block': None
  readonly 'mirror-block': None
  readonly 'join-shapes': None
  readonly 'cut-shapes': None
  readonly 'recolour-patches': { readonly patches: number }
  readonly 'recolour-wings': None
  readonly 'recolour-fabric-everywhere': None
  readonly 'add-fabrics': Fabrics
  readonly 'change-fabric': None
  readonly 'remove-fabric': None
  readonly 'move-fabric-up': None
  readonly 'move-fabric-down': None
  readonly 'swap-fabrics': None
  readonly 'make-fabric-plain': None
  readonly 'choose-print': None
  readonly 'recolour-print': None
  readonly 'set-print-direction': None
  readonly 'recolour-fabrics': None
  readonly 'take-colouring': None
  readonly 'recolour-alike-patches': None
  readonly 'set-method': None
  readonly 'set-methods': None
  readonly 'cut-as-needed': None
  readonly 'cut-larger': None
  readonly 'set-order': None
  readonly 'name-block': None
  readonly 'set-measure': None
  readonly 'set-seam': None
  readonly 'set-strip-count': { readonly strips: number }
  readonly 'separate-strips': None
  readonly 'set-finished-size': None
  readonly 'set-grid': None
  readonly 'set-borders': None
  readonly 'set-cloth-width': None
  readonly 'press-seam-open': None
  readonly 'press-seam': None
  readonly 'press-as-proposed': { readonly seams: number }
  /** A whole row or column, by its number: the way as it lies on the table. */
  readonly 'press-row': { readonly line: 'row' | 'column'; readonly number: number; readonly way: PressWay }
  readonly 'forget-press': None
  readonly 'press-units-alike': None
  readonly 'press-units-apart': None
  readonly 'lift-press-rule': None
  readonly 'keep-press-rule': None
  readonly 'press-unit-open': None
  readonly 'press-unit-to-one-side': None
  readonly 'set-quilting-start': None
  readonly 'set-fill': None
  readonly 'set-fill-spacing': None
  readonly 'title-booklet': None
  readonly 'sign-booklet': None
  readonly 'introduce-booklet': None
  readonly 'set-booklet-blocks': None
  readonly 'change-step-words': None
  readonly 'keep-step-words': None
  readonly 'restore-step-words': None
  readonly 'note-step': None
  readonly 'add-step-photograph': None
  readonly 'remove-step-photograph': None
  readonly 'drop-step-words': None
  readonly 'begin-again': None
  readonly 'go-back-to-version': None
  readonly 'go-back-to-layout': None
}

interface AtUnit {
  readonly unit: UnitPlace
}
interface Turned {
  readonly quarters: Turn
}

/** How a sewn block differs from the one laid out, and the way back. */
interface SewnComparison {
  readonly 'move-turn-block': Turned
  readonly 'move-turn': AtUnit & Turned
  readonly 'move-swap': { readonly units: readonly [UnitPlace, UnitPlace] }
  readonly 'move-sew-mirrored': AtUnit
  readonly 'move-sew': AtUnit
  readonly 'unit-missing': AtUnit
  readonly 'unit-turned': AtUnit & Turned
  readonly 'unit-mirrored': AtUnit
  readonly 'unit-swapped': AtUnit
  readonly 'unit-other': AtUnit
}

interface InMeasure {
  readonly measure: 'in' | 'cm'
}

/** Geese of one look: the names of their wing fabrics, as seen with the tip up. */
export interface GeeseOfWings {
  readonly count: number
  readonly left: string
  readonly right: string
}

/** What kinds of units are made, and how, in the cut list. */
interface CutRows {
  readonly 'cut-for-borders': None
  readonly 'cut-for-border-corners': None
  /** `larger`: in the measure's unit, each way of cutting larger once. */
  readonly 'cut-for-units': InMeasure & { readonly kinds: readonly UnitNoun[]; readonly method: Method; readonly larger: readonly number[] }
  readonly 'batches-of-geese': { readonly batches: number; readonly geese: number; readonly spare: number }
  readonly 'geese-listed': { readonly geese: readonly GeeseOfWings[] }
  readonly 'batch-makes': { readonly geese: readonly GeeseOfWings[] }
  /** The geese to keep, where a batch makes spare ones of another look. */
  readonly 'geese-to-keep': { readonly geese: readonly GeeseOfWings[] }
  readonly 'measure-before-borders': None
  readonly batting: { readonly batting: BattingId }
  readonly 'batting-size': { readonly size: BattingSize }
  readonly 'chart-piece': { readonly piece: ChartPieceId }
}

export type BattingId =
  | 'cotton-scrim'
  | 'cotton-needled'
  | 'bamboo'
  | 'cotton-natural'
  | 'wool'
  | 'polyester-thick'
  | 'cotton-no-scrim'
  | 'cotton-bleached'
  | 'in-use'

/** What batting of a size is sold as. */
export type BattingSize = 'craft' | 'crib' | 'throw' | 'twin' | 'full' | 'queen' | 'king'

/** What a size chart has a column for. */
export type ChartPieceId =
  | 'large-square'
  | 'small-squares'
  | 'squares'
  | 'centre-square'
  | 'halved-squares'
  | 'across-on-point'
  | 'side-square'
  | 'corner-square'

type Size = readonly [number, number]

/** What is wrong with a layout, or good to know before it is cut and sewn. */
interface Problems {
  readonly 'cloth-missing': None
  readonly 'units-overlap': None
  readonly 'cloth-outside': None
  readonly 'hourglass-pairs-differ': None
  readonly 'strip-set-too-long': None
  readonly 'hourglass-hands': { readonly most: number; readonly all: number }
  readonly 'bias-at-edge': None
  readonly 'not-trimmed': { readonly method: Method }
  readonly 'grain-at-edge': None
  /** The fabrics by the maker's names; `named`: the units, where they are few. */
  readonly 'print-turned': {
    readonly fabrics: readonly string[]
    readonly how: 'slanting' | 'turned'
    readonly units: number
    readonly of: number
    readonly named: readonly UnitPlace[]
  }
  /** `size`: across the cloth, then along it. */
  readonly 'print-turned-to-fit': InMeasure & { readonly fabric: string; readonly size: Size }
  readonly 'piece-too-large': { readonly fabric: string; readonly size: Size }
  readonly 'seam-partial': None
  readonly 'seam-set-in': None
  readonly 'press-not-kept': { readonly reason: PressNotKept }
  readonly 'press-alike-differs': None
  readonly 'method-needs-pairs': None
  readonly 'method-strips-too-long': None
  /** `error`: what the program says of itself, in English. */
  readonly 'not-worked-out': { readonly error: string }
  readonly 'findings-follow': None
  readonly 'program-error': { readonly error: string }
}

/** Why a maker's own word on pressing is passed over. */
export type PressNotKept = 'no-seam' | 'several-seams' | 'end-of-seam' | 'neither-side' | 'later-word'

/** Why a seam is pressed as it is. */
interface PressReasons {
  readonly 'asked-for-seam': None
  readonly 'asked-for-unit': None
  readonly 'geese-rule': None
  readonly 'corner-rule': None
  readonly 'less-bulk': None
  readonly 'darker-side': None
  readonly 'both-sides-alike': None
  readonly 'like-alike-units': None
  readonly 'so-that-it-nests': None
  readonly 'either-way': None
}

interface AtLeast {
  readonly atLeast: number
}
interface Choices {
  readonly choices: number
}

/** How the seams of a row or column are pressed: toward units of one kind, all one way, each its way from the left or the top, or as an earlier row. */
export type PressHow =
  | { readonly type: 'toward'; readonly noun: UnitNoun; readonly many: boolean }
  | { readonly type: 'way'; readonly way: PressWay }
  | { readonly type: 'ways'; readonly ways: readonly PressWay[] }
  | { readonly type: 'as'; readonly number: number }
  | { readonly type: 'none' }

/** Pressing at a glance, row by row. */
interface PressSummary {
  readonly 'press-line': { readonly line: 'row' | 'column'; readonly number: number; readonly how: PressHow }
  /** The seams between rows, or between columns. */
  readonly 'press-between': { readonly line: 'row' | 'column'; readonly how: PressHow }
  readonly 'lines-alternate': { readonly line: 'row' | 'column' }
}

/** Why the clashes are as few as can be. */
interface Proofs {
  readonly 'nothing-sewn': None
  readonly 'all-nest': None
  /** Chains and rings that must clash; `joins`: the numbers of its seams in sewing order, or where it is long its first alone; `settled` of them by a method or the maker. */
  readonly 'chains-must-clash': { readonly chains: readonly ClashingChain[] }
  readonly 'alike-all-weighed': Choices & AtLeast
  readonly 'alike-best-found': Choices & AtLeast
}

export interface ClashingChain {
  readonly joins: readonly number[]
  readonly length: number
  readonly settled: number
  readonly clashes: number
}

/** What would remove a clash. */
interface Fixes {
  readonly 'lift-rule': AtUnit
  readonly 'press-other-way': None
  readonly 'press-open': None
  readonly 'join-by-order': { readonly order: 'rows' | 'columns' | 'sections'; readonly all: boolean }
  readonly 'sew-turned': AtUnit
  readonly 'sew-mirrored': AtUnit
}

interface Clashes {
  readonly clashes: number
}

/** Why copies of a block set beside each other nest or clash. */
interface SettingReasons {
  readonly 'quarter-turn-not-square': None
  readonly 'copies-nest': None
  readonly 'copies-clash': Clashes
  readonly 'copies-clash-through': Clashes
  readonly 'copies-clash-by-rule': Clashes
  readonly 'copies-searched-in-bands': AtLeast
  readonly 'copies-pressing-proved': None
  readonly 'copies-proved': None
  readonly 'clashes-inside': Clashes
  /** `holds`: what comes of it is what the rule of thumb promises; else `more` clashes or none. */
  readonly 'rule-of-thumb': { readonly units: number; readonly outcome: 'as-said' | 'clashes-all-the-same' | 'nests-without' }
}

interface Places {
  readonly places: number
}

/** What undo and redo call an edit of a quilt. */
interface QuiltEditNames {
  readonly 'name-quilt': None
  readonly 'put-in-places': Places
  readonly 'swap-places': None
  readonly 'move-place': None
  readonly 'turn-places': Places
  readonly 'resize-place': None
  readonly 'clear-places': Places
  readonly 'press-places': Places
  readonly 'hold-places': Places
  readonly 'frame-places': Places
  readonly 'tick-places': Places
  readonly 'set-frame': None
  readonly 'set-quilt-grid': None
  readonly 'set-place-size': None
  readonly 'set-joining': None
  readonly 'set-sashing': None
  readonly 'take-turns': None
  readonly 'set-parts': None
  readonly 'wear-fabric': None
  readonly 'update-block': None
  readonly 'remove-block': None
}

/** What is said of a quilt. */
interface QuiltMessages {
  readonly 'positions-empty': None
  readonly 'positions-overlap': None
  readonly 'position-outside': None
  readonly 'block-too-large': None
  readonly 'block-too-small': None
  readonly 'no-straight-order': None
  readonly 'points-hidden': None
  readonly 'sash-wide': None
  /** A block by the maker's name for it, and what is wrong in it. */
  readonly 'in-block': { readonly block: string; readonly says: BoardMessage }
  readonly 'fronts-apart': None
  readonly 'fronts-nest': None
  readonly 'fronts-proved': { readonly clashes: number; readonly atLeast: number }
  readonly 'fronts-searched': { readonly clashes: number; readonly atLeast: number }
  /** What to do about a clash; columns and rows of the quilt from 1. */
  readonly 'press-position': QuiltPosition & { readonly press: 'planned' | 'opposite' }
  readonly 'press-position-seam': QuiltPosition
  readonly 'turn-position': QuiltPosition & { readonly quarters: Turn }
}

/** Headings of a quilt's steps; positions by their numbers in its overview. */
interface QuiltTitles {
  readonly 'quilt-chapter': { readonly chapter: 'frame' | 'layer' | 'quilt' | 'join' | 'finish' }
  readonly 'quilt-block-chapter': { readonly block: string; readonly count: number }
  readonly 'quilt-frame': { readonly block: string; readonly positions: readonly number[] }
  readonly 'quilt-layer': { readonly positions: readonly number[] }
  readonly 'quilt-positions': { readonly positions: readonly number[] }
  readonly 'quilt-press-other': { readonly positions: readonly number[] }
  readonly 'quilt-join': { readonly sides: readonly [readonly number[], readonly number[]] }
  readonly 'quilt-finish': { readonly step: 'sash' | 'borders' | 'layer' | 'quilt' | 'binding' | 'rim' | 'label' | 'sleeve' }
  /** What a row of the quilt's cut list is for; `each`: strips that one long strip is sewn from. */
  readonly 'cut-for-quilt': { readonly part: QuiltCutPart; readonly each: number }
}

export type QuiltCutPart = 'block-border' | 'frame' | 'plain' | 'sash' | 'corner' | 'strip' | 'border'

interface QuiltPosition {
  readonly column: number
  readonly row: number
}

export interface MessageParams
  extends FileFaults,
    QuiltMessages,
    QuiltEditNames,
    QuiltTitles,
    UnitNames,
    StepTitles,
    EditNames,
    SewnComparison,
    CutRows,
    Problems,
    PressReasons,
    PressSummary,
    Proofs,
    Fixes,
    SettingReasons {}

export type MessageCode = keyof MessageParams
export type EditCode = keyof EditNames

/** A message of one of these codes; of any where none are named. */
export type Message<Code extends MessageCode = MessageCode> = {
  readonly [One in Code]: { readonly code: One; readonly params: MessageParams[One] }
}[Code]

export type EditName = Message<EditCode>
export type QuiltEditName = Message<keyof (QuiltEditNames & EditNames)>
export type StepTitle = Message<keyof StepTitles>
export type QuiltTitle = Message<Exclude<keyof QuiltTitles, 'cut-for-quilt'>>

/** What is said beside a block on the board: its findings and the names of its edits. The page has these words from the start. */
export type BoardCode = keyof (UnitNames & EditNames & Problems & PressReasons & Proofs & Fixes)
export type BoardMessage = Message<BoardCode>

/** A value, or the place in the file and the one message that says what to do there. */
export type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly place: string; readonly message: Message }

/** A message of a code; its parameters are left out where it has none. */
export function message<Code extends MessageCode>(
  code: Code,
  ...[params]: keyof MessageParams[Code] extends never ? [] : [params: MessageParams[Code]]
): Message<Code> {
  return { code, params: params ?? {} } as Message<Code>
}
