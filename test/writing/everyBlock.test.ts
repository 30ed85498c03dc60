/** Every traditional block there is a drawing of, written up: nothing forgotten, nothing said twice, nothing only a program would say. */
import { describe, expect, it } from 'vitest'
import { type Block, type BookletStep, bookletOf, report, stepsText } from '../../geometry/index.ts'
import * as draw from '../published/blocks.ts'

const BLOCKS = Object.entries(draw).flatMap(([name, make]) => (make.length === 0 ? [[name, (make as () => Block)()] as const] : []))

describe.each(BLOCKS)('%s', (_, block) => {
  const said = report(block)
  const made = bookletOf(said, block)
  const steps: BookletStep[] = made.parts.flatMap(({ steps: all }) => [...all])

  it('is sewn join by join, each once, each piece before it is used', () => {
    const order = new Map(steps.flatMap(({ joins }, place) => joins.map((join) => [join, place] as const)))
    expect(steps.flatMap(({ joins }) => joins)).toHaveLength(said.joins.length)
    expect(order.size).toBe(said.joins.length)
    for (const { id, sides } of said.joins) for (const side of sides) expect(order.get(side) ?? -1).toBeLessThanOrEqual(order.get(id) as number)
  })

  it('is cut row by row, each once, and every unit is made or laid as it was cut', () => {
    expect(steps.flatMap(({ cut }) => cut).sort((a, b) => a - b)).toEqual(said.cut.map((_row, place) => place))
    const sewn = new Set(steps.flatMap(({ units }) => units))
    const seamed = new Set(said.joins.filter(({ stage }) => stage === 'unit').flatMap(({ sides }) => sides))
    for (const { id, unit } of said.patches) if (unit !== null && seamed.has(id)) expect(sewn, unit).toContain(unit)
  })

  it('says on its cover what the last step of joining joins', () => {
    const last = made.parts.find(({ key }) => key === 'join')?.steps.at(-1)?.title
    const sewn = made.facts.find(({ what }) => what === 'Sewn in')?.said
    if (last === undefined) expect(sewn).toBeUndefined()
    else expect(last).toContain(sewn)
  })

  it('reads like a maker', () => {
    const text = stepsText(made)
    expect(text).not.toMatch(/undefined|NaN|null|\bj:\d|\bp:\d|\[object|\s{2,}\S*\s{2,}\S.*\n\S*\d\.\d{4}/)
    expect(text).not.toMatch(/\b1 (squares|rectangles|patches|points|seams|pairs|strips|units|pieces|geese|triangles)\b/)
    expect(text.split('\n').every((line) => line.length <= 110)).toBe(true)
    expect(new Set(steps.map(({ key }) => key)).size).toBe(steps.length)
  })
})
