/** Layouts by a sequence of numbers: units of every boxed kind, of one or two cells a side. */
import type { Block, BoxUnit, Kind, Unit } from '../geometry/values/block.ts'
import { KIND_FACTS } from '../geometry/units/kinds.ts'
import { blockOf, FABRICS, square } from './help.ts'

export const oneOf = <T>(next: () => number, list: readonly T[]): T => list[Math.floor(next() * list.length)] as T

/** Units that cover the grid once. */
export function tiling(next: () => number, columns: number, rows: number): BoxUnit[] {
  const units: BoxUnit[] = []
  const taken = new Set<string>()
  for (let cell = 0; cell < columns * rows; cell++) {
    const at = [cell % columns, Math.floor(cell / columns)] as const
    if (taken.has(at.join())) continue
    const fits = SIZES.filter(([w, h]) => at[0] + w <= columns && at[1] + h <= rows && cellsOf(at, [w, h]).every((one) => !taken.has(one)))
    const size = oneOf(next, fits)
    for (const one of cellsOf(at, size)) taken.add(one)
    units.push(unitAtRandom(next, `u${units.length}`, at, size))
  }
  return units
}

export const SIZES = [
  [1, 1],
  [1, 1],
  [2, 1],
  [1, 2],
  [2, 2],
] as const

const cellsOf = ([x, y]: readonly [number, number], [w, h]: readonly [number, number]): string[] =>
  Array.from({ length: w * h }, (_, cell) => `${x + (cell % w)},${y + Math.floor(cell / w)}`)

/** A unit of any kind that may have this size, turned, made and pressed anyhow. */
export function unitAtRandom(next: () => number, id: string, at: readonly [number, number], size: readonly [number, number]): BoxUnit {
  const [w, h] = size
  const kinds: BoxUnit['kind'][] = ['square', 'strips', 'half-rectangle', 'cornered']
  if (w === h) kinds.push('hst', 'hst', 'hourglass', 'diamond')
  else kinds.push('goose', 'goose', 'goose')
  const kind = oneOf(next, kinds)
  const turn = kind === 'goose' ? oneOf(next, w > h ? ([0, 2] as const) : ([1, 3] as const)) : oneOf(next, [0, 1, 2, 3] as const)
  const names = namesOf(next, kind)
  return {
    id,
    kind,
    at,
    size,
    turn,
    fabrics: Object.fromEntries(names.map((name) => [name, oneOf(next, FABRICS).id])),
    method: oneOf(next, KIND_FACTS[kind].methods),
    ...(next() < 0.3 ? { mirror: true } : {}),
    ...(next() < 0.15 ? { pressFree: true } : {}),
    ...(next() < 0.05 ? { open: true } : {}),
    ...(kind === 'cornered' ? { corner: oneOf(next, ['1/3', 0.5]) } : {}),
  }
}

function namesOf(next: () => number, kind: Kind): readonly string[] {
  if (kind === 'strips') return Array.from({ length: 2 + Math.floor(next() * 2) }, (_, index) => `strip${index + 1}`)
  if (kind !== 'cornered') return KIND_FACTS[kind].names
  return KIND_FACTS.cornered.names.filter((name) => name === 'centre' || next() < 0.5)
}

/** A block of squares and of two bars each, some pressed open, with or without a border. */
export function squaresAndBars(next: () => number): Block {
  const pick = (n: number): number => Math.floor(next() * n)
  const fabric = (): string => 'abcd'[pick(4)] as string
  const [columns, rows] = [1 + pick(4), 1 + pick(4)]
  const units = Array.from({ length: columns * rows }, (_, index): Unit => {
    const at = [index % columns, Math.floor(index / columns)] as const
    if (pick(3) > 0) return square(`s${index}`, at, [1, 1], fabric())
    const fabrics = { strip1: fabric(), strip2: fabric() }
    return { id: `s${index}`, kind: 'strips', at, size: [1, 1], turn: pick(2) as 0 | 1, fabrics, open: pick(5) === 0 }
  })
  const borders = pick(2) === 0 ? [] : [{ finishedWidth: 1, fabric: 'a' }]
  return blockOf(columns, rows, units, { borders, order: oneOf(next, ['rows', 'columns', 'sections'] as const) })
}
