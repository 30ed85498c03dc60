import { describe, expect, it } from 'vitest'
import { echoLines } from '../../geometry/quilting/echo.ts'
import { largestGap } from '../../geometry/quilting/largestGap.ts'
import { BATTINGS, holdsAcross, mostApart } from '../../geometry/quilting/battings.ts'
import { awayFrom, liesIn, type StitchPoint, routeLines, type StitchedLine, stretchesOf } from '../../geometry/quilting/stitchedLines.ts'
import { spiralLines } from '../../geometry/quilting/spiral.ts'
import { fillsOf } from '../../geometry/quilting/fills.ts'
import { quiltingOf } from '../../geometry/block/quiltingOf.ts'
import { readBlock, writeBlock } from '../../geometry/block/read.ts'
import { setFill, setFillSpacing, setQuiltingStart } from '../../geometry/edits/quiltingEdits.ts'
import { convertMeasure } from '../../geometry/edits/sizeEdits.ts'
import type { Edit } from '../../geometry/edits/unitEdits.ts'
import type { Block, Unit } from '../../geometry/values/block.ts'
import { report } from '../../geometry/report/wholeReport.ts'
import { manyUnits } from '../bench/blocks.ts'
import { produce } from 'immer'
import { sequence, star as starBlock } from '../help.ts'
import { lineLength } from './lineLength.ts'

const box = (width: number, height: number): StitchPoint[] => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
]

const turned = (corners: readonly StitchPoint[], angle: number): StitchPoint[] =>
  corners.map(([x, y]) => [x * Math.cos(angle) - y * Math.sin(angle) + 5, x * Math.sin(angle) + y * Math.cos(angle) - 3])

const away = (lines: readonly StitchedLine[], point: StitchPoint): number =>
  Math.min(...lines.flatMap(stretchesOf).map((stretch) => awayFrom(point, stretch)))

const along = (line: StitchedLine, share: number): StitchPoint[] =>
  stretchesOf(line).map(([[ax, ay], [bx, by]]) => [ax + (bx - ax) * share, ay + (by - ay) * share])

/** Simple by making: corners round a middle at growing angles, near and far by turns of chance. */
const star = (next: () => number, count: number): StitchPoint[] =>
  Array.from({ length: count }, (_, place) => {
    const [angle, far] = [(2 * Math.PI * (place + 0.6 * next())) / count, 3 + 7 * next()]
    return [far * Math.cos(angle), far * Math.sin(angle)]
  })

const SHAPES: readonly [string, readonly StitchPoint[]][] = [
  ['a square', box(6, 6)],
  ['a rectangle', box(9, 4)],
  ['a rectangle, corners the other way round', box(9, 4).reverse()],
  [
    'a triangle',
    [
      [0, 0],
      [8, 0],
      [0, 8],
    ],
  ],
  [
    'an L',
    [
      [0, 0],
      [8, 0],
      [8, 3],
      [3, 3],
      [3, 9],
      [0, 9],
    ],
  ],
  [
    'two rooms and a narrow door',
    [
      [0, 0],
      [4, 0],
      [4, 1.5],
      [6, 1.5],
      [6, 0],
      [10, 0],
      [10, 4],
      [6, 4],
      [6, 2.5],
      [4, 2.5],
      [4, 4],
      [0, 4],
    ],
  ],
  [
    'a turned L',
    turned(
      [
        [0, 0],
        [8, 0],
        [8, 3],
        [3, 3],
        [3, 9],
        [0, 9],
      ],
      0.7,
    ),
  ],
  [
    'a side that is all but straight',
    [
      [2.97, 1.72],
      [1.6, 8.24],
      [-6.24, 4.71],
      [-8.19, -1.54],
      [-2.03, -9.39],
      [4.38, -5],
    ],
  ],
  ...[1, 2, 3, 4, 5, 6].map((seed): [string, StitchPoint[]] => [`a shape of chance, ${seed}`, star(sequence(seed * 97), 5 + seed)]),
]

