/** Tables for a spreadsheet: units and cloth, exact. */
import { expect, it } from 'vitest'
import { clothCsv, report, unitsCsv } from '../../geometry/index.ts'
import { STAR } from './star.ts'

const said = report(STAR)
const rows = (text: string): string[] => text.split('\r\n').slice(0, -1)

it('lists units with what they finish at and are trimmed to', () => {
  const [head, ...units] = rows(unitsCsv(said, STAR))
  expect(head).toBe(
    'kind,hand,count,finished_width,finished_height,unfinished_width,unfinished_height,measure,method,batches,spare,bias,fabrics,units',
  )
  // Unfinished is finished and 1/2 [S17]; half its points in each fabric, one batch: common practice, no source.
  expect(units.find((row) => row.startsWith('goose'))).toMatch(/^goose,,4,6,3,6\.5,3\.5,in,geese-4,1,0,no,/)
  expect(units).toHaveLength(said.units.length)
})

it('lists cloth to buy in eighths of a yard, a name like a formula made harmless', () => {
  const [head, ...cloth] = rows(clothCsv(said, STAR))
  expect(head).toBe('fabric,name,colour,length,usable_width,measure,buy,buy_in,strips,proved')
  expect(cloth.map((row) => row.split(',')[0])).toEqual(['linen', 'moss', 'plum'])
  // 7 1/4 in is more than 1/8 yd (4 1/2) and less than 1/4 yd (9) [S122][S123].
  expect(cloth[0]).toBe('linen,Linen white,#f3ede1,7.25,42,in,0.25,yd,1,yes')
  expect(cloth[2]).toContain(`"'=Plum, ""dark"""`)
})
