/**
 * How the maker looks at the quilt that is open: what is selected and in hand, which sheet is open. None of it is part of the quilt, and none is undone.
 *
 * Selected are cells, not places: so an empty cell can be selected too, and a selection outlives what lies there.
 */
import { create } from 'zustand'
import { type PlaceContent, placeAtCell, type Quilt, type QuiltCell, type QuiltPlace } from '../../geometry/index.ts'

/** What is put on places: a block of the quilt, a block of the library that the quilt may not have yet, a plain piece. */
export type HandItem =
  | { readonly type: 'block'; readonly id: string }
  | { readonly type: 'library'; readonly card: string; readonly name: string }
  | { readonly type: 'plain'; readonly fabric: string }

export type QuiltSheet = 'place' | 'joining' | 'check' | 'cutting' | 'booklet'

interface QuiltView {
  /** First cells of the selected places, and empty cells. */
  readonly selected: readonly QuiltCell[]
  readonly cursor: QuiltCell
  readonly inHand: HandItem | null
  /** Whether a tap adds to the selection. */
  readonly adding: boolean
  readonly sheet: QuiltSheet
  readonly marks: boolean
  /** Whether fabrics are shown as greys. */
  readonly value: boolean
  /** Zoom 1 fits the quilt to the board; pan in pixels. */
  readonly zoom: number
  readonly pan: readonly [number, number]
  /** Whether the quilting line of each place is shown. */
  readonly line: boolean
  /** The joining seam that is drawn, by its number. */
  readonly joint: number | null
  /** The crossing that is pointed at: its number among the report's meetings. */
  readonly pointed: number | null
}

const START: QuiltView = {
  selected: [],
  cursor: [0, 0],
  inHand: null,
  adding: false,
  sheet: 'place',
  marks: true,
  value: false,
  line: false,
  joint: null,
  zoom: 1,
  pan: [0, 0],
  pointed: null,
}

export const useQuiltView = create<QuiltView>(() => START)
export const quiltView = useQuiltView.getState
export const setQuiltView = (change: Partial<QuiltView>): void => useQuiltView.setState(change)
/** When another quilt is opened. */
export const resetQuiltView = (): void => setQuiltView({ ...START, sheet: quiltView().sheet })

export const sameCell = (one: QuiltCell, other: QuiltCell): boolean => one[0] === other[0] && one[1] === other[1]

/** The first cell of the place over a cell; an empty cell itself. */
export const anchorOf = (quilt: Quilt, cell: QuiltCell): QuiltCell => placeAtCell(quilt.places, cell)?.at ?? cell

/** The places that are selected. */
export const selectedPlaces = (quilt: Quilt, selected: readonly QuiltCell[]): QuiltPlace[] => [
  ...new Set(selected.flatMap((cell) => placeAtCell(quilt.places, cell) ?? [])),
]

export const contentOf = ({ block, plain }: QuiltPlace): PlaceContent | null =>
  block !== undefined ? { block } : plain === undefined ? null : { plain }

/** All cells of the rectangle between two cells, row by row. */
export function cellsBetween([c1, r1]: QuiltCell, [c2, r2]: QuiltCell): QuiltCell[] {
  const [left, right, top, bottom] = [Math.min(c1, c2), Math.max(c1, c2), Math.min(r1, r2), Math.max(r1, r2)]
  return Array.from({ length: (right - left + 1) * (bottom - top + 1) }, (_, index): QuiltCell => {
    const across = right - left + 1
    return [left + (index % across), top + Math.floor(index / across)]
  })
}

/** All cells of a quilt, row by row. */
export const allCells = ({ grid }: Quilt): QuiltCell[] => cellsBetween([0, 0], [grid.columns - 1, grid.rows - 1])
