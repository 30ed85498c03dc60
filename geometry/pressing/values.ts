/** The types that the pressing room shares. */
import type { BoardMessage } from '../values/messages.ts'

/** The side both allowances lie on, or open. */
export type Toward = 0 | 1 | 'open'

/** One end of a seam where it runs into a later one. */
export interface SeamEnd {
  readonly seam: number
  /** The seam's direction as it leaves the dot, in lowest whole numbers. */
  readonly dx: number
  readonly dy: number
  /** Whether side 1 of the seam lies clockwise of that direction. */
  readonly clockwise: 0 | 1
}

/** Where seams meet across a join. */
export interface Crossing {
  readonly dot: number
  /** The seam across which they meet. */
  readonly join: number
  readonly seams: readonly number[]
  /** `pair`: two seams that will lie on each other, nesting or not as they are pressed. */
  readonly type: 'pair' | 'pin' | 'tip'
  /** Pairs: how the two allowances lean along the join when each is pressed toward its side 0. */
  readonly leans: readonly [-1 | 1, -1 | 1] | null
}

/** The constraint on one seam before any pressing is chosen. */
export interface PressConstraint {
  readonly fixed: Toward | null
  readonly rule: 'asked' | 'method' | null
  readonly preference: 0 | 1 | null
  readonly why: BoardMessage
}

export interface Pressed {
  readonly toward: readonly Toward[]
  readonly clashes: number
  /** A lower bound on the clashes of any pressing of these seams; below `clashes` only where a search was cut short. */
  readonly atLeast: number
  readonly against: number
  /** Numbers of the crossings that clash. */
  readonly clashing: readonly number[]
}
