/**
 * The board for screen readers: its cells as a grid to walk through, each saying what lies in it.
 *
 * Of a large block only the cells around the cursor are there; rows and columns are counted over the whole block.
 */
import { memo, useDeferredValue, useMemo } from 'react'
import type { Block, Unit } from '../../geometry/index.ts'
import { patchName, unitName } from '../words/unitWords.ts'
import { t } from '../words/words.ts'
import { patchesInCell } from './cellPatches.ts'
import { unitById, unitsOver } from './hitTest.ts'
import type { Point } from '../document/shapes.ts'

/** Cells to each side of the cursor. */
const REACH = 6

export const cellId = ([x, y]: Point): string => `cell-${Math.floor(x)}-${Math.floor(y)}`

interface Props {
  readonly block: Block
  readonly cursor: Point
  readonly selected: readonly string[]
}

export const CellGrid = memo(function CellGrid(props: Props) {
  // What the maker does is drawn first; the words follow when there is time.
  const { block, cursor, selected } = useDeferredValue(props)
  const { columns, rows } = block.grid
  const selectedIds = useMemo(() => new Set(selected), [selected])
  const fabricNames = useMemo(() => new Map(block.fabrics.map(({ id, name }) => [id, name])), [block.fabrics])
  const across = rangeOf(cursor[0], columns)
  const down = rangeOf(cursor[1], rows)
  return (
    // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table that is walked through, cell by cell, is a grid
    <table className="unseen" role="grid" aria-label={t('Squares')} aria-rowcount={rows} aria-colcount={columns} aria-multiselectable="true">
      <tbody>
        {down.map((y) => (
          <tr key={y} aria-rowindex={y + 1}>
            {across.map((x) => {
              const units = unitsIn(block, [x, y])
              const text = units.length === 0 ? t('empty') : units.map((unit) => unitText(unit, fabricNames, selectedIds.has(unit.id))).join('; ')
              return (
                // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: as above
                // biome-ignore lint/a11y/useFocusableInteractive: the board has the focus and names the cell that it is on
                <td role="gridcell" key={x} id={cellId([x, y])} aria-colindex={x + 1} aria-selected={units.some(({ id }) => selectedIds.has(id))}>
                  {t('Column {x}, row {y}: {what}.', { x: x + 1, y: y + 1, what: text })}
                </td>
              )
            })}
          </tr>
        ))}
      </tbody>
    </table>
  )
})

function rangeOf(cursor: number, count: number): number[] {
  const at = Math.floor(cursor)
  const first = Math.max(0, Math.min(at - REACH, count - 2 * REACH - 1))
  return Array.from({ length: Math.min(count, 2 * REACH + 1) }, (_, index) => first + index)
}

/** Units that have fabric in a cell. The box of a free patch says too little: its shape decides. */
function unitsIn(block: Block, [x, y]: Point): Unit[] {
  const units = unitsOver(block, { at: [x, y], size: [1, 1] })
  if (units.every(({ kind }) => kind !== 'polygon')) return units
  const ids = new Set(patchesInCell(block, [x, y]).map(({ unit }) => unit))
  return [...ids].flatMap((id) => (id === null ? [] : (unitById(block, id) ?? [])))
}

const TURNS = ['', () => t('quarter turn'), () => t('half turn'), () => t('three-quarter turn')] as const

function unitText(unit: Unit, fabricNames: ReadonlyMap<string, string>, selected: boolean): string {
  const turn = unit.kind === 'polygon' ? '' : TURNS[unit.turn ?? 0]
  const mirrored = unit.kind !== 'polygon' && unit.mirror === true
  const patches = Object.entries(unit.fabrics).map(([name, fabric]) =>
    t('{patch} in {fabric}', { patch: patchName(name), fabric: fabricNames.get(fabric) ?? fabric }),
  )
  return [
    unitName(unit),
    ...(turn === '' || turn === undefined ? [] : [turn()]),
    ...(mirrored ? [t('flipped')] : []),
    ...patches,
    ...(selected ? [t('selected')] : []),
  ].join(', ')
}
