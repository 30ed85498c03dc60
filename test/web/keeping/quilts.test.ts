/** Quilts are kept like blocks: in the database with their history, in one file with the blocks, in a link. */
import 'fake-indexeddb/auto'
import { openDB } from 'idb'
import { describe, expect, it } from 'vitest'
import { bringBlock, moveUnits, type Quilt, recolourPatch, setQuiltGrid, turnPlaces, turnUnits } from '../../../geometry/index.ts'
import { emptyQuilt } from '../../../web/document/starters/emptyQuilt.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'
import { lantern } from '../../../web/document/starters/lantern.ts'
import { applyEdit, type History, newHistory, redoStep, undoStep } from '../../../web/document/history.ts'
import { checkBlocks, type FiledBlock, writeBlocks } from '../../../web/keeping/blocksFile.ts'
import {
  cards,
  changeVersions,
  firstCursor,
  openBase,
  read,
  salvaged,
  takeLease,
  versionBlock,
  versionsOf,
  write,
} from '../../../web/keeping/database.ts'
import { isSoundQuilt } from '../../../web/keeping/quiltCheck.ts'
import { documentFromLink, isLink, linkTo } from '../../../web/keeping/shareLink.ts'

const EDITS = [bringBlock(eveningStar, [[0, 0]]), bringBlock(lantern, [[1, 1]]), turnPlaces(['a1'], 1), setQuiltGrid(2, 2)]
const start = newHistory<Quilt>(emptyQuilt())
const edited = EDITS.reduce<History<Quilt>>(applyEdit, start)

describe('a quilt in the database', () => {
  it('comes back with its whole history, and its card says what it is', async () => {
    const db = await openBase('quilts')
    const first = await write(db, firstCursor(), null, start, 1)
    const undone = undoStep(undoStep(edited))
    await write(db, first, start, undone, 2)
    expect(await read(db, first.id)).toEqual(undone)
    expect(redoStep(redoStep((await takeLease(db, first.id))?.history as History<Quilt>)).block).toEqual(edited.block)
    expect(await cards(db)).toMatchObject([{ id: first.id, type: 'quilt', name: edited.block.name, fabrics: expect.arrayContaining(['Honey']) }])
    db.close()
  })

  it('is salvaged as far as its steps still apply', async () => {
    const db = await openBase('damaged quilts')
    const first = await write(db, firstCursor(), null, start, 1)
    await write(db, first, start, edited, 2)
    await db.put('edits', { name: 'damage', redo: 'no changes', undo: 'no changes' }, [first.id, 2])
    expect(await salvaged(db, first.id, isSoundQuilt)).toEqual(undoStep(undoStep(edited)).block)
    db.close()
  })
})

describe('a database without quilts', () => {
  /** As the app left it before there were quilts: a block after three edits and one undo, and a version of it. */
  async function before(name: string): Promise<{ id: string; history: History }> {
    const db = await openDB(name, 2, {
      upgrade(old) {
        old.createObjectStore('cards', { keyPath: 'id' })
        for (const store of ['bases', 'edits', 'turns', 'versionBlocks', 'desk']) old.createObjectStore(store)
        old.createObjectStore('versions', { keyPath: 'id' }).createIndex('of', 'of')
      },
    })
    const steps = [recolourPatch('goose-top', 'leftWing', 'moss'), turnUnits(['goose-top']), moveUnits(['centre'], 1, 0)]
    const history = undoStep(steps.reduce<History>(applyEdit, newHistory(eveningStar)))
    const card = { id: 'a', name: eveningStar.name, fabrics: ['Moss'], made: 1, changed: 2, aside: null, past: 2, turn: 1 }
    await db.put('cards', card)
    await db.put('bases', { past: 0, block: eveningStar }, 'a')
    await Promise.all([...history.past, ...history.future].map((step, place) => db.put('edits', step, ['a', place])))
    await db.put('versions', { id: 'v', of: 'a', made: 1, name: 'the first', why: 'asked' })
    await db.put('versionBlocks', eveningStar, 'v')
    await db.put('desk', 'a', 'open')
    db.close()
    return { id: 'a', history }
  }

  it('keeps everything, and takes quilts from then on', async () => {
    const { id, history } = await before('of before')
    const db = await openBase('of before')
    expect(await read(db, id)).toEqual(history)
    expect(await cards(db)).toMatchObject([{ id, name: eveningStar.name }])
    expect((await cards(db))[0]).not.toHaveProperty('type')
    expect(await versionsOf(db, id)).toHaveLength(1)
    expect(await versionBlock(db, 'v')).toEqual(eveningStar)
    const quilt = await write(db, firstCursor(), null, edited, 3)
    await changeVersions(db, [{ id: 'w', of: quilt.id, made: 4, name: null, why: 'rest', block: start.block }], [])
    expect(await versionBlock(db, 'w')).toEqual(start.block)
    db.close()
  })

  it('is closed afterwards to a page that knows no quilts', async () => {
    const db = await openBase('of before, later')
    db.close()
    await expect(openDB('of before, later', 2)).rejects.toMatchObject({ name: 'VersionError' })
  })
})

describe('a file of blocks and quilts', () => {
  const filed: readonly FiledBlock[] = [
    { id: 'a', made: 1, changed: 2, block: eveningStar, versions: [] },
    { id: 'q', made: 1, changed: 2, block: edited.block, versions: [{ made: 1, name: 'empty', block: start.block }] },
  ]

  it('comes back as it was written', () => {
    expect(checkBlocks(JSON.parse(writeBlocks(filed)))).toEqual({ ok: true, value: { blocks: filed, refused: [] } })
  })

  it('names the place of a fault in a quilt', () => {
    const broken = JSON.parse(writeBlocks(filed)) as { quilts: { block: { blocks: { block: { units: { size: unknown }[] } }[] } }[] }
    const unit = broken.quilts[0]?.block.blocks[0]?.block.units[2]
    if (unit !== undefined) unit.size = 'wide'
    expect(checkBlocks(broken)).toMatchObject({
      ok: true,
      value: { blocks: [{ id: 'a' }], refused: [{ place: 'quilts[0].block.blocks[0].block.units[2].size' }] },
    })
  })
})

describe('a link that holds a quilt', () => {
  it('gives it back, without its photographs', async () => {
    const photo = { kind: 'photo' as const, repeat: 2, photo: 'data:image/jpeg;base64,AA==' }
    const quilt = {
      ...edited.block,
      fabrics: edited.block.fabrics.map((fabric, place) => (place === 0 ? { ...fabric, print: photo } : fabric)),
    } as Quilt
    const made = await linkTo(quilt, 'https://example.org/')
    expect(made).toMatchObject({ ok: true, photographs: true })
    const fragment = new URL(made.ok ? made.link : '').hash
    expect([isLink(fragment), fragment.startsWith('#quilt=1.')]).toEqual([true, true])
    expect(await documentFromLink(fragment)).toEqual({ ok: true, block: edited.block })
  })

  it('holds no block', async () => {
    const made = await linkTo(eveningStar, 'https://example.org/')
    const fragment = new URL(made.ok ? made.link : '').hash.replace('#block', '#quilt')
    expect(await documentFromLink(fragment)).toEqual({ ok: false, why: 'broken' })
  })
})
