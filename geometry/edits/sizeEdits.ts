/**
 * How large a block is sewn: its finished size as a maker asks for it, and a block in inches made one in centimetres, or back.
 *
 * In      finished lengths in the block's unit: width and height of the block with its borders, or of units.
 * Out     the side of a square of the grid that gives them; where none does, sizes that do fit; named changes, as in `unitEdits.ts`.
 * Exact   fractions throughout: a block 8 in wide has three squares of 8/3 in.
 */
import { parseLength } from '../exact/lengths.ts'
import { add, compare, divide, equal, multiply, type Rational, rational, subtract, toFile, toNumber } from '../exact/rational.ts'
import { boxAround, file } from '../block/boxes.ts'
import { cellOf, lengthOf, seamOf, usableWidthOf } from '../block/lengthsOf.ts'
import type { Block, Length, MeasureUnit, Mutable } from '../values/block.ts'
import { message } from '../values/messages.ts'
import type { FileBox } from './arrangeEdits.ts'
import type { Edit } from './unitEdits.ts'

/** Width and height, finished, in the block's unit. */
export type FinishedSize = readonly [width: Rational, height: Rational]

/** A grid, and how large the block is with it. */
export interface GridSize {
  readonly columns: number
  readonly rows: number
  /** The side of a square, finished, in the block's unit. */
  readonly cell: Rational
  readonly size: FinishedSize
}

export type SizeFit =
  | { readonly type: 'fits'; readonly grid: GridSize }
  /** The borders alone are as wide or as high. */
  | { readonly type: 'borders' }
  /** Squares of one size cannot give that width and height: grids near it. */
  | { readonly type: 'uneven'; readonly offers: readonly GridSize[] }

const TWO = rational(2)
const HALF = rational(1, 2)

/** Both borders on two sides that face each other, finished, in the block's unit. */
const bordersOf = ({ borders = [] }: Block): Rational =>
  borders.reduce((sum, { finishedWidth }) => add(sum, multiply(TWO, lengthOf(finishedWidth))), rational(0))

const gridSize = (block: Block, columns: number, rows: number, cell: Rational): GridSize => ({
  columns,
  rows,
  cell,
  size: [add(multiply(rational(columns), cell), bordersOf(block)), add(multiply(rational(rows), cell), bordersOf(block))],
})

/** The finished size of a block with its borders. */
export const finishedSizeOf = (block: Block): FinishedSize => gridSize(block, block.grid.columns, block.grid.rows, cellOf(block)).size

/** Columns and rows that a grid may have at the most when it is made to fit a size. */
const MOST_CELLS = 100

/** How a block can be made as large as asked. */
export function fitFinishedSize(block: Block, [width, height]: FinishedSize): SizeFit {
  const { columns, rows } = block.grid
  const [w, h] = [subtract(width, bordersOf(block)), subtract(height, bordersOf(block))]
  if (w.n <= 0n || h.n <= 0n) return { type: 'borders' }
  const [byWidth, byHeight] = [divide(w, rational(columns)), divide(h, rational(rows))]
  if (equal(byWidth, byHeight)) return { type: 'fits', grid: gridSize(block, columns, rows, byWidth) }
  const regrids = [cellOf(block), byWidth, byHeight].flatMap((cell) => {
    const [across, down] = [wholeParts(w, cell), wholeParts(h, cell)]
    return across === null || down === null || !holdsUnits(block, across, down) ? [] : [gridSize(block, across, down, cell)]
  })
  const offers = [...regrids, gridSize(block, columns, rows, byWidth), gridSize(block, columns, rows, byHeight)]
  return { type: 'uneven', offers: offers.filter((offer, index) => offers.findIndex((other) => sameGrid(offer, other)) === index) }
}

const sameGrid = (a: GridSize, b: GridSize): boolean => a.columns === b.columns && a.rows === b.rows && equal(a.cell, b.cell)

/** How many cells a length is; null where it is no whole number of them, or too many. */
function wholeParts(length: Rational, cell: Rational): number | null {
  const parts = divide(length, cell)
  return parts.d === 1n && parts.n <= BigInt(MOST_CELLS) ? Number(parts.n) : null
}

function holdsUnits({ units }: Block, columns: number, rows: number): boolean {
  const box = boxAround(units)
  return box === null || (compare(box.high[0], rational(columns)) <= 0 && compare(box.high[1], rational(rows)) <= 0)
}

/** Gives the block such a grid: one step to undo. Units stay in their cells. */
export const setFinishedSize = ({ columns, rows, cell }: GridSize): Edit => ({
  name: message('set-finished-size'),
  change: (draft) => {
    Object.assign(draft.grid, { columns, rows, cell: toFile(cell) })
  },
})

type UnitSizeFit =
  | { readonly type: 'fits'; readonly to: FileBox }
  /** Not a whole number of squares, or of half squares where those are asked for: boxes near it. */
  | { readonly type: 'uneven'; readonly offers: readonly FileBox[] }

