/**
 * Convex pieces of fabric in the plane: cut by a line, folded over it, counted where they lie on each other.
 *
 * In      convex polygons as flat lists x, y, x, y …, clockwise as seen (y down).
 * Out     the same.
 * Exact   no: allowances along slanting seams have irrational places, so these are doubles. Cuts closer than `NEAR` count as one cut, and slivers
 *         thinner than that are dropped; no verdict rests on them, only the layers of fabric.
 */
export type Convex = readonly number[]

/** The half plane of all (x, y) with nx·x + ny·y ≤ c; (nx, ny) has length one. */
export interface Half {
  readonly nx: number
  readonly ny: number
  readonly c: number
}

export const NEAR = 1e-7

/** The other half plane of the same line. */
export const beyond = ({ nx, ny, c }: Half): Half => ({ nx: -nx, ny: -ny, c: -c })

/** The greatest and the least distance of a polygon's corners beyond the line (negative inside). */
export function reach(poly: Convex, { nx, ny, c }: Half): { readonly least: number; readonly most: number } {
  let least = Number.POSITIVE_INFINITY
  let most = Number.NEGATIVE_INFINITY
  for (let i = 0; i < poly.length; i += 2) {
    const away = nx * (poly[i] as number) + ny * (poly[i + 1] as number) - c
    if (away < least) least = away
    if (away > most) most = away
  }
  return { least, most }
}

/** The part within the half plane; null where nothing but a sliver is left. */
export function clip(poly: Convex, half: Half): Convex | null {
  const { least, most } = reach(poly, half)
  if (most <= NEAR) return poly
  if (least >= -NEAR) return null
  const { nx, ny, c } = half
  const out: number[] = []
  let x = poly[poly.length - 2] as number
  let y = poly[poly.length - 1] as number
  let away = nx * x + ny * y - c
  for (let i = 0; i < poly.length; i += 2) {
    const nextX = poly[i] as number
    const nextY = poly[i + 1] as number
    const next = nx * nextX + ny * nextY - c
    if ((away > 0 && next < 0) || (away < 0 && next > 0)) {
      const t = away / (away - next)
      out.push(x + (nextX - x) * t, y + (nextY - y) * t)
    }
    if (next <= 0) out.push(nextX, nextY)
    x = nextX
    y = nextY
    away = next
  }
  return out.length >= 6 ? out : null
}

/** Its mirror image in the line; still clockwise. */
export function fold(poly: Convex, { nx, ny, c }: Half): Convex {
  const out: number[] = []
  for (let i = poly.length - 2; i >= 0; i -= 2) {
    const x = poly[i] as number
    const y = poly[i + 1] as number
    const twice = 2 * (nx * x + ny * y - c)
    out.push(x - twice * nx, y - twice * ny)
  }
  return out
}

/** The sides of a clockwise polygon, as the half planes that hold it. */
export function sidesOfConvex(poly: Convex): Half[] {
  const halves: Half[] = []
  for (let i = 0; i < poly.length; i += 2) {
    const [x, y] = [poly[i] as number, poly[i + 1] as number]
    const j = (i + 2) % poly.length
    const [dx, dy] = [(poly[j] as number) - x, (poly[j + 1] as number) - y]
    const length = Math.hypot(dx, dy)
    if (length <= NEAR) continue
    // Clockwise with y down: inside lies to the right of each side, so outward is to the left.
    const [nx, ny] = [dy / length, -dx / length]
    halves.push({ nx, ny, c: nx * x + ny * y })
  }
  return halves
}

export interface Counted {
  readonly poly: Convex
  readonly layers: number
}

/** How many more tests of a piece against a line or a place are allowed: a heap of slivers would take too long. */
export interface Patience {
  tests: number
}

/** About a second; the layers of ten thousand patches take a fifth of it. */
export const patient = (): Patience => ({ tests: 8_000_000 })

/** A convex place cut into convex cells, each covered by the same number of the given pieces; null where patience runs out. */
export function splitByLayers(place: Convex, pieces: readonly Convex[], patience: Patience): Counted[] | null {
  let cells: Counted[] = [{ poly: place, layers: 0 }]
  for (const piece of pieces) {
    patience.tests -= cells.length
    if (patience.tests < 0) return null
    const halves = sidesOfConvex(piece)
    const next: Counted[] = []
    for (const { poly, layers } of cells) {
      let rest: Convex | null = poly
      const off: Counted[] = []
      for (const half of halves) {
        if (rest === null) break
        const { least, most } = reach(rest, half)
        if (most <= NEAR) continue
        if (least >= -NEAR) {
          rest = null
          break
        }
        const cut = clip(rest, beyond(half))
        if (cut !== null) off.push({ poly: cut, layers })
        rest = clip(rest, half)
      }
      if (rest === null) next.push({ poly, layers })
      else {
        for (const part of off) next.push(part)
        next.push({ poly: rest, layers: layers + 1 })
      }
    }
    cells = next
  }
  return cells
}

/** A point well inside. */
export function middleOf(poly: Convex): readonly [number, number] {
  let x = 0
  let y = 0
  for (let i = 0; i < poly.length; i += 2) {
    x += poly[i] as number
    y += poly[i + 1] as number
  }
  return [(2 * x) / poly.length, (2 * y) / poly.length]
}

/** The area of a polygon in square units of its coordinates: above 0 for clockwise as seen (y down), below 0 for the other way round. It need not be convex. */
export function areaOf(poly: Convex): number {
  let twice = 0
  for (let i = 0; i < poly.length; i += 2) {
    const j = (i + 2) % poly.length
    twice += (poly[i] as number) * (poly[j + 1] as number) - (poly[j] as number) * (poly[i + 1] as number)
  }
  return twice / 2
}
