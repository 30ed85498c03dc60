/**
 * Whole quilts as printed: sizes, sashing and corner squares, borders. Rows and sources stand in `quilts.json`; a row that print gets wrong is
 * expected not to match, and its note says by how much.
 */
import { describe, expect, it } from 'vitest'
import { quiltReport } from '../../geometry/index.ts'
import type { Border } from '../../geometry/values/block.ts'
import type { QuiltWay } from '../../geometry/values/quilt.ts'
import { plainQuilt } from '../quilt/quilts.ts'
import rows from './quilts.json' with { type: 'json' }
import { from, pair } from './sources.ts'

interface SizeRow {
  readonly name: string
  readonly across: number
  readonly down: number
  readonly seam: string
  readonly cell: string
  readonly join: string
  readonly width?: string
  readonly measured: string
  readonly printed: string
  readonly border?: string
  readonly bindingStrips?: number
  readonly exact: boolean
  readonly source: string
}

describe('printed quilts', () => {
  it.each(rows.sizes as readonly SizeRow[])('$name: $across by $down makes $printed, $source (print is right: $exact)', (row) => {
    const cut = row.join === 'strips' || row.join === 'butted'
    const way = { join: row.join, ...(row.width === undefined ? {} : { width: row.width }), ...(cut ? { fabric: 'deep' } : {}) } as QuiltWay
    const borders: readonly Border[] = row.border === undefined ? [] : [{ finishedWidth: row.border, fabric: 'deep' }]
    const quilt = { ...plainQuilt(row.across, row.down, row.cell, way, row.seam), ...(borders.length === 0 ? {} : { borders }) }
    const report = quiltReport(quilt)
    const ours = row.measured === 'raw' ? report.size.raw : report.size.finished
    const border = (row as { printedBorderStrip?: string }).printedBorderStrip
    const said = border === undefined ? [ours] : [ours, report.cut.find(({ part }) => part === 'border')?.size]
    const printed = border === undefined ? [pair(row.printed)] : [pair(row.printed), pair(border)]
    if (row.exact) expect(said, from(row.source)).toEqual(printed)
    else expect(said, from(row.source)).not.toEqual(printed)
    if (row.bindingStrips !== undefined) expect(report.binding?.strips, from(row.source)).toBe(row.bindingStrips)
  })
})

interface SashRow {
  readonly across: number
  readonly down: number
  readonly layout: string
  readonly blockFinished: string
  readonly sashFinished: string
  readonly printedSashes?: number
  readonly printedCornerstones?: number
  readonly computedLongSashes?: number
  readonly printedSize?: string
  readonly sizeIs?: string
  readonly borderFinished?: string
  readonly exact: boolean
  readonly source: string
}

describe('printed sashes', () => {
  it.each(rows.sashing as readonly SashRow[])('$across by $down, $layout, $source (print is right: $exact)', (row) => {
    const corner = row.layout === 'rows' ? {} : { corner: 'pale' }
    const sash = { width: row.sashFinished, fabric: 'deep', ...corner, ...(row.layout === 'all round' ? { round: true } : {}) }
    const { joints, cut, size } = quiltReport({ ...plainQuilt(row.across, row.down, row.blockFinished, { sash }), order: 'rows' })
    const of = (fabric: string): number =>
      cut.filter((one) => one.part === 'sash' && one.fabric === fabric).reduce((sum, { count, pieced = 1 }) => sum + count / pieced, 0)
    const long = joints.filter(({ stage }) => stage === 'quilt').length
    if (row.printedSashes !== undefined) expect(of('deep') - (row.layout === 'rows' ? long : 0), from(row.source)).toBe(row.printedSashes)
    if (row.printedCornerstones !== undefined) expect(of('pale'), from(row.source)).toBe(row.printedCornerstones)
    if (row.computedLongSashes !== undefined) expect(long, from(row.source)).toBe(row.computedLongSashes)
    if (row.printedSize === undefined || row.borderFinished !== undefined) return
    const ours = row.sizeIs === 'unfinished' ? size.raw : size.finished
    if (row.exact) expect(ours, from(row.source)).toEqual(pair(row.printedSize))
    else expect(ours, from(row.source)).not.toEqual(pair(row.printedSize))
  })
})

describe('printed borders round a quilt', () => {
  it.each(rows.borders)('$name, $source', ({ start, unfinished, rounds, source }) => {
    const seams = unfinished ? 1 / 2 : 0
    const [w, h] = pair(start)
    rounds.forEach(({ printed }, index) => {
      if (printed === null) return
      const borders = rounds.slice(0, index + 1).map(({ addEachSide }) => ({ finishedWidth: addEachSide, fabric: 'deep' }))
      const quilt = plainQuilt(1, 1, 1, {})
      const { size } = quiltReport({ ...quilt, grid: { ...quilt.grid, cell: [w - seams, h - seams] }, borders })
      expect(unfinished ? size.raw : size.finished, from(source)).toEqual(pair(printed))
    })
  })
})
