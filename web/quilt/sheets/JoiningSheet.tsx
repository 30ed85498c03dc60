/** How the quilt's places are joined: each way in cross-section, and what it means for this quilt. */
import { useState } from 'react'
import { joinBy, type Length, type Quilt, type QuiltWay, setQuiltOrder, setWay, type Way, type WayFacts, WAYS } from '../../../geometry/index.ts'
import { EntryField } from '../../controls/EntryField.tsx'
import { FabricOptions } from '../../controls/FabricOptions.tsx'
import { lengthForFile, lengthProblem } from '../../controls/lengthEntry.ts'
import { editQuilt } from '../../document/store.ts'
import { sayFieldLength, sayOneSize, saySides } from '../../words/sizes.ts'
import { t, tn } from '../../words/words.ts'
import { quiltWorker } from '../../workers/clients.ts'
import { useWorker } from '../../workers/useWorker.ts'
import { act } from '../quiltActions.ts'
import { BorderPanel } from './BorderPanel.tsx'
import { JoinPicture } from './JoinPicture.tsx'
import { JointSteps } from './JointSteps.tsx'
import { exactOf } from './FrameFields.tsx'
import { isLaidOut } from './QuiltSummary.tsx'

const WAY_NAMES: Readonly<Record<Way, () => string>> = {
  whole: () => t('Quilt it whole'),
  strips: () => t('Narrow strips, front and back'),
  fronts: () => t('Fronts joined, backing by hand'),
  'backing-over': () => t('Backing folded to the front'),
  butted: () => t('Edges butted, strips over them'),
}

const WAY_HINTS: Readonly<Record<Way, () => string>> = {
  whole: () => t('Sew the top, layer it with batting and backing, then quilt everything at once.'),
  strips: () => t('Quilt and trim each position, then join two with a strip in front and a cover strip behind.'),
  fronts: () => t('Quilt each position but its edges. Sew the fronts, butt the batting, close the backing by hand.'),
  'backing-over': () => t('Sew the backings together, then fold each margin twice over its own position and topstitch.'),
  butted: () => t('Quilt and trim each position. Zigzag the edges together and sew a strip over both sides.'),
}

export function JoiningSheet({ quilt }: { readonly quilt: Quilt }) {
  const join = quilt.way?.join ?? 'whole'
  const facts = useWayFacts(quilt)
  return (
    <>
      <section aria-labelledby="joining-title">
        <h2 id="joining-title">{t('Way of joining')}</h2>
        <div className="ways">
          {WAYS.map((way) => (
            <WayCard
              key={way}
              quilt={quilt}
              way={way}
              chosen={way === join}
              facts={facts.facts?.find((one) => one.join === way)}
              working={facts.working}
            />
          ))}
        </div>
      </section>
      <section aria-labelledby="way-options-title">
        <h2 id="way-options-title">{WAY_NAMES[join]()}</h2>
        <WayOptions quilt={quilt} join={join} />
        <OrderField quilt={quilt} />
      </section>
      {join === 'whole' && <BorderPanel quilt={quilt} />}
      <JointSteps quilt={quilt} />
    </>
  )
}

/** The last facts stay while newer ones are computed. */
function useWayFacts(quilt: Quilt): { readonly facts: readonly WayFacts[] | null; readonly working: boolean } {
  const [last, setLast] = useState<readonly WayFacts[] | null>(null)
  const reply = useWorker(quiltWorker, 'ways', useArgs(quilt))
  const facts = reply?.type === 'answer' ? reply.value : null
  if (facts !== null && facts !== last) setLast(facts)
  return { facts: facts ?? last, working: facts === null }
}

function useArgs(quilt: Quilt): [Quilt] {
  const [args, setArgs] = useState<[Quilt]>([quilt])
  if (args[0] !== quilt) setArgs([quilt])
  return args[0] === quilt ? args : [quilt]
}

interface CardProps {
  readonly quilt: Quilt
  readonly way: Way
  readonly chosen: boolean
  readonly facts: WayFacts | undefined
  readonly working: boolean
}

function WayCard({ quilt, way, chosen, facts, working }: CardProps) {
  return (
    <label className={chosen ? 'way chosen' : 'way'}>
      <span className="way-head">
        <input
          type="radio"
          name="way"
          checked={chosen}
          onChange={() => act(joinBy(way, quilt.fabrics[0]?.id), t('Way of joining: {way}.', { way: WAY_NAMES[way]() }))}
        />
        <strong>{WAY_NAMES[way]()}</strong>
        <JoinPicture join={way} />
      </span>
      <span className="way-hint">{WAY_HINTS[way]()}</span>
      {facts === undefined ? <span className="working">{t('Working…')}</span> : <Facts facts={facts} quilt={quilt} working={working} />}
    </label>
  )
}

function Facts({ facts, quilt, working }: { readonly facts: WayFacts; readonly quilt: Quilt; readonly working: boolean }) {
  const { unit } = quilt.measure
  const { finished, strips, handSewn, underArm, loose, between } = facts
  const length = (value: number): string => sayOneSize(value, unit)
  const size = <span>{t('Finished: {size}', { size: saySides(finished, unit) })}</span>
  // Nothing is known of strips and seams until the whole quilt is laid out.
  if (!isLaidOut(quilt)) return <span className="way-facts">{size}</span>
  return (
    <span className={working ? 'way-facts stale' : 'way-facts'}>
      {size}
      <span>{strips === 0 ? t('No strips to cut') : tn(strips, 'One strip to cut', '{n} strips to cut')}</span>
      <span>{handSewn === 0 ? t('Nothing by hand') : t('By hand: {length}', { length: length(handSewn) })}</span>
      <span>{t('Under the machine’s arm: {length}', { length: length(underArm) })}</span>
      <span>{loose === 0 ? t('Quilt to the edges') : t('Stop quilting {length} from the raw edges', { length: length(loose) })}</span>
      <span>
        {between === null
          ? t('No seams of two blocks meet')
          : between === 0
            ? t('All crossings between blocks nest')
            : tn(between, 'One crossing between blocks doesn’t nest', '{n} crossings between blocks don’t nest')}
      </span>
    </span>
  )
}

