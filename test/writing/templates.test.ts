/** Templates measured: an allowance everywhere, no tip beyond the mitre, ears that match, within the cloth that the cut list allows. */
import ClipperLib from 'clipper-lib'
import { describe, expect, it } from 'vitest'
import { type Block, bookletOf, report, type Spot, type Template } from '../../geometry/index.ts'
import { bookletContext } from '../../geometry/writing/booklet/bookletContext.ts'
import { cutOutline } from '../../geometry/writing/booklet/templates.ts'
import { atticWindowsMitred, leMoyneStar, starOfBethlehem, tumblingBlocks } from '../published/blocks.ts'
import { BLOCKS } from './blocks.ts'

const WITH_TEMPLATES: Record<string, Block> = {
  freePatches: BLOCKS.freePatches,
  attic: BLOCKS.attic,
  leMoyneStar: leMoyneStar(),
  starOfBethlehem: starOfBethlehem(),
  tumblingBlocks: tumblingBlocks(),
  atticWindows: atticWindowsMitred(),
}
const SCALE = 1e6

/** The room between two outlines, in square units; by a library that is not ours. */
function beyond(inner: readonly Spot[], outer: readonly Spot[]): number {
  const clipper = new ClipperLib.Clipper()
  clipper.AddPath(pathOf(inner), ClipperLib.PolyType.ptSubject, true)
  clipper.AddPath(pathOf(outer), ClipperLib.PolyType.ptClip, true)
  const left: ClipperLib.Path[] = []
  clipper.Execute(ClipperLib.ClipType.ctDifference, left, ClipperLib.PolyFillType.pftNonZero, ClipperLib.PolyFillType.pftNonZero)
  return left.reduce((sum: number, path: ClipperLib.Path) => sum + Math.abs(ClipperLib.Clipper.Area(path)), 0) / SCALE ** 2
}

const pathOf = (spots: readonly Spot[]): ClipperLib.Path => spots.map(([x, y]) => ({ X: Math.round(x * SCALE), Y: Math.round(y * SCALE) }))

function offset(spots: readonly Spot[], by: number, join: 'round' | 'mitre'): Spot[] {
  const tool = new ClipperLib.ClipperOffset(100, 20)
  tool.AddPath(pathOf(spots), join === 'round' ? ClipperLib.JoinType.jtRound : ClipperLib.JoinType.jtMiter, ClipperLib.EndType.etClosedPolygon)
  const out: ClipperLib.Path[] = []
  tool.Execute(out, by * SCALE)
  return (out[0] as ClipperLib.Path).map(({ X, Y }): Spot => [X / SCALE, Y / SCALE])
}

