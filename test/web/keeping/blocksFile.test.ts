import { describe, expect, it } from 'vitest'
import { inEnglish } from '../../../geometry/index.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'
import { lantern } from '../../../web/document/starters/lantern.ts'
import { checkBlocks, type FiledBlock, isBlocksFile, writeBlocks } from '../../../web/keeping/blocksFile.ts'

const filed: readonly FiledBlock[] = [
  { id: 'a', made: 1, changed: 2, block: eveningStar, versions: [{ made: 1, name: 'the quiet one', block: lantern }] },
  { id: 'b', made: 3, changed: 4, block: { ...lantern, later: { kept: true } } as typeof lantern, versions: [] },
]
type Loose = Record<string, unknown>
const firstVersion = (blocks: readonly Loose[]): Loose => ((blocks[0] as Loose).versions as Loose[])[0] as Loose
const file = (change: (file: { blocks: Loose[] } & Loose) => void): unknown => {
  const value = JSON.parse(writeBlocks(filed)) as { blocks: Loose[] } & Loose
  change(value)
  return value
}

describe('a file of many blocks', () => {
  it('comes back as it was written, unknown fields of a block too', () => {
    expect(checkBlocks(JSON.parse(writeBlocks(filed)))).toEqual({ ok: true, value: { blocks: filed, refused: [] } })
  })

  it('is told from a file of one block', () => {
    expect([JSON.parse(writeBlocks(filed)), eveningStar, [], null, 'x'].map(isBlocksFile)).toEqual([true, false, false, false, false])
  })

  it.each([
    [[], 'format'],
    [file((value) => Object.assign(value, { version: 2 })), 'version'],
    [file((value) => Object.assign(value, { version: '1' })), 'version'],
    [file((value) => Object.assign(value, { blocks: {} })), 'blocks'],
  ])('is refused with its place: %#', (value, place) => {
    const read = checkBlocks(value)
    expect(read).toMatchObject({ ok: false, place })
    expect(read.ok ? '' : inEnglish(read.message)).toMatch(/^[^\n]+; [^\n]+[^.]$/)
  })

  it.each([
    [file(({ blocks }) => Object.assign(blocks, { 1: null })), 'blocks[1]'],
    [file(({ blocks }) => Object.assign(blocks[0] as Loose, { id: '../a' })), 'blocks[0].id'],
    [file(({ blocks }) => Object.assign(blocks[0] as Loose, { changed: 'today' })), 'blocks[0].changed'],
    [file(({ blocks }) => Object.assign(blocks[0] as Loose, { made: -1 })), 'blocks[0].made'],
    [file(({ blocks }) => Object.assign(blocks[0] as Loose, { changed: 1e300 })), 'blocks[0].changed'],
    [file(({ blocks }) => Object.assign(firstVersion(blocks), { made: 8.64e15 + 1 })), 'blocks[0].versions[0].made'],
    [file(({ blocks }) => Object.assign(firstVersion(blocks), { name: 'x'.repeat(20_001) })), 'blocks[0].versions[0].name'],
    [file(({ blocks }) => Object.assign(blocks[1] as Loose, { versions: null })), 'blocks[1].versions'],
    [file(({ blocks }) => Object.assign(blocks[1] as Loose, { block: 7 })), 'blocks[1].block'],
    [file(({ blocks }) => Object.assign(blocks[1]?.block as Loose, { grid: { columns: 0, rows: 1, cell: 1 } })), 'blocks[1].block.grid.columns'],
    [file(({ blocks }) => Object.assign(firstVersion(blocks), { name: 7 })), 'blocks[0].versions[0].name'],
    [file(({ blocks }) => Object.assign(firstVersion(blocks).block as Loose, { units: 7 })), 'blocks[0].versions[0].block.units'],
  ])('gives its other block, and names the place of what is wrong: %#', (value, place) => {
    const read = checkBlocks(value)
    const other = place.startsWith('blocks[0]') ? filed[1] : filed[0]
    expect(read).toMatchObject({ ok: true, value: { blocks: [{ id: other?.id }], refused: [{ place }] } })
    expect(read.ok ? inEnglish(read.value.refused[0]?.message as never) : '').toMatch(/^[^\n]+; [^\n]+[^.]$/)
  })

  it('is refused where no block in it can be opened, by the first fault', () => {
    const broken = file(({ blocks }) => Object.assign(blocks, { 0: 7, 1: 7 }))
    expect(checkBlocks(broken)).toMatchObject({ ok: false, place: 'blocks[0]' })
  })
})