function WayOptions({ quilt, join }: { readonly quilt: Quilt; readonly join: Way }) {
  const way = quilt.way ?? {}
  if (join === 'whole') return <SashOptions quilt={quilt} />
  if (join === 'fronts') return null
  return (
    <div className="pairs">
      <WidthField
        quilt={quilt}
        label={join === 'backing-over' ? t('Width of the rim') : t('Width of the strip')}
        value={way.width}
        onSet={(width) => editQuilt(setWay({ width }))}
      />
      {join !== 'backing-over' && (
        <>
          <FabricField quilt={quilt} label={t('Fabric of the strips')} value={way.fabric} onSet={(fabric) => editQuilt(setWay({ fabric }))} />
          <FabricField
            quilt={quilt}
            label={t('Fabric of the cover strips')}
            value={way.coverFabric ?? way.fabric}
            onSet={(coverFabric) => editQuilt(setWay({ coverFabric }))}
          />
        </>
      )}
      {join === 'strips' && <StripOptions way={way} />}
    </div>
  )
}

function StripOptions({ way }: { readonly way: QuiltWay }) {
  return (
    <>
      <label>
        {t('Cover strip')}
        <select value={way.cover ?? 'folded'} onChange={(event) => editQuilt(setWay({ cover: event.target.value as 'folded' | 'flat' }))}>
          <option value="folded">{t('folded double')}</option>
          <option value="flat">{t('flat, one edge turned in')}</option>
        </select>
      </label>
      <label>
        {t('Close it')}
        <select value={way.close ?? 'machine'} onChange={(event) => editQuilt(setWay({ close: event.target.value as 'machine' | 'hand' }))}>
          <option value="machine">{t('by machine')}</option>
          <option value="hand">{t('by hand')}</option>
        </select>
      </label>
    </>
  )
}

interface FieldProps<Value> {
  readonly quilt: Quilt
  readonly label: string
  readonly value: Value | undefined
  readonly onSet: (value: Value) => void
}

function WidthField({ quilt, label, value, onSet }: FieldProps<Length>) {
  const { unit } = quilt.measure
  return (
    <EntryField
      label={`${label} (${unit})`}
      value={value === undefined ? t('usual') : sayFieldLength(exactOf(value), unit)}
      validate={lengthProblem}
      onCommit={(text) => onSet(lengthForFile(text))}
    />
  )
}

const FabricField = ({ quilt, label, value, onSet }: FieldProps<string>) => (
  <label>
    {label}
    <select value={value ?? ''} onChange={(event) => onSet(event.target.value)}>
      {value === undefined && <option value="" />}
      <FabricOptions fabrics={quilt.fabrics} />
    </select>
  </label>
)

/** A sash between the places of a whole quilt: its width, its fabric, corner squares, and whether it runs round the outside. */
function SashOptions({ quilt }: { readonly quilt: Quilt }) {
  const sash = quilt.way?.sash
  const fabric = quilt.fabrics[0]?.id
  if (sash === undefined)
    return (
      <div className="buttons">
        <button
          type="button"
          disabled={fabric === undefined}
          onClick={() => act(setWay({ sash: { width: quilt.measure.unit === 'in' ? 2 : 5, fabric: fabric as string } }), t('Sashing added.'))}
        >
          {t('Add sashing between the blocks')}
        </button>
      </div>
    )
  const change = (next: Partial<typeof sash>): void => editQuilt(setWay({ sash: { ...sash, ...next } }))
  const withCorner = (corner: string): void => {
    const { corner: _, ...plain } = sash
    editQuilt(setWay({ sash: corner === '' ? plain : { ...plain, corner } }))
  }
  return (
    <>
      <div className="pairs">
        <WidthField quilt={quilt} label={t('Finished width of the sashing')} value={sash.width} onSet={(width) => change({ width })} />
        <FabricField quilt={quilt} label={t('Fabric of the sashing')} value={sash.fabric} onSet={(next) => change({ fabric: next })} />
        <label>
          {t('Corner squares')}
          <select value={sash.corner ?? ''} onChange={(event) => withCorner(event.target.value)}>
            <option value="">{t('none')}</option>
            <FabricOptions fabrics={quilt.fabrics} />
          </select>
        </label>
      </div>
      <label className="tick">
        <input type="checkbox" checked={sash.round === true} onChange={(event) => change({ round: event.target.checked })} />
        {t('Round the outside too')}
      </label>
      <div className="buttons">
        <button type="button" className="danger" onClick={() => act(setWay({ sash: undefined }), t('Sashing deleted.'))}>
          {t('No sashing')}
        </button>
      </div>
    </>
  )
}

function OrderField({ quilt }: { readonly quilt: Quilt }) {
  return (
    <label>
      {t('Join')}
      <select value={quilt.order ?? 'auto'} onChange={(event) => editQuilt(setQuiltOrder(event.target.value as 'auto'))}>
        <option value="auto">{t('in the best order')}</option>
        <option value="rows">{t('in rows')}</option>
        <option value="columns">{t('in columns')}</option>
        <option value="sections">{t('in sections, half by half')}</option>
      </select>
    </label>
  )
}
