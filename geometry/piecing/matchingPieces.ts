/**
 * How many different pieces a plan makes: two match when one is the other turned, in the same fabrics or of the same shapes.
 *
 * In      the laid block and its seams.
 * Out     a fingerprint for each piece that a seam makes, the same for matching pieces (none for units, which are the same in every plan).
 * How     each patch, in each of its four turns, is hashed to a number and multiplied by one base to the power of its x and another to the power
 *         of its y. A piece is the sum of its patches, so joining two pieces adds their sums; moving a piece multiplies its sum, so dividing by the
 *         corner of its turned box leaves a number that does not depend on its position. The least of the four is the fingerprint.
 *         Used only to choose between equal plans and to make matching pieces together; no verdict depends on it.
 */
import type { Laid } from '../block/lay.ts'
import type { Dot } from '../plane/points.ts'
import type { Seam } from './values.ts'

/** Primes below 2²⁶: products of remainders are exact in a double. With two of them a chance match is practically impossible. */
const PRIMES = [67_108_859, 67_108_837] as const
const ACROSS = [31_415_927, 27_182_819] as const
const DOWN = [16_180_341, 14_142_137] as const

/** Where each quarter turn takes a point. */
const TURNS: readonly ((x: number, y: number) => Dot)[] = [(x, y) => [x, y], (x, y) => [-y, x], (x, y) => [-x, -y], (x, y) => [y, -x]]

/** A sum for each turn and each prime. */
type Sums = readonly number[]

interface Piece {
  readonly sums: Sums
  readonly box: readonly [number, number, number, number]
  readonly patches: number
}

/** Sums and fingerprints of pieces by the seams that finish them: for callers that keep the same seam object of an unchanged piece from edit to edit. */
export interface FingerprintCache {
  readonly shapes: WeakMap<Seam, Printed>
}

interface Printed {
  readonly piece: Piece
  readonly print: string
}

/** A text for each seam's piece: pieces with the same text are sewn the same way, from the same fabrics or only from the same shapes. */
export function fingerprints(
  laid: Laid,
  seams: readonly Seam[],
  inFabric: 'fabrics' | 'shapes' = 'fabrics',
  prints: FingerprintCache | null = null,
): string[] {
  const fabric = new Map(laid.block.fabrics.map(({ id }, index) => [id, inFabric === 'fabrics' ? index + 1 : 1]))
  const places = new Places()
  const patches = laid.patches.length
  const made: Piece[] = []
  const pieceOf = (piece: number): Piece => {
    if (piece >= patches) return made[piece - patches] as Piece
    const { corners, fabric: id } = laid.patches[piece] as Laid['patches'][number]
    return patchPiece(corners, fabric.get(id) ?? 0, places)
  }
  return seams.map((seam) => {
    const kept = inFabric === 'shapes' ? prints?.shapes.get(seam) : undefined
    if (kept !== undefined) {
      made.push(kept.piece)
      return kept.print
    }
    const piece = together(pieceOf(seam.sides[0]), pieceOf(seam.sides[1]))
    const print = seam.stage === 'unit' ? '' : printOf(piece, places)
    made.push(piece)
    if (inFabric === 'shapes') prints?.shapes.set(seam, { piece, print })
    return print
  })
}

/** How many different shapes of pieces a plan makes, whatever their fabrics. */
export const countShapes = (laid: Laid, seams: readonly Seam[], prints: FingerprintCache | null = null): number =>
  new Set(fingerprints(laid, seams, 'shapes', prints)).size

/** Groups of two or more matching pieces, each piece named by the seam that finishes it, in sewing order. */
export function repeatsOf(laid: Laid, seams: readonly Seam[]): number[][] {
  const matching = new Map<string, number[]>()
  fingerprints(laid, seams).forEach((print, seam) => {
    if (print === '') return
    const there = matching.get(print)
    if (there === undefined) matching.set(print, [seam])
    else there.push(seam)
  })
  return [...matching.values()].filter((pieces) => pieces.length > 1)
}

function patchPiece(corners: readonly Dot[], fabric: number, places: Places): Piece {
  let [x0, y0, x1, y1] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const [x, y] of corners) {
    x0 = Math.min(x0, x)
    y0 = Math.min(y0, y)
    x1 = Math.max(x1, x)
    y1 = Math.max(y1, y)
  }
  const box = [x0, y0, x1, y1] as const
  const sums = TURNS.flatMap((turn) => {
    const [left, top] = lowest(turn, box)
    let shape = 0
    for (const [x, y] of corners) {
      const [tx, ty] = turn(x, y)
      shape = (shape + mix(mix((tx - left) | 0, 0x9e3779b1), (ty - top) | 0)) | 0
    }
    return PRIMES.map((prime, which) => (remainder(mix(shape, fabric + which * 0x10001), prime) * places.at(left, top, which)) % prime)
  })
  return { sums, box, patches: 1 }
}

function together(a: Piece, b: Piece): Piece {
  return {
    sums: a.sums.map((sum, index) => (sum + (b.sums[index] as number)) % (PRIMES[index % 2] as number)),
    box: [Math.min(a.box[0], b.box[0]), Math.min(a.box[1], b.box[1]), Math.max(a.box[2], b.box[2]), Math.max(a.box[3], b.box[3])],
    patches: a.patches + b.patches,
  }
}

function printOf({ sums, box, patches }: Piece, places: Places): string {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
  TURNS.forEach((turn, index) => {
    const [left, top] = lowest(turn, box)
    const [one, other] = PRIMES.map((prime, which) => ((sums[2 * index + which] as number) * places.at(-left, -top, which)) % prime) as [
      number,
      number,
    ]
    if (one < low || (one === low && other < high)) [low, high] = [one, other]
  })
  return `${patches}:${low}:${high}`
}

/** The top left corner of a turned box. */
function lowest(turn: (x: number, y: number) => Dot, [x0, y0, x1, y1]: Piece['box']): Dot {
  const [ax, ay] = turn(x0, y0)
  const [bx, by] = turn(x1, y1)
  return [Math.min(ax, bx), Math.min(ay, by)]
}

/** Powers of the bases, each computed once: pieces begin and end on the same few lines. */
class Places {
  private readonly across = [new Map<number, number>(), new Map<number, number>()] as const
  private readonly down = [new Map<number, number>(), new Map<number, number>()] as const

  at(x: number, y: number, which: number): number {
    const one = which as 0 | 1
    return (power(this.across[one], ACROSS[one], x, PRIMES[one]) * power(this.down[one], DOWN[one], y, PRIMES[one])) % PRIMES[one]
  }
}

/** Negative exponents are allowed: by Fermat, base^(prime − 1) is 1. */
function power(known: Map<number, number>, base: number, exponent: number, prime: number): number {
  const before = known.get(exponent)
  if (before !== undefined) return before
  let result = 1
  let square = base % prime
  for (let left = remainder(exponent, prime - 1); left > 0; left = Math.floor(left / 2)) {
    if (left % 2 === 1) result = (result * square) % prime
    square = (square * square) % prime
  }
  known.set(exponent, result)
  return result
}

const remainder = (value: number, by: number): number => ((value % by) + by) % by

function mix(a: number, b: number): number {
  let h = Math.imul(a ^ (b + 0x7f4a7c15), 0x2c1b3c6d)
  h = Math.imul(h ^ (h >>> 13), 0x297a2d39)
  return (h ^ (h >>> 16)) | 0
}
