/** Blocks beside each other: a star worked by hand, printed rules of thumb, and the choice of turns against trying them all. */
import { inEnglish } from '../../geometry/words/english.ts'
import { describe, expect, it } from 'vitest'
import { type Block, report, settingReport, type SettingReport, type Turn } from '../../geometry/index.ts'
import { costOfStates, leastStates, type StateProblem } from '../../geometry/solvers/frontier.ts'
import type { Edges } from '../../geometry/values/report.ts'
import { blockOf, sequence, square, star } from '../help.ts'

/** Short seams toward the corners, long seams toward the middle row, tips to the centre. */
const pressedStar = star(
  [0, 1, 2, 3].map(() => ['b', 'b'] as const),
  {
    order: 'rows',
    press: [
      { at: [1, 0.5], toward: [0.5, 0.5] },
      { at: [3, 0.5], toward: [3.5, 0.5] },
      { at: [1, 3.5], toward: [0.5, 3.5] },
      { at: [3, 3.5], toward: [3.5, 3.5] },
      { at: [0.5, 1], toward: [0.5, 1.5] },
      { at: [0.5, 3], toward: [0.5, 2.5] },
    ],
  },
)

const said = (block: Block, columns: number, rows: number, turn: SettingReport['turn'], press: SettingReport['press']): SettingReport => {
  const answer = settingReport(block, { columns, rows, turn, press })
  if (!answer.ok) throw new Error(inEnglish(answer.message))
  return answer.value
}

/** What meets on the edge between two copies that are turned by hand. */
const sideBySide = (block: Block, left: Turn, right: Turn): SettingReport['meetings'] => {
  const answer = settingReport(block, { columns: 2, rows: 1, turn: 'none', press: 'same', turns: [left, right] })
  if (!answer.ok) throw new Error(inEnglish(answer.message))
  return answer.value.meetings
}

const checker = (n: number): Block =>
  blockOf(
    n,
    n,
    Array.from({ length: n * n }, (_, index) => {
      const [x, y] = [index % n, Math.floor(index / n)]
      return square(`s${index}`, [x, y], [1, 1], (x + y) % 2 === 0 ? 'a' : 'b')
    }),
    { order: 'rows' },
  )

describe('a star beside a copy turned a quarter', () => {
  // Worked by hand on paper: common practice, no source.
  it('nests with its straight seams and clashes with the slanting seams of the two geese base to base', () => {
    const touches = sideBySide(pressedStar, 0, 1)
    expect(touches.map(({ at, verdict }) => [at[1], verdict])).toEqual([
      [1, 'clashes'],
      [1, 'nests'],
      [3, 'clashes'],
      [3, 'nests'],
    ])
  })

  it('nests whole once the geese of every other star are pressed toward the goose', () => {
    const setting = said(pressedStar, 2, 1, 'alternate', 'same')
    expect([setting.clashes.between, setting.rulesLifted]).toEqual([2, 0])
  })
})

describe('rules of thumb', () => {
  // [S82]: odd grids need two pressing versions set alternately, even grids nest when all are pressed the same way.
  it('holds for the short seams of an odd grid: two versions nest, one does not', () => {
    expect(said(checker(3), 3, 3, 'none', 'same').clashes.between).toBeGreaterThan(0)
    expect(said(checker(3), 3, 3, 'none', 'alternate').clashes.between).toBe(0)
  })

  it('holds for the short seams of an even grid pressed the same way; the long seams clash, and the report says so', () => {
    const setting = said(checker(4), 3, 3, 'none', 'same')
    const clashes = setting.meetings.filter(({ verdict }) => verdict === 'clashes')
    const long = new Set(['13', '14', '15'])
    expect(clashes.length).toBe(18)
    expect(clashes.every(({ seams }) => seams.every((seam) => long.has(seam.split('/j:')[1] ?? '')))).toBe(true)
    expect(setting.why.map(inEnglish).join(' ')).toContain('That helps the short seams')
  })
})

