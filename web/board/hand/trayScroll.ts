/**
 * A finger on a list of things to carry off: drawn along a list that scrolls it scrolls, drawn any other way it carries.
 *
 * In      the list. Its things have the browser's `touch-action` set to the way in which it lies.
 * Out     a function that ends the watching. While a finger carries, the browser is kept from scrolling: it asks at the finger's first move only.
 */

/** So many times farther along the list than across it is along it: a thing is mostly carried aslant. */
const ALONG = 3

type Axis = 'x' | 'y'

export function scrollOrCarry(list: HTMLElement): () => void {
  let start: Touch | null = null
  let carries: boolean | null = null
  const begin = ({ touches }: TouchEvent): void => {
    start = touches[0] ?? null
    carries = null
  }
  const move = (event: TouchEvent): void => {
    const now = event.touches[0]
    if (start === null || now === undefined) return
    const [dx, dy] = [Math.abs(now.clientX - start.clientX), Math.abs(now.clientY - start.clientY)]
    carries ??= !isAlong(list, dx, dy)
    if (carries && event.cancelable) event.preventDefault()
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
  return along > ALONG * across && scrolls(list, axis)
}

/** Whether it, or what it stands in, has more to show that way. */
function scrolls(element: HTMLElement, axis: Axis): boolean {
  for (let one: HTMLElement | null = element; one !== null; one = one.parentElement) {
    const more = axis === 'x' ? one.scrollWidth > one.clientWidth + 1 : one.scrollHeight > one.clientHeight + 1
    const way = getComputedStyle(one)[axis === 'x' ? 'overflowX' : 'overflowY']
    if (more && (way === 'auto' || way === 'scroll' || one === document.documentElement)) return true
  }
  return false
}
