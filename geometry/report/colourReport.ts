/**
 * The report on a block's colours: which neighbours blur, and other colourings with their batches and clashes.
 *
 * In      a block that has been read.
 * Out     pairs of fabrics that touch along seams and are nearly as light as each other; a page of colourings.
 * Source  a difference of lightness below 8 of 100 blurs: common practice, no source.
 */
import { lay } from '../block/lay.ts'
import { colourPatches, type PatchColour } from '../edits/fabricEdits.ts'
import { planeOf } from '../block/blockPlane.ts'
import { cellOf } from '../block/lengthsOf.ts'
import type { Block } from '../values/block.ts'
import { meanLightness } from '../colour/print.ts'
import { batchesIn } from '../colouring/batchCount.ts'
import { type Colouring, type Colourings, type ColouringRequest, colouringsOf } from '../colouring/colourings.ts'
import { toNumber } from '../exact/rational.ts'
import type { Dot } from '../plane/points.ts'
import { sewBlock } from './report.ts'
import type { Sewing } from './sewing.ts'

/** The difference in L* (of 100) below which two neighbours can hardly be distinguished from across the room. */
export const BLURS_BELOW = 8

export interface Blur {
  readonly fabrics: readonly [string, string]
  /** Of L*. */
  readonly difference: number
  /** How long they touch, in the measure's unit. */
  readonly length: number
  /** Where, from end to end, in cells. */
  readonly lines: readonly (readonly [readonly [number, number], readonly [number, number]])[]
}

/** Pairs of fabrics that blur, the longest first; ties in the order found. */
export function blurs(block: Block, below = BLURS_BELOW): Blur[] {
  const laid = lay(block)
  const { edges, dots } = planeOf(laid)
  const cell = toNumber(cellOf(block))
  const lightness = new Map(block.fabrics.map((fabric) => [fabric.id, meanLightness(fabric)]))
  const found = new Map<string, { fabrics: [string, string]; difference: number; length: number; lines: Blur['lines'][number][] }>()
  for (const { a, b, plus, minus } of edges) {
    const fabrics = [laid.patches[plus]?.fabric, laid.patches[minus]?.fabric].sort() as [string | undefined, string | undefined]
    const [one, other] = fabrics
    if (one === undefined || other === undefined || one === other) continue
    const difference = Math.abs((lightness.get(one) as number) - (lightness.get(other) as number))
    if (difference >= below) continue
    const line = [laid.places.cells(dots[a] as Dot), laid.places.cells(dots[b] as Dot)] as const
    const pair = found.get(fabrics.join(' ')) ?? { fabrics: [one, other], difference, length: 0, lines: [] }
    pair.length += Math.hypot(line[1][0] - line[0][0], line[1][1] - line[0][1]) * cell
    pair.lines.push(line)
    found.set(fabrics.join(' '), pair)
  }
  return [...found.values()].sort((one, other) => other.length - one.length)
}

/** The patches a colouring changes, for `colourPatches`. */
export const coloursOf = ({ slots }: Pick<Colourings, 'slots'>, { fabrics }: Colouring): PatchColour[] =>
  slots.map((slot, place) => ({ ...slot, fabric: fabrics[place] as string }))

export interface JudgedColouring extends Colouring {
  /** The least number of batches of geese; none where no goose is made four at a time. */
  readonly batches: number
  /** Meetings that clash; null where the block cannot be sewn as it lies. */
  readonly clashes: number | null
}

export interface ColouringPage extends Omit<Colourings, 'colourings' | 'present' | 'patches'> {
  readonly present: JudgedColouring
  readonly colourings: readonly JudgedColouring[]
  /** How many there are in all. */
  readonly count: number
}

/** Finds all colourings once, and judges each page of them when it is requested. */
export function colouringPages(block: Block, request: ColouringRequest): (from: number, count: number) => ColouringPage {
  const sewing = sewBlock(block, 'quick')
  const { laid } = sewing
  const { patches, ...all } = colouringsOf(laid, request)
  const clashes = clashCounter(sewing)
  const batches = batchesIn(laid)
  const scorePressing = (one: Colouring): JudgedColouring => {
    const fabrics = laid.patches.map(({ fabric }) => fabric)
    patches.forEach((patch, place) => {
      fabrics[patch] = one.fabrics[place] as string
    })
    return { ...one, batches: batches(fabrics), clashes: clashes(coloursOf(all, one)) }
  }
  const present = scorePressing(all.present)
  return (from, count) => ({
    ...all,
    present,
    count: all.colourings.length,
    colourings: all.colourings.slice(from, from + count).map(scorePressing),
  })
}

/** Colours say nothing about which seams clash, unless matching units are pressed the same way: then colours decide which units match, and each colouring is sewn. */
function clashCounter(sewing: Sewing): (colours: readonly PatchColour[]) => number | null {
  const clashesOf = ({ plans }: Sewing): number | null => plans?.taken.pressed.clashes ?? null
  const { block } = sewing.laid
  if (block.pressAlike === true) return (colours) => clashesOf(sewBlock(coloured(block, colours), 'quick'))
  const always = clashesOf(sewing)
  return () => always
}

/** The block with some patches of other fabrics. */
export function coloured(block: Block, colours: readonly PatchColour[]): Block {
  const draft = structuredCopy(block)
  colourPatches(colours).change(draft)
  return draft
}

const structuredCopy = (block: Block): Parameters<ReturnType<typeof colourPatches>['change']>[0] => JSON.parse(JSON.stringify(block))
