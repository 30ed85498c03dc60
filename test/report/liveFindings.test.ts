/** Live findings are, after every edit, exactly the findings of the block from nothing. */
import fc from 'fast-check'
import { produce } from 'immer'
import { describe, expect, it } from 'vitest'
import { type Block, type BoxUnit, findings, liveFindings, parseRational, type Rational, toNumber, type Unit } from '../../geometry/index.ts'
import { blockOf, FABRICS, sequence, square, star } from '../help.ts'
import { oneOf, tiling, unitAtRandom } from '../layouts.ts'

type Draft = { -readonly [key in keyof Block]: Block[key] } & { units: Unit[] }
type Change = (draft: Draft, next: () => number) => void

const some = <T>(next: () => number, list: readonly T[]): number => Math.floor(next() * list.length)
const isBoxed = (unit: Unit | undefined): unit is BoxUnit => unit !== undefined && unit.kind !== 'polygon'

/** What a hand may do to a block; some of it leaves gaps and overlaps. */
const CHANGES: readonly Change[] = [
  function recolour({ units }, next) {
    const place = some(next, units)
    const unit = units[place]
    if (unit === undefined) return
    const names = Object.keys(unit.fabrics)
    units[place] = { ...unit, fabrics: { ...unit.fabrics, [oneOf(next, names)]: oneOf(next, FABRICS).id } }
  },
  function another({ units }, next) {
    const place = some(next, units)
    const unit = units[place]
    if (isBoxed(unit)) units[place] = unitAtRandom(next, unit.id, unit.at as [number, number], unit.size as [number, number])
  },
  function turn({ units }, next) {
    const place = some(next, units)
    const unit = units[place]
    if (isBoxed(unit)) units[place] = { ...unit, turn: (((unit.turn ?? 0) + (unit.kind === 'goose' ? 2 : 1)) % 4) as 0 | 1 | 2 | 3 }
  },
  function swap({ units }, next) {
    const [a, b] = [some(next, units), some(next, units)]
    const [one, other] = [units[a], units[b]]
    if (!isBoxed(one) || !isBoxed(other) || String(one.size) !== String(other.size)) return
    units[a] = { ...one, at: other.at }
    if (a !== b) units[b] = { ...other, at: one.at }
  },
  // As many patches in all, yet those between the two are numbered otherwise.
  function trade({ units }, next) {
    const [a, b] = [some(next, units), some(next, units)]
    const [one, other] = [units[a], units[b]]
    if (!isBoxed(one) || !isBoxed(other) || String(one.size) !== String(other.size)) return
    units[a] = { ...other, id: one.id, at: one.at }
    units[b] = { ...one, id: other.id, at: other.at }
  },
  function move({ units }, next) {
    const place = some(next, units)
    const unit = units[place]
    const far = oneOf(next, [-1, 1, 0.5])
    if (isBoxed(unit)) units[place] = { ...unit, at: [(unit.at[0] as number) + far, unit.at[1]] }
  },
  function remove({ units }, next) {
    units.splice(some(next, units), 1)
  },
  function fill(draft, next) {
    const gap = findings(draft as Block).problems.find(({ code }) => code === 'gap')
    const id = `n${Math.floor(next() * 1e9)}`
    const [x, y] = gap?.at.map((place) => Math.floor(toNumber(parseRational(place) as Rational))) ?? []
    if (x !== undefined && y !== undefined) draft.units.push(square(id, [x, y], [1, 1], oneOf(next, FABRICS).id))
  },
  function order(draft, next) {
    draft.order = oneOf(next, ['auto', 'rows', 'columns', 'sections'] as const)
  },
  function settle({ units }, next) {
    const place = some(next, units)
    const unit = units[place]
    if (unit !== undefined) units[place] = { ...unit, pressFree: next() < 0.5, open: next() < 0.3 }
  },
  function word(draft, next) {
    const at = [Math.floor(next() * draft.grid.columns) + 0.5, 1] as const
    draft.press = next() < 0.3 ? [] : [...(draft.press ?? []), { at, toward: next() < 0.5 ? 'open' : [at[0], 0.75] }]
  },
  function fabric(draft, next) {
    draft.fabrics = draft.fabrics.map((one, index) => (index === 0 ? { ...one, colour: oneOf(next, ['#ffffff', '#101010']) } : one))
  },
  function border(draft, next) {
    draft.borders = next() < 0.5 ? [] : [{ finishedWidth: '1 1/2', fabric: 'b' }]
  },
  function alike(draft, next) {
    draft.pressAlike = next() < 0.5
  },
]

/** Frequent where a hand is often at it. */
const WEIGHTS = [6, 4, 6, 4, 4, 1, 1, 4, 1, 1, 1, 1, 1, 1]

const anEdit = fc.record({
  change: fc.oneof(...CHANGES.map((change, index) => ({ weight: WEIGHTS[index] as number, arbitrary: fc.constant(change) }))),
  seed: fc.integer({ min: 1, max: 1e6 }),
  undo: fc.nat(5),
})

/** So many times more is tried by `npm run test:long`. */
const MORE = Number(process.env.NESTWRIGHT_MORE ?? 1)

function checkFollowing(start: Block, edits: readonly { change: Change; seed: number; undo: number }[]): void {
  const follow = liveFindings()
  const past: Block[] = [start]
  expect(follow(start)).toEqual(findings(start))
  for (const { change, seed, undo } of edits) {
    const last = past.at(-1) as Block
    const next = sequence(seed)
    const goesBack = undo === 0 && past.length > 1
    if (goesBack) past.pop()
    const block = goesBack ? (past.at(-1) as Block) : produce(last, (draft) => change(draft as never, next))
    if (undo !== 0) past.push(block)
    expect(follow(block)).toEqual(findings(block))
  }
}

const tiled = (seed: number, columns: number, rows: number): Block => blockOf(columns, rows, tiling(sequence(seed), columns, rows))

/** Plain units of one cell: straight seams everywhere, so that edits keep whole rows. */
const even = (seed: number, columns: number, rows: number): Block => {
  const next = sequence(seed)
  return blockOf(
    columns,
    rows,
    Array.from({ length: columns * rows }, (_, index) => unitAtRandom(next, `u${index}`, [index % columns, Math.floor(index / columns)], [1, 1])),
  )
}

describe('findings that follow the hand are those of the block', () => {
  it.each([
    ['units of one cell', even, 4, 4, 8],
    ['many units of one cell', even, 9, 8, 2],
    ['units of any size, whose plans are crooked', tiled, 4, 4, 8],
    ['many units of any size', tiled, 6, 5, 3],
  ] as const)('%s', (_, made, columns, rows, numRuns) => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.array(anEdit, { minLength: 3, maxLength: 10 }), (seed, edits) => {
        checkFollowing(made(seed, columns, rows), edits)
      }),
      { numRuns: numRuns * MORE },
    )
  })

  it('a star round a ring of seams, edited and undone', () => {
    const wings = Array.from({ length: 4 }, () => ['b', 'c'] as const)
    fc.assert(
      fc.property(fc.array(anEdit, { minLength: 4, maxLength: 10 }), (edits) => {
        checkFollowing(star(wings), edits)
      }),
      { numRuns: 5 * MORE },
    )
  })
})
