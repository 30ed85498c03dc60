/** One pen draws screens, pages and files alike: SVG and page get the same path; and what lies inside a PDF is found again. */
import { deflateSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { type Block, type Drawing, drawingSvg, filesInPdf, isPdf, layersSvg, report, VIEWS, viewSvg } from '../../geometry/index.ts'
import { viewDrawing } from '../../geometry/printing/blockViews.ts'
import { fabricFills } from '../../geometry/printing/fabricFill.ts'
import { drawPicture } from '../../geometry/printing/drawPicture.ts'
import type { Paint, Surface, PenPath } from '../../geometry/printing/pen.ts'
import { STAR } from '../writing/star.ts'

/** A surface that only remembers where the pen went. */
function recorder(): { surface: Surface; ways: { corners: [number, number][]; closed: boolean; paint: Paint }[]; words: string[] } {
  const ways: { corners: [number, number][]; closed: boolean; paint: Paint }[] = []
  const words: string[] = []
  const path = (way: PenPath, paint: Paint): void => {
    const seen = { corners: [] as [number, number][], closed: false, paint }
    way({ moveTo: (x, y) => seen.corners.push([x, y]), lineTo: (x, y) => seen.corners.push([x, y]), close: () => (seen.closed = true) })
    ways.push(seen)
  }
  return {
    surface: { path, within: (_, inside) => inside(), words: ({ text }) => words.push(text), width: ({ text, size }) => (text.length * size) / 2 },
    ways,
    words,
  }
}

const SQUARE: Drawing = {
  width: 4,
  height: 2,
  title: 'A patch, its corner "flipped" & sewn',
  marks: [
    {
      type: 'area',
      outline: [
        [0, 0],
        [4, 0],
        [4, 2],
        [0, 2],
      ],
      fabric: 'moss',
      side: 'right',
      line: 'cut',
    },
    {
      type: 'line',
      points: [
        [0, 0],
        [2, 2],
      ],
      style: 'stitch',
    },
    { type: 'arrow', from: [1, 1], to: [2, 1], means: 'press' },
    { type: 'point', at: [2, 1], mark: 'nests' },
    { type: 'text', at: [3, 1], text: '6 1/2 < 7', size: 'normal', align: 'middle' },
  ],
}

describe('a picture', () => {
  it('is drawn to scale from its place', () => {
    const { surface, ways, words } = recorder()
    drawPicture(surface, SQUARE, { at: [10, 20], scale: 5, fabricFill: fabricFills(STAR.fabrics) })
    expect(ways[0]).toMatchObject({
      corners: [
        [10, 20],
        [30, 20],
        [30, 30],
        [10, 30],
      ],
      closed: true,
      paint: { fill: '#5c7a4b' },
    })
    expect(words).toEqual(['6 1/2 < 7'])
  })

  it('shows neighbours of one dark or one white cloth apart: their edge is unlike the cloth', () => {
    const cloth = fabricFills([
      { id: 'night', name: 'Night', colour: '#000000' },
      { id: 'snow', name: 'Snow', colour: '#ffffff' },
    ])
    for (const fabric of ['night', 'snow']) {
      const { fill, edge, hatch, wrong } = cloth(fabric)
      // WCAG 2.2, 1.4.11: 3 to 1 between what must be told apart.
      expect(contrast(fill, edge)).toBeGreaterThan(3)
      expect(hatch).not.toBe(wrong)
    }
  })

  it('is SVG that prints at its own size, its words safe', () => {
    const svg = drawingSvg(SQUARE, { unit: 'in', fabrics: STAR.fabrics })
    // Two margins of 9 points round 4 by 2 in.
    expect(svg).toMatch(/^<svg [^>]*width="4\.25in" height="2\.25in" viewBox="0 0 306 162"/)
    expect(svg).toContain('<title>A patch, its corner &quot;flipped&quot; &amp; sewn</title>')
    expect(svg).toContain('>6 1/2 &lt; 7</text>')
    expect(svg).toContain('M9 9L297 9L297 153L9 153Z')
  })

  it('draws a print to scale, within its patch', () => {
    const [linen, moss] = STAR.fabrics as [Block['fabrics'][number], Block['fabrics'][number]]
    const printed = [linen, { ...moss, print: { kind: 'dots', second: '#fefefe', repeat: '1/2' } as const }]
    const plain = drawingSvg(SQUARE, { unit: 'in', fabrics: [linen, moss] })
    const svg = drawingSvg(SQUARE, { unit: 'in', fabrics: printed })
    expect(plain).not.toContain('clipPath')
    expect(svg).toContain('clipPath')
    // 8 by 4 repeats of half an inch, two dots in each, each a way of its own: the repeat is the measure's unit, the dots are ours.
    const dots = [...svg.matchAll(/<path d="([^"]*)" fill="#fefefe"\/>/g)].flatMap(([, way]) => (way as string).split('M').slice(1))
    expect(dots.length).toBe(2 * 8 * 4)
  })
})

function contrast(one: string, other: string): number {
  const light = (colour: string): number => {
    const [r, g, b] = [1, 3, 5].map((at) => {
      const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255
      return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4
    }) as [number, number, number]
    return 0.2126 * r + 0.7152 * g + 0.0722 * b
  }
  const [a, b] = [light(one), light(other)].sort((x, y) => y - x) as [number, number]
  return (a + 0.05) / (b + 0.05)
}

describe('views of a block', () => {
  const said = report(STAR)

  it.each(VIEWS)('%s is the block at its own size', (view) => {
    const drawing = viewDrawing(view, said, STAR)
    expect([drawing.width, drawing.height]).toEqual([12, 12])
    const areas = drawing.marks.flatMap((mark) => (mark.type === 'area' ? [mark.outline] : []))
    const area = areas.map(
      (corners) =>
        Math.abs(
          corners.reduce(
            (sum, [x, y], at) =>
              sum + x * (corners.at(at - 1) as readonly [number, number])[1] - (corners.at(at - 1) as readonly [number, number])[0] * y,
            0,
          ),
        ) / 2,
    )
    // 12 by 12 in, whatever the view.
    expect(area.reduce((sum, one) => sum + one)).toBeCloseTo(144, 9)
    expect(viewSvg(view, said, STAR)).toMatch(/^<svg [^>]*width="12\.25in"/)
  })

  it('numbers every seam in sewing order, and turns the wrong side over', () => {
    const numbers = viewDrawing('seams', said, STAR).marks.flatMap((mark) => (mark.type === 'point' ? [Number(mark.text)] : []))
    expect(numbers).toEqual(said.joins.map((_, at) => at + 1))
    const first = (view: 'cloth' | 'wrong'): readonly (readonly [number, number])[] => {
      const [mark] = viewDrawing(view, said, STAR).marks
      return mark?.type === 'area' ? mark.outline : []
    }
    expect(first('wrong')).toEqual(first('cloth').map(([x, y]) => [12 - x, y]))
  })
})

it('draws layers of cloth, each number once where it fills most', () => {
  const cells = [
    { poly: [0, 0, 4, 0, 4, 2, 0, 2], layers: 1 },
    { poly: [0, 2, 4, 2, 4, 3, 0, 3], layers: 3 },
    { poly: [0, 3, 4, 3, 4, 4, 0, 4], layers: 3 },
  ]
  const svg = layersSvg(cells, report(STAR), STAR, (layers) => (layers === 1 ? '#eeeeee' : '#333333'))
  // A cell is 3 in: 216 points; the picture begins 9 points in.
  expect(svg).toContain('M9 9L873 9L873 441L9 441Z')
  expect([...svg.matchAll(/fill="(#eeeeee|#333333)"/g)].map(([, colour]) => colour)).toEqual(['#eeeeee', '#333333', '#333333'])
  expect([...svg.matchAll(/>(\d+)<\/text>/g)].map(([, number]) => number)).toEqual(['1', '3'])
})

describe('the wrong side', () => {
  it('of a block of any size is hatched with lines that can be counted', () => {
    const huge = { ...STAR, grid: { ...STAR.grid, cell: 1_000_000 } }
    expect(viewSvg('wrong', report(huge), huge).length).toBeLessThan(10_000_000)
  })

  const said = report(STAR)
  const patches = new Map(
    said.patches.map((patch) => [patch.id, patch.corners.map((corner) => corner.map((cell) => Number(cell) * 3) as [number, number])]),
  )
  const sides = new Map(said.joins.map(({ id, sides }) => [id, sides]))
  const partsOf = (piece: string): string[] => sides.get(piece)?.flatMap(partsOf) ?? [piece]

  it('has an arrow on each seam that points over the cloth it is pressed toward', () => {
    const arrows = viewDrawing('wrong', said, STAR).marks.flatMap((mark) => (mark.type === 'arrow' ? [mark] : []))
    expect(arrows).toHaveLength(said.joins.length)
    said.joins.forEach(({ sides, press }, at) => {
      const [x, y] = (arrows[at] ?? { to: [-1, -1] as const }).to
      // The wrong side is mirrored: 12 in less x is where it lies from the right side.
      const toward = partsOf(sides[press.toward as 0 | 1]).some((patch) => inside(patches.get(patch) ?? [], [12 - x, y]))
      expect([at, toward]).toEqual([at, true])
    })
  })
})

/** By the number of sides that a ray to the right crosses. */
function inside(corners: readonly (readonly [number, number])[], [x, y]: readonly [number, number]): boolean {
  return (
    corners.filter(([ax, ay], at) => {
      const [bx, by] = corners.at(at - 1) as readonly [number, number]
      return ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)
    }).length %
      2 ===
    1
  )
}

