import { describe, expect, it } from 'vitest'
import { distanceBetween, type StitchPoint, routeLines, type StitchedLine } from '../../geometry/quilting/stitchedLines.ts'
import { quiltingSvg } from '../../geometry/printing/quiltingSvg.ts'
import { needleAt, timedPoints } from '../../geometry/quilting/needlePosition.ts'
import { viewDrawing } from '../../geometry/printing/blockViews.ts'
import { numberedStops } from '../../geometry/quilting/numberedStops.ts'
import { quiltingRoute, report } from '../../geometry/report/wholeReport.ts'
import { bookletOf } from '../../geometry/writing/booklet/booklet.ts'
import type { Drawing } from '../../geometry/writing/booklet/values.ts'
import type { Block } from '../../geometry/values/block.ts'
import { manyUnits } from '../bench/blocks.ts'
import { blockOf, square, star } from '../help.ts'
import { lineLength } from './lineLength.ts'

const wings = [
  ['b', 'b'],
  ['b', 'c'],
  ['c', 'b'],
  ['b', 'b'],
] as const

const BLOCKS: readonly [string, Block][] = [
  ['a star', star(wings)],
  ['a star with a border', star(wings, { borders: [{ finishedWidth: 1, fabric: 'b' }] })],
  ['thirds of a cell', blockOf(1, 1, [square('a', [0, 0], ['1/3' as never, 1]), square('b', ['1/3' as never, 0], ['2/3' as never, 1], 'b')])],
  ['five by five units', manyUnits(5)],
]

describe('the needle along its lines', () => {
  it.each(BLOCKS)('has stitched the whole length at the end, and is never off by more than it has gone on: %s', (_, block) => {
    const { ditch } = report(block)
    const cell = Number(block.grid.cell)
    const lines = routeLines(ditch)
    const timed = timedPoints(lines, cell)
    expect(timed.at(-1)?.at).toBeCloseTo(ditch.length, 9)
    expect(lines.reduce((sum, line) => sum + lineLength(line), 0) * cell).toBeCloseTo(ditch.length, 9)
    let last = needleAt(timed, 0)
    expect(last?.place).toEqual(lines[0]?.points[0])
    for (let length = 0.1; length < ditch.length; length += 0.1) {
      const needle = needleAt(timed, length)
      if (needle === null || last === null) throw new Error('no needle')
      if (needle.line === last.line) expect(distanceBetween(needle.place, last.place) * cell).toBeLessThanOrEqual(0.1 + 1e-9)
      expect(needle.toward).toBeGreaterThanOrEqual(last.toward)
      // What is stitched until the point ahead, less the way there, is the given length.
      const ahead = timed[needle.toward]
      expect((ahead?.at ?? 0) - distanceBetween(needle.place, ahead?.place as StitchPoint) * cell).toBeCloseTo(length, 9)
      last = needle
    }
  })

  it('leaps from the end of one line to the start of the next, and stands still before and after', () => {
    const lines: StitchedLine[] = [
      {
        points: [
          [0, 0],
          [2, 0],
        ],
        closed: false,
      },
      {
        points: [
          [5, 5],
          [6, 5],
          [6, 6],
        ],
        closed: true,
      },
    ]
    const timed = timedPoints(lines)
    expect(needleAt(timed, -1)).toMatchObject({ line: 0, place: [0, 0] })
    expect(needleAt(timed, 1)).toMatchObject({ line: 0, place: [1, 0] })
    expect(needleAt(timed, 2.5)).toMatchObject({ line: 1, place: [5.5, 5] })
    expect(needleAt(timed, 99)).toMatchObject({ line: 1, place: [5, 5] })
    expect(needleAt([], 1)).toBeNull()
  })
})

