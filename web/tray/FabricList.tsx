/** The fabrics of the block: pick one to colour patches with, name it, and open its details below it. */
import { lazy, useEffect, useId, useRef, useState } from 'react'
import { addFabric, type Block, changeFabric, type Fabric, freshId, recolourPatch } from '../../geometry/index.ts'
import { dragFabric } from '../board/hand/trayDrag.ts'
import { edit, setView, getState, useStore } from '../document/store.ts'
import { t, tn } from '../words/words.ts'
import { ALL_TURNS, FabricDefs, cellLength, Swatch } from '../drawing/FabricDefs.tsx'
import './fabrics.css'
import { LazyPanel } from '../controls/LazyPanel.tsx'

const FabricDetails = lazy(async () => ({ default: (await import('./FabricDetails.tsx')).FabricDetails }))

/** Colours for new fabrics, in turn. */
const NEW_COLOURS = ['#7f4f6b', '#4f8a8b', '#c9b458', '#8a5a3c', '#93a8ac', '#d98c7a'] as const

function pickFabric(id: string): void {
  const { patch, fabricInHand } = getState().view
  if (patch !== null) {
    edit(recolourPatch(patch.unit, patch.name, id))
    setView({ notice: t('Patch recoloured.') })
  } else
    setView({
      fabricInHand: fabricInHand === id ? null : id,
      unitInHand: null,
      unitTurn: 0,
      unitMirror: false,
      notice: fabricInHand === id ? t('Finished colouring.') : t('Now click patches to colour them.'),
    })
}

function addNewFabric(): void {
  const { block } = getState().history
  const id = freshId(block, 'fabric')
  const name = t('Fabric {n}', { n: block.fabrics.length + 1 })
  edit(addFabric({ id, name, colour: NEW_COLOURS[block.fabrics.length % NEW_COLOURS.length] as string }))
  setView({ notice: t('{name} is added at the end of the list.', { name }) })
}

/** How many patches, border strips and corner squares are cut from each fabric. */
function patchCounts({ units, borders }: Block): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  const count = (id: string, by: number): void => void counts.set(id, (counts.get(id) ?? 0) + by)
  for (const { fabrics } of units) for (const id of Object.values(fabrics)) count(id, 1)
  for (const { fabric, corner } of borders ?? []) {
    count(fabric, 4)
    if (corner !== undefined) count(corner, 4)
  }
  return counts
}

export function FabricList() {
  const block = useStore(({ history }) => history.block)
  const [open, setOpen] = useState<string | null>(null)
  const counts = patchCounts(block)
  return (
    <section aria-labelledby="fabrics-title" data-part="fabrics">
      <h2 id="fabrics-title">{t('Fabrics')}</h2>
      <svg className="unseen" aria-hidden="true">
        <FabricDefs id="cloth-" fabrics={block.fabrics} unit={cellLength(block)} turns={ALL_TURNS} />
      </svg>
      {block.fabrics.length === 0 && <p className="hint">{t('No fabrics yet. Add one to colour patches.')}</p>}
      <ul className="fabrics">
        {block.fabrics.map((fabric) => (
          <FabricItem
            key={fabric.id}
            fabric={fabric}
            count={counts.get(fabric.id) ?? 0}
            open={open === fabric.id}
            toggle={() => setOpen(open === fabric.id ? null : fabric.id)}
          />
        ))}
      </ul>
      <button type="button" onClick={addNewFabric}>
        {t('Add fabric')}
      </button>
      <p className="hint">{t('Click a fabric, then click patches to colour them. Or drag it onto a patch.')}</p>
    </section>
  )
}

interface ItemProps {
  readonly fabric: Fabric
  readonly count: number
  readonly open: boolean
  readonly toggle: () => void
}

function FabricItem({ fabric, count, open, toggle }: ItemProps) {
  const { id, name } = fabric
  const inHand = useStore(({ view }) => view.fabricInHand === id)
  const unit = useStore(({ history }) => history.block.measure.unit)
  const detailsId = useId()
  return (
    <li className="fabric">
      <button
        type="button"
        className="swatch"
        aria-pressed={inHand}
        aria-label={t('Colour with {name}', { name })}
        onPointerDown={(event) => {
          event.currentTarget.releasePointerCapture?.(event.pointerId)
          dragFabric(id, event)
        }}
        onClick={() => pickFabric(id)}
      >
        <Swatch fabric={fabric} unit={unit} />
      </button>
      <div className="named">
        <input
          aria-label={t('Name of {name}', { name })}
          value={name}
          maxLength={80}
          onChange={(event) => edit(changeFabric(id, { name: event.target.value }))}
        />
        <small>
          {count === 0 ? t('not used') : tn(count, 'one patch', '{n} patches')}
          {fabric.direction !== undefined && <DirectionArrow direction={fabric.direction} />}
        </small>
      </div>
      <button
        type="button"
        className="fabric-toggle"
        aria-expanded={open}
        aria-controls={detailsId}
        aria-label={t('Edit {name}', { name })}
        onClick={toggle}
      >
        <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
          <path d={open ? 'M3 10.5 8 5.5l5 5' : 'M3 5.5l5 5 5-5'} fill="none" stroke="currentColor" strokeWidth="1.8" />
        </svg>
      </button>
      <div className="fabric-details" id={detailsId} hidden={!open}>
        {open && (
          <LazyPanel>
            <FabricDetails fabric={fabric} used={count > 0} />
            <ScrollIntoView />
          </LazyPanel>
        )}
      </div>
    </li>
  )
}

/** Scrolls the details into view once they are on the page. */
function ScrollIntoView() {
  const here = useRef<HTMLSpanElement>(null)
  // Some browsers return a promise here, which React must not take for a clean-up function.
  useEffect(() => void here.current?.closest('.fabric')?.scrollIntoView({ block: 'nearest' }), [])
  return <span ref={here} hidden />
}

/** An arrow along the fabric: one head if the print has a top, two heads if it may be turned half round. */
function DirectionArrow({ direction }: { readonly direction: NonNullable<Fabric['direction']> }) {
  const name = direction === 'one-way' ? t('one-way') : t('two-way')
  return (
    <svg className="direction" viewBox="0 0 10 16" width="9" height="14" role="img" aria-label={name}>
      <title>{name}</title>
      <path d={`M5 1V15M1.5 5 5 1l3.5 4${direction === 'two-way' ? 'M1.5 11 5 15l3.5-4' : ''}`} fill="none" stroke="currentColor" strokeWidth="1.7" />
    </svg>
  )
}
