/** Tables for a spreadsheet: units and cloth, exact. */
import { expect, it } from 'vitest'
import { type Block, clothCsv, cutListCsv, cutListText, report, unitsCsv } from '../../geometry/index.ts'
import { germanMessages } from '../../geometry/words/german.ts'
import { STAR } from './star.ts'

const said = report(STAR)
const rows = (text: string): string[] => text.split('\r\n').slice(0, -1)

it('lists units with what they finish at and are trimmed to', () => {
  const [head, ...units] = rows(unitsCsv(said, STAR))
  expect(head).toBe(
    'unit,kind,hand,count,finished_width,finished_height,unfinished_width,unfinished_height,measure,method,batches,spare,bias,fabrics',
  )
  // Unfinished is finished and 1/2 [S17]; half its points in each fabric, one batch: common practice, no source.
  expect(units.find((row) => row.includes(',goose,'))).toMatch(/^[A-Z],goose,,4,6,3,6\.5,3\.5,in,four at a time,1,0,no,/)
  expect(units).toHaveLength(said.units.length)
})

it('lists cloth to buy in eighths of a yard, a name like a formula made harmless', () => {
  const [head, ...cloth] = rows(clothCsv(said, STAR))
  expect(head).toBe('fabric,colour,length,usable_width,measure,buy,buy_in,strips,proved')
  expect(cloth.map((row) => row.split(',')[0])).toEqual(['Linen white', 'Moss', '"\'=Plum'])
  // 7 1/4 in is more than 1/8 yd (4 1/2) and less than 1/4 yd (9) [S122][S123].
  expect(cloth[0]).toBe('Linen white,#f3ede1,7.25,42,in,0.25,yd,1,yes')
  expect(cloth[2]).toContain(`"'=Plum, ""dark"""`)
})

it('has German heads and words where the pieces have them', () => {
  const german = { german: germanMessages }
  const [units, first] = rows(unitsCsv(said, STAR, german))
  expect(units).toBe(
    'Einheit;Art;Seite;Anzahl;fertige Breite;fertige Höhe;Breite mit Nahtzugabe;Höhe mit Nahtzugabe;Maß;Methode;Sätze;übrig;schräger Fadenlauf;Stoffe',
  )
  expect(rows(unitsCsv(said, STAR, german)).find((row) => row.includes(';Gans;'))).toMatch(
    /;4;6;3;6,5;3,5;in;vier auf einmal;1;0;nein;mittleres Dreieck: Linen white$/,
  )
  expect(first).not.toMatch(/square|yes|no;/)
  const [fabrics, linen] = rows(clothCsv(said, STAR, german))
  expect(fabrics).toBe('Stoff;Farbe;Länge;nutzbare Breite;Maß;kaufen;kaufen in;Streifen;bewiesen')
  expect(linen).toBe('Linen white;#f3ede1;7,25;42;in;0,25;yd;1;ja')
})

/** Two plain rectangles, one lying and one standing; a half rectangle of each hand; and a border. */
const MIXED: Block = {
  ...STAR,
  grid: { columns: 4, rows: 2, cell: 2.25 },
  measure: { unit: 'cm', seam: 0.75 },
  units: [
    { id: 'lying', kind: 'square', at: [0, 0], size: [2, 1], fabrics: { patch: 'linen' } },
    { id: 'half', kind: 'half-rectangle', at: [0, 1], size: [2, 1], fabrics: { upper: 'moss', lower: 'linen' } },
    { id: 'standing', kind: 'square', at: [2, 0], size: [1, 2], fabrics: { patch: 'linen' } },
    { id: 'other', kind: 'half-rectangle', at: [3, 0], size: [1, 2], fabrics: { upper: 'moss', lower: 'linen' } },
  ],
  borders: [{ finishedWidth: 2.5, fabric: 'plum' }],
}

it('says rectangles with the short side first, adds equal ones up, and tells the hands of half rectangles apart', () => {
  const found = report(MIXED)
  const text = cutListText(found, MIXED)
  // Finished and two seams of 0.75 cm: 2.25 + 1.5 and 4.5 + 1.5: common practice, no source.
  expect(text).toContain('2 rectangles 3.75 × 6 cm – rectangles')
  expect(text).toContain('seam allowances of 0.75 cm')
  expect(text).toMatch(/left-handed/)
  expect(text).toMatch(/right-handed/)
  expect(text).toMatch(/– borders: cut 4 cm wide; trim to length when you get there/)
  expect(text).not.toContain('plain piece')
})

it('writes the pieces for people: words and letters, no ids unless asked for, and in the form German spreadsheets read', () => {
  const found = report(MIXED)
  const plain = cutListCsv(found, MIXED)
  expect(plain).toMatch(/^fabric,unit,shape,count,width,length,width_decimal,length_decimal,measure,then,hand,method,for,print\r\n/)
  expect(plain).toMatch(/\r\nLinen white,[A-Z]( [A-Z])?,rectangle,2,3\.75,6,3\.75,6,cm,,,traditional piecing,/)
  expect(plain).not.toMatch(/linen|standing/)
  expect(cutListCsv(found, MIXED, { ids: true })).toMatch(/,linen,lying standing\r\n/)
  expect(cutListCsv(found, MIXED, { german: germanMessages })).toMatch(/\r\nLinen white;[A-Z]( [A-Z])?;Rechteck;2;3,75;6;3,75;6;cm;/)
  expect(cutListCsv(report(STAR), STAR)).toMatch(/,square,1,7 1\/4,7 1\/4,7\.25,7\.25,in,/)
})