describe('echo lines', () => {
  it.each(SHAPES)('lie everywhere at their distance from the outline: %s', (_, corners) => {
    const outline: StitchedLine = { points: corners, closed: true }
    const spacing = 0.45
    const lines = echoLines(corners, spacing)
    let last = 0
    for (const line of lines) {
      const first = away([outline], line.points[0] as StitchPoint)
      const round = Math.round(first / spacing)
      expect(round).toBeGreaterThanOrEqual(Math.max(1, last))
      last = round
      for (const share of [0, 0.25, 0.5, 0.75])
        for (const point of along(line, share)) {
          expect(liesIn(corners, point)).toBe(true)
          // Bends are drawn by chords that leave them by a thousandth.
          expect(Math.abs(away([outline], point) - round * spacing)).toBeLessThan(round * spacing * 1.01e-3)
        }
    }
  })

  it.each(SHAPES)('leave no such point of the patch out, and are closed: %s', (_, corners) => {
    const outline: StitchedLine = { points: corners, closed: true }
    const spacing = 0.45
    const lines = echoLines(corners, spacing)
    expect(lines.every(({ closed }) => closed)).toBe(true)
    // From any point the way out to the outline crosses a line at every multiple of the distance: so one is no farther than to the next multiple.
    const next = sequence(corners.length)
    for (let tries = 0; tries < 300; tries++) {
      const point: StitchPoint = [next() * 24 - 10, next() * 24 - 12]
      const deep = liesIn(corners, point) ? away([outline], point) : 0
      if (deep >= spacing) expect(away(lines, point)).toBeLessThanOrEqual((deep % spacing) + spacing * 0.01 * Math.ceil(deep / spacing))
    }
  })

  it('are squares in a square', () => {
    const lines = echoLines(box(6, 6), 1)
    // Inset by one each: sides of four, then two; the third would be a point.
    expect(lines.map(lineLength)).toEqual([16, 8].map((length) => expect.closeTo(length, 9)))
  })

  it('part where the patch is narrow', () => {
    const [, rooms] = SHAPES.find(([name]) => name === 'two rooms and a narrow door') as [string, StitchPoint[]]
    // The door is one wide: the first line passes through it, the second splits in two.
    expect(echoLines(rooms, 0.4)).toHaveLength(1 + 2 * 4)
  })

  it('run once along the middle where two sides meet', () => {
    const lines = echoLines(box(6, 2), 1)
    expect(lines).toHaveLength(1)
    expect(lines[0]?.closed).toBe(false)
    expect(lineLength(lines[0] as StitchedLine)).toBeCloseTo(4, 9)
  })

  it('are none at no distance', () => {
    expect(echoLines(box(6, 2), 0)).toEqual([])
  })
})

describe('a spiral', () => {
  const spacing = 0.45
  const convex = (corners: readonly StitchPoint[]): boolean => {
    const turns = corners.map((b, place) => {
      const [a, c] = [corners.at(place - 1) as StitchPoint, corners[(place + 1) % corners.length] as StitchPoint]
      return Math.sign((b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]))
    })
    return new Set(turns).size === 1
  }

  it.each(SHAPES)('stays inside, at its distance from the outline or farther, and crosses no side: %s', (_, corners) => {
    const outline: StitchedLine = { points: corners, closed: true }
    for (const line of spiralLines(corners, spacing)) {
      expect(line.closed).toBe(false)
      for (const share of [0, 0.2, 0.4, 0.6, 0.8, 1])
        for (const point of along(line, share)) {
          expect(liesIn(corners, point)).toBe(true)
          if (convex(corners)) expect(away([outline], point)).toBeGreaterThan(spacing * 0.998)
        }
    }
  })

  it.each(SHAPES)('leaves out no more of the echo lines than the stretch before each closes: %s', (_, corners) => {
    const spirals = spiralLines(corners, spacing)
    const echoes = echoLines(corners, spacing)
    for (const line of echoes)
      for (const share of [0, 0.5]) for (const point of along(line, share)) expect(away(spirals, point)).toBeLessThanOrEqual(spacing + 1e-9)
    const total = (lines: readonly StitchedLine[]): number => lines.reduce((sum, line) => sum + lineLength(line), 0)
    expect(total(spirals)).toBeGreaterThan(total(echoes) - echoes.length * spacing - 1e-9)
  })

  it.each(SHAPES.filter(([, corners]) => convex(corners)))('is one line in a patch whose corners all point outwards: %s', (_, corners) => {
    expect(spiralLines(corners, spacing)).toHaveLength(1)
  })

  it('starts again in each room behind a narrow door', () => {
    const [, rooms] = SHAPES.find(([name]) => name === 'two rooms and a narrow door') as [string, StitchPoint[]]
    expect(spiralLines(rooms, 0.4)).toHaveLength(2)
  })

  it('goes round a square in whole turns, each left one distance before it closes', () => {
    // Rounds of 16 and 8, each one short, and the steps from one to the next.
    const [spiral] = spiralLines(box(6, 6), 1)
    expect(spiral?.points[0]).toEqual([1, 1])
    expect(lineLength(spiral as StitchedLine)).toBeCloseTo(15 + 1 + 7, 9)
  })

  it('is none at no distance, and where there is no room', () => {
    expect(spiralLines(box(6, 2), 0)).toEqual([])
    expect(spiralLines(box(6, 2), 3)).toEqual([])
  })
})

