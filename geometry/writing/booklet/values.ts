/**
 * The values of a booklet: what the screen, the text command and the printed pages render alike.
 *
 * Lengths and places of pictures are in the measure's unit, x to the right, y down, from the picture's top left. A picture of the wrong side is
 * drawn mirrored already. Sentences are whole and say their units.
 */
import type { BookletLanguage } from '../../words/booklet/bookletWords.ts'
import type { MeasureUnit, Size } from '../../values/block.ts'
import type { BesideSeam } from '../../quilting/numberedStops.ts'
import type { BlockLine, StepTitle } from '../../values/messages.ts'

export type Spot = readonly [number, number]

/** A picture to scale; any screen, page or SVG draws it. */
export interface Drawing {
  readonly width: number
  readonly height: number
  readonly marks: readonly Mark[]
  /** What is to be seen, in words. */
  readonly title: string
}

export type LineStyle = 'seam' | 'stitch' | 'marked' | 'cut' | 'fold' | 'trim' | 'blade' | 'thin'
export type PointMark = 'nests' | 'clashes' | 'open' | 'pin' | 'tip' | 'dot' | 'number'

/** In painting order. */
export type Mark =
  | {
      readonly type: 'area'
      readonly outline: readonly Spot[]
      /** A fabric's id; null: plain paper. */
      readonly fabric: string | null
      readonly side: 'right' | 'wrong'
      readonly line: 'cut' | 'seam' | 'none'
    }
  | { readonly type: 'line'; readonly points: readonly Spot[]; readonly style: LineStyle; readonly closed?: boolean }
  | { readonly type: 'arrow'; readonly from: Spot; readonly to: Spot; readonly means: 'press' | 'turn' | 'grain' }
  | { readonly type: 'point'; readonly at: Spot; readonly mark: PointMark; readonly text?: string }
  | {
      readonly type: 'text'
      /** The middle of its height; `align` says which end of the words lies there. */
      readonly at: Spot
      readonly text: string
      readonly size: 'small' | 'normal'
      readonly align: 'left' | 'middle' | 'right'
    }
  | QuiltingLegMark
  | QuiltingStopMark

/** A straight leg of a quilting line, with an arrow; its points in the order of stitching. */
export interface QuiltingLegMark {
  readonly type: 'leg'
  readonly points: readonly Spot[]
  /** For each stretch from point to point: on the seam, or to its right or left where the seam is stitched twice. */
  readonly beside: readonly BesideSeam[]
}

/** A stop of a quilting line: `7`, `Start 1`, `3 · 12 End`. */
export interface QuiltingStopMark {
  readonly type: 'stop'
  readonly at: Spot
  readonly text: string
  /** A line starts or ends here. */
  readonly end: boolean
}

/** One thing to do, with the pictures that show it. */
export interface StepAction {
  readonly sentences: readonly string[]
  readonly drawings: readonly Drawing[]
}

export interface BookletStep {
  /** Stays the same while the block changes elsewhere: made of what the step is about. */
  readonly key: string
  readonly title: string
  readonly sentences: readonly string[]
  readonly drawings: readonly Drawing[]
  /** The same sentences and drawings, each sentence beside what it says; only where a step is described action by action. */
  readonly actions?: readonly StepAction[]
  readonly cautions: readonly string[]
  /** How many alike are made in it. */
  readonly count: number
  /** Joins that are sewn in it, units that are made in it, and rows of the report's `cut` that are cut in it, by their places there. */
  readonly joins: readonly string[]
  readonly units: readonly string[]
  readonly cut: readonly number[]
  /** The maker's own words, said instead of the sentences; stale where the sentences have changed since she wrote them. */
  readonly edited?: { readonly words: string; readonly stale: boolean }
  readonly note?: string
  /** As a data URL. */
  readonly photograph?: string
}

/** A step in which something is sewn, or laid out to be sewn. */
export interface SewingStep extends BookletStep {
  /** Its title as a message, for every language. */
  readonly heading: StepTitle
}

const BOOKLET_PARTS = ['cut', 'units', 'lay out', 'join', 'borders', 'sandwich', 'quilt', 'finish'] as const
export type BookletPartKey = (typeof BOOKLET_PARTS)[number]

