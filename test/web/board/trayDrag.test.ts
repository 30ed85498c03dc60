/** Dragging an item off the tray, event by event. All of it common practice, no source. */
import { describe, expect, it } from 'vitest'
import { stepTrayDrag, type TrayPointerEvent, type TrayPress } from '../../../web/board/hand/trayDrag.ts'

const pressed: TrayPress = { pointer: 1, from: [100, 100], dragging: false }
const event = (type: TrayPointerEvent['type'], x: number, pointer = 1): TrayPointerEvent => ({ type, pointer, at: [x, 100] })

/** What comes of some events, and whether the item was dropped at the last. */
function play(...events: TrayPointerEvent[]): { readonly press: TrayPress | null; readonly dropped: boolean } {
  let last: ReturnType<typeof stepTrayDrag> = { press: pressed, dropped: false }
  for (const next of events) if (last.press !== null) last = stepTrayDrag(last.press, next)
  return last
}

describe('a press on an item of the tray', () => {
  it('becomes a drag once it has moved far enough, and stays one when it comes back', () => {
    expect(play(event('move', 104)).press?.dragging).toBe(false)
    expect(play(event('move', 105)).press?.dragging).toBe(true)
    expect(play(event('move', 140), event('move', 100)).press?.dragging).toBe(true)
  })

  it('drops the item if it was dragged, and else only ends', () => {
    expect(play(event('move', 140), event('up', 140))).toEqual({ press: null, dropped: true })
    expect(play(event('up', 100))).toEqual({ press: null, dropped: false })
  })

  it('drops nothing when the browser takes the pointer away to scroll', () => {
    expect(play(event('move', 140), event('cancel', 140))).toEqual({ press: null, dropped: false })
  })

  it('does not mind other fingers', () => {
    expect(play(event('move', 300, 2), event('up', 300, 2))).toEqual({ press: pressed, dropped: false })
  })
})
