/** The marks of seam crossings as they are printed: what must be true of each whatever its taste. */
import { expect, it } from 'vitest'
import { SHAPES } from '../../geometry/printing/meetingMarks.ts'

const marks = Object.entries(SHAPES)

it.each(marks)('%s stays in its box, from −8 to 8, and fills most of its height', (_, { whole }) => {
  const [xs, ys] = [whole.map(([x]) => x), whole.map(([, y]) => y)]
  for (const place of [...xs, ...ys]) expect(Math.abs(place)).toBeLessThanOrEqual(8 + 1e-9)
  expect(Math.max(...ys) - Math.min(...ys)).toBeGreaterThan(8)
})

it.each(marks.filter(([name]) => name !== 'clashes'))('%s looks the same from the wrong side: left is right', (_, { whole, blank = [] }) => {
  const rounded = (x: number, y: number): string => `${(Math.round(x * 1e6) + 0) / 1e6} ${(Math.round(y * 1e6) + 0) / 1e6}`.replaceAll('-0 ', '0 ')
  for (const outline of [whole, blank]) {
    const spots = outline.map(([x, y]) => rounded(x, y)).sort()
    const mirrored = outline.map(([x, y]) => rounded(-x, y)).sort()
    expect(mirrored).toEqual(spots)
  }
})

it.each(marks.filter(([, { blank }]) => blank !== undefined))('%s has its blank inside it', (_, { whole, blank = [] }) => {
  for (const [x, y] of blank) expect(crossings(whole, x, y) % 2).toBe(1)
})

it('a crossing that does not nest is a burst: its twelve corners lie far out and near in by turns', () => {
  const far = SHAPES.clashes.whole.map(([x, y]) => Math.hypot(x, y))
  expect(far).toHaveLength(12)
  far.forEach((one, corner) => {
    if (corner % 2 === 0) expect(one).toBeGreaterThan(7.9)
    else expect(one).toBeLessThan(4.5)
  })
})

/** How often a ray from a spot to the right crosses an outline. */
function crossings(outline: readonly (readonly [number, number])[], x: number, y: number): number {
  return outline.filter(([ax, ay], at) => {
    const [bx, by] = outline[(at + 1) % outline.length] as readonly [number, number]
    return ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)
  }).length
}
