/**
 * One line of quilting along the seams.
 *
 * In      seam pieces between dots, already cut at every crossing; where the maker wants to begin, and which way she prefers at a crossing.
 * Out     a route for each connected set of seams, the one nearest the centre first, with the least length stitched twice; starts and turns;
 *         lengths in the dots' own unit.
 * How     `twiceOf` says what is stitched twice and where a route may begin and end; of the remaining routes, all equally short, one is chosen
 *         that does the centre first or turns seldom: a few are walked greedily, from both ends, forwards and backwards, and the best is taken.
 * Exact   the length stitched twice is proved to be the least (`proved`); the order is a good one, not proved.
 * Source  start in the middle and work out [S167]; retrace a sewn line rather than stop: [S165][S166].
 */
import { crossSign, type Dot } from '../plane/points.ts'
import { type Segment, SeamGraph } from './seamGraph.ts'
import { distanceTo, type Beginning, nearestOf, type Twice, twiceOf } from './stitchedTwice.ts'
import { type Taste, walk } from './eulerWalk.ts'

export interface RouteOptions {
  /** Begin near this point; without it, near the centre. */
  readonly begin?: Dot
  /** Begin at the dot nearest `begin` even if more is stitched twice; otherwise only where it costs nothing. */
  readonly atAnyCost?: boolean
  /** Without it, the middle of all seams. */
  readonly centre?: Dot
  /** `centre`: from the centre outwards; `straight`: with few turns. */
  readonly order?: 'centre' | 'straight'
}

interface Route {
  readonly points: readonly Dot[]
  /** The route ends where it begins; the start is not repeated. */
  readonly closed: boolean
  /** Changes of direction on the way, reversals included; the start of a closed route does not count. */
  readonly turns: number
}

export interface Routes {
  readonly routes: readonly Route[]
  readonly retraced: number
  readonly length: number
  /** Each route is begun once and ended once. */
  readonly starts: number
  readonly turns: number
  /** Whether the length stitched twice is proved to be the least. */
  readonly proved: boolean
}

export function ditch(segments: readonly Segment[], options: RouteOptions = {}): Routes {
  const graph = new SeamGraph(segments)
  const centre = options.centre ?? middleOf(graph.dots)
  const sets = graph.sets().map((set) => ({ set, far: distanceTo(graph, nearestOf(graph, set, centre), centre) }))
  const nearest = options.begin === undefined ? -1 : nearestOf(graph, [...graph.dots.keys()], options.begin)
  const found = sets
    .sort((a, b) => a.far - b.far)
    .map(({ set }) => {
      const beginning = options.begin === undefined ? null : { near: options.begin, atAnyCost: options.atAnyCost === true && set.includes(nearest) }
      return routeOf(graph, set, beginning, centre, options.order ?? 'centre')
    })
  const sum = (lengths: readonly number[]): number => lengths.reduce((total, length) => total + length, 0)
  const retraced = sum(found.flatMap(({ twice }) => twice.edges.map((edge) => graph.lengths[edge] as number)))
  return {
    routes: found.map(({ route }) => route),
    retraced,
    length: sum(graph.lengths) + retraced,
    starts: found.length,
    turns: sum(found.map(({ route }) => route.turns)),
    proved: found.every(({ twice }) => twice.proved),
  }
}

/** With more edges than this, only one route is walked. */
const FEW = 5_000

function routeOf(graph: SeamGraph, set: readonly number[], beginning: Beginning | null, centre: Dot, order: 'centre' | 'straight') {
  const twice = twiceOf(graph, set, beginning)
  const edges = [...new Set(set.flatMap((dot) => graph.around[dot] as readonly number[]))]
  const { ends, free } = endsOf(graph, set, twice, beginning, centre)
  const far = edgeDistances(graph, centre)
  const ways =
    edges.length > FEW ? [forwards(ends[0])] : [forwards(ends[0]), backwards(ends[1]), ...(free ? [forwards(ends[1]), backwards(ends[0])] : [])]
  const walks = ways.map(({ start, outwards }) => {
    const path = walk(graph, edges, twice.edges, start, tasteOf(graph, far, order, outwards))
    return outwards === 1 ? path : path.reverse()
  })
  const score =
    order === 'straight'
      ? (path: readonly number[]): number => -turnsOf(graph, path)
      : (path: readonly number[]): number => outwardness(graph, path, centre)
  const best = walks.map((path) => ({ path, score: score(path) })).reduce((a, b) => (b.score > a.score ? b : a)).path
  const closed = best[0] === best.at(-1)
  const points = best.map((dot) => graph.dots[dot] as Dot)
  return { twice, route: { points: closed ? points.slice(0, -1) : points, closed, turns: turnsOf(graph, best) } }
}

