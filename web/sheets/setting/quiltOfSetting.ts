/** A quilt of the repeated blocks: as many, turned and pressed as they are shown. */
import {
  bringBlock,
  type Block,
  type Mutable,
  type Quilt,
  setPlaceSize,
  setQuiltGrid,
  type SettingReport,
  takeTurns,
  cellForAll,
  type Turn,
} from '../../../geometry/index.ts'
import { emptyQuilt } from '../../document/starters/emptyQuilt.ts'

export function quiltOfSetting(block: Block, { columns, rows, places }: Pick<SettingReport, 'columns' | 'rows' | 'places'>): Quilt {
  const { name, measure } = block
  const { unit, seam } = measure
  const { frame: _, ...empty } = emptyQuilt()
  const quilt = { ...empty, name, measure: { unit, ...(seam === undefined ? {} : { seam }) }, fabrics: [] } as unknown as Mutable<Quilt>
  const lies = places.map(({ at, turn, press }) => ({
    at,
    turn: turn as Turn,
    press: press === 'opposite' ? ('opposite' as const) : ('planned' as const),
  }))
  setQuiltGrid(columns, rows).change(quilt)
  bringBlock(
    block,
    lies.map(({ at }) => at),
  ).change(quilt)
  const cell = cellForAll({ ...(quilt as Quilt), grid: { columns, rows, cell: [1, 1] } })
  if (Array.isArray(cell)) setPlaceSize(cell[0] === cell[1] ? cell[0] : (cell as [number, number])).change(quilt)
  takeTurns(
    lies.flatMap(({ at, turn, press }) =>
      quilt.places.filter((place) => place.at[0] === at[0] && place.at[1] === at[1]).map(({ id }) => ({ id, turn, press })),
    ),
  ).change(quilt)
  return quilt as Quilt
}
