/**
 * Where the keyboard goes on: never nowhere, and from one part of the page to the next by one key.
 *
 * In      every focus, and every change of the page.
 * Out     where what had the focus has gone from the page, the nearest thing that can be worked stands in for it: first what followed, then what
 *         went before, in the smallest part of the page that is still there.
 */

/** Links, too, and what takes the focus by the way it is made, such as the board. */
const WORKED = 'a[href], button, input, select, textarea, summary, [tabindex="0"]'

/** What had the focus, and each part of the page it lay in, from the smallest, with its neighbours at that time. */
interface Kept {
  readonly on: Element
  readonly within: readonly { readonly part: Element; readonly next: Element | null; readonly before: Element | null }[]
}

let kept: Kept | null = null
/** What had the focus last outside of any dialog. */
let outside: HTMLElement | null = null

/** Begins to watch, for as long as the page is there. */
export function keepFocus(): void {
  const taken = (event: FocusEvent): void => {
    kept = event.target instanceof Element ? keptOn(event.target) : null
    if (event.target instanceof HTMLElement && event.target.closest('dialog') === null) outside = event.target
    rememberIn(event.target)
  }
  const left = ({ target }: FocusEvent): void => {
    // A maker who presses an empty place lets go of what is still there; what is taken from the page is gone only after this.
    setTimeout(() => {
      if (kept?.on === target && target instanceof HTMLElement && canWork(target) && document.activeElement === document.body) kept = null
    })
  }
  const changed = new MutationObserver((records) => {
    if (kept === null || document.activeElement !== document.body) return
    const { on } = kept
    if (kept.within.some(({ part }) => part instanceof HTMLDialogElement && !part.open)) setTimeout(backOutside)
    else if (!canWork(on)) goOn(kept)
    // What was only moved to another place of its list has lost the focus on the way.
    else if (records.some(({ removedNodes }) => [...removedNodes].some((node) => node.contains(on)))) (on as HTMLElement).focus()
  })
  if (document.activeElement !== null && document.activeElement !== document.body) kept = keptOn(document.activeElement)
  document.addEventListener('focusin', taken)
  document.addEventListener('focusout', left)
  changed.observe(document.body, { childList: true, subtree: true, attributeFilter: ['disabled', 'hidden', 'open'] })
}

/** The browser gives the focus back when a dialog closes, but a moment later, and not to what was moved meanwhile. */
function backOutside(): void {
  if (document.activeElement === document.body && outside !== null && canWork(outside)) outside.focus()
}

function keptOn(on: Element): Kept {
  const within = []
  for (let part: Element | null = on; part !== null && part !== document.documentElement; part = part.parentElement)
    within.push({ part, next: part.nextElementSibling, before: part.previousElementSibling })
  return { on, within }
}

function goOn({ within }: Kept): void {
  for (const [place, { part }] of within.entries()) {
    if (place === 0 || !part.isConnected) continue
    const all = workedIn(part)
    const { next, before } = within[place - 1] as Kept['within'][number]
    const heir =
      (next?.isConnected === true && all.find((one) => next.contains(one) || follows(next, one))) ||
      (before?.isConnected === true && all.findLast((one) => before.contains(one) || follows(one, before))) ||
      all[0]
    if (heir === undefined) continue
    heir.focus()
    if (document.activeElement !== document.body) return
  }
}

const follows = (one: Element, other: Element): boolean => (one.compareDocumentPosition(other) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0

const workedIn = (part: Element): HTMLElement[] => [...part.querySelectorAll<HTMLElement>(WORKED)].filter((one) => one.tabIndex >= 0 && canWork(one))

/** What is disabled, not shown, or taken from the page cannot have the focus. */
const canWork = (one: Element): boolean => one.isConnected && !one.matches(':disabled') && one.checkVisibility()

/** Where each part of the page was left, by its name. */
const leftAt = new Map<string, Element>()

const partOf = (one: Element | null): HTMLElement | null => one?.closest<HTMLElement>('[data-part]') ?? null

function rememberIn(target: EventTarget | null): void {
  const part = target instanceof Element ? partOf(target)?.dataset.part : undefined
  if (part !== undefined) leftAt.set(part, target as Element)
}

/** To the part of the page after this one, or before it, where it was left. */
export function toPart(by: 1 | -1): void {
  // A dialog holds the focus until it is closed.
  if (document.querySelector('dialog[open]') !== null) return
  const parts = [...document.querySelectorAll<HTMLElement>('[data-part]')]
  const on = document.activeElement ?? document.body
  const here = partOf(on)
  const ahead = parts.filter((part) => part !== here && follows(on, part))
  const behind = parts.filter((part) => part !== here && !follows(on, part))
  // Round the end of the page to its other end.
  const inTurn = by === 1 ? [...ahead, ...behind] : [...behind.reverse(), ...ahead.reverse()]
  inTurn.find(workIn)
}

/** The focus goes to a part of the page, where it was left; false where nothing there can have it. */
export function workOn(name: string): boolean {
  const part = document.querySelector<HTMLElement>(`[data-part="${name}"]`)
  return part !== null && workIn(part)
}

function workIn(part: HTMLElement): boolean {
  const last = leftAt.get(part.dataset.part ?? '')
  const on = last instanceof HTMLElement && part.contains(last) && canWork(last) ? last : part.matches(WORKED) ? part : workedIn(part)[0]
  on?.focus()
  return on !== undefined
}
