/** At the left of the quilt: its own blocks and those of the library, to place by drag or tap; below them its fabrics, for plain places too. */
import { useEffect, useRef } from 'react'
import { changeQuiltFabric, type Fabric, type Quilt } from '../../geometry/index.ts'
import { scrollOrDrag } from '../board/hand/trayScroll.ts'
import { focusPart } from '../controls/focus.ts'
import { displayName } from '../document/blockNames.ts'
import { editQuilt, setView } from '../document/store.ts'
import { BlockPicture } from '../drawing/BlockPicture.tsx'
import { Swatch } from '../drawing/FabricDefs.tsx'
import { documentOf, useCards } from '../keeping/openBlock.ts'
import { t } from '../words/words.ts'
import { dragFromList } from './listDrag.ts'
import { QuiltBlockPicture } from './QuiltBlockPicture.tsx'
import { type HandItem, quiltView, setQuiltView, useQuiltView } from './quiltView.ts'

export function BlockShelf({ quilt }: { readonly quilt: Quilt }) {
  const cards = useCards().filter(({ aside, type }) => aside === null && type !== 'quilt')
  const sorted = [...cards].sort((a, b) => b.changed - a.changed)
  const list = useRef<HTMLDivElement>(null)
  useEffect(() => (list.current === null ? undefined : scrollOrDrag(list.current)), [])
  return (
    <section aria-labelledby="shelf-title" data-part="units" className="shelf-panel">
      <h2 id="shelf-title">{t('Blocks')}</h2>
      <div ref={list} className="shelf-lists">
        {quilt.blocks.length > 0 && (
          <>
            <h3>{t('In this quilt')}</h3>
            <ul className="tray">
              {quilt.blocks.map(({ id, block }) => (
                <ShelfItem key={id} item={{ type: 'block', id }} name={displayName(block)}>
                  <QuiltBlockPicture quilt={quilt} id={id} side={52} />
                </ShelfItem>
              ))}
            </ul>
          </>
        )}
        <h3>{t('From My blocks')}</h3>
        <ul className="tray">
          {sorted.map(({ id, name, changed }) => (
            <ShelfItem key={id} item={{ type: 'library', card: id, name: displayName({ name }) }} name={displayName({ name })}>
              <BlockPicture load={() => documentOf(id)} stamp={`${id} ${changed}`} side={52} />
            </ShelfItem>
          ))}
        </ul>
        {sorted.length === 0 && <p className="hint">{t('No blocks yet. Make one in My blocks first.')}</p>}
      </div>
      <p className="hint">{t('Drag a block onto a position. Or click it, then click positions, or drag across several.')}</p>
    </section>
  )
}

interface ItemProps {
  readonly item: HandItem
  readonly name: string
  readonly children: React.ReactNode
}

const isSame = (one: HandItem | null, other: HandItem): boolean => JSON.stringify(one) === JSON.stringify(other)

function ShelfItem({ item, name, children }: ItemProps) {
  const inHand = useQuiltView((view) => isSame(view.inHand, item))
  return (
    <li>
      <button
        type="button"
        aria-pressed={inHand}
        onPointerDown={(event) => {
          event.currentTarget.releasePointerCapture?.(event.pointerId)
          dragFromList(item, event)
        }}
        onClick={() => pickUp(item, name)}
      >
        {children}
        <span>{name}</span>
      </button>
    </li>
  )
}

/** Takes a block or fabric in hand, to be placed as often as the maker likes; puts it down again if it was there already. */
function pickUp(item: HandItem, name: string): void {
  const same = isSame(quiltView().inHand, item)
  setQuiltView({ inHand: same ? null : item })
  setView({ notice: same ? t('Nothing in hand now.') : t('Click a position to put {name} there, or drag across several.', { name }) })
  if (!same) focusPart('board')
}

/** The quilt's fabrics: what blocks and strips wear. A change shows wherever the fabric lies. */
export function QuiltFabrics({ quilt }: { readonly quilt: Quilt }) {
  return (
    <section aria-labelledby="quilt-fabrics-title" data-part="fabrics">
      <h2 id="quilt-fabrics-title">{t('Fabrics')}</h2>
      <ul className="fabrics quilt-fabrics">
        {quilt.fabrics.map((fabric) => (
          <FabricItem key={fabric.id} fabric={fabric} unit={quilt.measure.unit} />
        ))}
      </ul>
      <p className="hint">{t('A fabric changes in every block that wears it. Click one, then click positions, for plain pieces.')}</p>
    </section>
  )
}

function FabricItem({ fabric, unit }: { readonly fabric: Fabric; readonly unit: 'in' | 'cm' }) {
  const { id, name, colour, print } = fabric
  const item: HandItem = { type: 'plain', fabric: id }
  const inHand = useQuiltView((view) => isSame(view.inHand, item))
  return (
    <li className="fabric">
      <button
        type="button"
        className="swatch"
        aria-pressed={inHand}
        aria-label={t('Plain piece of {name}', { name })}
        onPointerDown={(event) => {
          event.currentTarget.releasePointerCapture?.(event.pointerId)
          dragFromList(item, event)
        }}
        onClick={() => pickUp(item, name)}
      >
        <Swatch fabric={fabric} unit={unit} />
      </button>
      <div className="named">
        <input
          aria-label={t('Name of {name}', { name })}
          value={name}
          maxLength={80}
          onChange={(event) => editQuilt(changeQuiltFabric(id, { name: event.target.value }))}
        />
      </div>
      {print?.kind !== 'photo' && (
        <input
          type="color"
          className="fabric-colour"
          aria-label={t('Colour of {name}', { name })}
          value={colour}
          onChange={(event) => editQuilt(changeQuiltFabric(id, { colour: event.target.value }))}
        />
      )}
    </li>
  )
}
