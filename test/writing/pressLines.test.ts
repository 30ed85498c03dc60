/** Pressing row by row. The nine patch is pressed toward its dark squares, so that neighbouring rows nest: common practice, no source. */
import { describe, expect, it } from 'vitest'
import { findings } from '../../geometry/report/report.ts'
import { pressSeams } from '../../geometry/edits/pressEdits.ts'
import type { Block } from '../../geometry/values/block.ts'
import { english } from '../../geometry/words/english.ts'
import { say } from '../../geometry/words/words.ts'
import { pressLines } from '../../geometry/writing/pressLines.ts'
import { eveningStar } from '../../web/document/starters/eveningStar.ts'
import { blockOf, square } from '../help.ts'
import { applyEdit, newHistory } from '../../web/document/history.ts'

const told = (block: Block) => {
  const lines = pressLines(findings(block))
  if (lines === null) return null
  return {
    lines: lines.lines.map(({ message }) => say(english, message)),
    between: say(english, lines.betweenMessage),
    why: lines.why === null ? null : say(english, lines.why),
  }
}

const ninePatch = (order: 'rows' | 'columns' | 'sections'): Block =>
  blockOf(
    3,
    3,
    [0, 1, 2].flatMap((y) => [0, 1, 2].map((x) => square(`s${x}${y}`, [x, y], [1, 1], (x + y) % 2 === 0 ? 'c' : 'a'))),
    { order },
  )

describe('pressing row by row', () => {
  it('of a star names the units that the seams are pressed toward', () => {
    const star = told({ ...eveningStar, order: 'rows' })
    expect(star?.lines).toEqual([
      expect.stringMatching(/^Row 1: toward the (goose|squares)$/),
      expect.stringMatching(/^Row 2: toward the (geese|square)$/),
      'Row 3: as row 1',
    ])
    // Opposite: where the outer rows go toward the middle unit, the middle row goes away from it.
    expect(star?.lines[0]?.endsWith('goose')).toBe(star?.lines[1]?.endsWith('geese'))
    expect(star?.why).toBe('Each row is pressed the opposite way to the next, so their seams nest where they meet.')
  })

  it('of a nine patch, where kinds tell nothing, says each way', () => {
    expect(told(ninePatch('rows'))).toEqual({
      lines: ['Row 1: seam 1 to the left, seam 2 to the right', 'Row 2: seam 1 to the right, seam 2 to the left', 'Row 3: as row 1'],
      between: expect.stringMatching(/^Between the rows: /),
      why: expect.stringContaining('nest'),
    })
  })

  it('of columns goes from the top, and of sections says nothing', () => {
    expect(told(ninePatch('columns'))?.lines).toEqual([
      'Column 1: seam 1 up, seam 2 down',
      'Column 2: seam 1 down, seam 2 up',
      'Column 3: as column 1',
    ])
    expect(told(ninePatch('sections'))).toBeNull()
    expect(told(blockOf(2, 2, []))).toBeNull()
  })

  it('follows the maker’s own choice for a whole row', () => {
    const block = ninePatch('rows')
    const report = findings(block)
    const seams = pressLines(report)?.lines[0]?.seams ?? []
    const open = applyEdit(newHistory(block), pressSeams(report, new Map(seams.map(({ join }) => [join.id, 'open'])))).block
    expect(told(open)?.lines[0]).toBe('Row 1: open')
    const right = seams.map(({ join, way }) => [join.id, way === 'right' ? join.press.toward : join.press.toward === 0 ? 1 : 0] as const)
    expect(told(applyEdit(newHistory(block), pressSeams(report, new Map(right))).block)?.lines[0]).toBe('Row 1: to the right')
  })

  it('lists pieces and seams from the left, one seam between two pieces; a row of one piece has none', () => {
    const block = blockOf(3, 2, [square('a', [0, 0]), square('b', [1, 0]), square('c', [2, 0]), square('w', [0, 1], [3, 1])], { order: 'rows' })
    const lines = pressLines(findings(block))
    expect(lines?.lines.map(({ pieces, seams }) => [pieces.length, seams.length])).toEqual([
      [3, 2],
      [1, 0],
    ])
    expect(lines?.lines[0]?.seams.map(({ middle }) => middle)).toEqual([
      [1, 0.5],
      [2, 0.5],
    ])
    expect(told(block)?.lines[1]).toBe('Row 2: one piece, nothing to press')
  })
})
