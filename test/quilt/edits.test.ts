/** Edits of a quilt: each leaves a quilt that can be read, and does what its name says. */
import { describe, expect, it } from 'vitest'
import {
  addPart,
  type Block,
  bringBlock,
  cellForAll,
  changeQuiltFabric,
  checkQuilt,
  clearPlaces,
  fillRun,
  framePlaces,
  joinBy,
  moveToCell,
  type Mutable,
  namePart,
  placeAtCell,
  pressPlaces,
  putInPlaces,
  type Quilt,
  type QuiltCell,
  type QuiltEdit,
  quiltLayout,
  quiltReport,
  removeBlock,
  removePart,
  repeatInPlaces,
  resizePlace,
  setPlaceSize,
  setQuiltBorders,
  setQuiltGrid,
  setWay,
  stagesDone,
  takeTurns,
  tickPlaces,
  turnPlaces,
  updateBlock,
  wearFabric,
} from '../../geometry/index.ts'
import { emptyQuilt } from '../../web/document/starters/emptyQuilt.ts'
import { eveningStar } from '../../web/document/starters/eveningStar.ts'
import { lantern } from '../../web/document/starters/lantern.ts'

const EMPTY: Quilt = { ...emptyQuilt(), grid: { columns: 3, rows: 2, cell: 12 } }

/** The quilt after these edits; it can be read after each. */
const edited = (quilt: Quilt, ...edits: readonly QuiltEdit[]): Quilt =>
  edits.reduce((before, edit) => {
    const draft = JSON.parse(JSON.stringify(before)) as Mutable<Quilt>
    edit.change(draft)
    expect(checkQuilt(draft), edit.name.code).toMatchObject({ ok: true })
    return draft as Quilt
  }, quilt)

const star = bringBlock(eveningStar, [[0, 0]])
const house = bringBlock(lantern, [[1, 0]])
const two = edited(EMPTY, star, house)
const at = (quilt: Quilt, cell: QuiltCell) => placeAtCell(quilt.places, cell)
const idAt = (quilt: Quilt, cell: QuiltCell): string => at(quilt, cell)?.id ?? ''