describe('what a turned copy does', () => {
  it('follows from what the report says of the four edges', () => {
    const random = sequence(5)
    const NAMES = ['top', 'right', 'bottom', 'left'] as const
    for (let round = 0; round < 12; round++) {
      const block = star(
        [0, 1, 2, 3].map(() => ['abcd'[Math.floor(random() * 4)] as string, 'abcd'[Math.floor(random() * 4)] as string] as const),
        { order: (['rows', 'columns', 'sections'] as const)[round % 3] ?? 'rows' },
      )
      const edges: Edges = report(block).edges
      for (const left of [0, 1, 2, 3] as Turn[])
        for (const right of [0, 1, 2, 3] as Turn[]) {
          const one = edges[NAMES[(1 - left + 4) % 4] as 'top']
          const other = edges[NAMES[(3 - right + 4) % 4] as 'top']
          const pairs = one.flatMap((a) =>
            other
              .filter((b) => Number(a.at) + Number(b.at) === 4 && Math.abs(a.angle + b.angle - 180) < 1e-9)
              .map((b) => (a.lean === 0 || b.lean === 0 ? 'open' : a.lean === b.lean ? 'nests' : 'clashes')),
          )
          const touches = sideBySide(block, left, right).map(({ verdict }) => verdict)
          expect(touches.filter((verdict) => verdict === 'nests' || verdict === 'clashes' || verdict === 'open').sort()).toEqual(pairs.sort())
        }
    }
  })

  it('has nothing opposite in a copy turned half way round; in a copy that lies alike the seams clash until every other copy is pressed the other way', () => {
    const block = blockOf(3, 3, [square('a', [0, 0], [3, 1], 'a'), square('b', [0, 1], [3, 2], 'b')])
    expect(sideBySide(block, 0, 2)).toEqual([])
    expect(sideBySide(block, 0, 0).map(({ at, verdict }) => [at[1], verdict])).toEqual([[1, 'clashes']])
    expect(said(block, 2, 1, 'none', 'alternate').meetings.map(({ verdict }) => verdict)).toEqual(['nests'])
  })
})

describe('the whole setting', () => {
  it('counts every clash on its seams once, and alternates the short seams', () => {
    const setting = said(pressedStar, 3, 3, 'free', 'free')
    expect(setting.meetings.filter(({ verdict }) => verdict === 'clashes')).toHaveLength(setting.clashes.between)
    expect(setting.joins).toHaveLength(8)
    expect(setting.proved).toBe(true)
    const own = setting.meetings.filter(({ seams }) => seams.every((seam) => seam.startsWith('s:')))
    expect(own).toHaveLength(4)
    for (const { seams, verdict } of own) {
      const ways = seams.map((id) => setting.joins.find((join) => join.id === id)?.press.toward)
      expect(verdict).toBe('nests')
      expect(ways[0]).not.toBe(ways[1])
    }
  })

  it('is never worse with a free choice, to 6 by 6 proved', () => {
    const block = { ...pressedStar, units: pressedStar.units.map((unit) => (unit.id === 'g0' ? { ...unit, pressFree: true } : unit)) }
    for (const [columns, rows] of [
      [2, 3],
      [4, 2],
      [6, 6],
    ] as const) {
      const free = said(block, columns, rows, 'free', 'free')
      const fixed = (['none', 'alternate'] as const).flatMap((turn) =>
        (['same', 'alternate'] as const).map((press) => said(block, columns, rows, turn, press).clashes.between),
      )
      expect(free.proved).toBe(true)
      expect(free.clashes.between).toBeLessThanOrEqual(Math.min(...fixed))
    }
  })

  it('says what is missing where the block cannot be sewn, and what a quarter turn needs', () => {
    expect(said(blockOf(2, 1, [square('a', [0, 0])]), 2, 2, 'free', 'free').problems[0]?.code).toBe('gap')
    const long = blockOf(2, 1, [square('a', [0, 0]), square('b', [1, 0])])
    expect(settingReport(long, { columns: 2, rows: 2, turn: 'alternate', press: 'same' })).toMatchObject({ ok: false, place: 'turn' })
  })
})

