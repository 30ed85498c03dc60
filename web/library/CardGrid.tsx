/** The blocks as pictures in a grid. Of a long list the first ones are rendered at once, the next ones when the end comes into view. */
import { type KeyboardEvent, type ReactNode, useEffect, useRef } from 'react'
import type { Card } from '../keeping/schema.ts'

/** How many more blocks are rendered at a time. */
export const CARDS_AT_ONCE = 120

interface Props {
  readonly cards: readonly Card[]
  /** How many cards are rendered. */
  readonly most: number
  readonly setMost: (most: number) => void
  readonly render: (card: Card) => ReactNode
}

export function CardGrid({ cards, most, setMost, render }: Props) {
  return (
    <>
      <ul className="cards" onKeyDown={moveWithArrows}>
        {cards.slice(0, most).map(render)}
      </ul>
      {most < cards.length && <EndOfList key={most} onInView={() => setMost(most + CARDS_AT_ONCE)} />}
    </>
  )
}

function EndOfList({ onInView }: { readonly onInView: () => void }) {
  const end = useRef<HTMLDivElement>(null)
  const callback = useRef(onInView)
  callback.current = onInView
  useEffect(() => {
    const observer = new IntersectionObserver(([entry]) => entry?.isIntersecting === true && callback.current())
    if (end.current !== null) observer.observe(end.current)
    return () => observer.disconnect()
  }, [])
  return <div ref={end} className="more" />
}

const MOVES: Readonly<Record<string, (columns: number) => number>> = {
  ArrowRight: () => 1,
  ArrowLeft: () => -1,
  ArrowDown: (columns) => columns,
  ArrowUp: (columns) => -columns,
}

/** The arrow keys move the focus over the pictures as they lie on screen, in as many columns as there is room for. */
function moveWithArrows(event: KeyboardEvent<HTMLUListElement>): void {
  const move = MOVES[event.key]
  const faces = [...event.currentTarget.querySelectorAll<HTMLElement>('.face')]
  const current = faces.indexOf(document.activeElement as HTMLElement)
  if (move === undefined || current < 0) return
  const columns = Math.max(1, faces.filter(({ offsetTop }) => offsetTop === faces[0]?.offsetTop).length)
  event.preventDefault()
  faces[current + move(columns)]?.focus()
}
