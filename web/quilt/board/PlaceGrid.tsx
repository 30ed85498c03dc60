/** The quilt for screen readers: its cells as a grid to walk through, each saying what lies in it. Only the cells around the cursor are there. */
import { memo, useDeferredValue } from 'react'
import { type DrawnPlace, placeAtCell, type Quilt, type QuiltCell, type QuiltLayout, type QuiltPlace, placeSize } from '../../../geometry/index.ts'
import { t } from '../../words/words.ts'
import { anchorOf, sameCell } from '../quiltView.ts'

/** Cells to each side of the cursor. */
const REACH = 5

export const quiltCellId = ([column, row]: QuiltCell): string => `place-${column}-${row}`

interface Props {
  readonly quilt: Quilt
  readonly layout: QuiltLayout
  readonly cursor: QuiltCell
  readonly selected: readonly QuiltCell[]
}

export const PlaceGrid = memo(function PlaceGrid(props: Props) {
  const { quilt, layout, cursor, selected } = useDeferredValue(props)
  const { columns, rows } = quilt.grid
  return (
    // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table that is walked through, cell by cell, is a grid
    <table className="unseen" role="grid" aria-label={t('Positions')} aria-rowcount={rows} aria-colcount={columns} aria-multiselectable="true">
      <tbody>
        {rangeOf(cursor[1], rows).map((row) => (
          <tr key={row} aria-rowindex={row + 1}>
            {rangeOf(cursor[0], columns).map((column) => {
              const anchor = anchorOf(quilt, [column, row])
              const isSelected = selected.some((cell) => sameCell(cell, anchor))
              return (
                // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: as above
                // biome-ignore lint/a11y/useFocusableInteractive: the board has the focus and names the cell that it is on
                <td role="gridcell" key={column} id={quiltCellId([column, row])} aria-colindex={column + 1} aria-selected={isSelected}>
                  {t('Column {x}, row {y}: {what}.', { x: column + 1, y: row + 1, what: contentWords(quilt, layout, [column, row]) })}
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
  const first = Math.max(0, Math.min(cursor - REACH, count - 2 * REACH - 1))
  return Array.from({ length: Math.min(count, 2 * REACH + 1) }, (_, index) => first + index)
}

function contentWords(quilt: Quilt, layout: QuiltLayout, cell: QuiltCell): string {
  const place = placeAtCell(quilt.places, cell)
  const drawn = layout.places.find((one) => one.place === place)
  return place === undefined || drawn === undefined ? t('empty') : wordsOfPlace(quilt, drawn)
}

const TURNS = [null, () => t('quarter turn'), () => t('half turn'), () => t('three-quarter turn')] as const

/** What lies in a place, as one says it: the block's name, how it is turned, whether it fits. */
export function wordsOfPlace(quilt: Quilt, { place, fit }: DrawnPlace): string {
  const [wide, high] = placeSize(place)
  const turned = TURNS[place.turn ?? 0]?.()
  return [
    nameOfContent(quilt, place),
    ...(turned === undefined ? [] : [turned]),
    ...(place.press === 'opposite' ? [t('pressed the other way')] : []),
    ...(wide > 1 || high > 1 ? [t('{wide} by {high} cells', { wide, high })] : []),
    ...(fit === 'too-large' ? [t('too large')] : fit === 'too-small' ? [t('too small')] : []),
  ].join(', ')
}

/** The name of the block or fabric that lies in a place. */
export function nameOfContent(quilt: Quilt, place: QuiltPlace): string {
  if (place.block !== undefined) return quilt.blocks.find(({ id }) => id === place.block)?.block.name ?? ''
  return t('plain {fabric}', { fabric: quilt.fabrics.find(({ id }) => id === place.plain)?.name ?? '' })
}
