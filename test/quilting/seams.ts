/**
 * Seams for tests, and two judges of what must be stitched twice that know nothing of pairings.
 *
 * `leastOfAll` tries every choice of seams to stitch twice; `programOf` puts the question to an integer-program solver: x is 1 where a seam is
 * stitched twice, o where a route begins or ends, k is whole, and at every dot seam ends + x + o = 2k.
 */
import loadSolver from 'highs'
import type { Dot } from '../../geometry/plane/points.ts'
import type { Segment } from '../../geometry/quilting/seamGraph.ts'

export const key = (a: Dot, b: Dot): string => [a.join(), b.join()].sort().join(' ')

export const lengthOf = ([[x0, y0], [x1, y1]]: Segment): number => Math.hypot(x1 - x0, y1 - y0)

/** Stretches of a grid and its diagonals, each kept by chance; no two cross. */
export function scattered(next: () => number, columns: number, rows: number, kept: number): Segment[] {
  const all: Segment[] = []
  for (let y = 0; y <= rows; y++)
    for (let x = 0; x <= columns; x++) {
      // Columns and rows of unlike width, so that few ways are equally long.
      const at = (column: number, row: number): Dot => [column * 3 + (column % 3), row * 4 + (row % 2)]
      if (x < columns) all.push([at(x, y), at(x + 1, y)])
      if (y < rows) all.push([at(x, y), at(x, y + 1)])
      if (x < columns && y < rows) all.push(next() < 0.5 ? [at(x, y), at(x + 1, y + 1)] : [at(x + 1, y), at(x, y + 1)])
    }
  return all.filter(() => next() < kept)
}

/** The parts that hang together. */
export function partsOf(segments: readonly Segment[]): Segment[][] {
  const parts: { dots: Set<string>; segments: Segment[] }[] = []
  for (const segment of segments) {
    const dots = segment.map((dot) => dot.join())
    const touched = parts.filter((part) => dots.some((dot) => part.dots.has(dot)))
    for (const part of touched) parts.splice(parts.indexOf(part), 1)
    parts.push({
      dots: new Set([...dots, ...touched.flatMap((part) => [...part.dots])]),
      segments: [segment, ...touched.flatMap((part) => part.segments)],
    })
  }
  return parts.map((part) => part.segments)
}

/** The least length stitched twice of seams that hang together: of all routes, and of those that begin at each dot (by its text). */
export function leastOfAll(segments: readonly Segment[]): { readonly least: number; readonly from: ReadonlyMap<string, number> } {
  const names = [...new Set(segments.flat().map((dot) => dot.join()))]
  // Odd dots as the ones of a binary number; to stitch a seam once more changes its two ends.
  const bits = segments.map(([a, b]) => (1 << names.indexOf(a.join())) ^ (1 << names.indexOf(b.join())))
  const lengths = segments.map(lengthOf)
  const once = bits.reduce((odd, both) => odd ^ both, 0)
  const from = new Map<string, number>()
  // Each choice is a smaller one and one seam more.
  const [odds, sums] = [[once], [0]]
  for (let choice = 0; choice < 2 ** segments.length; choice++) {
    if (choice > 0) {
      const last = 31 - Math.clz32(choice)
      odds[choice] = (odds[choice - 2 ** last] as number) ^ (bits[last] as number)
      sums[choice] = (sums[choice - 2 ** last] as number) + (lengths[last] as number)
    }
    const [odd, length] = [odds[choice] as number, sums[choice] as number]
    const rest = odd & (odd - 1)
    if ((rest & (rest - 1)) !== 0) continue
    for (const [place, name] of names.entries())
      if (odd === 0 || (odd >> place) & 1) from.set(name, Math.min(length, from.get(name) ?? Number.POSITIVE_INFINITY))
  }
  return { least: Math.min(...from.values()), from }
}

export function programOf(parts: readonly (readonly Segment[])[]): string {
  const [costs, rows, binary, whole]: [string[], string[], string[], string[]] = [[], [], [], []]
  parts.forEach((segments, part) => {
    const around = new Map<string, number[]>()
    segments.forEach((segment, place) => {
      costs.push(`+ ${lengthOf(segment)} x${part}_${place}`)
      binary.push(`x${part}_${place}`)
      for (const dot of segment) around.set(dot.join(), [...(around.get(dot.join()) ?? []), place])
    })
    const opens = [...around.values()].map((ends, dot) => {
      const [open, half] = [`o${part}_${dot}`, `k${part}_${dot}`]
      rows.push(`${ends.map((place) => `+ x${part}_${place}`).join(' ')} + ${open} - 2 ${half} = ${-ends.length}`)
      binary.push(open)
      whole.push(half)
      return open
    })
    rows.push(`${opens.join(' + ')} <= 2`)
  })
  const lines = (some: readonly string[]): string => some.map((line) => ` ${line}\n`).join('')
  const numbered = rows.map((row, place) => `r${place}: ${row}`)
  return `Minimize\n${lines(costs)}Subject To\n${lines(numbered)}Binary\n${lines(binary)}General\n${lines(whole)}End\n`
}

const highs = await loadSolver()

export function solvedLength(program: string): number {
  const { Status, ObjectiveValue } = highs.solve(program, { output_flag: false, mip_rel_gap: 0 })
  if (Status !== 'Optimal') throw new Error(`the solver ends with: ${Status}`)
  return ObjectiveValue
}
