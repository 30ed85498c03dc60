/**
 * The values of a quilt file, exactly as it is written: blocks in places, and how the places are joined. Unknown fields stay.
 *
 * Places and their sizes are in whole cells of the quilt's grid; lengths in the measure's unit.
 */
import type { Block, Border, Fabric, Length, MeasureUnit, Order, Turn } from './block.ts'

/** Quilted whole at the end, or blocks quilted first and joined after. */
export const WAYS = ['whole', 'strips', 'fronts', 'backing-over', 'butted'] as const
export type Way = (typeof WAYS)[number]
export const COVERS = ['folded', 'flat'] as const
export const CLOSINGS = ['machine', 'hand'] as const
export const PLACE_PRESSINGS = ['planned', 'opposite'] as const
export type PlacePressing = (typeof PLACE_PRESSINGS)[number]
export const FREE_TURNS = ['none', 'half', 'quarter'] as const

/** One round of framing strips; the last one may leave its width out and takes what is left. */
export interface FrameRound {
  readonly finishedWidth?: Length
  readonly fabric: string
  readonly oversize?: Length
}

export interface QuiltPlace {
  readonly id: string
  /** Column and row of its top left cell. */
  readonly at: readonly [number, number]
  /** Cells across and down; one each without it. */
  readonly size?: readonly [number, number]
  readonly block?: string
  /** The fabric of a place that is one piece. */
  readonly plain?: string
  readonly turn?: Turn
  readonly press?: PlacePressing
  readonly frame?: readonly FrameRound[]
  /** Left as it is when turns and pressings are chosen. */
  readonly fixed?: boolean
}

export interface QuiltWay {
  readonly join?: Way
  readonly width?: Length
  readonly fabric?: string
  readonly coverFabric?: string
  readonly cover?: (typeof COVERS)[number]
  readonly close?: (typeof CLOSINGS)[number]
  readonly over?: Length
  readonly sash?: {
    readonly width: Length
    readonly fabric: string
    /** The fabric of corner squares. */
    readonly corner?: string
    /** Whether a sash runs round the outside too. */
    readonly round?: boolean
  }
}

export interface QuiltBlock {
  readonly id: string
  readonly block: Block
  /** The block's fabric id → the quilt's fabric id. */
  readonly wear?: Readonly<Record<string, string>>
}

export interface Quilt {
  readonly format: 'nestwright.quilt'
  readonly version: 1
  readonly name: string
  readonly measure: { readonly unit: MeasureUnit; readonly seam?: Length; readonly round?: Length }
  readonly grid: { readonly columns: number; readonly rows: number; readonly cell: Length | readonly [Length, Length] }
  readonly fabrics: readonly Fabric[]
  readonly blocks: readonly QuiltBlock[]
  readonly places: readonly QuiltPlace[]
  readonly frame?: readonly FrameRound[]
  readonly way?: QuiltWay
  readonly borders?: readonly Border[]
  readonly cloth?: { readonly usableWidth?: Length }
  readonly order?: Order
  readonly free?: { readonly turn?: (typeof FREE_TURNS)[number]; readonly press?: boolean }
  readonly parts?: readonly { readonly title: string; readonly places: readonly string[] }[]
}
