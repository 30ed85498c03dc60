/** Above the quilt: what is in hand, or what can be done with the selected places. */
import type { Quilt } from '../../geometry/index.ts'
import { Popover } from '../controls/Popover.tsx'
import { useStore } from '../document/store.ts'
import { t, tn } from '../words/words.ts'
import { letGo } from './board/boardKeys.ts'
import { nameOfContent } from './board/PlaceGrid.tsx'
import { ItemPicture } from './DraggedFromList.tsx'
import { alternate, clearChosen, fillSelection, pressChosen, selectAll, selectEveryOther, turnChosen } from './quiltActions.ts'
import { contentOf, type HandItem, selectedPlaces, setQuiltView, useQuiltView } from './quiltView.ts'

export function QuiltToolbar({ quilt }: { readonly quilt: Quilt }) {
  const { inHand, selected } = useQuiltView()
  if (inHand !== null) return <InHandLine quilt={quilt} item={inHand} />
  return (
    <div className="inhand quilt-tools" data-part="looks">
      <p>{selectionWords(quilt, selected)}</p>
      <div className="buttons">
        {selected.length > 0 && <SelectionButtons quilt={quilt} />}
        <SelectMenu quilt={quilt} />
      </div>
    </div>
  )
}

function InHandLine({ quilt, item }: { readonly quilt: Quilt; readonly item: HandItem }) {
  return (
    <section className="inhand" aria-label={t('In hand')} data-part="inhand">
      <span className="hand-picture">
        <ItemPicture quilt={quilt} item={item} side={30} />
      </span>
      <strong>{handName(quilt, item)}</strong>
      <button type="button" onClick={letGo}>
        {t('Done')}
      </button>
    </section>
  )
}

function handName(quilt: Quilt, item: HandItem): string {
  if (item.type === 'library') return item.name
  if (item.type === 'block') return quilt.blocks.find(({ id }) => id === item.id)?.block.name ?? ''
  return t('Plain piece of {name}', { name: quilt.fabrics.find(({ id }) => id === item.fabric)?.name ?? '' })
}

function selectionWords(quilt: Quilt, selected: readonly (readonly [number, number])[]): string {
  const [only] = selected
  if (only === undefined)
    return quilt.places.length === 0 ? t('Drag a block from the list onto a position to begin.') : t('Click a position to select it.')
  if (selected.length > 1) return tn(selected.length, 'One position selected.', '{n} positions selected.')
  const [place] = selectedPlaces(quilt, selected)
  return place === undefined ? t('Column {x}, row {y}: empty', { x: only[0] + 1, y: only[1] + 1 }) : nameOfContent(quilt, place)
}

function SelectionButtons({ quilt }: { readonly quilt: Quilt }) {
  const { selected } = useQuiltView()
  const places = selectedPlaces(quilt, selected)
  const blocks = places.filter(({ block }) => block !== undefined)
  const opposite = blocks.length > 0 && blocks.every(({ press }) => press === 'opposite')
  return (
    <>
      <button type="button" disabled={blocks.length === 0} onClick={() => turnChosen(1)}>
        {t('Turn 90°')}
      </button>
      <button type="button" disabled={blocks.length === 0} aria-pressed={opposite} onClick={pressChosen}>
        {t('Press the other way')}
      </button>
      {selected.length > 1 && places.length > 0 && (
        <button type="button" onClick={fillSelection}>
          {t('Fill')}
        </button>
      )}
      <button type="button" className="danger" disabled={places.length === 0} onClick={clearChosen}>
        {t('Clear')}
      </button>
    </>
  )
}

function SelectMenu({ quilt }: { readonly quilt: Quilt }) {
  const adding = useQuiltView((view) => view.adding)
  const readOnly = useStore(({ currentBlock }) => currentBlock.readOnly)
  return (
    <Popover name={t('More')} className="quilt-more">
      <div className="popover-content menu">
        <button type="button" aria-pressed={adding} onClick={() => setQuiltView({ adding: !adding })}>
          {t('Add to selection')}
        </button>
        <button type="button" onClick={selectAll}>
          {t('Select all')}
        </button>
        <button type="button" onClick={selectEveryOther}>
          {t('Select every other position')}
        </button>
        {!readOnly && <PatternButtons quilt={quilt} />}
      </div>
    </Popover>
  )
}

/** The first two contents of the selection by turns, over the whole quilt. */
function PatternButtons({ quilt }: { readonly quilt: Quilt }) {
  const { selected } = useQuiltView()
  const contents = selectedPlaces(quilt, selected).flatMap((place) => contentOf(place) ?? [])
  const two = contents.length === 2 ? contents : null
  return (
    <button
      type="button"
      aria-disabled={two === null}
      title={t('Select two positions first')}
      onClick={() => {
        if (two === null) return
        setQuiltView({ selected: [] })
        alternate(two)
      }}
    >
      {t('Repeat these two by turns')}
    </button>
  )
}