describe('places', () => {
  it('take a block or a plain piece, and nothing beyond the grid', () => {
    const plain = edited(
      two,
      putInPlaces(
        [
          [2, 1],
          [7, 7],
        ],
        { plain: 'frame' },
      ),
    )
    expect(at(plain, [2, 1])).toMatchObject({ plain: 'frame', at: [2, 1] })
    expect(plain.places).toHaveLength(3)
  })

  it('swap what lies in them, turned and pressed as it was, and stay as large', () => {
    const wide = edited(two, resizePlace(idAt(two, [1, 0]), [2, 1]), turnPlaces([idAt(two, [0, 0])], 1), pressPlaces([idAt(two, [0, 0])], 'opposite'))
    const swapped = edited(wide, moveToCell(idAt(wide, [0, 0]), [1, 0]))
    expect(at(swapped, [2, 0])).toMatchObject({ block: 'evening-star-example', turn: 1, press: 'opposite', size: [2, 1] })
    expect(at(swapped, [0, 0])).toMatchObject({ block: 'harbour-lantern-example' })
    expect(at(swapped, [0, 0])).not.toHaveProperty('turn')
    expect(edited(swapped, moveToCell(idAt(swapped, [1, 0]), [0, 0])).places).toEqual(wide.places)
  })

  it('give what lies in them to an empty cell', () => {
    const moved = edited(two, moveToCell(idAt(two, [0, 0]), [2, 1]))
    expect(at(moved, [0, 0])).toBeUndefined()
    expect(at(moved, [2, 1])).toMatchObject({ block: 'evening-star-example' })
  })

  it('come back after four quarter turns', () => {
    const id = idAt(two, [0, 0])
    const turned = edited(two, turnPlaces([id], 1))
    expect(at(turned, [0, 0])?.turn).toBe(1)
    expect(edited(turned, turnPlaces([id], 3)).places).toEqual(two.places)
  })

  it('lie over more cells in the stead of what was there', () => {
    const wide = edited(two, resizePlace(idAt(two, [0, 0]), [2, 2]))
    expect(wide.places).toHaveLength(1)
    expect(at(wide, [1, 1])?.size).toEqual([2, 2])
    expect(edited(two, resizePlace(idAt(two, [1, 0]), [3, 1])).places).toEqual(two.places)
  })

  it('fill a run with what the first holds', () => {
    const run = edited(
      two,
      turnPlaces([idAt(two, [0, 0])], 2),
      fillRun(idAt(two, [0, 0]), [
        [0, 0],
        [0, 1],
        [1, 1],
        [2, 1],
      ]),
    )
    for (const cell of [
      [0, 1],
      [1, 1],
      [2, 1],
    ] as const)
      expect(at(run, cell)).toMatchObject({ block: 'evening-star-example', turn: 2 })
    expect(at(run, [1, 0])).toMatchObject({ block: 'harbour-lantern-example' })
  })

  it('hold two blocks by turns, as many of each as a printed setting of alternate blocks says [S270]', () => {
    const cells = Array.from({ length: 81 }, (_, index): QuiltCell => [index % 9, Math.floor(index / 9)])
    const nine = edited(
      { ...two, grid: { columns: 9, rows: 9, cell: 12 } },
      repeatInPlaces(cells, [{ block: 'evening-star-example' }, { plain: 'frame' }]),
    )
    expect(nine.places.filter(({ block }) => block !== undefined)).toHaveLength(41)
    expect(nine.places.filter(({ plain }) => plain !== undefined)).toHaveLength(40)
  })

  it('are cut off where the grid gets smaller', () => {
    const wide = edited(two, resizePlace(idAt(two, [1, 0]), [2, 1]), putInPlaces([[0, 1]], { plain: 'frame' }))
    const small = edited(wide, setQuiltGrid(2, 1))
    expect(small.places.map(({ id }) => id)).toEqual(['a1', 'b1'])
    expect(at(small, [1, 0])).not.toHaveProperty('size')
  })

  it('are emptied, framed by themselves and ticked off', () => {
    expect(edited(two, clearPlaces(['a1'])).places.map(({ id }) => id)).toEqual(['b1'])
    const framed = edited(two, framePlaces(['a1'], [{ finishedWidth: '1/2', fabric: 'frame' }, { fabric: 'frame' }]))
    expect(at(framed, [0, 0])?.frame).toHaveLength(2)
    expect(at(edited(framed, framePlaces(['a1'], null)), [0, 0])).not.toHaveProperty('frame')
    const ticked = edited(two, tickPlaces(['a1'], 'quilted', true), tickPlaces(['a1'], 'pieced', true))
    expect(stagesDone(at(ticked, [0, 0]) ?? {})).toEqual(['pieced', 'quilted'])
    expect(edited(ticked, tickPlaces(['a1'], 'quilted', false), tickPlaces(['a1'], 'pieced', false)).places).toEqual(two.places)
  })

  it('are turned and pressed as was found best', () => {
    const taken = edited(two, takeTurns([{ id: 'a1', turn: 3, press: 'opposite' }]))
    expect(at(taken, [0, 0])).toMatchObject({ turn: 3, press: 'opposite' })
    expect(edited(taken, takeTurns([{ id: 'a1', turn: 0, press: 'planned' }])).places).toEqual(two.places)
  })
})

describe('the parts of a class', () => {
  const parted = edited(two, addPart('The star', ['a1']), addPart('The lantern', ['b1']))

  it('hold each place once, and are named and deleted', () => {
    expect(parted.parts).toEqual([
      { title: 'The star', places: ['a1'] },
      { title: 'The lantern', places: ['b1'] },
    ])
    expect(edited(parted, addPart('Both', ['a1', 'b1'])).parts).toEqual([{ title: 'Both', places: ['a1', 'b1'] }])
    expect(edited(parted, namePart(1, 'June'), removePart(0)).parts).toEqual([{ title: 'June', places: ['b1'] }])
    expect(edited(parted, removePart(0), removePart(0))).not.toHaveProperty('parts')
  })

  it('forget places that are gone, so that the quilt can still be read', () => {
    const gone = [clearPlaces(['a1']), removeBlock('evening-star-example'), resizePlace('b1', [2, 1]), setQuiltGrid(1, 1), moveToCell('a1', [2, 1])]
    expect(gone.map((edit) => edited(parted, edit).parts?.map(({ places }) => places))).toEqual([
      [['b1']],
      [['b1']],
      [['a1'], ['b1']],
      [['a1']],
      [['a1'], ['b1']],
    ])
  })
})

