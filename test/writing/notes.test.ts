/** What is said before the steps: on paper nothing is pointed at, and what lies ready is named. */
import { describe, expect, it } from 'vitest'
import { type Block, bookletOf, report } from '../../geometry/index.ts'
import { BLOCKS } from './blocks.ts'

describe('before the steps', () => {
  const made = bookletOf(report(BLOCKS.attic as Block), BLOCKS.attic as Block)

  it('nothing is pointed at that paper cannot point at', () => {
    expect(made.problems.join(' ')).not.toMatch(/\b[Tt]h(is seam|ese free patches)\b/)
    expect(made.problems[0]).toBe('1 seam is set in at a corner. Sew slowly, and mark the corners as its step says.')
    expect(made.problems.join(' ')).toMatch(/Templates [A-Z] and [A-Z] each have an edge on the outside/)
  })

  it('units go by their letters, not by the ids of the file', () => {
    const star = BLOCKS.star as Block
    const block: Block = { ...star, fabrics: star.fabrics.map((fabric) => ({ ...fabric, direction: 'one-way' as const })) }
    const said = report(block)
    const prints = said.advice.filter(({ code }) => code === 'print')
    expect(prints.length).toBeGreaterThan(0)
    const { problems } = bookletOf(said, block)
    const ids = new Set(prints.flatMap(({ units }) => units))
    expect(problems.some((line) => /^[A-Z]\d?( and [A-Z]\d?)?: The print of/.test(line))).toBe(true)
    for (const id of ids) expect(problems.join(' ').split(/[ ,.()]+/)).not.toContain(id)
  })

  it('what else is needed: layers 2 in larger all round [S145], binding, tools, and paper scissors for templates', () => {
    expect(made.needs[0]).toContain('backing and batting 13 1/2 × 13 1/2 in each')
    expect(made.needs[1]).toContain('paper scissors')
  })
})