describe('a file inside a PDF', () => {
  const block = '{"format":"nestwright.block"}'
  const pdf = (body: string | Uint8Array, more: string): Uint8Array =>
    new Uint8Array(
      Buffer.concat([Buffer.from(`%PDF-1.7\n7 0 obj\n<<${more}>>\nstream\n`), Buffer.from(body as never), Buffer.from('\nendstream\nendobj\n')]),
    )

  it('is found as it lies', () => {
    const [found] = filesInPdf(pdf(block, `/Type /EmbeddedFile /Length ${block.length}`))
    expect([new TextDecoder().decode(found?.bytes), found?.packed]).toEqual([block, false])
  })

  it('is found packed, its length said elsewhere, or not at all', () => {
    const packed = deflateSync(block)
    for (const length of [`/Length ${packed.length}`, '/Length 9 0 R', '']) {
      const [found] = filesInPdf(pdf(packed, `/Type/EmbeddedFile/Filter[/FlateDecode]${length}`))
      expect(found?.packed).toBe(true)
      expect(
        Buffer.from(found?.bytes ?? [])
          .subarray(0, packed.length)
          .equals(packed),
      ).toBe(true)
    }
  })

  it('comes before what is not called a file', () => {
    const both = new Uint8Array(Buffer.concat([Buffer.from(pdf('BT ET', '')), Buffer.from(pdf(block, '/Type /EmbeddedFile'))]))
    expect(filesInPdf(both).map(({ bytes }) => new TextDecoder().decode(bytes).trim())).toEqual([block, 'BT ET'])
  })

  it('is found without searching far back for each of thousands of streams', () => {
    const far = `%PDF-1.7\n${'/Filter '.repeat(500_000)}${'\nstream\nendstream'.repeat(4000)}`
    expect(filesInPdf(new TextEncoder().encode(far)).length).toBeGreaterThan(0)
  })

  it('is looked for in PDFs only', () => {
    expect([isPdf(pdf(block, '')), isPdf(new TextEncoder().encode(block)), isPdf(new Uint8Array())]).toEqual([true, false, false])
    expect(filesInPdf(new TextEncoder().encode('%PDF-1.7 stream'))).toEqual([{ bytes: new Uint8Array(), packed: false }])
  })
})
