/** A few pictures as they are drawn, for a person to look at; and what must be true of them whatever the pen. */
import { produce } from 'immer'
import { describe, expect, it } from 'vitest'
import { type Block, type BookletStep, bookletOf, type Drawing, drawingSvg, type Mark, report, turnBlock, type Unit } from '../../geometry/index.ts'
import { blockOf, square } from '../help.ts'
import { BLOCKS } from './blocks.ts'

const steps = (block: Block): BookletStep[] => bookletOf(report(block), block).parts.flatMap(({ steps: all }) => [...all])

function picture(block: Block, title: RegExp, shows: RegExp): Drawing {
  const found = steps(block)
    .filter((step) => title.test(step.title))
    .flatMap(({ drawings }) => drawings)
    .find((drawing) => shows.test(drawing.title))
  if (found === undefined) throw new Error(`no picture of ${title} that shows ${shows}`)
  return found
}

const marks = <Type extends Mark['type']>({ marks: all }: Drawing, type: Type): Extract<Mark, { type: Type }>[] =>
  all.filter((mark): mark is Extract<Mark, { type: Type }> => mark.type === type)

describe('as drawn', () => {
  it.each([
    ['star', /^Make 4 geese/, /^The large square/, 'evening-star/batch'],
    ['star', /^Make 4 geese/, /^Right-handed, first cut/, 'evening-star/trim'],
    ['star', /^Join the rows/, /apart/, 'evening-star/rows'],
    ['whirl', /^Sew section 1/, /wrong side/, 'bright-whirl/wrong-side'],
    ['whirl', /^Sew section 1/, /apart/, 'bright-whirl/partial'],
    ['attic', /^Join the sections/, /apart/, 'attic-window/set-in'],
    ['framed', /second border: the sides/, /strips/, 'framed-star-in-centimetres/border'],
  ] as const)('%s, %s', async (name, title, shows, file) => {
    const block = BLOCKS[name]
    const svg = drawingSvg(picture(block, title, shows), { unit: block.measure.unit, fabrics: block.fabrics })
    await expect(svg).toMatchFileSnapshot(`../blocks/${file}.svg`)
  })
})

describe('to scale', () => {
  it('a batch is drawn in the sizes that are cut: 7 1/4 and 3 7/8 for geese 6 by 3 [S1][S2][S10]', () => {
    const [large, one] = marks(picture(BLOCKS.star, /^Make 4 geese/, /^The large square/), 'area')
    expect([sideOf(large), sideOf(one)]).toEqual([7.25, 3.875])
  })

  it('stitches lie an allowance beside the line, on both sides of it', () => {
    const drawn = marks(picture(BLOCKS.star, /^Make 4 geese/, /^The large square/), 'line')
    const line = drawn.find(({ style }) => style === 'marked')?.points as [[number, number], [number, number]]
    const sewn = marks(picture(BLOCKS.star, /^Make 4 geese/, /^The same, with stitches/), 'line')
    const away = sewn.filter(({ style }) => style === 'stitch').map(({ points }) => fromLine(points[0] as [number, number], line))
    expect(away.map((far) => Math.round(far * 1e4) / 1e4).sort()).toEqual([-0.25, 0.25])
  })

  it('the tip of a goose lies 1/4 below the raw edge, in the middle [S17][S8]', () => {
    const drawing = picture(BLOCKS.star, /^Make 4 geese/, /^Right-handed, first cut/)
    const ruler = marks(drawing, 'line').find(({ style }) => style === 'blade')?.points as [number, number][]
    const [corner] = ruler.slice(1) as [[number, number]]
    const [tip] = marks(drawing, 'point').map(({ at }) => at)
    expect(tip?.map((place, axis) => Math.abs(place - (corner[axis] as number)))).toEqual([expect.closeTo(3.25, 5), expect.closeTo(0.25, 5)])
  })

  it('a picture of the wrong side is the mirror image of the right one', () => {
    const [right, wrong] = [/apart/, /wrong side/].map((shows) => picture(BLOCKS.whirl, /^Sew section 1/, shows)) as [Drawing, Drawing]
    // The middle of the whirl lies over the left part of its bar.
    const part = (drawing: Drawing): number => {
      const xs =
        marks(drawing, 'area')
          .find(({ fabric }) => fabric === 'd')
          ?.outline.map(([x]) => x) ?? []
      return (Math.min(...xs) + Math.max(...xs)) / 2 / drawing.width
    }
    expect(part(right)).toBeLessThan(0.45)
    expect(part(wrong)).toBeGreaterThan(0.55)
    expect(marks(wrong, 'arrow')).toHaveLength(marks(right, 'arrow').length)
  })

  it('shows every meeting of a join where it lies, once', () => {
    const block = BLOCKS.star
    const said = report(block)
    const step = steps(block).find(({ title }) => title === 'Join the rows') as BookletStep
    const met = said.meetings.filter(({ join }) => step.joins.includes(join)).map(({ verdict }) => verdict)
    const drawn = marks(step.drawings[0] as Drawing, 'point').map(({ mark }) => mark)
    expect([...drawn].sort()).toEqual([...met].sort())
  })

  it('presses in the picture as the report says, in words and arrows', () => {
    const block = BLOCKS.lantern
    const step = steps(block).find(({ title }) => title === 'Sew row 2') as BookletStep
    expect(step.sentences).toContain('Press both seams toward D.')
    const [one, other] = marks(step.drawings[0] as Drawing, 'arrow')
    expect([Math.sign((one?.to[0] ?? 0) - (one?.from[0] ?? 0)), Math.sign((other?.to[0] ?? 0) - (other?.from[0] ?? 0))]).toEqual([1, -1])
  })
})

