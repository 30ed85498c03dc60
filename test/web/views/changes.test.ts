/** What an edit changes, and what a fix would change: counted against the reports themselves. */
import { describe, expect, it } from 'vitest'
import { type Block, type Edit, findings, mirrorBlock, setTurn, turnBlock, turnUnits } from '../../../geometry/index.ts'
import { compareNesting } from '../../../web/views/nestingChanges.ts'
import { previewOf } from '../../../web/views/fixPreview.ts'
import { editForFix } from '../../../web/sheets/check/editForFix.ts'
import { layoutRepairs, repairEdit } from '../../../web/workers/layoutRepairs.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'
import { lantern } from '../../../web/document/starters/lantern.ts'
import { applyEdit } from '../../../web/document/history.ts'
import { blockOf, sequence, square } from '../../help.ts'
import { tiling } from '../../layouts.ts'

const made = (block: Block, edit: Edit): Block => applyEdit({ block, past: [], future: [] }, edit).block
const four = (press: Block['press']): Block =>
  blockOf(2, 2, [square('a', [0, 0]), square('b', [1, 0], [1, 1], 'b'), square('c', [0, 1], [1, 1], 'b'), square('d', [1, 1])], {
    order: 'rows',
    ...(press === undefined ? {} : { press }),
  })
const CLASHING = four([
  { at: [1, 0.5], toward: [1.5, 0.5] },
  { at: [1, 1.5], toward: [1.5, 1.5] },
])
const NESTING = four([
  { at: [1, 0.5], toward: [1.5, 0.5] },
  { at: [1, 1.5], toward: [0.5, 1.5] },
])

describe('the difference that an edit makes', () => {
  it('names the meeting that nests no longer, and the one that does', () => {
    const [nests, clashes] = [findings(NESTING), findings(CLASHING)]
    expect(compareNesting(nests, clashes)).toMatchObject({ lost: [[1, 1]], gained: [], now: { clashes: 1 }, clashes: [0, 1] })
    expect(compareNesting(clashes, nests)).toMatchObject({ lost: [], gained: [[1, 1]], clashes: [1, 0] })
  })

  it('says of a goose turned outward that two seams no longer meet at its tip', () => {
    const goose = eveningStar.units.find(({ kind }) => kind === 'goose')?.id ?? ''
    const unit = eveningStar.units.find(({ id }) => id === goose)
    const turned = made(eveningStar, setTurn(goose, (((unit?.kind === 'goose' ? (unit.turn ?? 0) : 0) + 2) % 4) as 0, false))
    const { lost, gained } = compareNesting(findings(eveningStar), findings(turned))
    const count = (block: Block): number => findings(block).meetings.filter(({ verdict }) => verdict === 'nests').length
    expect(count(eveningStar) - lost.length + gained.length).toBe(count(turned))
  })

  it.each([eveningStar, lantern, CLASHING, NESTING])('finds none in %# when the whole block is turned or mirrored', (block) => {
    for (const edit of [turnBlock(), mirrorBlock()]) {
      const { lost, gained, clashes } = compareNesting(findings(block), findings(made(block, edit)), (at) => edit.moved?.(at, block.grid) ?? at)
      expect([lost, gained, clashes[0] - clashes[1]]).toEqual([[], [], 0])
    }
  })

  it('adds up between any two layouts', () => {
    const random = sequence(13)
    for (let round = 0; round < 6; round++) {
      const [before, after] = [findings(blockOf(4, 4, tiling(random, 4, 4))), findings(blockOf(4, 4, tiling(random, 4, 4)))]
      const { lost, gained, now } = compareNesting(before, after)
      const nests = (report: typeof before): number => report.meetings.filter(({ verdict }) => verdict === 'nests').length
      expect(nests(before) - lost.length + gained.length).toBe(nests(after))
      expect(Object.values(now).reduce((sum, count) => sum + count, 0)).toBe(lost.length)
    }
  })
})

describe('a turn that repairs the layout', () => {
  it('is found wherever a goose of a star was turned a quarter, and leads back to a star that is sewn', () => {
    for (const { id, kind } of eveningStar.units) {
      if (kind !== 'goose') continue
      const wrong = made(eveningStar, turnUnits([id]))
      const report = findings(wrong)
      expect(report.joins).toEqual([])
      const repairs = layoutRepairs(wrong).flat()
      expect(repairs.map(({ unit }) => unit)).toContain(id)
      for (const repair of repairs.slice(0, 1)) expect(findings(made(wrong, repairEdit(repair))).joins.length).toBeGreaterThan(0)
    }
  })

  it('is none where no turn helps: a unit is missing', () => {
    const wrong: Block = { ...eveningStar, units: eveningStar.units.slice(1) }
    expect(layoutRepairs(wrong).flat()).toEqual([])
  })
})

describe('a fix that is tried', () => {
  it('shows what taking it makes, with fewer clashes, and leaves the block as it is', () => {
    const random = sequence(19)
    const blocks = [CLASHING, ...Array.from({ length: 10 }, () => blockOf(4, 4, tiling(random, 4, 4)))]
    let tried = 0
    for (const block of blocks) {
      const report = findings(block)
      const kept = JSON.stringify(block)
      for (const fix of report.meetings.flatMap((meeting) => meeting.fix).slice(0, 6)) {
        const edit = editForFix(fix, report)
        const preview = previewOf(block, edit)
        expect(JSON.stringify(block)).toBe(kept)
        expect(preview.report).toEqual(findings(made(block, edit)))
        expect(preview.clashes[1]).toBeLessThan(preview.clashes[0])
        expect(preview.clashes[0]).toBe(report.pressing.clashes)
        if (fix.do === 'turn') expect(preview.units).toContain(fix.what)
        if (fix.do === 'press' || fix.do === 'open') expect(preview.pressed.length).toBeGreaterThan(0)
        tried++
      }
    }
    expect(tried).toBeGreaterThan(3)
  })
})
