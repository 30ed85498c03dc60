/** A quilt of four blocks without sashing beside one block that holds all four, sewn in the same order: the same seams cross at the same places. */
import { expect, it } from 'vitest'
import { type QuiltReport, quiltReport, report } from '../../geometry/index.ts'
import type { Unit } from '../../geometry/values/block.ts'
import type { Quilt } from '../../geometry/values/quilt.ts'
import { sequence } from '../help.ts'
import { block, plainQuilt } from './quilts.ts'

const ACROSS = 6

/** Two rows of two pieces; where they are cut is drawn for each block, so that no cut goes through two of them but between them. */
function fourUnits(random: () => number): readonly Unit[] {
  const cut = (): number => 1 + Math.floor(random() * (ACROSS - 1))
  const fabric = (): string => (random() < 0.5 ? 'pale' : 'deep')
  const down = cut()
  return [
    [0, down],
    [down, ACROSS - down],
  ].flatMap(([y = 0, high = 0], row) => {
    const across = cut()
    return [
      [0, across],
      [across, ACROSS - across],
    ].map(
      ([x = 0, wide = 0], column): Unit => ({ id: `u${row}${column}`, kind: 'square', at: [x, y], size: [wide, high], fabrics: { patch: fabric() } }),
    )
  })
}

/** The quilt, and one block of all its units. */
function bothWays(seed: number) {
  const random = sequence(seed + 1)
  const blocks = Array.from({ length: 4 }, () => fourUnits(random))
  const quilt: Quilt = {
    ...plainQuilt(2, 2, 3 * ACROSS, {}),
    blocks: blocks.map((units, index) => ({
      id: `b${index}`,
      block: { ...block(units, ACROSS), order: 'sections' },
      wear: { pale: 'pale', deep: 'deep' },
    })),
    places: blocks.map((_, index) => ({ id: `p${index}`, at: [index % 2, Math.floor(index / 2)], block: `b${index}` })),
    order: 'sections',
  }
  const together = blocks.flatMap((units, index) =>
    units.map((unit): Unit => {
      const [x, y] = (unit as { readonly at: readonly [number, number] }).at
      return { ...unit, id: `${unit.id}-${index}`, at: [x + ACROSS * (index % 2), y + ACROSS * Math.floor(index / 2)] } as Unit
    }),
  )
  return { quilt, whole: report({ ...block(together, 2 * ACROSS), order: 'sections' }) }
}

const BETWEEN = ['0,6 6,6', '6,6 12,6', '6,0 6,12']

type Whole = ReturnType<typeof bothWays>['whole']

/** Whether the one block is halved upright last, and each half across: as the quilt is. Lengths in cells of 3 inches. */
const sewnAlike = ({ joins }: Whole): boolean => BETWEEN.every((line) => joins.some(({ from, to }) => `${from} ${to}` === line))

const counted = (meetings: readonly { readonly verdict: string }[]): number => meetings.filter(({ verdict }) => verdict === 'clashes').length

const ALIKE = Array.from({ length: 40 }, (_, seed) => bothWays(seed))
  .filter(({ whole }) => sewnAlike(whole))
  .slice(0, 10)

it('cross at the same places where both are sewn in the same order', () => {
  expect(ALIKE.length).toBeGreaterThan(4)
  for (const { quilt, whole } of ALIKE) {
    const places = (meetings: Whole['meetings'] | QuiltReport['meetings'], scale: number): string[] =>
      meetings.map(({ at }) => `${Number(at[0]) * scale},${Number(at[1]) * scale}`).sort()
    const between = whole.meetings.filter(({ join }) => whole.joins.some(({ id, from, to }) => id === join && BETWEEN.includes(`${from} ${to}`)))
    expect(places(quiltReport(quilt).meetings, 1)).toEqual(places(between, 3))
  }
})

it('clash at least as often as one block would, since each block is pressed before it is joined; free pressing lessens it', () => {
  for (const { quilt, whole } of ALIKE) {
    const fixed = quiltReport(quilt)
    const inside = fixed.blocks.reduce((sum, one) => sum + one.clashes, 0)
    const free = quiltReport({ ...quilt, free: { turn: 'none', press: true } })
    expect(counted(free.meetings) + inside).toBeGreaterThanOrEqual(counted(whole.meetings))
    expect(counted(free.meetings)).toBeLessThanOrEqual(counted(fixed.meetings))
  }
})
