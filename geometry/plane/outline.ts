/**
 * The outline of convex pieces that lie side by side without overlapping.
 *
 * In      convex pieces as flat lists x, y, x, y …, clockwise as seen (y down).
 * Out     the stretches of their sides that no other piece lies against, as x0, y0, x1, y1; the inside is on the right.
 * Exact   no: see `convex`. Anything shorter than `NEAR` is dropped.
 */
import { type Convex, NEAR } from './convex.ts'

type Stretch = readonly [number, number, number, number]

interface Side {
  readonly x: number
  readonly y: number
  readonly tx: number
  readonly ty: number
  readonly length: number
}

/** Places closer than this are one line. */
const CLOSE = 16 * NEAR

export function outlineOf(pieces: readonly Convex[]): Stretch[] {
  if (pieces.length === 1) return sidesOf(pieces[0] as Convex).map(stretchOf)
  const sides = pieces.flatMap((piece, owner) => sidesOf(piece).map((side) => ({ side, owner })))
  return sides.flatMap(({ side, owner }) => {
    const covered = sides.flatMap(({ side: other, owner: whose }) => (whose === owner ? [] : against(side, other)))
    return left(side.length, covered).map(([from, to]): Stretch => {
      const { x, y, tx, ty } = side
      return [x + tx * from, y + ty * from, x + tx * to, y + ty * to]
    })
  })
}

const stretchOf = ({ x, y, tx, ty, length }: Side): Stretch => [x, y, x + tx * length, y + ty * length]

function sidesOf(piece: Convex): Side[] {
  const sides: Side[] = []
  for (let i = 0; i < piece.length; i += 2) {
    const [x, y] = [piece[i] as number, piece[i + 1] as number]
    const next = (i + 2) % piece.length
    const [dx, dy] = [(piece[next] as number) - x, (piece[next + 1] as number) - y]
    const length = Math.hypot(dx, dy)
    if (length > CLOSE) sides.push({ x, y, tx: dx / length, ty: dy / length, length })
  }
  return sides
}

/** How far along a side another runs against it, the other way on the same line. */
function against({ x, y, tx, ty, length }: Side, other: Side): (readonly [number, number])[] {
  if (tx * other.tx + ty * other.ty > -1 + CLOSE) return []
  const off = (px: number, py: number): number => Math.abs(tx * (py - y) - ty * (px - x))
  const [endX, endY] = [other.x + other.tx * other.length, other.y + other.ty * other.length]
  if (off(other.x, other.y) > CLOSE || off(endX, endY) > CLOSE) return []
  const from = tx * (endX - x) + ty * (endY - y)
  const to = tx * (other.x - x) + ty * (other.y - y)
  return to > CLOSE && from < length - CLOSE ? [[from, to]] : []
}

/** What of 0 … length is not covered. */
function left(length: number, covered: readonly (readonly [number, number])[]): (readonly [number, number])[] {
  const free: (readonly [number, number])[] = []
  let at = 0
  for (const [from, to] of [...covered].sort((a, b) => a[0] - b[0])) {
    if (from > at + CLOSE) free.push([at, from])
    at = Math.max(at, to)
  }
  if (at < length - CLOSE) free.push([at, length])
  return free
}
