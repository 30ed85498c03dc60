/**
 * Keeps the keyboard's focus on the page, and moves it from one part of the page to the next with one key.
 *
 * In      every focus event, and every change of the page.
 * Out     when the focused element disappears, the nearest control takes its place: the next one, else the one before, within the smallest part of the page
 *         that is still there.
 */

/** Includes links, and elements that take the focus because of how they are built, such as the board. */
const FOCUSABLE = 'a[href], button, input, select, textarea, summary, [tabindex="0"]'

/** The element that had the focus, and each of its ancestors from the inside out with its siblings at that time. */
interface FocusTrail {
  readonly element: Element
  readonly ancestors: readonly { readonly node: Element; readonly next: Element | null; readonly previous: Element | null }[]
}

let trail: FocusTrail | null = null
/** The last element outside all dialogs that had the focus. */
let lastOutsideDialogs: HTMLElement | null = null

/** Starts watching, for as long as the page is open. */
export function watchFocus(): void {
  const onFocusIn = ({ target }: FocusEvent): void => {
    trail = target instanceof Element ? trailTo(target) : null
    if (target instanceof HTMLElement && target.closest('dialog') === null) lastOutsideDialogs = target
    rememberInPart(target)
  }
  const onFocusOut = ({ target }: FocusEvent): void => {
    // A click on an empty place takes the focus from an element that stays. An element that is being removed disappears only after this event.
    setTimeout(() => {
      if (trail?.element === target && target instanceof HTMLElement && canFocus(target) && document.activeElement === document.body) trail = null
    })
  }
  const onChange = new MutationObserver((records) => {
    if (trail === null || document.activeElement !== document.body) return
    const { element } = trail
    if (trail.ancestors.some(({ node }) => node instanceof HTMLDialogElement && !node.open)) setTimeout(focusOutsideDialogs)
    else if (!canFocus(element)) focusNearest(trail)
    // An element that only moved within its list lost the focus on the way.
    else if (records.some(({ removedNodes }) => [...removedNodes].some((node) => node.contains(element)))) (element as HTMLElement).focus()
  })
  if (document.activeElement !== null && document.activeElement !== document.body) trail = trailTo(document.activeElement)
  document.addEventListener('focusin', onFocusIn)
  document.addEventListener('focusout', onFocusOut)
  onChange.observe(document.body, { childList: true, subtree: true, attributeFilter: ['disabled', 'hidden', 'open'] })
}

/** When a dialog closes, the browser returns the focus only a moment later, and not to an element that moved meanwhile. */
function focusOutsideDialogs(): void {
  if (document.activeElement === document.body && lastOutsideDialogs !== null && canFocus(lastOutsideDialogs)) lastOutsideDialogs.focus()
}

function trailTo(element: Element): FocusTrail {
  const ancestors = []
  for (let node: Element | null = element; node !== null && node !== document.documentElement; node = node.parentElement)
    ancestors.push({ node, next: node.nextElementSibling, previous: node.previousElementSibling })
  return { element, ancestors }
}

function focusNearest({ ancestors }: FocusTrail): void {
  for (const [depth, { node }] of ancestors.entries()) {
    if (depth === 0 || !node.isConnected) continue
    const controls = controlsIn(node)
    const { next, previous } = ancestors[depth - 1] as FocusTrail['ancestors'][number]
    const nearest =
      (next?.isConnected === true && controls.find((control) => next.contains(control) || follows(next, control))) ||
      (previous?.isConnected === true && controls.findLast((control) => previous.contains(control) || follows(control, previous))) ||
      controls[0]
    if (nearest === undefined) continue
    nearest.focus()
    if (document.activeElement !== document.body) return
  }
}

/** Whether the second element comes after the first in the document. */
const follows = (first: Element, second: Element): boolean => (first.compareDocumentPosition(second) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0

const controlsIn = (node: Element): HTMLElement[] =>
  [...node.querySelectorAll<HTMLElement>(FOCUSABLE)].filter((control) => control.tabIndex >= 0 && canFocus(control))

/** An element that is disabled, hidden or removed cannot have the focus. */
const canFocus = (element: Element): boolean => element.isConnected && !element.matches(':disabled') && element.checkVisibility()

/** The element that last had the focus in each part of the page, by the part's name. */
const lastFocusedIn = new Map<string, Element>()

const partOf = (element: Element | null): HTMLElement | null => element?.closest<HTMLElement>('[data-part]') ?? null

function rememberInPart(target: EventTarget | null): void {
  const part = target instanceof Element ? partOf(target)?.dataset.part : undefined
  if (part !== undefined) lastFocusedIn.set(part, target as Element)
}

/** Focuses the next part of the page, or the previous one, where it last had the focus. After the last part comes the first. */
export function focusNextPart(direction: 1 | -1): void {
  // A dialog keeps the focus until it is closed.
  if (document.querySelector('dialog[open]') !== null) return
  const parts = [...document.querySelectorAll<HTMLElement>('[data-part]')]
  const current = document.activeElement ?? document.body
  const currentPart = partOf(current)
  const after = parts.filter((part) => part !== currentPart && follows(current, part))
  const before = parts.filter((part) => part !== currentPart && !follows(current, part))
  const inOrder = direction === 1 ? [...after, ...before] : [...before.reverse(), ...after.reverse()]
  inOrder.find(focusInside)
}

/** Focuses the named part of the page where it last had the focus. False if nothing there can have it. */
export function focusPart(name: string): boolean {
  const part = document.querySelector<HTMLElement>(`[data-part="${name}"]`)
  return part !== null && focusInside(part)
}

function focusInside(part: HTMLElement): boolean {
  const last = lastFocusedIn.get(part.dataset.part ?? '')
  const element = last instanceof HTMLElement && part.contains(last) && canFocus(last) ? last : part.matches(FOCUSABLE) ? part : controlsIn(part)[0]
  element?.focus()
  return element !== undefined
}
