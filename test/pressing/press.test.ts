import { describe, expect, it } from 'vitest'
import type { Turn, Unit } from '../../geometry/values/block.ts'
import { scorePressing, press } from '../../geometry/pressing/press.ts'
import { sewBlock } from '../../geometry/report/report.ts'
import type { Plans } from '../../geometry/report/sewing.ts'
import type { Toward } from '../../geometry/pressing/values.ts'
import { report } from '../../geometry/report/wholeReport.ts'
import { editForFix } from '../../web/sheets/check/editForFix.ts'
import { applyEdit } from '../../web/document/history.ts'
import { blockOf, sequence, square, star } from '../help.ts'

const plain = [
  ['b', 'b'],
  ['b', 'b'],
  ['b', 'b'],
  ['b', 'b'],
] as const

/** Rows of geese, whose rule holds them, among hourglasses that look the same mirrored. */
function geeseAndHourglasses(random: () => number, side: number): Unit[] {
  const units: Unit[] = []
  for (let y = 0; y < side; y++)
    for (let x = 0; x < side; x++) {
      const base = { id: `u${x}.${y}`, at: [x, y] } as const
      if (x + 1 < side && random() < 0.35) {
        units.push({ ...base, kind: 'goose', size: [2, 1], turn: random() < 0.5 ? 0 : 2, fabrics: { goose: 'a', leftWing: 'b', rightWing: 'b' } })
        x++
      } else if (random() < 0.7) units.push({ ...base, kind: 'hourglass', size: [1, 1], fabrics: { top: 'a', right: 'b', bottom: 'a', left: 'b' } })
      else units.push({ ...base, kind: 'hst', size: [1, 1], turn: Math.floor(random() * 4) as Turn, fabrics: { upper: 'a', lower: 'b' } })
    }
  return units
}

/** Cells of squares and triangles, turned by a fixed sequence. */
function patchwork(seed: number, columns: number, rows: number): Unit[] {
  const next = sequence(seed)
  return Array.from({ length: columns * rows }, (_, cell): Unit => {
    const at = [cell % columns, Math.floor(cell / columns)] as const
    if (next() < 0.4) return square(`s${cell}`, at, [1, 1], next() < 0.5 ? 'a' : 'b')
    return {
      id: `h${cell}`,
      kind: 'hst',
      at,
      size: [1, 1],
      turn: Math.floor(next() * 4) as 0,
      method: 'plain',
      fabrics: { upper: 'a', lower: next() < 0.5 ? 'b' : 'c' },
    }
  })
}

/** Geese in two columns, tips up or down by a fixed sequence: many lie tip to tip or base to base. */
function flock(seed: number, rows: number): Unit[] {
  const next = sequence(seed)
  return Array.from({ length: 2 * rows }, (_, index): Unit => {
    const at = [(index % 2) * 2, Math.floor(index / 2)] as const
    return {
      id: `g${index}`,
      kind: 'goose',
      at,
      size: [2, 1],
      turn: next() < 0.5 ? 0 : 2,
      fabrics: { goose: 'a', leftWing: 'b', rightWing: next() < 0.5 ? 'b' : 'c' },
    }
  })
}

describe('a star', () => {
  it.each(['rows', 'columns', 'auto'] as const)('nests whole by %s: common practice, no source', (order) => {
    const { meetings, pressing, problems } = report(star(plain, { order }))
    expect(problems).toEqual([])
    expect(pressing.clashes).toBe(0)
    expect(meetings.filter(({ verdict }) => verdict === 'nests')).toHaveLength(4)
    expect(meetings.filter(({ verdict }) => verdict === 'tip')).toHaveLength(4)
  })

  it('presses the seams of geese made four at a time toward their wings [S3][S4][S12]', () => {
    const { joins, patches } = report(star(plain))
    const wings = new Set(patches.filter(({ name }) => name.endsWith('Wing')).map(({ id }) => id))
    const own = joins.filter(({ press }) => press.rule === 'method')
    expect(own).toHaveLength(8)
    for (const { press, sides } of own) expect(wings.has(sides[press.toward as 0 | 1])).toBe(true)
  })

  it('is 12 1/2 unfinished from twelve finished, and measures that after its last seam: common practice, no source', () => {
    const { block, joins } = report(star(plain))
    expect(block.unfinished).toEqual([12.5, 12.5])
    expect(joins.at(-1)?.unfinished).toEqual([12.5, 12.5])
  })
})

