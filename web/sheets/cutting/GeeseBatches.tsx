/** The batches that make flying geese four at a time: which small square goes on which corner of the large one. */
import { type Batch, batchMakes, batchMessage, type Block, geeseToKeep, namesOf, type UnitRow } from '../../../geometry/index.ts'
import { svgFill } from '../../drawing/FabricDefs.tsx'
import { translateAny } from '../../words/translateAny.ts'
import { tn } from '../../words/words.ts'

/** Rows of the report whose units are made in batches. */
export function GeeseBatches({ rows, block }: { readonly rows: readonly UnitRow[]; readonly block: Block }) {
  return (
    <ul className="batches">
      {rows.map((row) => (
        <li key={`${row.finished.join()} ${row.for.join()}`}>
          <p>{translateAny(batchMessage(row))}</p>
          {row.batchesAtLeast !== undefined && (
            <p className="hint">{tn(row.batchesAtLeast, 'At least one batch is needed.', 'At least {n} batches are needed.')}</p>
          )}
          <BatchCounts row={row} block={block} />
        </li>
      ))}
    </ul>
  )
}

/** Batches that are alike are listed once, with their number. */
function BatchCounts({ row, block }: { readonly row: UnitRow; readonly block: Block }) {
  const name = namesOf(block)
  const alike = new Map<string, { batch: Batch; count: number }>()
  for (const batch of row.batches) {
    const key = batch.corners.join()
    alike.set(key, { batch, count: (alike.get(key)?.count ?? 0) + 1 })
  }
  const keep = geeseToKeep(row, block, name)
  return (
    <>
      <ul className="lots">
        {[...alike.values()].map(({ batch, count }) => {
          const makes = batchMakes(batch, name)
          const corners = batch.corners.map((fabric, corner) => `${corner + 1}: ${name(fabric)}`).join(', ')
          return (
            <li key={batch.corners.join()}>
              <BatchPicture corners={batch.corners} goose={batch.goose} block={block} />
              <span>
                {tn(count, '1 batch. Small squares: {corners}.', '{n} batches. Small squares: {corners}.', { corners })}
                {makes !== null && ` ${translateAny(makes)}`}
              </span>
            </li>
          )
        })}
      </ul>
      {keep !== null && <p>{translateAny(keep)}</p>}
    </>
  )
}

/** The top left corners of the four small squares, clockwise from the top left. */
const CORNERS = [
  [0, 0],
  [1.7, 0],
  [1.7, 1.7],
  [0, 1.7],
] as const

/** The large square with the small ones on its corners, numbered clockwise, and the diagonals that they are sewn along. */
function BatchPicture({ corners, goose, block }: { readonly corners: readonly string[]; readonly goose: string; readonly block: Block }) {
  const fill = (id: string): string =>
    svgFill(
      'cut-',
      block.fabrics.find((fabric) => fabric.id === id),
    )
  return (
    <svg viewBox="-0.1 -0.1 3.8 3.8" width="58" height="58" aria-hidden="true">
      <rect width="3.6" height="3.6" fill={fill(goose)} stroke="#2b2320" strokeWidth="0.06" />
      {CORNERS.map(([x, y], index) => (
        <g key={`${x} ${y}`}>
          <rect x={x} y={y} width="1.9" height="1.9" fill={fill(corners[index] as string)} fillOpacity="0.92" stroke="#2b2320" strokeWidth="0.06" />
          <circle cx={x + 0.95} cy={y + 0.95} r="0.55" fill="#fffaf2" />
          <text x={x + 0.95} y={y + 0.97} fontSize="0.85" textAnchor="middle" dominantBaseline="central" fill="#2b2320">
            {index + 1}
          </text>
        </g>
      ))}
      <path d="M0 0 3.6 3.6M3.6 0 0 3.6" stroke="#2b2320" strokeWidth="0.04" strokeDasharray="0.18 0.14" fill="none" />
    </svg>
  )
}
