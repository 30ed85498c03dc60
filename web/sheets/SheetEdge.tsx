/**
 * The left edge of the sheet: dragging it, or the arrow keys on it, make the sheet wider, up to half the window; Enter or a double click goes to and fro.
 * This browser remembers the width.
 */
import { type KeyboardEvent, type PointerEvent, useLayoutEffect, useState } from 'react'
import { readSetting, writeSetting } from '../document/browserSettings.ts'
import { t } from '../words/words.ts'

const SETTING = 'sheet-width'
/** Pixels: the width at first, which is the least too, and how far an arrow key goes. The stylesheet keeps it within half the window. */
const LEAST = 428
const STEP = 24

const most = (): number => Math.max(LEAST, Math.round(window.innerWidth / 2))
const within = (width: number): number => Math.min(most(), Math.max(LEAST, Math.round(width)))

export function SheetEdge() {
  const [width, setWidth] = useState(() => within(Number(readSetting(SETTING) ?? LEAST) || LEAST))
  useLayoutEffect(() => {
    document.documentElement.style.setProperty('--sheet', `${width}px`)
  }, [width])
  const change = (to: number): void => {
    setWidth(within(to))
    writeSetting(SETTING, String(within(to)))
  }
  const toggle = (): void => change(width > LEAST ? LEAST : most())
  const key = (event: KeyboardEvent): void => {
    const to = { ArrowLeft: width + STEP, ArrowRight: width - STEP, Home: LEAST, End: most() }[event.key]
    if (to === undefined && event.key !== 'Enter') return
    event.preventDefault()
    if (to === undefined) toggle()
    else change(to)
  }
  const drag = ({ buttons, clientX, currentTarget }: PointerEvent<HTMLElement>): void => {
    const right = currentTarget.parentElement?.getBoundingClientRect().right
    if (buttons === 1 && right !== undefined) change(right - clientX)
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a line between two panes that can be moved is a separator with a value; `hr` has none
    <div
      className="sheet-edge"
      role="separator"
      aria-label={t('Width of the side panel')}
      aria-orientation="vertical"
      aria-valuemin={LEAST}
      aria-valuemax={most()}
      aria-valuenow={width}
      title={t('Drag to make this wider')}
      tabIndex={0}
      onKeyDown={key}
      onDoubleClick={toggle}
      onPointerDown={({ currentTarget, pointerId }) => currentTarget.setPointerCapture(pointerId)}
      onPointerMove={drag}
    />
  )
}