/** Only parts that have steps are in a booklet. */
export interface BookletPart {
  readonly key: BookletPartKey
  readonly title: string
  readonly steps: readonly BookletStep[]
}

/** `Finished size`: `12 × 12 in`. */
export interface BookletFact {
  /** A size of the block, or how it is made. */
  readonly of: 'size' | 'making'
  readonly what: string
  readonly said: string
}

export interface BookletFabric {
  readonly id: string
  readonly name: string
  /** `#rrggbb` */
  readonly colour: string
  /** `3/8 yd`, or nothing where none is cut. */
  readonly buy: string
}

/** What to take care of with one tool. */
export interface Caution {
  readonly about: 'first' | 'blade' | 'iron' | 'needle' | 'glue'
  readonly title: string
  readonly sentences: readonly string[]
}

/** What one piece, or the whole block, measures if every seam takes a little too much, or too little. */
export interface AllowanceTestRow {
  /** `Row 1`, `The whole block`. */
  readonly what: string
  readonly is: 'block' | BlockLine
  /** Several alike ones. */
  readonly many: boolean
  /** Seams across its width and down its height, along the line that crosses most. */
  readonly seams: readonly [number, number]
  /** Unfinished, as planned. */
  readonly planned: Size
  /** Unfinished, if each seam allowance is wider by `off`: two allowances a seam. */
  readonly wide: Size
  readonly narrow: Size
}

export interface AllowanceTest {
  /** How much each allowance is off, in the measure's unit: 1/32 in or 0.1 cm. */
  readonly off: number
  readonly rows: readonly AllowanceTestRow[]
  readonly sentences: readonly string[]
}

/** A full-size shape to trace and cut, for a patch that no strip method makes. */
export interface Template {
  readonly key: string
  /** The letter of its patch in the layout picture. */
  readonly letter: string
  readonly name: string
  /** How many to cut, fabric by fabric. */
  readonly counts: readonly { readonly fabric: string; readonly count: number; readonly mirrored: number }[]
  readonly width: number
  readonly height: number
  /** Clockwise, in the measure's unit, from the top left of the cut outline's box. */
  readonly finished: readonly Spot[]
  /** The finished outline and an allowance all round, sharp points trimmed so that its ears match those of its neighbours. */
  readonly cut: readonly Spot[]
  readonly grain: { readonly from: Spot; readonly to: Spot }
  /** Short lines from the seam line to the cut line where seams of the neighbours meet it. */
  readonly notches: readonly { readonly from: Spot; readonly to: Spot }[]
  /** Where seams start and stop, on the seam line. */
  readonly dots: readonly Spot[]
  readonly drawing: Drawing
  readonly sentences: readonly string[]
}

/** Words of the maker whose step the block no longer has: kept in the file, told to her. */
export interface OrphanedWords {
  readonly key: string
  readonly words?: string
  readonly note?: string
  readonly photograph?: string
}

export interface BookletRows {
  readonly drawing: Drawing
  readonly steps: readonly number[]
}

export interface Booklet {
  readonly title: string
  /** The maker's name, or nothing. */
  readonly by: string
  readonly introduction: string
  readonly language: BookletLanguage
  readonly unit: MeasureUnit
  /** Units of one block. */
  readonly units: number
  /** How many blocks it makes: cutting, fabric and units are those of all of them, rows and joins those of one. */
  readonly blocks: number
  /** What keeps the block from being sewn as it stands, or is good to know: said on the first page. */
  readonly problems: readonly string[]
  readonly facts: readonly BookletFact[]
  readonly front: Drawing
  /** All rows (or columns) apart, each seam with its pressing arrow, and the places of their steps in the part `join`; null where there are none. */
  readonly rows: BookletRows | null
  readonly fabrics: readonly BookletFabric[]
  /** What lies ready beside the fabrics of the top: layers, binding, tools. */
  readonly needs: readonly string[]
  readonly parts: readonly BookletPart[]
  readonly allowanceTest: AllowanceTest
  readonly templates: readonly Template[]
  readonly cautions: readonly Caution[]
  readonly seamAdvice: readonly string[]
  readonly orphans: readonly OrphanedWords[]
}
