/** Several fingers on the board at once. All of it common practice, no source. */
import { describe, expect, it } from 'vitest'
import { addFinger, fingerTap, movePinch, startPinch, pinchView } from '../../../web/board/hand/pinch.ts'
import type { Pinch } from '../../../web/board/hand/values.ts'
import type { Point } from '../../../web/document/shapes.ts'

type Two = readonly [Point, Point]
const DOWN: Two = [
  [100, 200],
  [300, 200],
]
const RANGE = [0.5, 4] as const
const MIDDLE: Point = [200, 200]
const by = (two: Two, dx: number, dy = 0): Two => [
  [two[0][0] - dx, two[0][1] + dy],
  [two[1][0] + dx, two[1][1] + dy],
]

describe('two fingers', () => {
  const begun = startPinch(DOWN, 1000, 1, [0, 0])
  const drawn = movePinch(begun, by(DOWN, 12))

  it('leave the view at rest until one of them moves on', () => {
    const shaken = movePinch(begun, by(DOWN, 6))
    expect(shaken.resting).toBe(true)
    expect(pinchView(shaken, by(DOWN, 6), MIDDLE, RANGE)).toEqual({ zoom: 1, pan: [0, 0] })
  })

  it('begin to zoom where they are then, without a jump', () => {
    expect(drawn.resting).toBe(false)
    expect(pinchView(drawn, by(DOWN, 12), MIDDLE, RANGE)).toEqual({ zoom: 1, pan: [0, 0] })
  })

  it('zoom by as much as they are drawn apart, within bounds', () => {
    expect(pinchView(drawn, by(DOWN, 124), MIDDLE, RANGE).zoom).toBe(2)
    expect(pinchView(drawn, by(DOWN, 1000), MIDDLE, RANGE).zoom).toBe(4)
    expect(pinchView(drawn, by(DOWN, -99), MIDDLE, RANGE).zoom).toBe(0.5)
  })

  it('keep what lies between them between them', () => {
    const aside = movePinch(begun, by(DOWN, 0, 40))
    expect(pinchView(aside, by(DOWN, 0, 90), MIDDLE, RANGE)).toEqual({ zoom: 1, pan: [0, 50] })
    // Fingers about a spot 60 pixels right of the middle of the board: drawn to twice as far apart, that spot stays.
    const off: Two = [
      [160, 200],
      [360, 200],
    ]
    const there = movePinch(startPinch(off, null, 1, [0, 0]), by(off, 20))
    const view = pinchView(there, by(off, 140), MIDDLE, RANGE)
    expect(view.zoom).toBe(2)
    expect(200 + view.pan[0] + 60 * view.zoom).toBe(260)
  })
})

describe('a tap', () => {
  const two = startPinch(DOWN, 1000, 1, [0, 0])
  it.each<[Pinch, number, 'undo' | 'redo' | null, string]>([
    [two, 1200, 'undo', 'two fingers, soon lifted'],
    [addFinger(two), 1200, 'redo', 'three fingers'],
    [addFinger(addFinger(two)), 1200, null, 'a whole hand'],
    [two, 1500, null, 'fingers that stayed'],
    [movePinch(two, by(DOWN, 20)), 1200, null, 'fingers that moved'],
    [startPinch(DOWN, null, 1, [0, 0]), 1200, null, 'the first finger was carrying something'],
  ])('%#', (pinch, time, meant, why) => {
    expect(fingerTap(pinch, time), why).toBe(meant)
  })
})
