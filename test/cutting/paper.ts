/**
 * Sewing with paper: squares laid face down on squares, sewn along lines, cut, and opened.
 *
 * In      sides of squares and the seam allowance; how each square is turned before it is laid.
 * Out     units as layers of fabric on the table (x to the right, y down), each with the way its print points.
 * How     opening a layer over its seam is a reflection in the seam's line; a cut is a half plane. Nothing is known here of add-ons.
 * Source  the steps: geese [S3][S5], triangles two [S37], four [S31] and eight [S25] at a time, hourglasses [S37].
 */
export type Spot = readonly [number, number]

export interface Layer {
  readonly cloth: string
  readonly corners: readonly Spot[]
  /** Where the print points, as seen from above. */
  readonly up: Spot
  readonly faceUp: boolean
}

/** All points p with n · p = at; n is of length 1. */
export interface Line {
  readonly n: Spot
  readonly at: number
}

export type Quarters = 0 | 1 | 2 | 3

const ROOT = Math.SQRT1_2
const dot = ([a, b]: Spot, [c, d]: Spot): number => a * c + b * d
const offset = ({ n, at }: Line, by: number): Line => ({ n, at: at + by })
const back = ({ n: [x, y], at }: Line): Line => ({ n: [-x, -y], at: -at })

/** Through a point, from bottom left to top right (or from top left to bottom right); its normal points down (or up) to the right. */
const rising = ([x, y]: Spot): Line => ({ n: [ROOT, ROOT], at: dot([ROOT, ROOT], [x, y]) })
const falling = ([x, y]: Spot): Line => ({ n: [ROOT, -ROOT], at: dot([ROOT, -ROOT], [x, y]) })

export const turned = ([x, y]: Spot, quarters: Quarters): Spot => {
  const ways = [
    [x, y],
    [-y, x],
    [-x, -y],
    [y, -x],
  ] as const
  return ways[quarters]
}

/** `quarters`: how its print is turned from pointing up. */
export function squareOf(cloth: string, side: number, [x, y]: Spot, quarters: Quarters, faceUp: boolean): Layer {
  const corners: Spot[] = [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ]
  return { cloth, corners, up: turned([0, -1], quarters), faceUp }
}

function mirrored({ n, at }: Line, layer: Layer): Layer {
  const over = (spot: Spot, from: number): Spot => {
    const by = 2 * (dot(n, spot) - from)
    return [spot[0] - by * n[0], spot[1] - by * n[1]]
  }
  return { ...layer, corners: layer.corners.map((corner) => over(corner, at)), up: over(layer.up, 0), faceUp: !layer.faceUp }
}

/** What lies where n · p ≥ at. */
export function clipped(corners: readonly Spot[], { n, at }: Line): Spot[] {
  return corners.flatMap((from, index): Spot[] => {
    const to = corners[(index + 1) % corners.length] as Spot
    const [a, b] = [dot(n, from) - at, dot(n, to) - at]
    const part = a / (a - b)
    const crossing: Spot[] = a * b < 0 ? [[from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part]] : []
    return a >= 0 ? [from, ...crossing] : crossing
  })
}

const cutBy = (layers: readonly Layer[], line: Line): Layer[] =>
  layers.flatMap((layer) => {
    const corners = clipped(layer.corners, line)
    return corners.length < 3 ? [] : [{ ...layer, corners }]
  })

/** Sewn on both sides of a line, cut on it, and what lay face down opened: two pieces. */
function sewnBothSides(below: readonly Layer[], above: readonly Layer[], line: Line, seam: number): [Layer[], Layer[]] {
  const half = (side: Line): Layer[] => {
    const sewn = offset(side, seam)
    return [...cutBy(below, side), ...cutBy(above, side).map((layer) => mirrored(sewn, layer))]
  }
  return [half(back(line)), half(line)]
}

const moved = (layers: readonly Layer[], dx: number, dy: number): Layer[] =>
  layers.map((layer) => ({ ...layer, corners: layer.corners.map(([x, y]): Spot => [x + dx, y + dy]) }))

/** Two at a time: the piece at the top left of the diagonal, the one at the bottom right. */
export function twoTriangles(side: number, seam: number, a: Quarters, b: Quarters, leaning: 'rising' | 'falling' = 'rising'): [Layer[], Layer[]] {
  const diagonal = leaning === 'rising' ? rising([side, 0]) : falling([0, 0])
  return sewnBothSides([squareOf('a', side, [0, 0], a, true)], [squareOf('b', side, [0, 0], b, false)], diagonal, seam)
}

/** Sewn all round, cut on both diagonals: four. */
export function fourTriangles(side: number, seam: number): Layer[][] {
  const edges: readonly Line[] = [
    { n: [0, 1], at: 0 },
    { n: [-1, 0], at: -side },
    { n: [0, -1], at: -side },
    { n: [1, 0], at: 0 },
  ]
  const [one, other] = [rising([side, 0]), falling([0, 0])]
  const quarters = [
    [back(one), other],
    [one, other],
    [one, back(other)],
    [back(one), back(other)],
  ] as const
  return edges.map((edge, index) => {
    const cut = (layer: Layer): Layer[] => (quarters[index] as readonly Line[]).reduce<Layer[]>(cutBy, [layer])
    const opened = cut(squareOf('b', side, [0, 0], 0, false)).map((layer) => mirrored(offset(edge, seam), layer))
    return [...cut(squareOf('a', side, [0, 0], 0, true)), ...opened]
  })
}

/** Cut on both middle lines, then each quarter on its drawn diagonal: eight. The squares are whole until then. */
export function eightTriangles(side: number, seam: number, a: Quarters, b: Quarters): Layer[][] {
  const half = side / 2
  const falls = twoTriangles(half, seam, a, b, 'falling')
  const rises = twoTriangles(half, seam, a, b, 'rising')
  return [...falls, ...rises, ...rises, ...falls]
}

