/**
 * Where everything lies in a quilt, for drawing and pointing: cheap enough for every frame of a drag.
 *
 * In      a quilt that has been read.
 * Out     plain numbers in the measure's unit, from the first place's finished corner. Verdicts and cut sizes come from the report only.
 */
import type { Block } from '../values/block.ts'
import { lengthOf } from '../block/lengthsOf.ts'
import { multiply, rational, subtract, toNumber } from '../exact/rational.ts'
import type { Quilt, QuiltPlace } from '../values/quilt.ts'
import { type ExactSize, measuresOf, spanOf } from './measures.ts'
import { layPlace } from './places.ts'
import { finishedOf, wornBlock } from './wornBlocks.ts'

type Numbers = readonly [number, number]

/** A place as it is drawn. */
export interface DrawnPlace {
  readonly place: QuiltPlace
  /** Top left corner and finished size. */
  readonly at: Numbers
  readonly size: Numbers
  /** What lies in it, finished, turned. */
  readonly content: Numbers
  /** Rounds of the frame, inner first: finished widths at the sides, and at top and bottom. */
  readonly frame: readonly { readonly fabric: string; readonly across: number; readonly down: number }[]
  readonly fit: 'fits' | 'too-large' | 'too-small'
  /** How much is missing (above zero) or too much, across and down, between what lies there with its frame, and the place. */
  readonly spare: Numbers
}

export interface QuiltLayout {
  readonly size: Numbers
  readonly cell: Numbers
  readonly gap: number
  readonly places: readonly DrawnPlace[]
}

const numbers = ([w, h]: ExactSize): Numbers => [toNumber(w), toNumber(h)]

/** Lays out all places of a quilt. */
export function quiltLayout(quilt: Quilt): QuiltLayout {
  const measures = measuresOf(quilt)
  const blocks = new Map(quilt.blocks.map(({ id, block }) => [id, { finished: finishedSize(block) }]))
  const { columns, rows } = quilt.grid
  return {
    size: numbers([spanOf(measures, 0, columns), spanOf(measures, 1, rows)]),
    cell: numbers(measures.cell),
    gap: toNumber(measures.gap),
    places: quilt.places.map((place): DrawnPlace => {
      const { origin, finished, content, frame, fit } = layPlace(quilt, measures, blocks, place)
      const filled = frame.reduce<ExactSize>(([w, h], { across, down }) => [twiceMore(w, across), twiceMore(h, down)], content)
      return {
        place,
        at: numbers(origin),
        size: numbers(finished),
        content: numbers(content),
        frame: frame.map(({ fabric, across, down }) => ({ fabric, across: toNumber(across), down: toNumber(down) })),
        fit,
        spare: numbers([subtract(finished[0], filled[0]), subtract(finished[1], filled[1])]),
      }
    }),
  }
}

const twiceMore = (length: ExactSize[0], by: ExactSize[0]): ExactSize[0] => subtract(length, multiply(by, rational(-2)))

const sizes = new WeakMap<Block, ExactSize>()

function finishedSize(block: Block): ExactSize {
  const known = sizes.get(block) ?? finishedOf(block)
  sizes.set(block, known)
  return known
}

/** A block with the quilt's fabrics, for drawing; null where the quilt has no such block. */
export function blockAsWorn(quilt: Quilt, id: string): Block | null {
  const item = quilt.blocks.find((one) => one.id === id)
  return item === undefined ? null : wornBlock(quilt, item)
}

/** The finished size of a block as it lies turned, in its unit of measure. */
export const blockFinished = (block: Block): Numbers => numbers(finishedSize(block))

/** The total width of a quilt's borders, at each side. */
export const bordersWide = ({ borders = [] }: Quilt): number => borders.reduce((all, { finishedWidth }) => all + toNumber(lengthOf(finishedWidth)), 0)
