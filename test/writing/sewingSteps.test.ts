/** The sewing, step by step: each seam once, in an order that can be sewn, units as their method makes them. */
import { describe, expect, it } from 'vitest'
import { type Block, type SewingStep, sewingSteps, bookletOf, report } from '../../geometry/index.ts'
import { germanMessages } from '../../geometry/words/german.ts'
import { say } from '../../geometry/words/words.ts'
import { blockOf, sequence, star } from '../help.ts'
import { tiling } from '../layouts.ts'
import { BLOCKS } from './blocks.ts'

/** Lists what is wrong with some steps: a seam that is left out or sewn twice, or one whose sides are not made before. */
function faultsOf(block: Block, steps: readonly SewingStep[]): string[] {
  const { joins, patches, problems } = report(block)
  // A unit that its method can't make has no step.
  const lost = new Set(problems.flatMap(({ code, units }) => (code === 'method' ? units : [])))
  const made = new Set(patches.map(({ id }) => id))
  for (const { id, stage, sides } of joins)
    if (stage === 'unit' && lost.has(patches.find((patch) => sides.includes(patch.id))?.unit ?? '')) made.add(id)
  for (const { id, stage, sides } of joins)
    if (stage === 'unit' && lost.size > 0 && sides.every((side) => made.has(side) && side.startsWith('j'))) made.add(id)
  const byId = new Map(joins.map((join) => [join.id, join]))
  const faults: string[] = []
  for (const id of steps.flatMap((step) => step.joins)) {
    if (made.has(id)) faults.push(`${id} is sewn twice`)
    for (const side of byId.get(id)?.sides ?? []) if (!made.has(side)) faults.push(`${id} is sewn before ${side}`)
    made.add(id)
  }
  for (const { id } of joins) if (!made.has(id)) faults.push(`${id} is never sewn`)
  return faults
}

const stepsOf = (block: Block): SewingStep[] => sewingSteps(report(block), block)
const titlesOf = (block: Block): string[] => stepsOf(block).map(({ title }) => title)

const plain = ['b', 'b'] as const
const EVENING = star([plain, plain, plain, plain], { order: 'rows' })
const withMethod = (method: 'geese-4' | 'corner-flip' | 'plain'): Block => ({
  ...EVENING,
  units: EVENING.units.map((unit) => (unit.kind === 'goose' ? { ...unit, method } : unit)),
})

describe('every block', () => {
  it.each(Object.entries(BLOCKS))('%s is sewn seam by seam, each once, both sides made before', (_, block) => {
    expect(faultsOf(block, stepsOf(block))).toEqual([])
  })

  it.each(Array.from({ length: 40 }, (_, seed) => seed))('laid at random, number %i, too', (seed) => {
    const next = sequence(seed)
    const [columns, rows] = [2 + Math.floor(next() * 4), 2 + Math.floor(next() * 4)]
    const borders = seed % 3 === 0 ? { borders: [{ finishedWidth: 1, fabric: 'd', ...(seed % 2 === 0 ? { corner: 'a' } : {}) }] } : {}
    const block = blockOf(columns, rows, tiling(next, columns, rows), {
      ...borders,
      order: (['auto', 'rows', 'columns', 'sections'] as const)[seed % 4] as 'auto',
    })
    expect(faultsOf(block, stepsOf(block))).toEqual([])
  })
})

describe('the steps of a star', () => {
  it('make the geese, then join rows: common practice, no source', () => {
    expect(titlesOf(withMethod('geese-4'))).toEqual([
      'Make 4 geese: A',
      'Lay out the block',
      'Sew rows 1 and 3: make 2',
      'Sew row 2',
      'Join the rows',
    ])
  })

  it('are the same on the screen as on paper', () => {
    const block = withMethod('geese-4')
    const onPaper = bookletOf(report(block), block).parts.flatMap(({ key, steps }) =>
      ['units', 'lay out', 'join', 'borders'].includes(key) ? steps : [],
    )
    expect(stepsOf(block)).toEqual(onPaper)
  })

  it('have a title in German', () => {
    expect(stepsOf(withMethod('geese-4')).map(({ heading }) => say(germanMessages, heading))).toEqual([
      'Mach 4 Gänse: A',
      'Leg den Block aus',
      'Näh Reihen 1 und 3: 2 gleiche',
      'Näh Reihe 2',
      'Näh die Reihen zusammen',
    ])
  })

  it('never name a single triangle of geese that are made four at a time', () => {
    for (const [name, block] of Object.entries({ ...BLOCKS, evening: withMethod('geese-4') })) {
      const made = stepsOf(block).filter(({ units }) => units.some((id) => block.units.find((unit) => unit.id === id)?.method === 'geese-4'))
      for (const { sentences, title } of made) expect([title, ...sentences].join(' '), name).not.toMatch(/\btriangle\b|\bwing to\b|\bto the goose\b/i)
    }
    expect(stepsOf(withMethod('plain'))[0]?.sentences.join(' ')).toMatch(/wing/)
  })
})
