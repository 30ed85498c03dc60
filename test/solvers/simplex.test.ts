/** The simplex method against an integer-free judge: every choice of as many columns as there are rows, solved by elimination. */
import { describe, expect, it } from 'vitest'
import { Simplex, type SparseColumn, surplusOf } from '../../geometry/solvers/simplex.ts'
import { sequence } from '../help.ts'

interface Program {
  readonly columns: readonly (SparseColumn & { readonly cost: number })[]
  readonly wants: readonly number[]
}

/** A program whose first columns give to one row each, so that it can be begun. */
function programAt(seed: number, rows: number, more: number): Program {
  const next = sequence(seed)
  const whole = (most: number): number => 1 + Math.floor(next() * most)
  const alone = Array.from({ length: rows }, (_, row) => ({ rows: [row], gives: [whole(3)], cost: whole(9) }))
  const others = Array.from({ length: more }, () => {
    const own = Array.from({ length: rows }, (_, row) => row).filter(() => next() < 0.6)
    return { rows: own, gives: own.map(() => whole(4)), cost: whole(9) }
  })
  // Each want a little different, as the solver asks: no ties.
  return { columns: [...alone, ...others], wants: Array.from({ length: rows }, (_, row) => whole(9) + row * 1e-4) }
}

function begun({ columns, wants }: Program): Simplex {
  const simplex = new Simplex(wants.length, { least: 1e-9, tie: 0 })
  wants.forEach((want, row) => {
    const { gives, cost } = columns[row] as Program['columns'][number]
    simplex.start(row, row, gives[0] as number, cost, want)
  })
  return simplex
}

/** Brings in whatever is worth most beyond its cost, until nothing is. */
function solved(program: Program, simplex = begun(program)): Simplex {
  for (let step = 0; step < 1000; step++) {
    const offers = [
      ...program.columns.map((column, place) => ({ place, gain: simplex.worthOf(column) - column.cost })),
      ...[...simplex.prices].map((price, row) => ({ place: surplusOf(row), gain: -price })),
    ].sort((a, b) => b.gain - a.gain)
    const [best] = offers
    if (best === undefined || best.gain <= 1e-9) return simplex
    const column =
      best.place < 0 ? simplex.surplusInUse(surplusOf(best.place)) : simplex.inUse(program.columns[best.place] as Program['columns'][number])
    expect(simplex.enter(best.place, column, best.gain)).not.toBeNull()
  }
  throw new Error('it does not end')
}

const costOf = ({ columns }: Program, simplex: Simplex): number =>
  [...simplex.basis].reduce((sum, place, at) => sum + (place < 0 ? 0 : (columns[place]?.cost ?? 0)) * (simplex.amounts[at] as number), 0)

/** The least cost over every basis: Gauss's elimination, then a look whether all amounts are above nothing. */
function leastOf({ columns, wants }: Program): number {
  const rows = wants.length
  const dense = [
    ...columns.map(({ rows: own, gives, cost }) => ({
      cost,
      of: wants.map((_, row) => ([...(own as number[])].includes(row) ? (gives[[...(own as number[])].indexOf(row)] as number) : 0)),
    })),
    ...wants.map((_, row) => ({ cost: 0, of: wants.map((__, other) => (other === row ? -1 : 0)) })),
  ]
  let least = Number.POSITIVE_INFINITY
  const choose = (chosen: number[], from: number): void => {
    if (chosen.length === rows) {
      const amounts = eliminated(
        chosen.map((place) => (dense[place] as (typeof dense)[number]).of),
        wants,
      )
      if (amounts?.every((amount) => amount >= -1e-9))
        least = Math.min(
          least,
          amounts.reduce((sum, amount, at) => sum + amount * (dense[chosen[at] as number]?.cost ?? 0), 0),
        )
      return
    }
    for (let place = from; place < dense.length; place++) choose([...chosen, place], place + 1)
  }
  choose([], 0)
  return least
}

function eliminated(columns: readonly (readonly number[])[], wants: readonly number[]): number[] | null {
  const size = wants.length
  const table = wants.map((want, row) => [...columns.map((column) => column[row] as number), want])
  for (let at = 0; at < size; at++) {
    const best = table.slice(at).reduce((a, b) => (Math.abs(b[at] as number) > Math.abs(a[at] as number) ? b : a))
    if (Math.abs(best[at] as number) < 1e-9) return null
    const from = table.indexOf(best)
    ;[table[at], table[from]] = [table[from] as number[], table[at] as number[]]
    for (const [row, line] of table.entries()) {
      if (row === at) continue
      const share = (line[at] as number) / (table[at]?.[at] as number)
      line.forEach((_, place) => {
        line[place] = (line[place] as number) - share * (table[at]?.[place] as number)
      })
    }
  }
  return table.map((line, row) => (line[size] as number) / (line[row] as number))
}