describe('the fills of a block', () => {
  const plain = [
    ['b', 'b'],
    ['b', 'b'],
    ['b', 'b'],
    ['b', 'b'],
  ] as const
  const fills = (block: Block) => fillsOf(block, report(block).patches)

  it.each(['echo', 'spiral'] as const)('reach every patch: %s', (fill) => {
    const block = starBlock(plain, { quilting: { fill, spacing: '1/4' } })
    const { lines, tooSmall } = fills(block)
    expect(tooSmall).toBe(0)
    for (const { corners } of report(block).patches) {
      const places = corners.map(([x, y]): StitchPoint => [Number(x), Number(y)])
      expect(lines.some(({ points }) => points.every((point) => liesIn(places, point)))).toBe(true)
    }
    if (fill === 'spiral') expect(lines).toHaveLength(report(block).patches.length)
  })

  it('say in how many patches there is no room', () => {
    // Cells of 3 in: a wing's circle is 1.76 in wide, a goose's 2.49 in, so lines 1 in from every side fit in squares and geese alone.
    const { lines, tooSmall } = fills(starBlock(plain, { quilting: { fill: 'echo', spacing: 1 } }))
    expect(tooSmall).toBe(8)
    expect(lines.length).toBeGreaterThan(0)
  })

  it('are those of single units where the maker chose some, and leave borders alone', () => {
    const block = starBlock(plain, { borders: [{ finishedWidth: 3, fabric: 'b' }] })
    const square = block.units.find(({ kind }) => kind === 'square')
    const one = { ...block, units: block.units.map((unit) => (unit === square ? { ...unit, quilting: 'spiral' as const } : unit)) }
    expect(fills(block)).toEqual({ lines: [], tooSmall: 0 })
    expect(fills(one).lines).toHaveLength(1)
    const others = { ...one, quilting: { fill: 'spiral' as const } }
    expect(fills(others).lines).toHaveLength(17)
    expect(fills({ ...others, units: others.units.map((unit) => ({ ...unit, quilting: 'none' as const })) }).lines).toEqual([])
  })
})

describe('how a block is quilted', () => {
  it('is kept with it, whatever else is in its file, and passed over where it is not understood', () => {
    const strange = [7, null, 'x', [], { begin: 'moon', fill: 3, spacing: -1 }, { fill: 'waves', spacing: 'wide', later: { a: 1 } }]
    for (const quilting of strange) {
      const file = JSON.stringify({
        ...starBlock([
          ['b', 'b'],
          ['b', 'b'],
          ['b', 'b'],
          ['b', 'b'],
        ]),
        quilting,
      })
      const read = readBlock(file)
      if (!read.ok) throw new Error(read.place)
      expect(JSON.parse(writeBlock(read.value)).quilting).toEqual(quilting)
      const { begin, spacing, fillOf } = quiltingOf(read.value)
      expect([begin, spacing, fillOf(read.value.units[0] as Unit)]).toEqual([null, 0.5, 'none'])
    }
  })

  it('follows edits, each a step of its own, and leaves no trace when it is undone by hand', () => {
    const block = starBlock([
      ['b', 'b'],
      ['b', 'b'],
      ['b', 'b'],
      ['b', 'b'],
    ])
    const edited = (before: Block, ...edits: Edit[]): Block =>
      edits.reduce((now, { change }) => produce(now, (draft) => change(draft as Parameters<typeof change>[0])), before)
    const first = block.units[0]?.id as string
    const chosen = edited(block, setQuiltingStart('topLeft'), setFill([], 'echo'), setFillSpacing('3/4'), setFill([first], 'spiral'))
    expect(chosen.quilting).toEqual({ begin: 'topLeft', fill: 'echo', spacing: '3/4' })
    expect(chosen.units.map(({ quilting }) => quilting)).toEqual(['spiral', ...block.units.slice(1).map(() => undefined)])
    // To the millimetre: 3/4 in is 1.905 cm.
    expect(edited(chosen, convertMeasure('cm')).quilting?.spacing).toBe(1.9)
    const { quilting: _, ...rest } = edited(chosen, setQuiltingStart(null), setFill([], 'none'))
    expect(rest).toEqual(block)
    expect(edited(block, setQuiltingStart('centre'), setQuiltingStart(null))).toEqual(block)
  })
})