/** A walk that begins at a dot; or one that ends there, walked backwards with the outermost first. */
const forwards = (start: number): { start: number; outwards: 1 | -1 } => ({ start, outwards: 1 })
const backwards = (start: number): { start: number; outwards: 1 | -1 } => ({ start, outwards: -1 })

/** Where a route begins and ends, and whether the two may change places. */
function endsOf(graph: SeamGraph, set: readonly number[], twice: Twice, beginning: Beginning | null, centre: Dot) {
  if (twice.ends === null) {
    const start = nearestOf(graph, set, beginning?.near ?? centre)
    return { ends: [start, start] as const, free: false }
  }
  const [from, to] = twice.ends
  if (beginning !== null) return { ends: twice.ends, free: false }
  return { ends: distanceTo(graph, from, centre) <= distanceTo(graph, to, centre) ? twice.ends : ([to, from] as const), free: true }
}

function middleOf(dots: readonly Dot[]): Dot {
  const range = (axis: 0 | 1): number => {
    let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
    for (const dot of dots) {
      least = Math.min(least, dot[axis])
      most = Math.max(most, dot[axis])
    }
    return (least + most) / 2
  }
  return [range(0), range(1)]
}

const middleOfEdge = (graph: SeamGraph, a: number, b: number): Dot => {
  const [[x0, y0], [x1, y1]] = [graph.dots[a] as Dot, graph.dots[b] as Dot]
  return [(x0 + x1) / 2, (y0 + y1) / 2]
}

/** How far the middle of each edge is from the centre, as a share of the farthest. */
function edgeDistances(graph: SeamGraph, [x, y]: Dot): readonly number[] {
  const far = graph.ends.map(([a, b]) => {
    const [mx, my] = middleOfEdge(graph, a, b)
    return Math.hypot(mx - x, my - y)
  })
  const most = far.reduce((a, b) => Math.max(a, b), 0) || 1
  return far.map((distance) => distance / most)
}

/** Weight of the second preference, which only breaks ties of the first. */
const SLIGHT = 1e-6

function tasteOf(graph: SeamGraph, far: readonly number[], order: 'centre' | 'straight', outwards: 1 | -1): Taste {
  const [turning, farther] = order === 'centre' ? [SLIGHT, 1] : [1, SLIGHT]
  return (from, dot, edge) => {
    const turns = from >= 0 && isTurn(graph, graph.across(from, dot), dot, graph.across(edge, dot))
    return (turns ? turning : 0) + farther * outwards * (far[edge] as number)
  }
}

function isTurn(graph: SeamGraph, a: number, b: number, c: number): boolean {
  const [[ax, ay], [bx, by], [cx, cy]] = [graph.dots[a] as Dot, graph.dots[b] as Dot, graph.dots[c] as Dot]
  return crossSign(bx - ax, by - ay, cx - bx, cy - by) !== 0 || (bx - ax) * (cx - bx) + (by - ay) * (cy - by) < 0
}

function turnsOf(graph: SeamGraph, path: readonly number[]): number {
  return path.filter((dot, place) => place > 0 && place + 1 < path.length && isTurn(graph, path[place - 1] as number, dot, path[place + 1] as number))
    .length
}

/** How much later the outer stitches come than the inner: each stretch is weighted by its length, its distance and when it is stitched. */
function outwardness(graph: SeamGraph, path: readonly number[], [x, y]: Dot): number {
  let [done, sum, weight] = [0, 0, 0]
  for (let place = 1; place < path.length; place++) {
    const [a, b] = [path[place - 1] as number, path[place] as number]
    const [[ax, ay], [bx, by]] = [graph.dots[a] as Dot, graph.dots[b] as Dot]
    const length = Math.hypot(bx - ax, by - ay)
    const [mx, my] = middleOfEdge(graph, a, b)
    const heavy = length * Math.hypot(mx - x, my - y)
    sum += heavy * (done + length / 2)
    weight += heavy
    done += length
  }
  return weight === 0 ? 0 : sum / (weight * done)
}
