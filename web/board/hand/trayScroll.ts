/**
 * A finger on a list of things that can be dragged off: along a list that scrolls it scrolls, any other way it drags.
 *
 * In      the list. Its items have the CSS `touch-action` of the direction in which the list runs.
 * Out     a function that stops listening. While a finger drags, the browser is kept from scrolling; that can only be done at the finger's first move.
 */

/** A move is along the list if it is this many times farther along than across, because most drags start at a slant. */
const ALONG = 3

type Axis = 'x' | 'y'

export function scrollOrDrag(list: HTMLElement): () => void {
  let start: Touch | null = null
  let drags: boolean | null = null
  const begin = ({ touches }: TouchEvent): void => {
    start = touches[0] ?? null
    drags = null
  }
  const move = (event: TouchEvent): void => {
    const finger = event.touches[0]
    if (start === null || finger === undefined) return
    const [dx, dy] = [Math.abs(finger.clientX - start.clientX), Math.abs(finger.clientY - start.clientY)]
    drags ??= !isAlong(list, dx, dy)
    if (drags && event.cancelable) event.preventDefault()
  }
  list.addEventListener('touchstart', begin, { passive: true })
  list.addEventListener('touchmove', move, { passive: false })
  return () => {
    list.removeEventListener('touchstart', begin)
    list.removeEventListener('touchmove', move)
  }
}

function isAlong(list: HTMLElement, dx: number, dy: number): boolean {
  const axis: Axis = list.scrollWidth > list.clientWidth + 1 ? 'x' : 'y'
  const [along, across] = axis === 'x' ? [dx, dy] : [dy, dx]
  return along > ALONG * across && canScroll(list, axis)
}

/** Whether the list, or anything it stands in, can scroll along an axis. */
function canScroll(element: HTMLElement, axis: Axis): boolean {
  for (let one: HTMLElement | null = element; one !== null; one = one.parentElement) {
    const more = axis === 'x' ? one.scrollWidth > one.clientWidth + 1 : one.scrollHeight > one.clientHeight + 1
    const overflow = getComputedStyle(one)[axis === 'x' ? 'overflowX' : 'overflowY']
    if (more && (overflow === 'auto' || overflow === 'scroll' || one === document.documentElement)) return true
  }
  return false
}