describe('the largest gap', () => {
  it.each([
    // what                                    outline       edge     width                          why
    ['an empty square, its edge held', box(6, 6), 'held', 6, 'the circle in a square'],
    [
      'a right triangle of 3, 4 and 5',
      [
        [0, 0],
        [4, 0],
        [0, 3],
      ],
      'held',
      2,
      'the circle in a triangle: area 6 over half its edge, 6, twice',
    ],
  ] as const)('%s', (_, outline, edge, width, why) => {
    const gap = largestGap([], outline, edge)
    expect(gap?.width, why).toBeLessThanOrEqual(width + 1e-9)
    expect(gap?.atMost, why).toBeGreaterThanOrEqual(width - 1e-9)
    expect((gap?.atMost ?? 0) - (gap?.width ?? 0)).toBeLessThanOrEqual(0.02)
  })

  it('is measured to the stitches alone where the edge is loose, and is none where nothing is stitched', () => {
    const cross: StitchedLine[] = [
      {
        points: [
          [3, 0],
          [3, 6],
        ],
        closed: false,
      },
      {
        points: [
          [0, 3],
          [6, 3],
        ],
        closed: false,
      },
    ]
    expect(largestGap(cross, box(6, 6), 'held')?.width).toBeCloseTo(3, 2)
    // The farthest points are the corners, three from either line.
    expect(largestGap(cross, box(6, 6), 'loose')?.width).toBeGreaterThan(5.97)
    expect(largestGap(cross, box(6, 6), 'loose')?.atMost).toBeGreaterThanOrEqual(6)
    expect(largestGap([], box(6, 6), 'loose')).toBeNull()
  })

  it('is at least as wide as at any point that is tried, and no stitch enters it', () => {
    for (let seed = 1; seed <= 8; seed++) {
      const next = sequence(seed * 13)
      const outline = star(next, 9)
      const point = (): StitchPoint => [next() * 16 - 8, next() * 16 - 8]
      const lines = Array.from({ length: 6 }, (): StitchedLine => ({ points: [point(), point(), point()], closed: seed % 2 === 0 }))
      for (const edge of ['held', 'loose'] as const) {
        const stitched = edge === 'held' ? [...lines, { points: outline, closed: true }] : lines
        const gap = largestGap(lines, outline, edge)
        if (gap === null) throw new Error('no gap')
        expect(liesIn(outline, gap.at)).toBe(true)
        expect(2 * away(stitched, gap.at)).toBeCloseTo(gap.width, 9)
        for (let tries = 0; tries < 400; tries++) {
          const at = point()
          if (liesIn(outline, at)) expect(2 * away(stitched, at)).toBeLessThanOrEqual(gap.atMost + 1e-9)
        }
      }
    }
  })

  it('is found among thousands of stretches, and grows no wider by a fill', () => {
    const { ditch } = report(manyUnits(12))
    const routes = routeLines(ditch)
    const gap = largestGap(routes, box(12, 12))
    // The squares of one cell are the widest patches.
    expect(gap?.width).toBeLessThanOrEqual(1)
    expect(gap?.atMost).toBeGreaterThanOrEqual(1)
    const filled = largestGap([...routes, ...echoLines(box(1, 1), 0.2)], box(1, 1))
    expect(filled?.atMost).toBeLessThan(0.5)
  })
})

describe('what a batting holds across', () => {
  it.each([
    ['cotton-scrim', 10, '[S168]'],
    ['cotton-needled', 8, '[S168]'],
    ['bamboo', 8, '[S168]'],
    ['wool', 3, '[S168]'],
    ['polyester-thick', 3, '[S168]'],
    ['cotton-bleached', 1.5, '[S168], the lower of 1 1/2 to 2'],
    ['cotton-natural', 4, '[S170]'],
    ['cotton-no-scrim', 2, '[S171]'],
    ['in-use', 3, '[S169]'],
  ] as const)('%s: %d in', (id, most, why) => {
    const batting = BATTINGS.find((one) => one.id === id)
    if (batting === undefined) throw new Error('no such batting')
    expect(batting.most, why).toBe(most)
    expect(why).toContain(batting.source)
    expect(mostApart(batting, 'cm')).toBeCloseTo(most * 2.54, 9)
    expect(holdsAcross({ width: most - 0.02, atMost: most }, 'in', batting)).toBe('holds')
    expect(holdsAcross({ width: most - 0.01, atMost: most + 0.01 }, 'in', batting)).toBe('close')
    expect(holdsAcross({ width: most + 0.01, atMost: most + 0.02 }, 'in', batting)).toBe('too wide')
    expect(holdsAcross({ width: most + 0.01, atMost: most + 0.02 }, 'cm', batting)).toBe('holds')
  })
})