/** The box that units fill, made a finished size; its top left corner stays. null where there are no such units. */
export function fitUnitSize(block: Block, ids: readonly string[], size: FinishedSize, halves: boolean): UnitSizeFit | null {
  const wanted = new Set(ids)
  const box = boxAround(block.units.filter(({ id }) => wanted.has(id)))
  if (box === null) return null
  const step = halves ? HALF : rational(1)
  const cells = size.map((length) => divide(length, cellOf(block)))
  const boxOfSize = (sides: readonly Rational[]): FileBox => ({ at: file(box.low), size: file(sides as [Rational, Rational]) })
  const whole = cells.map((side) => nearest(side, step))
  if (cells.every((side, axis) => equal(side, whole[axis] as Rational))) return { type: 'fits', to: boxOfSize(cells) }
  const other = whole.map((side, axis) => beyond(side, cells[axis] as Rational, step))
  const offers = [whole, other].filter((sides) => sides.every(({ n }) => n > 0n)).map(boxOfSize)
  return { type: 'uneven', offers }
}

/** The multiple of a step on the other side of a length; the same where the length is one. */
function beyond(near: Rational, length: Rational, step: Rational): Rational {
  const side = compare(length, near)
  return side === 0 ? near : side > 0 ? add(near, step) : subtract(near, step)
}

// From inches to centimetres and back.

/** An inch, in centimetres, by definition. */
const CM_IN_AN_INCH = rational(254, 100)

const inOther = (length: Rational, unit: MeasureUnit): Rational => (unit === 'cm' ? multiply(length, CM_IN_AN_INCH) : divide(length, CM_IN_AN_INCH))

/** To the nearest multiple of a step, and at least one of them. */
function nearest(length: Rational, step: Rational): Rational {
  const parts = add(divide(length, step), HALF)
  const whole = parts.n / parts.d
  return multiply(rational(whole < 1n ? 1n : whole), step)
}

/** Finished lengths are rounded to the coarsest of these that changes them by a twentieth at the most, so that rulers show what is cut (our choice). */
const STEPS: Readonly<Record<MeasureUnit, readonly Rational[]>> = {
  in: [rational(1, 4), rational(1, 8), rational(1, 16)],
  cm: [rational(1, 2), rational(1, 10)],
}
const MOST_CHANGED = rational(1, 20)

/** Tenths, or sixteenths: a double writes and reads both exactly. */
function finishedInOther(length: Length, unit: MeasureUnit): number {
  const other = inOther(lengthOf(length), unit)
  const near = STEPS[unit].find((step) => {
    const off = subtract(nearest(other, step), other)
    return compare(off.n < 0n ? subtract(rational(0), off) : off, multiply(other, MOST_CHANGED)) <= 0
  })
  return toNumber(nearest(other, near ?? (STEPS[unit].at(-1) as Rational)))
}

/** As a ruler shows it: to the sixteenth of an inch, to the millimetre. */
const onRuler = (length: Length, unit: MeasureUnit): number => toNumber(nearest(inOther(lengthOf(length), unit), STEPS[unit].at(-1) as Rational))

/**
 * Makes a block in inches one in centimetres, or back, in one step to undo.
 *
 * Squares and borders are rounded to what is easily cut. A seam allowance, a step of cut sizes or a width of fabric that is the usual one becomes the
 * other unit's usual one (1/4 in is 0.75 cm); others are converted as a ruler shows them. Prints stay as large as they are.
 */
export const convertMeasure = (unit: MeasureUnit): Edit => ({
  name: message('set-measure'),
  change: (draft) => {
    const { measure, grid } = draft
    if (measure.unit === unit) return
    const usual: Block = { ...(draft as Block), measure: { unit: measure.unit }, cloth: {} }
    const other = draft as Block
    const seam = equal(seamOf(other), seamOf(usual)) ? null : onRuler(toFile(seamOf(other)), unit)
    const width = equal(usableWidthOf(other), usableWidthOf(usual)) ? null : wholeWidth(other, unit)
    measure.unit = unit
    delete measure.round
    if (seam === null) delete measure.seam
    else measure.seam = seam
    if (width !== null) draft.cloth = { ...draft.cloth, usableWidth: width }
    else delete draft.cloth?.usableWidth
    grid.cell = finishedInOther(grid.cell, unit)
    for (const border of draft.borders ?? []) border.finishedWidth = finishedInOther(border.finishedWidth, unit)
    for (const one of draft.units) if (one.oversize !== undefined) one.oversize = onRuler(one.oversize, unit)
    const spacing = draft.quilting?.spacing
    if (draft.quilting !== undefined && parseLength(spacing) !== null) draft.quilting.spacing = onRuler(spacing as Length, unit)
    for (const { print } of draft.fabrics as Mutable<Block>['fabrics']) if (print !== undefined) print.repeat = onRuler(print.repeat, unit)
  },
})

/** Rounded down: fabric is never wider than it was. */
const wholeWidth = (block: Block, unit: MeasureUnit): number => Math.max(1, Math.floor(toNumber(inOther(usableWidthOf(block), unit))))
