/** Pressing a seam the maker's way. What a request must name, and what it does, is the contract's: `press`, `at`, `toward`. */
import { describe, expect, it } from 'vitest'
import { forgetPress, type PressChoice, pressSeams } from '../../geometry/edits/pressEdits.ts'
import { setPressedOpen } from '../../geometry/edits/unitEdits.ts'
import { findings } from '../../geometry/report/report.ts'
import { message } from '../../geometry/values/messages.ts'
import type { Block, Unit } from '../../geometry/values/block.ts'
import type { Findings, Join } from '../../geometry/values/report.ts'
import { undoStep, applyEdit, newHistory } from '../../web/document/history.ts'
import { eveningStar } from '../../web/document/starters/eveningStar.ts'
import { lantern } from '../../web/document/starters/lantern.ts'
import { blockOf, square } from '../help.ts'
import { checkEdit } from './editLaws.ts'

/** Two slanting quadrilaterals and a notched patch around a square: seams that are not square to the grid, and a patch that is not convex. */
const slanting = blockOf(3, 3, [
  {
    id: 'notched',
    kind: 'polygon',
    corners: [
      [0, 0],
      [3, 0],
      [2, 1],
      ['4/3', 1],
      [0, 3],
    ],
    fabrics: { patch: 'b' },
  },
  {
    id: 'right',
    kind: 'polygon',
    corners: [
      [3, 0],
      [3, 3],
      [2, 1],
    ],
    fabrics: { patch: 'c' },
  },
  {
    id: 'low',
    kind: 'polygon',
    corners: [
      [0, 3],
      ['4/3', 1],
      [2, 1],
      [3, 3],
    ],
    fabrics: { patch: 'd' },
  },
])

const thirds = blockOf(
  2,
  1,
  [square('a', [0, 0], [1, 1]), { id: 'b', kind: 'half-rectangle', at: [1, 0], size: [1, 1], fabrics: { upper: 'b', lower: 'c' } }],
  {
    borders: [{ finishedWidth: '1/3', fabric: 'd', corner: 'a' }],
  },
)

const BLOCKS: readonly (readonly [string, Block])[] = [
  ['star', { ...eveningStar, order: 'rows' }],
  ['lantern', { ...lantern, order: 'rows' }],
  ['slanting patches', slanting],
  ['borders with corner squares', thirds],
]

const pressOf = (report: Findings, id: string): Join['press'] => (report.joins.find((join) => join.id === id) as Join).press
const one = (id: string, choice: PressChoice): ReadonlyMap<string, PressChoice> => new Map([[id, choice]])
const plain = ({ joins }: Findings) => joins.map(({ press: _, ...join }) => join)

describe.each(BLOCKS)('every seam of %s', (_, block) => {
  const report = findings(block)

  it('is sewn at all', () => {
    expect(report.joins.length).toBeGreaterThan(1)
  })

  it.each([0, 1, 'open'] as const)('is pressed as asked (%s), with no word passed over, and its neighbours’ joins stay', (choice) => {
    for (const { id } of report.joins) {
      const after = findings(checkEdit(block, pressSeams(report, one(id, choice))))
      expect(pressOf(after, id)).toMatchObject({ toward: choice, rule: 'asked' })
      expect(after.problems.filter(({ code }) => code === 'press')).toEqual([])
      expect(plain(after)).toEqual(plain(report))
    }
  })

  it('is asked for once, however often it is turned, and free again it leaves no trace', () => {
    for (const { id } of report.joins) {
      let turned = block
      for (const choice of [0, 1, 'open', 0] as const) {
        turned = checkEdit(turned, pressSeams(findings(turned), one(id, choice)))
        expect(turned.press).toHaveLength(1)
      }
      expect(checkEdit(turned, pressSeams(findings(turned), one(id, 'proposed')))).toEqual(block)
    }
  })

  it('can all be asked for at once', () => {
    const choices = new Map(report.joins.map(({ id }, index) => [id, ([0, 1, 'open'] as const)[index % 3] as PressChoice]))
    const after = findings(checkEdit(block, pressSeams(report, choices)))
    expect(after.joins.map(({ press }) => press.toward)).toEqual([...choices.values()])
    expect(after.problems.filter(({ code }) => code === 'press')).toEqual([])
  })
})

describe('pressing', () => {
  // The contract asks for a point on the seam; half of a stretch is the point that the fewest later edits take off it.
  it.each([
    [
      'the middle of a seam on which no other ends, though others end beside it',
      [square('l', [0, 0], [1, 2]), square('m', [1, 0], [1, 2]), square('t', [2, 0]), square('b', [2, 1])],
      [1, 1],
    ],
    [
      'the middle of its first stretch, where another seam ends on it',
      [square('l', [0, 0], [1, 2]), square('t', [1, 0], [2, 1]), square('b', [1, 1], [2, 1])],
      [1, 0.5],
    ],
  ] as const)('is asked for at %s', (_, units, at) => {
    const block = blockOf(3, 2, units, { order: 'columns' })
    const report = findings(block)
    const seam = report.joins.find(({ from, to }) => from[0] === 1 && to[0] === 1) as Join
    expect(checkEdit(block, pressSeams(report, one(seam.id, 0))).press?.map((word) => word.at)).toEqual([at])
  })

  const report = findings(eveningStar)
  const id = (report.joins.at(-1) as Join).id

  it('is one step to undo, under a plain name', () => {
    for (const [choice, name] of [
      [0, message('press-seam')],
      ['open', message('press-seam-open')],
      ['proposed', message('press-as-proposed', { seams: 1 })],
    ] as const) {
      const asked = choice === 'proposed' ? checkEdit(eveningStar, pressSeams(report, one(id, 0))) : eveningStar
      const history = applyEdit(newHistory(asked), pressSeams(findings(asked), one(id, choice)))
      expect(history.past.map((step) => step.name)).toEqual([name])
      expect(undoStep(history).block).toEqual(asked)
    }
  })

  it('leaves the block and its history as they are where nothing changes', () => {
    const history = newHistory(eveningStar)
    expect(applyEdit(history, pressSeams(report, one(id, 'proposed')))).toBe(history)
    expect(applyEdit(history, pressSeams(report, one('j:99', 0)))).toBe(history)
  })

  it('frees one seam of a unit that is pressed open, and the unit’s other seams stay open', () => {
    const unit = (eveningStar.units.find(({ kind }) => kind === 'goose') as Unit).id
    const open = checkEdit(eveningStar, setPressedOpen([unit], true))
    const before = findings(open)
    const [first, second] = before.joins.filter(({ press }) => press.toward === 'open') as [Join, Join]
    const after = findings(checkEdit(open, pressSeams(before, one(first.id, 'proposed'))))
    expect(pressOf(after, first.id)).toEqual(pressOf(report, first.id))
    expect(pressOf(after, second.id)).toMatchObject({ toward: 'open', rule: 'asked' })
  })

  it('forgets a word that no seam keeps', () => {
    const stale: Block = {
      ...eveningStar,
      press: [
        { at: [0.5, 0.5], toward: 'open' },
        { at: ['1/2', 1], toward: 'open' },
      ],
    }
    const [problem] = findings(stale).problems.filter(({ code }) => code === 'press')
    expect(problem?.at).toEqual([0.5, 0.5])
    const after = checkEdit(stale, forgetPress(problem?.at ?? [0, 0]))
    expect(after.press).toEqual([{ at: ['1/2', 1], toward: 'open' }])
    expect('press' in checkEdit(after, forgetPress([0.5, 1]))).toBe(false)
  })
})
