/** Laws of the booklet on blocks laid at random: units of every kind, made and pressed anyhow, with and without borders. */
import { describe, expect, it } from 'vitest'
import { type Block, type BookletStep, bookletOf, report, stepsText } from '../../geometry/index.ts'
import { blockOf, FABRICS, sequence } from '../help.ts'
import { oneOf, tiling } from '../layouts.ts'

const SEEDS = Array.from({ length: 24 }, (_, seed) => seed + 1)

function blockAtRandom(seed: number): Block {
  const next = sequence(seed)
  const [columns, rows] = [2 + Math.floor(next() * 3), 2 + Math.floor(next() * 3)]
  const borders =
    next() < 0.4 ? [{ finishedWidth: oneOf(next, [1, '1 1/2']), fabric: oneOf(next, FABRICS).id, ...(next() < 0.5 ? { corner: 'd' } : {}) }] : []
  return blockOf(columns, rows, tiling(next, columns, rows), {
    grid: { columns, rows, cell: oneOf(next, [2, 3, '2 1/2', '10/3']) },
    measure: { unit: oneOf(next, ['in', 'cm'] as const) },
    ...(borders.length > 0 ? { borders } : {}),
  })
}

const stepsOf = (block: Block): BookletStep[] => bookletOf(report(block), block).parts.flatMap(({ steps }) => [...steps])

describe('any block', () => {
  it.each(SEEDS)('number %i: every join, cut row and unit once, every mark in its picture', (seed) => {
    const block = blockAtRandom(seed)
    const said = report(block)
    const steps = stepsOf(block)
    // What its method cannot make has no step: the first page says so.
    const lost = new Set(said.problems.flatMap(({ code, units }) => (code === 'method' ? units : [])))
    const inside = new Set(said.patches.flatMap(({ id, unit }) => (unit !== null && lost.has(unit) ? [id] : [])))
    for (const { id, sides, stage } of said.joins) if (stage === 'unit' && sides.some((side) => inside.has(side))) inside.add(id)
    const wanted = said.joins.flatMap(({ id }) => (inside.has(id) ? [] : [id]))
    expect(steps.flatMap(({ joins }) => joins).sort()).toEqual(wanted.sort())
    expect(steps.flatMap(({ cut }) => cut).sort((a, b) => a - b)).toEqual(said.cut.map((_, place) => place))
    if (lost.size > 0) expect(bookletOf(said, block).problems[0]).toMatch(/can’t be sewn yet/)
    const units = steps.flatMap((step) => step.units)
    expect(new Set(units).size).toBe(units.length)
    for (const { drawings } of steps) {
      for (const { width, height, marks } of drawings) {
        for (const mark of marks) {
          const spots =
            mark.type === 'area' ? mark.outline : 'points' in mark ? mark.points : mark.type === 'arrow' ? [mark.from, mark.to] : [mark.at]
          for (const [x, y] of spots) expect(x >= 0 && y >= 0 && x <= width + 1e-6 && y <= height + 1e-6, `${x} ${y}`).toBe(true)
        }
      }
    }
    expect(stepsText(bookletOf(said, block))).not.toMatch(
      /undefined|NaN|\bnull\b|\[object|\b1 (squares|rectangles|patches|points|seams|pairs|strips)\b/,
    )
  })

  it.each(SEEDS.slice(0, 10))('number %i: words on every step come back to the same step, none stale', (seed) => {
    const block = blockAtRandom(seed)
    const before = stepsOf(block)
    const steps = Object.fromEntries(before.map(({ key, sentences }) => [key, { words: `Mine: ${key}`, of: sentences.join('\n') }]))
    const after = stepsOf({ ...block, booklet: { steps } })
    expect(after.map(({ key }) => key)).toEqual(before.map(({ key }) => key))
    expect(after.map(({ edited }) => edited)).toEqual(before.map(({ key }) => ({ words: `Mine: ${key}`, stale: false })))
  })

  it('is written the same however often it is asked', () => {
    const block = blockAtRandom(7)
    expect(bookletOf(report(block), block)).toEqual(bookletOf(report(block), block))
  })
})
