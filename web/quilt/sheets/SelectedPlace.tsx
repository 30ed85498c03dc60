/** What lies in the selected place: its size and frame, how it is turned and pressed, which fabrics it wears, what is done of it. */
import {
  type DrawnPlace,
  fabricsShown,
  framePlaces,
  holdPlaces,
  PLACE_STAGES,
  removeBlock,
  type PlaceStage,
  type Quilt,
  stagesDone,
  tickPlaces,
  wearFabric,
} from '../../../geometry/index.ts'
import { FabricOptions } from '../../controls/FabricOptions.tsx'
import { editQuilt } from '../../document/store.ts'
import { sayOneSize, saySides } from '../../words/sizes.ts'
import { t } from '../../words/words.ts'
import { nameOfContent, wordsOfPlace } from '../board/PlaceGrid.tsx'
import { act, openBlockOf, pressChosen, stretchChosen, turnChosen } from '../quiltActions.ts'
import { useQuiltReport } from '../useQuiltReport.ts'
import { FrameFields } from './FrameFields.tsx'

interface Props {
  readonly quilt: Quilt
  readonly drawn: DrawnPlace
}

export function SelectedPlace({ quilt, drawn }: Props) {
  const { place } = drawn
  const isBlock = place.block !== undefined
  return (
    <section aria-labelledby="place-title">
      <h2 id="place-title">{nameOfContent(quilt, place)}</h2>
      <p className="hint">{wordsOfPlace(quilt, drawn)}</p>
      <PlaceSizes quilt={quilt} drawn={drawn} />
      <PlaceLayers quilt={quilt} id={place.id} />
      <PrintTurned quilt={quilt} drawn={drawn} />
      {isBlock && (
        <div className="buttons">
          <button type="button" onClick={() => turnChosen(1)}>
            {t('Turn 90°')}
          </button>
          <button type="button" onClick={() => turnChosen(3)}>
            {t('Turn 90° left')}
          </button>
          <button type="button" aria-pressed={place.press === 'opposite'} onClick={pressChosen}>
            {t('Press the other way')}
          </button>
          <button type="button" onClick={() => void openBlockOf(quilt, place.block as string)}>
            {t('Open the block')}
          </button>
          <button
            type="button"
            className="danger"
            onClick={() => act(removeBlock(place.block as string), t('{name} is deleted from this quilt.', { name: nameOfContent(quilt, place) }))}
          >
            {t('Delete from the quilt')}
          </button>
        </div>
      )}
      <div className="buttons">
        <button type="button" onClick={() => stretchChosen(1, 0)}>
          {t('Wider')}
        </button>
        <button type="button" onClick={() => stretchChosen(-1, 0)}>
          {t('Narrower')}
        </button>
        <button type="button" onClick={() => stretchChosen(0, 1)}>
          {t('Higher')}
        </button>
        <button type="button" onClick={() => stretchChosen(0, -1)}>
          {t('Lower')}
        </button>
      </div>
      {isBlock && <PlaceOptions quilt={quilt} drawn={drawn} />}
      <Ticks drawn={drawn} />
      {isBlock && <WornFabrics quilt={quilt} id={place.block as string} />}
    </section>
  )
}

function PlaceSizes({ quilt, drawn: { place, size, content, frame, spare, fit } }: Props) {
  const { unit } = quilt.measure
  const round = frame.at(-1)
  return (
    <dl className="size">
      <dt>{t('Position, finished')}</dt>
      <dd>{saySides(size, unit)}</dd>
      {place.block !== undefined && (
        <>
          <dt>{t('Block, finished')}</dt>
          <dd>{saySides(content, unit)}</dd>
          <dt>{t('Frame')}</dt>
          <dd>{round === undefined ? t('none') : frame.map((one) => frameWords(one, unit)).join('; ')}</dd>
          {fit !== 'fits' && (
            <>
              <dt>{t('Fit')}</dt>
              <dd className="trouble">{fitWords(spare, unit)}</dd>
            </>
          )}
        </>
      )}
    </dl>
  )
}

/** How large the layers are cut and trimmed, and where the quilting stops. */
function PlaceLayers({ quilt, id }: { readonly quilt: Quilt; readonly id: string }) {
  const { report, of } = useQuiltReport()
  const layers = of === quilt ? report?.places.find((place) => place.id === id)?.layers : null
  if (layers == null) return null
  const { unit } = quilt.measure
  const both = ({ cut, trim }: { readonly cut: readonly [number, number]; readonly trim: readonly [number, number] }): string =>
    cut.join() === trim.join() ? saySides(cut, unit) : t('{cut}, trimmed to {trim}', { cut: saySides(cut, unit), trim: saySides(trim, unit) })
  return (
    <dl className="size">
      <dt>{t('Front')}</dt>
      <dd>{saySides(layers.front, unit)}</dd>
      <dt>{t('Batting')}</dt>
      <dd>{both(layers.batting)}</dd>
      <dt>{t('Backing')}</dt>
      <dd>{both(layers.backing)}</dd>
      {layers.loose > 0 && (
        <>
          <dt>{t('Quilting')}</dt>
          <dd>{t('stops {length} from the raw edge', { length: sayOneSize(layers.loose, unit) })}</dd>
        </>
      )}
    </dl>
  )
}