describe.each(Object.entries(WITH_TEMPLATES))('%s', (_, block) => {
  const said = report(block)
  const { templates } = bookletOf(said, block)
  const { seam } = said.measure

  it('has a template for every patch that needs one, as many as the cut list counts', () => {
    expect(templates.length).toBeGreaterThan(0)
    const drawn = templates.flatMap(({ counts }) => counts).reduce((sum, { count, mirrored }) => sum + count + mirrored, 0)
    const rows = said.cut.filter(({ shape }) => shape === 'polygon').reduce((sum, { count }) => sum + count, 0)
    const halves = said.units.filter(({ kind }) => kind === 'half-rectangle').reduce((sum, { count }) => sum + 2 * count, 0)
    expect(drawn).toBe(rows + halves)
  })

  it('leaves the whole allowance beside every seam from end to end, most of it round corners, and no more than a mitre', () => {
    for (const { name, finished, cut } of templates) {
      for (const [a, b] of sides(finished)) expect(beyond(beside(a, b, seam), cut), name).toBeLessThan(1e-3)
      expect(beyond(offset(finished, seam * 0.7, 'round'), cut), name).toBeLessThan(1e-3)
      expect(beyond(cut, offset(finished, seam, 'mitre')), name).toBeLessThan(1e-3)
    }
  })

  it('keeps to the cloth that the cut list allows for it', () => {
    for (const template of templates) {
      const [wide, high] = boxOf(template.finished)
      expect(template.width, template.name).toBeLessThanOrEqual(wide + 2 * seam + 1e-5)
      expect(template.height, template.name).toBeLessThanOrEqual(high + 2 * seam + 1e-5)
    }
  })

  it('marks notches from the seam line to the cutting line, and lays the grain along a side', () => {
    for (const { finished, notches, grain, name } of templates) {
      for (const { from, to } of notches) expect(Math.hypot(to[0] - from[0], to[1] - from[1]), name).toBeCloseTo(seam, 5)
      const way = Math.atan2(grain.to[1] - grain.from[1], grain.to[0] - grain.from[0])
      expect(
        sides(finished).some(([a, b]) => Math.abs(Math.sin(Math.atan2(b[1] - a[1], b[0] - a[0]) - way)) < 1e-4),
        name,
      ).toBe(true)
      for (const end of [grain.from, grain.to]) expect(inside(finished, end), name).toBe(true)
    }
  })

  it('has ears that match: laid right sides together along a whole seam, raw edges end at one place', () => {
    const context = bookletContext(said, block)
    const patches = [...context.patches.values()]
    const outlines = new Map(
      patches.map((patch) => [
        patch.id,
        cutOutline(
          patch.corners,
          seam,
          patches.filter((one) => one !== patch),
        ),
      ]),
    )
    let pairs = 0
    for (const one of patches) {
      for (const [a, b] of sides(one.corners)) {
        const other = patches.find((patch) => patch.id > one.id && sides(patch.corners).some(([c, d]) => near(c, b) && near(d, a)))
        if (other === undefined) continue
        pairs += 1
        const mine = rawEnds(outlines.get(one.id) as Spot[], a, b, seam)
        const theirs = rawEnds(outlines.get(other.id) as Spot[], b, a, seam)
        expect(mine[0], `${one.id} on ${other.id}`).toBeCloseTo(length(a, b) - theirs[1], 4)
        expect(mine[1], `${one.id} on ${other.id}`).toBeCloseTo(length(a, b) - theirs[0], 4)
      }
    }
    expect(pairs).toBeGreaterThan(0)
  })
})

/** The allowance beside a seam, square at both ends. */
function beside(a: Spot, b: Spot, seam: number): Spot[] {
  const [x, y] = [(seam * (b[1] - a[1])) / length(a, b), (-seam * (b[0] - a[0])) / length(a, b)]
  return [a, [a[0] + x, a[1] + y], [b[0] + x, b[1] + y], b]
}

/** Where the raw edge along a side begins and ends, measured along it from its start. */
function rawEnds(outline: readonly Spot[], a: Spot, b: Spot, seam: number): [number, number] {
  const far = length(a, b)
  const along: Spot = [(b[0] - a[0]) / far, (b[1] - a[1]) / far]
  const places = outline.flatMap(([x, y]) => {
    const away = along[0] * (y - a[1]) - along[1] * (x - a[0])
    return Math.abs(Math.abs(away) - seam) < 1e-5 && away < 0 ? [along[0] * (x - a[0]) + along[1] * (y - a[1])] : []
  })
  return [Math.min(...places), Math.max(...places)]
}

const length = (a: Spot, b: Spot): number => Math.hypot(b[0] - a[0], b[1] - a[1])
const near = (a: Spot, b: Spot): boolean => length(a, b) < 1e-6
const sides = (spots: readonly Spot[]): [Spot, Spot][] => spots.map((a, index) => [a, spots[(index + 1) % spots.length] as Spot])

function boxOf(spots: Template['finished']): [number, number] {
  const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)]
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)]
}

function inside(spots: readonly Spot[], [x, y]: Spot): boolean {
  return sides(spots).filter(([[ax, ay], [bx, by]]) => ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)).length % 2 === 1
}
