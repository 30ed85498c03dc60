import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lay } from '../../geometry/block/lay.ts'
import { turnBlock } from '../../geometry/edits/unitEdits.ts'
import type { Block, Unit } from '../../geometry/values/block.ts'
import { coloured, coloursOf, colouringPages } from '../../geometry/report/colourReport.ts'
import { matchingPatches, backgroundOf, type ColouringRequest, colouringsOf, MOST_COLOURINGS } from '../../geometry/colouring/colourings.ts'
import { groupsOfWays, symmetriesOf } from '../../geometry/colouring/blockSymmetry.ts'
import { findings } from '../../geometry/report/report.ts'
import { blockOf, FABRICS, sequence, square, star } from '../help.ts'
import { tiling } from '../layouts.ts'

const ALL = FABRICS.map(({ id }) => id)
const PLAIN: ColouringRequest = { what: 'points', fabrics: ['b', 'c', 'd'], keepBackground: true, sameAmounts: false, fewestBatches: false }
const plainStar = star([
  ['b', 'b'],
  ['b', 'b'],
  ['b', 'b'],
  ['b', 'b'],
])

describe('the symmetry of a block', () => {
  it('is that of a square for a star, and its groups are the ten of a square, the largest first', () => {
    // The symmetry group of the square has ten subgroups: of 8, three of 4, five of 2 and one of 1; any book on groups.
    const ways = symmetriesOf(lay(plainStar))
    expect(ways).toHaveLength(8)
    expect(groupsOfWays(ways).map((group) => group.length)).toEqual([8, 4, 4, 4, 2, 2, 2, 2, 2, 1])
  })

  it('maps patches to patches of the same outline, whatever the layout', () => {
    for (let seed = 1; seed <= 25; seed++) {
      const laid = lay(blockOf(4, 4, tiling(sequence(seed), 4, 4)))
      for (const { to } of symmetriesOf(laid)) expect([...to].sort((a, b) => a - b)).toEqual(laid.patches.map((_, patch) => patch))
    }
  })

  it('matches the patches it maps onto each other: wings, bodies, corners and the centre of a star', () => {
    expect(matchingPatches(plainStar).map(({ patches }) => patches.length)).toEqual([4, 8, 4, 1])
    expect(matchingPatches(plainStar).map(({ fabrics }) => fabrics.join())).toEqual(['a', 'b', 'a', 'd'])
  })
})

/** How many colourings of the wings there are with a number of fabrics, up to turning and mirroring: the mean number that a symmetry leaves as they are (Burnside). */
function burnside(fabrics: number): number {
  // Cycles of the eight wings under each of the eight symmetries of a square: 8; quarter turns 2 each, half turn 4; four mirrors 4 each.
  return [8, 2, 2, 4, 4, 4, 4, 4].reduce((sum, cycles) => sum + fabrics ** cycles, 0) / 8
}

describe('colourings of a star', () => {
  it('are as many as Burnside counts, less the present one', () => {
    expect(colouringsOf(lay(plainStar), { ...PLAIN, fabrics: ['b', 'c'] }).colourings).toHaveLength(burnside(2) - 1)
    const three = colouringsOf(lay(plainStar), PLAIN)
    expect(burnside(3)).toBeGreaterThan(MOST_COLOURINGS)
    expect(three.colourings).toHaveLength(MOST_COLOURINGS)
    expect(three.more).toBe(true)
  })

  it('begin with whole other fabrics, then two that alternate', () => {
    const { slots, background, colourings } = colouringsOf(lay(plainStar), PLAIN)
    expect(background).toBe('a')
    expect(slots).toHaveLength(8)
    expect(colourings.slice(0, 2).map(({ fabrics, symmetry }) => [new Set(fabrics).size, fabrics[0], symmetry])).toEqual([
      [1, 'c', 8],
      [1, 'd', 8],
    ])
    expect(colourings[2]?.symmetry).toBe(4)
    expect(new Set(colourings[2]?.fabrics).size).toBe(2)
  })

  it('of the same amounts are exchanges of places', () => {
    const mixed = star([
      ['b', 'c'],
      ['b', 'c'],
      ['b', 'c'],
      ['b', 'c'],
    ])
    const { colourings, more } = colouringsOf(lay(mixed), { ...PLAIN, sameAmounts: true })
    // Of the 70 ways to lay four and four, 13 differ up to turns and mirrors (Burnside: (70 + 2·2 + 6 + 4·6) / 8); the present one is one of them.
    expect(colourings).toHaveLength((70 + 2 * 2 + 6 + 4 * 6) / 8 - 1)
    expect(more).toBe(false)
    for (const { fabrics } of colourings) expect([...fabrics].sort().join('')).toBe('bbbbcccc')
  })

  it('that one batch makes are only such', () => {
    const { colourings } = colouringPages(plainStar, { ...PLAIN, fewestBatches: true })(0, 20)
    expect(colourings.length).toBe(20)
    for (const { batches } of colourings) expect(batches).toBe(1)
  })
})

