/**
 * The report: what the pipeline says about a block. Positions in cells as files write them; lengths in the measure's unit.
 * Shared by every room, so it stands above them and imports only the block's own values.
 */
import type { Kind, Method, Position, Turn } from './block.ts'
import type { BoardMessage } from './messages.ts'

export type ReportPoint = readonly [Position, Position]

type ProblemCode = 'gap' | 'overlap' | 'outside' | 'method' | 'cloth' | 'not-straight' | 'bias-edge' | 'press' | 'hand'
/** Codes that make the exit status 1. */
export const ERRORS: ReadonlySet<ProblemCode> = new Set(['gap', 'overlap', 'outside', 'method', 'cloth'])

/** What the maker can put right, and where on the canvas to show it. */
export interface Problem {
  readonly code: ProblemCode
  readonly at: ReportPoint
  readonly units: readonly string[]
  readonly message: BoardMessage
  /** Square cells; `gap`, `overlap` and `outside` only. */
  readonly area?: number
}

/** What the maker may want to know before she cuts: a print that will lie turned, an edge off the grain, units that cannot be cut larger. */
export interface Advice {
  readonly code: 'print' | 'grain' | 'oversize'
  readonly at: ReportPoint
  readonly units: readonly string[]
  readonly message: BoardMessage
}

export interface Patch {
  readonly id: string
  /** null for a border strip. */
  readonly unit: string | null
  readonly name: string
  readonly fabric: string
  readonly corners: readonly ReportPoint[]
  /** Square finished units of measure. */
  readonly area: number
}

export type Stage = 'unit' | 'row' | 'column' | 'section' | 'block' | 'border'
type PressRule = 'method' | 'meeting' | 'preference' | 'none' | 'asked'

export interface Join {
  readonly id: string
  readonly stage: Stage
  readonly kind: 'straight' | 'partial' | 'set-in'
  readonly from: ReportPoint
  readonly to: ReportPoint
  readonly via: readonly ReportPoint[]
  /** Ids of patches, or of earlier joins for the pieces they made. */
  readonly sides: readonly [string, string]
  /** The piece's unfinished width and height where it is a rectangle square to the grid. */
  readonly unfinished: readonly [number, number] | null
  readonly press: { readonly toward: 0 | 1 | 'open'; readonly rule: PressRule; readonly why: BoardMessage }
  /** Which side lies clockwise of the way from `from` to `to` (below a seam that runs right). */
  readonly clockwise: 0 | 1
  /** Partial seams: the join after which the open part is sewn shut. */
  readonly finishedAfter?: string
}

export type Verdict = 'nests' | 'clashes' | 'open' | 'pin' | 'tip'

export interface Fix {
  readonly do: 'press' | 'open' | 'turn' | 'order'
  /** A join, a unit, or (for `order`) the name of an order. */
  readonly what: string
  readonly message: BoardMessage
  readonly turn?: Turn
  readonly mirror?: boolean
}

export interface Meeting {
  readonly at: ReportPoint
  readonly join: string
  readonly seams: readonly string[]
  readonly verdict: Verdict
  readonly fix: readonly Fix[]
  /** Four square seams meet and nest: the allowances can be fanned round the point. */
  readonly spin?: true
  /** Of a clash: as pressed, and were one of the two pressed the other way. Where allowances can be fanned: as pressed, and fanned. */
  readonly layers?: { readonly now: number; readonly nested?: number; readonly fanned?: number }
}

export interface EdgeEnd {
  /** Cells from the edge's start, going clockwise. */
  readonly at: Position
  readonly lean: -1 | 0 | 1
  /** Degrees from the clockwise direction. */
  readonly angle: number
}

export interface Edges {
  readonly top: readonly EdgeEnd[]
  readonly right: readonly EdgeEnd[]
  readonly bottom: readonly EdgeEnd[]
  readonly left: readonly EdgeEnd[]
}

