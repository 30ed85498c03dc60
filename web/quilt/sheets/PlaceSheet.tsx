/** The quilt's places: how many and how large, the frame round each block, and what lies in the selected place. */
import { useMemo } from 'react'
import {
  cellForAll,
  PLACE_STAGES,
  stagesDone,
  type Quilt,
  quiltLayout,
  setPlaceSize,
  setQuiltFrame,
  setQuiltGrid,
  type Length,
} from '../../../geometry/index.ts'
import { CountField } from '../../controls/CountField.tsx'
import { EntryField } from '../../controls/EntryField.tsx'
import { lengthForFile, lengthProblem } from '../../controls/lengthEntry.ts'
import { editQuilt, setView } from '../../document/store.ts'
import { sayFieldLength, saySides } from '../../words/sizes.ts'
import { t, tn } from '../../words/words.ts'
import { act, cellName } from '../quiltActions.ts'
import { selectedPlaces, setQuiltView, useQuiltView } from '../quiltView.ts'
import { exactOf, FrameFields } from './FrameFields.tsx'
import { SelectedPlace } from './SelectedPlace.tsx'

export function PlaceSheet({ quilt }: { readonly quilt: Quilt }) {
  const selected = useQuiltView((view) => view.selected)
  const layout = useMemo(() => quiltLayout(quilt), [quilt])
  const [place] = selectedPlaces(quilt, selected)
  const drawn = layout.places.find((one) => one.place === place)
  return (
    <>
      {drawn !== undefined && selected.length === 1 && <SelectedPlace quilt={quilt} drawn={drawn} />}
      <section aria-labelledby="grid-title">
        <h2 id="grid-title">{t('Positions')}</h2>
        <div className="pairs">
          <CountField
            label={t('Blocks across')}
            value={quilt.grid.columns}
            choices={countsTo(quilt.grid.columns)}
            onChange={(columns) => editQuilt(setQuiltGrid(columns, quilt.grid.rows))}
          />
          <CountField
            label={t('Blocks down')}
            value={quilt.grid.rows}
            choices={countsTo(quilt.grid.rows)}
            onChange={(rows) => editQuilt(setQuiltGrid(quilt.grid.columns, rows))}
          />
          <CellSize quilt={quilt} />
        </div>
        <dl className="size">
          <dt>{t('Finished quilt')}</dt>
          <dd>{saySides(layout.size, quilt.measure.unit)}</dd>
        </dl>
        <FitCheck quilt={quilt} />
        <Progress quilt={quilt} />
        <p className="hint">{t('Blocks lie square to the edges. Blocks on point aren’t there yet.')}</p>
      </section>
      <FramePanel quilt={quilt} />
    </>
  )
}

/** As many as anybody lays out, and as many as a file may say. */
const MOST = 30
const countsTo = (now: number): number[] => {
  const counts = Array.from({ length: MOST }, (_, index) => index + 1)
  return now > MOST ? [...counts, now] : counts
}

function CellSize({ quilt }: { readonly quilt: Quilt }) {
  const { unit } = quilt.measure
  const { cell } = quilt.grid
  const [wide, high] = typeof cell === 'object' ? (cell as readonly [Length, Length]) : [cell, cell]
  const set = (next: readonly [Length, Length]): void =>
    act(setPlaceSize(String(next[0]) === String(next[1]) ? next[0] : next), t('Size of the positions changed.'))
  return (
    <>
      <EntryField
        label={t('Width of a position ({unit})', { unit })}
        value={sayFieldLength(exactOf(wide), unit)}
        validate={lengthProblem}
        onCommit={(text) => set([lengthForFile(text), typeof cell === 'object' ? high : lengthForFile(text)])}
      />
      <EntryField
        label={t('Height of a position ({unit})', { unit })}
        value={sayFieldLength(exactOf(high), unit)}
        validate={lengthProblem}
        onCommit={(text) => set([wide, lengthForFile(text)])}
      />
    </>
  )
}

/** Which blocks don't fit, and the size of place that takes them all. */
function FitCheck({ quilt }: { readonly quilt: Quilt }) {
  const layout = useMemo(() => quiltLayout(quilt), [quilt])
  const wrong = layout.places.filter(({ fit }) => fit !== 'fits')
  const fitting = cellForAll(quilt)
  const [first] = wrong
  if (first === undefined || fitting === null) return null
  const large = wrong.filter(({ fit }) => fit === 'too-large').length
  const { unit } = quilt.measure
  const [wide, high] = typeof fitting === 'object' ? (fitting as readonly [Length, Length]) : [fitting, fitting]
  const size = `${sayFieldLength(exactOf(wide), unit)} × ${sayFieldLength(exactOf(high), unit)} ${unit}`
  return (
    <div className="fit-check">
      {large > 0 && (
        <p className="trouble">{tn(large, 'One block is too large for its position.', '{n} blocks are too large for their positions.')}</p>
      )}
      {wrong.length > large && (
        <p className="trouble">
          {tn(
            wrong.length - large,
            'One block doesn’t fill its position: give it a frame.',
            '{n} blocks don’t fill their positions: give them a frame.',
          )}
        </p>
      )}
      <div className="buttons">
        <button
          type="button"
          onClick={() => {
            setQuiltView({ selected: wrong.map(({ place }) => place.at) })
            setView({ notice: t('First in {cell}.', { cell: cellName(first.place.at) }) })
          }}
        >
          {t('Show which')}
        </button>
        {large > 0 && (
          <button type="button" onClick={() => act(setPlaceSize(fitting), t('Every block fits its position now.'))}>
            {t('Make positions {size}', { size })}
          </button>
        )}
      </div>
    </div>
  )
}

/** How much is done of the quilt, once anything is ticked off. */
function Progress({ quilt }: { readonly quilt: Quilt }) {
  const counts = PLACE_STAGES.map((stage) => quilt.places.filter((place) => stagesDone(place).includes(stage)).length)
  if (counts.every((count) => count === 0)) return null
  const [pieced = 0, quilted = 0, joined = 0] = counts
  return (
    <p className="sum">
      {t('Of {n} positions: {pieced} pieced, {quilted} quilted, {joined} joined', { n: quilt.places.length, pieced, quilted, joined })}
    </p>
  )
}

/** The frame of all places: rounds with a width, and a last one that takes what is left. */
function FramePanel({ quilt }: { readonly quilt: Quilt }) {
  const rounds = quilt.frame ?? []
  return (
    <section aria-labelledby="frame-title">
      <h2 id="frame-title">{t('Frame')}</h2>
      <p className="hint">{t('Strips round each block bring it to the size of its position. The last strips take what is left.')}</p>
      <FrameFields rounds={rounds} quilt={quilt} onChange={(next) => act(setQuiltFrame(next), t('Frame changed.'))} />
    </section>
  )
}
