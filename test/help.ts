/** Blocks for tests, short to write; every fabric is invented. */
import type { Block, Unit } from '../geometry/values/block.ts'

export const FABRICS = [
  { id: 'a', name: 'Oat', colour: '#efe6d2' },
  { id: 'b', name: 'Fern', colour: '#4f7a4a' },
  { id: 'c', name: 'Dusk', colour: '#3a4a6b' },
  { id: 'd', name: 'Clay', colour: '#b8643f' },
] as const

export function blockOf(columns: number, rows: number, units: readonly Unit[], more: Partial<Block> = {}): Block {
  return {
    format: 'nestwright.block',
    version: 1,
    name: 'Test',
    measure: { unit: 'in' },
    grid: { columns, rows, cell: 3 },
    fabrics: FABRICS,
    units,
    ...more,
  }
}

export const square = (id: string, at: readonly [number, number], size: readonly [number, number] = [1, 1], patch = 'a'): Unit => ({
  id,
  kind: 'square',
  at,
  size,
  fabrics: { patch },
})

/** A star whose goose tips point to the centre; wings [left, right] of the four geese from the top clockwise. */
export function star(wings: readonly (readonly [string, string])[], more: Partial<Block> = {}): Block {
  const places = [
    { at: [1, 0], size: [2, 1], turn: 2 },
    { at: [3, 1], size: [1, 2], turn: 3 },
    { at: [1, 3], size: [2, 1], turn: 0 },
    { at: [0, 1], size: [1, 2], turn: 1 },
  ] as const
  const geese = places.map(
    (place, index): Unit => ({
      id: `g${index}`,
      kind: 'goose',
      ...place,
      fabrics: { goose: 'a', leftWing: wings[index]?.[0] as string, rightWing: wings[index]?.[1] as string },
    }),
  )
  const corners = (
    [
      [0, 0],
      [3, 0],
      [3, 3],
      [0, 3],
    ] as const
  ).map((at, index) => square(`c${index}`, at))
  return blockOf(4, 4, [...geese, ...corners, square('m', [1, 1], [2, 2], 'd')], more)
}

/** The next number of a fixed sequence from 0 to 1: the same in every run. */
export function sequence(seed: number): () => number {
  let state = seed
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) | 0
    return (state >>> 0) / 2 ** 32
  }
}