export interface Batch {
  readonly goose: string
  readonly corners: readonly [string, string, string, string]
  /** Four [left, right] wings. */
  readonly makes: readonly (readonly [string, string])[]
}

export interface UnitRow {
  readonly kind: Kind
  readonly finished: readonly [number, number]
  readonly unfinished: readonly [number, number]
  readonly method: Method
  readonly fabrics: Readonly<Record<string, string>>
  readonly hand: 'left' | 'right' | null
  readonly count: number
  readonly for: readonly string[]
  readonly batches: readonly Batch[]
  readonly batchesProved?: true
  readonly batchesAtLeast?: number
  /** How often the method is gone through: pairs of squares, batches, strip sets; units that come one at a time, each once. */
  readonly goes: number
  readonly spare: number
  readonly bias: boolean
  /** Its squares are cut so much larger than needed. */
  readonly oversize?: number
}

export interface CutRow {
  readonly fabric: string
  readonly shape: 'square' | 'rectangle' | 'triangle' | 'polygon'
  readonly size: readonly [number, number]
  readonly count: number
  readonly then: 'none' | 'halve' | 'quarter'
  readonly method: Method
  readonly for: readonly string[]
  /** Of a print that may not be turned a quarter: the size is across the cloth, then along it. */
  readonly fixed?: true
}

export interface Strip {
  readonly height: number
  readonly pieces: readonly { readonly size: readonly [number, number]; readonly count: number; readonly fixed?: true }[]
}

export interface FabricRow {
  readonly fabric: string
  readonly length: number
  /** Yards or metres. */
  readonly buy: number
  readonly proved: boolean
  /** Where it is not proved: no cutting into strips takes less. */
  readonly atLeast?: number
  readonly strips: readonly Strip[]
}

interface QuiltingRoute {
  readonly points: readonly ReportPoint[]
  readonly closed: boolean
  /** Changes of direction on the way. */
  readonly turns: number
}

export interface Ditch {
  /** The one nearest the centre of the block first. */
  readonly routes: readonly QuiltingRoute[]
  readonly retraced: number
  readonly length: number
  /** How often stitching is begun, and so ended. */
  readonly starts: number
  readonly turns: number
  /** Whether no route retraces less. */
  readonly proved: boolean
}

export interface Report {
  readonly format: 'nestwright.report'
  readonly version: 1
  readonly measure: { readonly unit: 'in' | 'cm'; readonly seam: number }
  readonly block: {
    readonly name: string
    readonly finished: readonly [number, number]
    readonly unfinished: readonly [number, number]
    readonly withBorders: readonly [number, number]
  }
  readonly order: 'rows' | 'columns' | 'sections'
  readonly problems: readonly Problem[]
  readonly patches: readonly Patch[]
  readonly joins: readonly Join[]
  /** `atLeast` only where alike units are pressed alike and the search was cut short: no pressing has fewer clashes. */
  readonly pressing: { readonly clashes: number; readonly against: number; readonly proof: BoardMessage; readonly atLeast?: number }
  /** Set-in and partial joins of the plan, and whether no plan that keeps units whole has fewer. */
  readonly crooked: { readonly setIn: number; readonly partial: number; readonly proved: boolean }
  /** Pieces that are alike, in sewing order: the joins that finish each; two or more of a kind can be made together. */
  readonly repeats: readonly (readonly string[])[]
  /** Most layers of cloth on each other, and where (cells); null for a layout that is not sewn, or one of too many patches. */
  readonly bulk: { readonly most: number; readonly at: readonly [number, number] } | null
  readonly meetings: readonly Meeting[]
  readonly edges: Edges
  readonly units: readonly UnitRow[]
  readonly cut: readonly CutRow[]
  readonly fabric: readonly FabricRow[]
  readonly cloth: { readonly usableWidth: number }
  readonly advice: readonly Advice[]
  readonly ditch: Ditch
}

/** The report but for the quilting route. */
export type Findings = Omit<Report, 'ditch'>