describe('the simplex method', () => {
  it.each(Array.from({ length: 40 }, (_, seed) => seed + 1))(
    'costs as little as the best of all bases, and its prices say the same (program %i)',
    (seed) => {
      const program = programAt(seed, 2 + (seed % 3), 4)
      const simplex = solved(program)
      const least = leastOf(program)
      expect(costOf(program, simplex)).toBeCloseTo(least, 8)
      expect(program.wants.reduce((sum, want, row) => sum + want * (simplex.prices[row] as number), 0)).toBeCloseTo(least, 8)
      for (const column of program.columns) expect(simplex.worthOf(column)).toBeLessThanOrEqual(column.cost + 1e-9)
      for (const amount of simplex.amounts) expect(amount).toBeGreaterThanOrEqual(0)
    },
  )

  it.each(Array.from({ length: 20 }, (_, seed) => seed + 1))('goes on with one row more by its dual, and is again the least (program %i)', (seed) => {
    const full = programAt(1000 + seed, 3, 5)
    // The third row comes later: what columns give to it is left out at first.
    const first: Program = {
      columns: full.columns
        .filter(({ rows }, place) => place !== 2 && rows.length > 0)
        .map((column) => {
          const kept = Array.from(column.rows).flatMap((row, at) => (row < 2 ? [[row, column.gives[at] as number] as const] : []))
          return { rows: kept.map(([row]) => row), gives: kept.map(([, gives]) => gives), cost: column.cost }
        }),
      wants: full.wants.slice(0, 2),
    }
    const whole: Program = { columns: full.columns.filter(({ rows }, place) => place !== 2 && rows.length > 0), wants: full.wants }
    const gives = (place: number, row: number): number => {
      const column = whole.columns[place]
      const at = column === undefined ? -1 : Array.from(column.rows).indexOf(row)
      return at < 0 ? 0 : (column?.gives[at] as number)
    }
    if (!whole.columns.some((_, place) => gives(place, 2) > 0)) return
    const simplex = solved(first).withRows(Float64Array.from(whole.wants), gives)
    for (let step = 0; step < 100; step++) {
      const out = simplex.dualLeaving()
      if (out < 0) break
      const given = simplex.rowOfInverse(out)
      const offers = [
        ...whole.columns.map((column, place) => ({
          place,
          rate: Array.from(column.rows).reduce((sum, row, at) => sum + (given[row] as number) * (column.gives[at] as number), 0),
          cost: column.cost - simplex.worthOf(column),
        })),
        ...[...simplex.prices].map((price, row) => ({ place: surplusOf(row), rate: -(given[row] as number), cost: price })),
      ].filter(({ rate }) => rate < -1e-9)
      const best = offers.reduce((a, b) => (b.cost / -b.rate < a.cost / -a.rate ? b : a))
      const column =
        best.place < 0 ? simplex.surplusInUse(surplusOf(best.place)) : simplex.inUse(whole.columns[best.place] as Program['columns'][number])
      simplex.exchange(best.place, column, -best.cost, out)
    }
    expect(simplex.dualLeaving()).toBe(-1)
    expect(costOf(whole, simplex)).toBeCloseTo(leastOf(whole), 8)
  })

  it('of tied rows lets the one make way that gets most of what comes in', () => {
    const simplex = new Simplex(2, { least: 1e-9, tie: 1e-6 })
    simplex.start(0, 0, 1, 1, 2)
    simplex.start(1, 1, 1, 1, 4)
    const column = { rows: [0, 1], gives: [1, 2] }
    expect(simplex.enter(2, simplex.inUse(column), simplex.worthOf(column) - 1)).toBe(1)
    expect([...simplex.basis]).toEqual([0, 2])
    expect([...simplex.amounts]).toEqual([0, 2])
  })

  it('says so where nothing would make way', () => {
    const simplex = new Simplex(1, { least: 1e-9, tie: 0 })
    simplex.start(0, 0, 1, 1, 1)
    expect(simplex.enter(1, simplex.inUse({ rows: [], gives: [] }), 1)).toBeNull()
  })
})