/** Half-square triangles eight at a time, two hourglasses at a time, and a clipped unit wider than high. */
const bulk = blockOf(
  4,
  4,
  [
    ...[0, 1, 2, 3, 4, 5, 6, 7].map(
      (cell): Unit => ({
        id: `h${cell}`,
        kind: 'hst',
        at: [cell % 4, Math.floor(cell / 4)],
        size: [1, 1],
        method: 'hst-8',
        fabrics: { upper: 'a', lower: 'b' },
      }),
    ),
    {
      id: 'clipped',
      kind: 'cornered',
      at: [0, 2],
      size: [3, 2],
      corner: '1/2',
      method: 'corner-flip',
      fabrics: { centre: 'a', topLeft: 'b', bottomRight: 'c' },
    },
    square('s', [3, 2], [1, 2], 'd'),
  ],
  { name: 'Bulk' },
)
const UNIT_BLOCKS: (readonly [string, Block])[] = [...Object.entries(BLOCKS), ['bulk', bulk]]

describe('of every block', () => {
  it.each(Object.entries(BLOCKS))('%s: all that is drawn lies in its picture, with the same narrow margin on every side', (_, block) => {
    for (const { width, height, marks: all, title } of steps(block).flatMap(({ drawings }) => drawings)) {
      const spots = all.flatMap(spotsOf)
      const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)]
      const margins = [Math.min(...xs), Math.min(...ys), width - Math.max(...xs), height - Math.max(...ys)]
      // Wide enough for a line's own width, and never so wide that the picture is mostly paper.
      expect(Math.min(...margins), title).toBeGreaterThan(0)
      expect(Math.max(...margins), title).toBeLessThan(Math.min(width, height) / 4)
      expect(Math.max(...margins) - Math.min(...margins), title).toBeLessThan(1e-5)
    }
  })

  it.each(UNIT_BLOCKS)('%s: where a unit is made, each number and letter lies on a piece of fabric', (_, block) => {
    for (const { marks: all, title } of madePictures(block)) {
      // A ruler's numbers lie on the ruler.
      if (all.some((mark) => mark.type === 'line' && mark.style === 'blade')) continue
      const outlines = all.flatMap((mark) => (mark.type === 'area' ? [mark.outline] : []))
      for (const mark of all)
        if (mark.type === 'text' && /^([A-Z]\d*|\d)$/.test(mark.text))
          expect(
            outlines.some((outline) => isOn(outline, mark.at)),
            `${mark.text} in: ${title}`,
          ).toBe(true)
    }
  })

  it.each(UNIT_BLOCKS)('%s: a cut through one whole piece runs from edge to edge of it', (_, block) => {
    for (const { marks: all, title } of madePictures(block)) {
      const areas = all.flatMap((mark) => (mark.type === 'area' ? [mark.outline] : []))
      const edges = ([0, 1] as const).map((axis) => rangeOf(areas.flat().map((corner) => corner[axis])))
      const whole = areas.some((corners) => corners.length === 4 && corners.every((corner) => onEdges(corner, edges) === 2))
      for (const mark of whole ? all : [])
        if (mark.type === 'line' && mark.style === 'cut' && mark.closed !== true)
          for (const spot of [mark.points[0], mark.points.at(-1)]) expect(onEdges(spot as Spot, edges), title).toBeGreaterThan(0)
    }
  })

  it.each([0, 1, 2, 3])(
    'squares flipped onto corners are drawn as they are cut, after %d quarter turns: 1 1/2 finished and an allowance on each side',
    (turns) => {
      const turned = Array.from({ length: turns }).reduce<Block>((block) => produce(block, turnBlock().change), bulk)
      const flipped = madePictures(turned).flatMap(({ marks: all }) =>
        all.filter((mark) => mark.type === 'area' && mark.side === 'wrong' && ['b', 'c'].includes(mark.fabric ?? '') && mark.outline.length === 4),
      )
      const sides = flipped.map((mark) => sideOf(mark as Extract<Mark, { type: 'area' }>))
      expect(sides.filter((side) => side === 2).length).toBeGreaterThanOrEqual(2)
    },
  )

  // A unit is made in the hand, before it lies anywhere: how the block lies on the screen cannot change it.
  it.each(UNIT_BLOCKS.filter(([name]) => ['star', 'framed', 'snowball', 'dutchmansPuzzle', 'friendshipStar', 'railFence', 'bulk'].includes(name)))(
    '%s: units are pictured alike however the block is turned',
    (_, asLaid) => {
      const told = (block: Block): string[] =>
        madePictures(block)
          .map(({ title, width, height, marks: all }) => JSON.stringify([title, width, height, all.map(({ type }) => type).sort()]))
          .sort()
      const upright = told(asLaid)
      const turned = produce(asLaid, turnBlock().change)
      expect(upright.length).toBeGreaterThan(0)
      expect(told(turned)).toEqual(upright)
    },
  )
})