describe('the frontier', () => {
  it('finds the same least cost as trying every choice', () => {
    const random = sequence(11)
    const below = (n: number): number => Math.floor(random() * n)
    for (let round = 0; round < 150; round++) {
      const [columns, rows, states] = [1 + below(3), 1 + below(3), 1 + below(3)]
      const table = (size: number): number[] => Array.from({ length: size }, () => below(5))
      const [own, right, under] = [table(states), table(states * states), table(states * states)]
      const all = Array.from({ length: states }, (_, state) => state)
      const ask: StateProblem = {
        columns,
        rows,
        states: (column, row) => ((column + row) % 3 === 2 ? [0] : all),
        own: (state) => own[state] as number,
        right: (one, other, column) => (right[one * states + other] as number) + column,
        below: (one, other, column, row) => (under[one * states + other] as number) * (row + 1) + column,
      }
      let least = Number.POSITIVE_INFINITY
      for (let code = 0; code < states ** (columns * rows); code++) {
        const choice = Array.from({ length: columns * rows }, (_, place) => Math.floor(code / states ** place) % states)
        if (choice.every((state, place) => ask.states(place % columns, Math.floor(place / columns)).includes(state)))
          least = Math.min(least, costOfStates(ask, choice))
      }
      const found = leastStates(ask)
      expect([found.cost, found.atLeast, costOfStates(ask, found.states)]).toEqual([least, least, least])
    }
  })

  it('keeps a bound where the whole is too wide', () => {
    const all = [0, 1, 2, 3, 4, 5, 6, 7]
    const random = sequence(3)
    const costs = Array.from({ length: 128 }, () => Math.floor(random() * 4) + 1)
    const ask: StateProblem = {
      columns: 8,
      rows: 8,
      states: () => all,
      own: () => 0,
      right: (one, other) => costs[one * 8 + other] as number,
      below: (one, other) => costs[64 + one * 8 + other] as number,
    }
    const found = leastStates(ask)
    expect(found.atLeast).toBeLessThanOrEqual(found.cost)
    expect(found.atLeast).toBeGreaterThan(0)
    expect(costOfStates(ask, found.states)).toBe(found.cost)
  })
})

describe('turned by hand', () => {
  const random = sequence(41)

  it('scores as the same turns do when they are chosen, and copy by copy as two blocks side by side', () => {
    const block = pressedStar
    const free = said(block, 3, 2, 'free', 'same')
    const byHand = (turns: readonly Turn[]): SettingReport => {
      const answer = settingReport(block, { columns: 3, rows: 2, turn: 'none', press: 'same', turns })
      if (!answer.ok) throw new Error(inEnglish(answer.message))
      return answer.value
    }
    const again = byHand(free.places.map(({ turn }) => turn))
    expect([again.clashes, again.meetings, again.places]).toEqual([free.clashes, free.meetings, free.places])
    expect(byHand([0, 0, 0, 0, 0, 0]).clashes).toEqual(said(block, 3, 2, 'none', 'same').clashes)
    for (let round = 0; round < 12; round++) {
      const turns = Array.from({ length: 6 }, () => Math.floor(random() * 4) as Turn)
      const { places, meetings, clashes } = byHand(turns)
      expect(places.map(({ turn }) => turn)).toEqual(turns)
      expect(clashes.between).toBeGreaterThanOrEqual(free.clashes.between)
      // Along the edge between the first two copies: the touches of two blocks side by side.
      const first = sideBySide(block, turns[0] as Turn, turns[1] as Turn)
      const along = meetings.filter(({ join }) => join === 's:1')
      expect(along.map(({ verdict }) => verdict)).toEqual(first.map(({ verdict }) => verdict))
    }
  })

  it('refuses a quarter turn of a block that is not square, and allows half turns', () => {
    const long = blockOf(2, 1, [square('a', [0, 0]), square('b', [1, 0], [1, 1], 'b')])
    expect(settingReport(long, { columns: 2, rows: 1, turn: 'none', press: 'same', turns: [0, 1] })).toMatchObject({ ok: false, place: 'turn' })
    expect(settingReport(long, { columns: 2, rows: 1, turn: 'none', press: 'same', turns: [0, 2] })).toMatchObject({ ok: true })
  })
})
