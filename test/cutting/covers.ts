/**
 * The fewest batches by two judges that know nothing of bounds and balance: a table of all small demands, and an integer program.
 *
 * In      how often each step from right wing to left wing is wanted, `from · fabrics + to`.
 * Out     the least number of closed walks of four steps that take them all.
 * Source  one batch is a closed walk of four steps through the wing fabrics: common practice, no source.
 */
import loadSolver from 'highs'
import type { Wings } from '../../geometry/cutting/batches/geeseBatches.ts'

const highs = await loadSolver()

/** The steps of every batch, one for each way to begin. */
export function allWalks(fabrics: number): number[][] {
  const all = Array.from({ length: fabrics }, (_, one) => one)
  const walks = all.flatMap((a) => all.flatMap((b) => all.flatMap((c) => all.map((d) => [a, b, c, d] as const))))
  return walks.map(([a, b, c, d]) => [a * fabrics + b, b * fabrics + c, c * fabrics + d, d * fabrics + a])
}

/** The least number for every demand of at most `most` geese of each pair of wings; the first pair counts ones, the next `most + 1`s, … */
export function tableOf(fabrics: number, most: number): { readonly least: Uint8Array; readonly demandAt: (index: number) => Int32Array } {
  const pairs = fabrics * fabrics
  const base = most + 1
  const walks = new Map(allWalks(fabrics).map((steps) => [[...steps].sort().join(), steps]))
  const least = new Uint8Array(base ** pairs)
  const demandAt = (index: number): Int32Array => Int32Array.from({ length: pairs }, (_, step) => Math.floor(index / base ** step) % base)
  for (let index = 1; index < least.length; index++) {
    let best = 255
    for (const steps of walks.values()) {
      const left = demandAt(index)
      let rest = index
      for (const step of steps) {
        if (left[step] === 0) continue
        left[step] = (left[step] as number) - 1
        rest -= base ** step
      }
      if (rest < index) best = Math.min(best, (least[rest] as number) + 1)
    }
    least[index] = best
  }
  return { least, demandAt }
}

/** The integer program in LP text: how often each batch is made. */
export function programOf(fabrics: number, demand: Int32Array): string {
  const walks = [...new Map(allWalks(fabrics).map((steps) => [[...steps].sort((one, other) => one - other).join(), steps])).values()]
  const rows = new Map<number, string[]>()
  walks.forEach((steps, walk) => {
    for (const step of new Set(steps)) {
      if (demand[step] === 0) continue
      const times = Math.min(steps.filter((one) => one === step).length, demand[step] as number)
      rows.set(step, [...(rows.get(step) ?? []), `+ ${times} w${walk}`])
    }
  })
  const names = walks.map((_, walk) => `w${walk}`)
  return [
    `Minimize\n ${names.map((name) => `+ ${name}`).join(' ')}\nSubject To\n`,
    ...[...rows].map(([step, terms]) => ` s${step}: ${terms.join(' ')} >= ${demand[step]}\n`),
    `General\n ${names.join(' ')}\nEnd\n`,
  ].join('')
}

/** The solver's result within a number of seconds, and whether it is proved to be the least. */
export function solvedCover(program: string, seconds = Number.POSITIVE_INFINITY): { readonly number: number; readonly proved: boolean } {
  // Batches are whole: with less than one between the best found and the best possible, the best is found.
  const limit = Number.isFinite(seconds) ? { time_limit: seconds } : {}
  const { Status, ObjectiveValue } = highs.solve(program, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0.5, ...limit })
  return { number: Math.round(ObjectiveValue), proved: Status === 'Optimal' }
}

/** Geese [left, right] for a demand, their fabrics by letter. */
export function geeseOf(fabrics: number, demand: Int32Array): Wings[] {
  const name = (one: number): string => String.fromCharCode(97 + one)
  return [...demand].flatMap((count, step) => Array.from({ length: count }, (): Wings => [name(step % fabrics), name(Math.floor(step / fabrics))]))
}

export type Colouring = (next: () => number, fabrics: number) => readonly [number, number]

const upTo = (next: () => number, many: number): number => Math.floor(next() * many)

/** Ways to colour geese, [right, left]: each makes another part of the question hard. */
export const COLOURINGS: Readonly<Record<string, Colouring>> = {
  'any wings': (next, fabrics) => [upTo(next, fabrics), upTo(next, fabrics)],
  'wings mostly alike': (next, fabrics) => {
    const one = upTo(next, fabrics)
    return [one, next() < 0.85 ? one : upTo(next, fabrics)]
  },
  'each two fabrics one way round': (next, fabrics) => {
    const [one, other] = [upTo(next, fabrics), upTo(next, fabrics)]
    const [low, high] = [Math.min(one, other), Math.max(one, other)]
    return (one + other) % 2 === 1 ? [low, high] : [high, low]
  },
  'a few fabrics much more': (next, fabrics) => [Math.floor(next() ** 3 * fabrics), Math.floor(next() ** 2 * fabrics)],
  'each fabric beside the next': (next, fabrics) => {
    const one = upTo(next, fabrics)
    return [one, (one + (next() < 0.5 ? 1 : 3)) % fabrics]
  },
  'fabrics by twos': (next, fabrics) => {
    const one = upTo(next, fabrics)
    const other = Math.min(fabrics - 1, one - (one % 2) + upTo(next, 2))
    // Uneven, so that hardly any fabric is left as often as it is entered.
    return next() < 0.7 ? [one, other] : [Math.min(one, other), Math.max(one, other)]
  },
}

export function demandOfColouring(colouring: Colouring, next: () => number, fabrics: number, geese: number): Int32Array {
  const demand = new Int32Array(fabrics * fabrics)
  for (let goose = 0; goose < geese; goose++) {
    const [right, left] = colouring(next, fabrics)
    const step = right * fabrics + left
    demand[step] = (demand[step] as number) + 1
  }
  return demand
}