describe('geese that mirror each other', () => {
  const pair = blockOf(2, 2, [
    { id: 'up', kind: 'goose', at: [0, 0], size: [2, 1], turn: 2, fabrics: { goose: 'a', leftWing: 'b', rightWing: 'b' } },
    { id: 'down', kind: 'goose', at: [0, 1], size: [2, 1], turn: 0, fabrics: { goose: 'a', leftWing: 'b', rightWing: 'b' } },
  ])

  it('clash tip to tip while their rule holds, and not once a fix lifts it: common practice, no source', () => {
    const said = report(pair)
    expect(said.pressing.clashes).toBe(2)
    const clash = said.meetings.find(({ verdict }) => verdict === 'clashes')
    const lifts = clash?.fix.find((fix) => fix.do === 'press')
    expect(lifts).toBeDefined()
    const mended = report(applyEdit({ block: pair, past: [], future: [] }, editForFix(lifts as NonNullable<typeof lifts>, said)).block)
    expect(mended.pressing.clashes).toBe(0)
  })
})

describe('the least number of clashes', () => {
  it.each(Array.from({ length: 40 }, (_, seed) => seed + 1))('equals the best of all pressings (patchwork %i)', (seed) => {
    const { taken } = sewBlock(blockOf(3, 2, patchwork(seed, 3, 2), { order: 'rows' }), 'quick').plans as Plans
    const free = taken.constraints.flatMap(({ fixed }, seam) => (fixed === null ? [seam] : []))
    let best = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY] as const
    for (let ways = 0; ways < 2 ** free.length; ways++) {
      const toward = taken.constraints.map(({ fixed }): Toward => fixed ?? 0)
      free.forEach((seam, bit) => {
        toward[seam] = ((ways >> bit) & 1) as 0 | 1
      })
      const { clashes, against } = scorePressing(taken.met.crossings, taken.constraints, toward)
      if (clashes < best[0] || (clashes === best[0] && against < best[1])) best = [clashes, against]
    }
    const { clashes, against } = press(taken.met.crossings, taken.constraints)
    expect([clashes, against]).toEqual(best)
  })

  it('every fix of every clash, applied, takes that clash away and makes no other', () => {
    let tried = 0
    for (let seed = 1; seed <= 12; seed++) {
      const block = blockOf(4, 4, flock(seed, 4), { order: 'rows' })
      const said = report(block)
      // Two pairs may meet at one point, so clashes are counted point by point.
      const counted = (one: typeof said): Map<string, number> => {
        const counts = new Map<string, number>()
        for (const { verdict, at } of one.meetings) if (verdict === 'clashes') counts.set(at.join(), (counts.get(at.join()) ?? 0) + 1)
        return counts
      }
      const before = counted(said)
      for (const { verdict, fix, at } of said.meetings) {
        if (verdict !== 'clashes') continue
        expect(fix.length).toBeGreaterThan(0)
        for (const one of fix) {
          const after = counted(report(applyEdit({ block, past: [], future: [] }, editForFix(one, said)).block))
          expect(after.get(at.join()) ?? 0).toBeLessThan(before.get(at.join()) as number)
          for (const [place, count] of after) expect(count).toBeLessThanOrEqual(before.get(place) ?? 0)
          tried++
        }
      }
    }
    expect(tried).toBeGreaterThan(0)
  })

  it('turns or mirrors a unit whose picture stays, where that takes a clash away', () => {
    const turned: string[] = []
    for (let seed = 1; seed <= 40; seed++) {
      const random = sequence(seed)
      const block = blockOf(4, 4, geeseAndHourglasses(random, 4), { order: 'rows' })
      const said = report(block)
      const seen = (one: typeof said): string[] =>
        one.patches.map(({ fabric, corners }) => `${fabric} ${corners.map((corner) => corner.join()).sort()}`).sort()
      for (const { verdict, fix, at } of said.meetings)
        for (const one of verdict === 'clashes' ? fix.filter(({ do: what }) => what === 'turn') : []) {
          const after = report(applyEdit({ block, past: [], future: [] }, editForFix(one, said)).block)
          expect(seen(after)).toEqual(seen(said))
          expect(after.meetings.filter((other) => other.verdict === 'clashes' && other.at.join() === at.join()).length).toBeLessThan(
            said.meetings.filter((other) => other.verdict === 'clashes' && other.at.join() === at.join()).length,
          )
          turned.push(one.what)
        }
    }
    expect(turned.length).toBeGreaterThan(0)
  })
})

