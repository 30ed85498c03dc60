/** The stars that one batch of geese can make, to choose from; and the nearest colouring that needs one batch fewer. */
import { useMemo } from 'react'
import {
  type Batch,
  type Block,
  type BoxUnit,
  colourWings,
  type Findings,
  nearestColouring,
  type Star,
  starsIn,
  starsOfOneBatch,
  type UnitRow,
  type Wings,
  wingsSeen,
} from '../../../geometry/index.ts'
import { deepClient } from '../../workers/clients.ts'
import { svgFill } from '../../drawing/FabricDefs.tsx'
import { edit, setView, useStore } from '../../document/store.ts'
import { t, tn } from '../../words/words.ts'
import { useWorker } from '../../workers/useWorker.ts'

/** Up to this many geese the nearest colouring is found on the page; for more, in a worker. */
const MOST_GEESE = 16

export function BatchStars({ report }: { readonly report: Findings }) {
  const block = useStore(({ history }) => history.block)
  const rows = report.units.filter(({ batches }) => batches.length > 0)
  return rows.map((row) => <Row key={`${row.finished.join()} ${row.for.join()}`} row={row} block={block} />)
}

function Row({ row, block }: { readonly row: UnitRow; readonly block: Block }) {
  const stars = useMemo(() => starsIn(block).filter((ids) => ids.every((id) => row.for.includes(id))), [block, row])
  const star = stars[0]
  const batch = row.batches[0]
  return (
    <>
      {row.batches.length > 1 && <FewerBatches row={row} block={block} />}
      {star !== undefined && batch !== undefined && <StarChoices star={star} batch={batch} block={block} />}
    </>
  )
}

/** A button that takes the nearest colouring that needs one batch fewer. */
function FewerBatches({ row, block }: { readonly row: UnitRow; readonly block: Block }) {
  const geese = useMemo(() => {
    const ids = new Set(row.for)
    return block.units.filter((unit): unit is BoxUnit => unit.kind === 'goose' && ids.has(unit.id))
  }, [block, row])
  const wings = useMemo(() => geese.map(wingsSeen), [geese])
  const batches = row.batches.length - 1
  const isSmall = geese.length <= MOST_GEESE
  const computedHere = useMemo(() => (isSmall ? nearestColouring(wings, batches) : null), [isSmall, wings, batches])
  const reply = useWorker(deepClient, 'nearest', isSmall ? null : [wings, batches])
  const nearest = isSmall ? computedHere : reply?.type === 'answer' ? reply.value : null
  if (nearest === null) return isSmall || reply !== null ? null : <p className="hint">{t('Looking for a colouring that needs fewer batches…')}</p>
  const changed = tn(nearest.changed, '1 wing', '{n} wings')
  const take = (): void => {
    edit(colourWings(Object.fromEntries(geese.map(({ id }, place) => [id, nearest.wings[place] as Wings]))))
    setView({
      notice: tn(batches, '{wings} changed. One batch now makes all your geese.', '{wings} changed. {n} batches now make all your geese.', {
        wings: changed,
      }),
    })
  }
  return (
    <div className="buttons">
      <button type="button" onClick={take}>
        {tn(batches, 'Change {wings} to need only one batch', 'Change {wings} to need only {n} batches', { wings: changed })}
      </button>
      {!nearest.proved && <small>{t('fewest changes found')}</small>}
    </div>
  )
}

function StarChoices({ star, batch, block }: { readonly star: readonly string[]; readonly batch: Batch; readonly block: Block }) {
  const top = block.units.find(({ id }) => id === star[0]) as BoxUnit
  const now = star.map((id) => wingsSeen(block.units.find((unit) => unit.id === id) as BoxUnit)) as unknown as Star
  const name = (one: readonly Wings[]): string => one.map((wings) => wings.join()).join(';')
  const stars = starsOfOneBatch(batch.corners)
  if (stars.length < 2) return null
  return (
    <>
      <h3>{t('Stars from one batch')}</h3>
      <ul className="stars">
        {stars.map((one, index) => {
          const isNow = [0, 1, 2, 3].some((turn) => name([...one.slice(turn), ...one.slice(0, turn)]) === name(now))
          return (
            <li key={one.flat().join()}>
              <button
                type="button"
                aria-pressed={isNow}
                aria-label={t('Use star {n} of {all}', { n: index + 1, all: stars.length })}
                onClick={() => {
                  edit(colourWings(Object.fromEntries(star.map((id, place) => [id, one[place] as Wings]))))
                  setView({ notice: t('Star recoloured: one batch makes its geese.') })
                }}
              >
                <StarPicture star={isNow ? now : one} goose={batch.goose} outward={(top.turn ?? 0) === 0} block={block} />
              </button>
            </li>
          )
        })}
      </ul>
    </>
  )
}

/** A picture of a star: four geese around a square. All are drawn like the top one, turned. */
function StarPicture({
  star,
  goose,
  outward,
  block,
}: {
  readonly star: Star
  readonly goose: string
  readonly outward: boolean
  readonly block: Block
}) {
  const fillOf = (id: string): string =>
    svgFill(
      'cloth-',
      block.fabrics.find((fabric) => fabric.id === id),
    )
  // Seen from the middle of a star whose tips point inward, left and right change sides.
  const [body, near, far] = outward ? ['1,1 3,1 2,0', '1,0 2,0 1,1', '2,0 3,0 3,1'] : ['1,0 3,0 2,1', '3,0 3,1 2,1', '1,0 2,1 1,1']
  return (
    <svg viewBox="-0.1 -0.1 4.2 4.2" width="56" height="56" aria-hidden="true">
      <rect width="4" height="4" fill={fillOf(goose)} />
      {star.map(([left, right], side) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a goose is its side of the star
        <g key={side} transform={`rotate(${side * 90} 2 2)`}>
          <polygon points={body} fill={fillOf(goose)} />
          <polygon points={near} fill={fillOf(left)} />
          <polygon points={far} fill={fillOf(right)} />
        </g>
      ))}
      <rect width="4" height="4" fill="none" stroke="#2b2320" strokeWidth="0.08" />
    </svg>
  )
}
