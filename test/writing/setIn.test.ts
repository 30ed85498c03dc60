/** Set-in seams in words: which piece is set into which, and what is done to the inner corner before. Common practice, no source. */
import { describe, expect, it } from 'vitest'
import { type Block, bookletOf, report } from '../../geometry/index.ts'
import { blockOf } from '../help.ts'
import { BLOCKS } from './blocks.ts'

const free = (id: string, patch: string, ...corners: [number, number][]): Block['units'][number] => ({
  id,
  kind: 'polygon',
  corners,
  fabrics: { patch },
})

/** A gable over a roof with a notch: the gable's point goes into the notch. */
const notch: Block = blockOf(2, 2, [free('roof', 'a', [0, 0], [2, 0], [2, 2], [1, 1], [0, 2]), free('gable', 'b', [1, 1], [2, 2], [0, 2])], {
  name: 'Notched roof',
  grid: { columns: 2, rows: 2, cell: 4 },
})

const joining = (block: Block): { title: string; words: string }[] =>
  bookletOf(report(block), block)
    .parts.filter(({ key }) => key === 'join')
    .flatMap(({ steps }) => steps.map(({ title, sentences }) => ({ title, words: sentences.join(' ') })))

describe('an inner corner', () => {
  it('takes the point of the other piece, and is clipped where it is one patch', () => {
    const [step] = joining(notch)
    const made = bookletOf(report(notch), notch)
    const letterOf = (fabric: string): string => made.templates.find(({ counts }) => counts[0]?.fabric === fabric)?.letter as string
    expect(step?.words).toContain(`Set ${letterOf('b')} into ${letterOf('a')}.`)
    expect(step?.words).toContain(`Clip the seam allowance of ${letterOf('a')} at its inner corner`)
    expect(step?.words).not.toContain('unpick any stitches')
  })

  it('of two pieces opens only where their seam stops short of the edge', () => {
    const steps = joining(BLOCKS.attic as Block)
    expect(steps[0]?.words).toContain('at the end with the dot, stop at the dot, 1/4 in before the edge, and backstitch')
    expect(steps[1]?.words).toMatch(/^Set A into section 1\./)
    expect(steps[1]?.words).toContain('The seam of section 1 that runs into the corner must end at the dot')
    expect(steps[1]?.words).not.toContain('Clip')
  })

  it('is nowhere where all seams are straight', () => {
    for (const { words } of joining(BLOCKS.star as Block)) expect(words).not.toMatch(/Clip|stop 1\/4|Set [A-Z] into/)
  })
})