/** Two hourglasses: two triangles from the same squares, the second turned over onto the first, cut across. Their long seams fall. */
export function twoHourglasses(side: number, seam: number, a: Quarters, b: Quarters): [Layer[], Layer[]] {
  const [first, second] = twoTriangles(side, seam, a, b)
  const lost = seam / ROOT
  const diagonal = falling([0, 0])
  const over = moved(second, -lost, -lost).map((layer) => mirrored(diagonal, layer))
  const [left, right] = sewnBothSides(first, over, diagonal, seam)
  return [right, left]
}

/** Four geese: small squares on two opposite corners of the large one first, then one on each piece. From the one with its base at the top, clockwise. */
export function fourGeese(
  large: number,
  small: number,
  seam: number,
  goose: Quarters,
  wings: readonly [Quarters, Quarters, Quarters, Quarters],
): Layer[][] {
  const far = large - small
  const wing = (name: string, at: Spot, quarters: Quarters): Layer => squareOf(name, small, at, quarters, false)
  const [p1, p2, p3, p4] = [
    wing('p1', [0, 0], wings[0]),
    wing('p2', [far, 0], wings[1]),
    wing('p3', [far, far], wings[2]),
    wing('p4', [0, far], wings[3]),
  ]
  const [lower, upper] = sewnBothSides([squareOf('goose', large, [0, 0], goose, true)], [p1, p3], falling([0, 0]), seam)
  const [top, right] = sewnBothSides(upper, [p2], rising([large, 0]), seam)
  const [left, bottom] = sewnBothSides(lower, [p4], rising([large, 0]), seam)
  return [top, right, bottom, left]
}

/** A square laid face down in the top left corner of a rectangle, sewn across and opened over the corner. */
export function flippedCorner([wide, high]: Spot, side: number): Layer[] {
  const base: Spot[] = [
    [0, 0],
    [wide, 0],
    [wide, high],
    [0, high],
  ]
  const across = rising([side, 0])
  return [{ cloth: 'base', corners: base, up: [0, -1], faceUp: true }, mirrored(across, squareOf('corner', side, [0, 0], 0, false))]
}

/** A convex patch one allowance larger all round, as far as the unit's own outline one allowance larger holds it. */
export function withAllowances(patch: readonly Spot[], outline: readonly Spot[], seam: number): Spot[] {
  const far = 1e4
  const everywhere: Spot[] = [
    [-far, -far],
    [far, -far],
    [far, far],
    [-far, far],
  ]
  return [...sidesOf(patch), ...sidesOf(outline)].reduce<Spot[]>((rest, side) => clipped(rest, offset(side, -seam)), everywhere)
}

/** Sides of a clockwise polygon, their normals inward. */
export function sidesOf(corners: readonly Spot[]): Line[] {
  return corners.map(([x, y], index) => {
    const [nextX, nextY] = corners[(index + 1) % corners.length] as Spot
    const long = Math.hypot(nextX - x, nextY - y)
    const n: Spot = [(y - nextY) / long, (nextX - x) / long]
    return { n, at: dot(n, [x, y]) }
  })
}

const clockwise = (corners: readonly Spot[]): readonly Spot[] => {
  const area = corners.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = corners[(index + 1) % corners.length] as Spot
    return sum + x * nextY - nextX * y
  }, 0)
  return area < 0 ? [...corners].reverse() : corners
}

/** Whether a layer of the named fabric, right side up, reaches everywhere. */
export function covers(layers: readonly Layer[], cloth: string, shape: readonly Spot[]): boolean {
  return layers.some(
    (layer) =>
      layer.cloth === cloth &&
      layer.faceUp &&
      sidesOf(clockwise(layer.corners)).every(({ n, at }) => shape.every((spot) => dot(n, spot) >= at - 1e-7)),
  )
}

/** What is seen clockwise from the top of the two hourglasses of a triangle a|b, and one of c|d turned over onto it. */
export function crossedTriangles(side: number, seam: number): string[] {
  const named = (layers: readonly Layer[], names: Readonly<Record<string, string>>): Layer[] =>
    layers.map((layer) => ({ ...layer, cloth: names[layer.cloth] as string }))
  const [first] = twoTriangles(side, seam, 0, 0)
  const [, second] = twoTriangles(side, seam, 0, 0)
  const lost = seam / ROOT
  const diagonal = falling([0, 0])
  // c comes to lie below, opposite a.
  const over = moved(named(second, { a: 'c', b: 'd' }), -lost, -lost).map((layer) => mirrored(diagonal, layer))
  const [left, right] = sewnBothSides(first, over, diagonal, seam)
  const middle = (side - lost) / 2
  return [right, left].map((layers, place) => {
    const by = place === 0 ? lost / 2 : -lost / 2
    const [x, y] = [middle + by, middle - by]
    const near = side / 8
    const spots: Spot[] = [
      [x, y - near],
      [x + near, y],
      [x, y + near],
      [x - near, y],
    ]
    return spots.map((spot) => seenAt(layers, spot)).join('')
  })
}

/** The finished patch there: the layer that holds it with most to spare, for allowances lie under their neighbours. */
function seenAt(layers: readonly Layer[], spot: Spot): string {
  const spare = ({ corners }: Layer): number => Math.min(...sidesOf(clockwise(corners)).map(({ n, at }) => dot(n, spot) - at))
  return [...layers].filter(({ faceUp }) => faceUp).sort((one, other) => spare(other) - spare(one))[0]?.cloth ?? ''
}