const made = new Map<Block, readonly Drawing[]>()

/** The pictures of the steps in which units are made; worked out once for each block. */
function madePictures(block: Block): readonly Drawing[] {
  const known = made.get(block)
  if (known !== undefined) return known
  const units = bookletOf(report(block), block).parts.filter(({ key }) => key === 'units')
  const drawings = units.flatMap((part) => part.steps.flatMap((step) => step.drawings))
  made.set(block, drawings)
  return drawings
}

type Spot = readonly [number, number]

const rangeOf = (places: readonly number[]): readonly [number, number] => [Math.min(...places), Math.max(...places)]

/** On how many of the edges of a box a spot lies: two at a corner. */
const onEdges = (spot: Spot, edges: readonly Spot[]): number =>
  edges.filter((range, axis) => range.some((edge) => Math.abs(edge - (spot[axis] as number)) < 1e-4)).length

/** Whether a spot lies in an outline, by the corners that a ray to the right passes. */
function isOn(outline: readonly Spot[], [x, y]: Spot): boolean {
  const crossed = outline.filter(([ax, ay], at) => {
    const [bx, by] = outline[(at + 1) % outline.length] as readonly [number, number]
    return ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)
  })
  return crossed.length % 2 === 1
}

function spotsOf(mark: Mark): readonly Spot[] {
  if (mark.type === 'area') return mark.outline
  if ('points' in mark) return mark.points
  return mark.type === 'arrow' ? [mark.from, mark.to] : [mark.at]
}

function sideOf(mark: Extract<Mark, { type: 'area' }> | undefined): number {
  const xs = mark?.outline.map(([x]) => x) ?? []
  return Math.round((Math.max(...xs) - Math.min(...xs)) * 1e4) / 1e4
}

function fromLine([x, y]: readonly [number, number], [[ax, ay], [bx, by]]: readonly [readonly [number, number], readonly [number, number]]): number {
  return ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay)
}