/** A block of any layout, with a request for colourings. */
const anyBlock = fc
  .record({ seed: fc.integer({ min: 1, max: 10_000 }), columns: fc.constantFrom(2, 3), rows: fc.constantFrom(2, 3) })
  .map(({ seed, columns, rows }): Block => blockOf(columns, rows, tiling(sequence(seed), columns, rows)))
const anyWishes: fc.Arbitrary<ColouringRequest> = fc.record({
  what: fc.constantFrom('points', 'all'),
  fabrics: fc.subarray([...ALL], { minLength: 1 }),
  keepBackground: fc.boolean(),
  sameAmounts: fc.boolean(),
  fewestBatches: fc.boolean(),
})

describe('every colouring offered', () => {
  it('takes fabrics of the block alone, changes only what may change, and differs from all others however the block is turned', () => {
    fc.assert(
      fc.property(anyBlock, anyWishes, (block, wishes) => {
        const all = colouringsOf(lay(block), wishes)
        expect(all.colourings.length).toBeLessThanOrEqual(MOST_COLOURINGS)
        const looks = new Set([lookOf(block)])
        const now = new Map(lay(block).patches.map(({ unit, name, fabric }) => [`${block.units[unit]?.id} ${name}`, fabric]))
        const before = all.slots.map(({ unit, name }) => now.get(`${unit} ${name}`) as string)
        if (wishes.keepBackground) expect(before).not.toContain(all.background)
        for (const one of all.colourings.slice(0, 25)) {
          for (const fabric of one.fabrics) expect([...wishes.fabrics, ...(wishes.sameAmounts ? before : [])]).toContain(fabric)
          if (wishes.sameAmounts) expect([...one.fabrics].sort()).toEqual([...before].sort())
          const look = lookOf(coloured(block, coloursOf(all, one)))
          expect(looks.has(look)).toBe(false)
          looks.add(look)
        }
        const symmetries = all.colourings.map(({ symmetry }) => symmetry)
        expect(symmetries).toEqual([...symmetries].sort((a, b) => b - a))
        expect(colouringsOf(lay(block), wishes)).toEqual(all)
      }),
      { numRuns: 15 },
    )
  })

  it('takes as many batches and has as many clashes as the report of the block so coloured says', () => {
    fc.assert(
      fc.property(anyBlock, anyWishes, fc.boolean(), (plain, wishes, pressAlike) => {
        const block: Block = pressAlike ? { ...plain, pressAlike } : plain
        const page = colouringPages(block, wishes)(0, 3)
        for (const one of page.colourings) {
          const said = findings(coloured(block, coloursOf(page, one)))
          expect(one.batches).toBe(said.units.reduce((sum, { batches }) => sum + batches.length, 0))
          expect(one.clashes).toBe(said.pressing.clashes)
        }
      }),
      { numRuns: 8 },
    )
  })

  it('of stars with geese of every method and both hands takes as many batches as the report says', () => {
    const next = sequence(7)
    for (let round = 0; round < 3; round++) {
      const wings = [0, 1, 2, 3].map(() => [ALL[Math.floor(next() * 4)], ALL[Math.floor(next() * 4)]] as [string, string])
      const plain = star(wings)
      const block = { ...plain, units: plain.units.map((unit, at): Unit => (at === 1 && unit.kind === 'goose' ? { ...unit, mirror: true } : unit)) }
      const page = colouringPages(block, { ...PLAIN, keepBackground: false, fabrics: ALL })(0, 8)
      for (const one of page.colourings) {
        const said = findings(coloured(block, coloursOf(page, one)))
        expect(one.batches).toBe(said.units.reduce((sum, { batches }) => sum + batches.length, 0))
      }
    }
  })

  it('is none where nothing may change, and the background of an empty block is none', () => {
    expect(colouringsOf(lay(blockOf(2, 1, [square('s', [0, 0]), square('t', [1, 0])])), PLAIN).colourings).toEqual([])
    expect(backgroundOf(blockOf(1, 1, []))).toBe(null)
  })
})

/** The look of a block, however it is turned or mirrored: its patches as text, the least of eight. Worked out from the file, not by the search. */
function lookOf(block: Block): string {
  const looks: string[] = []
  for (const mirrored of [false, true]) {
    let turned = mirrored ? mirrorImage(block) : block
    for (let turn = 0; turn < 4; turn++) {
      looks.push(
        lay(turned)
          .patches.map(
            ({ fabric, corners }) =>
              `${fabric} ${corners
                .map((corner) => corner.join())
                .sort()
                .join(' ')}`,
          )
          .sort()
          .join(';'),
      )
      const draft = JSON.parse(JSON.stringify(turned)) as Parameters<ReturnType<typeof turnBlock>['change']>[0]
      turnBlock().change(draft)
      turned = draft
    }
  }
  return looks.sort()[0] as string
}

function mirrorImage(block: Block): Block {
  const units = block.units.map((unit): Unit => {
    if (unit.kind === 'polygon') return unit
    const [x, y] = unit.at as readonly [number, number]
    const turn = ((4 - (unit.turn ?? 0)) % 4) as 0 | 1 | 2 | 3
    return { ...unit, at: [block.grid.columns - x - (unit.size[0] as number), y], mirror: unit.mirror !== true, turn }
  })
  return { ...block, units }
}
