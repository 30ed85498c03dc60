/** The tray: units to lay on the board, drawn in the block's own fabrics. */
import { useEffect, useRef } from 'react'
import { t } from '../words/words.ts'
import { useStore } from '../state/store.ts'
import { clothFill } from './ClothDefs.tsx'
import { KIND_NAMES } from './words.ts'
import { startPlacing, takeInHand } from '../canvas/gestures.ts'
import { newUnit, TRAY, type TrayKind } from '../canvas/newUnit.ts'
import { scrollOrCarry } from '../canvas/scrolling.ts'
import { piecesOfUnit, rectOf } from '../canvas/shapes.ts'
import type { Block, Turn } from '../../geometry/index.ts'

export function Tray() {
  const block = useStore(({ history }) => history.block)
  const taking = useStore(({ view }) => view.taking)
  const list = useRef<HTMLUListElement>(null)
  useEffect(() => (list.current === null ? undefined : scrollOrCarry(list.current)), [])
  return (
    <section aria-labelledby="tray-title" data-part="units">
      <h2 id="tray-title">{t('Units')}</h2>
      <ul className="tray" ref={list}>
        {TRAY.map((kind) => (
          <li key={kind}>
            <button
              type="button"
              aria-pressed={taking === kind}
              onPointerDown={(event) => {
                event.currentTarget.releasePointerCapture?.(event.pointerId)
                startPlacing(kind, event)
              }}
              onClick={() => takeInHand(kind)}
            >
              <Picture block={block} kind={kind} />
              <span>{t(KIND_NAMES[kind])}</span>
            </button>
          </li>
        ))}
      </ul>
      <p className="hint">{t('Drag one onto the board; or press it, then cells there (P at the cursor), or drag over cells to fill them.')}</p>
    </section>
  )
}

export function Picture({ block, kind, turn = 0 }: { readonly block: Block; readonly kind: TrayKind; readonly turn?: Turn }) {
  if (block.fabrics.length === 0) return null
  const unit = newUnit(block, kind, [0, 0], turn)
  const [w, h] = rectOf(unit).size
  const fabrics = new Map(block.fabrics.map((fabric) => [fabric.id, fabric]))
  return (
    <svg viewBox={`-0.05 -0.05 ${w + 0.1} ${h + 0.1}`} aria-hidden="true">
      {piecesOfUnit(unit).map(({ name, fabric, corners, turn }) => (
        <polygon
          key={name}
          points={corners.map((corner) => corner.join()).join(' ')}
          fill={clothFill('cloth-', fabrics.get(fabric), turn)}
          stroke="currentColor"
          strokeWidth={0.035}
          strokeLinejoin="round"
        />
      ))}
    </svg>
  )
}
