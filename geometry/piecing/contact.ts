/**
 * How two pieces touch: which seam would sew them together.
 *
 * In      the plane, the stretches where the two pieces touch, and which patches belong to which.
 * Out     straight runs in order, end to end, and whether the seam is straight, bent, or no single line at all.
 * Exact   directions and sides are compared in whole numbers.
 */
import { crossSign, type Dot } from '../plane/points.ts'
import type { Plane, PlaneEdge } from '../plane/subdivide.ts'

/** One straight stretch of a contact: dots from end to end, all on one line. */
export interface StraightRun {
  readonly line: number
  readonly dots: readonly number[]
}

export interface Contact {
  /** End to end; more than one where the contact bends. Empty where the two touch in separate places. */
  readonly runs: readonly StraightRun[]
  /** One straight run, with each piece on its own side of the line at both ends. */
  readonly straight: boolean
}

/** Where two pieces touch. `side` gives the piece that a patch belongs to: 0, 1, or −1 for neither. */
export function contactOf(plane: Plane, edges: readonly number[], side: (patch: number) => -1 | 0 | 1): Contact {
  const runs = oneLine(plane, edges) ?? anyLine(plane, edges)
  if (runs === null) return { runs: [], straight: false }
  const only = runs[0] as StraightRun
  return { runs, straight: runs.length === 1 && keepsItsSide(plane, only, 0, side) && keepsItsSide(plane, only, only.dots.length - 1, side) }
}

/** The quick case: most contacts are stretches of one straight line, end to end, and need no search. */
function oneLine(plane: Plane, edges: readonly number[]): StraightRun[] | null {
  const first = plane.edges[edges[0] as number]
  if (first === undefined) return null
  if (edges.length === 1) return [{ line: first.line, dots: [first.a, first.b] }]
  const upright = plane.dots[first.a]?.[0] === plane.dots[first.b]?.[0]
  const place = (edge: number): number => {
    const [x, y] = plane.dots[(plane.edges[edge] as PlaneEdge).a] as Dot
    return upright ? y : x
  }
  const sorted = [...edges].sort((one, other) => place(one) - place(other))
  const dots = [(plane.edges[sorted[0] as number] as PlaneEdge).a]
  for (const edge of sorted) {
    const { a, b, line } = plane.edges[edge] as PlaneEdge
    if (line !== first.line || a !== dots.at(-1)) return null
    dots.push(b)
  }
  return [{ line: first.line, dots }]
}

function anyLine(plane: Plane, edges: readonly number[]): StraightRun[] | null {
  const chain = chained(plane, edges)
  return chain === null ? null : cutAtBends(plane, chain)
}

/** Edges in a line, each with the dot where it begins; null where they are not one open line. */
function chained(plane: Plane, edges: readonly number[]): { edge: number; from: number }[] | null {
  if (edges.length === 0) return null
  const at = new Map<number, number[]>()
  for (const edge of edges) {
    const { a, b } = plane.edges[edge] as PlaneEdge
    for (const dot of [a, b]) {
      const there = at.get(dot)
      if (there === undefined) at.set(dot, [edge])
      else if (there.length === 1) there.push(edge)
      else return null
    }
  }
  const first = firstDot(plane, at)
  const chain: { edge: number; from: number }[] = []
  let dot = first
  let edge = (at.get(dot) as number[])[0] as number
  for (;;) {
    chain.push({ edge, from: dot })
    const { a, b } = plane.edges[edge] as PlaneEdge
    dot = dot === a ? b : a
    const next = (at.get(dot) as number[]).find((other) => other !== edge)
    if (next === undefined || dot === first) break
    edge = next
  }
  // A closed ring: a piece inside another can never be laid right sides together with it.
  if (dot === first) return null
  return chain.length === edges.length ? chain : null
}

/** The loose end that comes first from the left, then from the top; any dot of a closed line. */
function firstDot(plane: Plane, at: ReadonlyMap<number, readonly number[]>): number {
  let first = -1
  let loose = false
  for (const [dot, there] of at) {
    const better = first < 0 || before(plane.dots[dot] as Dot, plane.dots[first] as Dot)
    if (there.length === 1 ? !loose || better : !loose && better) {
      first = dot
      loose = there.length === 1
    }
  }
  return first
}

const before = (p: Dot, q: Dot): boolean => p[0] < q[0] || (p[0] === q[0] && p[1] < q[1])

function cutAtBends(plane: Plane, chain: readonly { edge: number; from: number }[]): StraightRun[] {
  const runs: { line: number; dots: number[] }[] = []
  for (const { edge, from } of chain) {
    const { a, b, line } = plane.edges[edge] as PlaneEdge
    const to = from === a ? b : a
    const last = runs.at(-1)
    if (last !== undefined && last.line === line) last.dots.push(to)
    else runs.push({ line, dots: [from, to] })
  }
  return runs
}

/** Whether, round one end of a run, each piece stays on its own side of the line: if not, the seam would end in an inner corner. */
export function keepsItsSide(plane: Plane, run: StraightRun, place: number, side: (patch: number) => -1 | 0 | 1): boolean {
  const end = run.dots[place] as number
  const inner = run.dots[place === 0 ? 1 : place - 1] as number
  const along = vectorBetween(plane, inner, end)
  const first = plane.around[end]?.find((edge) => otherDot(plane, edge, end) === inner) as number
  const { a, plus, minus } = plane.edges[first] as PlaneEdge
  // Seen from the inner dot toward the end, `plus` lies clockwise when the edge runs that way.
  const clockwise = a === inner ? plus : minus
  const sign = side(clockwise)
  return (plane.around[end] ?? []).every((edge) => {
    const away = vectorBetween(plane, end, otherDot(plane, edge, end))
    const turn = crossSign(along[0], along[1], away[0], away[1])
    if (turn === 0) return true
    const beside = plane.edges[edge] as PlaneEdge
    const wrong = turn > 0 ? 1 - sign : sign
    return side(beside.plus) !== wrong && side(beside.minus) !== wrong
  })
}

/** The dot at the other end of an edge. */
export function otherDot(plane: Plane, edge: number, dot: number): number {
  const { a, b } = plane.edges[edge] as PlaneEdge
  return dot === a ? b : a
}

/** From one dot to another, in steps. */
export function vectorBetween(plane: Plane, from: number, to: number): Dot {
  const p = plane.dots[from] as Dot
  const q = plane.dots[to] as Dot
  return [q[0] - p[0], q[1] - p[1]]
}