describe('joins', () => {
  it.each([1, 2, 3, 4, 5])('form one tree over all patches, no piece used twice (patchwork %i)', (seed) => {
    const { joins, patches } = report(blockOf(5, 4, patchwork(seed, 5, 4)))
    expect(joins).toHaveLength(patches.length - 1)
    const used = joins.flatMap(({ sides }) => sides)
    expect(new Set(used).size).toBe(used.length)
    joins.forEach(({ sides }, index) => {
      for (const side of sides) if (side.startsWith('j:')) expect(joins.findIndex(({ id }) => id === side)).toBeLessThan(index)
    })
  })

  it('sews a ring round a centre with one partial seam [S95][S96]', () => {
    const ring = blockOf(3, 3, [
      square('m', [1, 1]),
      square('t', [0, 0], [2, 1]),
      square('r', [2, 0], [1, 2]),
      square('b', [1, 2], [2, 1]),
      square('l', [0, 1], [1, 2]),
    ])
    const { joins, problems } = report(ring)
    expect(joins.map(({ kind }) => kind).sort()).toEqual(['partial', 'straight', 'straight', 'straight'])
    expect(problems.map(({ code }) => code)).toEqual(['not-straight'])
    expect(joins.find(({ kind }) => kind === 'partial')?.finishedAfter).toBe(joins.at(-1)?.id)
  })

  it('sews rings round a ring with one partial seam for each, the inner block first: by counting [S90]', () => {
    const rings = blockOf(7, 7, [
      square('m', [3, 3]),
      ...[1, 2, 3].flatMap((round) => {
        const [near, far, length] = [3 - round, 3 + round, 2 * round]
        return [
          square(`t${round}`, [near, near], [length, 1]),
          square(`r${round}`, [far, near], [1, length]),
          square(`b${round}`, [near + 1, far], [length, 1]),
          square(`l${round}`, [near, near + 1], [1, length]),
        ]
      }),
    ])
    const { crooked, joins } = report(rings)
    expect(crooked).toEqual({ setIn: 0, partial: 3, proved: false })
    expect(joins).toHaveLength(12)
  })

  it('sets in the mitred frame of an attic window [S102]', () => {
    const window = blockOf(3, 3, [
      square('m', [1, 0], [2, 2]),
      {
        id: 'l',
        kind: 'polygon',
        corners: [
          [0, 0],
          [1, 0],
          [1, 2],
          [0, 3],
        ],
        fabrics: { patch: 'b' },
      },
      {
        id: 'u',
        kind: 'polygon',
        corners: [
          [0, 3],
          [1, 2],
          [3, 2],
          [3, 3],
        ],
        fabrics: { patch: 'c' },
      },
    ])
    expect(
      report(window)
        .joins.map(({ kind }) => kind)
        .sort(),
    ).toEqual(['set-in', 'straight'])
  })
})