/** A print with a direction turns with its block. */
function PrintTurned({ quilt, drawn: { place } }: Props) {
  const turn = place.turn ?? 0
  const item = quilt.blocks.find(({ id }) => id === place.block)
  if (item === undefined || turn === 0) return null
  const turned = fabricsShown(item.block)
    .map((fabric) => quilt.fabrics.find(({ id }) => id === item.wear?.[fabric.id]) ?? fabric)
    .filter(({ direction }) => direction === 'one-way' || (direction === 'two-way' && turn % 2 === 1))
  if (turned.length === 0) return null
  return (
    <p className="hint">
      {t('{fabric} doesn’t lie upright here: its print turns with the block.', { fabric: turned.map(({ name }) => name).join(', ') })}
    </p>
  )
}

function frameWords({ across, down }: { readonly across: number; readonly down: number }, unit: 'in' | 'cm'): string {
  if (across === down) return t('{width} all round', { width: sayOneSize(across, unit) })
  if (down === 0) return t('{width} at the sides', { width: sayOneSize(across, unit) })
  if (across === 0) return t('{width} at top and bottom', { width: sayOneSize(down, unit) })
  return t('{across} at the sides, {down} at top and bottom', { across: sayOneSize(across, unit), down: sayOneSize(down, unit) })
}

function fitWords([across, down]: readonly [number, number], unit: 'in' | 'cm'): string {
  const worst = Math.min(across, down)
  return worst < 0
    ? t('{length} too large', { length: sayOneSize(-worst, unit) })
    : t('{length} short', { length: sayOneSize(Math.max(across, down), unit) })
}

function PlaceOptions({ quilt, drawn: { place } }: Props) {
  const ownFrame = place.frame !== undefined
  return (
    <>
      <label className="tick">
        <input type="checkbox" checked={place.fixed === true} onChange={(event) => editQuilt(holdPlaces([place.id], event.target.checked))} />
        {t('Keep its turn and pressing')}
      </label>
      <label className="tick">
        <input
          type="checkbox"
          checked={ownFrame}
          onChange={(event) => editQuilt(framePlaces([place.id], event.target.checked ? (quilt.frame ?? []) : null))}
        />
        {t('A frame of its own')}
      </label>
      {ownFrame && <FrameFields quilt={quilt} rounds={place.frame ?? []} onChange={(rounds) => editQuilt(framePlaces([place.id], rounds))} />}
    </>
  )
}

const STAGE_NAMES: Readonly<Record<PlaceStage, () => string>> = {
  pieced: () => t('Pieced'),
  quilted: () => t('Quilted'),
  joined: () => t('Joined'),
}

function Ticks({ drawn: { place } }: { readonly drawn: DrawnPlace }) {
  const done = stagesDone(place)
  return (
    <fieldset className="ticks">
      <legend>{t('Done so far')}</legend>
      {PLACE_STAGES.map((stage) => (
        <label key={stage} className="tick">
          <input
            type="checkbox"
            checked={done.includes(stage)}
            onChange={(event) => editQuilt(tickPlaces([place.id], stage, event.target.checked))}
          />
          {STAGE_NAMES[stage]()}
        </label>
      ))}
    </fieldset>
  )
}

/** Which of the quilt's fabrics each of the block's is sewn in, here and wherever the block lies. */
function WornFabrics({ quilt, id }: { readonly quilt: Quilt; readonly id: string }) {
  const item = quilt.blocks.find((one) => one.id === id)
  if (item === undefined) return null
  return (
    <>
      <h3>{t('Fabrics of this block')}</h3>
      <div className="pairs">
        {fabricsShown(item.block).map((fabric) => (
          <label key={fabric.id}>
            {fabric.name}
            <select
              value={item.wear?.[fabric.id] ?? ''}
              onChange={(event) => editQuilt(wearFabric(id, fabric.id, event.target.value === '' ? null : event.target.value))}
            >
              <FabricOptions fabrics={quilt.fabrics} />
              <option value="">{t('its own, apart from the quilt')}</option>
            </select>
          </label>
        ))}
      </div>
    </>
  )
}
