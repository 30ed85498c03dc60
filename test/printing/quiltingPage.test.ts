/** The printed quilting line, walked by its own rule: from start to end, number by number, along the arrows, every seam of the block is sewn. */
import { describe, expect, it } from 'vitest'
import { type Block, bookletOf, report } from '../../geometry/index.ts'
import { cellOf } from '../../geometry/block/lengthsOf.ts'
import { toNumber } from '../../geometry/exact/rational.ts'
import { eveningStar } from '../../web/document/starters/eveningStar.ts'
import { lantern } from '../../web/document/starters/lantern.ts'
import { blockOf, sequence } from '../help.ts'
import { squaresAndBars, tiling } from '../layouts.ts'
import * as draw from '../published/blocks.ts'
import { BLOCKS } from '../writing/blocks.ts'
import { manySteps } from './blocks.ts'
import { inkOf, picturesOf, type Spot, seamsOf, walkPicture } from './quiltingWalk.ts'

const scattered = (seed: number, side: number): Block => blockOf(side, side, tiling(sequence(seed), side, side), { name: `Scattered ${seed}` })

const ALL: readonly (readonly [string, Block])[] = [
  ...Object.entries(draw).flatMap(([name, make]) => (make.length === 0 ? [[name, (make as () => Block)()] as const] : [])),
  ...Object.entries(BLOCKS),
  ['starter star', eveningStar],
  ['starter lantern', lantern],
  ['star from the centre', { ...BLOCKS.star, quilting: { begin: 'centre' } }],
  ['star from a corner', { ...BLOCKS.framed, quilting: { begin: 'bottomLeft' } }],
  ['star with fills', { ...BLOCKS.star, quilting: { fill: 'echo' } } as Block],
  ['many steps', manySteps()],
  ...[1, 2, 3, 4, 5, 6].map((seed) => [`scattered ${seed}`, scattered(seed, 4)] as const),
  ...[7, 8].map((seed) => [`large and scattered ${seed}`, scattered(seed, 9)] as const),
  ...[1, 2, 3, 4].map((seed) => [`squares and bars ${seed}`, squaresAndBars(sequence(seed))] as const),
]

/** The width of a picture on a page of A4, in points; a part of a line is shown no taller than this. */
const [WIDE, PART] = [453, 300] as const

describe.each(ALL)('the quilting line of %s', (_, block) => {
  const said = report(block)
  const step = bookletOf(said, block)
    .parts.flatMap(({ steps }) => steps)
    .find(({ key }) => key === 'quilt')
  const cell = toNumber(cellOf(block))
  const seams = seamsOf(said)

  it('sews every seam when it is walked as it is printed, and nothing else', () => {
    if (step === undefined) return expect(seams.length === 0 || said.ditch.routes.length === 0).toBe(true)
    const sewn: (readonly [Spot, Spot])[] = []
    for (const { drawing, left, top } of picturesOf(step.drawings, said, cell)) {
      const most = step.drawings.length > 1 ? PART : WIDE
      const scale = Math.min(46, WIDE / drawing.width, most / drawing.height)
      const onPage = ([x, y]: Spot): Spot => [(x - left) * cell * scale, (y - top) * cell * scale]
      const corners = seams.flat().map(onPage)
      const { stumbles, sewn: here } = walkPicture(inkOf(drawing, scale), corners)
      expect(stumbles).toEqual([])
      for (const leg of here) sewn.push(leg.map(([x, y]): Spot => [x / scale / cell + left, y / scale / cell + top]) as [Spot, Spot])
    }
    const times = seams.map((seam) => sewn.filter((leg) => covers(leg, seam)).length)
    expect(seams.filter((_seam, at) => times[at] === 0)).toEqual([])
    expect(Math.max(...times)).toBeLessThanOrEqual(2)
    const long = (stretches: readonly (readonly [Spot, Spot])[]): number =>
      stretches.reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0)
    expect(long(sewn)).toBeCloseTo(
      seams.reduce((sum, seam, at) => sum + (times[at] as number) * long([seam]), 0),
      3,
    )
  })
})

function covers([[ax, ay], [bx, by]]: readonly [Spot, Spot], [from, to]: readonly [Spot, Spot]): boolean {
  const [dx, dy] = [bx - ax, by - ay]
  const square = dx * dx + dy * dy
  return [from, to].every(([x, y]) => {
    const part = ((x - ax) * dx + (y - ay) * dy) / square
    return part > -1e-3 && part < 1 + 1e-3 && Math.abs((x - ax) * dy - (y - ay) * dx) < 1e-3 * Math.sqrt(square)
  })
}
