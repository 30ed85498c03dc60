/** The tray: the kinds of unit to place on the board, drawn in the block's own fabrics. */
import { useEffect, useRef } from 'react'
import { t } from '../words/words.ts'
import { useStore } from '../document/store.ts'
import { UnitPicture } from '../board/UnitPicture.tsx'
import { KIND_NAMES } from '../words/unitWords.ts'
import { dragUnitFromTray, pickUpUnit } from '../board/hand/trayDrag.ts'
import { TRAY } from '../board/newUnit.ts'
import { scrollOrDrag } from '../board/hand/trayScroll.ts'

export function Tray() {
  const block = useStore(({ history }) => history.block)
  const unitInHand = useStore(({ view }) => view.unitInHand)
  const list = useRef<HTMLUListElement>(null)
  useEffect(() => (list.current === null ? undefined : scrollOrDrag(list.current)), [])
  return (
    <section aria-labelledby="tray-title" data-part="units">
      <h2 id="tray-title">{t('Units')}</h2>
      <ul className="tray" ref={list}>
        {TRAY.map((kind) => (
          <li key={kind}>
            <button
              type="button"
              aria-pressed={unitInHand === kind}
              onPointerDown={(event) => {
                event.currentTarget.releasePointerCapture?.(event.pointerId)
                dragUnitFromTray(kind, event)
              }}
              onClick={() => pickUpUnit(kind)}
            >
              <UnitPicture block={block} kind={kind} />
              <span>{t(KIND_NAMES[kind])}</span>
            </button>
          </li>
        ))}
      </ul>
      <p className="hint">{t('Drag a unit onto the board. Or click it, then click squares (P at the cursor) or drag to fill several.')}</p>
    </section>
  )
}