describe('blocks', () => {
  it('are brought in once, and wear one fabric where they have the same', () => {
    const again = edited(two, bringBlock(eveningStar, [[2, 0]]))
    expect(again.blocks).toHaveLength(2)
    const other: Block = { ...lantern, name: 'Other', fabrics: lantern.fabrics.map((fabric) => ({ ...fabric, id: `my-${fabric.id}` })) }
    const renamed = { ...other, units: other.units.map((unit) => ({ ...unit, fabrics: mapped(unit.fabrics) })) } as Block
    const three = edited(two, bringBlock(renamed, [[2, 0]]))
    expect(three.fabrics).toEqual(two.fabrics)
    expect(Object.values(three.blocks[2]?.wear ?? {}).sort()).toEqual(Object.values(two.blocks[1]?.wear ?? {}).sort())
  })

  it('take the quilt’s unit of measure and seam allowance', () => {
    const metric = edited({ ...EMPTY, measure: { unit: 'cm', seam: 0.75 }, grid: { columns: 2, rows: 2, cell: 30 } }, star)
    expect(metric.blocks[0]?.block.measure).toEqual({ unit: 'cm', seam: 0.75 })
  })

  it('change with a fabric they wear, but not those that are kept apart', () => {
    const [fabric] = Object.entries(two.blocks[0]?.wear ?? {}).find(([own]) => own !== 'none') as [string, string]
    const worn = two.blocks[0]?.wear?.[fabric] as string
    const apart = edited(two, wearFabric('evening-star-example', fabric, null), changeQuiltFabric(worn, { colour: '#123456' }))
    expect(apart.fabrics.find(({ id }) => id === worn)?.colour).toBe('#123456')
    expect(apart.blocks[0]?.wear).not.toHaveProperty(fabric)
  })

  it('are brought up to date and keep the fabrics they wear', () => {
    const [own] = Object.keys(two.blocks[0]?.wear ?? {}) as [string]
    const dressed = edited(two, wearFabric('evening-star-example', own, 'frame'))
    const newer = edited(dressed, updateBlock('evening-star-example', { ...eveningStar, name: 'Late star' }))
    expect(newer.blocks[0]).toMatchObject({ id: 'evening-star-example', block: { name: 'Late star' } })
    expect(newer.blocks[0]?.wear).toMatchObject({ [own]: 'frame' })
  })

  it('leave with their places', () => {
    const left = edited(two, removeBlock('evening-star-example'))
    expect([left.blocks.length, left.places.map(({ id }) => id)]).toEqual([1, ['b1']])
  })
})

const mapped = (fabrics: Readonly<Record<string, string>>) => Object.fromEntries(Object.entries(fabrics).map(([patch, id]) => [patch, `my-${id}`]))

describe('the quilt as a whole', () => {
  it('says by how much blocks fall short or are too large, and which place takes them all', () => {
    const small = edited(two, setPlaceSize(10))
    expect(quiltLayout(small).places.map(({ fit, spare }) => [fit, spare])).toEqual([
      ['too-large', [-2, -2]],
      ['too-large', [1, -2]],
    ])
    expect(cellForAll(small)).toBe(12)
    const framed: Quilt = { ...small, frame: [{ finishedWidth: '1/2', fabric: 'frame' }, { fabric: 'frame' }] }
    expect(cellForAll(framed)).toBe(13)
    expect(quiltLayout({ ...framed, grid: { ...framed.grid, cell: 13 } }).places.every(({ fit }) => fit === 'fits')).toBe(true)
  })

  it('lays places where the report says they lie', () => {
    for (const join of ['whole', 'strips', 'fronts', 'backing-over', 'butted'] as const) {
      const joined = edited(two, joinBy(join, 'frame'))
      const report = quiltReport(joined)
      const drawn = quiltLayout(joined)
      expect(drawn.places.map((place) => [place.at, place.size, place.content])).toEqual(
        report.places.map(({ origin, finished, content }) => [origin.map(Number), finished, content]),
      )
    }
  })

  it('is not joined with strips of no fabric', () => {
    expect(edited({ ...EMPTY, fabrics: [], frame: [] }, joinBy('strips', undefined))).not.toHaveProperty('way')
  })

  it('drops sashing and borders with the way they belong to', () => {
    const sashed = edited(two, setWay({ sash: { width: 2, fabric: 'frame' } }), setQuiltBorders([{ finishedWidth: 3, fabric: 'frame' }]))
    const strips = edited(sashed, joinBy('strips', 'frame'))
    expect(strips).not.toHaveProperty('borders')
    expect(strips.way).toEqual({ join: 'strips', fabric: 'frame' })
    expect(edited(sashed, setWay({ sash: undefined })).way).toEqual({})
  })
})