describe('the picture to scale', () => {
  const drawn = (block: Block, fills: readonly StitchedLine[] = []): string =>
    quiltingSvg({
      title: `${block.name} <quilting> & "more"`,
      unit: block.measure.unit,
      cell: Number(block.grid.cell),
      columns: block.grid.columns,
      rows: block.grid.rows,
      routes: routeLines(report(block).ditch),
      fills,
    })

  const pathsOf = (svg: string, kind: string): StitchedLine[] =>
    [...svg.matchAll(new RegExp(`<path class="${kind}" d="([^"]*)"`, 'g'))].map(([, way]) => ({
      points: [...(way as string).matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]): StitchPoint => [Number(x), Number(y)]),
      closed: (way as string).endsWith('Z'),
    }))

  it.each(BLOCKS)('measures back to the length of the report: %s', (_, block) => {
    const { ditch } = report(block)
    const paths = pathsOf(drawn(block), 'route')
    expect(paths).toHaveLength(ditch.routes.length)
    const measured = paths.reduce((sum, path) => sum + lineLength(path), 0)
    // Places are rounded to a ten-thousandth.
    expect(Math.abs(measured - ditch.length)).toBeLessThan(1e-4 * paths.reduce((sum, { points }) => sum + points.length, 0) + 1e-9)
  })

  it.each([
    ['in', 3],
    ['cm', 7.5],
  ] as const)('has one unit for its size and for what is drawn, in %s', (unit, cell) => {
    const block: Block = { ...star(wings), measure: { unit }, grid: { columns: 4, rows: 4, cell } }
    const svg = drawn(block)
    const [, width, height, ...view] = /width="([\d.]+)(?:in|cm)" height="([\d.]+)(?:in|cm)" viewBox="(\S+) (\S+) (\S+) (\S+)"/.exec(
      svg,
    ) as RegExpExecArray
    expect(svg).toContain(`width="${width}${unit}" height="${height}${unit}"`)
    expect(view.slice(2)).toEqual([width, height])
    const [left, top] = view.map(Number) as [number, number]
    expect(Number(width)).toBeCloseTo(4 * cell - 2 * left, 9)
    expect(svg).toContain(`<rect class="block" width="${4 * cell}" height="${4 * cell}"`)
    for (const { points } of pathsOf(svg, 'route'))
      for (const [x, y] of points) {
        expect(Math.min(x - left, y - top)).toBeGreaterThan(0)
        expect(Math.max(x, y)).toBeLessThanOrEqual(4 * cell)
      }
  })

  it('numbers the starts, escapes the title and draws fills apart', () => {
    const fill: StitchedLine = {
      points: [
        [1, 1],
        [2, 1],
        [2, 2],
      ],
      closed: true,
    }
    const svg = drawn(star(wings), [fill])
    expect(svg).toContain('<title>Test &lt;quilting&gt; &amp; &quot;more&quot;</title>')
    expect([...svg.matchAll(/<text[^>]*>(\d+)<\/text>/g)].map(([, number]) => number)).toEqual(['1'])
    expect(pathsOf(svg, 'fill')).toEqual([
      {
        points: [
          [3, 3],
          [6, 3],
          [6, 6],
        ],
        closed: true,
      },
    ])
    const [x, y] = pathsOf(svg, 'route')[0]?.points[0] ?? []
    expect(svg).toContain(`<circle cx="${x}" cy="${y}"`)
  })
})

describe('what the maker chose', () => {
  const chosen = star(wings, { quilting: { begin: 'bottomRight', fill: 'spiral', spacing: '1/2' } })
  const stitches = ({ marks }: Pick<Drawing, 'marks'>) => marks.filter((mark) => mark.type === 'line' && mark.style === 'stitch')

  it('is drawn in pictures and printed in the booklet: the fills too, and the line from where she starts it', () => {
    const whole = report(chosen)
    expect(stitches(viewDrawing('quilting', whole, chosen))).toHaveLength(17)
    const step = bookletOf(whole, chosen).parts.find(({ key }) => key === 'quilt')?.steps[0]
    expect(stitches(step?.drawings[0] as Drawing)).toHaveLength(17)
    expect(step?.sentences.join(' ')).toContain('Then fill the patches as the dashed lines show: 17 lines, 1/2 in apart.')
    const first = routeLines(quiltingRoute(chosen))[0]?.points[0] as StitchPoint
    // A star's seams end beside the corner, one unit from it.
    expect(distanceBetween(first, [4, 4])).toBeCloseTo(1, 9)
    const { marks = [], width = 0, height = 0 } = step?.drawings[0] ?? {}
    const start = marks.find((mark) => mark.type === 'stop' && mark.text.startsWith('Start 1'))
    if (start?.type !== 'stop') throw new Error('no start')
    expect(start.at[0] / width + start.at[1] / height).toBeGreaterThan(1.5)
  })

  it('leaves the report as it was: fills are stitched besides the seams', () => {
    expect(report(chosen)).toEqual(report(star(wings)))
  })
})

describe('the stops of a line', () => {
  it('are numbered in the order of stitching, a place that is passed twice with both numbers, a closed line to its start again', () => {
    const [a, b, c, d] = [
      [0, 0],
      [1, 0],
      [1, 1],
      [2, 0],
    ] as const
    const lines = [
      { points: [a, b, c], closed: true },
      { points: [b, d], closed: false },
    ]
    expect(numberedStops(lines)).toEqual([
      { at: a, numbers: [1, 4], starts: [1], ends: [4] },
      { at: b, numbers: [2, 5], starts: [5], ends: [] },
      { at: c, numbers: [3], starts: [], ends: [] },
      { at: d, numbers: [6], starts: [], ends: [6] },
    ])
  })

  it('are none where a line runs straight on', () => {
    const straight = { points: Array.from({ length: 80 }, (_, x): StitchPoint => [x, x / 3]), closed: false }
    expect(numberedStops([straight]).map(({ numbers }) => numbers)).toEqual([[1], [2]])
  })

  it('are the starts alone where all of them would hide the line', () => {
    const long = { points: Array.from({ length: 80 }, (_, x): StitchPoint => [x, x % 2]), closed: false }
    expect(numberedStops([long])).toHaveLength(80)
    const other = { ...long, points: long.points.map(([x, y]): StitchPoint => [x, y + 2]) }
    expect(numberedStops([long, other])).toEqual([
      { at: [0, 0], numbers: [1], starts: [1], ends: [] },
      { at: [0, 2], numbers: [2], starts: [2], ends: [] },
    ])
  })
})
