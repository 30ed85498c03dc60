/**
 * The quilting line of a place: the seams of its block and the seam between the block and what frames it, turned as it lies.
 *
 * In      a laid place; how far inside its raw edge the quilting stops.
 * Out     routes in units of measure from the place's finished top left corner. Seams are cut off exactly where the quilting stops.
 */
import { cellOf } from '../block/lengthsOf.ts'
import { add, compare, divide, lcm, multiply, type Rational, rational, subtract, toFile, ZERO } from '../exact/rational.ts'
import type { Dot } from '../plane/points.ts'
import { ditch } from '../quilting/ditchRoute.ts'
import type { Segment } from '../quilting/seamGraph.ts'
import type { Ditch } from '../values/report.ts'
import type { ExactSize } from './measures.ts'
import type { LaidPlace } from './places.ts'

type Line = readonly [ExactSize, ExactSize]

export function placeDitch(laid: LaidPlace, seam: Rational, loose: Rational): Ditch {
  const lines = seamsOf(laid)
  const inside = loose.n === 0n ? lines : lines.flatMap((line) => clipped(line, laid.finished, subtract(loose, seam)))
  if (inside.length === 0) return { routes: [], retraced: 0, length: 0, starts: 0, turns: 0, proved: true }
  const parts = inside.flat(2).reduce((all, { d }) => lcm(all, d), 1n)
  const dot = ([x, y]: ExactSize): Dot => [Number((x.n * parts) / x.d), Number((y.n * parts) / y.d)]
  const centre = dot([divide(laid.finished[0], rational(2)), divide(laid.finished[1], rational(2))])
  const found = ditch(
    inside.map(([a, b]): Segment => [dot(a), dot(b)]),
    { centre },
  )
  const scale = 1 / Number(parts)
  return {
    ...found,
    routes: found.routes.map((route) => ({
      ...route,
      points: route.points.map(([x, y]) => [toFile(rational(BigInt(x), parts)), toFile(rational(BigInt(y), parts))] as const),
    })),
    retraced: found.retraced * scale,
    length: found.length * scale,
  }
}

/** Every seam of the block and, where it is framed, its outline; in the place, turned. */
function seamsOf({ block, place, frame }: LaidPlace): Line[] {
  if (block === null || block.sewing.plans === null) return []
  const { laid, plane } = block.sewing
  const cell = cellOf(block.block)
  const turn = place.turn ?? 0
  const [w, h] = block.finished
  const border = multiply(laid.depths.at(-1) ?? ZERO, cell)
  const before = frame.reduce<ExactSize>((all, { across, down }) => [add(all[0], across), add(all[1], down)], [ZERO, ZERO])
  const first = frame[0]
  const inBlock = (patch: number): boolean => (laid.patches[patch]?.unit ?? -1) >= 0
  const put = (number: number): ExactSize => {
    const [x, y] = plane.dots[number] as Dot
    const at: ExactSize = [add(multiply(laid.places.x(x), cell), border), add(multiply(laid.places.y(y), cell), border)]
    const [tx, ty] = turned(at, w, h, turn)
    return [add(tx, before[0]), add(ty, before[1])]
  }
  return plane.edges.flatMap(({ a, b, plus, minus }): Line[] => {
    const line: Line = [put(a), put(b)]
    if (plus >= 0 && minus >= 0) return inBlock(plus) || inBlock(minus) ? [line] : []
    if ((plus < 0 && minus < 0) || laid.borders > 0 || first === undefined) return []
    const upright = compare(line[0][0], line[1][0]) === 0
    return (upright ? first.across : first.down).n > 0n ? [line] : []
  })
}

function turned([x, y]: ExactSize, w: Rational, h: Rational, turn: number): ExactSize {
  if (turn === 1) return [subtract(h, y), x]
  if (turn === 2) return [subtract(w, x), subtract(h, y)]
  if (turn === 3) return [y, subtract(w, x)]
  return [x, y]
}

/** What of a line lies inside the place, `by` in from its finished edges. */
function clipped([a, b]: Line, finished: ExactSize, by: Rational): Line[] {
  let [from, to]: [Rational, Rational] = [ZERO, rational(1)]
  const delta = [subtract(b[0], a[0]), subtract(b[1], a[1])] as const
  for (const axis of [0, 1] as const) {
    const [low, high] = [by, subtract(finished[axis], by)]
    if (delta[axis].n === 0n) {
      if (compare(a[axis], low) < 0 || compare(a[axis], high) > 0) return []
      continue
    }
    const ends = [divide(subtract(low, a[axis]), delta[axis]), divide(subtract(high, a[axis]), delta[axis])]
    const [enter, leave] = (delta[axis].n > 0n ? ends : ends.reverse()) as [Rational, Rational]
    if (compare(enter, from) > 0) from = enter
    if (compare(leave, to) < 0) to = leave
  }
  if (compare(from, to) >= 0) return []
  const at = (share: Rational): ExactSize => [add(a[0], multiply(delta[0], share)), add(a[1], multiply(delta[1], share))]
  return [[at(from), at(to)]]
}
